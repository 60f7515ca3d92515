/**
 * When a surface can be finished, and until when: by the set of its concrete, as a range.
 *
 * Initial set comes by the temperature (`set-time.ts`) or as it was measured on this mix, counted from mixing: `i` after
 * placing, with the age of the concrete then taken off. Of the
 * three cases the earliest takes the warmer of concrete and air, the latest the colder, since a slab draws toward the
 * air. The surface opens, with no sheen and a footprint no deeper than 1/4 in (6 mm), at `o = u × i` with half to seven
 * tenths of initial set: 2 h to 4.2 h at 70 degF, common practice. It closes at `c = v × i`, at initial set, and for a
 * hard trowel at 1.3 of it. Damp air that dries nothing up opens it a tenth of initial set later; wind that crusts the
 * top closes it a tenth sooner. Sheen that was seen later than the rule has it opening moves all of it.
 */
import { doesNotFit } from '../quantity/faults';
import { greaterOf, lesserOf } from '../quantity/greater';
import { constant, ratio, time } from '../quantity/make';
import { paired } from '../quantity/paired';
import type { Quantity } from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import { wholeNumber } from '../reckoning/fields';
import { Pad } from '../reckoning/pad';
import { COMMON_PRACTICE } from '../reckoning/source';
import { say } from '../reckoning/words';
import { above, raised } from '../weather/degrees';
import { middleOf } from './saw-clock';
import type { Hours } from './saw-hours';
import { factorAt, SET_FROM, SET_LEAST, SET_MOST, SET_TO } from './set-time';

type Time = Quantity<'time'>;
type Ratio = Quantity<'ratio'>;
type Temperature = Quantity<'temperature'>;

/** One time, from the earliest that it may be to the latest. */
export interface DayRange {
  /** With concrete that sets fast. */
  readonly earliest: Quantity<'time'>;
  /** As is most likely. */
  readonly likely: Quantity<'time'>;
  /** With concrete that sets slowly. */
  readonly latest: Quantity<'time'>;
}

/** The finish of a slab, as the trade calls it. */
export type DayFinish = 'float' | 'broom' | 'hard-trowel' | 'stamp' | 'exposed-aggregate' | 'rock-salt';

/** What the day is like. */
export interface DayConditions {
  readonly concrete: Temperature;
  readonly air: Temperature | undefined;
  /** Initial set as it was measured on this mix. */
  readonly measured: Hours | undefined;
  /** Of the concrete as it is placed, from its mixing on. */
  readonly age: Time;
  /** How many times as long a measured set takes as on the day that is planned for. */
  readonly slower: Ratio | undefined;
  readonly wet: boolean;
  readonly windy: boolean;
}

/** What the saw goes by: concrete under warmer air sets and shrinks by that. */
export const warmest = ({ concrete, air }: DayConditions): Temperature =>
  air ? greaterOf(concrete, air) : concrete;

/** What the concrete does, each time after it is placed. */
export interface DaySet {
  readonly set: DayRange;
  readonly opens: DayRange;
  readonly closes: DayRange;
}

export const CASES = ['earliest', 'likely', 'latest'] as const;
export type Case = (typeof CASES)[number];

/** The same for each of the three cases. */
export const eachCase = (of: (name: Case) => Time): DayRange => ({
  earliest: of('earliest'),
  likely: of('likely'),
  latest: of('latest'),
});

const SHARES: Readonly<Record<Case, () => Ratio>> = {
  earliest: constant(() => ratio('50%')),
  likely: constant(() => ratio('60%')),
  latest: constant(() => ratio('70%')),
};
/** Nothing is sooner over, however old the concrete comes. */
const SOONEST = constant(() => time('5 min'));
const TENTH = constant(() => ratio('10%'));
const WHOLE = constant(() => ratio('100%'));
/** How deep a boot sinks in at most when finishing begins. */
export const FOOTPRINT = /*#__PURE__*/ paired('length', '1/4 in', '6 mm');
const TROWELED = constant(() => ratio('130%'));

/** Temperatures at which the rule of set times says something. */
function served(t: Temperature, { system }: Pad): Temperature {
  return lesserOf(greaterOf(t, SET_LEAST.as(system)), SET_MOST.as(system));
}

/** What the rule has at 70 degF, and the temperature it is taken to. */
function byRule(name: Case, { concrete, air }: DayConditions, pad: Pad): readonly [Time, Temperature] {
  const a = air ? served(air, pad) : concrete;
  if (name === 'earliest') return [SET_FROM(), greaterOf(concrete, a)];
  if (name === 'latest') return [SET_TO(), lesserOf(concrete, a)];
  const half = above(concrete, a).over(wholeNumber(2));
  return [middleOf({ from: SET_FROM(), to: SET_TO() }), raised(concrete, half)];
}

const WORDS: Readonly<Record<Case, string>> = {
  earliest: 'at the earliest',
  likely: 'most likely',
  latest: 'at the latest',
};

/** After placing, with its age taken off. */
function setOf(name: Case, conditions: DayConditions, pad: Pad): Time {
  const { age: a } = conditions;
  const s = mixedOf(name, conditions, pad);
  if (a.sign() === 0) return s;
  const m = SOONEST();
  const left = greaterOf(s.minus(a), m);
  return pad.step(`initial set after placing, ${WORDS[name]}`, 'i = max(s − a, m)', { s, a, m }, left);
}

/** After mixing. */
function mixedOf(name: Case, conditions: DayConditions, pad: Pad): Time {
  const { measured, slower } = conditions;
  const what = `initial set ${WORDS[name]}`;
  if (measured) {
    const { from: a, to: b } = measured;
    const own = { earliest: a, likely: middleOf(measured), latest: b }[name].in('min');
    return slower ? own.times(slower) : own;
  }
  const [f, T] = byRule(name, conditions, pad);
  const k = factorAt(T);
  return pad.step(what, 'i = f × k', { f, k }, f.times(k).in('min'));
}

/** How concrete that was placed at one moment sets, opens and closes. */
export function daySet(
  conditions: DayConditions,
  finish: DayFinish,
  sheen: Time | undefined,
  pad: Pad,
): DaySet {
  const { wet, windy } = conditions;
  const share = (name: Case): Ratio => (wet ? SHARES[name]().plus(TENTH()) : SHARES[name]());
  const last = finish === 'hard-trowel' ? TROWELED() : WHOLE();
  const until = windy ? last.minus(TENTH()) : last;
  const set = eachCase((name) => {
    const i = setOf(name, conditions, pad);
    // What bleeds longer than the rule has it sets later too.
    return sheen ? greaterOf(i, sheen.over(share('latest'))) : i;
  });
  const opens = eachCase((name) => {
    const [u, i] = [share(name), set[name]];
    const what = `surface opens ${WORDS[name]}`;
    if (!sheen) return pad.step(what, 'o = u × i', { u, i }, i.times(u));
    return pad.step(what, 'o = max(u × i, s)', { u, i, s: sheen }, greaterOf(i.times(u), sheen));
  });
  const closes = eachCase((name) => {
    const i = set[name];
    return pad.step(`surface closes ${WORDS[name]}`, 'c = v × i', { v: until, i }, i.times(until));
  });
  return { set, opens, closes };
}

/** Concrete that may set before it is placed has no day to be planned. */
export function checkAge(conditions: DayConditions, { system }: Pad): void {
  const set = mixedOf('earliest', conditions, new Pad(system));
  if (!conditions.age.lessThan(set)) refuse('age', doesNotFit('age', 'initialSet'));
}

/** The shares are what crews find, and no standard. */
export function assumeShares(finish: DayFinish, pad: Pad): void {
  pad.assume({
    name: 'surface',
    value:
      finish === 'hard-trowel'
        ? 'opens at 50% to 70% of initial set, closes at 130%'
        : 'opens at 50% to 70% of initial set, closes at initial set',
    because: say`what crews find; sources tell a footprint of ${{ depth: FOOTPRINT }} and no hours`,
    override: 'Give initialSet as it was measured on this mix, and sheenAt as it was seen',
    source: COMMON_PRACTICE,
  });
}

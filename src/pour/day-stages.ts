/**
 * The day stage by stage: what begins when, and who waits for whom.
 *
 * Concrete is placed, struck off and bull-floated as one, no faster than the slowest of them: `P = max(p, a, g)`. What
 * was placed first opens first. From then on `F` finishers work along in the order of placing; all of it takes them
 * `W = (A ÷ r + E ÷ e) ÷ F`. They end at `max(b + W, P + o)`, since the last that was placed opens last, and are in
 * time where that is not after `P + c`: `F = ceil(W1 ÷ (P + c − o))` keep up. Curing, sawing and leaving follow.
 */
import { greaterOf, lesserOf } from '../quantity/greater';
import { constant, time } from '../quantity/make';
import { paired } from '../quantity/paired';
import type { Quantity } from '../quantity/quantity';
import { wholeNumber } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { COMMON_PRACTICE } from '../reckoning/source';
import { CASES, type Case, type DayFinish, type DayRange, type DaySet, eachCase } from './day-set';
import { middleOf } from './saw-clock';
import { type Hours, type Saw, startByWeather, type Weather } from './saw-hours';

type Time = Quantity<'time'>;
type Count = Quantity<'count'>;
type Temperature = Quantity<'temperature'>;

/** What is done of an area in a time. */
export interface AreaPace {
  readonly area: Quantity<'area'>;
  readonly in: Time;
}

/** What is done of a length in a time. */
export interface LengthPace {
  readonly length: Quantity<'length'>;
  readonly in: Time;
}

/** The work of the day, each time since the first concrete is placed. */
export interface DayWork {
  readonly area: Quantity<'area'>;
  /** What placing takes by itself. */
  readonly placing: Time;
  readonly strikeOff: AreaPace | undefined;
  readonly bullFloat: AreaPace | undefined;
  readonly edges: Quantity<'length'> | undefined;
  readonly edgeRate: LengthPace | undefined;
  readonly finish: DayFinish;
  readonly finishRate: AreaPace;
  readonly finishers: Count;
  readonly finishAt: Time | undefined;
  readonly curing: Time;
  readonly washAfter: Hours | undefined;
  readonly saw: Saw | undefined;
  readonly weather: Weather | undefined;
  readonly cutting: Time | undefined;
}

/** One part of the day's work. */
export type DayStageName =
  | 'place'
  | 'strike-off'
  | 'bull-float'
  | 'wait'
  | 'edge'
  | 'finish'
  | 'cure'
  | 'saw'
  | 'leave'
  | 'wash';

/** When one part of the work begins and ends. */
export interface Stretch {
  readonly stage: DayStageName;
  readonly begins: DayRange;
  readonly ends: DayRange;
}

/** What is worked out of a day. */
export interface Day {
  readonly placingTime: Time;
  readonly finishingTime: Time;
  readonly byOne: Time;
  readonly finishers: Count;
  readonly begins: DayRange;
  readonly ends: DayRange;
  /** The same, begun as soon as the surface opens. */
  readonly soonest: DayRange;
  readonly concrete: DaySet;
  readonly needed: Count;
  /** Whether these finishers keep up, by case. */
  readonly late: Readonly<Record<Case, boolean>>;
  /** Whether the planned beginning comes after what was placed first has closed, by case. */
  readonly closed: Readonly<Record<Case, boolean>>;
  /** From opening to close at one place, the shortest of the cases. */
  readonly window: Time;
  readonly stages: readonly Stretch[];
  readonly leaves: DayRange;
}

const NONE = constant(() => time('0 min'));
const ONE = constant(() => wholeNumber(1));
const HOT = /*#__PURE__*/ paired('temperature', '80 degF', '27 degC');
const COLD = /*#__PURE__*/ paired('temperature', '60 degF', '15 degC');

const same = (t: Time): DayRange => ({ earliest: t, likely: t, latest: t });
const START = (): DayRange => same(NONE());

/** Placing goes no faster than what follows right behind it. */
function placingOf({ area: A, placing: p, strikeOff, bullFloat }: DayWork, pad: Pad): Time {
  const takes = (what: string, pace: AreaPace | undefined): Time | undefined =>
    pace &&
    pad.step(
      what,
      'k = t × (A ÷ a)',
      { t: pace.in, A, a: pace.area },
      pace.in.times(A.over(pace.area)).in('min'),
    );
  const a = takes('striking off', strikeOff);
  const g = takes('bull-floating', bullFloat);
  if (!a && !g) return p;
  const values = { p, ...(a ? { a } : {}), ...(g ? { g } : {}) };
  const P = [a, g].reduce((most: Time, t) => (t ? greaterOf(most, t) : most), p);
  return pad.step(
    'placing, strike-off and bull float',
    `P = max(${Object.keys(values).join(', ')})`,
    values,
    P,
  );
}

/** What the finish of the whole slab takes one finisher. */
function byOneOf({ area: A, finishRate, edges: L, edgeRate }: DayWork, pad: Pad): { w: Time; e: Time } {
  const f = pad.step(
    'the finish by one finisher',
    'f = t × (A ÷ a)',
    { t: finishRate.in, A, a: finishRate.area },
    finishRate.in.times(A.over(finishRate.area)).in('min'),
  );
  if (!L || !edgeRate) return { w: f, e: NONE() };
  const e = pad.step(
    'the edges by one finisher',
    'e = t × (L ÷ l)',
    { t: edgeRate.in, L, l: edgeRate.length },
    edgeRate.in.times(L.over(edgeRate.length)).in('min'),
  );
  return { w: pad.step('both by one finisher', 'w = f + e', { f, e }, f.plus(e)), e };
}

/** How many finishers keep up in every case. */
function neededFor(byOne: Time, P: Time, { opens, closes }: DaySet, pad: Pad): Count {
  const open = CASES.map((name) => P.plus(closes[name]).minus(opens[name]));
  const tightest = open.reduce((a, b) => lesserOf(a, b));
  const at = CASES[open.indexOf(tightest)] as Case;
  const [c, o] = [closes[at], opens[at]];
  return pad.step(
    'finishers that keep up',
    'N = ceil(w ÷ (P + c − o))',
    { w: byOne, P, c, o },
    wholeNumber(Math.round(byOne.over(tightest).upTo(ONE().over(ONE())).toNumber(':1'))),
  );
}

/** As the crew would call it; the sources of the hours of sawing name no degrees. */
function weatherOf({ weather }: DayWork, T: Temperature, pad: Pad): Weather {
  if (weather) return weather;
  const cool = COLD.undercutBy(T) ? 'cold' : 'mild';
  const found = HOT.reachedBy(T) ? 'hot' : cool;
  pad.assume({
    name: 'weather',
    value: found,
    because:
      'by the concrete, or the air where that is warmer; the sources of the hours of sawing name no degrees',
    override: 'Give weather',
    source: COMMON_PRACTICE,
  });
  return found;
}

/** Sawing begins with what was placed first: after placing, or behind the finish for an early-entry saw. */
function sawOf(work: DayWork, P: Time, ready: DayRange, T: Temperature, pad: Pad): Stretch | undefined {
  const { saw, cutting } = work;
  if (!saw) return undefined;
  const hours = startByWeather(saw, weatherOf(work, T, pad), pad);
  const open = { earliest: hours.from, likely: middleOf(hours), latest: hours.to };
  const begins = eachCase((name) => {
    const after = open[name].in('min');
    return saw === 'conventional' ? greaterOf(after, ready[name]) : ready[name].plus(after);
  });
  const takes = cutting ? greaterOf(cutting.in('min'), P) : P;
  return { stage: 'saw', begins, ends: eachCase((name) => begins[name].plus(takes)) };
}

/** What stands between placing and the finish, and the finish with its edges. */
function finishStages(
  day: Pick<Day, 'begins' | 'ends' | 'concrete'>,
  P: Time,
  edging: Time | undefined,
): Stretch[] {
  const { begins, ends, concrete } = day;
  const wait = { begins: eachCase((name) => lesserOf(P, begins[name])), ends: begins };
  const edged = eachCase((name) =>
    greaterOf(begins[name].plus(edging ?? NONE()), P.plus(concrete.opens[name])),
  );
  return [
    { stage: 'wait', ...wait },
    ...(edging ? [{ stage: 'edge', begins, ends: edged } as const] : []),
    { stage: 'finish', begins, ends },
  ];
}

function afterFinish(work: DayWork, P: Time, ends: DayRange, T: Temperature, pad: Pad): Stretch[] {
  const { curing, washAfter: w } = work;
  const cured = eachCase((name) => ends[name].plus(curing));
  const saw = sawOf(work, P, cured, T, pad);
  const gone = saw ? eachCase((name) => greaterOf(cured[name], saw.ends[name])) : cured;
  const by = (t: Time): DayRange => eachCase((name) => ends[name].plus(t.in('min')));
  return [
    { stage: 'cure', begins: ends, ends: cured },
    ...(saw ? [saw] : []),
    { stage: 'leave', begins: gone, ends: gone },
    ...(w ? [{ stage: 'wash', begins: by(w.from), ends: by(w.to) } as const] : []),
  ];
}

/** Work out a day. */
export function dayOf(work: DayWork, concrete: DaySet, T: Temperature, pad: Pad): Day {
  const P = placingOf(work, pad);
  const { finishers: F, finishAt } = work;
  const { w, e } = byOneOf(work, pad);
  const W = pad.step('the finish by all finishers', 'W = w ÷ F', { w, F }, w.over(F));
  const { opens, closes } = concrete;
  const needed = neededFor(w, P, concrete, pad);
  const begins = finishAt ? eachCase((name) => greaterOf(opens[name], finishAt)) : opens;
  const endOf = (b: Time, name: Case): Time => greaterOf(b.plus(W), P.plus(opens[name]));
  const ends = eachCase((name) => {
    const [b, o] = [begins[name], opens[name]];
    return pad.step(`the finish is done, ${name}`, 'e = max(b + W, P + o)', { b, W, P, o }, endOf(b, name));
  });
  const is = (of: (name: Case) => boolean): Readonly<Record<Case, boolean>> => ({
    earliest: of('earliest'),
    likely: of('likely'),
    latest: of('latest'),
  });
  const after = afterFinish(work, P, ends, T, pad);
  const edging = work.edges && work.edgeRate ? e.over(F) : undefined;
  return {
    placingTime: P,
    finishingTime: W,
    byOne: w,
    finishers: F,
    begins,
    ends,
    soonest: eachCase((name) => endOf(opens[name], name)),
    concrete,
    needed,
    late: is((name) => ends[name].greaterThan(P.plus(closes[name]))),
    closed: is((name) => begins[name].greaterThan(closes[name])),
    window: CASES.map((name) => closes[name].minus(opens[name])).reduce((a, b) => lesserOf(a, b)),
    stages: [
      { stage: 'place', begins: START(), ends: same(P) },
      { stage: 'strike-off', begins: START(), ends: same(P) },
      { stage: 'bull-float', begins: START(), ends: same(P) },
      ...finishStages({ begins, ends, concrete }, P, edging),
      ...after,
    ],
    leaves: after.find(({ stage }) => stage === 'leave')?.ends ?? ends,
  };
}

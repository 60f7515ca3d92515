/**
 * When contraction joints can be sawn: after the edges hold and before the slab cracks by itself.
 *
 * Conventional saws: 4 to 12 hours after placing, by temperature, as the American Concrete Institute answers
 * from ACI 302.1R; early-entry saws about 1 hour in hot weather to about 4 hours in cold, from ACI 224.4R.
 * The sources tie no degrees to these hours: that hot weather is the earlier half of a range and cold
 * weather the later half is this library's own reading. Other sources give other ranges, and all are shown.
 *
 * The latest: 12 hours for a conventional saw, as the same answer has it; in cold weather the 18 hours at
 * which CSA A23.1-94 and the Portland Cement Association, as quoted, end the time of most cracking; 6 hours
 * for an early-entry saw, from ACI 325.12R.
 *
 * Where the concrete itself tells when it is ready, by a measured set or by maturity, that replaces the
 * earlier end.
 */
import * as faults from '../quantity/faults';
import { constant, time } from '../quantity/make';
import type { Quantity, QuantityInput } from '../quantity/quantity';
import { type Calculation, define, refuse } from '../reckoning/calculation';
import * as cautions from '../reckoning/cautions';
import { choice, fields, maybe, quantity, wholeNumber } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import {
  ACI_SAW_TIMES,
  COMMON_PRACTICE,
  CSA_CONTROL_JOINTS,
  EARLY_ENTRY_DEPTH,
  ELDRIDGE_CODE,
  SAW_TIMES_ANSWER,
  type Source,
} from '../reckoning/source';

/** When the concrete itself is ready to be sawn, told by something better than a range. */
export interface ReadyInput {
  /** What tells it. */
  readonly by: 'measured set' | 'maturity';
  /** After placing. */
  readonly after: QuantityInput<'time'>;
  /** How far off that may be, either way. */
  readonly within: QuantityInput<'time'>;
}

/** Input of {@link sawWindow}. */
export interface SawWindowInput {
  /** Which saw cuts. */
  readonly saw: 'conventional' | 'early-entry';
  /** As the crew would call it; no published source ties degrees to it. */
  readonly weather?: 'hot' | 'mild' | 'cold';
  /** When the concrete itself tells that it is ready; goes in place of the published start. */
  readonly ready?: ReadyInput;
  /** Time of day when the last concrete is placed, from midnight: `14 h` for two in the afternoon. */
  readonly placedAt?: QuantityInput<'time'>;
  /** When work begins, from midnight; by default 7 h. */
  readonly workFrom?: QuantityInput<'time'>;
  /** When work ends, from midnight; by default 18 h. */
  readonly workTo?: QuantityInput<'time'>;
  /** How long the cutting takes, for example from `jointLayout`. */
  readonly cuttingTime?: QuantityInput<'time'>;
}

/** A stretch of time after placing. */
export interface Hours {
  /** Where the stretch begins. */
  readonly from: Quantity<'time'>;
  /** Where it ends. */
  readonly to: Quantity<'time'>;
}

/** What one source gives. */
export interface PublishedHours extends Hours {
  /** Title of the source. */
  readonly source: string;
  /** Which saw the hours are for. */
  readonly saw: 'conventional' | 'early-entry' | 'any';
  /** What the hours are counted from. */
  readonly after: 'placing' | 'finishing';
}

/** A time by the clock. */
export interface ClockTime {
  /** 0 on the day of placing, 1 on the next. */
  readonly day: Quantity<'count'>;
  /** From midnight of that day. */
  readonly time: Quantity<'time'>;
}

/** The window by the clock. */
export interface ClockWindow {
  /** Earliest that sawing can start. */
  readonly startFrom: ClockTime;
  /** When the range of the start ends. */
  readonly startTo: ClockTime;
  /** When sawing should be finished. */
  readonly finishBy: ClockTime;
  /** True when the window closes outside working hours. */
  readonly closesOvernight: boolean;
  /** Working time between the earliest start and the close. */
  readonly workable: Quantity<'time'>;
}

/** Figures of {@link sawWindow}. Hours are counted from placing. */
export interface SawWindowFigures {
  /** Sawing can start somewhere in here; a trial cut tells. */
  readonly start: Hours;
  /** Sawing should be finished by then. */
  readonly finishBy: Quantity<'time'>;
  /** How uncertain the start is: the width of its range. */
  readonly uncertainty: Quantity<'time'>;
  /** What the start is taken from. */
  readonly startedBy: 'published range' | 'measured set' | 'maturity';
  /** What each source gives, those that disagree included. */
  readonly published: readonly PublishedHours[];
  /** The window by the clock, where `placedAt` is given. */
  readonly clock?: ClockWindow;
}

type Time = Quantity<'time'>;

interface Parsed {
  readonly saw: 'conventional' | 'early-entry';
  readonly weather: 'hot' | 'mild' | 'cold' | undefined;
  readonly ready: { by: 'measured set' | 'maturity'; after: Time; within: Time } | undefined;
  readonly placedAt: Time | undefined;
  readonly workFrom: Time | undefined;
  readonly workTo: Time | undefined;
  readonly cuttingTime: Time | undefined;
}

const hours = (n: string): Time => time(`${n} h`);

interface Given {
  readonly source: Source;
  readonly saw: PublishedHours['saw'];
  readonly after: PublishedHours['after'];
  readonly from: string;
  readonly to: string;
}

const GIVEN: readonly Given[] = [
  { source: ACI_SAW_TIMES, saw: 'conventional', after: 'placing', from: '4', to: '12' },
  { source: CSA_CONTROL_JOINTS, saw: 'any', after: 'placing', from: '6', to: '18' },
  { source: SAW_TIMES_ANSWER, saw: 'conventional', after: 'finishing', from: '4', to: '72' },
  { source: ELDRIDGE_CODE, saw: 'any', after: 'placing', from: '0', to: '24' },
  { source: ACI_SAW_TIMES, saw: 'early-entry', after: 'placing', from: '1', to: '4' },
  { source: ACI_SAW_TIMES, saw: 'early-entry', after: 'placing', from: '2', to: '6' },
  { source: EARLY_ENTRY_DEPTH, saw: 'early-entry', after: 'finishing', from: '0', to: '2' },
];

const published = constant(() =>
  GIVEN.map(
    ({ source, saw, after, from, to }): PublishedHours => ({
      source: source.title,
      saw,
      after,
      from: hours(from),
      to: hours(to),
    }),
  ),
);

const START = { conventional: ['4', '12'], 'early-entry': ['1', '4'] } as const;
const DAY = constant(() => hours('24'));
const TWO = constant(() => wholeNumber(2));
const WORK_FROM = constant(() => hours('7'));
const WORK_TO = constant(() => hours('18'));

function startOf({ saw, weather, ready }: Parsed, pad: Pad): Hours {
  if (ready) {
    const [r, w] = [ready.after.in('h'), ready.within.in('h')];
    if (w.greaterThan(r)) refuse('ready.within', faults.doesNotFit('within', 'after'));
    return {
      from: pad.step('earliest start', 's = r − w', { r, w }, r.minus(w)),
      to: pad.step('latest that it may be ready', 'S = r + w', { r, w }, r.plus(w)),
    };
  }
  const [from, to] = START[saw].map(hours) as [Time, Time];
  if (!weather || weather === 'mild') {
    if (!weather) {
      pad.assume({
        name: 'weather',
        value: 'not known',
        because: 'the whole published range is used',
        override: 'Give weather, or ready where the set is measured',
        source: ACI_SAW_TIMES,
      });
    }
    return { from, to };
  }
  pad.assume({
    name: 'halves',
    value: weather === 'hot' ? 'the earlier half' : 'the later half',
    because: 'the source says by temperature and names no degrees; the halves are our own reading',
    override: 'Leave weather out for the whole range',
    source: COMMON_PRACTICE,
  });
  const middle = from.plus(to).over(TWO());
  pad.step('middle of the published range', 'm = (a + b) ÷ 2', { a: from, b: to }, middle);
  return weather === 'hot' ? { from, to: middle } : { from: middle, to };
}

function finishBy({ saw, weather }: Parsed, start: Hours): Time {
  const latest = saw === 'early-entry' ? hours('6') : hours(weather === 'cold' ? '18' : '12');
  return latest.lessThan(start.to) ? start.to : latest;
}

function clockTime(placedAt: Time, after: Time): ClockTime {
  const whole = placedAt.plus(after);
  const midnight = whole.downTo(DAY());
  return {
    day: wholeNumber(Math.round(midnight.over(DAY()).toNumber(':1'))),
    time: whole.minus(midnight),
  };
}

const later = (a: Time, b: Time): Time => (a.lessThan(b) ? b : a);
const sooner = (a: Time, b: Time): Time => (b.lessThan(a) ? b : a);

/** Working time between two times counted from midnight of the day of placing. */
function workedBetween(from: Time, to: Time, [start, end]: readonly [Time, Time]): Time {
  let sum = hours('0');
  let midnight = hours('0');
  while (midnight.lessThan(to)) {
    const overlap = sooner(to, midnight.plus(end)).minus(later(from, midnight.plus(start)));
    if (overlap.sign() > 0) sum = sum.plus(overlap);
    midnight = midnight.plus(DAY());
  }
  return sum;
}

function workHours(input: Parsed, pad: Pad): readonly [Time, Time] {
  const [from, to] = [input.workFrom ?? WORK_FROM(), input.workTo ?? WORK_TO()];
  if (!from.lessThan(to)) refuse('workFrom', faults.doesNotFit('workFrom', 'workTo'));
  if (to.greaterThan(DAY())) refuse('workTo', faults.doesNotFit('workTo', '24 h'));
  if (!input.workFrom || !input.workTo) {
    pad.assume({
      name: 'workHours',
      value: `${from.format()} to ${to.format()}`,
      because: 'a usual working day',
      override: 'Give workFrom and workTo',
      source: COMMON_PRACTICE,
    });
  }
  return [from, to];
}

function clockOf(input: Parsed, p: Time, start: Hours, f: Time, pad: Pad): ClockWindow {
  if (!p.lessThan(DAY())) refuse('placedAt', faults.doesNotFit('placedAt', '24 h'));
  const work = workHours(input, pad);
  const close = pad.step('close of the window, from midnight', 'c = p + f', { p, f }, p.plus(f));
  const workable = workedBetween(p.plus(start.from), close, work);
  const finish = clockTime(p, f);
  const closesOvernight = finish.time.lessThan(work[0]) || finish.time.greaterThan(work[1]);
  if (closesOvernight) pad.caution(cautions.sawAtNight(work[1], finish.time));
  return {
    startFrom: clockTime(p, start.from),
    startTo: clockTime(p, start.to),
    finishBy: finish,
    closesOvernight,
    workable,
  };
}

function heed(
  { cuttingTime }: Parsed,
  start: Hours,
  f: Time,
  clock: ClockWindow | undefined,
  pad: Pad,
): void {
  if (cuttingTime) {
    const open = clock ? clock.workable : f.minus(start.from);
    if (cuttingTime.greaterThan(open)) pad.caution(cautions.sawTooSlow(open, cuttingTime));
  }
  pad.caution(cautions.rawEdges);
  pad.caution(cautions.silica);
}

function reckon(input: Parsed, pad: Pad): SawWindowFigures {
  const start = startOf(input, pad);
  const f = finishBy(input, start);
  const uncertainty = pad.step(
    'uncertainty of the start',
    'u = S − s',
    { S: start.to, s: start.from },
    start.to.minus(start.from),
  );
  const clock = input.placedAt && clockOf(input, input.placedAt, start, f, pad);
  heed(input, start, f, clock, pad);
  return {
    start,
    finishBy: f,
    uncertainty,
    startedBy: input.ready?.by ?? 'published range',
    published: published().filter(({ saw }) => saw === 'any' || saw === input.saw),
    ...(clock ? { clock } : {}),
  };
}

/**
 * When contraction joints can be sawn, as a range with its uncertainty.
 *
 * The ranges are guides; the concrete decides. Make a trial cut.
 *
 * @param input - the saw; weather, measured set or maturity, time of placing, working hours and cutting
 * time where they are known
 * @returns the range of the start, the close, what each source gives, and the window by the clock
 * @throws {InputError} `does-not-fit` for a time of day beyond 24 h or working hours that end before they
 * begin; times that cannot be read
 * @source American Concrete Institute, frequently asked question 915; others as listed in `published`
 * @example
 * ```ts
 * import { sawWindow } from 'flatwork-reckoner';
 *
 * const { figures, cautions } = sawWindow({ saw: 'conventional', weather: 'hot', placedAt: '10 h' });
 * figures.start.from.format(); // '4 h'
 * figures.finishBy.format(); // '12 h'
 * figures.clock?.closesOvernight; // true
 * cautions.map(({ code }) => code).join(); // 'saw-at-night,try-a-cut,silica-dust'
 * ```
 */
export const sawWindow: Calculation<SawWindowInput, SawWindowFigures> = /*#__PURE__*/ define({
  id: 'saw-window',
  title: 'When to saw contraction joints',
  version: 1,
  sources: [ACI_SAW_TIMES, CSA_CONTROL_JOINTS, SAW_TIMES_ANSWER, ELDRIDGE_CODE, EARLY_ENTRY_DEPTH],
  input: () =>
    fields({
      saw: choice('saw', ['conventional', 'early-entry'] as const),
      weather: maybe(choice('weather', ['hot', 'mild', 'cold'] as const)),
      ready: maybe(
        fields({
          by: choice('by', ['measured set', 'maturity'] as const),
          after: quantity('time', 'after'),
          within: quantity('time', 'within', 'not-negative'),
        }),
      ),
      placedAt: maybe(quantity('time', 'placedAt', 'not-negative')),
      workFrom: maybe(quantity('time', 'workFrom', 'not-negative')),
      workTo: maybe(quantity('time', 'workTo')),
      cuttingTime: maybe(quantity('time', 'cuttingTime')),
    }),
  reckon,
});

/**
 * When contraction joints can be sawn: after the edges hold and before the slab cracks by itself.
 *
 * The hours come from published ranges by saw and weather, as `saw-hours.ts` says, or from the concrete
 * itself where a measured set or its maturity tells when it is ready. A conventional saw counts from placing,
 * an early-entry saw from the end of finishing. Where the time of day is known, the cutting is judged against
 * the working hours: whether start and cutting time together fit before the cuts are due.
 */

import type { SawRateInput } from '../joints/layout-input';
import { SAW_RATE_LENGTH, SAW_RATE_TIME } from '../joints/ordinary';
import { UFGS_SAWING } from '../joints/sources';
import * as faults from '../quantity/faults';
import { constant, time } from '../quantity/make';
import type { Quantity, QuantityInput } from '../quantity/quantity';
import { type Calculation, define, refuse } from '../reckoning/calculation';
import { silica } from '../reckoning/cautions';
import { choice, fields, maybe, quantity } from '../reckoning/fields';
import { isUnusual, type Ordinary, unusual } from '../reckoning/ordinary';
import type { Pad } from '../reckoning/pad';
import {
  ACI_SAW_TIMES,
  COMMON_PRACTICE,
  CSA_CONTROL_JOINTS,
  EARLY_ENTRY_DEPTH,
  SAW_TIMES_ANSWER,
} from '../reckoning/source';
import { all, allOrNone, needs, notBoth, says, where } from '../reckoning/together';
import { say } from '../reckoning/words';
import { bounded } from './bounded';
import * as cautions from './cautions';
import { clock as clockField, clockText } from './clock';
import { CUTTING_TIME, READY_AFTER, READY_WITHIN, SAW_LENGTH } from './ordinary';
import { type ClockWindow, clockWindow, type DueTimes, judgeByClock, judgeOpen } from './saw-clock';
import {
  doneByWeather,
  type Hours,
  type PublishedHours,
  publishedFor,
  type Saw,
  startByWeather,
  usualFinishing,
  type Weather,
} from './saw-hours';
import { EARLY_FROM_FINISHING, ELDRIDGE_CODE } from './sources';

/** When the concrete itself is ready to be sawn, told by something better than a range. */
export interface ReadyInput {
  /** What tells it. */
  readonly by: 'measured-set' | 'maturity';
  /** After placing. */
  readonly after: QuantityInput<'time'>;
  /** How far off that may be, either way. */
  readonly within: QuantityInput<'time'>;
}

/** Input of {@link sawWindow}. */
export interface SawWindowInput {
  /** Which saw cuts. */
  readonly saw: 'conventional' | 'early-entry';
  /** `wet` where water cools the blade and binds the dust. */
  readonly sawing?: 'wet' | 'dry';
  /** As the crew would call it; no published source ties degrees to it. */
  readonly weather?: 'hot' | 'mild' | 'cold';
  /** When the concrete itself tells that it is ready; goes in place of the published start. */
  readonly ready?: ReadyInput;
  /**
   * Time of day when the last concrete is placed: `9:00`, `2 pm`, or `14 h` after midnight. What was placed
   * first is due as much earlier as it was placed earlier.
   */
  readonly placedAt?: QuantityInput<'time'>;
  /**
   * Time of day when the finishing ends; before `placedAt` it is on the next day. The hours of an early-entry
   * saw run from here; by default 2 h after placing in hot weather, 4 h in cold, else 3 h.
   */
  readonly finishedAt?: QuantityInput<'time'>;
  /** When work begins; by default 7:00. */
  readonly workFrom?: QuantityInput<'time'>;
  /** When work ends; by default 18:00. Before `workFrom` it is on the next day: a night shift. */
  readonly workTo?: QuantityInput<'time'>;
  /** How long the cutting takes, for example from `jointLayout`; or `sawLength` and `sawRate`. */
  readonly cuttingTime?: QuantityInput<'time'>;
  /** Length of the joints to be cut. */
  readonly sawLength?: QuantityInput<'length'>;
  /** How far all saws together get in a given time, cutting. */
  readonly sawRate?: SawRateInput;
}

/** Figures of {@link sawWindow}. */
export interface SawWindowFigures {
  /** What `start` and `finishBy` are counted from. */
  readonly countedFrom: 'placing' | 'finishing';
  /** When sawing can start: earliest and latest. */
  readonly start: Hours;
  /** When it must be done. */
  readonly finishBy: Quantity<'time'>;
  /** How far apart the earliest and the latest start are. */
  readonly uncertainty: Quantity<'time'>;
  /** What the start rests on. */
  readonly startedBy: 'published range' | 'measured-set' | 'maturity';
  /** How long the cutting takes, where it is given or its length and rate are. */
  readonly cuttingTime?: Quantity<'time'>;
  /** Whether the cutting fits; left out where neither the time of day nor the cutting says so. */
  readonly verdict?: 'fits' | 'fits if ready early' | 'outside working hours' | 'too slow';
  /** What each source gives, those that disagree included. */
  readonly published: readonly PublishedHours[];
  /** The window by the clock, where a time of day is given. */
  readonly clock?: ClockWindow;
}

type Time = Quantity<'time'>;
type Length = Quantity<'length'>;

interface Parsed {
  readonly saw: Saw;
  readonly sawing: 'wet' | 'dry' | undefined;
  readonly weather: Weather | undefined;
  readonly ready: { by: 'measured-set' | 'maturity'; after: Time; within: Time } | undefined;
  readonly placedAt: Time | undefined;
  readonly finishedAt: Time | undefined;
  readonly workFrom: Time | undefined;
  readonly workTo: Time | undefined;
  readonly cuttingTime: Time | undefined;
  readonly sawLength: Length | undefined;
  readonly sawRate: { readonly length: Length; readonly in: Time } | undefined;
}

const hours = (n: string): Time => time(`${n} h`);

const DAY = constant(() => hours('24'));
const WORK_FROM = constant(() => hours('7'));
const WORK_TO = constant(() => hours('18'));

const SHIFT: Ordinary = {
  of: 'a working day',
  example: '8 h',
  least: '3 h',
  most: '16 h',
  source: COMMON_PRACTICE,
};

const FINISHING: Ordinary = {
  of: 'the time from placing to the end of finishing',
  least: '20 min',
  most: '14 h',
  source: COMMON_PRACTICE,
};

function readyStart({ after, within }: NonNullable<Parsed['ready']>, pad: Pad): Hours {
  const [r, w] = [bounded('ready.after', after).in('h'), within.in('h')];
  if (w.greaterThan(r)) refuse('ready.within', faults.doesNotFit('within', 'after'));
  return {
    from: pad.step('earliest start', 's = r − w', { r, w }, r.minus(w)),
    to: pad.step('latest that it may be ready', 'S = r + w', { r, w }, r.plus(w)),
  };
}

function timeOfDay(path: 'placedAt' | 'finishedAt', t: Time): Time {
  return t.lessThan(DAY()) ? t : refuse(path, faults.doesNotFit(path, '24 h'));
}

/** How long finishing takes from placing on: by the clock, or as is usual. */
function finishingOf({ placedAt: p, finishedAt, weather }: Parsed, pad: Pad): Time {
  if (!p || !finishedAt) return usualFinishing(weather, pad);
  const q = timeOfDay('finishedAt', finishedAt);
  const e = q.lessThan(p) ? q.plus(DAY()) : q;
  const g = pad.step('finishing', 'g = e − p', { e, p }, e.minus(p));
  if (isUnusual(g, FINISHING))
    pad.caution(unusual('finishedAt', { value: g, ordinary: FINISHING }, pad.system));
  return g;
}

/** When the cuts are due, what that is counted from, and that moment by the clock. */
interface Window extends DueTimes {
  readonly countedFrom: 'placing' | 'finishing';
  readonly base: Time | undefined;
}

function afterPlacing(input: Parsed, pad: Pad): Window {
  const { saw, weather, ready, placedAt: base } = input;
  if (!base && input.finishedAt) refuse('placedAt', faults.missing('placedAt', '"9:00"'));
  const start = ready ? readyStart(ready, pad) : startByWeather(saw, weather, pad);
  const f = doneByWeather(saw, weather, pad);
  if (saw === 'conventional') return { countedFrom: 'placing', base, start, finishBy: f };
  // The set is measured from placing, the hours of the saw run from finishing.
  const g = finishingOf(input, pad);
  const finishBy = pad.step('cuts to be done by, from placing', 'F = g + f', { g, f }, g.plus(f));
  return { countedFrom: 'placing', base, start, finishBy };
}

function afterFinishing(input: Parsed, pad: Pad): Window {
  const { saw, weather, placedAt: p, finishedAt } = input;
  const start = startByWeather(saw, weather, pad);
  const finishBy = doneByWeather(saw, weather, pad);
  const due = { countedFrom: 'finishing', start, finishBy } as const;
  if (!p) return { ...due, base: finishedAt && timeOfDay('finishedAt', finishedAt) };
  const g = finishingOf(input, pad);
  return { ...due, base: pad.step('end of finishing, from midnight', 'e = p + g', { p, g }, p.plus(g)) };
}

/** Where the concrete is ready later than the weather lets expect, the cuts are due as soon as it is. */
function heedLateSet(due: Window, pad: Pad): Window {
  const { start, finishBy } = due;
  if (!start.to.greaterThan(finishBy)) return due;
  pad.caution(cautions.lateToSet(finishBy, start.to));
  const f = pad.step(
    'cuts to be done by, as the concrete sets',
    'F = max(f, S)',
    { f: finishBy, S: start.to },
    start.to,
  );
  return { ...due, finishBy: f };
}

function shiftOf(input: Parsed, pad: Pad): readonly [Time, Time] {
  const [from, to] = [input.workFrom ?? WORK_FROM(), input.workTo ?? WORK_TO()];
  if (from.compareTo(to) === 0) refuse('workTo', faults.doesNotFit('workFrom', 'workTo'));
  if (!input.workFrom || !input.workTo) {
    pad.assume({
      name: 'workHours',
      value: say`${{ from: clockText(from) }} to ${{ to: clockText(to) }}`,
      because: 'a usual working day',
      override: 'Give workFrom and workTo',
      source: COMMON_PRACTICE,
    });
  }
  const long = from.lessThan(to) ? to.minus(from) : to.plus(DAY()).minus(from);
  if (isUnusual(long, SHIFT)) pad.caution(unusual('workTo', { value: long, ordinary: SHIFT }, pad.system));
  return [from, to];
}

function cuttingOf({ cuttingTime, sawLength: L, sawRate }: Parsed, pad: Pad): Time | undefined {
  if (cuttingTime && (L || sawRate))
    refuse('cuttingTime', faults.giveOneOf(['cuttingTime', 'sawLength with sawRate']));
  if (cuttingTime) return bounded('cuttingTime', cuttingTime);
  if (!L && !sawRate) return undefined;
  if (!L) return refuse('sawLength', faults.missing('sawLength', ['"240 ft"', '"75 m"']));
  if (!sawRate)
    return refuse(
      'sawRate',
      faults.missing('sawRate', ['{ length: "300 ft", in: "1 h" }', '{ length: "90 m", in: "1 h" }']),
    );
  const { length: a, in: h } = sawRate;
  const k = pad.step('cutting time', 'k = h × (L ÷ a)', { h, L, a }, h.times(L.over(a)));
  if (isUnusual(k, CUTTING_TIME))
    pad.caution(unusual('sawRate', { value: k, ordinary: CUTTING_TIME }, pad.system));
  return bounded('sawRate', k);
}

function byClock(
  due: Window,
  base: Time,
  input: Parsed,
  cutting: Time | undefined,
  pad: Pad,
): Pick<SawWindowFigures, 'clock' | 'verdict'> {
  const shift = shiftOf(input, pad);
  const p = base;
  const since = (t: Time): Time => p.plus(t);
  const clock: DueTimes = {
    start: { from: since(due.start.from), to: since(due.start.to) },
    finishBy: pad.step(
      'close of the window, from midnight',
      'c = p + f',
      { p, f: due.finishBy },
      since(due.finishBy),
    ),
  };
  const verdict = judgeByClock(clock, shift, cutting, pad);
  return { clock: clockWindow(clock, shift, cutting), ...(verdict ? { verdict } : {}) };
}

function reckon(input: Parsed, pad: Pad): SawWindowFigures {
  if (input.placedAt) timeOfDay('placedAt', input.placedAt);
  const fromFinishing = input.saw === 'early-entry' && !input.ready;
  const window = heedLateSet((fromFinishing ? afterFinishing : afterPlacing)(input, pad), pad);
  const { start, finishBy, countedFrom, base } = window;
  const [S, s] = [start.to, start.from];
  const uncertainty = pad.step('uncertainty of the start', 'u = S − s', { S, s }, S.minus(s));
  const cutting = cuttingOf(input, pad);
  const open = !base && cutting ? { verdict: judgeOpen(window, cutting, pad) } : {};
  const judged = base ? byClock(window, base, input, cutting, pad) : open;
  pad.caution(cautions.tryACut);
  pad.caution(silica);
  if (input.sawing === 'wet') pad.caution(cautions.slurry);
  return {
    countedFrom,
    start,
    finishBy,
    uncertainty,
    startedBy: input.ready?.by ?? 'published range',
    ...(cutting ? { cuttingTime: cutting } : {}),
    ...judged,
    published: publishedFor(input.saw),
  };
}

/**
 * When contraction joints can be sawn, as a range with its uncertainty, and whether the cutting fits.
 *
 * The ranges are guides; the concrete decides. Make a trial cut.
 *
 * @param input - the saw; weather, measured set or maturity, times of placing and finishing, working hours,
 * and the cutting by its time or by length and rate, where they are known
 * @returns the range of the start, by when to be done, what each source gives, the window by the clock, and
 * a verdict on the cutting
 * @throws {InputError} `does-not-fit` for a time of day beyond 24 h, working hours that end as they begin, or
 * waiting and cutting beyond 30 days; `give-one-of` for a cutting time besides length and rate; `missing`;
 * times that cannot be read
 * @source American Concrete Institute, frequently asked question 915; others as listed in `published`
 * @example
 * ```ts
 * import { sawWindow } from 'flatwork-reckoner';
 *
 * const { figures, cautions } = sawWindow({
 *   saw: 'conventional',
 *   weather: 'hot',
 *   placedAt: '10:00',
 *   sawLength: '240 ft',
 *   sawRate: { length: '150 ft', in: '1 h' },
 * });
 * figures.start.from.format(); // '4 h'
 * figures.finishBy.format(); // '8 h'
 * figures.clock?.startBy?.time.format(); // '16.4 h'
 * figures.verdict; // 'fits'
 * cautions.filter(({ always }) => !always).length; // 0
 * ```
 */
export const sawWindow: Calculation<SawWindowInput, SawWindowFigures> = /*#__PURE__*/ define({
  id: 'saw-window',
  title: 'When to saw control (contraction) joints',
  version: 2,
  sources: [
    ACI_SAW_TIMES,
    CSA_CONTROL_JOINTS,
    SAW_TIMES_ANSWER,
    ELDRIDGE_CODE,
    EARLY_ENTRY_DEPTH,
    EARLY_FROM_FINISHING,
    UFGS_SAWING,
  ],
  input: () =>
    fields(
      {
        saw: choice('saw', ['conventional', 'early-entry'] as const),
        sawing: maybe(choice('sawing', ['wet', 'dry'] as const)),
        weather: maybe(choice('weather', ['hot', 'mild', 'cold'] as const)),
        ready: maybe(
          fields({
            by: choice('by', ['measured-set', 'maturity'] as const),
            after: quantity('time', 'after', 'positive', READY_AFTER),
            within: quantity('time', 'within', 'not-negative', READY_WITHIN),
          }),
        ),
        placedAt: maybe(clockField('placedAt')),
        finishedAt: maybe(clockField('finishedAt')),
        workFrom: maybe(clockField('workFrom')),
        workTo: maybe(clockField('workTo')),
        cuttingTime: maybe(quantity('time', 'cuttingTime', 'positive', CUTTING_TIME)),
        sawLength: maybe(quantity('length', 'sawLength', 'positive', SAW_LENGTH)),
        sawRate: maybe(
          fields({
            length: quantity('length', 'length', 'positive', SAW_RATE_LENGTH),
            in: quantity('time', 'in', 'positive', SAW_RATE_TIME),
          }),
        ),
      },
      all(
        allOrNone('sawLength', 'sawRate'),
        notBoth('cuttingTime', 'sawLength'),
        where(says('saw', 'conventional'), needs('finishedAt', 'placedAt')),
      ),
    ),
  reckon,
});

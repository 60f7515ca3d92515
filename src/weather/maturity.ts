/**
 * Maturity of concrete from the temperatures that were read in it, by both methods of ASTM C1074, and the strength
 * that a calibration gives for it.
 *
 * Temperature-time factor (Nurse and Saul): `M = Σ (Ta − T0) × Δt`, never less than nothing in any interval.
 * Equivalent age (Arrhenius): `te = Σ exp(−q × (1 ÷ Ta − 1 ÷ Ts)) × Δt`, temperatures above absolute zero. `Ta` is
 * the average of the readings at both ends of an interval.
 */

import { constant, time } from '../quantity/make';
import type { Quantity } from '../quantity/quantity';
import { type Calculation, define, refuse } from '../reckoning/calculation';
import { fields, list, maybe, quantity } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { needs, oneOf } from '../reckoning/together';
import * as cautions from './cautions';
import { above, FREEZING, raised } from './degrees';
import * as faults from './faults';
import {
  checkTimes,
  fromPlacing,
  GAP_DEFAULT,
  type Interval,
  intervalOf,
  type Method,
  methodOf,
  SHOWN,
  showInterval,
  sum,
  summed,
} from './maturity-index';
import type { MaturityInput, MaturityParsed, Reading } from './maturity-input';
import { ACTIVATION, CALIBRATED, CURING, DATUM, GAP, MATURITY, READING_TIME, STRENGTH } from './ordinary';
import { IOWA_MATURITY, MATURITY_DEFAULTS, MATURITY_PRACTICE } from './sources';
import {
  type Index,
  indexFor,
  pointsOf,
  strengthAt,
  type WantedStrength,
  whenReached,
} from './strength-curve';

/** Figures of {@link maturity}. */
export interface MaturityFigures {
  /** Temperature-time factor since placing. */
  readonly temperatureTime: Quantity<'temperature-time'>;
  /** Equivalent age since placing. */
  readonly equivalentAge: Quantity<'time'>;
  /** From placing to the last reading. */
  readonly span: Quantity<'time'>;
  /** The average temperature over that time. */
  readonly mean: Quantity<'temperature'>;
  /** The coldest reading. */
  readonly coldest: Quantity<'temperature'>;
  /** The longest time between readings. */
  readonly longestGap: Quantity<'time'>;
  /** Strength by the calibration; left out beyond its ends. */
  readonly strength?: Quantity<'pressure'>;
  /** When the strength that is waited for is there; left out where the calibration does not say. */
  readonly wanted?: WantedStrength;
}

type Time = Quantity<'time'>;

type TemperatureTime = Quantity<'temperature-time'>;

const MOST_READINGS = 1000;
const MOST_SPECIMENS = 30;

/** By then ordinary concrete has the 500 psi (3.5 MPa) that let it freeze once. */
const FREEZE_AGE = constant(() => time('24 h'));

/** Frozen while it was too young to stand it. */
function heedFrost(intervals: readonly Interval[], pad: Pad): void {
  const f = FREEZING.as(pad.system);
  let age: Time | undefined;
  for (const { from, to, ages } of intervals) {
    const coldest = from.temperature.lessThan(to.temperature) ? from.temperature : to.temperature;
    const young = age === undefined || age.lessThan(FREEZE_AGE());
    if (young && coldest.lessThan(f)) {
      pad.caution(cautions.frozeYoung(f, coldest));
      return;
    }
    age = age ? age.plus(ages) : ages;
  }
}

function calibrated(
  input: MaturityParsed,
  [M, e]: readonly [TemperatureTime, Time],
  intervals: readonly Interval[],
  method: Method,
  pad: Pad,
): Pick<MaturityFigures, 'strength' | 'wanted'> {
  const points = pointsOf(input);
  if (!points) {
    if (input.wanted) refuse('calibration', faults.noCalibration());
    return {};
  }
  const index: Index = points[0]?.index.dimension === 'time' ? e : M;
  const strength = strengthAt(points, index, pad);
  const needed = input.wanted && indexFor(points, input.wanted, pad);
  const beyond = strength === undefined || (input.wanted !== undefined && needed === undefined);
  if (beyond) pad.caution(cautions.beyondCalibration);
  return {
    ...(strength ? { strength } : {}),
    ...(needed ? { wanted: whenReached(needed, intervals, method, pad) } : {}),
  };
}

function reckon(input: MaturityParsed, pad: Pad): MaturityFigures {
  if (!input.gap) {
    pad.assume({
      name: 'gap',
      value: GAP_DEFAULT(),
      because: 'between readings farther apart nobody knows how warm it was',
      override: 'Give gap, the longest time to be bridged',
      source: MATURITY_DEFAULTS,
    });
  }
  checkTimes(input, input.gap ?? GAP_DEFAULT());
  const history = fromPlacing(input, pad);
  const first = history[0] as Reading;
  const last = history.at(-1) as Reading;
  const method = methodOf(input, pad);
  const intervals = history.slice(1).map((to, i) => intervalOf(history[i] as Reading, to, method, pad));
  if (intervals.length < SHOWN) for (const one of intervals) showInterval(one, method, pad);
  const [S, s] = [last.at, first.at];
  const span = pad.step('time from placing to the last reading', 't = S − s', { S, s }, S.minus(s));
  const both = summed(intervals, span, pad);
  const f = FREEZING.as(pad.system);
  const mean = raised(f, sum(intervals.map(({ mean: m, t }) => above(f, m).times(t.over(span)))));
  heedFrost(intervals, pad);
  const found = calibrated(input, both, intervals, method, pad);
  pad.caution(cautions.maturityIsHeat);
  return {
    temperatureTime: both[0],
    equivalentAge: both[1],
    span,
    mean,
    coldest: history.reduce(
      (a, { temperature }) => (temperature.lessThan(a) ? temperature : a),
      first.temperature,
    ),
    longestGap: intervals.reduce((a, { t }) => (a.lessThan(t) ? t : a), (intervals[0] as Interval).t),
    ...found,
  };
}

/**
 * Maturity of concrete from the temperatures that were read in it, and the strength that a calibration gives for it.
 *
 * It tells of the heat that the concrete had, not of what was in the batch. Who strips or loads by it has the mix
 * calibrated and the strength checked, as the engineer says.
 *
 * @param input - readings in order of time; the longest gap, datum, activation and reference where they are known;
 * specimens of the mix, and the strength that is waited for
 * @returns temperature-time factor and equivalent age, the strength by the calibration, and when a wanted one is there
 * @throws {InputError} `out-of-order` for a history that runs backwards or stands still, and for a calibration that
 * does not grow; `gap-in-history`, also before the first of them; `does-not-fit` for `atPlacing` beside a reading at placing; `outside-range` for readings, datum or reference below 14 degF (-10 degC) or above 176 degF (80 degC), and for an
 * activation above 36000 degF (20000 degC);
 * `give-one-of` for specimens that are not all by their maturity or all by their age; `missing` for a wanted strength
 * without a calibration; quantities that cannot be read
 * @source ASTM C1074, as the Iowa Department of Transportation has it in its instructions for materials, 383
 * @example
 * ```ts
 * import { maturity } from 'flatwork-reckoner';
 *
 * const { figures } = maturity({
 *   history: [
 *     { at: '0 h', temperature: '20 degC' },
 *     { at: '12 h', temperature: '30 degC' },
 *     { at: '24 h', temperature: '26 degC' },
 *   ],
 *   gap: '12 h',
 * });
 * figures.temperatureTime.format(); // '876 degC-h'
 * figures.equivalentAge.format(); // '34.85 h'
 * figures.mean.format(); // '26.5 degC'
 * ```
 */
export const maturity: Calculation<MaturityInput, MaturityFigures> = /*#__PURE__*/ define({
  id: 'maturity',
  title: 'Maturity',
  version: 1,
  sources: [IOWA_MATURITY, MATURITY_PRACTICE, MATURITY_DEFAULTS],
  input: () =>
    fields(
      {
        history: list(
          fields({
            at: quantity('time', 'at', 'not-negative', READING_TIME),
            temperature: quantity('temperature', 'temperature', 'any', CURING),
          }),
          2,
          MOST_READINGS,
        ),
        atPlacing: maybe(quantity('temperature', 'atPlacing', 'any', CURING)),
        gap: maybe(quantity('time', 'gap', 'positive', GAP)),
        datum: maybe(quantity('temperature', 'datum', 'any', DATUM)),
        activation: maybe(quantity('temperature-difference', 'activation', 'positive', ACTIVATION)),
        reference: maybe(quantity('temperature', 'reference', 'any', CURING)),
        calibration: maybe(
          list(
            fields(
              {
                maturity: maybe(quantity('temperature-time', 'maturity', 'positive', MATURITY)),
                age: maybe(quantity('time', 'age', 'positive', CALIBRATED)),
                strength: quantity('pressure', 'strength', 'positive', STRENGTH),
              },
              oneOf(['maturity'], ['age']),
            ),
            2,
            MOST_SPECIMENS,
          ),
        ),
        wanted: maybe(quantity('pressure', 'wanted', 'positive', STRENGTH)),
      },
      needs('wanted', 'calibration'),
    ),
  reckon,
});

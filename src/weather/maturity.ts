/**
 * Maturity of concrete from the temperatures that were read in it, by both methods of ASTM C1074, and the strength
 * that a calibration gives for it.
 *
 * Temperature-time factor (Nurse and Saul): `M = Σ (Ta − T0) × Δt`, never less than nothing in any interval.
 * Equivalent age (Arrhenius): `te = Σ exp(−q × (1 ÷ Ta − 1 ÷ Ts)) × Δt`, temperatures above absolute zero. `Ta` is
 * the average of the readings at both ends of an interval.
 */
import { constant, ratio, time } from '../quantity/make';
import { paired } from '../quantity/paired';
import {
  canonicalValue,
  newQuantity,
  type Quantity,
  type QuantityInput,
  unitShown,
} from '../quantity/quantity';
import { type Calculation, define, refuse } from '../reckoning/calculation';
import { fields, list, maybe, quantity } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { COMMON_PRACTICE } from '../reckoning/source';
import { needs, oneOf } from '../reckoning/together';
import { say } from '../reckoning/words';
import { ageFactor } from './arrhenius';
import * as cautions from './cautions';
import { ABSOLUTE_ZERO, above, type Difference, FREEZING, raised, type Temperature } from './degrees';
import * as faults from './faults';
import { ACTIVATION, CALIBRATED, CURING, DATUM, GAP, MATURITY, READING_TIME, STRENGTH } from './ordinary';
import { IOWA_MATURITY, MATURITY_DEFAULTS, MATURITY_PRACTICE } from './sources';

/** One reading of the temperature in the concrete. */
export interface ReadingInput {
  /** How long after placing. */
  readonly at: QuantityInput<'time'>;
  /** In the concrete, where it is coldest. */
  readonly temperature: QuantityInput<'temperature'>;
}

/** A specimen of the same mix: its maturity when it was broken, and its strength. */
export interface CalibrationInput {
  /** Its temperature-time factor, to the same datum; or its `age`. */
  readonly maturity?: QuantityInput<'temperature-time'>;
  /** Its equivalent age, to the same reference. */
  readonly age?: QuantityInput<'time'>;
  /** What it broke at. */
  readonly strength: QuantityInput<'pressure'>;
}

/** Input of {@link maturity}. */
export interface MaturityInput {
  /** Readings in order of time from placing on, at any intervals; the first no later than `gap`. */
  readonly history: readonly ReadingInput[];
  /** How warm the concrete was as placed, where the first reading is later; by default as it was first read. */
  readonly atPlacing?: QuantityInput<'temperature'>;
  /** The longest time between readings that is bridged; by default 6 h. */
  readonly gap?: QuantityInput<'time'>;
  /** The temperature at which strength stops growing; by default 14 degF (-10 degC). */
  readonly datum?: QuantityInput<'temperature'>;
  /** Activation energy over the gas constant, in degrees; by default 9000 degF (5000 degC). */
  readonly activation?: QuantityInput<'temperature-difference'>;
  /** The temperature that the equivalent age is for; by default 68 degF (20 degC). */
  readonly reference?: QuantityInput<'temperature'>;
  /** Specimens of the mix from the weakest on, all by their maturity or all by their equivalent age. */
  readonly calibration?: readonly CalibrationInput[];
  /** The strength that is waited for; goes with `calibration`. */
  readonly wanted?: QuantityInput<'pressure'>;
}

/** When the strength that is waited for is there. */
export interface WantedStrength {
  /** How long after placing it was reached; left out where it was not. */
  readonly reachedAt?: Quantity<'time'>;
  /** How much longer it takes, should the concrete stay as warm as it was last. */
  readonly moreTime?: Quantity<'time'>;
}

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
type Strength = Quantity<'pressure'>;
type TemperatureTime = Quantity<'temperature-time'>;

interface Reading {
  readonly at: Time;
  readonly temperature: Temperature;
}

interface Specimen {
  readonly maturity: TemperatureTime | undefined;
  readonly age: Time | undefined;
  readonly strength: Strength;
}

interface Parsed {
  readonly history: readonly Reading[];
  readonly atPlacing: Temperature | undefined;
  readonly gap: Time | undefined;
  readonly datum: Temperature | undefined;
  readonly activation: Difference | undefined;
  readonly reference: Temperature | undefined;
  readonly calibration: readonly Specimen[] | undefined;
  readonly wanted: Strength | undefined;
}

const MOST_READINGS = 1000;
const MOST_SPECIMENS = 30;
/** Readings up to which every interval has its steps. */
const SHOWN = 50;

const GAP_DEFAULT = constant(() => time('6 h'));
const DATUM_DEFAULT = /*#__PURE__*/ paired('temperature', '14 degF', '-10 degC');
const ACTIVATION_DEFAULT = /*#__PURE__*/ paired('temperature-difference', '9000 degF', '5000 degC');
const REFERENCE_DEFAULT = /*#__PURE__*/ paired('temperature', '68 degF', '20 degC');
const LOWEST = DATUM_DEFAULT;
const HIGHEST = /*#__PURE__*/ paired('temperature', '176 degF', '80 degC');
const NONE = /*#__PURE__*/ paired('temperature-difference', '0 degF', '0 degC');
/** By then ordinary concrete has the 500 psi (3.5 MPa) that let it freeze once. */
const FREEZE_AGE = constant(() => time('24 h'));

/** What one interval adds. */
interface Interval {
  readonly from: Reading;
  readonly to: Reading;
  readonly t: Time;
  readonly mean: Temperature;
  readonly adds: TemperatureTime;
  readonly ages: Time;
}

interface Method {
  readonly datum: Temperature;
  readonly activation: Difference;
  readonly reference: Temperature;
}

const halfway = (a: Temperature, b: Temperature): Temperature => raised(a, above(a, b).times(ratio('0.5:1')));

/** Below, the concrete has frozen long ago; above, the equations are not for it. */
function within(path: string, t: Temperature): void {
  if (t.lessThan(LOWEST.as('customary')) || t.greaterThan(HIGHEST.as('customary')))
    refuse(path, faults.outsideRange('temperature', ['14 degF to 176 degF', '-10 degC to 80 degC']));
}

function checkTimes({ history }: Parsed, gap: Time): void {
  history.forEach(({ at, temperature }, i) => {
    within(`history[${i}].temperature`, temperature);
    const before = history[i - 1];
    if (!before) {
      // What lies before the first reading is a gap as well, and concrete is youngest then.
      if (at.greaterThan(gap)) refuse(`history[${i}].at`, faults.gapInHistory(at, gap));
      return;
    }
    if (!at.greaterThan(before.at)) refuse(`history[${i}].at`, faults.backwards(i + 1));
    if (at.minus(before.at).greaterThan(gap))
      refuse(`history[${i}].at`, faults.gapInHistory(at.minus(before.at), gap));
  });
}

/** From placing on: as warm as it was placed, or else as it was first read. */
function fromPlacing({ history, atPlacing }: Parsed, pad: Pad): readonly Reading[] {
  const first = history[0] as Reading;
  if (first.at.sign() === 0)
    return atPlacing
      ? refuse('atPlacing', faults.onlyWith('atPlacing', 'a first reading later than placing'))
      : history;
  if (atPlacing) within('atPlacing', atPlacing);
  else
    pad.assume({
      name: 'atPlacing',
      value: { reckoned: first.temperature },
      because: say`nothing was read until ${{ at: first.at }} after placing; it is taken as warm as it was then`,
      override: 'Give atPlacing, or a reading at 0 h',
      source: COMMON_PRACTICE,
    });
  return [{ at: first.at.minus(first.at), temperature: atPlacing ?? first.temperature }, ...history];
}

function methodOf({ datum, activation, reference }: Parsed, pad: Pad): Method {
  if (datum) within('datum', datum);
  if (reference) within('reference', reference);
  if (!datum) {
    pad.assume({
      name: 'datum',
      value: DATUM_DEFAULT,
      because: 'what a highway department takes; the mix may have one of its own',
      override: 'Give datum as it was found for the mix',
      source: IOWA_MATURITY,
    });
  }
  if (!activation) {
    pad.assume({
      name: 'activation',
      value: ACTIVATION_DEFAULT,
      because: 'usual for ordinary cement without admixtures',
      override: 'Give activation as it was found for the mix',
      source: MATURITY_DEFAULTS,
    });
  }
  if (!reference) {
    pad.assume({
      name: 'reference',
      value: REFERENCE_DEFAULT,
      because: 'the equivalent age is that of concrete kept at this temperature',
      override: say`Give reference, ${{ usual: paired('temperature', '73 degF', '23 degC') }} for cylinders of a laboratory`,
      source: MATURITY_DEFAULTS,
    });
  }
  return {
    datum: datum ?? DATUM_DEFAULT.as(pad.system),
    activation: activation ?? ACTIVATION_DEFAULT.as(pad.system),
    reference: reference ?? REFERENCE_DEFAULT.as(pad.system),
  };
}

function intervalOf(
  from: Reading,
  to: Reading,
  { datum, activation, reference }: Method,
  pad: Pad,
): Interval {
  const t = to.at.minus(from.at);
  const mean = halfway(from.temperature, to.temperature);
  const D = above(datum, mean);
  const adds = (D.sign() < 0 ? NONE.as(pad.system) : D).times(t);
  return { from, to, t, mean, adds, ages: t.times(ageFactor(mean, reference, activation, pad)) };
}

function showInterval({ from, to, t, adds, ages }: Interval, method: Method, pad: Pad): void {
  const [a, b] = [from.temperature, to.temperature];
  const { datum: z, activation: q, reference: s } = method;
  const until = { from: from.at, to: to.at };
  pad.step(
    say`temperature-time from ${{ from: until.from }} to ${{ to: until.to }}`,
    'm = max((a + b) ÷ 2 − z, n) × t',
    { a, b, z, n: NONE.as(pad.system), t },
    adds,
  );
  pad.step(
    say`equivalent age from ${{ from: until.from }} to ${{ to: until.to }}`,
    'e = t × exp(q ÷ (s − o) − q ÷ ((a + b) ÷ 2 − o))',
    { t, q, s, o: ABSOLUTE_ZERO.as(pad.system), a, b },
    ages,
  );
}

const sum = <D extends 'time' | 'temperature-time' | 'temperature-difference'>(
  parts: readonly Quantity<D>[],
): Quantity<D> => parts.reduce((all, part) => all.plus(part));

/** The sums: of the intervals where they are shown, else of the average over all of them. */
function summed(intervals: readonly Interval[], span: Time, pad: Pad): readonly [TemperatureTime, Time] {
  const M = sum(intervals.map(({ adds }) => adds));
  const e = sum(intervals.map(({ ages }) => ages));
  if (intervals.length < SHOWN) {
    const terms = intervals.map((_, i) => `m${i + 1}`);
    const values = (parts: readonly Quantity[]) =>
      Object.fromEntries(terms.map((name, i) => [name, parts[i] as Quantity]));
    const formula = terms.join(' + ');
    return [
      pad.step('temperature-time factor', `M = ${formula}`, values(intervals.map(({ adds }) => adds)), M),
      pad.step('equivalent age', `A = ${formula}`, values(intervals.map(({ ages }) => ages)), e),
    ];
  }
  const D = M.over(span);
  const g = e.over(span);
  return [
    pad.step('temperature-time factor, by the average above the datum', 'M = D × t', { D, t: span }, M),
    pad.step('equivalent age, by the average factor', 'A = g × t', { g, t: span }, e),
  ];
}

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

/** One number for how far a specimen or the slab has come: its maturity or its equivalent age. */
type Index = TemperatureTime | Time;

interface Point {
  readonly index: Index;
  readonly strength: Strength;
}

function pointsOf({ calibration }: Parsed): readonly Point[] | undefined {
  if (!calibration) return undefined;
  const byAge = calibration[0]?.age !== undefined;
  const points = calibration.map(({ maturity, age, strength }, i) => {
    const at = `calibration[${i}]`;
    if ((maturity === undefined) === (age === undefined)) refuse(at, faults.oneIndex());
    const index = byAge ? age : maturity;
    return index ? { index, strength } : refuse(at, faults.oneIndex());
  });
  points.forEach(({ index, strength }, i) => {
    const before = points[i - 1];
    if (!before) return;
    const grows = compare(index, before.index) > 0 && strength.greaterThan(before.strength);
    if (!grows) refuse(`calibration[${i}]`, faults.calibrationOrder(i + 1));
  });
  return points;
}

const compare = (a: Index, b: Index): number => canonicalValue(a).comparedTo(canonicalValue(b));

/** Straight between two points: `y = y1 + (y2 − y1) × (x − x1) ÷ (x2 − x1)`. */
function between<
  X extends 'pressure' | 'time' | 'temperature-time',
  Y extends 'pressure' | 'time' | 'temperature-time',
>(
  what: string,
  [x1, y1]: readonly [Quantity<X>, Quantity<Y>],
  [x2, y2]: readonly [Quantity<X>, Quantity<Y>],
  x: Quantity<X>,
  pad: Pad,
): Quantity<Y> {
  const far = canonicalValue(x)
    .minus(canonicalValue(x1))
    .div(canonicalValue(x2).minus(canonicalValue(x1)));
  const y = canonicalValue(y1).plus(canonicalValue(y2).minus(canonicalValue(y1)).times(far));
  return pad.step(
    what,
    'y = c + (d − c) × (x − a) ÷ (b − a)',
    { a: x1, b: x2, c: y1, d: y2, x },
    newQuantity(y1.dimension, y, unitShown(y1)) as Quantity<Y>,
  );
}

const pairAround = <T>(points: readonly T[], beyond: (point: T) => boolean): readonly [T, T] | undefined => {
  const i = points.findIndex(beyond);
  return i > 0 ? [points[i - 1] as T, points[i] as T] : undefined;
};

function strengthAt(points: readonly Point[], index: Index, pad: Pad): Strength | undefined {
  const around = pairAround(points, (p) => compare(p.index, index) >= 0);
  if (around) {
    const [a, b] = around;
    const x = index as Quantity<'time'>;
    return between(
      'strength by the calibration',
      [a.index as Quantity<'time'>, a.strength],
      [b.index as Quantity<'time'>, b.strength],
      x,
      pad,
    );
  }
  const first = points[0] as Point;
  return compare(first.index, index) === 0 ? first.strength : undefined;
}

/** The maturity or the equivalent age at which a strength is there. */
function indexFor(points: readonly Point[], wanted: Strength, pad: Pad): Index | undefined {
  const around = pairAround(points, ({ strength }) => !strength.lessThan(wanted));
  if (!around) return points[0]?.strength.equals(wanted) ? points[0].index : undefined;
  const [a, b] = around;
  return between(
    'what it takes',
    [a.strength, a.index as Quantity<'time'>],
    [b.strength, b.index as Quantity<'time'>],
    wanted,
    pad,
  );
}

/** When a maturity or an equivalent age was reached, or how much longer it takes. */
function whenReached(
  needed: Index,
  intervals: readonly Interval[],
  method: Method,
  pad: Pad,
): WantedStrength {
  const byAge = needed.dimension === 'time';
  const part = (one: Interval): Index => (byAge ? one.ages : one.adds);
  let so: Index | undefined;
  for (const one of intervals) {
    const before = so ?? ((part(one) as Time).minus(part(one) as Time) as Index);
    const after: Index = (before as Time).plus(part(one) as Time);
    if (compare(after, needed) >= 0) {
      const reachedAt = between(
        'when it was reached',
        [before as Time, one.from.at],
        [after as Time, one.to.at],
        needed as Time,
        pad,
      );
      return { reachedAt };
    }
    so = after;
  }
  const last = (intervals.at(-1) as Interval).to.temperature;
  const lacking = pad.step(
    'what it lacks',
    'l = w − m',
    { w: needed, m: so as Index },
    (needed as Time).minus(so as Time),
  ) as Index;
  return { ...moreTime(lacking, last, method, pad) };
}

function moreTime(lacking: Index, T: Temperature, method: Method, pad: Pad): { moreTime?: Time } {
  const { datum: z, activation: q, reference: s } = method;
  if (lacking.dimension === 'time') {
    const g = ageFactor(T, s, q, pad);
    return {
      moreTime: pad.step(
        'more time, as warm as it was last',
        'k = l ÷ exp(q ÷ (s − o) − q ÷ (T − o))',
        { l: lacking, q, s, o: ABSOLUTE_ZERO.as(pad.system), T },
        (lacking as Time).over(g),
      ),
    };
  }
  const D = above(z, T);
  if (D.sign() <= 0) return {};
  return {
    moreTime: pad.step(
      'more time, as warm as it was last',
      'k = l ÷ (T − z)',
      { l: lacking, T, z },
      (lacking as TemperatureTime).over(D),
    ),
  };
}

function calibrated(
  input: Parsed,
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

function reckon(input: Parsed, pad: Pad): MaturityFigures {
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
 * does not grow; `gap-in-history`, also before the first of them; `does-not-fit` for `atPlacing` beside a reading at placing; `outside-range` for readings, datum or reference below 14 degF (-10 degC) or above 176 degF (80 degC);
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

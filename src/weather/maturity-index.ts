/** The maturity that readings come to, interval by interval, by temperature-time or by equivalent age. */

import { constant, ratio, time } from '../quantity/make';
import { paired } from '../quantity/paired';
import type { Quantity } from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import type { Pad } from '../reckoning/pad';
import { COMMON_PRACTICE } from '../reckoning/source';
import { say } from '../reckoning/words';
import { ageFactor } from './arrhenius';
import { ABSOLUTE_ZERO, above, type Difference, raised, type Temperature } from './degrees';
import * as faults from './faults';
import type { MaturityParsed, Reading } from './maturity-input';
import { IOWA_MATURITY, MATURITY_DEFAULTS } from './sources';

type Time = Quantity<'time'>;

type TemperatureTime = Quantity<'temperature-time'>;

/** Readings up to which every interval has its steps. */
export const SHOWN = 50;

export const GAP_DEFAULT = constant(() => time('6 h'));
const DATUM_DEFAULT = /*#__PURE__*/ paired('temperature', '14 degF', '-10 degC');
const ACTIVATION_DEFAULT = /*#__PURE__*/ paired('temperature-difference', '9000 degF', '5000 degC');
const REFERENCE_DEFAULT = /*#__PURE__*/ paired('temperature', '68 degF', '20 degC');
const LOWEST = DATUM_DEFAULT;
const HIGHEST = /*#__PURE__*/ paired('temperature', '176 degF', '80 degC');
/** Several times that of any cement. */
const MOST_ACTIVATION = /*#__PURE__*/ paired('temperature-difference', '36000 degF', '20000 degC');
const NONE = /*#__PURE__*/ paired('temperature-difference', '0 degF', '0 degC');

/** What one interval adds. */
export interface Interval {
  readonly from: Reading;
  readonly to: Reading;
  readonly t: Time;
  readonly mean: Temperature;
  readonly adds: TemperatureTime;
  readonly ages: Time;
}

export interface Method {
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

export function checkTimes({ history }: MaturityParsed, gap: Time): void {
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
export function fromPlacing({ history, atPlacing }: MaturityParsed, pad: Pad): readonly Reading[] {
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

export function methodOf({ datum, activation, reference }: MaturityParsed, pad: Pad): Method {
  if (datum) within('datum', datum);
  if (reference) within('reference', reference);
  if (activation?.greaterThan(MOST_ACTIVATION.as('customary')))
    refuse('activation', faults.outsideRange('activation', ['0 degF to 36000 degF', '0 degC to 20000 degC']));
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

export function intervalOf(
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

export function showInterval({ from, to, t, adds, ages }: Interval, method: Method, pad: Pad): void {
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

export const sum = <D extends 'time' | 'temperature-time' | 'temperature-difference'>(
  parts: readonly Quantity<D>[],
): Quantity<D> => parts.reduce((all, part) => all.plus(part));

/** The sums: of the intervals where they are shown, else of the average over all of them. */
export function summed(
  intervals: readonly Interval[],
  span: Time,
  pad: Pad,
): readonly [TemperatureTime, Time] {
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

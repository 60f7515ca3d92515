/**
 * The pressure of water vapor over water, at saturation.
 *
 * `e = p × exp((18.678 − D ÷ s) × D ÷ (o + D))`, with `D` the degrees above freezing: the equation of Buck, as of
 * 1996, from memory; tables of the CRC and ASHRAE handbooks agree with it within 0.1% from freezing to 50 degC.
 */
import { Decimal } from '../quantity/decimal';
import { pure } from '../quantity/numbers';
import { paired } from '../quantity/paired';
import { canonicalValue, type Quantity } from '../quantity/quantity';
import type { Pad } from '../reckoning/pad';
import type { Saying } from '../reckoning/words';
import { exponential } from '../solve/exponential';
import { above, FREEZING, type Temperature } from './degrees';

/** At freezing. */
const AT_FREEZING = /*#__PURE__*/ paired('pressure', '0.0886485 psi', '0.61121 kPa');
const SCALE = /*#__PURE__*/ paired('temperature-difference', '422.1 degF', '234.5 degC');
const OFFSET = /*#__PURE__*/ paired('temperature-difference', '462.852 degF', '257.14 degC');
const SLOPE = '18.678';

/** The saturation pressure at a temperature, without a note of it. */
export function saturated(t: Temperature, { system }: Pad): Quantity<'pressure'> {
  const [D, s, o] = [above(FREEZING.as(system), t), SCALE.as(system), OFFSET.as(system)];
  const [d, scale, offset] = [D, s, o].map((q) => canonicalValue(q)) as [Decimal, Decimal, Decimal];
  const power = new Decimal(SLOPE).minus(d.div(scale)).times(d).div(offset.plus(d));
  return AT_FREEZING.as(system).times(pure(exponential(power)));
}

/** The saturation pressure at a temperature, with its steps. */
export function saturation(what: Saying, t: Temperature, pad: Pad): Quantity<'pressure'> {
  const f = FREEZING.as(pad.system);
  const D = pad.step('above freezing', 'D = T − f', { T: t, f }, above(f, t));
  const [p, s, o] = [AT_FREEZING, SCALE, OFFSET].map((pair) => pair.as(pad.system));
  return pad.step(
    what,
    `e = p × exp((${SLOPE} − D ÷ s) × D ÷ (o + D))`,
    { p: p as Quantity, s: s as Quantity, o: o as Quantity, D },
    saturated(t, pad),
  );
}

/**
 * How much faster concrete gains strength at one temperature than at another: the equation of Arrhenius,
 * `g = exp(q ÷ Ts − q ÷ T)`, with temperatures above absolute zero and `q` the activation energy over the gas constant.
 */

import { numberOf, pure } from '../quantity/numbers';
import type { Quantity } from '../quantity/quantity';
import type { Pad } from '../reckoning/pad';
import { exponential } from '../solve/exponential';
import { ABSOLUTE_ZERO, above, type Difference, type Temperature } from './degrees';

/** The factor of a temperature against one of reference. */
export function ageFactor(
  t: Temperature,
  reference: Temperature,
  q: Difference,
  pad: Pad,
): Quantity<'ratio'> {
  const o = ABSOLUTE_ZERO.as(pad.system);
  const [T, S] = [above(o, t), above(o, reference)];
  return pure(exponential(numberOf(q.over(S)).minus(numberOf(q.over(T)))));
}

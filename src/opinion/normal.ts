/**
 * The normal distribution: the chance of being more than so many standard deviations above the mean.
 *
 * `1 − Φ(z)`, with `Φ(z) = 1/2 + φ(z) × (z + z³ ÷ 3 + z⁵ ÷ 15 + …)`, a series of positive terms that is cut off where
 * nothing of it is kept.
 */
import { Decimal, PI } from '../quantity/decimal';
import { exponential } from '../solve/exponential';

/** Beyond so many deviations there is no chance that anybody would tell. */
const FAR = 7;
const TERMS = 200;
const KEPT = /*#__PURE__*/ new Decimal('1e-20');
const HALF = /*#__PURE__*/ new Decimal('0.5');

/** The chance of more than `z` standard deviations above the mean. */
export function chanceAbove(z: Decimal): Decimal {
  if (z.greaterThan(FAR)) return new Decimal(0);
  if (z.lessThan(-FAR)) return new Decimal(1);
  const square = z.times(z);
  let term = z;
  let sum = z;
  for (let n = 1; n < TERMS && term.abs().greaterThan(KEPT); n += 1) {
    term = term.times(square).div(2 * n + 1);
    sum = sum.plus(term);
  }
  const density = exponential(square.div(-2)).div(PI.times(2).sqrt());
  return HALF.minus(density.times(sum)).toDecimalPlaces(6);
}

/**
 * Exponentials, logarithms and powers that are not whole, to 24 digits.
 *
 * By products and quotients alone: the decimal library has its own, of any number of digits, which with their tables
 * would be carried by every bundle. What is irrational is shown to four digits and kept to 24.
 */
import { Decimal, ONE } from '../quantity/decimal';

const DIGITS = 24;
/** Halved so often, an exponent of up to 30 is less than 0.03, and fifteen terms leave nothing that is kept. */
const HALVINGS = 10;
const HALVED = /*#__PURE__*/ new Decimal(2 ** HALVINGS);
const TERMS = 15;

/** `1 ÷ n!`, from the last on: products cost a fifth of quotients. */
let inverse: readonly Decimal[] | undefined;

function inverses(): readonly Decimal[] {
  if (inverse) return inverse;
  const all = [ONE];
  for (let n = 1; n <= TERMS; n += 1) all.unshift((all[0] as Decimal).div(n));
  inverse = all;
  return all;
}

/** `1 + x + x² ÷ 2 + …` of a part of the exponent, squared as often as it was halved. */
function precise(x: Decimal): Decimal {
  const part = x.div(HALVED);
  let sum = inverses().reduce((above, one) => above.times(part).plus(one));
  for (let n = 0; n < HALVINGS; n += 1) sum = sum.times(sum);
  return sum;
}

/** Halley's rule from the binary logarithm, which is good to 15 digits: that makes 45 of them. */
function preciseLogarithm(y: Decimal): Decimal {
  const seed = new Decimal(Math.log(y.toNumber()));
  const e = precise(seed);
  return seed.plus(y.minus(e).times(2).div(y.plus(e)));
}

/** `e` to the power of a number of no more than a few dozen. */
export const exponential = (x: Decimal): Decimal => precise(x).toSignificantDigits(DIGITS);

/** The natural logarithm of a number above zero, of an ordinary size. */
export const logarithm = (y: Decimal): Decimal => preciseLogarithm(y).toSignificantDigits(DIGITS);

/** A number above zero to any power. */
export const toPower = (y: Decimal, power: Decimal): Decimal =>
  precise(preciseLogarithm(y).times(power)).toSignificantDigits(DIGITS);

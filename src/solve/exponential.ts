/**
 * Exponentials, logarithms and powers that are not whole, to 24 digits.
 *
 * By products and quotients alone: the decimal library has its own, of any number of digits, which with their tables
 * would be carried by every bundle. What is irrational is shown to four digits and kept to 24.
 */
import { Decimal, ONE } from '../quantity/decimal';

const DIGITS = 24;
/** Terms smaller than this are beyond the digits kept, with room for the squarings. */
const NEGLIGIBLE = /*#__PURE__*/ new Decimal('1e-40');
/** Halved so often, an exponent of up to 30 is less than a hundredth, and its series is short. */
const HALVINGS = 12;
const HALVED = /*#__PURE__*/ new Decimal(2 ** HALVINGS);

/** `1 + x + x² ÷ 2 + …` of a part of the exponent, squared as often as it was halved. */
function precise(x: Decimal): Decimal {
  const part = x.div(HALVED);
  let [sum, term] = [ONE, ONE];
  for (let n = 1; term.abs().greaterThan(NEGLIGIBLE); n += 1) {
    term = term.times(part).div(n);
    sum = sum.plus(term);
  }
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

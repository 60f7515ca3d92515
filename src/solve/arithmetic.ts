/**
 * The two ways to reckon in a search: in binary numbers to find the way quickly, in exact decimals to
 * prove what was found and to end it.
 */
import { Decimal } from '../quantity/decimal';

/** What a search needs of its numbers. */
export interface Arithmetic<T> {
  readonly of: (value: Decimal) => T;
  readonly zero: T;
  readonly one: T;
  readonly plus: (a: T, b: T) => T;
  /** `a − b × c`, the step of every elimination. */
  readonly less: (a: T, b: T, c: T) => T;
  readonly times: (a: T, b: T) => T;
  readonly over: (a: T, b: T) => T;
  /** -1, 0 or 1; strays of rounding count as nothing. */
  readonly sign: (a: T) => -1 | 0 | 1;
  /** Order of two numbers, strays and all: for sorting. */
  readonly order: (a: T, b: T) => number;
}

const BINARY_STRAY = 1e-10;

/** Binary numbers: quick, good to some ten digits. */
export const BINARY: Arithmetic<number> = {
  of: (value) => value.toNumber(),
  zero: 0,
  one: 1,
  plus: (a, b) => a + b,
  less: (a, b, c) => a - b * c,
  times: (a, b) => a * b,
  over: (a, b) => a / b,
  sign: (a) => (a > BINARY_STRAY ? 1 : a < -BINARY_STRAY ? -1 : 0),
  order: (a, b) => a - b,
};

/** A product of decimals, of which most are nought. */
const product = (a: Decimal, b: Decimal): Decimal => (a.isZero() ? a : b.isZero() ? b : a.times(b));

/** No input has so many digits: what is smaller comes from the last of the sixty that are kept. */
const STRAY = 40;

/** Exact decimals, but for strays of the sixtieth digit. */
export const EXACT: Arithmetic<Decimal> = {
  of: (value) => value,
  zero: /*#__PURE__*/ new Decimal(0),
  one: /*#__PURE__*/ new Decimal(1),
  plus: (a, b) => (a.isZero() ? b : b.isZero() ? a : a.plus(b)),
  less: (a, b, c) => (b.isZero() || c.isZero() ? a : a.minus(b.times(c))),
  times: product,
  over: (a, b) => (a.isZero() ? a : a.div(b)),
  sign: (a) => (a.isZero() || a.e < -STRAY ? 0 : a.isNegative() ? -1 : 1),
  order: (a, b) => a.comparedTo(b),
};

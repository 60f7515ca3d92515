/**
 * The one decimal type of this library.
 *
 * A private clone: a host that calls `Decimal.set` on its own copy changes nothing here.
 * 60 significant digits hold every product of tape-measure inputs exactly; half-even keeps long
 * sums unbiased. Rounding for show is asked for at the place where something is shown.
 */
import { Decimal as Shared } from 'decimal.js';
import { A_ROOT, AN_ANGLE, effort } from './effort';

export const Decimal = /*#__PURE__*/ Shared.clone({
  defaults: true,
  precision: 60,
  rounding: Shared.ROUND_HALF_EVEN,
});

export type Decimal = Shared;

/** For numbers that are only shown: fewer digits, a cheaper division. */
const Shown = /*#__PURE__*/ Shared.clone({ defaults: true, precision: 24, rounding: Shared.ROUND_HALF_EVEN });

/** For distances between corners, which are roots: still beyond any stray digit. */
const Distances = /*#__PURE__*/ Shared.clone({
  defaults: true,
  precision: 31,
  rounding: Shared.ROUND_HALF_EVEN,
});

/**
 * The length of a side by its two components, to 31 digits.
 *
 * The binary root is good to 15 digits. What its square lacks is taken exactly, and shared out by Newton's
 * rule: that doubles the digits without a long division. Roots that are finite come out exactly.
 */
export function distance(x: Decimal, y: Decimal): Decimal {
  effort.spent += A_ROOT;
  const square = x.times(x).plus(y.times(y));
  const seed = Math.sqrt(square.toNumber());
  if (!(seed > 1e-100 && seed < 1e100)) return square.sqrt();
  const root = new Decimal(seed);
  const lacks = square.minus(root.times(root)).toNumber();
  return lacks === 0 ? root : new Decimal(new Distances(seed).plus(lacks / (2 * seed)));
}

/**
 * More digits than are kept or shown, so that a quotient which is finite comes out exactly when it is rounded,
 * and what is read back and scaled rounds to the very same.
 */
const Beyond = /*#__PURE__*/ Shared.clone({ defaults: true, precision: 70 });

const reciprocals = new WeakMap<Decimal, Decimal>();

function reciprocalOf(factor: Decimal): Decimal {
  const known = reciprocals.get(factor);
  if (known) return known;
  const made = new Shown(Beyond.div(1, factor));
  reciprocals.set(factor, made);
  return made;
}

/** A quotient by the factor of a unit to 24 digits, for show: a product with its reciprocal costs a third of a division. */
export const shownQuotient = (a: Decimal, factor: Decimal): Decimal => reciprocalOf(factor).times(a);

/** A quotient that comes to `a` again, to the last digit kept, when it is multiplied with `factor`. */
export const beyondQuotient = (a: Decimal, factor: Decimal): Decimal => Beyond.div(a, factor);

/** The angle of a direction in radians, to 24 digits: angles are irrational, and 60 digits cost ten times more. */
export function angleTo(y: Decimal, x: Decimal): Decimal {
  effort.spent += AN_ANGLE;
  return new Decimal(Shown.atan2(y, x));
}

export const ROUND_HALF_UP = 4;
/** Cut off behind the last place that is kept. */
export const ROUND_DOWN = 1;

export const ZERO = /*#__PURE__*/ new Decimal(0);
export const ONE = /*#__PURE__*/ new Decimal(1);

/** π to more digits than are ever kept. */
export const PI = /*#__PURE__*/ new Decimal(
  '3.14159265358979323846264338327950288419716939937510582097494459230781640628620899',
);

/** As many digits as are kept, and so as many as are written: more would be lost when they are read again. */
export const kept = (value: Decimal): Decimal => value.toSignificantDigits(Decimal.precision);

/**
 * A quotient this close to a whole number is that whole number: the difference can only come from
 * rounding in the 60th digit, because no input carries more than 30 digits that matter.
 */
const STRAY = /*#__PURE__*/ new Decimal('1e-30');

/** The whole number that `value` is, but for a stray last digit; otherwise `undefined`. */
function wholeWithin(value: Decimal): Decimal | undefined {
  const nearest = value.toDecimalPlaces(0, ROUND_HALF_UP);
  const room = STRAY.times(Decimal.max(ONE, nearest.abs()));
  return value.minus(nearest).abs().lessThanOrEqualTo(room) ? nearest : undefined;
}

/** Round up to a whole number, not tipped over by a stray last digit. */
export function ceilWhole(value: Decimal): Decimal {
  return wholeWithin(value) ?? value.ceil();
}

/** Round down to a whole number, not tipped under by a stray last digit. */
export function floorWhole(value: Decimal): Decimal {
  return wholeWithin(value) ?? value.floor();
}

/** No input has more digits than this; a number that does has been through a division or a root. */
const TYPED_DIGITS = 30;

const untouched = (a: Decimal, b: Decimal): boolean =>
  a.precision() <= TYPED_DIGITS && b.precision() <= TYPED_DIGITS;

/** Order two decimals; a difference in stray last digits counts as equal. */
export function compareSteady(a: Decimal, b: Decimal): -1 | 0 | 1 {
  const order = a.comparedTo(b) as -1 | 0 | 1;
  if (order === 0 || untouched(a, b)) return order;
  const room = STRAY.times(Decimal.max(a.abs(), b.abs()));
  return a.minus(b).abs().lessThanOrEqualTo(room) ? 0 : order;
}

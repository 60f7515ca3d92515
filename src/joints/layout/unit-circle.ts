/**
 * Cosine and sine of an angle, to fifty digits after the point.
 *
 * A plan along an arc asks for a thousand of them. Reckoned in whole numbers of 10^-72: the angle is halved ten
 * times, the two series of Taylor are summed, and the double angle is taken ten times
 * (cos 2a = 2 cos² a - 1, sin 2a = 2 sin a cos a; Abramowitz and Stegun, 4.3.65, 4.3.66, 4.3.25, 4.3.24, from
 * memory).
 */
import type { Corner } from '../../geometry/polygon';
import { Decimal, PI } from '../../quantity/decimal';

const DIGITS = 72;
const UNIT = 10n ** BigInt(DIGITS);
const HALVINGS = 10;
/** The angle is then below a hundredth: terms fall below the last digit well before this many. */
const TERMS = 30;
/** Digits that are given. */
const GIVEN = 50;

const times = (a: bigint, b: bigint): bigint => (a * b) / UNIT;

/** One series: each term from the one before, from `start` on. */
function series(first: bigint, square: bigint, start: number): bigint {
  let [sum, term] = [first, first];
  for (let k = start; k < TERMS && term !== 0n; k += 2) {
    term = -times(term, square) / BigInt(k * (k + 1));
    sum += term;
  }
  return sum;
}

const toDecimal = (n: bigint): Decimal => new Decimal(`${n}e-${DIGITS}`).toDecimalPlaces(GIVEN);

/** The direction at an angle in radians, counterclockwise from x. */
export function directionAt(angle: Decimal): Corner {
  const turn = angle.mod(PI.times(2)).toDecimalPlaces(DIGITS - 1);
  const small = BigInt(turn.times(`1e${DIGITS}`).toFixed(0)) / BigInt(2 ** HALVINGS);
  const square = times(small, small);
  let [cos, sin] = [series(UNIT, square, 1), series(small, square, 2)];
  for (let k = 0; k < HALVINGS; k += 1) {
    [cos, sin] = [2n * times(cos, cos) - UNIT, 2n * times(sin, cos)];
  }
  return { x: toDecimal(cos), y: toDecimal(sin) };
}

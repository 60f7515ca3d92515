/**
 * Bodies that footings, walls and piers are made of.
 *
 * Every body here has sections that change as a square of the height at most, so the prismoidal
 * formula `V = h × (A + 4 × M + B) ÷ 6` gives it exactly.
 */

import { Decimal, PI } from '../quantity/decimal';
import { constant } from '../quantity/make';
import { pure } from '../quantity/numbers';
import { canonicalValue, type Quantity, quantityOf, systemOfQuantity } from '../quantity/quantity';
import { wholeNumber } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { say } from '../reckoning/words';

type Length = Quantity<'length'>;
type Area = Quantity<'area'>;
type Volume = Quantity<'volume'>;

export const TWO = constant(() => wholeNumber(2));
export const FOUR = constant(() => wholeNumber(4));
const SIX = constant(() => wholeNumber(6));
const PI_RATIO = constant(() => pure(PI));
const TWELVE = constant(() => wholeNumber(12));

/** `h × (A + 4 × M + B) ÷ 6`. */
export const prismoid = (h: Length, A: Area, M: Area, B: Area): Volume =>
  h.times(A.plus(M.times(FOUR())).plus(B)).over(SIX());

/** Any quantity times π. */
export const timesPi = <D extends 'length' | 'area' | 'volume'>(q: Quantity<D>): Quantity<D> =>
  (q as Quantity<'length'>).times(PI_RATIO()) as unknown as Quantity<D>;

/** Area of a circle: `π × D² ÷ 4`. */
export const circleArea = (D: Length): Area => timesPi(D.times(D)).over(FOUR());

/** Volume of a frustum of a cone: `π × h × (D² + D × d + d²) ÷ 12`. */
export const coneFrustum = (h: Length, D: Length, d: Length): Volume =>
  timesPi(h.times(D.times(D).plus(D.times(d)).plus(d.times(d)))).over(TWELVE());

/** A rectangular frustum: sides `l` and `w` at its foot, `a` and `b` at its top, `h` high. */
interface RectangularFrustum {
  readonly l: Length;
  readonly w: Length;
  readonly a: Length;
  readonly b: Length;
  readonly h: Length;
}

/** Foot and volume of a rectangular frustum, with the steps. */
export function rectangularFrustum(
  name: string,
  { l, w, a, b, h }: RectangularFrustum,
  pad: Pad,
): { foot: Area; volume: Volume } {
  const A = pad.step(say`${{ name }}, bearing area`, 'A = l × w', { l, w }, l.times(w));
  const B = pad.step(say`${{ name }}, top`, 'B = a × b', { a, b }, a.times(b));
  const mean = l.plus(a).over(TWO()).times(w.plus(b).over(TWO()));
  const M = pad.step(say`${{ name }}, halfway up`, 'M = (l + a) × (w + b) ÷ 4', { l, a, w, b }, mean);
  const volume = prismoid(h, A, M, B);
  return {
    foot: A,
    volume: pad.step(say`${{ name }}, volume`, 'V = h × (A + 4 × M + B) ÷ 6', { h, A, M, B }, volume),
  };
}

/** Area of a regular polygon: `k × s² ÷ (4 × tan(π ÷ k))`. */
export function regularArea(k: Quantity<'count'>, s: Length): Area {
  const n = canonicalValue(k);
  const square = s.times(s);
  const value = canonicalValue(square)
    .times(n)
    .div(Decimal.tan(PI.div(n)).times(4));
  return quantityOf('area', value, systemOfQuantity(s));
}

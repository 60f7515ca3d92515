/**
 * Bodies that footings, walls and piers are made of.
 *
 * Every body here has sections that change as a square of the height at most, so the prismoidal
 * formula `V = h × (A + 4 × M + B) ÷ 6` gives it exactly.
 */
import { PI } from '../quantity/decimal';
import { constant } from '../quantity/make';
import { newQuantity, type Quantity } from '../quantity/quantity';
import { unitOf } from '../quantity/units';
import { wholeNumber } from '../reckoning/fields';

type Length = Quantity<'length'>;
type Area = Quantity<'area'>;
type Volume = Quantity<'volume'>;

export const TWO = constant(() => wholeNumber(2));
export const FOUR = constant(() => wholeNumber(4));
const SIX = constant(() => wholeNumber(6));
const PI_RATIO = constant(() => newQuantity('ratio', PI, unitOf('ratio', ':1') as never));
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

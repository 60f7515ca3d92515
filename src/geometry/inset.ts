/**
 * A straight-sided ring moved inwards by the same distance on every side, corners mitred.
 *
 * As long as no side vanishes, the band between ring and inset has the area `P × w − k × w²`, with the perimeter `P` and a
 * number `k` that depends on the corners alone.
 */
import type { Decimal } from '../quantity/decimal';
import { movedRing, turnedRing } from './offset';
import { type Corner, doubleArea, isSimple, perimeterOf } from './polygon';

/**
 * The inset ring, or `undefined` where a side would vanish or the ring would fall apart.
 *
 * @param ring - simple and counterclockwise, in meters
 * @param w - how far, in meters; negative moves outwards
 */
export function insetRing(ring: readonly Corner[], w: Decimal): Corner[] | undefined {
  const turned = turnedRing(ring);
  const inset = turned && movedRing(turned, w.neg());
  return inset && isSimple(inset) ? inset : undefined;
}

/** Perimeter `P` and corner number `k` of the band `P × w − k × w²`. */
export interface Band {
  readonly perimeter: Decimal;
  readonly corners: Decimal;
}

/** The band along the inside of a ring, up to the width `w`; `undefined` where it is too wide. */
export function bandOf(ring: readonly Corner[], w: Decimal): Band | undefined {
  const inset = insetRing(ring, w);
  if (!inset) return undefined;
  const perimeter = perimeterOf(ring);
  const band = doubleArea(ring).minus(doubleArea(inset)).div(2);
  return { perimeter, corners: perimeter.times(w).minus(band).div(w.times(w)) };
}

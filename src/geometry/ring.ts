/**
 * Outlines as rings of corners, placed in the plane.
 *
 * A rectangle lies from the origin along x by its length and along y by its width. An L has its
 * notch at the far corner. A trapezoid stands on its first parallel side, the other centred above
 * it. A triangle has its first side along x. A circle, centred on the origin, becomes a regular
 * polygon of {@link CIRCLE_SIDES} sides. Rings run anticlockwise.
 */
import { Decimal, PI, ZERO } from '../quantity/decimal';
import * as faults from '../quantity/faults';
import { constant } from '../quantity/make';
import { canonicalValue, type Quantity } from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import type { Outline } from './outline';
import { type Corner, checkSimple, cornersOf, doubleArea } from './polygon';

/** How many sides stand in for a circle: with 96 the area is 0.07% short. */
export const CIRCLE_SIDES = 96;

/** How the polygon that stands in for a circle lies: within it, or around it. */
export type CircleSide = 'inside' | 'outside';

type Length = Quantity<'length'>;

const corner = (x: Decimal, y: Decimal): Corner => ({ x, y });

const box = (l: Decimal, w: Decimal): Corner[] => [
  corner(ZERO, ZERO),
  corner(l, ZERO),
  corner(l, w),
  corner(ZERO, w),
];

function triangle(sides: readonly Length[], path: string): Corner[] {
  const [a, b, c] = sides.map(canonicalValue) as [Decimal, Decimal, Decimal];
  // Side a along x; c from the origin, b from its far end.
  const x = a.times(a).plus(c.times(c)).minus(b.times(b)).div(a.times(2));
  const square = c.times(c).minus(x.times(x));
  if (square.lessThanOrEqualTo(0)) return refuse(`${path}.sides`, faults.noSuchTriangle());
  return [corner(ZERO, ZERO), corner(a, ZERO), corner(x, square.sqrt())];
}

function trapezoid(parallel: readonly Length[], height: Length): Corner[] {
  const [a, b] = parallel.map(canonicalValue) as [Decimal, Decimal];
  const h = canonicalValue(height);
  const inset = a.minus(b).div(2);
  return [corner(ZERO, ZERO), corner(a, ZERO), corner(inset.plus(b), h), corner(inset, h)];
}

function ell(outline: Extract<Outline, { shape: 'L' }>, path: string): Corner[] {
  const [L, W, l, w] = [outline.length, outline.width, outline.notchLength, outline.notchWidth].map(
    canonicalValue,
  ) as [Decimal, Decimal, Decimal, Decimal];
  if (l.greaterThanOrEqualTo(L)) refuse(`${path}.notchLength`, faults.doesNotFit('notchLength', 'length'));
  if (w.greaterThanOrEqualTo(W)) refuse(`${path}.notchWidth`, faults.doesNotFit('notchWidth', 'width'));
  return [
    corner(ZERO, ZERO),
    corner(L, ZERO),
    corner(L, W.minus(w)),
    corner(L.minus(l), W.minus(w)),
    corner(L.minus(l), W),
    corner(ZERO, W),
  ];
}

/** The corners on a circle of radius 1, and how far its sides are from the centre. Slow to reckon, so kept. */
const unitCircle = constant(() => {
  const half = PI.div(CIRCLE_SIDES);
  const corners = Array.from({ length: CIRCLE_SIDES }, (_, i) => {
    const angle = half.times(2 * i);
    return corner(Decimal.cos(angle), Decimal.sin(angle));
  });
  return { corners, toSide: Decimal.cos(half) };
});

/** A regular polygon in place of a circle about the origin. */
export function circleRing(diameter: Length, lies: CircleSide): Corner[] {
  const { corners, toSide } = unitCircle();
  const radius = canonicalValue(diameter).div(2);
  const r = lies === 'inside' ? radius : radius.div(toSide);
  return corners.map(({ x, y }) => corner(r.times(x), r.times(y)));
}

/**
 * The corners of an outline in metres, anticlockwise, checked to be one simple ring.
 *
 * @param path - where the outline stands in the input, for errors
 * @throws {InputError} as `measure` does
 */
export function ringOf(outline: Outline, path = 'outline', circles: CircleSide = 'inside'): Corner[] {
  switch (outline.shape) {
    case 'rectangle':
      return box(canonicalValue(outline.length), canonicalValue(outline.width));
    case 'circle':
      return circleRing(outline.diameter, circles);
    case 'triangle':
      return triangle(outline.sides, path);
    case 'trapezoid':
      return trapezoid(outline.parallel, outline.height);
    case 'L':
      return ell(outline, path);
    case 'polygon': {
      const ring = cornersOf(outline.points);
      checkSimple(ring, `${path}.points`);
      return doubleArea(ring).isNegative() ? ring.reverse() : ring;
    }
  }
}

/**
 * Straight-sided outlines: signed area, perimeter, and whether the outline meets itself.
 *
 * Twice the area is the sum of cross products of neighbouring corners (the surveyor's formula),
 * exact in decimals.
 */
import { Decimal, distance, ZERO } from '../quantity/decimal';
import * as faults from '../quantity/faults';
import { canonicalValue } from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import { firstCrossing } from './crossings';
import type { Point } from './outline';

/** A corner in metres. */
export interface Corner {
  readonly x: Decimal;
  readonly y: Decimal;
}

/** The corners in metres. */
export const cornersOf = (points: readonly Point[]): Corner[] =>
  points.map(({ x, y }) => ({ x: canonicalValue(x), y: canonicalValue(y) }));

/** Twice the signed area: positive when the corners run anticlockwise. */
export function doubleArea(corners: readonly Corner[]): Decimal {
  let sum = ZERO;
  for (let i = 0; i < corners.length; i += 1) {
    const a = corners[i] as Corner;
    const b = corners[(i + 1) % corners.length] as Corner;
    sum = sum.plus(a.x.times(b.y)).minus(b.x.times(a.y));
  }
  return sum;
}

/** The length once around. */
export function perimeterOf(corners: readonly Corner[]): Decimal {
  let sum = ZERO;
  for (let i = 0; i < corners.length; i += 1) {
    const a = corners[i] as Corner;
    const b = corners[(i + 1) % corners.length] as Corner;
    sum = sum.plus(distance(b.x.minus(a.x), b.y.minus(a.y)));
  }
  return sum;
}

/** Which way c lies of the line from a to b: the exact sign of the cross product. */
function side(a: Corner, b: Corner, c: Corner): number {
  return b.x
    .minus(a.x)
    .times(c.y.minus(a.y))
    .comparedTo(b.y.minus(a.y).times(c.x.minus(a.x)));
}

const between = (a: Decimal, b: Decimal, c: Decimal): boolean =>
  c.greaterThanOrEqualTo(Decimal.min(a, b)) && c.lessThanOrEqualTo(Decimal.max(a, b));

const onSide = (a: Corner, b: Corner, c: Corner): boolean => between(a.x, b.x, c.x) && between(a.y, b.y, c.y);

/** True when two closed sides share a point. */
function meet(a: Corner, b: Corner, c: Corner, d: Corner): boolean {
  const [s1, s2, s3, s4] = [side(a, b, c), side(a, b, d), side(c, d, a), side(c, d, b)];
  if (s1 * s2 < 0 && s3 * s4 < 0) return true;
  return (
    (s1 === 0 && onSide(a, b, c)) ||
    (s2 === 0 && onSide(a, b, d)) ||
    (s3 === 0 && onSide(c, d, a)) ||
    (s4 === 0 && onSide(c, d, b))
  );
}

/** A side with its box in binary numbers, widened by a hair so that rounding never hides a meeting. */
interface Box {
  readonly index: number;
  readonly x0: number;
  readonly x1: number;
  readonly y0: number;
  readonly y1: number;
}

const HAIR = 1e-14;

/** The boxes of the sides of a ring. */
function boxesAround(ring: readonly Corner[], xs: Float64Array, ys: Float64Array): Box[] {
  return ring.map((_, index) => {
    const next = (index + 1) % ring.length;
    const [ax, ay, bx, by] = [xs[index], ys[index], xs[next], ys[next]] as [number, number, number, number];
    const room = HAIR * Math.max(Math.abs(ax), Math.abs(ay), Math.abs(bx), Math.abs(by));
    return {
      index,
      x0: Math.min(ax, bx) - room,
      x1: Math.max(ax, bx) + room,
      y0: Math.min(ay, by) - room,
      y1: Math.max(ay, by) + room,
    };
  });
}

/** Corners in binary numbers, for a cheap look before an exact one. */
const flatOf = (ring: readonly Corner[]): [xs: Float64Array, ys: Float64Array] => [
  Float64Array.from(ring, ({ x }) => x.toNumber()),
  Float64Array.from(ring, ({ y }) => y.toNumber()),
];

/** Neighbours share their corner by right; they cross only when one folds back over the other. */
function neighboursFold(a: Corner, shared: Corner, b: Corner): boolean {
  if (side(a, shared, b) !== 0) return false;
  const dx = shared.x.minus(a.x).times(b.x.minus(shared.x));
  const dy = shared.y.minus(a.y).times(b.y.minus(shared.y));
  return dx.plus(dy).isNegative();
}

function crossing(corners: readonly Corner[], i: number, j: number): boolean {
  const n = corners.length;
  const at = (k: number): Corner => corners[k % n] as Corner;
  if ((i + 1) % n === j) return neighboursFold(at(i), at(j), at(j + 1));
  if ((j + 1) % n === i) return neighboursFold(at(j), at(i), at(i + 1));
  return meet(at(i), at(i + 1), at(j), at(j + 1));
}

const crossingOf = (corners: readonly Corner[], path = ''): readonly [number, number] | undefined =>
  firstCrossing(corners, (i, j) => crossing(corners, i, j), path);

/** True for a ring that does not meet itself. */
export const isSimple = (corners: readonly Corner[]): boolean => crossingOf(corners) === undefined;
const ringBoxes = new WeakMap<readonly Corner[], { sides: Box[]; all: Omit<Box, 'index'> }>();

/** The boxes of the sides of a ring and the box around all of them, kept while the ring lives. */
function boxesOf(ring: readonly Corner[]): { sides: Box[]; all: Omit<Box, 'index'> } {
  let known = ringBoxes.get(ring);
  if (!known) {
    const sides = boxesAround(ring, ...flatOf(ring));
    const all = { x0: Infinity, x1: -Infinity, y0: Infinity, y1: -Infinity };
    for (const { x0, x1, y0, y1 } of sides) {
      all.x0 = Math.min(all.x0, x0);
      all.x1 = Math.max(all.x1, x1);
      all.y0 = Math.min(all.y0, y0);
      all.y1 = Math.max(all.y1, y1);
    }
    known = { sides, all };
    ringBoxes.set(ring, known);
  }
  return known;
}

const boxesApart = (p: Omit<Box, 'index'>, q: Omit<Box, 'index'>): boolean =>
  p.x0 > q.x1 || q.x0 > p.x1 || p.y0 > q.y1 || q.y0 > p.y1;

/** True when two rings certainly have nothing in common: the boxes around them lie apart. */
export const ringsFarApart = (a: readonly Corner[], b: readonly Corner[]): boolean =>
  boxesApart(boxesOf(a).all, boxesOf(b).all);

/** True when two rings share a point of their sides. */
export function ringsMeet(a: readonly Corner[], b: readonly Corner[]): boolean {
  const [{ sides: first, all: p0 }, { sides: second, all: q0 }] = [boxesOf(a), boxesOf(b)];
  if (boxesApart(p0, q0)) return false;
  const at = (ring: readonly Corner[], k: number): Corner => ring[k % ring.length] as Corner;
  return first.some((p) =>
    second.some(
      (q) =>
        !boxesApart(p, q) && meet(at(a, p.index), at(a, p.index + 1), at(b, q.index), at(b, q.index + 1)),
    ),
  );
}

/** True when a point lies on a side of the ring. */
export function onRing(point: Corner, ring: readonly Corner[]): boolean {
  const [x, y] = [point.x.toNumber(), point.y.toNumber()];
  // Boxes are widened by a hair, so only sides that the point may lie on are looked at exactly.
  return boxesOf(ring).sides.some(({ x0, x1, y0, y1, index }) => {
    if (x < x0 || x > x1 || y < y0 || y > y1) return false;
    const [a, b] = [ring[index] as Corner, ring[(index + 1) % ring.length] as Corner];
    return side(a, b, point) === 0 && onSide(a, b, point);
  });
}

/** True when a point that lies on no side of the ring is inside it, by counting crossings exactly. */
export function insideRing(point: Corner, ring: readonly Corner[]): boolean {
  let inside = false;
  const y = point.y.toNumber();
  for (const { y0, y1, index } of boxesOf(ring).sides) {
    // Sides above or below cannot be crossed by a ray to the right.
    if (y < y0 || y > y1) continue;
    const a = ring[index] as Corner;
    const b = ring[(index + 1) % ring.length] as Corner;
    if (a.y.greaterThan(point.y) === b.y.greaterThan(point.y)) continue;
    const turn = side(a, b, point);
    if (turn > 0 === b.y.greaterThan(a.y)) inside = !inside;
  }
  return inside;
}

/**
 * Refuse an outline that is not one simple ring.
 *
 * @returns twice its signed area
 *
 * @throws {InputError} `repeated-point`, `zero-area`, `self-crossing`, `too-many`
 */
export function checkSimple(corners: readonly Corner[], path: string): Decimal {
  const last = corners.length - 1;
  corners.forEach((corner, i) => {
    const before = corners[i === 0 ? last : i - 1] as Corner;
    if (corner.x.equals(before.x) && corner.y.equals(before.y)) refuse(path, faults.repeatedPoint(i));
  });
  const double = doubleArea(corners);
  if (double.isZero()) refuse(path, faults.zeroArea());
  const [i, j] = crossingOf(corners, path) ?? [];
  if (i !== undefined && j !== undefined) refuse(path, faults.selfCrossing(i, j));
  return double;
}

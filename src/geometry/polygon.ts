/**
 * Straight-sided outlines: signed area, perimeter, and whether the outline meets itself.
 *
 * Twice the area is the sum of cross products of neighboring corners (the surveyor's formula),
 * exact in decimals.
 */

import { Decimal, distance, ZERO } from '../quantity/decimal';
import * as sharedFaults from '../quantity/faults';
import { refuse } from '../reckoning/calculation';
import { apartAlong, firstCrossing, type Look, lookAt, type Span } from './crossings';
import * as faults from './faults';

/** A corner in meters. */
export interface Corner {
  readonly x: Decimal;
  readonly y: Decimal;
}

/** Twice the signed area: positive when the corners run counterclockwise. */
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

/** Neighbors share their corner by right; they cross only when one folds back over the other. */
function neighborsFold(a: Corner, shared: Corner, b: Corner): boolean {
  if (side(a, shared, b) !== 0) return false;
  const dx = shared.x.minus(a.x).times(b.x.minus(shared.x));
  const dy = shared.y.minus(a.y).times(b.y.minus(shared.y));
  return dx.plus(dy).isNegative();
}

function crossing(corners: readonly Corner[], i: number, j: number): boolean {
  const n = corners.length;
  const at = (k: number): Corner => corners[k % n] as Corner;
  if ((i + 1) % n === j) return neighborsFold(at(i), at(j), at(j + 1));
  if ((j + 1) % n === i) return neighborsFold(at(j), at(i), at(i + 1));
  return meet(at(i), at(i + 1), at(j), at(j + 1));
}

const crossingOf = (corners: readonly Corner[], path = ''): readonly [number, number] | undefined =>
  firstCrossing(corners, (i, j) => crossing(corners, i, j), path);

/** True for a ring that does not meet itself. */
export const isSimple = (corners: readonly Corner[]): boolean => crossingOf(corners) === undefined;

/** True when two rings certainly have nothing in common: all of one lies beside all of the other. */
export function ringsFarApart(a: readonly Corner[], b: readonly Corner[]): boolean {
  const [p, q] = [lookAt(a), lookAt(b)];
  const beside = (one: Span, other: Span): boolean => one.least > other.most || other.least > one.most;
  return beside(p.x, q.x) || beside(p.y, q.y);
}

const sideOf = (ring: readonly Corner[], i: number): [Corner, Corner] => [
  ring[i] as Corner,
  ring[(i + 1) % ring.length] as Corner,
];

/** The sides of a ring that reach into the box around another. */
function sidesNear({ flat, x, y }: Look, other: Look): number[] {
  const near: number[] = [];
  const off = ({ from, to }: Span, i: number, { least, most }: Span): boolean =>
    (from[i] as number) > most || (to[i] as number) < least;
  for (let i = 0; i < flat.xs.length; i += 1) {
    if (!off(x, i, other.x) && !off(y, i, other.y)) near.push(i);
  }
  return near;
}

/** True when two rings share a point of their sides. */
export function ringsMeet(a: readonly Corner[], b: readonly Corner[]): boolean {
  if (ringsFarApart(a, b)) return false;
  const [p, q] = [lookAt(a), lookAt(b)];
  // A small ring meets a large one in a few of its sides only: the others are looked at once, not once a side.
  const [mine, theirs] = [sidesNear(p, q), sidesNear(q, p)];
  return mine.some((i) =>
    theirs.some(
      (j) =>
        !apartAlong(p.x, i, q.x, j) && !apartAlong(p.y, i, q.y, j) && meet(...sideOf(a, i), ...sideOf(b, j)),
    ),
  );
}

/** True where a number is certainly off a side along one axis. */
const offSide = ({ from, to }: Span, i: number, at: number): boolean =>
  at < (from[i] as number) || at > (to[i] as number);

/** True when a point lies on a side of the ring. */
export function onRing(point: Corner, ring: readonly Corner[]): boolean {
  const look = lookAt(ring);
  const [x, y] = [point.x.toNumber(), point.y.toNumber()];
  // Sides are widened by a hair, so only those that the point may lie on are looked at exactly.
  return ring.some((_, i) => {
    if (offSide(look.x, i, x) || offSide(look.y, i, y)) return false;
    const [a, b] = sideOf(ring, i);
    return side(a, b, point) === 0 && onSide(a, b, point);
  });
}

/** True when a point that lies on no side of the ring is inside it, by counting crossings exactly. */
export function insideRing(point: Corner, ring: readonly Corner[]): boolean {
  const look = lookAt(ring);
  const y = point.y.toNumber();
  let inside = false;
  for (let i = 0; i < ring.length; i += 1) {
    // Sides above or below cannot be crossed by a ray to the right.
    if (offSide(look.y, i, y)) continue;
    const [a, b] = sideOf(ring, i);
    if (a.y.greaterThan(point.y) === b.y.greaterThan(point.y)) continue;
    if (side(a, b, point) > 0 === b.y.greaterThan(a.y)) inside = !inside;
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
    if (corner.x.equals(before.x) && corner.y.equals(before.y)) refuse(path, sharedFaults.repeatedPoint(i));
  });
  const double = doubleArea(corners);
  if (double.isZero()) refuse(path, faults.zeroArea());
  const [i, j] = crossingOf(corners, path) ?? [];
  if (i !== undefined && j !== undefined) refuse(path, faults.selfCrossing(i, j));
  return double;
}

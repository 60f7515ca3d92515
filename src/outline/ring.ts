/**
 * Outlines as rings of corners, placed in the plane.
 *
 * A rectangle lies from the origin along x by its length and along y by its width. An L has its
 * notch at the far corner, a U in the middle of its far side. A trapezoid stands on its first parallel side, the other centered above
 * it. A triangle has its first side along x. A circle, centered on the origin, becomes a regular
 * polygon of {@link CIRCLE_SIDES} sides, and other arcs are cut up as finely; a sector has its center at
 * the origin and starts along x. A taped outline and a walk start at the origin along x. Rings run
 * counterclockwise.
 */

import { alongOf, type Edge } from '../geometry/arc';
import { type Corner, checkSimple, doubleArea } from '../geometry/polygon';
import { Decimal, PI, ZERO } from '../quantity/decimal';
import { constant } from '../quantity/make';
import { canonicalValue, type Quantity } from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import { cornersOf } from './corners';
import { edgesOf } from './curved';
import * as faults from './faults';
import { checkFits } from './fits';
import type { Outline, OutlineOf } from './outline';
import { tapedCorners, walkAround } from './place';

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

type Notch = readonly [L: Decimal, W: Decimal, l: Decimal, w: Decimal];

function notchOf(outline: OutlineOf<'L'> | OutlineOf<'U'>): Notch {
  const { length, width, notchLength, notchWidth } = outline;
  return [length, width, notchLength, notchWidth].map(canonicalValue) as unknown as Notch;
}

function ell(outline: OutlineOf<'L'>): Corner[] {
  const [L, W, l, w] = notchOf(outline);
  return [
    corner(ZERO, ZERO),
    corner(L, ZERO),
    corner(L, W.minus(w)),
    corner(L.minus(l), W.minus(w)),
    corner(L.minus(l), W),
    corner(ZERO, W),
  ];
}

function you(outline: OutlineOf<'U'>): Corner[] {
  const [L, W, l, w] = notchOf(outline);
  const left = L.minus(l).div(2);
  const right = left.plus(l);
  return [
    corner(ZERO, ZERO),
    corner(L, ZERO),
    corner(L, W),
    corner(right, W),
    corner(right, W.minus(w)),
    corner(left, W.minus(w)),
    corner(left, W),
    corner(ZERO, W),
  ];
}

/** A regular polygon about the origin, its first corner along x but for the turn. */
export function regularRing(sides: Quantity<'count'>, side: Length, turned?: Quantity<'angle'>): Corner[] {
  const n = canonicalValue(sides).toNumber();
  const radius = canonicalValue(side).div(Decimal.sin(PI.div(n)).times(2));
  const start = turned ? canonicalValue(turned).times(PI).div(HALF_TURN) : ZERO;
  return directions(start, PI.times(2).div(n), n).map((at) => outBy(radius, at));
}

const HALF_TURN = 180;

const outBy = (radius: Decimal, { x, y }: Corner): Corner => corner(radius.times(x), radius.times(y));

/** A sine that is zero but for its 60th digit is zero. */
const neat = (n: Decimal): Decimal => (n.abs().lessThan('1e-50') ? ZERO : n);

/** Points along an arc about the origin, at most as far apart as the sides that stand in for a circle. */
function arcPoints(radius: Decimal, from: Decimal, to: Decimal): Corner[] {
  const turn = to.minus(from);
  const steps = Math.max(1, Math.ceil(turn.abs().div(PI.times(2)).times(CIRCLE_SIDES).toNumber()));
  return directions(from, turn.div(steps), steps + 1).map((at) => outBy(radius, at));
}

function sector({ radius, angle, innerRadius }: OutlineOf<'sector'>): Corner[] {
  const turn = canonicalValue(angle).times(PI).div(180);
  const outer = arcPoints(canonicalValue(radius), ZERO, turn);
  if (!innerRadius) return [...outer, corner(ZERO, ZERO)];
  return [...outer, ...arcPoints(canonicalValue(innerRadius), turn, ZERO)];
}

/** So many points on the circle of radius 1 from an angle on, each turned on from the last: sines are slow. */
function directions(from: Decimal, by: Decimal, count: number): Corner[] {
  const [cos, sin] = [Decimal.cos(by), Decimal.sin(by)];
  let at = corner(Decimal.cos(from), Decimal.sin(from));
  return Array.from({ length: count }, () => {
    const { x, y } = at;
    at = corner(x.times(cos).minus(y.times(sin)), y.times(cos).plus(x.times(sin)));
    return corner(neat(x), neat(y));
  });
}

/** Points of an edge from its first corner to just before its last. */
function edgePoints(edge: Edge, outwards: 1 | -1): Corner[] {
  if (!edge.arc) return [edge.from];
  const { radius, angle } = edge.arc;
  const steps = Math.max(2, Math.ceil(angle.div(PI.times(2)).times(CIRCLE_SIDES).toNumber()));
  const { x: ux, y: uy } = alongOf(edge);
  // Along the chord, and square to it toward the arc.
  const side = edge.rise.isNegative() ? -outwards : outwards;
  const depth = radius.minus(edge.rise.abs());
  return directions(angle.div(-2), angle.div(steps), steps).map(({ x: cos, y: sin }) => {
    const along = edge.chord.div(2).plus(radius.times(sin));
    const up = radius.times(cos).minus(depth).times(side);
    return corner(
      edge.from.x.plus(ux.times(along)).plus(uy.times(up)),
      edge.from.y.plus(uy.times(along)).minus(ux.times(up)),
    );
  });
}

function curved({ points }: OutlineOf<'curved'>, path: string): Corner[] {
  const corners = cornersOf(points);
  const edges = edgesOf(points, corners, `${path}.points`);
  const outwards = doubleArea(corners).isNegative() ? -1 : 1;
  const ring = edges.flatMap((edge) => edgePoints(edge, outwards));
  checkSimple(ring, `${path}.points`);
  return ring;
}

/** In a list of its own: what is known of a ring is kept by its list. */
const counterclockwise = (ring: Corner[]): Corner[] =>
  doubleArea(ring).isNegative() ? [...ring].reverse() : ring;

function checked(ring: Corner[], path: string): Corner[] {
  checkSimple(ring, path);
  return counterclockwise(ring);
}
/** The corners on a circle of radius 1, and how far its sides are from the center. Slow to reckon, so kept. */
const unitCircle = constant(() => {
  const half = PI.div(CIRCLE_SIDES);
  const corners = directions(ZERO, half.times(2), CIRCLE_SIDES);
  return { corners, toSide: Decimal.cos(half) };
});

/** A regular polygon in place of a circle about the origin. */
export function circleRing(diameter: Length, lies: CircleSide): Corner[] {
  const { corners, toSide } = unitCircle();
  const radius = canonicalValue(diameter).div(2);
  const r = lies === 'inside' ? radius : radius.div(toSide);
  return corners.map((at) => outBy(r, at));
}

/**
 * The corners of an outline in meters, counterclockwise, checked to be one simple ring. Of a ring outline
 * the outer edge: {@link holeOf} has the other.
 *
 * @param path - where the outline stands in the input, for errors
 * @throws {InputError} as `measure` does; `not-placed` for areas, offsets and combined outlines
 */
export function ringOf(outline: Outline, path = 'outline', circles: CircleSide = 'inside'): Corner[] {
  checkFits(outline, path);
  switch (outline.shape) {
    case 'rectangle':
      return box(canonicalValue(outline.length), canonicalValue(outline.width));
    case 'circle':
      return circleRing(outline.diameter, circles);
    case 'ring':
      return circleRing(outline.outerDiameter, circles);
    case 'sector':
      return sector(outline);
    case 'triangle':
      return triangle(outline.sides, path);
    case 'trapezoid':
      return trapezoid(outline.parallel, outline.height);
    case 'L':
      return ell(outline);
    case 'U':
      return you(outline);
    case 'regular':
      return regularRing(outline.sides, outline.side);
    case 'polygon':
      return checked(cornersOf(outline.points), `${path}.points`);
    case 'taped':
      return checked(tapedCorners(outline, path), `${path}.sides`);
    case 'walk':
      return checked(walkAround(outline, path).corners, `${path}.legs`);
    case 'curved':
      return counterclockwise(curved(outline, path));
    case 'area':
      return refuse(path, faults.notPlaced('an outline by its area alone'));
    case 'offsets':
      return refuse(path, faults.notPlaced('an outline by offsets'));
    case 'combined':
      return refuse(path, faults.notPlaced('a combined outline'));
  }
}

/** The hole in the middle of a ring. */
export const holeOf = (outline: Outline): Corner[] | undefined =>
  outline.shape === 'ring' ? circleRing(outline.innerDiameter, 'outside') : undefined;

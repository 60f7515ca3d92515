/**
 * A surface through points of known height, made of triangles, over an outline.
 *
 * The library triangulates in binary numbers; which corners belong together is all that is taken from
 * it. Four points or more on one circle make a cell with a middle at their mean, see `cells.ts`, so
 * that nothing depends on the order of the points. Areas, heights and volumes are then exact decimals,
 * but for triangles that a re-entrant corner cuts: those are clipped in binary numbers.
 */
import Delaunator from 'delaunator';
import { Decimal, ZERO } from '../quantity/decimal';
import { celled } from './cells';
import { type Corner, doubleArea } from './polygon';

/** A point of the surface. */
export interface Spot extends Corner {
  readonly z: Decimal;
}

/** Three spots, counterclockwise. */
export type Triangle = readonly [Spot, Spot, Spot];

/** The middle of a cell: the mean of its corners, height and all. */
function middleOf(spots: readonly Spot[]): Spot {
  const mean = (pick: (spot: Spot) => Decimal): Decimal =>
    spots.reduce((sum, spot) => sum.plus(pick(spot)), ZERO).div(spots.length);
  return { x: mean((s) => s.x), y: mean((s) => s.y), z: mean((s) => s.z) };
}

/** The triangles between spots. */
export function trianglesOf(spots: readonly Spot[]): Triangle[] {
  const [x, y] = [new Float64Array(spots.length), new Float64Array(spots.length)];
  const flat = new Float64Array(spots.length * 2);
  // Counted from the first spot, so that coordinates far from the origin lose nothing.
  spots.forEach((spot, i) => {
    x[i] = spot.x.minus((spots[0] as Spot).x).toNumber();
    y[i] = spot.y.minus((spots[0] as Spot).y).toNumber();
    flat[2 * i] = x[i] as number;
    flat[2 * i + 1] = y[i] as number;
  });
  const { triangles, halfedges } = new Delaunator(flat);
  const { corner, rings } = celled(x, y, { corner: triangles, twin: halfedges });
  const all = [...spots, ...rings.map((ring) => middleOf(ring.map((v) => spots[v] as Spot)))];
  const found: Triangle[] = [];
  for (let i = 0; i < corner.length; i += 3) {
    const [a, b, c] = [0, 1, 2].map((k) => all[corner[i + k] as number] as Spot) as [Spot, Spot, Spot];
    // The library turns its triangles clockwise on a page with y down, so counterclockwise with y up.
    found.push(doubleArea([a, b, c]).isNegative() ? [a, c, b] : [a, b, c]);
  }
  return found;
}

/** True for an outline without re-entrant corners. */
export const isConvex = (ring: readonly Corner[]): boolean =>
  ring.every((b, i) => {
    const a = ring[(i + ring.length - 1) % ring.length] as Corner;
    const c = ring[(i + 1) % ring.length] as Corner;
    return !b.x
      .minus(a.x)
      .times(c.y.minus(b.y))
      .minus(b.y.minus(a.y).times(c.x.minus(b.x)))
      .isNegative();
  });

/** Twice the area, and that times the sum of three heights: divided by 2 and 6 only at the end. */
interface Doubled {
  readonly area: Decimal;
  readonly volume: Decimal;
}

/** Area, and area times height, of a part of the surface. */
export interface Part {
  readonly area: Decimal;
  readonly volume: Decimal;
}

const NOTHING: Doubled = { area: ZERO, volume: ZERO };

const whole = (triangle: Triangle): Doubled => {
  const area = doubleArea(triangle);
  const [a, b, c] = triangle;
  return { area, volume: area.times(a.z.plus(b.z).plus(c.z)) };
};

type Flat = readonly [x: number, y: number];

/** What of a ring lies to the left of the line from p to q; sides that double back cancel out. */
function leftOf(ring: readonly Flat[], [px, py]: Flat, [qx, qy]: Flat): Flat[] {
  const kept: Flat[] = [];
  const off = ([x, y]: Flat): number => (qx - px) * (y - py) - (qy - py) * (x - px);
  let a = ring[ring.length - 1];
  if (!a) return kept;
  let offA = off(a);
  for (const b of ring) {
    const offB = off(b);
    if (offA < 0 !== offB < 0) {
      const s = offA / (offA - offB);
      kept.push([a[0] + s * (b[0] - a[0]), a[1] + s * (b[1] - a[1])]);
    }
    if (offB >= 0) kept.push(b);
    [a, offA] = [b, offB];
  }
  return kept;
}

/** Twice the area of a ring, and its first moments from `o`. */
function moments(ring: readonly Flat[], [ox, oy]: Flat): { area: number; x: number; y: number } {
  let [area, x, y] = [0, 0, 0];
  for (let i = 0; i < ring.length; i += 1) {
    const [px, py] = ring[i] as Flat;
    const [qx, qy] = ring[(i + 1) % ring.length] as Flat;
    const [ax, ay, bx, by] = [px - ox, py - oy, qx - ox, qy - oy];
    const cross = ax * by - bx * ay;
    area += cross;
    x += (ax + bx) * cross;
    y += (ay + by) * cross;
  }
  return { area, x: x / 3, y: y / 3 };
}

/** Shares of a triangle that close to none or all of it are rounding. */
const TRIFLE = 1e-9;
const DIGITS = 15;

/** A ring in binary numbers, counted from its first corner. */
export function flatRing(ring: readonly Corner[]): Flat[] {
  const o = ring[0] as Corner;
  return ring.map(({ x, y }): Flat => [x.minus(o.x).toNumber(), y.minus(o.y).toNumber()]);
}

type FlatTriangle = readonly [Flat, Flat, Flat];

/** How far p lies to the left of the line from a to b, times the length of that line. */
const leftBy = (a: Flat, b: Flat, p: Flat): number =>
  (b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0]);

/** True when the line through a and b has all of these points on one side, or on it. */
function oneSided(a: Flat, b: Flat, hair: number, points: readonly Flat[]): boolean {
  const off = points.map((p) => leftBy(a, b, p));
  return off.every((d) => d <= hair) || off.every((d) => d >= -hair);
}

/** True where a side of the outline may run through a triangle; sides along its own do not. */
function mayCross(triangle: FlatTriangle, p: Flat, q: Flat): boolean {
  const [a, b, c] = triangle;
  const [px, py, qx, qy] = [p[0], p[1], q[0], q[1]];
  if (Math.max(px, qx) <= Math.min(a[0], b[0], c[0]) || Math.min(px, qx) >= Math.max(a[0], b[0], c[0])) {
    return false;
  }
  if (Math.max(py, qy) <= Math.min(a[1], b[1], c[1]) || Math.min(py, qy) >= Math.max(a[1], b[1], c[1])) {
    return false;
  }
  const hair = TRIFLE * leftBy(a, b, c);
  if (oneSided(p, q, hair, triangle)) return false;
  const outside = (from: Flat, to: Flat): boolean =>
    leftBy(from, to, p) <= hair && leftBy(from, to, q) <= hair;
  return !(outside(a, b) || outside(b, c) || outside(c, a));
}

/** True when a point is inside the ring, by counting crossings. */
function insideFlat([x, y]: Flat, ring: readonly Flat[]): boolean {
  let inside = false;
  let b = ring[ring.length - 1] as Flat;
  for (const a of ring) {
    if (a[1] > y !== b[1] > y && x < ((b[0] - a[0]) * (y - a[1])) / (b[1] - a[1]) + a[0]) inside = !inside;
    b = a;
  }
  return inside;
}

interface Clipped {
  /** The share of the triangle that is within. */
  readonly share: number;
  readonly part: { readonly area: number; readonly x: number; readonly y: number };
}

/** A triangle clipped by an outline; most are wholly in or out, which a look at their middle tells. */
function clipped(corners: FlatTriangle, outline: readonly Flat[]): Clipped {
  const [a, b, c] = corners;
  let from = outline[outline.length - 1] as Flat;
  const crossed = outline.some((to) => {
    const crosses = mayCross(corners, from, to);
    from = to;
    return crosses;
  });
  if (!crossed) {
    const middle: Flat = [(a[0] + b[0] + c[0]) / 3, (a[1] + b[1] + c[1]) / 3];
    return { share: insideFlat(middle, outline) ? 1 : 0, part: { area: 0, x: 0, y: 0 } };
  }
  const part = moments(leftOf(leftOf(leftOf(outline, a, b), b, c), c, a), a);
  return { share: Math.abs(part.area / leftBy(a, b, c)), part };
}

const flatCorners = (triangle: Triangle, o: Corner): FlatTriangle =>
  triangle.map(({ x, y }): Flat => [x.minus(o.x).toNumber(), y.minus(o.y).toNumber()]) as [Flat, Flat, Flat];

/** The share of a triangle that lies within an outline, from 0 to 1, good to nine places. */
export function shareWithin(triangle: Triangle, first: Corner, outline: readonly Flat[]): number {
  if (doubleArea(triangle).isZero()) return 0;
  return clipped(flatCorners(triangle, first), outline).share;
}

/** Height of a triangle over its first corner, per meter along x and y. */
function rise([a, b, c]: Triangle, [p, q, r]: FlatTriangle): Flat {
  const [bx, by, cx, cy] = [q[0] - p[0], q[1] - p[1], r[0] - p[0], r[1] - p[1]];
  const [bz, cz] = [b.z.minus(a.z).toNumber(), c.z.minus(a.z).toNumber()];
  const turn = bx * cy - by * cx;
  return [(bz * cy - cz * by) / turn, (cz * bx - bz * cx) / turn];
}

const decimal = (n: number): Decimal => new Decimal(n.toPrecision(DIGITS));

function within(triangle: Triangle, corners: FlatTriangle, outline: readonly Flat[]): Doubled {
  const { share, part } = clipped(corners, outline);
  if (share <= TRIFLE) return NOTHING;
  if (share >= 1 - TRIFLE) return whole(triangle);
  const [gx, gy] = rise(triangle, corners);
  const turned = part.area < 0 ? -1 : 1;
  const area = decimal(turned * part.area);
  const more = decimal(turned * (gx * part.x + gy * part.y));
  return { area, volume: area.times(triangle[0].z).plus(more).times(3) };
}

const plus = (a: Doubled, b: Doubled): Doubled => ({
  area: a.area.plus(b.area),
  volume: a.volume.plus(b.volume),
});

interface Placed {
  readonly triangle: Triangle;
  readonly corners: FlatTriangle;
}

/** Fewer triangles or sides than these are compared each with each. */
const FEW = 16;

type Axis = 0 | 1;

/** From where to where triangles reach along an axis. */
function reachOf(placed: readonly Placed[], axis: Axis): [least: number, most: number] {
  let [least, most] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const { corners } of placed) {
    for (const corner of corners) {
      least = Math.min(least, corner[axis]);
      most = Math.max(most, corner[axis]);
    }
  }
  return [least, most];
}

/** What of a ring lies in the box around triangles. */
function boxed(ring: readonly Flat[], placed: readonly Placed[]): Flat[] {
  const [[left, right], [low, high]] = [reachOf(placed, 0), reachOf(placed, 1)];
  const above = leftOf(leftOf(ring, [left, low], [right, low]), [right, high], [left, high]);
  return leftOf(leftOf(above, [left, high], [left, low]), [right, low], [right, high]);
}

/** Triangles that have an area, in binary numbers from the first corner of the outline. */
const placedBy = (triangles: readonly Triangle[], first: Corner): Placed[] =>
  triangles
    .filter((triangle) => !doubleArea(triangle).isZero())
    .map((triangle) => ({ triangle, corners: flatCorners(triangle, first) }));

/** Triangles clipped by an outline: by halves, each with the part of the outline that is near. */
function allWithin(placed: readonly Placed[], outline: readonly Flat[]): Doubled {
  if (placed.length <= FEW || outline.length <= FEW) {
    return placed.reduce(
      (sum, { triangle, corners }) => plus(sum, within(triangle, corners, outline)),
      NOTHING,
    );
  }
  const length = (axis: Axis): number => {
    const [least, most] = reachOf(placed, axis);
    return most - least;
  };
  const axis: Axis = length(0) > length(1) ? 0 : 1;
  const middle = ({ corners: [a, b, c] }: Placed): number => a[axis] + b[axis] + c[axis];
  const sorted = [...placed].sort((a, b) => middle(a) - middle(b));
  const half = sorted.length >> 1;
  const halves = [sorted.slice(0, half), sorted.slice(half)];
  return halves.map((part) => allWithin(part, boxed(outline, part))).reduce(plus);
}

/** So many digits hold every length that is written; sums in another order differ beyond them. */
const HELD = 50;

/**
 * Area and volume under the surface through the spots, over a simple ring whose corners are among them.
 */
export function underSurface(spots: readonly Spot[], outline: readonly Corner[]): Part {
  const triangles = trianglesOf(spots);
  const sum = isConvex(outline)
    ? triangles.reduce((total, triangle) => plus(total, whole(triangle)), NOTHING)
    : allWithin(placedBy(triangles, outline[0] as Corner), flatRing(outline));
  return {
    area: sum.area.div(2).toSignificantDigits(HELD),
    volume: sum.volume.div(6).toSignificantDigits(HELD),
  };
}

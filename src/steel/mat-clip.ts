/**
 * Lines of bar clipped to an outline: where a straight line is inside a region and at least the cover
 * away from its boundary.
 *
 * The part of a line that is nearer to a side than the cover is one stretch, where the line crosses
 * the side widened by the cover with round ends. Taking these stretches from what is inside leaves
 * what a bar may fill; no outline has to be shrunk. Binary numbers in metres: the error is below a
 * thousandth of a millimetre, and lengths are rounded down to whole cutting steps afterwards.
 */
import type { Corner } from '../geometry/polygon';
import type { Rings } from '../geometry/region';

/** A point in metres. */
export interface Spot {
  readonly x: number;
  readonly y: number;
}

/** A side of the boundary in coordinates along and across a direction. */
export interface Side {
  readonly u0: number;
  readonly v0: number;
  readonly u1: number;
  readonly v1: number;
}

/** From one place to another along a line. */
export type Stretch = readonly [from: number, to: number];

/** A direction in plan and its normal. */
export interface Direction {
  readonly cos: number;
  readonly sin: number;
}

/** A direction from degrees; quarter turns are exact. */
export function directionOf(degrees: number): Direction {
  const quarter = degrees / 90;
  if (Number.isInteger(quarter)) {
    const at = ((quarter % 4) + 4) % 4;
    return { cos: [1, 0, -1, 0][at] as number, sin: [0, 1, 0, -1][at] as number };
  }
  const angle = (degrees * Math.PI) / 180;
  return { cos: Math.cos(angle), sin: Math.sin(angle) };
}

export const alongOf = ({ cos, sin }: Direction, { x, y }: Spot): number => x * cos + y * sin;
export const acrossOf = ({ cos, sin }: Direction, { x, y }: Spot): number => y * cos - x * sin;
export const spotAt = ({ cos, sin }: Direction, u: number, v: number): Spot => ({
  x: u * cos - v * sin,
  y: u * sin + v * cos,
});

/** The rings in plain metres: the outer one anticlockwise, openings clockwise, so the slab is on the left. */
export function spotsOf({ outer, openings }: Rings): Spot[][] {
  const plain = (ring: Rings['outer']): Spot[] =>
    ring.map(({ x, y }) => ({ x: x.toNumber(), y: y.toNumber() }));
  return [plain(outer), ...openings.map((ring) => plain(ring).reverse())];
}

/** Spots laid out from the first corner put back to where that corner stands. */
export function backTo(origin: Corner): (spots: readonly Spot[]) => Spot[] {
  const [dx, dy] = [origin.x.toNumber(), origin.y.toNumber()];
  return (spots) => spots.map(({ x, y }) => ({ x: x + dx, y: y + dy }));
}

/** All sides of the rings in the coordinates of a direction. */
export function sidesOf(rings: readonly (readonly Spot[])[], direction: Direction): Side[] {
  return rings.flatMap((ring) => {
    const turned = ring.map((p) => [alongOf(direction, p), acrossOf(direction, p)] as const);
    return turned.map(([u0, v0], i) => {
      const [u1, v1] = turned[(i + 1) % turned.length] as readonly [number, number];
      return { u0, v0, u1, v1 };
    });
  });
}

/** The sides that come within `room` of the line at `v`, in the coordinates of a direction. */
export function sidesNear(
  rings: readonly (readonly Spot[])[],
  direction: Direction,
  v: number,
  room: number,
): Side[] {
  const near: Side[] = [];
  for (const ring of rings) {
    let a = ring.at(-1) as Spot;
    let v0 = acrossOf(direction, a);
    for (const b of ring) {
      const v1 = acrossOf(direction, b);
      if (Math.min(v0, v1) <= v + room && Math.max(v0, v1) >= v - room) {
        near.push({ u0: alongOf(direction, a), v0, u1: alongOf(direction, b), v1 });
      }
      [a, v0] = [b, v1];
    }
  }
  return near;
}

/** Room for the last digits of a binary number, in metres. */
export const FUZZ = 1e-7;

/** A line on the very boundary is neither in nor out, so a cover of nothing is taken as this. */
export const LEAST_COVER = 1e-6;

/** Half the chord of a disc of radius r at distance d from its centre; negative when there is none. */
const halfChord = (r: number, d: number): number => (Math.abs(d) < r ? Math.sqrt(r * r - d * d) : -1);

/** The part of `low ≤ at + slope × u ≤ high`; undefined where there is none. */
function band(at: number, slope: number, low: number, high: number): Stretch | undefined {
  if (slope === 0) return at >= low && at <= high ? [-Infinity, Infinity] : undefined;
  const [a, b] = [(low - at) / slope, (high - at) / slope];
  return a < b ? [a, b] : [b, a];
}

/** Where the line across at `v` is nearer than `r` to a side. */
function nearSide({ u0, v0, u1, v1 }: Side, v: number, r: number): Stretch | undefined {
  let [from, to] = [Infinity, -Infinity];
  for (const [u, w] of [
    [u0, v0],
    [u1, v1],
  ] as const) {
    const half = halfChord(r, v - w);
    if (half < 0) continue;
    from = Math.min(from, u - half);
    to = Math.max(to, u + half);
  }
  const long = Math.hypot(u1 - u0, v1 - v0);
  const [cu, cv] = [(u1 - u0) / long, (v1 - v0) / long];
  // Beside the side: within r square to it, and between its ends along it.
  const beside = band(u0 * cv + (v - v0) * cu, -cv, -r, r);
  const between = band(-u0 * cu + (v - v0) * cv, cu, 0, long);
  if (beside && between) {
    const [a, b] = [Math.max(beside[0], between[0]), Math.min(beside[1], between[1])];
    if (a < b) [from, to] = [Math.min(from, a), Math.max(to, b)];
  }
  return from < to ? [from, to] : undefined;
}

/** Where the line at `v` is inside, from the sides that it crosses. */
export function insideAt(sides: readonly Side[], v: number): Stretch[] {
  const crossings: number[] = [];
  for (const { u0, v0, u1, v1 } of sides) {
    if (v0 > v !== v1 > v) crossings.push(u0 + ((v - v0) * (u1 - u0)) / (v1 - v0));
  }
  crossings.sort((a, b) => a - b);
  const inside: Stretch[] = [];
  for (let i = 0; i + 1 < crossings.length; i += 2) {
    inside.push([crossings[i] as number, crossings[i + 1] as number]);
  }
  return inside;
}

/** Stretches that overlap or meet made into one, in rising order. */
function joined(stretches: readonly Stretch[]): Stretch[] {
  const out: [number, number][] = [];
  for (const [from, to] of [...stretches].sort((a, b) => a[0] - b[0])) {
    const last = out.at(-1);
    if (last && from <= last[1]) last[1] = Math.max(last[1], to);
    else out.push([from, to]);
  }
  return out;
}

/** What is left of stretches in rising order when others are taken away: both are walked along once. */
function without(whole: readonly Stretch[], taken: readonly Stretch[]): Stretch[] {
  const away = joined(taken);
  const left: Stretch[] = [];
  let k = 0;
  for (const [from, to] of whole) {
    while (k < away.length && (away[k] as Stretch)[1] <= from) k += 1;
    let at = from;
    // The last one taken here may reach into the next stretch, so it is looked at again.
    for (let n = k; n < away.length && (away[n] as Stretch)[0] < to; n += 1) {
      const [a, b] = away[n] as Stretch;
      if (a > at) left.push([at, a]);
      at = Math.max(at, b);
      k = n;
    }
    if (at < to) left.push([at, to]);
  }
  return left;
}

/**
 * Where a bar may lie on the line at `v`.
 *
 * @param sides - all sides that come within the cover of the line, in the coordinates of its direction
 * @param cover - in metres, greater than zero
 */
export function clearAt(sides: readonly Side[], v: number, cover: number): Stretch[] {
  const r = cover - FUZZ;
  const near = sides.flatMap((side) => {
    const stretch = nearSide(side, v, r);
    return stretch ? [stretch] : [];
  });
  return without(insideAt(sides, v), near);
}

/** The least and the greatest distance across of the sides. */
export function spanOf(sides: readonly Side[]): Stretch {
  let [low, high] = [Infinity, -Infinity];
  for (const { v0 } of sides) [low, high] = [Math.min(low, v0), Math.max(high, v0)];
  return [low, high];
}

/** Sides by the lines that they come near: a line then looks only at those. */
export function sidesByLine(
  sides: readonly Side[],
  first: number,
  spacing: number,
  lines: number,
  cover: number,
): Side[][] {
  const by: Side[][] = Array.from({ length: lines }, () => []);
  for (const side of sides) {
    const low = Math.min(side.v0, side.v1) - cover;
    const high = Math.max(side.v0, side.v1) + cover;
    const from = spacing > 0 ? Math.max(0, Math.ceil((low - first) / spacing)) : 0;
    const to = spacing > 0 ? Math.min(lines - 1, Math.floor((high - first) / spacing)) : lines - 1;
    for (let i = from; i <= to; i += 1) by[i]?.push(side);
  }
  return by;
}

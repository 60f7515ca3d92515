/** Rings and lines in exact decimals: turning, cutting, crossing. */

import type { Corner } from '../../geometry/polygon';
import { Decimal, ONE, ZERO } from '../../quantity/decimal';
import { spot } from './orthogonal';
import type { Axis } from './space';

/** A turn about the origin, by its cosine and sine. */
export interface Turn {
  readonly cos: Decimal;
  readonly sin: Decimal;
}

/** No turn at all. */
export const STRAIGHT: Turn = { cos: ONE, sin: ZERO };

export const isStraight = ({ cos, sin }: Turn): boolean => sin.isZero() && cos.isPositive();

/** A point turned back, so that a line in the direction of the turn comes to lie along x. */
export const turnedIn = ({ x, y }: Corner, { cos, sin }: Turn): Corner => ({
  x: x.times(cos).plus(y.times(sin)),
  y: y.times(cos).minus(x.times(sin)),
});

/** The way back. */
export const turnedOut = ({ x, y }: Corner, { cos, sin }: Turn): Corner => ({
  x: x.times(cos).minus(y.times(sin)),
  y: y.times(cos).plus(x.times(sin)),
});

/** Differences below this come from rounding in the 60th digit, in meters. */
const STRAY = new Decimal('1e-40');

export const same = (a: Decimal, b: Decimal): boolean => a.minus(b).abs().lessThanOrEqualTo(STRAY);

const acrossOf = (axis: Axis): Axis => (axis === 'x' ? 'y' : 'x');

const onLine = (axis: Axis, at: Decimal, v: Decimal): Corner =>
  axis === 'x' ? { x: at, y: v } : { x: v, y: at };

/** Where the side from a to b crosses a line. */
function crossing(a: Corner, b: Corner, axis: Axis, at: Decimal): Corner {
  const across = acrossOf(axis);
  const rise = b[across].minus(a[across]);
  if (rise.isZero()) return onLine(axis, at, a[across]);
  const part = rise.times(at.minus(a[axis])).div(b[axis].minus(a[axis]));
  return onLine(axis, at, a[across].plus(part));
}

/** From where to where a line runs within a ring, in order. */
export function runsWithin(ring: readonly Corner[], axis: Axis, at: Decimal): [Decimal, Decimal][] {
  const across = acrossOf(axis);
  const crossings: Decimal[] = [];
  ring.forEach((a, i) => {
    const b = ring[(i + 1) % ring.length] as Corner;
    if (a[axis].greaterThan(at) !== b[axis].greaterThan(at)) crossings.push(crossing(a, b, axis, at)[across]);
  });
  crossings.sort((p, q) => p.comparedTo(q));
  const runs: [Decimal, Decimal][] = [];
  for (let k = 0; k + 1 < crossings.length; k += 2) {
    const [from, to] = [crossings[k] as Decimal, crossings[k + 1] as Decimal];
    if (!same(from, to)) runs.push([from, to]);
  }
  return runs;
}

/** From where to where a line runs along sides of a ring: a joint along the edge of an opening is no joint. */
export function runsBeside(ring: readonly Corner[], axis: Axis, at: Decimal): [Decimal, Decimal][] {
  const across = acrossOf(axis);
  return ring.flatMap((a, i): [Decimal, Decimal][] => {
    const b = ring[(i + 1) % ring.length] as Corner;
    if (sideOf(a, axis, at) !== 0 || sideOf(b, axis, at) !== 0) return [];
    return [[Decimal.min(a[across], b[across]), Decimal.max(a[across], b[across])]];
  });
}

/** Runs less other runs. */
export function runsLess(
  runs: readonly (readonly [Decimal, Decimal])[],
  holes: readonly (readonly [Decimal, Decimal])[],
): [Decimal, Decimal][] {
  let left: [Decimal, Decimal][] = runs.map(([a, b]) => [a, b]);
  for (const [from, to] of holes) {
    left = left.flatMap(([a, b]): [Decimal, Decimal][] => {
      if (to.lessThanOrEqualTo(a) || from.greaterThanOrEqualTo(b)) return [[a, b]];
      const pieces: [Decimal, Decimal][] = [];
      if (from.greaterThan(a) && !same(from, a)) pieces.push([a, from]);
      if (to.lessThan(b) && !same(to, b)) pieces.push([to, b]);
      return pieces;
    });
  }
  return left;
}

/** The part of a ring that lies within a convex ring, counterclockwise. */
export function commonPart(ring: readonly Corner[], convex: readonly Corner[]): Corner[] {
  let part: readonly Corner[] = ring;
  for (let i = 0; i < convex.length && part.length > 0; i += 1) {
    part = leftOf(part, convex[i] as Corner, convex[(i + 1) % convex.length] as Corner);
  }
  return [...part];
}

/** Depths nearer to nought than this are reckoned exactly; square meters. */
const NEAR = 1e-9;

/** Which side of the line from p to q each corner lies on: in binary numbers where that is certain. */
function depthsFrom(ring: readonly Corner[], p: Corner, q: Corner): { sign: number; exact: () => Decimal }[] {
  const [dx, dy] = [q.x.minus(p.x), q.y.minus(p.y)];
  const [ux, uy] = [dx.toNumber(), dy.toNumber()];
  const { x: px, y: py } = spot(p);
  return ring.map((c) => {
    const exact = (): Decimal => dx.times(c.y.minus(p.y)).minus(dy.times(c.x.minus(p.x)));
    const { x, y } = spot(c);
    const near = ux * (y - py) - uy * (x - px);
    return { sign: Math.abs(near) > NEAR ? Math.sign(near) : exact().comparedTo(ZERO), exact };
  });
}

function leftOf(ring: readonly Corner[], p: Corner, q: Corner): readonly Corner[] {
  const depths = depthsFrom(ring, p, q);
  if (depths.every(({ sign }) => sign >= 0)) return ring;
  const kept: Corner[] = [];
  ring.forEach((a, i) => {
    const j = (i + 1) % ring.length;
    const [da, db] = [depths[i], depths[j]] as [(typeof depths)[number], (typeof depths)[number]];
    if (da.sign >= 0) kept.push(a);
    if (da.sign * db.sign < 0) kept.push(between(a, ring[j] as Corner, da.exact(), db.exact()));
  });
  return kept;
}

/** The point of the side where the depth is nought; exact where the side runs along x or y. */
function between(a: Corner, b: Corner, da: Decimal, db: Decimal): Corner {
  const whole = da.minus(db);
  const at = (from: Decimal, to: Decimal): Decimal =>
    from.equals(to) ? from : from.plus(to.minus(from).times(da).div(whole));
  return { x: at(a.x, b.x), y: at(a.y, b.y) };
}

interface Chain {
  readonly points: Corner[];
}

/** Places farther from a line than this are told apart in binary numbers, in meters. */
const CLEAR = 1e-8;

/** On which side of a line a corner lies; nought on it. */
function sideOf(c: Corner, axis: Axis, at: Decimal, nearly = at.toNumber()): number {
  const near = spot(c)[axis] - nearly;
  if (Math.abs(near) > CLEAR) return near;
  return same(c[axis], at) ? 0 : c[axis].comparedTo(at);
}

/** The least and the most that a ring comes to along an axis: compared in binary numbers where that is certain. */
export function endsOf(ring: readonly Corner[], axis: Axis): [Decimal, Decimal] {
  const first = ring[0] as Corner;
  let [lo, hi] = [first[axis], first[axis]];
  let [low, high] = [spot(first)[axis], spot(first)[axis]];
  for (const corner of ring) {
    const at = spot(corner)[axis];
    if (at < low - CLEAR || (at <= low + CLEAR && corner[axis].lessThan(lo))) [lo, low] = [corner[axis], at];
    if (at > high + CLEAR || (at >= high - CLEAR && corner[axis].greaterThan(hi)))
      [hi, high] = [corner[axis], at];
  }
  return [lo, hi];
}

/** On which side of a line each corner of a ring lies. */
type SidesOf = ReadonlyMap<Corner, number>;

/** Parts of a simple ring strictly on one side of a line, each closed along the line. */
function sideParts(
  ring: readonly Corner[],
  sides: SidesOf,
  axis: Axis,
  at: Decimal,
  above: boolean,
): Corner[][] {
  const kept = (c: Corner): boolean => {
    const side = sides.get(c) as number;
    return above ? side > 0 : side < 0;
  };
  const start = ring.findIndex(
    (c, i) => kept(c) && !kept(ring[(i + ring.length - 1) % ring.length] as Corner),
  );
  if (start < 0) return ring.some(kept) ? [[...ring]] : [];
  return closed(chainsFrom(ring, start, kept, axis, at), axis);
}

function chainsFrom(
  ring: readonly Corner[],
  start: number,
  kept: (c: Corner) => boolean,
  axis: Axis,
  at: Decimal,
): Chain[] {
  const chains: Chain[] = [];
  let open: Chain | undefined;
  for (let k = 0; k < ring.length; k += 1) {
    const before = ring[(start + k + ring.length - 1) % ring.length] as Corner;
    const here = ring[(start + k) % ring.length] as Corner;
    const after = ring[(start + k + 1) % ring.length] as Corner;
    if (!kept(here)) continue;
    if (!kept(before)) {
      open = { points: [end(before, here, axis, at)] };
      chains.push(open);
    }
    open?.points.push(here);
    if (!kept(after)) open?.points.push(end(here, after, axis, at));
  }
  return chains;
}

/** Where a side meets the line; a corner that lies on it is taken as it is. */
function end(a: Corner, b: Corner, axis: Axis, at: Decimal): Corner {
  if (sideOf(a, axis, at) === 0) return a;
  return sideOf(b, axis, at) === 0 ? b : crossing(a, b, axis, at);
}

/** Join the chains along the line: sorted along it, the ends belong together two by two. */
function closed(chains: readonly Chain[], axis: Axis): Corner[][] {
  const across = acrossOf(axis);
  const ends = chains.flatMap((chain, i) => [
    { chain: i, first: true, v: (chain.points[0] as Corner)[across] },
    { chain: i, first: false, v: (chain.points.at(-1) as Corner)[across] },
  ]);
  ends.sort((p, q) => p.v.comparedTo(q.v));
  const next = new Map<number, number>();
  for (let k = 0; k + 1 < ends.length; k += 2) {
    const p = ends[k];
    let q = ends[k + 1];
    if (!p || !q) continue;
    const third = ends[k + 2];
    if (p.first === q.first && third && same(third.v, q.v)) {
      // Two chains that touch the line at one point: take the one that leads on.
      ends[k + 1] = third;
      ends[k + 2] = q;
      q = third;
    }
    if (p.first) next.set(q.chain, p.chain);
    else next.set(p.chain, q.chain);
  }
  return joined(chains, next);
}

function joined(chains: readonly Chain[], next: ReadonlyMap<number, number>): Corner[][] {
  const used = new Set<number>();
  const rings: Corner[][] = [];
  for (let i = 0; i < chains.length; i += 1) {
    const ring: Corner[] = [];
    for (let k: number | undefined = i; k !== undefined && !used.has(k); k = next.get(k)) {
      used.add(k);
      ring.push(...(chains[k] as Chain).points);
    }
    if (ring.length > 2) rings.push(ring);
  }
  return rings;
}

/** Drop corners that repeat the one before. */
const tidy = (ring: readonly Corner[]): Corner[] =>
  ring.filter((c, i) => {
    const before = ring[(i + ring.length - 1) % ring.length] as Corner;
    const near = spot(before);
    return !(sideOf(c, 'x', before.x, near.x) === 0 && sideOf(c, 'y', before.y, near.y) === 0);
  });

/** Cut a simple ring along a line. */
export function split(ring: readonly Corner[], axis: Axis, at: Decimal): Corner[][] {
  const nearly = at.toNumber();
  const sides = new Map(ring.map((c) => [c, sideOf(c, axis, at, nearly)]));
  return [...sideParts(ring, sides, axis, at, false), ...sideParts(ring, sides, axis, at, true)]
    .map(tidy)
    .filter((part) => part.length > 2);
}

/** Random simple rings, hollow in places, on a coarse grid or off it, and plain rings as the code has them. */
import type { Corner } from '../../../src/geometry/polygon';
import { doubleArea } from '../../../src/geometry/polygon';
import { Decimal } from '../../../src/quantity/decimal';

export type Pair = [number, number];

export const corners = (ring: readonly (readonly [number, number])[]): Corner[] =>
  ring.map(([x, y]) => ({ x: new Decimal(x), y: new Decimal(y) }));

export const pairs = (ring: readonly Corner[]): Pair[] =>
  ring.map(({ x, y }) => [x.toNumber(), y.toNumber()]);

/** Uniform from a seed: Lehmer's generator. */
export function drawn(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
}

/** Points around a middle in order of their angle: a simple ring, hollow in places. */
export function starAround(next: () => number, [x, y]: Pair, most: number, grid: number): Pair[] {
  const n = 3 + Math.floor(next() * 6);
  return Array.from({ length: n }, (_, i): Pair => {
    const [angle, r] = [(2 * Math.PI * (i + 0.9 * next())) / n, most * (0.3 + 0.7 * next())];
    const at = (v: number): number => (grid > 0 ? Math.round(v / grid) * grid + 0 : v);
    return [at(x + r * Math.cos(angle)), at(y + r * Math.sin(angle))];
  });
}

/** Simple and turning left over all, with no side of no length. */
export function isRing(ring: readonly Pair[]): boolean {
  const cross = (a: Pair, b: Pair, c: Pair): number =>
    (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
  const n = ring.length;
  const meet = (i: number, j: number): boolean => {
    const [a, b, c, d] = [ring[i], ring[(i + 1) % n], ring[j], ring[(j + 1) % n]] as [Pair, Pair, Pair, Pair];
    return cross(a, b, c) * cross(a, b, d) <= 0 && cross(c, d, a) * cross(c, d, b) <= 0;
  };
  for (let i = 0; i < n; i += 1) {
    if (cross(ring[i] as Pair, ring[(i + 1) % n] as Pair, ring[(i + 2) % n] as Pair) === 0) return false;
    for (let j = i + 2; j < n; j += 1) if ((j + 1) % n !== i && meet(i, j)) return false;
  }
  return doubleArea(corners(ring)).isPositive();
}

/** Cells as cuts across a slab leave them: square, and slanted. */
export const BOX: Pair[] = [
  [0, 0],
  [4, 0],
  [4, 3],
  [0, 3],
];

export const CELLS: Pair[][] = [
  BOX,
  [
    [0, 0],
    [4, 0],
    [3, 3],
  ],
  [
    [0, 1],
    [1, 0],
    [4, 0],
    [4, 2],
    [2, 3],
    [0, 3],
  ],
];

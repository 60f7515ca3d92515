/**
 * The sides of an outline seen in one direction, and the sides that lie beside each of many lines.
 *
 * Lines are visited from the lowest to the highest. Sides are taken up when the first line reaches them and laid
 * down when the lines have passed them, so that nothing is kept for each line.
 */
import { acrossOf, alongOf, type Direction, type Spot } from './mat-clip';

/** All sides of the rings in the coordinates of a direction. */
export interface Sides {
  readonly count: number;
  /** Where each side begins and ends: `u` along the direction, `v` across it. */
  readonly u0: Float64Array;
  readonly v0: Float64Array;
  readonly u1: Float64Array;
  readonly v1: Float64Array;
  /** The least and the greatest place across. */
  readonly low: number;
  readonly high: number;
}

/** The sides of rings as they lie in a direction. */
export function sidesOf(rings: readonly (readonly Spot[])[], direction: Direction): Sides {
  const count = rings.reduce((n, ring) => n + ring.length, 0);
  const numbers = (): Float64Array => new Float64Array(count);
  const [u0, v0, u1, v1] = [numbers(), numbers(), numbers(), numbers()];
  let [first, low, high] = [0, Infinity, -Infinity];
  for (const ring of rings) {
    ring.forEach((spot, k) => {
      const [u, v] = [alongOf(direction, spot), acrossOf(direction, spot)];
      // A corner begins its own side and ends the one before.
      const [i, before] = [first + k, first + (k === 0 ? ring.length : k) - 1];
      [u0[i], v0[i], u1[before], v1[before]] = [u, v, u, v];
      [low, high] = [Math.min(low, v), Math.max(high, v)];
    });
    first += ring.length;
  }
  return { count, u0, v0, u1, v1, low, high };
}

/** What each line looks at, from low to high across the direction: both rise from line to line. */
export interface Bands {
  readonly count: number;
  low(i: number): number;
  high(i: number): number;
}

/** Sides by where they begin across the direction. */
function inOrder({ count, v0, v1 }: Sides): { order: number[]; bottom: Float64Array; top: Float64Array } {
  const bottom = v0.map((v, i) => Math.min(v, v1[i] as number));
  const top = v0.map((v, i) => Math.max(v, v1[i] as number));
  const order = Array.from({ length: count }, (_, i) => i);
  order.sort((a, b) => (bottom[a] as number) - (bottom[b] as number));
  return { order, bottom, top };
}

/**
 * Visit each line with the sides that come into its band.
 *
 * @param visit - is given the line, and how many sides there are at the front of the list
 */
export function sweep(
  sides: Sides,
  bands: Bands,
  visit: (line: number, near: Uint32Array, count: number) => void,
): void {
  const { order, bottom, top } = inOrder(sides);
  const near = new Uint32Array(sides.count);
  let [held, taken] = [0, 0];
  for (let line = 0; line < bands.count; line += 1) {
    const [low, high] = [bands.low(line), bands.high(line)];
    for (; taken < order.length && (bottom[order[taken] as number] as number) <= high; taken += 1) {
      near[held] = order[taken] as number;
      held += 1;
    }
    let kept = 0;
    for (let k = 0; k < held; k += 1) {
      const side = near[k] as number;
      if ((top[side] as number) < low) continue;
      near[kept] = side;
      kept += 1;
    }
    held = kept;
    visit(line, near, held);
  }
}

/**
 * How often a side and a band come together, at most: known before any work is done on them.
 *
 * @param room - how far a band reaches over both sides of its line together
 */
export function nearness({ count, v0, v1 }: Sides, spacing: number, lines: number, room: number): number {
  if (spacing === 0) return count * lines;
  let near = 0;
  for (let i = 0; i < count; i += 1) {
    const high = Math.abs((v1[i] as number) - (v0[i] as number));
    near += Math.min(lines, (high + room) / spacing + 1);
  }
  return near;
}

/**
 * Rings in binary numbers, as two lists: a search cuts thousands of cells out of an outline, and a corner made for
 * each would take longer than what is done with it.
 */
import type { Spot } from './orthogonal';
import type { Axis } from './space';

/** A ring that is written over by the next cut; `count` corners of the lists belong to it. */
export class FlatRing {
  x = new Float64Array(0);
  y = new Float64Array(0);
  count = 0;

  /** Empty, with room for so many corners. */
  clear(most: number): void {
    if (this.x.length < most) {
      this.x = new Float64Array(most);
      this.y = new Float64Array(most);
    }
    this.count = 0;
  }

  add(x: number, y: number): void {
    this.x[this.count] = x;
    this.y[this.count] = y;
    this.count += 1;
  }

  /** The same corners in lists of their own. */
  kept(): FlatRing {
    const copy = new FlatRing();
    copy.x = this.x.slice(0, this.count);
    copy.y = this.y.slice(0, this.count);
    copy.count = this.count;
    return copy;
  }
}

export function flatRing(ring: readonly Spot[]): FlatRing {
  const flat = new FlatRing();
  flat.clear(ring.length);
  for (const { x, y } of ring) flat.add(x, y);
  return flat;
}

/** Write the part of a ring above a line across an axis, or below it, into another. */
export function cutAcross(ring: FlatRing, axis: Axis, at: number, above: boolean, into: FlatRing): void {
  const { count } = ring;
  // Each side adds its end and a crossing at most.
  into.clear(2 * count);
  const [along, across] = axis === 'x' ? [ring.x, ring.y] : [ring.y, ring.x];
  const put = (u: number, v: number): void => (axis === 'x' ? into.add(u, v) : into.add(v, u));
  const sign = above ? 1 : -1;
  let a = count - 1;
  let da = count > 0 ? sign * ((along[a] as number) - at) : 0;
  for (let b = 0; b < count; b += 1) {
    const db = sign * ((along[b] as number) - at);
    if ((da > 0 && db < 0) || (da < 0 && db > 0)) {
      const from = across[a] as number;
      put(at, from + (((across[b] as number) - from) * da) / (da - db));
    }
    if (db >= 0) put(along[b] as number, across[b] as number);
    a = b;
    da = db;
  }
}

export function areaOf({ x, y, count }: FlatRing): number {
  let sum = 0;
  for (let a = 0; a < count; a += 1) {
    const b = a + 1 < count ? a + 1 : 0;
    sum += (x[a] as number) * (y[b] as number) - (x[b] as number) * (y[a] as number);
  }
  return Math.abs(sum) / 2;
}

/** How long a ring is over all along an axis. */
export function extent(ring: FlatRing, axis: Axis): number {
  const values = ring[axis];
  let lo = Number.POSITIVE_INFINITY;
  let hi = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < ring.count; i += 1) {
    lo = Math.min(lo, values[i] as number);
    hi = Math.max(hi, values[i] as number);
  }
  return hi - lo;
}

/** How a ring turns at a corner, in radians, to the left if positive. */
export function turnAt({ x, y, count }: FlatRing, i: number): number {
  const [a, c] = [(i + count - 1) % count, (i + 1) % count];
  const [ux, uy] = [(x[i] as number) - (x[a] as number), (y[i] as number) - (y[a] as number)];
  const [vx, vy] = [(x[c] as number) - (x[i] as number), (y[c] as number) - (y[i] as number)];
  return Math.atan2(ux * vy - uy * vx, ux * vx + uy * vy);
}

/**
 * Rings in binary numbers, as two lists: a search cuts thousands of cells out of an outline, and a corner made for
 * each would take longer than what is done with it.
 */
import type { Spot } from './orthogonal';
import { HAIR } from './rules';
import type { Axis } from './space';

/** A ring that is written over by the next cut; `count` corners of the lists belong to it. */
export class FlatRing {
  x = new Float64Array(0);
  y = new Float64Array(0);
  count = 0;
  /** Parts of it may hang together along a line alone. */
  parted = false;

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

  /** True where the edge would go back along an axis from its k-th corner, having come from the j-th. */
  private folds(j: number, k: number, x: number, y: number): boolean {
    const back = (u: Float64Array, v: Float64Array, c: number, d: number): boolean => {
      const [a, b] = [u[k] as number, v[k] as number];
      return Math.abs((u[j] as number) - a) + Math.abs(c - a) < HAIR && (b - (v[j] as number)) * (d - b) < 0;
    };
    return back(this.x, this.y, x, y) || back(this.y, this.x, y, x);
  }

  private isAt(k: number, x: number, y: number): boolean {
    return Math.abs((this.x[k] as number) - x) < HAIR && Math.abs((this.y[k] as number) - y) < HAIR;
  }

  /** Take out spikes, where the edge goes back on itself, and corners that come twice: they hide how sharp they are. */
  tidy(): void {
    const { x, y, count } = this;
    this.count = 0;
    for (let i = 0; i < count; i += 1) {
      const [u, v] = [x[i] as number, y[i] as number];
      while (this.count > 1 && this.folds(this.count - 2, this.count - 1, u, v)) this.count -= 1;
      if (this.count === 0 || !this.isAt(this.count - 1, u, v)) this.add(u, v);
    }
    for (let last = this.count - 1; last > 1; last = this.count - 1) {
      const [u, v] = [x[0] as number, y[0] as number];
      if (!this.isAt(last, u, v) && !this.folds(last - 1, last, u, v)) {
        if (!this.folds(last, 0, x[1] as number, y[1] as number)) return;
        // The first is left out, and the last comes in its place.
        [x[0], y[0]] = [x[last] as number, y[last] as number];
      }
      this.count -= 1;
    }
  }

  /** The same corners in lists of their own. */
  kept(): FlatRing {
    const copy = new FlatRing();
    copy.x = this.x.slice(0, this.count);
    copy.y = this.y.slice(0, this.count);
    copy.count = this.count;
    copy.parted = this.parted;
    return copy;
  }
}

export function flatRing(ring: readonly Spot[]): FlatRing {
  const flat = new FlatRing();
  flat.clear(ring.length);
  for (const { x, y } of ring) flat.add(x, y);
  return flat;
}

/** Write the part of a ring above a line across an axis, or below it, into another, without spikes along the line. */
export function cutAcross(ring: FlatRing, axis: Axis, at: number, above: boolean, into: FlatRing): void {
  const { count } = ring;
  // Each side adds its end and a crossing at most.
  into.clear(2 * count);
  const [along, across] = axis === 'x' ? [ring.x, ring.y] : [ring.y, ring.x];
  const put = (u: number, v: number): void => (axis === 'x' ? into.add(u, v) : into.add(v, u));
  const sign = above ? 1 : -1;
  let a = count - 1;
  let da = count > 0 ? sign * ((along[a] as number) - at) : 0;
  let [crossings, on] = [0, 0];
  for (let b = 0; b < count; b += 1) {
    const db = sign * ((along[b] as number) - at);
    if (da * db < 0) {
      const from = across[a] as number;
      put(at, from + (((across[b] as number) - from) * da) / (da - db));
      crossings += 1;
    }
    if (db >= 0) put(along[b] as number, across[b] as number);
    if (Math.abs(db) < HAIR) on += 1;
    a = b;
    da = db;
  }
  // Edges run back on themselves only along the line, or where parts that hung together are cut in two.
  if (on > 0 || ring.parted) into.tidy();
  into.parted = ring.parted || crossings + on > 2;
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

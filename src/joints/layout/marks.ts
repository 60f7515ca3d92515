/**
 * The points that a line of one axis or the other is to meet, and how many of them a cell leaves unmet.
 *
 * How many lie in a rectangle is told by four sums over all rectangles from the first corner.
 */
import { PASSED } from './rules';
import type { Axis } from './space';

/** A point that a line of one axis or the other is to meet. */
export interface Mark {
  readonly x: number;
  readonly y: number;
  /** It may be passed by, and weighs so much where it is. */
  readonly spared?: number;
}

/** Places of marks in order along an axis, from the first up to but without the last. */
export interface Ranks {
  readonly from: number;
  readonly to: number;
}

const NONE: Ranks = { from: 0, to: 0 };

/** Where the first value not below a limit stands. */
function firstFrom(values: Float64Array, limit: number): number {
  let [lo, hi] = [0, values.length];
  while (lo < hi) {
    const mid = (lo + hi) >> 1;
    if ((values[mid] as number) < limit) lo = mid + 1;
    else hi = mid;
  }
  return lo;
}

const placesOf = (marks: readonly Mark[], axis: Axis): Float64Array =>
  Float64Array.from(new Set(marks.map((m) => m[axis]))).sort();

/** Sums of a table of sums between two of its rows (`x`) or columns, along the other way. */
export function summedAlong(
  sums: Uint16Array | Int32Array,
  axis: Axis,
  from: number,
  to: number,
  wide: number,
): Int32Array {
  if (axis === 'y') {
    return Int32Array.from(
      { length: sums.length / wide },
      (_, i) => (sums[i * wide + to] as number) - (sums[i * wide + from] as number),
    );
  }
  const [low, high] = [from * wide, to * wide];
  return Int32Array.from({ length: wide }, (_, j) => (sums[high + j] as number) - (sums[low + j] as number));
}

/** Marks between two lines of one axis: how many lie before each place of the other. */
interface Along {
  readonly must: Int32Array | undefined;
  readonly may: Int32Array | undefined;
}

/** What marks weigh that lie between two of those places as well; infinite where one of them must be met. */
export function unmetIn(along: Along | undefined, from: number, to: number): number {
  if (!along || to === 0) return 0;
  const { must, may } = along;
  if (must && (must[to] as number) > (must[from] as number)) return Number.POSITIVE_INFINITY;
  return may ? PASSED * ((may[to] as number) - (may[from] as number)) : 0;
}

/** All marks of a slab. */
export class Marks {
  private readonly places: Readonly<Record<Axis, Float64Array>>;
  /** Marks that must be met, and those that may be passed by, in rectangles from the first corner. */
  private readonly must: Uint16Array | undefined;
  private readonly may: Uint16Array | undefined;

  constructor(
    marks: readonly Mark[],
    private readonly hair: number,
  ) {
    this.places = { x: placesOf(marks, 'x'), y: placesOf(marks, 'y') };
    const [must, may] = [marks.filter((m) => !m.spared), marks.filter((m) => m.spared)];
    this.must = must.length > 0 ? this.sumsOf(must) : undefined;
    this.may = may.length > 0 ? this.sumsOf(may) : undefined;
  }

  /** How many places marks have along an axis. */
  count(axis: Axis): number {
    return this.places[axis].length;
  }

  private sumsOf(marks: readonly Mark[]): Uint16Array {
    const { x: xs, y: ys } = this.places;
    const wide = ys.length + 1;
    const sums = new Uint16Array((xs.length + 1) * wide);
    for (const { x, y, spared = 1 } of marks) {
      const at = (firstFrom(xs, x) + 1) * wide + firstFrom(ys, y) + 1;
      sums[at] = (sums[at] as number) + spared;
    }
    for (let at = wide + 1; at < sums.length; at += 1) {
      if (at % wide === 0) continue;
      const around = (sums[at - 1] as number) + (sums[at - wide] as number) - (sums[at - wide - 1] as number);
      sums[at] = (sums[at] as number) + around;
    }
    return sums;
  }

  /** Which marks lie strictly between two lines. */
  between(axis: Axis, lo: number, hi: number): Ranks {
    const places = this.places[axis];
    let from = firstFrom(places, lo + this.hair);
    while (from < places.length && (places[from] as number) <= lo + this.hair) from += 1;
    const to = firstFrom(places, hi - this.hair);
    return to > from ? { from, to } : NONE;
  }

  private within(sums: Uint16Array, x: Ranks, y: Ranks): number {
    const wide = this.places.y.length + 1;
    const [low, high] = [x.from * wide, x.to * wide];
    return (
      (sums[high + y.to] as number) -
      (sums[low + y.to] as number) -
      (sums[high + y.from] as number) +
      (sums[low + y.from] as number)
    );
  }

  /** The marks between two lines of one axis, summed up along the other; nothing where there are none. */
  along(axis: Axis, { from, to }: Ranks): Along | undefined {
    if (to === 0) return undefined;
    const summed = (sums: Uint16Array | undefined): Int32Array | undefined =>
      sums && summedAlong(sums, axis, from, to, this.places.y.length + 1);
    return { must: summed(this.must), may: summed(this.may) };
  }

  /** What the marks weigh that a cell leaves unmet; infinite where one of them must be met. */
  unmet(x: Ranks, y: Ranks): number {
    if (x.to === 0 || y.to === 0) return 0;
    if (this.must && this.within(this.must, x, y) > 0) return Number.POSITIVE_INFINITY;
    return this.may ? PASSED * this.within(this.may, x, y) : 0;
  }
}

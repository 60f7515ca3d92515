/**
 * What the search asks about a slab: how long a line is, and what a cell costs.
 *
 * A cell is what lies between two neighboring lines each way. The search works in binary numbers;
 * the figures are reckoned anew in exact decimals from the lines that it picks.
 */

/** Along x or along y. An `x` line is the line of all points with that x. */
export type Axis = 'x' | 'y';

/** The other axis. */
export const acrossOf = (axis: Axis): Axis => (axis === 'x' ? 'y' : 'x');

/** The space between two neighboring lines of one axis. */
export interface Gap {
  readonly lo: number;
  readonly hi: number;
  /** First and last strip of the space that it overlaps. */
  readonly first: number;
  readonly last: number;
  /** Points strictly between the two lines that must be met by a line of one axis or the other. */
  readonly marks: readonly Mark[];
  /** Gaps with one key, of two numbers, cost the same, whatever they are crossed with. */
  readonly key: readonly [number, number];
}

/** A place where a line may or must run. */
export interface Anchor {
  readonly at: number;
  /** A line must run here. */
  readonly must: boolean;
}

/** A slab as the search sees it. */
export interface Space {
  /** How much work one cell is, beside a cell of a slab with sides in two directions. */
  readonly effort: number;
  /** Work done so far to tell what panels cost: a unit is the adding of two numbers. */
  readonly work: number;
  /** In order, the first and last being the extent of the slab. */
  anchors(axis: Axis): readonly Anchor[];
  gap(axis: Axis, lo: number, hi: number): Gap;
  /** Sawn length of the whole line. */
  lineLength(axis: Axis, at: number): number;
  /** The widest that a panel in the gap can be, whatever the lines of the other axis. */
  widest(axis: Axis, gap: Gap): number;
  /** No straight joints in two directions can keep the spacing with less length than this. */
  leastLength(): number;
  /** What the panels between two gaps cost; infinite when they cannot be. */
  cost(x: Gap, y: Gap): number;
  /** True where there is slab between two gaps. */
  filled(x: Gap, y: Gap): boolean;
}

/** A point that a line of one axis or the other must meet. */
export interface Mark {
  readonly x: number;
  readonly y: number;
}

/** Marks in order along an axis. */
export const inOrderAlong = (marks: readonly Mark[], axis: Axis): readonly Mark[] =>
  [...marks].sort((p, q) => p[axis] - q[axis]);

/** How many of the marks, in order along an axis, do not lie beyond a place. */
function upTo(ordered: readonly Mark[], axis: Axis, at: number): number {
  let [lo, hi] = [0, ordered.length];
  while (lo < hi) {
    const mid = (lo + hi) >> 1;
    if ((ordered[mid] as Mark)[axis] <= at) lo = mid + 1;
    else hi = mid;
  }
  return lo;
}

/** No marks: by far the most gaps have none. */
const NONE: readonly Mark[] = [];

/** Marks strictly between two lines, and which of all in order they are. */
export function marksBetween(
  ordered: readonly Mark[],
  axis: Axis,
  lo: number,
  hi: number,
  hair: number,
): { readonly marks: readonly Mark[]; readonly from: number; readonly to: number } {
  const from = upTo(ordered, axis, lo + hair);
  let to = from;
  while (to < ordered.length && (ordered[to] as Mark)[axis] < hi - hair) to += 1;
  return to > from ? { marks: ordered.slice(from, to), from, to } : { marks: NONE, from: 0, to: 0 };
}

/** True when two gaps leave a mark unmet. */
export function leavesUnmet(x: Gap, y: Gap, hair: number): boolean {
  if (x.marks.length === 0 || y.marks.length === 0) return false;
  const few = x.marks.length <= y.marks.length ? x.marks : y.marks;
  const [axis, other]: [Axis, Gap] = few === x.marks ? ['y', y] : ['x', x];
  return few.some((m) => m[axis] > other.lo + hair && m[axis] < other.hi - hair);
}

/**
 * What the search asks about a slab: how long a line is, and what a cell costs.
 *
 * A cell is what lies between two neighboring lines each way. The search works in binary numbers;
 * the figures are reckoned anew in exact decimals from the lines that it picks.
 */

import type { Ranks } from './marks';

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
  /** Which of the points to be met lie strictly between the two lines. */
  readonly marks: Ranks;
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
  /** How much work one cell is, beside one of another slab. */
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
  /** What the panels between a gap and each of many across it cost, as many as go into the list; infinite when they cannot be. */
  costs(axis: Axis, gap: Gap, others: readonly Gap[], into: Float64Array): void;
  /** True where there is slab between two gaps. */
  filled(x: Gap, y: Gap): boolean;
}

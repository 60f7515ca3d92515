/** Bars on a timeline: stretches of time in rows, one row below another. */
import type { PlanPoint } from './frame';
import type { Sheet } from './sheet';
import type { Attributes } from './svg';

/** Shorter than this, in minutes, is no stretch. */
export const STRAY = 1e-6;

/** How the rows lie. */
export interface BarRows {
  /** Height of a bar. */
  readonly bar: number;
  /** The middle of each. */
  readonly middle: (i: number) => number;
}

/** The corners of a box of the plan. */
export const boxOf = (x0: number, x1: number, y0: number, y1: number): PlanPoint[] => [
  { x: x0, y: y0 },
  { x: x1, y: y0 },
  { x: x1, y: y1 },
  { x: x0, y: y1 },
];

/** Stretches of one kind, as one shape; nothing in a row that has none. */
export function drawBars(
  sheet: Sheet,
  { bar, middle }: BarRows,
  stretches: readonly (readonly [from: number, to: number] | undefined)[],
  look: Attributes,
  name: string,
): void {
  const half = bar / 2;
  const rings = stretches.flatMap((stretch, i) => {
    const [from, to] = stretch ?? [0, 0];
    return to - from > STRAY ? [boxOf(from, to, middle(i) - half, middle(i) + half)] : [];
  });
  if (rings.length > 0) sheet.shape(rings, { ...look, class: name });
}

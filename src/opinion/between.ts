/**
 * What a figure would be with another value in one place of the input, as far as the runs with some values there tell:
 * between two of them, or beyond, as a power of the value. Counts leap and plans change, so that it is a guess, the less
 * sure the more the figure moves from what was run.
 */
import type { Predicted, Sample } from './scene';

/** A guess of a figure, and how far off it may be, as a share of it. */
export interface Guess {
  readonly value: number;
  readonly within: number;
}

/** What a guess is off at the least. */
const LEAST = 0.02;
/** Of what the figure moves from the nearest run, so much may be wrong. */
const OF_WAY = 0.2;
/** Values so near each other, as a logarithm, tell little. */
const LITTLE = 0.1;
/** Nothing grows faster. */
const STEEPEST = 3;

const isPositive = (...of: number[]): boolean => of.every((n) => n > 0 && Number.isFinite(n));

/** How many times over a figure grows for each time its value does, on a scale of logarithms. */
function slopeOf(a: Sample, b: Sample, i: number): number {
  const [p, q] = [a.figures[i] as number, b.figures[i] as number];
  if (!isPositive(a.x, b.x, p, q) || a.x === b.x) return Number.NaN;
  const slope = Math.log(q / p) / Math.log(b.x / a.x);
  return Math.max(-STEEPEST, Math.min(STEEPEST, slope));
}

const away = (one: Sample, x: number): number => Math.abs(Math.log(one.x / x));

/**
 * One claimed figure at a value, from at least two runs.
 *
 * @param known - the runs, by their values
 * @returns nothing where they do not tell
 */
export function guessAt(known: readonly Sample[], x: number, i: number): Guess | undefined {
  if (!(x > 0) || known.length < 2) return undefined;
  const above = known.findIndex((one) => one.x >= x);
  const to = above < 0 ? known.length - 1 : Math.max(1, above);
  const [a, b] = [known[to - 1] as Sample, known[to] as Sample];
  // What is felt little so near says nothing of what lies farther off: the ends of all runs tell more.
  const isOutside = x < a.x || x > b.x;
  const [first, last] = isOutside ? [known[0] as Sample, known.at(-1) as Sample] : [a, b];
  const slope = slopeOf(first, last, i);
  const from = away(a, x) < away(b, x) ? a : b;
  const own = from.figures[i] as number;
  // A count that stays as it is a little off, or leaps, may be any other far off.
  const isUnknown = isOutside && away(first, last.x) < LITTLE && away(from, x) > LITTLE;
  if (!Number.isFinite(slope) || isUnknown) return undefined;
  const value = own * (x / from.x) ** slope;
  return { value, within: LEAST + OF_WAY * Math.abs(slope) * away(from, x) };
}

/** Runs of a value in order, with the one of the input itself. */
export const inOrder = (own: number, base: Predicted, samples: readonly Sample[]): Sample[] =>
  [{ x: own, figures: base }, ...samples].sort((a, b) => a.x - b.x);

/**
 * From which end each line of a mat is cut, so that laps lie apart and the fewest bars are bought.
 *
 * Two ways are tried: every line cut from the same end, its laps pulled back where they would come beside
 * those of the line before; or every second line turned end for end. Both are tried from either end and from
 * either side of the mat, so that a mat that is mirrored or turned a quarter comes to the same bars. The one
 * with the fewest laps in line is kept, then that for which the fewest bars are bought, then that with the
 * fewest lengths.
 */
import { firstFitBars } from '../solve/stock/first-fit';
import { type CutRule, Cutter, type Piece, TooManyBars } from './mat-laps';
import type { Stretch } from './stretches';

/** The lines of one way, counted out. */
export interface CutLines {
  /** The pieces line by line, in their places. */
  readonly pieces: () => readonly (readonly Piece[])[];
  readonly laps: number;
  readonly inLine: number;
  /** Every piece is as long as the stock allows, with no laps in line: nothing is bought in vain. */
  readonly ideal: boolean;
  /** How many of each length, in cutting steps. */
  readonly counts: ReadonlyMap<number, number>;
}

/** Lines to be cut, with the size of their bar: pieces of one size share the bars that they are cut from. */
export interface LinesToCut {
  readonly stretches: readonly (readonly Stretch[])[];
  readonly cut: CutRule;
  readonly size: string;
}

interface Way {
  /** Every second line is turned end for end. */
  readonly byTurns: boolean;
  readonly fromEnd: boolean;
  /** Beginning with the last line. */
  readonly downward: boolean;
}

const YES_OR_NO = [false, true] as const;

const WAYS: readonly Way[] = [true, false].flatMap((byTurns) =>
  YES_OR_NO.flatMap((fromEnd) => YES_OR_NO.map((downward) => ({ byTurns, fromEnd, downward }))),
);

/**
 * Cut all lines one way.
 *
 * Only what has been counted is kept: there are many ways and many pieces, and one way is taken in the end.
 *
 * @param keep - is given each piece with its line
 */
function cutAll(
  { stretches, cut }: LinesToCut,
  { byTurns, fromEnd, downward }: Way,
  limit: number,
  keep: (line: number, from: number, steps: number) => void = () => undefined,
): Omit<CutLines, 'pieces'> {
  const counts = new Map<number, number>();
  const cutter = new Cutter(cut);
  // Most pieces are as long as the stock: they are counted apart.
  let [line, bars, full] = [0, 0, 0];
  const take = (from: number, steps: number): void => {
    if (steps === cut.stock) full += 1;
    else counts.set(steps, (counts.get(steps) ?? 0) + 1);
    bars += 1;
    keep(line, from, steps);
  };
  for (let k = 0; k < stretches.length; k += 1) {
    line = downward ? stretches.length - 1 - k : k;
    const end = byTurns && k % 2 === 1 ? !fromEnd : fromEnd;
    for (const stretch of stretches[line] as readonly Stretch[]) cutter.cut(stretch, end, take);
    cutter.nextLine();
    if (bars > limit) throw new TooManyBars();
  }
  if (full > 0) counts.set(cut.stock, full);
  const { laps, inLine, short } = cutter;
  return { laps, inLine, ideal: inLine + short === 0, counts };
}

/** The lines cut one way, their pieces placed when they are asked for. */
function cutBy(lines: LinesToCut, way: Way, limit: number): CutLines {
  const pieces = (): Piece[][] => {
    const placed: Piece[][] = lines.stretches.map(() => []);
    cutAll(lines, way, limit, (line, from, steps) => placed[line]?.push({ from, steps }));
    // From whichever end they were cut, they are listed from one end to the other.
    for (const line of placed) line.sort((a, b) => a.from - b.from);
    return placed;
  };
  return { ...cutAll(lines, way, limit), pieces };
}

const keyOf = (counts: ReadonlyMap<number, number>): string =>
  [...counts]
    .sort((a, b) => b[0] - a[0])
    .map(([steps, n]) => `${steps}:${n}`)
    .join();

/**
 * The ways to cut the lines that come to different lists. By turns comes first: where nothing has to be cut
 * short for it, from whichever end, it is the only one.
 */
function candidates(lines: LinesToCut, limit: number): CutLines[] {
  const known = new Map<string, CutLines>();
  for (const way of WAYS) {
    const done = cutBy(lines, way, limit);
    if (done.ideal) return [done];
    const key = `${done.inLine} ${keyOf(done.counts)}`;
    if (!known.has(key)) known.set(key, done);
  }
  return best(lines, [...known.values()]);
}

/** The few that are worth looking at together with those of the other way. */
const WORTH_PAIRING = 2;

function best({ cut }: LinesToCut, all: readonly CutLines[]): CutLines[] {
  const scored = all.map((one) => ({ one, score: scoreOf([one, NONE], true, cut.stock) }));
  return scored
    .sort((a, b) => (lower(a.score, b.score) ? -1 : 1))
    .slice(0, WORTH_PAIRING)
    .map(({ one }) => one);
}

function together(...all: readonly ReadonlyMap<number, number>[]): Map<number, number> {
  const sum = new Map<number, number>();
  for (const counts of all) for (const [steps, n] of counts) sum.set(steps, (sum.get(steps) ?? 0) + n);
  return sum;
}

/** Bars that longest-first fitting takes for these lengths. */
export function barsFor(counts: ReadonlyMap<number, number>, stock: number): number {
  const list = [...counts].sort((a, b) => b[0] - a[0]);
  return firstFitBars(list, stock);
}

/** What is kept low, in this order; a text at the end settles what is equal so far. */
type Score = readonly [inLine: number, bars: number, lengths: number, steps: number, list: string];

function scoreOf(pair: Pair, sameSize: boolean, stock: number): Score {
  const [a, b] = pair;
  const all = together(a.counts, b.counts);
  const bars = sameSize ? barsFor(all, stock) : barsFor(a.counts, stock) + barsFor(b.counts, stock);
  const steps = [...all].reduce((sum, [each, n]) => sum + each * n, 0);
  return [a.inLine + b.inLine, bars, a.counts.size + b.counts.size, steps, keyOf(all)];
}

function lower(a: Score, b: Score): boolean {
  const at = a.findIndex((value, i) => value !== b[i]);
  return at >= 0 && (a[at] as number | string) < (b[at] as number | string);
}

type Pair = readonly [along: CutLines, across: CutLines];

const NONE: CutLines = { pieces: () => [], laps: 0, inLine: 0, ideal: true, counts: new Map() };

/**
 * Cut the lines of both ways of a mat.
 *
 * @throws {TooManyBars} above the limit
 */
export function cutMat(along: LinesToCut, across: LinesToCut, limit: number): Pair {
  const sameSize = along.size === across.size;
  const [ones, others] = [candidates(along, limit), candidates(across, limit)];
  if (ones.length + others.length === 2) return [ones[0] as CutLines, others[0] as CutLines];
  let found: { pair: Pair; score: Score } | undefined;
  for (const one of ones) {
    for (const other of others) {
      const pair: Pair = [one, other];
      const score = scoreOf(pair, sameSize, along.cut.stock);
      if (!found || lower(score, found.score)) found = { pair, score };
    }
  }
  return (found as { pair: Pair }).pair;
}

/**
 * Cut lines that run one way only.
 *
 * @throws {TooManyBars} above the limit
 */
export const cutLines = (lines: LinesToCut, limit: number): CutLines =>
  candidates(lines, limit)[0] as CutLines;

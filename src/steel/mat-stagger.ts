/**
 * From which end each line of a mat is cut, so that laps lie apart and the fewest bars are bought.
 *
 * Two ways are tried: every line cut from the same end, its laps pulled back where they would come beside
 * those of the line before; or every second line turned end for end. Both are tried from either end and from
 * either side of the mat, so that a mat that is mirrored or turned a quarter comes to the same bars. The one
 * with the fewest laps in line is kept, then that for which the fewest bars are bought, then that with the
 * fewest lengths.
 */
import type { CutProblem } from './cut-fill';
import { firstFitPlan } from './cut-search';
import type { Stretch } from './mat-clip';
import {
  type CutLine,
  type CutRule,
  cutLine,
  cutLineFromEnd,
  type Piece,
  TooManyBars,
  turned,
} from './mat-laps';

/** The lines of one way, cut. */
export interface CutLines {
  /** The pieces of each line. */
  readonly pieces: readonly (readonly Piece[])[];
  readonly laps: number;
  readonly inLine: number;
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

/** One line, its stretches in rising order, beside the laps of the line before. */
function cutOne(
  line: readonly Stretch[],
  rule: CutRule,
  fromEnd: boolean,
  before: readonly Stretch[],
): CutLine[] {
  const others = fromEnd ? turned(before) : before;
  return line.map((stretch) => (fromEnd ? cutLineFromEnd : cutLine)(stretch, rule, others));
}

/** Cut all lines one way. */
function cutAll(
  { stretches, cut }: LinesToCut,
  { byTurns, fromEnd, downward }: Way,
  limit: number,
): CutLines {
  const pieces: Piece[][] = stretches.map(() => []);
  const counts = new Map<number, number>();
  let before: readonly Stretch[] = [];
  let [laps, inLine, bars] = [0, 0, 0];
  for (let k = 0; k < stretches.length; k += 1) {
    const i = downward ? stretches.length - 1 - k : k;
    const end = byTurns && k % 2 === 1 ? !fromEnd : fromEnd;
    const done = cutOne(stretches[i] as readonly Stretch[], cut, end, before);
    const own = done.flatMap((line) => line.pieces);
    pieces[i] = own;
    for (const { steps } of own) counts.set(steps, (counts.get(steps) ?? 0) + 1);
    before = done.flatMap((line) => line.laps);
    laps += before.length;
    inLine += done.reduce((n, line) => n + line.inLine, 0);
    bars += own.length;
    if (bars > limit) throw new TooManyBars();
  }
  return { pieces, laps, inLine, counts };
}

const keyOf = (counts: ReadonlyMap<number, number>): string =>
  [...counts]
    .sort((a, b) => b[0] - a[0])
    .map(([steps, n]) => `${steps}:${n}`)
    .join();

/** Above this many pieces each line is cut from one end, by turns and not. */
const MANY_PIECES = 20_000;

/** The ways to cut the lines that come to different lists; one where no line is longer than the stock. */
function candidates(lines: LinesToCut, limit: number): CutLines[] {
  const known = new Map<string, CutLines>();
  let few = true;
  for (const way of WAYS) {
    if (!few && (way.fromEnd || way.downward)) continue;
    const done = cutAll(lines, way, limit);
    const key = `${done.inLine} ${keyOf(done.counts)}`;
    if (!known.has(key)) known.set(key, done);
    few = [...done.counts.values()].reduce((a, b) => a + b, 0) <= MANY_PIECES;
    if (done.laps === 0) break;
  }
  return [...known.values()];
}

function together(...all: readonly ReadonlyMap<number, number>[]): Map<number, number> {
  const sum = new Map<number, number>();
  for (const counts of all) for (const [steps, n] of counts) sum.set(steps, (sum.get(steps) ?? 0) + n);
  return sum;
}

/** Bars that longest-first fitting takes for these lengths. */
export function barsFor(counts: ReadonlyMap<number, number>, stock: number): number {
  const list = [...counts].sort((a, b) => b[0] - a[0]);
  if (list.length === 0) return 0;
  const problem: CutProblem = {
    weights: list.map(([steps]) => steps),
    demand: list.map(([, n]) => n),
    capacities: [stock],
    costs: [1],
  };
  return firstFitPlan(problem, problem.demand).cost;
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

/**
 * Cut the lines of both ways of a mat.
 *
 * @throws {TooManyBars} above the limit
 */
export function cutMat(along: LinesToCut, across: LinesToCut, limit: number): Pair {
  const sameSize = along.size === across.size;
  let best: { pair: Pair; score: Score } | undefined;
  const others = candidates(across, limit);
  for (const one of candidates(along, limit)) {
    for (const other of others) {
      const pair: Pair = [one, other];
      const score = scoreOf(pair, sameSize, along.cut.stock);
      if (!best || lower(score, best.score)) best = { pair, score };
    }
  }
  return (best as { pair: Pair }).pair;
}

const NO_LINES: readonly (readonly Stretch[])[] = [];

/**
 * Cut lines that run one way only.
 *
 * @throws {TooManyBars} above the limit
 */
export const cutLines = (lines: LinesToCut, limit: number): CutLines =>
  cutMat(lines, { ...lines, stretches: NO_LINES }, limit)[0];

/**
 * The lower bound of a cutting problem, by column generation.
 *
 * Linear program: use patterns so that every piece is made, at the least cost; its dual puts a worth
 * on each length so that no bar holds more worth than it costs. Patterns are added while one holds
 * more than its cost. A general-purpose solver does the linear programs. The bound itself does not
 * rest on it: for any worths whatever, total worth × least (cost ÷ best fill) is a bound, and that is
 * reckoned in whole numbers.
 */
import { solve } from 'yalps';
import { bestFill, type CutProblem, type Pattern, spend, spent } from './fill';

/** A pattern and the stock that it is cut from. */
export interface Column {
  readonly stock: number;
  readonly pattern: Pattern;
}

/** What the linear program came to. */
export interface Relaxed {
  /** No plan costs less than this fraction, top ÷ bottom in whole numbers. */
  readonly top: bigint;
  readonly bottom: bigint;
  /** Worth of one piece of each length, in parts of a cost unit. */
  readonly worths: readonly number[];
  /** The worths that prove the bound: those of an earlier round where that proved more. */
  readonly proof: readonly number[];
  readonly columns: readonly Column[];
}

/** Worths are kept in this many parts of a cost unit: sums of them stay whole numbers exactly. */
const partsOf = ({ costs }: CutProblem): number =>
  Math.max(1, Math.min(1e9, Math.floor(1e15 / Math.max(...costs))));

const ROUNDS = 300;
/** The solver touches its whole table about so often for each length. */
const PIVOTS = 2;
const HAIR = 1e-7;

const sum = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0);

/** Worths of the dual of the program over these columns. */
function worthsOf({ demand, costs }: CutProblem, columns: readonly Column[]): number[] {
  const constraints = columns.map(({ stock }, k): [number, { max: number }] => [
    k,
    { max: costs[stock] as number },
  ]);
  const variables = demand.map((d, i): [number, [number, number][]] => {
    const coefficients: [number, number][] = [[-1, d]];
    columns.forEach(({ pattern }, k) => {
      const n = pattern[i] as number;
      if (n > 0) coefficients.push([k, n]);
    });
    return [i, coefficients];
  });
  const { variables: found } = solve<number, number>({
    direction: 'maximize',
    objective: -1,
    constraints,
    variables,
  });
  const worths = demand.map(() => 0);
  for (const [i, value] of found) worths[i] = value;
  return worths;
}

/** How often each column is used in the program over these columns. */
export function usesOf(problem: CutProblem, columns: readonly Column[], worths: readonly number[]): number[] {
  const { costs } = problem;
  const parts = partsOf(problem);
  // Only a column that is worth its cost is used, so the others may be left out.
  const tight = columns.flatMap(({ stock, pattern }, k) => {
    const worth = sum(pattern.map((n, i) => n * (worths[i] as number))) / parts;
    return worth >= (costs[stock] as number) * (1 - 1e-6) ? [k] : [];
  });
  const chosen = tight.length > 0 ? tight : columns.map((_, k) => k);
  return (
    usesAmong(problem, columns, chosen) ??
    usesAmong(
      problem,
      columns,
      columns.map((_, k) => k),
    ) ??
    columns.map(() => 0)
  );
}

/** The program over some of the columns; in whole bars where a number of branchings is given. */
function usesAmong(
  { demand, costs }: CutProblem,
  columns: readonly Column[],
  keys: readonly number[],
  branchings?: number,
): number[] | undefined {
  const model = {
    direction: 'minimize' as const,
    objective: -1,
    constraints: demand.flatMap((d, i): [number, { min: number }][] => (d > 0 ? [[i, { min: d }]] : [])),
    variables: keys.map((k): [number, [number, number][]] => {
      const { stock, pattern } = columns[k] as Column;
      const made = pattern.flatMap((n, i): [number, number][] => (n > 0 ? [[i, n]] : []));
      return [k, [[-1, costs[stock] as number], ...made]];
    }),
    integers: branchings !== undefined,
  };
  const { result, variables: found } = solve<number, number>(
    model,
    branchings === undefined ? {} : { maxIterations: branchings },
  );
  if (!Number.isFinite(result)) return undefined;
  const uses = columns.map(() => 0);
  for (const [k, value] of found) uses[k] = value;
  return uses;
}

/** How often each column is used in the best whole plan that a bounded branching finds. */
export const wholeUses = (
  problem: CutProblem,
  columns: readonly Column[],
  branchings: number,
): number[] | undefined =>
  usesAmong(
    problem,
    columns,
    columns.map((_, k) => k),
    branchings,
  );

/** Patterns to begin with: every length alone, as often as the stock that suits it holds it. */
export function startingColumns(problem: CutProblem, demand: readonly number[]): Column[] {
  const { weights, capacities, costs } = problem;
  return weights.flatMap((w, i) => {
    if ((demand[i] as number) === 0) return [];
    const stocks = capacities.flatMap((c, stock) => {
      const n = Math.min(Math.floor(c / w), demand[i] as number);
      return n > 0 ? [{ stock, n, each: (costs[stock] as number) / n }] : [];
    });
    const cheapest = stocks.reduce((a, b) => (b.each < a.each ? b : a));
    return [{ stock: cheapest.stock, pattern: weights.map((_, j) => (j === i ? cheapest.n : 0)) }];
  });
}

interface Priced {
  readonly added: Column[];
  readonly top: bigint;
  readonly bottom: bigint;
}

/** The bound that these worths prove, and the patterns that are worth more than they cost. */
function price(problem: CutProblem, demand: readonly number[], worths: readonly number[]): Priced {
  const fill = bestFill(problem, worths, demand);
  const total = worths.reduce((s, w, i) => s + BigInt(w) * BigInt(demand[i] as number), 0n);
  let [cost, worth] = [1n, 0n];
  const added: Column[] = [];
  const parts = partsOf(problem);
  problem.capacities.forEach((capacity, stock) => {
    const best = fill.worth(capacity);
    const c = problem.costs[stock] as number;
    // The least of cost ÷ worth over the stocks.
    if (BigInt(c) * worth < cost * BigInt(best) || worth === 0n) [cost, worth] = [BigInt(c), BigInt(best)];
    if (best > c * parts * (1 + HAIR)) added.push({ stock, pattern: fill.pattern(capacity) });
  });
  return { added, top: total * cost, bottom: worth === 0n ? 1n : worth };
}

const sameColumn = (a: Column, b: Column): boolean =>
  a.stock === b.stock && a.pattern.every((n, i) => n === b.pattern[i]);

/**
 * Add patterns until none is worth more than it costs, or the bound cannot rise to a higher whole cost.
 *
 * @param start - patterns known already
 * @param enough - a bound that reaches this (exclusive of the last whole step) ends the search
 */
export function relax(
  problem: CutProblem,
  demand: readonly number[],
  start: readonly Column[],
  enough: (top: bigint, bottom: bigint) => boolean,
): Relaxed {
  const columns = [...start];
  const wanted = { ...problem, demand };
  let best: Pick<Relaxed, 'top' | 'bottom' | 'proof'> = { top: 0n, bottom: 1n, proof: demand.map(() => 0) };
  let worths: readonly number[] = best.proof;
  const parts = partsOf(problem);
  for (let round = 0; round < ROUNDS && (round === 0 || !spent(problem)); round += 1) {
    spend(problem, columns.length * demand.length * demand.length * PIVOTS);
    const found = worthsOf(wanted, columns).map((w) => Math.max(0, Math.floor(w * parts)));
    worths = found;
    const { added, top, bottom } = price(problem, demand, found);
    if (top * best.bottom > best.top * bottom) best = { top, bottom, proof: found };
    const fresh = added.filter((c) => !columns.some((known) => sameColumn(known, c)));
    if (fresh.length === 0 || enough(best.top, best.bottom)) break;
    columns.push(...fresh);
  }
  return { ...best, worths, columns };
}

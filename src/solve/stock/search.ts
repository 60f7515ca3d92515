/**
 * Whole plans for a cutting problem, and the search for one that meets its lower bound.
 *
 * First-fit decreasing and best fills give plans at once. The linear program is then rounded down,
 * what is left is filled, and, where that does not meet the bound, one pattern after the other is
 * fixed and the linear program of the rest solved again.
 */
import { type Column, type Relaxed, relax, startingColumns, usesOf, wholeUses } from './bound';
import { bestFill, type CutProblem, type Pattern, spent } from './fill';
import { costStep, nextSum } from './sums';

/** Bars cut alike. */
export interface Batch extends Column {
  readonly bars: number;
}

/** A plan and what it costs. */
export interface Plan {
  readonly batches: readonly Batch[];
  readonly cost: number;
}

/** A plan with what is known of its optimality. */
export interface Solved extends Relaxed {
  readonly plan: Plan;
  /** The least whole cost that any plan can have, as far as is proved. */
  readonly bound: number;
}

const planOf = (problem: CutProblem, batches: readonly Batch[]): Plan => ({
  batches,
  cost: batches.reduce((s, { stock, bars }) => s + bars * (problem.costs[stock] as number), 0),
});

const joined = (problem: CutProblem, ...parts: readonly (readonly Batch[])[]): Plan =>
  planOf(problem, parts.flat());

const cheaper = (a: Plan, b: Plan): Plan => (b.cost < a.cost ? b : a);

const load = ({ weights }: CutProblem, pattern: Pattern): number =>
  pattern.reduce((s, n, i) => s + n * (weights[i] as number), 0);

/** The cheapest stock that holds a load. */
function stockFor({ capacities, costs }: CutProblem, weight: number): number {
  let found = capacities.length - 1;
  capacities.forEach((c, stock) => {
    if (c >= weight && (costs[stock] as number) < (costs[found] as number)) found = stock;
  });
  return found;
}

/** As many equal bars of a pattern as the demand still asks for. */
const repeats = (pattern: Pattern, left: readonly number[]): number =>
  pattern.reduce(
    (most, n, i) => (n > 0 ? Math.min(most, Math.floor((left[i] as number) / n)) : most),
    Infinity,
  );

function take(left: number[], pattern: Pattern, bars: number): void {
  pattern.forEach((n, i) => {
    left[i] = (left[i] as number) - n * bars;
  });
}

const unmet = (left: readonly number[]): boolean => left.some((n) => n > 0);

/** Longest piece first into bars of one capacity: take what fits, again and again. */
function greedyPattern({ weights }: CutProblem, left: readonly number[], capacity: number): number[] {
  let room = capacity;
  return weights.map((w, i) => {
    const n = Math.min(left[i] as number, Math.floor(room / w));
    room -= n * w;
    return n;
  });
}

/**
 * First-fit decreasing with bars of one stock.
 *
 * With the pieces in falling order, first fit fills one bar after the other with the longest that
 * still fit, so equal bars come out together.
 */
function firstFit(problem: CutProblem, demand: readonly number[], stock: number): Batch[] | undefined {
  const left = [...demand];
  const capacity = problem.capacities[stock] as number;
  const batches: Batch[] = [];
  while (unmet(left)) {
    const pattern = greedyPattern(problem, left, capacity);
    const bars = repeats(pattern, left);
    if (!Number.isFinite(bars)) return undefined;
    take(left, pattern, bars);
    batches.push({ stock: stockFor(problem, load(problem, pattern)), pattern, bars });
  }
  return batches;
}

/** First-fit decreasing with each stock; the cheapest of them. */
export function firstFitPlan(problem: CutProblem, demand: readonly number[]): Plan {
  const plans = problem.capacities.flatMap((_, stock) => {
    const batches = firstFit(problem, demand, stock);
    return batches ? [planOf(problem, batches)] : [];
  });
  return plans.reduce(cheaper);
}

/** Fill bar after bar as full as it goes, the longest piece left first; `push` favors long pieces. */
function fullest(problem: CutProblem, demand: readonly number[], push: number): Batch[] | undefined {
  const left = [...demand];
  const batches: Batch[] = [];
  while (unmet(left)) {
    if (spent(problem)) return undefined;
    const batch = fullestBar(problem, left, push);
    take(left, batch.pattern, batch.bars);
    batches.push(batch);
  }
  return batches;
}

function fullestBar(problem: CutProblem, left: readonly number[], push: number): Batch {
  const { weights, capacities, costs } = problem;
  const first = left.findIndex((n) => n > 0);
  const lead = weights[first] as number;
  const rest = left.map((n, i) => (i === first ? n - 1 : n));
  const values = weights.map((w) => Math.round(w * (1000 + (push * w) / lead)));
  const fill = bestFill(problem, values, rest);
  const options = capacities.flatMap((c, stock) => {
    if (c < lead) return [];
    const pattern = fill.pattern(c - lead).map((n, i) => (i === first ? n + 1 : n));
    return [{ stock, pattern, each: (costs[stock] as number) / load(problem, pattern) }];
  });
  const { stock, pattern } = options.reduce((a, b) => (b.each < a.each ? b : a));
  return { stock, pattern, bars: repeats(pattern, left) };
}

const PUSHES = [0, 150, 600];
/** Tabled fills cost time: beyond this many distinct bars the fullest plans are not tried. */
const FULLEST_LIMIT = 400;

function quickPlan(problem: CutProblem, demand: readonly number[]): Plan {
  const plain = firstFitPlan(problem, demand);
  if (plain.batches.length > FULLEST_LIMIT || spent(problem)) return plain;
  return PUSHES.reduce((best, push) => {
    const batches = fullest(problem, demand, push);
    return batches ? cheaper(best, planOf(problem, batches)) : best;
  }, plain);
}

const ceilDiv = (a: bigint, b: bigint): bigint => (a + b - 1n) / b;

/** Whole bars of each column, no more than the demand takes. */
function roundedDown(columns: readonly Column[], uses: readonly number[], left: number[]): Batch[] {
  return columns.flatMap((column, k) => {
    const bars = Math.min(Math.floor((uses[k] as number) + 1e-6), repeats(column.pattern, left));
    if (bars <= 0) return [];
    take(left, column.pattern, bars);
    return [{ ...column, bars }];
  });
}

/** The column to fix next: the one nearest above a whole number, after `skip` others. */
function nextColumn(uses: readonly number[], skip: number): number {
  const order = uses
    .map((u, k) => ({ k, part: u - Math.floor(u + 1e-6) }))
    .filter(({ part }) => part > 1e-6)
    .sort((a, b) => b.part - a.part);
  return (order[Math.min(skip, order.length - 1)] ?? { k: -1 }).k;
}

/** Cut a pattern down to what is still wanted. */
const trimmed = (pattern: Pattern, left: readonly number[]): Pattern =>
  pattern.map((n, i) => Math.min(n, left[i] as number));

interface Dive {
  readonly problem: CutProblem;
  readonly target: number;
}

const never = (): boolean => false;

/** The columns that are known, cut down to what is left, with every length alone. */
const columnsFor = (problem: CutProblem, columns: readonly Column[], left: readonly number[]): Column[] => [
  ...startingColumns(problem, left),
  ...columns
    .map(({ stock, pattern }) => ({ stock, pattern: trimmed(pattern, left) }))
    .filter(({ pattern }) => pattern.some((n) => n > 0)),
];

/** Fix patterns one after the other, solving the linear program of the rest each time. */
function dive(
  { problem, target }: Dive,
  demand: readonly number[],
  relaxed: Relaxed,
  skip: number,
  plan: Plan,
): Plan {
  const left = [...demand];
  const fixed: Batch[] = [];
  let best = plan;
  let { columns, worths } = relaxed;
  for (let depth = 0; depth < DIVE_DEPTH && !spent(problem); depth += 1) {
    const uses = usesOf({ ...problem, demand: left }, columns, worths);
    fixed.push(...roundedDown(columns, uses, left));
    best = cheaper(best, joined(problem, fixed, unmet(left) ? quickPlan(problem, left).batches : []));
    const column = columns[nextColumn(uses, depth === 0 ? skip : 0)];
    if (best.cost <= target || !unmet(left) || !column) break;
    const pattern = trimmed(column.pattern, left);
    take(left, pattern, 1);
    fixed.push({ stock: column.stock, pattern, bars: 1 });
    if (!unmet(left)) return cheaper(best, planOf(problem, fixed));
    ({ columns, worths } = relax(problem, left, columnsFor(problem, columns, left), never));
  }
  return best;
}

const DIVE_DEPTH = 60;
/** About half a second: what a list may take before the best plan found so far is given. */
const EFFORT = 1e8;
const DIVES = 6;
/** Dives solve many linear programs; above this many lengths only one is made. */
const MANY_LENGTHS = 60;

const POOL_LIMIT = 400;
const POOL_STEPS = 1500;
/** Table cells that the branching may touch. */
const POOL_WORK = 1e9;

/** All patterns that leave no room in their stock for another piece; undefined above the pool limit. */
function allColumns(problem: CutProblem): Column[] | undefined {
  const { weights, demand, capacities } = problem;
  const found: Column[] = [];
  let steps = 0;
  const go = (stock: number, i: number, room: number, taken: readonly number[]): void => {
    steps += 1;
    if (found.length > POOL_LIMIT || steps > POOL_LIMIT * 100) return;
    if (i === weights.length) {
      const full = weights.every((w, j) => w > room || taken[j] === demand[j]);
      if (full && unmet(taken)) found.push({ stock, pattern: taken });
      return;
    }
    const w = weights[i] as number;
    const most = Math.min(demand[i] as number, Math.floor(room / w));
    for (let n = most; n >= 0; n -= 1) go(stock, i + 1, room - n * w, [...taken, n]);
  };
  capacities.forEach((c, stock) => {
    go(stock, 0, c, []);
  });
  return found.length > POOL_LIMIT || steps > POOL_LIMIT * 100 ? undefined : found;
}

/** The best whole plan of the patterns found, as far as a bounded branching goes. */
function pooled(problem: CutProblem, columns: readonly Column[], plan: Plan): Plan {
  if (columns.length > POOL_LIMIT) return plan;
  const branchings = Math.min(
    POOL_STEPS,
    Math.ceil(POOL_WORK / (columns.length * problem.demand.length ** 2)),
  );
  const uses = wholeUses(problem, columns, branchings);
  if (!uses) return plan;
  const left = [...problem.demand];
  const batches = columns.flatMap(({ pattern }, k) => {
    const out: Batch[] = [];
    for (let bars = Math.round(uses[k] as number); bars > 0 && unmet(left); ) {
      // A piece may be made once too often; what is not wanted is left out.
      const cut = trimmed(pattern, left);
      if (!unmet(cut)) break;
      const alike = Math.min(bars, repeats(cut, left));
      take(left, cut, alike);
      out.push({ stock: stockFor(problem, load(problem, cut)), pattern: cut, bars: alike });
      bars -= alike;
    }
    return out;
  });
  return unmet(left) ? plan : cheaper(plan, planOf(problem, batches));
}

/**
 * A plan of least cost, with its proof as far as it goes.
 *
 * @param given - every piece must fit into the longest stock
 * @param effort - table cells that the search may touch, and the proof again as many
 */
export function solveCutting(given: CutProblem, effort = EFFORT): Solved {
  const problem = { ...given, effort: { left: effort } };
  const { demand, costs } = problem;
  const step = costStep(costs);
  const next = nextSum(costs, step, effort);
  const raised = (top: bigint, bottom: bigint): number =>
    next(Number(ceilDiv(top, bottom * BigInt(step))) * step);
  let plan = quickPlan(problem, demand);
  const meets = (top: bigint, bottom: bigint): boolean => raised(top, bottom) >= plan.cost;
  const start = [...startingColumns(problem, demand), ...plan.batches];
  // The proof has work of its own to spend: plans must not eat it up.
  const relaxed = relax({ ...given, effort: { left: effort } }, demand, start, meets);
  const bound = raised(relaxed.top, relaxed.bottom);
  const dives = demand.length > MANY_LENGTHS ? 1 : DIVES;
  for (let skip = 0; skip < dives && plan.cost > bound && !spent(problem); skip += 1) {
    plan = dive({ problem, target: bound }, demand, relaxed, skip, plan);
  }
  if (plan.cost > bound && !spent(problem) && effort >= EFFORT)
    plan = pooled(problem, allColumns(problem) ?? relaxed.columns, plan);
  return { ...relaxed, plan, bound };
}

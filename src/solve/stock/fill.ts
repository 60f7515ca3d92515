/**
 * Filling one bar with pieces: the knapsack inside the cutting problem.
 *
 * Lengths are whole steps here. A bar of length S with kerf k holds pieces whose lengths with one
 * kerf each come to S + k at most: the last cut falls beyond the end when the bar is used up.
 */

import { effort as all } from '../../quantity/effort';

/** How much more work a search may do, in table cells touched; it only ever falls. */
interface Effort {
  left: number;
}

/** A cutting problem in whole steps. */
export interface CutProblem {
  /** Length of each piece with one kerf, longest first. */
  readonly weights: readonly number[];
  /** How many of each. */
  readonly demand: readonly number[];
  /** Each stock length with one kerf, shortest first. */
  readonly capacities: readonly number[];
  /** What a bar of each stock costs, in whole units; equal where bars are counted. */
  readonly costs: readonly number[];
  /** Shared by all that works on the problem, so that no list takes more than a few seconds. */
  readonly effort?: Effort;
}

/** Pieces of each length cut from one bar. */
export type Pattern = readonly number[];

/** Cells of a table are filled that much faster than those of other searches. */
const QUICK = 4;

/** Take work off what is left. */
export function spend({ effort }: CutProblem, cells: number): void {
  all.spent += cells / QUICK;
  if (effort) effort.left -= cells;
}

/** True when no more work should be begun. */
export const spent = ({ effort }: CutProblem): boolean => effort !== undefined && effort.left <= 0;

/** Making a table costs something however small it is. */
const MAKING = 20_000;

/** The best fill for every capacity up to the greatest. */
export interface Fill {
  /** Greatest worth that fits in a capacity. */
  worth(capacity: number): number;
  /** A pattern of that worth. */
  pattern(capacity: number): Pattern;
}

/** Above this many cells the fill is searched for instead of tabled. */
const TABLE_CELLS = 6_000_000;

/** Up to so many cells a table costs nothing that would be felt. */
const SMALL_TABLE = 200_000;

/** One item of the table: `times` pieces of a length taken together. */
interface Bundle {
  readonly piece: number;
  readonly times: number;
  readonly weight: number;
  readonly value: number;
}

/** Split each demand into powers of two, so that every number up to the demand can be taken. */
function bundles(weights: readonly number[], most: readonly number[], values: readonly number[]): Bundle[] {
  const out: Bundle[] = [];
  weights.forEach((weight, piece) => {
    const value = values[piece] as number;
    let left = value > 0 ? (most[piece] as number) : 0;
    for (let times = 1; left > 0; times *= 2) {
      const taken = Math.min(times, left);
      out.push({ piece, times: taken, weight: weight * taken, value: value * taken });
      left -= taken;
    }
  });
  return out;
}

/** Pieces of each length that a bar could hold and that are wanted. */
function mostOf({ weights, capacities }: CutProblem, demand: readonly number[]): number[] {
  const greatest = capacities.at(-1) as number;
  return weights.map((w, i) => Math.min(demand[i] as number, Math.floor(greatest / w)));
}

function tabled(items: readonly Bundle[], pieces: number, greatest: number): Fill {
  const best = new Float64Array(greatest + 1);
  const taken = items.map(({ weight, value }) => {
    const row = new Uint8Array(greatest + 1);
    for (let c = greatest; c >= weight; c -= 1) {
      const other = (best[c - weight] as number) + value;
      if (other > (best[c] as number)) {
        best[c] = other;
        row[c] = 1;
      }
    }
    return row;
  });
  return {
    worth: (capacity) => best[capacity] as number,
    pattern: (capacity) => {
      const cuts = new Array<number>(pieces).fill(0);
      let c = capacity;
      for (let k = items.length - 1; k >= 0; k -= 1) {
        const { piece, times, weight } = items[k] as Bundle;
        if ((taken[k] as Uint8Array)[c] !== 1) continue;
        cuts[piece] = (cuts[piece] as number) + times;
        c -= weight;
      }
      return cuts;
    },
  };
}

/** A search gives up after this many steps; the worth is then an upper estimate, so bounds stay true. */
const SEARCH_STEPS = 200_000;

/** So many it always has. */
const LEAST_STEPS = 500;

/** A step of the search costs about as much as so many table cells. */
const STEP_COST = 20;

interface Found {
  readonly pattern: number[];
  readonly worth: number;
  /** No fill is worth more than this; equal to `worth` unless the search was cut short. */
  readonly ceiling: number;
}

/** Depth first, best worth per step of length first, cut off by what the rest could bring at most. */
function searched(
  problem: CutProblem,
  most: readonly number[],
  values: readonly number[],
  capacity: number,
): Found {
  const { weights } = problem;
  const order = weights
    .map((w, i) => ({ i, w, v: values[i] as number }))
    .filter(({ i, v }) => v > 0 && (most[i] as number) > 0)
    .sort((a, b) => b.v * a.w - a.v * b.w);
  const current = weights.map(() => 0);
  let best = { worth: 0, pattern: [...current] };
  let steps = 0;
  // What is left of the effort bounds each search too: one list may ask for very many.
  const allowed = Math.min(
    SEARCH_STEPS,
    Math.max(LEAST_STEPS, (problem.effort?.left ?? Infinity) / STEP_COST),
  );
  const promise = (at: number, room: number, worth: number): number => {
    const next = order[at];
    return next ? worth + (room * next.v) / next.w : worth;
  };
  const go = (at: number, room: number, worth: number): void => {
    if (worth > best.worth) best = { worth, pattern: [...current] };
    const item = order[at];
    if (!item || steps > allowed || promise(at, room, worth) <= best.worth) return;
    for (let n = Math.min(most[item.i] as number, Math.floor(room / item.w)); n >= 0; n -= 1) {
      steps += 1;
      current[item.i] = n;
      go(at + 1, room - n * item.w, worth + n * item.v);
      if (steps > allowed) break;
    }
    current[item.i] = 0;
  };
  go(0, capacity, 0);
  spend(problem, MAKING + steps * STEP_COST);
  const ceiling = steps > allowed ? Math.max(best.worth, Math.ceil(promise(0, capacity, 0))) : best.worth;
  return { ...best, ceiling };
}

/** Whether a table of so many cells is worth its work: not where there are few ways to fill a bar, or no work left. */
function tableServes({ effort }: CutProblem, cells: number, most: readonly number[]): boolean {
  if (cells <= SMALL_TABLE) return true;
  if (cells > Math.min(TABLE_CELLS, effort?.left ?? Infinity)) return false;
  return most.reduce((ways, n) => ways * (n + 1), STEP_COST) > cells;
}

/**
 * The best fills of a bar for these worths.
 *
 * @param values - worth of one piece of each length, whole and not negative
 * @param demand - no more than this of each length goes into one bar
 */
export function bestFill(problem: CutProblem, values: readonly number[], demand: readonly number[]): Fill {
  const greatest = problem.capacities.at(-1) as number;
  const most = mostOf(problem, demand);
  const items = bundles(problem.weights, most, values);
  if (tableServes(problem, (greatest + 1) * Math.max(items.length, 1), most)) {
    spend(problem, (greatest + 1) * items.length + MAKING);
    return tabled(items, problem.weights.length, greatest);
  }
  const found = new Map<number, Found>();
  const at = (capacity: number): Found => {
    const known = found.get(capacity) ?? searched(problem, most, values, capacity);
    found.set(capacity, known);
    return known;
  };
  return { worth: (capacity) => at(capacity).ceiling, pattern: (capacity) => at(capacity).pattern };
}

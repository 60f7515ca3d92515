/**
 * The working of a result as it hangs together: which step takes what another gave, and which takes a value of the
 * input. So a step can be reckoned again with a slip in it, and all that follows from it.
 */
import { Decimal } from '../quantity/decimal';
import type { Quantity } from '../quantity/quantity';
import type { Step } from '../reckoning/parts';
import { BINARY, EXACT, type Reckoner, reckoned, type Tree, treeOf } from './formula';
import { exactSiOf, siOf } from './scale';

/** One value that a step takes: what an earlier step gave, or what came from outside. */
export interface Taken {
  readonly symbol: string;
  readonly quantity: Quantity;
  /** The step that gave it, where one did. */
  readonly from: number | undefined;
  /** True for the very one of the input. */
  readonly given: boolean;
  readonly si: number;
}

/** One step with its formula read. */
export interface Node {
  readonly step: Step;
  /** Left out where the formula cannot be read, or does not come to what was given. */
  readonly tree: Tree | undefined;
  readonly takes: readonly Taken[];
  readonly bySymbol: ReadonlyMap<string, Taken>;
  readonly si: number;
}

/** All steps in order. */
export type Graph = readonly Node[];

const NEAR = 1e-6;
const near = (a: number, b: number): boolean =>
  Math.abs(a - b) <= NEAR * Math.max(Math.abs(a), Math.abs(b), 1e-9);

/** Whether a step may be taken for another by what it gave alone: parts of a whole come to as much by chance. */
type MayBe = (step: number) => boolean;
const anyStep: MayBe = () => true;

/** The step that gave a quantity: the very one, or the last that gave as much. */
function giver(q: Quantity, steps: readonly Step[], before: number, mayBe: MayBe): number | undefined {
  for (let i = before - 1; i >= 0; i -= 1) if (steps[i]?.gives === q) return i;
  for (let i = before - 1; i >= 0; i -= 1) if (mayBe(i) && steps[i]?.gives.equals(q)) return i;
  return undefined;
}

/** Steps in which too many are looked back on are left to stand for themselves. */
const LINKED = 400;

const HALF_CENT = 0.005;

/** The formula as it comes to what was given: an amount of money is rounded to the cent without saying so. */
function asGiven(tree: Tree, again: number, gives: Quantity, si: number): Tree | undefined {
  if (gives.dimension === 'money' && Math.abs(again - si) <= HALF_CENT * (1 + NEAR))
    return { is: 'call', name: 'cents', of: [tree] };
  return near(again, si) ? tree : undefined;
}

function nodeOf(
  step: Step,
  i: number,
  steps: readonly Step[],
  isInput: (q: Quantity) => boolean,
  mayBe: MayBe,
): Node {
  const takes = Object.entries(step.values).map(([symbol, quantity]): Taken => {
    const given = isInput(quantity);
    const from = i < LINKED && !given ? giver(quantity, steps, i, mayBe) : undefined;
    return { symbol, quantity, from, given, si: siOf(quantity) };
  });
  const tree = treeOf(step.formula);
  const si = siOf(step.gives);
  const bySymbol = new Map(takes.map((one) => [one.symbol, one] as const));
  const again = tree && reckoned(tree, (symbol) => bySymbol.get(symbol)?.si ?? Number.NaN, BINARY);
  const own = tree && again !== undefined ? asGiven(tree, again, step.gives, si) : undefined;
  return { step, tree: own, takes, bySymbol, si };
}

/**
 * The working as a graph.
 *
 * @param isInput - tells a quantity that is the very one of the input, which no step gave
 * @param parts - the part that each step is of, where it is one of a part of the whole
 */
export const graphOf = (
  working: readonly Step[],
  isInput: (q: Quantity) => boolean,
  parts?: readonly (string | undefined)[],
): Graph =>
  working.map((step, i) => nodeOf(step, i, working, isInput, parts ? (j) => parts[j] === parts[i] : anyStep));

/** What is put in place of what stands there. */
export interface Change<T> {
  /** A value from outside, by its quantity. */
  readonly leaf?: (q: Quantity) => T | undefined;
  /** A value from outside, by the step that takes it and its symbol. */
  readonly taken?: (i: number, symbol: string) => T | undefined;
  /** The formula of a step. */
  readonly tree?: (i: number) => Tree | undefined;
  /** What a step gave, after it was reckoned. */
  readonly outcome?: (i: number, gives: T) => T;
}

/** How values are taken as numbers of one kind. */
export interface Numbers<T> {
  readonly by: Reckoner<T>;
  readonly none: T;
  readonly taken: (one: Taken) => T;
  readonly given: (one: Node) => T;
}

/** Where a change begins: what takes nothing of it stays as it was. */
export interface Onward<T> {
  readonly base: readonly T[];
  readonly starts: ReadonlySet<number>;
}

/** All steps reckoned again with a change. */
export function replayed<T>(
  graph: Graph,
  change: Change<T>,
  { by, none, taken, given }: Numbers<T>,
  onward?: Onward<T>,
): T[] {
  const out: T[] = onward ? [...onward.base] : [];
  const changed = onward && new Uint8Array(graph.length);
  const untouched = (i: number, node: Node): boolean =>
    changed !== undefined &&
    !onward?.starts.has(i) &&
    !node.takes.some(({ from }) => from !== undefined && changed[from] === 1);
  for (let i = onward ? Math.min(graph.length, ...onward.starts) : 0; i < graph.length; i += 1) {
    const node = graph[i] as Node;
    if (untouched(i, node)) continue;
    if (changed) changed[i] = 1;
    const tree = change.tree?.(i) ?? node.tree;
    const value = (symbol: string): T => {
      const one = node.bySymbol.get(symbol);
      if (!one) return none;
      if (one.from !== undefined) return out[one.from] as T;
      return change.taken?.(i, symbol) ?? change.leaf?.(one.quantity) ?? taken(one);
    };
    const gives = tree ? reckoned(tree, value, by) : given(node);
    out[i] = change.outcome ? change.outcome(i, gives) : gives;
  }
  return out;
}

/** In binary numbers. */
export const IN_BINARY: Numbers<number> = {
  by: BINARY,
  none: Number.NaN,
  taken: ({ si }) => si,
  given: ({ si }) => si,
};

const EXACTLY: Numbers<Decimal> = {
  by: EXACT,
  none: /*#__PURE__*/ new Decimal(Number.NaN),
  taken: ({ quantity }) => exactSiOf(quantity),
  given: ({ step }) => exactSiOf(step.gives),
};

/** All steps reckoned again with a change, in binary numbers. */
export const replay = (graph: Graph, change: Change<number>, onward?: Onward<number>): number[] =>
  replayed(graph, change, IN_BINARY, onward);

/** The same exactly. */
export const replayExactly = (graph: Graph, change: Change<Decimal>): Decimal[] =>
  replayed(graph, change, EXACTLY);

/** Steps that some others come from, these among them. */
export function upstream(graph: Graph, nodes: readonly (number | undefined)[]): ReadonlySet<number> {
  const seen = new Set<number>();
  const left = nodes.filter((one) => one !== undefined);
  for (let i = left.pop(); i !== undefined; i = left.pop()) {
    if (seen.has(i)) continue;
    seen.add(i);
    for (const { from } of graph[i]?.takes ?? []) if (from !== undefined) left.push(from);
  }
  return seen;
}

/** The step whose outcome a figure is: the very one, or the last that gave as much. */
export const stepOf = (figure: Quantity, graph: Graph, mayBe: MayBe = anyStep): number | undefined =>
  giver(
    figure,
    graph.map(({ step }) => step),
    graph.length,
    mayBe,
  );

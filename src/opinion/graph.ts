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

/** The step that gave a quantity: the very one, or the last that gave as much. */
function giver(q: Quantity, steps: readonly Step[], before: number): number | undefined {
  for (let i = before - 1; i >= 0; i -= 1) if (steps[i]?.gives === q) return i;
  for (let i = before - 1; i >= 0; i -= 1) if (steps[i]?.gives.equals(q)) return i;
  return undefined;
}

/** Steps in which too many are looked back on are left to stand for themselves. */
const LINKED = 400;

function nodeOf(step: Step, i: number, steps: readonly Step[], isInput: (q: Quantity) => boolean): Node {
  const takes = Object.entries(step.values).map(([symbol, quantity]): Taken => {
    const from = i < LINKED && !isInput(quantity) ? giver(quantity, steps, i) : undefined;
    return { symbol, quantity, from, si: siOf(quantity) };
  });
  const tree = treeOf(step.formula);
  const si = siOf(step.gives);
  const bySymbol = new Map(takes.map((one) => [one.symbol, one] as const));
  const again = tree && reckoned(tree, (symbol) => bySymbol.get(symbol)?.si ?? Number.NaN, BINARY);
  return { step, tree: again !== undefined && near(again, si) ? tree : undefined, takes, bySymbol, si };
}

/**
 * The working as a graph.
 *
 * @param isInput - tells a quantity that is the very one of the input, which no step gave
 */
export const graphOf = (working: readonly Step[], isInput: (q: Quantity) => boolean): Graph =>
  working.map((step, i) => nodeOf(step, i, working, isInput));

/** What is put in place of what stands there. */
export interface Change<T> {
  /** A value from outside, by its quantity. */
  readonly leaf?: (q: Quantity) => T | undefined;
  /** The formula of a step. */
  readonly tree?: (i: number) => Tree | undefined;
  /** What a step gave, after it was reckoned. */
  readonly outcome?: (i: number, gives: T) => T;
}

/** How values are taken as numbers of one kind. */
interface Numbers<T> {
  readonly by: Reckoner<T>;
  readonly none: T;
  readonly taken: (one: Taken) => T;
  readonly given: (one: Node) => T;
}

function replayed<T>(graph: Graph, change: Change<T>, { by, none, taken, given }: Numbers<T>): T[] {
  const out: T[] = [];
  for (const [i, node] of graph.entries()) {
    const tree = change.tree?.(i) ?? node.tree;
    const value = (symbol: string): T => {
      const one = node.bySymbol.get(symbol);
      if (!one) return none;
      return one.from === undefined ? (change.leaf?.(one.quantity) ?? taken(one)) : (out[one.from] as T);
    };
    const gives = tree ? reckoned(tree, value, by) : given(node);
    out.push(change.outcome ? change.outcome(i, gives) : gives);
  }
  return out;
}

const IN_BINARY: Numbers<number> = {
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
export const replay = (graph: Graph, change: Change<number>): number[] => replayed(graph, change, IN_BINARY);

/** The same exactly. */
export const replayExactly = (graph: Graph, change: Change<Decimal>): Decimal[] =>
  replayed(graph, change, EXACTLY);

/** The step whose outcome a figure is: the very one, or the last that gave as much. */
export const stepOf = (figure: Quantity, graph: Graph): number | undefined =>
  giver(
    figure,
    graph.map(({ step }) => step),
    graph.length,
  );

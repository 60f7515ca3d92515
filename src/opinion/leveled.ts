/**
 * Lengths that are told from a mark: elevations, heights of instrument, and what a small length is the difference of.
 * However large they are, they are kept to hundredths of a foot, or centimeters, all through: who rounds 104.35 ft to 104
 * has lost what he leveled for. Common practice.
 */
import { type Quantity, unitShown } from '../quantity/quantity';
import type { Tree } from './formula';
import type { Graph, Node } from './graph';
import { FOOT, STRAY } from './scale';

const ELEVATION = /elevation|height of instrument/i;

/** Whether a figure is an elevation, by its path. */
export const isElevation = (figure: string): boolean => ELEVATION.test(figure);

/** The symbols that a formula takes from each other. */
function* subtracted(tree: Tree): Generator<string> {
  if (tree.is !== 'sign') return;
  if (tree.sign === '−')
    for (const side of [tree.left, tree.right]) if (side.is === 'symbol') yield side.name;
  yield* subtracted(tree.left);
  yield* subtracted(tree.right);
}

/** The lengths of a step that are taken from each other. */
function* fromEachOther({ tree, bySymbol }: Node): Generator<Node['takes'][number]> {
  for (const name of tree ? subtracted(tree) : []) {
    const one = bySymbol.get(name);
    if (one?.quantity.dimension === 'length') yield one;
  }
}

/** What of a working is told from a mark. */
export interface Leveled {
  /** Steps whose outcome is. */
  readonly steps: ReadonlySet<number>;
  /** Values from outside that are. */
  readonly values: ReadonlySet<Quantity>;
}

/** Lengths of a working that are told from a mark. */
export function leveledIn(graph: Graph): Leveled {
  const steps = new Set<number>();
  const values = new Set<Quantity>();
  graph.forEach((node, i) => {
    if (node.step.gives.dimension !== 'length') return;
    const apart = [...fromEachOther(node)];
    if (apart.length > 0 || ELEVATION.test(node.step.says)) steps.add(i);
    for (const { from, quantity } of apart)
      if (from === undefined) values.add(quantity);
      else steps.add(from);
  });
  return { steps, values };
}

/** An eighth of an inch is a little coarser, and on a tape as fine. */
const EIGHTH = 0.0254 / 8;

/** The coarsest that such a length is written. */
const lastPlaceOf = (q: Quantity): number => (unitShown(q).system === 'metric' ? 0.01 : FOOT / 100);

/** A leveled length as it was written, however coarsely others are. */
export function leveled(si: number, written: number, q: Quantity): number {
  const last = lastPlaceOf(q);
  return Math.abs(written - si) <= Math.max(last, EIGHTH) / 2 + STRAY
    ? written
    : Math.round(si / last) * last;
}

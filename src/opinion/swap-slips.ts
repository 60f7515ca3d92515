/** One value of a formula in the place of another of its kind: the width taken again for the length, the wrong line. */
import type { Tree } from './formula';
import type { Node, Taken } from './graph';

/** A formula with one value in another's place. */
export interface Swapped {
  readonly tree: Tree;
  /** The one whose place it is. */
  readonly own: Taken;
  /** The one that was taken. */
  readonly taken: Taken;
}

/** Longer formulas are a table of points: most of their pairs are never mixed up. */
const MOST = 60;

/** Every formula in which one symbol, at one place, is another. */
function* withOther(
  tree: Tree,
  others: (name: string) => readonly string[],
): Generator<readonly [string, string, Tree]> {
  if (tree.is === 'symbol')
    for (const name of others(tree.name)) yield [tree.name, name, { is: 'symbol', name }];
  if (tree.is === 'sign') {
    for (const [own, taken, left] of withOther(tree.left, others)) yield [own, taken, { ...tree, left }];
    for (const [own, taken, right] of withOther(tree.right, others)) yield [own, taken, { ...tree, right }];
  }
  if (tree.is !== 'call') return;
  for (const [i, part] of tree.of.entries())
    for (const [own, taken, instead] of withOther(part, others))
      yield [own, taken, { ...tree, of: tree.of.map((one, j) => (j === i ? instead : one)) }];
}

/** What a step may take for what: values of one kind that are not the same. */
export function* swappedIn({ tree, bySymbol, takes }: Node): Generator<Swapped> {
  if (!tree || takes.length < 2) return;
  const others = (name: string): string[] => {
    const own = bySymbol.get(name);
    return own
      ? takes
          .filter(({ quantity, si }) => quantity.dimension === own.quantity.dimension && si !== own.si)
          .map(({ symbol }) => symbol)
      : [];
  };
  let left = MOST;
  for (const [name, other, instead] of withOther(tree, others)) {
    if (left <= 0) return;
    left -= 1;
    yield { tree: instead, own: bySymbol.get(name) as Taken, taken: bySymbol.get(other) as Taken };
  }
}

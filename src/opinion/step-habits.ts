/** Slips of a habit: what somebody does wrong in one step of the working is done in every step of its kind. */
import type { Quantity } from '../quantity/quantity';
import { say, type Words } from '../reckoning/words';
import { type Tree, textOf } from './formula';
import type { Graph, Node } from './graph';
import type { Slip, SlipCode } from './slip';
import { ONE, placeOf, replaced, type Wrong } from './wrong-formulas';

/** What somebody does wrong in one step is done in every step of its kind. */
const HABITS: ReadonlySet<SlipCode> = /*#__PURE__*/ new Set([
  'spaces-for-bars',
  'term-left-out',
  'factor-left-out',
  'number-left-out',
  'power-left-out',
  'diameter-for-radius',
  'circle-as-square',
  'allowance-missed',
  'allowance-as-factor',
  'allowance-twice',
  'multiplied-for-divided',
  'rounded-down',
  'not-rounded',
]);
const HABIT = 0.7;

/** A part of a formula by what its symbols stand for, whatever they are called. */
function meaning(tree: Tree, { bySymbol }: Pick<Node, 'bySymbol'>): string {
  switch (tree.is) {
    case 'symbol': {
      const one = bySymbol.get(tree.name);
      return one
        ? one.from === undefined
          ? `${one.quantity.dimension} ${one.si}`
          : `#${one.from}`
        : tree.name;
    }
    case 'sign':
      return `(${meaning(tree.left, { bySymbol })} ${tree.sign} ${meaning(tree.right, { bySymbol })})`;
    case 'call':
      return `${tree.name}(${tree.of.map((one) => meaning(one, { bySymbol })).join()})`;
    default:
      return tree.text;
  }
}

/** The same slip in all steps that read the same, or wherever the same value stands. */
export function habitSlips(
  graph: Graph,
  wrongs: readonly (readonly Wrong[])[],
  treeSlip: (node: Node, i: number, wrong: Wrong) => Slip,
): Slip[] {
  const groups = new Map<string, { readonly at: Map<number, Wrong> }>();
  const put = (key: string, i: number, wrong: Wrong): void => {
    const group = groups.get(key) ?? { at: new Map<number, Wrong>() };
    groups.set(key, group);
    if (!group.at.has(i)) group.at.set(i, wrong);
  };
  graph.forEach((node, i) => {
    wrongs[i]?.forEach((wrong, n) => {
      const { code, part, by } = wrong;
      if (!HABITS.has(code)) return;
      put(`${node.step.formula} ${code} ${n}`, i, wrong);
      const felt = code === 'spaces-for-bars' ? wrong.left : part?.is === 'symbol' ? part : undefined;
      if (felt) put(`${code} ${by} ${meaning(felt, node)}`, i, wrong);
    });
  });
  const seen = new Set<string>();
  return [...groups.values()].flatMap(({ at }) => {
    const [[first, wrong] = [], ...more] = [...at];
    if (first === undefined || !wrong || more.length === 0) return [];
    const one = treeSlip(graph[first] as Node, first, wrong);
    const edits = [...at].map(([step, { tree }]) => ({ on: 'step', step, tree }) as const);
    const key = `${wrong.code} ${edits.map(({ step, tree }) => `${step} ${textOf(tree)}`).join()}`;
    if (seen.has(key)) return [];
    seen.add(key);
    const says = (): Words => say`${{ one: one.says() }}, and likewise in the other steps of the kind`;
    return [{ ...one, weight: one.weight * HABIT, says, edits }];
  });
}

/** How common it is to leave a constant out throughout. */
const LEFT_OUT = 4;

/** Where each number without a unit stands that no step gave, by what it is. */
function factorsIn(graph: Graph): Map<number, { readonly step: number; readonly symbol: string }[]> {
  const at = new Map<number, { step: number; symbol: string }[]>();
  graph.forEach(({ takes, tree }, step) => {
    for (const { symbol, quantity, from, si } of tree ? takes : []) {
      if (quantity.dimension !== 'ratio' || from !== undefined || si === 0 || si === 1) continue;
      const known = at.get(si);
      if (known) known.push({ step, symbol });
      else at.set(si, [{ step, symbol }]);
    }
  });
  return at;
}

/** A number without a unit, such as a specific heat or a coefficient, taken as one wherever it stands. */
export function factorSlips(graph: Graph): Slip[] {
  return [...factorsIn(graph).values()].flatMap((at): Slip[] => {
    const [first] = at;
    if (!first || at.every(({ step }) => step === first.step)) return [];
    const value = graph[first.step]?.bySymbol.get(first.symbol)?.quantity as Quantity;
    return [
      {
        code: 'factor-left-out',
        weight: LEFT_OUT,
        says: () =>
          say`${{ symbol: first.symbol }} = ${{ value }} was left out in ${{ step: placeOf(graph[first.step] as Node) }} and wherever else it stands`,
        edits: [...new Set(at.map(({ step }) => step))].map((step) => ({
          on: 'step',
          step,
          tree: at
            .filter((one) => one.step === step)
            .reduce((tree, { symbol }) => replaced(tree, symbol, ONE), graph[step]?.tree as Tree),
        })),
        step: first.step,
      },
    ];
  });
}

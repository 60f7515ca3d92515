/** Slips in a step of the working: the formula with one thing wrong in it, or its outcome written down wrongly. */
import type { Dimension } from '../quantity/dimensions';
import { numberShown, type Quantity, unitShown } from '../quantity/quantity';
import { type Param, say, type Words } from '../reckoning/words';
import type { FigureAt } from './figure-places';
import { type Tree, textOf } from './formula';
import { type Graph, type Node, type Taken, upstream } from './graph';
import { outcomeTwists, unitWritten } from './outcome-slips';
import { FOOT, siOf, siOfUnit } from './scale';
import type { Slip, SlipCode } from './slip';
import { factorSlips, habitSlips } from './step-habits';
import { swappedIn } from './swap-slips';
import { otherSizes } from './usual-sizes';
import {
  beforeCents,
  isLengthIn,
  isProduct,
  placeOf,
  replaced,
  type Wrong,
  wrongsOf,
} from './wrong-formulas';

const SAYS: Partial<Record<SlipCode, string>> = {
  'allowance-missed': 'the share was not taken',
  'allowance-as-factor': 'the share was taken as the factor',
  'allowance-twice': 'the share was taken twice',
  'allowance-turned': 'the share was taken off for put on, or put on for taken off',
  'markup-for-margin':
    'it was divided by one less the share where one plus the share multiplies, or the reverse, as a margin is taken for a markup',
  'spaces-for-bars': 'the one at the end was not counted',
  'term-left-out': 'a term of the sum was left out',
  'term-twice': 'a term of the sum was taken twice',
  'added-for-subtracted': 'plus and minus were exchanged',
  'number-left-out': 'a number of the formula was left out',
  'other-number': 'another number of the formula was taken',
  'factor-left-out': 'a factor was left out',
  'factor-twice': 'a factor was taken twice',
  'multiplied-for-divided': 'times and divided by were exchanged',
  'power-left-out': 'a power or a root was not taken',
  'rounded-down': 'it was rounded the other way',
  'not-rounded': 'it was not rounded',
  'greater-for-lesser': 'the other of several values was taken',
  'diameter-for-radius': 'the diameter was taken for the radius',
  'circle-as-square': 'the circle was taken as the square around it',
  'mean-of-ends': 'the middle of the least and the greatest was taken for the mean of all',
  'corner-twice': 'the corner where two rectangles overlap was counted with both',
};

/** An amount in SI units, as symbols are reckoned. */
const number = (si: number): Tree => ({ is: 'number', text: String(si) });

/** Longer parts of a formula are not repeated. */
const LONGEST_PART = 40;

/** How a part goes wrong of which it can be said which it is. */
const OF_PART: Partial<Record<SlipCode, (part: Param) => Words>> = {
  'term-left-out': (part) => say`${{ part }} was left out`,
  'factor-left-out': (part) => say`${{ part }} was left out`,
  'number-left-out': (part) => say`${{ part }} was left out`,
  'other-number': (part) => say`another number was taken for ${{ part }}`,
  'one-off-count': (part) => say`${{ part }} was counted with one too many or too few`,
  'other-size': (part) => say`that of another size was taken for ${{ part }}`,
  'term-twice': (part) => say`${{ part }} was taken twice`,
  'factor-twice': (part) => say`${{ part }} was taken twice`,
};

/** What went wrong, with the part that it went wrong with. */
function howWords({ code, part, by, how }: Wrong, { bySymbol }: Node): Words {
  if (how !== undefined) return { says: how };
  if (code === 'spaces-for-bars' && by === '−') return { says: 'the one less at the end was not taken off' };
  const text = part && (by === '÷' || by === '−' ? `${by} ${textOf(part)}` : textOf(part));
  const words = text !== undefined && text.length <= LONGEST_PART ? OF_PART[code] : undefined;
  if (!part || text === undefined || !words) return { says: SAYS[code] ?? code };
  const value = part.is === 'symbol' ? bySymbol.get(part.name)?.quantity : undefined;
  return words(value ? say`${{ symbol: text }} = ${{ value }}` : text);
}

const treeSlip = (node: Node, i: number, wrong: Wrong, how?: Words): Slip => ({
  code: wrong.code,
  weight: wrong.weight,
  says: () =>
    say`in ${{ step: placeOf(node) }}, ${{ formula: node.step.formula }}, ${{ how: how ?? howWords(wrong, node) }}`,
  edits: [{ on: 'step', step: i, tree: wrong.tree }],
  step: i,
});

/** How common it is to take a number without turning it into what it is to be: gallons for pounds of water. */
const NOT_TURNED = 2;
const AMOUNTS: ReadonlySet<string> = /*#__PURE__*/ new Set(['volume', 'mass', 'area', 'length']);

/** A value of another kind whose number stands for what a step gives. */
function numberSlips(node: Node, i: number): Slip[] {
  const { step, si, tree } = node;
  if (tree?.is !== 'sign' || !isProduct(tree) || node.takes.length > 2 || si === 0) return [];
  const unit = unitWritten(step.gives);
  if (!AMOUNTS.has(step.gives.dimension) || unit.form || unit.offset) return [];
  return node.takes
    .filter(
      ({ quantity: q }) =>
        AMOUNTS.has(q.dimension) && q.dimension !== step.gives.dimension && !unitShown(q).form,
    )
    .map(({ symbol, quantity }): Slip => {
      const instead = numberShown(quantity).toNumber() * siOfUnit(unit);
      return {
        code: 'factor-left-out',
        weight: NOT_TURNED,
        says: () =>
          say`in ${{ step: placeOf(node) }}, ${{ formula: step.formula }}, ${{ symbol }}, ${{ value: quantity }}, was taken as so many ${{ unit: unit.id }}`,
        edits: [{ on: 'outcome', step: i, twist: { unit: 1, times: [String(instead), String(si)] } }],
        step: i,
      };
    });
}

/** Steps of one outcome by one kind of formula, the first of them first: both slants of a square pier. */
function twinsOf(graph: Graph, i: number): number[] {
  const own = graph[i] as Node;
  const kind = ({ step, tree }: Node): string =>
    tree ? textOf(tree).replace(/[A-Za-z]\w*/g, '') + step.gives.dimension : step.formula;
  const all = [...graph.keys()].filter((j) => {
    const other = graph[j] as Node;
    return j === i || (other.step.gives.equals(own.step.gives as never) && kind(other) === kind(own));
  });
  return all[0] === i ? all : [i];
}

/** What is written wrongly in one step alone; what comes out alike in others is reckoned once and taken from there. */
const outcomeSlips = (node: Node, i: number, twins: readonly number[]): Slip[] =>
  outcomeTwists(node.step.gives, undefined).flatMap(({ code, weight, twist, how }): Slip[] =>
    (twins.length > 1 ? [[i], twins] : [[i]]).map((at) => ({
      code,
      weight: weight * 0.7,
      says: () =>
        say`the outcome of ${{ step: placeOf(node) }}, ${{ gives: node.step.gives }}, ${{ how: how() }}`,
      edits: at.map((step) => ({ on: 'outcome', step, twist }) as const),
      step: i,
    })),
  );

/** How common it is to add the sides of what is to be multiplied. */
const SUM_FOR_PRODUCT = 3;

/** Length plus width for length times width, by their numbers: feet for square feet. */
function sumSlip(node: Node, i: number): Slip[] {
  const { tree, step, bySymbol } = node;
  const isLength = isLengthIn(node);
  if (tree?.is !== 'sign' || tree.sign !== '×' || step.gives.dimension !== 'area') return [];
  if (!isLength(tree.left) || !isLength(tree.right)) return [];
  const [a, b] = [tree.left, tree.right].map(({ name }) => bySymbol.get(name)?.si as number) as [
    number,
    number,
  ];
  // A foot of length stands for a square foot, a meter for a square meter.
  const one = unitShown(step.gives).system === 'metric' ? 1 : FOOT;
  const slip = (times: number, says: string): Slip =>
    treeSlip(
      node,
      i,
      { code: 'added-for-multiplied', weight: SUM_FOR_PRODUCT, tree: number((a + b) * times * one) },
      { says },
    );
  return [
    slip(1, 'the two sides were added and not multiplied'),
    slip(2, 'the four sides were added up, and the two were not multiplied'),
  ];
}

/** Figures that are taken for what a step gave: loose for compacted, gross for net. */
const FIGURES = 16;
const TAKEN_FOR = 1;
const BOUGHT: ReadonlySet<string> = /*#__PURE__*/ new Set(['volume', 'area', 'mass']);

function figureSlips(node: Node, i: number, figures: readonly FigureAt[]): Slip[] {
  const { step, si } = node;
  if (!BOUGHT.has(step.gives.dimension) || si === 0) return [];
  return figures
    .filter(
      ({ quantity }) =>
        quantity.dimension === step.gives.dimension && !quantity.equals(step.gives) && quantity.sign() > 0,
    )
    .map(
      ({ at, quantity }): Slip => ({
        code: 'other-figure',
        weight: TAKEN_FOR,
        says: () =>
          say`${{ other: at }}, ${{ quantity }}, was taken for the outcome of ${{ step: placeOf(node) }}, ${{ gives: step.gives }}`,
        edits: [{ on: 'outcome', step: i, twist: { unit: 1, times: [String(siOf(quantity)), String(si)] } }],
        step: i,
      }),
    );
}

/** What stands in tables, by the name under which its usual sizes are known. */
const TABLES: Partial<Record<Dimension, string>> = {
  'mass-per-length': 'unitWeight',
  'mass-per-area': 'meshWeight',
};

/** The weight of another size of bar or mesh, where that itself is right: a line of the table too low or too high. */
const tableSlips = (node: Node, i: number): Slip[] =>
  node.takes.flatMap(({ symbol, quantity, from, given }) => {
    const name = TABLES[quantity.dimension];
    return node.tree && from === undefined && !given && name
      ? [...otherSizes({ name, quantity })].map((other) => {
          const instead = number(other.number.toNumber() * siOfUnit(unitShown(quantity)));
          const tree = replaced(node.tree as Tree, symbol, instead);
          const part: Tree = { is: 'symbol', name: symbol };
          return treeSlip(node, i, { code: 'other-size', weight: other.weight, tree, part });
        })
      : [];
  });

/** How common it is to take the middle of the least and the greatest for the mean of all. */
const OF_ENDS = 3;

/** The mean of the thinnest and the thickest, for that of all probes. */
function meanSlips(graph: Graph, i: number): Slip[] {
  const node = graph[i] as Node;
  const { tree, bySymbol } = node;
  if (tree?.is !== 'sign' || tree.sign !== '÷' || tree.left.is !== 'symbol') return [];
  const sum = graph[bySymbol.get(tree.left.name)?.from ?? -1];
  const all = sum?.takes.map(({ si }) => si) ?? [];
  if (all.length < 3 || !/^\w+ = \w+( \+ \w+)+$/.test(sum?.step.formula ?? '')) return [];
  const middle = number((Math.min(...all) + Math.max(...all)) / 2);
  return [treeSlip(node, i, { code: 'mean-of-ends', weight: OF_ENDS, tree: middle })];
}

/** How common it is to take a value of a formula for another of it. */
const SWAPPED = 1.5;

const swapSlips = (node: Node, i: number): Slip[] =>
  [...swappedIn(node)].map(
    ({ tree, own, taken }): Slip => ({
      code: 'other-input',
      weight: SWAPPED,
      says: () =>
        say`in ${{ step: placeOf(node) }}, ${{ formula: node.step.formula }}, ${{ symbol: taken.symbol }}, ${{ taken: taken.quantity }}, was taken for ${{ instead: own.symbol }}, ${{ is: own.quantity }}`,
      edits: [{ on: 'step', step: i, tree }],
      step: i,
    }),
  );

/** How common it is to divide by what is more, or less, and not by what it is more than. */
const OTHER_WHOLE = 4;

/** A difference over the other of the two that it lies between: what came beyond the plan as a share of what came. */
function wholeSlips(graph: Graph, i: number): Slip[] {
  const node = graph[i] as Node;
  const { tree, step, bySymbol } = node;
  if (tree?.is !== 'sign' || tree.sign !== '÷' || tree.left.is !== 'symbol' || tree.right.is !== 'symbol')
    return [];
  const [over, whole] = [bySymbol.get(tree.left.name), bySymbol.get(tree.right.name)];
  const less = graph[over?.from ?? -1];
  if (!whole || !/^\w+ = \w+ − \w+$/.test(less?.step.formula ?? '')) return [];
  return (less?.takes ?? [])
    .filter(({ quantity, si }) => quantity.dimension === whole.quantity.dimension && si !== whole.si)
    .map(({ quantity, si }) => ({
      code: 'share-of-other',
      weight: OTHER_WHOLE,
      says: () =>
        say`in ${{ step: placeOf(node) }}, ${{ formula: step.formula }}, the share was taken of ${{ part: quantity }} alone and not of ${{ whole: whole.quantity }}`,
      edits: [{ on: 'step', step: i, tree: replaced(tree, whole.symbol, number(si)) }],
      step: i,
    }));
}

/** How common it is to take the plain mean of factors that belong to amounts of different size. */
const PLAIN_MEAN = 3;

/** Coefficients of several areas, each taken as the mean of all. */
function plainMeans(graph: Graph, felt: ReadonlySet<number>): Slip[] {
  const groups = new Map<string, { readonly step: number; readonly symbol: string; readonly si: number }[]>();
  for (const [i, { takes, tree, step }] of graph.entries())
    for (const { quantity, symbol, si, from } of felt.has(i) && tree && isProduct(tree) ? takes : [])
      if (quantity.dimension === 'ratio' && from === undefined) {
        const key = `${step.formula} ${symbol}`;
        groups.set(key, [...(groups.get(key) ?? []), { step: i, symbol, si }]);
      }
  return [...groups.values()].flatMap((all): Slip[] => {
    const [first] = all;
    if (!first || all.every(({ si }) => si === first.si)) return [];
    const mean = all.reduce((sum, { si }) => sum + si, 0) / all.length;
    const values = all.map(({ step, symbol }) => graph[step]?.bySymbol.get(symbol)?.quantity as Quantity);
    return [
      {
        code: 'mean-of-ends',
        weight: PLAIN_MEAN,
        says: () =>
          say`the plain mean of ${{ values: values.map((value) => say`${{ value }}`) }} was taken for each of them`,
        edits: all.map(({ step, symbol }) => ({
          on: 'step',
          step,
          tree: replaced(graph[step]?.tree as Tree, symbol, number(mean)),
        })),
        step: first.step,
      },
    ];
  });
}

/** How common it is to take a share of another amount than it is put on: tax on the cost, profit without overhead. */
const SHARE_OF = 5;
/** A sum of more is a list of lines: a share of one of them is no slip of the share. */
const FEW_TERMS = 3;

/** A share of a part of what it is a share of: shares that are put on one after the other were put on side by side. */
function shareSlips(graph: Graph, i: number): Slip[] {
  const node = graph[i] as Node;
  const { tree, takes, step } = node;
  if (!tree || !isProduct(beforeCents(tree)) || !takes.some(({ quantity }) => quantity.dimension === 'ratio'))
    return [];
  return takes
    .filter(({ quantity, from }) => from !== undefined && quantity.dimension === step.gives.dimension)
    .flatMap((base) =>
      partsOf(graph, base).map(
        (part): Slip => ({
          code: 'share-of-other',
          weight: SHARE_OF,
          says: () =>
            say`in ${{ step: placeOf(node) }}, ${{ formula: step.formula }}, the share was taken of ${{ part: part.quantity }} alone and not of ${{ whole: base.quantity }}`,
          edits: [{ on: 'step', step: i, tree: scaled(tree, base.symbol, part.si / base.si) }],
          step: i,
        }),
      ),
    );
}

/** The terms of the sum that an amount is, and theirs. */
function partsOf(graph: Graph, { from, si }: Taken): readonly Taken[] {
  const sum = graph[from as number];
  if (!sum || si === 0 || sum.takes.length > FEW_TERMS || !/^\w+ = \w+( \+ \w+)+$/.test(sum.step.formula))
    return [];
  return sum.takes.flatMap((one) =>
    one.si === 0 ? [] : [one, ...(one.from === undefined ? [] : partsOf(graph, one))],
  );
}

/** A formula with so much of what stands for a symbol. */
const scaled = (tree: Tree, symbol: string, times: number): Tree =>
  replaced(tree, symbol, {
    is: 'sign',
    sign: '×',
    left: { is: 'symbol', name: symbol },
    right: number(times),
  });

/**
 * Every slip of every step.
 *
 * @param claimed - steps whose outcome is claimed: what may be wrong with that is told of the claim
 * @param figures - the figures of the result, one of which may be taken for what a step gave
 */
export function stepSlips(
  graph: Graph,
  claimed: ReadonlySet<number | undefined>,
  figures: readonly FigureAt[],
): Slip[] {
  const single = figures.filter(({ at }) => !at.includes('[')).slice(0, FIGURES);
  // What no claim comes from changes none of them.
  const felt = upstream(graph, [...claimed]);
  const wrongs = graph.map((node, i) => (felt.has(i) ? wrongsOf(node) : []));
  const ofOne = graph.flatMap((node, i) =>
    felt.has(i)
      ? [
          ...(wrongs[i] ?? []).map((wrong) => treeSlip(node, i, wrong)),
          ...numberSlips(node, i),
          ...sumSlip(node, i),
          ...swapSlips(node, i),
          ...shareSlips(graph, i),
          ...wholeSlips(graph, i),
          ...tableSlips(node, i),
          ...meanSlips(graph, i),
          ...(claimed.has(i)
            ? []
            : [...outcomeSlips(node, i, twinsOf(graph, i)), ...figureSlips(node, i, single)]),
        ]
      : [],
  );
  return [
    ...ofOne,
    ...habitSlips(graph, wrongs, treeSlip),
    ...factorSlips(graph),
    ...plainMeans(graph, felt),
  ];
}

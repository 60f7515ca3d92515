/** Slips in a step of the working: the formula with one thing wrong in it, or its outcome written down wrongly. */
import { unitShown } from '../quantity/quantity';
import { type Param, say, type Words } from '../reckoning/words';
import type { FigureAt } from './figure-places';
import { type Sign, type Tree, textOf } from './formula';
import type { Graph, Node } from './graph';
import { outcomeTwists } from './outcome-slips';
import { siOf } from './scale';
import type { Slip, SlipCode } from './slip';
import { swappedIn } from './swap-slips';

/** A formula with one thing wrong. */
interface Wrong {
  readonly code: SlipCode;
  readonly weight: number;
  readonly tree: Tree;
  /** The part that is left out, taken twice, or wrongly put in. */
  readonly part?: Tree;
  /** The sign before it. */
  readonly by?: Sign;
}

type Sum = Extract<Tree, { is: 'sign' }>;

const sign = (s: Sign, left: Tree, right: Tree): Tree => ({ is: 'sign', sign: s, left, right });
const ONE: Tree = { is: 'number', text: '1' };
const TWO: Tree = { is: 'number', text: '2' };

const isNumber = (tree: Tree, text?: string): boolean =>
  tree.is === 'number' && (text === undefined || tree.text === text);

/** True where a part is a share, as an allowance is. */
type IsShare = (tree: Tree) => boolean;

/** `1 + a`: a share put on, or taken off. */
const isFactor = ({ left, right }: Sum, isShare: IsShare): boolean => isNumber(left, '1') && isShare(right);

function* factorSlips(tree: Sum): Generator<Wrong> {
  const { left, right } = tree;
  yield { code: 'allowance-missed', weight: 22, tree: left };
  yield { code: 'allowance-as-factor', weight: 6, tree: right };
  yield { code: 'allowance-twice', weight: 8, tree: sign(tree.sign, left, sign('×', TWO, right)) };
  yield { code: 'allowance-twice', weight: 4, tree: sign('^', tree, TWO) };
  const other: Sign = tree.sign === '+' ? '−' : '+';
  yield { code: 'allowance-turned', weight: 5, tree: sign(other, left, right) };
  yield { code: 'markup-for-margin', weight: 6, tree: sign('÷', ONE, sign(other, left, right)) };
  yield { code: 'allowance-as-factor', weight: 2, tree: sign(tree.sign, left, sign('+', ONE, right)) };
}

function* sumSlips(tree: Sum, isShare: IsShare): Generator<Wrong> {
  const { left, right } = tree;
  if (isFactor(tree, isShare)) {
    yield* factorSlips(tree);
    return;
  }
  const bars = isNumber(right, '1') ? 'spaces-for-bars' : 'term-left-out';
  yield { code: bars, weight: bars === 'term-left-out' ? 6 : 18, tree: left, part: right, by: tree.sign };
  if (tree.sign === '+') yield { code: 'term-left-out', weight: 6, tree: right, part: left };
  if (tree.sign === '+')
    yield { code: 'term-twice', weight: 3, tree: sign('+', sign('+', left, left), right), part: left };
  yield {
    code: 'term-twice',
    weight: 3,
    tree: sign(tree.sign, sign(tree.sign, left, right), right),
    part: right,
    by: tree.sign,
  };
  // Where nothing is subtracted at all, nobody has a minus in mind.
  yield {
    code: 'added-for-subtracted',
    weight: tree.sign === '+' ? 1.5 : 4,
    tree: sign(tree.sign === '+' ? '−' : '+', left, right),
  };
}

const isProduct = (tree: Tree): boolean => tree.is === 'sign' && (tree.sign === '×' || tree.sign === '÷');

function* productSlips(tree: Sum, isShare: IsShare): Generator<Wrong> {
  const { left, right } = tree;
  const code = isNumber(right) ? 'number-left-out' : 'factor-left-out';
  yield { code, weight: code === 'number-left-out' ? 6.5 : 6, tree: left, part: right, by: tree.sign };
  if (tree.sign === '×')
    yield {
      code: isNumber(left) ? 'number-left-out' : 'factor-left-out',
      weight: 4,
      tree: right,
      part: left,
    };
  yield {
    code: 'factor-twice',
    weight: isNumber(right) ? 1.5 : 2.5,
    tree: sign(tree.sign, tree, right),
    part: right,
    by: tree.sign,
  };
  // The first of a product is the left of it alone.
  if (tree.sign === '×' && !isNumber(left) && !isProduct(left))
    yield { code: 'factor-twice', weight: 2.5, tree: sign('×', left, tree), part: left };
  const turned = right.is === 'sign' && isFactor(right, isShare);
  yield {
    code: turned ? 'allowance-turned' : 'multiplied-for-divided',
    weight: 5,
    tree: sign(tree.sign === '×' ? '÷' : '×', left, right),
  };
  if (tree.sign === '÷') yield { code: 'multiplied-for-divided', weight: 3, tree: sign('÷', right, left) };
}

function* signSlips(tree: Sum, isShare: IsShare): Generator<Wrong> {
  if (tree.sign === '^') yield { code: 'power-left-out', weight: 6, tree: tree.left };
  else if (tree.sign === '+' || tree.sign === '−') yield* sumSlips(tree, isShare);
  else yield* productSlips(tree, isShare);
}

/** The sides of `L² + W²`. */
function squaresIn(tree: Tree | undefined): readonly Tree[] {
  const isSquare = (one: Tree): one is Sum =>
    one.is === 'sign' && one.sign === '^' && isNumber(one.right, '2');
  return tree?.is === 'sign' && tree.sign === '+' && isSquare(tree.left) && isSquare(tree.right)
    ? [tree.left.left, tree.right.left]
    : [];
}

type Call = Extract<Tree, { is: 'call' }>;

const OTHER_WAY: Readonly<Record<string, readonly [SlipCode, string, number]>> = {
  ceil: ['rounded-down', 'floor', 12],
  floor: ['rounded-down', 'ceil', 6],
  max: ['greater-for-lesser', 'min', 4],
  min: ['greater-for-lesser', 'max', 4],
};

function* callSlips(tree: Call): Generator<Wrong> {
  const { name, of } = tree;
  const other = OTHER_WAY[name];
  if (other) yield { code: other[0], weight: other[2], tree: { ...tree, name: other[1] } };
  if (name === 'ceil' || name === 'floor') yield { code: 'not-rounded', weight: 5, tree: of[0] as Tree };
  const sides = name === 'hypot' ? of : squaresIn(of[0]);
  const [first, ...more] = sides;
  if (first)
    yield { code: 'power-left-out', weight: 4, tree: more.reduce((sum, one) => sign('+', sum, one), first) };
  if (name === 'sqrt') yield { code: 'power-left-out', weight: 4, tree: of[0] as Tree };
  if ((name === 'min' || name === 'max') && of.length > 1)
    for (const one of of) yield { code: 'greater-for-lesser', weight: 2, tree: one };
}

const MOST_TREES = 120;

/** Every way in which one thing in a formula may be wrong. */
function* wrongTrees(tree: Tree, isShare: IsShare): Generator<Wrong> {
  if (tree.is === 'sign') {
    yield* signSlips(tree, isShare);
    for (const one of wrongTrees(tree.left, isShare)) yield { ...one, tree: { ...tree, left: one.tree } };
    for (const one of wrongTrees(tree.right, isShare)) yield { ...one, tree: { ...tree, right: one.tree } };
  }
  if (tree.is !== 'call') return;
  yield* callSlips(tree);
  for (const [i, inner] of tree.of.entries())
    for (const one of wrongTrees(inner, isShare))
      yield { ...one, tree: { ...tree, of: tree.of.map((own, j) => (j === i ? one.tree : own)) } };
}

const roundShape = (tree: Tree): boolean =>
  tree.is === 'symbol'
    ? tree.name === 'π'
    : tree.is === 'sign' && (roundShape(tree.left) || roundShape(tree.right));

/** With four for π a circle is the square around it, and its girth that of the square. */
const squared = (tree: Tree): Tree =>
  tree.is === 'symbol' && tree.name === 'π'
    ? { is: 'number', text: '4' }
    : tree.is === 'sign'
      ? { ...tree, left: squared(tree.left), right: squared(tree.right) }
      : tree;

/** `π × d² ÷ 4` without its quarter is a circle whose diameter was taken for its radius. */
const named = (one: Wrong, whole: Tree): Wrong =>
  one.code === 'number-left-out' && roundShape(whole)
    ? { ...one, code: 'diameter-for-radius', weight: 18 }
    : one;

const placeOf = ({ step }: Node): Words => ({
  says: step.says,
  ...(step.params ? { params: step.params } : {}),
});

const SAYS: Partial<Record<SlipCode, string>> = {
  'allowance-missed': 'the share was not taken',
  'allowance-as-factor': 'the share was taken as the factor',
  'allowance-twice': 'the share was taken twice',
  'allowance-turned': 'the share was taken off for put on, or put on for taken off',
  'markup-for-margin': 'a share of the one was taken for a share of the other',
  'spaces-for-bars': 'the one at the end was not counted',
  'term-left-out': 'a term of the sum was left out',
  'term-twice': 'a term of the sum was taken twice',
  'added-for-subtracted': 'plus and minus were exchanged',
  'number-left-out': 'a number of the formula was left out',
  'factor-left-out': 'a factor was left out',
  'factor-twice': 'a factor was taken twice',
  'multiplied-for-divided': 'times and divided by were exchanged',
  'power-left-out': 'a power or a root was not taken',
  'rounded-down': 'it was rounded the other way',
  'not-rounded': 'it was not rounded',
  'greater-for-lesser': 'the other of several values was taken',
  'diameter-for-radius': 'the diameter was taken for the radius',
  'circle-as-square': 'the circle was taken as the square around it',
};

/** Longer parts of a formula are not repeated. */
const LONGEST_PART = 40;

/** How a part goes wrong of which it can be said which it is. */
const OF_PART: Partial<Record<SlipCode, (part: Param) => Words>> = {
  'term-left-out': (part) => say`${{ part }} was left out`,
  'factor-left-out': (part) => say`${{ part }} was left out`,
  'number-left-out': (part) => say`${{ part }} was left out`,
  'term-twice': (part) => say`${{ part }} was taken twice`,
  'factor-twice': (part) => say`${{ part }} was taken twice`,
};

/** What went wrong, with the part that it went wrong with. */
function howWords({ code, part, by }: Wrong, { bySymbol }: Node): Words {
  const text = part && (by === '÷' || by === '−' ? `${by} ${textOf(part)}` : textOf(part));
  const words = text !== undefined && text.length <= LONGEST_PART ? OF_PART[code] : undefined;
  if (!part || text === undefined || !words) return { says: SAYS[code] ?? code };
  const value = part.is === 'symbol' ? bySymbol.get(part.name)?.quantity : undefined;
  return words(value ? say`${{ symbol: text }} = ${{ value }}` : text);
}

function treeSlips(node: Node, i: number): Slip[] {
  const { tree } = node;
  if (!tree) return [];
  const shares = new Set(
    node.takes.filter(({ quantity }) => quantity.dimension === 'ratio').map(({ symbol }) => symbol),
  );
  const isShare: IsShare = (part) => part.is === 'symbol' && shares.has(part.name);
  const slips: Slip[] = [];
  const round: readonly Wrong[] = roundShape(tree)
    ? [{ code: 'circle-as-square', weight: 8, tree: squared(tree) }]
    : [];
  for (const wrong of [...round, ...wrongTrees(tree, isShare)]) {
    if (slips.length >= MOST_TREES) break;
    const told = named(wrong, tree);
    const { code, weight, tree: instead } = told;
    slips.push({
      code,
      weight: code === 'markup-for-margin' && node.step.gives.dimension !== 'money' ? weight / 2 : weight,
      says: () =>
        say`in ${{ step: placeOf(node) }}, ${{ formula: node.step.formula }}, ${{ how: howWords(told, node) }}`,
      edits: [{ on: 'step', step: i, tree: instead }],
      step: i,
    });
  }
  return slips;
}

const outcomeSlips = (node: Node, i: number): Slip[] =>
  outcomeTwists(node.step.gives, undefined).map(
    ({ code, weight, twist, how }): Slip => ({
      code,
      weight: weight * 0.7,
      says: () =>
        say`the outcome of ${{ step: placeOf(node) }}, ${{ gives: node.step.gives }}, ${{ how: how() }}`,
      edits: [{ on: 'outcome', step: i, twist }],
      step: i,
    }),
  );

/** How common it is to add the sides of what is to be multiplied. */
const SUM_FOR_PRODUCT = 3;

const isLengthIn =
  ({ bySymbol }: Node) =>
  (tree: Tree): tree is Extract<Tree, { is: 'symbol' }> =>
    tree.is === 'symbol' && bySymbol.get(tree.name)?.quantity.dimension === 'length';

/** Length plus width for length times width, by their numbers: feet for square feet. */
function sumSlip(node: Node, i: number): Slip[] {
  const { tree, step, bySymbol, si } = node;
  const isLength = isLengthIn(node);
  if (tree?.is !== 'sign' || tree.sign !== '×' || step.gives.dimension !== 'area') return [];
  if (!isLength(tree.left) || !isLength(tree.right)) return [];
  const [a, b] = [tree.left, tree.right].map(({ name }) => bySymbol.get(name)?.si as number) as [
    number,
    number,
  ];
  // A foot of length stands for a square foot, a meter for a square meter.
  const one = unitShown(step.gives).system === 'metric' ? 1 : FOOT;
  const edits = (times: number): Slip['edits'] => [
    { on: 'outcome', step: i, twist: { unit: 1, times: [String((a + b) * times * one), String(si)] } },
  ];
  const slip = (times: number, how: Words): Slip => ({
    code: 'added-for-multiplied',
    weight: SUM_FOR_PRODUCT,
    says: () => say`in ${{ step: placeOf(node) }}, ${{ formula: step.formula }}, ${{ how }}`,
    edits: edits(times),
    step: i,
  });
  return [
    slip(1, { says: 'the two sides were added and not multiplied' }),
    slip(2, { says: 'the four sides were added up, and the two were not multiplied' }),
  ];
}

const FOOT = 0.3048;

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
  return graph.flatMap((node, i) => [
    ...treeSlips(node, i),
    ...sumSlip(node, i),
    ...swapSlips(node, i),
    ...(claimed.has(i) ? [] : [...outcomeSlips(node, i), ...figureSlips(node, i, single)]),
  ]);
}

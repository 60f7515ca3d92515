/** Slips in a step of the working: the formula with one thing wrong in it, or its outcome written down wrongly. */
import { numberShown, unitShown } from '../quantity/quantity';
import { type Param, say, type Words } from '../reckoning/words';
import type { FigureAt } from './figure-places';
import { textOf } from './formula';
import type { Graph, Node } from './graph';
import { outcomeTwists, unitWritten } from './outcome-slips';
import { siOf, siOfUnit } from './scale';
import type { Slip, SlipCode } from './slip';
import { factorSlips, habitSlips } from './step-habits';
import { swappedIn } from './swap-slips';
import { isLengthIn, isProduct, placeOf, type Wrong, wrongsOf } from './wrong-formulas';

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
  'corner-twice': 'the corner where two rectangles overlap was counted with both',
};

/** Longer parts of a formula are not repeated. */
const LONGEST_PART = 40;

/** How a part goes wrong of which it can be said which it is. */
const OF_PART: Partial<Record<SlipCode, (part: Param) => Words>> = {
  'term-left-out': (part) => say`${{ part }} was left out`,
  'factor-left-out': (part) => say`${{ part }} was left out`,
  'number-left-out': (part) => say`${{ part }} was left out`,
  'other-number': (part) => say`another number was taken for ${{ part }}`,
  'one-off-count': (part) => say`${{ part }} was counted with one too many or too few`,
  'term-twice': (part) => say`${{ part }} was taken twice`,
  'factor-twice': (part) => say`${{ part }} was taken twice`,
};

/** What went wrong, with the part that it went wrong with. */
function howWords({ code, part, by }: Wrong, { bySymbol }: Node): Words {
  if (code === 'spaces-for-bars' && by === '−') return { says: 'the one less at the end was not taken off' };
  const text = part && (by === '÷' || by === '−' ? `${by} ${textOf(part)}` : textOf(part));
  const words = text !== undefined && text.length <= LONGEST_PART ? OF_PART[code] : undefined;
  if (!part || text === undefined || !words) return { says: SAYS[code] ?? code };
  const value = part.is === 'symbol' ? bySymbol.get(part.name)?.quantity : undefined;
  return words(value ? say`${{ symbol: text }} = ${{ value }}` : text);
}

const treeSlip = (node: Node, i: number, wrong: Wrong): Slip => ({
  code: wrong.code,
  weight: wrong.weight,
  says: () =>
    say`in ${{ step: placeOf(node) }}, ${{ formula: node.step.formula }}, ${{ how: howWords(wrong, node) }}`,
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
  const wrongs = graph.map(wrongsOf);
  const ofOne = graph.flatMap((node, i) => [
    ...(wrongs[i] ?? []).map((wrong) => treeSlip(node, i, wrong)),
    ...numberSlips(node, i),
    ...sumSlip(node, i),
    ...swapSlips(node, i),
    ...(claimed.has(i) ? [] : [...outcomeSlips(node, i), ...figureSlips(node, i, single)]),
  ]);
  return [...ofOne, ...habitSlips(graph, wrongs, treeSlip), ...factorSlips(graph)];
}

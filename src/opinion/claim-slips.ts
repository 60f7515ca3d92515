/** Slips of a claimed figure itself: reckoned rightly, and written down wrongly or for another. */
import { numberShown, type Quantity, unitShown } from '../quantity/quantity';
import { type Unit, unitOf } from '../quantity/units';
import { say } from '../reckoning/words';
import type { ReadClaim } from './claims';
import { figuresIn, pathOf } from './figure-places';
import type { Leaf, Path, Places } from './input-places';
import { isElevation } from './leveled';
import { outcomeTwists, type Twisted, unitWritten } from './outcome-slips';
import { putOn } from './put-on';
import { isStepped } from './rounding';
import { siOf, siOfUnit } from './scale';
import type { Scene } from './scene';
import { shortcutSlips } from './shortcut-slips';
import type { Edit, Slip, SlipCode } from './slip';
import { tradeStep } from './trade-step';
import { twisted } from './twist';
import { stepIn } from './whole-working';
import { placeOf } from './wrong-formulas';

/** An outcome that others are reckoned from is carried on wrongly; one at the end is written wrongly only. */
function editsFor(scene: Scene, i: number, twist: Twisted['twist']): (readonly Edit[])[] {
  const { figure } = scene.claims[i] as { figure: string };
  const node = scene.nodes[i];
  const own: Edit[] = [{ on: 'claim', figure, twist }];
  const several = scene.claims.length > 1 && node !== undefined;
  return several ? [[{ on: 'outcome', step: node, twist }], own] : [own];
}

/** A number that is written in the unit of the claim. */
const inUnitOf = (q: Quantity, claimed: Quantity): Quantity =>
  unitShown(q) === unitShown(claimed) ? q : (q.in(unitShown(claimed).id as never) as Quantity);

/** How rare it is that a digit goes wrong behind the last place that is written in the end. */
const FINER = 0.3;

/** Half of seven loads is no count; what is no whole number itself is told as one without being counted. */
const leavesWhole =
  (q: Quantity) =>
  ({ twist }: Twisted): boolean =>
    q.dimension !== 'count' ||
    !Number.isInteger(siOf(q)) ||
    Number.isInteger(Number(twisted(siOf(q), twist).toFixed(9)));

function* writtenSlips(scene: Scene, i: number): Generator<Slip> {
  const { figure, reckoned, claimed, places } = scene.claims[i] as Scene['claims'][number];
  const like = reckoned.dimension === 'money' ? reckoned : inUnitOf(reckoned, claimed);
  const last = unitShown(claimed).form === 'feet-inches' ? undefined : places;
  for (const { code, weight, twist, how } of outcomeTwists(like, last).filter(leavesWhole(like)))
    for (const edits of editsFor(scene, i, twist))
      yield {
        code,
        weight: last !== undefined && (twist.digits?.places ?? 0) > last ? weight * FINER : weight,
        says: () => say`${{ figure }}, ${{ reckoned: like }}, ${{ how: how() }}`,
        edits,
        figure,
      };
}

/** The unit in which a figure is reckoned before it is turned into that of the claim: yards are reckoned in feet. */
function reckonedIn(claimed: Quantity, given: Quantity | undefined): Unit | undefined {
  const own = unitShown(claimed);
  const before =
    own.id === 'yd3' ? unitOf('volume', 'ft3') : own.id === 'yd2' ? unitOf('area', 'ft2') : undefined;
  const other = before ?? (given && unitShown(given));
  const isPlain = other && (!other.form || other.form === 'percent') && !other.offset;
  return isPlain && other.id !== own.id ? other : undefined;
}

/** It is as likely that a number is written wrongly there as that it is in any one step. */
const BEFORE = 0.5;

/** Digits that go wrong before it is turned into the unit of the claim. */
function* writtenBefore(scene: Scene, i: number): Generator<Slip> {
  const { figure, reckoned, claimed } = scene.claims[i] as Scene['claims'][number];
  const node = scene.graph[scene.nodes[i] ?? -1];
  const unit = reckonedIn(claimed, node?.step.gives);
  if (!unit || reckoned.dimension === 'money') return;
  const like = reckoned.in(unit.id as never) as Quantity;
  for (const { code, weight, twist, how } of outcomeTwists(like, undefined)) {
    if (!twist.digits) continue;
    for (const edits of editsFor(scene, i, twist))
      yield {
        code,
        weight: weight * BEFORE,
        says: () => say`${{ figure }}, ${{ reckoned: like }}, ${{ how: how() }}`,
        edits,
        figure,
      };
  }
}

/** Turned from the unit of the job into that of the claim the wrong way: divided where it is multiplied. */
function* upsideDown(scene: Scene, i: number): Generator<Slip> {
  const { figure, reckoned, claimed } = scene.claims[i] as Scene['claims'][number];
  const [own, other] = [unitWritten(reckoned), unitWritten(claimed)];
  const { dimension } = reckoned;
  if (
    own === other ||
    own.offset ||
    own.form === 'one-in' ||
    other.form === 'one-in' ||
    dimension === 'money'
  )
    return;
  // The number of the one times the factor of the other, twice over.
  const factor = siOfUnit(other) / siOfUnit(own);
  yield {
    code: 'converted-upside-down',
    weight: own.system === other.system ? 2 : 8,
    says: () =>
      say`${{ figure }}, ${{ reckoned }}, was turned into ${{ unit: other.id }} the wrong way, divided where it is multiplied or the reverse`,
    edits: [{ on: 'claim', figure, twist: { unit: 1, times: [String(factor * factor), '1'] } }],
    figure,
  };
}

const WHOLE = 1e-6;
/** How common it is to round an amount to buy the other way. */
const BOUGHT = 20;

/** Rounded down to the step of the trade, or to one of the input, where it is to be rounded up. */
function* roundedSlips(scene: Scene, i: number): Generator<Slip> {
  const { figure, reckoned } = scene.claims[i] as Scene['claims'][number];
  const step = tradeStep(reckoned, scene.result.system);
  if (reckoned.dimension !== 'count' && reckoned.dimension !== 'volume') return;
  const down = siOf(step);
  // What is in whole steps already was rounded up to them.
  const steps = siOf(reckoned) / down;
  const node = scene.graph[scene.nodes[i] ?? -1];
  const isBought = (!node || isStepped(node.step)) && !scene.isInput(reckoned);
  const isWhole = isBought && reckoned.dimension === 'volume' && Math.abs(steps - Math.round(steps)) < WHOLE;
  yield {
    code: 'rounded-down',
    weight: isWhole ? BOUGHT : 5,
    says: () => say`${{ figure }}, ${{ reckoned }}, was rounded down to a step of ${{ step }}`,
    edits: [{ on: 'claim', figure, twist: { unit: 1, ...(isWhole ? { more: -down } : { down }) } }],
    figure,
  };
  if (reckoned.dimension !== 'count') return;
  for (const [one, code] of [
    [1, 'one-off-count'],
    [-1, 'one-off-count'],
  ] as const)
    yield {
      code,
      weight: 6,
      says: () => say`${{ figure }}, ${{ reckoned }}, was counted with one too many or too few`,
      edits: [{ on: 'claim', figure, twist: { unit: 1, more: one } }],
      figure,
    };
}

/** What is easily taken for another kind: an area for a length around it. */
const KINDRED: ReadonlySet<string> = /*#__PURE__*/ new Set(['area length', 'length area']);
const UNLIKE = 0.3;

/** The price of one, by its name. */
const PRICE = /unit|per[A-Z]|each|rate/;

/** Names of figures that are easily taken for each other. */
function codeFor(
  { figure, reckoned: q }: Pick<ReadClaim, 'figure' | 'reckoned'>,
  at: string,
  other: Quantity,
): readonly [SlipCode, number] {
  if (q.dimension === 'money' && (PRICE.test(figure) || PRICE.test(at))) return ['unit-price-for-total', 9];
  if (q.dimension === other.dimension) return ['other-figure', 6];
  return ['other-figure', KINDRED.has(`${q.dimension} ${other.dimension}`) ? 2 : UNLIKE];
}

const MOST = 40;
/** A row of a table is taken for a figure less often than a figure that stands alone. */
const ROW = 0.7;

/** Figures that stand alone before the rows of tables: of those a line is more easily taken. */
const easilyTaken = (figures: object): ReturnType<typeof figuresIn> => {
  const all = figuresIn(figures);
  const isRow = ({ at }: { at: string }): boolean => at.includes('[');
  return [...all.filter((one) => !isRow(one)), ...all.filter(isRow)].slice(0, MOST);
};

/** Another figure of the result, whose number stands under this name. */
function* otherSlips(scene: Scene, i: number): Generator<Slip> {
  const { figure, reckoned, claimed } = scene.claims[i] as Scene['claims'][number];
  if (siOf(reckoned) === 0 || unitShown(claimed).form === 'one-in') return;
  for (const { at, quantity } of easilyTaken(scene.result.figures)) {
    if (
      at === figure ||
      quantity.equals(reckoned) ||
      quantity.sign() === 0 ||
      unitShown(quantity).form === 'one-in'
    )
      continue;
    const [code, common] = codeFor({ figure, reckoned }, at, quantity);
    const weight = at.includes('[') ? common * ROW : common;
    const same = quantity.dimension === reckoned.dimension;
    const si = siOf(quantity);
    const scale = same ? 1 : (numberOf(quantity) * siOfUnit(unitWritten(claimed))) / si;
    // A count is whole, whatever its number was taken from.
    if (reckoned.dimension === 'count' && !Number.isInteger(Number((si * scale).toFixed(9)))) continue;
    const of = { path: pathOf(at) as Path, step: stepIn(quantity, scene.graph, scene.whole), si, scale };
    yield {
      code,
      weight,
      says: () => say`${{ other: at }}, ${{ quantity }}, stands in the place of ${{ figure }}`,
      edits: [{ on: 'claim', figure, twist: { unit: 1, of } }],
      figure,
    };
  }
}

const numberOf = (q: Quantity): number =>
  unitShown(q).form === 'feet-inches' ? siOf(q) / siOfUnit(unitWritten(q)) : numberShown(q).toNumber();

/** An allowance in a figure that should have none yet. */
function* putOnSlips(scene: Scene, i: number, putOnTo: ReturnType<typeof putOn>): Generator<Slip> {
  const { figure, reckoned } = scene.claims[i] as Scene['claims'][number];
  for (const { twist, says, ...slip } of putOnTo(reckoned))
    for (const edits of editsFor(scene, i, twist))
      yield { ...slip, says: () => says(figure, reckoned), edits, figure };
}

/** How common it is to take the greatest for the mean. */
const FOR_MEAN = 5;

/** The greatest depth, or the least, for the mean that an amount comes to: 6 in over all of a floor for 5. */
function* meanSlips(scene: Scene, i: number): Generator<Slip> {
  const { figure, reckoned } = scene.claims[i] as Scene['claims'][number];
  for (const node of scene.graph) {
    const { step, tree, bySymbol, si } = node;
    const own = tree?.is === 'sign' && tree.sign === '÷' && tree.left.is === 'symbol' && tree.left.name;
    if (!own || !/\bmean\b/.test(step.says) || !bySymbol.get(own)?.quantity.equals(reckoned as never))
      continue;
    const others = scene.claims.filter((one) => one.reckoned.equals(step.gives as never));
    for (const { at, quantity } of figuresIn(scene.result.figures))
      if (/^thi(?:ck|nn)est/.test(at) && quantity.dimension === step.gives.dimension && si !== 0) {
        const twist = { unit: 1, times: [String(siOf(quantity)), String(si)] as const };
        yield {
          code: 'other-figure',
          weight: FOR_MEAN,
          says: () =>
            say`${{ other: at }}, ${{ quantity }}, was taken for the outcome of ${{ step: placeOf(node) }}, ${{ gives: step.gives }}`,
          edits: [figure, ...others.map((one) => one.figure)].map((one) => ({
            on: 'claim',
            figure: one,
            twist,
          })),
          figure,
        };
      }
  }
}

/** How common it is to go up from a mark where it goes down. */
const TURNED = 6;
/** Marks that are tried. */
const MARKS = 12;

/** An elevation as far above one of the input as it is below it, or the reverse. */
function* turnedSlips(scene: Scene, i: number, leaves: readonly Leaf[]): Generator<Slip> {
  const { figure, reckoned } = scene.claims[i] as Scene['claims'][number];
  if (!isElevation(figure)) return;
  const own = siOf(reckoned);
  const marks = leaves.filter(({ at, dimension }) => dimension === 'length' && isElevation(at));
  for (const { at, quantity } of marks.slice(0, MARKS))
    yield {
      code: 'added-for-subtracted',
      weight: TURNED,
      says: () =>
        say`what ${{ figure }}, ${{ reckoned }}, lies below or above ${{ place: at }}, ${{ quantity }}, was put on for taken off, or taken off for put on`,
      edits: [{ on: 'claim', figure, twist: { unit: 1, more: 2 * (siOf(quantity) - own) } }],
      figure,
      input: at,
    };
}

/** Every slip of every claimed figure. */
export function claimSlips(scene: Scene, { leaves }: Pick<Places, 'leaves'>): Slip[] {
  const putOnTo = putOn(scene);
  return scene.claims.flatMap((_, i) => [
    ...writtenSlips(scene, i),
    ...writtenBefore(scene, i),
    ...upsideDown(scene, i),
    ...roundedSlips(scene, i),
    ...putOnSlips(scene, i, putOnTo),
    ...otherSlips(scene, i),
    ...turnedSlips(scene, i, leaves),
    ...meanSlips(scene, i),
    ...shortcutSlips(scene, i, leaves),
  ]);
}

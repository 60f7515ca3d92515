/** Slips of a claimed figure itself: reckoned rightly, and written down wrongly or for another. */
import { numberShown, type Quantity, unitShown } from '../quantity/quantity';
import { say } from '../reckoning/words';
import { figuresIn } from './figure-places';
import { outcomeTwists, type Twisted, unitWritten } from './outcome-slips';
import { siOf, siOfUnit } from './scale';
import type { Scene } from './scene';
import type { Edit, Slip, SlipCode } from './slip';
import { tradeStep } from './trade-step';

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

function* writtenSlips(scene: Scene, i: number): Generator<Slip> {
  const { figure, reckoned, claimed, places } = scene.claims[i] as Scene['claims'][number];
  const like = reckoned.dimension === 'money' ? reckoned : inUnitOf(reckoned, claimed);
  for (const { code, weight, twist, how } of outcomeTwists(
    like,
    unitShown(claimed).form === 'feet-inches' ? undefined : places,
  ))
    for (const edits of editsFor(scene, i, twist))
      yield { code, weight, says: () => say`${{ figure }}, ${{ reckoned: like }}, ${how()}`, edits, figure };
}

/** Rounded down to the step of the trade, or to one of the input, where it is to be rounded up. */
function* roundedSlips(scene: Scene, i: number): Generator<Slip> {
  const { figure, reckoned } = scene.claims[i] as Scene['claims'][number];
  const step = tradeStep(reckoned, scene.result.system);
  if (reckoned.dimension !== 'count' && reckoned.dimension !== 'volume') return;
  const down = siOf(step);
  yield {
    code: 'rounded-down',
    weight: 5,
    says: () => say`${{ figure }}, ${{ reckoned }}, was rounded down to a step of ${{ step }}`,
    edits: [{ on: 'claim', figure, twist: { unit: 1, down } }],
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
      edits: [
        {
          on: 'claim',
          figure,
          twist: { unit: 1, times: [String(siOf(reckoned) + one), String(siOf(reckoned))] },
        },
      ],
      figure,
    };
}

/** Names of figures that are easily taken for each other. */
const codeFor = (q: Quantity, other: Quantity): readonly [SlipCode, number] => {
  if (q.dimension === 'money' && other.dimension === 'money') return ['unit-price-for-total', 9];
  return ['other-figure', q.dimension === other.dimension ? 6 : 2];
};

const MOST = 40;

/** Figures that stand alone before the rows of tables: of those a line is more easily taken. */
const easilyTaken = (figures: object): ReturnType<typeof figuresIn> => {
  const all = figuresIn(figures);
  const isRow = ({ at }: { at: string }): boolean => at.includes('[');
  return [...all.filter((one) => !isRow(one)), ...all.filter(isRow)].slice(0, MOST);
};

/** Another figure of the result, whose number stands under this name. */
function* otherSlips(scene: Scene, i: number): Generator<Slip> {
  const { figure, reckoned, claimed } = scene.claims[i] as Scene['claims'][number];
  const own = siOf(reckoned);
  if (own === 0 || unitShown(claimed).form === 'one-in') return;
  for (const { at, quantity } of easilyTaken(scene.result.figures)) {
    if (
      at === figure ||
      quantity.equals(reckoned) ||
      quantity.sign() === 0 ||
      unitShown(quantity).form === 'one-in'
    )
      continue;
    const [code, weight] = codeFor(reckoned, quantity);
    const same = quantity.dimension === reckoned.dimension;
    const si = same ? siOf(quantity) : numberOf(quantity) * siOfUnit(unitWritten(claimed));
    yield {
      code,
      weight,
      says: () => say`${{ other: at }}, ${{ quantity }}, stands in the place of ${{ figure }}`,
      edits: [{ on: 'claim', figure, twist: { unit: 1, times: [String(si), String(own)] } }],
      figure,
    };
  }
}

const numberOf = (q: Quantity): number =>
  unitShown(q).form === 'feet-inches' ? siOf(q) / siOfUnit(unitWritten(q)) : numberShown(q).toNumber();

/** Every slip of every claimed figure. */
export const claimSlips = (scene: Scene): Slip[] =>
  scene.claims.flatMap((_, i) => [
    ...writtenSlips(scene, i),
    ...roundedSlips(scene, i),
    ...otherSlips(scene, i),
  ]);

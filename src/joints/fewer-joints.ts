/**
 * What a slab would take if a few of its panels were a little longer for their width.
 *
 * A notch can force a whole grid of small panels, as lines through its corner leave narrow strips that the ratio cuts up.
 * Published limits of the ratio run to 2:1, so a plan that saves much by letting a few panels pass 1.5:1 is worth
 * knowing of. The plan itself keeps the rule; who wants the other gives its ratio.
 */
import type { Decimal } from '../quantity/decimal';
import { constant, ratio } from '../quantity/make';
import type { Quantity } from '../quantity/quantity';
import { wholeNumber } from '../reckoning/fields';
import { FEW, isPlain, MOST_ASKED, RATIOS, SAVED } from './layout/eased';
import { brokenIn, lengthOf } from './layout/laid';
import type { Laid } from './layout/plan';
import { brokenBy, type Limits } from './layout/rules';
import type { Site } from './layout/site';
import type { LayoutParsed } from './layout-input';
import { totalOf, type Writer } from './layout-told';

/** A plan by a longer ratio, in short. */
export interface FewerJoints {
  /** How long a panel may be for its width there: give it as `longestRatio` for this plan. */
  readonly longestRatio: Quantity<'ratio'>;
  /** Panels of that plan. */
  readonly panelCount: Quantity<'count'>;
  /** Length of its contraction joints. */
  readonly contraction: Quantity<'length'>;
}

/** A plan, and the plans that other ratios give of the same slab. */
interface Planned {
  readonly laid: Laid;
  readonly area: Decimal;
  readonly site: Site;
  readonly byRatio: (longestRatio: Quantity<'ratio'>) => Laid;
}

/** Another plan, and the ratio that it is laid by. */
interface Fewer {
  readonly longestRatio: Quantity<'ratio'>;
  readonly laid: Laid;
}

const LONGER = constant(() => RATIOS.map((r) => ratio(`${r}:1`)));

/** By this ratio strips are left whole, to see how many panels come of cutting them up. */
const WHOLE_STRIPS = constant(() => ratio('20:1'));

/** Strips are to blame where they make this many times as many panels. */
const BY_STRIPS = 2;

/** So many times as many panels as the spacing asks for are many. */
const MANY = 1.5;

function isCutUp({ laid, area }: Planned, { spacing }: Limits): boolean {
  const asked = Math.ceil(area.toNumber() / (spacing * spacing));
  return asked <= MOST_ASKED && laid.panels.length > MANY * asked;
}

const longIn = ({ panels }: Laid, limits: Limits): Laid['panels'] =>
  panels.filter(({ along, across }) =>
    brokenBy(along.toNumber(), across.toNumber(), limits).includes('panel shape'),
  );

/** Whether few of the panels pass the ratio. */
const areFewLong = (laid: Laid, limits: Limits): boolean =>
  longIn(laid, limits).length <= FEW * laid.panels.length;

/** Whether the panels that pass the ratio lie on a small part of the slab: two of four may be strips. */
function isLittleLong(laid: Laid, area: Decimal, limits: Limits): boolean {
  const long = longIn(laid, limits);
  const onThem = long.reduce((sum, { along, across }) => sum + along.toNumber() * across.toNumber(), 0);
  return onThem <= FEW * area.toNumber();
}

/** Whether another plan keeps every rule but the ratio, and saves enough. */
const saves = (other: Laid, { laid }: Planned): boolean =>
  brokenIn(other) === 0 && lengthOf(other).toNumber() <= (1 - SAVED) * lengthOf(laid).toNumber();

/** Whether a plan keeps every rule in far more panels than the spacing asks for, which another search may tell. */
const isAsked = (planned: Planned, limits: Limits): boolean =>
  planned.laid.pattern === 'straight' &&
  brokenIn(planned.laid) === 0 &&
  isPlain(planned.site) &&
  isCutUp(planned, limits);

/** The first longer ratio that saves much, where nobody gave one and the plan keeps every rule in many panels. */
export function fewerJoints(input: LayoutParsed, planned: Planned, limits: Limits): Fewer | undefined {
  if (input.longestRatio || !isAsked(planned, limits)) return undefined;
  const others = LONGER()
    .map((longestRatio) => ({ longestRatio, laid: planned.byRatio(longestRatio) }))
    .filter(({ laid }) => saves(laid, planned));
  return (
    others.find(({ laid }) => areFewLong(laid, limits)) ??
    others.find(({ laid }) => isLittleLong(laid, planned.area, limits))
  );
}

/** How many panels would do, were it not for narrow strips on a small part of the slab that cut up all of it. */
export function withoutStrips(
  input: LayoutParsed,
  planned: Planned,
  limits: Limits,
): Quantity<'count'> | undefined {
  if (input.longestRatio || !isAsked(planned, limits)) return undefined;
  const whole = planned.byRatio(WHOLE_STRIPS());
  const panels = whole.panels.length;
  const isTheirs =
    brokenIn(whole) === 0 &&
    isLittleLong(whole, planned.area, limits) &&
    planned.laid.panels.length >= BY_STRIPS * panels;
  return isTheirs ? wholeNumber(panels) : undefined;
}

export const fewerFigures = ({ longestRatio, laid }: Fewer, write: Writer): FewerJoints => ({
  longestRatio,
  panelCount: wholeNumber(laid.panels.length),
  contraction: write.length(totalOf(laid, 'contraction')),
});

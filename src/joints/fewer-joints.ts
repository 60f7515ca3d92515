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

/** Ratios that are tried, up to the longest that is published. */
const RATIOS = constant(() => ['1.6:1', '1.75:1', '2:1'].map((text) => ratio(text)));

/** Above this many panels the plan is a floor, whose rows are what they are. */
const MOST_PANELS = 40;

/** Corners and openings up to which another search costs next to nothing. */
const MOST_CORNERS = 24;

/** So many times as many panels as the spacing asks for are many. */
const MANY = 1.5;

/** It must save this much of the sawing, and no more than this part of its panels may pass the ratio. */
const SAVED = 0.25;
const FEW = 0.25;

const isPlain = ({ ring, openings }: Site): boolean => ring.length + 4 * openings.length <= MOST_CORNERS;

const isCutUp = ({ laid, area }: Planned, { spacing }: Limits): boolean =>
  laid.panels.length <= MOST_PANELS &&
  laid.panels.length > MANY * Math.ceil(area.toNumber() / (spacing * spacing));

/** Whether another plan saves enough, with few enough panels that pass the ratio of the one that is. */
function isWorth(other: Laid, laid: Laid, limits: Limits): boolean {
  const over = other.panels.filter(({ along, across }) =>
    brokenBy(along.toNumber(), across.toNumber(), limits).includes('panel shape'),
  );
  return (
    brokenIn(other) === 0 &&
    over.length <= FEW * other.panels.length &&
    lengthOf(other).toNumber() <= (1 - SAVED) * lengthOf(laid).toNumber()
  );
}

/** The first longer ratio that saves much, where nobody gave one and the plan keeps every rule in many panels. */
export function fewerJoints(input: LayoutParsed, planned: Planned, limits: Limits): Fewer | undefined {
  const { laid, site, byRatio } = planned;
  if (input.longestRatio || laid.pattern !== 'straight' || brokenIn(laid) > 0) return undefined;
  if (!isPlain(site) || !isCutUp(planned, limits)) return undefined;
  for (const longestRatio of RATIOS()) {
    const other = byRatio(longestRatio);
    if (isWorth(other, laid, limits)) return { longestRatio, laid: other };
  }
  return undefined;
}

export const fewerFigures = ({ longestRatio, laid }: Fewer, write: Writer): FewerJoints => ({
  longestRatio,
  panelCount: wholeNumber(laid.panels.length),
  contraction: write.length(totalOf(laid, 'contraction')),
});

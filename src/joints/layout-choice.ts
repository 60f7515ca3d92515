/**
 * The best of the plans that a slab may have: straight joints from each corner, a strip cut across, a fan, joints led
 * from an opening outward. Keeping every rule comes before length; else each broken rule weighs as a length of sawing.
 */

import type { Decimal } from '../quantity/decimal';
import { canonicalValue } from '../quantity/quantity';
import { type FoundGrid, findGrid, type Setting } from './layout/grid-plan';
import { brokenIn, laidBack, layFan, layStraight, lengthOf } from './layout/laid';
import { missedCorners } from './layout/missed';
import type { Laid } from './layout/plan';
import { type Limits, softened } from './layout/rules';
import { WORK_LIMIT } from './layout/search';
import type { Site } from './layout/site';
import { isSmall, passedBy } from './layout/spared';
import { type Draft, draftDeck, draftStrip } from './layout/strip';
import type { LayoutParsed } from './layout-input';
import { plain } from './round-slab';

/** A plan and the slab as it lies for it. */
interface Choice {
  readonly laid: Laid;
  readonly site: Site;
}

/**
 * Keeping every rule comes before length, unless that cuts up the slab; else each broken rule weighs as a length of
 * sawing.
 */
function bestOf(choices: readonly Choice[], limits: Limits): Choice {
  const { weight } = softened(limits);
  const weighed = choices.map((choice) => {
    const broken = brokenIn(choice.laid);
    return { choice, broken, cost: lengthOf(choice.laid).toNumber() + weight * broken };
  });
  const eased = choices.some(({ laid }) => laid.kept);
  const better = (a: (typeof weighed)[number], b: (typeof weighed)[number]): boolean =>
    eased || (a.broken === 0) === (b.broken === 0) ? a.cost < b.cost - AS_LONG : a.broken === 0;
  return weighed.reduce((best, next) => (better(next, best) ? next : best)).choice;
}

/** Plans within this are as long as each other, in meters. */
const AS_LONG = 1e-6;

export function laidOn(input: LayoutParsed, sites: readonly Site[], limits: Limits, step: Decimal): Choice {
  const module = input.module && canonicalValue(input.module);
  const setting = { step, module, share: 1 / sites.length };
  const [first] = sites as [Site];
  const choices =
    sites.length > 1
      ? likelier(foundFrom(sites, limits, setting)).map((found) => choiceOf(found.site, layStraight(found)))
      : choicesFor(input, first, limits, setting);
  const { laid, site } = bestOf(choices, limits);
  const missed = laid.missed?.map((c) => site.pose.out(c));
  const passed = laid.passedBy?.map((o) => ({ ...o, at: site.pose.out(o.at) }));
  const left = { ...(missed ? { missed } : {}), ...(passed ? { passedBy: passed } : {}) };
  return { laid: { ...laidBack(laid, site), ...left }, site };
}

/** Plans from each corner, or from the first ones where those take all the work allowed. */
function foundFrom(sites: readonly Site[], limits: Limits, setting: Setting): FoundGrid[] {
  const plans: FoundGrid[] = [];
  let work = 0;
  for (const site of sites) {
    if (work > WORK_LIMIT) break;
    const plan = findGrid(site, limits, setting);
    work += plan.found.work;
    plans.push(plan);
  }
  return plans;
}

function choiceOf(site: Site, laid: Laid): Choice {
  const [missed, passed] = [missedCorners(site, laid), passedBy(site, laid)];
  const whole = missed.length + passed.length === 0;
  return { site, laid: whole ? laid : { ...laid, missed, passedBy: passed, exact: false } };
}

/** Above this many panels in all only one of several plans is laid out in exact decimals. */
const FEW_PANELS = 1_000;

/** Of the plans from each corner all, or where that is too much the first of those that cost least. */
function likelier(plans: readonly FoundGrid[]): readonly FoundGrid[] {
  const panels = plans.reduce((sum, { cells }) => sum + cells, 0);
  if (panels <= FEW_PANELS) return plans;
  const better = (a: FoundGrid, b: FoundGrid): boolean =>
    a.softened === b.softened ? a.found.cost < b.found.cost - AS_LONG : b.softened;
  return [plans.reduce((best, next) => (better(next, best) ? next : best))];
}

/** Strips this many times as long as wide are cut across and not otherwise. */
const SLIM = 2;

/** Joints reckoned in binary numbers may turn out longer by this part, and more, in exact ones. */
const NEARLY = 0.02;

/** Straight joints that weigh this many times as much are not laid out. */
const SURELY = 1.1;

/** False for a plan that cannot be better than another, whatever it comes to in exact decimals. */
function mayBeat({ broken, sawn }: Draft, { laid }: Choice, limits: Limits): boolean {
  const { weight } = softened(limits);
  const others = brokenIn(laid);
  if (broken > 0 && others === 0) return false;
  const cost = sawn * (1 - NEARLY) + weight * broken;
  return broken === 0 || cost <= lengthOf(laid).toNumber() + weight * others;
}

/** True for a large plan that straight joints, which break rules too, fall far behind. */
function isSurer(
  { broken, sawn }: Draft,
  { found, cells, softened: soft }: FoundGrid,
  limits: Limits,
): boolean {
  return cells > FEW_PANELS && soft && SURELY * (sawn + softened(limits).weight * broken) < found.cost;
}

/** A draft that keeps every rule, laid out, where it still does so in exact decimals. */
function keptBy(draft: Draft | undefined, site: Site): Choice | undefined {
  if (draft?.broken !== 0) return undefined;
  const choice = choiceOf(site, draft.lay());
  return brokenIn(choice.laid) === 0 ? choice : undefined;
}

/** Plans of every kind that the slab may have. */
function choicesFor(input: LayoutParsed, site: Site, limits: Limits, setting: Setting): Choice[] {
  const free = plain(input) && !site.orthogonal;
  const bare = free && site.openings.length === 0;
  const strip = bare ? draftStrip(site, limits) : undefined;
  const across = strip && strip.slim >= SLIM ? keptBy(strip, site) : undefined;
  if (across) return [across];
  const deck = plain(input) && !site.openings.some((o) => o.cornered) ? draftDeck(site, limits) : undefined;
  // Around a small opening straight joints may be shorter.
  const around = site.openings.some((o) => isSmall(o, limits)) ? undefined : keptBy(deck, site);
  if (around) return [around];
  const fan = bare ? layFan(site.ring, limits) : undefined;
  const found = findGrid(site, limits, setting);
  const [surer] = [strip, deck].flatMap((draft) => (draft && isSurer(draft, found, limits) ? [draft] : []));
  if (surer) return [choiceOf(site, surer.lay())];
  const straight = choiceOf(found.site, layStraight(found));
  const laidOf = (draft: Draft | undefined): Choice[] =>
    draft && mayBeat(draft, straight, limits) ? [choiceOf(site, draft.lay())] : [];
  return [straight, ...laidOf(strip), ...(fan ? [choiceOf(site, fan)] : []), ...laidOf(deck)];
}

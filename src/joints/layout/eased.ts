/**
 * Slabs that keeping every rule would cut up.
 *
 * A notch or a bay beside a corner leaves narrow strips, and to cut those into panels of good shape sends cuts through
 * the whole slab: nobody saws ninety panels where nine would do. Such a slab gets the plan with panels up to 2 to 1,
 * as handbooks allow, or where that does not help the one of which the sawing and the broken rules weigh least. That
 * is common practice; whoever gives the ratio or the least side has it kept.
 */
import type { FoundGrid, GridPlan } from './grid-plan';
import { filled } from './notches';
import { HAIR, type Limits, softened } from './rules';
import { ringArea, type Site } from './site';

/** Longer ratios that are tried, up to the longest that is published. */
export const RATIOS = [1.6, 1.75, 2];
export const LONGEST = /*#__PURE__*/ Math.max(...RATIOS);

/** It must make at most this part of the panels, and so many fewer. */
const PART = 0.5;
const FEWER = 5;

/** Above these the slab is a floor, whose rows are what they are, or another search takes long. */
export const MOST_ASKED = 40;
const MOST_CORNERS = 24;

/** Whether a slab has so few corners and openings that another search costs next to nothing. */
export const isPlain = ({ ring, openings }: Site): boolean =>
  ring.length + 4 * openings.length <= MOST_CORNERS;

/** How many panels the spacing asks for at least. */
export const fewestOf = (site: Site, { spacing }: Limits): number =>
  Math.ceil(ringArea(site.ring).toNumber() / spacing ** 2 - HAIR);

/** Of those no more than this part, or lying on no more than this part of the slab, may pass the ratio. */
export const FEW = 0.25;

/** Where a longer ratio saves this much of the sawing, but not so many panels, it is told and the rules are kept. */
export const SAVED = 0.25;

/** A corner passed by with bars across it weighs as much as so many panels that break a rule. */
const BARRED = 2;

const saves = (panels: number, others: number): boolean =>
  others <= PART * panels && others + FEWER <= panels;

/** Whether a slab may be worth another search: few corners, and far more panels than the spacing asks for. */
function isWorthIt({ site, limits, softened, cells }: FoundGrid): boolean {
  const asked = fewestOf(site, limits);
  return !limits.strict && !softened && isPlain(site) && asked <= MOST_ASKED && saves(cells, asked);
}

const longIn = ({ panels }: GridPlan): GridPlan['panels'] => panels.filter(({ broken }) => broken.length > 0);

const areaOf = (panels: GridPlan['panels']): number =>
  panels.reduce((sum, { area }) => sum + area.toNumber(), 0);

const areFew = (plan: GridPlan): boolean => longIn(plan).length <= FEW * plan.panels.length;

const isLittle = (plan: GridPlan): boolean => areaOf(longIn(plan)) <= FEW * areaOf(plan.panels);

/** How other plans of the same slab are come by. */
interface Ways {
  /** A plan by a longer ratio, or with broken rules weighed, or of the slab as planned otherwise. */
  readonly find: (ratio: number, weighing: boolean, site?: Site) => FoundGrid;
  readonly lay: (found: FoundGrid) => GridPlan;
}

/** A plan told as one that breaks the rules it breaks, with what it would take to keep them. */
const inPlaceOf = ({ limits, cells, found }: FoundGrid, other: FoundGrid): FoundGrid => ({
  ...other,
  limits,
  softened: true,
  kept: { cells, length: found.cost },
});

/** The first plan by a longer ratio that is worth it: with few long panels, or else with little of the slab on them. */
function byRatio(plan: FoundGrid, { find, lay }: Ways): FoundGrid | undefined {
  const others = RATIOS.map((ratio) => find(ratio, false))
    .filter(({ softened: soft, found }) => !soft && found.cost <= (1 - SAVED) * plan.found.cost)
    .map((other) => inPlaceOf(plan, other))
    .map((told) => ({ told, laid: lay(told) }));
  return (others.find(({ laid }) => areFew(laid)) ?? others.find(({ laid }) => isLittle(laid)))?.told;
}

/** The plan of which the sawing and the broken rules weigh least, small notches passed by where that is better. */
function byWeight({ site, limits }: FoundGrid, { find }: Ways): FoundGrid {
  const plan = find(limits.ratio, true);
  const other = filled(site, limits);
  if (!other) return plan;
  const passing = find(limits.ratio, true, other.site);
  const corners = BARRED * softened(limits).weight * other.passed;
  return passing.found.cost + corners < plan.found.cost ? passing : plan;
}

/** The plan with a few broken rules in place of one that cuts up the slab to keep them all. */
export function eased(plan: FoundGrid, ways: Ways): FoundGrid {
  if (!isWorthIt(plan)) return plan;
  const longer = byRatio(plan, ways);
  if (longer) return saves(plan.cells, longer.cells) ? longer : plan;
  const weighed = byWeight(plan, ways);
  return saves(plan.cells, weighed.cells) ? inPlaceOf(plan, weighed) : plan;
}

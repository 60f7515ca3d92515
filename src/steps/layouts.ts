/** The layouts that a rise and a run allow, each held to the walking rules, and which of them is better. */

import { small, toMark } from '../grade/marks';
import * as faults from '../quantity/faults';
import { area, constant, length, slope } from '../quantity/make';
import { greaterOfPair, lesserOfPair, paired } from '../quantity/paired';
import { type Quantity, systemOfQuantity } from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import { wholeNumber } from '../reckoning/fields';
import { type Limit, withinLimit } from '../reckoning/limits';
import { strideOf } from './risers';
import type { StepLimits } from './rules';
import type { StepLayoutParsed } from './step-layout-input';

type Length = Quantity<'length'>;
type Slope = Quantity<'slope'>;

/** One way to lay out the steps. */
export interface StepLayoutFigures {
  /** How many risers. */
  readonly risers: Quantity<'count'>;
  /** Height of each riser, nosing to nosing. */
  readonly riser: Quantity<'length'>;
  /** Riser to the nearest 1/16 in or mm, for show; mark from the story pole instead. */
  readonly riserMark: Quantity<'length'>;
  /** Height of the form of the first riser, which stands on the walk. */
  readonly firstRiserForm: Quantity<'length'>;
  /** Height of the forms of the other risers, which stand at the back of a pitched tread. */
  readonly riserForm: Quantity<'length'>;
  /** Treads between the risers; the landing is not one of them. */
  readonly treads: Quantity<'count'>;
  /** Level depth of each tread, nosing to nosing. */
  readonly tread: Quantity<'length'>;
  /** Level length of the treads together. */
  readonly run: Quantity<'length'>;
  /** How much higher a tread is at its back. */
  readonly treadFall: Quantity<'length'>;
  /** `2 × r + t`. */
  readonly twoRisersAndTread: Quantity<'length'>;
  /** `r + t`. */
  readonly riserAndTread: Quantity<'length'>;
  /** `r × t`. */
  readonly riserTimesTread: Quantity<'area'>;
  /** Which of the walking rules it meets. */
  readonly walkingRules: readonly ('2r + t' | 'r + t' | 'r × t')[];
}

/** A mark on the story pole. */
export interface StoryPoleMark {
  /** Number of the riser from the foot. */
  readonly riser: Quantity<'count'>;
  /** Exact height of its nosing above the ground at the foot. */
  readonly height: Quantity<'length'>;
  /** To the nearest 1/16 in or mm, each from the exact height, so that nothing adds up. */
  readonly mark: Quantity<'length'>;
}

/** Figures of {@link stepLayout}. */
export interface StepLayoutsFigures {
  /** `steps found`, or `none fits` where no number of risers meets the rules. */
  readonly verdict: 'steps found' | 'none fits';
  /** What the landing falls from the door to its front. */
  readonly landingFall: Quantity<'length'>;
  /** Rise that is left for the risers. */
  readonly riserTotal: Quantity<'length'>;
  /** The layout ranked first. */
  readonly best?: StepLayoutFigures;
  /** All layouts that the rules allow, best first. */
  readonly layouts: readonly StepLayoutFigures[];
  /** Story pole of the best layout, from the foot up. */
  readonly marks: readonly StoryPoleMark[];
  /** What risers marked so differ by at most. */
  readonly markedDifference: Quantity<'length'>;
  /** Difference of the highest and lowest riser measured. */
  readonly flightDifference?: Quantity<'length'>;
  /** Largest difference of neighboring risers measured. */
  readonly neighborDifference?: Quantity<'length'>;
}

export const RISERS: Limit = { of: 'a flight in risers', most: 200 };
const TWO = constant(() => wholeNumber(2));
export const NONE = constant(() => length('0 in'));
/** 25 in, which is 635 mm. */
export const WALKING_SUM = /*#__PURE__*/ paired('length', '25 in', '635 mm');
const SUM_25 = constant(() => length('25 in'));
const SUM_24 = constant(() => length('24 in'));
const SUM_17 = constant(() => length('17 in'));
const SUM_19 = constant(() => length('19 in'));
const PRODUCT_FROM = constant(() => area('70 in2'));
const PRODUCT_TO = constant(() => area('80 in2'));
export const USUAL_PITCH = constant(() => slope('2%'));

/** What all layouts of one job share. */
export interface Job {
  readonly input: StepLayoutParsed;
  readonly limits: StepLimits;
  readonly pitch: Slope;
  /** Rise left for the risers. */
  readonly total: Length;
  /** Height of the landing at the door. */
  readonly top: Length;
}

/** The rules have their limits in two systems, each rounded: a riser may be what either allows. */
const mostRiser = ({ highest }: StepLimits): Length => greaterOfPair(highest);
const leastRiser = ({ lowest }: StepLimits): Length => lesserOfPair(lowest);

/** Every number of risers that keeps each within the limits, or the one that was given. */
function riserCounts({ input, limits, total }: Job): number[] {
  if (input.risers) return [Number(input.risers.value)];
  const fewest = total.over(mostRiser(limits)).toNumber(':1');
  const most = total.over(leastRiser(limits)).toNumber(':1');
  withinLimit(RISERS, most - 1, 'totalRise');
  const counts: number[] = [];
  for (let n = Math.max(1, Math.floor(fewest)); n <= Math.ceil(most); n += 1) {
    const riser = total.over(wholeNumber(n));
    if (!riser.greaterThan(mostRiser(limits)) && !riser.lessThan(leastRiser(limits))) counts.push(n);
  }
  return counts;
}

/** Tread by the rule `2 × r + t = 25 in`, never below what the rules allow. */
function treadByRule(riser: Length, least: Length): Length {
  const tread = SUM_25().minus(riser.times(TWO()));
  return tread.lessThan(least) ? least : tread;
}

function treadFor({ input, limits }: Job, treads: number, riser: Length): Length {
  if (input.tread) return small(input.tread);
  if (input.totalRun && treads > 0) return small(input.totalRun.over(wholeNumber(treads)));
  const tread = treadByRule(riser, limits.narrowest.like(input.totalRise));
  return systemOfQuantity(input.totalRise) === 'metric' ? tread.in('mm') : tread;
}

function rulesMet(sum2: Length, sum: Length, product: Quantity<'area'>): StepLayoutFigures['walkingRules'] {
  const met: StepLayoutFigures['walkingRules'][number][] = [];
  if (!sum2.lessThan(SUM_24()) && !sum2.greaterThan(SUM_25())) met.push('2r + t');
  if (!sum.lessThan(SUM_17()) && !sum.greaterThan(SUM_19())) met.push('r + t');
  if (!product.lessThan(PRODUCT_FROM()) && !product.greaterThan(PRODUCT_TO())) met.push('r × t');
  return met;
}

function layoutOf(job: Job, count: number): StepLayoutFigures {
  const riser = job.total.over(wholeNumber(count));
  const treads = wholeNumber(count - 1);
  const tread = treadFor(job, count - 1, riser);
  const treadFall = small(tread.times(job.pitch));
  const sum2 = riser.times(TWO()).plus(tread);
  const sum = riser.plus(tread);
  const product = riser.times(tread).in(systemOfQuantity(riser) === 'metric' ? 'cm2' : 'in2');
  return {
    risers: wholeNumber(count),
    riser,
    riserMark: toMark(riser),
    firstRiserForm: riser,
    riserForm: count > 1 ? riser.minus(treadFall) : riser,
    treads,
    tread,
    run: tread.times(treads),
    treadFall,
    twoRisersAndTread: sum2,
    riserAndTread: sum,
    riserTimesTread: product,
    walkingRules: rulesMet(sum2, sum, product),
  };
}

/** True where treads come out narrower than the rules allow, as in a short run. */
export const isNarrow = ({ treads, tread }: StepLayoutFigures, { narrowest }: StepLimits): boolean =>
  treads.sign() > 0 && narrowest.undercutBy(tread) !== undefined;

/** Layouts that keep the limits in inches as well as in metric, and the stride of the rules, go first. */
const strays = ({ riser, twoRisersAndTread: sum }: StepLayoutFigures, limits: StepLimits): number =>
  (limits.asked ?? limits.highest).exceededBy(riser) ||
  riser.lessThan(greaterOfPair(limits.lowest)) ||
  strideOf(limits, sum)
    ? 1
    : 0;

function better(a: StepLayoutFigures, b: StepLayoutFigures, limits: StepLimits): number {
  const stray =
    Number(isNarrow(a, limits)) - Number(isNarrow(b, limits)) || strays(a, limits) - strays(b, limits);
  if (stray !== 0) return stray;
  const rules = b.walkingRules.length - a.walkingRules.length;
  if (rules !== 0) return rules;
  const off = (l: StepLayoutFigures): Length => l.twoRisersAndTread.minus(SUM_25()).abs();
  return off(a).compareTo(off(b)) || a.risers.compareTo(b.risers);
}

export function marksOf(job: Job, best: StepLayoutFigures, count: number): StoryPoleMark[] {
  return Array.from({ length: count }, (_, i) => {
    const height = small(job.total.times(wholeNumber(i + 1)).over(best.risers));
    return { riser: wholeNumber(i + 1), height, mark: toMark(height) };
  });
}

export const steps = (marks: readonly Length[]): Length[] =>
  marks.map((mark, i) => (i === 0 ? mark : mark.minus(marks[i - 1] as Length)));

/** The layouts, best first; a tread that rises more than a riser leaves no step. */
export function layoutsOf(job: Job): StepLayoutFigures[] {
  const all = riserCounts(job).map((count) => layoutOf(job, count));
  const steps = all.filter(({ riserForm }) => riserForm.sign() > 0);
  if (all.length > 0 && steps.length === 0) {
    refuse(job.input.pitch ? 'pitch' : 'tread', faults.doesNotFit('the fall of a tread', 'the riser'));
  }
  return steps.sort((a, b) => better(a, b, job.limits));
}

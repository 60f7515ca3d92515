/**
 * From the total rise to risers and treads that are all alike.
 *
 * The rise is measured to the door sill, o above the landing, or to the landing itself. A landing of depth
 * d pitched p drains away from the door, so its front edge lies `p × d` lower:
 * `H = total rise − o − p × d` is left for n risers of `H ÷ n`, measured from nosing to nosing. The first
 * stands on the walk and its form is a whole riser high; the others stand at the back of a tread of depth t,
 * which is `p × t` higher there, so their forms are `p × t` lower. Between n risers lie n − 1 treads; the
 * landing tops the last.
 *
 * Every number of risers that the rules allow is listed. They are ranked by how many of the walking
 * rules they meet, then by how near `2 × r + t` is to 25 in, then by fewer risers.
 *
 * Sources: EN5156 (the walking rules), Masonry and Concrete (at most 25 in), codes as quoted.
 */

import { small, toMark } from '../grade/marks';
import * as faults from '../quantity/faults';
import { area, constant, length, slope } from '../quantity/make';
import { paired } from '../quantity/paired';
import { type Quantity, type QuantityInput, systemOfQuantity } from '../quantity/quantity';
import { type Calculation, define, refuse } from '../reckoning/calculation';
import { choice, fields, list, maybe, quantity, whole, wholeNumber } from '../reckoning/fields';
import { type Limit, withinLimit } from '../reckoning/limits';
import type { Pad } from '../reckoning/pad';
import { all, holds, notBoth, says, where } from '../reckoning/together';
import { say } from '../reckoning/words';
import * as cautions from './cautions';
import * as ordinary from './ordinary';
import { LOWEST_METRIC, STEP_LIMITS, type StepLimits, type StepRules } from './rules';
import {
  ADA_THRESHOLDS,
  CC_STEP_TOLERANCE,
  COMMON_PRACTICE,
  EN5156_STAIRS,
  IRC_DOORS,
  MCGRAW_STEPS,
} from './sources';

/** The door at the top. */
export interface StepDoorInput {
  /** Which way the door swings: `in` over the floor, `out` over the landing. */
  readonly swing: 'in' | 'out';
  /** Width of the door leaf. */
  readonly width: QuantityInput<'length'>;
  /** How far the landing at the door lies below the top of the threshold; taken off a rise to the sill. */
  readonly threshold?: QuantityInput<'length'>;
}

/** Input of {@link stepLayout}. */
export interface StepLayoutInput {
  /** From the ground at the foot up to the door sill or to the landing, as `riseTo` says. */
  readonly totalRise: QuantityInput<'length'>;
  /**
   * What `totalRise` is measured to: the top of the door's threshold (`sill`), or the landing at the door.
   * By default the sill where a threshold is given, the landing otherwise.
   */
  readonly riseTo?: 'sill' | 'landing';
  /** Whose limits; by default those of a dwelling. */
  readonly rules?: StepRules;
  /** How many risers, where that is settled; otherwise every number the rules allow is tried. */
  readonly risers?: number;
  /** Depth of each tread, nosing to nosing. */
  readonly tread?: QuantityInput<'length'>;
  /** Level length for the treads, first to last nosing, to be shared out; goes in place of `tread`. */
  readonly totalRun?: QuantityInput<'length'>;
  /** Depth of the landing at the top, along the way of travel. */
  readonly landing?: QuantityInput<'length'>;
  /** Slope of treads and landing toward the foot; by default 2%. `0%` for level ones. */
  readonly pitch?: QuantityInput<'slope'>;
  /**
   * From the landing down to the lowest ground within 36 in of its open sides, where that falls away lower
   * than the foot of the steps.
   */
  readonly sideDrop?: QuantityInput<'length'>;
  /** The door at the top, where there is one to be checked. */
  readonly door?: StepDoorInput;
  /** Riser heights as formed or built, from the foot up, to be checked for being alike. */
  readonly measured?: readonly QuantityInput<'length'>[];
}

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

type Length = Quantity<'length'>;
type Slope = Quantity<'slope'>;

interface Parsed {
  readonly totalRise: Length;
  readonly riseTo: 'sill' | 'landing' | undefined;
  readonly sideDrop: Length | undefined;
  readonly rules: StepRules | undefined;
  readonly risers: Quantity<'count'> | undefined;
  readonly tread: Length | undefined;
  readonly totalRun: Length | undefined;
  readonly landing: Length | undefined;
  readonly pitch: Slope | undefined;
  readonly door:
    | { readonly swing: 'in' | 'out'; readonly width: Length; readonly threshold: Length | undefined }
    | undefined;
  readonly measured: readonly Length[] | undefined;
}

const RISERS: Limit = { of: 'a flight in risers', most: 200 };
const TWO = constant(() => wholeNumber(2));
const NONE = constant(() => length('0 in'));
/** 25 in, which is 635 mm. */
const WALKING_SUM = /*#__PURE__*/ paired('length', '25 in', '635 mm');
const SUM_25 = constant(() => length('25 in'));
const SUM_24 = constant(() => length('24 in'));
const SUM_17 = constant(() => length('17 in'));
const SUM_19 = constant(() => length('19 in'));
const PRODUCT_FROM = constant(() => area('70 in2'));
const PRODUCT_TO = constant(() => area('80 in2'));
const USUAL_PITCH = constant(() => slope('2%'));
const LEAST_PITCH = constant(() => slope('1%'));
const MOST_PITCH = constant(() => slope('1:48'));
const FROST_FROM = constant(() => wholeNumber(3));
const LEAST_LANDING = constant(() => length('36 in'));
const STANDING_ROOM = constant(() => length('12 in'));
const GUARD_ABOVE = constant(() => length('30 in'));
const MOST_THRESHOLD = constant(() => length('1-1/2 in'));
const MOST_ACCESSIBLE = constant(() => length('1/2 in'));
const SILL_CLEARANCE = constant(() => length('1 in'));
const FLIGHT_TOLERANCE = constant(() => length('3/8 in'));
const NEIGHBOR_TOLERANCE = constant(() => length('3/16 in'));

/** What all layouts of one job share. */
interface Job {
  readonly input: Parsed;
  readonly limits: StepLimits;
  readonly pitch: Slope;
  /** Rise left for the risers. */
  readonly total: Length;
  /** Height of the landing at the door. */
  readonly top: Length;
}

function limitsFor(rules: StepRules | undefined, pad: Pad): StepLimits {
  const limits = STEP_LIMITS[rules ?? 'dwelling'];
  if (rules === undefined) {
    pad.assume({
      name: 'rules',
      value: 'dwelling',
      because: limits.because,
      override: 'Give rules: accessible or public',
      source: limits.source,
    });
  }
  return limits;
}

function pitchFor(pitch: Slope | undefined, pad: Pad): Slope {
  if (pitch) return pitch;
  pad.assume({
    name: 'pitch',
    value: USUAL_PITCH(),
    because: 'outdoor treads and landings shed water at about 2%',
    override: 'Give pitch; 0% for level treads',
    source: MCGRAW_STEPS,
  });
  return USUAL_PITCH();
}

/** The rules have their limits in two systems, each rounded: a riser may be what either allows. */
const mostRiser = ({ highest, highestMetric }: StepLimits): Length => (highestMetric ?? highest)();
const leastRiser = ({ lowest }: StepLimits): Length =>
  LOWEST_METRIC().lessThan(lowest()) ? LOWEST_METRIC() : lowest();

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
  const tread = treadByRule(riser, limits.narrowest());
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

/** Layouts that keep the limits in inches as well as in metric go first. */
const strays = ({ riser }: StepLayoutFigures, { highest, lowest }: StepLimits): number =>
  riser.greaterThan(highest()) || riser.lessThan(lowest()) ? 1 : 0;

function better(a: StepLayoutFigures, b: StepLayoutFigures, limits: StepLimits): number {
  const stray = strays(a, limits) - strays(b, limits);
  if (stray !== 0) return stray;
  const rules = b.walkingRules.length - a.walkingRules.length;
  if (rules !== 0) return rules;
  const off = (l: StepLayoutFigures): Length => l.twoRisersAndTread.minus(SUM_25()).abs();
  return off(a).compareTo(off(b)) || a.risers.compareTo(b.risers);
}

function marksOf(job: Job, best: StepLayoutFigures, count: number): StoryPoleMark[] {
  return Array.from({ length: count }, (_, i) => {
    const height = small(job.total.times(wholeNumber(i + 1)).over(best.risers));
    return { riser: wholeNumber(i + 1), height, mark: toMark(height) };
  });
}

const spread = (values: readonly Length[]): Length => {
  const [first = NONE()] = values;
  let [low, high] = [first, first];
  for (const value of values) {
    if (value.lessThan(low)) low = value;
    if (value.greaterThan(high)) high = value;
  }
  return small(high.minus(low));
};

const steps = (marks: readonly Length[]): Length[] =>
  marks.map((mark, i) => (i === 0 ? mark : mark.minus(marks[i - 1] as Length)));

function measuredRisers(measured: readonly Length[] | undefined, pad: Pad): Partial<StepLayoutsFigures> {
  if (!measured) return {};
  const flight = spread(measured);
  const neighbors = measured.slice(1).map((riser, i) => small(riser.minus(measured[i] as Length).abs()));
  const neighbor = neighbors.reduce((most, d) => (d.greaterThan(most) ? d : most), NONE());
  if (flight.greaterThan(FLIGHT_TOLERANCE())) pad.caution(cautions.unevenRisers(FLIGHT_TOLERANCE(), flight));
  else if (neighbor.greaterThan(NEIGHBOR_TOLERANCE())) {
    pad.caution(cautions.unevenRisers(NEIGHBOR_TOLERANCE(), neighbor));
  }
  return { flightDifference: flight, neighborDifference: neighbor };
}

function heedThreshold(threshold: Length, dwelling: boolean, pad: Pad): void {
  const [most, source] = dwelling ? [MOST_THRESHOLD(), IRC_DOORS] : [MOST_ACCESSIBLE(), ADA_THRESHOLDS];
  if (threshold.greaterThan(most)) pad.caution(cautions.highThreshold(source, most, threshold));
  // What an accessible door may have at most would be too little here: there water is kept out otherwise.
  if (dwelling && threshold.lessThan(SILL_CLEARANCE())) {
    pad.caution(cautions.lowThreshold(SILL_CLEARANCE(), threshold));
  }
}

function heedDoor({ door, landing, rules }: Parsed, pad: Pad): void {
  if (landing?.lessThan(LEAST_LANDING())) pad.caution(cautions.shortLanding(LEAST_LANDING(), landing));
  if (!door) return;
  const room = door.width.plus(STANDING_ROOM());
  if (door.swing === 'out' && landing?.lessThan(room)) pad.caution(cautions.doorOverSteps(room, landing));
  if (door.threshold) heedThreshold(door.threshold, (rules ?? 'dwelling') === 'dwelling', pad);
}

/** How high the landing stands: over the foot of the steps, or over lower ground beside it. */
function heedHeight({ input, limits, total, top }: Job, pad: Pad): void {
  const drop = input.sideDrop?.greaterThan(top) ? input.sideDrop : top;
  if (drop.greaterThan(GUARD_ABOVE())) {
    pad.caution(cautions.guard(limits.guard, limits.guardSource, GUARD_ABOVE(), drop));
  }
  if (total.greaterThan(limits.tallest())) {
    pad.caution(cautions.tallFlight(limits.tallestSource, limits.tallest(), total));
  }
}

function heedPitch(pitch: Slope, pad: Pad): void {
  if (pitch.greaterThan(MOST_PITCH())) pad.caution(cautions.steepTreads(MOST_PITCH(), pitch));
  if (pitch.lessThan(LEAST_PITCH())) pad.caution(cautions.levelTreads(LEAST_PITCH(), pitch));
}

function heedRiser(limits: StepLimits, riser: Length, pad: Pad): void {
  if (riser.greaterThan(mostRiser(limits))) pad.caution(cautions.steepRiser(limits, limits.highest(), riser));
  else if (riser.greaterThan(limits.highest())) {
    pad.caution(cautions.riserAtLimit(limits, limits.highest(), riser));
  }
  if (riser.lessThan(leastRiser(limits))) pad.caution(cautions.lowRiser(limits, limits.lowest(), riser));
}

function heedSteps(
  { limits, input }: Job,
  { riser, tread, risers, treads }: StepLayoutFigures,
  pad: Pad,
): void {
  heedRiser(limits, riser, pad);
  if (treads.sign() > 0 && tread.lessThan(limits.narrowest())) {
    pad.caution(cautions.narrowTread(limits, limits.narrowest(), tread));
  }
  const from = wholeNumber(limits.handrailFrom);
  if (!risers.lessThan(from)) {
    const dwelling = (input.rules ?? 'dwelling') === 'dwelling';
    pad.caution(dwelling ? cautions.handrail(from, risers) : cautions.handrails(from, risers));
  }
  if (!risers.lessThan(FROST_FROM())) pad.caution(cautions.frostUnderSteps(FROST_FROM(), risers));
}

function assumeTread({ tread, totalRun }: Parsed, pad: Pad): void {
  if (tread && totalRun) refuse('', faults.giveOneOf(['tread', 'totalRun']));
  if (tread || totalRun) return;
  pad.assume({
    name: 'tread',
    value: say`${{ sum: WALKING_SUM }} less twice the riser`,
    because: say`the first walking rule, twice the riser and the tread make ${{ sum: WALKING_SUM }}, and no less than the rules allow`,
    override: 'Give tread or totalRun',
    source: EN5156_STAIRS,
  });
}

function work(job: Job, best: StepLayoutFigures, pad: Pad): void {
  const { total: H, pitch: p } = job;
  const { risers: n, riser: r, tread: t, treads: k } = best;
  pad.step('riser, nosing to nosing', 'r = H ÷ n', { H, n }, r);
  pad.step('level length of the treads', 'L = k × t', { k, t }, best.run);
  pad.step('fall of a tread', 'f = p × t', { p, t }, best.treadFall);
  pad.step('two risers and a tread', 'S = 2 × r + t', { r, t }, best.twoRisersAndTread);
  pad.step('riser and tread', 'S = r + t', { r, t }, best.riserAndTread);
}

function landingFall(input: Parsed, pitch: Slope, pad: Pad): Length {
  const d = input.landing;
  if (!d) {
    pad.assume({
      name: 'landing',
      value: 'none',
      because: 'the rise is taken to the front edge of the landing or walk at the top',
      override: 'Give landing, its depth, when the rise is measured to the door',
      source: COMMON_PRACTICE,
    });
    return small(input.totalRise.minus(input.totalRise));
  }
  return pad.step('fall of the landing', 'g = p × d', { p: pitch, d }, small(d.times(pitch)));
}

/** The landing at the door above the ground at the foot: the rise, less the threshold where it is to the sill. */
function landingHeight({ totalRise, riseTo, door }: Parsed, pad: Pad): Length {
  const threshold = door?.threshold;
  const R = small(totalRise);
  if (riseTo === 'sill' && !threshold) {
    return refuse(
      'door.threshold',
      faults.missing('door.threshold', ['"1 in", with riseTo: "sill"', '"25 mm", with riseTo: "sill"']),
    );
  }
  if (!threshold || riseTo === 'landing') return R;
  if (riseTo === undefined) {
    pad.assume({
      name: 'riseTo',
      value: 'sill',
      because: 'with a threshold given, the rise is taken to be measured to the top of it',
      override: 'Give riseTo: "landing" when the rise ends on the landing',
      source: COMMON_PRACTICE,
    });
  }
  const o = small(threshold);
  if (!o.lessThan(R)) refuse('door.threshold', faults.doesNotFit('threshold', 'totalRise'));
  return pad.step('rise to the landing, below the threshold', 'D = R − o', { R, o }, R.minus(o));
}

/** The layouts, best first; a tread that rises more than a riser leaves no step. */
function layoutsOf(job: Job): StepLayoutFigures[] {
  const all = riserCounts(job).map((count) => layoutOf(job, count));
  const steps = all.filter(({ riserForm }) => riserForm.sign() > 0);
  if (all.length > 0 && steps.length === 0) {
    refuse(job.input.pitch ? 'pitch' : 'tread', faults.doesNotFit('the fall of a tread', 'the riser'));
  }
  return steps.sort((a, b) => better(a, b, job.limits));
}

function reckon(input: Parsed, pad: Pad): StepLayoutsFigures {
  assumeTread(input, pad);
  const limits = limitsFor(input.rules, pad);
  const pitch = pitchFor(input.pitch, pad);
  const top = landingHeight(input, pad);
  const fall = landingFall(input, pitch, pad);
  const total = top.minus(fall);
  if (total.sign() <= 0) refuse('landing', faults.doesNotFit('the fall of the landing', 'totalRise'));
  pad.step('rise left for the risers', 'H = D − g', { D: top, g: fall }, total);
  const job: Job = { input, limits, pitch, total, top };
  const layouts = layoutsOf(job);
  const shared = { landingFall: fall, riserTotal: total };
  heedPitch(pitch, pad);
  heedDoor(input, pad);
  heedHeight(job, pad);
  const checked = measuredRisers(input.measured, pad);
  const [best] = layouts;
  if (!best) {
    pad.caution(cautions.noStepLayout);
    return { verdict: 'none fits', ...shared, layouts, marks: [], markedDifference: NONE(), ...checked };
  }
  work(job, best, pad);
  heedSteps(job, best, pad);
  const marks = marksOf(job, best, best.risers.toNumber('each'));
  const markedDifference = spread(steps(marks.map(({ mark }) => mark)));
  return { verdict: 'steps found', ...shared, best, layouts, marks, markedDifference, ...checked };
}

/**
 * From the total rise to risers and treads that are all alike, with story-pole marks.
 *
 * @param input - the total rise, and whatever of rules, risers, treads, landing and door is settled
 * @returns every layout that the rules allow, best first, and the story pole of the best
 * @throws {InputError} `give-one-of` for tread with totalRun; `too-many` above 200 risers;
 * `does-not-fit` when the landing falls, or the threshold stands, higher than the total rise, and when a
 * tread falls more than a riser; `missing` for a rise to a sill without its threshold; lengths that cannot be read
 * @source walking rules of EN5156; limits of the IRC, ABA 504 and BOCA as quoted; Masonry and Concrete
 * @example
 * ```ts
 * import { stepLayout } from 'flatwork-reckoner';
 *
 * const { figures } = stepLayout({ totalRise: '14 in', tread: '11 in', landing: '4 ft' });
 * figures.landingFall.format(); // '0.96 in'
 * figures.best?.risers.format(); // '2 each'
 * figures.best?.riser.format(); // '6.52 in'
 * figures.marks[0]?.mark.format(); // '6.5 in'
 * ```
 */
export const stepLayout: Calculation<StepLayoutInput, StepLayoutsFigures> = /*#__PURE__*/ define({
  id: 'step-layout',
  title: 'Step layout',
  version: 1,
  sources: [EN5156_STAIRS, MCGRAW_STEPS, CC_STEP_TOLERANCE],
  limits: [RISERS],
  input: () =>
    fields(
      {
        totalRise: quantity('length', 'totalRise', 'positive', ordinary.RISE),
        riseTo: maybe(choice('riseTo', ['sill', 'landing'] as const)),
        rules: maybe(choice('rules', Object.keys(STEP_LIMITS) as StepRules[])),
        risers: maybe(whole('risers', 1, RISERS.most)),
        tread: maybe(quantity('length', 'tread', 'positive', ordinary.TREAD)),
        totalRun: maybe(quantity('length', 'totalRun', 'positive', ordinary.RUN)),
        landing: maybe(quantity('length', 'landing', 'positive', ordinary.LANDING)),
        sideDrop: maybe(quantity('length', 'sideDrop', 'positive', ordinary.SIDE_DROP)),
        pitch: maybe(quantity('slope', 'pitch', 'not-negative', ordinary.PITCH)),
        door: maybe(
          fields({
            swing: choice('swing', ['in', 'out'] as const),
            width: quantity('length', 'width', 'positive', ordinary.DOOR_WIDTH),
            threshold: maybe(quantity('length', 'threshold', 'not-negative', ordinary.THRESHOLD)),
          }),
        ),
        measured: maybe(list(quantity('length', 'each riser', 'positive', ordinary.RISER), 2, RISERS.most)),
      },
      all(notBoth('tread', 'totalRun'), where(says('riseTo', 'sill'), holds('door', 'threshold'))),
    ),
  reckon,
});

/**
 * From the total rise to risers and treads that are all alike.
 *
 * A landing of depth d pitched p drains away from the door, so its front edge lies `p × d` lower:
 * `H = total rise − p × d` is left for n risers of `H ÷ n`, measured from nosing to nosing. A tread
 * of depth t pitched the same way is `p × t` higher at its back, so the riser form on it is `p × t`
 * lower than the riser. Between n risers lie n − 1 treads; the landing tops the last.
 *
 * Every number of risers that the rules allow is listed. They are ranked by how many of the walking
 * rules they meet, then by how near `2 × r + t` is to 25 in, then by fewer risers.
 *
 * Sources: EN5156 (the walking rules), Masonry and Concrete (at most 25 in), codes as quoted.
 */

import { small, toMark } from '../grade/marks';
import * as faults from '../quantity/faults';
import { area, constant, length, slope } from '../quantity/make';
import { type Quantity, type QuantityInput, systemOfQuantity } from '../quantity/quantity';
import { type Calculation, define, refuse } from '../reckoning/calculation';
import * as cautions from '../reckoning/cautions';
import { choice, fields, list, maybe, quantity, whole, wholeNumber } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { CC_STEP_TOLERANCE, COMMON_PRACTICE, EN5156_STAIRS, MCGRAW_STEPS } from '../reckoning/source';
import { STEP_LIMITS, type StepLimits, type StepRules } from './rules';

/** The door at the top. */
export interface StepDoorInput {
  /** Which way the door swings: `in` over the floor, `out` over the landing. */
  readonly swing: 'in' | 'out';
  /** Width of the door leaf. */
  readonly width: QuantityInput<'length'>;
  /** How far the landing at the door lies below the top of the threshold. */
  readonly threshold?: QuantityInput<'length'>;
}

/** Input of {@link stepLayout}. */
export interface StepLayoutInput {
  /** From the ground at the foot up to the landing at the door. */
  readonly totalRise: QuantityInput<'length'>;
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
  /** Slope of treads and landing towards the foot; by default 2%. `0%` for level ones. */
  readonly pitch?: QuantityInput<'slope'>;
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
  /** Height of the riser form on a pitched tread. */
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
  /** Largest difference of neighbouring risers measured. */
  readonly neighbourDifference?: Quantity<'length'>;
}

type Length = Quantity<'length'>;
type Slope = Quantity<'slope'>;

interface Parsed {
  readonly totalRise: Length;
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

const RISER_LIMIT = 200;
const TWO = constant(() => wholeNumber(2));
const NONE = constant(() => length('0 in'));
const SUM_25 = constant(() => length('25 in'));
const SUM_24 = constant(() => length('24 in'));
const SUM_17 = constant(() => length('17 in'));
const SUM_19 = constant(() => length('19 in'));
const PRODUCT_FROM = constant(() => area('70 in2'));
const PRODUCT_TO = constant(() => area('80 in2'));
const USUAL_PITCH = constant(() => slope('2%'));
const LEAST_PITCH = constant(() => slope('1%'));
const MOST_PITCH = constant(() => slope('1:48'));
const HANDRAIL_FROM = constant(() => wholeNumber(4));
const FROST_FROM = constant(() => wholeNumber(3));
const LEAST_LANDING = constant(() => length('36 in'));
const STANDING_ROOM = constant(() => length('12 in'));
const MOST_THRESHOLD = constant(() => length('1-1/2 in'));
const FREEBOARD = constant(() => length('1 in'));
const FLIGHT_TOLERANCE = constant(() => length('3/8 in'));
const NEIGHBOUR_TOLERANCE = constant(() => length('3/16 in'));

/** What all layouts of one job share. */
interface Job {
  readonly input: Parsed;
  readonly limits: StepLimits;
  readonly pitch: Slope;
  readonly total: Length;
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
    value: USUAL_PITCH().format(),
    because: 'outdoor treads and landings shed water at about 2%',
    override: 'Give pitch; 0% for level treads',
    source: MCGRAW_STEPS,
  });
  return USUAL_PITCH();
}

/** Every number of risers that keeps each within the limits, or the one that was given. */
function riserCounts({ input, limits, total }: Job): number[] {
  if (input.risers) return [Number(input.risers.toJSON().value)];
  const fewest = total.over(limits.highest()).toNumber(':1');
  const most = total.over(limits.lowest()).toNumber(':1');
  if (most > RISER_LIMIT + 1) return refuse('totalRise', faults.tooMany('risers', RISER_LIMIT));
  const counts: number[] = [];
  for (let n = Math.max(1, Math.floor(fewest)); n <= Math.ceil(most); n += 1) {
    const riser = total.over(wholeNumber(n));
    if (!riser.greaterThan(limits.highest()) && !riser.lessThan(limits.lowest())) counts.push(n);
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

function better(a: StepLayoutFigures, b: StepLayoutFigures): number {
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
  const neighbours = measured.slice(1).map((riser, i) => small(riser.minus(measured[i] as Length).abs()));
  const neighbour = neighbours.reduce((most, d) => (d.greaterThan(most) ? d : most), NONE());
  if (flight.greaterThan(FLIGHT_TOLERANCE())) pad.caution(cautions.unevenRisers(FLIGHT_TOLERANCE(), flight));
  else if (neighbour.greaterThan(NEIGHBOUR_TOLERANCE())) {
    pad.caution(cautions.unevenRisers(NEIGHBOUR_TOLERANCE(), neighbour));
  }
  return { flightDifference: flight, neighbourDifference: neighbour };
}

function heedDoor({ door, landing }: Parsed, pad: Pad): void {
  if (landing?.lessThan(LEAST_LANDING())) pad.caution(cautions.shortLanding(LEAST_LANDING(), landing));
  if (!door) return;
  const room = door.width.plus(STANDING_ROOM());
  if (door.swing === 'out' && landing?.lessThan(room)) pad.caution(cautions.doorOverSteps(room, landing));
  const { threshold } = door;
  if (threshold?.greaterThan(MOST_THRESHOLD())) {
    pad.caution(cautions.highThreshold(MOST_THRESHOLD(), threshold));
  }
  if (threshold?.lessThan(FREEBOARD())) pad.caution(cautions.lowThreshold(FREEBOARD(), threshold));
}

function heedPitch(pitch: Slope, pad: Pad): void {
  if (pitch.greaterThan(MOST_PITCH())) pad.caution(cautions.steepTreads(MOST_PITCH(), pitch));
  if (pitch.lessThan(LEAST_PITCH())) pad.caution(cautions.levelTreads(LEAST_PITCH(), pitch));
}

function heedSteps({ limits }: Job, { riser, tread, risers, treads }: StepLayoutFigures, pad: Pad): void {
  if (riser.greaterThan(limits.highest())) pad.caution(cautions.steepRiser(limits.highest(), riser));
  if (riser.lessThan(limits.lowest())) pad.caution(cautions.lowRiser(limits.lowest(), riser));
  if (treads.sign() > 0 && tread.lessThan(limits.narrowest())) {
    pad.caution(cautions.narrowTread(limits.narrowest(), tread));
  }
  if (!risers.lessThan(HANDRAIL_FROM())) pad.caution(cautions.handrail(HANDRAIL_FROM(), risers));
  if (!risers.lessThan(FROST_FROM())) pad.caution(cautions.frostUnderSteps(FROST_FROM(), risers));
}

function assumeTread({ tread, totalRun }: Parsed, pad: Pad): void {
  if (tread && totalRun) refuse('', faults.giveOneOf(['tread', 'totalRun']));
  if (tread || totalRun) return;
  pad.assume({
    name: 'tread',
    value: '25 in less twice the riser',
    because: 'the first walking rule, 2r + t = 25 in, and no less than the rules allow',
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

function reckon(input: Parsed, pad: Pad): StepLayoutsFigures {
  assumeTread(input, pad);
  const limits = limitsFor(input.rules, pad);
  const pitch = pitchFor(input.pitch, pad);
  const fall = landingFall(input, pitch, pad);
  const total = small(input.totalRise).minus(fall);
  if (total.sign() <= 0) refuse('landing', faults.doesNotFit('the fall of the landing', 'totalRise'));
  pad.step('rise left for the risers', 'H = R − g', { R: small(input.totalRise), g: fall }, total);
  const job: Job = { input, limits, pitch, total };
  const layouts = riserCounts(job)
    .map((count) => layoutOf(job, count))
    .sort(better);
  const shared = { landingFall: fall, riserTotal: total };
  heedPitch(pitch, pad);
  heedDoor(input, pad);
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
 * `does-not-fit` when the landing falls more than the total rise; lengths that cannot be read
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
  title: 'Layout of steps',
  version: 1,
  sources: [EN5156_STAIRS, MCGRAW_STEPS, CC_STEP_TOLERANCE],
  input: () =>
    fields({
      totalRise: quantity('length', 'totalRise'),
      rules: maybe(choice('rules', Object.keys(STEP_LIMITS) as StepRules[])),
      risers: maybe(whole('risers', 1, RISER_LIMIT)),
      tread: maybe(quantity('length', 'tread')),
      totalRun: maybe(quantity('length', 'totalRun')),
      landing: maybe(quantity('length', 'landing')),
      pitch: maybe(quantity('slope', 'pitch', 'not-negative')),
      door: maybe(
        fields({
          swing: choice('swing', ['in', 'out'] as const),
          width: quantity('length', 'width'),
          threshold: maybe(quantity('length', 'threshold', 'not-negative')),
        }),
      ),
      measured: maybe(list(quantity('length', 'each riser'), 2, RISER_LIMIT)),
    }),
  reckon,
});

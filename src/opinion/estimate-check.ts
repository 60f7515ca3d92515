/**
 * A hand estimate against what is reckoned: whether it agrees, and where it does not, the slip that would explain it.
 *
 * Works for every calculation by what it says of itself: its schema tells what stands in the input, its working is data
 * and can be reckoned again with one thing wrong in it. Which slips are common is common practice; a slip is never
 * certain, only likely.
 */

import { ratio } from '../quantity/make';
import { canonicalValue, newQuantity, type Quantity, unitShown } from '../quantity/quantity';
import { type Unit, unitOf } from '../quantity/units';
import type { Calculation } from '../reckoning/calculation';
import { refuse } from '../reckoning/calculation';
import type { PartsKnown } from '../reckoning/part-working';
import type { FigureSet } from '../reckoning/parts';
import { plainCopy } from '../reckoning/plain';
import type { Result } from '../reckoning/result';
import type { ReckonOptions } from '../reckoning/system';
import { say, type Words } from '../reckoning/words';
import { byHand } from './by-hand';
import type { Candidate } from './candidate';
import { type Claims, type ReadClaim, readClaims } from './claims';
import * as faults from './faults';
import { pathOf } from './figure-places';
import { type Graph, replay } from './graph';
import { digitsOf, type HandOn, handsFor } from './hands';
import { type AnyCalculation, placesOf, valueAt, withQuantities } from './input-places';
import { isElevation } from './leveled';
import { isNearly, isWritten, type Margin, margins } from './likeness';
import { probed, sceneOf } from './probe';
import { isStepped } from './rounding';
import { STRAY, siOf, siOfUnit } from './scale';
import type { Scene } from './scene';
import { search } from './search';
import type { Slip, SlipCode } from './slip';
import { touching } from './touching';
import { tradeStep } from './trade-step';
import { runWhole } from './whole-working';

/** What is said of a claim. */
export type ClaimVerdict = 'agrees' | 'close' | 'differs';

/** One claimed figure beside the reckoned one. */
export interface ClaimCheck {
  /** Path of the figure in the result. */
  readonly figure: string;
  /** What was claimed. */
  readonly claimed: Quantity;
  /** What is reckoned. */
  readonly reckoned: Quantity;
  /**
   * `agrees` where it is that, but for rounding on the way; `close` where it is off by less than a step of the trade
   * or a hundredth; `differs` otherwise.
   */
  readonly verdict: ClaimVerdict;
  /** Claimed less reckoned. */
  readonly difference: Quantity;
  /** The same as a share of what is reckoned; left out where that is nothing. */
  readonly share?: Quantity<'ratio'>;
  /** The step in which the trade tells such a difference: a quarter of a yard, a bar. */
  readonly step: Quantity;
  /** How many such steps the difference is, more or less. */
  readonly steps: Quantity<'count'>;
  /** The line as it was written. */
  readonly line?: string;
}

/** One mistake of the hand, with where it would show. */
export interface NamedSlip {
  /** Stable code. */
  readonly code: SlipCode;
  /** What happened, in words. */
  readonly says: Words;
  /** The path of the input that it would show at. */
  readonly input?: string;
  /** The step of the working, counted from nothing. */
  readonly step?: number;
  /** The claimed figure. */
  readonly figure?: string;
}

/** What a claimed figure would be with a slip. */
export interface WouldGive {
  /** Path of the figure. */
  readonly figure: string;
  /** What it would be. */
  readonly would: Quantity;
}

/** A slip, or two together, that would explain what was claimed. */
export interface LikelySlip {
  /** One slip, or two that were made together. */
  readonly slips: readonly NamedSlip[];
  /** What each claimed figure would be, in the order of the claims; left out where there would be none. */
  readonly gives: readonly WouldGive[];
  /** The claimed figures that it explains. */
  readonly explains: readonly string[];
  /** True where it gives them as written, without any rounding on the way. */
  readonly exact: boolean;
  /** Where the same slip would give the same, so that nothing tells them apart. */
  readonly elsewhere: readonly NamedSlip[];
}

/** What {@link estimateCheck} says. */
export interface EstimateCheck<F extends FigureSet = FigureSet> {
  /** Id of the calculation. */
  readonly id: string;
  /** What it works out. */
  readonly title: string;
  /** The gravest verdict of all claims. */
  readonly verdict: ClaimVerdict;
  /** The verdict in a sentence. */
  readonly says: Words;
  /** Each claim, in order. */
  readonly claims: readonly ClaimCheck[];
  /** What would explain the claims that are off, the likeliest first; empty where no slip was found. */
  readonly slips: readonly LikelySlip[];
  /** How many slips were tried that change what was claimed. */
  readonly tried: number;
  /** What was reckoned, with its working. */
  readonly result: Result<F>;
}

/** Off by less than this share is close. */
const CLOSE = 0.01;

/** A whole number that ends in zeros may have been rounded to what stands before them: 2,814 psi to 2,800. */
const isRound = (si: number, claim: ReadClaim): boolean =>
  !isElevation(claim.figure) && Math.abs(si - claim.si) <= Math.min(claim.coarse, CLOSE * Math.abs(si));

/** What is right for each claim: whether it comes out so but for rounding on the way. */
function agreeing(scene: Scene, own: readonly Margin[]): boolean[] {
  const { claims, base, graph } = scene;
  const some = claims.map((claim, i) => {
    const si = base[i] as number;
    return isWritten(si, claim) || isNearly(si, claim, own[i] as Margin) || isRound(si, claim);
  });
  if (some.every((one) => one)) return some;
  for (const hand of handsFor(graph, claims)) {
    const values = byHand(scene, [], () => buyingWhole(hand, graph)) ?? [];
    // A count must be right.
    for (const [i, claim] of claims.entries())
      if (claim.reckoned.dimension !== 'count' && isWritten(values[i] as number, claim)) some[i] = true;
  }
  return some;
}

/** What is bought in steps is not rounded down on the way, and what follows from it goes on from there. */
const buyingWhole = (hand: HandOn, graph: Graph): HandOn => ({
  ...hand,
  outcomes: hand.outcomes.map((rounded, i) => {
    const { step, si } = graph[i] as Graph[number];
    return isStepped(step) ? () => si : rounded;
  }),
});

/** A step that is no more than this share of a figure is small beside it. */
const SMALL = 0.05;

function verdictOf(claim: ReadClaim, agrees: boolean, step: number, inSteps: boolean): ClaimVerdict {
  const si = siOf(claim.reckoned);
  if (agrees) return 'agrees';
  if (inSteps) return 'close';
  const off = Math.abs(claim.si - si);
  // A step is close only where it is small beside the figure: a bar of three is no rounding.
  const { dimension } = claim.reckoned;
  const steps = dimension === 'money' ? 0 : Math.min(step, SMALL * Math.abs(si));
  // An elevation is told from a mark that may stand at anything: no share of it is small.
  const share = isElevation(claim.figure) ? 0 : CLOSE * Math.abs(si);
  const room = Math.max(share, steps);
  return off <= room * (1 + STRAY) + (dimension === 'count' ? 0 : claim.half) ? 'close' : 'differs';
}

/** What is reckoned as it stands beside the claim: who claims cubic meters has no use for yards. */
function besideClaim({ claimed, reckoned }: ReadClaim): Quantity {
  const [own, other] = [unitShown(reckoned), unitShown(claimed)];
  return own.system !== undefined && other.system !== undefined && own.system !== other.system
    ? (reckoned.in(other.id as never) as Quantity)
    : reckoned;
}

/** What is told in steps that are coarse beside the last place written: yards in quarters, tons. */
const COARSE_STEPS: ReadonlySet<string> = /*#__PURE__*/ new Set(['volume', 'mass']);
/** A step that is more of the figure than this is no rounding. */
const LARGEST_STEP = 0.15;
/** What is ordered is rounded up where it is little too: 1.63 yd3 are written down as 1.75. */
const SMALLEST_ORDER = 0.25;

const isWhole = (si: number, step: number): boolean =>
  Math.abs(si / step - Math.round(si / step)) <= 1e-6 * Math.abs(si / step);

const stepOf = (figure: Quantity, { result }: Scene): number =>
  Math.abs(siOf(tradeStep(figure, result.system)));

/**
 * Whether a figure is rounded to whole steps by the calculation itself: by the step that gives it, or, where no step of
 * its own shows, as the order of a job, because it is in whole steps.
 */
const isRounding = (scene: Scene, i: number): boolean => {
  const node = scene.graph[scene.nodes[i] ?? -1];
  const { reckoned } = scene.claims[i] as ReadClaim;
  if (node) return isStepped(node.step);
  return !scene.isInput(reckoned) && isWhole(siOf(reckoned), stepOf(reckoned, scene));
};

/**
 * What the calculation rounds to whole steps is an amount to buy: a claim in whole steps is exactly that amount, however
 * shortly it is written. 8 yd3 are no rounding of an order of 8.50.
 */
function asBought(claim: ReadClaim, scene: Scene, i: number): ReadClaim {
  if (!COARSE_STEPS.has(claim.reckoned.dimension) || !isRounding(scene, i)) return claim;
  const isAmount = isWhole(claim.si, stepOf(claim.reckoned, scene));
  const isUp = claim.isRounded && claim.si >= siOf(claim.reckoned);
  return isAmount && !isUp ? { ...claim, half: 0, coarse: 0 } : claim;
}

/**
 * Whether a claim is what is reckoned in whole steps of the trade, the next above or the nearest: 12.10 yd3 are written
 * down as 12.25. What the calculation itself rounds to steps is right or wrong.
 */
function isInSteps(claim: ReadClaim, scene: Scene, i: number): boolean {
  const si = siOf(claim.reckoned);
  if (!COARSE_STEPS.has(claim.reckoned.dimension) || isRounding(scene, i)) return false;
  const up = claim.si - si;
  // Who buys in whole or half yards or tons goes up to the next of them.
  const one = siOfUnit(unitShown(claim.claimed));
  if (up > 0 && up < SMALL * si && [one, one / 2].some((n) => isWhole(claim.si, n) && up < n)) return true;
  const step = stepOf(besideClaim(claim), scene);
  // What is written no finer than the step says nothing of steps.
  const share = step / Math.abs(si);
  if (share > SMALLEST_ORDER || step < 3 * claim.half) return false;
  // Half a hundredth more: what is reckoned by hand may be as much less.
  const down = share > LARGEST_STEP ? 0 : step / 2;
  return isWhole(claim.si, step) && up > -down && up < step + (CLOSE * Math.abs(si)) / 2;
}

/** What was rounded to whole steps is reckoned on with: 13 yd3 in the bank for 12.51, and 16.25 loose. */
function carriedOn({ claims, nodes, graph }: Scene, inSteps: readonly boolean[]): boolean[] {
  const kept = new Map(claims.flatMap(({ si }, i) => (inSteps[i] ? [[nodes[i], si] as const] : [])));
  const gives = replay(graph, { outcome: (i, si) => kept.get(i) ?? si });
  return claims.map((claim, i) => inSteps[i] || isWritten(gives[nodes[i] ?? -1] ?? Number.NaN, claim));
}

/** Temperatures are points: what lies between two of them is a difference. */
function differenceOf(claimed: Quantity, reckoned: Quantity): Quantity {
  if (reckoned.dimension !== 'temperature')
    return claimed.minus(reckoned).in(unitShown(reckoned).id as never);
  const unit = unitOf('temperature-difference', unitShown(reckoned).id) as Unit;
  return newQuantity('temperature-difference', canonicalValue(claimed).minus(canonicalValue(reckoned)), unit);
}

function shareOf(difference: Quantity, reckoned: Quantity): { share?: Quantity<'ratio'> } {
  if (reckoned.dimension === 'temperature' || reckoned.sign() === 0) return {};
  return { share: (difference.over(reckoned.abs() as never) as Quantity<'ratio'>).in('%') };
}

/** How many steps a difference is, to the nearest tenth. */
const TENTH = (): Quantity<'ratio'> => ratio('0.1:1');

function stepsIn(difference: Quantity, step: Quantity): Quantity<'count'> {
  const all = difference.over(step as never) as Quantity<'ratio'>;
  const tenths = canonicalValue(all.over(TENTH())).toDecimalPlaces(0, 4).div(10);
  return newQuantity('count', tenths, unitOf('count', 'each') as Unit);
}

function checkOf(claim: ReadClaim, agrees: boolean, inSteps: boolean, scene: Scene): ClaimCheck {
  const { figure, claimed, line } = claim;
  const reckoned = besideClaim(claim);
  const step = tradeStep(reckoned, scene.result.system);
  const difference = differenceOf(claimed, reckoned);
  return {
    figure,
    claimed,
    reckoned,
    verdict: verdictOf(claim, agrees, Math.abs(siOf(step)), inSteps),
    difference,
    ...shareOf(difference, reckoned),
    step,
    steps: stepsIn(difference, step),
    ...(line === undefined ? {} : { line }),
  };
}

/** The name that somebody gave to what holds a place: `walk` of an element, `saw` of a line. */
function givenName(input: unknown, place: string): string | undefined {
  const path = pathOf(place) ?? [];
  const names = path.map((_, i) => valueAt(input, [...path.slice(0, i + 1), 'name']));
  return names.filter((name): name is string => typeof name === 'string').at(-1);
}

/** What happened, behind the name of what it happened to. */
function saysOf({ says, input: place }: Slip, input: unknown): Words {
  const name = place === undefined ? undefined : givenName(input, place);
  return name === undefined ? says() : say`${{ name }}: ${{ slip: says() }}`;
}

const namedSlip = (slip: Slip, scene: Scene): NamedSlip => ({
  code: slip.code,
  says: saysOf(slip, scene.input),
  ...placesOfSlip(slip, scene),
});

/** Steps are counted in the working of the result: one of a part shows in the part. */
function placesOfSlip(
  { input, step, figure }: Slip,
  { whole: { parts } }: Scene,
): Omit<NamedSlip, 'code' | 'says'> {
  const before = parts?.slice(0, step).filter((at) => at !== undefined).length ?? 0;
  const own = step === undefined || parts?.[step] !== undefined ? undefined : step - before;
  return {
    ...(input === undefined ? {} : { input }),
    ...(own === undefined ? {} : { step: own }),
    ...(figure === undefined ? {} : { figure }),
  };
}

function likelyOf({ slips, would = [], explained, elsewhere = [] }: Candidate, scene: Scene): LikelySlip {
  return {
    slips: slips.map((one) => namedSlip(one, scene)),
    gives: scene.claims.flatMap(({ figure }, i) => {
      const q = would[i];
      return q ? [{ figure, would: q }] : [];
    }),
    explains: explained.which.map((i) => scene.claims[i]?.figure as string),
    exact: explained.exact,
    elsewhere: elsewhere
      .filter(({ step }) => scene.whole.parts?.[step ?? -1] === undefined)
      .map((one) => namedSlip(one, scene)),
  };
}

/** How common a slip must be to be told of one figure that is close: by some rare one anything so near is given. */
const TELLING = 3;
/** Who writes so many digits does not round them away: a rare slip that gives them all is told too. */
const PRECISE = 4;

/** Off by no more than a hundredth, and not only by a step that is small for such figures. */
const isHundredth = ({ si, half, reckoned, figure }: ReadClaim): boolean =>
  !isElevation(figure) && Math.abs(si - siOf(reckoned)) <= CLOSE * Math.abs(siOf(reckoned)) + half;

/**
 * Whether a slip is told where every figure is close: rounding and the figures of other handbooks come as near, so that
 * it must give all claims just as they were written, and be a common one or give much.
 */
function isTelling(
  { weight, explained: { all, exact, which } }: Candidate,
  claims: readonly ReadClaim[],
  differing: readonly number[],
): boolean {
  const given = which.filter((i) => differing.includes(i));
  const isPrecise = given.some((i) => digitsOf(claims[i] as ReadClaim) >= PRECISE);
  return all && exact && (weight >= TELLING || given.length > 1 || isPrecise);
}

const ORDER: readonly ClaimVerdict[] = ['differs', 'close', 'agrees'];

function sentence(verdict: ClaimVerdict, slips: readonly LikelySlip[], off: readonly string[]): Words {
  if (verdict === 'agrees') return { says: 'The estimate agrees with what is reckoned.' };
  const how: Words = {
    says: verdict === 'close' ? 'The estimate is close to what is reckoned.' : 'The estimate is off.',
  };
  const [one, other] = slips[0]?.slips.map(({ says }) => says) ?? [];
  if (!one)
    return verdict === 'close'
      ? { says: 'The estimate is close to what is reckoned, as near as rounding may bring it.' }
      : say`${how} No slip was found that would explain it.`;
  return other
    ? say`${how} No one slip was found that explains it; two together would, which is less sure: ${{ one }}; and ${{ other }}.`
    : off.every((figure) => slips[0]?.explains.includes(figure))
      ? say`${how} Likely, ${{ one }}.`
      : say`${how} No one slip was found that explains all of it. Of ${{ figures: slips[0]?.explains ?? [] }}, this would: ${{ one }}.`;
}

function frozen<T>(value: T): T {
  if (typeof value !== 'object' || value === null || Object.isFrozen(value)) return value;
  for (const part of Object.values(value)) frozen(part);
  return Object.freeze(value);
}

/** The calculation, which must be one. */
export function asCalculation(given: unknown): AnyCalculation {
  if (typeof given === 'function' && typeof (given as AnyCalculation).attempt === 'function')
    return given as AnyCalculation;
  return refuse('calculation', faults.notACalculation());
}

/**
 * Check claimed figures against what a calculation makes of an input, and name the slips that would explain what is
 * off: one, or two together.
 *
 * A right estimate that was rounded on the way agrees. What is named is likely, never certain.
 *
 * @param calculation - any calculation of this library
 * @param input - its input, as it should be
 * @param claims - figures by their paths with what is claimed of each, or a list that says how they were rounded and
 * how the line was written
 * @param options - the family of units to reckon and show in
 * @returns a verdict for each claim, the slips, and the result itself
 * @throws {InputError} for an input that the calculation refuses; `unknown-name` for a figure that it does not have; and
 * for claims that cannot be read
 * @source common practice
 * @example
 * ```ts
 * import { estimateCheck, slabVolume } from 'flatwork-reckoner';
 *
 * const input = { outline: { shape: 'rectangle', length: '28 ft', width: '18 ft' }, thickness: '4 in' } as const;
 * const check = estimateCheck(slabVolume, input, { volume: '7.5 yd3' });
 * check.verdict; // 'differs'
 * check.slips[0]?.slips[0]?.code; // 'inches-as-tenths'
 * ```
 */
export function estimateCheck<Input, F extends FigureSet>(
  calculation: Calculation<Input, F>,
  input: Input,
  claims: Claims,
  options?: ReckonOptions,
): EstimateCheck<F> {
  const any = asCalculation(calculation);
  const plain = plainCopy(input);
  const places = placesOf(any, plain);
  const read = withQuantities(plain, places);
  const known: PartsKnown = new Map();
  const result = runWhole(
    () => any(read, options) as Result<F>,
    (one) => one,
    known,
  );
  const written = sceneOf(any, read, result, places, readClaims(claims, result.figures), known);
  const scene = { ...written, claims: written.claims.map((claim, i) => asBought(claim, written, i)) };
  const agrees = agreeing(scene, margins(scene));
  const inSteps = carriedOn(
    scene,
    scene.claims.map((claim, i) => isInSteps(claim, scene, i)),
  );
  const checks = scene.claims.map((claim, i) =>
    checkOf(claim, agrees[i] as boolean, inSteps[i] as boolean, scene),
  );
  const verdict = ORDER.find((one) => checks.some((check) => check.verdict === one)) as ClaimVerdict;
  const differing = checks.flatMap(({ verdict: own }, i) =>
    own === 'agrees' || (verdict === 'close' && inSteps[i]) ? [] : [i],
  );
  const own = touching(scene, places);
  const { found, tried } =
    differing.length > 0 ? search(probed(scene, own), own, differing) : { found: [], tried: 0 };
  const isNear = differing.every((i) => isHundredth(scene.claims[i] as ReadClaim));
  const telling = isNear ? found.filter((one) => isTelling(one, scene.claims, differing)) : found;
  const slips = telling.map((one) => likelyOf(one, scene));
  const off = differing.map((i) => scene.claims[i]?.figure as string);
  const { id, title } = result;
  return frozen({
    id,
    title,
    verdict,
    says: sentence(verdict, slips, off),
    claims: checks,
    slips,
    tried,
    result,
  });
}

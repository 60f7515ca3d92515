/**
 * Cautions about steps.
 *
 * Steps hurt people. The cautions inform; the plans, the local code and a licensed engineer decide.
 */
import { type AnyPair, type Paired, paired } from '../quantity/paired';
import type { Quantity } from '../quantity/quantity';
import type { Caution } from '../reckoning/parts';
import type { Source } from '../reckoning/source';
import { say } from '../reckoning/words';
import type { StepLimits } from './rules';
import * as sources from './sources';

type Length = Quantity<'length'>;
type Slope = Quantity<'slope'>;
type Count = Quantity<'count'>;

export const steepRiser = ({ where, source }: StepLimits, limit: Length, actual: Length): Caution => ({
  code: 'riser-too-high',
  severity: 'warning',
  ...say`a riser higher than ${{ limit }} is not allowed ${{ where }}; people trip on it. Check the local code`,
  limit,
  actual,
  source,
});

export const riserAtLimit = ({ source }: StepLimits, limit: Length, actual: Length): Caution => ({
  code: 'riser-near-limit',
  severity: 'note',
  ...say`the riser lies between ${{ limit }} and the ${{ other: paired('length', '7-1/16 in', '180 mm') }} that the same rule has in its other edition, for the other system of units; ask which of the two is enforced, or add a riser`,
  limit,
  actual,
  source,
});

export const lowRiser = ({ lowestSource }: StepLimits, limit: Length, actual: Length): Caution => ({
  code: 'riser-too-low',
  severity: 'warning',
  ...say`a riser lower than ${{ limit }} is easily overlooked; people trip on it. Check the local code`,
  limit,
  actual,
  source: lowestSource,
});

export const narrowTread = ({ where, source }: StepLimits, limit: Length, actual: Length): Caution => ({
  code: 'tread-too-narrow',
  severity: 'warning',
  ...say`a tread narrower than ${{ limit }} is not allowed ${{ where }}; people miss it. Check the local code`,
  limit,
  actual,
  source,
});

export const shortRun = (
  { where, source }: StepLimits,
  limit: Length,
  actual: Length,
  run: Length,
): Caution => ({
  code: 'tread-too-narrow',
  severity: 'warning',
  ...say`in this run the treads come out narrower than ${{ limit }}, which is not allowed ${{ where }}; people miss them: with the fewest risers they take ${{ run }}. Check the local code`,
  limit,
  actual,
  source,
});

export const handrail = (_: Source, limit: Quantity, actual: Quantity): Caution => ({
  code: 'handrail',
  severity: 'warning',
  ...say`a flight of four or more risers needs a handrail on one side at least, ${{ low: paired('length', '34 in', '865 mm') }} to ${{ high: paired('length', '38 in', '965 mm') }} above the nosings; plan its anchors before the pour and check the local code`,
  limit,
  actual,
  source: sources.IRC_HANDRAILS,
});

export const handrailOneSide = (source: Source, limit: Quantity, actual: Quantity): Caution => ({
  code: 'handrail',
  severity: 'warning',
  says: 'this flight needs a handrail on one side at least, on both where it is wide; plan its anchors before the pour and check the local code',
  limit,
  actual,
  source,
});

export const handrails = (source: Source, limit: Quantity, actual: Quantity): Caution => ({
  code: 'handrail',
  severity: 'warning',
  says: 'here every flight needs handrails on both sides, however few its risers; plan their anchors before the pour and check the local code',
  limit,
  actual,
  source,
});

const guardWithin = (
  within: AnyPair,
  height: AnyPair,
  source: Source,
  limit: Length,
  actual: Length,
): Caution => ({
  code: 'guard',
  severity: 'warning',
  ...say`open sides more than ${{ limit }} above the ground, measured to the lowest point within ${{ within }} of the edge, need a guard ${{ height }} high; plan its anchors before the pour and check the local code`,
  limit,
  actual,
  source,
});

const guardOver = (height: AnyPair, source: Source, limit: Length, actual: Length): Caution => ({
  code: 'guard',
  severity: 'warning',
  ...say`open sides more than ${{ limit }} above the ground need a guard ${{ height }} high; plan its anchors before the pour and check the local code`,
  limit,
  actual,
  source,
});

/** What stands at open sides, by the rules that are asked. */
export const guard = (
  { guard: height, guardWithin: within, guardSource: source }: StepLimits,
  limit: Length,
  actual: Length,
): Caution =>
  within ? guardWithin(within, height, source, limit, actual) : guardOver(height, source, limit, actual);

export const longFlight = (source: Source, limit: Count, actual: Count): Caution => ({
  code: 'flight-too-tall',
  severity: 'warning',
  ...say`one flight may have at most ${{ limit }} risers: part it by a landing as wide as the flight. Check the local code`,
  limit,
  actual,
  source,
});

/** @param limits - the least and the most, for the sentence */
export const strideOff = (
  { source }: StepLimits,
  [least, most]: readonly [Paired<'length'>, Paired<'length'>],
  limit: Length,
  actual: Length,
): Caution => ({
  code: 'stride-off',
  severity: 'warning',
  ...say`twice the riser and the tread come to ${{ actual }}, and these rules have ${{ least }} to ${{ most }}: people stumble. Change the tread or the number of risers`,
  limit,
  actual,
  source,
});

export const tallFlight = (source: Source, limit: Length, actual: Length): Caution => ({
  code: 'flight-too-tall',
  severity: 'warning',
  ...say`one flight may rise at most ${{ limit }} by the edition commonly quoted: part it by a landing as wide as the flight and at least ${{ deep: paired('length', '36 in', '914 mm') }} deep, and lay out each flight for itself. Check the local code`,
  limit,
  actual,
  source,
});

/** Between what so many risers come to at most, and one more at least. */
export const noStepLayout = (risers: Count, most: Length, more: Count, least: Length): Caution => ({
  code: 'no-layout',
  severity: 'stop',
  ...say`no number of equal risers meets these rules: with ${{ risers }} it is ${{ most }} at most, and with ${{ more }} it is ${{ least }} at least. Change the rise to one of these, ramp it, or ask the local building official`,
  source: sources.CLOSED_FORM,
});

export const noStepSoLow = (least: Length): Caution => ({
  code: 'no-layout',
  severity: 'stop',
  ...say`the rise is less than a single riser of these rules, ${{ least }} at least: change it, ramp it, or ask the local building official`,
  source: sources.CLOSED_FORM,
});

export const shortLanding = (limit: Length, actual: Length): Caution => ({
  code: 'landing-too-short',
  severity: 'warning',
  ...say`a landing at a door is usually at least ${{ limit }} deep in the way of travel, and no narrower than the door; check the local code`,
  limit,
  actual,
  source: sources.MCGRAW_STEPS,
});

export const doorOverSteps = (limit: Length, actual: Length): Caution => ({
  code: 'door-swings-over-steps',
  severity: 'warning',
  says: 'the door swings out farther than the landing leaves room to stand: whoever opens it is pushed down the steps. Make the landing deeper or hang the door inwards',
  limit,
  actual,
  source: sources.COMMON_PRACTICE,
});

export const highThreshold = (source: Source, limit: Length, actual: Length): Caution => ({
  code: 'threshold-too-high',
  severity: 'warning',
  ...say`the drop from threshold to landing is more than ${{ limit }}, commonly the most at such a door; raise the landing, and check the local code`,
  limit,
  actual,
  source,
});

export const lowThreshold = (limit: Length, actual: Length): Caution => ({
  code: 'little-sill-clearance',
  severity: 'warning',
  ...say`the surface is less than ${{ limit }} below the sill or threshold: rain and snow get in. Lower the surface; check the local code and the door's own instructions`,
  limit,
  actual,
  source: sources.MCGRAW_STEPS,
});

export const steepTreads = (limit: Slope, actual: Slope): Caution => ({
  code: 'treads-too-steep',
  severity: 'warning',
  ...say`treads and landings steeper than ${{ limit }} are usually not allowed; feet slide off them. Check the local code`,
  limit,
  actual,
  source: sources.CC_STEPS,
});

export const levelTreads = (limit: Slope, actual: Slope): Caution => ({
  code: 'treads-hold-water',
  severity: 'warning',
  ...say`outdoor treads pitched less than ${{ limit }} hold water, which freezes`,
  limit,
  actual,
  source: sources.PCA_DRAINAGE,
});

export const unevenRisers = (limit: Length, actual: Length): Caution => ({
  code: 'uneven-risers',
  severity: 'warning',
  ...say`risers of one flight may differ by at most ${{ limit }}; people trip on the odd one. Correct the forms before the pour`,
  limit,
  actual,
  source: sources.CC_STEP_TOLERANCE,
});

export const frostUnderSteps = (limit: Count, actual: Count): Caution => ({
  code: 'frost-depth',
  severity: 'note',
  says: 'steps of three risers or more are usually founded below the frost line, so that they do not heave away from the door; the local building department gives the depth',
  limit,
  actual,
  source: sources.MCGRAW_STEPS,
});

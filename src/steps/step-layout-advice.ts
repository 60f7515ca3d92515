/** What to watch out for in a flight of steps and at its door. */

import { small } from '../grade/marks';
import { constant, length, slope } from '../quantity/make';
import type { Quantity } from '../quantity/quantity';
import { wholeNumber } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import * as cautions from './cautions';
import {
  type Job,
  leastRiser,
  mostRiser,
  NONE,
  type StepLayoutFigures,
  type StepLayoutsFigures,
} from './layouts';
import type { StepLimits } from './rules';
import { ADA_THRESHOLDS, IRC_DOORS } from './sources';
import type { StepLayoutParsed } from './step-layout-input';

type Length = Quantity<'length'>;
type Slope = Quantity<'slope'>;

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

export const spread = (values: readonly Length[]): Length => {
  const [first = NONE()] = values;
  let [low, high] = [first, first];
  for (const value of values) {
    if (value.lessThan(low)) low = value;
    if (value.greaterThan(high)) high = value;
  }
  return small(high.minus(low));
};

export function measuredRisers(
  measured: readonly Length[] | undefined,
  pad: Pad,
): Partial<StepLayoutsFigures> {
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

export function heedDoor({ door, landing, rules }: StepLayoutParsed, pad: Pad): void {
  if (landing?.lessThan(LEAST_LANDING())) pad.caution(cautions.shortLanding(LEAST_LANDING(), landing));
  if (!door) return;
  const room = door.width.plus(STANDING_ROOM());
  if (door.swing === 'out' && landing?.lessThan(room)) pad.caution(cautions.doorOverSteps(room, landing));
  if (door.threshold) heedThreshold(door.threshold, (rules ?? 'dwelling') === 'dwelling', pad);
}

/** How high the landing stands: over the foot of the steps, or over lower ground beside it. */
export function heedHeight({ input, limits, total, top }: Job, pad: Pad): void {
  const drop = input.sideDrop?.greaterThan(top) ? input.sideDrop : top;
  if (drop.greaterThan(GUARD_ABOVE())) {
    pad.caution(cautions.guard(limits.guard, limits.guardSource, GUARD_ABOVE(), drop));
  }
  if (total.greaterThan(limits.tallest())) {
    pad.caution(cautions.tallFlight(limits.tallestSource, limits.tallest(), total));
  }
}

export function heedPitch(pitch: Slope, pad: Pad): void {
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

export function heedSteps(
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

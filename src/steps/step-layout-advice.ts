/** What to watch out for in a flight of steps and at its door. */

import { small } from '../grade/marks';
import { constant, ratio, slope } from '../quantity/make';
import { lesserOfPair, paired } from '../quantity/paired';
import type { Quantity } from '../quantity/quantity';
import { wholeNumber } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import * as cautions from './cautions';
import { type Job, NONE, type StepLayoutFigures, type StepLayoutsFigures } from './layouts';
import { heedLength, heedRiser, heedStride, heedTread } from './risers';
import { LEAST_LANDING, type StepRules } from './rules';
import { ADA_THRESHOLDS, IRC_DOORS } from './sources';
import type { StepLayoutParsed } from './step-layout-input';

type Length = Quantity<'length'>;
type Slope = Quantity<'slope'>;

const LEAST_PITCH = constant(() => slope('1%'));
const MOST_PITCH = constant(() => slope('1:48'));
const FROST_FROM = constant(() => wholeNumber(3));
const STANDING_ROOM = /*#__PURE__*/ paired('length', '12 in', '300 mm');
const MOST_THRESHOLD = /*#__PURE__*/ paired('length', '1-1/2 in', '38 mm');
const MOST_ACCESSIBLE = /*#__PURE__*/ paired('length', '1/2 in', '13 mm');
const SILL_CLEARANCE = /*#__PURE__*/ paired('length', '1 in', '25 mm');
const FLIGHT_TOLERANCE = /*#__PURE__*/ paired('length', '3/8 in', '9.5 mm');
const NEIGHBOR_TOLERANCE = /*#__PURE__*/ paired('length', '3/16 in', '5 mm');

/** The rules whose thresholds are known here. */
const THRESHOLDS: readonly StepRules[] = ['dwelling', 'accessible', 'public'];

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
  const ofFlight = FLIGHT_TOLERANCE.exceededBy(flight);
  const ofNeighbors = NEIGHBOR_TOLERANCE.exceededBy(neighbor);
  if (ofFlight) pad.caution(cautions.unevenRisers(ofFlight, flight));
  else if (ofNeighbors) pad.caution(cautions.unevenRisers(ofNeighbors, neighbor));
  return { flightDifference: flight, neighborDifference: neighbor };
}

function heedThreshold(threshold: Length, dwelling: boolean, pad: Pad): void {
  const [most, source] = dwelling ? [MOST_THRESHOLD, IRC_DOORS] : [MOST_ACCESSIBLE, ADA_THRESHOLDS];
  const over = most.exceededBy(threshold);
  if (over) pad.caution(cautions.highThreshold(source, over, threshold));
  // What an accessible door may have at most would be too little here: there water is kept out otherwise.
  const clearance = dwelling ? SILL_CLEARANCE.undercutBy(threshold) : undefined;
  if (clearance) pad.caution(cautions.lowThreshold(clearance, threshold));
}

function heedLanding(landing: Length, pad: Pad): void {
  const least = LEAST_LANDING.undercutBy(landing);
  if (least) pad.caution(cautions.shortLanding(least, landing));
}

export function heedDoor({ door, landing, rules }: StepLayoutParsed, pad: Pad): void {
  if (landing) heedLanding(landing, pad);
  if (!door) return;
  const { width } = door;
  const least = width.plus(lesserOfPair(STANDING_ROOM));
  if (door.swing === 'out' && landing?.lessThan(least)) {
    pad.caution(cautions.doorOverSteps(width.plus(STANDING_ROOM.like(landing)), landing));
  }
  const held = rules ?? 'dwelling';
  if (door.threshold && THRESHOLDS.includes(held)) heedThreshold(door.threshold, held === 'dwelling', pad);
}

/** How high the landing stands: over the foot of the steps, or over lower ground beside it. */
export function heedHeight({ input, limits, total, top }: Job, pad: Pad): void {
  const drop = input.sideDrop?.greaterThan(top) ? input.sideDrop : top;
  const guarded = limits.guardAbove.exceededBy(drop);
  if (guarded) pad.caution(cautions.guard(limits, guarded, drop));
  const tallest = limits.tallest?.exceededBy(total);
  if (tallest) pad.caution(cautions.tallFlight(limits.tallestSource, tallest, total));
}

export function heedPitch(pitch: Slope, pad: Pad): void {
  if (pitch.greaterThan(MOST_PITCH())) pad.caution(cautions.steepTreads(MOST_PITCH(), pitch));
  if (pitch.lessThan(LEAST_PITCH())) pad.caution(cautions.levelTreads(LEAST_PITCH(), pitch));
}

/** What the treads of the fewest risers take at the least. */
const runFor = (narrowest: Length, layouts: readonly StepLayoutFigures[]): Length =>
  narrowest.times(layouts.map(({ treads }) => treads).reduce((a, b) => (b.lessThan(a) ? b : a)));

/** Nothing fits: the rise lies between what some risers come to at most and one more at least. */
export function heedNone({ limits, total }: Job, pad: Pad): void {
  const [most, least] = [limits.highest, limits.lowest].map((each) => each.as(pad.system)) as [
    Length,
    Length,
  ];
  const n = total.over(most).downTo(ratio('1:1')).toNumber(':1');
  const [risers, more] = [wholeNumber(n), wholeNumber(n + 1)];
  pad.caution(
    n === 0
      ? cautions.noStepSoLow(least)
      : cautions.noStepLayout(risers, most.times(risers), more, least.times(more)),
  );
}

export function heedSteps(
  { input, limits, total }: Job,
  layouts: readonly StepLayoutFigures[],
  pad: Pad,
): void {
  const { riser, tread, risers, treads } = layouts[0] as StepLayoutFigures;
  heedRiser(limits, riser, pad);
  const narrowest = input.totalRun && limits.narrowest.undercutBy(tread);
  if (treads.sign() > 0) {
    if (narrowest) pad.caution(cautions.shortRun(limits, narrowest, tread, runFor(narrowest, layouts)));
    else heedTread(limits, tread, pad);
    heedStride(limits, riser, tread, pad);
  }
  heedLength(limits, risers, total, pad);
  if (!risers.lessThan(FROST_FROM())) pad.caution(cautions.frostUnderSteps(FROST_FROM(), risers));
}

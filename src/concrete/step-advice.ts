/**
 * What to watch out for about a flight that is poured: risers and treads, handrails and guards, landings, and frost.
 *
 * The rules are those of the layout of steps; here they are held against what is given.
 */
import type { Quantity } from '../quantity/quantity';
import { wholeNumber } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import * as steps from '../steps/cautions';
import { heedLength, heedRiser, heedStride, heedTread } from '../steps/risers';
import { LEAST_LANDING, type StepRules, stepLimits } from '../steps/rules';
import { aboveFrost } from './cautions';

type Length = Quantity<'length'>;
type Count = Quantity<'count'>;

/** A flight, as far as the rules look at it. */
export interface Heeded {
  readonly rules: StepRules;
  readonly rise: Length;
  readonly tread: Length;
  /** Risers between landings: of each flight. */
  readonly flights: readonly Count[];
  readonly totalRise: Length;
  /** How far it is down beside the top; nothing where every side is a wall or steps. */
  readonly drop: Length | undefined;
  readonly landings: readonly Length[];
  readonly frostDepth: Length | undefined;
  readonly founded: Length | undefined;
}

/** From so many risers on steps are usually founded below frost. */
const FROST_FROM = 3;

function heedStep({ rules, rise, tread }: Heeded, pad: Pad): void {
  const limits = stepLimits(rules);
  heedRiser(limits, rise, pad);
  heedTread(limits, tread, pad);
  heedStride(limits, rise, tread, pad);
}

function heedFlights({ rules, rise, flights }: Heeded, pad: Pad): void {
  const limits = stepLimits(rules);
  const most = flights.reduce((a, b) => (b.greaterThan(a) ? b : a));
  const tall = rise.times(most);
  heedLength(limits, most, tall, pad);
  const tallest = limits.tallest?.exceededBy(tall);
  if (tallest) pad.caution(steps.tallFlight(limits.tallestSource, tallest, tall));
}

function heedFrost({ flights, frostDepth: frost, founded }: Heeded, pad: Pad): void {
  const risers = flights.reduce((sum, n) => sum.plus(n));
  if (risers.lessThan(wholeNumber(FROST_FROM)) || frost?.sign() === 0) return;
  if (!frost || !founded) pad.caution(steps.frostUnderSteps(wholeNumber(FROST_FROM), risers));
  else if (founded.lessThan(frost)) pad.caution(aboveFrost('the flight', frost, founded));
}

/** The cautions of a flight. */
export function heedFlight(flight: Heeded, pad: Pad): void {
  heedStep(flight, pad);
  heedFlights(flight, pad);
  const { rules, drop, landings } = flight;
  const limits = stepLimits(rules);
  const guarded = drop && limits.guardAbove.exceededBy(drop);
  if (drop && guarded) pad.caution(steps.guard(limits, guarded, drop));
  const short = landings.find((d) => LEAST_LANDING.undercutBy(d));
  if (short) pad.caution(steps.shortLanding(LEAST_LANDING.like(short), short));
  heedFrost(flight, pad);
}

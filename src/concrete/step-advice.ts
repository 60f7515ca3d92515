/**
 * What to watch out for about a flight that is poured: risers and treads, handrails and guards, landings, and frost.
 *
 * The rules are those of the layout of steps; here they are held against what is given.
 */
import { constant, length } from '../quantity/make';
import type { Quantity } from '../quantity/quantity';
import { wholeNumber } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import * as steps from '../steps/cautions';
import { LOWEST_METRIC, STEP_LIMITS, type StepRules } from '../steps/rules';
import { aboveFrost } from './cautions';
import { inFamilyOf } from './family';

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

const GUARD_ABOVE = constant(() => length('30 in'));
const LEAST_LANDING = constant(() => length('36 in'));
const LEAST_LANDING_METRIC = constant(() => length('900 mm'));
/** From so many risers on steps are usually founded below frost. */
const FROST_FROM = 3;

function heedStep({ rules, rise, tread }: Heeded, pad: Pad): void {
  const limits = STEP_LIMITS[rules];
  const [highest, lowest, narrowest] = [limits.highest(), limits.lowest(), limits.narrowest()].map((limit) =>
    inFamilyOf(rise, limit),
  ) as [Length, Length, Length];
  if (rise.greaterThan((limits.highestMetric ?? limits.highest)())) {
    pad.caution(steps.steepRiser(limits, highest, rise));
  } else if (rise.greaterThan(highest)) pad.caution(steps.riserAtLimit(limits, highest, rise));
  if (rise.lessThan(lowest) && rise.lessThan(LOWEST_METRIC()))
    pad.caution(steps.lowRiser(limits, lowest, rise));
  if (tread.lessThan(narrowest)) pad.caution(steps.narrowTread(limits, narrowest, tread));
}

function heedFlights({ rules, rise, flights }: Heeded, pad: Pad): void {
  const limits = STEP_LIMITS[rules];
  const most = flights.reduce((a, b) => (b.greaterThan(a) ? b : a));
  const from = wholeNumber(limits.handrailFrom);
  if (!most.lessThan(from)) {
    pad.caution(rules === 'dwelling' ? steps.handrail(from, most) : steps.handrails(from, most));
  }
  const tall = rise.times(most);
  const tallest = inFamilyOf(tall, limits.tallest());
  if (tall.greaterThan(tallest)) pad.caution(steps.tallFlight(limits.tallestSource, tallest, tall));
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
  const limits = STEP_LIMITS[rules];
  if (drop?.greaterThan(GUARD_ABOVE())) {
    pad.caution(steps.guard(limits.guard, limits.guardSource, inFamilyOf(drop, GUARD_ABOVE()), drop));
  }
  const short = landings.find((d) => d.lessThan(LEAST_LANDING()) && d.lessThan(LEAST_LANDING_METRIC()));
  if (short) pad.caution(steps.shortLanding(inFamilyOf(short, LEAST_LANDING()), short));
  heedFrost(flight, pad);
}

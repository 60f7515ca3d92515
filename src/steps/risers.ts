/** A riser and a tread held against published limits, for steps that are laid out and for steps that are poured. */
import { type Quantity, systemOfQuantity } from '../quantity/quantity';
import { wholeNumber } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import * as cautions from './cautions';
import type { StepLimits } from './rules';

type Length = Quantity<'length'>;
type Count = Quantity<'count'>;

/** A riser held against the limits of the rules. */
export function heedRiser(limits: StepLimits, riser: Length, pad: Pad): void {
  const highest = limits.highest.exceededBy(riser);
  const asked = limits.asked?.exceededBy(riser);
  const lowest = limits.lowest.undercutBy(riser);
  if (highest) pad.caution(cautions.steepRiser(limits, highest, riser));
  else if (asked) pad.caution(cautions.riserAtLimit(limits, asked, riser));
  if (lowest) pad.caution(cautions.lowRiser(limits, lowest, riser));
}

/** A flight between landings: its handrail, and how long it is. */
export function heedLength(limits: StepLimits, risers: Count, rise: Length, pad: Pad): void {
  const { handrailRise, mostRisers } = limits;
  const from = wholeNumber(limits.handrailFrom);
  const high = handrailRise?.reachedBy(rise);
  if (handrailRise ? high : !risers.lessThan(from))
    pad.caution(limits.handrail(limits.source, high ?? from, high ? rise : risers));
  const most = mostRisers && wholeNumber(mostRisers);
  if (most && risers.greaterThan(most)) pad.caution(cautions.longFlight(limits.tallestSource, most, risers));
}

/** A stride held against the rules that have one. */
export function heedStride(limits: StepLimits, riser: Length, tread: Length, pad: Pad): void {
  if (!limits.stride) return;
  const sum = riser
    .times(wholeNumber(2))
    .plus(tread)
    .in(systemOfQuantity(tread) === 'metric' ? 'mm' : 'in');
  const off = strideOf(limits, sum);
  if (off) pad.caution(cautions.strideOff(limits, limits.stride, off, sum));
}

/** The limit that a stride is off by, where the rules have any. */
export function strideOf({ stride }: StepLimits, sum: Length): Length | undefined {
  return stride?.[0].undercutBy(sum) ?? stride?.[1].exceededBy(sum);
}

/** A tread held against the least of the rules. */
export function heedTread(limits: StepLimits, tread: Length, pad: Pad): void {
  const narrowest = limits.narrowest.undercutBy(tread);
  if (narrowest) pad.caution(cautions.narrowTread(limits, narrowest, tread));
}

/** A riser and a tread held against published limits, for steps that are laid out and for steps that are poured. */
import type { Quantity } from '../quantity/quantity';
import type { Pad } from '../reckoning/pad';
import * as cautions from './cautions';
import type { StepLimits } from './rules';

type Length = Quantity<'length'>;

/** A riser held against the limits of the rules. */
export function heedRiser(limits: StepLimits, riser: Length, pad: Pad): void {
  const highest = limits.highest.exceededBy(riser);
  const asked = limits.asked?.exceededBy(riser);
  const lowest = limits.lowest.undercutBy(riser);
  if (highest) pad.caution(cautions.steepRiser(limits, highest, riser));
  else if (asked) pad.caution(cautions.riserAtLimit(limits, asked, riser));
  if (lowest) pad.caution(cautions.lowRiser(limits, lowest, riser));
}

/** A tread held against the least of the rules. */
export function heedTread(limits: StepLimits, tread: Length, pad: Pad): void {
  const narrowest = limits.narrowest.undercutBy(tread);
  if (narrowest) pad.caution(cautions.narrowTread(limits, narrowest, tread));
}

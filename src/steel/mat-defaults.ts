/** What a mat of bars is laid by where the plans do not say: cover, stock length, lap. */
import { constant, length } from '../quantity/make';
import type { Quantity } from '../quantity/quantity';
import * as cautions from '../reckoning/cautions';
import { wholeNumber } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { ACI_318_COVER, VCC_LAP } from '../reckoning/source';
import { type BarSize, diameterOf } from './bars';

type Length = Quantity<'length'>;

/** Cover of concrete that is cast against the ground. */
export const COVER = constant(() => length('3 in'));
/** Bars farther apart do little. */
export const WIDE = constant(() => length('18 in'));
const STOCK = constant(() => length('20 ft'));
const LEAST_LAP = constant(() => length('12 in'));
const LAP_DIAMETERS = constant(() => wholeNumber(40));

/** Cover at the edges, given or usual. */
export function coverOf(given: Length | undefined, pad: Pad): Length {
  if (given) return given;
  pad.assume({
    name: 'cover',
    value: COVER().format(),
    because: 'concrete cast against the ground',
    override: 'Give cover from the plans',
    source: ACI_318_COVER,
  });
  return COVER();
}

/** Stock length, given or usual. */
export function stockOf(given: Length | undefined, pad: Pad): Length {
  if (given) return given;
  pad.assume({
    name: 'stockLength',
    value: STOCK().format(),
    because: 'a stock length of bar that most yards carry',
    override: 'Give stockLength as your yard sells it',
    source: { kind: 'common-practice', title: 'Stock lengths of bar', fromMemory: true },
  });
  return STOCK();
}

/** The larger of 40 bar diameters and 12 in. */
function usualLap(bar: BarSize): Length {
  const diameters = diameterOf(bar).times(LAP_DIAMETERS());
  return diameters.lessThan(LEAST_LAP()) ? LEAST_LAP() : diameters;
}

/** Lap, given or usual; a short one is cautioned about. */
export function lapOf(given: Length | undefined, bar: BarSize, pad: Pad): Length {
  const usual = usualLap(bar);
  if (given) {
    if (given.lessThan(usual)) pad.caution(cautions.shortLap(usual, given));
    return given;
  }
  const values = { d: diameterOf(bar), c: LEAST_LAP() };
  pad.step('lap', 'l = max(40 × d, c)', values, usual);
  pad.assume({
    name: 'lap',
    value: usual.format(),
    because: '40 bar diameters, at least 12 in',
    override: 'Give lap from the plans; the engineer governs',
    source: VCC_LAP,
  });
  return usual;
}

/**
 * Between the bank and compacted fill, both ways.
 *
 * Published sources use two conventions: `1/(1+s)` gives the share of the compacted volume, `1-s` of the
 * bank volume. So V in the bank makes `V ÷ (1 + s)` or `V × (1 − s)` of fill, and a fill of F takes
 * `F × (1 + s)` or `F ÷ (1 − s)` out of the bank.
 */
import * as faults from '../quantity/faults';
import { constant, ratio } from '../quantity/make';
import type { Quantity } from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import type { Pad } from '../reckoning/pad';

/** How the share by which earth shrinks is defined: `1/(1+s)` of the compacted volume, `1-s` of the bank volume. */
export type ShrinkConvention = '1/(1+s)' | '1-s';

/** Shrinkage, read. */
export interface Shrink {
  readonly convention: ShrinkConvention;
  readonly share: Quantity<'ratio'>;
}

type Volume = Quantity<'volume'>;

const ONE = constant(() => ratio('1:1'));

/** What is left of each unit by the convention `1-s`. */
function leftOf(s: Quantity<'ratio'>): Quantity<'ratio'> {
  const left = ONE().minus(s);
  return left.sign() > 0 ? left : refuse('shrink.share', faults.doesNotFit('share', '100%'));
}

/** Bank volume placed as fill and compacted, with the factor. */
export function compactedFrom(V: Volume, { convention, share: s }: Shrink, pad: Pad) {
  if (convention === '1/(1+s)') {
    const over = ONE().plus(s);
    const shrinkFactor = pad.step('shrink factor, 1/(1+s)', 'F = 1 ÷ (1 + s)', { s }, ONE().over(over));
    const compactedVolume = pad.step('compacted volume', 'C = V ÷ (1 + s)', { V, s }, V.over(over));
    return { compactedVolume, shrinkFactor };
  }
  const left = leftOf(s);
  const shrinkFactor = pad.step('shrink factor, 1-s', 'F = 1 − s', { s }, left);
  const compactedVolume = pad.step('compacted volume', 'C = V × (1 − s)', { V, s }, V.times(left));
  return { compactedVolume, shrinkFactor };
}

/** What a fill takes out of the bank. */
export function bankFor(F: Volume, { convention, share: s }: Shrink, pad: Pad): Volume {
  const what = 'bank volume that the fill takes';
  if (convention === '1/(1+s)') return pad.step(what, 'B = F × (1 + s)', { F, s }, F.times(ONE().plus(s)));
  return pad.step(what, 'B = F ÷ (1 − s)', { F, s }, F.over(leftOf(s)));
}

/**
 * Panels that are too long for their thickness: over 36 thicknesses, the most that published rules allow in plain
 * concrete, 4 in and 100 mm being one thickness. Those who wrote of cracked and curled slabs had joints 45 to 90
 * thicknesses apart.
 */

import { greaterOf } from '../quantity/greater';
import type { Quantity } from '../quantity/quantity';
import { wholeNumber } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { jointsFarApart } from './cautions';

type Length = Quantity<'length'>;

const MOST = 36;

/** Sixtieths, by which 100 mm falls short of 4 in. */
const NOMINAL = [60, 61] as const;

/** Says so where the longest side of a panel is longer than 36 thicknesses. */
export function heedFarJoints(
  panels: readonly { readonly along: Length; readonly across: Length }[],
  thickness: Length,
  pad: Pad,
): void {
  const sides = panels.map(({ along, across }) => greaterOf(along, across));
  const [first, ...others] = sides;
  if (!first) return;
  const longest = others.reduce(greaterOf, first);
  const limit = thickness.times(wholeNumber(MOST)).in(pad.system === 'metric' ? 'm' : 'ft');
  const [least, most] = NOMINAL;
  if (!longest.times(wholeNumber(least)).greaterThan(limit.times(wholeNumber(most)))) return;
  pad.caution(jointsFarApart(limit, longest));
}

/**
 * Panels that are too long for their thickness, whatever spacing was asked for.
 *
 * Published rules joint plain slabs at 24 to 36 times the thickness. A longer panel shrinks more than the ground
 * lets it slide, and cracks where nobody cut.
 */
import type { Quantity } from '../../quantity/quantity';
import { wholeNumber } from '../../reckoning/fields';
import type { Pad } from '../../reckoning/pad';
import { widePanels } from '../cautions';

type Length = Quantity<'length'>;

/** Of the published rules, the one that joints farthest apart. */
export const MOST_TIMES = 36;
/** A thickness under its other name, 100 mm for 4 in, is up to a sixtieth off and makes no other panel of it. */
const SIXTIETHS = 60;

/** Say so where the longest side of any panel is beyond what plain slabs are jointed at. */
export function heedWidePanels(
  panels: readonly { readonly along: Length; readonly across: Length }[],
  thickness: Length,
  pad: Pad,
): void {
  const sides = panels.flatMap(({ along, across }) => [along, across]);
  const [first, ...rest] = sides;
  if (!first) return;
  const longest = rest.reduce((a, b) => (b.greaterThan(a) ? b : a), first);
  const most = thickness.times(wholeNumber(MOST_TIMES));
  if (!longest.times(wholeNumber(SIXTIETHS)).greaterThan(most.times(wholeNumber(SIXTIETHS + 1)))) return;
  pad.caution(widePanels(most.in(pad.system === 'metric' ? 'm' : 'ft'), longest, longest.over(thickness)));
}

/**
 * The least cover of concrete over bars, by what the concrete is cast against.
 *
 * Source: ACI 318-71 as quoted in Concrete Construction, "Cover for Rebars": 3 in where it is cast against
 * earth and stays so; 2 in for #6 and larger, 1-1/2 in for #5 and smaller in the weather; 3/4 in for slabs
 * inside, 1-1/2 in for #14 and #18. Never less than the bar is thick: "Covering reinforcing", the same magazine.
 */

import { constant, length } from '../quantity/make';
import { type Paired, paired, sameInBoth } from '../quantity/paired';
import type { Quantity } from '../quantity/quantity';

/** What the top of a slab has to bear: the weather, or a room. */
export type Exposure = 'weather' | 'inside';

/** All of them. */
export const EXPOSURES: readonly Exposure[] = ['weather', 'inside'];

/** What the edges of a slab are cast against. */
export type CastAgainst = 'forms' | 'ground';

/** All of them. */
export const CAST_AGAINST: readonly CastAgainst[] = ['forms', 'ground'];

type Length = Quantity<'length'>;

/** Cover of concrete that is cast against earth. */
export const EARTH_COVER = /*#__PURE__*/ paired('length', '3 in', '75 mm');
const LARGE_COVER = /*#__PURE__*/ paired('length', '2 in', '50 mm');
const SMALL_COVER = /*#__PURE__*/ paired('length', '1.5 in', '38 mm');
const INSIDE_COVER = /*#__PURE__*/ paired('length', '0.75 in', '19 mm');

/** #5 and 16 mm are small, #6 is large. */
const SMALL_BAR = constant(() => length('16 mm'));
/** #11 is 35.8 mm. */
const INSIDE_BAR = constant(() => length('36 mm'));

const atLeastBar = (pair: Paired<'length'>, d: Length): Paired<'length'> =>
  pair.undercutBy(d) || !d.greaterThan(pair.as('customary')) ? pair : sameInBoth(d);

/** Least cover of a face that is formed or finished, over bars of a diameter. */
export function faceCoverFor(d: Length, exposure: Exposure): Paired<'length'> {
  if (exposure === 'weather') return d.greaterThan(SMALL_BAR()) ? atLeastBar(LARGE_COVER, d) : SMALL_COVER;
  return atLeastBar(d.greaterThan(INSIDE_BAR()) ? SMALL_COVER : INSIDE_COVER, d);
}

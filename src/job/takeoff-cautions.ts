/** What to watch out for when a whole job is taken off. */
import type { Quantity } from '../quantity/quantity';
import type { Caution } from '../reckoning/result';
import { CLOSED_FORM, COMMON_PRACTICE } from '../reckoning/source';
import { say } from '../reckoning/words';

/** Two elements lie over each other, and their concrete is counted once. */
export const overlapOnce = (
  first: string,
  second: string,
  area: Quantity<'area'>,
  less: Quantity<'volume'>,
): Caution => ({
  code: 'elements-overlap',
  severity: 'warning',
  ...say`${{ first }} and ${{ second }} lie over each other on ${{ area }}: the concrete there is counted once, ${{ less }} less. Say standsOn where one stands on the other, or cut an opening. Gravel there is counted once too, steel in both`,
  source: CLOSED_FORM,
});

/** Two elements lie over each other, and nobody knows how deep. */
export const overlapUnknown = (first: string, second: string, area: Quantity<'area'>): Caution => ({
  code: 'elements-overlap',
  severity: 'warning',
  ...say`${{ first }} and ${{ second }} lie over each other on ${{ area }}, and the concrete there is counted in both: give a thickness of one of them, or say standsOn`,
  source: CLOSED_FORM,
});

/** A pit that slab and gravel do not fill: it is dug `actual`, and they are together `limit`. */
export const dugTooDeep = (
  actual: Quantity<'length'>,
  limit: Quantity<'length'>,
  by: Quantity<'length'>,
): Caution => ({
  code: 'dig-differs',
  severity: 'note',
  ...say`it is dug ${{ by }} deeper than slab and gravel are together: the top comes as much below the ground beside it, and water runs onto it. Dig ${{ limit }}; where the ground is soft further down, order gravel for the rest as well`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

/** A slab that stands out of its pit. */
export const dugTooShallow = (
  actual: Quantity<'length'>,
  limit: Quantity<'length'>,
  by: Quantity<'length'>,
): Caution => ({
  code: 'dig-differs',
  severity: 'note',
  ...say`slab and gravel are together ${{ by }} more than it is dug: the top comes as much above the ground beside it. Where it is to lie flush, dig ${{ limit }}`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

/** A slab thickened below its underside, by so much concrete that no pit is dug for. */
export const edgeNotDug = (more: Quantity<'volume'>): Caution => ({
  code: 'edge-not-dug',
  severity: 'note',
  ...say`the slab is thickened by ${{ more }} below its underside, and nothing is dug for that: dig as much more, and bend the gravel down with it`,
  source: COMMON_PRACTICE,
});

/** Earth that goes back along the edges stays on the site. */
export const earthKept = (kept: Quantity<'volume'>): Caution => ({
  code: 'earth-kept',
  severity: 'note',
  ...say`${{ kept }} of loose earth from the dig fills in along the edges and is not hauled away: pile it up clear of the forms and of the dig. Sod, roots and mud are no fill`,
  source: COMMON_PRACTICE,
});

/** The digs give less, or do not say how much loose earth they give. */
export const keptEarthShort = (lacks: Quantity<'volume'>): Caution => ({
  code: 'kept-earth-short',
  severity: 'note',
  ...say`the dig gives ${{ lacks }} less loose earth than is to be filled in from it, and that is bought. Without its swell it is not known how much it gives`,
  source: COMMON_PRACTICE,
});

/** What the job shares of a part that no element has. */
export const sharedUnused = (places: readonly string[]): Caution => ({
  code: 'shared-unused',
  severity: 'warning',
  ...say`nothing of ${{ places }} is in these figures: it is shared, and no element has it. Say it of each that it is for`,
  source: COMMON_PRACTICE,
});

/** Elements that nothing is poured of, though they look as if. */
export const notPoured = (elements: readonly string[]): Caution => ({
  code: 'not-poured',
  severity: 'warning',
  ...say`no concrete of ${{ elements }} is in these figures, since nothing says that it is poured. Say slab: true, or slab: false where the concrete is there already`,
  source: COMMON_PRACTICE,
});

/** Steps that end beside the door. */
export const flightDiffers = (
  actual: Quantity<'length'>,
  limit: Quantity<'length'>,
  by: Quantity<'length'>,
): Caution => ({
  code: 'flight-differs',
  severity: 'warning',
  ...say`the steps as poured climb ${{ actual }}, and their risers are laid out for ${{ limit }}: they end ${{ by }} off the door. Give both the same height before anything is formed`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

/** Something is not known yet. */
export const partsMissing = (count: number): Caution => ({
  code: 'parts-missing',
  severity: 'warning',
  ...(count > 1
    ? say`the job is known in part: ${{ count }} values are missing, and what they are for is in none of these figures`
    : {
        says: 'the job is known in part: one value is missing, and what it is for is in none of these figures',
      }),
  source: COMMON_PRACTICE,
});

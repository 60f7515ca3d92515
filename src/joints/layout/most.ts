/** How large a slab is planned at once. */
import type { Limit } from '../../reckoning/limits';

/** A floor of ten acres in panels of 12 ft. */
export const PANELS: Limit = { of: 'the panels of a joint plan', most: 3_000 };

/** Along a walk, or across a floor. */
export const SIDE_BY_SIDE: Limit = { of: 'the joints side by side', most: 1_500 };

/** Corners and openings of a slab with sides in two directions. */
export const SQUARE_CORNERS: Limit = {
  of: 'the corners of a slab with sides in two directions, openings counted',
  most: 300,
};

/** Corners and openings of other slabs: they take more work. */
export const SLANTED_CORNERS: Limit = {
  of: 'the corners of a slab with slanted sides, openings counted',
  most: 160,
};

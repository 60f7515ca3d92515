/** How large a slab is planned at once. */
import type { Limit } from '../../reckoning/limits';

/** A floor of ten acres in panels of 12 ft. */
export const PANELS: Limit = { of: 'a joint plan in panels', most: 3_000 };

/** A floor of 16 acres in panels of 12 ft, where every panel is a rectangle and nothing is cut out of it. */
export const SQUARE_PANELS: Limit = {
  of: 'a joint plan of rectangles alone, in panels,',
  most: 5_000,
};

/** What a slab is made of, as far as it bounds its panels. */
interface Made {
  readonly orthogonal: boolean;
  readonly ring: readonly unknown[];
  readonly edge: readonly unknown[];
  readonly openings: readonly { readonly cornered: boolean }[];
}

/** How many panels a plan of a slab may have. */
export const panelLimit = ({ orthogonal, ring, edge, openings }: Made): Limit =>
  orthogonal && edge.length === ring.length && openings.every(({ cornered }) => cornered)
    ? SQUARE_PANELS
    : PANELS;

/** Along a walk, or across a floor. */
export const SIDE_BY_SIDE: Limit = { of: 'a joint plan in joints side by side', most: 1_500 };

/** Corners and openings of a slab with sides in two directions. */
export const SQUARE_CORNERS: Limit = {
  of: 'a slab with sides in two directions, in corners and openings,',
  most: 640,
};

/** Corners and openings of other slabs: they take more work. */
export const SLANTED_CORNERS: Limit = {
  of: 'a slab with slanted sides, in corners and openings,',
  most: 100,
};

/** Corners of openings with slanted sides: each panel beside one is cut to it exactly. */
export const OPENING_CORNERS: Limit = { of: 'a joint plan in corners of its openings', most: 6_000 };

/** Passes of a saw in one joint. */
export const PASSES: Limit = { of: 'a joint in passes of the saw', most: 100 };

/** Dowels of one slab. */
export const DOWELS: Limit = { of: 'a slab in dowels', most: 100_000 };

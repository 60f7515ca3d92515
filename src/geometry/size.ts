/**
 * How much there may be to an outline made of outlines: in each kind of corner, as much as to one outline
 * of that kind.
 */
import { type Limit, withinLimit } from '../reckoning/limits';
import type { Outline } from './outline';

/** More corners than a survey of a yard ever has. */
export const CORNERS: Limit = { of: 'all polygons together, in corners,', most: 10_000 };
/** More sides than anyone walks or tapes. */
export const WALKED: Limit = { of: 'all that is walked or taped, in sides,', most: 500 };
export const OFFSETS: Limit = { of: 'all offsets together', most: 1000 };
/** Arcs are cut up finely, so there may not be very many. */
export const CURVED: Limit = { of: 'all curved outlines together, in corners,', most: 200 };
export const PARTS: Limit = { of: 'an outline in parts within parts', most: 1000 };

/** What a combined outline is refused by, whatever is asked of it. */
export const OUTLINE_LIMITS: readonly Limit[] = [PARTS, CORNERS, WALKED, OFFSETS, CURVED];

/** The kind of corner that a shape is told by, and how many it has. */
function cornersIn(outline: Outline): readonly [Limit, number] | undefined {
  switch (outline.shape) {
    case 'polygon':
      return [CORNERS, outline.points.length];
    case 'curved':
      return [CURVED, outline.points.length];
    case 'walk':
      return [WALKED, outline.legs.length];
    case 'taped':
      return [WALKED, outline.sides.length];
    case 'offsets':
      return [OFFSETS, outline.offsets.length];
    default:
      return undefined;
  }
}

/**
 * Refuse an outline of which there is too much, all parts within parts taken together.
 *
 * @param path - where it stands in the input
 * @throws {InputError} `too-many`
 */
export function checkSize(outline: Outline, path: string): void {
  const counts = new Map<Limit, number>();
  const count = (limit: Limit, n: number): void => {
    const sum = (counts.get(limit) ?? 0) + n;
    withinLimit(limit, sum, path);
    counts.set(limit, sum);
  };
  const visit = (part: Outline): void => {
    count(PARTS, 1);
    const corners = cornersIn(part);
    if (corners) count(...corners);
    if (part.shape === 'combined') [...part.parts, ...(part.less ?? [])].forEach(visit);
  };
  visit(outline);
}

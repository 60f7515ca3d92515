/**
 * How much there may be to an outline made of outlines: in each kind of corner, as much as to one outline
 * of that kind.
 */
import { type Limit, withinLimit } from '../reckoning/limits';
import type { Outline } from './outline';

/** More corners than a survey of a yard ever has. */
export const CORNERS: Limit = { of: 'polygons together, in corners,', most: 10_000 };
/** More sides than anyone walks or tapes. */
export const WALKED: Limit = { of: 'walked or taped sides together', most: 500 };
export const OFFSETS: Limit = { of: 'offsets together', most: 1000 };
/** Arcs are cut up finely, so there may not be very many. */
export const CURVED: Limit = { of: 'curved outlines together, in corners,', most: 200 };
const PARTS: Limit = { of: 'an outline in parts within parts', most: 1000 };

/** What a combined outline is refused by, whatever is asked of it. */
export const OUTLINE_LIMITS: readonly Limit[] = [PARTS, CORNERS, WALKED, OFFSETS, CURVED];

const LIMIT_OF: Partial<Record<Outline['shape'], Limit>> = {
  polygon: CORNERS,
  curved: CURVED,
  walk: WALKED,
  taped: WALKED,
  offsets: OFFSETS,
};

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
    if (part.shape === 'combined') for (const each of [...part.parts, ...(part.less ?? [])]) visit(each);
    const limit = LIMIT_OF[part.shape];
    // The first list of an outline is that of its corners or sides.
    const list = Object.values(part).find(Array.isArray) as unknown[] | undefined;
    if (limit && list) count(limit, list.length);
  };
  visit(outline);
}

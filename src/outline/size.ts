/**
 * How much there may be to an outline made of outlines, and to all openings together: about as much as to
 * one outline. What takes longer to reckon counts for more.
 */

import { canonicalValue } from '../quantity/quantity';
import { type Limit, withinLimit } from '../reckoning/limits';
import type { Outline, OutlineOf } from './outline';

/** What has a size: an outline, or an opening, which is an outline with a place. */
type Sized = Pick<Outline, 'shape'>;

const SIZE: Limit = {
  of: 'all parts or openings, at 5 each, a round one 25, a corner 1, an offset 10, a side taped or walked 20, an arc 50,',
  most: 12_000,
};

/** What a combined outline is refused by, whatever is asked of it. */
export const OUTLINE_LIMITS: readonly Limit[] = [SIZE];

const WEIGHTS: Partial<Record<Outline['shape'], number>> = {
  polygon: 1,
  offsets: 10,
  walk: 20,
  taped: 20,
  curved: 50,
};

function sizeOf(outline: Sized): number {
  // An outline has one list, or two of which the first is that of its corners, sides or parts.
  const [list = [], less] = Object.values<unknown>(outline).filter((each) =>
    Array.isArray(each),
  ) as Sized[][];
  if (outline.shape === 'combined') return sizeOfAll([...list, ...(less ?? [])]);
  // As many as its ring of corners cost.
  if (outline.shape === 'circle') return 25;
  if (outline.shape === 'regular')
    return 5 + canonicalValue((outline as OutlineOf<'regular'>).sides).toNumber();
  return 5 + (WEIGHTS[outline.shape] ?? 0) * list.length;
}

const sizeOfAll = (all: readonly Sized[]): number => all.reduce((sum, each) => sum + sizeOf(each), 5);

/**
 * Refuse outlines or openings of which there is too much, all parts within parts taken together.
 *
 * @param path - where they stand in the input
 * @throws {InputError} `too-many`
 */
export const checkSize = (all: readonly Sized[], path: string): void =>
  withinLimit(SIZE, sizeOfAll(all), path);

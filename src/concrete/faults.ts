/** What can be wrong with the input of a volume, an order or a count of bags, in words. */
import type { Fault } from '../quantity/input-error';

export const crownNotServed = (): Fault => ({
  code: 'not-served',
  sentence:
    'a crown needs two edges: give a rectangle, corners, a ring or a sector between two radii (these without openings), or an area; or give the mean thickness',
});

/** What can be wrong with the input of a volume, an order or a count of bags, in words. */
import type { Fault } from '../quantity/input-error';

export const crownNotServed = (): Fault => ({
  code: 'not-served',
  sentence:
    'a crown needs two edges: give a rectangle, corners, a ring or a sector between two radii (these without openings), or an area; or give the mean thickness',
});

export const coresOverlap = (): Fault => ({
  code: 'does-not-fit',
  sentence:
    'the cores together are wider than the back of the flight, so that they overlap and would be taken off twice; join those that do into one',
});

export const openingInWing = (): Fault => ({
  code: 'not-served',
  sentence:
    'openings are not served in a wall that changes both its height along it and its thickness up it; give it as several walls',
});

export const dropsTooLong = (): Fault => ({
  code: 'does-not-fit',
  sentence:
    'the drops with their wings are longer than the straight length of the curb, which counts them in',
});

export const otherCorners = (corners: number): Fault => ({
  code: 'wrong-count',
  sentence: `the section of a drop needs as many corners as that of the curb, ${corners}, each in its place: a wing leads every corner to its own`,
});

/** What can be wrong with the input of a volume, an order or a count of bags, in words. */

import { fault } from '../quantity/faults';
import type { Fault } from '../quantity/input-error';
import { say } from '../quantity/words';

export const crownNotServed = (): Fault =>
  fault(
    'not-served',
    'a crown needs two edges: give a rectangle, corners, a ring or a sector between two radii (these without openings), or an area; or give the mean thickness',
  );

export const plainOnBank = (): Fault =>
  fault(
    'not-served',
    'a flight with a waist has no landings part of the way up and no cores; take each flight between landings by itself, and the landings as slabs',
  );

export const coresOverlap = (): Fault =>
  fault(
    'does-not-fit',
    'the cores together are wider than the back of the flight, so that they overlap and would be taken off twice; join those that do into one',
  );

export const openingInWing = (): Fault =>
  fault(
    'not-served',
    'openings are not available in a wall that changes both its height along it and its thickness up it; give it as several walls',
  );

export const dropsTooLong = (): Fault =>
  fault(
    'does-not-fit',
    'the drops with their wings are longer than the straight length of the curb, which counts them in',
  );

export const otherCorners = (corners: number): Fault =>
  fault(
    'wrong-count',
    say`the section of a drop needs as many corners as that of the curb, ${{ corners }}, each in its place: a wing leads every corner to its own`,
  );

export const tooThin = (corner: number): Fault =>
  fault('too-thin', say`the slab runs out to nothing or less at corner ${{ corner }}; check the thicknesses`);

export const bandTooWide = (): Fault =>
  fault('does-not-fit', 'the slab has no room for the thickened edge; reduce its width or haunch');

export const probeOutside = (probe: number): Fault =>
  fault(
    'probe-outside',
    say`probe ${{ probe: probe + 1 }} lies outside the outline; check where it was taken`,
  );

export const probedTwice = (first: number, second: number): Fault =>
  fault(
    'probed-twice',
    say`probes ${{ first: first + 1 }} and ${{ second: second + 1 }} are in the same place; keep one of them`,
  );

export const notServed = (shape: string, what: string): Fault =>
  fault(
    'not-served',
    say`${{ what }} is not available for a ${{ shape }} outline; give a rectangle, a circle or corners`,
  );

export const openingInEdge = (opening: number): Fault =>
  fault(
    'does-not-fit',
    say`opening ${{ opening: opening + 1 }} reaches into the thickened edge; move it or make the edge narrower`,
  );

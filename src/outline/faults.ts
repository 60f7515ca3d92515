/** What can be wrong with an outline, in words. */

import { fault } from '../quantity/faults';
import type { Fault } from '../quantity/input-error';
import { say } from '../quantity/words';

export const partWithoutEdge = (): Fault =>
  fault(
    'perimeter-unknown',
    'a part has no edge of known length, so neither has the whole; leave shared out, or give that part another shape',
  );

export const noSuchTriangle = (): Fault =>
  fault(
    'no-such-triangle',
    'no triangle has these sides: the longest must be shorter than the other two together',
  );

export const noSuchTaped = (corner: number): Fault =>
  fault(
    'no-such-triangle',
    say`no triangle has the side and the diagonals at corner ${{ corner }}: measure them again; the longest must be shorter than the other two together`,
  );

export const diagonalCount = (sides: number): Fault =>
  fault(
    'wrong-count',
    say`${{ sides }} sides need ${{ sides2: sides - 3 }} diagonals from the first corner, one to each corner but its neighbors`,
  );

export const doesNotClose = (error: string, limit: string): Fault =>
  fault(
    'does-not-close',
    say`the walk ends ${{ error }} from its start, more than ${{ limit }}: measure again, or check the turns`,
  );

export const oddStrips = (): Fault =>
  fault(
    'wrong-count',
    "Simpson's rule needs an even number of strips, so an odd number of offsets; add one, or use the trapezoidal rule",
  );

export const angleTooWide = (): Fault => fault('does-not-fit', 'the angle must be at most 360 deg');

export const notPlaced = (what: string): Fault =>
  fault(
    'not-placed',
    say`${{ what }} has no place in the plan, which is needed here; give a shape, or the corners`,
  );

export const outsideOutline = (): Fault =>
  fault('outside-outline', 'the opening must lie wholly inside the outline; check where it is placed');

export const openingsMeet = (first: number, second: number): Fault =>
  fault(
    'openings-meet',
    say`openings ${{ first: first + 1 }} and ${{ second: second + 1 }} meet; join them into one or move them apart`,
  );

export const slantUnknown = (): Fault =>
  fault(
    'perimeter-unknown',
    'the two parallel sides and the height of a trapezoid do not tell how long its slant sides are; give a taped outline, or its corners',
  );

export const sidesUnknown = (): Fault =>
  fault(
    'perimeter-unknown',
    'this outline does not tell its sides one by one; give a shape, the corners, or the lengths themselves as runs',
  );

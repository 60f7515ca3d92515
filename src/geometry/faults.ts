/** What can be wrong with a ring of corners, in words. */

import { fault } from '../quantity/faults';
import type { Fault } from '../quantity/input-error';
import { say } from '../quantity/words';

export const selfCrossing = (first: number, second: number): Fault =>
  fault(
    'self-crossing',
    say`the outline meets itself: side ${{ first: first + 1 }} and side ${{ second: second + 1 }} cross or touch; list the corners in order around the slab`,
  );

export const tooTangled = (): Fault =>
  fault(
    'too-many',
    'too many sides of the outline lie beside each other; leave out corners closer than a tape can tell',
  );

export const zeroArea = (): Fault => fault('zero-area', 'the outline encloses no area; check the dimensions');

export const oneCurve = (): Fault => fault('give-one-of', 'give rise or radius for an edge, not both');

export const arcTooTight = (): Fault =>
  fault('does-not-fit', 'the radius is less than half of the edge, so no arc reaches from end to end');

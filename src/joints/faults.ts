/** What can be wrong with joints that are asked for, in words. */

import { fault } from '../quantity/faults';
import type { Fault } from '../quantity/input-error';
import { say } from '../quantity/words';

export const belowLeast = (what: string, least: string): Fault =>
  fault('below-least', say`${{ what }} must be at least ${{ least }}`);

export const offEdge = (): Fault =>
  fault('off-edge', 'this must lie on one side of the outline; check the coordinates');

export const jointOffSlab = (): Fault =>
  fault('off-slab', 'the joint does not lie on the slab; check the coordinates');

export const jointEndsInside = (): Fault =>
  fault('ends-inside', 'the joint ends within the slab; run it from edge to edge or to an opening');

export const jointNotSquare = (): Fault =>
  fault(
    'joint-not-square',
    'the joint must run along or square to the direction of the plan; give direction, or turn the joint',
  );

export const jointsConflict = (other: string): Fault =>
  fault(
    'joints-conflict',
    say`the joint contradicts ${{ other }}: two kinds in one place, or a sliver between them; keep one of them`,
  );

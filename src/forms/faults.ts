/** What can be wrong with what is asked of forms. */
import { fault } from '../quantity/faults';
import type { Fault } from '../quantity/input-error';
import { say } from '../quantity/words';

/** Concrete that is frozen. */
export const frozenConcrete = (): Fault =>
  fault(
    'out-of-range',
    say`temperature is below freezing, and fresh concrete is not; give that of the concrete, not of the air`,
  );

/** A side that the outline does not have. */
export const noSuchSide = (side: number, sides: number): Fault =>
  fault(
    'unknown-name',
    say`the outline has ${{ sides }} sides, and there is none with the number ${{ side }}; sides are counted from 1 in their order`,
  );

/** An opening that is not given. */
export const noSuchOpening = (opening: number, openings: number): Fault =>
  fault(
    'unknown-name',
    say`there is no opening with the number ${{ opening }} among ${{ openings }}; openings are counted from 1 in their order`,
  );

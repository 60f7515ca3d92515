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

/** A side or an opening that is not there. */
export const noSuchNumber = (number: number, most: number): Fault =>
  fault(
    'unknown-name',
    say`there are ${{ most }}, and none with the number ${{ number }}; they are counted from 1 in their order`,
  );

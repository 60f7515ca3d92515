/** What can be wrong with an input of earth or base, beyond what all calculations share. */

import { fault } from '../quantity/faults';
import type { Fault } from '../quantity/input-error';
import { say } from '../quantity/words';

export const middleOfLast = (what: string): Fault =>
  fault(
    'does-not-fit',
    say`${{ what }} is the area halfway to the next section, and none follows the last; give it with the section before`,
  );

export const perimeterUnknown = (what: string): Fault =>
  fault(
    'perimeter-unknown',
    say`${{ what }} cannot be put around this outline; give one whose edge is fixed, such as a rectangle, circle, L, triangle or polygon`,
  );

export const grownTogether = (what: string): Fault =>
  fault(
    'grown-together',
    say`sides of the outline meet when it is spread by ${{ what }}; give the outline of the wider area instead`,
  );

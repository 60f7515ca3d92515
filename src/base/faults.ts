/** What can be wrong with an input of earth or base, beyond what all calculations share. */

import { fault } from '../quantity/faults';
import type { Fault } from '../quantity/input-error';

export const middleOfLast = (what: string): Fault => ({
  code: 'does-not-fit',
  sentence: `${what} is the area halfway to the next section, and none follows the last; give it with the section before`,
});

export const perimeterUnknown = (what: string): Fault =>
  fault(
    'perimeter-unknown',
    `${what} cannot be put around this outline; give one whose edge is fixed, such as a rectangle, circle, L, triangle or polygon`,
  );

export const grownTogether = (what: string): Fault =>
  fault(
    'grown-together',
    `sides of the outline meet when it is spread by ${what}; give the outline of the wider area instead`,
  );

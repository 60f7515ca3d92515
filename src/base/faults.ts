/** What can be wrong with an input of earth or base, beyond what all calculations share. */
import type { Fault } from '../quantity/input-error';

export const middleOfLast = (what: string): Fault => ({
  code: 'does-not-fit',
  sentence: `${what} is the area halfway to the next section, and none follows the last; give it with the section before`,
});

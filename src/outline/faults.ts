/** What can be wrong with an outline, in words; the older faults of outlines stand with all others. */
import type { Fault } from '../quantity/input-error';

export const partWithoutEdge = (): Fault => ({
  code: 'perimeter-unknown',
  sentence:
    'a part has no edge of known length, so neither has the whole; leave shared out, or give that part another shape',
});

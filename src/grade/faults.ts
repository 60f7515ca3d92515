/** Faults of readings that only this trade has. */
import type { Fault } from '../quantity/input-error';

/** No published tolerance belongs to an edge of this length, and none may be scaled to it. */
export const noTolerance = (edge: string): Fault => ({
  code: 'no-tolerance',
  sentence: `no tolerance is published for a straightedge of ${edge}, and one for another length must not be scaled to it; give allowed as the plans have it, or use an edge of 5, 10 or 12 ft, 1.5, 3 or 4 m`,
});

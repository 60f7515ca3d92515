/** Faults of readings that only weather has. */
import { withExample } from '../quantity/faults';
import type { Fault } from '../quantity/input-error';
import { say } from '../quantity/words';

/** No equation may be carried beyond what it was made for. */
export const outsideRange = (what: string, range: string | readonly [string, string]): Fault =>
  withExample(
    'outside-range',
    range,
    (from) =>
      say`${{ what }} must lie within ${{ range: from }}, which is as far as the equation holds; check the reading and its unit`,
  );

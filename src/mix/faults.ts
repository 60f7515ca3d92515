/** What can be wrong with what is asked of a mix. */
import { fault } from '../quantity/faults';
import type { Fault } from '../quantity/input-error';
import { say } from '../quantity/words';

/** A standard that has no rule for this use in the units of the job. */
export const noRuleOf = (standard: string, choices: readonly string[]): Fault =>
  fault(
    'not-served',
    say`${{ standard }} has no rule here for this use in the units of this job; give one of ${{ choices: choices.map((c) => `"${c}"`).join(', ') }}`,
  );

/** More concrete in the drum than was delivered. */
export const moreThanDelivered = (what: string): Fault =>
  fault('out-of-range', say`${{ what }} is more than the load that was delivered; give what is in the drum`);

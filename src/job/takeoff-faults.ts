/** What can be wrong with a job document beside its parts, in words. */
import { fault, quoted } from '../quantity/faults';
import type { Fault } from '../quantity/input-error';
import { say } from '../reckoning/words';

/** Said where the job puts it in itself. */
export const followsFromJob = (name: string): Fault =>
  fault('unknown-key', say`${{ name: quoted(name) }} follows from the job: leave it out here`);

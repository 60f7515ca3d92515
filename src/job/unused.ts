/** What the job shares of parts that no element has: whoever wrote it there takes it for counted. */
import type { Caution } from '../reckoning/result';
import { type Job, partsIn } from './document';
import { ELEMENT_PARTS } from './part-inputs';
import { sharedUnused } from './takeoff-cautions';

/** A caution where parts are shared that no element says it has; `false` says that it is meant so. */
export function unusedCautions({ elements, shared }: Job): Caution[] {
  const unused = Object.keys(ELEMENT_PARTS).filter(
    (part) =>
      (partsIn(shared)[part] ?? false) !== false &&
      elements.every((element) => partsIn(element)[part] === undefined),
  );
  return unused.length > 0 ? [{ ...sharedUnused(unused), input: 'shared' }] : [];
}

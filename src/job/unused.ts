/** What whoever wrote the job takes for counted, and nothing counts. */
import type { Caution } from '../reckoning/result';
import { type Element, type Job, partsIn } from './document';
import { CONCRETE } from './item-parts';
import { ELEMENT_PARTS } from './part-inputs';
import { notPoured, sharedUnused } from './takeoff-cautions';

/** A part that is there: `false` says that it is meant to be away. */
const has = (of: object | undefined, part: string): boolean => (partsIn(of)[part] ?? false) !== false;

/** A caution where parts are shared that no element says it has; `false` says that it is meant so. */
export function unusedCautions({ elements, shared }: Job): Caution[] {
  const unused = Object.keys(ELEMENT_PARTS).filter(
    (part) => has(shared, part) && elements.every((element) => partsIn(element)[part] === undefined),
  );
  return unused.length > 0 ? [{ ...sharedUnused(unused), input: 'shared' }] : [];
}

const isPoured = (element: Element): boolean => CONCRETE.some((part) => has(element, part));

/** Nothing is reckoned of it at all. */
const isBare = (element: Element): boolean =>
  !element.also && Object.keys(ELEMENT_PARTS).every((part) => partsIn(element)[part] === undefined);

/** What a thickness may be given for in a job of steel, forms or joints alone. */
const THICK = ['bars', 'mesh', 'dowels', 'joints', 'forms'];

/**
 * A caution where elements have a thickness, or an outline alone, and no concrete, not even that it is there already: a
 * slab is one by its part, and not by its outline. A job that buys no concrete at all may be one of steel alone.
 */
export function forgottenCautions(job: Job): Caution[] {
  const { elements, shared } = job;
  // What is shared and no element has is told of already.
  if (has(shared, 'slab')) return [];
  const buys = has(job, 'order') || has(job, 'bags') || elements.some(isPoured);
  const isForgotten = (element: Element): boolean => {
    if (partsIn(element)['slab'] === false || isPoured(element)) return false;
    // An outline may be one of gravel alone.
    if (element.thickness === undefined) return element.outline !== undefined && isBare(element);
    return buys || !THICK.some((part) => has(element, part));
  };
  const forgotten = elements.filter(isForgotten).map(({ name }) => name);
  return forgotten.length > 0 ? [{ ...notPoured(forgotten), input: 'elements' }] : [];
}

/** What is laid before somebody as a check must be one. */
import type { EstimateCheck } from '../opinion/estimate-check';
import { fault } from '../quantity/faults';
import { isQuantity } from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import type { FigureSet } from '../reckoning/parts';

/**
 * Refuse what `estimateCheck` did not give.
 *
 * @throws {InputError} `not-a-result`
 */
export function mustBeCheck(check: EstimateCheck<FigureSet>): void {
  const given = check as Partial<EstimateCheck<FigureSet>> | null | undefined;
  if (!isQuantity(given?.claims?.[0]?.claimed))
    refuse('check', fault('not-a-result', 'this is no check; give what estimateCheck returned'));
}

/** What can be wrong with steel that is asked for, in words. */

import { fault } from '../quantity/faults';
import type { Fault } from '../quantity/input-error';
import { say } from '../quantity/words';

const noDesignation = (what: string, examples: readonly string[]): Fault =>
  fault(
    'unknown-designation',
    say`${{ what }} is not a standard size or style; write it as ${{ examples: examples.join(' or ') }}`,
  );

/** A bar or mesh that is not made, with examples as each unit system writes them. */
export const unknownDesignation = (
  what: string,
  customary: readonly string[],
  metric: readonly string[],
): Fault => ({ ...noDesignation(what, customary), metric: noDesignation(what, metric) });

export const stockTooShort = (what: string, wayOut: string): Fault =>
  fault('stock-too-short', say`the longest stock is shorter than ${{ what }}; ${{ wayOut }}`);

export const giveForAll = (what: string, of: string): Fault =>
  fault('give-for-all', say`give ${{ what }} for all ${{ of }} or for none`);

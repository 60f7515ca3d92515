/** What can be wrong with steel that is asked for, in words. */

import { fault } from '../quantity/faults';
import type { Fault } from '../quantity/input-error';

export const unknownDesignation = (what: string, examples: readonly string[]): Fault =>
  fault('unknown-designation', `${what} is none that is made; write it as ${examples.join(' or ')}`);

export const stockTooShort = (what: string, wayOut: string): Fault =>
  fault('stock-too-short', `the longest stock is shorter than ${what}; ${wayOut}`);

export const giveForAll = (what: string, of: string): Fault =>
  fault('give-for-all', `give ${what} for all ${of} or for none`);

/** What can be wrong with an input as a whole, in words. */

import { fault } from '../quantity/faults';
import type { Fault } from '../quantity/input-error';
import { say } from '../quantity/words';

export const negative = (what: string): Fault => fault('negative', say`${{ what }} must not be negative`);

export const unknownChoice = (what: string, choices: readonly string[]): Fault =>
  fault(
    'unknown-choice',
    say`${{ what }} must be one of ${{ choices: choices.map((c) => `"${c}"`).join(', ') }}`,
  );

export const tooDeep = (): Fault =>
  fault('too-deep', 'the input is nested deeper than any input of this library; give plain data');

export const unreadableInput = (): Fault =>
  fault('unreadable-input', 'the input cannot be read as plain data; give a plain object');

export const aResult = (): Fault =>
  fault('unreadable-input', 'the input is a result of this library; give the input of that');

export const notAResult = (): Fault =>
  fault('not-a-result', 'this is not a result of this library as JSON; give what JSON.stringify wrote');

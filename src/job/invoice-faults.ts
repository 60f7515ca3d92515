/** What can be wrong with tickets and an invoice, in words. */
import { fault, quoted } from '../quantity/faults';
import type { Fault } from '../quantity/input-error';
import { say } from '../reckoning/words';

export const noElement = (name: string): Fault =>
  fault(
    'unknown-name',
    say`no element is named ${{ name: quoted(name) }}; write its name as it stands in elements`,
  );

export const twoElements = (name: string): Fault =>
  fault('repeated-name', say`two elements are named ${{ name: quoted(name) }}; give each a name of its own`);

export const ticketTimesMissing = (): Fault =>
  fault('give-for-all', 'waiting is reckoned from the tickets: give onSite for each of them');

/** What can be wrong with what is asked of a second opinion, in words. */
import { fault } from '../quantity/faults';
import type { Fault } from '../quantity/input-error';
import type { Quantity } from '../quantity/quantity';
import { say } from '../quantity/words';

const LISTED = 12;

export const noSuchFigure = (name: string, known: readonly string[]): Fault =>
  fault(
    'unknown-name',
    say`${{ name }} is no figure of this result that is a quantity; there are ${{ known: known.slice(0, LISTED).join(', ') }}`,
  );

export const noSuchInput = (name: string, known: readonly string[]): Fault =>
  fault(
    'unknown-name',
    say`${{ name }} is no quantity of this input; there are ${{ known: known.slice(0, LISTED).join(', ') }}`,
  );

export const notACalculation = (): Fault =>
  fault('wrong-type', 'the first argument must be a calculation of this library, such as slabVolume');

export const isRange = (low: string, high: string, middle: string, width: string): Fault =>
  fault(
    'ambiguous',
    say`from ${{ low }} to ${{ high }} is a range, and not one figure: claim the one that is meant, or the middle with the width of the range, { claimed: "${{ middle }}", rounded: "${{ width }}" }`,
  );

export const noClaims = (): Fault =>
  fault('too-few', 'give at least one claimed figure, for example { volume: "9 yd3" }');

export const sameThroughout = (vary: string, figure: string): Fault =>
  fault(
    'no-solution',
    say`${{ figure }} does not change with ${{ vary }}; vary something that it is reckoned from`,
  );

export const notReached = (
  figure: string,
  low: Quantity,
  high: Quantity,
  from: Quantity,
  to: Quantity,
): Fault =>
  fault(
    'no-solution',
    say`${{ figure }} goes from ${{ low }} to ${{ high }} while it is varied from ${{ from }} to ${{ to }}; what is wanted lies outside`,
  );

export const notMonotone = (figure: string, vary: string, from: Quantity, to: Quantity): Fault =>
  fault(
    'no-solution',
    say`${{ figure }} rises and falls as ${{ vary }} is varied from ${{ from }} to ${{ to }}; give a narrower range in between`,
  );

export const notReckonable = (vary: string, from: Quantity, to: Quantity): Fault =>
  fault(
    'no-solution',
    say`nothing is worked out for ${{ vary }} from ${{ from }} to ${{ to }}; give another range in between`,
  );

export const leapsOver = (figure: string, below: Quantity, above: Quantity): Fault =>
  fault(
    'no-solution',
    say`${{ figure }} leaps from ${{ below }} to ${{ above }} and is never what is wanted; ask for one of these`,
  );

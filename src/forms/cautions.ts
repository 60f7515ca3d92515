/** Cautions about forms: what to watch out for, why, and by which source. */
import type { Quantity } from '../quantity/quantity';
import type { Caution } from '../reckoning/result';
import { CLOSED_FORM, COMMON_PRACTICE } from '../reckoning/source';

type Length = Quantity<'length'>;

export const outOfSquare = (limit: Length, actual: Length): Caution => ({
  code: 'out-of-square',
  severity: 'warning',
  says: 'the diagonals differ by more than the tolerance: slide a side until they are equal, then brace the forms',
  limit,
  actual,
  source: COMMON_PRACTICE,
});

export const sidesAndDiagonals = (limit: Length, actual: Length): Caution => ({
  code: 'sides-and-diagonals',
  severity: 'warning',
  says: 'sides and diagonals do not belong to one figure with opposite sides equal: measure all four sides and both diagonals again',
  limit,
  actual,
  source: CLOSED_FORM,
});

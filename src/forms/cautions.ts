/** Cautions about forms: what to watch out for, why, and by which source. */
import type { Quantity } from '../quantity/quantity';
import type { Caution } from '../reckoning/result';
import { CLOSED_FORM, COMMON_PRACTICE } from '../reckoning/source';
import { say, type Words } from '../reckoning/words';
import { FORM_PRESSURE } from './sources';

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

export const engineeredForms: Caution = {
  code: 'engineered-forms',
  severity: 'warning',
  always: true,
  says: 'forms that burst kill: this is the pressure, and no design. Walls, columns and anything higher than a person are formed by a design of a licensed engineer or by the tables of who makes the forms; watch ties and braces through the pour',
  source: FORM_PRESSURE,
};

export const overFormPressure = (
  limit: Quantity<'pressure'>,
  actual: Quantity<'pressure'>,
  rate: Quantity<'speed'> | undefined,
): Caution => ({
  code: 'over-form-pressure',
  severity: 'stop',
  ...say`the concrete presses with ${{ actual }}, and the forms are made for ${{ limit }}: ${rate ? say`place no faster than ${{ rate }}` : say`no rate of placing keeps it below that in one lift; place in lifts, or have stronger forms made`}`,
  limit,
  actual,
  source: FORM_PRESSURE,
});

export const fullHeadGoverns = (why: Words): Caution => ({
  code: 'full-head',
  severity: 'note',
  ...say`the forms must stand the full head: ${why}`,
  source: FORM_PRESSURE,
});

export const coldConcretePresses = (
  limit: Quantity<'temperature'>,
  actual: Quantity<'temperature'>,
): Caution => ({
  code: 'cold-concrete-presses',
  severity: 'warning',
  ...say`concrete of ${{ actual }} stiffens slowly and presses longer: below ${{ limit }} no equation is tabled, so the full head is taken. Warmer concrete presses less`,
  limit,
  actual,
  source: FORM_PRESSURE,
});

/** Small things that several calculations on steel share. */

import { Decimal } from '../quantity/decimal';
import { canonicalValue, newQuantity, type Quantity, unitShown } from '../quantity/quantity';
import { wholeNumber } from '../reckoning/fields';

/** A plain number in a formula: 0.075, or 60000 for a strength in psi. */
export const plainNumber = (value: Decimal | string): Quantity<'count'> =>
  newQuantity('count', new Decimal(value), unitShown(wholeNumber(1)));

/** The number of a quantity in a unit, as an exact decimal. */
export const numberIn = (q: Quantity, oneUnit: Quantity): Decimal =>
  canonicalValue(q).div(canonicalValue(oneUnit));

/** A length from meters, shown in the family of units of another. */
export const metersLike = (meters: Decimal, like: Quantity<'length'>): Quantity<'length'> =>
  newQuantity('length', meters, unitShown(like));

/** Rounded to a whole count, as it already is but for a stray last digit. */
export const steadyCount = (q: Quantity<'ratio'>): Quantity<'count'> =>
  wholeNumber(Math.round(q.toNumber(':1')));

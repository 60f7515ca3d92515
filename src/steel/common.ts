/** Small things that several calculations on steel share. */
import { Decimal } from '../quantity/decimal';
import { canonicalValue, newQuantity, type Quantity, unitShown } from '../quantity/quantity';
import { define } from '../reckoning/calculation';
import { type Field, wholeNumber } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';

/** A plain number in a formula: 0.075, or 60000 for a strength in psi. */
export const plainNumber = (value: Decimal | string): Quantity<'count'> =>
  newQuantity('count', new Decimal(value), unitShown(wholeNumber(1)));

/** The number of a quantity in a unit, as an exact decimal. */
export const numberIn = (q: Quantity, oneUnit: Quantity): Decimal =>
  canonicalValue(q).div(canonicalValue(oneUnit));

/** A length from metres, shown in the family of units of another. */
export const metresLike = (metres: Decimal, like: Quantity<'length'>): Quantity<'length'> =>
  newQuantity('length', metres, unitShown(like));

/** Rounded to a whole count, as it already is but for a stray last digit. */
export const steadyCount = (q: Quantity<'ratio'>): Quantity<'count'> =>
  wholeNumber(Math.round(q.toNumber(':1')));

/** Read an input as a calculation reads it, and do something else with it: place bars, draw a plan. */
export function throughDoor<Parsed, T>(
  input: unknown,
  field: () => Field<Parsed>,
  work: (parsed: Parsed, pad: Pad) => T,
): T {
  const out: T[] = [];
  const door = define<unknown, Parsed, Record<string, never>>({
    id: 'places',
    title: 'Places',
    version: 1,
    sources: [],
    input: field,
    reckon: (parsed, pad) => {
      out.push(work(parsed, pad));
      return {};
    },
  });
  door(input);
  return out[0] as T;
}

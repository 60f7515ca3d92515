/**
 * Ratios that the trade writes without a unit, since both sides have the same: water to cement 0.45, Poisson's ratio 0.2,
 * friction 1.5, the runoff coefficient 0.9. Shares that are told in percent are none of them.
 */
import type { Quantity } from '../quantity/quantity';
import { type Field, quantity } from './fields';
import type { Ordinary } from './ordinary';

const BARE = /^\s*(\d{1,2}|\d{0,2}\.\d{1,4})\s*$/;

/** A ratio that may be written as a mere number; `bare` says which numbers are read as such. */
export function bareRatio(
  what: string,
  sign: 'positive' | 'not-negative',
  ordinary: Ordinary,
  bare: RegExp = BARE,
): Field<Quantity<'ratio'>> {
  const field = quantity('ratio', what, sign, ordinary);
  return {
    ...field,
    read: (input, report) =>
      field.read(typeof input === 'string' && bare.test(input) ? `${input.trim()}:1` : input, report),
  };
}

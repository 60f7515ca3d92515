/**
 * Money rounded half-up to the smallest coin of its currency, as people and tax offices round: half a cent goes to the
 * next one, and of what is owed the other way likewise.
 */
import { ROUND_HALF_UP } from './decimal';
import { canonicalValue, newQuantity, type Quantity, unitShown } from './quantity';

/** A quotient may end in 4999… where half was meant: such a last digit is taken off first. */
const GUARD = 30;

/** Rounded half-up to the smallest coin. */
export function toCents(q: Quantity<'money'>): Quantity<'money'> {
  const unit = unitShown(q);
  const value = canonicalValue(q)
    .toDecimalPlaces(unit.places + GUARD, ROUND_HALF_UP)
    .toDecimalPlaces(unit.places, ROUND_HALF_UP);
  return newQuantity('money', value, unit);
}

/**
 * Quantities as plain numbers that can be put into a formula: in SI units, angles in radians, and back.
 *
 * A temperature is a point on a scale, of which only differences are reckoned with: it counts in kelvins from the zero
 * of Fahrenheit.
 */
import { Decimal, ONE, PI } from '../quantity/decimal';
import { CANONICAL_PER_SI, type Dimension } from '../quantity/dimensions';
import { canonicalValue, newQuantity, type Quantity } from '../quantity/quantity';
import type { Unit } from '../quantity/units';

const scaled: Partial<Record<Dimension, { readonly exact: Decimal; readonly binary: number }>> = {};

function scaleOf(d: Dimension): { readonly exact: Decimal; readonly binary: number } {
  let scale = scaled[d];
  if (!scale) {
    const exact =
      d === 'angle'
        ? new Decimal(180).div(PI)
        : new Decimal(d === 'temperature' ? '1.8' : CANONICAL_PER_SI[d]);
    scale = { exact, binary: exact.toNumber() };
    scaled[d] = scale;
  }
  return scale;
}

/** A foot in meters, as it is reckoned with in binary numbers. */
export const FOOT = 0.3048;

/** Strays of binary numbers. */
export const STRAY = 1e-9;

/** The binary number of an amount, as it is kept, in SI units. */
export const siOfAmount = (value: Decimal, d: Dimension): number => value.toNumber() / scaleOf(d).binary;

/** The binary number of a quantity in SI units. */
export const siOf = (q: Quantity): number => siOfAmount(canonicalValue(q), q.dimension);

/** The same exactly. */
export function exactSiOf(q: Quantity): Decimal {
  const { exact } = scaleOf(q.dimension);
  return exact.equals(ONE) ? canonicalValue(q) : canonicalValue(q).div(exact);
}

/** A quantity of a dimension from a number in SI units, shown in a unit. */
export const fromSi = (d: Dimension, si: Decimal, unit: Unit): Quantity =>
  newQuantity(d, si.times(scaleOf(d).exact), unit);

/** What one of a unit is in SI units; a slope of 1:n has no such number, and a temperature none alone. */
export const siOfUnit = (unit: Unit): number => unit.factor.toNumber() / scaleOf(unit.dimension).binary;

/** Round smooth bars, and the ring between one and its hole: `V = π ÷ 4 × (H² − d²) × E`, `M = V × D`. */
import { Decimal, PI } from '../quantity/decimal';
import { constant, density } from '../quantity/make';
import { canonicalValue, type Quantity, quantityOf, systemOfQuantity } from '../quantity/quantity';

type Length = Quantity<'length'>;

/** Density of steel. */
export const STEEL = constant(() => density('490 pcf'));

/** π ÷ 4 × (H² − d²) × E. */
export function ring(outer: Length, inner: Length | undefined, long: Length): Quantity<'volume'> {
  const square = (q: Length): Decimal => canonicalValue(q).pow(2);
  const between = square(outer).minus(inner ? square(inner) : new Decimal(0));
  const value = PI.times(between).times(canonicalValue(long)).div(4);
  return quantityOf('volume', value, systemOfQuantity(outer));
}

/** What a smooth round bar weighs. */
export const roundSteel = (diameter: Length, long: Length): Quantity<'mass'> =>
  ring(diameter, undefined, long).times(STEEL());

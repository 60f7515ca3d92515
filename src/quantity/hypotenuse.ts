/** The long side of a right angle, of two lengths along it. */
import { Decimal } from './decimal';
import { canonicalValue, type Quantity, quantityOf, systemOfQuantity } from './quantity';

type Length = Quantity<'length'>;

/** `√(a² + b²)`, shown in the family of units of the first. */
export const hypotenuse = (a: Length, b: Length): Length =>
  quantityOf('length', Decimal.hypot(canonicalValue(a), canonicalValue(b)), systemOfQuantity(a));

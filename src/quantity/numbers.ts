/** Pure numbers as quantities, for shapes and for equations that powers and exponents stand in. */
import type { Decimal } from './decimal';
import { canonicalValue, newQuantity, type Quantity } from './quantity';
import { type Unit, unitOf } from './units';

/** A number. */
export const pure = (n: Decimal): Quantity<'ratio'> => newQuantity('ratio', n, unitOf('ratio', ':1') as Unit);

/** The number that a ratio is, or that one quantity is in another's. */
export const numberOf = (q: Quantity<'ratio'>): Decimal => canonicalValue(q);

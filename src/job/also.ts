/** What an element takes that no calculation reckons, as whoever drew it up counted it: it comes on the same list. */
import type { Quantity, QuantityInput } from '../quantity/quantity';
import { type Field, fields, label, list } from '../reckoning/fields';
import { type Measured, measureField } from './bid-money';

/** Something that an element takes besides. */
export interface AlsoInput {
  /** What it is, with its size. */
  readonly name: string;
  /** How much one element takes. */
  readonly quantity: QuantityInput<Measured>;
}

/** The same, read. */
export interface Bought {
  readonly name: string;
  readonly quantity: Quantity<Measured>;
}

const MOST_BESIDES = 50;

/** The field of a list of them. */
export const alsoField = (): Field<Bought[]> =>
  list(
    fields({ name: label('name'), quantity: measureField('quantity', false, 'positive', 'count') }),
    0,
    MOST_BESIDES,
  );

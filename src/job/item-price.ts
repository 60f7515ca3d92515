/** A price for a line of a purchase list, as it is written and read. */
import { wrongType } from '../quantity/faults';
import type { Fault } from '../quantity/input-error';
import type { QuantityInput } from '../quantity/quantity';
import { choice, type Field, fields, label, list, maybe, reading, yesOrNo } from '../reckoning/fields';
import type { Read } from '../reckoning/read';
import type { TakeItem } from '../reckoning/takes';
import {
  type Measured,
  measureField,
  moneyField,
  type PriceInput,
  priceField,
  shareField,
} from './bid-money';
import { ALLOWED, TAX_RATE } from './bid-ordinary';
import { ITEMS } from './item-names';

/** A price for a line of the purchase list. */
export interface ItemPrice {
  /** What it is the price of. */
  readonly item: TakeItem;
  /** Of which size or make; by default of every one. A quantity is named as it is on the list: `20 ft`. */
  readonly of?: Readonly<Record<string, string>>;
  /** What the bid calls it; by default what it is, with its size. */
  readonly name?: string;
  /** Unit price: `165 USD` for `1 yd3`. */
  readonly price: PriceInput;
  /** It is billed in whole steps of this. */
  readonly increment?: QuantityInput<Measured>;
  /** The least that is billed. */
  readonly minimum?: QuantityInput<Measured>;
  /** The least charge for it. */
  readonly minimumCharge?: QuantityInput<'money'>;
  /** What is bought beyond the list, as a share. */
  readonly allowance?: QuantityInput<'ratio'>;
  /** What it counts as; by default material, and work of another trade where nobody buys it: `haul-away`, `saw-cut`. */
  readonly kind?: 'material' | 'equipment' | 'subcontract' | 'fee';
  /** Whether tax on purchases is due on it; by default as the tax has it for its kind. */
  readonly taxable?: boolean;
  /** Its own rate of that tax, where it differs. */
  readonly taxRate?: QuantityInput<'ratio'>;
}

/** A price that has been read. */
export type Item = Read<ItemPrice>;

const MOST_SIZES = 10;

/** Sizes by their names. */
export const sizes = (): Field<Readonly<Record<string, string>>> => {
  const each = label('of');
  const read = (input: unknown): Readonly<Record<string, string>> | Fault => {
    if (typeof input !== 'object' || input === null || Array.isArray(input))
      return wrongType('of', 'an object with sizes by their names');
    const entries = Object.entries(input);
    const wrong = entries.some(([, size]) => typeof size !== 'string');
    return wrong || entries.length > MOST_SIZES
      ? wrongType('of', 'an object of a few sizes, each as text')
      : (Object.fromEntries(entries) as Record<string, string>);
  };
  return reading(read, (defs) => ({
    type: 'object',
    additionalProperties: each.json(defs),
    maxProperties: MOST_SIZES,
  }));
};

/** The field of a price for a line of the purchase list. */
const itemPrice = (): Field<Item> =>
  fields({
    item: choice<TakeItem>('item', ITEMS),
    of: maybe(sizes()),
    name: maybe(label('name')),
    price: priceField('price'),
    increment: maybe(measureField('increment')),
    minimum: maybe(measureField('minimum')),
    minimumCharge: maybe(moneyField('minimumCharge')),
    allowance: maybe(shareField('allowance', ALLOWED)),
    kind: maybe(choice('kind', ['material', 'equipment', 'subcontract', 'fee'] as const)),
    taxable: maybe(yesOrNo('taxable')),
    taxRate: maybe(shareField('taxRate', TAX_RATE)),
  }) as Field<Item>;

const MOST_PRICES = 300;

/** The field of a list of them. */
export const itemPrices = (): Field<Item[]> => list(itemPrice(), 0, MOST_PRICES);

/** The purchase list of a job as lines of a bid: prices are put to what is bought, by what it is and what size. */
import { isFaulty, isQuantity, type Quantity, type QuantityInput, readQuantity } from '../quantity/quantity';
import type { Take, TakeItem } from '../reckoning/takes';
import type { EquipmentLineInput, FeeLineInput, MaterialLineInput, SubcontractLineInput } from './bid-lines';
import type { Measured, PriceInput } from './bid-money';
import type { ReckonedJob } from './job-takeoff';
import type { Purchase } from './purchases';

/** A price for a line of the purchase list. */
export interface ItemPrice {
  /** What it is the price of. */
  readonly item: TakeItem;
  /** Of which size or make; by default of every one. A quantity is named as it is on the list: `20 ft`. */
  readonly of?: Readonly<Record<string, string>>;
  /** Unit price: `165 USD` for `1 yd3`. */
  readonly price: PriceInput;
  /** It is billed in whole steps of this. */
  readonly increment?: QuantityInput<Measured>;
  /** What is bought beyond the list, as a share. */
  readonly allowance?: QuantityInput<'ratio'>;
  /** What it counts as; by default material. */
  readonly kind?: 'material' | 'equipment' | 'subcontract' | 'fee';
}

/** Lines of a bid, and what no price was given for. */
export interface PricedPurchases {
  /** Lines for `jobBid`. */
  readonly lines: readonly (MaterialLineInput | EquipmentLineInput | SubcontractLineInput | FeeLineInput)[];
  /** Lines of the purchase list that have no price. */
  readonly unpriced: readonly Purchase[];
}

const textOf = (value: Quantity | string): string => (isQuantity(value) ? value.format() : value);

/** The same size, in whatever units it is written. */
function same(value: Quantity | string | undefined, wanted: string): boolean {
  if (value === undefined) return false;
  if (!isQuantity(value)) return value === wanted;
  const q = readQuantity(wanted, value.dimension, 'size');
  return !isFaulty(q) && value.compareTo(q) === 0;
}

const fits = (line: Purchase, { item, of = {} }: ItemPrice): boolean =>
  line.item === item && Object.entries(of).every(([name, wanted]) => same(line.of[name], wanted));

/** Of several that fit, that which says most of it. */
const priceOf = (line: Purchase, prices: readonly ItemPrice[]): ItemPrice | undefined =>
  prices
    .filter((price) => fits(line, price))
    .sort((a, b) => Object.keys(b.of ?? {}).length - Object.keys(a.of ?? {}).length)[0];

const LONGEST = 60;

/** What a line of the purchase list is called in a bid. */
export const nameOf = ({ item, of }: Purchase): string =>
  [item.replaceAll('-', ' '), ...Object.values(of as Take['of']).map(textOf)].join(', ').slice(0, LONGEST);

/**
 * Put prices to the purchase list of a job. Nothing is priced that no price is given for.
 *
 * @param job - the job, from `reckonJob`
 * @param prices - by item, and by size where they differ
 * @returns lines for `jobBid`, and what has no price
 * @example
 * ```ts
 * import { jobBid, pricedPurchases, reckonJob } from 'flatwork-reckoner';
 *
 * const outline = { shape: 'rectangle', length: '27 ft', width: '12 ft' } as const;
 * const job = reckonJob({
 *   version: 1,
 *   shared: { allowance: '5%' },
 *   order: { increment: '0.25 yd3', truckCapacity: '9 yd3' },
 *   elements: [{ name: 'pad', outline, thickness: '4 in', slab: true }],
 * });
 * const { lines, unpriced } = pricedPurchases(job, [
 *   { item: 'ready-mix', price: { amount: '165 USD', per: '1 yd3' } },
 * ]);
 * unpriced; // []
 * jobBid({ lines }).figures.price.format(); // '701.25 USD'
 * ```
 */
export function pricedPurchases({ takeoff }: ReckonedJob, prices: readonly ItemPrice[]): PricedPurchases {
  const { purchases } = takeoff.figures;
  const lines = purchases.flatMap((line) => {
    const found = priceOf(line, prices);
    if (!found) return [];
    const { price, increment, allowance, kind = 'material' } = found;
    return [
      {
        kind,
        name: nameOf(line),
        quantity: line.quantity as Quantity<Measured>,
        price,
        ...(increment === undefined ? {} : { increment }),
        ...(allowance === undefined ? {} : { allowance }),
      },
    ];
  });
  return { lines, unpriced: purchases.filter((line) => !priceOf(line, prices)) };
}

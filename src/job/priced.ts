/**
 * The purchase list of a job as lines of a bid: prices are put to what is bought, by what it is and what size.
 *
 * A price by weight, length or area takes what is bought in that measure where its sizes tell it, as bars by the ton. Each
 * line says for which elements it is.
 */
import type { Dimension } from '../quantity/dimensions';
import { wrongDimension } from '../quantity/faults';
import { isQuantity, type Quantity } from '../quantity/quantity';
import { isFaulty, readQuantity } from '../quantity/read-quantity';
import { readInput, refuse } from '../reckoning/calculation';
import { parse } from '../reckoning/fields';
import { plainCopy } from '../reckoning/plain';
import type { Take } from '../reckoning/takes';
import { twoPrices } from './bid-faults';
import type {
  EquipmentLineInput,
  FeeLineInput,
  LineElementInput,
  MaterialLineInput,
  SubcontractLineInput,
} from './bid-lines';
import { type Measured, measureField } from './bid-money';
import type { Raw } from './document';
import { ITEM_NAMES, WORK } from './item-names';
import { type ItemPrice, itemPrices } from './item-price';
import type { ReckonedJob } from './job-takeoff';
import { amountIn } from './measures';
import type { Purchase } from './purchases';
import { defined } from './work';

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

/** Whether a line of the list is of this item, and of this size where one is told. */
export const fits = (
  line: Purchase,
  {
    item,
    of = {},
  }: { readonly item: Purchase['item'] | undefined; readonly of?: ItemPrice['of'] | undefined },
): boolean => line.item === item && Object.entries(of).every(([name, wanted]) => same(line.of[name], wanted));

const sizesIn = ({ of = {} }: ItemPrice): number => Object.keys(of).length;

/** A price with its place in the list. */
interface Placed {
  readonly price: ItemPrice;
  readonly index: number;
}

/**
 * Of several that fit, that which says most of the size.
 *
 * @throws {InputError} `repeated-name` where two say as much
 */
function priceOf(line: Purchase, prices: readonly ItemPrice[], at: string): Placed | undefined {
  const fitting = prices
    .map((price, index) => ({ price, index }))
    .filter(({ price }) => fits(line, price))
    .sort((a, b) => sizesIn(b.price) - sizesIn(a.price));
  const [first, second] = fitting;
  if (first && second && sizesIn(first.price) === sizesIn(second.price))
    refuse(`${at}[${second.index}]`, twoPrices(nameOf(line)));
  return first;
}

const LONGEST = 60;

/** What a line of the purchase list is called in a bid. */
export const nameOf = ({ item, of }: Purchase): string =>
  [...(item === 'other' ? [] : [ITEM_NAMES[item]]), ...Object.values(of as Take['of']).map(textOf)]
    .join(', ')
    .slice(0, LONGEST);

type PricedLine = PricedPurchases['lines'][number];

/** A line of a bid with the price that it was made by. */
export interface LineMade {
  readonly line: PricedLine;
  readonly purchase: Purchase;
  /** Where its price stands in the list; nothing where it has none. */
  readonly index: number | undefined;
}

/** The elements that a line is for, and what each takes of it. */
const elementsFor = ({ by }: Purchase): { readonly elements?: LineElementInput[] } => {
  const takers = by.filter(({ quantity }) => quantity.sign() > 0);
  return takers.length > 0 ? { elements: takers as LineElementInput[] } : {};
};

/** What a line counts as where its price does not say: nobody buys earth that is hauled away, so it is no material. */
const kindOf = ({ item }: Purchase): 'material' | 'subcontract' =>
  WORK.has(item) ? 'subcontract' : 'material';

/** The dimension that a price is for. */
const pricedIn = ({ price }: ItemPrice): Dimension =>
  parse(measureField('per', true), price.per).value.dimension;

/**
 * @throws {InputError} `wrong-dimension` for a price by a measure that what is bought has not
 */
function lineBy(purchase: Purchase, { price, index }: Placed, at: string): LineMade {
  const { item: _item, of: _of, name, ...terms } = price;
  const per = pricedIn(price);
  const quantity = amountIn(purchase, per);
  if (!quantity) refuse(`${at}[${index}].price.per`, wrongDimension('per', per, purchase.quantity.dimension));
  const line = {
    kind: kindOf(purchase),
    quantity,
    ...defined(terms as Raw),
    name: name ?? nameOf(purchase),
    ...elementsFor(purchase),
  };
  return { line: line as unknown as PricedLine, purchase, index };
}

/** What no price was given for, as a line that says so. */
const withoutPrice = (purchase: Purchase): LineMade => ({
  line: {
    kind: kindOf(purchase),
    name: nameOf(purchase),
    quantity: purchase.quantity as Quantity<Measured>,
    ...elementsFor(purchase),
  },
  purchase,
  index: undefined,
});

/** A line for each purchase, priced or not. */
export const linesOf = (
  purchases: readonly Purchase[],
  prices: readonly ItemPrice[],
  at: string,
): LineMade[] =>
  purchases.map((purchase) => {
    const found = priceOf(purchase, prices, at);
    return found ? lineBy(purchase, found, at) : withoutPrice(purchase);
  });

/**
 * Put prices to the purchase list of a job. Nothing is priced that no price is given for.
 *
 * @param job - the job, from `reckonJob`
 * @param prices - by item, and by size where they differ
 * @returns lines for `jobBid`, and what has no price
 * @throws {InputError} for prices that cannot be read; `repeated-name` for two that say as much of one line
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
  const given = plainCopy(prices);
  readInput(itemPrices(), given, takeoff.system);
  const made = linesOf(takeoff.figures.purchases, given as readonly ItemPrice[], '');
  return {
    lines: made.flatMap(({ line, index }) => (index === undefined ? [] : [line])),
    unpriced: made.flatMap(({ purchase, index }) => (index === undefined ? [purchase] : [])),
  };
}

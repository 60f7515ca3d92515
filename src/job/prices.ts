/**
 * What a job costs, as its document carries it: prices of what is bought, lines beside them, and what is put on them.
 *
 * It is read with the document, so that a slip is told where it stands, and used by nobody but who bids: no figure and no
 * caution of a take-off comes from it.
 */
import type { Field } from '../reckoning/fields';
import { fields, list, maybe } from '../reckoning/fields';
import type { Read } from '../reckoning/read';
import { isRecord } from '../reckoning/record';
import { besideLines, type JobBidInput, MOST_LINES } from './bid-input';
import { type JobLineInput, lineOfJob } from './bid-lines';
import { takeoffQuantity } from './from-input';
import { type ItemPrice, itemPrices } from './item-price';

/** What a job costs: all of a bid, its lines made of the purchase list and of what stands beside it. */
export interface JobPricesInput extends Omit<JobBidInput, 'lines'> {
  /** Prices of what is bought, by item and by size. */
  readonly items?: readonly ItemPrice[];
  /** Lines beside the purchase list: labor, equipment, fees. */
  readonly lines?: readonly JobLineInput[];
}

/** Prices of a job, read. */
export type JobPrices = Read<JobPricesInput>;

/** The fields of the prices of a job. */
export const jobPrices = (): Field<JobPrices> =>
  fields({
    items: maybe(itemPrices()),
    lines: maybe(list(lineOfJob(), 0, MOST_LINES)),
    ...besideLines(),
  }) as Field<JobPrices>;

/** Prices as they were given; what is out of the ordinary in one is told with the bid, and to nobody else. */
export function pricesOfJob(): Field<unknown> {
  const { read } = jobPrices();
  return {
    read: (input, report) => {
      read(input, (remark, path) => {
        if (!('ordinary' in remark)) report(remark, path);
      });
      return input;
    },
    // What a bid has is described once, by its own calculation; this is what only a job has.
    json: (defs) => ({
      type: 'object',
      'x-input-of': 'job-bid',
      properties: {
        items: itemPrices().json(defs),
        lines: {
          type: 'array',
          maxItems: MOST_LINES,
          items: { type: 'object', properties: { from: takeoffQuantity().json(defs) } },
        },
      },
    }),
  };
}

/** A document without its money; what is no document stays as it is. */
export function withoutMoney(document: unknown): unknown {
  if (!isRecord(document) || document['prices'] === undefined) return document;
  const { prices: _prices, ...rest } = document;
  return rest;
}

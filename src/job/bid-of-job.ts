/**
 * The bid of a job by the prices in its document: the purchase list priced, the lines beside it, and what is put on them.
 *
 * What is bought and has no price is a line without one, so that the bid says what it leaves out.
 */
import { InputError } from '../quantity/input-error';
import { refuse } from '../reckoning/calculation';
import { plainCopy } from '../reckoning/plain';
import type { Result } from '../reckoning/result';
import { noPrices } from './bid-faults';
import type { JobBidInput } from './bid-input';
import type { BidLineInput, JobLineInput } from './bid-lines';
import type { JobInput, Raw } from './document';
import { type JobBidFigures, jobBid } from './job-bid';
import { type ReckonedJob, type ReckonJobOptions, reckonJob } from './job-takeoff';
import { type LineMade, linesOf } from './priced';
import { type JobPricesInput, withoutMoney } from './prices';
import type { Purchase } from './purchases';
import type { JobTakeoffFigures } from './takeoff-figures';
import { migrateJob } from './versions';
import { defined } from './work';

/** What {@link bidOfJob} may be told. */
export type BidOfJobOptions = ReckonJobOptions;

/** A job with its bid. */
export interface BidOfJob {
  /** The job, with its take-off and every part; no money is in it. */
  readonly job: ReckonedJob;
  /** The bid. */
  readonly bid: Result<JobBidFigures>;
  /** What the bid was given: every line of the purchase list, then those beside it. */
  readonly input: JobBidInput;
  /** What is bought and has no price; each stands in the bid as a line without one. */
  readonly unpriced: readonly Purchase[];
}

/** The loads of all orders. */
const loadsOf = ({ mixes }: JobTakeoffFigures) => mixes.flatMap(({ loads }) => loads ?? []);

/** A line as the bid reads it; small loads are those of the job. */
function lineBeside(line: JobLineInput, figures: JobTakeoffFigures): BidLineInput {
  const loads = loadsOf(figures);
  if (line.kind !== 'short-load' || loads.length === 0) return line as BidLineInput;
  return { ...line, loads: line.loads ?? loads };
}

const LINE = /^lines\[(\d+)\](?:\.(.*))?$/;

/** Where in the document something is that the bid was given. */
function placeOf(path: string, made: readonly LineMade[]): string {
  const [, number, member] = LINE.exec(path) ?? [];
  if (number === undefined) return path === '' ? 'prices' : `prices.${path}`;
  const rest = member === undefined ? '' : `.${member}`;
  const own = made[Number(number)];
  if (!own) return `prices.lines[${Number(number) - made.length}]${rest}`;
  return own.index === undefined
    ? 'prices.items'
    : `prices.items[${own.index}]${member === 'quantity' ? '.price.per' : rest}`;
}

/** Reckon the bid, and tell what is wrong where it stands in the document. */
function bidBy(
  input: JobBidInput,
  made: readonly LineMade[],
  system: ReckonJobOptions,
): Result<JobBidFigures> {
  const attempt = jobBid.attempt(input, system);
  if (attempt.ok) return attempt.result;
  throw new InputError(
    attempt.error.issues.map((issue) => ({ ...issue, path: placeOf(issue.path, made) })) as never,
  );
}

/**
 * The bid of a job by the prices in its document: what is bought at its price, the lines beside it, overhead, profit and
 * tax.
 *
 * @param document - the job document with its `prices`
 * @param options - the family of units; and the job `from` before an edit, so that only what changed is reckoned
 * @returns the job, its bid, what the bid was given, and what has no price
 * @throws {InputError} as {@link jobTakeoff} and {@link jobBid} do, by the place in the document; `missing` without
 * `prices`; `repeated-name` for two prices that say as much of one line
 * @example
 * ```ts
 * import { bidOfJob } from 'flatwork-reckoner';
 *
 * const outline = { shape: 'rectangle', length: '27 ft', width: '12 ft' } as const;
 * const { bid, unpriced } = bidOfJob({
 *   version: 1,
 *   shared: { allowance: '5%' },
 *   order: { increment: '0.25 yd3', truckCapacity: '9 yd3' },
 *   elements: [{ name: 'pad', outline, thickness: '4 in', slab: true }],
 *   prices: {
 *     items: [{ item: 'ready-mix', price: { amount: '165 USD', per: '1 yd3' } }],
 *     lines: [{ kind: 'labor', name: 'place', hours: '16 h', wage: { amount: '30 USD', per: '1 h' } }],
 *     profit: { markup: '20%' },
 *   },
 * });
 * unpriced; // []
 * bid.figures.cost.format(); // '1181.25 USD'
 * bid.figures.price.format(); // '1417.50 USD'
 * ```
 */
export function bidOfJob(document: JobInput, options: BidOfJobOptions = {}): BidOfJob {
  const job = reckonJob(document, options);
  const { figures, system } = job.takeoff;
  const { prices: given } = migrateJob(document);
  if (given === undefined || given === null) refuse('prices', noPrices());
  const { items = [], lines = [], ...terms } = defined(plainCopy(given) as Raw) as JobPricesInput;
  const made = linesOf(figures.purchases, items, 'prices.items');
  const input = {
    ...terms,
    lines: [...made.map(({ line }) => line), ...lines.map((line) => lineBeside(line, figures))],
  } as unknown as JobBidInput;
  return Object.freeze({
    job,
    bid: bidBy(input, made, { system }),
    input,
    unpriced: made.flatMap(({ purchase, index }) => (index === undefined ? [purchase] : [])),
  });
}

type Stock = { readonly price?: unknown };

/** Stock without what it costs; a plan for the least cost becomes one for the least length. */
function withoutCosts(cutting: NonNullable<JobInput['cutting']>): JobInput['cutting'] {
  if (typeof cutting !== 'object') return cutting;
  const { stock, aim, ...rest } = cutting as { readonly stock?: unknown; readonly aim?: unknown };
  const bare = Array.isArray(stock)
    ? stock.map((each: Stock) => {
        if (typeof each !== 'object' || each === null) return each;
        const { price: _price, ...kept } = each;
        return kept;
      })
    : stock;
  return defined({ ...rest, stock: bare, aim: aim === 'least-cost' ? 'least-length' : aim });
}

/**
 * A job document without all that tells money, for a file that a crew or a supplier gets. Everything else stays as it
 * is: the same take-off comes of it. Only bars that were cut for the least cost, by prices of their stock, are cut for
 * the least length of stock from then on.
 *
 * @param document - a job document of any version, as it comes from a file
 * @returns the same job in the newest version, without `prices` and the prices of stock; what was given stays as it is
 * @throws {InputError} as {@link migrateJob} does
 * @example
 * ```ts
 * import { withoutPrices } from 'flatwork-reckoner';
 *
 * const job = { version: 1, elements: [{ name: 'pad', slab: true }], prices: { profit: { markup: '20%' } } };
 * 'prices' in withoutPrices(job); // false
 * ```
 */
export function withoutPrices(document: unknown): JobInput {
  const job = withoutMoney(migrateJob(document)) as JobInput;
  const { cutting } = job;
  return cutting === undefined || cutting === null
    ? job
    : { ...job, cutting: withoutCosts(cutting) as never };
}

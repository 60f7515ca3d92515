/**
 * The bid of a job by the prices in its document: the purchase list priced, the lines beside it, and what is put on them.
 *
 * What is bought and has no price is a line without one, so that the bid says what it leaves out; so is a line by a
 * quantity of the take-off that is not known yet.
 */
import type { Dimension } from '../quantity/dimensions';
import { giveOneOf } from '../quantity/faults';
import { InputError } from '../quantity/input-error';
import { constant } from '../quantity/make';
import { readInput, refuse } from '../reckoning/calculation';
import { list } from '../reckoning/fields';
import type { Read } from '../reckoning/read';
import type { Result } from '../reckoning/result';
import { noPrices } from './bid-faults';
import { type JobBidInput, MOST_LINES } from './bid-input';
import {
  type BidLineInput,
  type JobLineInput,
  type JobSoldLineInput,
  type Labor,
  lineOfJob,
} from './bid-lines';
import type { JobInput, Raw } from './document';
import { checkElementNames, isAwaited, takenOff } from './from-takeoff';
import { WORK } from './item-names';
import { type JobBidFigures, jobBid } from './job-bid';
import { pricesOf, type ReckonedJob, type ReckonJobOptions, reckonJob } from './job-takeoff';
import { fits, type LineMade, linesOf } from './priced';
import { type JobPricesInput, withoutMoney } from './prices';
import type { Purchase } from './purchases';
import type { JobTakeoffFigures } from './takeoff-figures';
import { migrateJob, ordinary } from './versions';
import { defined, type Place, under } from './work';

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
  /** Names of lines that go by something of which this job has none; they stand in no bid. */
  readonly unused: readonly string[];
}

/** A line as the bid is given it, and where in the document its members stand. */
interface Made {
  readonly line: BidLineInput;
  readonly place: Place;
}

/** What is bought; a quantity that does not go with its price is told at the price. */
const bought = ({ line, index }: LineMade): Made => ({
  line,
  place: (member) => {
    if (index === undefined) return 'prices.items';
    return under(`prices.items[${index}]`)(member === 'quantity' ? 'price.per' : member);
  },
});

/** Who reads the lines of the prices of a job, which stand in no other input. */
const LINES = /*#__PURE__*/ constant(() => list(lineOfJob(), 0, MOST_LINES));

type ReadLine = Read<JobLineInput>;

/** The dimension that a line is done or sold by. */
function soldIn(line: ReadLine): Dimension {
  const { price, production } = line as Partial<Labor>;
  return production?.output.dimension ?? price?.per.dimension ?? 'volume';
}

/** A line with its quantity out of the take-off; nothing where the job has none of that. */
function fromTakeoff(
  line: JobLineInput,
  read: ReadLine,
  job: ReckonedJob,
  at: string,
): BidLineInput | undefined {
  const { from: _, ...rest } = line as JobSoldLineInput;
  const { from } = read as Read<JobSoldLineInput>;
  if (!from) return line as BidLineInput;
  for (const name of ['quantity', 'amount', 'hours'] as const)
    if ((read as Partial<Labor>)[name]) refuse(`${at}.from`, giveOneOf([name, 'from']));
  const taken = takenOff(from, job, soldIn(read), `${at}.from`);
  if (taken) return defined({ ...rest, ...taken, elements: rest.elements ?? taken.elements }) as never;
  if (!isAwaited(from, job)) return undefined;
  // Nothing is known of it yet: it stands in the bid as what is still to come.
  const { kind, name, option } = rest;
  return defined({ kind, name, option }) as never;
}

/** The loads of all orders. */
const loadsOf = ({ mixes }: JobTakeoffFigures) => mixes.flatMap(({ loads }) => loads ?? []);

/** A charge for small loads goes by those of the job. */
function withLoads(line: JobLineInput, { takeoff }: ReckonedJob): JobLineInput {
  const loads = loadsOf(takeoff.figures);
  return line.kind !== 'short-load' || loads.length === 0 ? line : { ...line, loads: line.loads ?? loads };
}

/** Lines beside the purchase list as the bid reads them; nothing for those of which the job has none. */
function beside(lines: readonly JobLineInput[], job: ReckonedJob): (Made | undefined)[] {
  const read = readInput(LINES(), lines, job.takeoff.system);
  return lines.map((given, i) => {
    const at = `prices.lines[${i}]`;
    const names = (given.elements ?? []).map(({ element }) => element);
    checkElementNames(names, job, (k) => `${at}.elements[${k}].element`);
    const line = fromTakeoff(withLoads(given, job), read[i] as ReadLine, job, at);
    if (!line) return undefined;
    const isTaken = 'from' in given;
    return { line, place: (member) => under(at)(isTaken && member === 'quantity' ? 'from' : member) };
  });
}

/** Whether a line beside the list is for this work, which nobody buys, wherever it is done. */
const isDoneBy =
  ({ purchase }: LineMade) =>
  (line: JobLineInput): boolean => {
    const { from, option } = line as JobSoldLineInput;
    if (!from || option !== undefined || !WORK.has(purchase.item) || !fits(purchase, from as never))
      return false;
    return purchase.by.every(({ element }) => from.elements?.includes(element) ?? true);
  };

const LINE = /^lines\[(\d+)\](?:\.(.*))?$/;

/** Where in the document something is that the bid was given. */
function placeOf(path: string, made: readonly Made[]): string {
  const [, number, member] = LINE.exec(path) ?? [];
  if (number === undefined) return path === '' ? 'prices' : `prices.${path}`;
  return (made[Number(number)] as Made).place(member ?? '');
}

/** Reckon the bid, and tell what is wrong where it stands in the document. */
function bidBy(input: JobBidInput, made: readonly Made[], system: ReckonJobOptions): Result<JobBidFigures> {
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
  const given = pricesOf(job);
  if (given === undefined || given === null) refuse('prices', noPrices());
  const { items = [], lines = [], ...terms } = defined(ordinary(given) as Raw) as JobPricesInput;
  const others = beside(lines, job);
  const priced = linesOf(figures.purchases, items, 'prices.items').filter(
    (one) => one.index !== undefined || !lines.some(isDoneBy(one)),
  );
  const made = [...priced.map(bought), ...others.flatMap((one) => one ?? [])];
  const input = { ...terms, lines: made.map(({ line }) => line) } as unknown as JobBidInput;
  return Object.freeze({
    job,
    bid: bidBy(input, made, { system }),
    input,
    unpriced: priced.flatMap(({ purchase, index }) => (index === undefined ? [purchase] : [])),
    unused: others.flatMap((one, i) => (one ? [] : [(lines[i] as JobLineInput).name])),
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

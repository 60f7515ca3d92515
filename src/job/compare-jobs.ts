/** What changed between two jobs: concrete, every line of the purchase list, money, and what there is to watch out for. */
import { keyOf } from '../quantity/amount-key';
import type { Quantity } from '../quantity/quantity';
import type { Caution, Result } from '../reckoning/result';
import type { BidOfJob } from './bid-of-job';
import type { JobBidFigures } from './job-bid';
import type { ReckonedJob } from './job-takeoff';
import { lineKey, type Purchase } from './purchases';

/** A quantity before and after. */
export interface QuantityChange {
  /** Before; left out where there was none. */
  readonly before?: Quantity;
  /** After; left out where there is none. */
  readonly after?: Quantity;
  /** After less before. */
  readonly change: Quantity;
}

/** A line of the purchase list that changed. */
export interface PurchaseChange extends QuantityChange {
  /** What it is. */
  readonly item: Purchase['item'];
  /** What tells it from others of its kind. */
  readonly of: Purchase['of'];
}

/** Concrete of an element that changed. */
export interface ElementChange extends QuantityChange {
  /** Its name. */
  readonly element: string;
}

/** A line of the bid that changed. */
export interface LineChange extends QuantityChange {
  /** Its name. */
  readonly name: string;
}

/** What changed in money. */
export interface MoneyChanges {
  /** The total of the bid, where it changed. */
  readonly total?: QuantityChange;
  /** Cost, where it changed. */
  readonly cost?: QuantityChange;
  /** Lines whose amount changed, that are new, or gone. */
  readonly lines: readonly LineChange[];
}

/** What changed between two jobs. */
export interface JobChanges {
  /** Concrete in all, where it changed. */
  readonly concrete?: QuantityChange;
  /** Elements whose concrete changed, that are new, or gone. */
  readonly elements: readonly ElementChange[];
  /** Lines of the purchase list that changed. */
  readonly purchases: readonly PurchaseChange[];
  /** What changed in money; left out for jobs without their bids. */
  readonly money?: MoneyChanges;
  /** Cautions that were not raised before. */
  readonly raised: readonly Caution[];
  /** Cautions that are raised no more. */
  readonly settled: readonly Caution[];
}

const asVolume = (q: Quantity): Quantity<'volume'> => q as Quantity<'volume'>;

/** Nothing where both are the same. */
function changeOf(before: Quantity | undefined, after: Quantity | undefined): QuantityChange | undefined {
  const some = after ?? before;
  if (!some || (before && after && asVolume(before).equals(after))) return undefined;
  const none = asVolume(some).minus(asVolume(some));
  return {
    ...(before ? { before } : {}),
    ...(after ? { after } : {}),
    change: asVolume(after ?? none).minus(asVolume(before ?? none)),
  };
}

/** Values of two maps that differ, in the order of the first, then what is new. */
function changed(
  before: ReadonlyMap<string, Quantity>,
  after: ReadonlyMap<string, Quantity>,
): (readonly [key: string, change: QuantityChange])[] {
  const keys = new Set([...before.keys(), ...after.keys()]);
  return [...keys].flatMap((key) => {
    const change = changeOf(before.get(key), after.get(key));
    return change ? [[key, change] as const] : [];
  });
}

const linesOf = ({ takeoff }: ReckonedJob): Map<string, Purchase> =>
  new Map(takeoff.figures.purchases.map((line) => [lineKey(line), line]));

const quantities = (lines: ReadonlyMap<string, Purchase>): Map<string, Quantity> =>
  new Map([...lines].map(([key, { quantity }]) => [key, quantity]));

function purchaseChanges(before: ReckonedJob, after: ReckonedJob): PurchaseChange[] {
  const [old, now] = [linesOf(before), linesOf(after)];
  return changed(quantities(old), quantities(now)).map(([key, change]) => {
    const { item, of } = (now.get(key) ?? old.get(key)) as Purchase;
    return { item, of, ...change };
  });
}

const concreteBy = ({ takeoff }: ReckonedJob): Map<string, Quantity> =>
  new Map(takeoff.figures.elements.flatMap(({ name, concrete }) => (concrete ? [[name, concrete]] : [])));

const cautionKey = ({ code, says, params, input }: Caution): string => keyOf([code, says, params, input]);

/** Cautions of the one that the other has not. */
function only(of: ReckonedJob, not: ReckonedJob): Caution[] {
  const others = new Set(not.takeoff.cautions.map(cautionKey));
  return of.takeoff.cautions.filter((caution) => !others.has(cautionKey(caution)));
}

/** Amounts by line, of lines of one name together. */
function amounts({ lines }: JobBidFigures): Map<string, Quantity> {
  const byName = new Map<string, Quantity<'money'>>();
  for (const { name, amount } of lines) byName.set(name, byName.get(name)?.plus(amount) ?? amount);
  return byName;
}

const some = <K extends string>(name: K, change: QuantityChange | undefined): { [N in K]?: QuantityChange } =>
  (change ? { [name]: change } : {}) as { [N in K]?: QuantityChange };

/**
 * What two bids differ by.
 *
 * @throws {InputError} `currency-mismatch` for bids of two currencies
 */
function moneyChanges(
  { figures: old }: Result<JobBidFigures>,
  { figures: now }: Result<JobBidFigures>,
): MoneyChanges {
  return {
    ...some('total', changeOf(old.total, now.total)),
    ...some('cost', changeOf(old.cost, now.cost)),
    lines: changed(amounts(old), amounts(now)).map(([name, change]) => ({ name, ...change })),
  };
}

/** A job, or a job with its bid. */
export type ComparedJob = ReckonedJob | BidOfJob;

const jobOf = (of: ComparedJob): ReckonedJob => ('job' in of ? of.job : of);

const bidOf = (of: ComparedJob): Result<JobBidFigures> | undefined => ('bid' in of ? of.bid : undefined);

/**
 * What changed between two jobs: in quantities, and in money where both come with their bids.
 *
 * @param before - the job as it was, from `reckonJob`, or from `bidOfJob` with its bid
 * @param after - the job as it is
 * @returns concrete in all and by element, lines of the purchase list, cautions, and the total, the cost and the lines of
 * the bid, each only where it changed
 * @throws {InputError} `currency-mismatch` for bids of two currencies
 * @example
 * ```ts
 * import { compareJobs, reckonJob } from 'flatwork-reckoner';
 *
 * const pad = { name: 'pad', outline: { shape: 'rectangle', length: '12 ft', width: '8 ft' }, slab: true } as const;
 * const before = reckonJob({ version: 1, elements: [{ ...pad, thickness: '4 in' }] });
 * const after = reckonJob({ version: 1, elements: [{ ...pad, thickness: '5 in' }] }, { from: before });
 * compareJobs(before, after).concrete?.change.format(); // '0.30 yd3'
 * ```
 */
export function compareJobs(before: ComparedJob, after: ComparedJob): JobChanges {
  const [old, now] = [jobOf(before), jobOf(after)];
  const [oldBid, newBid] = [bidOf(before), bidOf(after)];
  const concrete = changeOf(old.takeoff.figures.concrete, now.takeoff.figures.concrete);
  return Object.freeze({
    ...some('concrete', concrete),
    elements: changed(concreteBy(old), concreteBy(now)).map(([element, change]) => ({ element, ...change })),
    purchases: purchaseChanges(old, now),
    ...(oldBid && newBid ? { money: moneyChanges(oldBid, newBid) } : {}),
    raised: only(now, old),
    settled: only(old, now),
  });
}

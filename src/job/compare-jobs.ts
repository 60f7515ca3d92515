/** What changed between two jobs: concrete, every line of the purchase list, and what there is to watch out for. */
import { keyOf } from '../quantity/amount-key';
import type { Quantity } from '../quantity/quantity';
import type { Caution } from '../reckoning/result';
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

/** What changed between two jobs. */
export interface JobChanges {
  /** Concrete in all, where it changed. */
  readonly concrete?: QuantityChange;
  /** Elements whose concrete changed, that are new, or gone. */
  readonly elements: readonly ElementChange[];
  /** Lines of the purchase list that changed. */
  readonly purchases: readonly PurchaseChange[];
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

/**
 * What changed between two jobs, in quantities.
 *
 * @param before - the job as it was
 * @param after - the job as it is
 * @returns concrete in all and by element, lines of the purchase list, and cautions, each only where it changed
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
export function compareJobs(before: ReckonedJob, after: ReckonedJob): JobChanges {
  const concrete = changeOf(before.takeoff.figures.concrete, after.takeoff.figures.concrete);
  return Object.freeze({
    ...(concrete ? { concrete } : {}),
    elements: changed(concreteBy(before), concreteBy(after)).map(([element, change]) => ({
      element,
      ...change,
    })),
    purchases: purchaseChanges(before, after),
    raised: only(after, before),
    settled: only(before, after),
  });
}

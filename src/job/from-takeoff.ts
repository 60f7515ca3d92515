/**
 * Quantities that lines of the prices of a job have from its take-off: what is bought of an item, or a figure of a part.
 *
 * Sums only, of all elements or of those named; of an element of which there are several, as many times. Each line
 * says what each element takes of it.
 */
import { unknownName } from '../grade/faults';
import type { Dimension } from '../quantity/dimensions';
import { giveOneOf, missing } from '../quantity/faults';
import { isQuantity, type Quantity } from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import { figureAt } from '../reckoning/takes';
import type { LineElementInput } from './bid-lines';
import type { Measured } from './bid-money';
import type { TakeoffQuantity } from './from-input';
import { ITEM_PARTS } from './item-parts';
import type { ReckonedJob } from './job-takeoff';
import { amountIn } from './measures';
import { fits } from './priced';
import type { PurchaseShare } from './purchases';

type Some = Quantity<'volume'>;

/** A quantity of a take-off, and what each element takes of it. */
export interface TakenOff {
  readonly quantity: Quantity<Measured>;
  readonly elements: readonly LineElementInput[];
}

const sum = (quantities: readonly Quantity[]): Some | undefined =>
  (quantities as readonly Some[]).reduce<Some | undefined>((all, q) => all?.plus(q) ?? q, undefined);

/** A line of the purchase list shared out in another measure, as its elements take it. */
function sharesIn(by: readonly PurchaseShare[], amount: Quantity): PurchaseShare[] {
  const all = sum(by.map(({ quantity }) => quantity));
  if (!all || all.sign() <= 0) return [];
  return by.map(({ element, quantity }) => ({
    element,
    quantity: (amount as Some).times((quantity as Some).over(all) as Quantity<'ratio'>),
  }));
}

/** What each element takes of an item. */
function ofItem(from: TakeoffQuantity, { takeoff }: ReckonedJob, dimension: Dimension): PurchaseShare[] {
  const { elements, purchases } = takeoff.figures;
  if (from.item === 'concrete')
    return elements.flatMap(({ name, concrete }) =>
      concrete ? [{ element: name, quantity: concrete }] : [],
    );
  const lines = purchases.filter((line) => fits(line, from));
  // In that measure all of them or none: a sum has one.
  const told = lines.map((line) => amountIn(line, dimension));
  const isTold = told.every((amount) => amount !== undefined);
  return lines.flatMap((line, i) => sharesIn(line.by, (isTold && told[i]) || line.quantity));
}

/** Names of the figures that are quantities. */
const quantitiesOf = (figures: object): string[] =>
  Object.entries(figures).flatMap(([name, figure]) => (isQuantity(figure) ? [name] : []));

/**
 * What a figure of a part comes to in each element.
 *
 * @throws {InputError} `unknown-name` for a figure that none of these parts has
 */
function ofPart({ part, figure = '' }: TakeoffQuantity, job: ReckonedJob, at: string): PurchaseShare[] {
  const counts = new Map(job.takeoff.figures.elements.map(({ name, count }) => [name, count]));
  const parts = job.parts.filter((one) => one.part === part && one.element !== undefined);
  const shares = parts.flatMap(({ element = '', result }) => {
    const q = figureAt(result.figures, figure);
    const n = counts.get(element);
    return isQuantity(q) && n ? [{ element, quantity: (q as Some).times(n) }] : [];
  });
  const [one] = parts;
  if (one && shares.length === 0)
    refuse(`${at}.figure`, unknownName(figure, quantitiesOf(one.result.figures)));
  return shares;
}

/** Names of elements that the job has not are refused. */
export function checkElementNames(
  names: readonly string[],
  job: ReckonedJob,
  at: (i: number) => string,
): void {
  const known = job.takeoff.figures.elements.map(({ name }) => name);
  names.forEach((name, i) => {
    if (!known.includes(name)) refuse(at(i), unknownName(name, known));
  });
}

/** One way to say what it is, whole. */
function checkWay({ item, part, figure }: TakeoffQuantity, at: string): void {
  if ((item === undefined) === (part === undefined)) refuse(at, giveOneOf(['item', 'part']));
  if (part !== undefined && figure === undefined) refuse(`${at}.figure`, missing('figure', 'area'));
  if (part === undefined && figure !== undefined) refuse(`${at}.part`, missing('part', 'slab'));
}

/**
 * A quantity of the take-off in a dimension, where its sizes tell it in that; nothing where the job has none of it.
 *
 * @throws {InputError} `unknown-name` of an element or a figure; `give-one-of` item and part; `missing`
 */
export function takenOff(
  from: TakeoffQuantity,
  job: ReckonedJob,
  dimension: Dimension,
  at: string,
): TakenOff | undefined {
  const { elements } = from;
  checkWay(from, at);
  checkElementNames(elements ?? [], job, (i) => `${at}.elements[${i}]`);
  const all = from.item === undefined ? ofPart(from, job, at) : ofItem(from, job, dimension);
  const own = all.filter(
    ({ element, quantity }) => quantity.sign() > 0 && (elements?.includes(element) ?? true),
  );
  const quantity = sum(own.map((share) => share.quantity));
  return quantity && { quantity, elements: own as readonly LineElementInput[] };
}

/** Whether something of the job that this goes by is not known yet: only what waits is waiting. */
export function isAwaited({ item, part, elements }: TakeoffQuantity, { takeoff }: ReckonedJob): boolean {
  const parts: readonly string[] = item === undefined ? [part ?? ''] : ITEM_PARTS[item];
  return takeoff.figures.missing.some(
    (lack) =>
      parts.includes(lack.part) && (lack.element === undefined || (elements?.includes(lack.element) ?? true)),
  );
}

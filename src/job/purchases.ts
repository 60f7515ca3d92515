/**
 * The purchase list of a job: what its parts take, merged by kind and by what tells one kind from another.
 *
 * Concrete is what is ordered, by mix; bars of a size are cut by one plan for the whole job, which never takes more
 * than the parts would each for themselves.
 */

import { tubesFor } from '../concrete/form-tubes';
import { keyOf, keyOnce } from '../quantity/amount-key';
import { isQuantity, type Quantity } from '../quantity/quantity';
import { wholeNumber } from '../reckoning/fields';
import { figureAt, type Take, type TakeCut } from '../reckoning/takes';
import { timesUp } from '../reckoning/whole';
import type { BarCuttingFigures } from '../steel/cutting-figures';
import type { Raw } from './document';
import { type KeptEarth, keepEarth } from './kept-earth';
import type { Kept } from './layers';
import { type Bench, under, type WorkedElement, type WorkedPart } from './work';

/** Where a purchase goes. */
export interface PurchaseShare {
  /** The element that it is for. */
  readonly element: string;
  /** How much of it. */
  readonly quantity: Quantity;
}

/** One line of the purchase list. */
export interface Purchase {
  /** What it is. */
  readonly item: Take['item'];
  /** What tells it from others of its kind. */
  readonly of: Take['of'];
  /** How much to buy. */
  readonly quantity: Quantity;
  /** The elements that it is for, with what each takes for itself. */
  readonly by: readonly PurchaseShare[];
}

/** A line with the pieces that are cut from it. */
interface Line extends Purchase {
  readonly cuts: readonly TakeCut[];
  /** What is laid of rolls, which all elements share. */
  readonly laid: Quantity<'area'> | undefined;
}

const timesCount = <Q extends Quantity>(quantity: Q, count: Quantity<'count'> | undefined): Q =>
  (count ? (quantity as Quantity<'volume'>).times(count) : quantity) as unknown as Q;

/** Of these a part may take less than it comes to. */
const EARTH: readonly string[] = ['base', 'haul-away'];

/** The figure that says how much is laid of what comes in rolls. */
const LAID: Readonly<Record<string, string>> = { geotextile: 'geotextile.area', 'vapor-retarder': 'sheet' };

/** How much one element lays of what comes in rolls; less where gravel beside it has its cloth already. */
function laidBy(
  { item }: Take,
  part: WorkedPart,
  element: WorkedElement['element'],
  kept: Kept,
): Line['laid'] {
  const figure = LAID[item];
  const one = figure === undefined ? undefined : figureAt(part.result.figures, figure);
  if (!isQuantity(one)) return undefined;
  const all = timesCount(one as Quantity<'area'>, element.count);
  const share = kept.get(part);
  return share ? all.times(share) : all;
}

/** What an element takes besides, all of its kind. */
const besides = ({ name: element, count, also = [] }: WorkedElement['element']): Line[] =>
  also.map(({ name, quantity: one }) => {
    const quantity = timesCount(one as Quantity, count);
    return { item: 'other', of: { name }, quantity, by: [{ element, quantity }], cuts: [], laid: undefined };
  });

/** What the parts of one element take of one thing, all of its kind. */
const takenBy = ({ element, parts }: WorkedElement, kept: Kept): Line[] =>
  parts.flatMap((part) =>
    part.result.takes.map((take) => {
      const { item, of, quantity, cuts = [] } = take;
      const whole = timesCount(quantity, element.count);
      const share = EARTH.includes(item) ? kept.get(part) : undefined;
      const all = share ? (whole as Quantity<'mass'>).times(share) : whole;
      return {
        item,
        of,
        quantity: all,
        by: [{ element: element.name, quantity: all }],
        cuts: cuts.map(({ length, count }) => ({ length, count: timesCount(count, element.count) })),
        laid: laidBy(take, part, element, kept),
      };
    }),
  );

const plus = (a: Quantity, b: Quantity): Quantity => (a as Quantity<'volume'>).plus(b as Quantity<'volume'>);

const linesOf = (worked: WorkedElement, kept: Kept): Line[] => [
  ...takenBy(worked, kept),
  ...besides(worked.element),
];

/** Shares of one element in one line are one. */
function joinShares(shares: readonly PurchaseShare[]): PurchaseShare[] {
  const byElement = new Map<string, Quantity>();
  for (const { element, quantity } of shares) {
    const before = byElement.get(element);
    byElement.set(element, before ? plus(before, quantity) : quantity);
  }
  return [...byElement].map(([element, quantity]) => ({ element, quantity }));
}

/** The same for lines that are bought as one: by kind and size, in whatever units and order that is written. */
export const lineKey = ({ item, of, quantity }: Purchase): string =>
  `${item} ${quantity.dimension} ${keyOnce(of, (sizes) => Object.entries(sizes).sort(([a], [b]) => (a < b ? -1 : 1)))}`;

/** Lines of a kind as one, in the order in which they first come. */
function merge(lines: readonly Line[]): Line[] {
  const merged = new Map<string, Line>();
  for (const line of lines) {
    const key = lineKey(line);
    const before = merged.get(key);
    merged.set(
      key,
      before
        ? {
            ...before,
            quantity: plus(before.quantity, line.quantity),
            by: joinShares([...before.by, ...line.by]),
            cuts: [...before.cuts, ...line.cuts],
            laid: before.laid && line.laid && before.laid.plus(line.laid),
          }
        : line,
    );
  }
  return [...merged.values()];
}

/** Pieces by length, each length once. */
function piecesOf(cuts: readonly TakeCut[]): Raw[] {
  const byLength = new Map<string, { length: TakeCut['length']; count: number }>();
  for (const { length, count } of cuts) {
    const key = keyOf(length);
    const before = byLength.get(key)?.count ?? 0;
    byLength.set(key, { length, count: before + count.toNumber('each') });
  }
  return [...byLength.values()].map(({ length, count }) => ({ length, count }));
}

/** What a thing is sold in, by the name under which it tells it. */
const SOLD_IN = ['container', 'bag', 'cartridge'] as const;

/** The size of what a line is sold in, by its name. */
export function soldIn({
  of,
  quantity,
}: Purchase): { readonly name: string; readonly size: Quantity } | undefined {
  for (const name of SOLD_IN) {
    const size = of[name];
    if (isQuantity(size) && size.dimension === quantity.dimension) return { name, size };
  }
  return undefined;
}

/** What is sold in pails or bags is bought in whole ones, those of all elements together. */
function inWholeOnes(line: Purchase): Purchase {
  const { quantity } = line;
  const sold = soldIn(line)?.size;
  return sold ? { ...line, quantity: (quantity as Quantity<'mass'>).upTo(sold as Quantity<'mass'>) } : line;
}

/** What a line becomes, and the plan that it was cut by. */
interface Cut {
  readonly lines: Purchase[];
  readonly part?: WorkedPart;
}

/** Whole rolls of what all elements lay, never more than each for itself. */
function rollsOf({ of, quantity, laid }: Line): Quantity {
  const { rollWidth: w, rollLength: l } = of as { readonly [name: string]: Quantity<'length'> };
  if (!laid || !w || !l) return quantity;
  return wholeNumber(timesUp(laid, w.times(l)));
}

/** Tubes for the pieces of all elements, each height by itself, never more than each element for itself. */
function tubesTogether({ of, cuts }: Line): Quantity {
  const pieces = piecesOf(cuts) as unknown as { length: TakeCut['length']; count: number }[];
  const stock = of['stockLength'] as Quantity<'length'>;
  return wholeNumber(pieces.reduce((sum, { length, count }) => sum + tubesFor(count, stock, length), 0));
}

/** A line as it is bought, whatever is cut from it. */
const uncut = (line: Line): Cut => {
  const { item, of, by } = line;
  return { lines: [{ item, of, quantity: item === 'form-tube' ? tubesTogether(line) : rollsOf(line), by }] };
};

/** Bars of a size cut by one plan, unless that takes more than each element for itself. */
function cutTogether(line: Line, cutting: Raw, bench: Bench): Cut {
  const alone = uncut(line);
  const { item, of, quantity, by, cuts } = line;
  if (cuts.length === 0) return alone;
  const input = { pieces: piecesOf(cuts), stock: [{ length: of['stockLength'] }], ...cutting };
  const part = bench.reckon(
    { element: undefined, part: 'cutting', id: 'bar-cutting' },
    input,
    under('cutting'),
  );
  if (!part) return alone;
  const { bars, order } = part.result.figures as BarCuttingFigures;
  if (cutting['stock'] === undefined && bars.greaterThan(quantity as Quantity<'count'>)) return alone;
  return {
    part,
    lines: order.map((each) => ({ item, of: { ...of, stockLength: each.length }, quantity: each.bars, by })),
  };
}

/** Bars that were laid out for one element alone need no plan of the job. */
const isShared = ({ item, by }: Line, count: (name: string) => number, cutting: Raw): boolean =>
  item === 'bar' &&
  (by.length > 1 || by.some(({ element }) => count(element) > 1) || Object.keys(cutting).length > 0);

/** What the elements take, merged; concrete is left to its orders. */
export function purchasesOf(
  elements: readonly WorkedElement[],
  kept: Kept,
  cutting: Raw,
  bench: Bench,
): { readonly lines: Purchase[]; readonly parts: WorkedPart[]; readonly earth?: KeptEarth } {
  const counts = new Map(
    elements.map(({ element: { name, count } }) => [name, count?.toNumber('each') ?? 1]),
  );
  const all = merge(elements.flatMap((each) => linesOf(each, kept))).filter(
    ({ item }) => item !== 'concrete',
  );
  const { lines, ...earth } = keepEarth(all);
  const cut = merge(lines).map((line) => {
    const shared = isShared(line, (name) => counts.get(name) ?? 1, cutting);
    return shared ? cutTogether(line, cutting, bench) : uncut(line);
  });
  return {
    lines: cut.flatMap(({ lines }) => lines.map(inWholeOnes)),
    parts: cut.flatMap(({ part }) => (part ? [part] : [])),
    ...earth,
  };
}

/** The bar list of mats and footings: bars that are alike under one mark, by size in all, and what is bought for them. */

import { Decimal } from '../quantity/decimal';
import { canonicalValue, type Quantity, quantityOf, systemOfQuantity, unitShown } from '../quantity/quantity';
import { wholeNumber } from '../reckoning/fields';
import { type Limit, withinLimit } from '../reckoning/limits';
import type { Pad } from '../reckoning/pad';
import { say } from '../reckoning/words';
import type { CutProblem } from '../solve/stock/fill';
import { firstFitBars } from '../solve/stock/first-fit';
import { solveCutting } from '../solve/stock/search';
import { ALL_BARS, type AnyBarSize, bySize, weightOf } from './bars';
import { metersLike } from './common';
import type { MatBar } from './mat';
import type { Laid } from './mat-ground';
import { STRAY } from './mat-laps';
import type { ParsedMat } from './rebar-fields';
import type { BarMark, MarkUse, MatLayer, RebarListFigures, SizeTotal } from './rebar-types';

type Length = Quantity<'length'>;
type Count = Quantity<'count'>;

/** Bars alike, before they have a mark. */
export interface Alike {
  readonly layer: MatLayer | undefined;
  readonly use: MarkUse;
  readonly bar: AnyBarSize;
  readonly shape: BarMark['shape'];
  readonly length: Length;
  count: number;
}

const sizeFor = (mat: ParsedMat, use: MatBar['use']): AnyBarSize =>
  use === 'across' ? (mat.barAcross ?? mat.bar) : mat.bar;

const LETTERS: Record<MarkUse, string> = {
  along: 'L',
  across: 'C',
  edge: 'E',
  corner: 'K',
  dowel: 'D',
  nosing: 'N',
  tread: 'T',
  starter: 'S',
  tie: 'H',
};

/** `BL3`: bottom mat, along, the third of its lengths. */
const prefixOf = ({ layer, use }: Alike): string =>
  `${layer === 'bottom' ? 'B' : layer === 'top' ? 'T' : ''}${LETTERS[use]}`;

/** The mark of each placed bar of a mat needs its group, so groups are kept by key. */
export const keyOf = (mat: ParsedMat, { use, bent, steps }: Pick<MatBar, 'use' | 'bent' | 'steps'>): string =>
  `${mat.layer} ${use} ${sizeFor(mat, use)} ${bent ? 'follows-edge' : 'straight'} ${steps}`;

/** So many cutting steps, as bars are written on a list. */
export const lengthOf = (steps: number, step: Length): Length =>
  step.times(wholeNumber(steps)).in(unitShown(step).system === 'metric' ? 'm' : 'ft-in');

/** The bars of the mats, those alike together. */
export function grouped(laid: readonly Laid[], step: Length): Map<string, Alike> {
  const groups = new Map<string, Alike>();
  for (const { mat, placed } of laid) {
    for (const alike of placed.counts) {
      const { use, steps, bent, count } = alike;
      const key = keyOf(mat, alike);
      const known = groups.get(key);
      if (known) known.count += count;
      else {
        groups.set(key, {
          layer: mat.layer,
          use,
          bar: sizeFor(mat, use),
          shape: bent ? 'follows-edge' : 'straight',
          length: lengthOf(steps, step),
          count,
        });
      }
    }
  }
  return groups;
}

const ORDER: readonly MarkUse[] = [
  'along',
  'across',
  'edge',
  'corner',
  'dowel',
  'nosing',
  'tread',
  'starter',
  'tie',
];

const rank = ({ layer, use }: Alike): number =>
  ORDER.indexOf(use) + (layer === 'bottom' ? 0 : layer === 'top' ? 10 : 20);

/** What tells two bars of one use and length apart: the order in which they were found must not. */
const nameOf = ({ bar, shape }: Alike): string => `${ALL_BARS.indexOf(bar) + ALL_BARS.length} ${shape}`;

/** In the order of the list, each with its mark. */
export function marked(groups: readonly Alike[]): Map<Alike, string> {
  const order = [...groups].sort(
    (a, b) => rank(a) - rank(b) || b.length.compareTo(a.length) || (nameOf(a) < nameOf(b) ? -1 : 1),
  );
  const counts = new Map<string, number>();
  return new Map(
    order.map((group) => {
      const prefix = prefixOf(group);
      const n = (counts.get(prefix) ?? 0) + 1;
      counts.set(prefix, n);
      return [group, `${prefix}${n}`];
    }),
  );
}

/** The bar list. */
export function markFigures(groups: readonly Alike[]): BarMark[] {
  return [...marked(groups)].map(([group, mark]) => {
    const { layer, use, bar, shape, length: l } = group;
    const count = wholeNumber(group.count);
    const totalLength = l.times(count);
    return {
      mark,
      ...(layer ? { layer } : {}),
      use,
      bar,
      shape,
      length: l,
      count,
      totalLength,
      weight: totalLength.times(weightOf(bar)),
    };
  });
}

/** What the bars of a list are bought by. */
export interface Buying {
  readonly stock: Length;
  readonly step: Length;
  readonly laps: ReadonlyMap<AnyBarSize, Length>;
}

/** Above this many distinct lengths drops are used first-fit. */
const SEARCHED_LENGTHS = 40;
/** A tenth of a second on a slow machine, and less in most lists. */
const EFFORT = 3e7;

interface Bought {
  readonly bars: number;
  readonly least: number;
}

/** The fewest bars that these pieces are cut from, and a number that no plan goes below. */
function buy(bars: readonly BarMark[], { stock, step }: Buying): Bought {
  const each = canonicalValue(step);
  // As lines are cut, where a hair of a step is nothing.
  const capacity = canonicalValue(stock).div(each).plus(STRAY).floor().toNumber();
  const counts = new Map<number, number>();
  for (const { length: l, count } of bars) {
    const rounded = canonicalValue(l).div(each).toDecimalPlaces(6).ceil().toNumber();
    // A piece is rounded up and the stock down: one that is as long as the stock is held by it all the same.
    const steps = l.greaterThan(stock) ? rounded : Math.min(rounded, capacity);
    counts.set(steps, (counts.get(steps) ?? 0) + canonicalValue(count).toNumber());
  }
  const list = [...counts].sort((a, b) => b[0] - a[0]);
  const problem: CutProblem = {
    weights: list.map(([steps]) => steps),
    demand: list.map(([, n]) => n),
    capacities: [capacity],
    costs: [1],
  };
  if (list.length <= SEARCHED_LENGTHS) {
    const { plan, bound } = solveCutting(problem, EFFORT);
    return { bars: plan.cost, least: bound };
  }
  const all = list.reduce((sum, [steps, n]) => sum + steps * n, 0);
  return { bars: firstFitBars(list, capacity), least: Math.ceil(all / capacity) };
}

/** A sum of more products than this is no line that anybody checks. */
const MOST_TERMS = 8;

/** How the length of a size comes about. */
function noteLength(bar: AnyBarSize, own: readonly BarMark[], T: Length, pad: Pad): void {
  if (own.length > MOST_TERMS) return;
  const alone = own.length === 1;
  const values: Record<string, Quantity> = {};
  const products = own.map(({ count, length: l }, i) => {
    const [n, each] = alone ? ['n', 'l'] : [`n${i + 1}`, `l${i + 1}`];
    values[n as string] = count;
    values[each as string] = l;
    return `${n} × ${each}`;
  });
  pad.step(say`length of ${{ bar }}`, `T = ${products.join(' + ')}`, values, T);
}

/** Where the bars that are bought are the fewest that so much length can be cut from. */
function noteLeast(bar: AnyBarSize, { bars }: Bought, T: Length, S: Length, pad: Pad): void {
  const least = canonicalValue(T).div(canonicalValue(S)).ceil();
  if (!least.equals(bars)) return;
  pad.step(
    say`${{ bar }} to buy, the fewest for that length`,
    'n = ceil(T ÷ S)',
    { T, S },
    wholeNumber(bars),
  );
}

/** Length, weight and bars to buy by size. */
function sizeTotals(bars: readonly BarMark[], buying: Buying, pad: Pad): SizeTotal[] {
  return bySize(new Set(bars.map((b) => b.bar))).map((bar): SizeTotal => {
    const own = bars.filter((b) => b.bar === bar);
    const T = own.reduce((sum, b) => sum.plus(b.totalLength), nothing(bars));
    noteLength(bar, own, T, pad);
    const u = weightOf(bar);
    const weight = pad.step(say`weight of ${{ bar }}`, 'M = T × u', { T, u }, T.times(u));
    const bought = buy(own, buying);
    const { stock: stockLength, laps } = buying;
    noteLeast(bar, bought, T, stockLength, pad);
    return {
      bar,
      barsToBuy: wholeNumber(bought.bars),
      stockLength,
      leastBars: wholeNumber(bought.least),
      length: T,
      weight,
      lap: laps.get(bar) as Length,
    };
  });
}

const nothing = ([first]: readonly BarMark[]): Length =>
  metersLike(new Decimal(0), (first as BarMark).length);

/** Counts together. */
export const added = (counts: readonly Count[]): Count => counts.reduce((a, b) => a.plus(b), wholeNumber(0));

/** Lengths and kinds of bar that one list tells apart. */
export const MARK_LIMIT: Limit = { of: 'the list of bars in different lengths', most: 3000 };

/** The figures of a bar list, but for what holds it. */
export function listFigures(
  groups: readonly Alike[],
  buying: Buying,
  pad: Pad,
): Omit<RebarListFigures, 'ties' | 'tieWire' | 'supports' | 'cover'> {
  withinLimit(MARK_LIMIT, groups.length, 'cutTo');
  const bars = markFigures(groups);
  const sizes = sizeTotals(bars, buying, pad);
  const zero = nothing(bars);
  return {
    barsToBuy: added(sizes.map((s) => s.barsToBuy)),
    bars,
    sizes,
    pieces: added(bars.map((b) => b.count)),
    totalLength: sizes.reduce((sum, s) => sum.plus(s.length), zero),
    weight: sizes.reduce(
      (sum, s) => sum.plus(s.weight),
      quantityOf('mass', new Decimal(0), systemOfQuantity(zero)),
    ),
  };
}

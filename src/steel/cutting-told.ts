/** A plan that was found, as it is told: bars that are cut alike together, what is kept, what to order. */

import { Decimal } from '../quantity/decimal';
import { newQuantity, type Quantity, unitShown } from '../quantity/quantity';
import { wholeNumber } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import type { Pattern } from '../solve/stock/fill';
import type { Batch, Solved } from '../solve/stock/search';
import * as cautions from './cautions';
import type { BarCuttingFigures, Cut, CutBars, LengthValue, StockOrder } from './cutting-figures';
import type { Piece, Stock } from './cutting-problem';

type Length = Quantity<'length'>;

export const times = (q: Length, n: number): Length => q.times(wholeNumber(n));

export function total(lengths: readonly Length[], like: Length): Length {
  return lengths.reduce((a, b) => a.plus(b), like.minus(like));
}

/** Drop of a bar: what the pieces and one kerf for each leave, or nothing where the last kerf runs out. */
function dropOf(stock: Stock, pieces: readonly Piece[], pattern: Pattern, kerf: Length): Length {
  const used = total(
    pieces.map((p, i) => times(p.length.plus(kerf), pattern[i] as number)),
    stock.length,
  );
  const left = stock.length.minus(used);
  return left.sign() < 0 ? left.minus(left) : left;
}

interface Sheet {
  readonly pieces: readonly Piece[];
  readonly stock: readonly Stock[];
  readonly kerf: Length;
}

export function planFigure({ pieces, stock, kerf }: Sheet, batches: readonly Batch[]): CutBars[] {
  const alike = new Map<string, Batch>();
  for (const batch of batches) {
    const key = `${batch.stock} ${batch.pattern.join()}`;
    alike.set(key, { ...batch, bars: batch.bars + (alike.get(key)?.bars ?? 0) });
  }
  return [...alike.values()]
    .sort((a, b) => b.bars - a.bars)
    .map(({ stock: s, pattern, bars }) => {
      const bought = stock[s] as Stock;
      return {
        stock: bought.length,
        bars: wholeNumber(bars),
        cuts: pieces.flatMap((p, i) => {
          const n = pattern[i] as number;
          return n > 0 ? [{ length: p.length, count: wholeNumber(n) }] : [];
        }),
        drop: dropOf(bought, pieces, pattern, kerf).in(bought.length.shownIn ?? bought.length.unit),
      };
    });
}

export function keptOf(plan: readonly CutBars[], keepFrom: Length | undefined): Cut[] {
  if (!keepFrom) return [];
  const kept = new Map<string, Cut>();
  for (const { drop, bars } of plan) {
    if (drop.lessThan(keepFrom) || drop.sign() === 0) continue;
    const known = kept.get(drop.toString());
    kept.set(drop.toString(), { length: drop, count: known ? known.count.plus(bars) : bars });
  }
  return [...kept.values()].sort((a, b) => b.length.compareTo(a.length));
}

export function orderOf(stock: readonly Stock[], batches: readonly Batch[]): StockOrder[] {
  return stock.flatMap(({ length: l, price }, i) => {
    const n = batches.reduce((s, b) => s + (b.stock === i ? b.bars : 0), 0);
    if (n === 0) return [];
    const bars = wholeNumber(n);
    return [{ length: l, bars, ...(price ? { cost: price.times(bars) } : {}) }];
  });
}

export function valuesOfLengths(
  { pieces }: Sheet,
  { proof, top, bottom }: Solved,
  demand: readonly number[],
  perUnit: Decimal,
): LengthValue[] {
  // The values of lengths in the last program, scaled so that together they come to the bound that they prove.
  const all = proof.reduce((s, w, i) => s.plus(new Decimal(w).times(demand[i] as number)), new Decimal(0));
  if (all.isZero()) return [];
  const factor = new Decimal(top.toString()).div(new Decimal(bottom.toString())).div(all).times(perUnit);
  return pieces.map((p, i) => ({
    length: p.length,
    value: ratioOf(new Decimal(proof[i] as number).times(factor)),
  }));
}

const ratioOf = (value: Decimal): Quantity<'ratio'> =>
  newQuantity('ratio', value, unitShown(wholeNumber(1).over(wholeNumber(1))));

export function note(figures: BarCuttingFigures, pad: Pad): void {
  const { order, lengthBought: B, lengthUsed: U, lengthKept: K, lengthLost, waste } = figures;
  const values: Record<string, Quantity> = {};
  const terms = order.map(({ length: l, bars }, i) => {
    values[`n${i + 1}`] = bars;
    values[`S${i + 1}`] = l;
    return `n${i + 1} × S${i + 1}`;
  });
  pad.step('length bought', `B = ${terms.join(' + ')}`, values, B);
  pad.step('length lost', 'X = B − U − K', { B, U, K }, lengthLost);
  pad.step('waste', 'W = X ÷ B', { X: lengthLost, B }, waste);
  const { reached: R, lowerBound: b, gap } = figures;
  pad.step('reached above the lower bound', 'g = R − b', { R, b }, gap);
  if (!figures.proved) pad.caution(cautions.notProved(b, R));
}

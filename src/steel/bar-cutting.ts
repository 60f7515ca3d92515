/**
 * Pieces cut from stock bars: the fewest or cheapest bars, with a proof.
 *
 * Pieces fit a bar when their lengths with a saw kerf between them do. The plan comes from column
 * generation, rounding and search (`cut-search`). The lower bound is proved apart from the plan: each
 * length is given a worth such that no bar can hold more worth than it costs; then no plan can cost
 * less than all the pieces are worth.
 */

import { Decimal } from '../quantity/decimal';
import * as sharedFaults from '../quantity/faults';
import { readMoney } from '../quantity/money';
import { paired } from '../quantity/paired';
import {
  canonicalValue,
  isFaulty,
  newQuantity,
  type Quantity,
  type QuantityInput,
  unitShown,
} from '../quantity/quantity';
import { type Calculation, define, refuse } from '../reckoning/calculation';
import {
  choice,
  type Field,
  fields,
  list,
  maybe,
  quantity,
  quantitySchema,
  reading,
  whole,
  wholeNumber,
} from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { CLOSED_FORM, COMMON_PRACTICE } from '../reckoning/source';
import { say } from '../reckoning/words';
import type { CutProblem, Pattern } from '../solve/stock/fill';
import { type Batch, firstFitPlan, type Solved, solveCutting } from '../solve/stock/search';
import * as cautions from './cautions';
import * as faults from './faults';
import { KEPT, KERF, PIECE, STOCK_LENGTH } from './mat-ordinary';

/** Pieces of one length. */
export interface PieceInput {
  /** Length of each piece as cut. */
  readonly length: QuantityInput<'length'>;
  /** How many. */
  readonly count: number;
}

/** A length that bars are sold in. */
export interface StockInput {
  /** Length of a bar as bought. */
  readonly length: QuantityInput<'length'>;
  /** Price of one bar; for all stock lengths or for none. */
  readonly price?: QuantityInput<'money'>;
}

/** What a cutting plan is to keep low. */
export type CuttingAim = 'fewest-bars' | 'least-length' | 'least-cost';

/** Input of {@link barCutting}. */
export interface BarCuttingInput {
  /** The cut list. */
  readonly pieces: readonly PieceInput[];
  /** The lengths that can be bought. */
  readonly stock: readonly StockInput[];
  /** Lost in each cut; by default nothing, as with a shear. */
  readonly kerf?: QuantityInput<'length'>;
  /** Drops at least this long are kept; by default all are scrap. */
  readonly keepFrom?: QuantityInput<'length'>;
  /** By default the cost where prices are given, else the bars, or the length with several stocks. */
  readonly aim?: CuttingAim;
}

/** Bars of one length to buy. */
export interface StockOrder {
  /** Length of a bar as bought. */
  readonly length: Quantity<'length'>;
  /** How many to buy. */
  readonly bars: Quantity<'count'>;
  /** What they cost, where prices are given. */
  readonly cost?: Quantity<'money'>;
}

/** Pieces of one length cut from a bar, or drops of one length. */
export interface Cut {
  /** Length of each piece or drop. */
  readonly length: Quantity<'length'>;
  /** How many: out of one bar in a plan, in all where drops are kept. */
  readonly count: Quantity<'count'>;
}

/** Bars that are cut alike. */
export interface CutBars {
  /** Length of the bars as bought. */
  readonly stock: Quantity<'length'>;
  /** How many bars are cut this way. */
  readonly bars: Quantity<'count'>;
  /** What is cut from each of them, longest first. */
  readonly cuts: readonly Cut[];
  /** What is left of each, after the kerfs. */
  readonly drop: Quantity<'length'>;
}

/** The value of a length in the proof, as part of what the plan keeps low. */
export interface LengthValue {
  /** Length of the piece. */
  readonly length: Quantity<'length'>;
  /** In bars, in meters, or in units of money. */
  readonly value: Quantity<'ratio'>;
}

/** Figures of {@link barCutting}. */
export interface BarCuttingFigures {
  /** Bars to buy. */
  readonly bars: Quantity<'count'>;
  /** The same by stock length. */
  readonly order: readonly StockOrder[];
  /** What they cost, where prices are given. */
  readonly cost?: Quantity<'money'>;
  /** The bars to buy end to end. */
  readonly lengthBought: Quantity<'length'>;
  /** The pieces end to end. */
  readonly lengthUsed: Quantity<'length'>;
  /** Drops that are kept, end to end; nothing where `keepFrom` is left out. */
  readonly lengthKept: Quantity<'length'>;
  /** Kerfs and drops that are not kept. */
  readonly lengthLost: Quantity<'length'>;
  /** Lost over bought. */
  readonly waste: Quantity<'ratio'>;
  /** Drops that are kept, longest first. */
  readonly kept: readonly Cut[];
  /** How to cut, bar by bar. */
  readonly plan: readonly CutBars[];
  /** What the plan keeps low, given or by default. */
  readonly aim: CuttingAim;
  /** What the plan comes to in what it keeps low. */
  readonly reached: Quantity;
  /** No plan whatever comes to less than this. */
  readonly lowerBound: Quantity;
  /** `reached` less `lowerBound`: nothing when the plan is proved the best. */
  readonly gap: Quantity;
  /** True when no better plan exists. */
  readonly proved: boolean;
  /** What longest-first fitting alone would come to. */
  readonly firstFit: Quantity;
  /** The proof, a value of each length: no bar holds more value than it costs, and all pieces come to the bound. */
  readonly lengthValues: readonly LengthValue[];
}

type Length = Quantity<'length'>;

interface Parsed {
  readonly pieces: readonly { readonly length: Length; readonly count: Quantity<'count'> }[];
  readonly stock: readonly { readonly length: Length; readonly price: Quantity<'money'> | undefined }[];
  readonly kerf: Length | undefined;
  readonly keepFrom: Length | undefined;
  readonly aim: CuttingAim | undefined;
}

/** Distinct lengths that one plan is made for. */
const LENGTH_LIMIT = 200;
const PIECE_LIMIT = 1_000_000;
const STOCK_LIMIT = 20;
const NO_KERF = /*#__PURE__*/ paired('length', '0 in', '0 mm');
const WHEEL = /*#__PURE__*/ paired('length', '1/8 in', '3 mm');

interface Line {
  readonly length: Length;
  readonly value: Decimal;
}

interface Piece extends Line {
  readonly count: number;
}

interface Stock extends Line {
  readonly price: Quantity<'money'> | undefined;
}

/** Equal lengths together, longest first. */
function piecesOf({ pieces }: CutList): Piece[] {
  const byLength = new Map<string, Piece>();
  for (const { length: l, count } of pieces) {
    const value = canonicalValue(l);
    const known = byLength.get(value.toString());
    const n = canonicalValue(count).toNumber() + (known?.count ?? 0);
    byLength.set(value.toString(), { length: known?.length ?? l, value, count: n });
  }
  return [...byLength.values()].sort((a, b) => b.value.comparedTo(a.value));
}

/** Shortest first; of equal lengths the cheapest. */
function stockOf({ stock }: CutList): Stock[] {
  const priced = stock.filter(({ price }) => price).length;
  if (priced > 0 && priced < stock.length) refuse('stock', faults.giveForAll('a price', 'stock lengths'));
  const byLength = new Map<string, Stock>();
  stock.forEach(({ length: l, price }, i) => {
    if (price && unitShown(price) !== unitShown(stock[0]?.price ?? price)) {
      refuse(
        `stock[${i}].price`,
        sharedFaults.currencyMismatch(unitShown(price).id, unitShown(stock[0]?.price ?? price).id),
      );
    }
    const value = canonicalValue(l);
    const known = byLength.get(value.toString());
    if (known?.price && price && !price.lessThan(known.price)) return;
    byLength.set(value.toString(), { length: l, value, price });
  });
  return [...byLength.values()].sort((a, b) => a.value.comparedTo(b.value));
}

const common = (a: bigint, b: bigint): bigint => (b === 0n ? a : common(b, a % b));

/** Decimals as whole multiples of their greatest common step. */
function stepped(values: readonly Decimal[]): bigint[] {
  const places = Math.max(0, ...values.map((v) => v.decimalPlaces()));
  const whole = values.map((v) => BigInt(v.times(new Decimal(10).pow(places)).toFixed(0)));
  const step = whole.reduce(common, 0n) || 1n;
  return whole.map((w) => w / step);
}

/** Tables and sums of steps stay exact up to this. */
const STEP_LIMIT = 2n ** 31n;

interface Steps {
  readonly weights: number[];
  readonly capacities: number[];
}

/** Lengths in whole steps: rounded so that the plan holds, and so that the bound holds. */
interface Scaled {
  readonly plan: Steps;
  /** Left out where nothing had to be rounded. */
  readonly bound?: Steps;
}

function scaled(pieces: readonly Piece[], stock: readonly Stock[], kerf: Decimal): Scaled {
  const values = [...pieces.map((p) => p.value.plus(kerf)), ...stock.map((s) => s.value.plus(kerf))];
  const steps = stepped(values);
  const split = (numbers: number[]): Steps => ({
    weights: numbers.slice(0, pieces.length),
    capacities: numbers.slice(pieces.length),
  });
  if (steps.every((n) => n <= STEP_LIMIT)) return { plan: split(steps.map(Number)) };
  const greatest = Decimal.max(...values);
  const units = values.map((v) => v.times(STEP_LIMIT.toString()).div(greatest));
  const rounded = (up: boolean): Steps => {
    const { weights, capacities } = split(units.map((u) => Number(u.toFixed(0, up ? 0 : 1))));
    const others = split(units.map((u) => Number(u.toFixed(0, up ? 1 : 0))));
    return {
      weights: weights.map((w) => Math.max(1, w)),
      capacities: up
        ? others.capacities
        : others.capacities.map((c, i) => Math.max(c, capacities[i] as number)),
    };
  };
  return { plan: rounded(true), bound: rounded(false) };
}

interface Costs {
  readonly units: number[];
  /** What one cost unit is. */
  readonly show: (units: number | bigint) => Quantity;
  readonly perUnit: Decimal;
}

const COST_LIMIT = 10n ** 14n;

function costsOf(aim: CuttingAim, stock: readonly Stock[]): Costs {
  const first = stock[0] as Stock;
  const made = (q: Quantity, values: readonly Decimal[]): Costs => {
    const units = stepped(values);
    if (units.some((u) => u > COST_LIMIT)) refuse('stock', sharedFaults.tooManyDigits('the stock'));
    const perUnit = (values[0] as Decimal).div((units[0] as bigint).toString());
    const show = (n: number | bigint): Quantity =>
      newQuantity(
        q.dimension,
        new Decimal(n.toString()).times(values[0] as Decimal).div((units[0] as bigint).toString()),
        unitShown(q),
      );
    return { units: units.map(Number), show, perUnit };
  };
  if (aim === 'least-length')
    return made(
      first.length,
      stock.map((s) => s.value),
    );
  if (aim === 'least-cost') {
    const prices = stock.flatMap(({ price }) => (price ? [price] : []));
    const money = prices[0];
    if (!money || prices.length < stock.length)
      return refuse('stock', faults.giveForAll('a price', 'stock lengths'));
    return made(money, prices.map(canonicalValue));
  }
  return { units: stock.map(() => 1), show: (n) => wholeNumber(Number(n)), perUnit: new Decimal(1) };
}

function aimOf(input: Parsed, stock: readonly Stock[], pad: Pad): CuttingAim {
  if (input.aim) return input.aim;
  const aim = stock[0]?.price ? 'least-cost' : stock.length > 1 ? 'least-length' : 'fewest-bars';
  pad.assume({
    name: 'aim',
    value: aim,
    because: stock[0]?.price ? 'prices are given' : 'no prices are given',
    override: 'Give aim: fewest-bars, least-length or least-cost',
    source: COMMON_PRACTICE,
  });
  return aim;
}

function kerfOf(input: Parsed, pad: Pad): Length {
  if (input.kerf) return input.kerf;
  pad.assume({
    name: 'kerf',
    value: NO_KERF,
    because: 'a shear loses nothing',
    override: say`Give kerf for a saw; an abrasive wheel takes about ${{ wheel: WHEEL }}`,
    source: COMMON_PRACTICE,
  });
  return NO_KERF.as(pad.system);
}

const times = (q: Length, n: number): Length => q.times(wholeNumber(n));

function total(lengths: readonly Length[], like: Length): Length {
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

function planFigure({ pieces, stock, kerf }: Sheet, batches: readonly Batch[]): CutBars[] {
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

function keptOf(plan: readonly CutBars[], keepFrom: Length | undefined): Cut[] {
  if (!keepFrom) return [];
  const kept = new Map<string, Cut>();
  for (const { drop, bars } of plan) {
    if (drop.lessThan(keepFrom) || drop.sign() === 0) continue;
    const known = kept.get(drop.toString());
    kept.set(drop.toString(), { length: drop, count: known ? known.count.plus(bars) : bars });
  }
  return [...kept.values()].sort((a, b) => b.length.compareTo(a.length));
}

function orderOf(stock: readonly Stock[], batches: readonly Batch[]): StockOrder[] {
  return stock.flatMap(({ length: l, price }, i) => {
    const n = batches.reduce((s, b) => s + (b.stock === i ? b.bars : 0), 0);
    if (n === 0) return [];
    const bars = wholeNumber(n);
    return [{ length: l, bars, ...(price ? { cost: price.times(bars) } : {}) }];
  });
}

function valuesOfLengths(
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

function note(figures: BarCuttingFigures, pad: Pad): void {
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

function checkLongest(pieces: readonly Piece[], stock: readonly Stock[]): void {
  const [longest, most] = [pieces[0] as Piece, stock.at(-1) as Stock];
  if (longest.value.greaterThan(most.value)) {
    refuse(
      'stock',
      faults.stockTooShort(
        `the longest piece of ${longest.length.format()}`,
        'buy longer bars, or split the piece in two with a lap',
      ),
    );
  }
}

/** What is cut from what, read. */
export type CutList = Pick<Parsed, 'pieces' | 'stock'> & Partial<Pick<Parsed, 'keepFrom'>>;

/**
 * A plan for a cut list: of bars, boards, or whatever is bought in lengths.
 *
 * @param effort - table cells that the search may touch; as many as half a second takes by default
 * @throws {InputError} `stock-too-short` for a piece longer than every stock
 */
export function cutFrom(list: CutList, kerf: Length, aim: CuttingAim, effort?: number): BarCuttingFigures {
  const [pieces, stock] = [piecesOf(list), stockOf(list)];
  checkLongest(pieces, stock);
  const costs = costsOf(aim, stock);
  const demand = pieces.map((p) => p.count);
  const steps = scaled(pieces, stock, canonicalValue(kerf));
  const problem: CutProblem = { ...steps.plan, demand, costs: costs.units };
  const solved = solveCutting(problem, effort);
  const proof = steps.bound ? solveCutting({ ...problem, ...steps.bound }, effort) : solved;
  const sheet = { pieces, stock, kerf };
  const plan = planFigure(sheet, solved.plan.batches);
  const order = orderOf(stock, solved.plan.batches);
  const kept = keptOf(plan, list.keepFrom);
  const like = (stock[0] as Stock).length;
  const lengthBought = total(
    order.map((o) => o.length.times(o.bars)),
    like,
  );
  const lengthUsed = total(
    pieces.map((p) => times(p.length, p.count)),
    like,
  );
  const lengthKept = total(
    kept.map((k) => k.length.times(k.count)),
    like,
  );
  const lengthLost = lengthBought.minus(lengthUsed).minus(lengthKept);
  const reached = costs.show(solved.plan.cost);
  const lowerBound = costs.show(proof.bound);
  const cost = order.reduce<Quantity<'money'> | undefined>(
    (s, o) => (s && o.cost ? s.plus(o.cost) : o.cost),
    undefined,
  );
  return {
    bars: order.reduce((s, o) => s.plus(o.bars), wholeNumber(0)),
    order,
    ...(cost ? { cost } : {}),
    lengthBought,
    lengthUsed,
    lengthKept,
    lengthLost,
    waste: lengthLost.over(lengthBought).in('%'),
    kept,
    plan,
    aim,
    reached,
    lowerBound,
    gap: reached.minus(lowerBound),
    proved: solved.plan.cost <= proof.bound,
    firstFit: costs.show(firstFitPlan(problem, demand).cost),
    lengthValues: valuesOfLengths(sheet, proof, demand, costs.perUnit),
  };
}

function reckon(input: Parsed, pad: Pad): BarCuttingFigures {
  const stock = stockOf(input);
  checkLongest(piecesOf(input), stock);
  const kerf = kerfOf(input, pad);
  const figures = cutFrom(input, kerf, aimOf(input, stock, pad));
  note(figures, pad);
  return figures;
}

const price = (): Field<Quantity<'money'>> =>
  reading(
    (input) => {
      const found = readMoney(input, 'price');
      return isFaulty(found) || found.sign() > 0 ? found : sharedFaults.notPositive('price');
    },
    (defs) => quantitySchema(defs, 'money'),
  );

/**
 * Stock bars for a cut list: the fewest or cheapest, with a proof.
 *
 * @param input - pieces, stock lengths, kerf, what to keep low
 * @returns bars to buy, how to cut them, drops and waste, and a lower bound that no plan can go under
 * @throws {InputError} `stock-too-short` for a piece longer than every stock; `give-for-all` for prices
 * of some stocks only; `too-many` lengths; lengths that cannot be read or are not greater than zero
 * @source closed form: each figure is checked by adding up. The bound is linear programming duality
 * @example
 * ```ts
 * import { barCutting } from 'flatwork-reckoner';
 *
 * const { figures } = barCutting({
 *   pieces: [
 *     { length: '10 ft', count: 70 },
 *     { length: '8 ft', count: 15 },
 *     { length: '4 ft', count: 25 },
 *     { length: '3 ft', count: 50 },
 *   ],
 *   stock: [{ length: '20 ft' }],
 * });
 * figures.bars.format(); // '54 each'
 * figures.lowerBound.format(); // '54 each'
 * figures.proved; // true
 * ```
 */
export const barCutting: Calculation<BarCuttingInput, BarCuttingFigures> = /*#__PURE__*/ define({
  id: 'bar-cutting',
  title: 'Bar cutting list',
  version: 1,
  sources: [CLOSED_FORM],
  input: (): Field<Parsed> =>
    fields({
      pieces: list(
        fields({
          length: quantity('length', 'length', 'positive', PIECE),
          count: whole('count', 1, PIECE_LIMIT),
        }),
        1,
        LENGTH_LIMIT,
      ),
      stock: list(
        fields({ length: quantity('length', 'length', 'positive', STOCK_LENGTH), price: maybe(price()) }),
        1,
        STOCK_LIMIT,
      ),
      kerf: maybe(quantity('length', 'kerf', 'not-negative', KERF)),
      keepFrom: maybe(quantity('length', 'keepFrom', 'positive', KEPT)),
      aim: maybe(choice('aim', ['fewest-bars', 'least-length', 'least-cost'] as const)),
    }),
  reckon,
});

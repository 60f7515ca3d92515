/** A cut list in whole numbers: pieces and stock in steps that all lengths are multiples of, costs likewise. */

import { Decimal } from '../quantity/decimal';
import * as sharedFaults from '../quantity/faults';
import { canonicalValue, newQuantity, type Quantity, unitShown } from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import { wholeNumber } from '../reckoning/fields';
import type { CutList, CuttingAim } from './cutting-input';
import * as faults from './faults';

type Length = Quantity<'length'>;

interface Line {
  readonly length: Length;
  readonly value: Decimal;
}

export interface Piece extends Line {
  readonly count: number;
}

export interface Stock extends Line {
  readonly price: Quantity<'money'> | undefined;
}

/** Equal lengths together, longest first. */
export function piecesOf({ pieces }: CutList): Piece[] {
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
export function stockOf({ stock }: CutList): Stock[] {
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

export function scaled(pieces: readonly Piece[], stock: readonly Stock[], kerf: Decimal): Scaled {
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

export function costsOf(aim: CuttingAim, stock: readonly Stock[]): Costs {
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

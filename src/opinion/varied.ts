/** One value of an input that is varied, and the figure that it is varied for. */
import type { Decimal } from '../quantity/decimal';
import * as sharedFaults from '../quantity/faults';
import { readMoney } from '../quantity/money';
import { canonicalValue, newQuantity, type Quantity, unitShown } from '../quantity/quantity';
import { isFaulty, readQuantity } from '../quantity/read-quantity';
import type { Unit } from '../quantity/units';
import { refuse } from '../reckoning/calculation';
import type { FigureSet } from '../reckoning/parts';
import type { Result } from '../reckoning/result';
import type { ReckonOptions } from '../reckoning/system';
import { asWritten } from './as-written';
import * as faults from './faults';
import { figureAt, figuresIn, pathOf } from './figure-places';
import { type AnyCalculation, type Leaf, placesOf, withValue } from './input-places';

/** A result with whatever figures it has. */
export type AnyResult = Result<FigureSet>;

/** Read a quantity that was given beside an input. */
export function readGiven(given: unknown, like: Quantity, path: string): Quantity {
  const { dimension } = like;
  const told = asWritten(given, like);
  const q = dimension === 'money' ? readMoney(told, path) : readQuantity(told, dimension, path);
  if (isFaulty(q)) return refuse(path, q);
  if (q.dimension === 'money' && q.unit !== like.unit)
    refuse(path, sharedFaults.currencyMismatch(q.unit, like.unit));
  return q;
}

/** The quantity at a path of an input. */
export function leafAt(calculation: AnyCalculation, input: unknown, path: unknown, at: string): Leaf {
  const { leaves } = placesOf(calculation, input);
  const found = leaves.find((leaf) => leaf.at === path);
  const name = typeof path === 'string' ? sharedFaults.quoted(path) : 'this';
  return (
    found ??
    refuse(
      at,
      faults.noSuchInput(
        name,
        leaves.map((leaf) => leaf.at),
      ),
    )
  );
}

/** A figure by its path, where it is a quantity. */
export function figureNamed(result: AnyResult, figure: unknown, at: string): readonly (string | number)[] {
  const path = typeof figure === 'string' ? pathOf(figure) : undefined;
  if (path && figureAt(result.figures, path)) return path;
  const name = typeof figure === 'string' ? sharedFaults.quoted(figure) : 'this';
  return refuse(
    at,
    faults.noSuchFigure(
      name,
      figuresIn(result.figures).map((one) => one.at),
    ),
  );
}

/** A leaf with another value, in the unit that it is shown in. */
export const leafValue = ({ dimension, quantity, plain }: Leaf, canonical: Decimal): unknown =>
  plain ? canonical.toDecimalPlaces(0).toNumber() : newQuantity(dimension, canonical, unitShown(quantity));

/** The same as a quantity. */
export const leafQuantity = ({ dimension, quantity }: Leaf, canonical: Decimal, unit?: Unit): Quantity =>
  newQuantity(dimension, canonical, unit ?? unitShown(quantity));

/** Runs of one calculation with other values, counted. */
export class Runs {
  private left: number;

  constructor(
    readonly calculation: AnyCalculation,
    readonly input: unknown,
    readonly options: ReckonOptions | undefined,
    most: number,
  ) {
    this.left = most;
  }

  get exhausted(): boolean {
    return this.left <= 0;
  }

  /** The result with these values; `undefined` where it is refused, or where no more is run. */
  with(changes: readonly (readonly [leaf: Leaf, canonical: Decimal])[]): AnyResult | undefined {
    if (this.left <= 0) return undefined;
    this.left -= 1;
    const input = changes.reduce<unknown>(
      (whole, [leaf, value]) => withValue(whole, leaf.path, leafValue(leaf, value)),
      this.input,
    );
    const outcome = this.calculation.attempt(input, this.options);
    return outcome.ok ? outcome.result : undefined;
  }
}

/** The amount of a figure, as it is kept. */
export const amountAt = (
  result: AnyResult | undefined,
  path: readonly (string | number)[],
): Decimal | undefined => {
  const q = result && figureAt(result.figures, path);
  return q && canonicalValue(q);
};

/** Small things that several calculations on steel share. */
import { Decimal } from '../quantity/decimal';
import { constant, length } from '../quantity/make';
import {
  canonicalValue,
  newQuantity,
  type Quantity,
  systemOfQuantity,
  unitShown,
} from '../quantity/quantity';
import { wholeNumber } from '../reckoning/fields';

/** A plain number in a formula: 0.075, or 60000 for a strength in psi. */
export const plainNumber = (value: Decimal | string): Quantity<'count'> =>
  newQuantity('count', new Decimal(value), unitShown(wholeNumber(1)));

/** The number of a quantity in a unit, as an exact decimal. */
export const numberIn = (q: Quantity, oneUnit: Quantity): Decimal =>
  canonicalValue(q).div(canonicalValue(oneUnit));

/** A length from meters, shown in the family of units of another. */
export const metersLike = (meters: Decimal, like: Quantity<'length'>): Quantity<'length'> =>
  newQuantity('length', meters, unitShown(like));

/** Rounded to a whole count, as it already is but for a stray last digit. */
export const steadyCount = (q: Quantity<'ratio'>): Quantity<'count'> =>
  wholeNumber(Math.round(q.toNumber(':1')));

/** One size as customary and as metric plans name it: 3 in and 75 mm. */
export interface LengthPair {
  readonly customary: Length;
  readonly metric: Length;
}

type Length = Quantity<'length'>;

/** A pair, made when first asked for. */
export const lengthPair = (customary: string, metric: string): (() => LengthPair) =>
  constant(() => ({ customary: length(customary), metric: length(metric) }));

/** The name of the pair in the family of units of another quantity. */
export const namedLike = (pair: LengthPair, like: Quantity): Length => pair[systemOfQuantity(like)];

/** Below both names: what is named exactly by either never is. */
export const belowPair = (q: Length, { customary, metric }: LengthPair): boolean =>
  q.lessThan(customary) && q.lessThan(metric);

/** Above both names. */
export const abovePair = (q: Length, { customary, metric }: LengthPair): boolean =>
  q.greaterThan(customary) && q.greaterThan(metric);

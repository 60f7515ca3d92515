/** Small sums that many calculations end with: whole loads, and totals of parts. */
import type { Dimension } from '../quantity/dimensions';
import { ratio } from '../quantity/make';
import type { Quantity } from '../quantity/quantity';
import { wholeNumber } from './fields';
import { type Limit, withinTimes } from './limits';
import type { Pad } from './pad';
import type { Saying } from './words';

/** What is carried in whole units has this limit: more loads, bags or trips than any job of this trade has. */
export const carried = (of: string): Limit => ({ of, most: 100_000 });

/** Dimensions that are carried in whole units. */
type Carried = 'volume' | 'mass' | 'area' | 'length';

/** A whole number of times, the last one begun. */
export const timesUp = <D extends Carried>(all: Quantity<D>, each: Quantity<D>): number =>
  Math.round(
    ((all as Quantity<Carried>).over(each as Quantity<Carried>) as Quantity<'ratio'>)
      .upTo(ratio('1:1'))
      .toNumber(':1'),
  );

/** A whole number of times, what is left over not counted. */
export const timesDown = <D extends Carried>(all: Quantity<D>, each: Quantity<D>): number => {
  const [A, E] = [all as Quantity<Carried>, each as Quantity<Carried>];
  return Math.round((A.downTo(E).over(E) as Quantity<'ratio'>).toNumber(':1'));
};

/**
 * How many units of `each` hold `all`, rounded up and noted on the pad.
 *
 * @param path - where `each` stands in the input, for errors
 * @throws {InputError} `too-many`
 */
export function wholeUnits<D extends Carried>(
  what: string,
  all: Quantity<D>,
  each: Quantity<D>,
  path: string,
  pad: Pad,
): Quantity<'count'> {
  const A = all as Quantity<Carried>;
  const E = each as Quantity<Carried>;
  const times = A.over(E) as Quantity<'ratio'>;
  withinTimes(carried(what), times, path);
  const up = times.upTo(ratio('1:1'));
  const n = wholeNumber(Math.round(up.toNumber(':1')));
  // What comes out even is printed without the ceiling, so that a last digit rounded up for show
  // does not make the printed line untrue.
  const formula = up.compareTo(times) === 0 ? 'n = A ÷ U' : 'n = ceil(A ÷ U)';
  return pad.step(what, formula, { A, U: E }, n);
}

/** The sum of parts, noted as `V = V1 + V2 + …` where there is more than one. */
export function total<D extends Dimension>(
  what: Saying,
  symbol: string,
  parts: readonly Quantity<D>[],
  pad: Pad,
): Quantity<D> {
  const [first, ...rest] = parts as [Quantity<D>, ...Quantity<D>[]];
  if (rest.length === 0) return first;
  const names = parts.map((_, i) => `${symbol}${i + 1}`);
  const values = Object.fromEntries(parts.map((part, i) => [names[i] as string, part]));
  const sum = rest.reduce((all, part) => all.plus(part), first);
  return pad.step(what, `${symbol} = ${names.join(' + ')}`, values, sum);
}

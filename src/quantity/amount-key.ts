/**
 * Things that are alike have the same text, in whatever units their quantities were written: 20 ft is 240 in.
 *
 * For finding in a map what is of one size; never for show.
 */
import { canonicalValue, isQuantity, type Quantity, unitShown } from './quantity';

/** Beyond these only stray digits of a division differ. */
const DIGITS = 30;

const amountKey = (q: Quantity): readonly [string, string] => [
  q.dimension === 'money' ? unitShown(q).id : q.dimension,
  canonicalValue(q).toSignificantDigits(DIGITS).toString(),
];

const byAmount = (_: string, value: unknown): unknown => (isQuantity(value) ? amountKey(value) : value);

/** The same text for alike quantities, lists and objects of them, and texts; members in the same order. */
export const keyOf = (thing: unknown): string => JSON.stringify(thing, byAmount) ?? 'nothing';

const known = new WeakMap<object, string>();

/** The same of what `tells` a thing from others, made once for each thing: it must never change. */
export function keyOnce<T extends object>(thing: T, tells: (thing: T) => unknown): string {
  const before = known.get(thing);
  if (before !== undefined) return before;
  const key = keyOf(tells(thing));
  known.set(thing, key);
  return key;
}

/**
 * Sizes that go by two names: 4 in and 100 mm, 3/4 in and 19 or 20 mm.
 *
 * The trade buys and specifies one size under either name, so both get the same advice, though the exact
 * lengths differ by up to a sixtieth. At a boundary that the sources draw differently, the size counts on the
 * side that joints closer.
 */
import { constant, length } from '../quantity/make';
import type { Quantity } from '../quantity/quantity';
import { wholeNumber } from '../reckoning/fields';

type Length = Quantity<'length'>;

const sixtieths = (l: Length, n: number): Length => l.times(wholeNumber(n));
const inches = (n: number): Length => length(`${n} in`);

/** At least so many inches, or the metric size of that name. */
export const nominallyAtLeast = (l: Length, n: number): boolean =>
  !sixtieths(l, 60).lessThan(sixtieths(inches(n), 59));

/** At most so many inches, or the metric size of that name. */
export const nominallyAtMost = (l: Length, n: number): boolean =>
  !sixtieths(l, 60).greaterThan(sixtieths(inches(n), 61));

/** So many inches, or the metric size of that name: 100 mm and 4 in. */
export const nominally = (l: Length, n: number): boolean => nominallyAtLeast(l, n) && nominallyAtMost(l, n);

const SMALL_STONE = constant(() => [length('19 mm'), length('20 mm')] as const);

/** Stone of 3/4 in, 19 mm or 20 mm, on which the sources differ. */
export function isThreeQuarterStone(size: Length): boolean {
  const [least, most] = SMALL_STONE();
  return !size.lessThan(least) && !size.greaterThan(most);
}

/** Stone larger than 3/4 in under any of its names. */
export const isLargeStone = (size: Length): boolean => size.greaterThan(SMALL_STONE()[1]);

/** Sizes that one can buy: the next that is large enough. */
import { constant } from './make';
import type { Quantity } from './quantity';
import { isFaulty, readQuantity } from './read-quantity';
import type { System } from './units';

/** Sizes of one thing as each unit system sells them, the smallest first, each list in one unit. */
export type Sizes = (system: System) => readonly Quantity<'length'>[];

function readAll(list: string, unit: string): readonly Quantity<'length'>[] {
  return list.split(' ').map((size) => {
    const q = readQuantity(`${size.replace('-', ' ')} ${unit}`, 'length', 'the size');
    if (isFaulty(q)) throw new TypeError(`${size}: ${q.sentence}`);
    return q;
  });
}

/** Sizes in inches and in millimeters, each list by blanks: `sizesOf('1/4 3/8 1-1/4', '6 10 30')`. */
/* @__NO_SIDE_EFFECTS__ */
export function sizesOf(inches: string, millimeters: string): Sizes {
  const read = constant(() => ({ customary: readAll(inches, 'in'), metric: readAll(millimeters, 'mm') }));
  return (system) => read()[system];
}

/** The next size that is no smaller; what is larger than all is made to measure. */
export const nextSize = (sizes: Sizes, needed: Quantity<'length'>, system: System): Quantity<'length'> =>
  sizes(system).find((size) => !size.lessThan(needed)) ?? needed;

/**
 * How often a calculation may be run again: light ones often, heavy ones seldom.
 *
 * Time is never measured: the same input gets the same answer on any machine. How heavy a calculation is shows in how
 * much it takes and gives, the more so where its figures come from no printed step, as those of a search do.
 */
import { isQuantity } from '../quantity/quantity';
import type { ResultParts } from '../reckoning/parts';

/** Counted no further: it is heavy then. */
const ENOUGH = 2000;

function sizeOf(value: unknown, most = ENOUGH): number {
  if (typeof value !== 'object' || value === null || isQuantity(value)) return 1;
  let size = 1;
  for (const part of Object.values(value)) {
    if (size >= most) break;
    size += sizeOf(part, most - size);
  }
  return size;
}

const WORK = 1800;

/**
 * How many runs a calculation is worth on such an input.
 *
 * @param least - what is needed to say much; of the very heaviest a fifth of it
 * @param most - more find nothing that these do not
 */
export function runsWorth(
  input: unknown,
  { figures, working }: Pick<ResultParts<object>, 'figures' | 'working'>,
  least: number,
  most: number,
): number {
  const given = sizeOf(figures);
  const unseen = 1 + given / (10 * (working.length + 1));
  const work = (sizeOf(input) + given + 3 * working.length) * unseen;
  const worth = Math.floor((WORK / work) * (most / 100));
  return Math.max(worth < 1 ? Math.ceil(least / 5) : least, Math.min(most, worth));
}

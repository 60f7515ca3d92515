/**
 * How large a job a calculation takes at once.
 *
 * What is within its limits is answered within a second on one core; what is beyond is refused before any
 * work is done on it, by an error that names the limit. The limits of a calculation stand in its
 * definition, so that its schema, its documentation and its errors say the same.
 */
import * as faults from '../quantity/faults';
import { InputError } from '../quantity/input-error';
import { ratio } from '../quantity/make';
import type { Quantity } from '../quantity/quantity';

/** A count that a calculation does not go beyond. */
export interface Limit {
  /** What is counted, as `the mats in bars`. */
  readonly of: string;
  /** The most that is taken. */
  readonly most: number;
}

/**
 * Refuse a job that is beyond a limit.
 *
 * @param path - where in the input the count comes from
 * @throws {InputError} `too-many`
 */
export function withinLimit(limit: Limit, count: number, path: string): void {
  // Written so that a count which is no number is refused too.
  if (!(count <= limit.most)) beyond(limit, path);
}

/**
 * Refuse what goes into another more often than a limit allows, compared exactly.
 *
 * @param times - the one over the other
 * @param path - where in the input the count comes from
 * @throws {InputError} `too-many`
 */
export function withinTimes(limit: Limit, times: Quantity<'ratio'>, path: string): void {
  if (times.greaterThan(ratio(`${limit.most}:1`))) beyond(limit, path);
}

/**
 * Refuse a job that was found to be beyond a limit.
 *
 * @throws {InputError} `too-many`
 */
export function beyond({ of, most }: Limit, path: string): never {
  throw new InputError([{ ...faults.tooMany(of, most), path }]);
}

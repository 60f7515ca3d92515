/** Times of a pour that are read: no schedule looks farther ahead than a month; longer ones are slips of a unit. */
import * as faults from '../quantity/faults';
import { constant, time } from '../quantity/make';
import type { Quantity } from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';

type Time = Quantity<'time'>;

/** The longest time that is taken. */
const LONGEST = /*#__PURE__*/ constant(() => time('30 day'));

/** A rate is no time: what is too long is the time that it comes to. */
const timed = (path: string): string => (/rate$|^speed$/i.test(path) ? `the time at this ${path}` : path);

/**
 * A time as it was given, or as a rate comes to.
 *
 * @throws {InputError} `does-not-fit` for one beyond 30 days
 */
export const bounded = (path: string, t: Time): Time =>
  t.greaterThan(LONGEST()) ? refuse(path, faults.doesNotFit(timed(path), '30 days')) : t;

/** The same in minutes, as trucks and crews are timed. */
export const boundedMinutes = (path: string, t: Time): Time => bounded(path, t).in('min');

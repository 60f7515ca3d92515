/** An order in truckloads: full trucks first, or split evenly in whole increments. */
import * as faults from '../quantity/faults';
import type { Quantity } from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import { wholeNumber } from '../reckoning/fields';
import { type Limit, withinTimes } from '../reckoning/limits';
import type { Pad } from '../reckoning/pad';
import { timesDown, wholeUnits } from '../reckoning/whole';

type Volume = Quantity<'volume'>;

/** How an order is split. */
export type LoadSplit = 'full-first' | 'even';

/** More loads than any pour has. */
export const LOADS: Limit = { of: 'the order in loads', most: 10_000 };

/** How many loads, refused beyond any pour. */
function loadCount(order: Volume, truck: Volume, pad: Pad): number {
  withinTimes(LOADS, order.over(truck), 'truckCapacity');
  return wholeUnits('loads', order, truck, 'truckCapacity', pad).toNumber('each');
}

/** What a truck takes in whole increments, in the unit of the order; all of it where one increment is more. */
export function fullTruck(order: Volume, capacity: Volume, increment: Volume): Volume {
  const usable = capacity.downTo(increment);
  return order.minus(order).plus(usable.sign() === 0 ? capacity : usable);
}

/** Full trucks, in whole increments of the supplier, then the rest. */
export function fullFirst(order: Volume, capacity: Volume, increment: Volume, pad: Pad): Volume[] {
  const truck = fullTruck(order, capacity, increment);
  const n = loadCount(order, truck, pad);
  const full = timesDown(order, truck);
  const loads: Volume[] = Array.from({ length: full }, () => truck);
  if (n > full) {
    const rest = order.minus(truck.times(wholeNumber(full)));
    if (full > 0)
      pad.step('last load', 'r = O − (n − 1) × q', { O: order, n: wholeNumber(n), q: truck }, rest);
    loads.push(rest);
  }
  return loads;
}

/**
 * As even as whole increments allow: loads differ by one increment at most, the larger ones first.
 *
 * @throws {InputError} `does-not-fit` for an increment larger than the truck
 */
export function evenly(order: Volume, truck: Volume, increment: Volume, pad: Pad): Volume[] {
  const usable = truck.downTo(increment);
  if (usable.sign() === 0) refuse('increment', faults.doesNotFit('increment', 'truckCapacity'));
  const n = loadCount(order, usable, pad);
  const each = order.over(wholeNumber(n));
  const less = each.downTo(increment);
  const left = order.minus(less.times(wholeNumber(n)));
  const larger = Math.round(left.over(increment).toNumber(':1'));
  pad.step('mean load', 'm = O ÷ n', { O: order, n: wholeNumber(n) }, each);
  return Array.from({ length: n }, (_, i) => (i < larger ? less.plus(increment) : less));
}

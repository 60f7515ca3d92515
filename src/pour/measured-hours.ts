/** Hours that are not reckoned: as a set was measured, or as a supplier or a maker says. */
import * as sharedFaults from '../quantity/faults';
import { constant, time } from '../quantity/make';
import type { QuantityInput } from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import { fields, quantity } from '../reckoning/fields';
import * as weatherFaults from '../weather/faults';
import { boundedMinutes } from './bounded';
import type { SET } from './day-ordinary';
import type { Hours } from './saw-hours';

/** From the earliest to the latest that something comes. */
export interface HoursInput {
  /** At the earliest. */
  readonly from: QuantityInput<'time'>;
  /** At the latest. */
  readonly to: QuantityInput<'time'>;
}

/** Nothing sets or is washed free sooner. */
const LEAST = constant(() => time('5 min'));

/** The field for such hours. */
export const hoursField = (range: typeof SET) =>
  fields({
    from: quantity('time', 'from', 'positive', range),
    to: quantity('time', 'to', 'positive', range),
  });

/** Hours that run from one to the other. */
export function inOrder(path: 'initialSet' | 'washAfter', hours: Hours | undefined): Hours | undefined {
  if (hours?.to.lessThan(hours.from)) refuse(`${path}.from`, sharedFaults.doesNotFit('from', 'to'));
  if (hours?.from.lessThan(LEAST()))
    refuse(`${path}.from`, weatherFaults.outsideRange('from', '5 min to 30 days'));
  return (
    hours && { from: boundedMinutes(`${path}.from`, hours.from), to: boundedMinutes(`${path}.to`, hours.to) }
  );
}

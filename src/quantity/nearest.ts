/** Rounding to the nearest of whole steps. */
import { ratio } from './make';
import type { Quantity } from './quantity';

/** Dimensions that are told in steps here. */
type Stepped = 'length' | 'time';

/** To the nearest whole step; halves go up. */
export function nearest<D extends Stepped>(q: Quantity<D>, step: Quantity<D>): Quantity<D> {
  const half = (step as Quantity<Stepped>).times(ratio('50%')) as Quantity<D>;
  return q.plus(half).downTo(step);
}

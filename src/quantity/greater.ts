/** The greater and the lesser of two quantities of one dimension; of equal ones the first. */
import type { Dimension } from './dimensions';
import type { Quantity } from './quantity';

/** The greater of two. */
export const greaterOf = <D extends Dimension>(a: Quantity<D>, b: Quantity<D>): Quantity<D> =>
  a.lessThan(b) ? b : a;

/** The lesser of two. */
export const lesserOf = <D extends Dimension>(a: Quantity<D>, b: Quantity<D>): Quantity<D> =>
  b.lessThan(a) ? b : a;

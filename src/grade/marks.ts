/**
 * Falls, risers and marks as they are read off a rule: in inches or millimeters, to the nearest
 * 1/16 in or 1 mm.
 */

import { constant, length } from '../quantity/make';
import { nearest } from '../quantity/nearest';
import { type Quantity, systemOfQuantity } from '../quantity/quantity';

type Length = Quantity<'length'>;

const SIXTEENTH = constant(() => length('1/16 in'));
const MILLIMETER = constant(() => length('1 mm'));

/** The same length shown in inches or millimeters. */
export const small = (l: Length): Length => l.in(systemOfQuantity(l) === 'metric' ? 'mm' : 'in');

/** The smallest step of the rule that a length is read with. */
export const markStep = (l: Length): Length =>
  systemOfQuantity(l) === 'metric' ? MILLIMETER() : SIXTEENTH();

/** To the nearest 1/16 in or mm; halves go up. */
export function toMark(l: Length): Length {
  const step = markStep(l);
  return small(nearest(l, step));
}

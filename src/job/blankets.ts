/**
 * Blankets that the weather of a day asks for: its slabs in as many layers, `A = a × n`. Each day has its own, since they lie
 * through the days of protection, in which the next one may be poured.
 */

import { greaterOf } from '../quantity/greater';
import type { Quantity } from '../quantity/quantity';
import { wholeNumber } from '../reckoning/fields';
import type { PlacingLimitsFigures } from '../weather/placing-limits-figures';
import { areaOf, type Poured } from './days';
import { sumOf } from './fill';
import type { Purchase, PurchaseShare } from './purchases';
import type { WorkedPart } from './work';

/** Layers that the lowest air takes, or as many more as are to lie there; nothing where it takes none. */
function layersOf({ input, result }: WorkedPart): Quantity<'count'> | undefined {
  const { blankets } = result.figures as PlacingLimitsFigures;
  const { layers } = input;
  if (!blankets || blankets.sign() === 0) return undefined;
  return typeof layers === 'number' ? greaterOf(blankets, wholeNumber(layers)) : blankets;
}

/** What each slab of a day is covered with. */
function sharesOf({ day, elements }: Poured, parts: readonly WorkedPart[]): PurchaseShare[] {
  const limits = parts.find((one) => one.part === 'limits' && one.day === day.name);
  const blankets = limits && layersOf(limits);
  if (!blankets) return [];
  return elements.flatMap((worked) => {
    const area = areaOf(worked);
    return area ? [{ element: worked.element.name, quantity: area.times(blankets) }] : [];
  });
}

/** The line of them on the purchase list, where any are asked for. */
export function blanketsOf(days: readonly Poured[], parts: readonly WorkedPart[]): Purchase[] {
  const by = days.flatMap((day) => sharesOf(day, parts));
  const quantity = sumOf(by.map((own) => own.quantity as Quantity<'area'>));
  return quantity ? [{ item: 'blanket', of: {}, quantity, by }] : [];
}

/**
 * When the forms of an element may come off, for it to stand among the work: edges of slabs after a day, low walls after
 * three, and later where the weather of the day wants it; by the clock where the end of placing is known. Riser forms come
 * off as soon as the risers hold, to be finished, and stand in no table. Forms that carry wait for the engineer.
 *
 * Days: Masonry and Concrete (McGraw-Hill, 2001), page 76.
 */
import { type ClockTime, clockTime } from '../pour/saw-clock';
import { greaterOf } from '../quantity/greater';
import { isQuantity, type Quantity } from '../quantity/quantity';
import type { PlacingLimitsFigures } from '../weather/placing-limits-figures';
import { type PublishedUse, timeFor } from '../weather/published-times';
import { type Poured, trucksOf } from './days';
import type { JobFormsOffFigures } from './takeoff-figures';
import type { WorkedElement, WorkedPart } from './work';

type Time = Quantity<'time'>;

/** Which rule the forms of each kind go by. */
const RULES: Readonly<Record<string, PublishedUse>> = {
  'slab-edge': 'forms of slabs off',
  'low-wall': 'forms of walls and footings off',
};

/** The day that an element is poured on, with what was reckoned for it. */
interface OnDay {
  readonly poured: Poured;
  readonly parts: readonly WorkedPart[];
}

/** What the cold of the day wants, where its limits were looked up. */
function inCold({ parts }: OnDay): Time | undefined {
  const limits = parts.find(({ part }) => part === 'limits')?.result.figures;
  return (limits as PlacingLimitsFigures | undefined)?.untilForms;
}

/** When placing ends, after midnight of the day. */
function placedBy({ poured }: OnDay): Time | undefined {
  const { placingTime } = trucksOf(poured);
  const { startAt } = poured.day;
  return startAt && isQuantity(placingTime) ? (startAt as Time).plus(placingTime as Time) : undefined;
}

const clockOf = (after: Time, on: OnDay | undefined): ClockTime | undefined => {
  const placed = on && placedBy(on);
  return placed && clockTime(placed.plus(after));
};

/**
 * When the forms of each element come off.
 *
 * @param parts - of the days
 */
export const formsOff = (
  elements: readonly WorkedElement[],
  days: readonly Poured[],
  parts: readonly WorkedPart[],
): JobFormsOffFigures[] =>
  elements.flatMap((worked) => {
    const forms = worked.parts.find(({ part }) => part === 'forms');
    const rule = forms && RULES[String(forms.input['kind'])];
    if (!rule) return [];
    const least = timeFor(rule);
    const poured = days.find((day) => day.elements.includes(worked));
    const on = poured && { poured, parts: parts.filter(({ day }) => day === poured.day.name) };
    const cold = on && inCold(on);
    const after = cold ? greaterOf(least, cold) : least;
    const at = clockOf(after, on);
    return [
      {
        element: worked.element.name,
        ...(poured ? { day: poured.day.name } : {}),
        after,
        ...(at ? { at } : {}),
      },
    ];
  });

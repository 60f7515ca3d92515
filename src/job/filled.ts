/**
 * Openings that another element fills where it lies, and that stands there already when the slab around it is poured: on
 * an earlier day, or before it in the document where no day says otherwise.
 */
import { commonArea } from '../geometry/clip';
import type { Element, Job } from './document';
import { type Placed, placed, ringsAt } from './overlaps';

/** Less of an opening than this is left for a form around what stands in it. */
const FILLED = 0.9;

/** Nothing much larger than an opening stands in it: of many, what lies over them is held to a few. */
const LARGER = 1.5;

const sizeOf = ({ box: [left, low, right, high] }: Placed): number => (right - left) * (high - low);

/** Whether something lies over the middle of an opening and fills it. */
function fills(other: Placed, opening: Placed): boolean {
  const [[a, b, c, d], [left, low, right, high]] = [opening.box, other.box];
  const over = left < (a + c) / 2 && (a + c) / 2 < right && low < (b + d) / 2 && (b + d) / 2 < high;
  const { region } = opening;
  return (
    over &&
    sizeOf(other) < LARGER * sizeOf(opening) &&
    commonArea(other.region, region) > FILLED * commonArea(region, region)
  );
}

/** Of an element, its openings that are filled already when it is poured, counted from 1; nothing where it has none. */
export function filledOpenings({ days = [], elements }: Job, element: Element): number[] | undefined {
  const rings = element.openings ? ringsAt(element) : undefined;
  const from = rings?.[0]?.[0];
  if (!rings || !from) return undefined;
  const dayOf = ({ name }: Element): number => {
    const day = days.findIndex((each) => each.elements.includes(name));
    return day < 0 ? days.length : day;
  };
  const before = elements.filter((other, i) => {
    const later = dayOf(other) - dayOf(element) || i - elements.indexOf(element);
    return later < 0 && other.standsOn !== element.name;
  });
  const there = before.flatMap((other) => {
    const own = ringsAt(other);
    return own ? placed(other, own.slice(0, 1), from) : [];
  });
  const openings = rings.slice(1, 1 + (element.openings as readonly unknown[]).length);
  const filled = openings.flatMap((ring, i) => {
    const opening = placed(element, [ring], from);
    return there.some((other) => fills(other, opening)) ? [i + 1] : [];
  });
  return filled.length > 0 ? filled : undefined;
}

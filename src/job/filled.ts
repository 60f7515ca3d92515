/**
 * Openings that another element fills where it lies, and that stands there already when the slab around it is poured: on
 * an earlier day, or before it in the document where no day says otherwise.
 */
import { type BinaryRegion, commonArea } from '../geometry/clip';
import type { Element, Job } from './document';
import { type Placed, placed, ringsAt } from './overlaps';

/** Less of an opening than this is left for a form around what stands in it. */
const FILLED = 0.9;

/** Nothing much larger than an opening stands in it. */
const LARGER = 1.5;

const sizeOf = ({ box: [left, low, right, high] }: Placed): number => (right - left) * (high - low);

/** Whether the middle of one box lies in another. */
const middleIn = ({ box: a }: Placed, { box: b }: Placed): boolean => {
  const [x, y] = [(a[0] + a[2]) / 2, (a[1] + a[3]) / 2];
  return x > b[0] && x < b[2] && y > b[1] && y < b[3];
};

const areaOf = (region: BinaryRegion): number => commonArea(region, region);

function fills(other: Placed, opening: Placed): boolean {
  if (!middleIn(opening, other) || sizeOf(other) > LARGER * sizeOf(opening)) return false;
  return commonArea(other.region, opening.region) >= FILLED * areaOf(opening.region);
}

/** When an element is poured: its day, then its place in the document. */
function order({ days = [], elements }: Job): (element: Element) => readonly [day: number, place: number] {
  return (element) => {
    const day = days.findIndex((each) => each.elements.includes(element.name));
    return [day < 0 ? days.length : day, elements.indexOf(element)];
  };
}

/** Of each element that has any, its openings that are filled already when it is poured, counted from 1. */
export function filledOpenings(job: Job): ReadonlyMap<Element, readonly number[]> {
  const whenOf = order(job);
  const known = job.elements.flatMap((element) => {
    const rings = ringsAt(element);
    return rings ? [{ element, rings, when: whenOf(element) }] : [];
  });
  const from = known[0]?.rings[0]?.[0];
  const filled = new Map<Element, readonly number[]>();
  if (!from) return filled;
  const all = known.map((one) => ({ ...one, whole: placed(one.element, one.rings.slice(0, 1), from) }));
  for (const { element, rings, when } of all) {
    const count = (element.openings as readonly unknown[] | undefined)?.length ?? 0;
    const before = all.filter(
      ({ when: [day, place], element: other }) =>
        (day < when[0] || (day === when[0] && place < when[1])) && other.standsOn !== element.name,
    );
    const own = rings.slice(1, 1 + count).flatMap((ring, i) => {
      const opening = placed(element, [ring], from);
      return before.some(({ whole }) => fills(whole, opening)) ? [i + 1] : [];
    });
    if (own.length > 0) filled.set(element, own);
  }
  return filled;
}

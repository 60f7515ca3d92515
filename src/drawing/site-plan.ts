/**
 * The site plan of a job: every element where it lies, with its joints, its name, the order of pouring, the way that water
 * runs and the heights of forms.
 *
 * What rests on another element is poured after it; otherwise they are poured in the order of the document.
 */
import type { Corner } from '../geometry/polygon';
import type { Element, JobInput } from '../job/document';
import { elementsOf, type ReckonedJob, reckonJob } from '../job/job-takeoff';
import { move, ringsAt } from '../job/overlaps';
import type { JobOverlapFigures } from '../job/takeoff-figures';
import type { JointLayoutFigures, PlanJoint } from '../joints/layout-figures';
import { Decimal } from '../quantity/decimal';
import { missing } from '../quantity/faults';
import { canonicalValue } from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import { say } from '../reckoning/words';
import { extentOf, type PlanPoint } from './frame';
import type { Sample } from './legend';
import { type PlanOptions, readPlanOptions } from './plan-options';
import { pourOrder } from './pour-order';
import { drawSlab, overAll } from './region-plan';
import type { Box, PagePoint } from './room';
import { Sheet } from './sheet';
import { drawLevels } from './site-falls';

/** An element with its rings where it lies. */
export interface Placed {
  readonly element: Element;
  readonly rings: readonly (readonly Corner[])[];
}

type Spot = (corner: Corner) => PlanPoint;

interface Size {
  readonly width: number;
  readonly height: number;
}

/** From the lowest corner of the site: the drawing is the same at survey coordinates. */
function spotOf(placed: readonly Placed[]): Spot {
  const all = placed.flatMap(({ rings }) => rings[0] ?? []);
  const x0 = Decimal.min(...all.map(({ x }) => x));
  const y0 = Decimal.min(...all.map(({ y }) => y));
  return ({ x, y }) => ({ x: x.minus(x0).toNumber(), y: y.minus(y0).toNumber() });
}

const CUT = { stroke: 'ink', 'stroke-width': 0.9, 'stroke-dasharray': '6 4', class: 'joint' } as const;

const cornerOf = ({ x, y }: PlanJoint['from']): Corner => ({
  x: canonicalValue(x),
  y: canonicalValue(y),
});

/** Straight joints of an element, moved as it is. */
function drawJoints(sheet: Sheet, element: Element, joints: readonly PlanJoint[], spot: Spot): void {
  const to = move(element);
  for (const joint of joints.filter(({ shape }) => shape === 'straight')) {
    sheet.line(
      [joint.from, joint.to].map((end) => spot(to(cornerOf(end)))),
      CUT,
    );
  }
}

/** Where in an element its number stands: above, below or beside its name. */
function markSpots(sheet: Sheet, middle: PagePoint, name: Box | undefined): PagePoint[] {
  if (!name) return [middle];
  const [up, aside] = [sheet.size * 1.6, name.width / 2 + sheet.size];
  return [
    { x: middle.x, y: name.y - up },
    { x: middle.x, y: name.y + up },
    { x: middle.x - aside, y: name.y },
    { x: middle.x + aside, y: name.y },
  ];
}

/** A name where it fits into the element, nothing where it does not. */
function nameWithin(sheet: Sheet, text: string, middle: PagePoint, room: Size): Box | undefined {
  const box = sheet.boxOf(text, middle);
  if (box.width > room.width - 8 || box.height > room.height - 4) return undefined;
  // Beside a joint that runs through the middle, above or below it.
  const boxes = [0, -1, 1, -2, 2].map((lines) => ({ ...box, y: box.y + lines * box.height * 0.8 }));
  const inside = boxes.filter(({ y, height }) => Math.abs(y - middle.y) + height / 2 < room.height / 2);
  const found = sheet.room.choose(inside, 0);
  if (found) sheet.write(text, found);
  return found;
}

/** The name of an element and its number in the order of pouring; a name without room stands in the key. */
function nameOn(sheet: Sheet, name: string, ring: readonly PlanPoint[], order: number | undefined): void {
  const { from, to } = extentOf(ring);
  const middle = sheet.frame.at({ x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 });
  const room = { width: (to.x - from.x) * sheet.frame.scale, height: (to.y - from.y) * sheet.frame.scale };
  const text = sheet.name(name);
  const found = nameWithin(sheet, text, middle, room);
  if (order !== undefined) sheet.mark(order, found ? undefined : text, markSpots(sheet, middle, found));
  else if (!found) sheet.number(text, middle);
}

const placedOf = (elements: readonly Element[]): Placed[] =>
  elements.flatMap((element) => {
    const rings = ringsAt(element);
    return rings ? [{ element, rings }] : [];
  });

/** A number in its circle, any number. */
const bubbleSample =
  ({ size }: Sheet): Sample =>
  (x, y) => [
    ['circle', { cx: x, cy: y, r: 0.68 * size, fill: 'none', stroke: 'ink', 'stroke-width': 0.9 }],
    ['text', { x }, 'n'],
  ];

/** Two elements that lie over each other, or one that stands on the other. */
function overlapText(sheet: Sheet, { first, second, area, stands }: JobOverlapFigures): string {
  const [one, other] = [sheet.name(first), sheet.name(second)];
  if (stands === first) return sheet.text(say`${{ one }} stands on ${{ other }}`);
  if (stands === second) return sheet.text(say`${{ one: other }} stands on ${{ other: one }}`);
  const shared = sheet.quantity(area);
  return sheet.text(say`${{ one }} and ${{ other }} lie over each other on ${{ shared }}`);
}

/** Elements that have no place, told below the plan. */
function noteUnplaced(
  sheet: Sheet,
  elements: readonly Element[],
  placed: readonly Placed[],
  order: ReadonlyMap<string, number>,
): void {
  const unplaced = elements.filter((element) => !placed.some((each) => each.element === element));
  if (unplaced.length === 0) return;
  const names = unplaced
    .map(({ name }) => [order.get(name), sheet.name(name)].filter(Boolean).join(' '))
    .join(', ');
  sheet.note(sheet.text(say`not on the plan, since nothing says where it lies: ${{ names }}`));
}

/**
 * Draw the site plan of a job: every element that says where it lies, with its joints, its name and its number in the
 * order of pouring; and the way that water runs and the heights of forms, where the job says so.
 *
 * @param job - the job document, or the job from `reckonJob`, which is not reckoned again; elements without `at` and `outline` are named below the plan
 * @param options - heading, units, language, size and colors
 * @returns an SVG document as text, without external resources; it scales with its frame
 * @throws {InputError} as `reckonJob` does; `missing` where no element says where it lies
 * @example
 * ```ts
 * import { sitePlan } from 'flatwork-reckoner/drawing';
 *
 * const outline = { shape: 'rectangle', length: '12 ft', width: '8 ft' } as const;
 * const at = { x: '0 ft', y: '0 ft' };
 * const svg = sitePlan({ version: 1, elements: [{ name: 'Bin pad', outline, at, thickness: '4 in', slab: true }] });
 * svg.includes('Bin pad'); // true
 * ```
 */
export function sitePlan(job: JobInput | ReckonedJob, options: PlanOptions = {}): string {
  const style = readPlanOptions(options);
  const reckoned = elementsOf(job as ReckonedJob) ? (job as ReckonedJob) : reckonJob(job as JobInput);
  const { takeoff, parts } = reckoned;
  const elements = elementsOf(reckoned) ?? [];
  const placed = placedOf(elements);
  if (placed.length === 0) refuse('elements', missing('at', '{ x: "0 ft", y: "0 ft" }'));
  const spot = spotOf(placed);
  const points = placed.flatMap(({ rings }) => (rings[0] ?? []).map(spot));
  const sheet = new Sheet({ style, usual: 'Site plan', system: takeoff.system, points });
  for (const { rings } of placed) {
    const [outer = [], ...holes] = rings.map((ring) => ring.map(spot));
    drawSlab(sheet, { points: outer, holes });
  }
  for (const { element } of placed) {
    const found = parts.find(({ part, element: of }) => part === 'joints' && of === element.name);
    if (found) drawJoints(sheet, element, (found.result.figures as JointLayoutFigures).joints, spot);
  }
  const order = pourOrder(reckoned, elements);
  sheet.reserve(order.size);
  for (const { element, rings } of placed)
    nameOn(sheet, element.name, (rings[0] ?? []).map(spot), order.get(element.name));
  overAll(sheet, points);
  drawLevels(sheet, placed, { job: reckoned, spot });
  sheet.explain(order.size > 0 && { text: sheet.text('order of pouring'), sample: bubbleSample(sheet) });
  noteUnplaced(sheet, elements, placed, order);
  for (const overlap of takeoff.figures.overlaps) sheet.note(overlapText(sheet, overlap));
  return sheet.finish(sheet.text(say`Site plan with ${{ elements: placed.length }} elements`));
}

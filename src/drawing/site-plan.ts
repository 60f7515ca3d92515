/** The site plan of a job: every element where it lies, with its joints, its name and its size. */
import type { Corner } from '../geometry/polygon';
import { type Element, type JobInput, jobDoor } from '../job/document';
import { reckonJob } from '../job/job-takeoff';
import { move, ringsAt } from '../job/overlaps';
import type { JointLayoutFigures, PlanJoint } from '../joints/layout-figures';
import { Decimal } from '../quantity/decimal';
import { missing } from '../quantity/faults';
import { canonicalValue } from '../quantity/quantity';
import { readInput, refuse } from '../reckoning/calculation';
import { say } from '../reckoning/words';
import { extentOf, type PlanPoint } from './frame';
import { type PlanOptions, readPlanOptions } from './plan-options';
import { drawSlab, overAll } from './region-plan';
import { Sheet } from './sheet';

/** An element with its rings where it lies. */
interface Placed {
  readonly element: Element;
  readonly rings: readonly (readonly Corner[])[];
}

type Spot = (corner: Corner) => PlanPoint;

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

/** A name where it fits into the element, else a number whose name stands in the key. */
function nameOn(sheet: Sheet, name: string, ring: readonly PlanPoint[]): void {
  const { from, to } = extentOf(ring);
  const middle = sheet.frame.at({ x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 });
  const text = sheet.name(name);
  const box = sheet.boxOf(text, middle);
  const room = { width: (to.x - from.x) * sheet.frame.scale, height: (to.y - from.y) * sheet.frame.scale };
  const fits = box.width < room.width - 8 && box.height < room.height - 4;
  // Beside a joint that runs through the middle, above or below it.
  const boxes = [0, -1, 1, -2, 2].map((lines) => ({ ...box, y: box.y + lines * box.height * 0.8 }));
  const inside = boxes.filter(({ y, height }) => Math.abs(y - middle.y) + height / 2 < room.height / 2);
  if (!fits || !sheet.place(text, inside, {}, 0)) sheet.number(text, middle);
}

const placedOf = (elements: readonly Element[]): Placed[] =>
  elements.flatMap((element) => {
    const rings = ringsAt(element);
    return rings ? [{ element, rings }] : [];
  });

/** Elements that have no place, told below the plan. */
function noteUnplaced(sheet: Sheet, elements: readonly Element[], placed: readonly Placed[]): void {
  const unplaced = elements.filter((element) => !placed.some((each) => each.element === element));
  if (unplaced.length === 0) return;
  const names = unplaced.map(({ name }) => sheet.name(name)).join(', ');
  sheet.note(sheet.text(say`not on the plan, since nothing says where it lies: ${{ names }}`));
}

/**
 * Draw the site plan of a job: every element that says where it lies, with its joints and its name.
 *
 * @param job - the job document; elements without `at` and `outline` are named below the plan
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
export function sitePlan(job: JobInput, options: PlanOptions = {}): string {
  const style = readPlanOptions(options);
  const { takeoff, parts } = reckonJob(job);
  const { elements } = readInput(jobDoor(), job);
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
  for (const { element, rings } of placed) nameOn(sheet, element.name, (rings[0] ?? []).map(spot));
  overAll(sheet, points);
  noteUnplaced(sheet, elements, placed);
  for (const { first, second, area } of takeoff.figures.overlaps) {
    const [one, other] = [sheet.name(first), sheet.name(second)];
    const shared = sheet.quantity(area);
    sheet.note(sheet.text(say`${{ one }} and ${{ other }} lie over each other on ${{ shared }}`));
  }
  return sheet.finish(sheet.text(say`Site plan with ${{ elements: placed.length }} elements`));
}

/** The plan of an outline with its openings and dimensions. */

import type { Corner } from '../geometry/polygon';
import { type Opening, type Region, type RegionInput, regionFields, ringsOf } from '../outline/region';
import { Decimal } from '../quantity/decimal';
import { type Quantity, quantityOf, systemOfQuantity } from '../quantity/quantity';
import type { System } from '../quantity/units';
import { readInput } from '../reckoning/calculation';
import { fields } from '../reckoning/fields';
import { dimension, document, element, type Frame, frameFor, label, type PlanPoint, ringPath } from './svg';

/** How a plan is headed. */
export interface PlanOptions {
  /** Heading, also read out to those who do not see the drawing. */
  readonly title?: string;
}

/** The heading asked for, or the usual one. */
export const titleOf = (options: PlanOptions | null | undefined, usual: string): string =>
  typeof options?.title === 'string' && options.title !== '' ? options.title.slice(0, 200) : usual;

/** Sides shorter than this share of the drawing are not dimensioned: their figures would run together. */
const LEAST_SHARE = 0.04;
const DIMENSIONED = 40;

/** Corners in binary numbers, for drawing. */
export const planPoints = (ring: readonly Corner[]): PlanPoint[] =>
  ring.map(({ x, y }) => ({ x: x.toNumber(), y: y.toNumber() }));

/** Any length in the input decides whether feet or meters are shown. */
export function systemOfOutline(value: unknown): System {
  let found: System = 'customary';
  const look = (x: unknown): boolean => {
    if (typeof x !== 'object' || x === null) return false;
    if ('dimension' in x && x.dimension === 'length') {
      found = systemOfQuantity(x as Quantity);
      return true;
    }
    return Object.values(x).some(look);
  };
  look(value);
  return found;
}

/** The length of a side as it is shown. */
export function sideText(a: Corner, b: Corner, system: System): string {
  const l = quantityOf('length', Decimal.hypot(b.x.minus(a.x), b.y.minus(a.y)), system);
  return l.format();
}

function dimensions(ring: readonly Corner[], frame: Frame, system: System): string[] {
  if (ring.length > DIMENSIONED) return [];
  const points = planPoints(ring);
  const least = LEAST_SHARE * Math.max(frame.width, frame.height);
  return ring.flatMap((corner, i) => {
    const j = (i + 1) % ring.length;
    const [a, b] = [points[i] as PlanPoint, points[j] as PlanPoint];
    if (Math.hypot(b.x - a.x, b.y - a.y) * frame.scale < least) return [];
    return [dimension(frame, a, b, sideText(corner, ring[j] as Corner, system))];
  });
}

function roundLabel(region: Region, frame: Frame): string[] {
  const { outline } = region;
  const text =
    outline.shape === 'circle'
      ? `diameter ${outline.diameter.format()}`
      : outline.shape === 'ring'
        ? `diameters ${outline.outerDiameter.format()} and ${outline.innerDiameter.format()}`
        : '';
  return text ? [label(frame.x(0), frame.height - 4, text, { 'text-anchor': 'middle' })] : [];
}

/** The size of an opening, beside it on the right. */
function openingLabel(opening: Opening, ring: readonly Corner[], frame: Frame): string[] {
  const points = planPoints(ring);
  const right = Math.max(...points.map(({ x }) => x));
  const middle = (Math.max(...points.map(({ y }) => y)) + Math.min(...points.map(({ y }) => y))) / 2;
  const at = (text: string): string[] => [label(frame.x(right) + 1.5, frame.y(middle) + 1.2, text)];
  if (opening.shape === 'rectangle') return at(`${opening.length.format()} × ${opening.width.format()}`);
  return opening.shape === 'circle' ? at(`diameter ${opening.diameter.format()}`) : [];
}

/** The outline and its openings as one shape with holes. */
export const regionShape = (
  frame: Frame,
  outer: readonly PlanPoint[],
  holes: readonly (readonly PlanPoint[])[],
): string =>
  element('path', {
    class: 'outline',
    d: [outer, ...holes].map((ring) => ringPath(frame, ring)).join(''),
    fill: '#f2f2f2',
    'fill-rule': 'evenodd',
    stroke: '#000',
    'stroke-width': 0.7,
  });

/**
 * Draw the plan of an outline with its openings and dimensions.
 *
 * @param input - an outline that has a place in the plan, and openings
 * @param options - heading
 * @returns an SVG document as text, without external resources; it scales with its frame
 * @throws {InputError} as calculations with outlines do; `not-placed` for offsets and combined outlines
 * @example
 * ```ts
 * import { outlinePlan } from 'flatwork-reckoner/drawing';
 *
 * const svg = outlinePlan({ outline: { shape: 'rectangle', length: '28 ft', width: '18 ft' } });
 * svg.startsWith('<svg '); // true
 * svg.includes('28 ft'); // true
 * ```
 */
export function outlinePlan(input: RegionInput, options: PlanOptions = {}): string {
  const region = readInput(fields(regionFields()), input);
  const { outer, openings } = ringsOf(region);
  const system = systemOfOutline(region);
  const [points, holes] = [planPoints(outer), openings.map(planPoints)];
  const frame = frameFor(points);
  const title = titleOf(options, 'Plan');
  const opened = openings.length === 1 ? 'one opening' : `${openings.length} openings`;
  return document({
    title,
    description: `${region.outline.shape} outline with ${outer.length} corners and ${opened}`,
    frame,
    body: [
      regionShape(frame, points, holes),
      ...dimensions(outer, frame, system),
      ...(region.openings ?? []).flatMap((opening, i) => openingLabel(opening, openings[i] ?? [], frame)),
      ...roundLabel(region, frame),
    ],
  });
}

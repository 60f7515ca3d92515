/** Depth probes over an outline: where it is thin and where it is thick, by lines of equal depth. */
import { type ProbedVolumeInput, probedFields, probedSurface, probesOf } from '../concrete/probed-volume';
import type { Corner } from '../geometry/polygon';
import { flatRing, type Spot, shareWithin, type Triangle, trianglesOf } from '../geometry/surface';
import { Decimal } from '../quantity/decimal';
import { quantityOf } from '../quantity/quantity';
import type { System } from '../quantity/units';
import { readInput } from '../reckoning/calculation';
import { type PlanOptions, planPoints, regionShape, systemOfOutline, titleOf } from './outline-plan';
import { document, element, type Frame, frameFor, label, line, type PlanPoint } from './svg';

const MOST_LINES = 12;
const HALF = 0.5;

/** A hair, so that binary dust does not draw a line at the least or the greatest depth. */
const HAIR = 1e-9;
/** Steps between lines, in inches or in centimeters. */
const STEPS = [0.125, 0.25, 0.5, 1, 2, 3, 6, 12, 24, 60, 120];

const UNIT: Record<System, number> = { customary: 0.0254, metric: 0.01 };

/** The smallest step that makes not too many lines. */
function stepFor(range: number, system: System): number {
  const unit = UNIT[system];
  return unit * (STEPS.find((s) => range / (s * unit) <= MOST_LINES + HAIR) ?? range / unit / MOST_LINES);
}

interface Flat extends PlanPoint {
  readonly z: number;
}

const flat = ({ x, y, z }: Spot): Flat => ({ x: x.toNumber(), y: y.toNumber(), z: z.toNumber() });

/** Where a level crosses the sides of a triangle. */
function crossing(corners: readonly Flat[], level: number): PlanPoint[] {
  return corners.flatMap((a, i) => {
    const b = corners[(i + 1) % corners.length] as Flat;
    if (a.z < level === b.z < level) return [];
    const t = (level - a.z) / (b.z - a.z);
    return [{ x: a.x + t * (b.x - a.x), y: a.y + t * (b.y - a.y) }];
  });
}

function linesOf(triangles: readonly Triangle[], levels: readonly number[], frame: Frame): string[] {
  return levels.map((level) => {
    const pieces = triangles.flatMap((triangle) => {
      const [a, b] = crossing(triangle.map(flat), level);
      return a && b ? [line(frame, a, b, {})] : [];
    });
    return element(
      'g',
      { class: 'level', stroke: '#000', 'stroke-width': 0.25, 'stroke-dasharray': '2 1' },
      ...pieces,
    );
  });
}

const depthText = (meters: Decimal, system: System): string => {
  const depth = quantityOf('length', meters, system);
  return system === 'metric' ? depth.format('mm', { places: 0 }) : depth.format('ft-in', { denominator: 8 });
};

function mark(spot: Spot, frame: Frame, system: System): string {
  const { x, y } = flat(spot);
  const [px, py] = [frame.x(x), frame.y(y)];
  return element(
    'g',
    { class: 'probe' },
    element('circle', { cx: px, cy: py, r: 0.9, fill: '#000' }),
    label(px + 1.6, py - 1.2, depthText(spot.z, system)),
  );
}

function levelsBetween(least: number, most: number, step: number): number[] {
  const first = Math.floor(least / step + HAIR) + 1;
  const count = Math.max(0, Math.ceil(most / step - HAIR) - first);
  return Array.from({ length: Math.min(count, 2 * MOST_LINES) }, (_, i) => (first + i) * step);
}

/**
 * Draw depth probes over an outline, with lines of equal depth between them.
 *
 * @param input - outline and probes, as for `probedVolume`
 * @param options - heading
 * @returns an SVG document as text, without external resources; it scales with its frame
 * @throws {InputError} as `probedVolume` does
 * @example
 * ```ts
 * import { thicknessPlan } from 'flatwork-reckoner/drawing';
 *
 * const svg = thicknessPlan({
 *   outline: { shape: 'rectangle', length: '20 ft', width: '10 ft' },
 *   probes: [
 *     { x: '2 ft', y: '2 ft', depth: '4 in' },
 *     { x: '18 ft', y: '8 ft', depth: '6 1/2 in' },
 *   ],
 * });
 * svg.includes('6 1/2 in'); // true
 * ```
 */
export function thicknessPlan(input: ProbedVolumeInput, options: PlanOptions = {}): string {
  const read = readInput(probedFields(), input);
  const { ring, spots, corners } = probedSurface(read);
  const system = systemOfOutline(probesOf(read));
  const points = planPoints(ring);
  const frame = frameFor(points);
  const [first, outline] = [ring[0] as Corner, flatRing(ring)];
  // A triangle that a re-entrant corner cuts is drawn where most of it is slab.
  const triangles = trianglesOf([...spots, ...corners]).filter((t) => shareWithin(t, first, outline) > HALF);
  const depths = spots.map(({ z }) => z);
  const [least, most] = [Decimal.min(...depths), Decimal.max(...depths)];
  const step = stepFor(most.minus(least).toNumber(), system);
  const levels = levelsBetween(least.toNumber(), most.toNumber(), step);
  const title = titleOf(options, 'Depth');
  const stepText = depthText(new Decimal(step.toPrecision(12)), system);
  return document({
    title,
    description: `${spots.length} probes from ${depthText(least, system)} to ${depthText(most, system)} deep, with ${levels.length} lines of equal depth ${stepText} apart`,
    frame,
    body: [
      regionShape(frame, points, []),
      ...linesOf(triangles, levels, frame),
      ...spots.map((spot) => mark(spot, frame, system)),
    ],
    legend: [
      {
        text: `equal depth, every ${stepText}`,
        line: { stroke: '#000', 'stroke-width': 0.25, 'stroke-dasharray': '2 1' },
      },
      { text: 'edge of the slab', line: { stroke: '#000', 'stroke-width': 0.7 } },
    ],
  });
}

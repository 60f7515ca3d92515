/** Depth probes over an outline: where it is thin and where it is thick, by lines of equal depth. */
import { type ProbedVolumeInput, probedFields, probedSurface, probesOf } from '../concrete/probed-volume';
import type { Corner } from '../geometry/polygon';
import { flatRing, type Spot, shareWithin, type Triangle, trianglesOf } from '../geometry/surface';
import { Decimal } from '../quantity/decimal';
import { quantityOf } from '../quantity/quantity';
import type { System } from '../quantity/units';
import { readInput } from '../reckoning/calculation';
import { systemOfInput } from '../reckoning/system';
import { say } from '../reckoning/words';
import type { PlanPoint } from './frame';
import { lineSample } from './legend';
import { type PlanOptions, readPlanOptions } from './plan-options';
import { drawSlab, EDGE, overAll, sheetFor } from './region-plan';
import type { Sheet } from './sheet';
import { coordinate } from './svg';

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

/** From the lowest corner, in binary meters. */
type Flatten = (spot: Spot) => Flat;

/** Where a level crosses the sides of a triangle. */
function crossing(corners: readonly Flat[], level: number): PlanPoint[] {
  return corners.flatMap((a, i) => {
    const b = corners[(i + 1) % corners.length] as Flat;
    if (a.z < level === b.z < level) return [];
    const t = (level - a.z) / (b.z - a.z);
    return [{ x: a.x + t * (b.x - a.x), y: a.y + t * (b.y - a.y) }];
  });
}

const LEVEL = { stroke: 'ink', 'stroke-width': 0.7, 'stroke-dasharray': '5 2.5' } as const;

type Piece = readonly [PlanPoint, PlanPoint];

const piecesAt = (triangles: readonly (readonly Flat[])[], level: number): Piece[] =>
  triangles.flatMap((corners) => {
    const [a, b] = crossing(corners, level);
    return a && b ? [[a, b] as const] : [];
  });

/** One line of equal depth; its pieces are drawn together. */
function drawLevel(sheet: Sheet, pieces: readonly Piece[]): void {
  const d = pieces.map(([a, b]) => {
    const [p, q] = [sheet.frame.at(a), sheet.frame.at(b)];
    sheet.room.draw(p, q);
    return `M${coordinate(p.x)} ${coordinate(p.y)}L${coordinate(q.x)} ${coordinate(q.y)}`;
  });
  sheet.draw('path', { d: d.join(''), ...LEVEL, class: 'level' });
}

const longOf = ([a, b]: Piece): number => Math.hypot(b.x - a.x, b.y - a.y);

/** Where more lines than this would be hidden a line goes without its depth. */
const CLEAR = 0.35;

/** The depth of a line, on its longest piece where there is room. */
function nameLevel(sheet: Sheet, pieces: readonly Piece[], text: string): void {
  const longest = [...pieces].sort((a, b) => longOf(b) - longOf(a)).slice(0, 4);
  const boxes = longest.map(([a, b]) => {
    const middle = sheet.frame.at({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 });
    return sheet.boxOf(text, middle);
  });
  sheet.place(text, boxes, { class: 'level', 'font-style': 'italic' }, CLEAR);
}

function levelsBetween(least: number, most: number, step: number): number[] {
  const first = Math.floor(least / step + HAIR) + 1;
  const count = Math.max(0, Math.ceil(most / step - HAIR) - first);
  return Array.from({ length: Math.min(count, 2 * MOST_LINES) }, (_, i) => (first + i) * step);
}

/** Positions from the lowest corner of the outline. */
function flattenFrom(ring: readonly Corner[]): Flatten {
  const [x0, y0] = [Decimal.min(...ring.map(({ x }) => x)), Decimal.min(...ring.map(({ y }) => y))];
  return ({ x, y, z }) => ({ x: x.minus(x0).toNumber(), y: y.minus(y0).toNumber(), z: z.toNumber() });
}

/**
 * Draw depth probes over an outline, with lines of equal depth between them.
 *
 * @param input - outline and probes, as for `probedVolume`
 * @param options - heading, units, language, size and colors
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
 *     { x: '18 ft', y: '8 ft', depth: '6-1/2 in' },
 *   ],
 * });
 * svg.includes('6-1/2 in'); // true
 * ```
 */
export function thicknessPlan(input: ProbedVolumeInput, options: PlanOptions = {}): string {
  const style = readPlanOptions(options);
  const read = readInput(probedFields(), input);
  const { ring, spots, corners } = probedSurface(read);
  const flatten = flattenFrom(ring);
  const points = ring.map((corner) => flatten({ ...corner, z: new Decimal(0) }));
  const sheet = sheetFor(style, 'Depth', systemOfInput(probesOf(read)).system, points);
  const [first, outline] = [ring[0] as Corner, flatRing(ring)];
  // A triangle that a re-entrant corner cuts is drawn where most of it is slab.
  const triangles = trianglesOf([...spots, ...corners])
    .filter((t: Triangle) => shareWithin(t, first, outline) > HALF)
    .map((t) => t.map(flatten));
  const depths = spots.map(({ z }) => z);
  const [least, most] = [Decimal.min(...depths), Decimal.max(...depths)];
  const step = stepFor(most.minus(least).toNumber(), sheet.system);
  const levels = levelsBetween(least.toNumber(), most.toNumber(), step);
  const told = (meters: Decimal): string => sheet.sized(quantityOf('length', meters, sheet.system));
  const between = told(new Decimal(step.toPrecision(12)));
  drawSlab(sheet, { points, holes: [] });
  const lines = levels.map((level) => piecesAt(triangles, level));
  for (const pieces of lines) drawLevel(sheet, pieces);
  spots.forEach((spot) => {
    sheet.dot(sheet.frame.at(flatten(spot)), 2.2, { class: 'probe' });
  });
  for (const spot of spots) {
    sheet.label(told(spot.z), sheet.frame.at(flatten(spot)), { gap: 4, class: 'depth' });
  }
  overAll(sheet, points);
  lines.forEach((pieces, i) => {
    nameLevel(sheet, pieces, told(new Decimal(levels[i] as number)));
  });
  sheet.explain(
    {
      text: sheet.text('probe, with the depth there'),
      sample: (x, y) => [['circle', { cx: x, cy: y, r: 2.2, fill: 'ink' }]],
    },
    levels.length > 0 && {
      text: sheet.text(say`equal depth, every ${{ between }}`),
      sample: lineSample(LEVEL),
    },
    { text: sheet.text('edge of the slab'), sample: lineSample(EDGE) },
  );
  const params = {
    probes: spots.length,
    least: told(least),
    most: told(most),
    lines: levels.length,
    between,
  };
  return sheet.finish(
    sheet.text({
      says: 'Probes: {probes}, from {least} to {most} deep; lines of equal depth: {lines}, {between} apart',
      params,
    }),
  );
}

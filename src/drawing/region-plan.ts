/** A slab on its plan: its rings in binary meters from its lowest corner, drawn, and measured over all. */

import type { Corner } from '../geometry/polygon';
import type { Outline } from '../outline/outline';
import { type Region, ringsOf } from '../outline/region';
import { Decimal } from '../quantity/decimal';
import { quantityOf } from '../quantity/quantity';
import type { System } from '../quantity/units';
import { type Saying, say } from '../reckoning/words';
import { straightSides } from './base-line';
import { dimension } from './dimension-line';
import { extentOf, type Margins, type PlanPoint } from './frame';
import type { PlanStyle } from './plan-options';
import { Sheet } from './sheet';

/** A slab with its rings, exact and for drawing. */
export interface Slab {
  readonly outline: Outline;
  readonly outer: readonly Corner[];
  readonly openings: readonly (readonly Corner[])[];
  /** From the lowest corner: the drawing is the same at survey coordinates. */
  readonly spot: (corner: Corner) => PlanPoint;
  /** The same for what is known in binary meters only. */
  readonly near: (point: PlanPoint) => PlanPoint;
  readonly points: readonly PlanPoint[];
  readonly holes: readonly (readonly PlanPoint[])[];
}

/** The slab of a region that has been read. */
export function slabOf(region: Region, { outer, openings } = ringsOf(region)): Slab {
  const x0 = Decimal.min(...outer.map(({ x }) => x));
  const y0 = Decimal.min(...outer.map(({ y }) => y));
  const spot = ({ x, y }: Corner): PlanPoint => ({ x: x.minus(x0).toNumber(), y: y.minus(y0).toNumber() });
  const low = { x: x0.toNumber(), y: y0.toNumber() };
  return {
    outline: region.outline,
    near: ({ x, y }) => ({ x: x - low.x, y: y - low.y }),
    outer,
    openings,
    spot,
    points: outer.map(spot),
    holes: openings.map((ring) => ring.map(spot)),
  };
}

/** A sheet for a slab. */
export const sheetFor = (
  style: PlanStyle,
  usual: Saying,
  system: System,
  points: readonly PlanPoint[],
  margins: Partial<Margins> = {},
): Sheet => new Sheet({ style, usual, system, points, margins });

export const EDGE = { stroke: 'ink', 'stroke-width': 1.6, 'stroke-linejoin': 'round' } as const;
export const GROUND = { fill: 'ink', 'fill-opacity': 0.05 } as const;

/** The slab and its openings as one shape with holes. */
export function drawSlab(
  sheet: Sheet,
  { points, holes }: { readonly points: readonly PlanPoint[]; readonly holes: Slab['holes'] },
): void {
  sheet.shape([points, ...holes], { ...GROUND, ...EDGE, class: 'outline' });
}

/** The plan over all, along the bottom and up the right. */
export function overAll(sheet: Sheet, points: readonly PlanPoint[], away?: number): void {
  const { from, to } = extentOf(points);
  const told = (n: number): string => sheet.length(sheet.meters(n));
  const far = away === undefined ? {} : { away };
  dimension(sheet, from, { x: to.x, y: from.y }, told(to.x - from.x), far);
  dimension(sheet, { x: to.x, y: from.y }, to, told(to.y - from.y), far);
}

/** More sides than these are dimensioned over all only. */
const DIMENSIONED = 40;

/** A dimension beside every straight side; over all where there are none, or too many. */
export function sideDimensions(sheet: Sheet, { outline, outer, spot, points }: Slab): void {
  const sides = straightSides(outline, outer);
  const all = sides.length > DIMENSIONED || sides.length === 0;
  if (all) overAll(sheet, points);
  if (sides.length > DIMENSIONED) {
    sheet.note(sheet.text(say`too many sides to dimension here: they are as they were given`));
  }
  if (all) return;
  for (const { from, to } of sides) {
    const long = Decimal.hypot(to.x.minus(from.x), to.y.minus(from.y));
    dimension(sheet, spot(from), spot(to), sheet.length(quantityOf('length', long, sheet.system)));
  }
}

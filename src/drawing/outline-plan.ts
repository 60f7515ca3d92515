/** The plan of an outline with its openings, dimensions, and what openings and curves are laid out from. */
import { type RegionInput, regionFields } from '../outline/region';
import { readInput } from '../reckoning/calculation';
import { fields } from '../reckoning/fields';
import { systemOfInput } from '../reckoning/system';
import { say } from '../reckoning/words';
import { baseLineOf, showBaseLine } from './base-line';
import { type PlanOptions, readPlanOptions } from './plan-options';
import { drawSlab, sheetFor, sideDimensions, slabOf } from './region-plan';
import { showCurves, showOpenings } from './setting-out';

/**
 * Draw the plan of an outline with its openings and dimensions.
 *
 * @param input - an outline that has a place in the plan, and openings
 * @param options - heading, units, language, size and colors
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
  const style = readPlanOptions(options);
  const region = readInput(fields(regionFields()), input);
  const slab = slabOf(region);
  const sheet = sheetFor(style, 'Plan', systemOfInput(region).system, slab.points);
  const base = baseLineOf(region.outline, slab.outer);
  drawSlab(sheet, slab);
  showOpenings(sheet, base, region, slab.openings, slab.spot);
  showCurves(sheet, base, region.outline, slab.spot);
  sideDimensions(sheet, slab);
  // Without anything to find by it a base line only asks what it is for.
  const curved = ['curved', 'circle', 'ring', 'sector'].includes(region.outline.shape);
  if (curved || slab.openings.length > 0) showBaseLine(sheet, base, slab.spot);
  const [sides, openings] = [slab.outer.length, slab.openings.length];
  return sheet.finish(
    sheet.text(
      curved
        ? say`Slab with round edges; openings: ${{ openings }}`
        : say`Slab with ${{ sides }} sides; openings: ${{ openings }}`,
    ),
  );
}

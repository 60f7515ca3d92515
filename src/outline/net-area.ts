/** The area of a plan less the openings in it, each by its own formula. */
import { giveOneOf } from '../quantity/faults';
import type { Quantity } from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import type { Pad } from '../reckoning/pad';
import { type Measured, measure } from './measure';
import type { Outline } from './outline';
import { type Opening, ringsOf } from './region';

type Area = Quantity<'area'>;

/** An area less those of openings. */
export function netArea(whole: Area, areas: readonly Area[], pad: Pad): Area {
  if (areas.length === 0) return whole;
  const values: Record<string, Area> = { A: whole };
  areas.forEach((area, i) => {
    values[`a${i + 1}`] = area;
  });
  const net = areas.reduce((rest, area) => rest.minus(area), whole);
  return pad.step('area less openings', `N = ${Object.keys(values).join(' − ')}`, values, net);
}

/** An opening, told by its number. */
const openingMeasured = (opening: Opening, i: number, pad: Pad): Measured =>
  measure(opening, pad, `openings[${i}]`);

/** How large an opening is, told by its number. */
export const openingArea = (opening: Opening, i: number, pad: Pad): Area =>
  openingMeasured(opening, i, pad).area;

/** The areas of openings, as {@link openMeasured}. */
export const openAreas = (
  outline: Outline | undefined,
  openings: readonly Opening[] | undefined,
  pad: Pad,
): Area[] => openMeasured(outline, openings, pad).map(({ area }) => area);

/**
 * The areas and edges of openings, checked to lie inside their outline and apart; a bare area has none.
 *
 * @throws {InputError} `give-one-of`, `outside-outline`, `openings-meet`, and as outlines do that have no place
 */
export function openMeasured(
  outline: Outline | undefined,
  openings: readonly Opening[] | undefined,
  pad: Pad,
): Measured[] {
  if (!openings?.length) return [];
  if (!outline) return refuse('openings', giveOneOf(['openings', 'area']));
  ringsOf({ outline, openings });
  return openings.map((opening, i) => openingMeasured(opening, i, pad));
}

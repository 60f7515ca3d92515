/** Lines of equal height, and heights as they are written. */
import { nextEdge, type Tin } from '../../geometry/tin';
import { metersAs } from '../../grade/spots';
import type { Site } from '../../grade/terrain';
import { Decimal } from '../../quantity/decimal';
import * as faults from '../../quantity/faults';
import { canonicalValue, type Quantity } from '../../quantity/quantity';
import { refuse } from '../../reckoning/calculation';
import type { Sheet } from '../sheet';
import { crossing, pieceOf } from './facets';
import { STROKES } from './strokes';

type Length = Quantity<'length'>;

const CONTOUR_LIMIT = 200;
const CONTOURS = 12;
const HEAVY_EVERY = 5;

function contourOf(tin: Tin, sheet: Sheet, level: number): string {
  const pieces: string[] = [];
  for (let t = 0; t < tin.facets; t += 1) {
    const cuts = [3 * t, 3 * t + 1, 3 * t + 2].flatMap((e) => {
      const at = crossing(tin, tin.corner[e] as number, tin.corner[nextEdge(e)] as number, level);
      return at ? [at] : [];
    });
    const [a, b] = cuts;
    if (!a || !b) continue;
    pieces.push(pieceOf(sheet, a, b));
  }
  return pieces.join('');
}

/** Steps that people count in: 1, 2 or 5 times a power of ten of the unit. */
function roundStep(rough: number): number {
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = [1, 2, 5, 10].find((k) => k * power >= rough) ?? 10;
  return step * power;
}

/** Heights of the contours in meters, and the step, both in whole steps of the datum. */
function contourLevels(
  sheet: Sheet,
  { survey, terrain }: Site,
  interval: Length | undefined,
): { levels: Decimal[]; step: Decimal } {
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const v of terrain.tin.corner) {
    low = Math.min(low, terrain.tin.z[v] as number);
    high = Math.max(high, terrain.tin.z[v] as number);
  }
  const unit = sheet.system === 'metric' ? new Decimal(1) : new Decimal('0.3048');
  const rough = Math.max((high - low) / CONTOURS / unit.toNumber(), 1e-6);
  const step = interval ? canonicalValue(interval) : unit.times(new Decimal(roundStep(rough).toPrecision(3)));
  const base = survey.exact(0).z;
  const first = base.plus(low).div(step).ceil();
  const last = base.plus(high).div(step).floor();
  const count = last.minus(first).toNumber() + 1;
  if (count > CONTOUR_LIMIT) refuse('interval', faults.tooMany('contours', CONTOUR_LIMIT));
  return { step, levels: Array.from({ length: Math.max(count, 0) }, (_, i) => first.plus(i).times(step)) };
}

/** Elevations are read off a rod in decimal feet, or in meters. */
export const UNITS = { customary: 'ft', metric: 'm' } as const;

export const elevationText = (sheet: Sheet, z: Decimal): string => {
  const places = sheet.system === 'metric' ? 3 : 2;
  return sheet.marks(metersAs(z, sheet.system).format(UNITS[sheet.system], { places }));
};

/** The same without its unit, which the legend gives. */
export const spotText = (sheet: Sheet, z: Decimal): string =>
  elevationText(sheet, z).replace(/\s\p{L}+$/u, '');

export function contours(sheet: Sheet, site: Site, interval: Length | undefined): string {
  const { tin } = site.terrain;
  const base = site.survey.exact(0).z;
  const { levels, step } = contourLevels(sheet, site, interval);
  for (const level of levels) {
    // A hair above, so that a contour never runs along a level side.
    const d = contourOf(tin, sheet, level.minus(base).toNumber() + 1e-9);
    const heavy = level.div(step).round().mod(HEAVY_EVERY).isZero();
    if (d !== '') sheet.draw('path', { d, ...(heavy ? STROKES.heavy : STROKES.contour), class: 'contour' });
  }
  return elevationText(sheet, step);
}

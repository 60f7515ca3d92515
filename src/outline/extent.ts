/** Where a plane over an outline is lowest and highest: at a corner, or on an arc. */

import { extremesAlong, type PlacedArc, placedArc } from '../geometry/arc';
import { type Corner, doubleArea } from '../geometry/polygon';
import { type Decimal, PI, ZERO } from '../quantity/decimal';
import { canonicalValue } from '../quantity/quantity';
import { cornersOf } from './corners';
import { edgesOf } from './curved';
import type { Outline } from './outline';
import { ringOf } from './ring';

const ORIGIN: Corner = { x: ZERO, y: ZERO };

function arcsOf(outline: Outline): PlacedArc[] {
  const full = PI.times(2);
  const around = (radius: Decimal, turn: Decimal): PlacedArc => ({
    center: ORIGIN,
    radius,
    start: ZERO,
    turn,
  });
  switch (outline.shape) {
    case 'circle':
      return [around(canonicalValue(outline.diameter).div(2), full)];
    case 'ring':
      return [around(canonicalValue(outline.outerDiameter).div(2), full)];
    case 'sector': {
      const turn = canonicalValue(outline.angle).times(PI).div(180);
      const radii = [outline.radius, ...(outline.innerRadius ? [outline.innerRadius] : [])];
      return radii.map((r) => around(canonicalValue(r), turn));
    }
    case 'curved': {
      const corners = cornersOf(outline.points);
      const outwards = doubleArea(corners).isNegative() ? -1 : 1;
      const edges = edgesOf(outline.points, corners, 'outline.points');
      return edges.filter(({ rise }) => !rise.isZero()).map((edge) => placedArc(edge, outwards));
    }
    default:
      return [];
  }
}

/**
 * The corners of an outline, and the points of its arcs that are extreme along `(b, c)`.
 *
 * @throws {InputError} as `ringOf` does
 */
export function extremePoints(outline: Outline, b: Decimal, c: Decimal): Corner[] {
  return [...ringOf(outline), ...arcsOf(outline).flatMap((arc) => extremesAlong(arc, b, c))];
}

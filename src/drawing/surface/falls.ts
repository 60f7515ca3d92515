/** Arrows the way that water runs, with their slope. */

import type { Site } from '../../grade/terrain';
import { Decimal } from '../../quantity/decimal';
import { quantityOf } from '../../quantity/quantity';
import { arrowPath } from '../arrow';
import type { PlanPoint } from '../frame';
import type { PagePoint } from '../room';
import type { Sheet } from '../sheet';
import { facetRing } from './facets';
import { STROKES } from './strokes';

/** Half an arrow, and what must be free around it, by the height of the text. */
const ARROW = { half: 0.85, apart: 3.4 };
export const HEAD = 0.42;

export interface Fall {
  readonly at: PagePoint;
  readonly u: PagePoint;
  readonly slope: number;
}

/** Falls of the largest facets, none near another. */
export function falls(sheet: Sheet, { tin }: Site['terrain']): Fall[] {
  const facets = Array.from({ length: tin.facets }, (_, t) => {
    const [a, b, c] = facetRing(tin, t) as [PlanPoint, PlanPoint, PlanPoint];
    const area = Math.abs((b.x - a.x) * (c.y - a.y) - (c.x - a.x) * (b.y - a.y));
    return { t, area, middle: { x: (a.x + b.x + c.x) / 3, y: (a.y + b.y + c.y) / 3 } };
  });
  facets.sort((a, b) => b.area - a.area || a.t - b.t);
  const apart = ARROW.apart * sheet.size;
  const taken = new Set<string>();
  const field = ({ x, y }: PagePoint, i = 0, j = 0): string =>
    `${Math.floor(x / apart) + i},${Math.floor(y / apart) + j}`;
  const found: Fall[] = [];
  for (const { t, middle } of facets) {
    const [fx, fy] = [tin.fallX[t] as number, tin.fallY[t] as number];
    const slope = Math.hypot(fx, fy);
    const at = sheet.frame.at(middle);
    if (slope < 1e-9 || taken.has(field(at))) continue;
    taken.add(field(at));
    const near = found.some(({ at: other }) => Math.hypot(other.x - at.x, other.y - at.y) < apart);
    if (!near) found.push({ at, u: { x: fx / slope, y: -fy / slope }, slope });
  }
  return found;
}

const slopeText = (sheet: Sheet, slope: number): string => {
  const exact = quantityOf('slope', new Decimal(slope.toFixed(9)), sheet.system);
  return sheet.marks(exact.format('%', { places: 1 }));
};

export function drawFalls(sheet: Sheet, all: readonly Fall[]): void {
  const half = ARROW.half * sheet.size;
  for (const { at, u } of all) {
    const tail = { x: at.x - u.x * half, y: at.y - u.y * half };
    sheet.room.draw(tail, { x: at.x + u.x * half, y: at.y + u.y * half });
    sheet.draw('path', { d: arrowPath(at, u, half, HEAD * sheet.size), ...STROKES.arrow, class: 'fall' });
  }
}

export function nameFalls(sheet: Sheet, all: readonly Fall[]): void {
  for (const { at, slope } of all) {
    sheet.label(slopeText(sheet, slope), at, { gap: sheet.size * 0.5, mayMove: false, class: 'slope' });
  }
}

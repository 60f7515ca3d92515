/** Where water stands, and where the surface runs to a building. */
import type { Tin } from '../../geometry/tin';
import { pondsFound } from '../../grade/pond-figures';
import { type ShorePoint, shoreOf } from '../../grade/ponds';
import type { Site } from '../../grade/terrain';
import type { Decimal } from '../../quantity/decimal';
import { quantityOf } from '../../quantity/quantity';
import { say } from '../../reckoning/words';
import type { PlanPoint } from '../frame';
import { hatch } from '../hatch';
import type { PagePoint } from '../room';
import type { Sheet } from '../sheet';
import { pathThrough } from '../svg';
import { cornerOf, crossing, facetRing } from './facets';
import { STROKES } from './strokes';

function shorePlace(tin: Tin, point: ShorePoint, level: number): PlanPoint {
  if (point.length === 1) return cornerOf(tin, point[0]);
  return crossing(tin, point[0], point[1], level) ?? cornerOf(tin, point[0]);
}

export interface Pond {
  readonly at: PagePoint;
  readonly depth: Decimal;
}

export function drawPonds(sheet: Sheet, site: Site): Pond[] {
  const { survey, terrain } = site;
  return pondsFound(site).map((pond) => {
    const level = terrain.tin.z[pond.spill] as number;
    const rings = shoreOf(terrain.tin, pond, level).map((ring) =>
      ring.map((p) => sheet.frame.at(shorePlace(terrain.tin, p, level))),
    );
    const d = rings.map((ring) => `${pathThrough(ring)}Z`).join('');
    sheet.draw('path', { d: hatch(rings, { turn: 0, apart: 4, dash: 6 }), ...STROKES.hatch, class: 'water' });
    sheet.draw('path', { d, ...STROKES.shore, class: 'pond' });
    const depth = survey.exact(pond.spill).z.minus(survey.exact(pond.lowest).z);
    return { at: sheet.frame.at(cornerOf(terrain.tin, pond.lowest)), depth };
  });
}

export function namePonds(sheet: Sheet, ponds: readonly Pond[]): void {
  for (const { at, depth } of ponds) {
    const text = sheet.sized(quantityOf('length', depth, sheet.system));
    sheet.label(sheet.text(say`${{ depth: [text] }} deep`), at, { class: 'depth', prefer: [90, -90] });
  }
}

/** Where the surface runs to a building. */
export function drawBack(sheet: Sheet, tin: Tin, facets: readonly number[]): void {
  if (facets.length === 0) return;
  const rings = facets.map((t) => facetRing(tin, t).map(sheet.frame.at));
  sheet.draw('path', { d: hatch(rings, { turn: 45, apart: 5 }), ...STROKES.hatch, class: 'runs-back' });
  sheet.draw('path', { d: hatch(rings, { turn: -45, apart: 5 }), ...STROKES.hatch, class: 'runs-back' });
}

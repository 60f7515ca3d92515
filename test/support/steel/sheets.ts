/** Looks mesh over an outline over, place by place. Lengths in meters. */
import type { MeshPlace, MeshRegionInput } from '../../../src/index';
import { boxOf, depthIn, type Plan, polygonOf, type Spot } from '../../steel/outlines';

const TINY = 1e-5;

const SHEET = { length: 4.8, width: 2.4 };

export const meshInput = (plan: Plan, edge: number): MeshRegionInput => ({
  outline: polygonOf(plan.outer),
  openings: plan.openings.map(polygonOf),
  form: 'sheets',
  pieceLength: `${SHEET.length} m`,
  pieceWidth: `${SHEET.width} m`,
  edge: `${edge} m`,
  sideLap: '0.2 m',
  endLap: '0.3 m',
});

/** Twice the signed area of a triangle, to tell on which side of a line a place lies. */
const side = (a: Spot, b: Spot, p: Spot): number => (b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x);

const covers = ({ corners }: MeshPlace, p: Spot): boolean =>
  corners.every((a, i) => side(a, corners[(i + 1) % corners.length] as Spot, p) >= -TINY);

/** How many of 60 places that mesh is due at have none. */
export function uncovered(
  plan: Plan,
  places: readonly MeshPlace[],
  edge: number,
  random: () => number,
): number {
  const [x0, x1, y0, y1] = boxOf(plan.outer);
  let missed = 0;
  for (let k = 0; k < 60; k += 1) {
    const p = { x: x0 + random() * (x1 - x0), y: y0 + random() * (y1 - y0) };
    if (depthIn(plan, p) > edge + TINY && !places.some((place) => covers(place, p))) missed += 1;
  }
  return missed;
}

/** Everything that is wrong with mesh; nothing when it is right. */
export function meshFaults(
  plan: Plan,
  places: readonly MeshPlace[],
  edge: number,
  random: () => number,
): string[] {
  const missed = uncovered(plan, places, edge, random);
  const found = missed > 0 ? [`${missed} places have no mesh`] : [];
  if (places.some(({ length }) => length > SHEET.length + TINY)) found.push('a piece is longer than a sheet');
  return found;
}

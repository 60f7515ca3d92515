/** Corners and sides of the facets of a surface, on the plan. */
import type { Tin } from '../../geometry/tin';
import type { PlanPoint } from '../frame';
import type { Sheet } from '../sheet';
import { pathThrough } from '../svg';

export const cornerOf = ({ x, y }: Tin, v: number): PlanPoint => ({ x: x[v] as number, y: y[v] as number });

export const facetRing = (tin: Tin, t: number): PlanPoint[] =>
  [0, 1, 2].map((k) => cornerOf(tin, tin.corner[3 * t + k] as number));

/** Where a level crosses the side from p to q. */
export function crossing(tin: Tin, p: number, q: number, level: number): PlanPoint | undefined {
  const [a, b] = [(tin.z[p] as number) - level, (tin.z[q] as number) - level];
  if (a < 0 === b < 0) return undefined;
  const s = a / (a - b);
  const [from, to] = [cornerOf(tin, p), cornerOf(tin, q)];
  return { x: from.x + s * (to.x - from.x), y: from.y + s * (to.y - from.y) };
}

/** A piece of a line, on the page. */
export function pieceOf(sheet: Sheet, a: PlanPoint, b: PlanPoint): string {
  const [p, q] = [sheet.frame.at(a), sheet.frame.at(b)];
  sheet.room.draw(p, q);
  return pathThrough([p, q]);
}

/**
 * Valleys: where two facets drain into the side between them, or one into a curb.
 *
 * Water that both sides shed runs along the crease, so the crease must fall by itself. Its fall is the
 * difference of its ends over its length in plan. A valley laid level holds water however steep its sides
 * are. Ridges, folds that drain across, and creases that lie in a drain are no valleys; nor are
 * those under a pond, of which the pond is told.
 */
import { nextEdge } from '../geometry/tin';
import { awayFall, nearestTo } from './lines';
import { fallAlong, NO_FALL } from './runs';
import type { Site } from './terrain';

/** A crease that water runs along. */
export interface FoundValley {
  /** The half-edge. */
  readonly edge: number;
  /** Its higher and its lower end. */
  readonly from: number;
  readonly to: number;
  /** Fall along it per meter. */
  readonly fall: number;
  /** The least that it must fall per meter. */
  readonly least: number;
  /** True where that is what the code asks of swales by a building. */
  readonly bySwaleRule: boolean;
  /** 1 + the curb along it; 0 between two facets. */
  readonly curb: number;
}

/** The least that valleys must fall per meter. */
export interface ValleyLeast {
  /** Anywhere. */
  readonly least: number;
  /** Within the zone of a building, where what lies beyond falls back toward it. */
  readonly swale: number;
  readonly zone: number;
}

/** True where both ends lie in a drain, which takes the water all along. */
function inDrain({ terrain: { bounds } }: Site, p: number, q: number): boolean {
  return (bounds.drain[p] as number) > 0 && bounds.drain[p] === bounds.drain[q];
}

/** True where both ends lie in one pond deep enough to count: that is said of the pond. */
function drowned({ terrain: { ponds } }: Site, p: number, q: number, deep: number): boolean {
  const id = ponds.pondOf[p] as number;
  return id !== -1 && id === ponds.pondOf[q] && (ponds.ponds[id]?.depth ?? 0) > deep;
}

/** True where water comes to the half-edge from every side and cannot pass. */
function gathers({ terrain: { tin, runs, bounds } }: Site, e: number): boolean {
  if ((runs.out[e] as number) <= 0) return false;
  const other = tin.twin[e] as number;
  if (other !== -1) return other > e && (runs.out[other] as number) > 0;
  const wall = bounds.wall[e] as number;
  return wall > 0 && !bounds.mustBeDry[wall - 1];
}

/** True where a facet beside the crease falls back toward the wall nearest to it. */
function fallsBack(site: Site, t: number): boolean {
  const away = awayFall(site.walls, site.terrain.tin, t);
  return away !== undefined && away < -NO_FALL;
}

function leastOf(site: Site, e: number, { least, swale, zone }: ValleyLeast): [number, boolean] {
  const { tin } = site.terrain;
  const other = tin.twin[e] as number;
  if (site.walls.length === 0 || other === -1) return [least, false];
  const near = [tin.corner[e] as number, tin.corner[nextEdge(e)] as number].some(
    (v) => nearestTo(site.walls, tin.x[v] as number, tin.y[v] as number).distance < zone - NO_FALL,
  );
  const catches = fallsBack(site, (e / 3) | 0) || fallsBack(site, (other / 3) | 0);
  return near && catches && swale > least ? [swale, true] : [least, false];
}

/** Every valley of the surface, in the order of its facets. */
export function valleysOf(site: Site, limits: ValleyLeast, deep: number): FoundValley[] {
  const { tin, bounds } = site.terrain;
  const found: FoundValley[] = [];
  for (let e = 0; e < tin.corner.length; e += 1) {
    if (!gathers(site, e)) continue;
    const [p, q] = [tin.corner[e] as number, tin.corner[nextEdge(e)] as number];
    if (inDrain(site, p, q) || drowned(site, p, q, deep)) continue;
    const fall = fallAlong(tin, p, q);
    const [from, to] = fall < 0 ? [q, p] : [p, q];
    const [least, bySwaleRule] = leastOf(site, e, limits);
    found.push({
      edge: e,
      from,
      to,
      fall: Math.abs(fall),
      least,
      bySwaleRule,
      curb: bounds.wall[e] as number,
    });
  }
  return found;
}

/** True for a valley that does not fall as it must. */
export const isFlat = ({ fall, least }: FoundValley): boolean => least - fall > NO_FALL;

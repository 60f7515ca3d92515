/**
 * What of a surface falls back toward a building, near to it or far off, and what becomes of its water.
 *
 * A facet falls back when its fall has a part straight toward the wall nearest to its middle. Its water
 * may reach a wall; be caught before it by a valley that falls as it must, or a drain; stand in a valley
 * too flat or a pond; or leave over an open edge.
 */

import { type Reach, standingOf } from './flow';
import { awayFall, nearestToFacet } from './lines';
import { fallOf, NO_FALL, type Standing } from './runs';
import type { Site } from './terrain';
import type { FoundValley } from './valleys';

/** Shares below this are rounding. */
export const TRIFLE = 1e-6;

/** Facets that fall back, with the shares of their rain by where it goes. */
export interface FallingBack {
  readonly facets: readonly number[];
  /** Share caught before a building by a valley that drains, or a drain; by facet. */
  readonly caught: Float64Array;
  /** Share that stands in a valley too flat or a pond; by facet. */
  readonly stands: Float64Array;
  /** 1 + the line that each facet falls back toward; 0 for others. */
  readonly line: Int32Array;
}

/** Valleys as marks on half-edges. */
function marked({ terrain: { tin } }: Site, valleys: readonly FoundValley[]): Uint8Array {
  const edge = new Uint8Array(tin.corner.length);
  for (const valley of valleys) edge[valley.edge] = 1;
  return edge;
}

/** Spots in ponds deeper than counts. */
function ponded({ terrain: { tin, ponds } }: Site, deep: number): Uint8Array {
  const spot = new Uint8Array(tin.x.length);
  for (const pond of ponds.ponds) if (pond.depth > deep) for (const v of pond.spots) spot[v] = 1;
  return spot;
}

const drained = ({ terrain: { bounds } }: Site): Uint8Array =>
  Uint8Array.from(bounds.drain, (d) => Math.min(d, 1));

/** Every facet that falls back toward a building. */
export function fallingBack(
  site: Site,
  valleys: readonly FoundValley[],
  least: number,
  pondDepth: number,
): FallingBack {
  const { tin } = site.terrain;
  const facets: number[] = [];
  const line = new Int32Array(tin.facets);
  for (let t = 0; t < tin.facets && site.walls.length > 0; t += 1) {
    const away = awayFall(site.walls, tin, t);
    if (away === undefined || away >= -NO_FALL || fallOf(tin, t) <= NO_FALL) continue;
    facets.push(t);
    line[t] = 1 + (site.walls[nearestToFacet(site.walls, tin, t).piece]?.line ?? 0);
  }
  const nothing = new Float64Array(tin.facets);
  const takes = valleys.length > 0 || site.terrain.bounds.drain.some((d) => d > 0);
  if (!takes) return { facets, caught: nothing, stands: nothing, line };
  const drains = (v: FoundValley): boolean => v.fall >= least - NO_FALL;
  const good: Standing = { edge: marked(site, valleys.filter(drains)), spot: drained(site) };
  const bad: Standing = {
    edge: marked(
      site,
      valleys.filter((v) => !drains(v)),
    ),
    spot: ponded(site, pondDepth),
  };
  return {
    facets,
    caught: standingOf(site.terrain, good),
    stands: standingOf(site.terrain, bad),
    line,
  };
}

/**
 * True where a valley that falls, or a drain, takes the water of a facet before it gets to a building. Of
 * one that falls back some may leave over an open edge, since the valley lies between; of one that does not
 * fall back all must be taken.
 */
export function isCaught(
  { caught, stands }: FallingBack,
  reach: Reach | undefined,
  t: number,
  backwards: boolean,
): boolean {
  const least = backwards ? TRIFLE : 1 - TRIFLE;
  const lost = Math.max(stands[t] as number, reach?.share[t] ?? 0);
  return (caught[t] as number) > least && lost <= TRIFLE;
}

/** Facets of a surface judged by what they are held to. */

import type { Quantity } from '../quantity/quantity';
import { type FallingBack, fallingBack, isCaught } from './falling-back';
import { type Reach, reachOf } from './flow';
import { type Held, perMeter, valleysHeld } from './held';
import { awayFall, nearestToFacet, type Piece, reachesInto } from './lines';
import { NO_FALL } from './runs';

import type { Site } from './terrain';
import type { FoundValley } from './valleys';

type Slope = Quantity<'slope'>;

/** Facets, judged in binary numbers: which list each belongs to and how bad it is. */
export interface Judged {
  readonly reverse: number[];
  readonly short: number[];
  readonly steep: number[];
  readonly steepest: number;
  readonly flattest: number;
  /** How far each facet is below what is required; higher is worse. */
  readonly lack: Float64Array;
  /** 1 for facets with a part within the zone of a building that must fall straight away from it. */
  readonly zoned: Uint8Array;
  readonly valleys: readonly FoundValley[];
  readonly back: FallingBack;
  readonly reach: Reach | undefined;
}

/** Fall of each facet per meter. */
function fallsOf({ terrain: { tin } }: Site): Float64Array {
  const falls = new Float64Array(tin.facets);
  for (let t = 0; t < tin.facets; t += 1) {
    falls[t] = Math.sqrt((tin.fallX[t] as number) ** 2 + (tin.fallY[t] as number) ** 2);
  }
  return falls;
}

function extremes(falls: Float64Array): { readonly steepest: number; readonly flattest: number } {
  let [steepest, flattest] = [0, 0];
  for (let t = 1; t < falls.length; t += 1) {
    if ((falls[t] as number) > (falls[steepest] as number)) steepest = t;
    if ((falls[t] as number) < (falls[flattest] as number)) flattest = t;
  }
  return { steepest, flattest };
}

/** Which facets have any part within the zone of a building, and how each falls away from it. */
function zonedFacets(site: Site, zone: number): { zoned: Uint8Array; away: Float64Array } {
  const { tin } = site.terrain;
  const [zoned, away] = [new Uint8Array(tin.facets), new Float64Array(tin.facets)];
  for (let t = 0; t < tin.facets && site.walls.length > 0; t += 1) {
    const off = awayFall(site.walls, tin, t);
    if (off === undefined) continue;
    away[t] = off;
    const { piece, distance } = nearestToFacet(site.walls, tin, t);
    // One that falls back counts by its middle: the zone may just touch what drains to a low spot beyond.
    const within = off < -NO_FALL ? distance <= zone : reachesInto(site.walls[piece] as Piece, tin, t, zone);
    if (within) zoned[t] = 1;
  }
  return { zoned, away };
}

function steeperThan(falls: Float64Array, maximum: Slope | undefined): number[] {
  const most = maximum ? perMeter(maximum) + NO_FALL : Number.POSITIVE_INFINITY;
  return Array.from(falls, (_, t) => t).filter((t) => (falls[t] as number) > most);
}

export function judge(site: Site, held: Held): Judged {
  const [minimum, beyond, zone] = [perMeter(held.minimum), perMeter(held.beyond), held.zone.toNumber('m')];
  const walled = site.walls.length > 0;
  const falls = fallsOf(site);
  const deep = held.pondDepth.toNumber('m');
  const valleys = valleysHeld(site, held);
  const back = fallingBack(site, valleys, perMeter(held.valley), deep);
  const reach = walled ? reachOf(site.terrain) : undefined;
  const { zoned, away } = zonedFacets(site, zone);
  const lack = new Float64Array(falls.length);
  const [reverse, short]: [number[], number[]] = [[], []];
  for (let t = 0; t < falls.length; t += 1) {
    const off = away[t] as number;
    // Beyond the zone, or where a valley or drain takes the water, the slope itself counts.
    const byWall = zoned[t] === 1 && !isCaught(back, reach, t, off < -NO_FALL);
    if (!byWall) zoned[t] = 0;
    const least = byWall || !walled ? minimum : beyond;
    lack[t] = least - (byWall ? off : (falls[t] as number));
    if (byWall && off < -NO_FALL) reverse.push(t);
    else if ((lack[t] as number) > NO_FALL) short.push(t);
  }
  const steep = steeperThan(falls, held.maximum);
  return { reverse, short, steep, ...extremes(falls), lack, zoned, valleys, back, reach };
}

/** The facets at fault, by number. */
export const faultyFacets = (site: Site, held: Held): Pick<Judged, 'reverse' | 'short' | 'zoned'> =>
  judge(site, held);

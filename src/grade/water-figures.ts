/** Where water goes, in figures: low spots, paths, what reaches a building, sills and inflows. */

import { edgeBefore } from '../geometry/tin';
import { Decimal } from '../quantity/decimal';
import { paired } from '../quantity/paired';
import { systemOfQuantity } from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import type { Pad } from '../reckoning/pad';
import * as cautions from './cautions';
import { cornersOf, exactFall, LISTED, sixFigures } from './facet-figures';
import { TRIFLE } from './falling-back';
import * as faults from './faults';
import { type Reach, roughLengths } from './flow';
import { type FlowPath, pathFromPoint, pathFromSpot } from './flow-path';
import { locate, type Place, type PlacedLine } from './lines';
import { small } from './marks';
import type { FoundPond } from './ponds';
import { type ExactSpot, metersAs } from './spots';
import type { InflowFigure, LowSpotFigure, PathFigure, ReachFigure, SillFigure } from './surface-figures';
import type { ParsedSurface } from './surface-input';
import type { Site } from './terrain';

const NAMED = 50;

const SILL_CLEARANCE = /*#__PURE__*/ paired('length', '1 in', '25 mm');

export function lowSpots(site: Site, ponds: readonly FoundPond[]): LowSpotFigure[] {
  const { survey, terrain } = site;
  const low = ponds
    .slice(0, LISTED)
    .flatMap(({ spots, spill }) =>
      spots
        .filter((v) => v < survey.count)
        .slice(0, LISTED)
        .map((v) => ({ v, spill })),
    )
    .sort((a, b) => {
      const below = (s: { v: number; spill: number }): number =>
        (terrain.tin.z[s.spill] as number) - (terrain.tin.z[s.v] as number);
      return below(b) - below(a);
    });
  return low.slice(0, LISTED).map(({ v, spill }) => ({
    spot: survey.name(v),
    below: small(metersAs(survey.exact(spill).z.minus(survey.exact(v).z), survey.system)),
    downstream: survey.name(spill),
  }));
}

/** Binary meters to five places: what a path is good to. */
export const found = (meters: number): Decimal => new Decimal(meters.toFixed(5));

const POINTS = 100;

export function leavesOver(site: Site, { leavesBy }: FlowPath): string {
  const { sides, lines, terrain } = site;
  const named = (line: number | undefined): string | undefined => (line ? lines[line - 1]?.name : undefined);
  if (leavesBy.edge !== -1) return named(sides.along[leavesBy.edge]) ?? 'open edge';
  if (leavesBy.spot === -1) return 'open edge';
  const drain = named(sides.drain[leavesBy.spot]);
  if (drain) return drain;
  const { spoke } = terrain;
  for (let i = spoke.from[leavesBy.spot] as number; i < (spoke.from[leavesBy.spot + 1] as number); i += 1) {
    // The sides that begin at the spot, and those that end there.
    for (const e of [spoke.edges[i] as number, edgeBefore(spoke.edges[i] as number)]) {
      if (sides.wall[e] === 0 && (sides.along[e] as number) > 0) return named(sides.along[e]) ?? 'open edge';
    }
  }
  return 'open edge';
}

function pathFigure(site: Site, from: string, path: FlowPath): PathFigure {
  const { survey, lines } = site;
  const origin = survey.exact(0);
  const step = Math.max(1, Math.ceil(path.points.length / POINTS));
  const shown = path.points.filter((_, i) => i % step === 0 || i === path.points.length - 1);
  const reaches = lines[path.reaches]?.name;
  return {
    from,
    leavesOver: leavesOver(site, path),
    length: metersAs(found(path.length), survey.system),
    ...(reaches === undefined ? {} : { reaches }),
    points: shown.map(([x, y]) => ({
      x: metersAs(origin.x.plus(found(x)), survey.system),
      y: metersAs(origin.y.plus(found(y)), survey.system),
    })),
  };
}

const CANDIDATES = 32;

/** The longest way of any spot: the likeliest by the net are followed over the facets. */
export function longestPath(site: Site): PathFigure {
  const rough = roughLengths(site.terrain);
  const best: number[] = [];
  for (const v of site.terrain.flood.order) {
    if (v >= site.survey.count) continue;
    const last = best[CANDIDATES - 1];
    if (last !== undefined && (rough[v] as number) <= (rough[last] as number)) continue;
    best.push(v);
    best.sort((a, b) => (rough[b] as number) - (rough[a] as number));
    if (best.length > CANDIDATES) best.pop();
  }
  let [from, path] = [best[0] as number, pathFromSpot(site.terrain, best[0] as number)];
  for (const v of best.slice(1)) {
    const other = pathFromSpot(site.terrain, v);
    if (other.length > path.length) [from, path] = [v, other];
  }
  return pathFigure(site, site.survey.name(from), path);
}

interface Arriving {
  area: number;
  readonly spots: Set<number>;
}

/** Water that reaches a building: by line, the area and where it comes from. */
export function reachFigures(site: Site, reach: Reach): ReachFigure[] {
  const { survey, terrain } = site;
  const { tin } = terrain;
  const by = new Map<number, Arriving>();
  for (let t = 0; t < tin.facets; t += 1) {
    const [share, line] = [reach.share[t] as number, reach.line[t] as number];
    if (share <= TRIFLE || line === -1) continue;
    const [a, b, c] = cornersOf(site, t);
    const [ax, ay] = [tin.x[a] as number, tin.y[a] as number];
    const cross =
      ((tin.x[b] as number) - ax) * ((tin.y[c] as number) - ay) -
      ((tin.y[b] as number) - ay) * ((tin.x[c] as number) - ax);
    const arriving = by.get(line) ?? { area: 0, spots: new Set() };
    arriving.area += (share * Math.abs(cross)) / 2;
    for (const v of [a, b, c]) arriving.spots.add(v);
    by.set(line, arriving);
  }
  return [...by].map(([line, { area, spots }]) => ({
    line: (site.lines[line] as PlacedLine).name,
    from: [...spots]
      .filter((v) => v < survey.count)
      .sort((a, b) => (tin.z[b] as number) - (tin.z[a] as number))
      .slice(0, NAMED)
      .map(survey.name),
    area: sixFigures(area, survey.system),
  }));
}

/** Points this near outside a facet, as a share of it, still lie on it: sills stand on its very side. */
const ON_SIDE = 1e-9;

/** The facet that a point lies on, its sides included; -1 for none. */
function facetAt(site: Site, x: number, y: number): number {
  const { corner, facets, turn, x: xs, y: ys } = site.terrain.tin;
  const side = (p: number, q: number): number =>
    turn *
    (((xs[p] as number) - x) * ((ys[q] as number) - y) - ((ys[p] as number) - y) * ((xs[q] as number) - x));
  for (let t = 0; t < facets; t += 1) {
    const a = corner[3 * t] as number;
    const b = corner[3 * t + 1] as number;
    const c = corner[3 * t + 2] as number;
    const [u, v, w] = [side(a, b), side(b, c), side(c, a)];
    if (Math.min(u, v, w) >= -ON_SIDE * (u + v + w)) return t;
  }
  return -1;
}

/** The spot itself, or the one that stands for it where it was read twice; -1 off the surface. */
function onSurface({ terrain: { tin, spoke } }: Site, v: number): number {
  if ((spoke.from[v] as number) < (spoke.from[v + 1] as number)) return v;
  return tin.corner.find((u) => tin.x[u] === tin.x[v] && tin.y[u] === tin.y[v]) ?? -1;
}

/** Elevation of the surface at a place, exact. */
function elevationAt(site: Site, at: Place, path: string, name: string): Decimal {
  const spot = locate(site.survey, at, path);
  if (spot.spot !== undefined) return site.survey.exact(spot.spot).z;
  const t = facetAt(site, spot.x, spot.y);
  if (t === -1) return refuse(path, faults.outsideSurface(name));
  const spots = cornersOf(site, t).map(site.survey.exact);
  const fall = exactFall(spots);
  const a = spots[0] as ExactSpot;
  return a.z.minus(fall.x.times(spot.exact.x.minus(a.x))).minus(fall.y.times(spot.exact.y.minus(a.y)));
}

export function sillFigures(site: Site, sills: NonNullable<ParsedSurface['sills']>, pad: Pad): SillFigure[] {
  return sills.map(({ name, at, elevation }, i) => {
    const z = elevationAt(site, at, `sills[${i}].at`, name);
    const e = elevation;
    const surface = metersAs(z, systemOfQuantity(e));
    const clearance = pad.step(
      'clearance below a sill',
      'b = e − z',
      { e, z: surface },
      small(e.minus(surface)),
    );
    const least = SILL_CLEARANCE.undercutBy(clearance);
    if (least) pad.caution(cautions.lowThreshold(least, clearance));
    return { name, clearance };
  });
}

export function inflowFigures(site: Site, inflows: NonNullable<ParsedSurface['inflows']>): InflowFigure[] {
  return inflows.map(({ name, at, flow }, i) => {
    const path = `inflows[${i}].at`;
    const spot = locate(site.survey, at, path);
    const named = spot.spot === undefined ? -1 : onSurface(site, spot.spot);
    const facet = spot.spot === undefined ? facetAt(site, spot.x, spot.y) : -1;
    if (named === -1 && facet === -1) refuse(path, faults.outsideSurface(name));
    const way =
      named === -1 ? pathFromPoint(site.terrain, facet, spot.x, spot.y) : pathFromSpot(site.terrain, named);
    const from = named === -1 ? name : site.survey.name(named);
    return { ...pathFigure(site, from, way), name, ...(flow ? { flow } : {}) };
  });
}

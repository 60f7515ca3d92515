/**
 * What a corrected surface needs, each need linear in the elevations of the spots.
 *
 * A facet's fall along a way `w` is `((by·cz − bz·cy)·wx + (bz·cx − bx·cz)·wy) ÷ turn`, with b and c
 * counted from its first corner. The middle of a cell is the mean of the spots around it, so that it
 * stands in no need of its own.
 *
 * Source: geometry.
 */
import { Decimal, ONE, ZERO } from '../../quantity/decimal';
import { say, sentenceOf, type Words } from '../../reckoning/words';
import { ASTRIDE, awayFrom, middleOf, nearestToFacet, type Piece, type PlacedLine } from '../lines';
import type { ExactSpot } from '../spots';
import type { Site } from '../terrain';

/** A condition on elevations: `Σ weight × elevation ≥ least`. */
export interface Need {
  /** In words, for the one who is told that it cannot be met. */
  readonly name: Words;
  /** Alike for needs that are the same. */
  readonly key: string;
  readonly spots: readonly number[];
  readonly weights: readonly Decimal[];
  readonly least: Decimal;
  /** True where it is asked within the zone of a wall, whatever catches the water. */
  readonly zone?: true;
}

/** A way in plan, of unit length. */
export interface Way {
  readonly x: Decimal;
  readonly y: Decimal;
}

type Three = readonly [ExactSpot, ExactSpot, ExactSpot];

/** The corners of a facet. */
export const cornersOf = ({ terrain: { tin } }: Site, t: number): readonly [number, number, number] =>
  [tin.corner[3 * t], tin.corner[3 * t + 1], tin.corner[3 * t + 2]] as [number, number, number];

/** The corners of a facet, exact. */
export const exactCorners = (site: Site, t: number): Three =>
  cornersOf(site, t).map(site.survey.exact) as unknown as Three;

/** How the fall of a facet along a way depends on the elevations of its corners. */
function fallWeights([a, b, c]: Three, way: Way): Decimal[] {
  const [bx, by, cx, cy] = [b.x.minus(a.x), b.y.minus(a.y), c.x.minus(a.x), c.y.minus(a.y)];
  const turn = bx.times(cy).minus(by.times(cx));
  const onB = cx.times(way.y).minus(cy.times(way.x)).div(turn);
  const onC = by.times(way.x).minus(bx.times(way.y)).div(turn);
  return [onB.plus(onC).neg(), onB, onC];
}

/** Weights on corners as weights on spots: the middle of a cell is the mean of the spots around it. */
export function onSpots(
  { survey, terrain: { tin } }: Site,
  corners: readonly number[],
  weights: readonly Decimal[],
): Pick<Need, 'spots' | 'weights'> {
  const bySpot = new Map<number, Decimal>();
  const add = (v: number, weight: Decimal): void => {
    bySpot.set(v, (bySpot.get(v) ?? ZERO).plus(weight));
  };
  corners.forEach((v, k) => {
    const weight = weights[k] as Decimal;
    const ring = tin.rings[v - survey.count];
    if (!ring) add(v, weight);
    else for (const u of ring) add(u, weight.div(ring.length));
  });
  return { spots: [...bySpot.keys()], weights: [...bySpot.values()] };
}

/** Of unit length; `undefined` for no way at all. */
export function unitWay({ x, y }: Way): Way | undefined {
  const long = Decimal.hypot(x, y);
  return long.isZero() ? undefined : { x: x.div(long), y: y.div(long) };
}

/** That a facet falls along a way by at least so much. */
export function facetNeed(site: Site, t: number, way: Way, least: Decimal, name: Words): Need {
  const corners = cornersOf(site, t);
  const parts = onSpots(site, corners, fallWeights(exactCorners(site, t), way));
  return { name, key: `${sentenceOf(name)}|${t}|${least.toString()}`, ...parts, least };
}

/** That one corner lies so much over another as a slope between them asks for. */
export function downNeed(site: Site, upper: number, lower: number, rate: Decimal, name: Words): Need {
  const [p, q] = [site.survey.exact(upper), site.survey.exact(lower)];
  const long = Decimal.hypot(q.x.minus(p.x), q.y.minus(p.y));
  const parts = onSpots(site, [upper, lower], [ONE, ONE.neg()]);
  return { name, key: `${upper}>${lower}|${rate.toString()}`, ...parts, least: rate.times(long) };
}

/** The way straight off the nearest wall to the middle of a facet, and how far it is. */
export function wayOffWall(
  site: Site,
  t: number,
): { readonly way: Way; readonly distance: number; readonly line: string } | undefined {
  const { piece, distance } = nearestToFacet(site.walls, site.terrain.tin, t);
  if (piece === -1 || distance < ASTRIDE) return undefined;
  const wall = site.walls[piece] as Piece;
  const middle = middleOf(exactCorners(site, t));
  const way = unitWay(awayFrom(wall, middle.x, middle.y));
  return way && { way, distance, line: (site.lines[wall.line] as PlacedLine).name };
}

/** The spots of a facet by name, those around a middle among them. */
export function facetSpots(site: Site, t: number): string[] {
  const names = cornersOf(site, t)
    .flatMap((v) => site.terrain.tin.rings[v - site.survey.count] ?? [v])
    .map(site.survey.name);
  return [...new Set(names)].sort();
}

/** That a facet falls straight off the nearest wall, if that is no farther from its middle than so much. */
export function offWallNeed(site: Site, t: number, minimum: Decimal, zone?: number): Need | undefined {
  const off = wayOffWall(site, t);
  if (!off || (zone !== undefined && off.distance > zone)) return undefined;
  const name = say`${{ spots: facetSpots(site, t) }} away from ${{ name: off.line }}`;
  return { ...facetNeed(site, t, off.way, minimum, name), zone: true };
}

/** That every facet with its middle within the zone of a wall falls away from it. */
export const zoneNeeds = (site: Site, minimum: Decimal, zone: number): Need[] =>
  Array.from({ length: site.terrain.tin.facets }, (_, t) => offWallNeed(site, t, minimum, zone) ?? []).flat();

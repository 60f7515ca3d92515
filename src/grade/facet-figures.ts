/** Facets in figures: how they fall, exactly, and how that lies to the nearest wall. */

import { angleTo, Decimal, PI } from '../quantity/decimal';
import { type Quantity, quantityOf } from '../quantity/quantity';
import type { System } from '../quantity/units';
import type { Judged } from './judged';
import { ASTRIDE, awayFrom, middleOf, nearestToFacet, type Piece, type PlacedLine } from './lines';
import type { ExactSpot } from './spots';

import type { FacetFigure } from './surface-figures';
import type { Site } from './terrain';

type Slope = Quantity<'slope'>;

export const LISTED = 100;

const INCHES_PER_FOOT = 12;

const HALF_TURN = 180;

/** In square meters, by definition. */
const SQUARE_FOOT = 0.09290304;

export const cornersOf = ({ terrain: { tin } }: Site, t: number): [number, number, number] =>
  [tin.corner[3 * t], tin.corner[3 * t + 1], tin.corner[3 * t + 2]] as [number, number, number];

/** Fall along x and y, exact, by Cramer's rule on the three spots. */
export function exactFall(spots: readonly ExactSpot[]): { readonly x: Decimal; readonly y: Decimal } {
  const [a, b, c] = spots as readonly [ExactSpot, ExactSpot, ExactSpot];
  const [bx, by, bz] = [b.x.minus(a.x), b.y.minus(a.y), b.z.minus(a.z)];
  const [cx, cy, cz] = [c.x.minus(a.x), c.y.minus(a.y), c.z.minus(a.z)];
  const cross = bx.times(cy).minus(by.times(cx));
  return {
    x: by.times(cz).minus(bz.times(cy)).div(cross),
    y: bz.times(cx).minus(bx.times(cz)).div(cross),
  };
}

export const slopeOfFall = (fall: Decimal, system: System): Slope =>
  quantityOf('slope', fall.times(INCHES_PER_FOOT), system).in('%');

const degrees = (radians: Decimal): Quantity<'angle'> =>
  // Two digits fewer than the angle was taken to, so that 45 degrees are 45.
  quantityOf('angle', radians.times(HALF_TURN).div(PI).toSignificantDigits(22), 'customary');

function wallFigures(
  site: Site,
  t: number,
  spots: readonly ExactSpot[],
  fall: { x: Decimal; y: Decimal },
): Partial<FacetFigure> {
  const middle = middleOf(spots);
  const { piece, distance } = nearestToFacet(site.walls, site.terrain.tin, t);
  if (piece === -1 || distance < ASTRIDE) return {};
  const wall = site.walls[piece] as Piece;
  const way = awayFrom(wall, middle.x, middle.y);
  const along = fall.x.times(way.x).plus(fall.y.times(way.y));
  const square = fall.x.times(way.y).minus(fall.y.times(way.x));
  const away = along.div(Decimal.hypot(way.x, way.y));
  const level = fall.x.isZero() && fall.y.isZero();
  return {
    nearest: (site.lines[wall.line] as PlacedLine).name,
    away: slopeOfFall(away, site.survey.system),
    ...(level ? {} : { angleToWall: degrees(angleTo(square.abs(), along)) }),
  };
}

export function facetFigure(site: Site, t: number, verdict: FacetFigure['verdict']): FacetFigure {
  const { survey } = site;
  const corners = cornersOf(site, t);
  const spots = corners.map(survey.exact);
  const fall = exactFall(spots);
  const level = fall.x.isZero() && fall.y.isZero();
  const turn = angleTo(fall.y, fall.x);
  const around = turn.isNegative() ? turn.plus(PI.times(2)) : turn;
  return {
    spots: corners.map(survey.name),
    slope: slopeOfFall(Decimal.hypot(fall.x, fall.y), survey.system),
    alongX: slopeOfFall(fall.x, survey.system),
    alongY: slopeOfFall(fall.y, survey.system),
    ...(level ? {} : { direction: degrees(around) }),
    ...wallFigures(site, t, spots, fall),
    verdict,
  };
}

export function facetList(site: Site, { reverse, short, steep, lack }: Judged): FacetFigure[] {
  const worst = (list: readonly number[]): number[] =>
    [...list].sort((a, b) => (lack[b] as number) - (lack[a] as number)).slice(0, LISTED);
  const at: [number, FacetFigure['verdict']][] = [
    ...worst(reverse).map((t): [number, FacetFigure['verdict']] => [t, 'runs to the building']),
    ...worst(short).map((t): [number, FacetFigure['verdict']] => [t, 'too flat']),
    ...steep.slice(0, LISTED).map((t): [number, FacetFigure['verdict']] => [t, 'too steep']),
  ];
  const { facets } = site.terrain.tin;
  if (facets <= LISTED) {
    const seen = new Set(at.map(([t]) => t));
    for (let t = 0; t < facets; t += 1) if (!seen.has(t)) at.push([t, 'drains']);
  }
  return at.slice(0, LISTED).map(([t, verdict]) => facetFigure(site, t, verdict));
}

/** Twice the plan area of a facet. */
export function doubleAreaOf([a, b, c]: readonly [ExactSpot, ExactSpot, ExactSpot]): Decimal {
  return b.x
    .minus(a.x)
    .times(c.y.minus(a.y))
    .minus(b.y.minus(a.y).times(c.x.minus(a.x)))
    .abs();
}

export const areaAs = (value: Decimal, system: System): Quantity<'area'> => quantityOf('area', value, system);

/** Six figures are what a binary sum of facets is good to. */
export function sixFigures(squareMeters: number, system: System): Quantity<'area'> {
  const unit = system === 'metric' ? 1 : SQUARE_FOOT;
  const area = areaAs(new Decimal((squareMeters / unit).toPrecision(6)).times(unit), system);
  return system === 'metric' ? area : area.in('ft2');
}

/** A survey made into a surface that water runs on: triangles, lines, flood and ponds. */
import { insidePlanRing, neighborsOf, type PlanSpot, type Tin, tinOver, triangulate } from '../geometry/tin';
import { type Decimal, ZERO } from '../quantity/decimal';
import {
  distanceTo,
  locate,
  type ParsedLine,
  type Piece,
  type Place,
  type PlacedLine,
  type PlanPlace,
  piecesOf,
  placeLines,
  type Sides,
  sidesOf,
  staysDry,
} from './lines';
import { floodFrom, pondsOf } from './ponds';
import { runsOf, spokesOf, type Terrain } from './runs';
import { type ExactSpot, refuseConflicts, refuseLine, type Survey } from './spots';

/** Everything known about the site. */
export interface Site {
  /** The spots; the middles of cells are numbered after them, and called after the spots around them. */
  readonly survey: Survey;
  readonly terrain: Terrain;
  readonly lines: readonly PlacedLine[];
  readonly sides: Sides;
  /** Pieces of the lines that must stay dry. */
  readonly walls: readonly Piece[];
  /** Lines that must stay dry but along which the surface has no side. */
  readonly missed: readonly PlacedLine[];
}

/** Where a surface ends, besides the ring around its spots. */
export interface SiteExtent {
  readonly lines: readonly ParsedLine[];
  /** Corners of the slab, where it is not all that lies between the spots. */
  readonly outline: readonly Place[] | undefined;
  /** How near a spot must be to a line to lie on it, in meters. */
  readonly near: number;
}

const NAMED = 4;

/** `c9` before `c10`, in whatever order and from whichever corner the spots are listed. */
const byName = (a: string, b: string): number => a.length - b.length || (a < b ? -1 : 1);

/** What the middle of a cell is called: after the spots around it. */
function middleName(survey: Survey, ring: readonly number[]): string {
  const around = ring.map(survey.name).sort(byName);
  const more = around.length > NAMED ? ` and ${around.length - NAMED} more` : '';
  return `middle of ${around.slice(0, NAMED).join(', ')}${more}`;
}

/** The survey with the middles of cells numbered after its spots; they are not found by name. */
function withMiddles(survey: Survey, rings: Tin['rings']): Survey {
  const ringOf = (v: number): readonly number[] | undefined => rings[v - survey.count];
  const exact = (v: number): ExactSpot => {
    const ring = ringOf(v);
    if (!ring) return survey.exact(v);
    const around = ring.map(survey.exact);
    const mean = (pick: (spot: ExactSpot) => Decimal): Decimal =>
      around.reduce((sum, spot) => sum.plus(pick(spot)), ZERO).div(around.length);
    return { x: mean((s) => s.x), y: mean((s) => s.y), z: mean((s) => s.z) };
  };
  const name = (v: number): string => {
    const ring = ringOf(v);
    return ring ? middleName(survey, ring) : survey.name(v);
  };
  return { ...survey, exact, name };
}

function missedOf(lines: readonly PlacedLine[], sides: Sides): PlacedLine[] {
  const seen = new Set<number>();
  for (const line of sides.along) if (line > 0) seen.add(line - 1);
  return lines.filter(({ kind }, i) => staysDry(kind) && !seen.has(i));
}

/** Whether spots lie inside a ring and outside it; those on the ring are neither. */
function spotsBy(
  { points }: PlacedLine,
  survey: Survey,
  near: number,
): { inside: boolean; outside: boolean } {
  const sides = points.slice(1).map((b, i) => ({ line: 0, a: points[i] as PlanPlace, b }));
  const found = { inside: false, outside: false };
  for (let v = 0; v < survey.count && !(found.inside && found.outside); v += 1) {
    const [x, y] = [survey.x[v] as number, survey.y[v] as number];
    if (sides.some((side) => distanceTo(side, x, y) <= near)) continue;
    found[insidePlanRing(x, y, points) ? 'inside' : 'outside'] = true;
  }
  return found;
}

/** Closed, these stand around something that is no surface, where no spot was taken in it; the open edges of a slab do not. */
const AROUND: ReadonlySet<PlacedLine['kind']> = new Set(['curb', 'drain']);

/**
 * Rings that the surface goes around: buildings, and without a spot in them the curb of a planting bed, the coping or the
 * slot drain of a pool. Walls around a court have all spots inside.
 */
function ringsOf(lines: readonly PlacedLine[], survey: Survey, near: number) {
  const closed = lines
    .filter((line) => line.closed)
    .map((line) => ({ line, by: spotsBy(line, survey, near) }));
  const isBuilding = ({ kind }: PlacedLine): boolean => kind === 'building';
  return {
    without: closed
      .filter(({ line, by }) => by.outside && (isBuilding(line) || (AROUND.has(line.kind) && !by.inside)))
      .map(({ line }) => line.points),
    court: closed.find(({ line, by }) => isBuilding(line) && !by.outside)?.line.points,
  };
}

/**
 * Build the site.
 *
 * @throws {InputError} `collinear-spots`, `conflicting-spots`, and as the lines do
 */
export function siteOf(survey: Survey, { lines: given, outline, near }: SiteExtent): Site {
  const lines = placeLines(survey, given);
  const pieces = piecesOf(lines);
  const { without, court } = ringsOf(lines, survey, near);
  const within: readonly PlanSpot[] | undefined =
    outline?.map((at, i) => locate(survey, at, `outline[${i}]`)) ?? court;
  const tin = tinOver(survey, { within, without, thin: near });
  if (tin.facets < survey.count / 2) refuseConflicts(survey, triangulate(survey).corner);
  else refuseConflicts(survey, tin.corner);
  if (tin.facets === 0) refuseLine(survey);
  const sides = sidesOf(tin, lines, pieces, near);
  const neighbors = neighborsOf(tin);
  const outlets: number[] = [];
  sides.outlet.forEach((is, v) => {
    if (is) outlets.push(v);
  });
  // From left to right, so that ties fall alike in whatever order the spots were read.
  outlets.sort(
    (a, b) => (tin.x[a] as number) - (tin.x[b] as number) || (tin.y[a] as number) - (tin.y[b] as number),
  );
  const flood = floodFrom(tin.z, neighbors, outlets);
  const ponds = pondsOf(tin, flood, neighbors);
  const bounds = { wall: sides.wall, dry: sides.dry, mustBeDry: sides.mustBeDry, drain: sides.drain };
  const terrain: Terrain = {
    tin,
    near: neighbors,
    flood,
    ponds,
    bounds,
    spoke: spokesOf(tin),
    runs: runsOf(tin),
  };
  const walls = pieces.filter(({ line }) => staysDry((lines[line] as PlacedLine).kind));
  const missed = missedOf(lines, sides);
  return { survey: withMiddles(survey, tin.rings), terrain, lines, sides, walls, missed };
}

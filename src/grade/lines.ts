/**
 * Lines on the plan of a surface: walls that must stay dry, curbs that hold water, drains and open
 * edges that take it.
 */

import { nextEdge, type PlanSpot, type Tin } from '../geometry/tin';
import type { PointInput } from '../outline/outline';
import { Decimal } from '../quantity/decimal';
import * as sharedFaults from '../quantity/faults';
import type { Fault } from '../quantity/input-error';
import { canonicalValue, type Quantity } from '../quantity/quantity';
import { isFaulty, readQuantity } from '../quantity/read-quantity';
import { refuse } from '../reckoning/calculation';
import { choice, type Field, fields, label, list, quantitySchema, reading } from '../reckoning/fields';
import { type Limit, withinLimit } from '../reckoning/limits';
import * as faults from './faults';
import type { ExactSpot, Survey } from './spots';

/**
 * What a line is. Water must run away from a `building` and a `threshold`, and cannot pass them. A
 * `curb` holds it, a `drain` takes it; `driveway`, `walk` and `lawn` only name an open edge.
 */
export type LineKind = 'building' | 'threshold' | 'curb' | 'drain' | 'driveway' | 'walk' | 'lawn';

/** A line on the plan. */
export interface SurfaceLineInput {
  /** What the line does to water. */
  readonly kind: LineKind;
  /** What the line is called; no two alike. */
  readonly name: string;
  /**
   * Names of spots or points in plan, in order; a single one is a point drain. A building whose last
   * is its first is a ring: the surface ends at it, and lies inside where all spots do, as in a court.
   */
  readonly along: readonly (string | PointInput)[];
}

type Length = Quantity<'length'>;

/** A place on the plan as it was written. */
export type Place = string | { readonly x: Length; readonly y: Length };

/** A line, read. */
export interface ParsedLine {
  readonly kind: LineKind;
  readonly name: string;
  readonly along: readonly Place[];
}

const KINDS: readonly LineKind[] = ['building', 'threshold', 'curb', 'drain', 'driveway', 'walk', 'lawn'];
const LINE_LIMIT = 100;
export const LINE_PLACES: Limit = { of: 'the places of all lines', most: 500 };

const NAME_LIMIT = 60;

/** The name of a spot, or a point. */
export function place(what: string): Field<Place> {
  const read = (input: unknown): Place | Fault => {
    if (typeof input === 'string') {
      return input.length > NAME_LIMIT ? sharedFaults.tooLong(what, NAME_LIMIT) : input.trim();
    }
    if (typeof input !== 'object' || input === null || Array.isArray(input)) {
      return sharedFaults.wrongType(what, 'the name of a spot, or a point { x, y }');
    }
    const { x, y, ...rest } = input as Record<string, unknown>;
    const extra = Object.keys(rest)[0];
    if (extra !== undefined) return sharedFaults.unknownKey(extra, ['x', 'y']);
    const [px, py] = [readQuantity(x, 'length', 'x'), readQuantity(y, 'length', 'y')];
    if (isFaulty(px)) return px;
    return isFaulty(py) ? py : { x: px, y: py };
  };
  return reading(read, (defs) => {
    const along = quantitySchema(defs, 'length');
    const point = {
      type: 'object',
      properties: { x: along, y: along },
      required: ['x', 'y'],
      additionalProperties: false,
    };
    return {
      anyOf: [
        { title: 'Name of a spot', type: 'string' },
        { title: 'Point', ...point },
      ],
    };
  });
}

/** The schema of the lines. */
export const lines = (): Field<ParsedLine[]> =>
  list(
    fields({
      kind: choice('kind', KINDS),
      name: label('name'),
      along: list(place('each place'), 1, LINE_PLACES.most),
    }),
    0,
    LINE_LIMIT,
  );

/** A point in plan, exact and binary. */
export interface PlanPlace extends PlanSpot {
  readonly exact: { readonly x: Decimal; readonly y: Decimal };
  /** The spot it was named by. */
  readonly spot: number | undefined;
}

/** Find a place on the plan. @throws {InputError} `unknown-name` */
export function locate(survey: Survey, at: Place, path: string): PlanPlace {
  const origin = survey.exact(0);
  if (typeof at !== 'string') {
    const exact = { x: canonicalValue(at.x), y: canonicalValue(at.y) };
    return {
      exact,
      x: exact.x.minus(origin.x).toNumber(),
      y: exact.y.minus(origin.y).toNumber(),
      spot: undefined,
    };
  }
  const spot = survey.find(at);
  if (spot === undefined) {
    const known = Array.from({ length: Math.min(survey.count, 12) }, (_, i) => survey.name(i));
    return refuse(path, faults.unknownName(at, known));
  }
  const exact = survey.exact(spot);
  return { exact, x: survey.x[spot] as number, y: survey.y[spot] as number, spot };
}

/** A line, placed. */
export interface PlacedLine {
  readonly kind: LineKind;
  readonly name: string;
  readonly points: readonly PlanPlace[];
  readonly closed: boolean;
}

/** True for lines that water must not reach. */
export const staysDry = (kind: LineKind): boolean => kind === 'building' || kind === 'threshold';

const holds = (kind: LineKind): boolean => staysDry(kind) || kind === 'curb';

const samePlace = (a: PlanPlace, b: PlanPlace): boolean => a.x === b.x && a.y === b.y;

/** Put the lines on the plan. @throws {InputError} `unknown-name`, `repeated-name`, `repeated-point` */
export function placeLines(survey: Survey, given: readonly ParsedLine[]): PlacedLine[] {
  const places = given.reduce((sum, { along }) => sum + along.length, 0);
  withinLimit(LINE_PLACES, places, 'lines');
  const names = new Set<string>();
  return given.map(({ kind, name, along }, l) => {
    if (names.has(name)) refuse(`lines[${l}].name`, faults.repeatedName(name));
    names.add(name);
    const points = along.map((at, i) => locate(survey, at, `lines[${l}].along[${i}]`));
    points.forEach((p, i) => {
      const before = points[i - 1];
      if (before && samePlace(p, before)) refuse(`lines[${l}].along[${i}]`, sharedFaults.repeatedPoint(i));
    });
    const [first, last] = [points[0] as PlanPlace, points.at(-1) as PlanPlace];
    if (points.length === 1 && kind !== 'drain') {
      refuse(`lines[${l}].along`, sharedFaults.tooFew('a line that is not a drain', 2));
    }
    return { kind, name, points, closed: points.length > 3 && samePlace(first, last) };
  });
}

/** A straight piece of a line; a point drain has both ends in one. */
export interface Piece {
  readonly line: number;
  readonly a: PlanPlace;
  readonly b: PlanPlace;
}

/** The straight pieces of all lines. */
export const piecesOf = (placed: readonly PlacedLine[]): Piece[] =>
  placed.flatMap(({ points }, line) => {
    const [first] = points as readonly [PlanPlace];
    if (points.length === 1) return [{ line, a: first, b: first }];
    return points.slice(1).map((b, i) => ({ line, a: points[i] as PlanPlace, b }));
  });

/** How far along the piece the point nearest to (x, y) lies, from 0 to 1. */
export function nearestOn({ a, b }: Piece, x: number, y: number): number {
  const dx = b.x - a.x;
  const dy = b.y - a.y;
  const long = dx * dx + dy * dy;
  if (long === 0) return 0;
  return Math.min(1, Math.max(0, ((x - a.x) * dx + (y - a.y) * dy) / long));
}

/** Distance from a point to a piece. */
export function distanceTo(piece: Piece, x: number, y: number): number {
  const s = nearestOn(piece, x, y);
  return Math.hypot(x - piece.a.x - s * (piece.b.x - piece.a.x), y - piece.a.y - s * (piece.b.y - piece.a.y));
}

/** What lies along the outside of a surface, and where water leaves it. */
export interface Sides {
  /** For each half-edge on the outside: 1 + the line along it; 0 for none. */
  readonly along: Int32Array;
  readonly wall: Int32Array;
  readonly dry: Int32Array;
  readonly mustBeDry: readonly boolean[];
  readonly outlet: Uint8Array;
  /** 1 + the drain at each spot; 0 for none. */
  readonly drain: Int32Array;
  /** True where walls and curbs leave no way out and the lowest outside spot has to serve. */
  readonly shut: boolean;
}

function lineAlong(pieces: readonly Piece[], tin: Tin, e: number, near: number): number {
  const [p, q] = [tin.corner[e] as number, tin.corner[nextEdge(e)] as number];
  const [px, py, qx, qy] = [tin.x[p], tin.y[p], tin.x[q], tin.y[q]] as [number, number, number, number];
  const found = pieces.find(
    (piece) => distanceTo(piece, px, py) <= near && distanceTo(piece, qx, qy) <= near,
  );
  return found ? found.line + 1 : 0;
}

function markOutside(tin: Tin, placed: readonly PlacedLine[], pieces: readonly Piece[], near: number): Sides {
  const along = new Int32Array(tin.corner.length);
  const wall = new Int32Array(tin.corner.length);
  const dry = new Int32Array(tin.x.length);
  const outlet = new Uint8Array(tin.x.length);
  // Thresholds lie within walls: they are looked at first, so that they are named.
  const ranked = [...pieces].sort(
    (a, b) => Number(placed[b.line]?.kind === 'threshold') - Number(placed[a.line]?.kind === 'threshold'),
  );
  for (let e = 0; e < tin.corner.length; e += 1) {
    if (tin.twin[e] !== -1) continue;
    const line = lineAlong(ranked, tin, e, near);
    along[e] = line;
    const [p, q] = [tin.corner[e] as number, tin.corner[nextEdge(e)] as number];
    const kind = line > 0 ? (placed[line - 1] as PlacedLine).kind : undefined;
    if (!kind || !holds(kind)) {
      outlet[p] = 1;
      outlet[q] = 1;
      continue;
    }
    wall[e] = line;
    if (!staysDry(kind)) continue;
    dry[p] = line;
    dry[q] = line;
  }
  const mustBeDry = placed.map(({ kind }) => staysDry(kind));
  return { along, wall, dry, mustBeDry, outlet, drain: new Int32Array(tin.x.length), shut: false };
}

function markDrains(
  tin: Tin,
  placed: readonly PlacedLine[],
  pieces: readonly Piece[],
  sides: Sides,
  near: number,
): void {
  const drains = pieces.filter(({ line }) => placed[line]?.kind === 'drain');
  if (drains.length === 0) return;
  for (let v = 0; v < tin.x.length; v += 1) {
    const found = drains.find((d) => distanceTo(d, tin.x[v] as number, tin.y[v] as number) <= near);
    if (!found) continue;
    sides.outlet[v] = 1;
    sides.drain[v] = found.line + 1;
  }
}

/** Spots of the surface: those on a facet. */
function lowestOutside(tin: Tin): number {
  let lowest = -1;
  for (let e = 0; e < tin.corner.length; e += 1) {
    const v = tin.corner[e] as number;
    if (tin.twin[e] === -1 && (lowest === -1 || (tin.z[v] as number) < (tin.z[lowest] as number))) lowest = v;
  }
  return lowest;
}

/** What lies along the outside, and where water leaves. */
export function sidesOf(
  tin: Tin,
  placed: readonly PlacedLine[],
  pieces: readonly Piece[],
  near: number,
): Sides {
  const sides = markOutside(tin, placed, pieces, near);
  markDrains(tin, placed, pieces, sides, near);
  if (sides.outlet.includes(1)) return sides;
  const lowest = lowestOutside(tin);
  if (lowest !== -1) sides.outlet[lowest] = 1;
  return { ...sides, shut: true };
}

/** The piece nearest to a point among those that must stay dry, with its distance; -1 for none. */
export function nearestTo(
  walls: readonly Piece[],
  x: number,
  y: number,
): { piece: number; distance: number } {
  let piece = -1;
  let distance = Number.POSITIVE_INFINITY;
  for (let i = 0; i < walls.length; i += 1) {
    const d = distanceTo(walls[i] as Piece, x, y);
    if (d < distance) {
      piece = i;
      distance = d;
    }
  }
  return { piece, distance };
}

/** A facet whose middle is this near to a wall, in meters, lies on both sides of it: no way leads off. */
export const ASTRIDE = 1e-9;

/** The piece nearest to the middle of a facet; one rule for all, so that ties fall alike. */
export function nearestToFacet(
  walls: readonly Piece[],
  tin: Tin,
  t: number,
): { readonly piece: number; readonly distance: number; readonly x: number; readonly y: number } {
  const a = tin.corner[3 * t] as number;
  const b = tin.corner[3 * t + 1] as number;
  const c = tin.corner[3 * t + 2] as number;
  const x = ((tin.x[a] as number) + (tin.x[b] as number) + (tin.x[c] as number)) / 3;
  const y = ((tin.y[a] as number) + (tin.y[b] as number) + (tin.y[c] as number)) / 3;
  // No spread here: this runs once for every facet of a survey.
  const { piece, distance } = nearestTo(walls, x, y);
  return { piece, distance, x, y };
}

/** Distance from a point to the side from corner p to corner q. */
function toSide({ x, y }: Tin, p: number, q: number, at: PlanPlace): number {
  const [ax, ay] = [x[p] as number, y[p] as number];
  const [dx, dy] = [(x[q] as number) - ax, (y[q] as number) - ay];
  const along = ((at.x - ax) * dx + (at.y - ay) * dy) / (dx * dx + dy * dy || 1);
  const s = Math.min(1, Math.max(0, along));
  return Math.hypot(at.x - ax - s * dx, at.y - ay - s * dy);
}

/** True where any part of a facet lies within `zone` of a wall, however little. */
export function reachesInto(wall: Piece, tin: Tin, t: number, zone: number): boolean {
  const corners = [0, 1, 2].map((k) => tin.corner[3 * t + k] as number) as [number, number, number];
  const most = zone - ASTRIDE;
  if (corners.some((v) => distanceTo(wall, tin.x[v] as number, tin.y[v] as number) < most)) return true;
  // The corner of a building may stand before the middle of a long side.
  return corners.some((p, k) => {
    const q = corners[(k + 1) % 3] as number;
    return toSide(tin, p, q, wall.a) < most || toSide(tin, p, q, wall.b) < most;
  });
}

/** Fall of a facet straight away from the wall nearest to its middle, per meter; `undefined` astride of it. */
export function awayFall(walls: readonly Piece[], tin: Tin, t: number): number | undefined {
  const { piece, distance, x, y } = nearestToFacet(walls, tin, t);
  if (piece === -1 || distance < ASTRIDE) return undefined;
  const wall = walls[piece] as Piece;
  const [dx, dy] = [wall.b.x - wall.a.x, wall.b.y - wall.a.y];
  const along = ((x - wall.a.x) * dx + (y - wall.a.y) * dy) / (dx * dx + dy * dy || 1);
  const s = Math.min(1, Math.max(0, along));
  let [nx, ny] = [x - wall.a.x - s * dx, y - wall.a.y - s * dy];
  if (along > 0 && along < 1) {
    const turned = dx * (y - wall.a.y) - dy * (x - wall.a.x) < 0 ? -1 : 1;
    [nx, ny] = [-dy * turned, dx * turned];
  }
  return ((tin.fallX[t] as number) * nx + (tin.fallY[t] as number) * ny) / (Math.hypot(nx, ny) || 1);
}

/** The way straight off a wall to a point, exact: not of unit length. */
export function awayFrom(
  { a, b }: Piece,
  x: Decimal,
  y: Decimal,
): { readonly x: Decimal; readonly y: Decimal } {
  const [dx, dy] = [b.exact.x.minus(a.exact.x), b.exact.y.minus(a.exact.y)];
  const long = dx.times(dx).plus(dy.times(dy));
  const [px, py] = [x.minus(a.exact.x), y.minus(a.exact.y)];
  const along = px.times(dx).plus(py.times(dy));
  if (long.isZero() || along.lessThanOrEqualTo(0)) return { x: px, y: py };
  if (along.greaterThanOrEqualTo(long)) return { x: x.minus(b.exact.x), y: y.minus(b.exact.y) };
  // Square to the wall, on the side of the point.
  const side = dx.times(py).minus(dy.times(px));
  const turned = side.isNegative() ? -1 : 1;
  return { x: dy.times(-turned), y: dx.times(turned) };
}

/** The middle of a facet, exact. */
export function middleOf(spots: readonly ExactSpot[]): { readonly x: Decimal; readonly y: Decimal } {
  const sum = (key: 'x' | 'y'): Decimal =>
    spots.reduce((s, p) => s.plus(p[key]), new Decimal(0)).div(spots.length);
  return { x: sum('x'), y: sum('y') };
}

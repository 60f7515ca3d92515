/**
 * Strips of mesh over an outline: where each strip has slab below it, cut into sheets with laps.
 *
 * What a strip must cover is what the slab under it casts along it: the sides that pass through the
 * strip, and where its one edge is inside. Taking the edge distance off both ends of each stretch still
 * covers every place that far inside. Binary meters; lengths are rounded up to whole cutting steps.
 */
import type { Limit } from '../reckoning/limits';
import { crossingAt, directionOf, type Spot } from './mat-clip';
import { STRAY, TooManyBars } from './mat-laps';
import { nearness, type Sides, sidesOf, sweep } from './mat-sweep';
import { Numbers, type Stretch, Stretches } from './stretches';

/** What strips are laid by, in meters; lengths of pieces in cutting steps. */
export interface StripRule {
  readonly rings: readonly (readonly Spot[])[];
  readonly degrees: number;
  readonly edge: number;
  readonly step: number;
  /** Length of a sheet or roll, rounded down. */
  readonly piece: number;
  readonly width: number;
  readonly sideLap: number;
  /** Rounded up. */
  readonly endLap: number;
  /** The first strip lies along the far edge: over an outline that is no rectangle it makes a difference. */
  readonly fromFar: boolean;
  readonly limit: number;
}

/** A piece of mesh in its place, in the coordinates of its direction. */
export interface LaidPiece {
  readonly from: number;
  readonly steps: number;
  readonly low: number;
  readonly high: number;
}

/** What strips take. */
export interface CountedStrips {
  readonly degrees: number;
  readonly fromFar: boolean;
  readonly strips: number;
  readonly pieces: number;
  /** How many pieces of each length, in steps. */
  readonly counts: ReadonlyMap<number, number>;
  /** The strips end to end, in steps, with no lap: what rolls in one line have to reach over. */
  readonly inOneLine: number;
  /** How many of the strips come out of the width of one piece: more than one only of a slab of one narrow strip. */
  readonly outOfWidth: number;
}

const STEADY = 1e-9;

/** What strips look over: the sides in their direction, and lists that are filled strip after strip. */
interface Looking {
  readonly sides: Sides;
  readonly cast: Stretches;
  readonly crossings: Numbers;
}

/** Cast the part of a side within a strip along it. */
function castSide({ sides, cast }: Looking, i: number, low: number, high: number): void {
  const [u0, v0] = [sides.u0[i] as number, sides.v0[i] as number];
  const [u1, v1] = [sides.u1[i] as number, sides.v1[i] as number];
  if (Math.max(v0, v1) < low || Math.min(v0, v1) > high) return;
  const at = (v: number): number => u0 + ((v - v0) * (u1 - u0)) / (v1 - v0);
  const inside = (v: number): number => Math.min(high, Math.max(low, v));
  const [a, b] = v1 === v0 ? [u0, u1] : [at(inside(v0)), at(inside(v1))];
  cast.add(Math.min(a, b), Math.max(a, b));
}

/** A strip of no more than this beside a side has no slab to cover there. */
const HAIR = 1e-6;

/** Where a strip has slab under it, less the edge distance at both ends. */
function under(
  looking: Looking,
  near: Uint32Array,
  count: number,
  [bottom, top]: Stretch,
  edge: number,
): Stretch[] {
  const { sides, cast, crossings } = looking;
  cast.clear();
  crossings.clear();
  // A side that lies along the very edge of a strip is not under it, whatever its last digit says.
  const hair = Math.min(HAIR, (top - bottom) / 4);
  const [low, high] = [bottom + hair, top - hair];
  for (let k = 0; k < count; k += 1) {
    const i = near[k] as number;
    castSide(looking, i, low, high);
    const at = crossingAt(
      sides.u0[i] as number,
      sides.v0[i] as number,
      sides.u1[i] as number,
      sides.v1[i] as number,
      low,
    );
    if (!Number.isNaN(at)) crossings.add(at);
  }
  const inside = crossings.sorted();
  for (let k = 0; k + 1 < inside.length; k += 2) cast.add(inside[k] as number, inside[k + 1] as number);
  return cast
    .joined(STEADY)
    .flatMap(([from, to]): Stretch[] => (to - from > 2 * edge ? [[from + edge, to - edge]] : []));
}

/** A stretch in whole steps, and how many pieces reach over it: all but the cut one are whole. */
interface Reach {
  readonly from: number;
  readonly steps: number;
  readonly pieces: number;
}

/** What a stretch of so many steps takes; nothing where it is less than a stray digit. */
function reachOver([from, to]: Stretch, { step, piece, endLap }: StripRule): Reach[] {
  const steps = Math.ceil((to - from) / step - STRAY);
  if (steps < 1) return [];
  return [{ from, steps, pieces: steps > piece ? Math.ceil((steps - endLap) / (piece - endLap)) : 1 }];
}

/** The piece of a stretch that is cut; the others are whole. */
const cutPiece = ({ steps, pieces }: Reach, { piece, endLap }: StripRule): number =>
  steps - (pieces - 1) * (piece - endLap);

/** The strips from side to side, the lowest first; the last one laid is narrower. */
function placesOf(rule: StripRule, { low, high }: Sides): Stretch[] {
  const { edge, width, sideLap, fromFar } = rule;
  const field = high - low - 2 * edge;
  if (field <= 0) return [];
  const strips = field > width ? Math.ceil((field - sideLap) / (width - sideLap) - STEADY) : 1;
  if (strips > rule.limit) throw new TooManyBars();
  const pitch = width - sideLap;
  const places = Array.from({ length: strips }, (_, i): Stretch => {
    const bottom = low + edge + i * pitch;
    return [bottom, Math.min(bottom + width, high - edge)];
  });
  return fromFar ? places.map(([a, b]): Stretch => [low + high - b, low + high - a]).reverse() : places;
}

/** Sides and strips may come near each other this many times in one direction. */
export const NEAR_STRIPS: Limit = { of: 'the strips of mesh in sides near them', most: 500_000 };

/**
 * Go through the stretches of all strips.
 *
 * @returns how many strips there are
 * @throws {TooManyBars} above the limits
 */
function overStrips(rule: StripRule, visit: (reach: Reach, strip: number, place: Stretch) => void): number {
  const sides = sidesOf(rule.rings, directionOf(rule.degrees));
  const places = placesOf(rule, sides);
  const { width, sideLap, edge } = rule;
  const near = nearness(sides, width - sideLap, places.length, 2 * width);
  if (near > NEAR_STRIPS.most) throw new TooManyBars(NEAR_STRIPS);
  const looking = { sides, cast: new Stretches(), crossings: new Numbers() };
  const place = (i: number): Stretch => places[i] as Stretch;
  const bands = { count: places.length, low: (i: number) => place(i)[0], high: (i: number) => place(i)[1] };
  let left = rule.limit;
  sweep(sides, bands, (i, near, count) => {
    for (const stretch of under(looking, near, count, place(i), edge)) {
      for (const reach of reachOver(stretch, rule)) {
        left -= reach.pieces;
        if (left < 0) throw new TooManyBars();
        visit(reach, i, place(i));
      }
    }
  });
  return places.length;
}

/**
 * Count out the pieces that strips over an outline take in one direction.
 *
 * @throws {TooManyBars} above the limit
 */
export function countStrips(rule: StripRule): CountedStrips {
  const counts = new Map<number, number>();
  const add = (steps: number, n: number): void => {
    if (n > 0) counts.set(steps, (counts.get(steps) ?? 0) + n);
  };
  let [inOneLine, pieces, wide] = [0, 0, rule.width];
  const strips = overStrips(rule, (reach, _, [low, high]) => {
    wide = high - low;
    inOneLine += reach.steps;
    pieces += reach.pieces;
    add(rule.piece, reach.pieces - 1);
    add(cutPiece(reach, rule), 1);
  });
  const { degrees, fromFar } = rule;
  const outOfWidth = strips === 1 ? Math.max(1, Math.floor(rule.width / wide + STEADY)) : 1;
  return { degrees, fromFar, strips, pieces, counts, inOneLine, outOfWidth };
}

/**
 * Lay strips over an outline in one direction.
 *
 * The piece that is cut lies at one end in one strip and at the other in the next, so that end laps
 * do not line up.
 *
 * @throws {TooManyBars} above the limit
 */
export function layStrips(rule: StripRule): LaidPiece[] {
  const { piece, endLap, step } = rule;
  const laid: LaidPiece[] = [];
  overStrips(rule, (reach, strip, [low, high]) => {
    const cut = cutPiece(reach, rule);
    const cutFirst = strip % 2 === 1;
    let at = reach.from;
    for (let k = 0; k < reach.pieces; k += 1) {
      const steps = k === (cutFirst ? 0 : reach.pieces - 1) ? cut : piece;
      laid.push({ from: at, steps, low, high });
      at += (steps - endLap) * step;
    }
  });
  return laid;
}

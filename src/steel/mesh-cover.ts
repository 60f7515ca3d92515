/**
 * Strips of mesh over an outline: where each strip has slab below it, cut into sheets with laps.
 *
 * What a strip must cover is what the slab under it casts along it: the sides that pass through the
 * strip, and where its one edge is inside. Taking the edge distance off both ends of each stretch still
 * covers every place that far inside. Binary metres; lengths are rounded up to whole cutting steps.
 */
import { directionOf, insideAt, type Side, type Spot, type Stretch, sidesOf, spanOf } from './mat-clip';
import { TooManyBars } from './mat-laps';

/** What strips are laid by, in metres; lengths of pieces in cutting steps. */
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
  readonly fromFar?: boolean;
  readonly limit: number;
}

/** A piece of mesh in its place, in the coordinates of its direction. */
interface LaidPiece {
  readonly from: number;
  readonly steps: number;
  readonly low: number;
  readonly high: number;
}

/** Strips as laid. */
export interface LaidStrips {
  readonly degrees: number;
  readonly strips: number;
  readonly pieces: readonly LaidPiece[];
  /** The strips end to end, in steps, with no lap: what rolls in one line have to reach over. */
  readonly inOneLine: number;
}

const STEADY = 1e-9;

/** The part of a side within a strip, cast along it. */
function castOf({ u0, v0, u1, v1 }: Side, low: number, high: number): Stretch | undefined {
  if (Math.max(v0, v1) < low || Math.min(v0, v1) > high) return undefined;
  const at = (v: number): number => (v1 === v0 ? u0 : u0 + ((v - v0) * (u1 - u0)) / (v1 - v0));
  const inside = (v: number): number => Math.min(high, Math.max(low, v));
  const [a, b] = v1 === v0 ? [u0, u1] : [at(inside(v0)), at(inside(v1))];
  return a < b ? [a, b] : [b, a];
}

/** Overlapping stretches together. */
function merged(stretches: readonly Stretch[]): Stretch[] {
  const out: [number, number][] = [];
  for (const [from, to] of [...stretches].sort((a, b) => a[0] - b[0])) {
    const last = out.at(-1);
    if (last && from <= last[1] + STEADY) last[1] = Math.max(last[1], to);
    else out.push([from, to]);
  }
  return out;
}

/** The sides that come within each strip: a strip then looks only at those. */
function sidesByStrip(
  sides: readonly Side[],
  places: readonly Stretch[],
  low: number,
  { width, sideLap }: StripRule,
): Side[][] {
  const by: Side[][] = places.map(() => []);
  const pitch = width - sideLap;
  for (const side of sides) {
    const [a, b] = side.v0 < side.v1 ? [side.v0, side.v1] : [side.v1, side.v0];
    // From the far edge a strip begins up to a pitch before its place from the near one.
    const from = Math.max(0, Math.floor((a - low - width) / pitch) - 1);
    const to = Math.min(places.length - 1, Math.ceil((b - low) / pitch) + 2);
    for (let i = from; i <= to; i += 1) {
      const [bottom, top] = places[i] as Stretch;
      if (b >= bottom && a <= top) by[i]?.push(side);
    }
  }
  return by;
}

/** Where a strip has slab under it, less the edge distance at both ends. */
function under(sides: readonly Side[], low: number, high: number, edge: number): Stretch[] {
  const cast = sides.flatMap((side) => {
    const stretch = castOf(side, low, high);
    return stretch ? [stretch] : [];
  });
  return merged([...cast, ...insideAt(sides, low)]).flatMap(([from, to]): Stretch[] =>
    to - from > 2 * edge ? [[from + edge, to - edge]] : [],
  );
}

/** Lengths of the pieces over a stretch, in steps: whole ones and a last one cut to what is left. */
function pieceLengths(steps: number, { piece, endLap, limit }: StripRule): number[] {
  if (steps <= piece) return [steps];
  const count = Math.ceil((steps - endLap) / (piece - endLap));
  if (count > limit) throw new TooManyBars();
  return [...new Array<number>(count - 1).fill(piece), steps - (count - 1) * (piece - endLap)];
}

/** The pieces over a stretch, the cut one last or first. */
function piecesOver(
  [from, to]: Stretch,
  rule: StripRule,
  cutFirst: boolean,
): Pick<LaidPiece, 'from' | 'steps'>[] {
  const { step, endLap } = rule;
  const lengths = pieceLengths(Math.ceil((to - from) / step - 1e-3), rule);
  if (cutFirst) lengths.reverse();
  let at = from;
  return lengths.map((steps) => {
    const piece = { from: at, steps };
    at += (steps - endLap) * step;
    return piece;
  });
}

/** The strips from side to side, the lowest first; the last one laid is narrower. */
function placesOf(rule: StripRule, [low, high]: Stretch): Stretch[] {
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

/** Sides and strips may come near each other this many times in all. */
const NEAR_LIMIT = 5_000_000;

/**
 * Lay strips over an outline in one direction.
 *
 * The piece that is cut lies at one end in one strip and at the other in the next, so that end laps
 * do not line up.
 *
 * @throws {TooManyBars} above the limit
 */
export function layStrips(rule: StripRule): LaidStrips {
  const { degrees, edge, step, width, sideLap, limit } = rule;
  const sides = sidesOf(rule.rings, directionOf(degrees));
  const span = spanOf(sides);
  const places = placesOf(rule, span);
  const [first] = places;
  if (!first) return { degrees, strips: 0, pieces: [], inOneLine: 0 };
  const pitch = width - sideLap;
  const near = sides.reduce((n, { v0, v1 }) => n + Math.min(places.length, Math.abs(v1 - v0) / pitch + 2), 0);
  if (near > NEAR_LIMIT) throw new TooManyBars();
  const by = sidesByStrip(sides, places, first[0], rule);
  const pieces: LaidPiece[] = [];
  let inOneLine = 0;
  places.forEach(([bottom, top], i) => {
    for (const stretch of under(by[i] as Side[], bottom, top, edge)) {
      inOneLine += Math.ceil((stretch[1] - stretch[0]) / step - 1e-3);
      pieces.push(
        ...piecesOver(stretch, rule, i % 2 === 1).map((piece) => ({ ...piece, low: bottom, high: top })),
      );
      if (pieces.length > limit) throw new TooManyBars();
    }
  });
  return { degrees, strips: places.length, pieces, inOneLine };
}

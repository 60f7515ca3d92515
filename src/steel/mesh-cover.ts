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

/**
 * Lay strips over an outline in one direction.
 *
 * The piece that is cut lies at one end in one strip and at the other in the next, so that end laps
 * do not line up.
 *
 * @throws {TooManyBars} above the limit
 */
export function layStrips(rule: StripRule): LaidStrips {
  const { degrees, edge, width, sideLap, limit } = rule;
  const sides = sidesOf(rule.rings, directionOf(degrees));
  const [low, high] = spanOf(sides);
  const field = high - low - 2 * edge;
  if (field <= 0) return { degrees, strips: 0, pieces: [] };
  const strips = field > width ? Math.ceil((field - sideLap) / (width - sideLap) - STEADY) : 1;
  if (strips * Math.max(1, sides.length / 100) > limit) throw new TooManyBars();
  const pieces: LaidPiece[] = [];
  for (let i = 0; i < strips; i += 1) {
    const bottom = low + edge + i * (width - sideLap);
    const top = Math.min(bottom + width, high - edge);
    for (const stretch of under(sides, bottom, top, edge)) {
      pieces.push(
        ...piecesOver(stretch, rule, i % 2 === 1).map((piece) => ({ ...piece, low: bottom, high: top })),
      );
      if (pieces.length > limit) throw new TooManyBars();
    }
  }
  return { degrees, strips, pieces };
}

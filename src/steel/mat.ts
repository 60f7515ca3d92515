/**
 * A mat of bars over any outline, placed: lines in two directions, edges, corners, laps.
 *
 * Everything here is in binary meters and whole cutting steps. With bars along all edges, no place
 * inside the cover is farther from a bar than half the spacing, but for the room right at a corner that
 * juts into the slab (the cover more at most) and beside a bar that was left out as too short.
 */
import type { Limit } from '../reckoning/limits';
import {
  acrossOf,
  alongOf,
  Clearing,
  type Direction,
  directionOf,
  FUZZ,
  LEAST_COVER,
  type Spot,
  spotAt,
} from './mat-clip';
import { cornerPaths, type EdgeRule, edgePaths, type Path } from './mat-edges';
import { type CutRule, cutAlone, type Piece, stepsIn, TooManyBars } from './mat-laps';
import { type CutLines, cutMat, type LinesToCut } from './mat-stagger';
import { nearness, type Sides, sidesOf, sweep } from './mat-sweep';
import type { Stretch } from './stretches';

/** What a bar is there for. */
type BarUse = 'along' | 'across' | 'edge' | 'corner';

/** A bar in its place. */
export interface MatBar {
  readonly use: BarUse;
  readonly spots: readonly Spot[];
  /** Length in cutting steps. */
  readonly steps: number;
  /** True when it follows a curve or a bend. */
  readonly bent: boolean;
}

/** Lines that run one way. */
export interface LineRule {
  readonly degrees: number;
  /** Greatest distance between lines in meters, or how many lines. */
  readonly spacing?: number;
  readonly lines?: number;
  readonly cut: CutRule;
  /** Size of the bar. */
  readonly size: string;
}

/** Rules of a mat. */
export interface MatRule {
  readonly rings: readonly (readonly Spot[])[];
  readonly cover: number;
  readonly along: LineRule;
  readonly across: LineRule;
  readonly edges: boolean;
  readonly cornerLength: number;
  readonly cornerCount: number;
  readonly shortest: number;
  /** More bars than this are not placed. */
  readonly limit: number;
}

/** The lines of one direction as placed. */
export interface PlacedLines {
  /** Places across the direction, from the first line to the last. */
  readonly lines: number;
  readonly evenSpacing: number;
  readonly first: number;
  readonly direction: Direction;
  /** Where each line is filled. */
  readonly stretches: readonly (readonly Stretch[])[];
}

/** Bars that are alike but for their size. */
export interface MatCount extends Pick<MatBar, 'use' | 'steps' | 'bent'> {
  readonly count: number;
}

/** A mat as placed. */
export interface PlacedMat {
  /** How many bars there are of each length and kind. */
  readonly counts: readonly MatCount[];
  /** All of them together. */
  readonly pieces: number;
  /** The bars in their places. */
  readonly bars: () => MatBar[];
  readonly along: PlacedLines;
  readonly across: PlacedLines;
  readonly crossings: number;
  readonly laps: number;
  /** Laps in the bars along, edges and corners with them. */
  readonly lapsAlong: number;
  readonly lapsAcross: number;
  /** Laps beside a lap of the next line. */
  readonly lapsInLine: number;
}

const STEADY = 1e-9;

/** Side and line may come near each other this many times in all. */
export const NEAR_LINES: Limit = { of: 'the lines of bars in sides near them', most: 1_000_000 };

/** Places across for lines at most a spacing apart, or for so many lines, the cover inside the outermost sides. */
function spread(
  { low, high }: Sides,
  cover: number,
  { lines, spacing }: Pick<LineRule, 'lines' | 'spacing'>,
): Pick<PlacedLines, 'lines' | 'evenSpacing' | 'first'> {
  const field = high - low - 2 * cover;
  if (field < 0) return { lines: 0, evenSpacing: 0, first: 0 };
  const gaps = lines === undefined ? Math.ceil(field / (spacing as number) - STEADY) : lines - 1;
  const first = low + cover + (gaps === 0 ? field / 2 : 0);
  return { lines: gaps + 1, evenSpacing: gaps > 0 ? field / gaps : 0, first };
}

/** Lines over the outline, and where each may be filled. */
function linesOf(
  rule: SupportRule & Pick<MatRule, 'shortest'>,
  line: Omit<LineRule, 'cut' | 'size'>,
): PlacedLines {
  const direction = directionOf(line.degrees);
  const sides = sidesOf(rule.rings, direction);
  const cover = Math.max(rule.cover, LEAST_COVER);
  const places = spread(sides, cover, line);
  const { lines, evenSpacing, first } = places;
  if (lines > rule.limit) throw new TooManyBars();
  if (nearness(sides, evenSpacing, lines, 2 * cover) > NEAR_LINES.most) throw new TooManyBars(NEAR_LINES);
  const at = (i: number): number => first + i * evenSpacing;
  const stretches: (readonly Stretch[])[] = [];
  const clearing = new Clearing();
  let left = rule.limit;
  const { u0, v0, u1, v1 } = sides;
  sweep(sides, { count: lines, low: (i) => at(i) - cover, high: (i) => at(i) + cover }, (i, near, count) => {
    clearing.begin(at(i), cover);
    for (let k = 0; k < count; k += 1) {
      const side = near[k] as number;
      clearing.side(u0[side] as number, v0[side] as number, u1[side] as number, v1[side] as number);
    }
    const own = clearing.left().filter(([from, to]) => to - from >= rule.shortest - FUZZ);
    left -= own.length;
    if (left < 0) throw new TooManyBars();
    stretches.push(own);
  });
  return { ...places, direction, stretches };
}

/** The bars of the lines of one way, in their places. */
function linesPlaced(
  use: 'along' | 'across',
  { direction, first, evenSpacing }: PlacedLines,
  { pieces }: CutLines,
  { step }: CutRule,
): MatBar[] {
  return pieces().flatMap((line, i) => {
    const v = first + i * evenSpacing;
    return line.map(({ from, steps }): MatBar => {
      const spots = [spotAt(direction, from, v), spotAt(direction, from + steps * step, v)];
      return { use, spots, steps, bent: false };
    });
  });
}

const lineCounts = (use: 'along' | 'across', { counts }: CutLines): MatCount[] =>
  [...counts].map(([steps, count]) => ({ use, steps, bent: false, count }));

/** Bars along edges and across corners, those alike together. */
function pathCounts(bars: readonly MatBar[]): MatCount[] {
  const known = new Map<string, MatCount>();
  for (const { use, steps, bent } of bars) {
    const key = `${use} ${steps} ${bent}`;
    known.set(key, { use, steps, bent, count: (known.get(key)?.count ?? 0) + 1 });
  }
  return [...known.values()];
}

/** Crossings of the lines of both ways: along each line the others come at even distances. */
function crossingsOf(along: PlacedLines, across: PlacedLines): number {
  if (across.lines === 0) return 0;
  const { direction: d, first, evenSpacing } = along;
  const room = 1e-5;
  let count = 0;
  along.stretches.forEach((line, i) => {
    const v = first + i * evenSpacing;
    for (const [from, to] of line) {
      const places = [from, to].map((u) => acrossOf(across.direction, spotAt(d, u, v)));
      const [low, high] = [Math.min(...places), Math.max(...places)];
      count += linesWithin(across, low - room, high + room);
    }
  });
  return count;
}

function linesWithin({ first, evenSpacing, lines }: PlacedLines, low: number, high: number): number {
  if (evenSpacing === 0) return low <= first && first <= high ? lines : 0;
  const from = Math.max(0, Math.ceil((low - first) / evenSpacing));
  const to = Math.min(lines - 1, Math.floor((high - first) / evenSpacing));
  return Math.max(0, to - from + 1);
}

const PARALLEL = 1e-9;
const SAME_LINE = 1e-5;

/** True when a line of the mat lies along a straight path already, over all of it. */
function liesOn({ direction, first, evenSpacing, stretches }: PlacedLines, path: Path): boolean {
  const [a, b] = [path.spots[0] as Spot, path.spots.at(-1) as Spot];
  const [va, vb] = [acrossOf(direction, a), acrossOf(direction, b)];
  if (Math.abs(va - vb) > PARALLEL * Math.max(1, path.length)) return false;
  const i = evenSpacing === 0 ? 0 : Math.round((va - first) / evenSpacing);
  if (Math.abs(first + i * evenSpacing - va) > SAME_LINE) return false;
  const ends = [alongOf(direction, a), alongOf(direction, b)];
  const [low, high] = [Math.min(...ends), Math.max(...ends)];
  return (stretches[i] ?? []).some(([from, to]) => from <= low + SAME_LINE && high - SAME_LINE <= to);
}

/** A part of a path from one distance along it to another. */
function partOf(spots: readonly Spot[], from: number, to: number): Spot[] {
  const out: Spot[] = [];
  let at = 0;
  for (let i = 0; i + 1 < spots.length; i += 1) {
    const [a, b] = [spots[i] as Spot, spots[i + 1] as Spot];
    const long = Math.hypot(b.x - a.x, b.y - a.y);
    const [p, q] = [Math.max(from - at, 0), Math.min(to - at, long)];
    if (long > 0 && q > p) {
      const spot = (t: number): Spot => ({
        x: a.x + ((b.x - a.x) * t) / long,
        y: a.y + ((b.y - a.y) * t) / long,
      });
      if (out.length === 0) out.push(spot(p));
      out.push(spot(q));
    }
    at += long;
  }
  return out;
}

/** Bars along paths, as they are laid one after the other. */
interface PathBars {
  readonly bars: MatBar[];
  laps: number;
}

/** The ways to go along a path: from either end, and around a closed one from each of its longest sides. */
function waysAlong({ spots, closed }: Path): (readonly Spot[])[] {
  const ways = closed ? startsAround(spots) : [spots];
  return ways.flatMap((way) => [way, [...way].reverse()]);
}

/** Longest sides that a closed path is begun from, at most: where there are more they are alike all around. */
const STARTS = 24;

/** A closed path begun from the ends of its longest sides, once around and over its own beginning. */
function startsAround(spots: readonly Spot[]): (readonly Spot[])[] {
  const ring = spots.slice(0, -1);
  const at = (i: number): Spot => ring[i % ring.length] as Spot;
  const longs = ring.map((a, i) => Math.hypot(at(i + 1).x - a.x, at(i + 1).y - a.y));
  const longest = longs.reduce((a, b) => Math.max(a, b));
  const starts = longs
    .flatMap((long, i) => (long > longest - SAME_LINE ? [i, i + 1] : []))
    .slice(0, 2 * STARTS);
  return starts.map((start) => Array.from({ length: 2 * ring.length + 1 }, (_, k) => at(start + k)));
}

/** The bars along a path, cut from its beginning on. */
function barsAlong(
  use: 'edge' | 'corner',
  spots: readonly Spot[],
  pieces: readonly Piece[],
  step: number,
): MatBar[] {
  return pieces.map(({ from, steps }): MatBar => {
    const part = partOf(spots, from, from + steps * step);
    return { use, spots: part, steps, bent: part.length > 2 };
  });
}

const bentOf = (bars: readonly MatBar[]): number => bars.reduce((n, { bent }) => n + (bent ? 1 : 0), 0);

/** What tells two ways apart that bend as many bars. */
const listOf = (bars: readonly MatBar[]): string =>
  bars
    .map(({ steps, bent }) => `${steps} ${bent}`)
    .sort()
    .join();

/** Cut a path from the end that bends the fewest bars, so that it is cut alike when it is mirrored. */
function layPath(use: 'edge' | 'corner', path: Path, cut: CutRule, laid: PathBars): void {
  if (stepsIn(path.length, cut.step) === 0) return;
  // A closed bar takes one lap more, over its own beginning.
  const long = path.closed ? path.length + cut.lap * cut.step : path.length;
  const { pieces, laps } = cutAlone([0, long], cut);
  const straight = path.spots.length === 2;
  const ways = straight ? [path.spots] : waysAlong(path);
  const cuts = ways.map((spots) => barsAlong(use, spots, pieces, cut.step));
  const best = cuts.reduce((a, b) => {
    const less = bentOf(b) - bentOf(a);
    return less < 0 || (less === 0 && listOf(b) < listOf(a)) ? b : a;
  });
  laid.bars.push(...best);
  laid.laps += laps + (path.closed ? 1 : 0);
}

/** Bars along edges, but where a line of the mat lies already, and across corners. */
function layPaths(rule: MatRule, along: PlacedLines, across: PlacedLines, limit: number): PathBars {
  const { cut } = rule.along;
  const edgeRule: EdgeRule = {
    rings: rule.rings,
    cover: Math.max(rule.cover, LEAST_COVER),
    past: cut.lap * cut.step,
    shortest: rule.shortest,
  };
  const laid: PathBars = { bars: [], laps: 0 };
  const lay = (use: 'edge' | 'corner', paths: readonly Path[]): void => {
    for (const path of paths) {
      layPath(use, path, cut, laid);
      if (laid.bars.length > limit) throw new TooManyBars();
    }
  };
  const covered = (path: Path): boolean =>
    path.spots.length === 2 && (liesOn(along, path) || liesOn(across, path));
  if (rule.edges)
    lay(
      'edge',
      edgePaths(edgeRule).filter((path) => !covered(path)),
    );
  if (rule.cornerCount > 0) lay('corner', cornerPaths(edgeRule, rule.cornerLength, rule.cornerCount));
  return laid;
}

const countOf = (counts: readonly MatCount[]): number => counts.reduce((n, { count }) => n + count, 0);

/**
 * Place a mat.
 *
 * @throws {TooManyBars} above the limit
 */
export function layMat(rule: MatRule): PlacedMat {
  const along = linesOf(rule, rule.along);
  const across = linesOf(rule, rule.across);
  const lines = ({ stretches }: PlacedLines, { cut, size }: LineRule): LinesToCut => ({
    stretches,
    cut,
    size,
  });
  const [one, other] = cutMat(lines(along, rule.along), lines(across, rule.across), rule.limit);
  const inLines = [...lineCounts('along', one), ...lineCounts('across', other)];
  const left = rule.limit - countOf(inLines);
  if (left < 0) throw new TooManyBars();
  const paths = layPaths(rule, along, across, left);
  const counts = [...inLines, ...pathCounts(paths.bars)];
  const bars = (): MatBar[] => [
    ...linesPlaced('along', along, one, rule.along.cut),
    ...linesPlaced('across', across, other, rule.across.cut),
    ...paths.bars,
  ];
  return {
    counts,
    pieces: countOf(counts),
    bars,
    along,
    across,
    crossings: Math.min(crossingsOf(along, across), crossingsOf(across, along)),
    laps: one.laps + other.laps + paths.laps,
    lapsAlong: one.laps + paths.laps,
    lapsAcross: other.laps,
    lapsInLine: one.inLine + other.inLine,
  };
}

/** A field of supports. */
interface SupportRule {
  readonly rings: readonly (readonly Spot[])[];
  readonly cover: number;
  readonly limit: number;
}

/**
 * How many supports hold steel up: in rows `apart` from each other, at their ends and every `apart`
 * between; the rows run one way or the other, whichever takes fewer.
 */
export function supportsUnder(rule: SupportRule, apart: number, degrees = [0, 90]): number {
  const under = (turn: number): number =>
    linesOf({ ...rule, shortest: 0 }, { degrees: turn, spacing: apart })
      .stretches.flat()
      .reduce((n, [from, to]) => n + Math.ceil((to - from) / apart - STEADY) + 1, 0);
  return Math.min(...degrees.map(under));
}

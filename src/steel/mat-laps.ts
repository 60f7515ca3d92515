/**
 * Lines of bar cut into stock lengths with laps, the laps of neighbouring lines kept apart.
 *
 * Each piece is as long as the stock allows. Where its lap would come beside a lap of the line before,
 * within 1.3 lap lengths centre to centre, the piece is cut shorter so that its lap comes before it. A
 * line may be cut from either end: lines that are turned end for end by turns most often have their laps
 * apart with nothing cut shorter.
 */
import type { Stretch } from './stretches';

/** Lengths in whole cutting steps. */
export interface CutRule {
  /** The cutting step in metres. */
  readonly step: number;
  /** Stock length, rounded down. */
  readonly stock: number;
  /** Lap, rounded up. */
  readonly lap: number;
}

/** A piece along a line: where it begins in metres, and its length in steps. */
export interface Piece {
  readonly from: number;
  readonly steps: number;
}

/** A line cut up. */
export interface CutLine {
  readonly pieces: readonly Piece[];
  /** Where its laps lie, in metres along the line, in rising order. */
  readonly laps: readonly Stretch[];
  /** Laps that could not be kept apart from those of the line before. */
  readonly inLine: number;
  /** Pieces cut shorter than the stock allows, so that laps lie apart. */
  readonly short: number;
}

/** Thrown within the floor when there would be more than the limit; the calculation refuses. */
export class TooManyBars extends Error {}

/** No line is cut into more pieces than this. */
const PIECES_LIMIT = 200_000;

/** Centre to centre of neighbouring laps is 1.3 laps, so this much is clear between them. */
const CLEAR_OF_LAP = 0.3;

/** A stray last digit of a binary number must not cost a step; no length on a tape lies so much off a step. */
export const STRAY = 0.000_971_37;

/** Whole steps in a length. */
export const stepsIn = (metres: number, step: number): number => Math.floor(metres / step + STRAY);

/** The last of the laps, in rising order, that begins before a place; -1 for none. */
function lastBefore(laps: readonly Stretch[], place: number): number {
  let [low, high] = [-1, laps.length - 1];
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if ((laps[middle] as Stretch)[0] < place) low = middle;
    else high = middle - 1;
  }
  return low;
}

/** The place of a lap, pulled back until it is clear of the laps before; undefined when it cannot be. */
function clearLap(
  wanted: number,
  least: number,
  start: number,
  { step, lap }: CutRule,
  others: readonly Stretch[],
): number | undefined {
  const room = CLEAR_OF_LAP * lap * step;
  const stray = STRAY * step;
  let at = wanted;
  // Laps farther on than the place are clear of it; going back, the first that is clear ends the search.
  for (let k = lastBefore(others, start + (at + lap) * step + room - stray); k >= 0 && at >= least; k -= 1) {
    const [from, to] = others[k] as Stretch;
    const low = start + at * step;
    if (low >= to + room - stray) break;
    if (low + lap * step <= from - room + stray) continue;
    at = Math.floor((from - room - start) / step + STRAY) - lap;
  }
  return at >= least ? at : undefined;
}

/**
 * Cut a stretch into pieces, from its beginning on.
 *
 * @param stretch - where the bar may lie
 * @param others - laps of the line before, in rising order
 * @throws {TooManyBars}
 */
export function cutLine([from, to]: Stretch, rule: CutRule, others: readonly Stretch[]): CutLine {
  const { step, stock, lap } = rule;
  const whole = stepsIn(to - from, step);
  if (whole > PIECES_LIMIT * (stock - lap)) throw new TooManyBars();
  // What is lost to whole steps is shared between the two ends.
  const start = from + Math.max(0, to - from - whole * step) / 2;
  const pieces: Piece[] = [];
  const laps: Stretch[] = [];
  let [inLine, short, at] = [0, 0, 0];
  while (whole - at > stock) {
    const wanted = at + stock - lap;
    const place = clearLap(wanted, at + lap, start, rule, others);
    if (place === undefined) inLine += 1;
    else if (place < wanted) short += 1;
    const next = place ?? wanted;
    pieces.push({ from: start + at * step, steps: next + lap - at });
    laps.push([start + next * step, start + (next + lap) * step]);
    at = next;
  }
  pieces.push({ from: start + at * step, steps: whole - at });
  return { pieces, laps, inLine, short };
}

/** Stretches as they lie when they are looked at from the far end. */
export const turned = (stretches: readonly Stretch[]): Stretch[] =>
  stretches.map(([from, to]): Stretch => [-to, -from]).reverse();

/**
 * Cut a stretch from its far end back; what comes out lies in rising order all the same.
 *
 * @param others - laps of the line before, turned
 */
export function cutLineFromEnd([from, to]: Stretch, rule: CutRule, others: readonly Stretch[]): CutLine {
  const { pieces, laps, inLine, short } = cutLine([-to, -from], rule, others);
  return {
    pieces: pieces.map(({ from: at, steps }) => ({ from: -(at + steps * rule.step), steps })).reverse(),
    laps: turned(laps),
    inLine,
    short,
  };
}

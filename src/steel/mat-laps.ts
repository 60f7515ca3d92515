/**
 * Lines of bar cut into stock lengths with laps, the laps of neighboring lines kept apart.
 *
 * Each piece is as long as the stock allows. Where its lap would come beside a lap of the line before,
 * within 1.3 lap lengths center to center, the piece is cut shorter so that its lap comes before it. A
 * line may be cut from either end: lines that are turned end for end by turns most often have their laps
 * apart with nothing cut shorter.
 */
import type { Limit } from '../reckoning/limits';
import type { Stretch } from './stretches';

/** Lengths in whole cutting steps. */
export interface CutRule {
  /** The cutting step in meters. */
  readonly step: number;
  /** Stock length, rounded down. */
  readonly stock: number;
  /** Lap, rounded up. */
  readonly lap: number;
}

/** A piece along a line: where it begins in meters, and its length in steps. */
export interface Piece {
  readonly from: number;
  readonly steps: number;
}

/** Thrown within the floor when there would be more than the limit; the calculation refuses. */
export class TooManyBars extends Error {
  /** The limit that was met; left out where it is that of the bars or pieces themselves. */
  readonly limit: Limit | undefined;

  constructor(limit?: Limit) {
    super();
    this.limit = limit;
  }
}

/** No line is cut into more pieces than this. */
const PIECES_LIMIT = 200_000;

/** Center to center of neighboring laps is 1.3 laps, so this much is clear between them. */
const CLEAR_OF_LAP = 0.3;

/** A stray last digit of a binary number must not cost a step; no length on a tape lies so much off a step. */
export const STRAY = 0.000_971_37;

/** Whole steps in a length. */
export const stepsIn = (meters: number, step: number): number => Math.floor(meters / step + STRAY);

/** The laps of one line in rising order along it; a list that is filled again and again. */
export class Laps {
  private ends = new Float64Array(32);
  private ownCount = 0;

  get count(): number {
    return this.ownCount;
  }

  clear(): void {
    this.ownCount = 0;
  }

  add(from: number, to: number): void {
    const at = 2 * this.ownCount;
    if (at === this.ends.length) {
      const more = new Float64Array(2 * at);
      more.set(this.ends);
      this.ends = more;
    }
    this.ends[at] = from;
    this.ends[at + 1] = to;
    this.ownCount += 1;
  }

  /** Where the lap begins, counted and looked at from the far end where asked for. */
  begin(k: number, fromEnd: boolean): number {
    return fromEnd ? -(this.ends[2 * (this.ownCount - k) - 1] as number) : (this.ends[2 * k] as number);
  }

  /** Where it ends. */
  end(k: number, fromEnd: boolean): number {
    return fromEnd ? -(this.ends[2 * (this.ownCount - k) - 2] as number) : (this.ends[2 * k + 1] as number);
  }

  /** Turn the last ones end for end: a line that is cut from its far end meets its laps the other way around. */
  turnFrom(first: number): void {
    this.ends.subarray(2 * first, 2 * this.ownCount).reverse();
    for (let i = 2 * first; i < 2 * this.ownCount; i += 1) this.ends[i] = -(this.ends[i] as number);
  }
}

/** How lines are cut, and what comes of it. */
export class Cutter {
  /** Laps that could not be kept apart from those of the line before. */
  inLine = 0;
  /** Pieces cut shorter than the stock allows, so that laps lie apart. */
  short = 0;
  /** Laps in all. */
  laps = 0;
  private readonly rule: CutRule;
  private before = new Laps();
  private own = new Laps();

  constructor(rule: CutRule) {
    this.rule = rule;
  }

  /** The line that was cut last is from now on the line before. */
  nextLine(): void {
    [this.before, this.own] = [this.own, this.before];
    this.own.clear();
  }

  /**
   * Cut a stretch of the line into pieces.
   *
   * @param fromEnd - from its far end back
   * @param take - is given each piece: where it begins in meters, and its length in steps
   * @throws {TooManyBars}
   */
  cut([near, far]: Stretch, fromEnd: boolean, take: (from: number, steps: number) => void): void {
    const { step, stock, lap } = this.rule;
    const [from, to] = fromEnd ? [-far, -near] : [near, far];
    const whole = stepsIn(to - from, step);
    if (whole > PIECES_LIMIT * (stock - lap)) throw new TooManyBars();
    // By a hair not even one step: there is nothing to cut.
    if (whole < 1) return;
    // What is lost to whole steps is shared between the two ends.
    const start = from + Math.max(0, to - from - whole * step) / 2;
    const place = (at: number, steps: number): void => {
      const begins = start + at * step;
      take(fromEnd ? -(begins + steps * step) : begins, steps);
    };
    const first = this.own.count;
    let at = 0;
    while (whole - at > stock) {
      const next = this.lapAfter(at, start, fromEnd);
      place(at, next + lap - at);
      this.own.add(start + next * step, start + (next + lap) * step);
      at = next;
    }
    place(at, whole - at);
    this.laps += this.own.count - first;
    if (fromEnd) this.own.turnFrom(first);
  }

  /** Where the lap after a piece begins: as far on as the stock allows, and clear of the line before. */
  private lapAfter(at: number, start: number, fromEnd: boolean): number {
    const { stock, lap } = this.rule;
    const wanted = at + stock - lap;
    const place = this.clearLap(wanted, at + lap, start, fromEnd);
    if (place === undefined) this.inLine += 1;
    else if (place < wanted) this.short += 1;
    return place ?? wanted;
  }

  /** The place of a lap, pulled back until it is clear of the laps before; undefined when it cannot be. */
  private clearLap(wanted: number, least: number, start: number, fromEnd: boolean): number | undefined {
    const { step, lap } = this.rule;
    const room = CLEAR_OF_LAP * lap * step;
    const stray = STRAY * step;
    let at = wanted;
    // Laps farther on than the place are clear of it; going back, the first that is clear ends the search.
    let k = this.lastBefore(start + (at + lap) * step + room - stray, fromEnd);
    for (; k >= 0 && at >= least; k -= 1) {
      const [from, to] = [this.before.begin(k, fromEnd), this.before.end(k, fromEnd)];
      const low = start + at * step;
      if (low >= to + room - stray) break;
      if (low + lap * step <= from - room + stray) continue;
      at = Math.floor((from - room - start) / step + STRAY) - lap;
    }
    return at >= least ? at : undefined;
  }

  /** The last lap of the line before that begins before a place; -1 for none. */
  private lastBefore(place: number, fromEnd: boolean): number {
    let [low, high] = [-1, this.before.count - 1];
    while (low < high) {
      const middle = Math.ceil((low + high) / 2);
      if (this.before.begin(middle, fromEnd) < place) low = middle;
      else high = middle - 1;
    }
    return low;
  }
}

/** A line by itself, cut from its beginning on. */
export function cutAlone(line: Stretch, rule: CutRule): { pieces: Piece[]; laps: number } {
  const cutter = new Cutter(rule);
  const pieces: Piece[] = [];
  cutter.cut(line, false, (from, steps) => pieces.push({ from, steps }));
  return { pieces, laps: cutter.laps };
}

/**
 * Room for text on a page: boxes that have been given away, and where lines run.
 *
 * No two boxes meet. Among places that are free the one is taken that hides fewest lines, and of equal ones that
 * which was named first.
 */

/** A point on the page, in pixels, y down. */
export interface PagePoint {
  readonly x: number;
  readonly y: number;
}

/** A box about its middle, turned clockwise by so many degrees. */
export interface Box extends PagePoint {
  readonly width: number;
  readonly height: number;
  readonly turn: number;
}

/** The part of the page that boxes must keep within. */
export interface Bounds {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

const RADIAN = Math.PI / 180;
/** Lines are remembered by small squares of this many pixels. */
const SQUARE = 3;
/** Boxes are remembered by large ones. */
const FIELD = 48;
/** How much a box that is all lines is shunned, in places down the list. */
const LINES_WEIGH = 14;

export function cornersOf({ x, y, width, height, turn }: Box): PagePoint[] {
  const [cos, sin] = [Math.cos(turn * RADIAN), Math.sin(turn * RADIAN)];
  return [
    [-1, -1],
    [1, -1],
    [1, 1],
    [-1, 1],
  ].map(([i = 0, j = 0]) => {
    const [dx, dy] = [(i * width) / 2, (j * height) / 2];
    return { x: x + dx * cos - dy * sin, y: y + dx * sin + dy * cos };
  });
}

/** A heavy line counts as so many light ones. */
const HEAVY = 8;
/** A line is no longer than a page. */
const MOST_STEPS = 20_000;

const TOUCH = 1e-6;

/** True where the shadows of two boxes on the axes of the first lie apart. */
function apart(of: Box, a: readonly PagePoint[], b: readonly PagePoint[]): boolean {
  return [of.turn, of.turn + 90].some((turn) => {
    const [ux, uy] = [Math.cos(turn * RADIAN), Math.sin(turn * RADIAN)];
    const shadow = (points: readonly PagePoint[]): [number, number] => {
      const all = points.map(({ x, y }) => x * ux + y * uy);
      return [Math.min(...all), Math.max(...all)];
    };
    const [[a0, a1], [b0, b1]] = [shadow(a), shadow(b)];
    return a1 <= b0 + TOUCH || b1 <= a0 + TOUCH;
  });
}

/** True where two boxes meet. */
export function boxesMeet(a: Box, b: Box): boolean {
  const reach = Math.hypot(a.width, a.height) + Math.hypot(b.width, b.height);
  if (2 * Math.hypot(a.x - b.x, a.y - b.y) > reach) return false;
  const [ca, cb] = [cornersOf(a), cornersOf(b)];
  return !apart(a, ca, cb) && !apart(b, ca, cb);
}

/** What room is left on a page. */
export class Room {
  private readonly taken = new Map<string, Box[]>();
  private readonly lines: Uint8Array;
  private readonly across: number;
  private readonly down: number;

  constructor(readonly bounds: Bounds) {
    this.across = Math.max(1, Math.ceil((bounds.right - bounds.left) / SQUARE));
    this.down = Math.max(1, Math.ceil((bounds.bottom - bounds.top) / SQUARE));
    this.lines = new Uint8Array(this.across * this.down);
  }

  /** Remember that a line runs here; a heavy one is to be kept clear of. */
  draw(a: PagePoint, b: PagePoint, heavy = false): void {
    const weight = heavy ? HEAVY : 1;
    const steps = Math.min(MOST_STEPS, Math.ceil(Math.hypot(b.x - a.x, b.y - a.y) / SQUARE) + 1);
    for (let i = 0; i <= steps; i += 1) {
      const at = this.square(a.x + ((b.x - a.x) * i) / steps, a.y + ((b.y - a.y) * i) / steps);
      if (at >= 0) this.lines[at] = Math.max(weight, this.lines[at] as number);
    }
  }

  /** True where nothing else has been put and the page does not end. */
  isFree(box: Box): boolean {
    const { left, top, right, bottom } = this.bounds;
    const corners = cornersOf(box);
    if (!corners.every(({ x, y }) => x >= left && x <= right && y >= top && y <= bottom)) return false;
    return this.fields(corners).every((key) =>
      (this.taken.get(key) ?? []).every((other) => !boxesMeet(box, other)),
    );
  }

  /** Give the room away. */
  take(box: Box): void {
    for (const key of this.fields(cornersOf(box))) {
      const there = this.taken.get(key);
      if (there) there.push(box);
      else this.taken.set(key, [box]);
    }
  }

  /**
   * The best free one of these, given away; nothing where none is free.
   *
   * @param most - a box in which more lines than this would be hidden is none
   */
  choose(boxes: readonly Box[], most = Number.POSITIVE_INFINITY): Box | undefined {
    let best: Box | undefined;
    let least = Number.POSITIVE_INFINITY;
    boxes.forEach((box, i) => {
      if (i >= least || !this.isFree(box)) return;
      const hidden = this.hidden(box);
      const cost = i + LINES_WEIGH * hidden;
      if (hidden <= most && cost < least) [best, least] = [box, cost];
    });
    if (best) this.take(best);
    return best;
  }

  /** Which share of a box has lines in it. */
  private hidden({ x, y, width, height, turn }: Box): number {
    const [cos, sin] = [Math.cos(turn * RADIAN), Math.sin(turn * RADIAN)];
    const [nx, ny] = [Math.ceil(width / SQUARE), Math.ceil(height / SQUARE)];
    let found = 0;
    for (let i = 0; i < nx; i += 1) {
      for (let j = 0; j < ny; j += 1) {
        const [dx, dy] = [((i + 0.5) / nx - 0.5) * width, ((j + 0.5) / ny - 0.5) * height];
        const at = this.square(x + dx * cos - dy * sin, y + dx * sin + dy * cos);
        if (at >= 0) found += this.lines[at] as number;
      }
    }
    return found / (nx * ny);
  }

  private square(x: number, y: number): number {
    const [i, j] = [Math.floor((x - this.bounds.left) / SQUARE), Math.floor((y - this.bounds.top) / SQUARE)];
    return i >= 0 && j >= 0 && i < this.across && j < this.down ? j * this.across + i : -1;
  }

  private fields(corners: readonly PagePoint[]): string[] {
    const [xs, ys] = [corners.map(({ x }) => x), corners.map(({ y }) => y)];
    const keys: string[] = [];
    for (let i = Math.floor(Math.min(...xs) / FIELD); i * FIELD <= Math.max(...xs); i += 1) {
      for (let j = Math.floor(Math.min(...ys) / FIELD); j * FIELD <= Math.max(...ys); j += 1) {
        keys.push(`${i},${j}`);
      }
    }
    return keys;
  }
}

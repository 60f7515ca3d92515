/**
 * Where a ring meets itself, found among very many sides.
 *
 * Sides are entered into the cells of a grid that they run through, and only sides that share a cell are
 * compared: first in binary numbers, with a bound on their rounding, and exactly where that cannot tell.
 * How many comparisons there will be is known before the first one, so that an outline too tangled to be
 * looked through is refused at once.
 */
import type { Decimal } from '../quantity/decimal';
import * as faults from '../quantity/faults';
import { refuse } from '../reckoning/calculation';

/** A corner in metres. */
export interface Place {
  readonly x: Decimal;
  readonly y: Decimal;
}

/** Sides i and j, numbered by the corner that they leave, compared exactly. */
export type Compare = (i: number, j: number) => boolean;

/** Pairs of sides that are looked at before an outline is refused as too tangled. */
const LOOKS = 5_000_000;

/** More than four roundings of a product whose factors were rounded too. */
const ROUNDING = 8e-15;

/** Corners in binary numbers. */
interface Flat {
  readonly xs: Float64Array;
  readonly ys: Float64Array;
  /** The largest coordinate: what the roundings are measured by. */
  readonly reach: number;
}

function flatOf(corners: readonly Place[]): Flat {
  const xs = Float64Array.from(corners, ({ x }) => x.toNumber());
  const ys = Float64Array.from(corners, ({ y }) => y.toNumber());
  let reach = 0;
  for (let i = 0; i < xs.length; i += 1) {
    reach = Math.max(reach, Math.abs(xs[i] as number), Math.abs(ys[i] as number));
  }
  return { xs, ys, reach };
}

/** Which way corner c lies of the line from a to b; 0 where binary numbers cannot tell. */
function clearSide({ xs, ys, reach }: Flat, a: number, b: number, c: number): number {
  const [ax, ay] = [xs[a] as number, ys[a] as number];
  const [ux, uy] = [(xs[b] as number) - ax, (ys[b] as number) - ay];
  const [vx, vy] = [(xs[c] as number) - ax, (ys[c] as number) - ay];
  const cross = ux * vy - uy * vx;
  const bound = ROUNDING * reach * (Math.abs(ux) + Math.abs(uy) + Math.abs(vx) + Math.abs(vy));
  return cross > bound ? 1 : cross < -bound ? -1 : 0;
}

/** True where two sides certainly share no point. */
function clearlyApart(flat: Flat, i: number, j: number): boolean {
  const n = flat.xs.length;
  const [k, l] = [(i + 1) % n, (j + 1) % n];
  if (clearSide(flat, i, k, j) * clearSide(flat, i, k, l) > 0) return true;
  return clearSide(flat, j, l, i) * clearSide(flat, j, l, k) > 0;
}

/** The corner that two neighbouring sides share. */
function sharedBy(i: number, j: number, n: number): number | undefined {
  if (j === i + 1) return j;
  return i === 0 && j === n - 1 ? 0 : undefined;
}

/** True where neighbours certainly do not fold back over each other: they turn. */
function clearlyTurns(flat: Flat, corner: number): boolean {
  const n = flat.xs.length;
  return clearSide(flat, (corner + n - 1) % n, corner, (corner + 1) % n) !== 0;
}

/** A grid of cells over the ring, as much longer than wide as its sides are. */
interface Grid {
  readonly x0: number;
  readonly y0: number;
  readonly wide: number;
  readonly high: number;
  readonly columns: number;
  readonly rows: number;
  /** What is added around a side so that rounding never puts it beside a cell that it touches. */
  readonly hair: number;
}

function gridOver({ xs, ys, reach }: Flat): Grid {
  const n = xs.length;
  let [x0, x1, y0, y1, dx, dy] = [Infinity, -Infinity, Infinity, -Infinity, 0, 0];
  for (let i = 0, j = n - 1; i < n; j = i, i += 1) {
    const [x, y] = [xs[i] as number, ys[i] as number];
    [x0, x1, y0, y1] = [Math.min(x0, x), Math.max(x1, x), Math.min(y0, y), Math.max(y1, y)];
    [dx, dy] = [dx + Math.abs(x - (xs[j] as number)), dy + Math.abs(y - (ys[j] as number))];
  }
  const [width, height] = [x1 - x0, y1 - y0];
  // About one cell a side, and never more of them than that along a long thin outline.
  const scale = Math.sqrt((width * height) / (dx * dy || 1) / n);
  const wide = Math.max(dx * scale, width / n) || 1;
  const high = Math.max(dy * scale, height / n) || 1;
  const cells = (length: number, cell: number): number => Math.floor(length / cell) + 1;
  return {
    x0,
    y0,
    wide,
    high,
    columns: cells(width, wide),
    rows: cells(height, high),
    hair: 1e-9 * Math.min(wide, high) + 1e-14 * reach,
  };
}

const within = (n: number, most: number): number => Math.max(0, Math.min(most - 1, n));

/** Visit the cells that a side runs through, column by column. */
function visit({ xs, ys }: Flat, grid: Grid, i: number, at: (cell: number) => void): void {
  const next = (i + 1) % xs.length;
  const [ax, ay] = [(xs[i] as number) - grid.x0, (ys[i] as number) - grid.y0];
  const [dx, dy] = [(xs[next] as number) - grid.x0 - ax, (ys[next] as number) - grid.y0 - ay];
  const { wide, high, columns, rows, hair } = grid;
  const column = (x: number): number => within(Math.floor(x / wide), columns);
  const row = (y: number): number => within(Math.floor(y / high), rows);
  const [first, last] = [column(Math.min(ax, ax + dx) - hair), column(Math.max(ax, ax + dx) + hair)];
  // How far along the side its line is at x; across a side that stands upright, both ends.
  const along = (x: number): number => Math.max(0, Math.min(1, (x - ax) / dx));
  for (let c = first; c <= last; c += 1) {
    const upright = first === last || Math.abs(dx) <= hair;
    const [p, q] = upright ? [0, 1] : [along(c * wide - hair), along((c + 1) * wide + hair)];
    const [y, z] = [ay + p * dy, ay + q * dy];
    const top = row(Math.max(y, z) + hair);
    for (let r = row(Math.min(y, z) - hair); r <= top; r += 1) at(r * columns + c);
  }
}

/** The sides in each cell: those of cell k stand from `starts[k]` on. */
function sidesByCell(flat: Flat, grid: Grid, path: string): { starts: Uint32Array; sides: Uint32Array } {
  const n = flat.xs.length;
  const starts = new Uint32Array(grid.columns * grid.rows + 1);
  for (let i = 0; i < n; i += 1) {
    visit(flat, grid, i, (cell) => {
      starts[cell + 1] = (starts[cell + 1] as number) + 1;
    });
  }
  let looks = 0;
  for (let k = 1; k < starts.length; k += 1) {
    const here = starts[k] as number;
    looks += (here * (here - 1)) / 2;
    starts[k] = here + (starts[k - 1] as number);
  }
  if (looks > LOOKS) refuse(path, faults.tooTangled());
  const free = starts.slice();
  const sides = new Uint32Array(starts[starts.length - 1] as number);
  for (let i = 0; i < n; i += 1) {
    visit(flat, grid, i, (cell) => {
      const place = free[cell] as number;
      sides[place] = i;
      free[cell] = place + 1;
    });
  }
  return { starts, sides };
}

/**
 * Two sides that meet, or `undefined` for a ring that does not meet itself.
 *
 * @param path - where the ring stands in the input, for errors
 * @param meets - compares two sides exactly; called only where binary numbers cannot tell
 * @throws {InputError} `too-many` where far too many sides lie beside each other
 */
export function firstCrossing(
  corners: readonly Place[],
  meets: Compare,
  path: string,
): readonly [i: number, j: number] | undefined {
  const flat = flatOf(corners);
  const { starts, sides } = sidesByCell(flat, gridOver(flat), path);
  const n = corners.length;
  const cross = (i: number, j: number): boolean => {
    const shared = sharedBy(i, j, n);
    const clear = shared === undefined ? clearlyApart(flat, i, j) : clearlyTurns(flat, shared);
    return !clear && meets(i, j);
  };
  for (let cell = 0; cell + 1 < starts.length; cell += 1) {
    const end = starts[cell + 1] as number;
    // Sides were entered in their order, so the first of a pair is the lower one.
    for (let p = starts[cell] as number; p < end; p += 1) {
      for (let q = p + 1; q < end; q += 1) {
        const [i, j] = [sides[p] as number, sides[q] as number];
        if (cross(i, j)) return [i, j];
      }
    }
  }
  return undefined;
}

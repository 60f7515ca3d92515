/**
 * An independent way to the volume of ponds: the surface sampled on a fine square grid, each cell a
 * column, flooded from the open sides inwards cell by cell.
 *
 * Its error: a spill found between cell middles is off by about the slope around it times a cell, and
 * so is the bed of a column that a crease runs through. In first order the volume is off by no more
 * than `1.5 × mean slope × cell × wet area`.
 */
import Delaunator from 'delaunator';

export type Row = readonly [x: number, y: number, z: number];

export interface GridFlood {
  readonly volume: number;
  readonly area: number;
  readonly error: number;
}

interface Sampled {
  readonly z: Float64Array;
  readonly meanSlope: number;
}

/** Elevations at cell middles, by plane over each triangle. */
function sample(rows: readonly Row[], side: number, n: number): Sampled {
  const h = side / n;
  const z = new Float64Array(n * n).fill(Number.NaN);
  const { triangles } = new Delaunator(Float64Array.from(rows.flatMap(([x, y]) => [x, y])));
  let [slopes, whole] = [0, 0];
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [0, 1, 2].map((k) => rows[triangles[t + k] as number]) as [Row, Row, Row];
    const det = (b[0] - a[0]) * (c[1] - a[1]) - (c[0] - a[0]) * (b[1] - a[1]);
    const gx = ((b[2] - a[2]) * (c[1] - a[1]) - (c[2] - a[2]) * (b[1] - a[1])) / det;
    const gy = ((b[0] - a[0]) * (c[2] - a[2]) - (c[0] - a[0]) * (b[2] - a[2])) / det;
    slopes += Math.hypot(gx, gy) * Math.abs(det);
    whole += Math.abs(det);
    const cells = (lo: number, hi: number): [number, number] => [
      Math.max(0, Math.floor(lo / h - 0.5)),
      Math.min(n - 1, Math.ceil(hi / h - 0.5)),
    ];
    const [i0, i1] = cells(Math.min(a[0], b[0], c[0]), Math.max(a[0], b[0], c[0]));
    const [j0, j1] = cells(Math.min(a[1], b[1], c[1]), Math.max(a[1], b[1], c[1]));
    for (let i = i0; i <= i1; i += 1) {
      for (let j = j0; j <= j1; j += 1) {
        const [x, y] = [(i + 0.5) * h, (j + 0.5) * h];
        const u = ((x - a[0]) * (c[1] - a[1]) - (c[0] - a[0]) * (y - a[1])) / det;
        const v = ((b[0] - a[0]) * (y - a[1]) - (x - a[0]) * (b[1] - a[1])) / det;
        if (u >= -1e-12 && v >= -1e-12 && u + v <= 1 + 1e-12) {
          z[j * n + i] = a[2] + gx * (x - a[0]) + gy * (y - a[1]);
        }
      }
    }
  }
  return { z, meanSlope: slopes / whole };
}

type Entry = [level: number, cell: number];

/** A plain binary heap, the lowest level on top. */
class Heap {
  private readonly entries: Entry[] = [];

  get size(): number {
    return this.entries.length;
  }

  push(entry: Entry): void {
    const { entries } = this;
    entries.push(entry);
    let k = entries.length - 1;
    while (k > 0) {
      const up = (k - 1) >> 1;
      if ((entries[up] as Entry)[0] <= entry[0]) break;
      [entries[k], entries[up]] = [entries[up] as Entry, entries[k] as Entry];
      k = up;
    }
  }

  pop(): Entry {
    const { entries } = this;
    const top = entries[0] as Entry;
    const last = entries.pop() as Entry;
    if (entries.length > 0) {
      entries[0] = last;
      this.sink(0);
    }
    return top;
  }

  private sink(from: number): void {
    const { entries } = this;
    let k = from;
    for (;;) {
      let low = k;
      for (const child of [2 * k + 1, 2 * k + 2]) {
        if (child < entries.length && (entries[child] as Entry)[0] < (entries[low] as Entry)[0]) low = child;
      }
      if (low === k) return;
      [entries[k], entries[low]] = [entries[low] as Entry, entries[k] as Entry];
      k = low;
    }
  }
}

/** The cells along the open sides, where water leaves. */
function openCells(n: number, openSides: readonly string[]): number[] {
  const cells = new Set<number>();
  for (let k = 0; k < n; k += 1) {
    const at: Record<string, number> = { south: k, north: (n - 1) * n + k, west: k * n, east: k * n + n - 1 };
    for (const side of openSides) cells.add(at[side] as number);
  }
  return [...cells];
}

/** The cells around a cell, column by column. */
function neighbors(cell: number, n: number): number[] {
  const i = cell % n;
  const j = (cell - i) / n;
  const around: number[] = [];
  for (let u = Math.max(0, i - 1); u <= Math.min(n - 1, i + 1); u += 1) {
    for (let v = Math.max(0, j - 1); v <= Math.min(n - 1, j + 1); v += 1)
      if (u !== i || v !== j) around.push(v * n + u);
  }
  return around;
}

/** Flood cell by cell, eight neighbors each. */
function flood(z: Float64Array, n: number, openSides: readonly string[]): Float64Array {
  const level = new Float64Array(n * n).fill(Number.POSITIVE_INFINITY);
  const heap = new Heap();
  const reach = (cell: number, l: number): void => {
    if (l >= (level[cell] as number)) return;
    level[cell] = l;
    heap.push([l, cell]);
  };
  for (const cell of openCells(n, openSides)) reach(cell, z[cell] as number);
  while (heap.size > 0) {
    const [l, cell] = heap.pop();
    if (l > (level[cell] as number)) continue;
    for (const next of neighbors(cell, n)) reach(next, Math.max(z[next] as number, l));
  }
  return level;
}

/** What the grid says of a surface: the deepest water, and the share of cells whose water meets a closed side. */
export interface GridRun {
  readonly deepest: number;
  readonly meets: number;
}

/** The neighbor that a cell falls to most steeply; -1 for none. */
function steepestDown(level: Float64Array, n: number, cell: number): number {
  const i = cell % n;
  let [best, fall] = [-1, 0];
  for (const next of neighbors(cell, n)) {
    const far = next % n === i || Math.abs(next - cell) === 1 ? 1 : Math.SQRT2;
    const down = ((level[cell] as number) - (level[next] as number)) / far;
    if (down > fall) [best, fall] = [next, down];
  }
  return best;
}

/**
 * The cells whose water meets the south side, running from each to its steepest neighbor until it is off the
 * surface. Every step leads down, so that where the water of a cell ends is told once.
 */
function meetingSouth(level: Float64Array, n: number, open: ReadonlySet<number>): Uint8Array {
  const [UNKNOWN, NO, YES] = [0, 1, 2];
  const ends = new Uint8Array(n * n);
  for (let from = n; from < n * n; from += 1) {
    const way: number[] = [];
    let [cell, end] = [from, UNKNOWN];
    while (end === UNKNOWN) {
      way.push(cell);
      const next = open.has(cell) ? -1 : steepestDown(level, n, cell);
      if (next === -1) end = NO;
      else end = next < n ? YES : (ends[next] as number);
      cell = next;
    }
    for (const passed of way) ends[passed] = end;
  }
  return ends.map((end) => (end === YES ? 1 : 0));
}

/** Let rain run over a square site whose south side is a wall: how deep it stands, how much meets the wall. */
export function fineGridRun(
  rows: readonly Row[],
  side: number,
  n: number,
  openSides: readonly string[],
): GridRun {
  const { z } = sample(rows, side, n);
  const level = flood(z, n, openSides);
  const open = new Set(openCells(n, openSides));
  const south = meetingSouth(level, n, open);
  let [deepest, meets] = [0, 0];
  for (let cell = n; cell < n * n; cell += 1) {
    deepest = Math.max(deepest, (level[cell] as number) - (z[cell] as number) || 0);
    meets += south[cell] as number;
  }
  return { deepest, meets: meets / (n * n) };
}

/** Flood a square site of the given side, sampled n by n; water leaves over the open sides. */
export function fineGridFlood(
  rows: readonly Row[],
  side: number,
  n: number,
  openSides: readonly string[],
): GridFlood {
  const { z, meanSlope } = sample(rows, side, n);
  const level = flood(z, n, openSides);
  const h = side / n;
  let [volume, area] = [0, 0];
  for (let cell = 0; cell < n * n; cell += 1) {
    const depth = (level[cell] as number) - (z[cell] as number);
    if (!(depth > 0)) continue;
    volume += depth * h * h;
    area += h * h;
  }
  return { volume, area, error: 1.5 * meanSlope * h * area };
}

export interface GridValleys {
  /** Least fall along any crease that both sides drain into; infinite where none was met. */
  readonly least: number;
  /** Least slope of any cell. */
  readonly flattest: number;
}

interface Cell {
  readonly x: number;
  readonly y: number;
  readonly z: number;
  readonly gx: number;
  readonly gy: number;
}

/**
 * Fall along the crease between two cells, by their planes alone; undefined where water of both does not
 * meet there. The planes meet in a line; it is a valley when both sides fall toward it.
 */
function creaseBetween(p: Cell, q: Cell): number | undefined {
  const [nx, ny] = [q.gx - p.gx, q.gy - p.gy];
  const bend = Math.hypot(nx, ny);
  if (bend < 1e-9) return undefined;
  const [dx, dy] = [q.x - p.x, q.y - p.y];
  // The plane of q less that of p, at p and at q: the crease lies between where it changes sign.
  const atP = q.z - q.gx * dx - q.gy * dy - p.z;
  const atQ = q.z - (p.z + p.gx * dx + p.gy * dy);
  if (!(atP < 0 && atQ > 0)) return undefined;
  const into = (-p.gx * nx - p.gy * ny) / bend;
  const from = (-q.gx * nx - q.gy * ny) / bend;
  if (into <= 1e-9 || from >= -1e-9) return undefined;
  return Math.abs((p.gx * -ny + p.gy * nx) / bend);
}

const AWAY = 5;

/** Valleys and slopes as neighboring cells of a fine grid show them, without looking at any side. */
export function fineGridValleys(rows: readonly Row[], side: number, n: number): GridValleys {
  const h = side / n;
  const { z } = sample(rows, side, n);
  // Planes by differences a hair apart would need more samples; two cells on, one plane covers three.
  const cell = (i: number, j: number): Cell | undefined => {
    if (i < 1 || j < 1 || i > n - 2 || j > n - 2) return undefined;
    const at = (u: number, v: number): number => z[v * n + u] as number;
    const [c, l, r, d, u] = [at(i, j), at(i - 1, j), at(i + 1, j), at(i, j - 1), at(i, j + 1)];
    const plane = Math.abs(l + r - 2 * c) < 1e-12 && Math.abs(d + u - 2 * c) < 1e-12;
    if (!plane || Number.isNaN(c + l + r + d + u)) return undefined;
    return { x: (i + 0.5) * h, y: (j + 0.5) * h, z: c, gx: (r - l) / (2 * h), gy: (u - d) / (2 * h) };
  };
  let [least, flattest] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
  for (let i = 1; i < n - 4; i += 1) {
    for (let j = 1; j < n - 4; j += 1) {
      const p = cell(i, j);
      if (!p) continue;
      flattest = Math.min(flattest, Math.hypot(p.gx, p.gy));
      for (const [u, v] of [
        [1, 0],
        [0, 1],
      ] as const) {
        const q = cell(i + 3 * u, j + 3 * v);
        const fall = q && creaseBetween(p, q);
        // About a spot more than two planes meet: a crease between any two of them may be none.
        const clear = rows.every(([x, y]) => Math.hypot(p.x - x, p.y - y) > AWAY * h);
        if (fall !== undefined && clear) least = Math.min(least, fall);
      }
    }
  }
  return { least, flattest };
}

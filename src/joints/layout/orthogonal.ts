/**
 * A slab whose sides all run along x or y, as the search sees it: a raster of the strips between
 * neighboring corners, each cell of it wholly slab or wholly not.
 */
import type { Corner } from '../../geometry/polygon';
import { type Mark, Marks, summedAlong, unmetIn } from './marks';
import { HAIR, type Limits, panelCost } from './rules';
import type { Anchor, Axis, Gap, Space } from './space';

/** A corner in meters, binary. */
export interface Spot {
  readonly x: number;
  readonly y: number;
}

const spots = /*#__PURE__*/ new WeakMap<Corner, Spot>();

/** An exact corner as the search has it; worked out once, since it takes longer than what is done with it. */
export function spot(corner: Corner): Spot {
  const known = spots.get(corner);
  if (known) return known;
  const made = { x: corner.x.toNumber(), y: corner.y.toNumber() };
  spots.set(corner, made);
  return made;
}

/** What the search needs to know of the slab. */
export interface OrthogonalSite {
  /** The outline and the openings with corners, each a ring of sides along x or y. */
  readonly rings: readonly (readonly Spot[])[];
  /** Places that a line of one axis or the other must meet, besides the re-entrant corners. */
  readonly marks: readonly Mark[];
  /** Lines that must be. */
  readonly fixed: Readonly<Record<Axis, readonly number[]>>;
  /** Slab that is left out along a line because of round or small openings. */
  readonly leftOut: (axis: Axis, at: number) => number;
  /** More than any plan can leave unsawn because of openings in the way of its lines. */
  readonly passedOver: number;
}

const distinct = (values: readonly number[]): number[] => {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted.filter((v, i) => i === 0 || v - (sorted[i - 1] as number) > HAIR);
};

/** Place of the last value not above `at`. */
function placeOf(values: readonly number[], at: number): number {
  let lo = 0;
  let hi = values.length - 1;
  while (lo < hi) {
    const mid = (lo + hi + 1) >> 1;
    if ((values[mid] as number) <= at + HAIR) lo = mid;
    else hi = mid - 1;
  }
  return lo;
}

/** The raster: `inside[i × rows + j]` is 1 where the slab is. */
export interface Raster {
  readonly xs: readonly number[];
  readonly ys: readonly number[];
  readonly rows: number;
  readonly columns: number;
  readonly inside: Uint8Array;
}

/** Sides along x that a column of the raster passes, by height. */
function sidesOver(rings: OrthogonalSite['rings'], x: number): number[] {
  const heights: number[] = [];
  for (const ring of rings) {
    ring.forEach((a, k) => {
      const b = ring[(k + 1) % ring.length] as Spot;
      if (a.x > x !== b.x > x) heights.push(a.y);
    });
  }
  return heights.sort((p, q) => p - q);
}

/** The raster of rings of sides along x or y. */
function rasterOf(rings: OrthogonalSite['rings']): Raster {
  const xs = distinct(rings.flatMap((ring) => ring.map(({ x }) => x)));
  const ys = distinct(rings.flatMap((ring) => ring.map(({ y }) => y)));
  const [columns, rows] = [xs.length - 1, ys.length - 1];
  const inside = new Uint8Array(columns * rows);
  for (let i = 0; i < columns; i += 1) {
    const heights = sidesOver(rings, ((xs[i] as number) + (xs[i + 1] as number)) / 2);
    for (let k = 0; k + 1 < heights.length; k += 2) {
      const from = placeOf(ys, heights[k] as number);
      const to = placeOf(ys, heights[k + 1] as number);
      inside.fill(1, i * rows + from, i * rows + to);
    }
  }
  return { xs, ys, rows, columns, inside };
}

/** A corner where the slab fills three quarters of the turn. */
function reentrantMarks({ xs, ys, rows, columns, inside }: Raster): Mark[] {
  const at = (i: number, j: number): number =>
    i < 0 || j < 0 || i >= columns || j >= rows ? 0 : (inside[i * rows + j] as number);
  const marks: Mark[] = [];
  for (let i = 1; i < columns; i += 1) {
    for (let j = 1; j < rows; j += 1) {
      const filled = at(i - 1, j - 1) + at(i, j - 1) + at(i - 1, j) + at(i, j);
      if (filled === 3) marks.push({ x: xs[i] as number, y: ys[j] as number });
    }
  }
  return marks;
}

/** A block of cells of the raster. */
export interface Block {
  readonly i0: number;
  readonly i1: number;
  readonly j0: number;
  readonly j1: number;
}

/** The pieces that the slab falls into within a block; `undefined` when one is no rectangle. */
export function piecesIn(raster: Raster, { i0, i1, j0, j1 }: Block): Block[] | undefined {
  const { rows, inside } = raster;
  const wide = j1 - j0 + 1;
  const seen = new Uint8Array((i1 - i0 + 1) * wide);
  const pieces: Block[] = [];
  for (let i = i0; i <= i1; i += 1) {
    for (let j = j0; j <= j1; j += 1) {
      if (seen[(i - i0) * wide + (j - j0)] || !inside[i * rows + j]) continue;
      const piece = grown(raster, { i0: i, i1, j0: j, j1 });
      if (!cleanlyTaken(raster, piece, { i0, i1, j0, j1 }, seen)) return undefined;
      pieces.push(piece);
    }
  }
  return pieces;
}

/** The widest rectangle of slab from the first cell of a block. */
function grown({ rows, inside }: Raster, { i0, i1, j0, j1 }: Block): Block {
  let j = j0;
  while (j < j1 && inside[i0 * rows + j + 1]) j += 1;
  let i = i0;
  const full = (column: number): boolean => {
    for (let k = j0; k <= j; k += 1) if (!inside[column * rows + k]) return false;
    return true;
  };
  while (i < i1 && full(i + 1)) i += 1;
  return { i0, i1: i, j0, j1: j };
}

/** Mark a rectangle as seen; false when slab goes on beyond one of its sides within the block. */
function cleanlyTaken(raster: Raster, piece: Block, block: Block, seen: Uint8Array): boolean {
  const wide = block.j1 - block.j0 + 1;
  for (let i = piece.i0; i <= piece.i1; i += 1) {
    const from = (i - block.i0) * wide - block.j0;
    seen.fill(1, from + piece.j0, from + piece.j1 + 1);
  }
  const { i0, i1, j0, j1 } = piece;
  return (
    (i0 === block.i0 || bare(raster, { i0: i0 - 1, i1: i0 - 1, j0, j1 })) &&
    (i1 === block.i1 || bare(raster, { i0: i1 + 1, i1: i1 + 1, j0, j1 })) &&
    (j0 === block.j0 || bare(raster, { i0, i1, j0: j0 - 1, j1: j0 - 1 })) &&
    (j1 === block.j1 || bare(raster, { i0, i1, j0: j1 + 1, j1: j1 + 1 }))
  );
}

/** True when a block has no slab in it. */
function bare({ rows, inside }: Raster, { i0, i1, j0, j1 }: Block): boolean {
  for (let i = i0; i <= i1; i += 1) {
    for (let j = j0; j <= j1; j += 1) if (inside[i * rows + j]) return false;
  }
  return true;
}

/** What a cell takes beside those of other slabs, by its share of the work that weighing a plan may take. */
const CELL_EFFORT = 24;

/** The work of looking at a cell of the plan, and at each of the raster in it. */
const LOOK = 4;
const EACH_CELL = 4;

/** The least whole number between two that is enough, where the greater one is; found by halving. */
function leastEnough(from: number, to: number, enough: (n: number) => boolean): number {
  let [lo, hi] = [from, to];
  while (lo < hi) {
    const middle = (lo + hi) >> 1;
    if (enough(middle)) hi = middle;
    else lo = middle + 1;
  }
  return lo;
}

/** Strips that gaps begin and end with, and their first marks and those after the last. */
interface Places {
  readonly firsts: Int32Array;
  readonly lasts: Int32Array;
  readonly from: Int32Array;
  readonly to: Int32Array;
}

/** An orthogonal slab as the search sees it. */
export class OrthogonalSpace implements Space {
  readonly effort = CELL_EFFORT;
  work = 0;
  readonly raster: Raster;
  private readonly marks: Marks;
  private readonly ownAnchors: Record<Axis, Anchor[]>;
  private readonly sums: Int32Array;
  private readonly places = new WeakMap<readonly Gap[], Places>();
  private readonly furthest: Readonly<Record<Axis, Int32Array>>;

  constructor(
    readonly site: OrthogonalSite,
    readonly limits: Limits,
  ) {
    this.raster = rasterOf(site.rings);
    this.marks = new Marks([...reentrantMarks(this.raster), ...site.marks], HAIR);
    this.ownAnchors = { x: this.anchorsOf('x'), y: this.anchorsOf('y') };
    this.sums = this.prefixSums();
    this.furthest = { x: this.furthestAlong('x'), y: this.furthestAlong('y') };
  }

  private anchorsOf(axis: Axis): Anchor[] {
    const must = this.site.fixed[axis];
    const stops = axis === 'x' ? this.raster.xs : this.raster.ys;
    const all = distinct([...stops, ...must, ...this.site.marks.map((m) => m[axis])]);
    return all.map((at) => ({ at, must: must.some((m) => Math.abs(m - at) <= HAIR) }));
  }

  private prefixSums(): Int32Array {
    const { columns, rows, inside } = this.raster;
    const sums = new Int32Array((columns + 1) * (rows + 1));
    for (let i = 0; i < columns; i += 1) {
      let column = 0;
      for (let j = 0; j < rows; j += 1) {
        column += inside[i * rows + j] as number;
        sums[(i + 1) * (rows + 1) + j + 1] = (sums[i * (rows + 1) + j + 1] as number) + column;
      }
    }
    return sums;
  }

  /** The last strip that slab reaches from each one without a break, wherever it reaches farthest. */
  private furthestAlong(axis: Axis): Int32Array {
    const { rows, columns } = this.raster;
    const [strips, others] = axis === 'x' ? [columns, rows] : [rows, columns];
    const furthest = new Int32Array(strips).fill(-1);
    for (let k = 0; k < others; k += 1) {
      let last = -1;
      for (let p = strips - 1; p >= 0; p -= 1) {
        if (!this.slab(axis, p, k)) last = -1;
        else if (last < 0) last = p;
        furthest[p] = Math.max(furthest[p] as number, last);
      }
    }
    return furthest;
  }

  private ownFilled(i0: number, i1: number, j0: number, j1: number): number {
    const wide = this.raster.rows + 1;
    const sums = this.sums;
    const [from, to] = [i0 * wide, (i1 + 1) * wide];
    return (
      (sums[to + j1 + 1] as number) -
      (sums[from + j1 + 1] as number) -
      (sums[to + j0] as number) +
      (sums[from + j0] as number)
    );
  }

  anchors(axis: Axis): readonly Anchor[] {
    return this.ownAnchors[axis];
  }

  gap(axis: Axis, lo: number, hi: number): Gap {
    const stops = axis === 'x' ? this.raster.xs : this.raster.ys;
    const first = placeOf(stops, lo);
    const last = Math.max(first, placeOf(stops, hi - 3 * HAIR));
    const marks = this.marks.between(axis, lo, hi);
    // Within one strip only the width counts, and the marks; told apart from places by a number below nought.
    const among = this.marks.count(axis) + 1;
    const within = -1 - (first + stops.length * (marks.from + among * marks.to));
    const key: [number, number] = first === last ? [within, Math.round((hi - lo) / HAIR)] : [lo, hi];
    return { lo, hi, first, last, marks, key };
  }

  lineLength(axis: Axis, at: number): number {
    let length = 0;
    for (const [from, to] of this.runs(axis, at)) length += to - from;
    return Math.max(0, length - (length > 0 ? this.site.leftOut(axis, at) : 0));
  }

  /** From where to where a line runs with slab on both sides of it. */
  runs(axis: Axis, at: number): [number, number][] {
    const { xs, ys } = this.raster;
    const stops = axis === 'x' ? xs : ys;
    const others = axis === 'x' ? ys : xs;
    const place = placeOf(stops, at);
    const onStop = Math.abs((stops[place] as number) - at) <= HAIR;
    const runs: [number, number][] = [];
    for (let k = 0; k + 1 < others.length; k += 1) {
      if (!this.cut(axis, place, k, onStop)) continue;
      const [from, to] = [others[k] as number, others[k + 1] as number];
      const last = runs.at(-1);
      if (last && last[1] === from) last[1] = to;
      else runs.push([from, to]);
    }
    return runs;
  }

  /** True when a line has slab on both sides of it in a cell. */
  private cut(axis: Axis, place: number, k: number, onStop: boolean): boolean {
    return this.slab(axis, place, k) && (!onStop || this.slab(axis, place - 1, k));
  }

  private slab(axis: Axis, place: number, k: number): boolean {
    const { rows, columns, inside } = this.raster;
    const [i, j] = axis === 'x' ? [place, k] : [k, place];
    return i >= 0 && j >= 0 && i < columns && j < rows && inside[i * rows + j] === 1;
  }

  widest(axis: Axis, gap: Gap): number {
    const stops = axis === 'x' ? this.raster.xs : this.raster.ys;
    const others = axis === 'x' ? this.raster.rows : this.raster.columns;
    if ((this.furthest[axis][gap.first] as number) >= gap.last)
      return Math.min(gap.hi, stops[gap.last + 1] as number) - Math.max(gap.lo, stops[gap.first] as number);
    let widest = 0;
    for (let k = 0; k < others; k += 1) {
      let from: number | undefined;
      for (let p = gap.first; p <= gap.last + 1; p += 1) {
        const slab = p <= gap.last && this.slab(axis, p, k);
        if (slab) from ??= Math.max(gap.lo, stops[p] as number);
        else if (from !== undefined) {
          widest = Math.max(widest, Math.min(gap.hi, stops[p] as number) - from);
          from = undefined;
        }
      }
    }
    return widest;
  }

  leastLength(): number {
    const sum = this.leastAlong('x') + this.leastAlong('y');
    return Math.max(0, sum - this.site.passedOver);
  }

  /** At any height a run of slab W wide is crossed by `ceil(W ÷ spacing) − 1` lines or more. */
  private leastAlong(axis: Axis): number {
    const { xs, ys } = this.raster;
    const [stops, others] = axis === 'x' ? [xs, ys] : [ys, xs];
    let sum = 0;
    for (let k = 0; k + 1 < others.length; k += 1) {
      const high = (others[k + 1] as number) - (others[k] as number);
      for (let p = 0; p + 1 < stops.length; p += 1) {
        if (!this.slab(axis, p, k)) continue;
        const from = stops[p] as number;
        while (this.slab(axis, p + 1, k)) p += 1;
        const wide = (stops[p + 1] as number) - from;
        sum += high * (Math.ceil(wide / this.limits.spacing - HAIR) - 1);
      }
    }
    return sum;
  }

  filled(x: Gap, y: Gap): boolean {
    return this.ownFilled(x.first, x.last, y.first, y.last) > 0;
  }

  costs(axis: Axis, gap: Gap, others: readonly Gap[], into: Float64Array): void {
    const { firsts, lasts, from, to } = this.placesOf(others);
    const slab = summedAlong(this.sums, axis, gap.first, gap.last + 1, this.raster.rows + 1);
    const marks = this.marks.along(axis, gap.marks);
    this.work += LOOK * into.length;
    for (let i = 0; i < into.length; i += 1) {
      const unmet = unmetIn(marks, from[i] as number, to[i] as number);
      const filled = (slab[(lasts[i] as number) + 1] as number) - (slab[firsts[i] as number] as number);
      if (unmet === Number.POSITIVE_INFINITY) into[i] = unmet;
      else if (filled > 0) {
        const other = others[i] as Gap;
        into[i] = unmet + (axis === 'x' ? this.cost(gap, other, filled) : this.cost(other, gap, filled));
      } else into[i] = 0;
    }
  }

  /** Where gaps begin and end, in lists without gaps: there are many, and they are asked for often. */
  private placesOf(gaps: readonly Gap[]): Places {
    const known = this.places.get(gaps);
    if (known) return known;
    const places = {
      firsts: Int32Array.from(gaps, ({ first }) => first),
      lasts: Int32Array.from(gaps, ({ last }) => last),
      from: Int32Array.from(gaps, ({ marks }) => marks.from),
      to: Int32Array.from(gaps, ({ marks }) => marks.to),
    };
    this.places.set(gaps, places);
    return places;
  }

  /** What the panels of a cell cost that has so much slab in it. */
  private cost(x: Gap, y: Gap, filled: number): number {
    if (filled === (x.last - x.first + 1) * (y.last - y.first + 1))
      return panelCost(x.hi - x.lo, y.hi - y.lo, this.limits);
    this.work += EACH_CELL * filled;
    const block = { i0: x.first, i1: x.last, j0: y.first, j1: y.last };
    const one = this.onePiece(block, filled);
    if (one) return this.pieceCost(one, x, y);
    const pieces = piecesIn(this.raster, block);
    if (!pieces) return Number.POSITIVE_INFINITY;
    return pieces.reduce((sum, piece) => sum + this.pieceCost(piece, x, y), 0);
  }

  /** The slab within a block where it is one rectangle. */
  private onePiece(block: Block, filled: number): Block | undefined {
    const { i0: west, i1: east, j0: south, j1: north } = block;
    // The first column, or row, by which so many of the cells of the block are slab.
    const column = (many: number): number =>
      leastEnough(west, east, (i) => this.ownFilled(west, i, south, north) >= many);
    const row = (many: number): number =>
      leastEnough(south, north, (j) => this.ownFilled(west, east, south, j) >= many);
    const [i0, i1, j0, j1] = [column(1), column(filled), row(1), row(filled)];
    return (i1 - i0 + 1) * (j1 - j0 + 1) === filled ? { i0, i1, j0, j1 } : undefined;
  }

  private pieceCost({ i0, i1, j0, j1 }: Block, x: Gap, y: Gap): number {
    const { xs, ys } = this.raster;
    const w = Math.min(x.hi, xs[i1 + 1] as number) - Math.max(x.lo, xs[i0] as number);
    const h = Math.min(y.hi, ys[j1 + 1] as number) - Math.max(y.lo, ys[j0] as number);
    return panelCost(w, h, this.limits);
  }
}

/**
 * A slab with slanted sides, as the search sees it: cells cut to the outline in binary numbers.
 *
 * A panel is measured over all along x and along y. One that has less area than a triangle as long as
 * it and as wide as the least side counts as a sliver.
 */
import { type Mark, Marks } from './marks';
import type { Spot } from './orthogonal';
import { HAIR, type Limits, panelCost, SHARP } from './rules';
import { KINK } from './sides';
import type { Anchor, Axis, Gap, Space } from './space';

/** What the search needs to know of the slab. */
export interface GeneralSite {
  readonly ring: readonly Spot[];
  readonly marks: readonly Mark[];
  readonly fixed: Readonly<Record<Axis, readonly number[]>>;
  readonly leftOut: (axis: Axis, at: number) => number;
  /** More than any plan can leave unsawn because of openings in the way of its lines. */
  readonly passedOver: number;
}

const other = (axis: Axis): Axis => (axis === 'x' ? 'y' : 'x');

/** The part of a ring above a line along x, or below it. */
function cutAcross(ring: readonly Spot[], at: number, above: boolean): Spot[] {
  const kept: Spot[] = [];
  const sign = above ? 1 : -1;
  let a = ring.at(-1);
  let da = a ? sign * (a.y - at) : 0;
  for (const b of ring) {
    const db = sign * (b.y - at);
    if (a && ((da > 0 && db < 0) || (da < 0 && db > 0)))
      kept.push({ x: a.x + ((b.x - a.x) * da) / (da - db), y: at });
    if (db >= 0) kept.push(b);
    a = b;
    da = db;
  }
  return kept;
}

const swapped = (ring: readonly Spot[]): Spot[] => ring.map(({ x, y }) => ({ x: y, y: x }));

function areaOf(ring: readonly Spot[]): number {
  let sum = 0;
  for (let i = 0; i < ring.length; i += 1) {
    const a = ring[i] as Spot;
    const b = ring[(i + 1) % ring.length] as Spot;
    sum += a.x * b.y - b.x * a.y;
  }
  return Math.abs(sum) / 2;
}

const extent = (ring: readonly Spot[], axis: Axis): number => {
  let lo = Number.POSITIVE_INFINITY;
  let hi = Number.NEGATIVE_INFINITY;
  for (const spot of ring) {
    lo = Math.min(lo, spot[axis]);
    hi = Math.max(hi, spot[axis]);
  }
  return hi - lo;
};

/** How the ring turns at each corner, in radians, to the left if positive. */
function turnAt(ring: readonly Spot[], i: number): number {
  const a = ring[(i + ring.length - 1) % ring.length] as Spot;
  const b = ring[i] as Spot;
  const c = ring[(i + 1) % ring.length] as Spot;
  const [ux, uy, vx, vy] = [b.x - a.x, b.y - a.y, c.x - b.x, c.y - b.y];
  return Math.atan2(ux * vy - uy * vx, ux * vx + uy * vy);
}

/** More than a kink. */
const CORNER = (KINK * Math.PI) / 180 + 1e-6;

/** Corners that turn the wrong way round, of an counterclockwise ring, by more than a kink. */
const reentrantCorners = (ring: readonly Spot[]): Spot[] => ring.filter((_, i) => turnAt(ring, i) < -CORNER);

/** Corners of either kind that are more than kinks. */
const trueCorners = (ring: readonly Spot[]): Spot[] =>
  ring.filter((_, i) => Math.abs(turnAt(ring, i)) > CORNER);

/** True where a corner sharper than 60 degrees lies on a line of the cell. */
function sharpIn(piece: readonly Spot[], x: Gap, y: Gap): boolean {
  const on = (p: Spot): boolean =>
    [x.lo, x.hi].some((v) => Math.abs(p.x - v) < HAIR) || [y.lo, y.hi].some((v) => Math.abs(p.y - v) < HAIR);
  return piece.some((p, i) => on(p) && turnAt(piece, i) > Math.PI - SHARP + 1e-6);
}

/** True for a panel with too little area for its length. */
export const wedged = (area: number, w: number, h: number, leastSide: number): boolean =>
  2 * area < Math.max(w, h) * leastSide - HAIR;

const FEW_CORNERS = 8;

/**
 * The slab between two lines, and those of its sides that do not run along them: how many, where they begin and
 * where they end from below in order, and, doubled, how high those are at their middle that cross the middle line.
 */
interface Strip {
  readonly ring: readonly Spot[];
  readonly sides: number;
  readonly begin: Float64Array;
  readonly end: Float64Array;
  readonly middles: Float64Array;
}

function stripOf(ring: readonly Spot[], { lo, hi }: Gap): Strip {
  const cut = swapped(cutAcross(cutAcross(swapped(ring), lo, true), hi, false));
  const along = (a: Spot, b: Spot): boolean =>
    [lo, hi].some((at) => Math.abs(a.x - at) < HAIR && Math.abs(b.x - at) < HAIR);
  const sides = cut
    .map((a, i): [Spot, Spot] => [a, cut[(i + 1) % cut.length] as Spot])
    .filter(([a, b]) => !along(a, b));
  const middle = (lo + hi) / 2;
  const crossing = sides.filter(([a, b]) => a.x > middle !== b.x > middle);
  return {
    ring: cut,
    sides: sides.length,
    begin: Float64Array.from(sides, ([a, b]) => Math.min(a.y, b.y)).sort(),
    end: Float64Array.from(sides, ([a, b]) => Math.max(a.y, b.y)).sort(),
    middles: Float64Array.from(crossing, ([a, b]) => Math.min(a.y, b.y) + Math.max(a.y, b.y)).sort(),
  };
}

/** How many of a list in order lie below a limit, or at it as well. */
function countTo(values: Float64Array, limit: number, at: boolean): number {
  let [lo, hi] = [0, values.length];
  while (lo < hi) {
    const mid = (lo + hi) >> 1;
    const value = values[mid] as number;
    if (value < limit || (at && value === limit)) lo = mid + 1;
    else hi = mid;
  }
  return lo;
}

/** Whether there is slab all over a cell of a strip, nowhere in it, or in a part of it. */
function coverOf({ begin, end, middles }: Strip, y: Gap): 'all' | 'none' | 'part' {
  // Of the sides that begin below the upper line, all end at or below the lower one or some come between.
  if (countTo(begin, y.hi - HAIR, false) > countTo(end, y.lo + HAIR, true)) return 'part';
  const above = middles.length - countTo(middles, y.lo + y.hi, true);
  return above % 2 === 1 ? 'all' : 'none';
}

/** The work of looking at a cell, of each side looked at, of cutting out a part of a strip, and of each corner of it. */
const LOOK = 4;
const EACH_SIDE = 0.5;
const CUT = 50;
const EACH_CORNER = 8;

/** A slab with slanted sides as the search sees it. */
export class GeneralSpace implements Space {
  readonly effort: number;
  private readonly marks: Marks;
  private readonly ownAnchors: Record<Axis, Anchor[]>;
  private readonly strips = new Map<Gap, Strip>();
  work = 0;

  constructor(
    readonly site: GeneralSite,
    readonly limits: Limits,
  ) {
    this.effort = 2 * (6 + site.ring.length);
    this.marks = new Marks([...reentrantCorners(site.ring), ...site.marks], HAIR);
    this.ownAnchors = { x: this.anchorsOf('x'), y: this.anchorsOf('y') };
  }

  private anchorsOf(axis: Axis): Anchor[] {
    const must = this.site.fixed[axis];
    // Lines through corners that stick out are tried only where there are few: they save little.
    const all = trueCorners(this.site.ring);
    const corners = all.length > FEW_CORNERS ? reentrantCorners(this.site.ring) : all;
    const ends = this.site.ring.map((s) => s[axis]);
    const stops = [...corners.map((s) => s[axis]), Math.min(...ends), Math.max(...ends)];
    const places = [...stops, ...must, ...this.site.marks.map((m) => m[axis])];
    const sorted = places.sort((a, b) => a - b);
    return sorted
      .filter((v, i) => i === 0 || v - (sorted[i - 1] as number) > HAIR)
      .map((at) => ({ at, must: must.some((m) => Math.abs(m - at) <= HAIR) }));
  }

  anchors(axis: Axis): readonly Anchor[] {
    return this.ownAnchors[axis];
  }

  gap(axis: Axis, lo: number, hi: number): Gap {
    const marks = this.marks.between(axis, lo, hi);
    return { lo, hi, first: 0, last: 0, marks, key: [lo, hi] };
  }

  lineLength(axis: Axis, at: number): number {
    const across = other(axis);
    const crossings: number[] = [];
    const { ring } = this.site;
    ring.forEach((a, i) => {
      const b = ring[(i + 1) % ring.length] as Spot;
      if (a[axis] > at !== b[axis] > at) {
        crossings.push(a[across] + ((b[across] - a[across]) * (at - a[axis])) / (b[axis] - a[axis]));
      }
    });
    crossings.sort((p, q) => p - q);
    let length = 0;
    for (let k = 0; k + 1 < crossings.length; k += 2)
      length += (crossings[k + 1] as number) - (crossings[k] as number);
    return Math.max(0, length - this.site.leftOut(axis, at));
  }

  widest(_axis: Axis, gap: Gap): number {
    return gap.hi - gap.lo;
  }

  private strip(x: Gap): Strip {
    let strip = this.strips.get(x);
    if (!strip) {
      strip = stripOf(this.site.ring, x);
      this.work += CUT + EACH_CORNER * this.site.ring.length;
      this.strips.set(x, strip);
    }
    return strip;
  }

  /** The slab W wide is crossed by `W ÷ spacing − 1` lines or more, summed over its height; both ways. */
  leastLength(): number {
    const { ring, passedOver } = this.site;
    const each = areaOf(ring) / this.limits.spacing;
    const sum = Math.max(0, each - extent(ring, 'x')) + Math.max(0, each - extent(ring, 'y'));
    return reentrantCorners(ring).length > 0 ? 0 : Math.max(0, sum - passedOver);
  }

  private cover(x: Gap, y: Gap): 'all' | 'none' | 'part' {
    const strip = this.strip(x);
    this.work += LOOK + EACH_SIDE * strip.sides;
    return coverOf(strip, y);
  }

  private piece(x: Gap, y: Gap): Spot[] {
    const { ring } = this.strip(x);
    this.work += CUT + EACH_CORNER * ring.length;
    return cutAcross(cutAcross(ring, y.lo, true), y.hi, false);
  }

  filled(x: Gap, y: Gap): boolean {
    const cover = this.cover(x, y);
    return cover === 'part' ? areaOf(this.piece(x, y)) >= HAIR : cover === 'all';
  }

  costs(axis: Axis, gap: Gap, others: readonly Gap[], into: Float64Array): void {
    for (let i = 0; i < into.length; i += 1) {
      const across = others[i] as Gap;
      into[i] = axis === 'x' ? this.cost(gap, across) : this.cost(across, gap);
    }
  }

  private cost(x: Gap, y: Gap): number {
    this.work += LOOK;
    const unmet = this.marks.unmet(x.marks, y.marks);
    if (unmet === Number.POSITIVE_INFINITY) return unmet;
    const cover = this.cover(x, y);
    if (cover === 'none') return 0;
    if (cover === 'all') return unmet + panelCost(x.hi - x.lo, y.hi - y.lo, this.limits);
    const piece = this.piece(x, y);
    const area = areaOf(piece);
    if (area < HAIR) return 0;
    const [w, h] = [extent(piece, 'x'), extent(piece, 'y')];
    const { leastSide } = this.limits;
    const wedge = Math.min(w, h) >= leastSide - HAIR && wedged(area, w, h, leastSide);
    return unmet + panelCost(w, h, this.limits) + (wedge ? 1 : 0) + (sharpIn(piece, x, y) ? 1 : 0);
  }
}

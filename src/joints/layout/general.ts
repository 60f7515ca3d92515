/**
 * A slab with slanted sides, as the search sees it: cells cut to the outline in binary numbers.
 *
 * A panel is measured over all along x and along y. One that has less area than a triangle as long as
 * it and as wide as the least side counts as a sliver.
 */
import { areaOf, cutAcross, extent, FlatRing, flatRing, turnAt } from './flat-ring';
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

/** More than a kink. */
const CORNER = (KINK * Math.PI) / 180 + 1e-6;

/** Corners that turn the wrong way round, of an counterclockwise ring, by more than a kink. */
const reentrantCorners = (ring: readonly Spot[], flat: FlatRing): Spot[] =>
  ring.filter((_, i) => turnAt(flat, i) < -CORNER);

/** Corners of either kind that are more than kinks. */
const trueCorners = (ring: readonly Spot[], flat: FlatRing): Spot[] =>
  ring.filter((_, i) => Math.abs(turnAt(flat, i)) > CORNER);

const isOn = (at: number, { lo, hi }: Gap): boolean => Math.abs(at - lo) < HAIR || Math.abs(at - hi) < HAIR;

/** True where a corner sharper than 60 degrees lies on a line of the cell. */
function sharpIn(piece: FlatRing, x: Gap, y: Gap): boolean {
  for (let i = 0; i < piece.count; i += 1) {
    const on = isOn(piece.x[i] as number, x) || isOn(piece.y[i] as number, y);
    if (on && turnAt(piece, i) > Math.PI - SHARP + 1e-6) return true;
  }
  return false;
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
  readonly ring: FlatRing;
  readonly sides: number;
  readonly begin: Float64Array;
  readonly end: Float64Array;
  readonly middles: Float64Array;
}

/** Both ends of a side lie on one of two lines. */
const alongEither = (a: number, b: number, { lo, hi }: Gap): boolean =>
  (Math.abs(a - lo) < HAIR && Math.abs(b - lo) < HAIR) ||
  (Math.abs(a - hi) < HAIR && Math.abs(b - hi) < HAIR);

/** What is known of a strip, by its ring. */
function stripOf(ring: FlatRing, gap: Gap): Strip {
  const { x, y, count } = ring;
  const middle = (gap.lo + gap.hi) / 2;
  const [begin, end, middles] = [new Float64Array(count), new Float64Array(count), new Float64Array(count)];
  let [sides, crossing] = [0, 0];
  for (let i = 0; i < count; i += 1) {
    const j = i + 1 < count ? i + 1 : 0;
    const [ax, bx] = [x[i] as number, x[j] as number];
    if (alongEither(ax, bx, gap)) continue;
    const [low, high] = [Math.min(y[i] as number, y[j] as number), Math.max(y[i] as number, y[j] as number)];
    begin[sides] = low;
    end[sides] = high;
    sides += 1;
    if (ax > middle !== bx > middle) {
      middles[crossing] = low + high;
      crossing += 1;
    }
  }
  return {
    ring,
    sides,
    begin: begin.subarray(0, sides).sort(),
    end: end.subarray(0, sides).sort(),
    middles: middles.subarray(0, crossing).sort(),
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
  private readonly flat: FlatRing;
  /** Cut once, and cut twice. */
  private readonly once = new FlatRing();
  private readonly twice = new FlatRing();
  work = 0;

  constructor(
    readonly site: GeneralSite,
    readonly limits: Limits,
  ) {
    this.effort = 2 * (6 + site.ring.length);
    this.flat = flatRing(site.ring);
    this.marks = new Marks([...reentrantCorners(site.ring, this.flat), ...site.marks], HAIR);
    this.ownAnchors = { x: this.anchorsOf('x'), y: this.anchorsOf('y') };
  }

  private anchorsOf(axis: Axis): Anchor[] {
    const must = this.site.fixed[axis];
    // Lines through corners that stick out are tried only where there are few: they save little.
    const all = trueCorners(this.site.ring, this.flat);
    const corners = all.length > FEW_CORNERS ? reentrantCorners(this.site.ring, this.flat) : all;
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

  /** The part of a ring between two lines, until the next is cut. */
  private cutBetween(ring: FlatRing, axis: Axis, { lo, hi }: Gap): FlatRing {
    cutAcross(ring, axis, lo, true, this.once);
    cutAcross(this.once, axis, hi, false, this.twice);
    return this.twice;
  }

  private strip(x: Gap): Strip {
    let strip = this.strips.get(x);
    if (!strip) {
      strip = stripOf(this.cutBetween(this.flat, 'x', x).kept(), x);
      this.work += CUT + EACH_CORNER * this.site.ring.length;
      this.strips.set(x, strip);
    }
    return strip;
  }

  /** The slab W wide is crossed by `W ÷ spacing − 1` lines or more, summed over its height; both ways. */
  leastLength(): number {
    const { flat } = this;
    const { ring, passedOver } = this.site;
    const each = areaOf(flat) / this.limits.spacing;
    const sum = Math.max(0, each - extent(flat, 'x')) + Math.max(0, each - extent(flat, 'y'));
    return reentrantCorners(ring, flat).length > 0 ? 0 : Math.max(0, sum - passedOver);
  }

  private cover(x: Gap, y: Gap): 'all' | 'none' | 'part' {
    const strip = this.strip(x);
    this.work += LOOK + EACH_SIDE * strip.sides;
    return coverOf(strip, y);
  }

  private piece(x: Gap, y: Gap): FlatRing {
    const { ring } = this.strip(x);
    this.work += CUT + EACH_CORNER * ring.count;
    return this.cutBetween(ring, 'y', y);
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

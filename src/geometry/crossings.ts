/**
 * Where a ring meets itself, found among very many sides.
 *
 * A line is swept over the ring, and only sides whose boxes meet are compared: first in binary numbers, with
 * a bound on their rounding, and exactly where that cannot tell. Comparisons are counted, so that an outline
 * too tangled to be looked through is refused.
 */
import type { Decimal } from '../quantity/decimal';
import { refuse } from '../reckoning/calculation';
import * as faults from './faults';

/** A corner in meters. */
export interface Place {
  readonly x: Decimal;
  readonly y: Decimal;
}

/** Sides i and j, numbered by the corner that they leave, compared exactly. */
export type Compare = (i: number, j: number) => boolean;

/** Pairs of sides that are looked at before an outline is refused as too tangled. */
const LOOKS = 10_000_000;

/** More than four roundings of a product whose factors were rounded too. */
const ROUNDING = 8e-15;

/** Corners in binary numbers. */
export interface Flat {
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

/** The ends of each side along one axis, the lower one first, widened so that rounding hides no meeting. */
export interface Span {
  readonly from: Float64Array;
  readonly to: Float64Array;
  /** From where to where the whole ring reaches. */
  readonly least: number;
  readonly most: number;
  /** How many sides stand above each other on average: what a sweep along this axis has to look at. */
  readonly depth: number;
}

function spanOf(at: Float64Array, reach: number): Span {
  // A sum of two coordinates is rounded once more, and twice as large.
  const hair = 3e-14 * reach;
  const next = (i: number): number => at[(i + 1) % at.length] as number;
  return spanning(
    at.map((here, i) => Math.min(here, next(i)) - hair),
    at.map((here, i) => Math.max(here, next(i)) + hair),
  );
}

function spanning(from: Float64Array, to: Float64Array): Span {
  const least = from.reduce((a, b) => Math.min(a, b));
  const most = to.reduce((a, b) => Math.max(a, b));
  const length = to.reduce((sum, end, i) => sum + end - (from[i] as number), 0);
  return { from, to, least, most, depth: length / (most - least) };
}

/** A ring in binary numbers, for a cheap look before an exact one. */
export interface Look {
  readonly flat: Flat;
  readonly x: Span;
  readonly y: Span;
}

const looksKnown = new WeakMap<readonly Place[], Look>();

/** The sides of a ring in binary numbers, kept while the ring lives. */
export function lookAt(ring: readonly Place[]): Look {
  const known = looksKnown.get(ring);
  if (known) return known;
  const flat = flatOf(ring);
  const look = { flat, x: spanOf(flat.xs, flat.reach), y: spanOf(flat.ys, flat.reach) };
  looksKnown.set(ring, look);
  return look;
}

/** The same along a diagonal: sides of a star lie apart there where they are side by side on the axes. */
const diagonal = ({ xs, ys, reach }: Flat, turn: 1 | -1): Span =>
  spanOf(
    xs.map((x, i) => x + turn * (ys[i] as number)),
    reach,
  );

/** True where two sides certainly share no point, as they lie apart along one axis. */
export const apartAlong = (a: Span, i: number, b: Span, j: number): boolean =>
  (b.from[j] as number) > (a.to[i] as number) || (a.from[i] as number) > (b.to[j] as number);

// The sides of a comb are long one way and short the other: swept across, few of them meet at once.
const shallow = (x: Span, y: Span): readonly [Span, Span] => (x.depth < y.depth ? [x, y] : [y, x]);

/** Visit every pair of sides whose boxes meet, until a visit says that it is enough. */
function sweep([along, across]: readonly [Span, Span], enough: (i: number, j: number) => boolean): void {
  const order = Uint32Array.from(along.from.keys()).sort(
    (i, j) => (along.from[i] as number) - (along.from[j] as number) || i - j,
  );
  for (let p = 0; p < order.length; p += 1) {
    const a = order[p] as number;
    const end = along.to[a] as number;
    for (let q = p + 1; q < order.length; q += 1) {
      const b = order[q] as number;
      if ((along.from[b] as number) > end) break;
      if (!apartAlong(across, a, across, b) && enough(Math.min(a, b), Math.max(a, b))) return;
    }
  }
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
  const { flat, x, y } = lookAt(corners);
  const spans = [diagonal(flat, 1), diagonal(flat, -1)];
  const apart = (i: number, j: number): boolean =>
    spans.some((span) => apartAlong(span, i, span, j)) || clearlyApart(flat, i, j);
  let found: readonly [number, number] | undefined;
  let looks = 0;
  sweep(shallow(x, y), (i, j) => {
    looks += 1;
    if (looks > LOOKS) refuse(path, faults.tooTangled());
    if (!apart(i, j) && meets(i, j)) found = [i, j];
    return found !== undefined;
  });
  return found;
}

/**
 * For each ring those before it that do not lie wholly beside it, in order.
 *
 * A line is swept over their boxes, as most rings of a large job are nowhere near each other.
 */
export function ringsNear(rings: readonly (readonly Place[])[]): readonly (readonly number[])[] {
  const near: number[][] = rings.map(() => []);
  if (rings.length < 2) return near;
  const along = (axis: 'x' | 'y'): Span => {
    const spans = rings.map((ring) => lookAt(ring)[axis]);
    return spanning(
      Float64Array.from(spans, ({ least }) => least),
      Float64Array.from(spans, ({ most }) => most),
    );
  };
  sweep(shallow(along('x'), along('y')), (i, j) => {
    (near[j] as number[]).push(i);
    return false;
  });
  return near.map((before) => before.sort((a, b) => a - b));
}

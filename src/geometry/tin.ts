/**
 * A surface of triangles over spots in plan.
 *
 * The triangulation is Delaunay's, by the library delaunator. Four spots or more on one circle, as on
 * every rectangle, make a cell with a middle of its own, see `cells.ts`; the middles are numbered after
 * the spots. Binary numbers serve here for searching only: positions count from the first spot, so
 * that large coordinates lose nothing.
 *
 * Facets thinner than `thin` along the outside are taken off: spots along a straight form never lie
 * quite on one line, and the slivers between them are no part of the slab.
 */
import Delaunator from 'delaunator';
import { celled, type Mesh } from './cells';

/** Plan positions and heights in meters, from the first spot. */
export interface SpotArrays {
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly z: Float64Array;
}

/** A corner of a ring in plan. */
export interface PlanSpot {
  readonly x: number;
  readonly y: number;
}

/** Triangles over the spots; each half-edge `e` runs from `corner[e]` to the next corner of its facet. */
export interface Tin extends SpotArrays {
  /** How many of the positions are spots; those after them are middles of cells. */
  readonly spots: number;
  /** The spots around each middle. */
  readonly rings: readonly (readonly number[])[];
  /** Three corners for each facet. */
  readonly corner: Uint32Array;
  /** The half-edge on the other side; -1 along the outside. */
  readonly twin: Int32Array;
  readonly facets: number;
  /** 1 when the corners run counterclockwise, -1 when clockwise; the same for all. */
  readonly turn: number;
  /** Fall of each facet per meter along x and y: the way water runs. */
  readonly fallX: Float64Array;
  readonly fallY: Float64Array;
}

/** The next half-edge around the facet. */
export const nextEdge = (e: number): number => (e % 3 === 2 ? e - 2 : e + 1);

/** The half-edge before, around the facet. */
export const edgeBefore = (e: number): number => (e % 3 === 0 ? e + 2 : e - 1);

/** True when the point is inside the ring, by counting crossings. */
export function insidePlanRing(x: number, y: number, ring: readonly PlanSpot[]): boolean {
  let inside = false;
  for (let i = 0, j = ring.length - 1; i < ring.length; j = i, i += 1) {
    const a = ring[i] as PlanSpot;
    const b = ring[j] as PlanSpot;
    if (a.y > y !== b.y > y && x < ((b.x - a.x) * (y - a.y)) / (b.y - a.y) + a.x) inside = !inside;
  }
  return inside;
}

/** What of the triangulation is surface. */
export interface Extent {
  /** Only what lies within this ring, where it is given. */
  readonly within: readonly PlanSpot[] | undefined;
  /** Nothing of what lies within these. */
  readonly without: readonly (readonly PlanSpot[])[];
  /** Outside facets thinner than this are left out, in meters. */
  readonly thin: number;
}

function keptByRings(spots: SpotArrays, corner: Uint32Array, extent: Extent): Uint8Array {
  const kept = new Uint8Array(corner.length / 3).fill(1);
  const { within, without } = extent;
  if (!within && without.length === 0) return kept;
  for (let t = 0; t < kept.length; t += 1) {
    const [a, b, c] = [corner[3 * t], corner[3 * t + 1], corner[3 * t + 2]] as [number, number, number];
    const x = ((spots.x[a] as number) + (spots.x[b] as number) + (spots.x[c] as number)) / 3;
    const y = ((spots.y[a] as number) + (spots.y[b] as number) + (spots.y[c] as number)) / 3;
    const out = within !== undefined && !insidePlanRing(x, y, within);
    if (out || without.some((ring) => insidePlanRing(x, y, ring))) kept[t] = 0;
  }
  return kept;
}

/** Height of the facet above its half-edge `e`. */
function heightOver(spots: SpotArrays, corner: Uint32Array, e: number): number {
  const [p, q, r] = [corner[e], corner[nextEdge(e)], corner[edgeBefore(e)]] as [number, number, number];
  const [dx, dy] = [
    (spots.x[q] as number) - (spots.x[p] as number),
    (spots.y[q] as number) - (spots.y[p] as number),
  ];
  const cross =
    dx * ((spots.y[r] as number) - (spots.y[p] as number)) -
    dy * ((spots.x[r] as number) - (spots.x[p] as number));
  return Math.abs(cross) / (Math.hypot(dx, dy) || 1);
}

const facetOf = (e: number): number => Math.floor(e / 3);

/** Take thin facets off the outside, until none is left there. */
function peel(
  spots: SpotArrays,
  corner: Uint32Array,
  twins: Int32Array,
  kept: Uint8Array,
  thin: number,
): void {
  const open: number[] = [];
  const outside = (e: number): boolean => twins[e] === -1 || kept[facetOf(twins[e] as number)] === 0;
  for (let e = 0; e < corner.length; e += 1) if (kept[facetOf(e)] && outside(e)) open.push(e);
  for (let e = open.pop(); e !== undefined; e = open.pop()) {
    const t = facetOf(e);
    if (!kept[t] || heightOver(spots, corner, e) >= thin) continue;
    kept[t] = 0;
    for (const f of [3 * t, 3 * t + 1, 3 * t + 2]) {
      const other = twins[f] as number;
      if (other !== -1 && kept[facetOf(other)]) open.push(other);
    }
  }
}

function compacted(corner: Uint32Array, twins: Int32Array, kept: Uint8Array): Mesh {
  const place = new Int32Array(kept.length).fill(-1);
  let count = 0;
  for (let t = 0; t < kept.length; t += 1) {
    if (kept[t]) {
      place[t] = count;
      count += 1;
    }
  }
  if (count === kept.length) return { corner, twin: twins };
  const [cornerKept, twinKept] = [new Uint32Array(3 * count), new Int32Array(3 * count)];
  for (let e = 0; e < corner.length; e += 1) {
    const at = place[facetOf(e)] as number;
    if (at === -1) continue;
    const other = twins[e] as number;
    const otherAt = other === -1 ? -1 : (place[facetOf(other)] as number);
    cornerKept[3 * at + (e % 3)] = corner[e] as number;
    twinKept[3 * at + (e % 3)] = otherAt === -1 ? -1 : 3 * otherAt + (other % 3);
  }
  return { corner: cornerKept, twin: twinKept };
}

function falls(
  spots: SpotArrays,
  corner: Uint32Array,
): { fallX: Float64Array; fallY: Float64Array; turn: number } {
  const facets = corner.length / 3;
  const [fallX, fallY] = [new Float64Array(facets), new Float64Array(facets)];
  const { x, y, z } = spots;
  let turn = 1;
  for (let t = 0; t < facets; t += 1) {
    const a = corner[3 * t] as number;
    const b = corner[3 * t + 1] as number;
    const c = corner[3 * t + 2] as number;
    const bx = (x[b] as number) - (x[a] as number);
    const by = (y[b] as number) - (y[a] as number);
    const bz = (z[b] as number) - (z[a] as number);
    const cx = (x[c] as number) - (x[a] as number);
    const cy = (y[c] as number) - (y[a] as number);
    const cz = (z[c] as number) - (z[a] as number);
    const cross = bx * cy - by * cx;
    turn = cross > 0 ? 1 : -1;
    fallX[t] = (by * cz - bz * cy) / cross;
    fallY[t] = (bz * cx - bx * cz) / cross;
  }
  return { fallX, fallY, turn };
}

/**
 * Plain triangulation. The library is given the spots from left to right, so that its answer does not
 * hang on the order in which they were read.
 */
export function triangulate({ x, y }: SpotArrays): Mesh {
  const order = Uint32Array.from(x, (_, i) => i).sort(
    (a, b) => (x[a] as number) - (x[b] as number) || (y[a] as number) - (y[b] as number) || a - b,
  );
  const flat = new Float64Array(2 * x.length);
  order.forEach((v, i) => {
    flat[2 * i] = x[v] as number;
    flat[2 * i + 1] = y[v] as number;
  });
  const { triangles, halfedges } = new Delaunator(flat);
  return { corner: triangles.map((i) => order[i] as number), twin: halfedges };
}

/** The spots, and after them the middles of the cells: each at the mean of the spots around it. */
function withMiddles(spots: SpotArrays, rings: readonly (readonly number[])[]): SpotArrays {
  const extended = (values: Float64Array): Float64Array => {
    const all = new Float64Array(values.length + rings.length);
    all.set(values);
    rings.forEach((ring, i) => {
      let sum = 0;
      for (const v of ring) sum += values[v] as number;
      all[values.length + i] = sum / ring.length;
    });
    return all;
  };
  return { x: extended(spots.x), y: extended(spots.y), z: extended(spots.z) };
}

/** The surface over the spots. It has no facets when all spots lie on a line. */
export function tinOver({ x, y, z }: SpotArrays, extent: Extent): Tin {
  const { corner: all, twin: twins, rings } = celled(x, y, triangulate({ x, y, z }));
  const places = withMiddles({ x, y, z }, rings);
  const kept = keptByRings(places, all, extent);
  peel(places, all, twins, kept, extent.thin);
  const { corner, twin } = compacted(all, twins, kept);
  const facets = corner.length / 3;
  return { ...places, spots: x.length, rings, corner, twin, facets, ...falls(places, corner) };
}

/** Neighbors of each spot, packed: those of `v` are `to[from[v]]` up to `to[from[v + 1]]`. */
export interface Neighbors {
  readonly from: Uint32Array;
  readonly to: Uint32Array;
}

/** Who lies beside whom along the sides of the facets. */
export function neighborsOf({ corner, twin, x }: Tin): Neighbors {
  const from = new Uint32Array(x.length + 1);
  const each = (note: (a: number, b: number) => void): void => {
    for (let e = 0; e < corner.length; e += 1) {
      const [a, b] = [corner[e] as number, corner[nextEdge(e)] as number];
      note(a, b);
      if (twin[e] === -1) note(b, a);
    }
  };
  each((a) => {
    from[a + 1] = (from[a + 1] as number) + 1;
  });
  for (let v = 0; v < x.length; v += 1) from[v + 1] = (from[v + 1] as number) + (from[v] as number);
  const to = new Uint32Array(from[x.length] as number);
  const at = from.slice();
  each((a, b) => {
    to[at[a] as number] = b;
    at[a] = (at[a] as number) + 1;
  });
  return { from, to };
}

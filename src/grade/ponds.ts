/**
 * Where water stands on a surface of triangles.
 *
 * The surface is flooded from its outlets inwards, lowest first: the level at a spot is the lowest
 * that water there must rise to before it runs out. On flat facets the way out always passes over
 * spots and the sides between them, so the level is that of a spot: it is exact, and only compared
 * here. A pond is a connected set of spots below their level; the spot it spills over has the level
 * as its own elevation.
 */
import { type Neighbors, nextEdge, type Tin } from '../geometry/tin';

/** The surface flooded. */
export interface Flood {
  /** Water level at each spot: its own elevation, or higher where water stands. */
  readonly level: Float64Array;
  /** The spot that water leaves to; -1 at an outlet. */
  readonly toward: Int32Array;
  /** The spots in the order they were flooded, the lowest level first; those not reached are left out. */
  readonly order: Uint32Array;
}

/** A pond, found. */
export interface FoundPond {
  /** The spots under water. */
  readonly spots: readonly number[];
  /** The deepest of them. */
  readonly lowest: number;
  /** The spot that it spills over. */
  readonly spill: number;
  /** Facets that are wet, whole or in part. */
  readonly facets: readonly number[];
  /** Depth in meters, for sorting. */
  readonly depth: number;
}

/** A heap of spots, the one with the lowest key on top. */
class SpotHeap {
  private readonly spot: Int32Array;
  private readonly key: Float64Array;
  size = 0;

  constructor(capacity: number) {
    this.spot = new Int32Array(capacity + 1);
    this.key = new Float64Array(capacity + 1);
  }

  push(spot: number, key: number): void {
    this.size += 1;
    let i = this.size;
    while (i > 1 && (this.key[i >> 1] as number) > key) {
      this.put(i, this.spot[i >> 1] as number, this.key[i >> 1] as number);
      i >>= 1;
    }
    this.put(i, spot, key);
  }

  pop(): number {
    const top = this.spot[1] as number;
    const [spot, key] = [this.spot[this.size] as number, this.key[this.size] as number];
    this.size -= 1;
    let i = 1;
    for (let child = 2; child <= this.size; child = 2 * i) {
      if (child < this.size && (this.key[child + 1] as number) < (this.key[child] as number)) child += 1;
      if ((this.key[child] as number) >= key) break;
      this.put(i, this.spot[child] as number, this.key[child] as number);
      i = child;
    }
    this.put(i, spot, key);
    return top;
  }

  private put(i: number, spot: number, key: number): void {
    this.spot[i] = spot;
    this.key[i] = key;
  }
}

/** Flood from the outlets; spots on no facet keep their own elevation. */
export function floodFrom(z: Float64Array, { from, to }: Neighbors, outlets: readonly number[]): Flood {
  const level = Float64Array.from(z);
  const toward = new Int32Array(z.length).fill(-1);
  const seen = new Uint8Array(z.length);
  const heap = new SpotHeap(z.length);
  const order = new Uint32Array(z.length);
  let reached = 0;
  // Spots under the present level are drowned at once: no need to sort them.
  const drowned: number[] = [];
  for (const v of outlets) {
    if (seen[v]) continue;
    seen[v] = 1;
    heap.push(v, z[v] as number);
  }
  const visit = (v: number): void => {
    const surface = level[v] as number;
    order[reached] = v;
    reached += 1;
    for (let i = from[v] as number; i < (from[v + 1] as number); i += 1) {
      const u = to[i] as number;
      if (seen[u]) continue;
      seen[u] = 1;
      toward[u] = v;
      if ((z[u] as number) <= surface) {
        level[u] = surface;
        drowned.push(u);
      } else {
        heap.push(u, z[u] as number);
      }
    }
  };
  while (heap.size > 0) {
    visit(heap.pop());
    for (let v = drowned.pop(); v !== undefined; v = drowned.pop()) visit(v);
  }
  return { level, toward, order: order.subarray(0, reached) };
}

function gather(
  start: number,
  { level }: Flood,
  z: Float64Array,
  near: Neighbors,
  pondOf: Int32Array,
): number[] {
  const spots = [start];
  const id = pondOf[start] as number;
  for (let k = 0; k < spots.length; k += 1) {
    const v = spots[k] as number;
    for (let i = near.from[v] as number; i < (near.from[v + 1] as number); i += 1) {
      const u = near.to[i] as number;
      if (pondOf[u] !== -1 || (z[u] as number) >= (level[u] as number)) continue;
      pondOf[u] = id;
      spots.push(u);
    }
  }
  return spots;
}

/** The spot outside the pond that its water leaves over. */
function spillOf(spots: readonly number[], { toward, level }: Flood, z: Float64Array): number {
  for (const v of spots) {
    const u = toward[v] as number;
    if (u !== -1 && (z[u] as number) === (level[u] as number)) return u;
  }
  return spots[0] as number;
}

/** Ponds, and for each spot the pond that it is in; -1 for none. */
export interface Ponds {
  readonly ponds: readonly FoundPond[];
  readonly pondOf: Int32Array;
}

/** Every pond of the flooded surface. */
export function pondsOf(tin: Tin, flood: Flood, near: Neighbors): Ponds {
  const { z, corner } = tin;
  const pondOf = new Int32Array(z.length).fill(-1);
  const found: { spots: number[]; facets: number[] }[] = [];
  for (const v of flood.order) {
    if (pondOf[v] !== -1 || (z[v] as number) >= (flood.level[v] as number)) continue;
    pondOf[v] = found.length;
    found.push({ spots: gather(v, flood, z, near, pondOf), facets: [] });
  }
  if (found.length === 0) return { ponds: [], pondOf };
  for (let e = 0; e < corner.length; e += 1) {
    const id = pondOf[corner[e] as number] as number;
    if (id === -1) continue;
    const t = (e / 3) | 0;
    const { facets } = found[id] as { facets: number[] };
    // The corners of a facet follow one another, so a facet that is in already is the last.
    if (facets[facets.length - 1] !== t) facets.push(t);
  }
  const ponds = found.map(({ spots, facets }) => {
    // The middle of a cell is never lower than the lowest spot around it.
    const lowest = spots
      .filter((v) => v < tin.spots)
      .reduce((low, v) => ((z[v] as number) < (z[low] as number) ? v : low));
    const depth = (flood.level[lowest] as number) - (z[lowest] as number);
    return { spots, facets, lowest, depth, spill: spillOf(spots, flood, z) };
  });
  return { ponds, pondOf };
}

/** A corner of an outline: a spot, or the point at water level between two spots. */
export type ShorePoint = readonly [spot: number] | readonly [dry: number, wet: number];

const keyOf = (p: ShorePoint): string => (p.length === 1 ? `${p[0]}` : `${p[0]} ${p[1]}`);

/** Where the water's edge cuts the side from a to b. */
function cut(a: number, b: number, z: Float64Array, level: number): ShorePoint {
  const [za, zb] = [z[a] as number, z[b] as number];
  if (za === level) return [a];
  if (zb === level) return [b];
  return za > zb ? [a, b] : [b, a];
}

/** The wet stretch of one half-edge, if any, with the points where it begins and ends. */
function wetStretch(tin: Tin, e: number, level: number): readonly [ShorePoint, ShorePoint] | undefined {
  const [a, b] = [tin.corner[e] as number, tin.corner[nextEdge(e)] as number];
  const [wetA, wetB] = [(tin.z[a] as number) < level, (tin.z[b] as number) < level];
  if (!wetA && !wetB) return undefined;
  return [wetA ? [a] : cut(a, b, tin.z, level), wetB ? [b] : cut(a, b, tin.z, level)];
}

/** The shore within one facet and along the outside, as directed pieces. */
function shorePieces(tin: Tin, t: number, level: number): [ShorePoint, ShorePoint][] {
  const pieces: [ShorePoint, ShorePoint][] = [];
  const stretches = [3 * t, 3 * t + 1, 3 * t + 2].map((e) => ({ e, wet: wetStretch(tin, e, level) }));
  for (const { e, wet } of stretches) {
    if (wet && tin.twin[e] === -1) pieces.push([...wet]);
  }
  // Walking around the facet, the shore closes the gap from where one wet stretch ends dry.
  for (const { e, wet } of stretches) {
    if (!wet) continue;
    const end = tin.corner[nextEdge(e)] as number;
    if ((tin.z[end] as number) < level) continue;
    const last = stretches.find(
      (s) => s.wet && s.e !== e && (tin.z[tin.corner[s.e] as number] as number) >= level,
    );
    const start = last?.wet?.[0] ?? wet[0];
    if (keyOf(wet[1]) !== keyOf(start)) pieces.push([wet[1], start]);
  }
  return pieces;
}

/** The water's edge of a pond, as closed rings. */
export function shoreOf(tin: Tin, pond: FoundPond, level: number): ShorePoint[][] {
  const next = new Map<string, ShorePoint[]>();
  const starts: ShorePoint[] = [];
  for (const t of pond.facets) {
    for (const [a, b] of shorePieces(tin, t, level)) {
      const list = next.get(keyOf(a));
      if (list) list.push(b);
      else next.set(keyOf(a), [b]);
      starts.push(a);
    }
  }
  const rings: ShorePoint[][] = [];
  for (const start of starts) {
    const ring: ShorePoint[] = [];
    let at: ShorePoint = start;
    for (let to = next.get(keyOf(at))?.pop(); to; to = next.get(keyOf(at))?.pop()) {
      ring.push(at);
      at = to;
    }
    if (ring.length > 2) rings.push(ring);
  }
  return rings;
}

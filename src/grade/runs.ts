/** Which way water runs over each facet and along each edge of a surface. */
import { edgeBefore, type Neighbors, nextEdge, type Tin } from '../geometry/tin';
import type { Flood, Ponds } from './ponds';

/** Components of fall below this count as none: 0.00001 in over 1,000 ft. */
export const NO_FALL = 1e-9;

/** What lies along the outside of the surface. */
export interface Bounds {
  /** For each half-edge on the outside that water cannot pass: 1 + the place of its line; 0 elsewhere. */
  readonly wall: Int32Array;
  /** For each spot on a wall that must stay dry: 1 + the place of its line; 0 elsewhere. */
  readonly dry: Int32Array;
  /** 1 for lines that must stay dry, by place. */
  readonly mustBeDry: readonly boolean[];
  /** For each spot at a drain: 1 + the place of its line; 0 elsewhere. */
  readonly drain: Int32Array;
}

/** Where water stands on its way: half-edges of valleys too flat, and spots under ponds. */
export interface Standing {
  readonly edge: Uint8Array;
  readonly spot: Uint8Array;
}

/** Everything that the flow of water depends on. */
export interface Terrain {
  readonly tin: Tin;
  readonly near: Neighbors;
  readonly flood: Flood;
  readonly ponds: Ponds;
  readonly bounds: Bounds;
  readonly spoke: SpokeList;
  readonly runs: Runs;
}

/** The half-edges that begin at each spot, packed. */
export interface SpokeList {
  readonly from: Uint32Array;
  readonly edges: Uint32Array;
}

/** The half-edges that begin at each spot. */
export function spokesOf({ corner, x }: Tin): SpokeList {
  const from = new Uint32Array(x.length + 1);
  for (let e = 0; e < corner.length; e += 1) {
    const v = (corner[e] as number) + 1;
    from[v] = (from[v] as number) + 1;
  }
  for (let v = 0; v < x.length; v += 1) from[v + 1] = (from[v + 1] as number) + (from[v] as number);
  const at = from.slice();
  const edges = new Uint32Array(corner.length);
  for (let e = 0; e < corner.length; e += 1) {
    const v = corner[e] as number;
    edges[at[v] as number] = e;
    at[v] = (at[v] as number) + 1;
  }
  return { from, edges };
}

/** How water runs over sides and from spots, worked out once. */
export interface Runs {
  /** How fast water crosses each half-edge outwards: fall times length; negative inwards, 0 along it. */
  readonly out: Float64Array;
  /** The half-edge opposite a spot whose steepest way down leads over a facet; otherwise -1. */
  readonly over: Int32Array;
  /** The spot that the steepest way down leads to along a side; otherwise -1. */
  readonly along: Int32Array;
  /** Fall along the steepest way down from each spot; {@link NO_FALL} where there is none. */
  readonly steepest: Float64Array;
}

/** How fast water crosses a half-edge outwards; nothing below {@link NO_FALL}. */
function outwards({ corner, x, y, fallX, fallY, turn }: Tin, e: number): number {
  const [p, q] = [corner[e] as number, corner[nextEdge(e)] as number];
  const t = (e / 3) | 0;
  const dx = (x[q] as number) - (x[p] as number);
  const dy = (y[q] as number) - (y[p] as number);
  const flow = turn * ((fallX[t] as number) * dy - (fallY[t] as number) * dx);
  return Math.abs(flow) <= NO_FALL * Math.sqrt(dx * dx + dy * dy) ? 0 : flow;
}

/** Fall along the side from p to q. */
export function fallAlong({ x, y, z }: Tin, p: number, q: number): number {
  const dx = (x[q] as number) - (x[p] as number);
  const dy = (y[q] as number) - (y[p] as number);
  return ((z[p] as number) - (z[q] as number)) / Math.sqrt(dx * dx + dy * dy);
}

/** True where the fall points into a facet from its corner: off both sides there, out over the far one. */
export const fallsInside = (out: Float64Array, e: number): boolean =>
  (out[nextEdge(e)] as number) > 0 && (out[e] as number) < 0 && (out[edgeBefore(e)] as number) < 0;

/** Fall of a facet, per meter. */
export const fallOf = ({ fallX, fallY }: Tin, t: number): number =>
  Math.sqrt((fallX[t] as number) ** 2 + (fallY[t] as number) ** 2);

/** Work out how water crosses every half-edge, and the steepest way down from every spot. */
export function runsOf(tin: Tin): Runs {
  const { corner, twin } = tin;
  const out = new Float64Array(corner.length);
  const steepest = new Float64Array(tin.x.length).fill(NO_FALL);
  const over = new Int32Array(tin.x.length).fill(-1);
  const along = new Int32Array(tin.x.length).fill(-1);
  const side = (p: number, q: number): void => {
    const fall = fallAlong(tin, p, q);
    if (fall <= (steepest[p] as number)) return;
    steepest[p] = fall;
    along[p] = q;
  };
  for (let e = 0; e < corner.length; e += 1) {
    out[e] = outwards(tin, e);
    const [p, q] = [corner[e] as number, corner[nextEdge(e)] as number];
    side(p, q);
    if (twin[e] === -1) side(q, p);
  }
  for (let e = 0; e < corner.length; e += 1) {
    if (!fallsInside(out, e)) continue;
    const p = corner[e] as number;
    const fall = fallOf(tin, (e / 3) | 0);
    if (fall <= (steepest[p] as number)) continue;
    steepest[p] = fall;
    over[p] = nextEdge(e);
    along[p] = -1;
  }
  return { out, over, along, steepest };
}

/** Where water goes next: off the surface, to a wall, into a facet or to a spot. */
export const GONE = -1;
/** A valley too flat. */
export const STANDS = -2;
/** A wall that must stay dry is given as `WALL - place`. */
export const WALL = -3;

/** The lower end of a side; of a level side the end that water gets away from. */
export function lowerEnd({ tin, flood }: Terrain, e: number): number {
  const [p, q] = [tin.corner[e] as number, tin.corner[nextEdge(e)] as number];
  const [zp, zq] = [tin.z[p] as number, tin.z[q] as number];
  if (zp !== zq) return zp < zq ? p : q;
  return flood.toward[p] === q ? q : p;
}

/** Where water goes that cannot run down from a spot: over the spill of its pond, or off the surface. */
export function spillFrom({ flood, ponds }: Terrain, v: number): number {
  const pond = ponds.pondOf[v] as number;
  const spill = pond === -1 ? v : (ponds.ponds[pond]?.spill ?? v);
  return flood.toward[spill] as number;
}

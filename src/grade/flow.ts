/**
 * Which way water runs on a surface of triangles.
 *
 * On a facet water runs straight down its fall. At a side it enters the next facet when that one
 * falls away from the side; when both fall towards it the side is a channel, and water follows it
 * to its lower end. At a spot it takes the steepest way down, over a facet or along a side; where
 * there is none it stands, and leaves over the spot that its pond spills over.
 *
 * All in binary numbers: this finds who drains where. Shares of facets that drain two ways are the
 * areas on either side of the fall line through the corner between.
 */
import { edgeBefore, type Neighbours, nextEdge, type Tin } from '../geometry/tin';
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

/** Everything that the flow of water depends on. */
export interface Terrain {
  readonly tin: Tin;
  readonly near: Neighbours;
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
function fallAlong({ x, y, z }: Tin, p: number, q: number): number {
  const dx = (x[q] as number) - (x[p] as number);
  const dy = (y[q] as number) - (y[p] as number);
  return ((z[p] as number) - (z[q] as number)) / Math.sqrt(dx * dx + dy * dy);
}

/** Work out how water crosses every half-edge, and the steepest way down from every spot. */
export function runsOf(tin: Tin): Runs {
  const { corner, twin, fallX, fallY } = tin;
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
    // The fall points into the facet from its corner: off both sides there, out over the far one.
    const inside =
      (out[nextEdge(e)] as number) > 0 && (out[e] as number) < 0 && (out[edgeBefore(e)] as number) < 0;
    if (!inside) continue;
    const p = corner[e] as number;
    const t = (e / 3) | 0;
    const fall = Math.sqrt((fallX[t] as number) ** 2 + (fallY[t] as number) ** 2);
    if (fall <= (steepest[p] as number)) continue;
    steepest[p] = fall;
    over[p] = nextEdge(e);
    along[p] = -1;
  }
  return { out, over, along };
}

/** Where water goes next: off the surface, to a wall, into a facet or to a spot. */
export const GONE = -1;
/** A wall that must stay dry is given as `WALL - place`. */
export const WALL = -2;

/** The lower end of a side; of a level side the end that water gets away from. */
export function lowerEnd({ tin, flood }: Terrain, e: number): number {
  const [p, q] = [tin.corner[e] as number, tin.corner[nextEdge(e)] as number];
  const [zp, zq] = [tin.z[p] as number, tin.z[q] as number];
  if (zp !== zq) return zp < zq ? p : q;
  return flood.towards[p] === q ? q : p;
}

/**
 * What water meets that crosses a half-edge outwards. Facets are numbered from 0, spots follow them.
 */
export function across(terrain: Terrain, e: number): number {
  const { tin, bounds, runs } = terrain;
  const other = tin.twin[e] as number;
  if (other === -1) {
    const wall = bounds.wall[e] as number;
    if (wall === 0) return GONE;
    return bounds.mustBeDry[wall - 1] ? WALL - (wall - 1) : tin.facets + lowerEnd(terrain, e);
  }
  return (runs.out[other] as number) < 0 ? (other / 3) | 0 : tin.facets + lowerEnd(terrain, e);
}

/** Where water goes that cannot run down from a spot: over the spill of its pond, or off the surface. */
export function spillFrom({ flood, ponds }: Terrain, v: number): number {
  const pond = ponds.pondOf[v] as number;
  const spill = pond === -1 ? v : (ponds.ponds[pond]?.spill ?? v);
  return flood.towards[spill] as number;
}

/** The next place after a spot. */
function afterSpot(terrain: Terrain, v: number): number {
  if ((terrain.bounds.drain[v] as number) > 0) return GONE;
  const over = terrain.runs.over[v] as number;
  if (over !== -1) return across(terrain, over);
  const along = terrain.runs.along[v] as number;
  const to = along === -1 ? spillFrom(terrain, v) : along;
  return to === -1 ? GONE : terrain.tin.facets + to;
}

/** The one or two ways out of a facet, with the share of its area that takes the first. */
export interface WaysOut {
  first: number;
  second: number;
  share: number;
}

/** Fill in the ways out of a facet; `first` is a half-edge or -1 on a level facet. */
export function waysOut(terrain: Terrain, t: number, out: WaysOut): void {
  out.first = -1;
  out.second = -1;
  out.share = 1;
  for (let e = 3 * t; e < 3 * t + 3; e += 1) {
    const flow = terrain.runs.out[e] as number;
    if (flow <= 0) continue;
    if (out.first === -1) {
      out.first = e;
      out.share = flow;
    } else {
      out.second = e;
      out.share /= out.share + flow;
    }
  }
  if (out.second === -1) out.share = 1;
}

/** For every facet: the share of its rain that reaches a line that must stay dry, and which line. */
export interface Reach {
  readonly share: Float64Array;
  /** The place of the line that most of it reaches; -1 for none. */
  readonly line: Int32Array;
}

const FRESH = 0;
const OPEN = 1;
const DONE = 2;

/** Walks the net of facets and spots once, downstream first. */
class ReachWalk {
  readonly share: Float64Array;
  readonly line: Int32Array;
  private readonly state: Uint8Array;
  private readonly ways: WaysOut = { first: -1, second: -1, share: 1 };

  constructor(private readonly terrain: Terrain) {
    const nodes = terrain.tin.facets + terrain.tin.x.length;
    this.share = new Float64Array(nodes);
    this.line = new Int32Array(nodes).fill(-1);
    this.state = new Uint8Array(nodes);
  }

  /** Look up where the water of a place goes: into `ways.first` and `ways.second`, as places. */
  private look(node: number): void {
    const { terrain, ways } = this;
    const { facets } = terrain.tin;
    if (node >= facets) {
      ways.first = afterSpot(terrain, node - facets);
      ways.second = GONE;
      ways.share = 1;
      return;
    }
    waysOut(terrain, node, ways);
    if (ways.first === -1) ways.first = facets + (terrain.tin.corner[3 * node] as number);
    else ways.first = across(terrain, ways.first);
    ways.second = ways.second === -1 ? GONE : across(terrain, ways.second);
  }

  /** The share of water sent to a place that arrives at a dry line. */
  private shareBy(target: number): number {
    if (target === GONE) return 0;
    if (target <= WALL) return 1;
    const { dry } = this.terrain.bounds;
    const { facets } = this.terrain.tin;
    if (target >= facets && (dry[target - facets] as number) > 0) return 1;
    return this.share[target] as number;
  }

  /** The dry line that it arrives at. */
  private lineBy(target: number): number {
    if (target === GONE) return -1;
    if (target <= WALL) return WALL - target;
    const { dry } = this.terrain.bounds;
    const { facets } = this.terrain.tin;
    const line = target >= facets ? (dry[target - facets] as number) : 0;
    return line > 0 ? line - 1 : (this.line[target] as number);
  }

  private pending(target: number): boolean {
    return target >= 0 && this.state[target] === FRESH;
  }

  private settle(node: number): void {
    const { first, second, share } = this.ways;
    const a = share * this.shareBy(first);
    const b = (1 - share) * this.shareBy(second);
    this.share[node] = a + b;
    if (a + b > 0) this.line[node] = this.lineBy(a >= b ? first : second);
    this.state[node] = DONE;
  }

  /** A ring of facets that pass water on to each other ends at the one met again: it counts as dry. */
  from(start: number): void {
    const open = [start];
    while (open.length > 0) {
      const node = open[open.length - 1] as number;
      if (this.state[node] === DONE) {
        open.pop();
        continue;
      }
      this.state[node] = OPEN;
      this.look(node);
      const { first, second } = this.ways;
      if (this.pending(first)) open.push(first);
      else if (this.pending(second)) open.push(second);
      else {
        this.settle(node);
        open.pop();
      }
    }
  }
}

/** Which facets send water to a line that must stay dry. */
export function reachOf(terrain: Terrain): Reach {
  const walk = new ReachWalk(terrain);
  for (let t = 0; t < terrain.tin.facets; t += 1) walk.from(t);
  return { share: walk.share, line: walk.line };
}

/** A path of water. */
export interface FlowPath {
  /** Points in metres, from the first spot. */
  readonly points: readonly (readonly [x: number, y: number])[];
  readonly length: number;
  /** The half-edge or spot where it leaves; -1 when it is not known. */
  readonly leavesBy: { readonly edge: number; readonly spot: number };
  /** The first line that must stay dry on its way; -1 for none. */
  readonly reaches: number;
  /** Ponds that it runs through. */
  readonly through: readonly number[];
}

/** Follows water from one place, step by step. */
class Tracer {
  private readonly points: [number, number][] = [];
  private readonly through: number[] = [];
  private length = 0;
  private reaches = -1;
  private x = 0;
  private y = 0;
  private edge = -1;
  private spot = -1;

  constructor(
    private readonly terrain: Terrain,
    private steps: number,
  ) {}

  private move(x: number, y: number): void {
    const { points } = this;
    if (points.length > 0) this.length += Math.hypot(x - this.x, y - this.y);
    points.push([x, y]);
    [this.x, this.y] = [x, y];
  }

  private note(line: number): void {
    if (this.reaches === -1) this.reaches = line;
  }

  private done(): FlowPath {
    const { points, length, edge, spot, reaches, through } = this;
    return { points, length, leavesBy: { edge, spot }, reaches, through };
  }

  /** Run over facets from the present point, entering by half-edge `e`; gives the spot it comes to, or -1. */
  private overFacet(facet: number, entered: number): number {
    const { terrain } = this;
    const { tin, bounds } = terrain;
    let [t, by] = [facet, entered];
    while (this.steps > 0) {
      this.steps -= 1;
      const e = this.exitOf(t, by);
      if (e === -1) return tin.corner[3 * t] as number;
      const other = tin.twin[e] as number;
      if (other === -1) {
        const wall = bounds.wall[e] as number;
        if (wall === 0) {
          this.edge = e;
          return -1;
        }
        if (bounds.mustBeDry[wall - 1]) this.note(wall - 1);
        return lowerEnd(terrain, e);
      }
      if ((terrain.runs.out[other] as number) >= 0) return lowerEnd(terrain, e);
      [t, by] = [(other / 3) | 0, other];
    }
    return -1;
  }

  /** The half-edge where the fall line through the present point leaves the facet; moves there. */
  private exitOf(t: number, entered: number): number {
    const { tin } = this.terrain;
    const [dx, dy] = [tin.fallX[t] as number, tin.fallY[t] as number];
    let best = Number.POSITIVE_INFINITY;
    let exit = -1;
    for (let e = 3 * t; e < 3 * t + 3; e += 1) {
      if (e === entered || (this.terrain.runs.out[e] as number) <= 0) continue;
      const [p, q] = [tin.corner[e] as number, tin.corner[nextEdge(e)] as number];
      const [ex, ey] = [
        (tin.x[q] as number) - (tin.x[p] as number),
        (tin.y[q] as number) - (tin.y[p] as number),
      ];
      const cross = dx * ey - dy * ex;
      const s = (((tin.x[p] as number) - this.x) * ey - ((tin.y[p] as number) - this.y) * ex) / cross;
      if (s < best) [best, exit] = [s, e];
    }
    if (exit !== -1) this.move(this.x + Math.max(best, 0) * dx, this.y + Math.max(best, 0) * dy);
    return exit;
  }

  /** From a spot on; gives the next spot, or -1 at the end. */
  private fromSpot(v: number): number {
    const { terrain } = this;
    const { tin, ponds } = terrain;
    if ((terrain.bounds.drain[v] as number) > 0) {
      this.spot = v;
      return -1;
    }
    const [over, along] = [terrain.runs.over[v] as number, terrain.runs.along[v] as number];
    if (over !== -1) return this.overFacet((over / 3) | 0, -2);
    if (along !== -1) return along;
    const pond = ponds.pondOf[v] as number;
    if (pond !== -1) this.through.push(pond);
    const spill = pond === -1 ? v : (ponds.ponds[pond]?.spill ?? v);
    if (spill !== v) this.move(tin.x[spill] as number, tin.y[spill] as number);
    const to = terrain.flood.towards[spill] as number;
    if (to === -1) this.spot = spill;
    return to;
  }

  private onFrom(start: number, arrived: boolean): FlowPath {
    const { tin, bounds } = this.terrain;
    let v = start;
    let first = !arrived;
    while (v !== -1 && this.steps > 0) {
      this.steps -= 1;
      this.move(tin.x[v] as number, tin.y[v] as number);
      const dry = bounds.dry[v] as number;
      if (dry > 0 && !first) this.note(dry - 1);
      first = false;
      v = this.fromSpot(v);
    }
    return this.done();
  }

  fromVertex(v: number): FlowPath {
    return this.onFrom(v, false);
  }

  fromPoint(t: number, x: number, y: number): FlowPath {
    this.move(x, y);
    const v = this.overFacet(t, -2);
    return v === -1 ? this.done() : this.onFrom(v, true);
  }
}

const STEPS_PER_PLACE = 4;

const stepsFor = ({ tin }: Terrain): number => STEPS_PER_PLACE * (tin.facets + tin.x.length) + 100;

/** Follow water from a spot. */
export const pathFromSpot = (terrain: Terrain, v: number): FlowPath =>
  new Tracer(terrain, stepsFor(terrain)).fromVertex(v);

/** Follow water from a point of a facet. */
export const pathFromPoint = (terrain: Terrain, t: number, x: number, y: number): FlowPath =>
  new Tracer(terrain, stepsFor(terrain)).fromPoint(t, x, y);

/**
 * Lengths of the ways from every spot, along the net, to find where the longest may start. Spots are
 * taken as they were flooded, so that each way is nearly always known when it is needed; one that is
 * not counts from there as nothing.
 */
export function roughLengths(terrain: Terrain): Float64Array {
  const { tin, flood, runs } = terrain;
  const far = new Float64Array(tin.x.length);
  for (const v of flood.order) {
    const [over, along] = [runs.over[v] as number, runs.along[v] as number];
    const to = over !== -1 ? lowerEnd(terrain, over) : along !== -1 ? along : spillFrom(terrain, v);
    if (to === -1) continue;
    const dx = (tin.x[to] as number) - (tin.x[v] as number);
    const dy = (tin.y[to] as number) - (tin.y[v] as number);
    far[v] = Math.sqrt(dx * dx + dy * dy) + (far[to] as number);
  }
  return far;
}

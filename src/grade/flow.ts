/**
 * Which way water runs on a surface of triangles.
 *
 * On a facet water runs straight down its fall. At a side it enters the next facet when that one
 * falls away from the side; when both fall toward it the side is a channel, and water follows it
 * to its lower end. At a spot it takes the steepest way down, over a facet or along a side; where
 * there is none it stands, and leaves over the spot that its pond spills over.
 *
 * All in binary numbers: this finds who drains where. Shares of facets that drain two ways are the
 * areas on either side of the fall line through the corner between.
 */
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
const fallsInside = (out: Float64Array, e: number): boolean =>
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
const STANDS = -2;
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

/** For every facet: the share of its rain that reaches a line that must stay dry, and which line. */
export interface Reach {
  readonly share: Float64Array;
  /** The place of the line that most of it reaches; -1 for none. */
  readonly line: Int32Array;
}

const FRESH = 0;
const OPEN = 1;
const DONE = 2;

/** Falls that differ by less than this share are alike: water takes both ways. */
const ALIKE = 1e-9;

/** Where the water of one place goes, and which share of it; filled anew for every place. */
interface Ways {
  readonly to: number[];
  readonly share: number[];
}

/**
 * Walks the net of facets, spots and plateaus once, downstream first. A plateau is the water level over
 * a pond or a level stretch; it leaves over every spot of its edge that water gets away from. Where two
 * ways are alike, water takes both, so that nothing hangs on the order of the spots, on turn or mirror.
 */
class ReachWalk {
  readonly share: Float64Array;
  readonly line: Int32Array;
  private readonly state: Uint8Array;
  private readonly ways: Ways = { to: [], share: [] };
  /** For each spot the plateau that it lies on, where one was asked for. */
  private readonly plateauOf: Int32Array;
  private readonly exits: (readonly number[])[] = [];

  constructor(
    private readonly terrain: Terrain,
    /** With it, the share that stands somewhere on its way is sought instead. */
    private readonly standing?: Standing,
  ) {
    const { facets, x } = terrain.tin;
    const nodes = facets + 2 * x.length;
    this.share = new Float64Array(nodes);
    this.line = new Int32Array(nodes).fill(-1);
    this.state = new Uint8Array(nodes);
    this.plateauOf = new Int32Array(x.length).fill(-1);
  }

  private send(to: number, share: number): void {
    this.ways.to.push(to);
    this.ways.share.push(share);
  }

  /** Water that crosses a half-edge outwards: off the surface, to a wall, into a facet or along the side. */
  private across(e: number, share: number): void {
    const { tin, bounds, runs } = this.terrain;
    const other = tin.twin[e] as number;
    const wall = other === -1 ? (bounds.wall[e] as number) : 0;
    if (other === -1 && wall === 0) this.send(GONE, share);
    else if (wall > 0 && bounds.mustBeDry[wall - 1]) this.send(WALL - (wall - 1), share);
    else if (other !== -1 && (runs.out[other] as number) < 0) this.send((other / 3) | 0, share);
    else this.alongSide(e, share);
  }

  /** Down a side to its lower end; from a level one to both. */
  private alongSide(e: number, share: number): void {
    const { tin } = this.terrain;
    const other = tin.twin[e] as number;
    if (this.standing?.edge[e] || (other !== -1 && this.standing?.edge[other])) {
      this.send(STANDS, share);
      return;
    }
    const [p, q] = [tin.corner[e] as number, tin.corner[nextEdge(e)] as number];
    const fall = fallAlong(tin, p, q);
    if (fall >= -NO_FALL) this.send(tin.facets + q, fall > NO_FALL ? share : share / 2);
    if (fall <= NO_FALL) this.send(tin.facets + p, fall < -NO_FALL ? share : share / 2);
  }

  private fromFacet(t: number): void {
    const { tin, runs } = this.terrain;
    let sum = 0;
    for (let e = 3 * t; e < 3 * t + 3; e += 1) sum += Math.max(runs.out[e] as number, 0);
    if (sum === 0) this.send(this.plateau(tin.corner[3 * t] as number), 1);
    for (let e = 3 * t; e < 3 * t + 3; e += 1) {
      const flow = runs.out[e] as number;
      if (flow > 0) this.across(e, flow / sum);
    }
  }

  /** Over facets down the steepest ways from a spot: the half-edges opposite. */
  private steepestOver(v: number, least: number): number[] {
    const { tin, runs, spoke } = this.terrain;
    const over: number[] = [];
    for (let i = spoke.from[v] as number; i < (spoke.from[v + 1] as number); i += 1) {
      const e = spoke.edges[i] as number;
      if (fallsInside(runs.out, e) && fallOf(tin, (e / 3) | 0) >= least) over.push(nextEdge(e));
    }
    return over;
  }

  /** Along sides down the steepest ways from a spot: the spots at their lower ends. */
  private steepestAlong(v: number, least: number): number[] {
    const { tin, near } = this.terrain;
    const along: number[] = [];
    for (let i = near.from[v] as number; i < (near.from[v + 1] as number); i += 1) {
      const u = near.to[i] as number;
      if (fallAlong(tin, v, u) >= least) along.push(u);
    }
    return along;
  }

  /** From a spot down the steepest ways; a plateau where there is none. */
  private fromSpot(v: number): void {
    const { tin, bounds, runs } = this.terrain;
    const steepest = runs.steepest[v] as number;
    if ((bounds.drain[v] as number) > 0) this.send(GONE, 1);
    else if (steepest <= NO_FALL) this.send(this.plateau(v), 1);
    else {
      const over = this.steepestOver(v, steepest * (1 - ALIKE));
      const along = this.steepestAlong(v, steepest * (1 - ALIKE));
      const share = 1 / (over.length + along.length);
      for (const e of over) this.across(e, share);
      for (const u of along) this.send(tin.facets + u, share);
    }
  }

  /** The plateau that a spot lies on, as a place. */
  private plateau(start: number): number {
    const { tin, near, flood } = this.terrain;
    const first = tin.facets + tin.x.length;
    if (this.plateauOf[start] !== -1) return first + (this.plateauOf[start] as number);
    const id = this.exits.length;
    const level = flood.level[start] as number;
    const exits: number[] = [];
    const members = [start];
    this.plateauOf[start] = id;
    for (let k = 0; k < members.length; k += 1) {
      const v = members[k] as number;
      if (flood.toward[v] === -1) exits.push(GONE);
      for (let i = near.from[v] as number; i < (near.from[v + 1] as number); i += 1) {
        const u = near.to[i] as number;
        if ((flood.level[u] as number) < level) exits.push(tin.facets + u);
        else if (flood.level[u] === level && this.plateauOf[u] === -1) {
          this.plateauOf[u] = id;
          members.push(u);
        }
      }
    }
    this.exits.push(exits);
    return first + id;
  }

  /** Look up where the water of a place goes. */
  private look(node: number): void {
    const { facets, x } = this.terrain.tin;
    this.ways.to.length = 0;
    this.ways.share.length = 0;
    const exits = this.exits[node - facets - x.length] ?? [];
    if (node < facets) this.fromFacet(node);
    else if (node < facets + x.length) this.fromSpot(node - facets);
    else for (const to of exits) this.send(to, 1 / exits.length);
  }

  /** 1 + the dry line that a spot lies on; 0 for none. */
  private dryAt(target: number): number {
    const { tin, bounds } = this.terrain;
    const spot = target - tin.facets;
    return spot >= 0 && spot < tin.x.length ? (bounds.dry[spot] as number) : 0;
  }

  /** The share of water sent to a place that arrives at a dry line; or that stands. */
  private shareBy(target: number): number {
    if (target === GONE) return 0;
    if (this.standing) return target === STANDS ? 1 : this.standingBy(target, this.standing);
    if (target <= WALL) return 1;
    return this.dryAt(target) > 0 ? 1 : (this.share[target] as number);
  }

  private standingBy(target: number, { spot }: Standing): number {
    if (target <= WALL) return 0;
    return spot[target - this.terrain.tin.facets] ? 1 : (this.share[target] as number);
  }

  /** The dry line that it arrives at. */
  private lineBy(target: number): number {
    if (target === GONE || target === STANDS) return -1;
    if (target <= WALL) return WALL - target;
    const line = this.dryAt(target);
    return line > 0 ? line - 1 : (this.line[target] as number);
  }

  private settle(node: number): void {
    let [sum, most] = [0, 0];
    this.ways.to.forEach((target, i) => {
      const part = (this.ways.share[i] as number) * this.shareBy(target);
      sum += part;
      if (part > most) {
        most = part;
        this.line[node] = this.lineBy(target);
      }
    });
    this.share[node] = sum;
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
      const waiting = this.ways.to.find((target) => target >= 0 && this.state[target] === FRESH);
      if (waiting !== undefined) open.push(waiting);
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

/** For every facet the share of its rain that stands on its way, in a valley too flat or a pond. */
export function standingOf(terrain: Terrain, standing: Standing): Float64Array {
  const walk = new ReachWalk(terrain, standing);
  for (let t = 0; t < terrain.tin.facets; t += 1) walk.from(t);
  return walk.share;
}

/** A path of water. */
export interface FlowPath {
  /** Points in meters, from the first spot. */
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
    const to = terrain.flood.toward[spill] as number;
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

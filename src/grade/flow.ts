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

import { nextEdge } from '../geometry/tin';
import {
  fallAlong,
  fallOf,
  fallsInside,
  GONE,
  lowerEnd,
  NO_FALL,
  STANDS,
  type Standing,
  spillFrom,
  type Terrain,
  WALL,
} from './runs';

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

/** The way that water takes from a place on a surface, facet by facet. */

import { nextEdge } from '../geometry/tin';
import { lowerEnd, type Terrain } from './runs';

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

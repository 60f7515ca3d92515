/**
 * Bars along the edges of an outline and its openings, and across the corners that cracks start from.
 *
 * An edge bar lies the cover inside its side. At a corner that juts into the slab it runs on by a
 * lap; at any other it ends where the next side's cover begins. Sides that meet at less than 15 degrees
 * share one bent bar.
 */
import type { Limit } from '../reckoning/limits';
import {
  acrossOf,
  alongOf,
  Clearing,
  crossingAt,
  type Direction,
  directionOf,
  FUZZ,
  type Spot,
  spotAt,
} from './mat-clip';
import { TooManyBars } from './mat-laps';
import { type Sides, sidesOf } from './mat-sweep';
import type { Stretch } from './stretches';

/** A bar as a path through the slab, in meters. */
export interface Path {
  readonly spots: readonly Spot[];
  readonly length: number;
  /** True when it comes back to where it began. */
  readonly closed: boolean;
}

/** What the bars along edges and corners are placed by, in meters. */
export interface EdgeRule {
  readonly rings: readonly (readonly Spot[])[];
  readonly cover: number;
  /** How far an edge bar runs past a corner that juts into the slab. */
  readonly past: number;
  /** Nothing shorter is placed. */
  readonly shortest: number;
}

/** Sides that meet at less than this share a bar. At fifteen degrees itself no last digit decides. */
const SMOOTH = (15 * Math.PI) / 180 - 1e-9;

/** So many sides are looked at for all bars along edges or across corners. */
export const EDGE_LOOKS: Limit = { of: 'the bars along edges in sides looked at', most: 10_000_000 };
/** And so many times one of them may come near a bar. */
export const NEAR_EDGES: Limit = { of: 'the bars along edges in sides near them', most: 500_000 };

/** The outline that bars along its edges are kept within. */
class Bounds {
  private readonly sides: Sides;
  private readonly clearing = new Clearing();
  private readonly ownCover: number;
  private readonly facing: Uint32Array;
  private count = 0;
  private looks = EDGE_LOOKS.most;
  private near = NEAR_EDGES.most;

  constructor({ rings, cover }: EdgeRule) {
    this.sides = sidesOf(rings, directionOf(0));
    this.ownCover = cover;
    this.facing = new Uint32Array(this.sides.count);
  }

  /** Look from now on only at the sides that come near lines from one place across a direction to another. */
  face({ cos, sin }: Direction, low: number, high: number): void {
    const { count, u0: x0, v0: y0, u1: x1, v1: y1 } = this.sides;
    const [bottom, top] = [low - this.ownCover, high + this.ownCover];
    let facing = 0;
    for (let i = 0; i < count; i += 1) {
      const a = (y0[i] as number) * cos - (x0[i] as number) * sin;
      const b = (y1[i] as number) * cos - (x1[i] as number) * sin;
      if ((a < bottom && b < bottom) || (a > top && b > top)) continue;
      this.facing[facing] = i;
      facing += 1;
    }
    this.count = facing;
  }

  /** Where a bar may lie on a line that was faced, between two places along it. */
  clear({ cos, sin }: Direction, v: number, [from, to]: Stretch): Stretch[] {
    const [clearing, cover] = [this.clearing, this.ownCover];
    const { u0: x0, v0: y0, u1: x1, v1: y1 } = this.sides;
    this.looks -= this.count;
    if (this.looks < 0) throw new TooManyBars(EDGE_LOOKS);
    // Across the line, places are measured from it.
    clearing.begin(0, cover);
    // Crossings before the stretch tell whether it begins inside, all of them whether it ends there.
    let [before, within] = [0, 0];
    for (let k = 0; k < this.count; k += 1) {
      const i = this.facing[k] as number;
      const [ax, ay, bx, by] = [x0[i], y0[i], x1[i], y1[i]] as [number, number, number, number];
      const [a, b] = [ay * cos - ax * sin - v, by * cos - bx * sin - v];
      const [p, q] = [ax * cos + ay * sin, bx * cos + by * sin];
      const at = crossingAt(p, a, q, b, 0);
      if (at < from) before += 1;
      else if (at <= to) {
        within += 1;
        clearing.cross(at);
      }
      if (Math.max(p, q) + cover >= from && Math.min(p, q) - cover <= to) this.keepFrom(p, a, q, b);
    }
    if (before % 2 === 1) clearing.cross(from);
    if ((before + within) % 2 === 1) clearing.cross(to);
    return clearing.left();
  }

  private keepFrom(u0: number, v0: number, u1: number, v1: number): void {
    this.near -= 1;
    if (this.near < 0) throw new TooManyBars(NEAR_EDGES);
    this.clearing.keepFrom(u0, v0, u1, v1);
  }
}

interface Edge {
  readonly a: Spot;
  readonly direction: Direction;
  readonly long: number;
  /** Turn to the left at its far end, in radians. */
  readonly turn: number;
}

function edgesOf(ring: readonly Spot[]): Edge[] {
  const n = ring.length;
  const at = (i: number): Spot => ring[(i + n) % n] as Spot;
  const headings = ring.map((a, i) => Math.atan2(at(i + 1).y - a.y, at(i + 1).x - a.x));
  return ring.map((a, i) => {
    const b = at(i + 1);
    const long = Math.hypot(b.x - a.x, b.y - a.y);
    const raw = (headings[(i + 1) % n] as number) - (headings[i] as number);
    const turn = raw > Math.PI ? raw - 2 * Math.PI : raw <= -Math.PI ? raw + 2 * Math.PI : raw;
    return { a, direction: { cos: (b.x - a.x) / long, sin: (b.y - a.y) / long }, long, turn };
  });
}

/** How far along its own line an edge bar may go at an end with this turn. */
function reach(turn: number, { cover, past }: EdgeRule): number {
  // Within a bent bar: to where it meets the bar of the next side.
  if (Math.abs(turn) < SMOOTH) return -cover * Math.tan(turn / 2);
  return turn < 0 ? past : 0;
}

/** The stretches of the line inside an edge that a bar may fill. */
function besideEdge(
  { a, direction, long, turn }: Edge,
  before: number,
  rule: EdgeRule,
  bounds: Bounds,
): Stretch[] {
  const u = alongOf(direction, a);
  const v = acrossOf(direction, a) + rule.cover;
  const [from, to] = [u - reach(before, rule), u + long + reach(turn, rule)];
  if (from >= to) return [];
  bounds.face(direction, v, v);
  return bounds.clear(direction, v, [from, to]);
}

interface Run {
  readonly spots: Spot[];
  readonly first: number;
  last: number;
  /** True when it reaches the joint with the next side. */
  open: boolean;
  readonly fromJoint: boolean;
}

const lengthOf = (spots: readonly Spot[]): number =>
  spots.reduce((s, p, i) => {
    const q = spots[i - 1];
    return q ? s + Math.hypot(p.x - q.x, p.y - q.y) : s;
  }, 0);

const JOINT = 1e-5;

/** The runs of bar around one ring, joined where sides meet smoothly. */
function runsAround(ring: readonly Spot[], rule: EdgeRule, bounds: Bounds): Run[] {
  const edges = edgesOf(ring);
  const runs: Run[] = [];
  edges.forEach((edge, i) => {
    const before = (edges[(i + edges.length - 1) % edges.length] as Edge).turn;
    const v = acrossOf(edge.direction, edge.a) + rule.cover;
    const u = alongOf(edge.direction, edge.a);
    const [start, end] = [u - reach(before, rule), u + edge.long + reach(edge.turn, rule)];
    for (const [from, to] of besideEdge(edge, before, rule, bounds)) {
      const joinsBefore = Math.abs(before) < SMOOTH && from - start < JOINT;
      const joinsNext = Math.abs(edge.turn) < SMOOTH && end - to < JOINT;
      const known = runs.at(-1);
      const [p, q] = [spotAt(edge.direction, from, v), spotAt(edge.direction, to, v)];
      if (joinsBefore && known?.open && known.last === i - 1) {
        known.spots.push(q);
        known.last = i;
        known.open = joinsNext;
      } else {
        runs.push({ spots: [p, q], first: i, last: i, open: joinsNext, fromJoint: joinsBefore });
      }
    }
  });
  return runs;
}

/** The run that ends at the first corner and the one that begins there may be one bar. */
function pathsAround(ring: readonly Spot[], rule: EdgeRule, bounds: Bounds): Path[] {
  const runs = runsAround(ring, rule, bounds);
  const [first, last] = [runs[0], runs.at(-1)];
  const meets =
    first?.fromJoint === true && first.first === 0 && last?.open === true && last.last === ring.length - 1;
  if (!first || !last || !meets)
    return runs.map(({ spots }) => ({ spots, length: lengthOf(spots), closed: false }));
  if (first === last) return [{ spots: first.spots, length: lengthOf(first.spots), closed: true }];
  const joined = [...last.spots, ...first.spots.slice(1)];
  return [joined, ...runs.slice(1, -1).map((r) => r.spots)].map((spots) => ({
    spots,
    length: lengthOf(spots),
    closed: false,
  }));
}

const longEnough =
  ({ shortest }: EdgeRule) =>
  (path: Path): boolean =>
    path.length >= shortest - FUZZ;

/**
 * Bars along all edges.
 *
 * @throws {TooManyBars} where very many sides lie beside very many others
 */
export function edgePaths(rule: EdgeRule): Path[] {
  const bounds = new Bounds(rule);
  return rule.rings.flatMap((ring) => pathsAround(ring, rule, bounds)).filter(longEnough(rule));
}

interface Jutting {
  readonly at: Spot;
  readonly direction: Direction;
}

/** Corners that jut into the slab, with the direction along which a bar crosses in front of them. */
function juttingCorners(ring: readonly Spot[]): Jutting[] {
  const edges = edgesOf(ring);
  return edges.flatMap(({ turn, direction }, i) => {
    if (turn > -SMOOTH) return [];
    const next = edges[(i + 1) % edges.length] as Edge;
    // Along the sum of the two headings, which is square to the line that halves the corner.
    const [x, y] = [direction.cos + next.direction.cos, direction.sin + next.direction.sin];
    const long = Math.hypot(x, y);
    const heading = long > FUZZ ? { cos: x / long, sin: y / long } : direction;
    return [{ at: next.a, direction: heading }];
  });
}

/** Between bars at one corner, where there are several. */
const CORNER_GAP = 0.0762;

/**
 * Bars across the corners that jut into the slab, `count` at each, the first the cover in front of it.
 *
 * @throws {TooManyBars} where very many sides lie beside very many corners
 */
export function cornerPaths(rule: EdgeRule, long: number, count: number): Path[] {
  const bounds = new Bounds(rule);
  const paths = rule.rings.flatMap((ring) =>
    juttingCorners(ring).flatMap((corner) => pathsAcross(corner, rule.cover, { long, count }, bounds)),
  );
  return paths.filter(longEnough(rule));
}

/** Bars across a corner; none where their place is not in the slab. */
function pathsAcross(
  { at, direction }: Jutting,
  cover: number,
  { long, count }: { readonly long: number; readonly count: number },
  bounds: Bounds,
): Path[] {
  const [u, first] = [alongOf(direction, at), acrossOf(direction, at) + cover];
  bounds.face(direction, first, first + (count - 1) * CORNER_GAP);
  return Array.from({ length: count }, (_, k): Path[] => {
    const v = first + k * CORNER_GAP;
    const clear = bounds.clear(direction, v, [u - long / 2, u + long / 2]);
    const stretch = clear.find(([from, to]) => from <= u && u <= to);
    if (!stretch) return [];
    const [from, to] = stretch;
    return [
      { spots: [spotAt(direction, from, v), spotAt(direction, to, v)], length: to - from, closed: false },
    ];
  }).flat();
}

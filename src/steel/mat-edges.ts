/**
 * Bars along the edges of an outline and its openings, and across the corners that cracks start from.
 *
 * An edge bar lies the cover inside its side. At a corner that juts into the slab it runs on by a
 * lap; at any other it ends where the next side's cover begins. Sides that meet at less than 15 degrees
 * share one bent bar.
 */
import {
  acrossOf,
  alongOf,
  clearAt,
  type Direction,
  FUZZ,
  type Spot,
  type Stretch,
  sidesNear,
  spotAt,
} from './mat-clip';

/** A bar as a path through the slab, in metres. */
export interface Path {
  readonly spots: readonly Spot[];
  readonly length: number;
  /** True when it comes back to where it began. */
  readonly closed: boolean;
}

/** What the bars along edges and corners are placed by, in metres. */
export interface EdgeRule {
  readonly rings: readonly (readonly Spot[])[];
  readonly cover: number;
  /** How far an edge bar runs past a corner that juts into the slab. */
  readonly past: number;
  /** Nothing shorter is placed. */
  readonly shortest: number;
}

/** Sides that meet at less than this share a bar. */
const SMOOTH = (15 * Math.PI) / 180;

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
function besideEdge({ a, direction, long, turn }: Edge, before: number, rule: EdgeRule): Stretch[] {
  const u = alongOf(direction, a);
  const v = acrossOf(direction, a) + rule.cover;
  const near = sidesNear(rule.rings, direction, v, rule.cover);
  const [from, to] = [u - reach(before, rule), u + long + reach(turn, rule)];
  return clearAt(near, v, rule.cover).flatMap(([p, q]): Stretch[] => {
    const [x, y] = [Math.max(p, from), Math.min(q, to)];
    return x < y ? [[x, y]] : [];
  });
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
function runsAround(ring: readonly Spot[], rule: EdgeRule): Run[] {
  const edges = edgesOf(ring);
  const runs: Run[] = [];
  edges.forEach((edge, i) => {
    const before = (edges[(i + edges.length - 1) % edges.length] as Edge).turn;
    const v = acrossOf(edge.direction, edge.a) + rule.cover;
    const u = alongOf(edge.direction, edge.a);
    const [start, end] = [u - reach(before, rule), u + edge.long + reach(edge.turn, rule)];
    for (const [from, to] of besideEdge(edge, before, rule)) {
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
function pathsAround(ring: readonly Spot[], rule: EdgeRule): Path[] {
  const runs = runsAround(ring, rule);
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

/** Bars along all edges. */
export function edgePaths(rule: EdgeRule): Path[] {
  return rule.rings.flatMap((ring) => pathsAround(ring, rule)).filter((path) => path.length >= rule.shortest);
}

/** Corners that jut into the slab, with the direction along which a bar crosses in front of them. */
function juttingCorners(ring: readonly Spot[]): { at: Spot; direction: Direction }[] {
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
 */
export function cornerPaths(rule: EdgeRule, long: number, count: number): Path[] {
  return rule.rings.flatMap(juttingCornersOf(rule, long, count)).filter((p) => p.length >= rule.shortest);
}

const juttingCornersOf =
  (rule: EdgeRule, long: number, count: number) =>
  (ring: readonly Spot[]): Path[] =>
    juttingCorners(ring).flatMap(({ at, direction }) => {
      const u = alongOf(direction, at);
      return Array.from({ length: count }, (_, k): Path[] => {
        const v = acrossOf(direction, at) + rule.cover + k * CORNER_GAP;
        const stretch = clearAt(sidesNear(rule.rings, direction, v, rule.cover), v, rule.cover).find(
          ([from, to]) => from <= u && u <= to,
        );
        if (!stretch) return [];
        const [from, to] = [Math.max(stretch[0], u - long / 2), Math.min(stretch[1], u + long / 2)];
        return [
          { spots: [spotAt(direction, from, v), spotAt(direction, to, v)], length: to - from, closed: false },
        ];
      }).flat();
    });

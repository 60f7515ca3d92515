/**
 * Panels as they are once cut: what is left of a cell beside the openings that lie over it.
 *
 * An opening larger than the least side can part a cell in two or leave a wedge of it, so the pieces are
 * found by clipping and each is judged by itself. Smaller ones take area from a panel and nothing else.
 */
import { partsLess } from '../../geometry/clip';
import { type Corner, doubleArea, insideRing } from '../../geometry/polygon';
import { insidePlanRing } from '../../geometry/tin';
import { Decimal, ZERO } from '../../quantity/decimal';
import { piecesBeside } from './beside';
import { commonPart, endsOf, same } from './exact';
import { wedged } from './general';
import { type Spot, spot } from './orthogonal';
import { brokenBy, HAIR, type Limits, type PanelRule, SHARP } from './rules';

/** An opening that is not part of the raster. */
export interface Hole {
  readonly ring: readonly Corner[];
  /** Larger than the least side. */
  readonly large: boolean;
  readonly box: Box;
}

/** A ring in binary numbers and the box around it. */
export interface Box {
  readonly lo: Spot;
  readonly hi: Spot;
  readonly ring: readonly Spot[];
}

export function boxOf(ring: readonly Corner[]): Box {
  const spots = ring.map(spot);
  const [lo, hi] = [
    { x: Infinity, y: Infinity },
    { x: -Infinity, y: -Infinity },
  ];
  for (const { x, y } of spots) {
    lo.x = Math.min(lo.x, x);
    lo.y = Math.min(lo.y, y);
    hi.x = Math.max(hi.x, x);
    hi.y = Math.max(hi.y, y);
  }
  return { lo, hi, ring: spots };
}

export const boxesApart = (a: Box, b: Box): boolean =>
  a.lo.x >= b.hi.x || a.hi.x <= b.lo.x || a.lo.y >= b.hi.y || a.hi.y <= b.lo.y;

/** A panel, in the pose. */
export interface CutPanel {
  /** A place on the panel: its middle over all where that is slab. */
  readonly at: Corner;
  /** Over all along x and y. */
  readonly along: Decimal;
  readonly across: Decimal;
  readonly area: Decimal;
  readonly broken: readonly PanelRule[];
}

/** Where the joints run, to tell them from edges. */
export interface LinesAt {
  readonly x: readonly number[];
  readonly y: readonly number[];
}

interface Part {
  readonly ring: readonly Corner[];
  readonly holes: readonly (readonly Corner[])[];
  readonly area: Decimal;
}

const onAny = (lines: readonly number[], a: number, b: number): boolean =>
  lines.some((at) => Math.abs(a - at) < 1e-7 && Math.abs(b - at) < 1e-7);

/** True where a corner sharper than 60 degrees lies between a joint and something else. */
function hasSharpCorner(ring: readonly Spot[], lines: LinesAt): boolean {
  const n = ring.length;
  return ring.some((p, i) => {
    const [a, b] = [ring[(i + n - 1) % n] as Spot, ring[(i + 1) % n] as Spot];
    const [ux, uy, vx, vy] = [a.x - p.x, a.y - p.y, b.x - p.x, b.y - p.y];
    const [cross, dot] = [vx * uy - vy * ux, ux * vx + uy * vy];
    const angle = Math.atan2(Math.abs(cross), dot);
    if (cross < 0 || angle >= SHARP - 1e-6 || Math.hypot(ux, uy) < 1e-6 || Math.hypot(vx, vy) < 1e-6)
      return false;
    return [a, b].some((q) => onAny(lines.x, p.x, q.x) || onAny(lines.y, p.y, q.y));
  });
}

/** The corners of the tightest belt around a ring, counterclockwise. */
function hullOf(ring: readonly Spot[]): Spot[] {
  const sorted = [...ring].sort((p, q) => p.x - q.x || p.y - q.y);
  const half = (spots: readonly Spot[]): Spot[] => {
    const kept: Spot[] = [];
    for (const p of spots) {
      while (kept.length > 1 && !turnsLeft(kept.at(-2) as Spot, kept.at(-1) as Spot, p)) kept.pop();
      kept.push(p);
    }
    return kept.slice(0, -1);
  };
  return [...half(sorted), ...half(sorted.reverse())];
}

const turnsLeft = (a: Spot, b: Spot, c: Spot): boolean =>
  (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x) > 1e-12;

/** The narrowest that a ring is, between two parallel lines. */
export function leastWidth(ring: readonly Spot[]): number {
  const hull = hullOf(ring);
  let least = Number.POSITIVE_INFINITY;
  hull.forEach((a, i) => {
    const b = hull[(i + 1) % hull.length] as Spot;
    const long = Math.hypot(b.x - a.x, b.y - a.y);
    const off = hull.map((p) => ((b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x)) / long);
    least = Math.min(least, Math.max(...off));
  });
  return least;
}

function judged(
  ring: readonly Corner[],
  w: number,
  h: number,
  area: number,
  limits: Limits,
  lines: LinesAt | undefined,
): PanelRule[] {
  const broken = brokenBy(w, h, limits);
  const sliver = (): boolean =>
    wedged(area, w, h, limits.leastSide) ||
    (lines !== undefined && leastWidth(ring.map(spot)) < limits.leastSide - HAIR);
  if (!broken.includes('sliver') && sliver()) broken.unshift('sliver');
  if (lines && hasSharpCorner(ring.map(spot), lines)) broken.push('sharp corner');
  return broken;
}

const middleOf = (a: Decimal, b: Decimal): Decimal => a.plus(b).div(2);

/** Runs of a level line inside a ring and outside holes, in binary numbers. */
function runsAt(y: number, rings: readonly (readonly Spot[])[]): [number, number][] {
  const cuts: number[] = [];
  for (const ring of rings) {
    ring.forEach((a, i) => {
      const b = ring[(i + 1) % ring.length] as Spot;
      if (a.y > y !== b.y > y) cuts.push(a.x + ((b.x - a.x) * (y - a.y)) / (b.y - a.y));
    });
  }
  cuts.sort((p, q) => p - q);
  const runs: [number, number][] = [];
  for (let k = 0; k + 1 < cuts.length; k += 2) runs.push([cuts[k] as number, cuts[k + 1] as number]);
  return runs;
}

/** How far a point is from the sides of a ring. */
function clearance(p: Spot, ring: readonly Spot[]): number {
  let least = Number.POSITIVE_INFINITY;
  ring.forEach((a, i) => {
    const b = ring[(i + 1) % ring.length] as Spot;
    const [dx, dy] = [b.x - a.x, b.y - a.y];
    const part = ((p.x - a.x) * dx + (p.y - a.y) * dy) / (dx * dx + dy * dy || 1);
    const t = Math.min(1, Math.max(0, part));
    least = Math.min(least, Math.hypot(a.x + t * dx - p.x, a.y + t * dy - p.y));
  });
  return least;
}

/** A number nearer to an edge than this part of the panel is better put elsewhere. */
const CLEAR = 0.1;

/** A place on the panel is farther from every side than this part of the run that it is the middle of. */
const OFF_EDGE = 1e-3;

const LEVELS = [0.5, 0.375, 0.625, 0.25, 0.75, 0.125, 0.875];

/** True for a rectangle with sides along x and y. */
const isBox = (ring: readonly Corner[]): boolean =>
  ring.length === 4 &&
  ring.every((a, i) => {
    const b = ring[(i + 1) % 4] as Corner;
    return i % 2 === (a.y.equals(b.y) ? 0 : 1) && (a.x.equals(b.x) || a.y.equals(b.y));
  });

/** The middle over all where it is slab, else the middle of the widest level run. */
export function placeWithin(ring: readonly Corner[], holes: readonly (readonly Corner[])[]): Corner {
  if (holes.length === 0 && isBox(ring)) {
    const [a, , c] = ring as [Corner, Corner, Corner, Corner];
    return { x: middleOf(a.x, c.x), y: middleOf(a.y, c.y) };
  }
  const box = boxOf(ring);
  const middle = { x: middleOf(...endsOf(ring, 'x')), y: middleOf(...endsOf(ring, 'y')) };
  const rings = [box.ring, ...holes.map((h) => h.map(spot))];
  const room = CLEAR * Math.min(box.hi.x - box.lo.x, box.hi.y - box.lo.y);
  const near = spot(middle);
  const clear = rings.every((r) => clearance(near, r) >= room);
  // So far from every side binary numbers are certain.
  const within = (exact: readonly Corner[], spots: readonly Spot[]): boolean =>
    room > HAIR ? insidePlanRing(near.x, near.y, spots) : insideRing(middle, exact);
  if (clear && [ring, ...holes].every((r, i) => within(r, rings[i] as readonly Spot[]) === (i === 0)))
    return middle;
  let best: { wide: number; at: Corner } = { wide: 0, at: middle };
  for (const level of LEVELS) {
    const y = box.lo.y + (box.hi.y - box.lo.y) * level;
    for (const [a, b] of runsAt(y, rings)) {
      const at = { x: (a + b) / 2, y };
      // A level along a side has its run on that side.
      if (b - a <= best.wide + HAIR || rings.some((r) => clearance(at, r) < OFF_EDGE * (b - a))) continue;
      best = { wide: b - a, at: { x: new Decimal(at.x), y: new Decimal(y) } };
    }
  }
  return best.at;
}

/** Pieces smaller than this, in square meters, come of rounding. */
const SPECK = 1e-7;

/** True where a point lies inside a convex ring, counterclockwise, farther than a hair from its sides. */
const wellInside = ({ x, y }: Spot, convex: readonly Spot[]): boolean =>
  convex.every((a, i) => {
    const b = convex[(i + 1) % convex.length] as Spot;
    return (
      (b.x - a.x) * (y - a.y) - (b.y - a.y) * (x - a.x) > HAIR * (Math.abs(b.x - a.x) + Math.abs(b.y - a.y))
    );
  });

/** True where an counterclockwise ring turns nowhere to the right. */
export const isConvex = (ring: readonly Spot[]): boolean =>
  ring.every((b, i) => {
    const a = ring[(i + ring.length - 1) % ring.length] as Spot;
    const c = ring[(i + 1) % ring.length] as Spot;
    return (b.x - a.x) * (c.y - b.y) - (b.y - a.y) * (c.x - b.x) >= -1e-12;
  });

/** Beyond which sides of a box a spot lies, one bit each. */
const beyond = ({ x, y }: Spot, { lo, hi }: Box): number =>
  (x < lo.x ? 1 : 0) | (x > hi.x ? 2 : 0) | (y < lo.y ? 4 : 0) | (y > hi.y ? 8 : 0);

/**
 * A ring without the corners that lie, with both their neighbors, beyond one side of a box: what it covers
 * inside the box stays the same, and clipping takes as long as there are corners. The first one stays.
 *
 * @param spots - the same corners in binary numbers
 */
export function trimmedTo<T>(ring: readonly T[], spots: readonly Spot[], box: Box): T[] {
  const kept: T[] = [];
  const first = beyond(spots[0] as Spot, box);
  let [before, here] = [0, first];
  for (let i = 0; i < ring.length; i += 1) {
    const after = i + 1 < ring.length ? beyond(spots[i + 1] as Spot, box) : first;
    if (i === 0 || (before & here & after) === 0) {
      kept.push(ring[i] as T);
      before = here;
    }
    here = after;
  }
  return kept;
}

const areas = /*#__PURE__*/ new WeakMap<readonly Corner[], Decimal>();

/** Twice the area of a ring, reckoned once: a round opening has many corners. */
function areaOnce(ring: readonly Corner[]): Decimal {
  const known = areas.get(ring);
  if (known) return known;
  const area = doubleArea(ring).abs();
  areas.set(ring, area);
  return area;
}

const areaLess = ([outer, ...holes]: readonly (readonly Corner[])[]): Decimal =>
  holes.reduce((sum, h) => sum.minus(areaOnce(h)), outer ? areaOnce(outer) : ZERO).div(2);

/** What is left of a cell beside large openings. */
function piecesOf(
  ring: readonly Corner[],
  box: Box,
  large: readonly Hole[],
  area: Decimal,
): (readonly (readonly Corner[])[])[] {
  // Openings well inside stay as they are: they do not meet each other, and part nothing.
  if (large.every((hole) => hole.box.ring.every((p) => wellInside(p, box.ring))))
    return [[ring, ...large.map((hole) => hole.ring)]];
  const openings = large.map(({ ring: corners, box: { ring: spots } }) => ({ ring: corners, spots }));
  const pieces = isConvex(box.ring) ? piecesBeside(ring, openings) : undefined;
  const all = pieces?.reduce((sum, piece) => sum.plus(areaLess(piece)), ZERO);
  if (pieces && all?.minus(area).abs().lessThan(SPECK)) return pieces;
  return partsLess(
    box.ring,
    large.map((h) => trimmedTo(h.box.ring, h.box.ring, box)),
  );
}

/** Area left of a cell: beside all openings, and beside the large ones. */
interface Left {
  readonly area: Decimal;
  readonly beside: Decimal;
}

/** What is left of a cell beside large openings; the pieces come to the exact area of all. */
function partsOf(ring: readonly Corner[], box: Box, large: readonly Hole[], left: Left): Part[] {
  const { area } = left;
  if (large.length === 0) return [{ ring, holes: [], area }];
  const parts = piecesOf(ring, box, large, left.beside).flatMap((piece) => {
    const [outer, ...holes] = piece;
    const less = areaLess(piece);
    return outer && less.toNumber() > SPECK ? [{ ring: outer, holes, area: less }] : [];
  });
  parts.sort((a, b) => b.area.comparedTo(a.area));
  const [first, ...rest] = parts;
  if (!first) return [];
  const others = rest.reduce((sum, p) => sum.plus(p.area), ZERO);
  return [{ ...first, area: area.minus(others) }, ...rest];
}

/** Twice the area that an opening takes from a cell. */
function takenBy(ring: readonly Corner[], box: Box, hole: Hole): Decimal {
  const inside = isBox(ring) && hole.box.ring.every((p) => wellInside(p, box.ring));
  return inside
    ? areaOnce(hole.ring)
    : doubleArea(commonPart(trimmedTo(hole.ring, hole.box.ring, box), ring));
}

type Box4 = readonly [Corner, Corner, Corner, Corner];

/** A whole rectangle: most panels are. */
function plainPanel(ring: Box4, limits: Limits, lines: LinesAt | undefined): CutPanel[] {
  const [a, , c] = ring;
  const [along, across] = [c.x.minus(a.x).abs(), c.y.minus(a.y).abs()];
  const area = along.times(across);
  const [w, h, whole] = [along.toNumber(), across.toNumber(), area.toNumber()];
  if (whole < SPECK) return [];
  const broken = judged(ring, w, h, whole, limits, lines);
  return [{ at: { x: middleOf(a.x, c.x), y: middleOf(a.y, c.y) }, along, across, area, broken }];
}

/**
 * The panels that a cell is cut into.
 *
 * @param ring - the cell as cut from the outline, counterclockwise; convex where holes lie over it
 * @param lines - where joints run; `undefined` where no side is slanted
 */
export function panelsOf(
  ring: readonly Corner[],
  holes: readonly Hole[],
  limits: Limits,
  lines: LinesAt | undefined,
): CutPanel[] {
  const box = boxOf(ring);
  const near = holes.filter((hole) => !boxesApart(box, hole.box));
  if (near.length === 0 && isBox(ring)) return plainPanel(ring as Box4, limits, lines);
  const taken = near.map((hole) => takenBy(ring, box, hole));
  const over = near.filter((_, i) => !same(taken[i] as Decimal, ZERO));
  const whole = doubleArea(ring);
  const area = taken.reduce((sum, part) => sum.minus(part), whole).div(2);
  if (same(area, ZERO) || area.toNumber() < SPECK) return [];
  const large = over.filter((hole) => hole.large);
  const small = over.filter((hole) => !hole.large).map((hole) => hole.ring);
  const bySmall = near.reduce((sum, hole, i) => (hole.large ? sum : sum.plus(taken[i] as Decimal)), ZERO);
  return partsOf(ring, box, large, { area, beside: area.plus(bySmall.div(2)) }).map((part) => {
    const [[west, east], [south, north]] = [endsOf(part.ring, 'x'), endsOf(part.ring, 'y')];
    const [along, across] = [east.minus(west), north.minus(south)];
    // Small openings take nothing from the shape.
    const shape = large.length > 0 ? part.area.toNumber() : whole.abs().div(2).toNumber();
    const broken = judged(
      part.ring,
      along.toNumber(),
      across.toNumber(),
      shape,
      limits,
      large.length > 0 ? (lines ?? { x: [], y: [] }) : lines,
    );
    return { at: placeWithin(part.ring, [...part.holes, ...small]), along, across, area: part.area, broken };
  });
}

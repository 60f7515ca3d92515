/**
 * The slab as a plan of joints is made for: laid down so that the joints run along x and y, openings
 * sorted into those with corners to be met and those that joints are led through, fixed lines found.
 *
 * Points that stand off the line from corner to corner by no more than half an inch are tape noise: the
 * joints are planned as if the side were straight, and the panels cut from the side as it is.
 */

import { type Corner, doubleArea, insideRing } from '../../geometry/polygon';
import type { Outline, Point } from '../../outline/outline';
import type { Opening, Rings } from '../../outline/region';
import { Decimal, PI, ZERO } from '../../quantity/decimal';
import { canonicalValue, type Quantity } from '../../quantity/quantity';
import { refuse } from '../../reckoning/calculation';
import * as faults from '../faults';
import { STRAIGHT, same, type Turn } from './exact';
import { type Pose, poseOf, startsOf } from './pose';
import { circleSides, KINK, movedSides, type Side, sidesOf, straightSides } from './sides';
import type { Axis } from './space';
import { directionAt } from './unit-circle';

/** What a straight joint is. */
export type FixedType = 'contraction' | 'construction' | 'isolation';

/** An opening placed in the turned plane. */
interface PlacedOpening {
  readonly ring: readonly Corner[];
  readonly center: Corner;
  readonly perimeter: Decimal;
  /** Corners that joints must meet, of an opening too large to be led through; none of a round one. */
  readonly corners: readonly Corner[];
  /** Its sides run along x and y, in a slab whose sides do: it is a part of the raster. */
  readonly cornered: boolean;
  /** Joints must be led through both ways. */
  readonly bothWays: boolean;
  /** Joints may pass it by, which breaks a rule. */
  readonly spared?: boolean;
  /** Its edge with its arcs. */
  readonly sides: readonly Side[];
}

/** A line that must be, and what it is over part of its length. */
interface FixedLine {
  readonly axis: Axis;
  readonly at: Decimal;
  readonly from: Decimal;
  readonly to: Decimal;
  readonly type: FixedType;
  readonly path: string;
}

/** The slab, ready to be divided. */
export interface Site {
  readonly pose: Pose;
  /** The outline as planned: without tape noise where its sides run along x and y. */
  readonly ring: readonly Corner[];
  /** The outline as it is. */
  readonly edge: readonly Corner[];
  /** Small notches of the outline are filled in what is planned. */
  readonly filled?: boolean;
  /** The edge of the outline with its arcs. */
  readonly sides: readonly Side[];
  readonly openings: readonly PlacedOpening[];
  /** All sides of the outline run along x or y. */
  readonly orthogonal: boolean;
  readonly fixed: readonly FixedLine[];
  /** Places where joints of the neighboring slab end: a line must go on from each. */
  readonly continued: readonly { readonly axis: Axis; readonly at: Decimal }[];
}

/** A fixed joint, read. */
interface FixedJoint {
  readonly type: FixedType;
  readonly from: Point;
  readonly to: Point;
}

/** What the site is made of. */
export interface SiteInput {
  readonly outline: Outline;
  readonly openings: readonly Opening[] | undefined;
  /** Both as rings. */
  readonly rings: Rings;
  readonly columns: ReadonlySet<number>;
  readonly direction: Quantity<'angle'> | undefined;
  readonly fixed: readonly FixedJoint[];
  readonly continued: readonly Point[];
  readonly leastSide: Decimal;
}

/** Sides along x or y, after setting straight what the 60th digit bends. */
function straightened(ring: readonly Corner[]): Corner[] {
  const out = ring.map(({ x, y }) => ({ x, y }));
  for (let i = 0; i < out.length; i += 1) {
    const a = out[i] as { x: Decimal; y: Decimal };
    const b = out[(i + 1) % out.length] as { x: Decimal; y: Decimal };
    if (same(a.x, b.x)) b.x = a.x;
    if (same(a.y, b.y)) b.y = a.y;
  }
  const [first, last] = [out[0], out.at(-1)] as [{ x: Decimal; y: Decimal }, { x: Decimal; y: Decimal }];
  if (same(first.x, last.x)) first.x = last.x;
  if (same(first.y, last.y)) first.y = last.y;
  return out;
}

/** Corners on a straight side are no corners; sides that fold are not looked for here. */
function withoutFlat(ring: readonly Corner[]): Corner[] {
  return ring.filter((b, i) => {
    const a = ring[(i + ring.length - 1) % ring.length] as Corner;
    const c = ring[(i + 1) % ring.length] as Corner;
    return !(same(a.x, b.x) && same(b.x, c.x)) && !(same(a.y, b.y) && same(b.y, c.y));
  });
}

const alongAxes = (ring: readonly Corner[]): boolean =>
  ring.every((a, i) => {
    const b = ring[(i + 1) % ring.length] as Corner;
    return same(a.x, b.x) || same(a.y, b.y);
  });

/** Sides as long as this part of the longest are as long as it. */
const AS_LONG = 1e-9;

/** With more sides as long as each other the shape is as good as round, and any of them serves. */
const MOST_TURNS = 12;

/** The directions of the longest sides, to the right rather than to the left. */
function longestSides(ring: readonly Corner[]): Turn[] {
  const sides = ring.map((a, i) => {
    const b = ring[(i + 1) % ring.length] as Corner;
    const [dx, dy] = [b.x.minus(a.x), b.y.minus(a.y)];
    return { dx, dy, square: dx.times(dx).plus(dy.times(dy)) };
  });
  const most = Decimal.max(...sides.map((s) => s.square));
  const longest = sides.filter((s) => s.square.greaterThanOrEqualTo(most.times(1 - AS_LONG)));
  return (longest.length > MOST_TURNS ? longest.slice(0, 1) : longest).map(({ dx, dy, square }) => {
    const long = square.sqrt();
    const way = dx.isNegative() ? long.neg() : long;
    return { cos: dx.div(way), sin: dy.div(way) };
  });
}

function turnsFor(ring: readonly Corner[], direction: Quantity<'angle'> | undefined): Turn[] {
  if (direction) {
    const degrees = canonicalValue(direction);
    if (degrees.mod(90).isZero()) return [STRAIGHT];
    const radians = degrees.mod(180).times(PI).div(180);
    const { x: cos, y: sin } = directionAt(radians);
    return [{ cos, sin }];
  }
  return alongAxes(ring) ? [STRAIGHT] : longestSides(ring);
}

/** Degrees of the turn at each corner, to the left if positive. */
function turnsAt(ring: readonly Corner[]): number[] {
  const o = ring[0] as Corner;
  const spots = ring.map(({ x, y }) => [x.minus(o.x).toNumber(), y.minus(o.y).toNumber()] as const);
  return spots.map(([x, y], i) => {
    const [ax, ay] = spots[(i + spots.length - 1) % spots.length] as readonly [number, number];
    const [cx, cy] = spots[(i + 1) % spots.length] as readonly [number, number];
    const [ux, uy, vx, vy] = [x - ax, y - ay, cx - x, cy - y];
    return (Math.atan2(ux * vy - uy * vx, ux * vx + uy * vy) * 180) / Math.PI;
  });
}

/** More than a kink: tape noise, and an arc in short chords, make no corners. */
const isCorner = (turn: number): boolean => Math.abs(turn) > KINK + 1e-6;

/** Corners of an counterclockwise ring where it turns to the right: inside corners of an outline. */
export function insideCorners(ring: readonly Corner[]): Corner[] {
  const turns = turnsAt(ring);
  return ring.filter((_, i) => isCorner(turns[i] as number) && (turns[i] as number) < 0);
}

/** Corners of an counterclockwise ring that stick out: of an opening, inside corners of the slab. */
function outsideCorners(ring: readonly Corner[]): Corner[] {
  const turns = turnsAt(ring);
  return ring.filter((_, i) => isCorner(turns[i] as number) && (turns[i] as number) > 0);
}

/** What a tape is off by at most: half an inch. */
const TAPE = 0.0127;

function offLine(p: Corner, a: Corner, b: Corner): number {
  const [dx, dy] = [b.x.minus(a.x).toNumber(), b.y.minus(a.y).toNumber()];
  const [px, py] = [p.x.minus(a.x).toNumber(), p.y.minus(a.y).toNumber()];
  return Math.abs(px * dy - py * dx) / Math.hypot(dx, dy);
}

/** The ring without points that stand off the line from corner to corner by no more than a tape's error. */
function withoutNoise(ring: readonly Corner[]): Corner[] {
  const turns = turnsAt(ring);
  const corners = turns.flatMap((turn, i) => (isCorner(turn) ? [i] : []));
  if (corners.length < 3) return [...ring];
  return corners.flatMap((from, k) => {
    const to = corners[(k + 1) % corners.length] as number;
    const count = (to - from + ring.length) % ring.length;
    const between = Array.from({ length: count - 1 }, (_, j) => ring[(from + 1 + j) % ring.length] as Corner);
    const [a, b] = [ring[from] as Corner, ring[to] as Corner];
    return between.every((p) => offLine(p, a, b) <= TAPE) ? [a] : [a, ...between];
  });
}

const extentOf = (ring: readonly Corner[], axis: Axis): [Decimal, Decimal] => {
  const values = ring.map((c) => c[axis]);
  return [Decimal.min(...values), Decimal.max(...values)];
};

const perimeterOfRing = (ring: readonly Corner[]): Decimal =>
  ring.reduce((sum, a, i) => {
    const b = ring[(i + 1) % ring.length] as Corner;
    return sum.plus(Decimal.hypot(b.x.minus(a.x), b.y.minus(a.y)));
  }, ZERO);

/** Across a round opening; the hole of a ring comes after the openings given. */
function acrossRound({ openings = [], outline }: SiteInput, index: number): Decimal | undefined {
  const opening = openings[index];
  if (opening) return opening.shape === 'circle' ? canonicalValue(opening.diameter) : undefined;
  if (outline.shape === 'ring') return canonicalValue(outline.innerDiameter);
  return outline.shape === 'sector' && outline.innerRadius
    ? canonicalValue(outline.innerRadius).times(2)
    : undefined;
}

function placed(ring: readonly Corner[], input: SiteInput, index: number): PlacedOpening {
  const [x0, x1] = extentOf(ring, 'x');
  const [y0, y1] = extentOf(ring, 'y');
  const small = [x1.minus(x0), y1.minus(y0)].every((side) => side.lessThanOrEqualTo(input.leastSide));
  const column = input.columns.has(index);
  const diameter = acrossRound(input, index);
  const center = { x: x0.plus(x1).div(2), y: y0.plus(y1).div(2) };
  return {
    ring,
    center,
    perimeter: diameter ? diameter.times(PI) : perimeterOfRing(ring),
    corners: small || column || diameter ? [] : outsideCorners(ring),
    cornered: !small && !column && alongAxes(ring),
    bothWays: column,
    sides: diameter ? circleSides(center, diameter.div(2)) : straightSides(ring),
  };
}

const cornerOf = ({ x, y }: Point): Corner => ({ x: canonicalValue(x), y: canonicalValue(y) });

/** Where a fixed joint lies, in the turned plane. */
function fixedLine(joint: FixedJoint, pose: Pose, path: string): FixedLine {
  const at = (p: Point): Corner => pose.in(cornerOf(p));
  const [a, b] = [at(joint.from), at(joint.to)];
  const axis: Axis | undefined = same(a.x, b.x) ? 'x' : same(a.y, b.y) ? 'y' : undefined;
  if (!axis || (same(a.x, b.x) && same(a.y, b.y))) return refuse(path, faults.jointNotSquare());
  const across = axis === 'x' ? 'y' : 'x';
  const [from, to] = [Decimal.min(a[across], b[across]), Decimal.max(a[across], b[across])];
  return { axis, at: a[axis], from, to, type: joint.type, path };
}

/** True when a point lies on a side of the ring, to the 40th digit. */
function onRing(point: Corner, ring: readonly Corner[]): boolean {
  return ring.some((a, i) => {
    const b = ring[(i + 1) % ring.length] as Corner;
    return onSide(point, a, b);
  });
}

/** True when a point lies on the side from a to b. */
export function onSide(point: Corner, a: Corner, b: Corner): boolean {
  const cross = b.x
    .minus(a.x)
    .times(point.y.minus(a.y))
    .minus(b.y.minus(a.y).times(point.x.minus(a.x)));
  if (!same(cross, ZERO)) return false;
  const dot = (p: Corner, q: Corner): Decimal =>
    p.x
      .minus(point.x)
      .times(q.x.minus(point.x))
      .plus(p.y.minus(point.y).times(q.y.minus(point.y)));
  return dot(a, b).lessThanOrEqualTo(0) || same(dot(a, b), ZERO);
}

/** A fixed joint runs through the slab from edge to edge (or to an opening). */
function checkRuns(line: FixedLine, rings: readonly (readonly Corner[])[]): void {
  const point = (v: Decimal): Corner => (line.axis === 'x' ? { x: line.at, y: v } : { x: v, y: line.at });
  const middle = point(line.from.plus(line.to).div(2));
  const outer = rings[0] as readonly Corner[];
  if (!insideRing(middle, outer) || onRing(middle, outer)) refuse(line.path, faults.jointOffSlab());
  for (const v of [line.from, line.to]) {
    const stop = point(v);
    if (!onRing(stop, outer) && !insideRing(stop, outer)) refuse(line.path, faults.jointOffSlab());
    if (!rings.some((ring) => onRing(stop, ring))) refuse(line.path, faults.jointEndsInside());
  }
}

/** Two fixed joints side by side with a sliver between, or two kinds of joint in one place. */
function checkConflicts(lines: readonly FixedLine[], leastSide: Decimal): void {
  lines.forEach((a, i) => {
    for (const b of lines.slice(0, i)) {
      if (a.axis !== b.axis || a.from.greaterThanOrEqualTo(b.to) || b.from.greaterThanOrEqualTo(a.to))
        continue;
      const apart = a.at.minus(b.at).abs();
      const clash = same(apart, ZERO) ? a.type !== b.type : apart.lessThan(leastSide);
      if (clash) refuse(a.path, faults.jointsConflict(b.path));
    }
  });
}

/** The side that a joint of the neighboring slab comes up to, and so the way that it goes on. */
function continuedFrom(
  point: Point,
  pose: Pose,
  ring: readonly Corner[],
  path: string,
): Site['continued'][number] {
  const at = pose.in(cornerOf(point));
  for (let i = 0; i < ring.length; i += 1) {
    const [a, b] = [ring[i] as Corner, ring[(i + 1) % ring.length] as Corner];
    if (!onSide(at, a, b)) continue;
    const axis: Axis = b.x.minus(a.x).abs().greaterThan(b.y.minus(a.y).abs()) ? 'x' : 'y';
    return { axis, at: at[axis] };
  }
  return refuse(path, faults.offEdge());
}

/** Openings with more corners than this are told apart by their middles. */
const FEW_CORNERS = 12;

const meanOf = (ring: readonly Corner[]): Corner => ({
  x: Decimal.sum(...ring.map((c) => c.x)).div(ring.length),
  y: Decimal.sum(...ring.map((c) => c.y)).div(ring.length),
});

/** A ring in the pose, counterclockwise. */
function laid(ring: readonly Corner[], pose: Pose): Corner[] {
  const there = straightened(ring.map((c) => pose.in(c)));
  return pose.mirrored ? there.reverse() : there;
}

/** Corners that are nearer than this have one place. */
const ONE_PLACE = 1e-9;

/** A ring of sides from its first corner in the pose on: where the input began to name them means nothing. */
function fromFirst(sides: readonly Side[]): Side[] {
  const places = sides.map(({ from }) => [from.x.toNumber(), from.y.toNumber()] as const);
  let first = 0;
  for (const [i, [x, y]] of places.entries()) {
    const [u, v] = places[first] as (typeof places)[number];
    if (x < u - ONE_PLACE || (x < u + ONE_PLACE && y < v - ONE_PLACE)) first = i;
  }
  return [...sides.slice(first), ...sides.slice(0, first)];
}

function sitedIn(
  pose: Pose,
  outer: readonly Corner[],
  openings: readonly (readonly Corner[])[],
  input: SiteInput,
): Site {
  const edge = withoutFlat(laid(outer, pose));
  const smooth = withoutNoise(edge);
  const orthogonal = alongAxes(smooth);
  const holes = openings.map((r, i) => placed(laid(r, pose), input, i));
  const all = [edge, ...holes.map((o) => o.ring)];
  const fixed = input.fixed.map((joint, i) => fixedLine(joint, pose, `fixed[${i}]`));
  for (const line of fixed) checkRuns(line, all);
  checkConflicts(fixed, input.leastSide);
  const continued = input.continued.map((p, i) => continuedFrom(p, pose, edge, `continued[${i}]`));
  const settled = orthogonal ? holes : holes.map((o) => ({ ...o, cornered: false }));
  const turnedBy = (angle: Decimal): Decimal => pose.angleIn(angle);
  const moved = movedSides(sidesOf(input.outline, outer), (c) => pose.in(c), turnedBy, pose.mirrored);
  const sides = fromFirst(moved);
  return {
    pose,
    ring: orthogonal ? smooth : edge,
    edge,
    sides,
    openings: settled,
    orthogonal,
    fixed,
    continued,
  };
}

/**
 * Place a slab for its plan of joints: in one pose, or where a pattern starts from a corner in the four that
 * put each corner first.
 *
 * @throws {InputError} `joint-not-square`, `off-slab`, `ends-inside`,
 * `joints-conflict`, `off-edge`
 */
export function sitesOf(input: SiteInput, fromCorner: boolean): Site[] {
  const { outer, openings } = input.rings;
  const turns = turnsFor(withoutNoise(withoutFlat(outer)), input.direction);
  const marked = openings.map((ring) => (ring.length > FEW_CORNERS ? [meanOf(ring)] : ring));
  const others = [
    ...marked.flat(),
    ...input.fixed.flatMap((f) => [f.from, f.to]).map(cornerOf),
    ...input.continued.map(cornerOf),
  ];
  const pose = poseOf(turns, outer, others);
  const poses = fromCorner ? startsOf(pose, outer) : [pose];
  return poses.map((p) => sitedIn(p, outer, openings, input));
}

/** Area of a ring. */
export const ringArea = (ring: readonly Corner[]): Decimal => doubleArea(ring).abs().div(2);

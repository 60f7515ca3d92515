/**
 * The slab as a plan of joints is made for: turned so that the joints run along x and y, openings
 * sorted into those with corners to be met and those that joints are led through, fixed lines found.
 */
import type { Outline, Point } from '../../geometry/outline';
import { type Corner, doubleArea, insideRing } from '../../geometry/polygon';
import type { Opening } from '../../geometry/region';
import { ringsOf } from '../../geometry/region';
import { Decimal, PI, ZERO } from '../../quantity/decimal';
import * as faults from '../../quantity/faults';
import { canonicalValue, type Quantity } from '../../quantity/quantity';
import { refuse } from '../../reckoning/calculation';
import { isStraight, STRAIGHT, same, type Turn, turnedIn } from './exact';
import type { Axis } from './space';

/** What a straight joint is. */
export type FixedType = 'contraction' | 'construction' | 'isolation';

/** An opening placed in the turned plane. */
interface PlacedOpening {
  readonly ring: readonly Corner[];
  readonly centre: Corner;
  readonly perimeter: Decimal;
  /** Its corners are re-entrant corners of the slab; otherwise joints are led through its centre. */
  readonly cornered: boolean;
  /** Joints must be led through both ways. */
  readonly bothWays: boolean;
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
  readonly turn: Turn;
  readonly ring: readonly Corner[];
  readonly openings: readonly PlacedOpening[];
  /** All sides of the outline run along x or y. */
  readonly orthogonal: boolean;
  readonly fixed: readonly FixedLine[];
  /** Places where joints of the neighbouring slab end: a line must go on from each. */
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

/** The direction of the longest side, to the right rather than to the left. */
function longestSide(ring: readonly Corner[]): Turn {
  let [best, turn] = [ZERO, STRAIGHT];
  ring.forEach((a, i) => {
    const b = ring[(i + 1) % ring.length] as Corner;
    const [dx, dy] = [b.x.minus(a.x), b.y.minus(a.y)];
    const square = dx.times(dx).plus(dy.times(dy));
    if (square.greaterThan(best)) {
      const long = square.sqrt();
      best = square;
      const way = dx.isNegative() ? long.neg() : long;
      turn = { cos: dx.div(way), sin: dy.div(way) };
    }
  });
  return turn;
}

function turnFor(ring: readonly Corner[], direction: Quantity<'angle'> | undefined): Turn {
  if (direction) {
    const degrees = canonicalValue(direction);
    if (degrees.mod(90).isZero()) return STRAIGHT;
    const radians = degrees.mod(180).times(PI).div(180);
    return { cos: Decimal.cos(radians), sin: Decimal.sin(radians) };
  }
  return alongAxes(ring) ? STRAIGHT : longestSide(ring);
}

const turned = (ring: readonly Corner[], turn: Turn): Corner[] =>
  isStraight(turn) ? [...ring] : straightened(ring.map((c) => turnedIn(c, turn)));

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
  return {
    ring,
    centre: { x: x0.plus(x1).div(2), y: y0.plus(y1).div(2) },
    perimeter: diameter ? diameter.times(PI) : perimeterOfRing(ring),
    cornered: !small && !column && alongAxes(ring),
    bothWays: column,
  };
}

/** Where a fixed joint lies, in the turned plane. */
function fixedLine(joint: FixedJoint, turn: Turn, path: string): FixedLine {
  const at = (p: Point): Corner => turnedIn({ x: canonicalValue(p.x), y: canonicalValue(p.y) }, turn);
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

/** The side that a joint of the neighbouring slab comes up to, and so the way that it goes on. */
function continuedFrom(
  point: Point,
  turn: Turn,
  ring: readonly Corner[],
  path: string,
): Site['continued'][number] {
  const at = turnedIn({ x: canonicalValue(point.x), y: canonicalValue(point.y) }, turn);
  for (let i = 0; i < ring.length; i += 1) {
    const [a, b] = [ring[i] as Corner, ring[(i + 1) % ring.length] as Corner];
    if (!onSide(at, a, b)) continue;
    const axis: Axis = b.x.minus(a.x).abs().greaterThan(b.y.minus(a.y).abs()) ? 'x' : 'y';
    return { axis, at: at[axis] };
  }
  return refuse(path, faults.offEdge());
}

/**
 * Place a slab for its plan of joints.
 *
 * @throws {InputError} as `ringsOf` does; `joint-not-square`, `off-slab`, `ends-inside`,
 * `joints-conflict`, `off-edge`
 */
export function siteOf(input: SiteInput): Site {
  const region = { outline: input.outline, openings: input.openings };
  const rings = ringsOf(region);
  const turn = turnFor(rings.outer, input.direction);
  const ring = withoutFlat(turned(rings.outer, turn));
  const openings = rings.openings.map((r, i) => placed(turned(r, turn), input, i));
  const orthogonal = alongAxes(ring);
  const all = [ring, ...openings.map((o) => o.ring)];
  const fixed = input.fixed.map((joint, i) => fixedLine(joint, turn, `fixed[${i}]`));
  for (const line of fixed) checkRuns(line, all);
  checkConflicts(fixed, input.leastSide);
  const continued = input.continued.map((p, i) => continuedFrom(p, turn, ring, `continued[${i}]`));
  const settled = orthogonal ? openings : openings.map((o) => ({ ...o, cornered: false }));
  return { turn, ring, openings: settled, orthogonal, fixed, continued };
}

/** Area of a ring. */
export const ringArea = (ring: readonly Corner[]): Decimal => doubleArea(ring).abs().div(2);

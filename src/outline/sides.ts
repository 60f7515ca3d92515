/**
 * The sides of an outline in order, as forms are set along them: how long each is, and how round.
 *
 * A rectangle has its length first; an L and a U go around counterclockwise from the corner they are taped from. A
 * circle is one side, a ring its outer and its inner one. Corners, tapes, legs and curves go in the order in which they
 * are given.
 */
import { type Decimal, PI } from '../quantity/decimal';
import { canonicalValue, type Quantity, quantityOf } from '../quantity/quantity';
import type { System } from '../quantity/units';
import { refuse } from '../reckoning/calculation';
import { cornersOf } from './corners';
import { edgesOf } from './curved';
import * as faults from './faults';
import { checkFits } from './fits';
import type { Outline, OutlineOf } from './outline';
import { ringOf } from './ring';

type Length = Quantity<'length'>;

/** One side of an outline. */
export interface Side {
  readonly length: Length;
  /** Left out where it is straight. */
  readonly radius?: Length;
  /** True for a side that closes on itself. */
  readonly closed?: true;
}

const straight = (length: Length): Side => ({ length });

interface Sized {
  readonly q: (meters: Decimal) => Length;
}

const round = (radius: Length, turn: Decimal, { q }: Sized): Side => ({
  length: q(canonicalValue(radius).times(turn)),
  radius,
  ...(turn.equals(PI.times(2)) ? { closed: true as const } : {}),
});

const half = (diameter: Length, { q }: Sized): Length => q(canonicalValue(diameter).div(2));

function sector({ radius, angle, innerRadius }: OutlineOf<'sector'>, sized: Sized): Side[] {
  const turn = canonicalValue(angle).times(PI).div(180);
  const outer = round(radius, turn, sized);
  if (outer.closed) return [outer];
  const inner = innerRadius ? [round(innerRadius, turn, sized)] : [];
  const ray = straight(innerRadius ? radius.minus(innerRadius) : radius);
  return [outer, ray, ...inner, ray];
}

function around(outline: Outline, path: string, { q }: Sized): Side[] {
  // A ring runs counterclockwise; corners that are given count as they are given.
  const ring = outline.shape === 'polygon' ? cornersOf(outline.points) : ringOf(outline, path);
  return ring.map((from, i) => {
    const to = ring[(i + 1) % ring.length] as typeof from;
    return straight(q(to.x.minus(from.x).pow(2).plus(to.y.minus(from.y).pow(2)).sqrt()));
  });
}

function curved({ points }: OutlineOf<'curved'>, path: string, { q }: Sized): Side[] {
  return edgesOf(points, cornersOf(points), `${path}.points`).map(({ arc, chord }) =>
    arc ? { length: q(arc.length), radius: q(arc.radius) } : straight(q(chord)),
  );
}

/**
 * The sides of an outline in order.
 *
 * @param path - where the outline stands in the input, for errors
 * @throws {InputError} as `ringOf` does; `not-placed` for outlines whose sides are not told
 */
export function sidesOf(outline: Outline, system: System, path = 'outline'): Side[] {
  checkFits(outline, path);
  const sized: Sized = { q: (meters) => quantityOf('length', meters, system) };
  const full = PI.times(2);
  switch (outline.shape) {
    case 'rectangle':
      return [outline.length, outline.width, outline.length, outline.width].map(straight);
    case 'circle':
      return [round(half(outline.diameter, sized), full, sized)];
    case 'ring':
      return [outline.outerDiameter, outline.innerDiameter].map((d) => round(half(d, sized), full, sized));
    case 'sector':
      return sector(outline, sized);
    case 'triangle':
    case 'taped':
      ringOf(outline, path);
      return outline.sides.map(straight);
    case 'walk':
      ringOf(outline, path);
      return outline.legs.map(({ length }) => straight(length));
    case 'regular':
      return Array.from({ length: canonicalValue(outline.sides).toNumber() }, () => straight(outline.side));
    case 'trapezoid':
      // The slant sides hang on how far the one parallel is shifted, which is not told.
      return refuse(path, faults.slantUnknown());
    case 'L':
    case 'U':
      return around(outline, path, sized);
    case 'polygon':
      ringOf(outline, path);
      return around(outline, path, sized);
    case 'curved':
      ringOf(outline, path);
      return curved(outline, path, sized);
    case 'area':
    case 'offsets':
    case 'combined':
      return refuse(path, faults.sidesUnknown());
  }
}

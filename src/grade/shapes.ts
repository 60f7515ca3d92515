/**
 * Surfaces that forms are set to, each in closed form.
 *
 * A plane through three points, or through one with a slope along x and along y; two planes that
 * meet at a ridge or valley line; a warped quad, bilinear between its four corners, as a screed
 * makes it that rides on two opposite forms; and a fall to a drain, `z = z₀ + s × distance`.
 */
import { Decimal } from '../quantity/decimal';
import * as sharedFaults from '../quantity/faults';
import { canonicalValue, type Quantity, type QuantityInput } from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import { type Field, fields, kinds, label, list, maybe, quantity, word } from '../reckoning/fields';
import * as faults from './faults';

/** A point whose elevation is fixed: a threshold, a walk, a driveway, a drain. */
export interface FixedPointInput {
  /** What the point is called. */
  readonly name: string;
  /** How far along the point lies. */
  readonly x: QuantityInput<'length'>;
  /** How far across the point lies. */
  readonly y: QuantityInput<'length'>;
  /** Elevation of the surface there. */
  readonly elevation: QuantityInput<'length'>;
}

/** A plane through three fixed points. */
export interface PlaneInput {
  /** Always `plane`. */
  readonly kind: 'plane';
  /** Three points that are not in one line. */
  readonly through: readonly FixedPointInput[];
}

/** A plane through one fixed point that falls along x and y. */
export interface SlopedPlaneInput {
  /** Always `sloped-plane`. */
  readonly kind: 'sloped-plane';
  /** The point that the plane passes through. */
  readonly at: FixedPointInput;
  /** Fall toward greater x; negative for a rise. */
  readonly alongX: QuantityInput<'slope'>;
  /** Fall toward greater y; negative for a rise. */
  readonly alongY: QuantityInput<'slope'>;
}

/** Two planes that fall away from a ridge, or down to a valley. */
export interface FoldInput {
  /** `ridge` where both fall away from the line, `valley` where both fall to it. */
  readonly kind: 'ridge' | 'valley';
  /** Two points of the line where they meet. */
  readonly line: readonly FixedPointInput[];
  /** Slope square to the line on the left, seen from the first point. */
  readonly left: QuantityInput<'slope'>;
  /** Slope square to the line on the right. */
  readonly right: QuantityInput<'slope'>;
}

/** A warped surface between four corners in order around it. */
export interface WarpedInput {
  /** Always `warped-quad`. */
  readonly kind: 'warped-quad';
  /** Four corners in order around; none bent inwards. */
  readonly corners: readonly FixedPointInput[];
}

/** A fall to a drain at one slope from all around. */
export interface DrainFallInput {
  /** Always `fall-to-drain`. */
  readonly kind: 'fall-to-drain';
  /** Where the drain is, and its elevation. */
  readonly drain: FixedPointInput;
  /** Slope straight down to the drain. */
  readonly slope: QuantityInput<'slope'>;
}

/** A surface in closed form. */
export type FormSurfaceInput = PlaneInput | SlopedPlaneInput | FoldInput | WarpedInput | DrainFallInput;

type Length = Quantity<'length'>;
type Slope = Quantity<'slope'>;

/** A fixed point, read. */
export interface FixedPoint {
  readonly name: string;
  readonly x: Length;
  readonly y: Length;
  readonly elevation: Length;
}

/** A surface, read. */
export type FormSurface =
  | { readonly kind: 'plane'; readonly through: readonly FixedPoint[] }
  | { readonly kind: 'sloped-plane'; readonly at: FixedPoint; readonly alongX: Slope; readonly alongY: Slope }
  | {
      readonly kind: 'ridge' | 'valley';
      readonly line: readonly FixedPoint[];
      readonly left: Slope;
      readonly right: Slope;
    }
  | { readonly kind: 'warped-quad'; readonly corners: readonly FixedPoint[] }
  | { readonly kind: 'fall-to-drain'; readonly drain: FixedPoint; readonly slope: Slope };

/** A fixed point's schema. */
export const fixedPoint = (): Field<FixedPoint> =>
  fields({
    name: label('name'),
    x: quantity('length', 'x', 'any'),
    y: quantity('length', 'y', 'any'),
    elevation: quantity('length', 'elevation', 'any'),
  });

const folds = (kind: 'ridge' | 'valley'): Field<FormSurface> =>
  fields({
    kind: word(kind),
    line: list(fixedPoint(), 2, 2),
    left: quantity('slope', 'left', 'not-negative'),
    right: quantity('slope', 'right', 'not-negative'),
  }) as Field<FormSurface>;

/** The schema of a surface. */
export const formSurface = (): Field<FormSurface | undefined> =>
  maybe(
    kinds('kind', [
      fields({ kind: word('plane'), through: list(fixedPoint(), 3, 3) }) as Field<FormSurface>,
      fields({
        kind: word('sloped-plane'),
        at: fixedPoint(),
        alongX: quantity('slope', 'alongX', 'any'),
        alongY: quantity('slope', 'alongY', 'any'),
      }) as Field<FormSurface>,
      folds('ridge'),
      folds('valley'),
      fields({ kind: word('warped-quad'), corners: list(fixedPoint(), 4, 4) }) as Field<FormSurface>,
      fields({
        kind: word('fall-to-drain'),
        drain: fixedPoint(),
        slope: quantity('slope', 'slope', 'not-negative'),
      }) as Field<FormSurface>,
    ]),
  );

/** A point in meters. */
export interface Spot {
  readonly x: Decimal;
  readonly y: Decimal;
  readonly z: Decimal;
}

/** A fixed point in meters. */
export const spotOf = (p: FixedPoint): Spot => ({
  x: canonicalValue(p.x),
  y: canonicalValue(p.y),
  z: canonicalValue(p.elevation),
});

/** A slope as rise over run. */
export const rate = (slope: Slope): Decimal => canonicalValue(slope).div(12);

/** Elevation in meters over a point in meters. */
export type Elevation = (x: Decimal, y: Decimal) => Decimal;

/** A plane `z = z₀ − p × (x − x₀) − q × (y − y₀)`. */
export interface Plane {
  readonly at: Spot;
  readonly p: Decimal;
  readonly q: Decimal;
}

/** Elevations of a plane. */
export const onPlane =
  ({ at, p, q }: Plane): Elevation =>
  (x, y) =>
    at.z.minus(p.times(x.minus(at.x))).minus(q.times(y.minus(at.y)));

/** The plane through three points. @throws {InputError} `collinear-spots`, `conflicting-spots` */
export function planeThrough(points: readonly FixedPoint[], path: string): Plane {
  const [a, b, c] = points.map(spotOf) as [Spot, Spot, Spot];
  const [bx, by, bz] = [b.x.minus(a.x), b.y.minus(a.y), b.z.minus(a.z)];
  const [cx, cy, cz] = [c.x.minus(a.x), c.y.minus(a.y), c.z.minus(a.z)];
  const cross = bx.times(cy).minus(by.times(cx));
  if (cross.isZero()) refuse(path, faults.collinearSpots(points.map(({ name }) => name)));
  return {
    at: a,
    p: by.times(cz).minus(bz.times(cy)).div(cross),
    q: bz.times(cx).minus(bx.times(cz)).div(cross),
  };
}

function fold(surface: Extract<FormSurface, { kind: 'ridge' | 'valley' }>): Elevation {
  const [a, b] = surface.line.map(spotOf) as [Spot, Spot];
  const [dx, dy] = [b.x.minus(a.x), b.y.minus(a.y)];
  const long = Decimal.hypot(dx, dy);
  if (long.isZero()) refuse('surface.line', sharedFaults.repeatedPoint(1));
  const sign = surface.kind === 'ridge' ? -1 : 1;
  const [left, right] = [rate(surface.left), rate(surface.right)];
  return (x, y) => {
    const [px, py] = [x.minus(a.x), y.minus(a.y)];
    const along = px.times(dx).plus(py.times(dy)).div(long.times(long));
    const off = dx.times(py).minus(dy.times(px)).div(long);
    const side = off.isNegative() ? right : left;
    return a.z.plus(b.z.minus(a.z).times(along)).plus(side.times(off.abs()).times(sign));
  };
}

interface Way {
  readonly x: Decimal;
  readonly y: Decimal;
}

const cross = (a: Way, b: Way): Decimal => a.x.times(b.y).minus(a.y.times(b.x));

const from = (a: Way, b: Way): Way => ({ x: b.x.minus(a.x), y: b.y.minus(a.y) });

/** How far across from the first side to the one opposite, from 0 to 1, where the quad has the point. */
function acrossQuad(e: Way, f: Way, g: Way, h: Way): Decimal {
  const [k2, k1, k0] = [cross(g, f), cross(e, f).plus(cross(h, g)), cross(h, e)];
  const straight = k2.abs().lessThanOrEqualTo(k1.abs().times('1e-30'));
  if (straight) return k0.neg().div(k1);
  const root = Decimal.max(k1.times(k1).minus(k2.times(k0).times(4)), 0).sqrt();
  const [one, two] = [root, root.neg()].map((r) => r.minus(k1).div(k2.times(2))) as [Decimal, Decimal];
  const off = (v: Decimal): Decimal => v.minus('0.5').abs();
  return off(one).lessThan(off(two)) ? one : two;
}

function warped(corners: readonly FixedPoint[]): Elevation {
  const [a, b, c, d] = corners.map(spotOf) as [Spot, Spot, Spot, Spot];
  const turns = [
    cross(from(a, b), from(b, c)),
    cross(from(b, c), from(c, d)),
    cross(from(c, d), from(d, a)),
    cross(from(d, a), from(a, b)),
  ];
  const bent = turns.some((t) => t.isZero()) || turns.some((t) => t.isNegative() !== turns[0]?.isNegative());
  if (bent) refuse('surface.corners', faults.collinearSpots(corners.map(({ name }) => name)));
  // Bilinear: point = a + u·e + v·f + u·v·g, where u runs along the first side and v across.
  const [e, f] = [from(a, b), from(a, d)];
  const g: Way = { x: a.x.minus(b.x).plus(c.x).minus(d.x), y: a.y.minus(b.y).plus(c.y).minus(d.y) };
  return (x, y) => {
    const h = from(a, { x, y });
    const v = acrossQuad(e, f, g, h);
    const [sx, sy] = [e.x.plus(g.x.times(v)), e.y.plus(g.y.times(v))];
    const u = sx.abs().greaterThan(sy.abs())
      ? h.x.minus(f.x.times(v)).div(sx)
      : h.y.minus(f.y.times(v)).div(sy);
    const twist = a.z.minus(b.z).plus(c.z).minus(d.z);
    return a.z.plus(b.z.minus(a.z).times(u)).plus(d.z.minus(a.z).times(v)).plus(twist.times(u).times(v));
  };
}

function toDrain(drain: FixedPoint, slope: Slope): Elevation {
  const at = spotOf(drain);
  const s = rate(slope);
  return (x, y) => at.z.plus(s.times(Decimal.hypot(x.minus(at.x), y.minus(at.y))));
}

/** Elevations of a surface in closed form, and its plane where it is one. */
export function shapeOf(surface: FormSurface): { readonly elevation: Elevation; readonly plane?: Plane } {
  switch (surface.kind) {
    case 'plane': {
      const plane = planeThrough(surface.through, 'surface.through');
      return { elevation: onPlane(plane), plane };
    }
    case 'sloped-plane': {
      const plane = { at: spotOf(surface.at), p: rate(surface.alongX), q: rate(surface.alongY) };
      return { elevation: onPlane(plane), plane };
    }
    case 'ridge':
    case 'valley':
      return { elevation: fold(surface) };
    case 'warped-quad':
      return { elevation: warped(surface.corners) };
    case 'fall-to-drain':
      return { elevation: toDrain(surface.drain, surface.slope) };
  }
}

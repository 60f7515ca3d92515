/**
 * A straight-sided ring moved inwards by the same distance on every side, corners mitred.
 *
 * Each side is moved along its normal and neighbouring sides are made to meet again. As long as no side
 * vanishes, the band between ring and inset has the area `P × w − k × w²`, with the perimeter `P` and a
 * number `k` that depends on the corners alone.
 */
import { Decimal } from '../quantity/decimal';
import { type Corner, doubleArea, isSimple, perimeterOf } from './polygon';

interface Side {
  /** A point on the moved side. */
  readonly at: Corner;
  /** Unit vector along it. */
  readonly u: Corner;
}

function sideOf(a: Corner, b: Corner, w: Decimal): Side {
  const long = Decimal.hypot(b.x.minus(a.x), b.y.minus(a.y));
  const u = { x: b.x.minus(a.x).div(long), y: b.y.minus(a.y).div(long) };
  // Anticlockwise ring: inwards is to the left.
  return { at: { x: a.x.minus(u.y.times(w)), y: a.y.plus(u.x.times(w)) }, u };
}

function meeting(p: Side, q: Side): Corner {
  const cross = p.u.x.times(q.u.y).minus(p.u.y.times(q.u.x));
  // Sides in one line: the corner moves square to them.
  if (cross.abs().lessThan('1e-40')) return q.at;
  const [dx, dy] = [q.at.x.minus(p.at.x), q.at.y.minus(p.at.y)];
  const t = dx.times(q.u.y).minus(dy.times(q.u.x)).div(cross);
  return { x: p.at.x.plus(p.u.x.times(t)), y: p.at.y.plus(p.u.y.times(t)) };
}

/**
 * The inset ring, or `undefined` where a side would vanish or the ring would fall apart.
 *
 * @param ring - simple and anticlockwise, in metres
 * @param w - how far, in metres; negative moves outwards
 */
export function insetRing(ring: readonly Corner[], w: Decimal): Corner[] | undefined {
  const n = ring.length;
  const at = (i: number): Corner => ring[(i + n) % n] as Corner;
  const sides = ring.map((_, i) => sideOf(at(i), at(i + 1), w));
  const inset = sides.map((side, i) => meeting(sides[(i + n - 1) % n] as Side, side));
  const kept = sides.every(({ u }, i) => {
    const [a, b] = [inset[i] as Corner, inset[(i + 1) % n] as Corner];
    return b.x.minus(a.x).times(u.x).plus(b.y.minus(a.y).times(u.y)).greaterThan(0);
  });
  return kept && isSimple(inset) ? inset : undefined;
}

/** Perimeter `P` and corner number `k` of the band `P × w − k × w²`. */
export interface Band {
  readonly perimeter: Decimal;
  readonly corners: Decimal;
}

/** The band along the inside of a ring, up to the width `w`; `undefined` where it is too wide. */
export function bandOf(ring: readonly Corner[], w: Decimal): Band | undefined {
  const inset = insetRing(ring, w);
  if (!inset) return undefined;
  const perimeter = perimeterOf(ring);
  const band = doubleArea(ring).minus(doubleArea(inset)).div(2);
  return { perimeter, corners: perimeter.times(w).minus(band).div(w.times(w)) };
}

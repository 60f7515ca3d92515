/**
 * Centroids of placed outlines, in closed form.
 *
 * Straight sides: the polygon formula, exact but for its one division. A sector of a ring between `q`
 * and `r` with half angle `u`: `2 sin u × (r³ − q³) ÷ (3 u × (r² − q²))` from the center, on the bisector.
 * Between chord and arc: `4 r sin³(t ÷ 2) ÷ (3 (t − sin t))` from the center of the arc.
 */

import { arcOf, type Edge } from '../geometry/arc';
import { type Corner, doubleArea } from '../geometry/polygon';
import { Decimal, PI, ZERO } from '../quantity/decimal';
import { canonicalValue } from '../quantity/quantity';
import { cornersOf } from './corners';
import { edgesOf } from './curved';
import type { Outline, OutlineOf } from './outline';
import { ringOf } from './ring';

/** Centroid of a simple ring. */
export function ringCentroid(ring: readonly Corner[]): Corner {
  let [x, y] = [ZERO, ZERO];
  // Measured from the first corner, so that far-off coordinates lose nothing.
  const o = ring[0] as Corner;
  for (let i = 1; i + 1 < ring.length; i += 1) {
    const [a, b] = [ring[i] as Corner, ring[i + 1] as Corner];
    const [ax, ay, bx, by] = [a.x.minus(o.x), a.y.minus(o.y), b.x.minus(o.x), b.y.minus(o.y)];
    const cross = ax.times(by).minus(bx.times(ay));
    x = x.plus(ax.plus(bx).times(cross));
    y = y.plus(ay.plus(by).times(cross));
  }
  const six = doubleArea(ring).times(3);
  return { x: o.x.plus(x.div(six)), y: o.y.plus(y.div(six)) };
}

function sectorCentroid({ radius, angle, innerRadius }: OutlineOf<'sector'>): Corner {
  const [r, q] = [canonicalValue(radius), innerRadius ? canonicalValue(innerRadius) : ZERO];
  const u = canonicalValue(angle).times(PI).div(360);
  const cubes = r.pow(3).minus(q.pow(3)).times(2);
  const far = Decimal.sin(u)
    .times(cubes)
    .div(r.pow(2).minus(q.pow(2)).times(u).times(3));
  return { x: far.times(Decimal.cos(u)), y: far.times(Decimal.sin(u)) };
}

/** Signed area between chord and arc, and its centroid. */
function bowOf(edge: Edge, outwards: 1 | -1): { area: Decimal; at: Corner } {
  const { radius, angle, area } = arcOf(edge);
  const half = Decimal.sin(angle.div(2));
  const fromCenter = radius
    .times(half.pow(3))
    .times(4)
    .div(angle.minus(Decimal.sin(angle)).times(3));
  const up = fromCenter
    .minus(radius.minus(edge.rise.abs()))
    .times(edge.rise.isNegative() ? -outwards : outwards);
  const [ux, uy] = [
    edge.to.x.minus(edge.from.x).div(edge.chord),
    edge.to.y.minus(edge.from.y).div(edge.chord),
  ];
  const at = {
    x: edge.from.x.plus(edge.to.x).div(2).plus(uy.times(up)),
    y: edge.from.y.plus(edge.to.y).div(2).minus(ux.times(up)),
  };
  return { area: edge.rise.isNegative() ? area.neg() : area, at };
}

function curvedCentroid({ points }: OutlineOf<'curved'>, path: string): Corner {
  const corners = cornersOf(points);
  const double = doubleArea(corners);
  const outwards = double.isNegative() ? -1 : 1;
  const bent = edgesOf(points, corners, `${path}.points`).filter((e) => !e.rise.isZero());
  const parts = bent.map((e) => bowOf(e, outwards));
  if (!double.isZero()) parts.push({ area: double.abs().div(2), at: ringCentroid(corners) });
  const total = parts.reduce((sum, p) => sum.plus(p.area), ZERO);
  const mean = (pick: (c: Corner) => Decimal): Decimal =>
    parts.reduce((sum, p) => sum.plus(p.area.times(pick(p.at))), ZERO).div(total);
  return { x: mean((c) => c.x), y: mean((c) => c.y) };
}

/**
 * Centroid of a placed outline, in meters.
 *
 * @throws {InputError} as `ringOf` does; `not-placed` for offsets and combined outlines
 */
export function centroidOf(outline: Outline, path = 'outline'): Corner {
  switch (outline.shape) {
    case 'circle':
    case 'ring':
    case 'regular':
      return { x: ZERO, y: ZERO };
    case 'sector':
      return sectorCentroid(outline);
    case 'curved':
      return curvedCentroid(outline, path);
    default:
      return ringCentroid(ringOf(outline, path));
  }
}

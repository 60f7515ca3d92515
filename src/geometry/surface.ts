/**
 * A surface through points of known height, made of triangles, over an outline.
 *
 * The library triangulates in binary numbers; which corners belong together is all that is taken from
 * it. Areas, heights and volumes are then exact decimals, but for triangles that a re-entrant corner cuts.
 */
import Delaunator from 'delaunator';
import { type Decimal, ZERO } from '../quantity/decimal';
import { ringCentroid } from './centroid';
import { commonRings } from './clip';
import { type Corner, doubleArea, insideRing, ringsMeet } from './polygon';

/** A point of the surface. */
export interface Spot extends Corner {
  readonly z: Decimal;
}

/** Three spots, anticlockwise. */
export type Triangle = readonly [Spot, Spot, Spot];

export function trianglesOf(spots: readonly Spot[]): Triangle[] {
  const flat = new Float64Array(spots.length * 2);
  spots.forEach(({ x, y }, i) => {
    flat[2 * i] = x.toNumber();
    flat[2 * i + 1] = y.toNumber();
  });
  const { triangles } = new Delaunator(flat);
  const found: Triangle[] = [];
  for (let i = 0; i < triangles.length; i += 3) {
    const [a, b, c] = [triangles[i], triangles[i + 1], triangles[i + 2]].map(
      (k) => spots[k as number] as Spot,
    );
    const triangle = [a, b, c] as unknown as Triangle;
    // The library turns its triangles clockwise on a page with y down, so anticlockwise with y up.
    found.push(doubleArea(triangle).isNegative() ? [triangle[0], triangle[2], triangle[1]] : triangle);
  }
  return found;
}

const isConvex = (ring: readonly Corner[]): boolean =>
  ring.every((b, i) => {
    const a = ring[(i + ring.length - 1) % ring.length] as Corner;
    const c = ring[(i + 1) % ring.length] as Corner;
    return !b.x
      .minus(a.x)
      .times(c.y.minus(b.y))
      .minus(b.y.minus(a.y).times(c.x.minus(b.x)))
      .isNegative();
  });

/** Height of the plane of a triangle at a point. */
function heightAt([a, b, c]: Triangle, p: Corner): Decimal {
  const double = doubleArea([a, b, c]);
  const share = (q: Corner, r: Corner): Decimal => doubleArea([p, q, r]);
  return share(b, c).times(a.z).plus(share(c, a).times(b.z)).plus(share(a, b).times(c.z)).div(double);
}

/** Area, and area times height, of a part of the surface. */
export interface Part {
  readonly area: Decimal;
  readonly volume: Decimal;
}

const NOTHING: Part = { area: ZERO, volume: ZERO };

const whole = (triangle: Triangle): Part => {
  const area = doubleArea(triangle).div(2);
  const sum = triangle[0].z.plus(triangle[1].z).plus(triangle[2].z);
  return { area, volume: area.times(sum).div(3) };
};

/** Shrunk by a hair towards its middle, so that sides along the outline do not count as meeting it. */
function shrunk(triangle: Triangle): Corner[] {
  const c = ringCentroid(triangle);
  return triangle.map(({ x, y }) => ({
    x: x.minus(x.minus(c.x).times('1e-9')),
    y: y.minus(y.minus(c.y).times('1e-9')),
  }));
}

function within(triangle: Triangle, outline: readonly Corner[]): Part {
  if (doubleArea(triangle).isZero()) return NOTHING;
  const core = shrunk(triangle);
  if (!ringsMeet(core, outline)) return insideRing(core[0] as Corner, outline) ? whole(triangle) : NOTHING;
  return commonRings(triangle, outline).reduce((sum, ring) => {
    const area = doubleArea(ring).div(2);
    if (area.isZero()) return sum;
    const volume = area.times(heightAt(triangle, ringCentroid(ring)));
    return { area: sum.area.plus(area), volume: sum.volume.plus(volume) };
  }, NOTHING);
}

/**
 * Area and volume under the surface through the spots, over a simple ring whose corners are among them.
 */
export function underSurface(spots: readonly Spot[], outline: readonly Corner[]): Part {
  const all = isConvex(outline);
  return trianglesOf(spots).reduce((sum, triangle) => {
    const part = all ? whole(triangle) : within(triangle, outline);
    return { area: sum.area.plus(part.area), volume: sum.volume.plus(part.volume) };
  }, NOTHING);
}

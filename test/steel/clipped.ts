/**
 * Lines of bar over an outline by jsts, a general-purpose geometry library: the outline less its openings is
 * drawn in by the cover, and each line is what is left of a long straight line over it.
 */
import Coordinate from 'jsts/org/locationtech/jts/geom/Coordinate.js';
import type Geometry from 'jsts/org/locationtech/jts/geom/Geometry.js';
import GeometryFactory from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';
import BufferOp from 'jsts/org/locationtech/jts/operation/buffer/BufferOp.js';
import OverlayOp from 'jsts/org/locationtech/jts/operation/overlay/OverlayOp.js';
import type { Plan, Spot } from './outlines';

const factory = new GeometryFactory();
const closed = (ring: readonly Spot[]): Coordinate[] =>
  [...ring, ring[0] as Spot].map(({ x, y }) => new Coordinate(x, y));

/** Arcs at corners that jut in: the more parts, the nearer to a circle. */
const QUARTER = 200;

/** Lengths of the lines in meters, line by line. */
export function clippedLines(
  { outer, openings }: Plan,
  { cover, spacing, upright }: { cover: number; spacing: number; upright: boolean },
): number[][] {
  const ring = (spots: readonly Spot[]) => factory.createLinearRing(closed(spots));
  const slab = factory.createPolygon(ring(outer), openings.map(ring));
  const clear: Geometry = BufferOp.bufferOp(slab, -cover, QUARTER);
  const [vs, us] = [outer.map((p) => (upright ? p.x : p.y)), outer.map((p) => (upright ? p.y : p.x))];
  const [low, high] = [Math.min(...vs) + cover, Math.max(...vs) - cover];
  const gaps = Math.ceil((high - low) / spacing - 1e-9);
  return Array.from({ length: gaps + 1 }, (_, i) => {
    // A line on the very edge of the drawn-in outline is neither in nor out.
    const v = Math.min(Math.max(low + ((high - low) * i) / gaps, low + 1e-7), high - 1e-7);
    const [a, b] = [Math.min(...us) - 1, Math.max(...us) + 1];
    const ends = upright
      ? [new Coordinate(v, a), new Coordinate(v, b)]
      : [new Coordinate(a, v), new Coordinate(b, v)];
    const left: Geometry = OverlayOp.intersection(factory.createLineString(ends), clear);
    return Array.from(
      { length: left.getNumGeometries() },
      (_, n) => left.getGeometryN(n).getLength() as number,
    );
  });
}

/** jsts, a general-purpose geometry library, as the oracle for plane geometry. */
import Centroid from 'jsts/org/locationtech/jts/algorithm/Centroid.js';
import Coordinate from 'jsts/org/locationtech/jts/geom/Coordinate.js';
import type Geometry from 'jsts/org/locationtech/jts/geom/Geometry.js';
import GeometryFactory from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';
import BufferOp from 'jsts/org/locationtech/jts/operation/buffer/BufferOp.js';
import BufferParameters from 'jsts/org/locationtech/jts/operation/buffer/BufferParameters.js';
import DistanceOp from 'jsts/org/locationtech/jts/operation/distance/DistanceOp.js';
import OverlayOp from 'jsts/org/locationtech/jts/operation/overlay/OverlayOp.js';
import IsValidOp from 'jsts/org/locationtech/jts/operation/valid/IsValidOp.js';

export type Ring = readonly (readonly [number, number])[];

const factory = new GeometryFactory();

const polygonOf = (ring: Ring): Geometry =>
  factory.createPolygon(
    factory.createLinearRing([...ring, ring[0] as [number, number]].map(([x, y]) => new Coordinate(x, y))),
  );

function insetOf(ring: Ring, w: number): Geometry {
  const parameters = new BufferParameters();
  parameters.setJoinStyle(BufferParameters.JOIN_MITRE);
  parameters.setMitreLimit(1e6);
  // Its simplification before buffering would drop flat corners.
  parameters.setSimplifyFactor(0);
  return BufferOp.bufferOp(polygonOf(ring), -w, parameters) as Geometry;
}

/** The ring moved inwards: its area, how many corners it has left, and into how many rings it falls. */
export function inset(ring: Ring, w: number): { area: number; corners: number; rings: number } {
  const moved = insetOf(ring, w);
  const rings = moved.getNumGeometries() as number;
  return {
    area: moved.getArea(),
    corners: (moved as unknown as { getNumPoints(): number }).getNumPoints() - 1,
    rings,
  };
}

const gapOf = (a: Geometry, b: Geometry): number => DistanceOp.distance(a, b) as number;

/** True where a ring lies within another and touches it nowhere. */
export function clearWithin(inner: Ring, outer: Ring): boolean {
  const edge = factory.createLinearRing(
    [...outer, outer[0] as [number, number]].map(([x, y]) => new Coordinate(x, y)),
  );
  const hole = polygonOf(inner);
  return gapOf(hole, polygonOf(outer)) === 0 && gapOf(hole, edge as unknown as Geometry) > 0;
}

/** True where two rings share no point. */
export const clearOf = (a: Ring, b: Ring): boolean => gapOf(polygonOf(a), polygonOf(b)) > 0;

export const oracle = {
  area: (ring: Ring): number => polygonOf(ring).getArea(),
  length: (ring: Ring): number => polygonOf(ring).getLength(),
  simple: (ring: Ring): boolean => IsValidOp.isValid(polygonOf(ring)),
  centroid: (ring: Ring): { x: number; y: number } => {
    const { x, y } = Centroid.getCentroid(polygonOf(ring)) as { x: number; y: number };
    return { x, y };
  },
  /** Area of the ring moved inwards with mitred corners. */
  inset: (ring: Ring, w: number): number => insetOf(ring, w).getArea(),
  common: (a: Ring, b: Ring): number =>
    (OverlayOp.intersection(polygonOf(a), polygonOf(b)) as Geometry).getArea(),
  /** What two rings have in common: how much, and where it balances. */
  commonPart: (a: Ring, b: Ring): { area: number; x: number; y: number } => {
    const common = OverlayOp.intersection(polygonOf(a), polygonOf(b)) as Geometry;
    const area = common.getArea();
    const { x, y } = area > 0 ? (Centroid.getCentroid(common) as { x: number; y: number }) : { x: 0, y: 0 };
    return { area, x, y };
  },
};

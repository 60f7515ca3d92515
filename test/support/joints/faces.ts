/**
 * Looks a joint plan of any slab over with a general-purpose geometry library.
 *
 * Edges (arcs in short chords) and joints are handed to JSTS as plain lines; its polygonizer finds the faces
 * between them, which must be the panels. Nothing of the code under test is used but its figures.
 */

import ConvexHull from 'jsts/org/locationtech/jts/algorithm/ConvexHull.js';
import MinimumDiameter from 'jsts/org/locationtech/jts/algorithm/MinimumDiameter.js';
import Coordinate from 'jsts/org/locationtech/jts/geom/Coordinate.js';
import GeometryFactory from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';
import OverlayOp from 'jsts/org/locationtech/jts/operation/overlay/OverlayOp.js';
import SnapIfNeededOverlayOp from 'jsts/org/locationtech/jts/operation/overlay/snap/SnapIfNeededOverlayOp.js';
import Polygonizer from 'jsts/org/locationtech/jts/operation/polygonize/Polygonizer.js';
import 'jsts/org/locationtech/jts/monkey.js';
import type { JointLayoutFigures } from '../../../src/index';
import type { Xy } from './yards';

const factory = new GeometryFactory();

/** What is used of a geometry of the library. */
interface Shape {
  getArea(): number;
  getLength(): number;
  getInteriorPoint(): Shape;
  getX(): number;
  getY(): number;
  contains(other: Shape): boolean;
  getCoordinates(): { x: number; y: number }[];
}

/** A slab in feet: the outline first, then the openings; arcs in chords. */
export interface Slab {
  readonly rings: readonly (readonly Xy[])[];
  /** Inside corners that are more than kinks, by how the slab was made. */
  readonly inside: readonly Xy[];
}

const lineOf = (points: readonly Xy[]): Shape =>
  factory.createLineString(points.map(([x, y]) => new Coordinate(x, y)) as never) as unknown as Shape;

const areaOf = (ring: readonly Xy[]): Shape =>
  factory.createPolygon(
    [...ring, ring[0] as Xy].map(([x, y]) => new Coordinate(x, y)) as never,
  ) as unknown as Shape;

const pointOf = ([x, y]: Xy): Shape => factory.createPoint(new Coordinate(x, y) as never) as unknown as Shape;

const overlay = (a: Shape, b: Shape, how: number): Shape =>
  SnapIfNeededOverlayOp.overlayOp(a as never, b as never, how as never) as unknown as Shape;

function listOf(collection: unknown): Shape[] {
  const all: Shape[] = [];
  const { iterator } = collection as { iterator(): { hasNext(): boolean; next(): Shape } };
  const steps = iterator.call(collection);
  while (steps.hasNext()) all.push(steps.next());
  return all;
}

const feet = (q: { toNumber(unit: string): number }): number => q.toNumber('ft');

type Joint = JointLayoutFigures['joints'][number];

const spotOf = ({ x, y }: Joint['from']): Xy => [feet(x), feet(y)];

const ARC = Math.PI / 90;

/** A joint as points: arcs in chords of two degrees. */
function pointsOf(joint: Joint): Xy[] {
  const [a, b] = [spotOf(joint.from), spotOf(joint.to)];
  if (joint.shape === 'straight') return [a, b];
  const [cx, cy] = joint.center ? spotOf(joint.center) : [0, 0];
  const r = Math.hypot(a[0] - cx, a[1] - cy);
  const turn = feet(joint.length) / r;
  const start = Math.atan2(a[1] - cy, a[0] - cx);
  const steps = Math.max(2, Math.ceil(turn / ARC));
  return Array.from({ length: steps + 1 }, (_, k): Xy => {
    const angle = start + (turn * k) / steps;
    return [cx + r * Math.cos(angle), cy + r * Math.sin(angle)];
  });
}

/** Joints are drawn this much too long, in feet, so that chords and rounding leave no gap at an edge. */
const OVER = [0.02, 0.017, 0.023];
/** Specks that come of that, in square feet. */
const SPECK = 0.05;

/** A joint through the very corners that it meets, else a hair beyond the edge that it ends at. */
function stretched(points: readonly Xy[], corners: readonly Xy[], over: number): Xy[] {
  const out = (p: Xy, q: Xy): Xy => {
    const corner = corners.find(([x, y]) => Math.hypot(x - p[0], y - p[1]) < 1e-6);
    if (corner) return corner;
    const long = Math.hypot(p[0] - q[0], p[1] - q[1]);
    return [p[0] + ((p[0] - q[0]) / long) * over, p[1] + ((p[1] - q[1]) / long) * over];
  };
  const [a, b, y, z] = [points[0], points[1], points.at(-2), points.at(-1)] as [Xy, Xy, Xy, Xy];
  const whole = [out(a, b), ...points.slice(1, -1), out(z, y)];
  return whole.flatMap((p, i) => (i === 0 ? [p] : [...passed(whole[i - 1] as Xy, p, corners), p]));
}

/** Corners that a line passes, in order. */
function passed(a: Xy, b: Xy, corners: readonly Xy[]): Xy[] {
  const long = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const along = ([x, y]: Xy): number => ((x - a[0]) * (b[0] - a[0]) + (y - a[1]) * (b[1] - a[1])) / long;
  const aside = ([x, y]: Xy): number => ((x - a[0]) * (b[1] - a[1]) - (y - a[1]) * (b[0] - a[0])) / long;
  return corners
    .filter((c) => Math.abs(aside(c)) < 1e-7 && along(c) > 1e-6 && along(c) < long - 1e-6)
    .sort((p, q) => along(p) - along(q));
}

/** All lines noded together, pair by pair. */
function unionOf(shapes: readonly Shape[]): Shape {
  if (shapes.length === 1) return shapes[0] as Shape;
  const half = shapes.length >> 1;
  return overlay(unionOf(shapes.slice(0, half)), unionOf(shapes.slice(half)), OverlayOp.UNION);
}

/** The faces of slab between edges and joints; with other ends where the library cannot node the lines. */
function facesOf(slab: Slab, joints: readonly Joint[]): Shape[] {
  for (const over of OVER) {
    try {
      return facesWith(slab, joints, over);
    } catch (error) {
      if (!String(error).includes('non-noded') || over === OVER.at(-1)) throw error;
    }
  }
  return [];
}

function facesWith({ rings }: Slab, joints: readonly Joint[], over: number): Shape[] {
  const corners = rings.flat();
  const closed = rings.map((ring) => lineOf([...ring, ring[0] as Xy]));
  const lines = joints.map((joint) => lineOf(stretched(pointsOf(joint), corners, over)));
  const noded = unionOf([...closed, ...lines]);
  const polygonizer = new Polygonizer();
  polygonizer.add(noded as never);
  const [outer, ...holes] = rings.map(areaOf) as [Shape, ...Shape[]];
  return listOf(polygonizer.getPolygons()).filter((face) => {
    if (face.getArea() < SPECK) return false;
    const inside = face.getInteriorPoint();
    return outer.contains(inside) && !holes.some((hole) => hole.contains(inside));
  });
}

/** The narrowest that a face is, between two parallel lines. */
const narrowest = (face: Shape): number =>
  (new MinimumDiameter(face as never) as unknown as { getLength(): number }).getLength();

/**
 * How deep the hollow side of a panel along a curve is: two parallel lines around it stand so much farther
 * apart than its arcs do. A segment of a circle has two thirds of its chord times its rise; the chord inside
 * is shorter than the panel is wide.
 */
function hollow(face: Shape): number {
  const hull = new ConvexHull(face as never).getConvexHull() as unknown as Shape;
  return (1.5 * (hull.getArea() - face.getArea())) / (0.8 * narrowest(face));
}

const MET = 1e-4;

function isMet([x, y]: Xy, joints: readonly Joint[]): boolean {
  return joints.some((joint) => {
    const points = pointsOf(joint);
    return points.slice(1).some(([bx, by], i) => {
      const [ax, ay] = points[i] as Xy;
      const [dx, dy] = [bx - ax, by - ay];
      const part = Math.min(1, Math.max(0, ((x - ax) * dx + (y - ay) * dy) / (dx * dx + dy * dy || 1)));
      return Math.hypot(ax + part * dx - x, ay + part * dy - y) < MET;
    });
  });
}

/** The rules that the plan was asked to keep, in feet. */
export interface Asked {
  readonly spacing: number;
  readonly leastSide: number;
}

/** How much a panel along a curve may be over the spacing where its edge is longest. */
const EDGE_OVER = 1.26;

function cornerFaults({ inside, rings }: Slab, figures: JointLayoutFigures): string[] {
  const named = figures.givesWay.flatMap(({ rule, at, opening }) => {
    if (rule === 'opening passed by') return rings[opening?.toNumber('each') ?? 0] ?? [];
    return rule === 'corner not met' && at ? [spotOf(at)] : [];
  });
  const faults = inside.flatMap((corner) => {
    const told = named.some(([x, y]) => Math.hypot(x - corner[0], y - corner[1]) < 0.01);
    return isMet(corner, figures.joints) || told ? [] : [`corner ${corner} is not met and not named`];
  });
  if (named.length > 0 && figures.search.kind === 'exact')
    faults.push('a corner is missed and all is said to be exact');
  return faults;
}

type Told = JointLayoutFigures['panels'][number];

function faceFaults(face: Shape, panel: Told, excused: ReadonlySet<string>, asked: Asked): string[] {
  const n = panel.number.toNumber('each');
  const area = panel.area.toNumber('ft2');
  const found: string[] = [];
  if (Math.abs(area - face.getArea()) > 0.15 + 0.003 * area)
    found.push(`panel ${n}: ${area} told, ${face.getArea()} found`);
  const wide = narrowest(face);
  if (wide > asked.spacing + 0.05 && wide > asked.spacing + 0.05 + hollow(face))
    found.push(`panel ${n} is over the spacing`);
  if (face.getArea() > EDGE_OVER * asked.spacing ** 2) found.push(`panel ${n} is too large`);
  if (wide < asked.leastSide - 0.05 && !excused.has(`sliver ${n}`))
    found.push(`panel ${n} is ${wide} wide, and not named`);
  return found;
}

function panelFaults(faces: readonly Shape[], figures: JointLayoutFigures, asked: Asked): string[] {
  const excused = new Set(
    figures.givesWay.flatMap(({ rule, panel }) => (panel ? [`${rule} ${panel.toNumber('each')}`] : [])),
  );
  const found: string[] = [];
  const left = [...faces];
  for (const panel of figures.panels) {
    const n = panel.number.toNumber('each');
    // A speck is looked at no further, but it must be named.
    if (panel.area.toNumber('ft2') < SPECK && excused.has(`sliver ${n}`)) continue;
    const place = left.findIndex((face) => face.contains(pointOf(spotOf(panel.at))));
    const [face] = place < 0 ? [] : left.splice(place, 1);
    if (face) found.push(...faceFaults(face, panel, excused, asked));
    else found.push(`panel ${n} at ${spotOf(panel.at)} lies in no face of its own`);
  }
  if (left.length > 0)
    found.push(`${left.length} faces are no panel: ${left.map((f) => f.getArea().toFixed(2))}`);
  return found;
}

/** Everything that is wrong with a plan; nothing when it is right. */
export function faultsOf(slab: Slab, figures: JointLayoutFigures, asked: Asked): string[] {
  const faces = facesOf(slab, figures.joints);
  const length = figures.joints
    .filter((j) => j.type === 'contraction')
    .reduce((sum, j) => sum + feet(j.length), 0);
  const found = [...cornerFaults(slab, figures), ...panelFaults(faces, figures, asked)];
  if (Math.abs(length - feet(figures.contraction)) > 1e-6)
    found.push('the length told is not that of the joints');
  const drawn = figures.joints.reduce((sum, j) => {
    const points = pointsOf(j);
    return (
      sum +
      points
        .slice(1)
        .reduce((s, p, i) => s + Math.hypot(p[0] - (points[i] as Xy)[0], p[1] - (points[i] as Xy)[1]), 0)
    );
  }, 0);
  const told = figures.joints.reduce((sum, j) => sum + feet(j.length), 0);
  if (Math.abs(drawn - told) > 1e-3 * told + 1e-9)
    found.push(`joints of ${told} ft are drawn ${drawn} ft long`);
  return found;
}

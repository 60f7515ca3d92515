/**
 * Slabs with slanted sides, verified by a general-purpose geometry library.
 *
 * Outline and joints are handed to JSTS as plain lines; its polygonizer finds the faces between them,
 * which must be the panels: as many, of the same areas, and convex (so that each re-entrant corner is met).
 */
import Coordinate from 'jsts/org/locationtech/jts/geom/Coordinate.js';
import GeometryFactory from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';
import OverlayOp from 'jsts/org/locationtech/jts/operation/overlay/OverlayOp.js';
import Polygonizer from 'jsts/org/locationtech/jts/operation/polygonize/Polygonizer.js';
import { describe, expect, it } from 'vitest';
import { type JointLayoutFigures, type JointLayoutInput, jointLayout } from '../../src/index';
import { between, stream, type Xy } from '../support/joints/yards';

const factory = new GeometryFactory();

/** Joints are drawn this much too long, in inches, so that rounding leaves no gap at the edge. */
const OVER = 1e-5;

/** What this test uses of a geometry of the library. */
interface Shape {
  getArea(): number;
  getLength(): number;
  getCoordinates(): { x: number; y: number }[];
}

const lineOf = (points: readonly Xy[]): Shape =>
  factory.createLineString(points.map(([x, y]) => new Coordinate(x, y))) as unknown as Shape;

function listOf(collection: unknown): Shape[] {
  const all: Shape[] = [];
  const { iterator } = collection as { iterator(): { hasNext(): boolean; next(): Shape } };
  const steps = iterator.call(collection);
  while (steps.hasNext()) all.push(steps.next());
  return all;
}

/** A joint as a line: through the very corners that it meets, else a hair beyond the edge. */
function jointLine({ from, to }: JointLayoutFigures['joints'][number], ring: readonly Xy[]): Xy[] {
  const [a, b] = [from, to].map(({ x, y }): Xy => [x.toNumber('in'), y.toNumber('in')]) as [Xy, Xy];
  const long = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const stretched = (p: Xy, q: Xy): Xy => {
    const corner = ring.find(([x, y]) => Math.hypot(x - p[0], y - p[1]) < 1e-9);
    return corner ?? [p[0] + ((p[0] - q[0]) / long) * OVER, p[1] + ((p[1] - q[1]) / long) * OVER];
  };
  const along = ([x, y]: Xy): number => ((x - a[0]) * (b[0] - a[0]) + (y - a[1]) * (b[1] - a[1])) / long;
  const aside = ([x, y]: Xy): number => ((x - a[0]) * (b[1] - a[1]) - (y - a[1]) * (b[0] - a[0])) / long;
  const met = ring.filter((c) => Math.abs(aside(c)) < 1e-9 && along(c) > 1e-9 && along(c) < long - 1e-9);
  return [stretched(a, b), ...met.sort((p, q) => along(p) - along(q)), stretched(b, a)];
}

/** The faces between the outline and the joints, and what dangles from them. */
function facesOf(ring: readonly Xy[], figures: JointLayoutFigures): { faces: Shape[]; dangles: Shape[] } {
  const lines = figures.joints.map((joint) => lineOf(jointLine(joint, ring)));
  const noded = lines.reduce(
    (all, one) => OverlayOp.overlayOp(all as never, one as never, OverlayOp.UNION) as unknown as Shape,
    lineOf([...ring, ring[0] as Xy]),
  );
  const polygonizer = new Polygonizer();
  polygonizer.add(noded as never);
  // Two joints that end at one point of an edge, drawn too long, leave a speck beyond it.
  const faces = listOf(polygonizer.getPolygons()).filter((f) => f.getArea() > 1e-4);
  return { faces, dangles: listOf(polygonizer.getDangles()) };
}

function convex(face: Shape): boolean {
  const points = face.getCoordinates().slice(0, -1);
  const turns = points.map((b, i) => {
    const a = points[(i + points.length - 1) % points.length] as { x: number; y: number };
    const c = points[(i + 1) % points.length] as { x: number; y: number };
    return (b.x - a.x) * (c.y - b.y) - (b.y - a.y) * (c.x - b.x);
  });
  return turns.every((t) => t > -1e-3) || turns.every((t) => t < 1e-3);
}

const inches = (q: { toNumber(unit: string): number }): number => q.toNumber('in');

function faultsOf(ring: readonly Xy[], figures: JointLayoutFigures, spacing: number): string[] {
  const { faces, dangles } = facesOf(ring, figures);
  const found: string[] = [];
  const told = figures.panels.map((p) => p.area.toNumber('in2')).sort((a, b) => a - b);
  const seen = faces.map((f) => f.getArea()).sort((a, b) => a - b);
  if (told.length !== seen.length) found.push(`${told.length} panels told, ${seen.length} found`);
  else if (told.some((a, i) => Math.abs(a - (seen[i] as number)) > 0.01)) found.push('areas differ');
  if (!faces.every(convex)) found.push('a panel is not convex: a re-entrant corner is not met');
  if (dangles.some((d) => d.getLength() > 10 * OVER)) found.push('a joint ends within a panel');
  const wide = figures.panels.some(
    (p) => inches(p.along) > spacing + 1e-6 || inches(p.across) > spacing + 1e-6,
  );
  if (wide) found.push('a panel is over the spacing');
  const length = figures.joints.reduce(
    (sum, j) => sum + Math.hypot(inches(j.to.x) - inches(j.from.x), inches(j.to.y) - inches(j.from.y)),
    0,
  );
  if (Math.abs(length - inches(figures.contraction)) > 1e-6)
    found.push('the length told is not that of the joints');
  return found;
}

/** A four-sided slab, now and then with a corner pushed in. */
function slanted(next: () => number, pushed: boolean): Xy[] {
  const [l, w] = [between(next, 120, 420), between(next, 120, 360)];
  const off = (): number => between(next, -40, 40);
  const ring: Xy[] = [
    [0, 0],
    [l, off()],
    [l + off(), w + off()],
    [off(), w],
  ];
  if (!pushed) return ring;
  const into: Xy = [Math.round(l * 0.6), Math.round(w / 2) + off()];
  return [ring[0] as Xy, ring[1] as Xy, into, ring[2] as Xy, ring[3] as Xy];
}

/** A taper with its parallel sides level. */
function taper(next: () => number): Xy[] {
  const [a, b, h] = [between(next, 120, 480), between(next, 60, 480), between(next, 100, 400)];
  const shift = between(next, -60, 60);
  return [
    [0, 0],
    [a, 0],
    [shift + b, h],
    [shift, h],
  ];
}

describe('slabs with slanted sides', () => {
  it('are tiled by convex panels within the spacing, for 300 random outlines', () => {
    const next = stream(21);
    for (let i = 0; i < 300; i += 1) {
      const ring = i % 3 === 0 ? taper(next) : slanted(next, i % 3 === 2);
      const spacing = 12 * between(next, 7, 14);
      const outline: JointLayoutInput['outline'] = {
        shape: 'polygon',
        points: ring.map(([x, y]) => ({ x: `${x} in`, y: `${y} in` })),
      };
      const { figures } = jointLayout({ outline, thickness: '5 in', spacing: `${spacing} in` });
      expect(faultsOf(ring, figures, spacing), JSON.stringify([ring, spacing])).toEqual([]);
    }
  });
});

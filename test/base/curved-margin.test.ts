/** The margin around outlines with curves: closed forms, and a geometry library on the outline in many short chords. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { baseTonnage, InputError } from '../../src/index';
import { runs } from '../support/effort';
import { oracle } from '../support/planar';

type Point = { readonly x: string; readonly y: string; readonly rise?: string };

const curved = (points: readonly Point[]) => ({ shape: 'curved', points }) as const;

/** Area with a margin, in square meters. */
const spread = (outline: ReturnType<typeof curved>, margin: string): number =>
  baseTonnage({ outline, margin, depth: '100 mm', compactedDensity: '2200 kg/m3' }).figures.area.toNumber(
    'm2',
  );

/** In millimeters. */
const CORNERS: readonly Place[] = [
  [0, 0],
  [7000, 400],
  [6500, 4800],
  [-300, 4200],
];

type Place = readonly [x: number, y: number];

/** An edge of an outline that runs counterclockwise in many chords, its last corner left out. */
function chords([ax, ay]: Place, [bx, by]: Place, rise: number): Place[] {
  if (rise === 0) return [[ax, ay]];
  const c = Math.hypot(bx - ax, by - ay);
  const [ux, uy] = [(bx - ax) / c, (by - ay) / c];
  const h = Math.abs(rise);
  const r = (c * c + 4 * h * h) / (8 * h);
  const angle = 4 * Math.atan((2 * h) / c);
  return Array.from({ length: 600 }, (_, i): Place => {
    const t = angle * (i / 600 - 0.5);
    const [along, out] = [c / 2 + r * Math.sin(t), (r * Math.cos(t) - (r - h)) * Math.sign(rise)];
    return [ax + ux * along + uy * out, ay + uy * along - ux * out];
  });
}

describe('a margin around curves', () => {
  it('of a circle by two arcs is that of the circle', () => {
    const lens = curved([
      { x: '0 m', y: '0 m', rise: '2 m' },
      { x: '4 m', y: '0 m', rise: '2 m' },
    ]);
    expect(spread(lens, '150 mm')).toBeCloseTo(Math.PI * 2.15 ** 2, 9);
  });

  it('of half a circle keeps its corners square along the tangents', () => {
    const half = curved([
      { x: '0 m', y: '0 m' },
      { x: '6 m', y: '0 m', rise: '3 m' },
    ]);
    const m = 0.2;
    expect(spread(half, '200 mm')).toBeCloseTo((Math.PI * (3 + m) ** 2) / 2 + 2 * (3 + m) * m, 9);
  });

  it('of a slab with rounded ends is that of the longer and wider one', () => {
    const ended = curved([
      { x: '0 m', y: '0 m' },
      { x: '5 m', y: '0 m', rise: '1 m' },
      { x: '5 m', y: '2 m' },
      { x: '0 m', y: '2 m', rise: '1 m' },
    ]);
    expect(spread(ended, '0.3 m')).toBeCloseTo(5 * 2.6 + Math.PI * 1.3 ** 2, 9);
  });

  it('is what a geometry library has around many short chords, whichever way the outline runs', () => {
    const mm = fc.integer({ min: -600, max: 900 });
    fc.assert(
      fc.property(
        mm,
        mm,
        mm,
        mm,
        fc.integer({ min: 20, max: 300 }),
        fc.boolean(),
        (a, b, c, d, m, turned) => {
          const rises = [a, b, c, d];
          const points = CORNERS.map(([x, y], i) => ({ x: `${x} mm`, y: `${y} mm`, rise: `${rises[i]} mm` }));
          // Backwards, an edge begins at its other end.
          const back = points.map((_, i) => {
            const at = points[points.length - 1 - i] as Point;
            const before = points[(2 * points.length - 2 - i) % points.length] as Point;
            return { ...at, rise: before.rise as string };
          });
          const outline = curved(turned ? back : points);
          const around = CORNERS.flatMap((from, i) =>
            chords(from, CORNERS[(i + 1) % 4] as Place, rises[i] as number),
          );
          expect(spread(outline, `${m} mm`) * 1e6).toBeCloseTo(oracle.inset(around, -m), -3);
        },
      ),
      { numRuns: runs(60) },
    );
  });

  it('is refused at a hollow corner next to an arc, where the sides meet elsewhere', () => {
    const notched = curved([
      { x: '0 m', y: '0 m' },
      { x: '6 m', y: '0 m' },
      { x: '6 m', y: '4 m', rise: '0.5 m' },
      { x: '3 m', y: '2 m' },
      { x: '0 m', y: '4 m' },
    ]);
    expect(() => spread(notched, '100 mm')).toThrow(InputError);
    expect(() => spread(notched, '100 mm')).toThrow('cannot be put around this outline');
  });
});

/**
 * Walks that bend or run along an arc, in closed form: a bend is met by one cut along its bisector, the others lie square
 * to the walk and evenly along its middle; a walk along an arc is cut radially, drawn as a slice of a ring or by points.
 */
import { describe, expect, it } from 'vitest';
import { type JointLayoutFigures, type JointLayoutInput, jointLayout } from '../../src/index';
import { runs } from '../support/effort';
import { drawn, type Pair } from '../support/joints/stars';

const RADIANS = Math.PI / 180;
const ft = (n: number): string => `${n.toFixed(7)} ft`;
const point = ([x, y]: Pair) => ({ x: ft(x), y: ft(y) });

const cuts = ({ joints }: JointLayoutFigures): number[] =>
  joints.map(({ length }) => length.toNumber('ft')).sort((a, b) => a - b);

function near(found: readonly number[], expected: readonly number[], what: string): void {
  expect(found.length, what).toBe(expected.length);
  found.forEach((v, i) => {
    expect(Math.abs(v - (expected[i] as number)), `${what} ${found} ${expected}`).toBeLessThan(2e-4);
  });
}

interface Walk {
  readonly legs: readonly [number, number];
  /** Degrees, to the left if positive. */
  readonly bend: number;
  readonly width: number;
  /** The way of the first leg, in degrees. */
  readonly way: number;
}

/** Corners from the right of the beginning on, counterclockwise. */
function ringOf({ legs, bend, width, way }: Walk): Pair[] {
  const along = (degrees: number, far: number): Pair => [
    far * Math.cos(degrees * RADIANS),
    far * Math.sin(degrees * RADIANS),
  ];
  const plus = (p: Pair, q: Pair): Pair => [p[0] + q[0], p[1] + q[1]];
  const knee = along(way, legs[0]);
  const end = plus(knee, along(way + bend, legs[1]));
  const half = width / 2;
  const mitre = half / Math.cos((bend / 2) * RADIANS);
  const left = (p: Pair, degrees: number, far: number): Pair => plus(p, along(degrees + 90, far));
  return [
    left([0, 0], way, -half),
    left(knee, way + bend / 2, -mitre),
    left(end, way + bend, -half),
    left(end, way + bend, half),
    left(knee, way + bend / 2, mitre),
    left([0, 0], way, half),
  ];
}

describe('a walk with a bend', () => {
  const next = drawn(91);

  it('is cut along the bisector there, and evenly along the middle of each leg', () => {
    for (let k = 0; k < runs(60); k += 1) {
      const bend = (next() < 0.5 ? -1 : 1) * (17 + 40 * next());
      const walk = { legs: [12 + 18 * next(), 12 + 18 * next()] as const, bend, width: 5, way: 360 * next() };
      const what = JSON.stringify(walk);
      const ring = ringOf(walk);
      const from = Math.floor(6 * next());
      const points = [...ring.slice(from), ...ring.slice(0, from)].map(point);
      const { figures } = jointLayout({
        outline: { shape: 'polygon', points: next() < 0.5 ? points : points.reverse() },
        thickness: '4 in',
        spacing: '6 ft',
        method: 'hand-groover',
      });
      // The longer edge beside the bend may be a quarter over the spacing.
      const over = 2.5 * Math.tan((Math.abs(bend) / 2) * RADIANS);
      const panels = walk.legs.map((leg) => {
        const n = Math.ceil(leg / 6 - 1e-9);
        return leg / n + over > 7.5 ? undefined : n;
      });
      const [one, two] = panels;
      if (one === undefined || two === undefined) continue;
      expect(figures.pattern, what).toBe('strip');
      expect(figures.panelCount.toNumber('each'), what).toBe(one + two);
      expect(figures.givesWay, what).toEqual([]);
      const square = Array.from({ length: one + two - 2 }, () => 5);
      near(cuts(figures), [...square, 5 / Math.cos((bend / 2) * RADIANS)], what);
      expect(figures.area.toNumber('ft2')).toBeCloseTo(5 * (walk.legs[0] + walk.legs[1]), 4);
      // Measured along the edges from one of its ends: both edges alike up to the bend, which parts them.
      const places = figures.joints.map(({ alongEdge }) => [
        alongEdge?.left.toNumber('ft') ?? Number.NaN,
        alongEdge?.right.toNumber('ft') ?? Number.NaN,
      ]);
      const forth = (legs: readonly number[], n: readonly number[], sign: number): number[][] => {
        const [a, b] = legs as [number, number];
        const [p, q] = n as [number, number];
        const first = Array.from({ length: p - 1 }, (_, i) => [(a * (i + 1)) / p, (a * (i + 1)) / p]);
        const bent = [a - sign * over, a + sign * over];
        const second = Array.from({ length: q - 1 }, (_, i) => {
          const s = a + (b * (i + 1)) / q;
          return [s - 2 * sign * over, s + 2 * sign * over];
        });
        return [...first, bent, ...second];
      };
      const turn = Math.sign(bend);
      const ways = [forth(walk.legs, [one, two], turn), forth([...walk.legs].reverse(), [two, one], -turn)];
      const off = ways.map((way) =>
        Math.max(...way.flat().map((v, i) => Math.abs(v - (places.flat()[i] as number)))),
      );
      expect(Math.min(...off), `${what} ${JSON.stringify([places, ways])}`).toBeLessThan(1e-3);
    }
  });

  it('of more than 60 degrees is cut square to both legs', () => {
    const { figures } = jointLayout({
      outline: {
        shape: 'polygon',
        points: ringOf({ legs: [20, 20], bend: 70, width: 4, way: 10 }).map(point),
      },
      thickness: '4 in',
      spacing: '5 ft',
      method: 'hand-groover',
    });
    expect(figures.pattern).toBe('strip');
    // Two of the cuts start at the inside corner, square to its legs.
    const inner = ringOf({ legs: [20, 20], bend: 70, width: 4, way: 10 })[4] as Pair;
    const at = figures.joints.filter(({ from, to }) =>
      [from, to].some(
        ({ x, y }) => Math.hypot(x.toNumber('ft') - inner[0], y.toNumber('ft') - inner[1]) < 1e-3,
      ),
    );
    expect(at).toHaveLength(2);
    for (const { length } of at) expect(length.toNumber('ft')).toBeCloseTo(4, 3);
  });
});

describe('a walk along an arc', () => {
  const next = drawn(92);

  /** The slice of a ring as points and radii, turned and moved. */
  function byPoints(outer: number, inner: number, angle: number, turn: number): JointLayoutInput['outline'] {
    const on = (r: number, a: number): Pair => [
      7 + r * Math.cos((turn + a) * RADIANS),
      r * Math.sin((turn + a) * RADIANS) - 3,
    ];
    const rise = (r: number): string => ft(r * (1 - Math.cos((angle / 2) * RADIANS)));
    return {
      shape: 'curved',
      points: [
        { ...point(on(outer, 0)), rise: rise(outer) },
        point(on(outer, angle)),
        { ...point(on(inner, angle)), rise: `-${rise(inner)}` },
        point(on(inner, 0)),
      ],
    };
  }

  it('is cut the same drawn as a slice of a ring or by points, and as its arcs have it', () => {
    for (let k = 0; k < runs(40); k += 1) {
      const [width, inner, angle] = [4.5 + 0.5 * next(), 12 + 20 * next(), Math.round(40 + 80 * next())];
      const outer = inner + width;
      const plan = (outline: JointLayoutInput['outline']): JointLayoutFigures =>
        jointLayout({ outline, thickness: '4 in', spacing: '5 ft', method: 'hand-groover' }).figures;
      const what = JSON.stringify({ inner, width, angle });
      const slice = plan({
        shape: 'sector',
        radius: ft(outer),
        innerRadius: ft(inner),
        angle: `${angle} deg`,
      });
      const drawnBy = plan(byPoints(outer, inner, angle, 360 * next()));
      // Straight along the middle no farther than the spacing, along the outer edge a quarter over at most.
      const n = Array.from({ length: 60 }, (_, i) => i + 1).find((i) => {
        const half = ((angle / i) * RADIANS) / 2;
        return (inner + outer) * Math.sin(half) <= 5 && 2 * outer * Math.sin(half) <= 6.25;
      }) as number;
      const area = (angle * RADIANS * (outer ** 2 - inner ** 2)) / 2;
      for (const figures of [slice, drawnBy]) {
        expect(figures.panelCount.toNumber('each'), what).toBe(n);
        near(
          cuts(figures),
          Array.from({ length: n - 1 }, () => width),
          what,
        );
        expect(figures.area.toNumber('ft2'), what).toBeCloseTo(area, 3);
        figures.joints.forEach(({ alongEdge }, i) => {
          const part = (angle * RADIANS * (i + 1)) / n;
          const told = [alongEdge?.left, alongEdge?.right].map((q) => q?.toNumber('ft') ?? Number.NaN);
          expect(Math.abs(Math.min(...told) - inner * part), what).toBeLessThan(1e-3);
          expect(Math.abs(Math.max(...told) - outer * part), what).toBeLessThan(1e-3);
        });
        for (const panel of figures.panels) {
          expect(panel.area.toNumber('ft2'), what).toBeCloseTo(area / n, 3);
          const spot = [panel.at.x, panel.at.y].map((q) => q.toNumber('ft')) as Pair;
          const far = figures === slice ? Math.hypot(...spot) : Math.hypot(spot[0] - 7, spot[1] + 3);
          expect(far).toBeGreaterThan(inner);
          expect(far).toBeLessThan(outer);
        }
      }
    }
  });

  it('wider than the spacing has arcs along it, of the radii that divide it evenly', () => {
    // Three, four and five: an angle whose ends have whole tenths as coordinates.
    const angle = Math.atan2(4, 3) / RADIANS;
    for (const [inner, outer] of [
      [20, 30],
      [30, 48],
    ] as const) {
      const corner = (x: number, y: number) => ({ x: `${x} ft`, y: `${y} ft` });
      const { figures } = jointLayout({
        outline: {
          shape: 'curved',
          points: [
            { ...corner(outer, 0), radius: `${outer} ft` },
            corner((outer * 6) / 10, (outer * 8) / 10),
            { ...corner((inner * 6) / 10, (inner * 8) / 10), radius: `-${inner} ft` },
            corner(inner, 0),
          ],
        },
        thickness: '6 in',
        spacing: '9 ft',
        method: 'hand-groover',
      });
      const arcs = figures.joints.filter(({ shape }) => shape === 'arc');
      const radii = arcs.map(({ from, center }) =>
        Math.hypot(
          from.x.minus(center?.x ?? from.x).toNumber('ft'),
          from.y.minus(center?.y ?? from.y).toNumber('ft'),
        ),
      );
      const bands = Math.ceil((outer - inner) / 9);
      const due = Array.from({ length: bands - 1 }, (_, i) => inner + ((outer - inner) * (i + 1)) / bands);
      for (const r of radii) expect(Math.min(...due.map((d) => Math.abs(d - r)))).toBeLessThan(1e-3);
      const along = arcs.reduce((sum, { length }) => sum + length.toNumber('ft'), 0);
      expect(along).toBeCloseTo(
        due.reduce((sum, r) => sum + angle * RADIANS * r, 0),
        3,
      );
      expect(figures.area.toNumber('ft2')).toBeCloseTo((angle * RADIANS * (outer ** 2 - inner ** 2)) / 2, 3);
    }
  });
});

describe('a deck around a round pool in its middle', () => {
  it('is cut from the pool outwards, turned so that no cut runs the long way to a corner', () => {
    const { figures } = jointLayout({
      outline: { shape: 'rectangle', length: '24 ft', width: '24 ft' },
      openings: [{ shape: 'circle', at: { x: '12 ft', y: '12 ft' }, diameter: '12 ft' }],
      thickness: '4 in',
      spacing: '10 ft',
      method: 'hand-groover',
    });
    expect([figures.pattern, figures.panelCount.toNumber('each'), figures.givesWay]).toEqual(['deck', 8, []]);
    // Eight cuts at 22.5 degrees to the sides, from 6 ft out to 12 ft / cos 22.5; at 0 and 45 four of them would run to the corners.
    near(
      cuts(figures),
      Array.from({ length: 8 }, () => 12 / Math.cos(22.5 * RADIANS) - 6),
      'deck',
    );
    expect(figures.area.toNumber('ft2')).toBeCloseTo(24 * 24 - Math.PI * 36, 4);
  });
});

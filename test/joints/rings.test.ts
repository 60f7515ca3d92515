/**
 * Rings that are cut, run through and measured, exactly and in binary numbers, against general-purpose geometry
 * libraries: random rings, hollow in places, on a coarse grid so that lines run through corners and along sides.
 */
import ConvexHull from 'jsts/org/locationtech/jts/algorithm/ConvexHull.js';
import MinimumDiameter from 'jsts/org/locationtech/jts/algorithm/MinimumDiameter.js';
import Coordinate from 'jsts/org/locationtech/jts/geom/Coordinate.js';
import GeometryFactory from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';
import OverlayOp from 'jsts/org/locationtech/jts/operation/overlay/OverlayOp.js';
import { intersection } from 'polyclip-ts';
import { describe, expect, it } from 'vitest';
import { boxesApart, boxOf, isConvex, leastWidth, trimmedTo } from '../../src/joints/layout/as-cut';
import {
  commonPart,
  endsOf,
  runsBeside,
  runsLess,
  runsWithin,
  split,
  turnedIn,
  turnedOut,
} from '../../src/joints/layout/exact';
import { areaOf, cutAcross, extent, FlatRing, flatRing, turnAt } from '../../src/joints/layout/flat-ring';
import { Decimal } from '../../src/quantity/decimal';
import { runs } from '../support/effort';
import { corners, drawn, isRing, type Pair, pairs, starAround } from '../support/joints/stars';

const factory = new GeometryFactory();

interface Shape {
  getArea(): number;
  getLength(): number;
  contains(other: Shape): boolean;
}

const coordinates = (ring: readonly Pair[]): Coordinate[] => ring.map(([x, y]) => new Coordinate(x, y));
const closed = (ring: readonly Pair[]): Coordinate[] => coordinates([...ring, ring[0] as Pair]);
const polygon = (ring: readonly Pair[]): Shape =>
  factory.createPolygon(closed(ring) as never) as unknown as Shape;
const edge = (ring: readonly Pair[]): Shape =>
  factory.createLineString(closed(ring) as never) as unknown as Shape;
const line = (a: Pair, b: Pair): Shape =>
  factory.createLineString(coordinates([a, b]) as never) as unknown as Shape;
const meet = (a: Shape, b: Shape): number =>
  (OverlayOp.intersection(a as never, b as never) as unknown as Shape).getLength();

const area = (ring: readonly Pair[]): number =>
  Math.abs(
    ring.reduce((sum, [x, y], i) => {
      const [u, v] = ring[(i + 1) % ring.length] as Pair;
      return sum + x * v - u * y;
    }, 0),
  ) / 2;

const areas = (rings: readonly (readonly Pair[])[]): number[] =>
  rings
    .map(area)
    .filter((a) => a > 1e-9)
    .sort((a, b) => a - b);

/** The areas of the parts that two rings have in common. */
const common = (a: readonly Pair[], b: readonly Pair[]): number[] =>
  areas((intersection([a as Pair[]], [b as Pair[]]) as Pair[][][]).map(([outer]) => outer as Pair[]));

function near(found: readonly number[], expected: readonly number[], what: string): void {
  expect(found.length, what).toBe(expected.length);
  found.forEach((a, i) => {
    expect(Math.abs(a - (expected[i] as number)), what).toBeLessThan(1e-8);
  });
}

/** Rings on a grid and off it, each with a line across it: on a grid it often passes corners and sides. */
function rings(seed: number, count: number): { ring: Pair[]; axis: 'x' | 'y'; at: number }[] {
  const next = drawn(seed);
  const list: { ring: Pair[]; axis: 'x' | 'y'; at: number }[] = [];
  while (list.length < count) {
    const grid = [0, 0.5, 1][Math.floor(next() * 3)] as number;
    const ring = starAround(next, [3, -2], 4, grid);
    const axis = next() < 0.5 ? 'x' : 'y';
    const along = ring.map((p) => p[axis === 'x' ? 0 : 1]);
    const at = next() < 0.5 ? Math.round(along[0] as number) : -2 + 6 * next();
    if (isRing(ring)) list.push({ ring, axis, at });
  }
  return list;
}

/** Yards with sides along x and y: a line along a side is common. */
function combs(seed: number, count: number): { ring: Pair[]; axis: 'x' | 'y'; at: number }[] {
  const next = drawn(seed);
  return Array.from({ length: count }, () => {
    const heights = Array.from({ length: 2 + Math.floor(next() * 4) }, () => 1 + Math.floor(next() * 4));
    const above = heights.flatMap((h, i): Pair[] => [
      [i, h],
      [i + 1, h],
    ]);
    const ring = [[0, 0] as Pair, [heights.length, 0] as Pair, ...above.reverse()];
    const once = ring.filter((p, i) => {
      const q = ring[(i + 1) % ring.length] as Pair;
      return p[0] !== q[0] || p[1] !== q[1];
    });
    const turned = next() < 0.5;
    return {
      ring: turned ? once.map(([x, y]): Pair => [-y, x]) : once,
      axis: next() < 0.5 ? 'x' : 'y',
      at: Math.floor(next() * 8) / 2 - (turned ? 2 : 0),
    };
  });
}

const BIG = 50;
const half = (axis: 'x' | 'y', at: number, above: boolean): Pair[] => {
  const [lo, hi] = above ? [at, BIG] : [-BIG, at];
  return axis === 'x'
    ? [
        [lo, -BIG],
        [hi, -BIG],
        [hi, BIG],
        [lo, BIG],
      ]
    : [
        [-BIG, lo],
        [BIG, lo],
        [BIG, hi],
        [-BIG, hi],
      ];
};

const through = (axis: 'x' | 'y', at: number): Shape =>
  axis === 'x' ? line([at, -BIG], [at, BIG]) : line([-BIG, at], [BIG, at]);

const lengthOf = (list: readonly (readonly [Decimal, Decimal])[]): number =>
  list.reduce((sum, [a, b]) => sum + b.minus(a).toNumber(), 0);

describe('a ring cut along a line', () => {
  it('falls into the parts that a clipping library finds on both sides', () => {
    for (const { ring, axis, at } of [...rings(3, runs(300)), ...combs(4, runs(300))]) {
      const what = JSON.stringify({ ring, axis, at });
      const parts = split(corners(ring), axis, new Decimal(at)).map(pairs);
      const expected = [...common(ring, half(axis, at, false)), ...common(ring, half(axis, at, true))];
      near(areas(parts), inOrder(expected), what);
      for (const part of parts) {
        const own = part.map((p) => p[axis === 'x' ? 0 : 1] - at);
        expect(own.every((d) => d > -1e-12) || own.every((d) => d < 1e-12), what).toBe(true);
        // No corner comes twice.
        part.forEach((p, i) => {
          const q = part[(i + 1) % part.length] as Pair;
          expect(Math.hypot(p[0] - q[0], p[1] - q[1]), what).toBeGreaterThan(1e-9);
        });
      }
    }
  });

  it('in binary numbers keeps the area of each side, and its corners lie there', () => {
    const into = new FlatRing();
    for (const { ring, axis, at } of [...rings(5, runs(300)), ...combs(6, runs(100))]) {
      const what = JSON.stringify({ ring, axis, at });
      for (const above of [true, false]) {
        const flat = flatRing(ring.map(([x, y]) => ({ x, y })));
        cutAcross(flat, axis, at, above, into);
        const parts = common(ring, half(axis, at, above));
        near([areaOf(into)], [parts.reduce((sum, a) => sum + a, 0)], what);
        const own = Array.from(into[axis].subarray(0, into.count), (v) => (above ? v - at : at - v));
        expect(
          own.every((d) => d >= -1e-12),
          what,
        ).toBe(true);
        if (parts.length === 1) {
          const spots = Array.from({ length: into.count }, (_, i) => [into.x[i], into.y[i]] as Pair);
          const across = spots.map((p) => p[axis === 'x' ? 1 : 0]);
          expect(extent(into, axis), what).toBeCloseTo(Math.max(...own) - Math.min(...own), 9);
          expect(extent(into, axis === 'x' ? 'y' : 'x'), what).toBeCloseTo(
            Math.max(...across) - Math.min(...across),
            9,
          );
        }
      }
    }
  });

  it('is copied to stay as it is while another is cut', () => {
    const square = flatRing([
      { x: 0, y: 0 },
      { x: 2, y: 0 },
      { x: 2, y: 2 },
      { x: 0, y: 2 },
    ]);
    const into = new FlatRing();
    cutAcross(square, 'x', 1.5, true, into);
    const kept = into.kept();
    cutAcross(square, 'y', 0.25, false, into);
    expect([areaOf(kept), areaOf(into), areaOf(square)]).toEqual([1, 0.5, 4]);
    expect([kept.count, kept.x.length, kept.y.length]).toEqual([4, 4, 4]);
  });

  it('turns by one whole turn, to the left at outside corners', () => {
    for (const { ring } of rings(7, runs(100))) {
      const flat = flatRing(ring.map(([x, y]) => ({ x, y })));
      const turns = ring.map((_, i) => turnAt(flat, i));
      expect(turns.reduce((sum, t) => sum + t, 0)).toBeCloseTo(2 * Math.PI, 9);
      ring.forEach((b, i) => {
        const [a, c] = [
          ring[(i + ring.length - 1) % ring.length] as Pair,
          ring[(i + 1) % ring.length] as Pair,
        ];
        const [u, v] = [Math.atan2(b[1] - a[1], b[0] - a[0]), Math.atan2(c[1] - b[1], c[0] - b[0])];
        const turn = ((v - u + 3 * Math.PI) % (2 * Math.PI)) - Math.PI;
        expect(turns[i]).toBeCloseTo(turn, 9);
      });
    }
  });
});

/** Areas in order. */
const inOrder = (list: readonly number[]): number[] => [...list].sort((a, b) => a - b);

describe('a line through a ring', () => {
  it('runs within it, and along its sides, as far as a geometry library says', () => {
    for (const { ring, axis, at } of [...rings(8, runs(300)), ...combs(9, runs(400))]) {
      const what = JSON.stringify({ ring, axis, at });
      const exact = corners(ring);
      const whole = meet(through(axis, at), polygon(ring));
      const beside = lengthOf(runsBeside(exact, axis, new Decimal(at)));
      expect(beside, what).toBeCloseTo(meet(through(axis, at), edge(ring)), 8);
      const within = runsWithin(exact, axis, new Decimal(at));
      // A run along a side may count to either side of it.
      expect(lengthOf(within), what).toBeGreaterThan(whole - beside - 1e-8);
      expect(lengthOf(within), what).toBeLessThan(whole + 1e-8);
      if (beside === 0) expect(lengthOf(within), what).toBeCloseTo(whole, 8);
      within.forEach(([from, to], i) => {
        expect(to.greaterThan(from), what).toBe(true);
        if (i > 0) expect(from.lessThan((within[i - 1] as [Decimal, Decimal])[1]), what).toBe(false);
      });
      const inside = runsLess(within, runsBeside(exact, axis, new Decimal(at)));
      expect(lengthOf(inside), what).toBeCloseTo(whole - beside, 8);
    }
  });

  it('less other runs is what is in none of them, half step by half step', () => {
    const next = drawn(11);
    const whole = (list: readonly (readonly [number, number])[]) =>
      list.map(([a, b]): [Decimal, Decimal] => [new Decimal(a), new Decimal(b)]);
    for (let i = 0; i < runs(300); i += 1) {
      const starts = Array.from({ length: 3 }, (_, k) => 4 * k + Math.floor(next() * 2));
      const own = starts.map((a): [number, number] => [a, a + 1 + Math.floor(next() * 2)]);
      const holes = Array.from({ length: Math.floor(next() * 4) }, (): [number, number] => {
        const a = Math.floor(next() * 12) - 1;
        return [a, a + 1 + Math.floor(next() * 3)];
      });
      const left = runsLess(whole(own), whole(holes));
      const covers = (list: readonly (readonly [number, number])[], at: number): boolean =>
        list.some(([a, b]) => at > a && at < b);
      const told = left.map(([a, b]): [number, number] => [a.toNumber(), b.toNumber()]);
      for (let at = -1.5; at < 15; at += 1)
        expect(covers(told, at), JSON.stringify({ own, holes, at })).toBe(
          covers(own, at) && !covers(holes, at),
        );
      expect(told.every(([a, b]) => b > a)).toBe(true);
    }
  });
});

describe('what rings have in common', () => {
  it('with a convex one is as large as a clipping library says', () => {
    const next = drawn(12);
    for (const { ring } of [...rings(13, runs(200)), ...combs(14, runs(200))]) {
      const [x, y, w, h] = [3 * next() - 1, 3 * next() - 2, 1 + 3 * next(), 1 + 3 * next()];
      const at = (v: number): number => (next() < 0.5 ? v : Math.round(v));
      const [a, b, c, d] = [at(x), at(y), at(x + w), at(y + h)];
      const box: Pair[] = [
        [a, b],
        [c, b],
        [c, d],
        [a, d],
      ];
      const six: Pair[] = [
        [a, b],
        [(a + c) / 2, b - 0.5],
        [c, b],
        [c, d],
        [(a + c) / 2, d + 0.25],
        [a, d],
      ];
      if (c - a < 0.1 || d - b < 0.1) continue;
      for (const cell of [box, six]) {
        const what = JSON.stringify({ ring, cell });
        const shared = common(ring, cell).reduce((sum, part) => sum + part, 0);
        near([area(pairs(commonPart(corners(ring), corners(cell))))], [shared], what);
        // Corners beyond the box may go: what the ring covers within it stays.
        const lies = boxOf(corners(cell));
        const spots = ring.map(([u, v]) => ({ x: u, y: v }));
        const trimmed = trimmedTo(ring, spots, lies);
        near([area(pairs(commonPart(corners(trimmed), corners(cell))))], [shared], what);
        if (shared > 1e-9) expect(boxesApart(boxOf(corners(ring)), lies), what).toBe(false);
      }
    }
  });

  it('is nothing where a line parts their boxes, be it that they touch', () => {
    const box = (x: number, y: number) =>
      boxOf(
        corners([
          [x, y],
          [x + 2, y],
          [x + 2, y + 1],
          [x, y + 1],
        ]),
      );
    const apart = ([x, y]: Pair): boolean => boxesApart(box(0, 0), box(x, y));
    for (const at of [
      [2, 0],
      [-2, 0],
      [0, 1],
      [0, -1],
      [2.5, 0.5],
      [-3, 0],
      [0, 4],
    ] as Pair[])
      expect(apart(at), `${at}`).toBe(true);
    for (const at of [
      [1.9, 0],
      [-1.9, 0],
      [0, 0.9],
      [0, -0.9],
      [0, 0],
    ] as Pair[])
      expect(apart(at), `${at}`).toBe(false);
  });

  it('is cut off beyond a box: corners in its row or column, but no others, are dropped', () => {
    const box = boxOf(
      corners([
        [0, 0],
        [1, 0],
        [1, 1],
        [0, 1],
      ]),
    );
    // A saw of many teeth beyond each side in turn: of the teeth few are left.
    const teeth = Array.from({ length: 20 }, (_, i): Pair => [2 + (i % 2), 0.05 * i]);
    const quarter = ([x, y]: Pair): Pair => [0.5 - (y - 0.5), x];
    const body: Pair[] = [
      [-1, 1],
      [-1, -0.1],
    ];
    let ring: Pair[] = [...body, ...teeth];
    for (let k = 0; k < 4; k += 1) {
      const left = trimmedTo(
        ring,
        ring.map(([x, y]) => ({ x, y })),
        box,
      );
      expect(left.length).toBeLessThanOrEqual(5);
      near(
        [area(pairs(commonPart(corners(left), corners(SQUARE))))],
        [common(ring, SQUARE).reduce((sum, a) => sum + a, 0)],
        `${k}`,
      );
      ring = ring.map(quarter);
    }
  });
});

const SQUARE: Pair[] = [
  [0, 0],
  [1, 0],
  [1, 1],
  [0, 1],
];

describe('the measures of a ring', () => {
  it('are its ends along both axes, the narrowest that it is, and whether it is convex', () => {
    for (const { ring } of [...rings(15, runs(200)), ...combs(16, runs(60))]) {
      const what = JSON.stringify(ring);
      const exact = corners(ring);
      for (const axis of ['x', 'y'] as const) {
        const values = ring.map((p) => p[axis === 'x' ? 0 : 1]);
        expect(
          endsOf(exact, axis).map((d) => d.toNumber()),
          what,
        ).toEqual([Math.min(...values), Math.max(...values)]);
      }
      const spots = ring.map(([x, y]) => ({ x, y }));
      const narrow = (new MinimumDiameter(polygon(ring) as never) as unknown as Shape).getLength();
      expect(leastWidth(spots), what).toBeCloseTo(narrow, 9);
      const hull = new ConvexHull(polygon(ring) as never).getConvexHull() as unknown as Shape;
      expect(isConvex(spots), what).toBe(hull.getArea() - area(ring) < 1e-9);
      const box = boxOf(exact);
      expect([box.lo, box.hi], what).toEqual([
        { x: Math.min(...ring.map(([x]) => x)), y: Math.min(...ring.map(([, y]) => y)) },
        { x: Math.max(...ring.map(([x]) => x)), y: Math.max(...ring.map(([, y]) => y)) },
      ]);
    }
  });

  it('tell ends apart that differ in the twentieth digit', () => {
    const tiny = new Decimal('1e-20');
    const one = new Decimal(1);
    const ring = [
      { x: one, y: one },
      { x: one.minus(tiny), y: one.plus(tiny) },
      { x: one.plus(tiny), y: one.minus(tiny) },
    ];
    for (const turned of [ring, [...ring].reverse(), [ring[1], ring[2], ring[0]] as typeof ring])
      for (const axis of ['x', 'y'] as const)
        expect(endsOf(turned, axis).map(String)).toEqual([one.minus(tiny), one.plus(tiny)].map(String));
  });
});

describe('a turn', () => {
  it('lays its own direction along x, and back', () => {
    // Three, four and five: a turn that is exact in decimals.
    const turn = { cos: new Decimal('0.8'), sin: new Decimal('0.6') };
    const p = { x: new Decimal(8), y: new Decimal(6) };
    expect(Object.values(turnedIn(p, turn)).map(String)).toEqual(['10', '0']);
    expect(Object.values(turnedOut({ x: new Decimal(10), y: new Decimal(0) }, turn)).map(String)).toEqual([
      '8',
      '6',
    ]);
    // A quarter to the left of it comes to lie along y.
    expect(Object.values(turnedIn({ x: new Decimal(-6), y: new Decimal(8) }, turn)).map(String)).toEqual([
      '0',
      '10',
    ]);
  });
});

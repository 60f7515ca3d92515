/** Corners in their places: each shape against the measurements it was given by, and against closed forms. */

import { describe, expect, it } from 'vitest';
import { InputError, length, slabVolume } from '../../src';
import { insetRing } from '../../src/geometry/inset';
import { movedRing, turnedRing } from '../../src/geometry/offset';
import { type Corner, doubleArea } from '../../src/geometry/polygon';
import { centroidOf } from '../../src/outline/centroid';
import { cornersOf } from '../../src/outline/corners';
import { edgesOf } from '../../src/outline/curved';
import { extremePoints } from '../../src/outline/extent';
import { type OutlineInput, type OutlineOf, outline } from '../../src/outline/outline';
import { tapedCorners, walkAround } from '../../src/outline/place';
import { CIRCLE_SIDES, circleRing, holeOf, ringOf } from '../../src/outline/ring';
import { Decimal } from '../../src/quantity/decimal';
import { parse } from '../../src/reckoning/fields';
import { seeded } from '../support/outlines';

const read = (input: OutlineInput) => parse(outline(), input).value;
const cornersFor = (input: OutlineInput): Corner[] => ringOf(read(input));
const pair = ({ x, y }: Corner): [number, number] => [x.toNumber(), y.toNumber()];
const near = (rows: readonly (readonly number[])[]) =>
  rows.map((row) => row.map((v) => expect.closeTo(v, 12)));
const apart = (a: Corner, b: Corner): number =>
  Math.hypot(a.x.minus(b.x).toNumber(), a.y.minus(b.y).toNumber());
const at = <T>(list: readonly T[], i: number): T => list[(i + list.length) % list.length] as T;
const m = (v: number): string => `${v.toFixed(18)} m`;
const areaOf = (ring: readonly Corner[]): number => doubleArea(ring).toNumber() / 2;

describe('corners', () => {
  it.each<[string, OutlineInput, number[][]]>([
    [
      'a rectangle',
      { shape: 'rectangle', length: '7 m', width: '3 m' },
      [
        [0, 0],
        [7, 0],
        [7, 3],
        [0, 3],
      ],
    ],
    [
      'an L',
      { shape: 'L', length: '7 m', width: '5 m', notchLength: '3 m', notchWidth: '1 m' },
      [
        [0, 0],
        [7, 0],
        [7, 4],
        [4, 4],
        [4, 5],
        [0, 5],
      ],
    ],
    [
      'a U',
      { shape: 'U', length: '8 m', width: '5 m', notchLength: '2 m', notchWidth: '1 m' },
      [
        [0, 0],
        [8, 0],
        [8, 5],
        [5, 5],
        [5, 4],
        [3, 4],
        [3, 5],
        [0, 5],
      ],
    ],
    [
      'a trapezoid',
      { shape: 'trapezoid', parallel: ['8 m', '5 m'], height: '2 m' },
      [
        [0, 0],
        [8, 0],
        [6.5, 2],
        [1.5, 2],
      ],
    ],
    // From the origin 3 along x, then 4 square to it: the right angle lies at the far end of the first side.
    [
      'a triangle',
      { shape: 'triangle', sides: ['3 m', '4 m', '5 m'] },
      [
        [0, 0],
        [3, 0],
        [3, 4],
      ],
    ],
    [
      'a triangle that leans',
      { shape: 'triangle', sides: ['14 m', '13 m', '15 m'] },
      [
        [0, 0],
        [14, 0],
        [9, 12],
      ],
    ],
    // A corner on x, the sides of a square of 1 by 1 half a diagonal from the middle.
    [
      'a square on its corner',
      { shape: 'regular', sides: 4, side: '1 m' },
      [
        [Math.SQRT1_2, 0],
        [0, Math.SQRT1_2],
        [-Math.SQRT1_2, 0],
        [0, -Math.SQRT1_2],
      ],
    ],
  ])('of %s lie where they should', (_, input, wanted) => {
    expect(cornersFor(input).map(pair)).toEqual(near(wanted));
  });

  it('of a triangle that cannot be are refused', () => {
    for (const sides of [
      ['3 m', '4 m', '7 m'],
      ['3 m', '4 m', '8 m'],
      ['9 m', '4 m', '3 m'],
    ] as const)
      expect(() => ringOf(read({ shape: 'triangle', sides: [...sides] }), 'o')).toThrow(
        expect.objectContaining({
          issues: [expect.objectContaining({ code: 'no-such-triangle', path: 'o.sides' })],
        }),
      );
  });

  it('of a tape are as far apart as taped, counterclockwise from the origin along x', () => {
    const next = seeded(3);
    for (let i = 0; i < 40; i += 1) {
      const count = 3 + Math.floor(next() * 5);
      const fan = Array.from({ length: count }, (_, k) => {
        const [r, a] = [5 + 20 * next(), ((k + 0.3 + 0.4 * next()) / count) * 3];
        return [r * Math.cos(a), r * Math.sin(a)] as const;
      });
      const ring = [[0, 0] as const, ...fan];
      const sides = ring.map(([x, y], k) => m(Math.hypot(x - at(ring, k + 1)[0], y - at(ring, k + 1)[1])));
      const diagonals = fan.slice(1, -1).map(([x, y]) => m(Math.hypot(x, y)));
      const corners = tapedCorners(read({ shape: 'taped', sides, diagonals }) as OutlineOf<'taped'>, 'o');
      expect(corners.length).toBe(count + 1);
      expect(pair(at(corners, 0))).toEqual([0, 0]);
      expect(at(corners, 1).y.isZero() && at(corners, 1).x.isPositive()).toBe(true);
      for (const [k, side] of sides.entries())
        expect(apart(at(corners, k), at(corners, k + 1))).toBeCloseTo(Number.parseFloat(side), 9);
      for (const [k, diagonal] of diagonals.entries())
        expect(apart(at(corners, 0), at(corners, k + 2))).toBeCloseTo(Number.parseFloat(diagonal), 9);
      expect(areaOf(corners)).toBeGreaterThan(0);
    }
  });

  it('of a walk follow every turn, and its end is as far from its start as it is', () => {
    const legs = [
      { length: '4 m', turn: '60 deg' },
      { length: '3 m', turn: '120 deg' },
      { length: '5 m', turn: '-270 deg' },
      { length: '2 m', turn: 'right' },
      { length: '1 m', turn: 'left' },
    ] as const;
    const given = read({ shape: 'walk', legs: [...legs], closingLimit: '9 m' }) as OutlineOf<'walk'>;
    const { corners, closingError } = walkAround(given, 'o');
    // Along 0, 60, 180, -90 (= 180 - 270) and -180 degrees.
    const s = Math.sqrt(3) / 2;
    const ends = [
      [0, 0],
      [4, 0],
      [5.5, 3 * s],
      [0.5, 3 * s],
      [0.5, 3 * s - 2],
    ];
    expect(corners.map(pair)).toEqual(near(ends));
    expect(closingError.toNumber('m')).toBeCloseTo(Math.hypot(-0.5, 3 * s - 2), 12);
  });

  it('of a walk with square corners are exact', () => {
    const turns = ['left', '90 deg', '-270 deg', '450 deg', 'right', '630 deg', '0 deg'] as const;
    const legs = turns.map((turn) => ({ length: '0.1 m', turn }));
    const given = read({ shape: 'walk', legs, closingLimit: '9 m' }) as OutlineOf<'walk'>;
    // Along 0, 90, 180, 270, 0, -90 and 180 degrees.
    expect(walkAround(given, 'o').corners.map(({ x, y }) => `${x} ${y}`)).toEqual([
      '0 0',
      '0.1 0',
      '0.1 0.1',
      '0 0.1',
      '0 0',
      '0.1 0',
      '0.1 -0.1',
    ]);
  });

  it('of a walk may miss by a hundredth of the way around, and by no more', () => {
    const walk = (off: string) =>
      read({
        shape: 'walk',
        legs: [
          { length: '30 m', turn: 'left' },
          { length: '20 m', turn: 'left' },
          { length: '30 m', turn: 'left' },
          { length: off, turn: 'left' },
        ],
      }) as OutlineOf<'walk'>;
    // The way is 80 + l, and the miss 20 - l: alike at l = 19.2 / 1.01.
    expect(walkAround(walk('19.0100 m'), 'o').closingError.format('m', { places: 2 })).toBe('0.99 m');
    expect(() => walkAround(walk('19.0000 m'), 'o')).toThrow(InputError);
    expect(walkAround(walk('20.9898 m'), 'o').corners.length).toBe(4);
    expect(() => walkAround(walk('21.0103 m'), 'o')).toThrow(InputError);
  });
});

/** No side of a ring that stands for an arc turns by more than a side of the circle does. */
const finest = 2 * Math.sin(Math.PI / CIRCLE_SIDES);

describe('arcs as corners', () => {
  it('of a circle lie on it, or its sides do', () => {
    const within = circleRing(length('10 m'), 'inside');
    const around = circleRing(length('10 m'), 'outside');
    expect([within.length, around.length]).toEqual([CIRCLE_SIDES, CIRCLE_SIDES]);
    for (const [i, corner] of within.entries()) {
      const turn = (2 * Math.PI * i) / CIRCLE_SIDES;
      expect(pair(corner)).toEqual(near([[5 * Math.cos(turn), 5 * Math.sin(turn)]])[0]);
      const [a, b] = [at(around, i), at(around, i + 1)];
      expect(Math.hypot(...pair({ x: a.x.plus(b.x).div(2), y: a.y.plus(b.y).div(2) }))).toBeCloseTo(5, 12);
    }
    // The quarters lie on the axes to the last digit.
    expect([at(within, 24).x.isZero(), at(within, 48).y.isZero(), at(within, 72).x.isZero()]).toEqual([
      true,
      true,
      true,
    ]);
    const ring = read({ shape: 'ring', outerDiameter: '10 m', innerDiameter: '4 m' });
    expect(holeOf(ring)).toEqual(circleRing(length('4 m'), 'outside'));
    expect(holeOf(read({ shape: 'circle', diameter: '10 m' }))).toBeUndefined();
    expect(ringOf(ring)).toEqual(within);
  });

  it('of a sector lie on both its circles, as fine as those of a circle', () => {
    for (const degrees of [1, 30, 90, 135, 180, 270, 359]) {
      const turn = (degrees * Math.PI) / 180;
      const steps = Math.ceil((turn / (2 * Math.PI)) * CIRCLE_SIDES - 1e-9);
      const pie = cornersFor({ shape: 'sector', radius: '6 m', angle: `${degrees} deg` });
      expect(pair(at(pie, -1))).toEqual([0, 0]);
      expect(pie.length).toBe(steps + 2);
      const slice = cornersFor({
        shape: 'sector',
        radius: '6 m',
        angle: `${degrees} deg`,
        innerRadius: '2 m',
      });
      expect(slice.length).toBe(2 * steps + 2);
      const wanted = Array.from({ length: steps + 1 }, (_, i) => (turn * i) / steps);
      const on = (r: number, a: number): [number, number] => [r * Math.cos(a), r * Math.sin(a)];
      expect(pie.slice(0, -1).map(pair)).toEqual(near(wanted.map((a) => on(6, a))));
      expect(slice.map(pair)).toEqual(
        near([...wanted.map((a) => on(6, a)), ...wanted.toReversed().map((a) => on(2, a))]),
      );
    }
  });

  // Thales and the circle through three corners: every corner of an edge lies as far from the center as its ends.
  it('of a curved edge lie on the circle through its ends and its top, whichever way it goes', () => {
    for (const [rise, mirror] of [
      [1, 1],
      [-1, 1],
      [1, -1],
      [-1, -1],
      [4, 1],
      [7, 1],
      [7, -1],
    ] as const) {
      const points = [
        { x: m(3), y: m(2 * mirror), rise: m(rise) },
        { x: m(11), y: m(8 * mirror) },
        { x: m(0), y: m(16 * mirror) },
      ];
      const corners = cornersFor({ shape: 'curved', points });
      const chord = 10;
      const radius = (chord * chord + 4 * rise * rise) / (8 * Math.abs(rise));
      // Square to the chord (8, 6), to its right for an counterclockwise ring that swells.
      const side = Math.sign(rise) * mirror;
      const [mx, my] = [7, 5 * mirror];
      const [nx, ny] = [0.6 * side * mirror, -0.8 * side];
      const [cx, cy] = [mx + nx * (Math.abs(rise) - radius), my + ny * (Math.abs(rise) - radius)];
      const [tx, ty] = [mx + nx * Math.abs(rise), my + ny * Math.abs(rise)];
      const arc = corners.filter(
        (c) => Math.abs(Math.hypot(c.x.toNumber() - cx, c.y.toNumber() - cy) - radius) < 1e-9,
      );
      const angle = 4 * Math.atan((2 * Math.abs(rise)) / chord);
      const steps = Math.max(2, Math.ceil((angle / (2 * Math.PI)) * CIRCLE_SIDES));
      expect([corners.length, arc.length]).toEqual([steps + 2, steps + 1]);
      // Its top is as far out as the rise says, within what one side of the ring hides.
      expect(Math.min(...arc.map((c) => Math.hypot(c.x.toNumber() - tx, c.y.toNumber() - ty)))).toBeLessThan(
        radius * finest,
      );
      expect(areaOf(corners)).toBeGreaterThan(0);
      // What n chords in place of the arc leave over the edge.
      const between = ((radius * radius) / 2) * (steps * Math.sin(angle / steps) - Math.sin(angle));
      expect(areaOf(corners)).toBeCloseTo(0.5 * (8 * 14 + 6 * 3) + Math.sign(rise) * between, 9);
      // Of the arc, no side is longer than one of the circle.
      for (const [i, c] of corners.entries())
        if (arc.includes(c) && arc.includes(at(corners, i + 1)) && steps > 2)
          expect(apart(c, at(corners, i + 1))).toBeLessThan(radius * finest * 1.0001);
    }
  });

  it('of a very flat edge are three: its ends and its top', () => {
    const corners = cornersFor({
      shape: 'curved',
      points: [
        { x: '0 m', y: '0 m', rise: '1 mm' },
        { x: '8 m', y: '0 m' },
        { x: '8 m', y: '6 m' },
      ],
    });
    expect(corners.map(pair)).toEqual(
      near([
        [0, 0],
        [4, -0.001],
        [8, 0],
        [8, 6],
      ]),
    );
  });

  it('curve by rise or by radius, never by both, and no tighter than half a circle', () => {
    const points = (curve: object) => [
      { x: '0 m', y: '0 m', ...curve },
      { x: '6 m', y: '0 m' },
      { x: '0 m', y: '8 m' },
    ];
    const edge = (curve: object) => {
      const { points: given } = read({
        shape: 'curved',
        points: points(curve),
      } as OutlineInput) as OutlineOf<'curved'>;
      return at(edgesOf(given, cornersOf(given), 'o'), 0);
    };
    // Chord 6, radius 5: the center lies 4 from the chord, so it rises by 1.
    expect(edge({ radius: '5 m' }).rise.toNumber()).toBe(1);
    expect(edge({ radius: '-5 m' }).rise.toNumber()).toBe(-1);
    expect(edge({ radius: '3 m' }).rise.toNumber()).toBe(3);
    expect(edge({ radius: '-3 m' }).rise.toNumber()).toBe(-3);
    expect(edge({}).arc).toBeUndefined();
    const { radius, angle, length: along, area } = edge({ rise: '-1 m' }).arc ?? expect.fail('an arc');
    expect([radius, angle, along, area].map(Number)).toEqual(
      near([[5, 2 * Math.asin(0.6), 10 * Math.asin(0.6), 25 * Math.asin(0.6) - 12]])[0],
    );
    const code = (curve: object) => {
      try {
        edge(curve);
      } catch (error) {
        return (error as InputError).issues.map((issue) => `${issue.code} at ${issue.path}`);
      }
      return [];
    };
    expect(code({ radius: '2.999 m' })).toEqual([expect.stringMatching(/ at o\[0\]\.radius$/)]);
    expect(code({ radius: '5 m', rise: '1 m' })).toEqual([expect.stringMatching(/ at o\[0\]$/)]);
  });
});

describe('centroids', () => {
  it('of all shapes are those of very fine rings', () => {
    const shapes: readonly (readonly [OutlineInput, number, number])[] = [
      [{ shape: 'circle', diameter: '4 m' }, 0, 0],
      [{ shape: 'ring', outerDiameter: '4 m', innerDiameter: '1 m' }, 0, 0],
      [{ shape: 'regular', sides: 5, side: '4 m' }, 0, 0],
      // Half a circle balances at 4 r / 3π above its middle.
      [{ shape: 'sector', radius: '3 m', angle: '180 deg' }, 0, 4 / Math.PI],
      // Between 3 and 6: 4 (r³ - q³) / 3π (r² - q²).
      [
        { shape: 'sector', radius: '6 m', angle: '180 deg', innerRadius: '3 m' },
        0,
        (4 * 189) / (3 * Math.PI * 27),
      ],
      // A quarter: as far along x as along y.
      [{ shape: 'sector', radius: '3 m', angle: '90 deg' }, 4 / Math.PI, 4 / Math.PI],
      [{ shape: 'triangle', sides: ['3 m', '4 m', '5 m'] }, 2, 4 / 3],
      [{ shape: 'trapezoid', parallel: ['8 m', '8 m'], height: '2 m' }, 4, 1],
    ];
    // About the origin they balance there to the last digit.
    for (const [input] of shapes.slice(0, 3)) {
      const { x, y } = centroidOf(read(input));
      expect([x.isZero(), y.isZero()]).toEqual([true, true]);
    }
    for (const [input, x, y] of shapes) expect(pair(centroidOf(read(input)))).toEqual(near([[x, y]])[0]);
  });

  it('of curved shapes balance box and half circles', () => {
    for (const mirror of [1, -1]) {
      // A box of 6 by 4 with a half circle of 2 out at its right end, and one in at its left.
      const y = (v: number): string => m(v * mirror);
      const box = (left: number, right: number) =>
        pair(
          centroidOf(
            read({
              shape: 'curved',
              points: [
                { x: m(10), y: y(20) },
                { x: m(16), y: y(20), rise: m(right) },
                { x: m(16), y: y(24) },
                { x: m(10), y: y(24), rise: m(left) },
              ],
            }),
          ),
        );
      const half = 2 * Math.PI;
      const off = 8 / (3 * Math.PI);
      expect(box(0, 2)).toEqual(near([[(24 * 13 + half * (16 + off)) / (24 + half), 22 * mirror]])[0]);
      expect(box(-2, 0)).toEqual(near([[(24 * 13 - half * (10 + off)) / (24 - half), 22 * mirror]])[0]);
      expect(box(2, 2)).toEqual(near([[13, 22 * mirror]])[0]);
      // Both swell the same way: the box moves by the distance of its half circles.
      expect(box(-2, 2)).toEqual(near([[(24 * 13 + half * 6) / 24, 22 * mirror]])[0]);
    }
  });

  it('of two corners are those of the lens or the half moon between its arcs', () => {
    const moon = (first: number, second: number) =>
      pair(
        centroidOf(
          read({
            shape: 'curved',
            points: [
              { x: '-2 m', y: '1 m', ...(first ? { rise: m(first) } : {}) },
              { x: '2 m', y: '1 m', ...(second ? { rise: m(second) } : {}) },
            ],
          }),
        ),
      );
    // From left to right and back: what swells lies below the way out, and above the way back.
    expect(moon(2, 0)).toEqual(near([[0, 1 - 8 / (3 * Math.PI)]])[0]);
    expect(moon(0, 2)).toEqual(near([[0, 1 + 8 / (3 * Math.PI)]])[0]);
    expect(moon(2, 2)).toEqual(near([[0, 1]])[0]);
  });
});

describe('the lowest and highest of a plane', () => {
  const reach = (input: OutlineInput, b: number, c: number): [number, number] => {
    const heights = extremePoints(read(input), new Decimal(b), new Decimal(c)).map(
      ({ x, y }) => b * x.toNumber() + c * y.toNumber(),
    );
    return [Math.min(...heights), Math.max(...heights)];
  };
  const directions = Array.from({ length: 8 }, (_, i) => (i * Math.PI) / 4 + 0.1);

  it('over a circle or a ring lie a radius away, down and up', () => {
    for (const a of directions) {
      const [b, c] = [0.5 * Math.cos(a), 0.5 * Math.sin(a)];
      expect(reach({ shape: 'circle', diameter: '6 m' }, b, c)).toEqual(near([[-1.5, 1.5]])[0]);
      expect(reach({ shape: 'ring', outerDiameter: '6 m', innerDiameter: '1 m' }, b, c)).toEqual(
        near([[-1.5, 1.5]])[0],
      );
    }
    // Level: only the corners count, and all are as high.
    expect(reach({ shape: 'circle', diameter: '6 m' }, 0, 0).map(Math.abs)).toEqual([0, 0]);
  });

  // By trying: the arcs in five hundred steps.
  const fine = (
    arcs: readonly { x: number; y: number; r: number; from: number; turn: number }[],
    more: number[][],
    b: number,
    c: number,
  ) => {
    const along = arcs.flatMap(({ x, y, r, from, turn }) =>
      Array.from({ length: 501 }, (_, i) => {
        const a = from + (turn * i) / 500;
        return b * (x + r * Math.cos(a)) + c * (y + r * Math.sin(a));
      }),
    );
    const all = [...along, ...more.map(([x = 0, y = 0]) => b * x + c * y)];
    return [Math.min(...all), Math.max(...all)].map((v) => expect.closeTo(v, 3));
  };

  it.each([
    [40, 0],
    [200, 0],
    [330, 0],
    [40, 2],
    [200, 2],
    [330, 2],
  ])(
    'over a sector of %d degrees from %d to 6 m lie on its arcs where it is steepest, else at a corner',
    (degrees, inner) => {
      const turn = (degrees * Math.PI) / 180;
      const radii = inner ? [6, inner] : [6];
      const arcs = radii.map((r) => ({ x: 0, y: 0, r, from: 0, turn }));
      const given: OutlineInput = {
        shape: 'sector',
        radius: '6 m',
        angle: `${degrees} deg`,
        ...(inner ? { innerRadius: m(inner) } : {}),
      };
      for (const a of directions) {
        const [b, c] = [Math.cos(a), Math.sin(a)];
        expect(reach(given, b, c)).toEqual(fine(arcs, inner ? [] : [[0, 0]], b, c));
      }
    },
  );

  it('over a curved outline lie on the arcs that swell or draw in', () => {
    for (const mirror of [1, -1])
      for (const [first, second] of [
        [3, 0],
        [-3, 0],
        [0, 4],
        [1, -2],
      ] as const)
        for (const a of directions.slice(0, 4)) {
          const [b, c] = [Math.cos(a), Math.sin(a)];
          const corners = [
            [0, 0],
            [6, 0],
            [6, 8 * mirror],
            [0, 8 * mirror],
          ];
          const points = corners.map(([x = 0, y = 0], i) => ({
            x: m(x),
            y: m(y),
            rise: m([first, second, 0, 0][i] ?? 0),
          }));
          // Chords 6 and 8 with a rise h: the center lies r - h from the chord, on the inner side of what swells.
          const arcs = [
            [3, 0, 0, -1, 6, first],
            [6, 4, 1, 0, 8, second],
          ].flatMap(([x = 0, y = 0, nx = 0, ny = 0, chord = 0, rise = 0]) => {
            if (rise === 0) return [];
            const h = Math.abs(rise);
            const r = (chord * chord + 4 * h * h) / (8 * h);
            const s = Math.sign(rise);
            const angle = 4 * Math.atan((2 * h) / chord);
            return [
              {
                x: x - nx * s * (r - h),
                y: (y - ny * s * (r - h)) * mirror,
                r,
                from: Math.atan2(ny * s * mirror, nx * s) - angle / 2,
                turn: angle,
              },
            ];
          });
          expect(reach({ shape: 'curved', points }, b, c)).toEqual(fine(arcs, corners, b, c));
        }
  });
});

describe('a moved ring', () => {
  const ringFrom = (...points: readonly (readonly [number, number])[]): Corner[] =>
    points.map(([x, y]) => ({ x: new Decimal(x), y: new Decimal(y) }));

  it('has every side as far from where it was, and no more sides than it had', () => {
    const next = seeded(11);
    for (let i = 0; i < 60; i += 1) {
      const count = 3 + Math.floor(next() * 6);
      const ring = ringFrom(
        ...Array.from({ length: count }, (_, k) => {
          const [r, a] = [5 + 5 * next(), ((k + 0.6 * next()) / count) * 2 * Math.PI];
          return [r * Math.cos(a), r * Math.sin(a)] as const;
        }),
      );
      const turned = turnedRing(ring) ?? expect.fail('no fold');
      for (const by of [0.05, -0.05]) {
        const moved = movedRing(turned, new Decimal(by)) ?? expect.fail('no side vanishes');
        for (const [k, a] of ring.entries()) {
          const [b, p, q] = [at(ring, k + 1), at(moved, k), at(moved, k + 1)];
          const [dx, dy] = [b.x.minus(a.x).toNumber(), b.y.minus(a.y).toNumber()];
          const off = (c: Corner): number =>
            (dy * c.x.minus(a.x).toNumber() - dx * c.y.minus(a.y).toNumber()) / Math.hypot(dx, dy);
          expect(off(p)).toBeCloseTo(by, 9);
          expect(off(q)).toBeCloseTo(by, 9);
        }
      }
    }
  });

  it('is none where a side would vanish, just then and no sooner', () => {
    const box = turnedRing(ringFrom([0, 0], [7, 0], [7, 4], [0, 4])) ?? expect.fail('no fold');
    expect(movedRing(box, new Decimal('-1.999999'))?.map(pair)).toEqual(
      near([
        [1.999999, 1.999999],
        [5.000001, 1.999999],
        [5.000001, 2.000001],
        [1.999999, 2.000001],
      ]),
    );
    expect(movedRing(box, new Decimal(-2))).toBeUndefined();
    expect(movedRing(box, new Decimal(-3))).toBeUndefined();
    expect(movedRing(box, new Decimal(100))?.length).toBe(4);
    // A notch of 2 by 1 closes from both of its sides when moved outwards by half its width.
    const notched =
      turnedRing(ringFrom([0, 0], [8, 0], [8, 5], [5, 5], [5, 4], [3, 4], [3, 5], [0, 5])) ?? expect.fail();
    expect(movedRing(notched, new Decimal('0.999'))?.length).toBe(8);
    expect(movedRing(notched, new Decimal(1))).toBeUndefined();
    // Two rooms and a passage of 0.4: set in by more than half of that they fall apart, though no side vanishes.
    const rooms = ringFrom(
      [0, 0],
      [4, 0],
      [4, 1.8],
      [8, 1.8],
      [8, 0],
      [12, 0],
      [12, 4],
      [8, 4],
      [8, 2.2],
      [4, 2.2],
      [4, 4],
      [0, 4],
    );
    expect(insetRing(rooms, new Decimal('0.1'))?.length).toBe(12);
    expect(insetRing(rooms, new Decimal('0.5'))).toBeUndefined();
    expect(insetRing(ringFrom([0, 0], [4, 0], [2, 0]), new Decimal('0.1'))).toBeUndefined();
    // One that turns right about has no mitre.
    expect(turnedRing(ringFrom([0, 0], [4, 0], [2, 0]))).toBeUndefined();
  });
});

/** Everything an outline is measured by, one good value each. */
const GOOD: readonly OutlineInput[] = [
  { shape: 'rectangle', length: '7 m', width: '3 m' },
  { shape: 'triangle', sides: ['3 m', '4 m', '5 m'] },
  { shape: 'trapezoid', parallel: ['8 m', '5 m'], height: '2 m' },
  { shape: 'L', length: '7 m', width: '5 m', notchLength: '3 m', notchWidth: '1 m' },
  { shape: 'U', length: '8 m', width: '5 m', notchLength: '2 m', notchWidth: '1 m' },
  { shape: 'regular', sides: 5, side: '2 m' },
  { shape: 'taped', sides: ['3 m', '3 m', '3 m', '3 m'], diagonals: ['4 m'] },
  { shape: 'circle', diameter: '4 m' },
  { shape: 'ring', outerDiameter: '4 m', innerDiameter: '2 m' },
  { shape: 'sector', radius: '4 m', angle: '90 deg', innerRadius: '1 m' },
  { shape: 'area', area: '9 m2' },
  { shape: 'offsets', spacing: '1 m', offsets: ['2 m', '3 m', '2 m'], rule: 'simpson' },
];

describe('a dimension', () => {
  const said = (input: unknown): string => {
    const tried = slabVolume.attempt({ outline: input as OutlineInput, thickness: '100 mm' });
    return tried.ok
      ? 'taken'
      : tried.error.issues.map((i) => `${i.code} ${i.path}: ${i.sentence}`).join('; ');
  };
  // Each in turn made nothing, less than nothing, and left out.
  const cases = GOOD.flatMap((good) =>
    Object.entries(good).flatMap(([name, value]): [string, string, (v: unknown) => object, string][] => {
      if (typeof value === 'number' || name === 'shape' || name === 'rule') return [];
      if (!Array.isArray(value))
        return [[good.shape, name, (v) => ({ ...good, [name]: v }), `outline.${name}`]];
      return [[good.shape, name, (v) => ({ ...good, [name]: [v, ...value.slice(1)] }), `outline.${name}[0]`]];
    }),
  );

  it('has each good value taken', () => {
    for (const good of GOOD) expect(said(good)).toBe('taken');
    expect(cases.length).toBe(25);
  });

  it.each(cases)(
    'of %s, %s, must be more than nothing, and is named where it is not',
    (shape, name, make, path) => {
      const unit = name === 'angle' ? 'deg' : name === 'area' ? 'm2' : 'm';
      const least = shape === 'offsets' && name === 'offsets' ? 'negative' : 'not-positive';
      expect(said(make(`-1 ${unit}`))).toMatch(new RegExp(`^${least} ${path.replace(/[[\].]/g, '\\$&')}: `));
      if (least === 'not-positive') expect(said(make(`0 ${unit}`))).toContain(`not-positive ${path}: `);
      // Lists speak of "each side".
      const spoken = path.endsWith(']')
        ? `each ${name === 'parallel' ? 'side' : name.replace(/s$/, '')}`
        : name;
      expect(said(make('5'))).toContain(`missing-unit ${path}: ${spoken} needs a unit`);
    },
  );
});

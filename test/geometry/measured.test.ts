/** What each shape measures, once around too, and how its working is written: by closed forms reckoned by hand. */

import { describe, expect, it } from 'vitest';
import { InputError } from '../../src/index';
import { measure } from '../../src/outline/measure';
import { type OutlineInput, outline } from '../../src/outline/outline';
import { parse } from '../../src/reckoning/fields';
import { Pad } from '../../src/reckoning/pad';
import { wordsText } from '../../src/report/view';
import { disagreement } from '../support/working';

function measured(input: OutlineInput) {
  const pad = new Pad('customary');
  const { area, perimeter, closingError } = measure(parse(outline(), input).value, pad, 'o');
  for (const step of pad.working) expect(disagreement(step)).toBeLessThan(5e-3);
  return {
    area: area.toNumber('m2'),
    around: perimeter?.toNumber('m'),
    closing: closingError?.toNumber('m'),
    formulas: pad.working.map(({ formula }) => formula),
    assumed: pad.assumed.map(({ name }) => name),
    unit: area.unit,
  };
}

const refused = (input: OutlineInput): string[] => {
  try {
    measured(input);
  } catch (error) {
    if (error instanceof InputError) return error.issues.map(({ code, path }) => `${code} at ${path}`);
    throw error;
  }
  return [];
};

const near = (v: number | undefined) => (v === undefined ? undefined : expect.closeTo(v, 12));

const box = (length: number, width: number) =>
  ({ shape: 'rectangle', length: `${length} m`, width: `${width} m` }) as const;

describe('a shape', () => {
  const PI = Math.PI;
  it.each<[string, OutlineInput, number, number | undefined, string]>([
    ['rectangle', box(7, 3), 21, 20, 'A = L × W'],
    ['circle', { shape: 'circle', diameter: '3 m' }, 2.25 * PI, 3 * PI, 'A = π × D² ÷ 4'],
    [
      'ring',
      { shape: 'ring', outerDiameter: '6 m', innerDiameter: '4 m' },
      5 * PI,
      10 * PI,
      'A = π × (D² − d²) ÷ 4',
    ],
    [
      'triangle',
      { shape: 'triangle', sides: ['13 m', '14 m', '15 m'] },
      84,
      42,
      'A = √((a + b + c) × (a + b − c) × (b + c − a) × (c + a − b)) ÷ 4',
    ],
    [
      'trapezoid',
      { shape: 'trapezoid', parallel: ['8 m', '5 m'], height: '2 m' },
      13,
      undefined,
      'A = (a + b) × h ÷ 2',
    ],
    [
      'L',
      { shape: 'L', length: '7 m', width: '5 m', notchLength: '3 m', notchWidth: '1 m' },
      32,
      24,
      'A = L × W − l × w',
    ],
    [
      'U',
      { shape: 'U', length: '7 m', width: '5 m', notchLength: '3 m', notchWidth: '1 m' },
      32,
      26,
      'A = L × W − l × w',
    ],
    [
      'sector',
      { shape: 'sector', radius: '6 m', angle: '60 deg' },
      6 * PI,
      12 + 2 * PI,
      'A = π × r² × a ÷ (360 deg)',
    ],
    [
      'sector of a ring',
      { shape: 'sector', radius: '6 m', angle: '60 deg', innerRadius: '3 m' },
      4.5 * PI,
      6 + 3 * PI,
      'A = π × (r² − q²) × a ÷ (360 deg)',
    ],
    ['square', { shape: 'regular', sides: 4, side: '3 m' }, 9, 12, 'A = n × s² ÷ (4 × tan(π ÷ n))'],
    [
      'hexagon',
      { shape: 'regular', sides: 6, side: '2 m' },
      6 * Math.sqrt(3),
      12,
      'A = n × s² ÷ (4 × tan(π ÷ n))',
    ],
  ])('%s has its area, its way around and its formula', (_, input, area, around, formula) => {
    expect(measured(input)).toMatchObject({
      area: near(area),
      around: near(around),
      formulas: [formula],
      unit: 'm2',
    });
    expect(measured(input).closing).toBeUndefined();
  });

  it('given by its area has it, and no working', () => {
    expect(measured({ shape: 'area', area: '12 m2' })).toMatchObject({
      area: 12,
      around: undefined,
      formulas: [],
    });
  });

  it('of three sides that do not meet is refused', () => {
    for (const sides of [
      ['1 m', '2 m', '3 m'],
      ['3 m', '1 m', '2 m'],
      ['2 m', '3 m', '1 m'],
      ['9 m', '1 m', '1 m'],
    ] as const)
      expect(refused({ shape: 'triangle', sides: [...sides] })).toEqual(['no-such-triangle at o.sides']);
  });
});

describe('a shape by its corners', () => {
  const points = (...list: readonly (readonly [number, number, object?])[]) =>
    list.map(([x, y, more = {}]) => ({ x: `${x} m`, y: `${y} m`, ...more }));

  it('is summed counterclockwise, whichever way it is given', () => {
    const corners = points([1, 1], [5, 1], [1, 4]);
    const formula = 'A = (x1 × y2 − x2 × y1 + x2 × y3 − x3 × y2 + x3 × y1 − x1 × y3) ÷ 2';
    for (const given of [corners, corners.toReversed()])
      expect(measured({ shape: 'polygon', points: given })).toMatchObject({
        area: 6,
        around: 12,
        formulas: [formula],
      });
  });

  it('is written out up to twelve of them', () => {
    const ring = (n: number) =>
      points(
        ...Array.from({ length: n }, (_, i) =>
          i < n / 2 ? ([i, -i * (n - i)] as const) : ([n - i, i + n * n] as const),
        ),
      );
    for (const n of [12, 13]) {
      const [formula] = measured({ shape: 'polygon', points: ring(n) }).formulas;
      expect(formula === 'A = S ÷ 2').toBe(n === 13);
    }
  });

  it('that a tape gives is a fan of triangles', () => {
    const square = { shape: 'taped', sides: ['3 m', '4 m', '3 m', '4 m'], diagonals: ['5 m'] } as const;
    const heron = 'A = √((a + b + c) × (a + b − c) × (b + c − a) × (c + a − b)) ÷ 4';
    expect(measured({ ...square })).toMatchObject({
      area: near(12),
      around: 14,
      formulas: [heron, heron, 'A = a1 + a2'],
    });
    expect(measured({ shape: 'taped', sides: ['3 m', '4 m', '5 m'], diagonals: [] })).toMatchObject({
      area: 6,
      around: 12,
      formulas: [heron],
    });
    expect(refused({ ...square, diagonals: [] })).toEqual(['wrong-count at o.diagonals']);
    expect(refused({ ...square, diagonals: ['5 m', '5 m'] })).toEqual(['wrong-count at o.diagonals']);
    expect(refused({ ...square, diagonals: ['7 m'] })).toEqual(['no-such-triangle at o.sides[1]']);
    expect(refused({ ...square, sides: ['3 m', '4 m', '3 m', '8 m'] })).toEqual([
      'no-such-triangle at o.sides[2]',
    ]);
  });

  it('that a walk gives has the way walked around, and how far its end misses', () => {
    const legs = (last: string) => [
      { length: '6 m', turn: 'left' as const },
      { length: '4 m', turn: 'left' as const },
      { length: '6 m', turn: 'left' as const },
      { length: last, turn: 'left' as const },
    ];
    expect(measured({ shape: 'walk', legs: legs('4 m') })).toMatchObject({
      area: 24,
      around: 20,
      closing: 0,
      assumed: ['closingLimit'],
    });
    const off = measured({ shape: 'walk', legs: legs('3.9 m'), closingLimit: '0.1 m' });
    expect(off).toMatchObject({ area: 24, around: near(19.9), closing: near(0.1), assumed: [] });
    expect(refused({ shape: 'walk', legs: legs('3.9 m'), closingLimit: '0.09 m' })).toEqual([
      'does-not-close at o.legs',
    ]);
  });

  it('with arcs over its edges has what lies between chord and arc more, or less', () => {
    // A square of 4 with half circles over two of its sides: one out, one in.
    const given = (first: number, second: number) =>
      measured({
        shape: 'curved',
        points: points([0, 0, { rise: `${first} m` }], [4, 0], [4, 4, { rise: `${second} m` }], [0, 4]),
      });
    const radius = 'r = (c² + 4 × h²) ÷ (8 × h)';
    const between = 'K = r² × (4 × atan(2 × h ÷ c) − sin(4 × atan(2 × h ÷ c))) ÷ 2';
    const half = 2 * Math.PI;
    const arcs = [radius, between];
    expect(given(2, 0)).toMatchObject({ area: near(16 + half), around: near(12 + half) });
    expect(given(2, 0).formulas.slice(1)).toEqual([...arcs, 'A = C + K1']);
    expect(given(-1, 2).formulas.slice(1)).toEqual([...arcs, ...arcs, 'A = C + K1 + K2']);
    // Chord 4, rise 1: radius 2.5 and half its angle is asin(0.8).
    const [turn, r] = [2 * Math.asin(0.8), 2.5];
    expect(given(-1, 2)).toMatchObject({
      area: near(16 + half - (r * r * (turn - Math.sin(turn))) / 2),
      around: near(8 + half + r * turn),
    });
    expect(given(0, 0)).toMatchObject({ area: 16, around: 16 });
    expect(given(0, 0).formulas.length).toBe(1);
    const lens = measured({
      shape: 'curved',
      points: points([-2, 0, { rise: '1 m' }], [2, 0, { rise: '2 m' }]),
    });
    expect(lens).toMatchObject({
      area: near(half + (r * r * (turn - Math.sin(turn))) / 2),
      around: near(half + r * turn),
      formulas: [...arcs, ...arcs, 'A = C + K1 + K2'],
    });
  });

  it('with arcs has each step named by its edge', () => {
    const pad = new Pad('customary');
    const given = points([0, 0], [4, 0, { rise: '1 m' }], [4, 4], [0, 4, { rise: '1 m' }]);
    measure(parse(outline(), { shape: 'curved', points: given }).value, pad, 'o');
    const edges = pad.working.flatMap((step) => /edge (\S+)/.exec(wordsText(step))?.[1] ?? []);
    expect(edges).toEqual(['2', '2', '4', '4']);
  });

  it('with arcs that leave nothing, or meet, is refused', () => {
    expect(
      refused({ shape: 'curved', points: points([0, 0, { rise: '1 m' }], [4, 0, { rise: '-1 m' }]) }),
    ).toEqual(['zero-area at o.points']);
    expect(refused({ shape: 'curved', points: points([0, 0], [4, 0]) })).toEqual(['zero-area at o.points']);
    // Half circles of 2 drawn in from both long sides of a box 3.9 wide.
    expect(
      refused({
        shape: 'curved',
        points: points([0, 0, { rise: '-2 m' }], [4, 0], [4, 3.9, { rise: '-2 m' }], [0, 3.9]),
      }),
    ).toEqual(['self-crossing at o.points']);
    // Chords that cross are refused though arcs would part them.
    expect(refused({ shape: 'curved', points: points([0, 0], [4, 0], [0, 4], [5, 4]) })).toEqual([
      'self-crossing at o.points',
    ]);
  });
});

describe('offsets', () => {
  const given = (rule: 'trapezoidal' | 'simpson', offsets: readonly number[]) =>
    ({ shape: 'offsets', spacing: '2 m', rule, offsets: offsets.map((v) => `${v} m`) }) as const;

  // Both rules as every handbook of surveying has them.
  it('are weighed by their rule, and written out with their weights', () => {
    expect(measured(given('trapezoidal', [1, 2, 4, 3]))).toMatchObject({
      area: 16,
      around: undefined,
      formulas: ['A = d × (y1 + 2 × y2 + 2 × y3 + y4) ÷ 2'],
    });
    expect(measured(given('simpson', [1, 2, 4, 3, 0]))).toMatchObject({
      area: near((2 * (1 + 8 + 8 + 12)) / 3),
      formulas: ['A = d × (y1 + 4 × y2 + 2 × y3 + 4 × y4 + y5) ÷ 3'],
    });
    expect(measured(given('trapezoidal', [3, 5]))).toMatchObject({
      area: 8,
      formulas: ['A = d × (y1 + y2) ÷ 2'],
    });
  });

  it('are said to be weighed by the rule that they are', () => {
    const said = (rule: 'trapezoidal' | 'simpson', count: number): string => {
      const pad = new Pad('customary');
      measure(
        parse(
          outline(),
          given(
            rule,
            Array.from({ length: count }, () => 1),
          ),
        ).value,
        pad,
        'o',
      );
      return pad.working.map((step) => wordsText(step)).join();
    };
    for (const count of [3, 25]) {
      expect(said('trapezoidal', count)).toContain('trapezoidal rule');
      expect(said('simpson', count)).toContain("Simpson's rule");
    }
  });

  it('are written out up to twenty-four of them', () => {
    const same = (n: number): number[] => Array.from({ length: n }, () => 3);
    expect(measured(given('trapezoidal', same(24))).formulas[0]).toContain('y24');
    expect(measured(given('trapezoidal', same(25)))).toMatchObject({
      area: 144,
      formulas: ['A = d × S ÷ 2'],
    });
    expect(measured(given('simpson', same(25)))).toMatchObject({ area: 144, formulas: ['A = d × S ÷ 3'] });
  });

  it("for Simpson's rule are odd in number, and not all nothing", () => {
    expect(refused(given('simpson', [1, 2, 4, 3]))).toEqual(['wrong-count at o.offsets']);
    expect(refused(given('simpson', [1, 2, 4]))).toEqual([]);
    expect(refused(given('trapezoidal', [0, 0, 0]))).toEqual(['zero-area at o.offsets']);
  });
});

describe('shapes together', () => {
  it('are added and taken off', () => {
    expect(
      measured({ shape: 'combined', parts: [box(4, 3), box(5, 2)], less: [box(1, 1), box(2, 1)] }),
    ).toMatchObject({
      area: 19,
      around: undefined,
      formulas: ['A = L × W', 'A = L × W', 'A = L × W', 'A = L × W', 'A = a1 + a2 − b1 − b2'],
    });
    expect(measured({ shape: 'combined', parts: [box(4, 3)] }).formulas).toEqual(['A = L × W', 'A = a1']);
  });

  it('have as much around them as their parts, less twice what these share', () => {
    const two = [box(4, 3), box(5, 3)];
    const formula = 'U = P − 2 × s';
    const joined = measured({ shape: 'combined', parts: two, shared: '3 m' });
    expect(joined).toMatchObject({ area: 27, around: 24 });
    expect(joined.formulas.at(-1)).toBe(formula);
    expect(measured({ shape: 'combined', parts: two, shared: '0 m' }).around).toBe(30);
    // A bay cut out of an edge lies along it by its own side.
    expect(
      measured({ shape: 'combined', parts: [box(8, 4)], less: [box(2, 1)], shared: '2 m' }),
    ).toMatchObject({
      area: 30,
      around: 26,
    });
    expect(refused({ shape: 'combined', parts: two, shared: '15 m' })).toEqual(['does-not-fit at o.shared']);
    expect(refused({ shape: 'combined', parts: two, shared: '14.99 m' })).toEqual([]);
    const trapezoid = { shape: 'trapezoid', parallel: ['8 m', '5 m'], height: '2 m' } as const;
    for (const part of [
      [trapezoid, box(1, 1)],
      [box(1, 1), trapezoid],
    ] as OutlineInput[][])
      expect(refused({ shape: 'combined', parts: part, shared: '1 m' })).toEqual([
        'perimeter-unknown at o.shared',
      ]);
  });

  it('must leave something, and each part is refused where it stands', () => {
    expect(refused({ shape: 'combined', parts: [box(4, 3)], less: [box(4, 3)] })).toEqual([
      'does-not-fit at o.less',
    ]);
    expect(refused({ shape: 'combined', parts: [box(4, 3)], less: [box(4, 2.999)] })).toEqual([]);
    const none = { shape: 'triangle', sides: ['1 m', '1 m', '9 m'] } as const;
    expect(refused({ shape: 'combined', parts: [box(4, 3), { ...none, sides: [...none.sides] }] })).toEqual([
      'no-such-triangle at o.parts[1].sides',
    ]);
    expect(
      refused({
        shape: 'combined',
        parts: [box(4, 3)],
        less: [box(1, 1), { ...none, sides: [...none.sides] }],
      }),
    ).toEqual(['no-such-triangle at o.less[1].sides']);
  });
});

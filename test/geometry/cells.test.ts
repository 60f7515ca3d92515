/** Surfaces over spots on one circle: what must not depend on how they are written. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drainageCheck, probedVolume, type SurfaceDrainageInput } from '../../src/index';
import { runs } from '../support/effort';

type Row = readonly [x: number, y: number, z: number];

/** Every order of a list. */
const orders = <T>(list: readonly T[]): T[][] =>
  list.length < 2
    ? [[...list]]
    : list.flatMap((first, i) => orders(list.filter((_, k) => k !== i)).map((rest) => [first, ...rest]));

/** Quarter turns, mirrors and a shift to where a survey counts from; whole numbers stay whole. */
const MOVES: readonly ((row: Row) => Row)[] = [
  ([x, y, z]) => [-y, x, z],
  ([x, y, z]) => [-x, -y, z],
  ([x, y, z]) => [y, -x, z],
  ([x, y, z]) => [-x, y, z],
  ([x, y, z]) => [y, x, z],
  ([x, y, z]) => [x + 2_000_000, y + 500_000, z],
];

const shuffled = <T>(list: readonly T[], keys: readonly number[]): T[] =>
  list
    .map((item, i) => [item, keys[i % keys.length] ?? 0] as const)
    .sort(([, a], [, b]) => a - b)
    .map(([item]) => item);

/** Spots on a small grid: nearly every one shares a circle with three others. */
const gridSpots = fc.uniqueArray(
  fc.tuple(fc.integer({ min: 0, max: 4 }), fc.integer({ min: 0, max: 4 }), fc.integer({ min: 3, max: 9 })),
  { minLength: 4, maxLength: 14, selector: ([x, y]) => `${x} ${y}` },
);
const keys = fc.array(fc.integer(), { minLength: 14, maxLength: 14 });

describe('probed volume', () => {
  const CORNERS: readonly Row[] = [
    [0, 0, 4],
    [24, 0, 4],
    [24, 24, 4],
    [0, 24, 7],
  ];

  const volumeOf = (rows: readonly Row[], corners: readonly Row[]) =>
    probedVolume({
      outline: { shape: 'polygon', points: corners.map(([x, y]) => ({ x: `${x} ft`, y: `${y} ft` })) },
      probes: rows.map(([x, y, z]) => ({ x: `${x} ft`, y: `${y} ft`, depth: `${z} in` })),
    }).figures;

  // Closed form: 24 ft × 24 ft × the mean of 4, 4, 4 and 7 in.
  it.each(orders(CORNERS).map((rows, i) => [i, rows] as const))(
    'of four corners is area times their mean, in order %i',
    (_, rows) => {
      const { volume } = volumeOf(rows, CORNERS);
      expect([volume.value, volume.unit]).toEqual(['228', 'ft3']);
      expect(volume.format('yd3', { places: 3 })).toBe('8.444 yd3');
    },
  );

  it('does not depend on the order of the probes, on turn, mirror or shift', () => {
    const outlines: readonly (readonly Row[])[] = [
      [
        [0, 0, 0],
        [4, 0, 0],
        [4, 4, 0],
        [0, 4, 0],
      ],
      // An ell: its probes may lie in the notch, which is refused alike however it is written.
      [
        [0, 0, 0],
        [4, 0, 0],
        [4, 2, 0],
        [2, 2, 0],
        [2, 4, 0],
        [0, 4, 0],
      ],
    ];
    let compared = 0;
    fc.assert(
      fc.property(gridSpots, keys, fc.constantFrom(...outlines), (spots, key, outline) => {
        const inside = spots.filter(([x, y]) => outline.length === 4 || x <= 2 || y <= 2);
        if (inside.length === 0) return;
        const wanted = volumeOf(inside, outline).volume;
        const others = [
          volumeOf(shuffled(inside, key), outline),
          ...MOVES.map((move) => volumeOf(inside.map(move), outline.map(move))),
        ];
        for (const { volume } of others) {
          // Exact but where the notch cuts a triangle.
          const off = Math.abs(volume.minus(wanted).toNumber('ft3'));
          expect(off).toBeLessThan(outline.length === 4 ? 1e-40 : 1e-11);
        }
        compared += 1;
      }),
      { numRuns: runs(100) },
    );
    expect(compared).toBeGreaterThan(10);
  });

  // Second method: the mean over both diagonals, triangle by triangle.
  it('of four probes on a circle is the mean by both diagonals', () => {
    const place = (degrees: number): readonly [number, number] =>
      [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)].map(
        (v) => Math.round(v * 5e5) / 5e4,
      ) as [number, number];
    // Corners (±6, ±8) and the like lie on a circle of 10 exactly.
    const circle: readonly (readonly [number, number])[] = [
      [10, 0],
      [8, 6],
      [6, 8],
      [0, 10],
      [-6, 8],
      [-8, 6],
      [-10, 0],
      [-8, -6],
      [-6, -8],
      [0, -10],
      [6, -8],
      [8, -6],
    ];
    expect(place(0)).toEqual([10, 0]);
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.integer({ min: 0, max: 11 }), { minLength: 4, maxLength: 4 }),
        fc.array(fc.integer({ min: 2, max: 9 }), { minLength: 4, maxLength: 4 }),
        (picks, depths) => {
          const rows = [...picks]
            .sort((a, b) => a - b)
            .map((k, i): Row => [...(circle[k] as [number, number]), depths[i] as number]);
          const prism = (...ks: number[]): number => {
            const [a, b, c] = ks.map((k) => rows[k]) as [Row, Row, Row];
            const twice = (b[0] - a[0]) * (c[1] - a[1]) - (c[0] - a[0]) * (b[1] - a[1]);
            return ((Math.abs(twice) / 2) * (a[2] + b[2] + c[2])) / 36;
          };
          const both = (prism(0, 1, 2) + prism(0, 2, 3) + prism(1, 2, 3) + prism(1, 3, 0)) / 2;
          expect(volumeOf(rows, rows).volume.toNumber('ft3')).toBeCloseTo(both, 9);
        },
      ),
      { numRuns: runs(100) },
    );
  });

  it('takes the mean of the probes that lie equally near to a corner', () => {
    const square = [
      [0, 0, 0],
      [10, 0, 0],
      [10, 10, 0],
      [0, 10, 0],
    ] as const;
    const two: Row[] = [
      [5, 2, 4],
      [5, 8, 8],
    ];
    const there = volumeOf(two, square).volume;
    expect(volumeOf([...two].reverse(), square).volume.compareTo(there)).toBe(0);
    const one: Row[] = [
      [2, 5, 4],
      [8, 5, 8],
      [5, 5, 6],
    ];
    expect(volumeOf(one, square).volume.format('ft3')).toBe('50 ft3');
  });
});

describe('drainage of a surface', () => {
  const said = (rows: readonly Row[], wall: readonly [Row, Row]) => {
    const given: SurfaceDrainageInput = {
      table: { unit: 'm', rows: rows.map(([x, y, z]) => [x, y, z / 100]) },
      lines: [
        {
          kind: 'building',
          name: 'wall',
          along: wall.map(([x, y]) => ({ x: `${x} m`, y: `${y} m` })),
        },
      ],
    };
    const attempt = drainageCheck.attempt(given);
    if (!attempt.ok) return attempt.error.issues.map(({ code }) => code).join();
    const { figures: f, cautions } = attempt.result;
    if (!('facets' in f)) return 'no surface';
    const number = (n: number): string => n.toFixed(9);
    return {
      verdict: f.verdict,
      codes: cautions.map(({ code }) => code).sort(),
      facets: f.facets.format(),
      reverse: f.reverse.format(),
      short: f.short.format(),
      steepest: number(f.steepest.toNumber('%')),
      flattest: number(f.flattest.toNumber('%')),
      ponds: f.pondCount.format(),
      volume: number(f.pondVolume.toNumber('m3')),
      area: f.reaches.map(({ area }) => number(area.toNumber('m2'))),
      far: f.longestPath.length.toNumber('m').toFixed(4),
    };
  };
  const WALL: readonly [Row, Row] = [
    [0, 0, 0],
    [4, 0, 0],
  ];
  const edge: readonly Row[] = [0, 1, 2, 3, 4].map((x) => [x, 0, 9] as const);

  it('does not depend on the order of the spots, on turn, mirror or shift', () => {
    fc.assert(
      fc.property(gridSpots, keys, (spots, key) => {
        const rows = [...edge, ...spots.filter(([, y]) => y > 0)];
        const wanted = said(rows, WALL);
        expect(said(shuffled(rows, key), WALL)).toEqual(wanted);
        for (const move of MOVES) {
          const moved = said(rows.map(move), WALL.map(move) as unknown as [Row, Row]);
          // Of two ways alike a path can show but one, and which changes with the turn.
          if (typeof moved === 'string' || typeof wanted === 'string') expect(moved).toBe(wanted);
          else expect(moved).toEqual({ ...wanted, far: moved.far });
        }
      }),
      { numRuns: runs(40) },
    );
  });
});

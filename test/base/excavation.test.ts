/** Earth: volumes by a second way each, and what must hold for any of them. */
import fc from 'fast-check';
import Coordinate from 'jsts/org/locationtech/jts/geom/Coordinate.js';
import GeometryFactory from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';
import BufferOp from 'jsts/org/locationtech/jts/operation/buffer/BufferOp.js';
import BufferParameters from 'jsts/org/locationtech/jts/operation/buffer/BufferParameters.js';
import { describe, expect, it } from 'vitest';
import { excavation, length, type PitInput, volume } from '../../src/index';
import { runs } from '../support/effort';

type XY = readonly [number, number];

/** Corners around a middle, at any radius, in hundredths of a foot. */
const star = fc
  .array(fc.tuple(fc.integer({ min: 0, max: 359 }), fc.integer({ min: 800, max: 2400 })), {
    minLength: 4,
    maxLength: 9,
  })
  .map((corners) => {
    const byTurn = new Map(corners);
    return [...byTurn.entries()]
      .sort(([a], [b]) => a - b)
      .map(([turn, r]): XY => {
        const t = (turn * Math.PI) / 180;
        return [Math.round(r * Math.cos(t)) / 100, Math.round(r * Math.sin(t)) / 100];
      });
  })
  .filter((ring) => ring.length > 3 && ring.every((_, i) => turnAt(ring, i) > 0.01));

/** The turn at a corner, in radians: the library rounds off those that are nearly straight. */
function turnAt(ring: readonly XY[], i: number): number {
  const at = (k: number): XY => ring[(k + ring.length) % ring.length] as XY;
  const [a, b, c] = [at(i - 1), at(i), at(i + 1)];
  const [u, v] = [Math.atan2(b[1] - a[1], b[0] - a[0]), Math.atan2(c[1] - b[1], c[0] - b[0])];
  return Math.abs(Math.atan2(Math.sin(v - u), Math.cos(v - u)));
}

const polygon = (ring: readonly XY[]) => ({
  shape: 'polygon' as const,
  points: ring.map(([x, y]) => ({ x: `${x} ft`, y: `${y} ft` })),
});

const factory = new GeometryFactory();

/** Area of the ring spread with square corners, by a general-purpose geometry library. */
function spreadByLibrary(ring: readonly XY[], by: number): number {
  const closed = [...ring, ring[0] as XY].map(([x, y]) => new Coordinate(x, y));
  const shape = factory.createPolygon(factory.createLinearRing(closed), []);
  const square = new BufferParameters(8, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, 1e6);
  return BufferOp.bufferOp(shape, by, square).getArea();
}

const pit = (input: Omit<PitInput, 'kind'>) => excavation.attempt({ kind: 'pit', ...input });

describe('a pit', () => {
  it('is as wide at the top as jsts (general-purpose geometry library) spreads the outline', () => {
    let compared = 0;
    fc.assert(
      fc.property(star, fc.integer({ min: 1, max: 30 }), (ring, m) => {
        const attempt = pit({ outline: polygon(ring), depth: '2 ft', margin: `${m / 10} ft` });
        if (!attempt.ok) return true; // sides that meet are refused; see below
        const area = attempt.result.figures.topArea?.toNumber('ft2') ?? 0;
        const byLibrary = spreadByLibrary(ring, m / 10);
        compared += 1;
        return Math.abs(area / byLibrary - 1) < 1e-9;
      }),
      { numRuns: runs(400) },
    );
    expect(compared).toBeGreaterThan(runs(400) / 3);
  });

  it('refuses sides that meet when spread, and only for that', () => {
    fc.assert(
      fc.property(star, fc.integer({ min: 1, max: 30 }), (ring, m) => {
        const attempt = pit({ outline: polygon(ring), depth: '2 ft', margin: `${m / 10} ft` });
        if (attempt.ok) return true;
        const codes = attempt.error.issues.map(({ code }) => code);
        return codes.every((code) =>
          ['grown-together', 'self-crossing', 'repeated-point', 'zero-area'].includes(code),
        );
      }),
      { numRuns: runs(200) },
    );
  });

  it('with sloping sides is the sum of very many thin layers', () => {
    // Second method: layers of the rectangle as it widens, by the midpoint rule in plain numbers.
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 40 }),
        fc.integer({ min: 1, max: 40 }),
        fc.integer({ min: 1, max: 12 }),
        fc.integer({ min: 0, max: 4 }),
        fc.integer({ min: 0, max: 6 }),
        (l, w, d, m, s) => {
          const { bankVolume } = excavation({
            kind: 'pit',
            outline: { shape: 'rectangle', length: `${l} ft`, width: `${w} ft` },
            depth: `${d} ft`,
            margin: `${m} ft`,
            sideSlope: `${s / 4}:1`,
          }).figures;
          const layers = 2000;
          let sum = 0;
          for (let i = 0; i < layers; i += 1) {
            const o = 2 * (m + (s / 4) * ((i + 0.5) / layers) * d);
            sum += ((l + o) * (w + o) * d) / layers;
          }
          return Math.abs(bankVolume.toNumber('ft3') / sum - 1) < 1e-6;
        },
      ),
      { numRuns: runs(60) },
    );
  });

  it('grows with the cube of the scale, wherever it lies', () => {
    fc.assert(
      fc.property(star, fc.integer({ min: 2, max: 9 }), fc.integer({ min: -50, max: 50 }), (ring, k, x) => {
        const one = pit({ outline: polygon(ring), depth: '2 ft', margin: '0.1 ft', sideSlope: '0.5:1' });
        const larger = ring.map(([a, b]): XY => [(a * 100 * k) / 100 + x, b * k]);
        const many = pit({
          outline: polygon(
            larger.map(([a, b]): XY => [Math.round(a * 100) / 100, Math.round(b * 100) / 100]),
          ),
          depth: `${2 * k} ft`,
          margin: `${k / 10} ft`,
          sideSlope: '0.5:1',
        });
        if (!one.ok || !many.ok) return one.ok === many.ok;
        const ratio = many.result.figures.bankVolume.over(one.result.figures.bankVolume).toNumber(':1');
        return Math.abs(ratio / k ** 3 - 1) < 1e-12;
      }),
      { numRuns: 60 },
    );
  });
});

const feet = fc.integer({ min: 0, max: 80 });

describe('a grid', () => {
  it('is the sum of its cells, each with the mean of its corners', () => {
    // Second method: cell by cell instead of corner by corner.
    const cells = fc.integer({ min: 2, max: 6 });
    const values = fc.array(feet, { minLength: 36, maxLength: 36 });
    fc.assert(
      fc.property(cells, cells, values, fc.boolean(), (m, n, eighths, hole) => {
        const at = (i: number, j: number): number => eighths[i * 6 + j] ?? 0;
        const times = <T>(count: number, make: (i: number) => T): T[] =>
          Array.from({ length: count }, (_, i) => make(i));
        const drop = hole && m + n > 4;
        const each = times(m - 1, (i) =>
          times(n - 1, (j) => at(i, j) + at(i + 1, j) + at(i, j + 1) + at(i + 1, j + 1)),
        ).flat();
        const sum = each.reduce((all, cell) => all + cell, drop ? -(each[0] ?? 0) : 0);
        const { bankVolume } = excavation({
          kind: 'grid',
          across: '10 ft',
          along: '12 ft',
          depths: times(m, (i) => times(n, (j) => `${at(i, j) / 8} ft`)),
          leaveOut: drop ? [{ row: 0, column: 0 }] : [],
        }).figures;
        return bankVolume.compareTo(volume(`${(sum * 120) / 32} ft3`)) === 0;
      }),
    );
  });

  const size = fc.integer({ min: 2, max: 5 });
  const mixed = fc.array(fc.integer({ min: -30, max: 30 }), { minLength: 25, maxLength: 25 });
  const tenths = (rows: readonly (readonly number[])[]) => rows.map((row) => row.map((h) => `${h / 10} ft`));
  const both = (depths: readonly (readonly number[])[], across = '10 ft', along = '12 ft') => {
    const { bankVolume, fill } = excavation({
      kind: 'grid',
      across,
      along,
      depths: tenths(depths),
    }).figures;
    return { cut: bankVolume.toNumber('ft3'), fill: fill?.volume.toNumber('ft3') ?? 0 };
  };
  const near = (a: number, b: number): boolean => Math.abs(a - b) <= 1e-9 * (1 + Math.abs(a));
  const drawn = (m: number, n: number, all: readonly number[]): number[][] =>
    Array.from({ length: m }, (_, i) => all.slice(i * 5, i * 5 + n));

  it('cut less filled is the mean of the four corners of each cell', () => {
    fc.assert(
      fc.property(size, size, mixed, (m, n, all) => {
        const rows = drawn(m, n, all);
        let net = 0;
        for (let i = 0; i + 1 < m; i += 1) {
          for (let j = 0; j + 1 < n; j += 1) {
            const at = (a: number, b: number): number => rows[i + a]?.[j + b] ?? 0;
            net += (at(0, 0) + at(0, 1) + at(1, 0) + at(1, 1)) * 3;
          }
        }
        const { cut, fill } = both(rows);
        return near(cut - fill, net) && cut >= 0 && fill >= -1e-12;
      }),
      { numRuns: runs(100) },
    );
  });

  it('gives the same turned by a quarter, mirrored, and with cut and fill changed over', () => {
    fc.assert(
      fc.property(size, size, mixed, (m, n, all) => {
        const rows = drawn(m, n, all);
        const turned = Array.from({ length: n }, (_, j) => rows.map((row) => row[j] ?? 0).reverse());
        const [one, two, three] = [both(rows), both(turned, '12 ft', '10 ft'), both([...rows].reverse())];
        const over = both(rows.map((row) => row.map((h) => -h)));
        return [two, three, { cut: over.fill, fill: over.cut }].every(
          (other) => near(one.cut, other.cut) && near(one.fill, other.fill),
        );
      }),
      { numRuns: runs(100) },
    );
  });

  it('cuts and fills a plane as very many small squares say', () => {
    // Second method: the midpoint rule over 200 by 200 squares of one cell, in plain numbers.
    fc.assert(
      fc.property(fc.integer({ min: -20, max: 20 }), fc.integer({ min: -20, max: 20 }), (u, v) => {
        const plane = (x: number, y: number): number => (u * (x - 0.5) + v * (y - 0.3)) / 10;
        let cut = 0;
        const k = 200;
        for (let i = 0; i < k; i += 1) {
          for (let j = 0; j < k; j += 1) cut += Math.max(0, plane((i + 0.5) / k, (j + 0.5) / k));
        }
        const corners = [
          [plane(0, 0), plane(1, 0)],
          [plane(0, 1), plane(1, 1)],
        ];
        const { bankVolume } = excavation({
          kind: 'grid',
          across: '10 ft',
          along: '10 ft',
          depths: corners.map((row) => row.map((h) => `${h.toFixed(9)} ft`)),
        }).figures;
        return Math.abs(bankVolume.toNumber('ft3') - (cut * 100) / k ** 2) < 0.02;
      }),
      { numRuns: runs(60) },
    );
  });

  it('from levels is the grid of the depths below them', () => {
    const grid = { kind: 'grid', across: '10 ft', along: '10 ft' } as const;
    const a = excavation({
      ...grid,
      depths: [
        ['1 ft', '2 ft'],
        ['3 ft', '2.5 ft'],
      ],
    }).figures;
    const b = excavation({
      ...grid,
      levels: [
        ['101 ft', '102 ft'],
        ['103 ft', '102.5 ft'],
      ],
      grade: '100 ft',
    }).figures;
    expect(a.bankVolume.equals(b.bankVolume)).toBe(true);
  });
});

describe('cross sections', () => {
  const trapezoid = (at: number, w: number, d: number) =>
    ({ by: 'trapezoid', at: `${at} ft`, width: `${w} ft`, depth: `${d} ft`, sideSlope: '1.5:1' }) as const;

  it('by the prismoidal formula are exact where width and depth change evenly', () => {
    // Second method: the integral of d (w + s d) with d and w linear, by its antiderivative.
    fc.assert(
      fc.property(
        feet,
        feet,
        fc.integer({ min: 1, max: 40 }),
        fc.integer({ min: 1, max: 40 }),
        (d1, d2, w1, w2) => {
          const { figures } = excavation({
            kind: 'sections',
            sections: [trapezoid(0, w1, d1), trapezoid(60, w2, d2)],
          });
          const [dd, dw] = [d2 - d1, w2 - w1];
          // ∫₀¹ (d1 + dd x)(w1 + dw x) + 1.5 (d1 + dd x)² dx, times 60; in sixths to stay whole.
          const sixths =
            6 * d1 * w1 +
            3 * (d1 * dw + dd * w1) +
            2 * dd * dw +
            1.5 * (6 * d1 * d1 + 6 * d1 * dd + 2 * dd * dd);
          return figures.bankVolume.compareTo(volume(`${sixths * 10} ft3`)) === 0;
        },
      ),
    );
  });

  it('give the same by the prismoidal formula when a stretch is cut in two', () => {
    const whole = excavation({ kind: 'sections', sections: [trapezoid(0, 10, 2), trapezoid(40, 18, 8)] });
    const cut = excavation({
      kind: 'sections',
      sections: [trapezoid(0, 10, 2), trapezoid(10, 12, 3.5), trapezoid(40, 18, 8)],
    });
    expect(cut.figures.bankVolume.compareTo(whole.figures.bankVolume)).toBe(0);
    const [a, b] = [whole, cut].map((r) => r.figures.sections?.averageEndArea.toNumber('ft3') ?? 0) as [
      number,
      number,
    ];
    expect(a).toBeGreaterThan(b); // average end area comes closer as sections come closer
  });

  it('come to the same from the other end of the line, whatever the sections are given by', () => {
    const section = fc.tuple(fc.boolean(), feet, fc.integer({ min: -6, max: 9 }));
    fc.assert(
      fc.property(fc.array(section, { minLength: 2, maxLength: 5 }), (drawn) => {
        const made = (list: typeof drawn, from: (i: number) => number) =>
          list.map(([byArea, area, d], i) =>
            byArea
              ? ({ by: 'area', at: `${from(i)} ft`, area: `${area} ft2`, depth: '2 ft' } as const)
              : trapezoid(from(i), 10, d),
          );
        const last = drawn.length - 1;
        const one = excavation({ kind: 'sections', sections: made(drawn, (i) => 30 * i) });
        const back = excavation({
          kind: 'sections',
          sections: made([...drawn].reverse(), (i) => 1000 + 30 * i),
        });
        const codes = ({ cautions }: typeof one): string => cautions.map(({ code }) => code).join();
        expect(last).toBeGreaterThan(0);
        return (
          one.figures.bankVolume.compareTo(back.figures.bankVolume) === 0 &&
          one.figures.fill?.volume.format('ft3') === back.figures.fill?.volume.format('ft3') &&
          codes(one) === codes(back)
        );
      }),
      { numRuns: runs(100) },
    );
  });

  it('from cut to fill part where the ground meets the grade', () => {
    // Second method: the integral of d (w + s d) over each part of the line, in small slices.
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 12 }), fc.integer({ min: 1, max: 12 }), (d1, d2) => {
        const { bankVolume, fill } = excavation({
          kind: 'sections',
          sections: [trapezoid(0, 10, d1), trapezoid(60, 22, -d2)],
        }).figures;
        const k = 4000;
        let [cut, filled] = [0, 0];
        for (let i = 0; i < k; i += 1) {
          const x = (i + 0.5) / k;
          const [d, w] = [d1 - (d1 + d2) * x, 10 + 12 * x];
          const slice = (Math.abs(d) * (w + 1.5 * Math.abs(d)) * 60) / k;
          if (d > 0) cut += slice;
          else filled += slice;
        }
        const close = (a: number, b: number): boolean => Math.abs(a / b - 1) < 1e-5;
        return close(bankVolume.toNumber('ft3'), cut) && close(fill?.volume.toNumber('ft3') ?? 0, filled);
      }),
      { numRuns: runs(60) },
    );
  });

  it('differ between the two rules by a third of L (A − 2 M + B)', () => {
    fc.assert(
      fc.property(feet, feet, feet, (A, B, M) => {
        const { sections } = excavation({
          kind: 'sections',
          sections: [
            { by: 'area', at: '0 ft', area: `${A} ft2`, middleArea: `${M} ft2` },
            { by: 'area', at: '30 ft', area: `${B} ft2` },
          ],
        }).figures;
        const expected = volume('10 ft3').toNumber('ft3') * (A - 2 * M + B);
        return Math.abs((sections?.difference?.toNumber('ft3') ?? Number.NaN) - expected) < 1e-9;
      }),
    );
  });
});

describe('swell, shrinkage and loads', () => {
  const base = { kind: 'pit', area: '2700 ft2', depth: '1 ft' } as const;

  it('agree between the conventions when the share is put into the other one', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 400 }), (n) => {
        const one = excavation({ ...base, shrink: { convention: '1/(1+s)', share: `${n / 10}%` } }).figures;
        // s of the compacted volume is s ÷ (1 + s) of the bank volume.
        const other = `${(n * 100) / (1000 + n)}`.slice(0, 20);
        const two = excavation({
          ...base,
          shrink: { convention: '1-s', share: `${Number(other).toFixed(12)}%` },
        });
        const difference = one.compactedVolume?.minus(two.figures.compactedVolume ?? volume('0 yd3')).abs();
        return difference?.lessThan(volume('0.0000001 yd3')) === true;
      }),
    );
  });

  it('never mix the conventions: the same share gives two different volumes, and one must be chosen', () => {
    const [a, b] = (['1/(1+s)', '1-s'] as const).map(
      (convention) => excavation({ ...base, shrink: { convention, share: '25%' } }).figures.compactedVolume,
    );
    expect(a?.format()).toBe('80.00 yd3');
    expect(b?.format()).toBe('75.00 yd3');
    const bare = excavation.attempt({ ...base, shrink: { share: '25%' } } as never);
    expect(bare.ok ? [] : bare.error.issues.map(({ path, code }) => [path, code])).toEqual([
      ['shrink.convention', 'missing'],
    ]);
  });

  it('haul everything, with no load to spare, and name what limits a load', () => {
    const n = fc.integer({ min: 10, max: 400 });
    fc.assert(
      fc.property(n, n, n, n, (swell, pcf, truck, tons) => {
        const { haul, looseVolume, mass } = excavation({
          ...base,
          swell: `${swell / 10}%`,
          bankDensity: `${60 + pcf / 4} pcf`,
          haul: { truckVolume: `${truck / 20} yd3`, payload: `${tons / 10} ton` },
        }).figures;
        const loads = haul?.loads.toNumber('each') ?? 0;
        const byVolume = (looseVolume?.toNumber('yd3') ?? 0) / (truck / 20);
        const byWeight = (mass?.toNumber('ton') ?? 0) / (tons / 10);
        const most = Math.max(byVolume, byWeight);
        const named = haul?.governs === (byWeight > byVolume ? 'weight' : 'volume');
        return loads >= most - 1e-9 && loads < most + 1 + 1e-9 && named;
      }),
    );
  });

  it('take from the bank what shrinks back to the fill, by either convention', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 400 }),
        fc.constantFrom('1-s' as const, '1/(1+s)' as const),
        (n, convention) => {
          const shrink = { convention, share: `${n / 10}%` };
          const { fill } = excavation({ kind: 'fill', area: '2700 ft2', depth: '1 ft', shrink }).figures;
          const bank = fill?.bankVolume ?? volume('0 yd3');
          const again = excavation({ kind: 'pit', area: bank.over(length('1 ft')), depth: '1 ft', shrink });
          return again.figures.compactedVolume?.compareTo(volume('100 yd3')) === 0;
        },
      ),
      { numRuns: runs(50) },
    );
  });

  it('never ask less of a cut that is steeper, deeper or wet', () => {
    const rank = { note: 0, warning: 1, stop: 2 };
    const gravity = (depth: number, slope: number, water: boolean): number =>
      excavation({
        kind: 'trench',
        length: '10 ft',
        width: '3 ft',
        depth: `${depth} ft`,
        sideSlope: `${slope}:1`,
        water,
      }).cautions.reduce((sum, { severity }) => sum + 10 ** rank[severity], 0);
    const slopes = [2, 1.5, 1.25, 1, 0.75, 0.5, 0];
    for (const depth of [1, 3, 4, 5, 8, 19, 21]) {
      for (const [i, slope] of slopes.entries()) {
        const here = gravity(depth, slope, false);
        expect(gravity(depth, slope, true)).toBeGreaterThan(here);
        expect(gravity(depth + 1, slope, false)).toBeGreaterThanOrEqual(here);
        if (i > 0) expect(here).toBeGreaterThanOrEqual(gravity(depth, slopes[i - 1] ?? 0, false));
      }
    }
  });

  it('caution about depth where the federal rules, as commonly quoted, draw their lines', () => {
    const codes = (depth: string): string[] =>
      excavation({ ...base, depth }).cautions.map(({ code, severity }) => `${severity} ${code}`);
    const always = ['warning buried-utilities', 'note spoil-at-edge'];
    expect(codes('3.9 ft')).toEqual(always);
    expect(codes('4 ft')).toEqual(['warning trench-exit', ...always]);
    expect(codes('5 ft')).toEqual(['warning trench-exit', 'stop trench-depth', ...always]);
    expect(codes('20 ft')).not.toContain('stop engineered-excavation');
    expect(codes('20.01 ft')).toContain('stop engineered-excavation');
    expect(length('4 ft').format()).toBe('4 ft');
  });
});

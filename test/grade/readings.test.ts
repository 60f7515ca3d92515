/** Level notes, cross slope, runoff and the straightedge: second methods and what must hold. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { crossSlope, levelNotes, runoff, straightedge } from '../../src/index';
import { disagreement } from '../support/working';

const ft = (hundredths: number): string => `${(hundredths / 100).toFixed(2)} ft`;

describe('level-notes', () => {
  // Second method: whole hundredths of a foot, added up as the crew walks.
  it('carry elevations over turning points as whole numbers do', () => {
    const legs = fc.array(fc.tuple(fc.integer({ min: 1, max: 1400 }), fc.integer({ min: 1, max: 1400 })), {
      minLength: 1,
      maxLength: 12,
    });
    fc.assert(
      fc.property(legs, (sights) => {
        const rows = [
          { point: 'BM', backsight: ft(sights[0]?.[0] ?? 1) },
          ...sights.map(([, foresight], i) => {
            const next = sights[i + 1];
            return {
              point: `TP ${i}`,
              foresight: ft(foresight),
              ...(next ? { backsight: ft(next[0]) } : {}),
            };
          }),
        ];
        const { figures, working } = levelNotes({
          kind: 'level',
          benchMark: { name: 'BM', elevation: '100 ft' },
          rows,
        });
        const rise = sights.reduce((sum, [b, f]) => sum + b - f, 0);
        expect(figures.points.at(-1)?.elevation.toString()).toBe(`${(10000 + rise) / 100} ft`);
        expect(figures.checkSum.compareTo(figures.checkAgainst)).toBe(0);
        for (const step of working) expect(disagreement(step), JSON.stringify(step)).toBeLessThan(6e-3);
      }),
    );
  });

  it('sum up for every way of reading', () => {
    const mm = fc.integer({ min: 0, max: 3000 });
    fc.assert(
      fc.property(fc.array(mm, { minLength: 1, maxLength: 10 }), mm, (heights, a) => {
        const benchMark = { name: 'BM', elevation: '10 m' };
        const point = (i: number): string => `P${i}`;
        const laser = levelNotes({
          kind: 'laser',
          benchMark,
          rows: heights.map((h, i) => ({ point: point(i), [h % 2 ? 'up' : 'down']: `${h} mm` })),
        }).figures;
        const water = levelNotes({
          kind: 'water-level',
          benchMark,
          atBenchMark: `${a} mm`,
          rows: heights.map((h, i) => ({ point: point(i), height: `${h} mm` })),
        }).figures;
        const line = levelNotes({
          kind: 'string-line',
          from: benchMark,
          to: { name: 'Q', elevation: `${a} mm` },
          length: '8 m',
          rows: heights.map((h, i) => ({ point: point(i), at: `${i} m`, down: `${h} mm` })),
        }).figures;
        for (const { checkSum, checkAgainst } of [laser, water, line]) {
          expect(checkSum.compareTo(checkAgainst)).toBe(0);
        }
        heights.forEach((h, i) => {
          expect(water.elevations[point(i)]?.toNumber('mm')).toBeCloseTo(10000 + a - h, 6);
          expect(line.elevations[point(i)]?.toNumber('mm')).toBeCloseTo(10000 + ((a - 10000) * i) / 8 - h, 6);
        });
      }),
    );
  });

  it('name points that hang on no elevation', () => {
    const attempt = levelNotes.attempt({ kind: 'level', rows: [{ point: 'walk', foresight: '4 ft' }] });
    expect(attempt.ok ? '' : attempt.error.message).toContain('"walk"');
  });
});

describe('cross-slope', () => {
  it('is the hypotenuse of both, below their sum', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 200 }), fc.integer({ min: 0, max: 200 }), (l, c) => {
        const per = (n: number) => ({ value: n, unit: 'mm/m' });
        const { figures, working } = crossSlope({ along: per(l), across: per(c) });
        expect(figures.steepest.toNumber('mm/m')).toBeCloseTo(Math.hypot(l, c), 9);
        if (l + c > 0)
          expect(figures.direction?.toNumber('deg')).toBeCloseTo((Math.atan2(c, l) * 180) / Math.PI, 9);
        for (const step of working) expect(disagreement(step)).toBeLessThan(6e-3);
      }),
    );
  });
});

describe('runoff', () => {
  // Second method: the plain product of acres and inches an hour, times 121/120.
  it('is 121/120 of the plain product in acres and inches an hour', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 500 }), fc.integer({ min: 1, max: 100 }), (acres, tenths) => {
        const { figures, working } = runoff({
          areas: [{ surface: 'concrete', area: `${acres} acre`, coefficient: '0.9:1' }],
          intensity: `${tenths / 10} in/h`,
        });
        expect(figures.flowInCubicFeet.toNumber('ft3/s')).toBeCloseTo((0.9 * acres * tenths * 121) / 1200, 6);
        for (const step of working) expect(disagreement(step)).toBeLessThan(6e-3);
      }),
    );
  });
});

describe('straightedge', () => {
  // Second method: the gap at a reading is the largest height over it of a chord between two others.
  it('bridges the highest readings', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: -20, max: 20 }), { minLength: 4, maxLength: 25 }), (z) => {
        const { figures } = straightedge({
          readings: z.map((n) => `${n} mm`),
          spacing: '1 m',
          edge: '3 m',
        });
        let gap = 0;
        for (let from = 0; from < Math.max(1, z.length - 3); from += 1) {
          const under = z.slice(from, from + 4);
          under.forEach((zi, i) => {
            for (let a = 0; a < i; a += 1) {
              for (let b = i + 1; b < under.length; b += 1) {
                const [za, zb] = [under[a] as number, under[b] as number];
                gap = Math.max(gap, za + ((zb - za) * (i - a)) / (b - a) - zi);
              }
            }
          });
        }
        expect(figures.gap.toNumber('mm')).toBeCloseTo(gap, 9);
      }),
    );
  });
});

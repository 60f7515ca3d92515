/** Pressure on forms: what must hold for any placement. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type FormPressureInput, formPressure } from '../../src/index';
import { runs } from '../support/effort';

const wall = (
  height: number,
  rise: number,
  temperature: number,
  more: Partial<FormPressureInput> = {},
): FormPressureInput => ({
  kind: 'wall',
  height: `${height} ft`,
  rise: `${rise.toFixed(3)} ft/h`,
  temperature: `${temperature} degF`,
  density: '150 pcf',
  cement: 'plain',
  ...more,
});

const psf = (input: FormPressureInput): number => formPressure(input).figures.pressure.toNumber('psf');
const byEquation = (input: FormPressureInput): number =>
  formPressure(input).figures.byEquation?.toNumber('psf') ?? Number.NaN;

const degrees = fc.integer({ min: 41, max: 110 });
const rises = fc.double({ min: 0.2, max: 14.9, noNaN: true });
const heights = fc.integer({ min: 1, max: 30 });

describe('pressure on forms', () => {
  it('has no jump where one equation passes into the other', () => {
    fc.assert(
      fc.property(degrees, (t) => {
        const [below, above] = [byEquation(wall(12, 6.888, t)), byEquation(wall(12, 7, t))];
        expect(Math.abs(below - (150 + (9000 * 6.888) / t))).toBeLessThan(1e-6);
        expect(Math.abs(above - (150 + 63_000 / t))).toBeLessThan(1e-6);
        expect(Math.abs(above - (150 + 43_400 / t + (2800 * 7) / t))).toBeLessThan(1e-6);
      }),
      { numRuns: runs(60) },
    );
  });

  it('never passes the full head, and is no less than the least but for it', () => {
    fc.assert(
      fc.property(heights, rises, degrees, (h, r, t) => {
        const p = psf(wall(h, r, t));
        expect(p).toBeLessThanOrEqual(150 * h + 1e-6);
        expect(p).toBeGreaterThanOrEqual(Math.min(600, 150 * h) - 1e-6);
      }),
      { numRuns: runs(150) },
    );
  });

  it('is no less for placing faster, and no more for warmer concrete', () => {
    fc.assert(
      fc.property(heights, rises, rises, degrees, degrees, (h, a, b, s, t) => {
        expect(psf(wall(h, Math.min(a, b), s))).toBeLessThanOrEqual(psf(wall(h, Math.max(a, b), s)) + 1e-6);
        expect(psf(wall(h, a, Math.max(s, t)))).toBeLessThanOrEqual(psf(wall(h, a, Math.min(s, t))) + 1e-6);
      }),
      { numRuns: runs(150) },
    );
  });

  it('gives a fastest rise that the forms just stand', () => {
    fc.assert(
      fc.property(heights, rises, degrees, fc.integer({ min: 600, max: 2500 }), (h, r, t, allowed) => {
        const { figures } = formPressure(wall(h, r, t, { allowed: `${allowed} psf` }));
        const { fastest, holds } = figures;
        expect(holds).toBe(figures.pressure.toNumber('psf') <= allowed);
        if (!fastest) return;
        const again = formPressure({ ...wall(h, 1, t), rise: fastest, allowed: `${allowed} psf` }).figures;
        expect(again.pressure.toNumber('psf')).toBeLessThanOrEqual(allowed + 1e-6);
        if (fastest.toNumber('ft/h') < 15) expect(again.pressure.toNumber('psf')).toBeCloseTo(allowed, 6);
      }),
      { numRuns: runs(150) },
    );
  });

  it('agrees with the rounded constants of the metric edition', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.3, max: 4.4, noNaN: true }), fc.integer({ min: 5, max: 35 }), (r, t) => {
        const { byEquation: p } = formPressure({
          kind: 'wall',
          height: '6 m',
          rise: `${r.toFixed(3)} m/h`,
          temperature: `${t} degC`,
          density: '2400 kg/m3',
          cement: 'plain',
        }).figures;
        const wanted = 7.2 + 1156 / (t + 17.8) + (244 * r) / (t + 17.8);
        expect(Math.abs((p?.toNumber('kPa') ?? 0) / wanted - 1)).toBeLessThan(0.004);
      }),
      { numRuns: runs(100) },
    );
  });
});

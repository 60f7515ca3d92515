/** Ramps against closed forms: every run within the rules, no run fewer than must be, the top where it is to be. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rampLayout } from '../../src/index';
import { wordsText } from '../../src/report/view';

const sixteenths = fc.integer({ min: 8, max: 16 * 90 }).map((n) => `${n / 16} in`);
const millimeters = fc.integer({ min: 20, max: 2300 });

describe('a ramp', () => {
  it('ends at the landing, each run rising no more than 30 in, and one run fewer would rise more', () => {
    fc.assert(
      fc.property(sixteenths, (totalRise) => {
        const { figures } = rampLayout({ totalRise, rules: 'ada' });
        const n = figures.runs.toNumber('each');
        const rise = inchesOf(totalRise);
        expect(figures.riseOfRun.toNumber('in')).toBeLessThanOrEqual(30);
        if (n > 1) expect(rise / (n - 1)).toBeGreaterThan(30);
        expect(figures.breaks.at(-1)?.height.toNumber('in')).toBeCloseTo(rise, 9);
        expect(figures.rampLength.toNumber('in')).toBeCloseTo(12 * rise + 60 * (n - 1), 8);
        expect(figures.overall.toNumber('in')).toBeCloseTo(12 * rise + 60 * (n + 1), 8);
      }),
    );
  });

  it('is the shortest of the slopes that the rules have', () => {
    fc.assert(
      fc.property(millimeters, (mm) => {
        const { figures } = rampLayout({ totalRise: `${mm} mm`, rules: 'approved-document-m' });
        // Interpolated between 2 m at 1:12, 5 m at 1:15 and 10 m at 1:20.
        const lengths = [12, 13, 14, 15, 16, 17, 18, 19, 20].map((one) => {
          const n = Math.ceil(Math.round((mm * one * 1e6) / (1000 * (one - 10))) / 1e6);
          return mm * one + 1500 * (n - 1) + 2400;
        });
        expect(figures.overall.toNumber('mm')).toBeCloseTo(Math.min(...lengths), 6);
      }),
    );
  });

  it('takes as many runs in whatever unit its rise was measured', () => {
    fc.assert(
      fc.property(sixteenths, (text) => {
        const mm = `${(inchesOf(text) * 25.4).toFixed(6)} mm`;
        const [one, other] = [text, mm].map((totalRise) => rampLayout({ totalRise, rules: 'ada' }).figures);
        expect(other?.runs).toEqual(one?.runs);
      }),
    );
  });

  it('has the body of its parts, wedge by wedge', () => {
    fc.assert(
      fc.property(sixteenths, (totalRise) => {
        const { figures } = rampLayout({ totalRise, rules: 'ada', width: '1 ft' });
        const { breaks } = figures;
        const feet = breaks.map(({ at, height }) => [at.toNumber('ft'), height.toNumber('ft')] as const);
        const between = feet.slice(1).reduce((sum, [x, z], i) => {
          const [x0, z0] = feet[i] as readonly [number, number];
          return sum + ((z + z0) / 2) * (x - x0);
        }, 0);
        const top = feet.at(-1)?.[1] as number;
        expect(figures.body?.toNumber('ft3')).toBeCloseTo(between + 5 * top, 6);
      }),
    );
  });
});

describe('a folded ramp', () => {
  const rooms = fc.integer({ min: 11, max: 60 });

  it('takes the fewest runs that fit the place, and no fewer than the rules have', () => {
    fc.assert(
      fc.property(sixteenths, rooms, (totalRise, feet) => {
        const { figures } = rampLayout({
          totalRise,
          rules: 'ada',
          lengthAvailable: `${feet} ft`,
          folded: true,
        });
        const n = figures.runs.toNumber('each');
        const long = (runs: number): number => (12 * inchesOf(totalRise)) / runs + 120;
        const fewest = Math.max(2, Math.ceil(inchesOf(totalRise) / 30));
        const fits = long(100) <= 12 * feet;
        expect(figures.verdict === 'too long').toBe(!fits);
        expect(figures.overall.toNumber('in')).toBeCloseTo(long(n), 8);
        if (!fits || n === fewest) expect(n).toBe(fewest);
        else expect(long(n) <= 12 * feet + 1e-9 && long(n - 1) > 12 * feet - 1e-9).toBe(true);
      }),
    );
  });

  it('comes back to its foot or ends at the far side, and has the body of its parts', () => {
    fc.assert(
      fc.property(sixteenths, rooms, (totalRise, feet) => {
        const { figures } = rampLayout({
          totalRise,
          rules: 'ada',
          width: '1 ft',
          lengthAvailable: `${feet} ft`,
          folded: true,
        });
        const n = figures.runs.toNumber('each');
        const [run, rise] = [figures.runLength.toNumber('ft'), figures.riseOfRun.toNumber('ft')];
        expect(figures.breaks.at(-1)?.at.toNumber('ft')).toBeCloseTo(n % 2 === 0 ? 0 : run, 9);
        let body = 5 * n * rise;
        for (let i = 0; i < n; i++) body += run * rise * (i + 0.5) + (i > 0 ? 2 * 5 * i * rise : 0);
        expect(figures.body?.toNumber('ft3')).toBeCloseTo(body, 6);
      }),
    );
  });

  // 20 in at 1:12 are 20 ft, with two landings of 5 ft 30 ft; at 1:16 they are 26 ft 8 in and 36 ft 8 in.
  it('says at which slope it would fit, where a flatter one was given', () => {
    const told = (lengthAvailable: string) => {
      const { cautions } = rampLayout({ totalRise: '20 in', slope: '1:16', lengthAvailable });
      const long = cautions.find(({ code }) => code === 'ramp-too-long');
      return long && wordsText(long);
    };
    expect(told('30 ft')).toBe(
      'with its landings it takes 36 ft 8 in, and there are 30 ft: at 1:12, which these rules allow, it takes 30 ft and fits',
    );
    expect(told('29 ft')).toMatch(/: fold it .* never make it steeper to fit$/);
    expect(told('37 ft')).toBeUndefined();
  });
});

function inchesOf(text: string): number {
  return Number.parseFloat(text);
}

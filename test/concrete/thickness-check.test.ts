/** Cores against the tolerances of thickness: what must hold for any slab, and the same in plain arithmetic. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { thicknessCheck } from '../../src/index';
import { runs } from '../support/effort';

const sixteenths = fc.integer({ min: 48, max: 128 });
const slabs = fc.tuple(
  fc.integer({ min: 64, max: 112 }),
  fc.array(sixteenths, { minLength: 1, maxLength: 12 }),
);
const inches = (n: number): string => `${n / 16} in`;
const check = (specified: number, samples: readonly number[]) =>
  thicknessCheck({ specified: inches(specified), samples: samples.map(inches) });
const GRAVITY = ['within tolerance', 'thin in places', 'thin on average'];

describe('cores against the tolerances of thickness', () => {
  it('are judged as by plain arithmetic in sixteenths, away from the limits', () => {
    fc.assert(
      fc.property(slabs, ([specified, samples]) => {
        const counted = samples.map((s) => Math.min(s, specified + 12));
        const short = specified - counted.reduce((a, b) => a + b, 0) / samples.length;
        const thinnest = specified - Math.min(...samples);
        // Metric jobs allow 10 mm, a thirtieth of an inch more: in between both are within.
        fc.pre(short <= 6 || short > 6.4);
        const verdict = short > 6 ? 'thin on average' : thinnest > 12 ? 'thin in places' : 'within tolerance';
        const { figures } = check(specified, samples);
        expect(figures.verdict).toBe(verdict);
        expect(figures.mean.toNumber('in')).toBeCloseTo((specified - short) / 16, 9);
        expect(figures.tooThin.toNumber('each')).toBe(samples.filter((s) => specified - s > 12).length);
      }),
      { numRuns: runs(300) },
    );
  });

  it('get no better verdict when one of them is thinner', () => {
    fc.assert(
      fc.property(slabs, fc.nat(11), fc.integer({ min: 1, max: 40 }), ([specified, samples], at, less) => {
        const thinner = samples.map((s, i) => (i === at % samples.length ? Math.max(16, s - less) : s));
        const [before, after] = [check(specified, samples), check(specified, thinner)];
        return GRAVITY.indexOf(after.figures.verdict) >= GRAVITY.indexOf(before.figures.verdict);
      }),
      { numRuns: runs(300) },
    );
  });
});

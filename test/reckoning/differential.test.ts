/** Random jobs recomputed by ways that share no code with the library; `npm run differential` tries 40,000. */
import { describe, expect, it } from 'vitest';
import { slopeOf } from '../../src/index';
import { PI, Rational, root, sine } from '../support/differential/rational';
import { compareFamily, FAMILIES } from '../support/differential/run';
import { held } from '../support/differential/trial';
import { UNITS } from '../support/differential/units';
import { runs } from '../support/effort';

/** Jobs at full effort: what a family costs and how much its other tests try already decide. */
const JOBS: Readonly<Record<string, number>> = {
  bodies: 150,
  earth: 120,
  rules: 150,
  notations: 300,
  plans: 40,
  scans: 20,
  joints: 4,
  steel: 18,
  grades: 8,
  cutting: 20,
  ponds: 4,
};

describe('random jobs recomputed another way', () => {
  it.each(FAMILIES.map((family) => [family.name, family] as const))('%s agree', async (name, family) => {
    const wanted = runs(JOBS[name] ?? 0);
    const { jobs, figures, disagreements } = await compareFamily(family, wanted, 5);
    expect(disagreements).toEqual([]);
    expect(jobs).toBe(wanted);
    expect(figures).toBeGreaterThanOrEqual(wanted);
  });

  it('notice a figure that is off in its fortieth digit', () => {
    const off = Rational.of(1, 50).plus(Rational.of(1n, 10n ** 40n));
    const input = { slope: '2%' };
    expect(held(slopeOf, input, { percent: Rational.of(1, 50) }, 45).disagreements).toEqual([]);
    expect(held(slopeOf, input, { percent: off }, 45).disagreements).toHaveLength(1);
  });
});

describe('the fractions that they are reckoned in', () => {
  // Closed forms, and the first 50 decimals of π (from memory).
  it('have roots, π and sines to 50 digits', () => {
    expect(PI.times(Rational.of(10n ** 50n)).floor()).toBe(
      314159265358979323846264338327950288419716939937510n,
    );
    const two = root(Rational.of(2)).squared().minus(Rational.of(2)).abs();
    expect(two.lessThan(Rational.of(1n, 10n ** 60n))).toBe(true);
    const half = sine(PI.over(6)).minus(Rational.of(1, 2)).abs();
    expect(half.lessThan(Rational.of(1n, 10n ** 55n))).toBe(true);
    expect(Rational.of(-7, 2).floor()).toBe(-4n);
    expect(Rational.of(-7, 2).ceil()).toBe(-3n);
    expect(Rational.parse('-1.25e-2').compare(Rational.of(-1, 80))).toBe(0);
    expect(UNITS.length['mi']?.compare(Rational.parse('1609.344'))).toBe(0);
  });
});

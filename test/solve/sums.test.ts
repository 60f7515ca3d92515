import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { nextSum } from '../../src/solve/stock/sums';

/** The next sum by trying every whole number from the bound up, each by all that the last bar may cost. */
function tried(costs: readonly number[], bound: number): number {
  const made = [true];
  for (let sum = 1; ; sum += 1) {
    made[sum] = costs.some((cost) => cost <= sum && made[sum - cost] === true);
    if (sum >= bound && made[sum]) return sum;
  }
}

describe('next sum of whole bars', () => {
  const costs = fc.array(fc.integer({ min: 1, max: 60 }), { minLength: 2, maxLength: 4 });

  it('is what trying every number gives, in whatever order bounds are asked', () => {
    fc.assert(
      fc.property(
        costs,
        fc.array(fc.integer({ min: 1, max: 400 }), { minLength: 1, maxLength: 8 }),
        (each, bounds) => {
          const different = [...new Set(each)];
          fc.pre(different.length > 1);
          const next = nextSum(each, 1, 1e6);
          for (const bound of bounds) expect(next(bound)).toBe(tried(different, bound));
        },
      ),
    );
  });

  it('is in steps of the costs', () => {
    const next = nextSum([800, 1200, 1700], 100, 1e6);
    expect([800, 900, 1300, 2100, 2200].map(next)).toEqual([800, 1200, 1600, 2400, 2400]);
  });

  it('leaves a bound as it is where one stock alone or more work than there is would raise it', () => {
    expect(nextSum([12, 12], 1, 1e6)(13)).toBe(13);
    expect(nextSum([120_000, 170_417], 1, 1e5)(120_001)).toBe(120_001);
    expect(nextSum([120_000, 170_417], 1, 1e6)(120_001)).toBe(170_417);
  });
});

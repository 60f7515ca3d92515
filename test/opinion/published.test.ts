/** Misprints and slips that stand in print are named rightly, and roundings in print are not flagged. */
import { describe, expect, it } from 'vitest';
import { estimateCheck } from '../../src/index';
import { misprints } from './more-misprints';
import { published as first } from './published-slips';

const published = [...first, ...misprints];

describe('what stands in print', () => {
  const slips = published.filter(({ is }) => typeof is !== 'string');
  const roundings = published.filter(({ is }) => is === 'rounding');

  it('is named rightly, and first in nearly all', () => {
    const ranks = slips.map(({ calculation, input, claims, is, what }) => {
      const found = estimateCheck(calculation, input, claims).slips;
      const rank = found.findIndex(
        ({ slips: some }) => some.length === 1 && is.includes(some[0]?.code as never),
      );
      expect(rank, what).toBeGreaterThanOrEqual(0);
      return rank;
    });
    expect(ranks.filter((rank) => rank === 0).length).toBeGreaterThanOrEqual(44);
  });

  it.each(roundings.map((one) => [one.what, one] as const))('%s is no slip', (_what, one) => {
    expect(estimateCheck(one.calculation, one.input, one.claims).verdict).not.toBe('differs');
  });
});

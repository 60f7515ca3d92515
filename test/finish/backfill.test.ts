/** Ground made good: what must hold for any of it. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { backfill } from '../../src/index';
import { runs } from '../support/effort';

const n = (min: number, max: number) => fc.integer({ min, max });

describe('a gap along forms', () => {
  it('is the trapezoid that it is, filled loose with what settles', () => {
    fc.assert(
      fc.property(
        n(1, 500),
        n(1, 24),
        n(2, 60),
        n(0, 20),
        n(0, 40),
        (length, width, depth, batter, looser) => {
          const { gapVolume, looseFill } = backfill({
            gap: {
              length: `${length} ft`,
              width: `${width} in`,
              depth: `${depth} in`,
              batter: `${batter / 10}:1`,
              looser: `${looser}%`,
            },
          }).figures;
          const [b, d] = [width / 12, depth / 12];
          const wanted = (length * d * (b + b + (batter / 10) * d)) / 2 / 27;
          expect(gapVolume?.toNumber('yd3')).toBeCloseTo(wanted, 9);
          expect(looseFill?.toNumber('yd3')).toBeCloseTo(wanted * (1 + looser / 100), 9);
        },
      ),
      { numRuns: runs(100) },
    );
  });

  it('is no less by parts than in one', () => {
    fc.assert(
      fc.property(n(1, 200), n(1, 200), (a, b) => {
        const of = (feet: number): number =>
          backfill({
            gap: { length: `${feet} ft`, width: '6 in', depth: '10 in', looser: '20%' },
          }).figures.looseFill?.toNumber('yd3') ?? 0;
        expect(of(a) + of(b)).toBeCloseTo(of(a + b), 9);
      }),
      { numRuns: runs(50) },
    );
  });
});

describe('seed', () => {
  it('sows as much that is alive, whatever the bag holds', () => {
    fc.assert(
      fc.property(n(10, 20_000), n(30, 100), n(30, 100), (area, purity, germination) => {
        const { seed, pureLiveSeed } = backfill({
          seed: {
            area: `${area} ft2`,
            rate: '0.004 lb/ft2',
            purity: `${purity}%`,
            germination: `${germination}%`,
          },
        }).figures;
        const alive = (seed?.toNumber('lb') ?? 0) * (pureLiveSeed?.toNumber(':1') ?? 0);
        expect(alive).toBeCloseTo(area * 0.004, 9);
      }),
      { numRuns: runs(100) },
    );
  });

  it('is taken for pure and alive where no label says otherwise, and that is told', () => {
    const seed = { area: '600 ft2', rate: '0.004 lb/ft2' } as const;
    const named = (more: object) => backfill({ seed: { ...seed, ...more } }).assumed.map(({ name }) => name);
    expect(named({})).toEqual(['seed.purity', 'seed.germination']);
    expect(named({ purity: '98%' })).toEqual(['seed.germination']);
    expect(named({ purity: '98%', germination: '85%' })).toEqual([]);
    expect(backfill({ seed }).figures.pureLiveSeed?.format()).toBe('100%');
  });
});

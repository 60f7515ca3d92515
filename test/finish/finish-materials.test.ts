/** What goes onto a slab: what must hold for any of it. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { finishMaterials } from '../../src/index';
import { runs } from '../support/effort';

const areas = fc.integer({ min: 10, max: 20_000 });
const coverages = fc.integer({ min: 50, max: 800 });

describe('what goes onto a slab', () => {
  it('is the same in one coat as in two of half the thickness, and grows with the area', () => {
    fc.assert(
      fc.property(areas, coverages, (a, c) => {
        const of = (area: number, covers: number, coats: number): string | undefined =>
          finishMaterials({
            area: `${area} ft2`,
            allowance: '5%',
            liquids: [{ kind: 'sealer', covers: `${covers} ft2`, measure: '1 gal', coats }],
          })
            .figures.liquids?.[0]?.volume.toNumber('gal')
            .toFixed(9);
        expect(of(a, c, 1)).toBe(of(a, 2 * c, 2));
        expect(of(a, c, 1)).toBe(of(2 * a, 2 * c, 1));
        expect(Number(of(a, c, 1))).toBeCloseTo((a / c) * 1.05, 6);
      }),
      { numRuns: runs(100) },
    );
  });

  it('comes in as many containers as hold it, and no more', () => {
    fc.assert(
      fc.property(areas, coverages, fc.constantFrom(1, 5, 55), (a, c, pail) => {
        const { liquids } = finishMaterials({
          area: `${a} ft2`,
          allowance: '0%',
          liquids: [
            {
              kind: 'curing-compound',
              covers: `${c} ft2`,
              measure: '1 gal',
              coats: 1,
              container: `${pail} gal`,
            },
          ],
        }).figures;
        const n = liquids?.[0]?.containers?.toNumber('each') ?? 0;
        expect(n * pail).toBeGreaterThanOrEqual(a / c - 1e-9);
        expect((n - 1) * pail).toBeLessThan(a / c);
      }),
      { numRuns: runs(100) },
    );
  });

  it('fills joints with what they hold', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 5000 }), fc.integer({ min: 2, max: 16 }), (feet, sixteenths) => {
        const { sealant } = finishMaterials({
          area: '100 ft2',
          allowance: '0%',
          sealant: { length: `${feet} ft`, width: `${sixteenths * 0.0625} in`, depth: '1/8 in' },
        }).figures;
        expect(sealant?.volume.toNumber('gal')).toBeCloseTo((feet * 12 * sixteenths) / 16 / 8 / 231, 9);
      }),
      { numRuns: runs(100) },
    );
  });
});

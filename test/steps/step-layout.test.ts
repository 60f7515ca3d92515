/** Steps: what must hold for every rise, and a second way to the admissible counts. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { length, stepLayout } from '../../src/index';
import { disagreement } from '../support/working';

/** Sixteenths of an inch, so that a second method can reckon in whole numbers. */
const rise = fc.integer({ min: 64, max: 16 * 200 });
const asText = (sixteenths: number): string => `${sixteenths}/16 in`;

describe('step-layout', () => {
  it('finds exactly the counts that whole-number arithmetic allows', () => {
    fc.assert(
      fc.property(rise, (h) => {
        const { figures } = stepLayout({ totalRise: asText(h), tread: '11 in', rules: 'dwelling' });
        // 4 in = 64/16, 7-3/4 in = 124/16: n is allowed when 64 n <= h <= 124 n.
        const allowed = Array.from({ length: 200 }, (_, i) => i + 1).filter(
          (n) => 64 * n <= h && h <= 124 * n,
        );
        const found = figures.layouts.map(({ risers }) => risers.toNumber('each')).sort((a, b) => a - b);
        expect(found).toEqual(allowed);
      }),
    );
  });

  it('marks a pole that ends on the total and whose risers differ by 1/16 in at most', () => {
    fc.assert(
      fc.property(rise, (h) => {
        const { figures } = stepLayout({ totalRise: asText(h), tread: '11 in' });
        const last = figures.marks.at(-1);
        if (!last) return;
        expect(last.mark.compareTo(length(asText(h)))).toBe(0);
        expect(figures.markedDifference.greaterThan(length('1/16 in'))).toBe(false);
        figures.marks.forEach(({ height, mark }) => {
          expect(mark.minus(height).abs().greaterThan(length('1/32 in'))).toBe(false);
        });
      }),
    );
  });

  it('gives back the total: risers and the fall of the landing', () => {
    fc.assert(
      fc.property(
        rise,
        fc.integer({ min: 24, max: 120 }),
        fc.integer({ min: 0, max: 30 }),
        (h, d, permille) => {
          const input = {
            totalRise: asText(h + 80),
            tread: '11 in',
            landing: `${d} in`,
            pitch: { value: permille, unit: 'mm/m' },
          };
          const { figures, working } = stepLayout(input);
          for (const { riser, risers } of figures.layouts) {
            expect(
              riser
                .times(risers)
                .plus(figures.landingFall)
                .compareTo(length(asText(h + 80))),
            ).toBe(0);
          }
          for (const step of working) expect(disagreement(step), JSON.stringify(step)).toBeLessThan(6e-3);
        },
      ),
    );
  });

  it('ranks by walking rules met, then by nearness to 25 in', () => {
    fc.assert(
      fc.property(rise, (h) => {
        const { layouts } = stepLayout({ totalRise: asText(h), tread: '11 in' }).figures;
        for (let i = 1; i < layouts.length; i += 1) {
          const before = layouts[i - 1]?.walkingRules.length ?? 0;
          expect(layouts[i]?.walkingRules.length ?? 0).toBeLessThanOrEqual(before);
        }
      }),
    );
  });
});

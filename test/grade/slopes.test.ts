/** Slopes and two-point drainage: what must hold, and the engine's own trigonometry as a second way. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drainageCheck, length, slopeOf } from '../../src/index';

describe('slope', () => {
  it('agrees with the trigonometry of the engine', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 400 }), fc.integer({ min: 1, max: 400 }), (rise, run) => {
        const { angle, percent } = slopeOf({ rise: `${rise} in`, run: `${run} in` }).figures;
        expect(angle.toNumber('deg')).toBeCloseTo((Math.atan(rise / run) * 180) / Math.PI, 11);
        expect(percent.toNumber('%')).toBeCloseTo((100 * rise) / run, 10);
        const back = slopeOf({ angle }).figures.percent;
        expect(back.toNumber('%')).toBeCloseTo((100 * rise) / run, 9);
      }),
      { numRuns: 200 },
    );
  });
});

describe('drainage-check', () => {
  const inches = fc.integer({ min: -2000, max: 2000 });

  it('drains exactly when nothing is missing, and the shortfall mends it', () => {
    fc.assert(
      fc.property(
        inches,
        inches,
        fc.integer({ min: 1, max: 500 }),
        fc.constantFrom('1%', '2%', '1:48', '1/4 in/ft', '1:7'),
        (a, b, d, minimum) => {
          const asked = { atBuilding: `${a / 16} in`, away: `${b / 16} in`, distance: `${d} in`, minimum };
          const { verdict, shortfall, fall } = drainageCheck(asked).figures;
          expect(verdict === 'runs to the building').toBe(fall.sign() < 0);
          expect(verdict === 'drains').toBe(shortfall === undefined);
          if (!shortfall) return;
          expect(shortfall.sign()).toBe(1);
          const away = length(asked.away).minus(shortfall);
          expect(drainageCheck({ ...asked, away }).figures.verdict).toBe('drains');
        },
      ),
    );
  });

  it('does not depend on the datum', () => {
    fc.assert(
      fc.property(inches, inches, inches, (a, b, up) => {
        const at = (n: number): string => `${n / 16} in`;
        const one = drainageCheck({ atBuilding: at(a), away: at(b), distance: '10 ft' }).figures;
        const other = drainageCheck({ atBuilding: at(a + up), away: at(b + up), distance: '10 ft' }).figures;
        expect(other.slope.equals(one.slope)).toBe(true);
      }),
    );
  });
});

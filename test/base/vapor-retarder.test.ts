/** A sheet under a slab: what must hold for any, and strips laid one by one. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { reckonJob, vaporRetarder } from '../../src/index';
import { runs } from '../support/effort';

const roll = { rollWidth: '14 ft', rollLength: '100 ft' } as const;
const feet = (min: number, max: number) => fc.integer({ min: min * 12, max: max * 12 }).map((n) => n / 12);

describe('vapor-retarder', () => {
  it('has seams and sheet as strips laid one by one, where they come out even', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 40 }), fc.integer({ min: 1, max: 5 }), (strips, rows) => {
        // Each strip covers 13.5 ft by 99.5 ft, the last ones as well.
        const [width, length] = [13.5 * strips, 99.5 * rows];
        const { figures } = vaporRetarder({
          outline: { shape: 'rectangle', length: `${length} ft`, width: `${width} ft` },
          ...roll,
        });
        expect(figures.rolls.toNumber('each')).toBe(strips * rows);
        expect(figures.sheet.toNumber('ft2')).toBeCloseTo(strips * rows * 1400, 6);
        expect(figures.seams.toNumber('ft')).toBeCloseTo(strips * length + rows * width, 6);
      }),
      { numRuns: runs(200) },
    );
  });

  it('grows with the lap and with what is turned up, and takes no less than it covers', () => {
    fc.assert(
      fc.property(feet(5, 80), feet(5, 80), fc.integer({ min: 6, max: 24 }), (a, b, lap) => {
        const outline = { shape: 'rectangle', length: `${a} ft`, width: `${b} ft` } as const;
        const of = (more: object) => vaporRetarder({ outline, ...roll, lap: `${lap} in`, ...more }).figures;
        const plain = of({});
        expect(of({ lap: `${lap + 1} in` }).sheet.greaterThan(plain.sheet)).toBe(true);
        expect(of({ turnUp: '4 in' }).area.minus(plain.area).toNumber('ft2')).toBeCloseTo(
          (2 * (a + b)) / 3,
          8,
        );
        expect(plain.sheet.lessThan(plain.area)).toBe(false);
      }),
      { numRuns: runs(200) },
    );
  });

  it('is bought with a job, its rolls by their size', () => {
    const outline = { shape: 'rectangle', length: '30 ft', width: '24 ft' } as const;
    const job = reckonJob({
      version: 1,
      shared: { retarder: roll },
      elements: [
        { name: 'Flour store', outline, thickness: '4 in', slab: true, retarder: true },
        { name: 'Yard', outline, thickness: '4 in', slab: true },
      ],
    });
    const bought = job.takeoff.figures.purchases.filter(({ item }) => item === 'vapor-retarder');
    expect(bought.map(({ quantity, by }) => [quantity.format(), by.map(({ element }) => element)])).toEqual([
      ['1 each', ['Flour store']],
    ]);
  });
});

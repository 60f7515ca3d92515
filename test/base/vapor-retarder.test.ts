/** A sheet under a slab: what must hold for any, and strips laid one by one. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { reckonJob, vaporRetarder } from '../../src/index';
import { runs } from '../support/effort';

const roll = { rollWidth: '14 ft', rollLength: '100 ft' } as const;
const feet = (min: number, max: number) => fc.integer({ min: min * 12, max: max * 12 }).map((n) => n / 12);

describe('vapor-retarder', () => {
  it('has sheet and rolls as strips laid one by one, where they come out even', () => {
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
      }),
      { numRuns: runs(200) },
    );
  });

  it('tapes between strips laid one by one along or across, and where a roll begins', () => {
    /** Seams between strips over `across`, each `along` long. */
    const laid = (along: number, across: number): number => {
      let [reached, seams] = [14 * 12, 0];
      for (; reached < across; reached += 14 * 12 - 6) seams += along;
      return seams;
    };
    fc.assert(
      fc.property(
        fc.integer({ min: 60, max: 2400 }),
        fc.integer({ min: 60, max: 2400 }),
        fc.constantFrom(0, 3, 12),
        (a, b, up) => {
          const outline = { shape: 'rectangle', length: `${a} in`, width: `${b} in` } as const;
          const { seams, rolls } = vaporRetarder({ outline, ...roll, turnUp: `${up} in` }).figures;
          const [along, across] = [a + 2 * up, b + 2 * up];
          const between = Math.min(laid(along, across), laid(across, along));
          const begun = (rolls.toNumber('each') - 1) * 14 * 12;
          expect(seams.toNumber('in')).toBeCloseTo(between + begun, 6);
        },
      ),
      { numRuns: runs(300) },
    );
  });

  it('has the same seams over a plan that is mirrored or turned', () => {
    const corners = [
      [0, 0],
      [40, 0],
      [40, 17],
      [26, 17],
      [26, 33],
      [0, 27],
    ] as const;
    const seamsOf = (place: (x: number, y: number) => readonly [number, number]): number => {
      const points = corners.map(([x, y]) => place(x, y)).map(([x, y]) => ({ x: `${x} ft`, y: `${y} ft` }));
      return vaporRetarder({ outline: { shape: 'polygon', points }, ...roll }).figures.seams.toNumber('ft');
    };
    const one = seamsOf((x, y) => [x, y]);
    // Along, 13.5 ft apart from the lower edge: at 13.75 ft 40 ft long, at 27.25 ft from the slanted edge at 1.083 to 26.
    expect(one).toBeLessThanOrEqual(40 + (26 - 13 / 12) + 1e-9);
    for (const other of [
      seamsOf((x, y) => [-x, y]),
      seamsOf((x, y) => [x, -y]),
      seamsOf((x, y) => [y, x]),
      seamsOf((x, y) => [y + 900, -x]),
    ])
      expect(other).toBeCloseTo(one, 9);
  });

  it('shares its rolls among slabs of a job', () => {
    const outline = { shape: 'rectangle', length: '12 ft', width: '10 ft' } as const;
    const pad = { name: 'pad', count: 3, outline, thickness: '4 in', slab: true, retarder: roll };
    const { figures } = reckonJob({
      version: 1,
      elements: [pad, { ...pad, name: 'other', count: 9 }],
    }).takeoff;
    // 12 × 120 ft2 × 1,400 ÷ 1,343.25 = 1,500.8 ft2, of rolls of 1,400 ft2.
    expect(
      figures.purchases
        .filter(({ item }) => item === 'vapor-retarder')
        .map(({ quantity }) => quantity.format()),
    ).toEqual(['2 each']);
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

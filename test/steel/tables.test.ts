/** Tables: against each other, against geometry, and against slips such as are in print. */
import { describe, expect, it } from 'vitest';
import {
  type BarSeries,
  barSize,
  dowelLayout,
  lapLength,
  meshStyle,
  type Quantity,
  steelMinimum,
} from '../../src/index';
import { runs } from '../support/effort';
import { randoms } from './outlines';

const NUMBERS: Record<BarSeries, readonly string[]> = {
  'inch-pound': ['3', '4', '5', '6', '7', '8', '9', '10', '11', '14', '18'],
  'soft-metric': ['10', '13', '16', '19', '22', '25', '29', '32', '36', '43', '57'],
  'hard-metric': ['10', '15', '20', '25', '30', '35', '45', '55'],
  diameter: ['6', '8', '10', '12', '14', '16', '20', '25', '28', '32', '36', '40'],
};

describe.each(Object.entries(NUMBERS))('bars, %s', (series, numbers) => {
  const sizes = numbers.map((bar) => barSize({ bar, series: series as BarSeries }).figures);

  it('rise from size to size, so that no digit is out of place', () => {
    sizes.slice(1).forEach((size, i) => {
      const before = sizes[i] as (typeof sizes)[number];
      expect(size.diameter.greaterThan(before.diameter)).toBe(true);
      expect(size.area.greaterThan(before.area)).toBe(true);
      expect(size.unitWeight.greaterThan(before.unitWeight)).toBe(true);
    });
  });

  it('have areas and weights that a round bar of steel has, within what the tables round', () => {
    for (const { diameter, area, unitWeight } of sizes) {
      const round = (Math.PI / 4) * diameter.toNumber('mm') ** 2;
      expect(Math.abs(round / area.toNumber('mm2') - 1)).toBeLessThan(0.02);
      expect(Math.abs((area.toNumber('m2') * 7850) / unitWeight.toNumber('kg/m') - 1)).toBeLessThan(0.02);
    }
  });
});

describe('bars in two series', () => {
  it('weigh the same by their two numbers, as the conversion of units has it', () => {
    for (const bar of NUMBERS['inch-pound']) {
      const own = barSize({ bar: `No. ${bar}`, series: 'inch-pound' }).figures;
      const soft = barSize({ bar: own.sameBar ?? '', series: 'soft-metric' }).figures;
      expect(soft.sameBar).toBe(own.designation);
      expect(Math.abs(soft.unitWeight.toNumber('kg/m') - own.unitWeight.toNumber('kg/m'))).toBeLessThan(0.01);
    }
  });
});

describe('mesh designations', () => {
  it('read back as they were written', () => {
    const random = randoms(3);
    for (let k = 0; k < runs(500); k += 1) {
      const spacing = (): number => 2 + Math.floor(random() * 11);
      const wire = (): string =>
        `${random() < 0.5 ? 'W' : 'D'}${(1.4 + Math.floor(random() * 80) / 10).toFixed(1)}`;
      const style = `${spacing()}x${spacing()}-${wire()}x${wire()}`;
      const written = meshStyle({ style }).figures.style;
      expect(meshStyle({ style: written }).figures.style).toBe(written);
      expect(written).toBe(style);
    }
  });

  it('turn gauges into stock wires whose round area is the standard gauge, within the stock rounding', () => {
    // Steel wire gauge diameters in inches, standard and not of this library.
    const gauges = { 10: 0.135, 8: 0.162, 6: 0.192, 4: 0.2253, 2: 0.2625 };
    for (const [gauge, d] of Object.entries(gauges)) {
      const { along } = meshStyle({ style: `6x6-${gauge}x${gauge}` }).figures;
      expect(Math.abs((Math.PI / 4) * d * d - along.wireArea.toNumber('in2'))).toBeLessThan(0.001);
    }
  });

  it('refuse long text quickly', () => {
    const attempt = meshStyle.attempt({ style: '6x'.repeat(100_000) });
    expect(attempt.ok).toBe(false);
  });
});

describe('least steel and laps', () => {
  it('offers only bars and mesh that are enough', () => {
    const random = randoms(4);
    for (let k = 0; k < runs(200); k += 1) {
      const { along } = steelMinimum({
        kind: 'ratio',
        thickness: `${3 + Math.floor(random() * 40) / 4} in`,
        grade: random() < 0.5 ? '40' : '60',
      }).figures;
      for (const { areaPerFoot } of [...along.bars, ...along.mesh]) {
        expect(areaPerFoot?.lessThan(along.areaPerFoot as Quantity<'area'>)).toBe(false);
      }
    }
  });

  it('asks for more drag steel in proportion to length and weight', () => {
    const area = (length: string, thickness: string): number =>
      steelMinimum({ kind: 'drag', thickness, length }).figures.along.areaPerFoot?.toNumber('in2') ?? 0;
    expect(area('48 ft', '8 in')).toBeCloseTo(2 * area('24 ft', '8 in'), 12);
    expect(area('24 ft', '12 in')).toBeCloseTo(1.5 * area('24 ft', '8 in'), 12);
  });

  it('never laps less than 12 in, nor less for a weaker concrete', () => {
    const lap = (concrete: string): number =>
      lapLength({
        kind: 'development',
        bar: '#6',
        strength: concrete,
        cover: '2 in',
        spacing: '12 in',
      }).figures.lap.toNumber('in');
    const laps = ['2500 psi', '3000 psi', '4000 psi', '6000 psi', '12000 psi'].map(lap);
    laps.slice(1).forEach((l, i) => {
      expect(l).toBeLessThanOrEqual(laps[i] as number);
    });
    for (const l of laps) expect(l).toBeGreaterThanOrEqual(12);
  });
});

describe('dowel tables', () => {
  const DEPTHS = { floors: [5, 6, 7, 8, 9, 10], pavements: [7, 11, 15, 20, 25, 30] } as const;
  // Dowels of floors are sold in round sizes of each system: 3/4 in by 14 in, 20 mm by 350 mm; 7/8 in, 25 mm.
  it.each([
    ['floors', 0.13],
    ['pavements', 0.03],
  ] as const)('of %s have each row in both systems, within a share of %f', (table, most) => {
    for (const inches of DEPTHS[table]) {
      const [a, b] = [
        dowelLayout({ table, placing: 'basket', thickness: `${inches} in`, joint: '12 ft' }).figures,
        dowelLayout({ table, placing: 'basket', thickness: `${inches * 25.4} mm`, joint: '3.6576 m' })
          .figures,
      ];
      for (const name of ['diameter', 'length', 'spacing'] as const)
        expect(Math.abs(b[name].toNumber('mm') / a[name].toNumber('mm') - 1), `${inches} in`).toBeLessThan(
          most,
        );
    }
  });
});

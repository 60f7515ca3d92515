/** Base: what must hold for any of it, and second ways to its figures. */
import fc from 'fast-check';
import Qty from 'js-quantities';
import { describe, expect, it } from 'vitest';
import { type BaseMaterial, baseTonnage, mass } from '../../src/index';
import { valueText, wordsText } from '../../src/report/view';
import { runs } from '../support/effort';

const n = (min: number, max: number) => fc.integer({ min, max });
const BASE = { area: '500 ft2', depth: '6 in', compactedDensity: '135 pcf' } as const;

const MATERIALS: BaseMaterial[] = [
  'crushed-stone',
  'crushed-limestone',
  'crusher-run',
  'clean-stone',
  'gravel',
  'gravel-and-sand',
  'earth-and-gravel',
  'sand',
  'crushed-concrete',
];

describe('base-tonnage', () => {
  it('weighs the same in three tons as js-quantities (general-purpose unit library) says', () => {
    fc.assert(
      fc.property(n(1, 5000), (a) => {
        const { tons, deliveredMass } = baseTonnage({
          ...BASE,
          area: `${a} ft2`,
          tons: ['short', 'long', 'metric'],
        }).figures;
        const pounds = Qty(deliveredMass.toNumber('lb'), 'lb');
        const near = (x: number, y: number): boolean => Math.abs(x / y - 1) < 1e-9;
        return (
          near(tons?.short?.toNumber('ton') ?? 0, pounds.to('short-ton').scalar) &&
          near(tons?.metric?.toNumber('tonne') ?? 0, pounds.to('metric-ton').scalar) &&
          near(tons?.long?.toNumber('longton') ?? 0, pounds.to('lb').scalar / 2240)
        );
      }),
    );
  });

  it('is the same for an outline with a margin and for the larger outline', () => {
    fc.assert(
      fc.property(n(1, 60), n(1, 60), n(0, 48), (l, w, m) => {
        const one = baseTonnage({
          outline: { shape: 'rectangle', length: `${l} ft`, width: `${w} ft` },
          margin: `${m} in`,
          depth: '4 in',
          compactedDensity: '135 pcf',
        }).figures;
        const other = baseTonnage({
          outline: { shape: 'rectangle', length: `${l * 12 + 2 * m} in`, width: `${w * 12 + 2 * m} in` },
          depth: '4 in',
          compactedDensity: '135 pcf',
        }).figures;
        return one.mass.equals(other.mass) && one.area.equals(other.area);
      }),
    );
  });

  it('of a circle with a margin is that of the larger circle', () => {
    const at = (diameter: string, margin: string) =>
      baseTonnage({
        outline: { shape: 'circle', diameter },
        margin,
        depth: '4 in',
        compactedDensity: '135 pcf',
      });
    const difference = at('8 ft', '1 ft').figures.area.minus(at('10 ft', '0 in').figures.area).abs();
    expect(difference.toNumber('ft2')).toBeLessThan(1e-40);
  });

  it('spreads as far as the Virginia rule L = 9 T ÷ (W R) says', () => {
    // Published rule: paving training study guide of the Virginia Department of Transportation, page 9-1.
    fc.assert(
      fc.property(n(1, 12), n(90, 160), n(4, 30), (d, pcf, w) => {
        const { figures } = baseTonnage({
          ...BASE,
          depth: `${d} in`,
          compactedDensity: `${pcf} pcf`,
          looseDensity: '60 pcf',
          spreadWidth: `${w} ft`,
        });
        const R = figures.rateOfSpread.toNumber('lb/yd2');
        const rule = (pounds: number): number => (9 * pounds) / (w * R);
        return (
          Math.abs((figures.reach?.toNumber('ft') ?? 0) / rule(2000) - 1) < 1e-12 &&
          Math.abs((figures.spreadLength?.toNumber('ft') ?? 0) / rule(figures.mass.toNumber('lb')) - 1) <
            1e-12
        );
      }),
    );
  });

  it('never makes a lift thicker than the compactor can do, and never one more than needed', () => {
    fc.assert(
      fc.property(n(1, 200), n(70, 110), n(1, 40), (d, loose, extra) => {
        const { lifts } = baseTonnage({
          ...BASE,
          depth: `${d / 4} in`,
          looseDensity: `${loose} pcf`,
          compactedDensity: `${loose + extra} pcf`,
          compactor: 'plate',
        }).figures;
        const count = lifts?.count.toNumber('each') ?? 0;
        const depth = ((d / 4) * (loose + extra)) / loose;
        return (
          count >= depth / 4 - 1e-9 && count < depth / 4 + 1 && (lifts?.loose.toNumber('in') ?? 9) <= 4 + 1e-9
        );
      }),
    );
  });

  it('buys fabric for the laps: the strips of a rectangle need no more', () => {
    // Second method: whole strips side by side over a width that they fill exactly.
    const strips = 4;
    const [w, o] = [12.5, 1.5];
    const covered = strips * (w - o);
    const { geotextile } = baseTonnage({
      ...BASE,
      area: `${covered * 98.5} ft2`,
      geotextile: { rollWidth: '12.5 ft', rollLength: '100 ft', lap: '18 in' },
    }).figures;
    expect(geotextile?.area.toNumber('ft2')).toBeCloseTo(strips * w * 100, 6);
    expect(geotextile?.rolls.format()).toBe('4 each');
  });

  it('shows every default of every material with its range and source', () => {
    for (const material of MATERIALS) {
      const { assumed, figures, cautions } = baseTonnage({ area: '500 ft2', depth: '6 in', material });
      const shown = assumed.filter(({ name }) => name.endsWith('Density'));
      expect(shown.map(({ name }) => name)).toEqual(['compactedDensity', 'looseDensity']);
      for (const { value, because } of shown) {
        const [, from, to] = /: (\d+) pcf to (\d+) pcf/.exec(wordsText(because)) ?? [];
        const used = Number.parseFloat(valueText(value));
        expect(used).toBeGreaterThanOrEqual(Number(from));
        expect(used).toBeLessThanOrEqual(Number(to));
      }
      expect(figures.shrinkage.sign()).toBe(1);
      expect(cautions.map(({ code }) => code)).toContain('wheel-loads');
    }
  });

  it('makes loose and compacted a pair: a compacted yard takes an eighth to a third more', () => {
    // Published: 12% to 15% of loose gravel goes in rolling (Baker, 1903), an eighth of a hot mix (NAVEDTRA 14080).
    fc.assert(
      fc.property(n(90, 160), fc.constantFrom(undefined, ...MATERIALS), (pcf, material) => {
        const given = material ? { material } : {};
        const { looseVolume, compactedVolume } = baseTonnage({
          ...BASE,
          ...given,
          compactedDensity: `${pcf} pcf`,
        }).figures;
        const times = looseVolume.over(compactedVolume).toNumber(':1');
        return times > 1.12 && times < 1.34;
      }),
      { numRuns: runs(100) },
    );
    for (const material of MATERIALS) {
      const { looseVolume, compactedVolume } = baseTonnage({
        area: '500 ft2',
        depth: '6 in',
        material,
      }).figures;
      const times = looseVolume.over(compactedVolume).toNumber(':1');
      expect(times, material).toBeGreaterThan(1.12);
      expect(times, material).toBeLessThan(1.34);
    }
  });

  it('by the rate of spread is the base of that depth', () => {
    fc.assert(
      fc.property(n(2, 24), n(90, 160), (d, pcf) => {
        const { depth: _, ...rest } = { ...BASE, compactedDensity: `${pcf} pcf` };
        const deep = baseTonnage({ ...rest, depth: `${d} in` }).figures;
        const rated = baseTonnage({ ...rest, rateOfSpread: deep.rateOfSpread }).figures;
        return rated.mass.compareTo(deep.mass) === 0 && rated.depth.compareTo(deep.depth) === 0;
      }),
      { numRuns: runs(50) },
    );
  });

  it('says and gives the same in both unit systems', () => {
    const one = baseTonnage({ area: '500 ft2', depth: '6 in', material: 'crusher-run', compactor: 'plate' });
    const other = baseTonnage({
      area: '46.45152 m2',
      depth: '152.4 mm',
      material: 'crusher-run',
      compactor: 'plate',
    });
    // The usual density is a round one in each system, 140 pcf and 2,240 kg/m3.
    const near = (a: { toNumber(unit: never): number }, b: typeof a, unit: string): void =>
      expect(a.toNumber(unit as never) / b.toNumber(unit as never)).toBeCloseTo(1, 2);
    near(other.figures.mass, one.figures.mass, 'lb');
    near(other.figures.looseVolume, one.figures.looseVolume, 'yd3');
    expect(other.figures.lifts?.count.format()).toBe(one.figures.lifts?.count.format());
    const because = (wanted: string): string[] =>
      other.assumed
        .filter(({ name }) => name === wanted)
        .map((a) => `${valueText(a.value)}, ${wordsText(a.because)}`);
    expect(because('looseLift')[0]).toMatch(/^100 mm loose, /);
    expect(because('compactedDensity')[0]).toMatch(/2080 kg\/m3 to 2400 kg\/m3/);
  });

  it('trusts a heavier roller with thicker lifts, and never an unknown one with more', () => {
    const count = (rollerMass?: string): number =>
      baseTonnage({
        ...BASE,
        depth: '24 in',
        compactor: 'vibratory-roller',
        ...(rollerMass ? { rollerMass } : {}),
      }).figures.lifts?.count.toNumber('each') ?? 0;
    // Published: item 304.04 of the Ohio Department of Transportation, 2005: 4 in, 6 in and 8 in.
    expect(['2 ton', '11 ton', '13 ton'].map(count)).toEqual([6, 4, 3]);
    expect(count()).toBe(6);
  });

  it('pays for water by weight but not by volume', () => {
    const dry = baseTonnage({ ...BASE, truckPayload: '3 ton' }).figures;
    const wet = baseTonnage({ ...BASE, truckPayload: '3 ton', moisture: '5%' }).figures;
    expect(
      wet.deliveredMass.minus(dry.deliveredMass).equals(dry.mass.times(mass('0.05 lb').over(mass('1 lb')))),
    ).toBe(true);
    expect(wet.looseVolume.equals(dry.looseVolume)).toBe(true);
    expect([dry.loads?.format(), wet.loads?.format()]).toEqual(['6 each', '6 each']);
  });
});

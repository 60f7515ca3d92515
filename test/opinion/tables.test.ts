/**
 * Values that are written too coarsely, lines of tables and kinds of units taken for each other, and how much a check may
 * run. Common practice; each claim was reckoned by hand, as told beside it.
 */
import { describe, expect, it } from 'vitest';
import type { Claims } from '../../src/index';
import {
  bagCount,
  estimateCheck,
  excavation,
  formMaterials,
  jointLayout,
  pierVolume,
  rebarLayout,
  runoff,
  slabVolume,
  slopeOf,
  thicknessCheck,
  truckPlan,
} from '../../src/index';
import { effort } from '../../src/quantity/effort';
import { codesOf } from './codes';

const slab = (claims: Claims) =>
  estimateCheck(
    slabVolume,
    { outline: { shape: 'rectangle', length: '28 ft', width: '18 ft' }, thickness: '4 in' },
    claims,
  );
const metric = (claims: Claims) =>
  estimateCheck(
    slabVolume,
    { outline: { shape: 'rectangle', length: '9 m', width: '6 m' }, thickness: '125 mm' },
    claims,
  );
const bars = (claims: Claims) =>
  estimateCheck(
    rebarLayout,
    { length: '42 ft', width: '19 ft', thickness: '5 in', bar: '#4', spacing: '16 in' },
    claims,
  );
const bags = (claims: Claims) =>
  estimateCheck(bagCount, { volume: '11.5 ft3', allowance: '10%', bag: '80 lb' }, claims);
const probes = (claims: Claims) =>
  estimateCheck(
    thicknessCheck,
    { specified: '4 in', samples: ['3.5 in', '4.25 in', '4 in', '4.125 in', '4.25 in'] },
    claims,
  );
const rain = (claims: Claims) =>
  estimateCheck(
    runoff,
    {
      areas: [
        { surface: 'roof', area: '800 ft2' },
        { surface: 'concrete', area: '2400 ft2' },
      ],
      intensity: '5.95 in/h',
    },
    claims,
  );

describe('what is written too coarsely', () => {
  it('is 4 in as 0.3 ft, and 125 mm as 0.13 m', () => {
    // 504 ft2 × 0.3 ft ÷ 27; 54 m2 × 0.13 m.
    expect(codesOf(slab({ volume: '5.60 yd3' }))[0]).toBe('rounded-coarsely');
    expect(codesOf(metric({ volume: '7.02 m3' }))[0]).toBe('rounded-coarsely');
  });
  it('is not 4 in as 0.33 ft, nor what is rounded at last', () => {
    // 504 ft2 × 0.33 ft ÷ 27; 54 m2 × 0.125 m.
    for (const check of [slab({ volume: '6.16 yd3' }), metric({ volume: '6.8 m3' })]) {
      expect(check.verdict).toBe('agrees');
      expect(check.slips).toEqual([]);
    }
  });
});

describe('a line of a table taken for another', () => {
  it('is the weight of the next bar', () => {
    // 1283 ft × 1.043 lb/ft, which is that of a #5.
    expect(codesOf(bars({ barsToBuy: 67, weight: '1338 lb' }))[0]).toBe('other-size');
  });
  it('is not what another handbook has', () => {
    // 1283 ft × 0.67 lb/ft.
    expect(bars({ barsToBuy: 67, weight: '860 lb' }).verdict).toBe('agrees');
  });
  it('is laps that were not weighed', () => {
    // Two laps of 20 in in each of 15 lines are 50 ft: (1283 − 50) ft × 0.668 lb/ft.
    const check = bars({ totalLength: '1283 ft', weight: '824 lb' });
    expect(codesOf(check)[0]).toBe('laps-left-out');
    expect(check.slips[0]?.exact).toBe(true);
  });
  it('is gallons of the other kind', () => {
    // 16.5 gal ÷ 1.20095.
    expect(codesOf(bags({ bags: 22, water: '13.7 gal' }))[0]).toBe('wrong-gallon');
    expect(bags({ bags: 22, water: '16.5 gal' }).verdict).toBe('agrees');
  });
  it('is the middle of the least and the greatest for the mean', () => {
    // (3.5 + 4.25) ÷ 2; all of them are 20.125 ÷ 5.
    expect(codesOf(probes({ measuredMean: '3.875 in' })).slice(0, 3)).toContain('mean-of-ends');
    expect(probes({ measuredMean: '4.03 in' }).verdict).toBe('agrees');
  });
  it('is one of the surfaces that run off', () => {
    // 46.98 + 140.95 gal/min.
    expect(codesOf(rain({ flow: '141 gal/min' }))[0]).toBe('part-left-out');
    expect(rain({ flow: '188 gal/min' }).verdict).toBe('agrees');
  });
});

describe('what comes out', () => {
  it('is no half of a count', () => {
    const fill = {
      kind: 'fill',
      outline: { shape: 'rectangle', length: '24 ft', width: '20 ft' },
      depth: '30 in',
      sideSlope: '2:1',
      shrink: { convention: '1/(1+s)', share: '15%' },
      swell: '12%',
      haul: { truckVolume: '13 yd3' },
    } as const;
    // Trucks of 31 for 13 yd3: 87.46 ÷ 31, rounded up.
    const check = estimateCheck(excavation, fill, { 'haul.loads': 3, 'haul.bankVolume': '78.1 yd3' });
    expect(codesOf(check)[0]).toBe('digits-transposed');
    expect(codesOf(check)).not.toContain('halved');
  });
  it('is taken from one step for both sides of a square', () => {
    // √(25² + 15²) = 29.15 cm; 0.9215 m for 0.2915 m on both: 2 × 0.3 × 0.9215.
    const piers = [
      { kind: 'tapered-rectangular', length: '30 cm', topLength: '0 cm', height: '25 cm' },
    ] as const;
    const check = estimateCheck(pierVolume, { piers }, { sideArea: '0.5529 m2' });
    expect(codesOf(check)[0]).toBe('digits-transposed');
  });
  it('may be miswritten as a percentage first', () => {
    // 8.33% read as 3.33%: 12 in × 0.0333.
    expect(codesOf(estimateCheck(slopeOf, { slope: '1:12' }, { inchesPerFoot: '0.400 in/ft' }))[0]).toBe(
      'digit-off',
    );
  });
  it('is ordered up to a quarter yard where it is little too, and never down', () => {
    const piers = [{ kind: 'round', diameter: '14 in', height: '3 ft 9 in', count: 11 }] as const;
    // 1.633 yd3.
    expect(estimateCheck(pierVolume, { piers }, { volume: '1.75 yd3' }).verdict).toBe('close');
    expect(estimateCheck(pierVolume, { piers }, { volume: '1.50 yd3' }).verdict).toBe('differs');
  });
});

describe('what is run', () => {
  it('finds degrees of the other scale where a table is left on one side', () => {
    const pour = {
      volume: '49.8 yd3',
      truckCapacity: '10 yd3',
      placing: { kind: 'boom-pump', rate: '60 yd3/h' },
      travelTime: '34 min',
      returnTime: '30 min',
      concreteTemperature: '48.3 degF',
    } as const;
    const claim = truckPlan({ ...pour, concreteTemperature: '48.3 degC' }).figures.initialSet?.from;
    const check = estimateCheck(truckPlan, pour, { 'initialSet.from': claim?.format() ?? '' });
    expect(codesOf(check)[0]).toBe('temperature-scale');
  });
  it('finds boards that are bought for a height in feet', () => {
    // 3.5 ft are twelve courses of 3.5 in.
    const edge = {
      kind: 'slab-edge',
      runs: [{ length: '26 ft' }],
      height: '3.5 in',
      board: { nominal: '2x4' },
      stock: ['16 ft'],
    } as const;
    const bought = formMaterials({ ...edge, height: '3.5 ft' }).figures.lengthBought;
    const check = estimateCheck(formMaterials, edge, { lengthBought: bought?.format() ?? '' });
    expect(codesOf(check)[0]).toBe('inches-as-feet');
  });
  it('is bounded where corners stand on a grid of miles', () => {
    const [x, y] = [2_000_000, 500_000];
    const corners = [
      [0, 0],
      [40, 0],
      [40, 20],
      [22, 20],
      [22, 40],
      [0, 40],
    ] as const;
    const points = corners.map(([a, b]) => ({ x: `${x + a} ft`, y: `${y + b} ft` }));
    const before = effort.spent;
    estimateCheck(
      jointLayout,
      { outline: { shape: 'polygon', points }, thickness: '5 in', spacing: '12 ft' },
      { panelCount: 13 },
    );
    // What may be run, and once more the heaviest that one plan may be.
    expect(effort.spent - before).toBeLessThan(6_000_000 + 8_000_000);
  });
});

/**
 * Wrong estimates as a foreman's notebook has them, each written down with the slip that was made before it was checked.
 * Common practice; every claim was reckoned by hand with the slip in it.
 */
import { describe, expect, it } from 'vitest';
import {
  barSize,
  baseTonnage,
  estimateCheck,
  finishMaterials,
  footingVolume,
  formMaterials,
  invoiceCheck,
  jobBid,
  meshLayout,
  rebarLayout,
  relativeStiffness,
  runoff,
  slabVolume,
  straightedge,
} from '../../src/index';
import { first } from '../support/opinion/first';

const stiff = {
  thickness: '6 in',
  elasticity: '4000000 psi',
  poisson: '0.15:1',
  subgrade: { pressure: '150 psi', deflection: '1 in' },
} as const;

const footings = {
  footings: [
    { kind: 'strip', length: '74 ft', width: '16 in', depth: '8 in' },
    { kind: 'pad', length: '30 in', width: '30 in', depth: '12 in', count: 5 },
  ],
} as const;

const mat = {
  length: '34 ft',
  width: '22 ft',
  thickness: '6 in',
  bar: '#4',
  spacing: '16 in',
  cover: '3 in',
  stockLength: '20 ft',
} as const;

const base = { area: '731 ft2', depth: '6 in', compactedDensity: '138 pcf' } as const;
const metric = {
  outline: { shape: 'rectangle', length: '9.6 m', width: '5.4 m' },
  thickness: '125 mm',
} as const;
const round = { outline: { shape: 'circle', diameter: '14 ft' }, thickness: '4 in' } as const;
const sealed = {
  area: '960 ft2',
  allowance: '0%',
  sealant: { length: '154 ft', width: '3/8 in', depth: '3/8 in', container: '28 fl oz' },
} as const;

const mesh = {
  length: '34 ft',
  width: '22 ft',
  form: 'sheets',
  pieceLength: '20 ft',
  pieceWidth: '8 ft',
  style: '6x6-W2.9xW2.9',
} as const;

const forms = {
  kind: 'slab-edge',
  height: '6 in',
  board: { nominal: '2x6' },
  stock: ['16 ft'],
  runs: [
    { length: '34 ft', count: 2 },
    { length: '22 ft', count: 2 },
  ],
  stakes: { spacing: '3 ft' },
} as const;

const bid = {
  lines: [
    { kind: 'material', name: 'concrete', amount: '1860 USD' },
    { kind: 'labor', name: 'crew', amount: '2400 USD' },
  ],
  overhead: { markup: '10%' },
  profit: { markup: '20%' },
  tax: { kind: 'on-price', rate: '6%' },
} as const;

describe('the slip that was made stands first', () => {
  it.each([
    // ⁴√(4000000 × 36 / (12 × 0.9775 × 150)) = ⁴√81841.
    [
      'the square for the cube',
      estimateCheck(relativeStiffness, stiff, { radius: '16.9 in' }),
      'power-left-out',
    ],
    // √491049: one root of the two.
    ['one root of two', estimateCheck(relativeStiffness, stiff, { radius: '701 in' }), 'power-left-out'],
    // π × 14 / 4 = 11.0 ft2, and a third of that over 27.
    [
      'a diameter that was not squared',
      estimateCheck(slabVolume, round, { area: '11.0 ft2', volume: '0.136 yd3' }),
      'power-left-out',
    ],
    [
      'the weight of the next bar',
      estimateCheck(barSize, { bar: '#5' }, { unitWeight: '0.668 lb/ft' }),
      'other-choice',
    ],
    [
      'the section of the next bar',
      estimateCheck(barSize, { bar: '16 mm' }, { area: '314 mm2' }),
      'other-choice',
    ],
    // (74 × 1.6 × 0.8 + 31.25) / 27.
    [
      'inches of the strip alone as tenths',
      estimateCheck(footingVolume, footings, { volume: '4.67 yd3' }),
      'inches-as-tenths',
    ],
    // 18 × (20 + 15.167): the bars that run along, and none across.
    ['bars one way only', estimateCheck(rebarLayout, mat, { totalLength: '633 ft' }), 'term-left-out'],
    // 13.537 yd3 at a ton and a half.
    ['a ton and a half for a yard', estimateCheck(baseTonnage, base, { mass: '20.3 ton' }), 'other-size'],
    // 1.249 gal are 159.9 fl oz, and 15.8 tubes of 10.1.
    ['small tubes', estimateCheck(finishMaterials, sealed, { 'sealant.containers': '15' }), 'other-size'],
  ])('%s', (_, check, code) => {
    expect(first(check)).toBe(code);
  });

  it.each([
    // 3600 ft2 × 0.575 × 3.5 in/h = 0.1677 ft3/s.
    [
      'the plain mean of two coefficients',
      estimateCheck(
        runoff,
        {
          areas: [
            { surface: 'roof', area: '1200 ft2', coefficient: '0.95:1' },
            { surface: 'grass', area: '2400 ft2', coefficient: '0.2:1' },
          ],
          intensity: '3.5 in/h',
        },
        { flow: '75.3 gal/min' },
      ),
      'mean-of-ends',
    ],
    // 748 / 160 = 4.675.
    ['an area over the area of a sheet', estimateCheck(meshLayout, mesh, { pieces: '5' }), 'laps-left-out'],
    // (34 + 34 + 22 + 22) / 3 = 37.3.
    ['all edges in one', estimateCheck(formMaterials, forms, { stakes: '38' }), 'spaces-for-bars'],
    // 0.75 / 16.75.
    [
      'beyond the plan as a share of what came',
      estimateCheck(
        invoiceCheck,
        {
          elements: [{ name: 'slab', planned: '16 yd3' }],
          tickets: [{ volume: '9 yd3' }, { volume: '7.75 yd3' }],
        },
        { overShare: '4.48%' },
      ),
      'share-of-other',
    ],
    // 18 × (33.75 + 1.667) + 27 × (21.75 + 1.667).
    ['cover at one end', estimateCheck(rebarLayout, mat, { totalLength: '1269.8 ft' }), 'halved'],
  ])('%s', (_, check, code) => {
    expect(first(check)).toBe(code);
  });

  it('says that cover was taken at one end', () => {
    const { slips } = estimateCheck(rebarLayout, mat, { totalLength: '1269.8 ft' });
    expect(JSON.stringify(slips[0]?.slips[0]?.says)).toContain('on one side only');
  });

  it('a moved point at what is told in millimeters, before what is told in meters', () => {
    const { slips } = estimateCheck(slabVolume, metric, { volume: '64.8 m3' });
    expect(slips[0]?.slips[0]).toMatchObject({ code: 'point-moved', input: 'thickness' });
    expect(slips[0]?.elsewhere.map(({ input }) => input)).toContain('outline.length');
  });
});

describe('what was left out', () => {
  // 5623.20 before the tax.
  const check = estimateCheck(jobBid, bid, { total: '5623.20 USD' });

  it('is told once, and not as a share, a part, a term and another figure', () => {
    expect(check.slips.map((one) => one.slips.map(({ code }) => code))).toEqual([['allowance-missed']]);
  });

  it('is no price of one thing', () => {
    expect(JSON.stringify(check.slips)).not.toContain('unit-price-for-total');
  });

  it('is not told again as a value that is as good as nothing', () => {
    const outline = {
      shape: 'L',
      length: '32 ft',
      width: '20 ft',
      notchLength: '12 ft',
      notchWidth: '8 ft',
    } as const;
    const { slips } = estimateCheck(slabVolume, { outline, thickness: '4 in' }, { volume: '7.90 yd3' });
    const codes = slips.map((one) => one.slips[0]?.code);
    expect(codes[0]).toBe('notch-left-out');
    for (const code of ['term-left-out', 'point-moved', 'wrong-unit']) expect(codes).not.toContain(code);
  });
});

describe('a fraction of an inch', () => {
  const edge = { readings: ['0 in', '-5/16 in', '0 in'], spacing: '5 ft', edge: '10 ft' } as const;

  it.each([
    ['5/16 in', 'agrees'],
    ['1/4 in', 'differs'],
    // To the eighth.
    ['3/8 in', 'agrees'],
  ])('%s for a gap of 5/16 in', (claimed, verdict) => {
    expect(estimateCheck(straightedge, edge, { gap: claimed }).verdict).toBe(verdict);
  });
});

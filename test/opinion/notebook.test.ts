/**
 * More estimates as they stand in notebooks: shapes by their corners, values turned on the way, and right ones that were
 * rounded up to what is bought. Common practice; each claim was reckoned by hand with the slip in it, as told beside it.
 */
import { describe, expect, it } from 'vitest';
import {
  bagCount,
  baseTonnage,
  curbVolume,
  estimateCheck,
  excavation,
  footingVolume,
  jobBid,
  meshLayout,
  pierVolume,
  runoff,
  slabVolume,
  slopeOf,
  stepLayout,
  stepVolume,
  straightedge,
  wallVolume,
} from '../../src/index';
import { first } from '../support/opinion/first';

const bid = {
  lines: [
    { kind: 'material', name: 'concrete', amount: '1860 USD' },
    { kind: 'labor', name: 'crew', amount: '2400 USD' },
  ],
  profit: { margin: '20%' },
} as const;

const curb = {
  section: [
    { x: '0 in', y: '0 in' },
    { x: '6 in', y: '0 in' },
    { x: '6 in', y: '18 in' },
    { x: '0 in', y: '18 in' },
  ],
  length: '117 ft',
} as const;

const mesh = {
  length: '40 ft',
  width: '22 ft',
  form: 'sheets',
  pieceLength: '20 ft',
  pieceWidth: '5 ft',
  style: '6x6-W2.9xW2.9',
} as const;

const steps = { risers: 4, rise: '7 in', tread: '11 in', width: '5 ft', landingDepth: '4 ft' } as const;

const base = { area: '640 ft2', depth: '6 in', compactedDensity: '138 pcf' } as const;
const pit = {
  kind: 'pit',
  outline: { shape: 'rectangle', length: '21 ft 4 in', width: '12 ft 8 in' },
  depth: '15 in',
  swell: '25%',
} as const;

describe('a slip is named', () => {
  it.each([
    // 117 × 0.6 × 1.5 / 27: 6 in, which stand at two corners, as 0.6 ft.
    ['inches of two corners', estimateCheck(curbVolume, curb, { volume: '3.90 yd3' }), 'inches-as-tenths'],
    // 1.7 × 9 × 1.1 / 0.6 = 28.05: square yards have nine square feet.
    [
      'cubic yards turned by 9',
      estimateCheck(bagCount, { volume: '1.7 yd3', allowance: '10%', bag: '80 lb' }, { bags: '29' }),
      'linear-factor',
    ],
    // 1100 ft2 of 29 lb for 100 ft2, which is mesh of W2.0.
    ['another mesh of the table', estimateCheck(meshLayout, mesh, { weight: '319 lb' }), 'other-size'],
    // 4260 × 1.2: a fifth of the cost for a fifth of the price.
    ['a margin as a markup', estimateCheck(jobBid, bid, { total: '5112 USD' }), 'markup-for-margin'],
    // 66 × 1.6: 20 in are 1.667 ft.
    [
      'feet cut off behind the tenths',
      estimateCheck(
        footingVolume,
        { footings: [{ kind: 'strip', length: '66 ft', width: '20 in', depth: '10 in' }] },
        { bearingArea: '105.6 ft2' },
      ),
      'rounded-coarsely',
    ],
    // 5 × (6 × 0.7 × 1.1 + 4 × 0.7 × 4) / 27: 7 in as 0.7 ft, and 11 in as 1.1 ft.
    ['all inches as tenths', estimateCheck(stepVolume, steps, { volume: '2.93 yd3' }), 'inches-as-tenths'],
    // 2 × (30 + 20) × 3 × 8 / 12 / 27: four walls of full length.
    [
      'corners of walls counted twice',
      estimateCheck(
        wallVolume,
        {
          walls: [
            { kind: 'loop', outerLength: '30 ft', outerWidth: '20 ft', height: '3 ft', thickness: '8 in' },
          ],
        },
        { volume: '7.41 yd3' },
      ),
      'corner-twice',
    ],
    // 34 × 13.5 / 27: square feet over 27, with no thickness.
    [
      'a thickness in inches left out',
      estimateCheck(
        slabVolume,
        { outline: { shape: 'rectangle', length: '34 ft', width: '13 ft 6 in' }, thickness: '5 in' },
        { volume: '17.0 yd3' },
      ),
      'factor-left-out',
    ],
    // A gap of 1/4 in read twice as wide: a half is no rounding of a quarter.
    [
      'a fraction of an inch',
      estimateCheck(
        straightedge,
        { readings: ['0 in', '0 in', '-1/4 in', '0 in', '0 in'], spacing: '30 in', edge: '10 ft' },
        { gap: '1/2 in' },
      ),
      'doubled',
    ],
  ])('%s', (_, check, code) => {
    expect(check.verdict).not.toBe('agrees');
    expect(first(check)).toBe(code);
  });

  // 2400 × 0.9 × 4 / 43,200: gravel left out, which is no allowance that was missed.
  it('a surface left out of a runoff', () => {
    const check = estimateCheck(
      runoff,
      {
        areas: [
          { surface: 'roof', area: '2400 ft2', coefficient: '90%' },
          { surface: 'gravel', area: '1000 ft2', coefficient: '40%' },
        ],
        intensity: '4 in/h',
      },
      { flow: '0.200 ft3/s' },
    );
    const codes = check.slips.map(({ slips }) => slips[0]?.code);
    expect(codes[0]).toBe('part-left-out');
    expect(codes).not.toContain('allowance-missed');
  });
});

describe('what is rounded up to be bought is close, and no slip is looked for', () => {
  it.each([
    // 320 ft3 × 138 / 2000 = 22.08 ton.
    ['whole tons', estimateCheck(baseTonnage, base, { mass: '23 ton' })],
    ['half tons', estimateCheck(baseTonnage, base, { mass: '22.5 ton' })],
    // 21.333 × 12.667 × 1.25 / 27 = 12.51 yd3, and 13 × 1.25 loose.
    [
      'what follows from whole yards',
      estimateCheck(excavation, pit, { bankVolume: '13 yd3', looseVolume: '16.25 yd3' }),
    ],
  ])('%s', (_, { verdict, slips }) => {
    expect(verdict).toBe('close');
    expect(slips).toEqual([]);
  });

  it('a ton more than the next is not', () => {
    expect(estimateCheck(baseTonnage, base, { mass: '24 ton' }).verdict).toBe('differs');
    // A whole yard of six is more than a twentieth.
    expect(
      estimateCheck(
        slabVolume,
        { outline: { shape: 'rectangle', length: '20 ft', width: '20 ft' }, thickness: '5 in' },
        { volume: '7 yd3' },
      ).verdict,
    ).toBe('differs');
  });
});

describe('a right estimate agrees', () => {
  // 11 × 3.14 × 0.42² × 3.75 / 27: a radius of 5 in in hundredths of a foot.
  it('from a radius in hundredths of a foot', () => {
    const piers = [{ kind: 'round', diameter: '10 in', height: '3 ft 9 in', count: 11 }] as const;
    expect(estimateCheck(pierVolume, { piers }, { volume: '0.85 yd3' }).verdict).toBe('agrees');
  });

  // 38 / 5 = 7.6 in: 7-5/8 to the eighth, and 7-1/2 is an eighth less.
  it('in eighths of an inch, and not in halves of small lengths', () => {
    const riser = (claimed: string) =>
      estimateCheck(stepLayout, { totalRise: '38 in', risers: 5, tread: '11 in' }, { 'best.riser': claimed })
        .verdict;
    expect(riser('7-5/8 in')).toBe('agrees');
    expect(riser('7-1/2 in')).not.toBe('agrees');
  });

  // 1.5 in in 12 ft is 1/8 in/ft.
  it('for slopes in eighths of an inch', () => {
    const slope = (claimed: string) =>
      estimateCheck(slopeOf, { rise: '1.5 in', run: '12 ft' }, { inchesPerFoot: claimed }).verdict;
    expect(slope('1/8 in/ft')).toBe('agrees');
    expect(slope('1/4 in/ft')).toBe('differs');
  });
});

/**
 * Slips in the parts of a job: a job sums up what its slabs, footings and piers take, and most slips are made in one of
 * these. Common practice; each claim was reckoned by hand with the slip in it, as told beside it.
 */
import { describe, expect, it } from 'vitest';
import { type Claims, estimateCheck, jobTakeoff } from '../../src/index';
import { first } from '../support/opinion/first';

const yard = {
  version: 1,
  shared: { allowance: '8%', base: { depth: '4 in', compactedDensity: '135 pcf' } },
  order: { increment: '0.25 yd3', truckCapacity: '9 yd3' },
  elements: [
    {
      name: 'delivery slab',
      outline: { shape: 'rectangle', length: '28 ft', width: '18 ft' },
      thickness: '6 in',
      slab: true,
      base: { depth: '6 in', margin: '6 in' },
    },
    {
      name: 'stoop',
      steps: { risers: 2, rise: '7 in', tread: '11 in', width: '5 ft', landingDepth: '4 ft' },
    },
    {
      name: 'ramp',
      outline: { shape: 'rectangle', length: '14 ft', width: '4 ft' },
      thickness: '4 in',
      slab: true,
      base: true,
    },
  ],
} as const;

const garden = {
  version: 1,
  shared: { allowance: '5%' },
  order: { increment: '0.25 m3', truckCapacity: '6 m3' },
  elements: [
    {
      name: 'terrace',
      outline: { shape: 'L', length: '8 m', width: '6 m', notchLength: '3 m', notchWidth: '2 m' },
      thickness: '120 mm',
      slab: true,
      excavation: { depth: '270 mm', swell: '25%' },
      base: { depth: '150 mm', compactedDensity: '2100 kg/m3' },
    },
    {
      name: 'wall',
      walls: { walls: [{ kind: 'straight', length: '6.5 m', height: '800 mm', thickness: '200 mm' }] },
    },
    {
      name: 'bin pads',
      count: 3,
      outline: { shape: 'rectangle', length: '2.4 m', width: '1.8 m' },
      thickness: '100 mm',
      slab: true,
    },
    {
      name: 'posts',
      count: 4,
      piers: { piers: [{ kind: 'round', diameter: '300 mm', height: '900 mm' }] },
    },
  ],
} as const;

const garage = {
  version: 1,
  shared: { allowance: '5%' },
  order: { increment: '0.5 yd3', truckCapacity: '10 yd3' },
  elements: [
    {
      name: 'garage slab',
      outline: { shape: 'rectangle', length: '24 ft', width: '22 ft' },
      thickness: '5 in',
      slab: true,
    },
    {
      name: 'footing',
      footings: { footings: [{ kind: 'strip', length: '92 ft', width: '16 in', depth: '10 in' }] },
    },
  ],
} as const;

const ofYard = (claims: Claims) => estimateCheck(jobTakeoff, yard, claims);
const ofGarden = (claims: Claims) => estimateCheck(jobTakeoff, garden, claims);

describe('a slip in a part of a job', () => {
  it.each([
    // 9.333 + 0.964 + 14 × 4 × 4 / 12, which is 18.67 ft3.
    ['one element not divided by 27', ofYard({ concrete: '28.96 yd3' }), 'not-divided-by-27', 'ramp'],
    // 28 × 18 × 0.6 / 27 = 11.2, and 12.856 × 1.08 = 13.88.
    [
      'inches as tenths in one element',
      ofYard({ concrete: '12.86 yd3', 'mixes.0.order': '14 yd3' }),
      'inches-as-tenths',
      'delivery slab',
    ],
    // 10.989 × 1.08² = 12.82.
    [
      'an allowance on top of the allowance',
      ofYard({ concrete: '10.99 yd3', 'mixes.0.order': '13 yd3' }),
      'allowance-twice',
      'likewise',
    ],
    // 10.298 × 1.08 = 11.12.
    [
      'an element that was forgotten',
      ofYard({ concrete: '10.30 yd3', 'mixes.0.order': '11.25 yd3' }),
      'part-left-out',
      'ramp',
    ],
    // 29 × 19 / 3 × 135 / 2000 = 12.40 ton, and 1.26 ton under the ramp.
    [
      'the depth of the shared base',
      ofYard({ 'purchases.1.quantity': '13.66 ton' }),
      'other-',
      'delivery slab',
    ],
    // 504 × 0.5 × 135 / 2000 = 17.01 ton, and 1.26 ton under the ramp.
    [
      'the margin of the base',
      ofYard({ 'purchases.1.quantity': '18.27 ton' }),
      'part-left-out',
      'delivery slab',
    ],
    // 42 × 0.27 × 2.1.
    [
      'the depth of the dig for that of the base',
      ofGarden({ 'purchases.2.quantity': '23.81 t' }),
      'other-input',
      'terrace',
    ],
    // 5.04 + 1.04 + 1.296 + 4 × 0.3² × 0.9.
    ['round posts reckoned square', ofGarden({ concrete: '7.700 m3' }), 'circle-as-square', 'posts'],
    // 5.04 + 1.04 + 0.432 + 0.2545 = 6.767, and × 1.05 = 7.10.
    [
      'one pad for three',
      ofGarden({ concrete: '6.77 m3', 'mixes.0.order': '7.25 m3' }),
      'factor-left-out',
      'bin pads',
    ],
    // 92 × 1.6 × 1 / 27 = 5.452, with 8.148 of the slab 13.60, and × 1.05 = 14.28.
    [
      'inches of a footing, and of nothing else, as tenths',
      estimateCheck(jobTakeoff, garage, { concrete: '13.60 yd3', 'mixes.0.order': '14.5 yd3' }),
      'inches-as-tenths',
      'footing',
    ],
  ])('%s', (_, check, code, name) => {
    expect(first(check)).toContain(code);
    expect(check.slips[0]?.explains.length).toBe(check.claims.filter(({ verdict }) => verdict).length);
    const [slip] = check.slips[0]?.slips ?? [];
    expect(JSON.stringify(slip?.says)).toContain(name);
    // Steps are those of the job itself: what shows in a part is told by its place.
    if (slip?.step === undefined) expect(slip?.input).toBeDefined();
    else expect(check.result.working[slip.step]).toBeDefined();
  });

  it('is looked for only where it can touch what is claimed', () => {
    const check = ofYard({ 'purchases.1.quantity': '13.66 ton' });
    expect(check.slips.flatMap(({ slips }) => slips).map(({ input }) => input ?? '')).not.toContainEqual(
      expect.stringMatching(/^elements\[1\]/),
    );
  });
});

/**
 * Claims as people write them, and what they may be a rounding of. Common practice; every claim was reckoned by hand,
 * with the slip in it as told beside it.
 */
import { describe, expect, it } from 'vitest';
import {
  bagCount,
  baseTonnage,
  concreteOrder,
  deliveryTicket,
  estimateCheck,
  excavation,
  footingVolume,
  formMaterials,
  formPressure,
  InputError,
  jobBid,
  jobTakeoff,
  jointSpacing,
  maturity,
  slabVolume,
} from '../../src/index';
import { checkSheet } from '../../src/report/index';
import { codesOf } from './codes';

const slab = (thickness: string) =>
  ({ outline: { shape: 'rectangle', length: '18 ft', width: '9 ft' }, thickness }) as const;
const bags = { volume: '10 ft3', allowance: '5%', bag: '80 lb' } as const;

describe('claims', () => {
  it.each(['18 bags', '18 bag', '18', '18 each', '18 sacks.'])('count things by their name: %s', (bag) => {
    expect(estimateCheck(bagCount, bags, { bags: bag }).verdict).toBe('agrees');
  });

  it.each(['18 ft', '18 lb', '2 dozen', '18 bags per pour', '18 hundred', '17 or 18 bags', '9 pairs'])(
    'are refused where a word is more than a name: %s',
    (bag) => {
      expect(() => estimateCheck(bagCount, bags, { bags: bag })).toThrow(InputError);
    },
  );

  it('of concrete are in cubic yards where they are in yards', () => {
    // 18 × 9 × 4 / 12 / 27 = 2.
    for (const volume of ['2 yd', '2 yd.', '2 yards'])
      expect(estimateCheck(slabVolume, slab('4 in'), { volume }).verdict).toBe('agrees');
    expect(() => estimateCheck(slabVolume, slab('4 in'), { perimeter: '2 yd3' })).toThrow(InputError);
  });

  it('of tonnes are in t on a metric job, and on no other', () => {
    // 85 m2 × 0.15 m × 2.2 t/m3 = 28.05 t.
    const metric = { area: '85 m2', depth: '150 mm', compactedDensity: '2200 kg/m3' } as const;
    expect(estimateCheck(baseTonnage, metric, { mass: '28.05 t' }).verdict).toBe('agrees');
    const customary = { area: '720 ft2', depth: '4 in', compactedDensity: '135 pcf' } as const;
    expect(() => estimateCheck(baseTonnage, customary, { mass: '16.2 t' })).toThrow(/two ways/);
  });

  it('of a ratio need no unit', () => {
    // 240 gal × 8.345 lb are 2,003 lb, over 4,888 lb; the gallons over the pounds are 0.0491.
    const load = { volume: '8 yd3', ordered: {}, cement: '4888 lb', water: '240 gal' } as const;
    expect(estimateCheck(deliveryTicket, load, { waterCement: '0.41' }).verdict).toBe('agrees');
    expect(codesOf(estimateCheck(deliveryTicket, load, { waterCement: '0.0491' }))[0]).toBe(
      'factor-left-out',
    );
  });
});

describe('a figure that is written shortly', () => {
  // 18 × 9 × 4.8 / 12 / 27 = 2.4, and with 3.1 in 1.55.
  it.each([
    ['4.8 in', '2 yd3', 'differs'],
    ['3.1 in', '2 yd3', 'differs'],
    ['4.8 in', '2.4 yd3', 'agrees'],
    ['4.1 in', '2 yd3', 'agrees'],
  ])('says no less than a twentieth: %s as %s', (thickness, volume, verdict) => {
    expect(estimateCheck(slabVolume, slab(thickness), { volume }).verdict).toBe(verdict);
  });

  it('says more on a tape', () => {
    // A quarter of 6 in is 1-1/2, a third 2.
    const joints = { thickness: '6 in', aggregateSize: '1 in', slump: '3 in' } as const;
    const check = estimateCheck(jointSpacing, joints, { depth: '2 in' });
    expect(check.verdict).toBe('differs');
    expect(codesOf(check).slice(0, 2)).toContain('other-number');
  });
});

describe('shares', () => {
  const lines = [
    { kind: 'material', name: 'mix', quantity: '8 m3', price: { amount: '140 EUR', per: '1 m3' } },
    { kind: 'labor', name: 'crew', hours: '40 h', wage: { amount: '38 EUR', per: '1 h' } },
  ] as const;

  it('are put on side by side for one after the other', () => {
    // 2,640 × 1.39; by turns it is × 1.20 × 1.19 = 3,769.92.
    const bid = { lines, profit: { markup: '20%' }, tax: { kind: 'on-price', rate: '19%' } } as const;
    const check = estimateCheck(jobBid, bid, { total: '3669.60 EUR' });
    expect(codesOf(check)[0]).toBe('share-of-other');
  });

  it('of the cost are taken as shares of the price', () => {
    // 2,640 / 0.88; with the markup it is 2,956.80.
    const bid = { lines, overhead: { markup: '12%' } } as const;
    expect(codesOf(estimateCheck(jobBid, bid, { total: '3000.00 EUR' }))[0]).toBe('markup-for-margin');
  });

  it('stand in the name that somebody gave', () => {
    const check = estimateCheck(jobBid, { lines }, { total: '1120 EUR' });
    expect(checkSheet(check)).toContain('crew: lines 2 was left out');
  });
});

describe('formulas', () => {
  it('of two ends for one with its middle', () => {
    // 6 × (25 × 8/12 + (25 + 4) / 2 × 1) / 27; the prismoid has 14.25 for 14.5.
    const pads = {
      kind: 'tapered-pad',
      length: '5 ft',
      width: '5 ft',
      edge: '8 in',
      topLength: '2 ft',
      topWidth: '2 ft',
      taper: '12 in',
      count: 6,
    } as const;
    expect(codesOf(estimateCheck(footingVolume, { footings: [pads] }, { volume: '6.93 yd3' }))[0]).toBe(
      'mean-of-ends',
    );
    // (240 + 28 × 20) / 2 × 4 / 27.
    const pit = {
      kind: 'pit',
      outline: { shape: 'rectangle', length: '20 ft', width: '12 ft' },
      depth: '4 ft',
      sideSlope: '1:1',
      swell: '25%',
    } as const;
    expect(codesOf(estimateCheck(excavation, pit, { bankVolume: '59.26 yd3' }))[0]).toBe('mean-of-ends');
  });

  it('without the datum of a temperature', () => {
    // 15 × 24 + 20 × 24; with a datum of −10 degC it is 1,320.
    const history = [
      { at: '0 h', temperature: '10 degC' },
      { at: '24 h', temperature: '20 degC' },
      { at: '48 h', temperature: '20 degC' },
    ] as const;
    const check = estimateCheck(
      maturity,
      { history, gap: '24 h', datum: '-10 degC' },
      { temperatureTime: '840 degC-h' },
    );
    expect(codesOf(check)[0]).toBe('term-left-out');
  });

  it('with another value than the assumed one', () => {
    // 8 ft × 120 pcf; concrete is taken as 150 pcf.
    const wall = {
      kind: 'wall',
      height: '8 ft',
      rise: '5 ft/h',
      temperature: '70 degF',
      cement: 'plain',
    } as const;
    const [likely] = estimateCheck(formPressure, wall, { fullHead: '960 psf' }).slips;
    expect(likely?.slips[0]?.input).toBe('density');
  });
});

describe('what is bought', () => {
  const job = {
    version: 1,
    shared: { allowance: '8%' },
    order: { increment: '0.25 yd3', truckCapacity: '9 yd3' },
    elements: [
      {
        name: 'slab',
        outline: { shape: 'rectangle', length: '28 ft', width: '18 ft' },
        thickness: '6 in',
        slab: true,
      },
      {
        name: 'walk',
        outline: { shape: 'rectangle', length: '40 ft', width: '6 ft' },
        thickness: '4 in',
        slab: true,
      },
    ],
  } as const;

  // 9.333 + 2.963 = 12.296; with 8% 13.28, ordered as 13.50, without it 12.50.
  it.each([
    ['12.50 yd3', 'allowance-missed'],
    ['13.25 yd3', 'rounded-down'],
  ])('on a whole job: %s', (order, code) => {
    expect(codesOf(estimateCheck(jobTakeoff, job, { 'mixes[0].order': order }))[0]).toBe(code);
  });

  it('in an order of its own', () => {
    const order = {
      volume: '12.22 yd3',
      allowance: '10%',
      increment: '0.25 yd3',
      truckCapacity: '9 yd3',
    } as const;
    expect(estimateCheck(concreteOrder, order, { order: '13 1/2 yd', loadCount: '2 loads' }).verdict).toBe(
      'agrees',
    );
  });
});

it('a curve between two corners at one place is refused', () => {
  const points = [
    { x: '0 ft', y: '0 ft' },
    { x: '0 ft', y: '0 ft', radius: '30 ft' },
    { x: '20 ft', y: '20 ft' },
    { x: '0 ft', y: '20 ft' },
  ] as const;
  const attempt = formMaterials.attempt({
    kind: 'slab-edge',
    outline: { shape: 'curved', points },
    height: '2.5 in',
    board: { nominal: '1x4' },
    stock: ['12 ft'],
    stakes: { spacing: '2 ft' },
  });
  expect(attempt.ok ? '' : attempt.error.issues[0]?.code).toBe('repeated-point');
});

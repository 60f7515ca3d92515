/**
 * Estimates as they stand in notebooks: right ones, rounded at one step or another, are confirmed; wrong ones have the
 * slip named first that was made. The slips are common practice; each claim was reckoned by hand with the slip in it.
 */
import { describe, expect, it } from 'vitest';
import type { Claims, EstimateCheck } from '../../src/index';
import {
  bagCount,
  baseTonnage,
  concreteOrder,
  drainageCheck,
  estimateCheck,
  evaporationRate,
  excavation,
  footingVolume,
  meshLayout,
  pierVolume,
  rebarLayout,
  slabVolume,
  slopeOf,
  squareCheck,
  truckPlan,
  wallVolume,
} from '../../src/index';
import { codesOf } from './codes';

const rect = (length: string, width: string) => ({ shape: 'rectangle', length, width }) as const;

const slab = (claims: Claims) =>
  estimateCheck(slabVolume, { outline: rect('36 ft', '22 ft'), thickness: '5 in' }, claims);
const slabInMeters = (claims: Claims) =>
  estimateCheck(slabVolume, { outline: rect('11.4 m', '6.2 m'), thickness: '125 mm' }, claims);
const oddSlab = (claims: Claims) =>
  estimateCheck(slabVolume, { outline: rect('26 ft 10 in', '14 ft 8 in'), thickness: '6 in' }, claims);
const order = (claims: Claims) =>
  estimateCheck(
    concreteOrder,
    { volume: '12.22 yd3', allowance: '8%', increment: '0.25 yd3', truckCapacity: '9 yd3' },
    claims,
  );
const orderInMeters = (claims: Claims) =>
  estimateCheck(
    concreteOrder,
    { volume: '8.84 m3', allowance: '7%', increment: '0.2 m3', truckCapacity: '6 m3' },
    claims,
  );
const bags = (claims: Claims) =>
  estimateCheck(bagCount, { volume: '14 ft3', allowance: '10%', bag: '80 lb' }, claims);
const base = (claims: Claims) =>
  estimateCheck(
    baseTonnage,
    { outline: rect('40 ft', '24 ft'), depth: '6 in', compactedDensity: '135 pcf', allowance: '5%' },
    claims,
  );
const baseInMeters = (claims: Claims) =>
  estimateCheck(
    baseTonnage,
    { outline: rect('12 m', '7 m'), depth: '150 mm', compactedDensity: '2100 kg/m3', allowance: '5%' },
    claims,
  );
const dig = (claims: Claims) =>
  estimateCheck(
    excavation,
    {
      kind: 'pit',
      outline: rect('40 ft', '24 ft'),
      depth: '14 in',
      margin: '1 ft',
      swell: '25%',
      haul: { truckVolume: '10 yd3' },
    },
    claims,
  );
const mesh = (claims: Claims) =>
  estimateCheck(
    meshLayout,
    {
      length: '40 ft',
      width: '24 ft',
      form: 'sheets',
      pieceLength: '20 ft',
      pieceWidth: '8 ft',
      style: '6x6-W2.9xW2.9',
    },
    claims,
  );
const meshInMeters = (claims: Claims) =>
  estimateCheck(
    meshLayout,
    { length: '12 m', width: '7 m', form: 'sheets', pieceLength: '6 m', pieceWidth: '2.4 m', style: 'A142' },
    claims,
  );
const rebar = (claims: Claims) =>
  estimateCheck(
    rebarLayout,
    { length: '40 ft', width: '24 ft', bar: '#4', spacing: '18 in', cover: '3 in' },
    claims,
  );
const rebarInMeters = (claims: Claims) =>
  estimateCheck(
    rebarLayout,
    { length: '12 m', width: '7 m', bar: '12 mm', spacing: '200 mm', cover: '50 mm' },
    claims,
  );
const loopWall = (claims: Claims) =>
  estimateCheck(
    wallVolume,
    {
      walls: [{ kind: 'loop', outerLength: '30 ft', outerWidth: '20 ft', height: '8 ft', thickness: '8 in' }],
    },
    claims,
  );
const footing = (claims: Claims) =>
  estimateCheck(
    footingVolume,
    {
      footings: [{ kind: 'loop', outerLength: '30 ft', outerWidth: '20 ft', width: '20 in', depth: '10 in' }],
    },
    claims,
  );
const piers = (claims: Claims) =>
  estimateCheck(
    pierVolume,
    { piers: [{ kind: 'round', diameter: '400 mm', height: '1.2 m', count: 8 }] },
    claims,
  );
const fall = (claims: Claims) => estimateCheck(slopeOf, { slope: '1/4 in/ft', over: '22 ft' }, claims);
const drain = (claims: Claims) =>
  estimateCheck(
    drainageCheck,
    { atBuilding: '100 ft', away: '99.54 ft', distance: '22 ft', minimum: '2%' },
    claims,
  );
const square = (claims: Claims) =>
  estimateCheck(
    squareCheck,
    { length: '36 ft', width: '22 ft', diagonals: ['42 ft 2 1/4 in', '42 ft 2 1/4 in'] },
    claims,
  );
const trucks = (claims: Claims) =>
  estimateCheck(
    truckPlan,
    {
      volume: '32 yd3',
      truckCapacity: '9 yd3',
      placing: { kind: 'chute', rate: '20 yd3/h' },
      travelTime: '25 min',
      loadingTime: '10 min',
      washOutTime: '10 min',
      returnTime: '25 min',
    },
    claims,
  );
const evaporation = (claims: Claims) =>
  estimateCheck(
    evaporationRate,
    { airTemperature: '85 degF', humidity: '35%', concreteTemperature: '80 degF', wind: '12 mph' },
    claims,
  );

type Check = (claims: Claims) => EstimateCheck;

const RIGHT: readonly (readonly [how: string, check: Check, claims: Claims])[] = [
  ['792 × 0.42 is 332.6, over 27 is 12.3', slab, { volume: '12.3 yd3' }],
  ['in cubic feet', slab, { volume: '330 ft3' }],
  ['26.83 × 14.67', oddSlab, { area: '393.6 ft2', volume: '7.29 yd3' }],
  ['26.8 × 14.7 is 394', oddSlab, { area: '394 ft2', volume: '7.3 yd3' }],
  ['70.7 × 0.125', slabInMeters, { area: '70.7 m2', volume: '8.84 m3' }],
  ['71 × 0.125', slabInMeters, { volume: '8.9 m3' }],
  ['up to the quarter', order, { order: '13-1/4 yd3' }],
  ['up to the fifth', orderInMeters, { order: '9.6 m3', loadCount: 2 }],
  ['26 bags', bags, { bags: 26 }],
  ['to the ton', base, { deliveredMass: '34 ton' }],
  ['to a tenth of a tonne', baseInMeters, { deliveredMass: '27.8 tonne' }],
  ['loose to the yard', dig, { looseVolume: '59 yd3', bankVolume: '47.2 yd3' }],
  ['93.3 × 1.67 × 0.83', footing, { volume: '4.79 yd3' }],
  ['0.126 × 1.2 × 8', piers, { volume: '1.21 m3' }],
  ['on a tape', fall, { fall: '5-1/2 in' }],
  ['read off a chart', evaporation, { rate: '0.2 lb/ft2/h' }],
  ['on a tape, to a quarter', square, { trueDiagonal: `42' 2-1/4"` }],
];

const WRONG: readonly (readonly [how: string, check: Check, claims: Claims, code: string])[] = [
  ['divided by 25', slab, { volume: '13.2 yd3' }, 'wrong-factor'],
  // 36 × 22 × 5/12 ÷ 27 = 12.22 yd3; 11.4 × 6.2 × 0.125 = 8.84 m3.
  ['10% put on', slab, { volume: '13.44 yd3' }, 'allowance-put-on'],
  ['5% put on', slabInMeters, { volume: '9.28 m3' }, 'allowance-put-on'],
  [
    '10% put on, beside an area that is right',
    slab,
    { area: '792 ft2', volume: '13.4 yd3' },
    'allowance-put-on',
  ],
  // 12.22 × 1.08 = 13.20 yd3: 13.25 in quarters.
  ['ordered by the whole yard', order, { order: '14 yd3' }, 'other-size'],
  ['ordered without the allowance', order, { order: '12.25 yd3' }, 'allowance-missed'],
  ['36 + 22 for the area', slab, { volume: '0.9 yd3' }, 'added-for-multiplied'],
  ['the way around for the area', slab, { volume: '1.79 yd3' }, 'added-for-multiplied'],
  ['yards over 0.7646 for times', slab, { volume: '15.99 m3' }, 'converted-upside-down'],
  ['cubic meters times 0.7646', slabInMeters, { volume: '6.76 yd3' }, 'converted-upside-down'],
  ['4 in for 5', slab, { volume: '9.78 yd3' }, 'other-size'],
  ['26.10 by 14.8', oddSlab, { volume: '7.15 yd3' }, 'feet-inches-as-decimal'],
  ['bags of 60 lb', bags, { bags: 35 }, 'other-size'],
  ['the loose volume by the compacted density', base, { deliveredMass: '44.65 ton' }, 'other-figure'],
  ['the same in meters', baseInMeters, { deliveredMass: '36.5 tonne' }, 'other-figure'],
  ['14 in as 1 ft 2 in, written 1.2', dig, { bankVolume: '48.5 yd3' }, 'feet-inches-as-decimal'],
  ['960 over 160', mesh, { pieces: 6 }, 'laps-left-out'],
  ['84 over 14.4', meshInMeters, { pieces: 6 }, 'laps-left-out'],
  ['bars at 12 in', rebar, { 'along.lines': 25 }, 'other-size'],
  ['bars at 150 mm', rebarInMeters, { 'along.lines': 47 }, 'other-size'],
  ['corners counted twice', loopWall, { volume: '19.75 yd3' }, 'corner-twice'],
  ['0.46 ft as 4.6 in', drain, { fall: '4.6 in' }, 'tenths-as-inches'],
  ['36 + 22 for the diagonal', square, { trueDiagonal: '58 ft' }, 'power-left-out'],
  ['0.45 h as 45 min', trucks, { 'loads[0].ends': '45 min' }, 'minutes-as-decimals'],
  ['1/4 in/ft as 2%', fall, { fall: '5.28 in' }, 'slope-unit'],
];

describe('estimates of practice', () => {
  it.each(RIGHT)('%s agrees', (_, check, claims) => {
    const { verdict, slips } = check(claims);
    expect(verdict).toBe('agrees');
    expect(slips).toEqual([]);
  });

  it('tells a division by 25 and an allowance of 8%, which give the same', () => {
    expect(codesOf(slab({ volume: '13.2 yd3' })).slice(0, 2)).toEqual(['wrong-factor', 'allowance-put-on']);
  });

  it('takes an order in whole steps as that amount, however shortly it is written', () => {
    for (const claimed of ['13 yd3', '14 yd3', '12 yd3'])
      expect(order({ order: claimed }).verdict, claimed).not.toBe('agrees');
    expect(order({ order: '13.25 yd3' }).verdict).toBe('agrees');
    expect(order([{ figure: 'order', claimed: '14 yd3', rounded: '2 yd3' }]).verdict).toBe('agrees');
    expect(order([{ figure: 'order', claimed: '13 yd3', rounded: '1 yd3' }]).verdict).not.toBe('agrees');
  });

  it.each(WRONG)('%s is named first', (_, check, claims, code) => {
    expect(codesOf(check(claims))[0]).toBe(code);
  });

  it('is told which part of a formula was left out', () => {
    const [slip] = loopWall({ volume: '19.75 yd3' }).slips;
    expect(JSON.stringify(slip?.slips[0]?.says)).toContain('− 2 × t');
  });

  it('tells what a slip would give in the unit of the claim', () => {
    const [slip] = slab({ volume: '15.99 m3' }).slips;
    expect(slip?.gives[0]?.would.format()).toBe('15.99 m3');
  });

  it('does not take a length for a count, unless it is one to the unit', () => {
    // 25 ft 2 in stands in the result.
    expect(codesOf(rebar({ 'along.lines': 25 }))).not.toContain('other-figure');
  });
});

describe('two slips', () => {
  it('are not another figure with a slip that it does not follow from', () => {
    // A limit in the place of the rate follows from nothing that goes wrong in the rate.
    const found = evaporation({ rate: '0.165 lb/ft2/h' }).slips.filter(({ slips }) => slips.length > 1);
    expect(found.flatMap(({ slips }) => slips.map(({ code }) => code))).not.toContain('other-figure');
  });
});

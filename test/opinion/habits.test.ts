/**
 * Slips that are made in every step alike, values put in each other's place, and estimates that are as near as people
 * round. Common practice; each claim was reckoned by hand, as told beside it.
 */
import { describe, expect, it } from 'vitest';
import type { Claims, EstimateCheck } from '../../src/index';
import {
  concreteOrder,
  deliveryTicket,
  estimateCheck,
  evaporationRate,
  freshConcreteTemperature,
  jointSpacing,
  levelNotes,
  rebarLayout,
  slabVolume,
  slopeOf,
  solveFor,
  stepLayout,
  stepVolume,
  tolerances,
} from '../../src/index';

const ell = (claims: Claims) =>
  estimateCheck(
    slabVolume,
    {
      outline: { shape: 'L', length: '36 ft', width: '22 ft', notchLength: '12 ft', notchWidth: '9 ft' },
      thickness: '4 in',
    },
    claims,
  );
const apron = (claims: Claims) =>
  estimateCheck(
    slabVolume,
    { outline: { shape: 'rectangle', length: '32 ft', width: '24 ft 6 in' }, thickness: '5 in' },
    claims,
  );
const inMeters = (claims: Claims) =>
  estimateCheck(
    slabVolume,
    { outline: { shape: 'rectangle', length: '11.4 m', width: '6.25 m' }, thickness: '125 mm' },
    claims,
  );
const mat = (claims: Claims) =>
  estimateCheck(
    rebarLayout,
    { length: '32 ft', width: '24 ft', bar: '#4', spacing: '18 in', stockLength: '20 ft', cover: '3 in' },
    claims,
  );
const batch = (claims: Claims) =>
  estimateCheck(
    freshConcreteTemperature,
    {
      cement: { mass: '564 lb', temperature: '140 degF' },
      aggregates: [{ mass: '3000 lb', moisture: '0%', temperature: '85 degF' }],
      water: { mass: '270 lb', temperature: '75 degF' },
    },
    claims,
  );
const steps = (claims: Claims) =>
  estimateCheck(
    stepVolume,
    { risers: 5, rise: '7 in', tread: '11 in', width: '5 ft', landingDepth: '4 ft' },
    claims,
  );
const layout = (claims: Claims) =>
  estimateCheck(stepLayout, { totalRise: '3 ft 5 in', tread: '11 in' }, claims);
const wind = (claims: Claims) =>
  estimateCheck(
    evaporationRate,
    { airTemperature: '85 degF', humidity: '35%', concrete: '82 degF', wind: '12 mph' },
    claims,
  );
const windInMeters = (claims: Claims) =>
  estimateCheck(
    evaporationRate,
    { airTemperature: '30 degC', humidity: '40%', concrete: '28 degC', wind: '20 km/h' },
    claims,
  );
const ticket = (claims: Claims) =>
  estimateCheck(
    deliveryTicket,
    { volume: '8 yd3', ordered: { waterCement: '0.45' }, cement: '4512 lb', water: '215 gal' },
    claims,
  );
const saw = (claims: Claims) =>
  estimateCheck(
    jointSpacing,
    { thickness: '5 in', aggregateSize: '3/4 in', slump: '4 in', width: '24 ft' },
    claims,
  );
const fall = (claims: Claims) => estimateCheck(slopeOf, { slope: '1:60', over: '7.2 m' }, claims);
const levels = (claims: Claims) =>
  estimateCheck(
    levelNotes,
    {
      kind: 'level',
      benchMark: { name: 'BM', elevation: '100.00 ft' },
      rows: [
        { point: 'BM', backsight: '5.42 ft' },
        { point: 'TP', backsight: '4.88 ft', foresight: '3.91 ft' },
        { point: 'B', foresight: '7.36 ft' },
      ],
    },
    claims,
  );

type Check = (claims: Claims) => EstimateCheck;

const FIRST: readonly (readonly [how: string, check: Check, claims: Claims, code: string])[] = [
  // 36 × 13 + 24 × 22 = 468 + 528; × 1/3 over 27.
  ['the corner of two rectangles with both', ell, { area: '996 ft2', volume: '12.3 yd3' }, 'corner-twice'],
  // 16 lines and 21 without the one at the end of each: 336 crossings.
  ['no bar at the end, either way', mat, { intersections: '336' }, 'spaces-for-bars'],
  // 5 treads for 4: 55 + 48 in, and 5 × 35/12 × (55/2 + 48)/12 over 27.
  ['as many treads as risers', steps, { totalRun: '103 in', volume: '3.40 yd3' }, 'spaces-for-bars'],
  ['the run of one tread more', layout, { 'best.run': '66 in' }, 'one-off-count'],
  // (564 × 140 + 3,000 × 85 + 270 × 75) over 3,834.
  ['no specific heats', batch, { temperature: '92.4 degF' }, 'factor-left-out'],
  // (85^2.5 − 0.35 × 82^2.5) × (1 + 0.4 × 12) in millionths.
  ['air for concrete, and the reverse', wind, { rate: '0.263 lb/ft2/h' }, 'other-input'],
  // 5 × (46^2.5 − 0.4 × 48^2.5) × (5.556 + 4) in millionths.
  ['the wind in meters a second', windInMeters, { rate: '0.38 kg/m2/h' }, 'wrong-unit'],
  ['gallons over pounds: 215 over 4,512', ticket, { waterCement: '0.048:1' }, 'factor-left-out'],
  ['a third of 5 in', saw, { depth: '1.67 in' }, 'other-number'],
  ['60 mm in a meter, over 7.2 m', fall, { fall: '432 mm' }, 'slope-unit'],
  // 71.25 × 0.15 is 10.69; by yards, which nobody here has, it is 10.65.
  ['150 mm for 125', inMeters, { volume: '10.7 m3' }, 'other-size'],
];

describe('slips of practice', () => {
  it.each(FIRST)('%s is named first', (_, check, claims, code) => {
    expect(check(claims).slips[0]?.slips[0]?.code).toBe(code);
  });

  it('is told of the other steps in one sentence', () => {
    const [first] = mat({ intersections: '336' }).slips;
    expect(first?.slips).toHaveLength(1);
    expect(JSON.stringify(first?.slips[0]?.says)).toContain('likewise');
  });

  it('gives no parts of a count', () => {
    for (const { gives, slips } of mat({ intersections: '375' }).slips)
      if (slips.some(({ code }) => code === 'one-off-count'))
        expect(Number.isInteger(gives[0]?.would.toNumber('each'))).toBe(true);
  });
});

const NEAR: readonly (readonly [how: string, check: Check, claims: Claims])[] = [
  ['12.10 yd3 up to the quarter', apron, { volume: '12.25 yd3' }],
  ['8.44 yd3 up to the half', ell, { volume: '8.5 yd3' }],
  // 1,117.5 ft × 0.67 lb/ft, where others have 0.668.
  ['another handbook', mat, { weight: '749 lb' }],
];

describe('an estimate as near as people round', () => {
  it.each(NEAR)('%s has no slip named', (_, check, claims) => {
    const { verdict, slips } = check(claims);
    expect(verdict).not.toBe('differs');
    expect(slips).toEqual([]);
  });

  it('has one where it is given just as it was written, and is common', () => {
    // 32 × 24.6 is 787.2.
    expect(apron({ area: '787.2 ft2' }).slips[0]?.slips[0]?.code).toBe('feet-inches-as-decimal');
  });

  it('is not near where an order is a step short', () => {
    const order = { volume: '11.36 yd3', allowance: '8%', increment: '0.25 yd3', truckCapacity: '10 yd3' };
    expect(estimateCheck(concreteOrder, order, { order: '12.25 yd3' }).slips[0]?.slips[0]?.code).toBe(
      'rounded-down',
    );
  });

  it('is not near by a share of an elevation', () => {
    // 105.42 − 7.36, the instrument having been moved to 106.39 since.
    const check = levels({ 'elevations.B': '98.06 ft' });
    expect(check.verdict).toBe('differs');
    expect(check.slips[0]?.slips[0]?.code).toBe('part-left-out');
  });
});

describe('what is bought in steps', () => {
  it('runs short as often as the step is passed', () => {
    const input = { volume: '11.36 yd3', allowance: '8%', increment: '0.25 yd3', truckCapacity: '10 yd3' };
    const chanceOf = (order: string): number =>
      tolerances(
        concreteOrder,
        input,
        { volume: '0.4 yd3' },
        { figures: ['order'], ordered: { order } },
      ).figures[0]?.shortChance?.toNumber('%') as number;
    // The order is 12.75 yd3 from 12.5 ÷ 1.08 = 11.574 yd3 on: (11.574 − 11.36) ÷ 0.2 = 1.07 deviations, 14.2%.
    expect(chanceOf('12.5 yd3')).toBeCloseTo(14.2, 1);
    // And 12.5 yd3 from 12.25 ÷ 1.08 = 11.343 yd3 on: -0.087 deviations, 53.5%.
    expect(chanceOf('12.25 yd3')).toBeCloseTo(53.5, 0);
    expect(chanceOf('14 yd3')).toBe(0);
  });

  it('is refused where a count leaps over what is wanted', () => {
    const input = {
      length: '32 ft',
      width: '24 ft',
      bar: '#4',
      spacing: '18 in',
      stockLength: '20 ft',
    } as const;
    const asked = { input, vary: 'spacing', figure: 'barsToBuy', wanted: 60 } as const;
    expect(() => solveFor(rebarLayout, asked)).toThrow('61 each to 59 each');
  });
});

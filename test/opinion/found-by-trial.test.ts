/**
 * Estimates as they were written down in a trial of the second opinion, each reckoned by hand with the slip in it, as told
 * beside it. Common practice.
 */
import { describe, expect, it } from 'vitest';
import {
  estimateCheck,
  jobBid,
  jobTakeoff,
  jointLayout,
  maturity,
  probedVolume,
  rebarLayout,
  slabVolume,
} from '../../src/index';
import { checkMarkdown, checkSheet } from '../../src/report';
import { first } from '../support/opinion/first';

const rectangle = (length: string, width: string) => ({ shape: 'rectangle', length, width }) as const;

const job = {
  version: 1,
  shared: { allowance: '5%' },
  order: { increment: '0.25 m3', truckCapacity: '7 m3' },
  elements: [
    { name: 'slab', outline: rectangle('9 m', '6 m'), thickness: '150 mm', slab: true },
    { name: 'pad', outline: rectangle('3 m', '2.4 m'), thickness: '100 mm', slab: true },
    {
      name: 'footing',
      footings: { footings: [{ kind: 'strip', length: '12 m', width: '400 mm', depth: '200 mm' }] },
    },
  ],
} as const;

const bid = {
  lines: [
    {
      kind: 'material',
      name: 'ready-mix',
      quantity: '8.5 yd3',
      price: { amount: '165 USD', per: '1 yd3' },
    },
    { kind: 'labor', name: 'crew', amount: '1512 USD' },
  ],
  overhead: { markup: '10%' },
  profit: { markup: '20%' },
  tax: { kind: 'on-purchases', rate: '7%', on: ['material'] },
} as const;

describe('a whole job', () => {
  it('is not ordered half a meter short by rounding', () => {
    // 9.78 m3 and 5% are 10.27, ordered as 10.50; 9.78 alone as 10.
    const check = estimateCheck(jobTakeoff, job, { 'mixes[0].order': '10 m3' });
    expect(check.verdict).toBe('differs');
    expect(first(check)).toBe('allowance-missed');
    expect(estimateCheck(jobTakeoff, job, { 'mixes[0].order': '10.5 m3' }).verdict).toBe('agrees');
  });
  it('with one element twice', () => {
    // 9.78 and another 3 × 2.4 × 0.1.
    const check = estimateCheck(jobTakeoff, job, { concrete: '10.50 m3' });
    expect(first(check)).toBe('part-twice');
    expect(check.slips[0]?.slips[0]?.input).toBe('elements[1]');
  });
});

describe('a bid', () => {
  it('with tax on labor too', () => {
    // 2914.50 with 7% is 3118.52; 10% and 20% on that.
    const check = estimateCheck(jobBid, bid, { price: '4116.45 USD' });
    expect(first(check)).toBe('other-choice');
    expect(check.slips[0]?.slips[0]?.input).toBe('tax.on');
  });
});

describe('a crew', () => {
  it('without one of its men', () => {
    // 0.918 day of 15 at 1.50 USD, and of one at 2.50 USD, who was forgotten: 13.77 days, 20.66 USD.
    const gang = {
      lines: [
        {
          kind: 'labor',
          name: 'gang',
          hours: '0.918 day',
          crew: [
            { count: 15, wage: { amount: '1.50 USD', per: '1 day' } },
            { count: 1, wage: { amount: '2.50 USD', per: '1 day' } },
          ],
        },
      ],
    } as const;
    const check = estimateCheck(jobBid, gang, { laborHours: '13.77 day', total: '20.66 USD' });
    expect(first(check)).toBe('part-left-out');
    expect(check.slips[0]?.slips[0]?.input).toBe('lines[0].crew[1]');
  });
});

describe('bars, joints and depths', () => {
  it('without laps', () => {
    // 13 runs of 27 ft 6 in and 20 of 17 ft 6 in.
    const mat = {
      length: '28 ft',
      width: '18 ft',
      bar: '#4',
      spacing: '18 in',
      cover: '3 in',
      stockLength: '20 ft',
      thickness: '5 in',
    } as const;
    expect(first(estimateCheck(rebarLayout, mat, { totalLength: '707.5 ft' }))).toBe('laps-left-out');
  });
  it('with a joint for every panel', () => {
    // 3 of 18 ft and 2 of 28 ft, where there are 2 and 1.
    const slab = { outline: rectangle('28 ft', '18 ft'), thickness: '5 in', spacing: '10 ft' } as const;
    expect(first(estimateCheck(jointLayout, slab, { contraction: '110 ft' }))).toBe('spaces-for-bars');
  });
  it('with the greatest depth for the mean', () => {
    const floor = {
      outline: rectangle('12 ft', '9 ft'),
      probes: [
        { x: '1 ft', y: '1 ft', depth: '4 in' },
        { x: '11 ft', y: '1 ft', depth: '5 in' },
        { x: '1 ft', y: '8 ft', depth: '6 in' },
        { x: '11 ft', y: '8 ft', depth: '5 in' },
      ],
    } as const;
    // 108 ft2 × 6 in.
    const check = estimateCheck(probedVolume, floor, { meanDepth: '6 in', volume: '2.00 yd3' });
    expect(first(check)).toBe('other-figure');
    expect(check.slips[0]?.explains).toEqual(['meanDepth', 'volume']);
  });
  it('with no datum throughout', () => {
    // 77 degF × 12 h + 81.5 degF × 12 h.
    const readings = {
      history: [
        { at: '0 h', temperature: '68 degF' },
        { at: '12 h', temperature: '86 degF' },
        { at: '24 h', temperature: '77 degF' },
      ],
      gap: '12 h',
    } as const;
    expect(first(estimateCheck(maturity, readings, { temperatureTime: '1902 degF-h' }))).toBe(
      'term-left-out',
    );
  });
});

describe('what is told', () => {
  it('names two slips once, whichever was found first', () => {
    const check = estimateCheck(jobBid, bid, { cost: '2914.50 USD', price: '4007.44 USD' });
    const pairs = check.slips.filter(({ slips }) => slips.length === 2);
    const told = pairs.map(({ slips }) =>
      slips
        .map((one) => JSON.stringify(one))
        .sort()
        .join(),
    );
    expect(new Set(told).size).toBe(told.length);
  });
  it('says where else in one breath, small volumes in one unit, and no steps by the thousand', () => {
    const sheet = checkSheet(estimateCheck(jobTakeoff, job, { concrete: '10.50 m3' }));
    expect(sheet).toContain('The same at width (elements 2, outline), thickness (elements 2).');
    const pad = { outline: rectangle('4 ft', '4 ft'), thickness: '4 in' } as const;
    const small = estimateCheck(slabVolume, pad, { volume: '0.6 yd3' });
    expect(checkSheet(small)).toContain('claimed 0.60 yd3, reckoned 0.20 yd3');
    expect(checkMarkdown('Pad', small)).toContain('0.20 yd3');
    const far = estimateCheck(jobBid, bid, { price: '39767.40 USD' });
    expect(checkSheet(far)).not.toMatch(/or [\d.]+ × 1\.00 USD/);
  });
});

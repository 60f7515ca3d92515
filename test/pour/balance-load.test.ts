/** The last load: its range holds the truth, and what it takes goes by what was used. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type BalanceLoadFigures, type BalanceLoadInput, balanceLoad } from '../../src/index';
import { worksheet } from '../../src/report/index';
import { randoms } from '../steel/outlines';
import { runs } from '../support/effort';
import { balanceTried } from '../support/pour/balance';

const n = (min: number, max: number) => fc.integer({ min, max });

const jobs = fc.record({
  tickets: fc.array(n(4, 40), { minLength: 1, maxLength: 8 }),
  done: n(50, 3000),
  rest: n(20, 1500),
  planned: n(14, 40),
  probes: fc.option(fc.array(n(14, 48), { minLength: 1, maxLength: 9 }), { nil: undefined }),
  ahead: fc.array(n(14, 48), { minLength: 1, maxLength: 9 }),
});

type Job = typeof jobs extends fc.Arbitrary<infer T> ? T : never;

const quarters = (q: number): string => `${q / 4}`;

function inputOf({ tickets, done, rest, planned, probes, ahead }: Job): BalanceLoadInput {
  const inch = (q: number): string => `${quarters(q)} in`;
  return {
    tickets: tickets.map((q) => `${quarters(q)} yd3`),
    done: { area: `${done} ft2`, thickness: inch(planned), ...(probes ? { probes: probes.map(inch) } : {}) },
    left: {
      area: `${rest} ft2`,
      thickness: inch(planned),
      ...(probes ? { probes: ahead.map(inch) } : {}),
    },
    increment: '0.25 yd3',
  };
}

const of = (job: Job, more: Partial<BalanceLoadInput> = {}): BalanceLoadFigures =>
  balanceLoad({ ...inputOf(job), ...more }).figures;

const yards = (q: { toNumber(unit: 'yd3'): number }): number => q.toNumber('yd3');
const mean = (all: readonly number[]): number => all.reduce((a, b) => a + b, 0) / all.length;

describe('the last load', () => {
  it('holds the truth nine times out of ten in pours of its own error model', () => {
    const count = runs(400);
    const { held, short } = balanceTried(count, randoms(20_261_127));
    expect(held / count).toBeGreaterThanOrEqual(0.9);
    // What is called for is the most, rounded up: it runs short still less often.
    expect(short / count).toBeLessThanOrEqual(0.05);
  });

  it('takes of the rest what was used so far, told by plain numbers', () => {
    fc.assert(
      fc.property(jobs, (job) => {
        const { needed, waste } = of(job);
        const used = job.tickets.reduce((a, b) => a + b, 0) / 4;
        const [inPlace, ahead] = job.probes
          ? [(job.done * mean(job.probes)) / 4, (job.rest * mean(job.ahead)) / 4]
          : [(job.done * job.planned) / 4, (job.rest * job.planned) / 4];
        expect(yards(needed)).toBeCloseTo((used * ahead) / inPlace, 9);
        expect(waste.toNumber(':1')).toBeCloseTo((used * 324) / inPlace - 1, 9);
      }),
      { numRuns: runs(150) },
    );
  });

  it('lies between low and high, and what is called for is a whole number of steps that reaches the most', () => {
    fc.assert(
      fc.property(jobs, n(1, 12), (job, step) => {
        const increment = `${quarters(step)} yd3`;
        const { low, expected, high, call, roundedDown, shortIfDown, leftOver } = of(job, { increment });
        expect(low.greaterThan(expected)).toBe(false);
        expect(expected.greaterThan(high)).toBe(false);
        expect(call.lessThan(high)).toBe(false);
        expect(yards(call) - yards(high)).toBeLessThan(step / 4);
        expect(roundedDown.greaterThan(expected)).toBe(false);
        expect(yards(shortIfDown)).toBeCloseTo(yards(high) - yards(roundedDown), 9);
        expect(yards(leftOver)).toBeCloseTo(yards(call) - yards(expected), 9);
      }),
      { numRuns: runs(100) },
    );
  });

  it('is what is in the truck less, and no narrower for it', () => {
    fc.assert(
      fc.property(jobs, n(1, 20), (job, quarter) => {
        const kept = `${quarters(quarter)} yd3`;
        // The same used: one ticket more, all of it still in the truck.
        const tickets = [...(inputOf(job).tickets as string[]), kept];
        const [bare, more] = [of(job), of(job, { tickets, inTruck: kept })];
        expect(more.needed.compareTo(bare.needed)).toBe(0);
        expect(yards(more.expected)).toBeCloseTo(Math.max(0, yards(bare.needed) - quarter / 4), 9);
      }),
      { numRuns: runs(60) },
    );
  });

  it('is better known with more probes that agree', () => {
    fc.assert(
      fc.property(jobs, n(1, 8), (job, count) => {
        const same = (k: number): Job => ({
          ...job,
          probes: Array.from({ length: k }, () => job.planned),
          ahead: Array.from({ length: k }, () => job.planned),
        });
        expect(of(same(count + 1)).within.lessThan(of(same(count)).within)).toBe(true);
      }),
      { numRuns: runs(40) },
    );
  });
});

describe('what is on hand', () => {
  const over: BalanceLoadInput = {
    tickets: ['10 yd3', '10 yd3', '10 yd3'],
    inTruck: '8 yd3',
    done: { area: '1600 ft2', thickness: '4 in' },
    left: { area: '400 ft2', thickness: '4 in' },
    increment: '0.25 yd3',
    placingRate: '12 yd3/h',
    leadTime: '45 min',
    now: '10:40',
  };

  it('has no time of a call where nothing is to be called for', () => {
    const { figures, cautions } = balanceLoad(over);
    expect(Object.keys(figures)).toContain('lasts');
    expect(Object.keys(figures)).not.toContain('callIn');
    expect(Object.keys(figures)).not.toContain('callBy');
    expect(cautions.map(({ code }) => code)).not.toContain('called-late');
  });

  it('has a time of a call where it may be too little', () => {
    const { figures } = balanceLoad({ ...over, inTruck: '6 yd3', leadTime: '15 min' });
    expect(figures.verdict).toBe('may be enough');
    expect(figures.callIn?.toNumber('min')).toBe(15);
  });
});

describe('probes that scatter', () => {
  it('are told in the unit of what is reckoned with, as what they are', () => {
    const said = worksheet(
      balanceLoad({
        tickets: ['8 m3'],
        done: { area: '70 m2', thickness: '100 mm', volume: '7 m3' },
        left: { area: '20 m2', thickness: '100 mm', probes: ['70 mm', '98 mm', '130 mm', '101 mm'] },
        increment: '0.25 m3',
      }),
    ).replace(/\s+/g, ' ');
    // Twice the square root of (29.75² + 1.75² + 30.25² + 1.25²) ÷ 3.
    expect(said).toContain('wice the standard deviation of the probes is 49.1 mm, more than the 12 mm');
  });
});

/** Putting the answer back gives what was wanted; what cannot be reached or turns is refused, and says why. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  bagCount,
  concreteOrder,
  evaporationRate,
  fiberDosage,
  freshConcreteTemperature,
  InputError,
  length,
  ratio,
  slabVolume,
  slopeOf,
  solveFor,
  volume,
} from '../../src/index';
import { sentenceOf } from '../../src/quantity/words';
import { runs } from '../support/effort';
import { disagreement } from '../support/working';

const SLAB = { outline: { shape: 'rectangle', length: '28 ft', width: '18 ft' }, thickness: '4 in' } as const;

function codeOf(run: () => unknown): string {
  try {
    run();
  } catch (error) {
    if (error instanceof InputError) return error.issues[0]?.code ?? '';
    throw error;
  }
  return '';
}

describe('what a foreman asks', () => {
  const ORDER = { allowance: '8%', increment: '0.25 yd3', truckCapacity: '9 yd3' } as const;

  it('is told from where to where a count stays what is wanted', () => {
    // 30 bags of 0.6 ft3 are 18 ft3: with a tenth on top they are enough for more than 29 × 0.6 ÷ 1.1 and up to 18 ÷ 1.1.
    const found = solveFor(bagCount, {
      input: { volume: '14 ft3', allowance: '10%', bag: '80 lb' },
      vary: 'volume',
      figure: 'bags',
      wanted: 30,
      step: '0.1 ft3',
    });
    expect(found.holds?.map((q) => q.format('ft3'))).toEqual(['15.9 ft3', '16.3 ft3']);
    expect(sentenceOf(found.says)).toContain('lies between');
  });

  it('is told an order over the volumes that it is enough for', () => {
    const input = { volume: '12 yd3', ...ORDER };
    const asked = { input, vary: 'volume', figure: 'order', wanted: '18 yd3', step: '0.01 yd3' } as const;
    // Above 17.75 ÷ 1.08, up to 18 ÷ 1.08.
    expect(solveFor(concreteOrder, asked).holds?.map((q) => q.format('yd3'))).toEqual([
      '16.44 yd3',
      '16.66 yd3',
    ]);
  });

  it('is told a temperature in whole degrees of its scale', () => {
    const input = {
      cement: { mass: '330 kg', temperature: '50 degC' },
      aggregates: [{ mass: '1850 kg', moisture: '2%', temperature: '28 degC' }],
      water: { mass: '140 kg', temperature: '15 degC' },
    } as const;
    const asked = { input, vary: 'water.temperature', figure: 'temperature', wanted: '25 degC' } as const;
    const cold = solveFor(freshConcreteTemperature, asked);
    const [low, high] = [cold.value.toNumber('degC' as never) - 1, cold.value.toNumber('degC' as never) + 1];
    const whole = cold.inSteps.toNumber('degC' as never);
    expect(Number.isInteger(Number(whole.toFixed(9)))).toBe(true);
    expect(whole).toBeGreaterThan(low);
    expect(whole).toBeLessThan(high);
    // Steps of a scale are counted from its own zero, not from that of another.
    const { x, z, i } = cold.working.at(-1)?.values ?? {};
    expect([x?.format(), z?.format(), i?.format()]).toEqual(['2.5 degC', '0 degC', '1 degC']);
  });

  it('is told a dosage in steps of a dosage', () => {
    const input = { volume: '12.22 yd3', kind: 'fibrillated', dosage: '1.5 lb/yd3' } as const;
    const found = solveFor(fiberDosage, { input, vary: 'dosage', figure: 'fibers', wanted: '20 lb' });
    // 20 lb over 12.22 yd3 are 1.637.
    expect(found.inSteps.format('lb/yd3' as never)).toBe('1.6 lb/yd3');
  });

  it('is told on a tape, and not in thousandths of a foot alone', () => {
    const input = {
      outline: { shape: 'rectangle', length: '36 ft', width: '22 ft' },
      thickness: '5 in',
    } as const;
    const slab = solveFor(slabVolume, { input, vary: 'outline.length', figure: 'volume', wanted: '2 yd3' });
    // 54 ft3 over 22 ft by 5 in are 5.8909 ft.
    expect(sentenceOf(slab.says)).toContain('5 ft 10-11/16 in gives 2.00 yd3');
  });

  it('is told how far it goes where water is near freezing', () => {
    const input = {
      cement: { mass: '564 lb', temperature: '120 degF' },
      aggregates: [{ mass: '3000 lb', moisture: '2%', temperature: '85 degF' }],
      water: { mass: '240 lb', temperature: '60 degF' },
    } as const;
    const asked = { input, vary: 'water.temperature', figure: 'temperature', wanted: '70 degF' } as const;
    const said = (): string => {
      try {
        solveFor(freshConcreteTemperature, asked);
      } catch (error) {
        return (error as Error).message;
      }
      return '';
    };
    // Liquid water reaches down to 32 degF, far below the 60 degF that it has.
    expect(said()).toMatch(/varied from 3[234](?:\.\d+)? degF/);
  });
});

describe('solve for', () => {
  it('is exact where the figure grows evenly', () => {
    // 9 yd3 is 243 ft3; over 504 ft2 that is 27/56 ft.
    const thick = solveFor(slabVolume, { input: SLAB, vary: 'thickness', figure: 'volume', wanted: '9 yd3' });
    expect(thick.exact).toBe(true);
    expect(thick.value.times(ratio('56:1')).compareTo(length('27 ft'))).toBe(0);
    expect(thick.inSteps.format()).toBe('5.8125 in');
    expect(thick.result.figures.volume.format()).toBe('9.00 yd3');
    for (const step of thick.working) expect(disagreement(step)).toBeLessThan(0.01);
  });

  it('finds what stands nowhere yet, between two bounds', () => {
    const { outline } = SLAB;
    const asked = { input: { outline } as typeof SLAB, vary: 'thickness', figure: 'volume', wanted: '9 yd3' };
    expect(codeOf(() => solveFor(slabVolume, asked))).toBe('missing');
    const thick = solveFor(slabVolume, { ...asked, between: ['2 in', '12 in'] });
    expect(thick.inSteps.format()).toBe('5.8125 in');
  });

  it('encloses what grows unevenly: a circle by its diameter', () => {
    const input = { outline: { shape: 'circle', diameter: '9 ft' }, thickness: '6 in' } as const;
    const wide = solveFor(slabVolume, {
      input,
      vary: 'outline.diameter',
      figure: 'volume',
      wanted: '2 yd3',
    });
    // V = π d² ÷ 4 × 1/2 ft = 54 ft3.
    expect(wide.value.toNumber('ft')).toBeCloseTo(Math.sqrt((54 * 2 * 4) / Math.PI), 6);
    expect(wide.inSteps.format()).toBe('11 ft 8-11/16 in');
    expect(wide.between?.length).toBe(2);
  });

  it('finds a slope and a wind', () => {
    const fall = solveFor(slopeOf, {
      input: { slope: '2%', over: '12 ft' },
      vary: 'slope',
      figure: 'fall',
      wanted: '3 in',
    });
    expect(fall.value.format('in/ft')).toBe('0.25 in/ft');
    const wind = solveFor(evaporationRate, {
      input: { airTemperature: '80 degF', concreteTemperature: '85 degF', humidity: '40%', wind: '5 mph' },
      vary: 'wind',
      figure: 'rate',
      wanted: '0.2 lb/ft2/h',
      within: '0.001 lb/ft2/h',
    });
    expect(wind.gives.toNumber('lb/ft2/h')).toBeCloseTo(0.2, 2);
  });

  it('refuses what does not change, is not reached, leaps over or rises and falls', () => {
    const asked = { input: SLAB, vary: 'thickness', figure: 'volume', wanted: '9 yd3' } as const;
    expect(codeOf(() => solveFor(slabVolume, { ...asked, figure: 'area', wanted: '9 ft2' }))).toBe(
      'no-solution',
    );
    expect(codeOf(() => solveFor(slabVolume, { ...asked, between: ['2 in', '4 in'] }))).toBe('no-solution');
    expect(codeOf(() => solveFor(slabVolume, { ...asked, vary: 'thick' }))).toBe('unknown-name');
    expect(codeOf(() => solveFor(slabVolume, { ...asked, figure: 'volumes' }))).toBe('unknown-name');
    expect(codeOf(() => solveFor(slabVolume, { ...asked, wanted: '9' }))).toBe('missing-unit');
    expect(codeOf(() => solveFor(slabVolume, undefined as never))).not.toBe('');
    const order = {
      volume: '20.4 yd3',
      allowance: '8%',
      increment: '0.5 yd3',
      truckCapacity: '9 yd3',
    } as const;
    const leap = { input: order, vary: 'volume', figure: 'order', wanted: '20.25 yd3', within: '0.1 yd3' };
    expect(codeOf(() => solveFor(concreteOrder, leap))).toBe('no-solution');
  });

  it('gives what is wanted when the answer is put back', () => {
    const side = fc.integer({ min: 24, max: 1200 }).map((n) => `${n} in`);
    const job = fc.record({
      a: side,
      b: side,
      t: fc.integer({ min: 6, max: 40 }),
      w: fc.integer({ min: 20, max: 4000 }),
    });
    fc.assert(
      fc.property(
        job,
        fc.constantFrom('thickness', 'outline.length', 'outline.width'),
        ({ a, b, t, w }, vary) => {
          const input = {
            outline: { shape: 'rectangle', length: a, width: b },
            thickness: `${t / 4} in`,
          } as const;
          const wanted = volume(`${w / 100} yd3`);
          const found = solveFor(slabVolume, { input, vary, figure: 'volume', wanted });
          expect(found.exact).toBe(true);
          expect(found.result.figures.volume.compareTo(wanted)).toBe(0);
        },
      ),
      { numRuns: runs(300) },
    );
  });

  it('comes within a step where the figure grows unevenly', () => {
    const job = fc.record({ d: fc.integer({ min: 24, max: 400 }), w: fc.integer({ min: 50, max: 2000 }) });
    fc.assert(
      fc.property(job, ({ d, w }) => {
        const input = { outline: { shape: 'circle', diameter: `${d} in` }, thickness: '6 in' } as const;
        const wanted = `${w / 100} yd3`;
        const found = solveFor(slabVolume, {
          input,
          vary: 'outline.diameter',
          figure: 'volume',
          wanted,
          within: '0.001 yd3',
        });
        const off = found.result.figures.volume.minus(volume(wanted)).abs();
        expect(off.compareTo(volume('0.001 yd3'))).toBeLessThanOrEqual(0);
      }),
      { numRuns: runs(60) },
    );
  });
});

describe('what is little', () => {
  it('is told in steps that are little beside it', () => {
    // 40 bags of 12 L make 480 L, and 480 / 1.05 = 457 L; 39 make 446 L.
    const input = {
      volume: '0.36 m3',
      allowance: '5%',
      bag: '25 kg',
      yield: '12 L',
      water: '2.5 L',
    } as const;
    const { inSteps, inStepsGives } = solveFor(bagCount, {
      input,
      vary: 'volume',
      figure: 'bags',
      wanted: 40,
    });
    expect(inSteps.format()).toBe('0.45 m3');
    expect(inStepsGives.format()).toBe('40 each');
  });
});

/** The family of units of a job: of its input, or as the caller asks. */
import { describe, expect, it } from 'vitest';
import { type ReckonOptions, rebarLayout, slabVolume, steelMinimum } from '../../src/index';
import { foreign } from '../support/promises';

const METRIC = {
  outline: { shape: 'rectangle', length: '8.5 m', width: '5.4 m' },
  thickness: '125 mm',
} as const;

describe('the unit system', () => {
  it('is that of most quantities, and customary where none tells', () => {
    expect(slabVolume(METRIC).system).toBe('metric');
    expect(slabVolume({ ...METRIC, thickness: '5 in' }).system).toBe('metric');
    expect(steelMinimum({ kind: 'ratio', thickness: '5 in' }).system).toBe('customary');
  });

  it.each(['customary', 'metric'] as const)('is %s where that is asked for, in every unit', (system) => {
    const slab = slabVolume(METRIC, { system });
    expect(slab.system).toBe(system);
    expect(foreign(slab as never, system)).toEqual([]);
    expect(slab.figures.volume.equals(slabVolume(METRIC).figures.volume)).toBe(true);
  });

  it('governs defaults as the trade buys and builds', () => {
    const mat = { length: '28 ft', width: '18 ft', bar: '#4', spacing: '18 in' } as const;
    const stock = (options?: ReckonOptions): string | undefined => {
      const value = rebarLayout(mat, options).assumed.find(({ name }) => name === 'stockLength')?.value;
      return value && 'format' in value ? value.format() : undefined;
    };
    expect(stock()).toBe('20 ft');
    expect(stock({ system: 'metric' })).toBe('6 m');
  });

  it('governs the examples of errors, with the number that was typed', () => {
    const said = (thickness: unknown, options?: ReckonOptions): string | undefined => {
      const attempt = slabVolume.attempt({ ...METRIC, thickness } as never, options);
      return attempt.ok ? undefined : attempt.error.issues[0]?.sentence;
    };
    expect(said(125)).toBe('thickness needs a unit, for example "125 mm"');
    expect(said('5', { system: 'customary' })).toBe('thickness needs a unit, for example "5 in"');
    expect(said('5 m2')).toMatch(/such as "100 mm"/);
  });

  it('is refused where there is no such system', () => {
    for (const options of [{ system: 'imperial' }, 4, 'metric'])
      expect(slabVolume.attempt(METRIC, options as never)).toMatchObject({ ok: false });
  });
});

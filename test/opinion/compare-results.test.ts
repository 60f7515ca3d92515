/** What changed between two results, and through what: the parts and the rest are the whole. */
import { describe, expect, it } from 'vitest';
import { compareResults, InputError, slabVolume, slopeOf } from '../../src/index';

const BEFORE = {
  outline: { shape: 'rectangle', length: '28 ft', width: '18 ft' },
  thickness: '4 in',
} as const;
const AFTER = {
  outline: { shape: 'rectangle', length: '30 ft', width: '18 ft' },
  thickness: '5 in',
} as const;

describe('two results', () => {
  it('are told apart by figure, with what each value of the input does alone', () => {
    const inputs = { calculation: slabVolume, before: BEFORE, after: AFTER };
    const { figures, inputs: changed } = compareResults(slabVolume(BEFORE), slabVolume(AFTER), inputs);
    expect(changed.map(({ input }) => input)).toEqual(['outline.length', 'thickness']);
    const [volume] = figures;
    // 540 × 5/12 less 504 × 4/12 is 57 ft3: 12 by the length, 42 by the thickness, 3 by both.
    expect(volume?.difference?.toNumber('ft3' as never)).toBeCloseTo(57, 9);
    expect(volume?.through?.map(({ difference }) => difference?.toNumber('ft3' as never).toFixed(6))).toEqual(
      ['12.000000', '42.000000'],
    );
    expect(volume?.rest?.toNumber('ft3' as never)).toBeCloseTo(3, 9);
    expect(volume?.share?.format()).toBe('33.93%');
  });

  it('of another kind are changed as a whole', () => {
    const round = { ...BEFORE, outline: { shape: 'circle', diameter: '20 ft' } } as const;
    const inputs = { calculation: slabVolume, before: BEFORE, after: round };
    const change = compareResults(slabVolume(BEFORE), slabVolume(round), inputs);
    expect(change.inputs.map(({ input }) => input)).toEqual(['outline']);
    const [volume] = change.figures;
    expect(volume?.through?.map(({ input }) => input)).toEqual(['outline']);
    expect(volume?.rest?.sign()).toBe(0);
  });

  it('that are the same have nothing to tell, however they were written', () => {
    const again = { ...BEFORE, thickness: '4.0 in' } as const;
    const inputs = { calculation: slabVolume, before: BEFORE, after: again };
    const same = compareResults(slabVolume(BEFORE), slabVolume(again), inputs);
    expect(same.figures).toEqual([]);
    expect(same.inputs).toEqual([]);
  });

  it('tell figures, cautions and defaults that come and go, and are read back from JSON', () => {
    const thin = { ...BEFORE, thickness: '3 in', baseTolerance: '1/2 in' } as const;
    const stored = JSON.parse(JSON.stringify(slabVolume(BEFORE)));
    const told = compareResults(stored, slabVolume(thin));
    expect(told.cautionsCame).toContain('thin-slab');
    expect(told.cautionsWent).toEqual([]);
    const tolerance = told.figures.find(({ figure }) => figure === 'toleranceVolume');
    expect(tolerance?.before).toBeUndefined();
    expect(tolerance?.after?.format()).toBe('0.78 yd3');
  });

  it('must be of one calculation', () => {
    expect(() => compareResults(slabVolume(BEFORE), slopeOf({ slope: '2%' }))).toThrow(InputError);
    expect(() => compareResults(slabVolume(BEFORE), undefined as never)).toThrow(InputError);
    expect(() => compareResults({} as never, {} as never)).toThrow(InputError);
  });
});

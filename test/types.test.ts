/** What must not compile. The checker is the test: an error that is expected and absent fails the build. */
import { describe, expect, expectTypeOf, it } from 'vitest';
import {
  area,
  type Calculation,
  count,
  length,
  mass,
  meshLayout,
  type Quantity,
  type QuantityInput,
  ratio,
  rebarLayout,
  slabVolume,
  slope,
  temperature,
  volume,
} from '../src/index';
import { define } from '../src/reckoning/calculation';
import { fields, maybe, quantity } from '../src/reckoning/fields';

describe('types', () => {
  it('follow the dimensions', () => {
    expectTypeOf(length('1 ft').times(length('1 ft'))).toEqualTypeOf<Quantity<'area'>>();
    expectTypeOf(length('1 ft').times(area('1 ft2'))).toEqualTypeOf<Quantity<'volume'>>();
    expectTypeOf(volume('1 ft3').over(area('1 ft2'))).toEqualTypeOf<Quantity<'length'>>();
    expectTypeOf(length('1 ft').times(slope('1%'))).toEqualTypeOf<Quantity<'length'>>();
    expectTypeOf(length('1 ft').over(length('1 ft'))).toEqualTypeOf<Quantity<'ratio'>>();
    expectTypeOf(length('1 ft').times(ratio('1%'))).toEqualTypeOf<Quantity<'length'>>();
    expectTypeOf(ratio('1%').times(length('1 ft'))).toEqualTypeOf<Quantity<'length'>>();
    expectTypeOf(ratio('1%').times(ratio('1%'))).toEqualTypeOf<Quantity<'ratio'>>();
    expectTypeOf(count('1 each').times(ratio('1%'))).toEqualTypeOf<Quantity<'count'>>();
    expectTypeOf(volume('1 ft3').times(count('2 each'))).toEqualTypeOf<Quantity<'volume'>>();
    expect(true).toBe(true);
  });

  it('refuse to mix them', () => {
    const refused = [
      // @ts-expect-error a length and an area do not add
      () => length('1 ft').plus(area('1 ft2')),
      // @ts-expect-error a mass times a mass is nothing
      () => mass('1 lb').times(mass('1 lb')),
      // @ts-expect-error a length over a volume is nothing
      () => length('1 ft').over(volume('1 ft3')),
      // @ts-expect-error a temperature is a point on a scale
      () => temperature('1 degF').times(ratio('2:1')),
      // @ts-expect-error a volume and a length do not compare
      () => volume('1 ft3').lessThan(length('1 ft')),
      // @ts-expect-error a bare number is no quantity
      () => length(4),
    ];
    for (const make of refused) expect(make).toThrow();
    // @ts-expect-error an area is no length
    const wrong: Quantity<'length'> = area('1 ft2');
    expect(wrong.dimension).toBe('area');
  });

  it('describe inputs and figures', () => {
    const bad = [
      // @ts-expect-error a bare number is no thickness
      () => slabVolume({ outline: { shape: 'circle', diameter: '1 ft' }, thickness: 4 }),
      // @ts-expect-error a circle has no width
      () => slabVolume({ outline: { shape: 'circle', diameter: '1 ft', width: '1 ft' }, thickness: '4 in' }),
      // @ts-expect-error no such shape
      () => slabVolume({ outline: { shape: 'blob' }, thickness: '4 in' }),
    ];
    for (const make of bad) expect(make).toThrow();
    const { figures } = slabVolume({ outline: { shape: 'circle', diameter: '1 ft' }, thickness: '4 in' });
    expectTypeOf(figures.volume).toEqualTypeOf<Quantity<'volume'>>();
    expectTypeOf(figures.perimeter).toEqualTypeOf<Quantity<'length'> | undefined>();
  });

  it('give the figures of the form that was reckoned', () => {
    const outline = { shape: 'rectangle', length: '10 ft', width: '8 ft' } as const;
    const mats = [{ layer: 'bottom', bar: '#4', spacing: '12 in' }] as const;
    const sides = { length: '10 ft', width: '8 ft', bar: '#4', spacing: '12 in' } as const;
    expectTypeOf(rebarLayout(sides).figures.along.lines).toEqualTypeOf<Quantity<'count'>>();
    expectTypeOf(rebarLayout({ outline, mats }).figures.mats[0]?.along.lines).toEqualTypeOf<
      Quantity<'count'> | undefined
    >();
    const strip = { strip: ['10 ft'], width: '16 in', bar: '#4', lines: 2 } as const;
    expectTypeOf(rebarLayout(strip).figures.corners).toEqualTypeOf<Quantity<'count'>>();
    const bad = [
      // @ts-expect-error mats over an outline have no two ways of their own
      () => rebarLayout({ outline, mats }).figures.along.lines,
      // @ts-expect-error a strip has no mats
      () => rebarLayout(strip).figures.mats[0],
    ];
    for (const make of bad) expect(make).toThrow();

    const attempt = rebarLayout.attempt({ outline, mats });
    if (!attempt.ok) throw attempt.error;
    const any = attempt.result.figures;
    expectTypeOf(any.barsToBuy).toEqualTypeOf<Quantity<'count'>>();
    // @ts-expect-error an attempt may have been of another form
    expect(() => any.along.lines).toThrow();
    expect('along' in any ? any.along.lines : undefined).toBeUndefined();

    const mesh = meshLayout.attempt({ outline, form: 'sheets', pieceLength: '10 ft', pieceWidth: '5 ft' });
    if (!mesh.ok) throw mesh.error;
    expectTypeOf(mesh.result.figures.pieces).toEqualTypeOf<Quantity<'count'>>();
    // @ts-expect-error an attempt may have been over an outline
    expect(mesh.result.figures.lapAllowance).toBeUndefined();
  });

  it('hold the fields of a calculation to its input', () => {
    type Side = { readonly side: QuantityInput<'length'>; readonly depth?: QuantityInput<'length'> };
    type Named<I> = Calculation<I, Record<string, Quantity>>;
    const parts = { id: 'side', title: 'Side', version: 1, sources: [], reckon: () => ({}) };
    const [side, depth] = [quantity('length', 'side'), quantity('length', 'depth')];
    const good: Named<Side> = define({ ...parts, input: () => fields({ side, depth: maybe(depth) }) });
    expect(good.id).toBe('side');
    const drifted = [
      (): Named<Side> =>
        // @ts-expect-error the type has a member that no field reads
        define({ ...parts, input: () => fields({ side }) }),
      (): Named<Pick<Side, 'side'>> =>
        // @ts-expect-error a field reads what the type does not have
        define({ ...parts, input: () => fields({ side, depth: maybe(depth) }) }),
      (): Named<Side> =>
        // @ts-expect-error the type lets it be left out, the field does not
        define({ ...parts, input: () => fields({ side, depth }) }),
      (): Named<Side> =>
        // @ts-expect-error the field lets it be left out, the type does not
        define({ ...parts, input: () => fields({ side: maybe(side), depth: maybe(depth) }) }),
      (): Named<{ side: QuantityInput<'area'> }> =>
        // @ts-expect-error a length is no area
        define({ ...parts, input: () => fields({ side }) }),
    ];
    for (const make of drifted) expect(make().id).toBe('side');
  });
});

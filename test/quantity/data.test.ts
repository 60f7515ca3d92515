/** A quantity is plain data: what copies, compares, clones or stores objects does right by it. */
import assert from 'node:assert';
import { isDeepStrictEqual } from 'node:util';
import { deserialize, serialize } from 'node:v8';
import fc from 'fast-check';
import deepEqual from 'fast-deep-equal';
import { describe, expect, it, vi } from 'vitest';
import {
  count,
  type Dimension,
  evaporation,
  InputError,
  length,
  money,
  pressure,
  type Quantity,
  type QuantityData,
  ratio,
  revive,
  slabVolume,
  slope,
  temperature,
  unitsOf,
  volume,
} from '../../src/index';
import { isFaulty, readQuantity } from '../../src/quantity/read-quantity';
import { runs } from '../support/effort';
import { DIMENSIONS } from './dimensions';

function make(d: Dimension, input: unknown): Quantity {
  const q = readQuantity(input, d, 'it');
  if (isFaulty(q)) throw new Error(q.sentence);
  return q;
}

const written = fc
  .record({
    d: fc.constantFrom(...DIMENSIONS),
    digits: fc.integer({ min: 1, max: 999_999_999 }),
    places: fc.integer({ min: 0, max: 6 }),
    pick: fc.nat(20),
  })
  .map(({ d, digits, places, pick }) => {
    const ids = unitsOf(d).filter((id) => id !== 'ft-in');
    const whole = String(digits).padStart(places + 1, '0');
    const value = places === 0 ? whole : `${whole.slice(0, -places)}.${whole.slice(-places)}`;
    return { d, value, unit: ids[pick % ids.length] as string };
  });

describe('a quantity as data', () => {
  it('has value, unit and dimension as its own, and nothing else, frozen', () => {
    const q = volume('5.7375 m3');
    expect(Object.entries(q)).toEqual([
      ['value', '5.7375'],
      ['unit', 'm3'],
      ['dimension', 'volume'],
    ]);
    expect(Object.isFrozen(q)).toBe(true);
    expect(() => Object.assign(q, { value: '6' })).toThrow(TypeError);
    expect(JSON.stringify(q)).toBe('{"value":"5.7375","unit":"m3","dimension":"volume"}');
  });

  it('says in which unit it is shown where that is another', () => {
    expect({ ...length('12 ft 2 in') }).toEqual({
      value: '146',
      unit: 'in',
      dimension: 'length',
      shownIn: 'ft-in',
    });
    expect({ ...slope('1:48') }).toMatchObject({ value: '0.25', unit: 'in/ft', shownIn: '1:n' });
  });

  it.each([
    ['node assert', isDeepStrictEqual],
    ['a deep-equal of every day', deepEqual],
    [
      'the matcher of a test runner',
      (a: unknown, b: unknown) => {
        try {
          expect(a).toStrictEqual(b);
          return true;
        } catch {
          return false;
        }
      },
    ],
  ])('is told apart from another by %s', (_, equal) => {
    expect(equal(length('1 m'), length('2 m'))).toBe(false);
    expect(equal(length('1 m'), length('1 ft'))).toBe(false);
    expect(equal(ratio('1:1'), count('1 each'))).toBe(false);
    expect(equal(length('1 m'), length('1 m'))).toBe(true);
    // One that has been shown and read keeps what it worked out to itself.
    const used = length('1 m').plus(length('1 m'));
    expect([used.format(), used.value]).toEqual(['2 m', '2']);
    expect(equal(used, length('1 m').plus(length('1 m')))).toBe(true);
    expect(equal({ a: [used] }, { a: [length('3 m')] })).toBe(false);
  });

  it('is exact in a clone, which is read as an input and revived', () => {
    fc.assert(
      fc.property(written, ({ d, value, unit }) => {
        const q = make(d, { value, unit });
        for (const clone of [
          structuredClone(q),
          deserialize(serialize(q)),
          { ...q },
          JSON.parse(JSON.stringify(q)),
        ]) {
          assert.ok(make(d, clone).equals(q), `${value} ${unit}`);
          const back = revive(clone as QuantityData);
          assert.deepStrictEqual(back, q);
          assert.strictEqual(back.format(), q.format());
        }
      }),
      { numRuns: runs(500) },
    );
  });

  // Derived quantities: exact quotients, roots and shares that no unit holds.
  it('is exact after arithmetic', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 5000 }), fc.integer({ min: 1, max: 997 }), (inches, parts) => {
        const part = length(`${inches} in`).over(count(`${parts} each`));
        const block = part.times(length('7 ft 1/2 in')).times(length('3 mm'));
        for (const q of [part, part.in('ft'), part.in('m'), block, block.in('gal'), block.in('m3')]) {
          const back = revive(structuredClone(q));
          assert.ok(back.equals(q));
          assert.deepStrictEqual(back, q);
          assert.strictEqual(back.format(), q.format());
        }
      }),
      { numRuns: runs(500) },
    );
  });

  it('gives a finite number in a unit of the trade wherever there is one', () => {
    // 1/3 ft is 4 in; 28 ft × 18 ft × 5 in is 210 ft3 = 7 7/9 yd3.
    expect({ ...length('1 ft').over(count('3 each')) }).toMatchObject({
      value: '4',
      unit: 'in',
      shownIn: 'ft',
    });
    expect({ ...length('28 ft').times(length('18 ft')).times(length('5 in')) }).toMatchObject({
      value: '210',
      unit: 'ft3',
      shownIn: 'yd3',
    });
    expect({ ...temperature('10 degC').in('degF') }).toEqual({
      value: '50',
      unit: 'degF',
      dimension: 'temperature',
    });
    // 1 lbf/in2 × 144 in2/ft2: nothing but the pounds-force are left.
    expect({ ...pressure('2 psi').in('psf') }).toMatchObject({ value: '288', unit: 'psf' });
    expect({ ...pressure('1 MPa').in('psi') }).toMatchObject({ value: '1', unit: 'MPa', shownIn: 'psi' });
  });

  it('is refused where a clone has been emptied or says two things', () => {
    const refused = (input: unknown): string[] => {
      try {
        length(input as never);
        return [];
      } catch (error) {
        return (error as InputError).issues.map(({ code }) => code);
      }
    };
    expect(refused({})).toEqual(['not-a-quantity']);
    expect(refused({ ...structuredClone(length('1 m')), dimension: 'area' })).toEqual(['wrong-dimension']);
    expect(refused({ value: '1', unit: 'm', dimension: 'hope' })).toEqual(['not-a-quantity']);
    expect(refused({ value: '1', unit: 'm', dimension: 'length', shownIn: 'yd3' })).toEqual(['unknown-unit']);
    expect(refused({ value: '1', unit: 'm', shown: 'ft' })).toEqual(['unknown-key']);
    expect(() => revive({})).toThrow(InputError);
  });

  it('is no group of figures where one of its members was spoilt in a stored result', () => {
    const result = slabVolume({
      outline: { shape: 'rectangle', length: '28 ft', width: '18 ft' },
      thickness: '5 in',
    });
    const { volume: whole } = result.figures;
    const stored = (spoilt: unknown): unknown => ({
      ...result,
      figures: { ...result.figures, volume: spoilt },
    });
    for (const spoilt of [
      { ...whole, dimension: { ...whole } },
      { ...whole, value: { value: {}, unit: [] } },
      { value: whole.value, unit: {} },
      { dimension: 'volume' },
    ])
      expect(() => revive(structuredClone(stored(spoilt)))).toThrow(
        expect.objectContaining({ issues: [expect.objectContaining({ path: 'figures.volume' })] }),
      );
    expect(revive(structuredClone(stored({ ...whole })))).toEqual(result);
  });

  it('is accepted as data by a calculation, with the figures of the original', () => {
    const outline = { shape: 'rectangle', length: length('28 ft'), width: length('18 ft') } as const;
    const input = { outline, thickness: length('5 in') };
    const result = slabVolume(input);
    expect(slabVolume(structuredClone(input))).toEqual(result);
    expect(isDeepStrictEqual(revive(structuredClone(result)), result)).toBe(true);
  });
});

describe('copies of the library', () => {
  it('work with the quantities, errors and results of each other', async () => {
    vi.resetModules();
    const other: typeof import('../../src/index') = await import('../../src/index');
    expect(other.length).not.toBe(length);
    const [ours, theirs] = [length('1 ft'), other.length('6 in')];
    expect(ours.plus(theirs as never).format()).toBe('1 ft 6 in');
    expect(
      other
        .length(ours as never)
        .plus(theirs)
        .format(),
    ).toBe('1 ft 6 in');
    expect(ours.times(theirs as never).format()).toBe('0.5 ft2');
    expect(ours.equals(other.length('12 in') as never)).toBe(true);
    expect(ours.compareTo(theirs as never)).toBe(1);
    expect(
      money('2 USD')
        .plus(other.money('1 USD') as never)
        .format(),
    ).toBe('3.00 USD');
    expect(() => money('2 USD').plus(other.money('1 CAD') as never)).toThrow('cannot mix USD and CAD');
    expect(() => ours.plus(other.area('1 ft2') as never)).toThrow('cannot add a length and an area');
    const outline = { shape: 'rectangle', length: theirs, width: ours } as never;
    expect(slabVolume({ outline, thickness: theirs as never }).figures.volume.format('ft3')).toBe('0.25 ft3');
    const refusal = other.slabVolume.attempt({} as never);
    expect(!refusal.ok && refusal.error instanceof InputError).toBe(true);
  });
});

describe('parts', () => {
  const text = (q: Quantity, unit?: string, locale?: string): string =>
    q
      .parts(unit, locale)
      .map(({ value }) => value)
      .join('');

  it('come to what is shown, number and unit apart', () => {
    expect(volume('5800 L').parts('m3')).toEqual([
      { type: 'integer', value: '5' },
      { type: 'decimal', value: '.' },
      { type: 'fraction', value: '80' },
      { type: 'literal', value: ' ' },
      { type: 'unit', value: 'm³' },
    ]);
    expect(
      length('12 ft 6 1/2 in')
        .parts()
        .map(({ type }) => type),
    ).toEqual('integer literal unit literal integer literal ratio literal unit'.split(' '));
    expect(
      slope('1:48')
        .parts()
        .map(({ value }) => value),
    ).toEqual(['1', ':', '48']);
    expect(text(evaporation('0.2 lb/ft2/h'))).toBe('0.2 lb/ft²/h');
    expect(text(temperature('-40 degC'))).toBe('-40 °C');
    expect(text(slope('2%'))).toBe('2%');
  });

  // The marks are those of the locale data that come with the engine (CLDR).
  it.each([
    ['de-DE', '12.345,68 m³'],
    ['en-US', '12,345.68 m³'],
    ['en-IN', '12,345.68 m³'],
    ['fr-CH', '12 345,68 m³'],
    ['ar-EG', '١٢٬٣٤٥٫٦٨ m³'],
  ])('are written as in %s', (locale, wanted) => {
    expect(text(volume('12345.678 m3'), 'm3', locale).replace(/\s/g, ' ')).toBe(wanted);
  });

  it('refuse what is no language', () => {
    expect(() => length('1 m').parts('m', 'no language')).toThrow(InputError);
  });

  it('agree with Intl on every number that it can hold', () => {
    const german = new Intl.NumberFormat('de-DE', { minimumFractionDigits: 2, maximumFractionDigits: 2 });
    fc.assert(
      fc.property(fc.integer({ min: -99_999_999, max: 99_999_999 }), (cents) => {
        const sign = cents < 0 ? '-' : '';
        const [whole, rest] = [Math.floor(Math.abs(cents) / 100), Math.abs(cents) % 100];
        const q = volume(`${sign}${whole}.${String(rest).padStart(2, '0')} m3`);
        expect(text(q, 'm3', 'de-DE')).toBe(`${german.format(cents / 100)} m³`);
      }),
      { numRuns: runs(200) },
    );
  });
});

describe('units', () => {
  it('are listed by dimension', () => {
    for (const d of DIMENSIONS)
      for (const unit of unitsOf(d)) expect(make(d, { value: '1', unit }).dimension).toBe(d);
    expect(unitsOf('money' satisfies Dimension)).toEqual([]);
    expect(unitsOf('length')).toContain('ft-in');
  });
});

describe('temperatures', () => {
  it('are kept in the degrees they are shown in, where these have an end', () => {
    // 71.6 degF is 22 degC; 70 degF has no end in the other.
    expect(temperature('71.6 degF').in('degC')).toMatchObject({ value: '22', unit: 'degC' });
    expect(temperature('70 degF').in('degC')).toMatchObject({ value: '70', unit: 'degF', shownIn: 'degC' });
  });
});

/** Fields and calculations by themselves: what they read, what they refuse, and what their schemas say. */
import { describe, expect, it } from 'vitest';
import { barSize, fiberDosage, InputError, mixRequirements, runoff, slabVolume } from '../../src/index';
import { fault } from '../../src/quantity/faults';
import { define } from '../../src/reckoning/calculation';
import { strength } from '../../src/reckoning/concrete-strength';
import { type Field, fields, label, quantity, text } from '../../src/reckoning/fields';
import { SLAB_THICKNESS } from '../../src/reckoning/ordinary';

const PRESSURES = { of: 'the strength', source: SLAB_THICKNESS.source };

/** What a field makes of an input, and the codes of what it finds wrong. */
function readBy<T>(field: Field<T>, input: unknown): { value: T | undefined; codes: string[] } {
  const codes: string[] = [];
  const value = field.read(input, (remark) => {
    if ('code' in remark) codes.push(remark.code);
  });
  return { value, codes };
}

describe('what a calculation shows', () => {
  it('lists what it says of itself and hides what it does', () => {
    expect(Object.keys(slabVolume)).toEqual(['id', 'title', 'version', 'sources', 'limits']);
  });
});

describe('a refusal', () => {
  const said = (field: Field<unknown>, input: unknown): string[] => {
    const says: string[] = [];
    field.read(input, (remark) => {
      if ('sentence' in remark) says.push(remark.sentence);
    });
    return says;
  };

  it('shows how a class of concrete is written', () => {
    expect(said(strength('strength', PRESSURES), 'C25/35')[0]).toContain('"C25/30"');
  });

  it('says that text is wanted', () => {
    expect(
      said(
        text(
          'note',
          '"x"',
          (t) => t,
          () => fault('wrong-type', 'never'),
        ),
        7,
      ),
    ).toEqual(['note must be text']);
  });
});

describe('a strength', () => {
  // EN 206: C25/30 is 25 MPa on the cylinder; AS 1379: N32 is 32 MPa. Both from memory.
  it.each([
    ['C25/30', 25],
    [' C25/30 ', 25],
    ['c 25 / 30', 25],
    ['N32', 32],
    [' N32 ', 32],
    ['28 MPa', 28],
  ])('is read from "%s"', (written, wanted) => {
    const { value, codes } = readBy(strength('strength', PRESSURES), written);
    expect(codes).toEqual([]);
    expect(value?.toNumber('MPa')).toBe(wanted);
  });

  // C20 may be the cylinder of C20/25 or the cube of C16/20; 16 is a cylinder only, 15 a cube only, 25/35 neither.
  it.each([
    ['C20', 'ambiguous'],
    ['C16', 'unknown-designation'],
    ['C15', 'unknown-designation'],
    ['C25/35', 'unknown-designation'],
  ])('is not guessed from "%s"', (written, code) => {
    expect(readBy(strength('strength', PRESSURES), written).codes).toEqual([code]);
  });
});

describe('short text', () => {
  const named = label('name');
  const coded = text(
    'style',
    '"x"',
    (written) => (written === 'A' ? 1 : undefined),
    () => ({
      code: 'unknown-designation',
      says: 'no such style',
      sentence: 'no such style',
    }),
  );

  it.each([undefined, null])('is missing where there is %s', (input) => {
    expect(readBy(named, input).codes).toEqual(['missing']);
    expect(readBy(coded, input).codes).toEqual(['missing']);
  });

  it('is text', () => {
    expect(readBy(named, 3).codes).toEqual(['wrong-type']);
    expect(readBy(named, '  ').codes).toEqual(['wrong-type']);
    expect(readBy(coded, 3).codes).toEqual(['wrong-type']);
    expect(readBy(named, ' north wall ')).toEqual({ value: 'north wall', codes: [] });
    expect(readBy(coded, 'A')).toEqual({ value: 1, codes: [] });
    expect(readBy(coded, 'B').codes).toEqual(['unknown-designation']);
  });

  it('has an end, which its schema tells', () => {
    expect(readBy(named, 'x'.repeat(60)).codes).toEqual([]);
    expect(readBy(named, 'x'.repeat(61)).codes).toEqual(['too-long']);
    expect(named.json(new Map() as never)).toEqual({ type: 'string', minLength: 1, maxLength: 60 });
    expect(coded.json(new Map() as never)).toEqual({ type: 'string', maxLength: 100 });
  });
});

describe('a calculation', () => {
  const broken = new TypeError('a fault of the program');
  const made = (reckon: () => Record<string, never>) =>
    define({
      id: 'echo',
      title: 'Echo',
      version: 1,
      sources: [],
      input: () => fields({ thickness: quantity('length', 'thickness') }),
      reckon,
    });

  it('lets faults of the program through as they are', () => {
    const throwing = made(() => {
      throw broken;
    });
    expect(() => throwing({ thickness: '4 in' })).toThrow(broken);
    expect(() => throwing.attempt({ thickness: '4 in' })).toThrow(broken);
  });

  it('hands out what is wrong with the input', () => {
    const attempt = made(() => ({})).attempt({});
    expect(attempt.ok || attempt.error).toBeInstanceOf(InputError);
  });

  it('tells limits only where it has some', () => {
    expect(made(() => ({})).inputSchema).not.toHaveProperty('x-limits');
  });
});

describe('what is proposed where a choice or a designation is missing', () => {
  const told = (attempt: { readonly ok: boolean; readonly error?: InputError }): string =>
    attempt.error?.message ?? '';

  it('is the words that there are, and one of them within an object', () => {
    expect(told(mixRequirements.attempt({ use: 'wall', aggregateSize: '1 in' } as never))).toContain(
      '"negligible" or "moderate" or "severe"',
    );
    expect(told(runoff.attempt({ intensity: '2 in/h' } as never))).toContain('{ surface: "roof", area:');
  });

  it('is a bar as each trade names it', () => {
    expect(told(barSize.attempt({} as never))).toContain('"#4"');
    expect(told(barSize.attempt({} as never, { system: 'metric' }))).toContain('"12 mm"');
  });

  it('is a dosage that fibers have', () => {
    expect(told(fiberDosage.attempt({ kind: 'micro', volume: '6 yd3', dosage: '1 lb' } as never))).toContain(
      '"1.5 lb/yd3"',
    );
  });
});

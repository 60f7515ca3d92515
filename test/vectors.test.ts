/** Every check vector: well formed, passing, and able to fail. */
import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, it } from 'vitest';
import { calculations as catalog } from '../src/catalog/all';
import { objections, outcomeOf, readVectors, VECTORS_DIR, type Vector } from './support/vectors';

const files = readVectors();
const schema = JSON.parse(readFileSync(new URL('vector.schema.json', VECTORS_DIR), 'utf8')) as object;
const validate = new Ajv2020({ allErrors: true, strictRequired: false }).compile(schema);

/** A quantity's text moved by far more than any tolerance; a word or a yes turned around. */
function spoiled(equals: string | boolean): string | boolean {
  if (typeof equals === 'boolean') return !equals;
  if (!/\d/.test(equals)) return `${equals}!`;
  // 1:48 becomes 1:148, 12' 6" becomes 112' 6", 0.5 in becomes 10.5 in, and 1/4 in becomes 1 1/4 in.
  if (/^-?\d+\/\d/.test(equals)) return equals.replace(/^-?/, '$&1 ');
  return equals.replace(/^(-?1:|-?)/, '$11');
}

describe.each(files)('$at', ({ at, vector }) => {
  // One run serves the judgment and all the spoilt ones: a result does not change.
  it(`${vector.title}; well formed, and fails when any expectation is changed`, () => {
    expect(validate(vector), JSON.stringify(validate.errors, null, 1)).toBe(true);
    expect(vector.id).toBe(at);
    expect(at.split('/')[0]).toBe(vector.calculation);
    const outcome = outcomeOf(vector);
    expect(objections(outcome, vector.expect)).toEqual([]);
    const { figures = {}, cautions, error } = vector.expect;
    const spoilt: Vector['expect'][] = Object.entries(figures).map(([name, expected]) => ({
      figures: { [name]: { ...expected, equals: spoiled(expected.equals) } },
    }));
    if (cautions) spoilt.push({ cautions: [...cautions, 'no-such-caution'] });
    if (error) spoilt.push({ error: [...error, 'no-such-code'] }, { figures: {} });
    expect(spoilt.length).toBeGreaterThan(0);
    for (const changed of spoilt) expect(objections(outcome, changed)).not.toEqual([]);
  });
});

describe('the vectors together', () => {
  const ids = new Set(files.map(({ vector }) => vector.id));
  const count = (keep: (v: Vector) => boolean): number => files.filter(({ vector }) => keep(vector)).length;

  it('have ids of their own', () => {
    expect(ids.size).toBe(files.length);
  });

  it('cover every calculation, with inputs that are refused too', () => {
    for (const { id } of catalog) {
      expect(
        count((v) => v.calculation === id && v.expect.error === undefined),
        id,
      ).toBeGreaterThan(2);
      expect(
        count((v) => v.calculation === id && v.expect.error !== undefined),
        id,
      ).toBeGreaterThan(0);
    }
  });

  it('keep their known deviations in the list of them', () => {
    const listed = readFileSync(new URL('known-deviations.md', VECTORS_DIR), 'utf8');
    const deviating = files.filter(({ vector }) => vector.note?.includes('known-deviations.md'));
    for (const { at } of deviating) expect(listed, at).toContain(`\`${at}\``);
    for (const [, id] of listed.matchAll(/`([a-z-]+\/[a-z0-9-]+)`/g)) expect(ids, id).toContain(id);
  });
});

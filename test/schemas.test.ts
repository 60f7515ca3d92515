/** The schemas of every calculation: strict readers take them, and they take what the calculation takes. */
import { readFileSync } from 'node:fs';
import Ajv2020, { type ValidateFunction } from 'ajv/dist/2020';
import { describe, expect, it } from 'vitest';
import { digest } from '../scripts/describe/digest';
import { pages } from '../scripts/describe/pages';
import { calculations } from '../src/catalog/all';
import written from '../src/catalog/generated/digest.json';
import { catalog, formIn, type LoadedCalculation, loadCalculation } from '../src/catalog/index';
import { type JsonSchema, slabVolume } from '../src/index';
import { runs } from './support/effort';
import { readVectors } from './support/vectors';

/** The words of these schemas beside those of JSON Schema, for strict readers. */
const WORDS = [
  'x-dimension',
  'x-discriminator',
  'x-limits',
  'x-units',
  'x-format',
  'x-examples',
  'x-input-of',
  'x-from-job',
];

const compiled = (schema: JsonSchema): ValidateFunction => {
  const ajv = new Ajv2020({ strict: true });
  ajv.addVocabulary(WORDS);
  return ajv.compile(schema);
};

const vectors = readVectors().map(({ vector }) => vector);

/** The vectors of a calculation: all of them with full effort, else some. */
const of = (id: string) =>
  vectors
    .filter(({ calculation }) => calculation === id)
    .filter((_, i, { length }) => i % Math.ceil(length / runs(length)) === 0);

/** Codes of inputs that are wrong by their shape, whatever the values. */
const BY_SHAPE = ['missing', 'give-one-of', 'unknown-key', 'unknown-choice', 'wrong-type', 'too-few'];

/** Refused by their values or by those of others, although with a code of shape. */
const BY_VALUE = [
  'bag-count/bad-odd-bag',
  'drainage-check/surface-wall-of-one-point',
  'excavation/bad-nothing-dug',
  'excavation/bad-ragged-grid',
  'excavation/bad-stays-without-swell',
  // Parts are held by the calculation that reads them; the whole schema of a job knows them.
  'job-takeoff/bad-loads-of-a-day',
  // An element may be in bags, and the rest come by truck.
  'job-takeoff/bad-order-and-bags',
  // A list of which some have what the others lack.
  'job-bid/refused-elements-half-told',
  'maturity/bad-calibration-mixed',
  'probed-volume/bad-empty-grid',
  'rebar-layout/bad-strip-closed-three',
];

/** A required text that is empty: the schema of a form refuses it, that of the calculation has one for all texts. */
const EMPTY = ['slab-volume/bad-empty'];

/** An input as a form gives it: quantities as text. */
function asTyped(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(asTyped);
  if (typeof value !== 'object' || value === null) return value;
  const members = Object.entries(value);
  const { value: number, unit } = value as { value?: unknown; unit?: unknown };
  if (number !== undefined && unit !== undefined) return `${number} ${unit}`;
  return Object.fromEntries(members.map(([name, inner]) => [name, asTyped(inner)]));
}

/** Under these a schema says what must hold, and describes nothing. */
const RULES = ['if', 'then', 'else', 'not'];

function* nodesOf(value: unknown): Generator<JsonSchema> {
  if (typeof value !== 'object' || value === null) return;
  if (!Array.isArray(value)) yield value as JsonSchema;
  for (const [key, inner] of Object.entries(value)) if (!RULES.includes(key)) yield* nodesOf(inner);
}

const loaded = async (id: string): Promise<LoadedCalculation> => {
  const found = await loadCalculation(id);
  if (!found) throw new Error(id);
  return found;
};

describe('what is generated', () => {
  it('is of this source (if not, run `npm run generate`)', () => {
    expect(written).toEqual(digest());
  });

  it.each(pages())('is in $file (if not, run `npm run generate`)', ({ file, text }) => {
    expect(readFileSync(new URL(`../${file}`, import.meta.url), 'utf8')).toBe(text);
  });

  it('lists every calculation', () => {
    expect(catalog.map(({ id }) => id)).toEqual(calculations.map(({ id }) => id));
    expect(JSON.parse(JSON.stringify(catalog))).toEqual(catalog);
    expect(structuredClone(catalog[0])).toEqual({ ...catalog[0] });
    for (const { summary, trade } of catalog)
      expect(`${summary} ${trade}`).toMatch(/^[A-Z].*[.?] [A-Z][a-z ]+$/);
  });

  it('is loaded by its id alone', async () => {
    const slab = await loaded('slab-volume');
    expect(slab.calculation).toBe(slabVolume);
    expect(await loadCalculation('toString')).toBeUndefined();
  });
});

describe.each(calculations.map((each) => [each.id, each] as const))('%s', (id, { inputSchema, attempt }) => {
  it('has an input schema that takes what it takes, and nothing of a wrong shape', () => {
    const check = compiled(inputSchema);
    expect(inputSchema['type']).toBe('object');
    for (const vector of of(id)) {
      if (!vector.expect.error) expect(check(vector.input), `${vector.id} ${check.errors}`).toBe(true);
      const wrong = vector.expect.error?.some((code) => BY_SHAPE.includes(code));
      if (wrong && ![...BY_VALUE, ...EMPTY].includes(vector.id))
        expect(check(vector.input), vector.id).toBe(false);
    }
  });

  it('has a form that takes the same as text', async () => {
    const { formSchema, calculation } = await loaded(id);
    expect(calculation.id).toBe(id);
    const check = compiled(formSchema);
    for (const vector of of(id)) {
      const typed = asTyped(vector.input);
      if (!vector.expect.error)
        expect(check(typed), `${vector.id} ${JSON.stringify(check.errors)}`).toBe(true);
      const wrong = vector.expect.error?.some((code) => BY_SHAPE.includes(code));
      if (wrong && !BY_VALUE.includes(vector.id)) expect(check(vector.input), vector.id).toBe(false);
    }
  });

  it('has a form in words', async () => {
    const { formSchema } = await loaded(id);
    for (const { properties = {}, type, oneOf = [], anyOf = [] } of nodesOf(formSchema)) {
      const members = type === 'object' ? (properties as Record<string, JsonSchema>) : {};
      for (const [name, { title, description, const: word }] of Object.entries(members)) {
        expect(title, name).toMatch(/^[A-Z]/);
        if (word === undefined) expect(description, name).toMatch(/\.$/);
      }
      for (const branch of [...(oneOf as JsonSchema[]), ...(anyOf as JsonSchema[])]) {
        expect(branch['title'], JSON.stringify(branch).slice(0, 200)).toMatch(/^[A-Z]/);
      }
    }
  });

  it('has a form in one system, whose examples are of it', async () => {
    const { formSchema } = await loaded(id);
    const [customary, metric] = [formIn(formSchema, 'customary'), formIn(formSchema, 'metric')];
    expect(JSON.stringify(metric)).not.toMatch(/"examples":\["[^"]*\d (in|ft|yd|lb|psi|pcf)\b/);
    expect(JSON.stringify(customary)).not.toMatch(/"examples":\["[^"]*\d (mm|m|cm|kg|MPa)\b/);
  });

  it('is a tool in short', async () => {
    const { toolSchema } = await loaded(id);
    const check = compiled(toolSchema);
    expect(JSON.stringify(toolSchema).length).toBeLessThan(8000);
    expect([toolSchema['type'], toolSchema['$defs'], toolSchema['oneOf']]).toEqual([
      'object',
      undefined,
      undefined,
    ]);
    for (const vector of of(id)) {
      if (vector.expect.error) continue;
      expect(check(asTyped(vector.input)), `${vector.id} ${JSON.stringify(check.errors)}`).toBe(true);
    }
  });

  it('has a schema of its figures', async () => {
    const { outputSchema } = await loaded(id);
    const check = compiled(outputSchema);
    for (const vector of of(id)) {
      const outcome = vector.expect.error ? undefined : attempt(vector.input);
      if (!outcome?.ok) continue;
      const figures = JSON.parse(JSON.stringify(outcome.result.figures));
      expect(check(figures), `${vector.id} ${JSON.stringify(check.errors)}`).toBe(true);
    }
  });
});

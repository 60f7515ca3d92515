/** The published schema of the job document: it takes what is taken, and refuses what is wrong whatever else is said. */
import { readFileSync } from 'node:fs';
import Ajv2020, { type ValidateFunction } from 'ajv/dist/2020';
import { beforeAll, describe, expect, it } from 'vitest';
import { jobSchema } from '../../src/catalog/index';
import { DAY_PARTS } from '../../src/job/day-inputs';
import { type JobInput, jobTakeoff } from '../../src/job/index';
import { ELEMENT_PARTS, JOB_PARTS } from '../../src/job/part-inputs';
import { runs } from '../support/effort';
import { readVectors, type Vector } from '../support/vectors';

const vectors = readVectors().map(({ vector }) => vector);

let fits: ValidateFunction;

beforeAll(async () => {
  const ajv = new Ajv2020({ strict: true, allErrors: false });
  ajv.addVocabulary(['x-dimension', 'x-discriminator', 'x-limits', 'x-format', 'x-input-of']);
  fits = ajv.compile(await jobSchema());
}, 60_000);

const why = (): string => JSON.stringify(fits.errors?.slice(0, 4));

const demo = (file: string): unknown =>
  JSON.parse(readFileSync(new URL(`../../scripts/demo/${file}.json`, import.meta.url), 'utf8'));

/** Refused for their names, which no schema can hold to each other. */
const BY_VALUE = [
  'bad-same-name',
  'bad-stands-on-nothing',
  'bad-bare-thickness',
  'bad-day-of-nothing',
  'bad-poured-twice',
  'bad-two-tuesdays',
  // Both may stand there where an element is bagged.
  'bad-order-and-bags',
];

describe('the schema of a job document', () => {
  it('is one for strict readers, and takes every job that is taken', () => {
    for (const { id, input, expect: wanted } of vectors.filter((v) => v.calculation === 'job-takeoff')) {
      const byShape = wanted.error && !BY_VALUE.some((name) => id.endsWith(name));
      expect(fits(input), `${id} ${why()}`).toBe(!byShape);
    }
    for (const file of ['rear-yard', 'rear-yard-metric'])
      expect(fits(demo(file)), `${file} ${why()}`).toBe(true);
  });
});

const PARTS = [
  ...Object.entries(ELEMENT_PARTS),
  ...Object.entries(JOB_PARTS),
  ...Object.entries(DAY_PARTS).map(([part, id]) => [`${part} of a day`, id] as const),
] as const;

/** Members that the job puts in itself. */
const withoutJobs = (part: string, input: object): object => {
  const own = {
    order: ['volume', 'allowance', 'pour', 'elements'],
    bags: ['volume', 'allowance'],
    trucks: ['volume', 'truckCapacity', 'loads'],
    cutting: ['pieces'],
  };
  const from: readonly string[] = own[part as keyof typeof own] ?? [];
  return Object.fromEntries(Object.entries(input).filter(([name]) => !from.includes(name)));
};

/** A job whose slab is known, for parts that go by it. */
const known = {
  version: 1,
  shared: { allowance: '5%' },
  order: { increment: '0.25 yd3', truckCapacity: '9 yd3' },
  elements: [
    {
      name: 'pad',
      outline: { shape: 'rectangle', length: '20 ft', width: '10 ft' },
      thickness: '4 in',
      slab: true,
      bars: { bar: '#4', spacing: '12 in', cover: '3 in' },
      count: 2,
    },
  ],
};

const isOfJob = (part: string): boolean => part in JOB_PARTS || part.endsWith(' of a day');

function jobOf(part: string, input: object): JobInput {
  const [name = '', ofDay] = part.split(' of a ');
  const own = { [name]: withoutJobs(name, input) };
  if (ofDay)
    return { ...known, days: [{ name: 'Tuesday', elements: ['pad'], ...own }] } as unknown as JobInput;
  const { order: _, ...unordered } = known;
  if (part === 'bags') return { ...unordered, ...own } as unknown as JobInput;
  if (isOfJob(part)) return { ...known, ...own } as unknown as JobInput;
  return { version: 1, elements: [{ name: 'pad', ...own }] } as unknown as JobInput;
}

const sound = (id: string): Vector[] => {
  const all = vectors.filter(({ calculation, expect: { error } }) => calculation === id && !error);
  return all.filter((_, i) => i % Math.ceil(all.length / runs(20)) === 0);
};

/** Codes of what is wrong by itself, whatever the rest says. */
const WRONG = ['unknown-key', 'unknown-choice', 'wrong-type', 'not-a-quantity'];

const codesOf = (job: JobInput): string[] => {
  const attempt = jobTakeoff.attempt(job);
  return attempt.ok ? [] : attempt.error.issues.map(({ code }) => code);
};

type Spoil = (value: unknown, at: readonly string[]) => unknown;

/** Every way to spoil one member of an input. */
function* spoilt(value: unknown, spoil: Spoil, at: readonly string[] = []): Generator<unknown> {
  const changed = spoil(value, at);
  if (changed !== undefined) yield changed;
  if (Array.isArray(value)) {
    for (const inner of spoilt(value[0], spoil, [...at, '0'])) yield [inner, ...value.slice(1)];
  } else if (typeof value === 'object' && value !== null) {
    for (const [name, own] of Object.entries(value)) {
      for (const inner of spoilt(own, spoil, [...at, name])) yield { ...value, [name]: inner };
    }
  }
}

const isRecord = (value: unknown): value is object =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** A quantity as `{ value, unit }` takes other members of its own. */
const isPair = (value: object): boolean => 'value' in value && 'unit' in value;

const WORD = 'a word that is none of its words';

const SPOILS: readonly (readonly [string, Spoil])[] = [
  [
    'a member that is not known',
    (value) => (isRecord(value) && !isPair(value) ? { ...value, oddly: '4 in' } : undefined),
  ],
  [
    'a list for what is none',
    (value, at) => (typeof value === 'string' && at.length > 0 ? [value] : undefined),
  ],
  [WORD, (_, at) => (['kind', 'shape', 'method', 'use'].includes(at.at(-1) ?? '') ? 'oddly' : undefined)],
];

describe.each(PARTS)('the part %s', (part, id) => {
  it('takes what its calculation is given, and less', () => {
    for (const { id: name, input } of sound(id)) {
      expect(fits(jobOf(part, input as object)), `${name} ${why()}`).toBe(true);
      for (const left of Object.keys(input as object)) {
        if (isOfJob(part) || left === 'kind') continue;
        const { [left]: _, ...rest } = input as Record<string, unknown>;
        expect(fits(jobOf(part, rest)), `${name} without ${left} ${why()}`).toBe(true);
      }
    }
  });

  it.each(SPOILS)('is refused with %s by the schema where it is by us', (wrongly, spoil) => {
    let refused = 0;
    for (const { id: name, input } of sound(id).slice(0, runs(3))) {
      for (const wrong of spoilt(input, spoil)) {
        const job = jobOf(part, wrong as object);
        const ours = codesOf(job);
        const told = `${name} ${JSON.stringify(wrong)} ${ours}`;
        if (ours.some((code) => WRONG.includes(code))) {
          refused += 1;
          expect(fits(job), told).toBe(false);
        } else if (!fits(job)) expect(ours, told).not.toEqual([]);
      }
    }
    // Not every part has a word to choose.
    if (wrongly !== WORD) expect(refused).toBeGreaterThan(0);
  });
});

describe('what no part reads', () => {
  const pad = {
    name: 'pad',
    outline: { shape: 'rectangle', length: '20 ft', width: '10 ft' },
    thickness: '4 in',
  };

  it.each([
    ['missing-unit elements[0].thickness', { thickness: '4' }],
    ['unknown-key elements[0].outline.oddly', { outline: { ...pad.outline, oddly: 1 } }],
    ['wrong-type elements[0].openings', { openings: 4 }],
  ])('is read all the same: %s', (told, wrong) => {
    const job = { version: 1, elements: [{ ...pad, ...wrong }] } as unknown as JobInput;
    const attempt = jobTakeoff.attempt(job);
    expect(attempt.ok ? '' : attempt.error.issues.map(({ code, path }) => `${code} ${path}`).join()).toBe(
      told,
    );
  });

  it('may lack something, as the rest of a job may', () => {
    const { width: _, ...outline } = pad.outline;
    expect(jobTakeoff.attempt({ version: 1, elements: [{ ...pad, outline }] } as never).ok).toBe(true);
  });
});

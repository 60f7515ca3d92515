/** What every calculation promises, whatever it reckons. */
import type { StandardSchemaV1 } from '@standard-schema/spec';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, it } from 'vitest';
import { calculations as catalog } from '../../src/catalog/all';
import { InputError, length, Quantity, revive, type SlabVolumeInput, slabVolume } from '../../src/index';
import { DAY_PARTS } from '../../src/job/day-inputs';
import type { Assumption } from '../../src/reckoning/result';
import { worksheet } from '../../src/report/text-sheet';
import { valueText, wordsText } from '../../src/report/view';
import { runs } from '../support/effort';
import { allTargets, counts, runChunk } from '../support/fuzz/run';
import { goodInputs } from '../support/inputs';
import { outlineLimits } from '../support/limits';
import {
  apart,
  foreign,
  inOtherSystem,
  measuredAs,
  openly,
  type Place,
  placesOf,
  type Result,
  systemOfInput,
  wordless,
} from '../support/promises';
import { isListed, signsOf } from '../support/signs';
import { outcomeOf, readVectors } from '../support/vectors';

const SLAB = { outline: { shape: 'rectangle', length: '28 ft', width: '18 ft' }, thickness: '5 in' } as const;

/** What is shown in its own units by design, whatever the job is written in. */
const IN_OTHER_UNITS: Readonly<Record<string, readonly string[]>> = {
  // The tons that were asked for, each by its name.
  'base-tonnage': ['.tons.short', '.tons.long', '.tons.metric'],
  // Named by its unit; sheets in metric leave it out.
  runoff: ['.flowInCubicFeet'],
  // What is ordered by its class is told as the class has it.
  'delivery-ticket': ['weak-mix'],
};

/** What is assumed in words that stand for no one value of an input: `<id> <name>`, with the value where it is that one. */
const IN_WORDS: readonly string[] = [
  'slab-volume outline',
  'slab-volume closingLimit',
  'probed-volume probes',
  'step-volume landingDepth',
  'step-layout landing',
  'job-takeoff elements[0].risers.landing',
  'job-takeoff elements[1].steps.landingDepth',
  'job-takeoff shared.piers.founded',
  'step-layout tread',
  'wall-volume sill',
  'pier-volume founded',
  // For bags of another weight in proportion, and as compacted.
  'bag-count water',
  'base-tonnage looseLift',
  'form-grades tolerance',
  // What is tried out beside the rate.
  'evaporation-rate changes',
  // Shares that crews find, held against a set and sheen that can be given.
  'day-plan surface',
  'day-plan hours by weather',
  'day-plan weather',
  // Sand and stone whose water stands in that of the ticket.
  'delivery-ticket aggregates',
  'joint-spacing aggregate class',
  'joint-spacing slump class',
  'saw-window finishBy',
  'saw-window finishedAt',
  'saw-window hours by weather',
  'saw-window weather',
  'saw-window workHours',
  // For loads that differ, each in its turn.
  'truck-plan spacing what',
  // One for each size of bar.
  'rebar-layout lap',
  'mesh-layout weight',
  'mesh-style weight',
  'mesh-style wires',
  'steel-placement bar',
  'steel-placement supports',
  // Beside the grade that says so.
  'lap-length diameters',
  // A slip of units leaves a difference of nearly nothing.
  'base-tonnage looseDensity 1.9 kg/m3',
  'drainage-check minimumValley 0.5%, and 2% by',
];

/** True for what is assumed in words, by a calculation or by the one that reckons a part of a day of a job. */
function inWords(said: string): boolean {
  const [, part = '', rest = ''] = /^job-takeoff days\[\d+\]\.(\w+)\.(.*)$/.exec(said) ?? [];
  const id: string | undefined = (DAY_PARTS as Readonly<Record<string, string>>)[part];
  return IN_WORDS.some((start) => (id ? `${id} ${rest}` : said).startsWith(start));
}

/** So many inputs of a calculation are tried in the other unit system. */
const MOST_TURNED = 10;

function everythingFrozen(value: unknown): boolean {
  if (typeof value !== 'object' || value === null || value instanceof Quantity) return true;
  return Object.isFrozen(value) && Object.values(value).every(everythingFrozen);
}

/** What a result says in words is said, and from a source. */
function expectWords({ assumed, cautions, working, figures }: Result): void {
  for (const a of assumed) {
    const texts = [a.name, valueText(a.value), wordsText(a.because), wordsText(a.override), a.source.title];
    expect(texts.filter((t) => t === '' || /[{}]/.test(t))).toEqual([]);
  }
  for (const c of cautions) {
    expect(c.code).toMatch(/^[a-z]+(-[a-z]+)*$/);
    expect(['note', 'warning', 'stop']).toContain(c.severity);
    expect(c.limit?.dimension).toBe(c.actual?.dimension);
    expect(c.source.title.length).toBeGreaterThan(3);
    // Every place of the sentence is filled: none is left open, and none is empty.
    expect(wordsText(c)).toMatch(/^[^{}]{10,}$/);
    expect(wordsText(c)).not.toMatch(/ [ ,.;:]|undefined/);
  }
  for (const step of working) expect(wordsText(step)).toMatch(/^[^{}]{3,}$/);
  expect(wordless(figures)).toEqual([]);
}

type Node = { readonly [key: string]: unknown };

const isNode = (value: unknown): value is Node => typeof value === 'object' && value !== null;

/** Fields of a schema whose title is empty, or that are measured and have none; by their place in it. */
function unnamedIn(schema: unknown, place = ''): string[] {
  if (!isNode(schema)) return [];
  const { title, description, anyOf } = schema;
  const measured =
    Array.isArray(anyOf) && typeof description === 'string' && description.includes('with its unit');
  const named = typeof title === 'string' ? /[a-z]/i.test(title) : !measured;
  const inside = Object.entries(schema).flatMap(([key, value]) => unnamedIn(value, `${place}.${key}`));
  return named ? inside : [place, ...inside];
}

describe.each(catalog.map((entry) => [entry.id, entry] as const))('%s', (id, entry) => {
  const inputs = goodInputs.get(id) ?? [];
  const resultOf = (input: unknown): Result => {
    const attempt = entry.attempt(input);
    if (!attempt.ok) throw attempt.error;
    return attempt.result;
  };

  it('describes itself', () => {
    expect(entry.title.length).toBeGreaterThan(3);
    expect(entry.version).toBeGreaterThan(0);
    expect(entry.sources.length).toBeGreaterThan(0);
    expect(Object.isFrozen(entry)).toBe(true);
  });

  it('names each of its fields for the person who fills in a form', () => {
    expect(unnamedIn(entry.inputSchema)).toEqual([]);
  });

  it('has a JSON Schema that takes what it takes', () => {
    const validate = new Ajv2020({ strict: false }).compile(entry.inputSchema);
    expect(validate({ noSuchInput: 1 })).toBe(false);
    for (const input of inputs) expect(validate(input), JSON.stringify(validate.errors)).toBe(true);
  });

  it('is a Standard Schema', () => {
    const { version, vendor, validate } = entry['~standard'];
    expect([version, vendor]).toEqual([1, 'flatwork-reckoner']);
    for (const input of inputs.slice(0, 3)) expect(validate(input)).toEqual({ value: input });
    expect(validate(4).issues?.[0]).toMatchObject({ path: [], message: expect.stringMatching(/\S+/) });
    expect(validate({ noSuchInput: 1 }).issues?.length).toBeGreaterThan(0);
  });

  it('gives frozen results that go through JSON and cloning unchanged', () => {
    for (const input of inputs) {
      const result = resultOf(input);
      expect(everythingFrozen(result)).toBe(true);
      const text = JSON.stringify(result);
      expect(JSON.stringify(revive(text))).toBe(text);
      expect(JSON.stringify(revive(structuredClone(JSON.parse(text))))).toBe(text);
      expect(worksheet(revive(text))).toBe(worksheet(result));
      expect(result.id).toBe(id);
    }
  });

  it('is pure: the same input gives the same result and stays as it was', () => {
    for (const input of inputs) {
      const before = JSON.stringify(input);
      const once = JSON.stringify(entry.attempt(input));
      expect(JSON.stringify(entry.attempt(input))).toBe(once);
      expect(JSON.stringify(input)).toBe(before);
    }
  });

  const places = placesOf(inputs);
  const shown = IN_OTHER_UNITS[id] ?? [];
  const tried = new Set<string>();
  /** An assumed value that is given changes nothing, and is assumed no longer. */
  const tryAssumed = (input: unknown, result: Result, assumption: Assumption): void => {
    const { name } = assumption;
    const value = valueText(assumption.value);
    const said = `${id} ${name} ${value}`;
    if (tried.has(said) || inWords(said)) return;
    tried.add(said);
    const other = openly(entry, input, assumption);
    if (!other) throw new Error(`${said} is not taken`);
    expect(apart(result, other), said).toEqual([]);
    expect(other.assumed.map((a) => a.name)).not.toContain(name);
  };

  // Together, since running all inputs costs the most.
  it('gives assumptions that could be given, cautions with a source, and figures in the units of the job', () => {
    const strange = new Set<string>();
    for (const input of inputs) {
      const result = resultOf(input);
      for (const assumption of result.assumed) tryAssumed(input, result, assumption);
      expectWords(result);
      const system = systemOfInput(input);
      if (system) for (const path of foreign(result, system)) strange.add(path);
    }
    expect([...strange].filter((path) => !shown.includes(path))).toEqual([]);
  });

  it('speaks the units of the same job in the other system', () => {
    const strange = new Set<string>();
    const apart = Math.ceil(inputs.length / MOST_TURNED);
    for (let i = 0; i < inputs.length; i += apart) {
      const other = inOtherSystem(inputs[i]);
      const system = systemOfInput(other);
      const attempt = system ? entry.attempt(other) : undefined;
      if (system && attempt?.ok) for (const path of foreign(attempt.result, system)) strange.add(path);
    }
    expect([...strange].filter((path) => !shown.includes(path))).toEqual([]);
  });

  it('refuses what cannot be read, and says what it is', () => {
    for (const [name, place] of places) {
      const attempt = entry.attempt(place.with('?'));
      if (attempt.ok)
        expect(name, 'only a name may be anything').toMatch(/\.(name|point|mix|option|element)$/);
      else
        for (const { sentence } of attempt.error.issues)
          expect(sentence, name).toMatch(/^([a-z]\S* \S|"\S+" is not a name given here)/);
    }
  });

  it('takes a value below zero or of nothing where there is such a thing, and nowhere else', () => {
    const known = signsOf(id, inputs);
    const taken: Record<-1 | 0, string[]> = { [-1]: [], 0: [] };
    const codeOf = (name: string, place: Place, sign: -1 | 0): string | undefined => {
      const value = measuredAs(place.value, name, sign);
      if (value === undefined) return undefined;
      const attempt = entry.attempt(place.with(value));
      if (!attempt.ok) return attempt.error.issues[0]?.code;
      taken[sign].push(name);
      return undefined;
    };
    for (const [name, place] of places) {
      const [less, none] = [codeOf(name, place, -1), codeOf(name, place, 0)];
      // What may not be nothing may not be less either, and the refusal says the same of both.
      if (none === 'not-positive') expect(less, name).toBe(none);
    }
    const nothing = taken[0].filter((name) => !known.below.includes(name));
    if (isListed(id)) {
      expect(taken[-1].sort()).toEqual([...known.below].sort());
      expect(nothing.sort()).toEqual([...known.nothing].sort());
      return;
    }
    const unshown = [
      ...taken[-1].filter((name) => !known.below.includes(name)).map((name) => `${name} below zero`),
      ...nothing.filter((name) => !known.nothing.includes(name)).map((name) => `nothing of ${name}`),
    ];
    expect(unshown, 'taken, and in no vector').toEqual([]);
  });
});

/** What is wrong between two values, or with the whole. */
const OF_THE_WHOLE = ['conflicting-grades', 'give-one-of', 'no-solution', 'too-deep'];

/** A missing part of several members is called "it", and named by its path alone. */
function expectNamed(path: string, sentence: string): void {
  const lacking = /^(\S+) is missing/.exec(sentence)?.[1];
  if (lacking !== 'it') expect(path).toMatch(new RegExp(`(^|\\.)${lacking}$`));
}

describe('a refusal', () => {
  const refused = readVectors().filter(({ vector }) => vector.expect.error !== undefined);

  it.each(refused)('of $at names the place', ({ vector }) => {
    const { inputSchema, limits } = catalog.find(
      ({ id }) => id === vector.calculation,
    ) as (typeof catalog)[0];
    const outcome = outcomeOf(vector);
    if (outcome.ok) throw new Error('taken');
    const names = JSON.stringify(inputSchema);
    for (const { code, path, sentence } of outcome.error.issues) {
      if (path === '') expect(OF_THE_WHOLE).toContain(code);
      else if (code === 'unknown-key')
        expect(sentence).toMatch(/is not known here; known: \S|follows from the job: leave it out/);
      else expect(names.includes(`"${path.split(/[.[]/)[0]}":`), path).toBe(true);
      if (code === 'missing') expectNamed(path, sentence);
      if (code !== 'too-many') continue;
      const stated = [...limits, ...outlineLimits()].map(({ of, most }) => `${of} may have at most ${most};`);
      expect(
        [...stated, 'the list '].some((limit) => sentence.startsWith(limit)),
        sentence,
      ).toBe(true);
    }
  });
});

/** Executions of all targets together: the share that `npm run fuzz` makes a million of. */
const EXECUTIONS = 4000;

describe('whatever comes in', () => {
  const seed = Number(process.env['FUZZ_SEED'] ?? 20_261_125);
  const targets = allTargets().map(({ id }) => id);
  const shares = counts(runs(EXECUTIONS), targets);

  it.each(targets)('%s throws nothing but InputError, and keeps its promises', (id) => {
    const count = shares.get(id) ?? 1;
    const { accepted, executions, written } = runChunk({ id, seed, count });
    // How long it takes is for a quiet machine to say.
    expect(written.filter(({ said }) => !said.startsWith('slow'))).toEqual([]);
    expect(executions).toBe(count);
    if (count >= 50) expect(accepted).toBeGreaterThan(0.25 * count);
  });
});

describe('the door', () => {
  const codes = (input: unknown): string[] => {
    const attempt = slabVolume.attempt(input as never);
    return attempt.ok ? [] : attempt.error.issues.map(({ code, path }) => `${code} at ${path}`);
  };

  it('throws from the call what it gives back from the attempt', () => {
    expect(() => slabVolume({ ...SLAB, thickness: '5' })).toThrow(InputError);
    expect(slabVolume.attempt({ ...SLAB, thickness: '5' }).ok).toBe(false);
    expect(slabVolume.attempt(SLAB).ok).toBe(true);
  });

  it('names the place', () => {
    const points = [
      { x: '0 ft', y: '0 ft' },
      { x: '1 ft', y: 0 },
      { x: '1 ft', y: '1 ft' },
    ];
    expect(codes({ outline: { shape: 'polygon', points }, thickness: '4 in' })).toEqual([
      'missing-unit at outline.points[1].y',
    ]);
    expect(codes({ outline: { shape: 'triangle', sides: ['1 ft', '1 ft', 1] }, thickness: '4 in' })).toEqual([
      'missing-unit at outline.sides[2]',
    ]);
    expect(codes(null)).toEqual(['missing at ']);
    expect(codes(3)).toEqual(['wrong-type at ']);
    expect(codes({ ...SLAB, outline: null })).toEqual(['wrong-type at outline']);
    expect(codes({ ...SLAB, outline: [] })).toEqual(['wrong-type at outline']);
    expect(codes({ ...SLAB, outline: { shape: 'triangle', sides: 'abc' } })).toEqual([
      'wrong-type at outline.sides',
    ]);
  });

  it('refuses more texts than can be read in a second before it reads any', () => {
    const points = Array.from({ length: 50_001 }, (_, i) => ({ x: `${i} ft`, y: 'nothing that reads' }));
    expect(codes({ outline: { shape: 'combined', parts: [{ shape: 'polygon', points }] } })).toEqual([
      'too-many at ',
    ]);
  });

  it('meets getters, proxies and cycles once', () => {
    const cycle: Record<string, unknown> = { ...SLAB };
    cycle['outline'] = cycle;
    expect(codes(cycle)).toEqual(['too-deep at ']);
    const trap = {
      get thickness(): string {
        throw new Error('trap');
      },
    };
    expect(codes(trap)).toEqual(['unreadable-input at ']);
    const hostile = new Proxy(SLAB, {
      ownKeys: () => {
        throw new Proxy(
          {},
          {
            getPrototypeOf: () => {
              throw new Error('deeper');
            },
          },
        );
      },
    });
    expect(codes(hostile)).toEqual(['unreadable-input at ']);
    const { proxy, revoke } = Proxy.revocable({}, {});
    revoke();
    expect(codes(proxy)).toEqual(['unreadable-input at ']);
    const foreign = {
      dimension: 'length',
      get value() {
        throw new TypeError('trap');
      },
    };
    expect(codes({ outline: foreign, thickness: '4 in' })).toEqual(['unreadable-input at ']);
    let reads = 0;
    const counting = {
      ...SLAB,
      get thickness() {
        reads += 1;
        return '5 in';
      },
    };
    expect(codes(counting)).toEqual([]);
    expect(reads).toBe(1);
  });

  it('does not see inherited or polluted properties', () => {
    expect(codes(Object.create(SLAB))).toEqual(['missing at outline', 'missing at thickness']);
    try {
      Object.defineProperty(Object.prototype, 'thickness', { value: '4 in', configurable: true });
      expect(codes({ outline: SLAB.outline })).toEqual(['missing at thickness']);
    } finally {
      delete (Object.prototype as Record<string, unknown>)['thickness'];
    }
    expect(
      codes(
        JSON.parse(
          '{"__proto__":{"thickness":"4 in"},"outline":{"shape":"circle","diameter":"1 ft"},"thickness":"4 in"}',
        ),
      ),
    ).toEqual(['unknown-key at __proto__']);
  });

  it('takes quantities, text and JSON alike', () => {
    const a = slabVolume(SLAB).figures.volume;
    const outline = {
      shape: 'rectangle',
      length: length('28 ft'),
      width: { value: '18', unit: 'ft' },
    } as const;
    const b = slabVolume({ outline, thickness: { value: 5, unit: 'in' } }).figures.volume;
    expect(a.equals(b)).toBe(true);
  });

  it('reads a huge outline, and refuses one that is larger still', () => {
    const ring = (n: number) =>
      Array.from({ length: n }, (_, i) => ({
        x: `${(i < n / 2 ? i : n - i) + 1} ft`,
        y: `${i < n / 2 ? 0 : 10} ft`,
      }));
    expect(
      slabVolume.attempt({ outline: { shape: 'polygon', points: ring(10_000) }, thickness: '4 in' }).ok,
    ).toBe(true);
    expect(
      codes({
        outline: { shape: 'polygon', points: Array(10_001).fill({ x: '0 ft', y: '0 ft' }) },
        thickness: '4 in',
      }),
    ).toEqual(['too-many at outline.points']);
  });

  it('lists every issue, in the order of the input schema', () => {
    expect(
      codes({ outline: { shape: 'rectangle', length: '0 ft', width: 'x' }, thickness: '4 ft2', extra: 1 }),
    ).toEqual([
      'not-positive at outline.length',
      'unreadable-quantity at outline.width',
      'wrong-dimension at thickness',
      'unknown-key at extra',
    ]);
  });

  it('takes nothing, as forms and databases write it, for what may be left out', () => {
    const bare = JSON.stringify(slabVolume(SLAB));
    for (const nothing of [null, '', undefined]) {
      const filled = { ...SLAB, edge: nothing, beams: nothing, baseTolerance: nothing } as never;
      expect(JSON.stringify(slabVolume(filled))).toBe(bare);
      expect(codes({ ...SLAB, thickness: nothing })).toEqual(['missing at thickness']);
    }
  });
});

describe('the Standard Schema of a calculation', () => {
  it('is that of the interface as it is published', () => {
    // The types of @standard-schema/spec 1, checked by the compiler.
    const schema: StandardSchemaV1<SlabVolumeInput> = slabVolume;
    const outcome = schema['~standard'].validate({
      outline: {
        shape: 'polygon',
        points: [
          { x: '0 ft', y: '0 ft' },
          { x: '4 ft', y: 1 },
          { x: '4 ft', y: '4 ft' },
        ],
      },
      thickness: '4 in',
    });
    expect(outcome).toMatchObject({ issues: [{ path: ['outline', 'points', 1, 'y'] }] });
  });
});

describe('results from JSON', () => {
  it.each([
    ['{'],
    ['null'],
    ['[]'],
    ['{}'],
    ['"text"'],
    ['{"id":"x","title":"t","version":1,"figures":[],"working":[],"assumed":[],"cautions":[],"sources":[]}'],
    [
      '{"id":"x","title":"t","version":"1","figures":{},"working":[],"assumed":[],"cautions":[],"sources":[]}',
    ],
    ['{"id":"x","title":"t","version":1,"figures":{},"working":[],"assumed":[],"cautions":[]}'],
    [
      '{"id":"x","title":"t","version":1,"figures":{"a":null},"working":[],"assumed":[],"cautions":[],"sources":[]}',
    ],
    [
      '{"id":"x","title":"t","version":1,"figures":{},"working":[null],"assumed":[],"cautions":[],"sources":[]}',
    ],
    [
      '{"id":"x","title":"t","version":1,"figures":{"a":{"value":"1","unit":"ft","dimension":"nonsense"}},"working":[],"assumed":[],"cautions":[],"sources":[]}',
    ],
  ])('refuses %s', (text) => {
    expect(() => revive(text)).toThrow('not a result of this library');
  });

  it('refuses a figure that is no quantity', () => {
    const json = JSON.parse(JSON.stringify(slabVolume(SLAB)));
    json.figures.volume.unit = 'cubits';
    expect(() => revive(json)).toThrow('unknown unit');
  });

  it('is printed as a worksheet when one is asked for', () => {
    const shown = worksheet(slabVolume(SLAB));
    expect(shown.split('\n').slice(0, 8)).toEqual([
      'Slab volume',
      '  volume     7.78 yd3',
      '  area       504 ft2',
      '  perimeter  92 ft',
      '',
      'How it was figured',
      '  plan area: A = L × W = 28 ft × 18 ft = 504 ft2',
      '  volume: V = A × t = 504 ft2 × 5 in = 7.78 yd3',
    ]);
    // From a clone, which has no methods, and in the other units.
    const clone = structuredClone(slabVolume(SLAB));
    expect(worksheet(clone)).toBe(shown);
    expect(worksheet(clone, { system: 'metric' }).split('\n').slice(1, 8)).toEqual([
      '  volume     5.95 m3',
      '  area       46.82 m2',
      '  perimeter  28.042 m',
      '',
      'How it was figured',
      '  plan area: A = L × W = 8.5344 m × 5.4864 m = 46.82 m2',
      '  volume: V = A × t = 46.82313216 m2 × 127 mm = 5.95 m3',
    ]);
    expect(
      worksheet(clone, { system: 'metric', locale: 'de-DE', language: { 'plan area': 'Grundfläche' } }),
    ).toContain('Grundfläche: A = L × W = 8,5344 m × 5,4864 m = 46,82 m²');
  });
});

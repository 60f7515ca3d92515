/** Nothing on the pages of a crew and a yard is left in English, and no sentence loses what is put into it. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { concreteOrder, estimateCheck, meshLayout, rebarLayout, slabVolume, slopeOf } from '../../src/index';
import { type ReckonedJob, reckonJob } from '../../src/job/job-takeoff';
import { spanish } from '../../src/language/spanish/index';
import { checkMarkdown, checkSheet, jobHtml, type Language, textSheet } from '../../src/report/index';
import { wordsText } from '../../src/report/view';
import { runs } from '../support/effort';
import { jobWith, PART_IDS, WHOLE_IDS, wordsOf } from '../support/spanish';
import { outcomeOf, readVectors } from '../support/vectors';

/** Names of people's, marks, sizes, designations, dimensions of quantities, places in an input, and formulas. */
const UNTOLD: readonly RegExp[] = [
  /^(?:\{\w+\}|[^a-z])*$/i,
  /^-?\d(?!.* (?:at|most|of|times|to|under)\b)/,
  /^[A-Z]$/,
  /^(?:ft|m|mm)$/,
  /^#\d+$/,
  /^C\d+\/\d+$|^N\d\d$|^F\d$|^(?:irc|ibc|aci-\d+|csa-a23\.1|en-206|bs-8500|din-1045-2|as-3600)$/,
  /^(?:r|2r) [+×] t$|^1(?:-s|\/\(1\+s\))$/,
  /^[a-z]+[A-Z]\w*$|[[\]]|^\w+\.\w+$/,
  /^(?:mass-per-(?:area|length)|temperature-(?:difference|time)|volume-rate|evaporation|dimension|shown in|density)$/,
];

/** Names that vectors give to places, elements and mixes. */
const GIVEN = new Set([
  'garage left',
  'garage right',
  'delivery slab',
  'long pad',
  'short pad',
  'bin pad',
  'away from the garage',
]);
for (const name of ['second pad', 'ramp', 'a', 'b', '§m', '§T', '§']) GIVEN.add(name);

/** Spanish words that are written as the English ones. */
const ALIKE = new Set([
  'total',
  'no',
  'color',
  'material',
  'plan',
  'patio',
  'polygon',
  'rectangular',
  'regular',
  'x',
  'y',
  // Classes of a standard keep their names.
  'S1',
  'S2',
  'S3',
  'S4',
  'S5',
]);
for (const word of [
  'macro',
  'micro',
  'buggy',
  'diagonal',
  'nominal',
  'sector',
  'base',
  'prismoidal',
  'trapezoidal',
])
  ALIKE.add(word);

/** Vectors without a fault, one for each set of cautions that a calculation raises. */
const vectors = [
  ...new Map(
    readVectors()
      .map(({ vector }) => vector)
      .filter(({ expect: { error } }) => !error)
      .map(
        (vector) => [`${vector.calculation} ${vector.expect.cautions?.toSorted().join()}`, vector] as const,
      ),
  ).values(),
];
const left = (word: string): boolean => !GIVEN.has(word) && !UNTOLD.some((pattern) => pattern.test(word));

/** Spanish, and each text that it was asked for and lacks. */
function noting(lacking: Set<string>): Language {
  return new Proxy(spanish, {
    getOwnPropertyDescriptor(target, key) {
      if (!Object.hasOwn(target, key)) lacking.add(String(key));
      return Reflect.getOwnPropertyDescriptor(target, key);
    },
  });
}

/** A text longer than this is a sentence; its clauses stand in the source, their beginnings at least in one piece. */
const SENTENCE = 70;
const BEGINS = 12;

const SRC = fileURLToPath(new URL('../../src', import.meta.url));

/** All of the library but what stands in this language. */
const sources = (): string =>
  readdirSync(SRC, { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.ts') && !file.startsWith('language'))
    .map((file) => readFileSync(join(SRC, file), 'utf8'))
    .join('\n');

/** Names that the library makes of others are told part by part. */
const MADE =
  /^(?:footing|opening|pier|row|run|section|side|spot|wall) \d+$|^(?:along .* )?from .* to |^(?:ground at|middle of) |^sections \d+ to \d+$| at -?\d/;

/** English words that Spanish does not have, and that no unit is called by. */
const ENGLISH =
  /\b(?:the|of|and|is|are|for|with|that|this|or|be|from|not|more|than|less|which|where|each|it|by|on|only|if|then|what|who|below|above|least|most|under|over|between|no one|nothing|may|must|set|take|keep|put|check|water|concrete|slab|bars?|edge|length|width|depth|height|gravel|joints?)\b/i;

/** What a page shows, without its style and its names of people's. */
const shown = (html: string): string =>
  html
    .replace(/<style>[\s\S]*<\/style>/, '')
    .replace(/<meta[^>]*>/g, '')
    .replace(/ (?:aria-label|class|role|scope|tabindex|lang)="[^"]*"/g, '')
    .replace(/<[^>]*>/g, ' | ');

/** Cells and sentences with an English word on the pages of a job. */
function englishIn(job: ReckonedJob, language: Language): string[] {
  const names = job.takeoff.figures.elements.map(({ name }) => name);
  const pages = (['crew', 'yard'] as const).map((page) =>
    jobHtml('§T', job, page, { language, lang: 'es-US' }),
  );
  const texts = pages.flatMap((page) => shown(page).split('|'));
  const own = (text: string): string => names.reduce((less, name) => less.replaceAll(name, '§'), text).trim();
  return texts.map(own).filter((text) => ENGLISH.test(text) && left(text));
}

const SLAB = { outline: { shape: 'rectangle', length: '36 ft', width: '22 ft 4 in' }, thickness: '5 in' };
const ROUND = { outline: { shape: 'circle', diameter: '14 ft' }, thickness: '4 in' };
const NOTCHED = {
  outline: { shape: 'L', length: '32 ft', width: '24 ft', notchLength: '12 ft', notchWidth: '9 ft' },
  thickness: '100 mm',
};
const ORDER = { volume: '12.22 yd3', allowance: '8%', increment: '0.25 yd3', truckCapacity: '9 yd3' };
const MAT = { length: '40 ft', width: '24 ft', bar: '#4', spacing: '18 in', cover: '3 in' };
const SHEETS = {
  length: '12 m',
  width: '7 m',
  form: 'sheets',
  pieceLength: '6 m',
  pieceWidth: '2.4 m',
  style: 'A142',
};

/** Claims with slips of many kinds, and right ones. */
const NOTEBOOK = [
  ...[
    '12.45 yd3',
    '330 yd3',
    '37 yd3',
    '13.2 yd3',
    '0.9 yd3',
    '25 yd3',
    '6.2 yd3',
    '16.3 m3',
    '9.9 yd3',
    '77 yd3',
  ].map((volume) => ({ calculation: slabVolume, input: SLAB, claims: { volume } })),
  ...['2.42 yd3', '7.6 yd3', '1.4 yd3'].map((volume) => ({
    calculation: slabVolume,
    input: ROUND,
    claims: { volume },
  })),
  ...['9.32 yd3', '10.6 yd3', '8.1 yd3', '6.13 m3'].map((volume) => ({
    calculation: slabVolume,
    input: NOTCHED,
    claims: { volume },
  })),
  ...['12.25 yd3', '14.25 yd3', '13 yd3', '12.22 yd3', '1 yd3', '13.5 yd3', '23 yd3'].map((order) => ({
    calculation: concreteOrder,
    input: ORDER,
    claims: { order },
  })),
  ...[27, 29, 41].map((lines) => ({
    calculation: rebarLayout,
    input: MAT,
    claims: { 'across.lines': lines },
  })),
  { calculation: meshLayout, input: SHEETS, claims: { pieces: 6 } },
  { calculation: slabVolume, input: SLAB, claims: { area: '759 ft2', volume: '341 yd3' } },
  {
    calculation: slopeOf,
    input: { slope: '2%', over: '6.2 m' },
    claims: { fall: '12.4 mm', percent: '50%' },
  },
];

const placesOf = (text: string): string[] => [...text.matchAll(/\{\w+\}/g)].map(([place]) => place).sort();

/** Every so many of a list, so that the tests stay quick at the desk. */
function some<T>(all: readonly T[]): readonly T[] {
  const step = Math.round(all.length / runs(all.length));
  return all.filter((_, i) => i % step === 0);
}

/** All texts in what was assumed, those within others among them. */
function textsIn(words: unknown): string[] {
  if (typeof words === 'string') return [words];
  if (typeof words !== 'object' || words === null || !('says' in words)) return [];
  const { says, params = {} } = words as { says: string; params?: object };
  return [says, ...Object.values(params).flatMap(textsIn)];
}

/** Sound cases of everything that has Spanish. */
const assumingVectors = () =>
  readVectors()
    .map(({ vector }) => vector)
    .filter(
      ({ calculation, expect: { error } }) => !error && [...PART_IDS, ...WHOLE_IDS].includes(calculation),
    );

describe('Spanish for crew and yard', () => {
  it('has every text that a page of a job asks for', () => {
    const lacking = new Set<string>();
    const language = noting(lacking);
    const english = new Set<string>();
    let pages = 0;
    for (const vector of some(vectors)) {
      const document = jobWith(vector);
      if (!document) continue;
      const job = reckonJob(document, vector.system ? { system: vector.system } : {});
      for (const text of englishIn(job, language)) english.add(text);
      pages += 1;
    }
    expect(pages).toBeGreaterThan(30);
    expect([...english]).toEqual([]);
    expect([...lacking].filter((word) => left(word) && !MADE.test(word))).toEqual([]);
  });

  it('has every caution of all calculations of a job', () => {
    const lacking = new Set<string>();
    const language = noting(lacking);
    for (const vector of some(vectors.filter(({ calculation }) => WHOLE_IDS.includes(calculation)))) {
      const outcome = outcomeOf(vector);
      if (!outcome.ok) continue;
      const results = [{ input: vector.input, result: outcome.result }];
      textSheet('', [{ name: '', results }], { language, detail: 'crew' });
    }
    expect([...lacking].filter((word) => left(word) && !MADE.test(word))).toEqual([]);
  });

  it('has every value that was assumed, why, and how to say otherwise', () => {
    const results = assumingVectors().flatMap((vector) => {
      const outcome = outcomeOf(vector);
      return outcome.ok ? [outcome.result] : [];
    });
    expect(results.length).toBeGreaterThan(500);
    const asked = new Set(
      results.flatMap(({ assumed }) =>
        assumed.flatMap(({ value, because, override }) => [value, because, override].flatMap(textsIn)),
      ),
    );
    const lacking = [...asked].filter((word) => !Object.hasOwn(spanish, word));
    expect(lacking.filter((word) => left(word) && !MADE.test(word))).toEqual([]);
  });

  it.each([...PART_IDS, ...WHOLE_IDS])('has every label and word of %s', async (id) => {
    const words = await wordsOf(id);
    expect(words.size).toBeGreaterThan(10);
    expect([...words].filter((word) => left(word) && !Object.hasOwn(spanish, word))).toEqual([]);
  });

  it('has every sentence of the check of an estimate, its words for what went wrong among them', () => {
    const lacking = new Set<string>();
    const language = noting(lacking);
    // Names of steps are many, and only those that are met most often are told.
    const names = new Set<string>();
    const codes = new Set<string>();
    for (const { calculation, input, claims } of NOTEBOOK) {
      const check = estimateCheck(calculation as never, input as never, claims as never);
      for (const { says } of check.result.working) names.add(says);
      for (const { slips } of check.slips) for (const { code } of slips) codes.add(code);
      checkSheet(check, { language });
      // What was taken as usual, and the working, are the calculation's own.
      if (check.result.assumed.length === 0) checkMarkdown('§', check, { language, claimedBy: '§' });
      wordsText(check.says, { language });
    }
    expect(codes.size).toBeGreaterThan(20);
    const sentences = [...lacking].filter((text) => /\{\w+\}| was | were |^it |^the /.test(text));
    const saysMore = (text: string): boolean => /[a-z]{2}/.test(text.replaceAll(/\{\w+\}/g, ''));
    expect(sentences.filter((text) => saysMore(text) && !names.has(text))).toEqual([]);
  });

  it('puts into a sentence all that the English one has put into it', () => {
    for (const [english, text] of Object.entries(spanish))
      expect(placesOf(text), english).toEqual(placesOf(english));
  });

  it('keeps no sentence that the English one has changed from', () => {
    const said = sources();
    const begins = (english: string): string[] =>
      english
        .split(/\{\w+\}|[.,:;] /)
        .filter((piece) => piece.length >= BEGINS)
        .map((piece) => piece.slice(0, BEGINS));
    const sentences = Object.keys(spanish).filter((english) => english.length > SENTENCE);
    expect(sentences.length).toBeGreaterThan(150);
    expect(sentences.filter((english) => !begins(english).every((piece) => said.includes(piece)))).toEqual(
      [],
    );
  });

  it('repeats no English text but words that are the same', () => {
    const same = Object.entries(spanish).filter(([english, text]) => english === text);
    expect(same.map(([english]) => english).filter((word) => !ALIKE.has(word))).toEqual([]);
  });
});

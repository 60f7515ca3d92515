/** Every code that a result or an error can carry is raised by at least one check vector. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { CODES_START, cautionRows, codeTables, files, issueRows, read } from './support/codes';
import { readVectors } from './support/vectors';

const vectors = readVectors().map(({ vector }) => vector);

/** A caution is an object with its code and then its severity. */
const CAUTION = /code: '([a-z-]+)',\s+severity[:,]/g;

const cautionCodes = new Set(
  files.flatMap((file) => [...read(file).matchAll(CAUTION)].map(([, code]) => code)),
);

const errorCodes = [...read('quantity/input-error.ts').matchAll(/\n {2}\| '([a-z-]+)'/g)].map(
  ([, code]) => code,
);

/**
 * Codes of the arithmetic of quantities and of reading a result back, which no input of a calculation raises,
 * and that of an input which is no plain data, which no JSON holds; other tests raise them.
 */
const NOT_OF_AN_INPUT = new Set([
  'dimension-mismatch',
  'currency-mismatch',
  'divide-by-zero',
  'bare-arithmetic',
  'not-a-result',
  'unreadable-input',
]);

describe('codes', () => {
  it('are those of the types and of the docs', () => {
    const typed = [...read('reckoning/caution-code.ts').matchAll(/\| '([a-z-]+)'/g)].map(([, code]) => code);
    expect(typed).toEqual([...cautionCodes].sort());
    expect(new Set(cautionRows().map(({ code }) => code))).toEqual(cautionCodes);
    expect(issueRows().map(([code]) => code)).toEqual(errorCodes);
    const page = readFileSync(new URL('../docs/codes.md', import.meta.url), 'utf8');
    // Tables are laid out by the formatter.
    const rows = (text: string): string[] =>
      text.split('\n').map((line) => line.replace(/ +\|/g, ' |').replace(/-+/g, '-'));
    expect(rows(page.slice(page.indexOf(CODES_START) + CODES_START.length))).toEqual(
      rows(`\n\n${codeTables()}\n`),
    );
  });

  it('are found', () => {
    expect(cautionCodes.size).toBeGreaterThan(60);
    expect(errorCodes.length).toBeGreaterThan(50);
  });

  it.each([...cautionCodes])('caution %s is in a vector', (code) => {
    expect(vectors.some(({ expect: { cautions } }) => cautions?.includes(code as string))).toBe(true);
  });

  it.each(errorCodes.filter((code) => !NOT_OF_AN_INPUT.has(code as string)))(
    'error %s is in a vector',
    (code) => {
      expect(vectors.some(({ expect: { error } }) => error?.includes(code as string))).toBe(true);
    },
  );
});

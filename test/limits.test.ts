/** What is refused for its size is refused by a limit that is stated. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { calculations as catalog } from '../src/catalog/all';
import { limitTables, outlineLimits, TABLES_START } from './support/limits';
import { readVectors } from './support/vectors';

describe('limits', () => {
  it('stand in the docs as they are', () => {
    const page = readFileSync(new URL('../docs/limits.md', import.meta.url), 'utf8');
    expect(page.split(TABLES_START)[1]?.trim()).toBe(limitTables());
  });

  it('are frozen, and stand in the schema', () => {
    for (const { limits, inputSchema } of catalog) {
      expect(Object.isFrozen(limits) && limits.every(Object.isFrozen)).toBe(true);
      expect(inputSchema['x-limits'] ?? []).toEqual(limits);
      expect(limits.every(({ of, most }) => of.length > 3 && Number.isInteger(most))).toBe(true);
    }
  });

  it('are what an input too large is refused by', () => {
    const large = readVectors().filter(({ vector }) => vector.expect.error?.includes('too-many'));
    expect(large.length).toBeGreaterThan(10);
    for (const { vector } of large) {
      const entry = catalog.find(({ id }) => id === vector.calculation);
      const attempt = entry?.attempt(vector.input);
      if (!entry || attempt?.ok !== false) throw new Error(vector.id);
      const said = attempt.error.issues.filter(({ code }) => code === 'too-many');
      const stated = [
        ...[...entry.limits, ...outlineLimits()].map(({ of, most }) => `${of} may have at most ${most};`),
        'the list ',
      ];
      for (const { sentence } of said) {
        expect(
          stated.some((limit) => sentence.startsWith(limit)),
          `${vector.id}: ${sentence}`,
        ).toBe(true);
      }
    }
  });
});

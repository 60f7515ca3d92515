/** Relations that hold for every calculation, on inputs varied from the vectors; `npm run relations` tries more. */
import { describe, expect, it } from 'vitest';
import { calculations as catalog } from '../../src/catalog/all';
import { runs } from '../support/effort';
import { tryRelations } from '../support/relations/run';

describe('every calculation', () => {
  it.each(catalog.map(({ id }) => id))('%s answers the same job the same way, however it is put', (id) => {
    const { tried, accepted, objections } = tryRelations(id, runs(60), 7);
    expect(objections.slice(0, 3)).toEqual([]);
    expect(accepted).toBeGreaterThan(tried / 2);
  });
});

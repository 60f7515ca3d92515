/** Which parts take a thing: held to what the calculations of parts take, over every case that is kept. */
import { describe, expect, it } from 'vitest';
import { calculations as catalog } from '../../src/catalog/all';
import { ITEM_PARTS } from '../../src/job/item-parts';
import { ELEMENT_PARTS } from '../../src/job/part-inputs';
import { readVectors, type Vector } from '../support/vectors';

/** Joints that are sealed, of which no case is kept. */
const SEALED: Pick<Vector, 'calculation' | 'input' | 'system'> = {
  calculation: 'joint-layout',
  input: {
    outline: { shape: 'rectangle', length: '20 ft', width: '10 ft' },
    thickness: '4 in',
    spacing: '10 ft',
    isolation: [{ against: 'building', from: { x: '0 ft', y: '0 ft' }, to: { x: '20 ft', y: '0 ft' } }],
    sealant: { width: '1/2 in', depth: '1/2 in' },
  },
};

/** `part item`, for everything that a part takes in any case. */
function taken(): Set<string> {
  const byId = new Map(catalog.map((one) => [one.id, one]));
  const found = new Set<string>();
  for (const vector of [...readVectors().map((one) => one.vector), SEALED]) {
    const parts = Object.entries(ELEMENT_PARTS).flatMap(([part, id]) =>
      id === vector.calculation ? [part] : [],
    );
    if (parts.length === 0) continue;
    const attempt = byId
      .get(vector.calculation)
      ?.attempt(vector.input as never, vector.system ? { system: vector.system } : {});
    if (!attempt?.ok) continue;
    for (const { item } of attempt.result.takes) for (const part of parts) found.add(`${part} ${item}`);
  }
  return found;
}

describe('what things come of', () => {
  const found = taken();

  it('names every part that takes a thing, and no other, but what the job orders its concrete as', () => {
    const ordered = ['ready-mix', 'bagged-mix'];
    const ofElements = Object.keys(ELEMENT_PARTS);
    const said = Object.entries(ITEM_PARTS).flatMap(([item, parts]) =>
      parts
        .filter((part) => ofElements.includes(part) && !ordered.includes(item))
        .map((part) => `${part} ${item}`),
    );
    expect([...found].sort()).toEqual(said.sort());
  });

  it('has ready-mixed concrete of all that has concrete', () => {
    expect(ITEM_PARTS['ready-mix']).toEqual([...ITEM_PARTS.concrete, 'order']);
  });
});

/** Good inputs of every calculation, taken from the vectors. */
import { calculations as catalog } from '../../src/catalog/all';
import { readVectors } from './vectors';

export const goodInputs = new Map<string, unknown[]>(
  catalog.map(({ id }) => [
    id,
    readVectors()
      .filter(({ vector }) => vector.calculation === id && vector.expect.error === undefined)
      .map(({ vector }) => vector.input),
  ]),
);

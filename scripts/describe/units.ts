/** The units that forms offer: of every dimension that one asks for, with the system that each is of. */
import type { Dimension } from '../../src/quantity/dimensions';
import { unitOf, unitsOf } from '../../src/quantity/units';

/** Dimensions named in what is described; money has currencies, which are not listed. */
const dimensionsIn = (described: unknown): Dimension[] =>
  [...new Set([...JSON.stringify(described).matchAll(/"x-dimension":"([a-z-]+)"/g)].map(([, name]) => name))]
    .filter((name) => name !== 'money')
    .sort() as Dimension[];

/** By dimension the id of each unit, and its system where it is of one. */
export const unitTable = (described: unknown): { readonly [dimension: string]: readonly string[][] } =>
  Object.fromEntries(
    dimensionsIn(described).map((dimension) => [
      dimension,
      unitsOf(dimension).map((id) => [id, unitOf(dimension, id)?.system].filter((x) => x !== undefined)),
    ]),
  );

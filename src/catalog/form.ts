/** The schema of a form for one system of units. */
import type { System } from '../quantity/units';
import type { JsonSchema } from '../reckoning/fields';
import units from './generated/units.json';

type PerSystem<T> = { readonly [S in System]?: T };

/** Units with their system, by dimension: as a table, since units themselves bring all of quantities with them. */
const UNITS: { readonly [dimension: string]: readonly (readonly string[])[] } = units;

const unitsIn = (dimension: string, system: System | undefined): readonly (string | undefined)[] =>
  (UNITS[dimension] ?? [])
    .filter(([, own]) => own === undefined || system === undefined || own === system)
    .map(([id]) => id);

function ofQuantity(schema: JsonSchema, dimension: string, system: System | undefined): JsonSchema {
  const known = dimension in UNITS ? { 'x-units': unitsIn(dimension, system) } : {};
  if (!system) return { ...schema, ...known };
  const { 'x-examples': examples, ...rest } = schema;
  const example = (examples as PerSystem<string> | undefined)?.[system];
  return {
    ...rest,
    ...(example === undefined ? {} : { examples: [example] }),
    ...known,
  };
}

function inside(value: unknown, system: System | undefined): unknown {
  if (Array.isArray(value)) return value.map((item) => inside(item, system));
  if (typeof value !== 'object' || value === null) return value;
  const dimension = (value as JsonSchema)['x-dimension'];
  if (typeof dimension === 'string') return ofQuantity(value as JsonSchema, dimension, system);
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, inside(inner, system)]));
}

/** A form with the units of every quantity: they are not written out in each form that is kept. */
export const withUnits = (schema: JsonSchema): JsonSchema => inside(schema, undefined) as JsonSchema;

/**
 * A form for one system of units: examples and units of that system only.
 *
 * @param schema - the `formSchema` of a calculation
 * @param system - `metric` or `customary`
 * @example
 * ```ts
 * import { formIn, loadCalculation } from 'flatwork-reckoner/catalog';
 *
 * const slab = await loadCalculation('slab-volume');
 * const form = slab && formIn(slab.formSchema, 'metric');
 * form?.['title']; // 'Slab volume'
 * ```
 */
export const formIn = (schema: JsonSchema, system: System): JsonSchema =>
  inside(schema, system) as JsonSchema;

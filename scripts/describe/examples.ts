/** Examples for the fields of forms: what the check vectors write there, in each system of units. */

import type { Dimension } from '../../src/quantity/dimensions';
import { unitShown } from '../../src/quantity/quantity';
import { isFaulty, readQuantity } from '../../src/quantity/read-quantity';
import type { JsonSchema } from '../../src/reckoning/fields';

/** Examples of the field at a path: for a quantity a customary and a metric one. */
export type Examples = (
  path: string,
  dimension: Dimension | undefined,
) => { readonly customary?: unknown; readonly metric?: unknown };

/** An input that is accepted, of the calculation with that schema. */
export interface Taken {
  readonly id: string;
  readonly schema: JsonSchema;
  readonly input: unknown;
}

type Counts = Map<unknown, number>;

const SYSTEMS = ['customary', 'metric'] as const;

const wordOf = (branch: JsonSchema): unknown =>
  Object.values((branch['properties'] ?? {}) as { [name: string]: JsonSchema }).find(
    (p) => p['const'] !== undefined,
  )?.['const'];

const fits = (branch: JsonSchema, value: unknown): boolean => {
  if (typeof value !== 'object' || value === null) return branch['properties'] === undefined;
  const properties = (branch['properties'] ?? {}) as { [name: string]: JsonSchema };
  const said = value as Record<string, unknown>;
  const right = Object.entries(properties).every(
    ([name, p]) => p['const'] === undefined || said[name] === p['const'] || said[name] === undefined,
  );
  return right && Object.keys(said).every((name) => name in properties);
};

/** Values by where they stand, while inputs are walked. */
interface Walk {
  readonly defs: JsonSchema;
  readonly seen: Map<string, Counts>;
}

function note(value: unknown, path: string, { seen }: Walk): void {
  const counts = seen.get(path) ?? new Map();
  counts.set(value, (counts.get(value) ?? 0) + 1);
  seen.set(path, counts);
}

/** A list's items are much alike. */
const ITEMS = 20;

function countInside(schema: JsonSchema, value: object, path: string, walk: Walk): void {
  if (Array.isArray(value)) {
    const items = schema['items'] as JsonSchema | undefined;
    if (items) for (const item of value.slice(0, ITEMS)) count(items, item, `${path}/[]`, walk);
    return;
  }
  const properties = (schema['properties'] ?? {}) as { [name: string]: JsonSchema };
  for (const [name, inner] of Object.entries(value)) {
    const own = properties[name];
    if (own) count(own, inner, `${path}/${name}`, walk);
  }
}

/** Walk an input beside its schema and count what stands in each place. */
function count(schema: JsonSchema, value: unknown, path: string, walk: Walk): void {
  if (value === undefined || value === null) return;
  const ref = (schema['$ref'] as string | undefined)?.slice('#/$defs/'.length);
  const target = ref === undefined ? undefined : (walk.defs[ref] as JsonSchema);
  const branches = (schema['oneOf'] ?? schema['anyOf']) as JsonSchema[] | undefined;
  if (target && !target['x-dimension']) count(target, value, `$defs/${ref}`, walk);
  else if (branches && !schema['properties']) {
    const i = branches.findIndex((branch) => fits(branch, value));
    const branch = branches[i];
    if (branch) count(branch, value, `${path}/${wordOf(branch) ?? i}`, walk);
  } else if (typeof value === 'object') countInside(schema, value, path, walk);
  else note(value, path, walk);
}

const systemOf = (text: unknown, dimension: Dimension): string | undefined => {
  const q = readQuantity(text, dimension, 'it');
  return isFaulty(q) ? undefined : (unitShown(q).system ?? 'both');
};

/** The most usual first; among equals the shortest, then by the alphabet. */
const byUse = (counts: Counts): unknown[] =>
  [...counts]
    .sort(
      ([a, n], [b, m]) => m - n || String(a).length - String(b).length || (String(a) < String(b) ? -1 : 1),
    )
    .map(([value]) => value);

/** The most usual of each system, or what is of neither. */
function ofEachSystem(counts: Counts, dimension: Dimension): unknown[] {
  const values = byUse(counts).filter(
    (v) => typeof v === 'string' && v.length <= 20 && !/^-?0(\D|$)/.test(v),
  );
  const first = (system: string): unknown => values.find((v) => systemOf(v, dimension) === system);
  const found = SYSTEMS.map(first);
  return found.some(Boolean) ? found : [first('both')];
}

/** How a value of one system is written in the other, where no vector writes one. */
const COUNTERPARTS: { readonly [D in Dimension]?: readonly [readonly string[], readonly string[]] } = {
  length: [
    ['in', 'ft'],
    ['mm', 'm'],
  ],
  area: [['ft2'], ['m2']],
  volume: [['yd3'], ['m3']],
  mass: [['lb'], ['kg']],
  density: [['pcf'], ['kg/m3']],
  'mass-per-length': [['lb/ft'], ['kg/m']],
  'mass-per-area': [['lb/ft2'], ['kg/m2']],
  pressure: [['psi'], ['MPa']],
  'volume-rate': [['gpm'], ['L/s']],
  speed: [['in/h'], ['mm/h']],
  temperature: [['degF'], ['degC']],
  slope: [['in/ft'], ['%']],
};

/** Numbers that people choose, of one digit before the point. */
const ROUND = [1, 1.2, 1.5, 1.8, 2, 2.5, 3, 3.5, 4, 4.5, 5, 6, 7, 7.5, 8, 9, 10];

/** The round number next to one. */
function rounded(n: number): string {
  if (n === 0) return '0';
  const power = 10 ** Math.floor(Math.log10(Math.abs(n)));
  const near = ROUND.map((r) => [Math.abs(r - Math.abs(n) / power), r] as const).sort(([a], [b]) => a - b);
  return String(Number((Math.sign(n) * (near[0]?.[1] ?? 1) * power).toPrecision(3)));
}

/** The counterpart of an example in the other system, in round numbers. */
function counterpart(text: unknown, dimension: Dimension, to: 0 | 1): string | undefined {
  const units = COUNTERPARTS[dimension]?.[to];
  const q = readQuantity(text, dimension, 'it');
  if (!units || isFaulty(q)) return undefined;
  const small = units[0] as string;
  const n = Math.abs(q.toNumber(small as never));
  const unit = n < (small === 'mm' ? 1000 : 24) ? small : (units[1] ?? small);
  return `${rounded(q.toNumber(unit as never))} ${unit}`.replace(' %', '%');
}

/** Collect examples from inputs. */
export function examplesFrom(inputs: readonly Taken[]): Examples {
  const seen = new Map<string, Counts>();
  for (const { id, schema, input } of inputs) {
    count(schema, input, id, { defs: (schema['$defs'] ?? {}) as JsonSchema, seen });
  }
  const byName = new Map<string, Counts>();
  for (const [path, counts] of seen) {
    const name = nameOf(path);
    const all = byName.get(name) ?? new Map();
    for (const [value, n] of counts) all.set(value, (all.get(value) ?? 0) + n);
    byName.set(name, all);
  }
  return (path, dimension) => {
    const own = seen.get(path) ?? new Map();
    if (!dimension) {
      const [first] = byUse(own).filter((v) => v !== '');
      return { customary: first, metric: first };
    }
    const found = ofEachSystem(own, dimension);
    const [customary, metric] = found.some(Boolean)
      ? found
      : ofEachSystem(byName.get(nameOf(path)) ?? new Map(), dimension);
    return {
      customary: customary ?? counterpart(metric, dimension, 0) ?? metric,
      metric: metric ?? counterpart(customary, dimension, 1) ?? customary,
    };
  };
}

/** The member that a path leads to. */
const nameOf = (path: string): string => path.split('/').findLast((part) => part !== '[]') ?? '';

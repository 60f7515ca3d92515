/** Inputs as trees of values: finding the measurements in them, changing one, changing all. */
import type { Dimension } from '../../../src/quantity/dimensions';
import type { Quantity } from '../../../src/quantity/quantity';
import { isFaulty, readQuantity } from '../../../src/quantity/read-quantity';
import type { Chance } from './random';

export type Path = readonly (string | number)[];

/** Names and designations may look like a measurement: `10M` is a bar. */
const NOT_MEASURED = new Set([
  'bar',
  'style',
  'name',
  'grade',
  'table',
  'point',

  'series',
  'shape',
  'currency',
  'price',
]);

const MEASURED: readonly Dimension[] = [
  'length',
  'area',
  'volume',
  'mass',
  'density',
  'slope',
  'ratio',
  'angle',
  'time',
  'temperature',
  'speed',
  'pressure',
  'mass-per-length',
  'mass-per-area',
  'volume-rate',
  'evaporation',
  'temperature-difference',
  'temperature-time',
  'force',
];

/** The measurement that a value stands for, where it is one. */
export function measured(value: unknown, key: string | number | undefined): Quantity | undefined {
  if (typeof value !== 'string' || NOT_MEASURED.has(String(key))) return undefined;
  for (const dimension of MEASURED) {
    const q = readQuantity(value, dimension, 'it');
    if (!isFaulty(q)) return q;
  }
  return undefined;
}

/** The input with every leaf put through `change`. */
export function mapLeaves(
  value: unknown,
  change: (leaf: unknown, key: string | number | undefined, path: Path) => unknown,
  path: Path = [],
): unknown {
  if (Array.isArray(value)) return value.map((item, i) => mapLeaves(item, change, [...path, i]));
  if (typeof value === 'object' && value !== null) {
    return Object.fromEntries(
      Object.entries(value).map(([key, item]) => [key, mapLeaves(item, change, [...path, key])]),
    );
  }
  // A leaf of a list goes by the name of the list.
  return change(
    value,
    [...path].reverse().find((key) => typeof key === 'string'),
    path,
  );
}

/** The input with every object put through `change`, the inner ones first. */
export function mapObjects(value: unknown, change: (object: Record<string, unknown>) => unknown): unknown {
  if (Array.isArray(value)) return value.map((item) => mapObjects(item, change));
  if (typeof value !== 'object' || value === null) return value;
  return change(
    Object.fromEntries(Object.entries(value).map(([key, item]) => [key, mapObjects(item, change)])),
  );
}

/** Every key in an input. */
export function keysOf(value: unknown): Set<string> {
  const keys = new Set<string>();
  mapObjects(value, (object) => {
    for (const key of Object.keys(object)) keys.add(key);
    return object;
  });
  return keys;
}

export const at = (value: unknown, path: Path): unknown =>
  path.reduce<unknown>((inner, key) => (inner as Record<string | number, unknown> | undefined)?.[key], value);

/** The input with one value replaced. */
export function put(value: unknown, path: Path, what: unknown): unknown {
  const [key, ...rest] = path;
  if (key === undefined) return what;
  const copy = (Array.isArray(value) ? [...value] : { ...(value as object) }) as Record<
    string | number,
    unknown
  >;
  copy[key] = put(copy[key], rest, what);
  return copy;
}

/** Units in which people write a changed measurement, to a step that they would read. */
const STEPS: Partial<Record<string, number>> = {
  'ft-in': 1 / 96,
  ft: 1 / 96,
  in: 1 / 8,
  yd: 1 / 36,
  m: 0.005,
  mm: 1,
  cm: 0.1,
};

/** A number with its unit as one would type it. */
export function typed(value: string, unit: string): string {
  if (unit === '1:n') return `1:${value}`;
  if (unit === ':1') return `${value}:1`;
  return `${value} ${unit === 'ft-in' ? 'ft' : unit}`;
}

/** A measurement times a factor, in whole steps of its unit. */
export function timesFactor(q: Quantity, factor: number): string {
  const { value, unit } = q;
  const step = STEPS[unit];
  const number = Number(value) * factor;
  const rounded = step ? Math.round(number / step) * step : number;
  return typed(String(Number(rounded.toPrecision(6))).replace(/e.*/, ''), unit);
}

/** The places of an input where a measurement stands. */
export function measuredPaths(input: unknown): { path: Path; q: Quantity }[] {
  const found: { path: Path; q: Quantity }[] = [];
  mapLeaves(input, (leaf, key, path) => {
    const q = measured(leaf, key);
    if (q) found.push({ path, q });
    return leaf;
  });
  return found;
}

/** A good input with one to three of its measurements changed somewhat, as another job would have them. */
export function varied(good: unknown, { below, next, pick }: Chance): unknown {
  const places = measuredPaths(good);
  if (places.length === 0) return good;
  let input = good;
  for (let n = below(4); n > 0; n--) {
    const { path, q } = pick(places);
    input = put(input, path, timesFactor(q, 0.75 + next() * 0.6));
  }
  return input;
}

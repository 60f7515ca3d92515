/** What the vectors hold, by calculation and by the name of the value: sizes, words and whole values. */
import type { Quantity } from '../../../src/quantity/quantity';
import { mapLeaves, measured } from '../relations/inputs';
import { readVectors } from '../vectors';
import type { Measured } from './units';

/** SI size of a quantity; of a temperature the degrees Fahrenheit. */
export function siOf(q: Quantity): number {
  const unit: Partial<Record<string, readonly [string, number]>> = {
    length: ['m', 1],
    area: ['m2', 1],
    volume: ['m3', 1],
    mass: ['kg', 1],
    density: ['kg/m3', 1],
    'mass-per-length': ['kg/m', 1],
    'mass-per-area': ['kg/m2', 1],
    slope: ['%', 0.01],
    angle: ['deg', Math.PI / 180],
    time: ['s', 1],
    temperature: ['degF', 1],
    'temperature-difference': ['degF', 1],
    'temperature-time': ['degF-h', 3600],
    speed: ['m/s', 1],
    force: ['N', 1],
    pressure: ['kPa', 1000],
    'volume-rate': ['m3/h', 1 / 3600],
    evaporation: ['kg/m2/h', 1 / 3600],
    ratio: [':1', 1],
    count: ['each', 1],
  };
  const [name, si] = unit[q.dimension] ?? ['', Number.NaN];
  return name === '' ? Number.NaN : q.toNumber(name) * si;
}

/** What one calculation's vectors hold. */
export interface Pool {
  readonly accepted: readonly unknown[];
  readonly refused: readonly unknown[];
  /** SI sizes by `key dimension` and by dimension alone. */
  readonly sizes: ReadonlyMap<string, readonly number[]>;
  /** Texts by key: names, words, designations. */
  readonly texts: ReadonlyMap<string, readonly string[]>;
  /** Whole values by key, as they stand. */
  readonly values: ReadonlyMap<string, readonly unknown[]>;
}

function push<K, T>(map: Map<K, T[]>, key: K, value: T): void {
  const list = map.get(key);
  if (list) list.push(value);
  else map.set(key, [value]);
}

function walk(value: unknown, key: string, put: (key: string, value: unknown) => void): void {
  put(key, value);
  if (Array.isArray(value)) for (const item of value) walk(item, key, put);
  else if (typeof value === 'object' && value !== null)
    for (const [name, inner] of Object.entries(value)) walk(inner, name, put);
}

function poolOf(accepted: readonly unknown[], refused: readonly unknown[]): Pool {
  const sizes = new Map<string, number[]>();
  const texts = new Map<string, string[]>();
  const values = new Map<string, unknown[]>();
  for (const input of accepted) {
    mapLeaves(input, (leaf, key) => {
      const q = measured(leaf, key);
      if (q) {
        push(sizes, `${key} ${q.dimension}`, siOf(q));
        push(sizes, q.dimension, siOf(q));
      } else if (typeof leaf === 'string') push(texts, String(key), leaf);
      return leaf;
    });
    walk(input, '', (key, value) => push(values, key, value));
  }
  return { accepted, refused, sizes, texts, values };
}

const pools = new Map<string, Pool>();

/** The pool of a calculation, made when first asked for. */
export function poolFor(id: string): Pool {
  const known = pools.get(id);
  if (known) return known;
  const mine = vectors().filter(({ vector }) => vector.calculation === id);
  const [good, bad] = [true, false].map((wanted) =>
    mine
      .filter(({ vector }) => (vector.expect.error === undefined) === wanted)
      .map(({ vector }) => vector.input),
  ) as [unknown[], unknown[]];
  const made = poolOf(good, bad);
  pools.set(id, made);
  return made;
}

let read: ReturnType<typeof readVectors> | undefined;

function vectors(): ReturnType<typeof readVectors> {
  read ??= readVectors();
  return read;
}

let everything: Pool | undefined;

/** The pool of all calculations together. */
function poolOfAll(): Pool {
  everything ??= poolOf(
    vectors()
      .filter(({ vector }) => vector.expect.error === undefined)
      .map(({ vector }) => vector.input),
    [],
  );
  return everything;
}

/** The sizes that a quantity of that name has in the vectors, or others of its dimension. */
export function sizesOf(pool: Pool, key: string, d: Measured): readonly number[] {
  const all = pool.sizes.get(`${key} ${d}`) ?? pool.sizes.get(d) ?? poolOfAll().sizes.get(`${key} ${d}`);
  return all ?? poolOfAll().sizes.get(d) ?? [1];
}

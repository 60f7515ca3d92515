/** Good inputs of every calculation, taken from the vectors, and ways to spoil them. */
import fc from 'fast-check';
import { catalog } from '../../src/catalog/index';
import { varied } from './relations/inputs';
import { chance } from './relations/random';
import { readVectors } from './vectors';

export const goodInputs = new Map<string, unknown[]>(
  catalog.map(({ id }) => [
    id,
    readVectors()
      .filter(({ vector }) => vector.calculation === id && vector.expect.error === undefined)
      .map(({ vector }) => vector.input),
  ]),
);

/** Values that have no business in an input, beside those that look as if they had. */
export const nasty = (): fc.Arbitrary<unknown> =>
  fc.oneof(
    fc.constantFrom<unknown>(
      undefined,
      null,
      true,
      0,
      -1,
      4,
      0.1,
      Number.NaN,
      Number.POSITIVE_INFINITY,
      Number.MAX_VALUE,
      10n,
      Symbol('s'),
      () => 4,
      '',
      ' ',
      '4',
      '0 ft',
      '-4 in',
      '4 in',
      '1e9999 in',
      '4 ft2',
      '1:0',
      '0%',
      '-5%',
      '999999999999999 mi',
      '0.000000000001 in',
      'x'.repeat(1_000_000),
      new Date(0),
      /x/,
      new Map([['a', 1]]),
      [],
      [[]],
      {},
      { value: '4', unit: 'in' },
      { value: 4, unit: 'in' },
      { value: {}, unit: [] },
      { shape: 'rectangle' },
      { shape: 'polygon', points: [] },
      JSON.parse('{"__proto__":{"polluted":true}}'),
      { constructor: { prototype: { polluted: true } } },
      Object.create({ thickness: '4 in' }),
    ),
    fc.anything({
      maxDepth: 3,
      withBigInt: true,
      withNullPrototype: true,
      withDate: true,
      withMap: true,
      withTypedArray: true,
    }),
    fc.string(),
  );

type Path = readonly (string | number)[];

function pathsOf(value: unknown, path: Path = []): Path[] {
  if (typeof value !== 'object' || value === null) return [path];
  return [path, ...Object.entries(value).flatMap(([key, inner]) => pathsOf(inner, [...path, key]))];
}

function put(value: unknown, path: Path, what: unknown): unknown {
  const [key, ...rest] = path;
  if (key === undefined) return what;
  const copy: Record<string, unknown> | unknown[] = Array.isArray(value)
    ? [...value]
    : { ...(value as object) };
  (copy as Record<string, unknown>)[key] = put((value as Record<string, unknown>)[key], rest, what);
  return copy;
}

/** A good input of the calculation with some of its measurements changed: another job of the sort. */
export const variedInput = (id: string): fc.Arbitrary<unknown> =>
  fc
    .tuple(fc.constantFrom(...(goodInputs.get(id) ?? [])), fc.nat())
    .map(([good, seed]) => varied(good, chance(seed)));

/** A good input of the calculation with one to three places spoiled. */
export function spoiledInput(id: string): fc.Arbitrary<unknown> {
  const goods = goodInputs.get(id) ?? [];
  return fc.constantFrom(...goods).chain((good) => {
    const place = fc.constantFrom(...pathsOf(good));
    return fc
      .array(fc.tuple(place, nasty()), { minLength: 1, maxLength: 3 })
      .map((changes) => changes.reduce<unknown>((input, [path, what]) => tryPut(input, path, what), good));
  });
}

function tryPut(input: unknown, path: Path, what: unknown): unknown {
  try {
    return put(input, path, what);
  } catch {
    return what;
  }
}

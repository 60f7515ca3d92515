/** Values that have no business in an input, beside those that look as if they had. */
import { length } from '../../../src/quantity/make';
import { type Path, put } from '../relations/inputs';
import type { Chance } from '../relations/random';
import { plainText } from './notation';

const throwing = (): never => {
  throw new Error('trap');
};

/** Each made anew, since some carry state. */
const HOSTILE: readonly ((dice: Chance) => unknown)[] = [
  () => undefined,
  () => null,
  () => true,
  (dice) => dice.pick([0, -0, -1, 4, 0.1, 1e300, 5e-324, Number.MAX_SAFE_INTEGER + 2]),
  (dice) => dice.pick([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, Number.MAX_VALUE]),
  () => 10n ** 40n,
  () => Symbol('s'),
  () => () => 4,
  (dice) => dice.pick(['', ' ', '\u0000', '4', '-4', '0 ft', '-4 in', '4 in', '4 ft2', '1:0', '0%', '-5%']),
  (dice) =>
    dice.pick(['1e9999 in', '1e3 ft', '999999999999999 mi', '0.000000000001 in', 'Infinity m', 'NaN']),
  (dice) => `${plainText(10 ** (dice.below(61) - 30), 3)} ${dice.pick(['in', 'm', 'ft2', 'lb', '%', 'yd3'])}`,
  (dice) => 'x'.repeat(dice.pick([61, 101, 201, 5000])),
  () => '9'.repeat(44).concat(' in'),
  () => `0.${'3'.repeat(158)} m`,
  () => new Date(0),
  () => /x/,
  () => new Map([['a', 1]]),
  () => new Set([1]),
  () => new Uint8Array(4),
  () => [],
  () => [[]],
  () => new Array(10),
  () => ({}),
  () => Object.create(null),
  () => ({ value: '4', unit: 'in' }),
  () => ({ value: 4, unit: 'in' }),
  () => ({ value: {}, unit: [] }),
  () => ({ value: '4', unit: 'in', extra: 1 }),
  () => ({ value: 1e300, unit: 'm' }),
  () => ({ shape: 'rectangle' }),
  () => ({ shape: 'polygon', points: [] }),
  () => JSON.parse('{"__proto__":{"polluted":true}}'),
  () => ({ constructor: { prototype: { polluted: true } } }),
  () => Object.create({ thickness: '4 in' }),
  () => length('4 in'),
  () => length('4 in').times(length('3 ft')),
  () => ({ value: '4', unit: 'in', dimension: 'area' }),
  () => ({ value: '4', unit: 'in', dimension: 'length', shownIn: 'yd3' }),
  () => structuredClone(length('12 ft 2 in')),
  () => Object.create(length('4 in')),
  () => Object.defineProperty({}, 'shape', { enumerable: true, get: throwing }),
  () => Object.defineProperty({}, 'value', { enumerable: true, get: throwing }),
  () => new Proxy({}, { ownKeys: throwing, get: throwing, has: throwing }),
  () => new Proxy([], { get: throwing }),
  () => {
    const { proxy, revoke } = Proxy.revocable({}, {});
    revoke();
    return proxy;
  },
  () => {
    const cycle: Record<string, unknown> = { shape: 'combined' };
    cycle['parts'] = [cycle];
    return cycle;
  },
  () => ({ toString: throwing, valueOf: throwing, [Symbol.toPrimitive]: throwing }),
  () => Object.defineProperty([1, 2, 3], 'length', { value: 4 }),
];

/** One hostile value. */
export const someHostile = (dice: Chance): unknown => dice.pick(HOSTILE)(dice);

const pathCache = new WeakMap<object, Path[]>();

function pathsOf(value: unknown, path: Path = []): Path[] {
  if (typeof value !== 'object' || value === null) return [path];
  return [path, ...Object.entries(value).flatMap(([key, inner]) => pathsOf(inner, [...path, key]))];
}

function cachedPaths(good: unknown): Path[] {
  if (typeof good !== 'object' || good === null) return [[]];
  const known = pathCache.get(good) ?? pathsOf(good);
  pathCache.set(good, known);
  return known;
}

/** A good input with one to three of its places hostile. */
export function spoilt(good: unknown, dice: Chance): unknown {
  let input = good;
  for (let n = 1 + dice.below(3); n > 0; n -= 1) {
    const path = dice.pick(cachedPaths(good));
    const what = someHostile(dice);
    try {
      input = put(input, path, what);
    } catch {
      // A place within what is spoilt already cannot be reached any more.
      input = what;
    }
  }
  return input;
}

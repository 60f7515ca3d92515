/** Good inputs changed as people change them: other sizes, units, items, members. */
import type { Quantity } from '../../../src/quantity/quantity';
import { at, measuredPaths, type Path, put, timesFactor } from '../relations/inputs';
import type { Chance } from '../relations/random';
import { someHand, written } from './notation';
import { type Pool, siOf } from './pools';
import type { Measured } from './units';

interface Place {
  readonly path: Path;
  readonly q: Quantity;
}

const places = new WeakMap<object, readonly Place[]>();

/** The measurements of a good input; found once, since finding costs more than a calculation. */
function placesOf(good: unknown): readonly Place[] {
  if (typeof good !== 'object' || good === null) return [];
  const known = places.get(good);
  if (known) return known;
  const found = measuredPaths(good);
  places.set(good, found);
  return found;
}

/** One to three measurements changed somewhat. */
export function nudged(good: unknown, dice: Chance): unknown {
  const all = placesOf(good);
  let input = good;
  for (let n = all.length > 0 ? 1 + dice.below(3) : 0; n > 0; n -= 1) {
    const { path, q } = dice.pick(all);
    input = put(input, path, timesFactor(q, 0.75 + dice.next() * 0.6));
  }
  return input;
}

/** A share of the measurements written in another way, to the digits of that hand. */
export function rewritten(good: unknown, dice: Chance): unknown {
  const [hand, share] = [{ ...someHand(dice), digits: 15 }, dice.pick([0.2, 0.5, 1])];
  return placesOf(good).reduce<unknown>((input, { path, q }) => {
    if (dice.next() > share) return input;
    return put(input, path, written(q.dimension as Measured, siOf(q), hand, dice));
  }, good);
}

/** Every length times one factor, as the same job at another size. */
export function scaled(good: unknown, dice: Chance): unknown {
  const factor = 4 ** (2 * dice.next() - 1);
  return placesOf(good).reduce<unknown>(
    (input, { path, q }) => (q.dimension === 'length' ? put(input, path, timesFactor(q, factor)) : input),
    good,
  );
}

/** One or two measurements by orders of magnitude, down to nothing and beyond all. */
export function extreme(good: unknown, dice: Chance): unknown {
  const all = placesOf(good);
  let input = good;
  for (let n = all.length > 0 ? 1 + dice.below(2) : 0; n > 0; n -= 1) {
    const { path, q } = dice.pick(all);
    const power = dice.pick([-30, -12, -6, -3, -2, 2, 3, 6, 12, 30]);
    const si = dice.below(9) === 0 ? 0 : siOf(q) * 10 ** power * (dice.below(12) === 0 ? -1 : 1);
    input = put(input, path, written(q.dimension as Measured, si, someHand(dice), dice));
  }
  return input;
}

function pathsWhere(value: unknown, wanted: (x: unknown) => boolean, path: Path = []): Path[] {
  const own = wanted(value) ? [path] : [];
  if (typeof value !== 'object' || value === null) return own;
  const keys = Array.isArray(value) ? value.map((_, i) => i) : Object.keys(value);
  const inner = keys.flatMap((key) =>
    pathsWhere((value as Record<string | number, unknown>)[key], wanted, [...path, key]),
  );
  return [...own, ...inner];
}

/** A list with an item doubled, left out, moved, or grown many times over. */
export function relisted(good: unknown, dice: Chance): unknown {
  const lists = pathsWhere(good, (x) => Array.isArray(x) && x.length > 0);
  if (lists.length === 0) return nudged(good, dice);
  const path = dice.pick(lists);
  const items = [...(at(good, path) as unknown[])];
  const [i, j] = [dice.below(items.length), dice.below(items.length)];
  const roll = dice.below(12);
  if (roll < 3) items.splice(j, 0, items[i]);
  else if (roll < 6) items.splice(i, 1);
  else if (roll < 9) [items[i], items[j]] = [items[j], items[i]];
  else if (roll < 11) items.reverse();
  else items.push(...Array.from({ length: dice.below(200) }, () => items[i]));
  return put(good, path, items);
}

const isObject = (x: unknown): boolean => typeof x === 'object' && x !== null && !Array.isArray(x);

/** An object with a member left out, or with one as another vector has it. */
export function remembered(good: unknown, pool: Pool, dice: Chance): unknown {
  const objects = pathsWhere(good, isObject);
  const path = dice.pick(objects.length > 0 ? objects : [[]]);
  const object = at(good, path);
  if (!isObject(object)) return good;
  const keys = Object.keys(object as object);
  if (dice.below(2) === 0 && keys.length > 0) {
    const gone = dice.pick(keys);
    const rest = Object.fromEntries(Object.entries(object as object).filter(([key]) => key !== gone));
    return put(good, path, rest);
  }
  const donor = dice.pick(pool.accepted);
  const donors = path.length === 0 ? donor : at(donor, path);
  const other = isObject(donors) ? (donors as Record<string, unknown>) : {};
  const names = Object.keys(other);
  if (names.length === 0) return good;
  const name = dice.pick(names);
  return put(good, [...path, name], other[name]);
}

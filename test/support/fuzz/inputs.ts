/** One input for the fuzzer: from a vector or a schema, changed or spoilt in one of many ways. */
import { calculations as catalog } from '../../../src/catalog/all';
import type { Chance } from '../relations/random';
import { inlined } from '../schemas';
import { extreme, nudged, relisted, remembered, rewritten, scaled } from './mutate';
import { someOutline, someRegion } from './outlines';
import { type Pool, poolFor } from './pools';
import { madeFromSchema } from './schema';
import { someHostile, spoilt } from './spoil';

type Json = Readonly<Record<string, unknown>>;

const schemas = new Map<string, Json>();

function schemaOf(id: string): Json {
  const known = schemas.get(id) ?? inlined(catalog.find((entry) => entry.id === id)?.inputSchema ?? {});
  schemas.set(id, known);
  return known;
}

/** A vector's job on another outline, where it has one. */
function reoutlined(good: unknown, dice: Chance): unknown {
  const { outline, openings, ...rest } = good as Record<string, unknown>;
  if (typeof outline !== 'object' || outline === null || Array.isArray(outline)) return nudged(good, dice);
  if (openings !== undefined || dice.below(4) === 0) return { ...rest, ...someRegion(dice) };
  return { ...rest, outline: someOutline(dice) };
}

type Way = (good: unknown, pool: Pool, dice: Chance, id: string) => unknown;

const alsoNudged =
  (way: Way): Way =>
  (good, pool, dice, id) =>
    way(dice.below(2) === 0 ? good : nudged(good, dice), pool, dice, id);

/** The ways in which an input is made, each with its weight. */
const WAYS: readonly (readonly [weight: number, way: Way])[] = [
  [28, (good, _, dice) => nudged(good, dice)],
  [20, (good, _, dice) => rewritten(good, dice)],
  [5, (good, _, dice) => scaled(good, dice)],
  [10, alsoNudged((good, _, dice) => reoutlined(good, dice))],
  [6, alsoNudged((good, _, dice) => relisted(good, dice))],
  [7, alsoNudged((good, pool, dice) => remembered(good, pool, dice))],
  [11, (_, pool, dice, id) => madeFromSchema(schemaOf(id), pool, dice)],
  [4, (good, _, dice) => extreme(good, dice)],
  [2, (good, pool, dice) => nudged(pool.refused.length > 0 ? dice.pick(pool.refused) : good, dice)],
  [6, alsoNudged((good, _, dice) => spoilt(good, dice))],
  [1, (_, __, dice) => someHostile(dice)],
];

const TOTAL = WAYS.reduce((sum, [weight]) => sum + weight, 0);

/** An input of a calculation. */
export function fuzzInput(id: string, dice: Chance): unknown {
  const pool = poolFor(id);
  const good = dice.pick(pool.accepted);
  let roll = dice.below(TOTAL);
  for (const [weight, way] of WAYS) {
    if (roll < weight) return way(good, pool, dice, id);
    roll -= weight;
  }
  return good;
}

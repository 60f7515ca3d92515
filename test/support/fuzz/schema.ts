/** Values made from a JSON Schema: what a front-end that knows nothing but the schema could send. */
import type { Chance } from '../relations/random';
import { type Hand, someHand, written } from './notation';
import { someOutline, someRegion, someRing } from './outlines';
import { type Pool, sizesOf } from './pools';
import { MEASURED, type Measured } from './units';

type Json = Readonly<Record<string, unknown>>;

interface Making {
  readonly dice: Chance;
  readonly hand: Hand;
  readonly pool: Pool;
  /** Names given so far, for what refers to them. */
  readonly names: string[];
}

const list = (x: unknown): readonly Json[] => (Array.isArray(x) ? (x as Json[]) : []);

/** The dimension that a quantity's schema speaks of. */
function dimensionOf(schema: Json): Measured | undefined {
  const words = /^(.+) with its unit/.exec(String(schema['description'] ?? ''))?.[1]?.replaceAll(' ', '-');
  return MEASURED.find((d) => d === words);
}

/** A size like those of the vectors, or another. */
function size(key: string, d: Measured, { pool, dice }: Making): number {
  const like = dice.pick(sizesOf(pool, key, d));
  if (d === 'temperature') return like + dice.below(11) - 5;
  return like * (dice.below(4) > 0 ? 0.8 + 0.4 * dice.next() : 4 ** (2 * dice.next() - 1));
}

const ODD_NAMES = [
  'north wall',
  'A',
  'b'.repeat(60),
  'Größe <&">',
  "O'Neil's | corner",
  '角 1',
  '🚧 drain',
  '__proto__',
  'constructor',
  '12 ft',
  'a\u202eb',
  '  padded  ',
  'back\\slash',
  '-',
  '$& $1',
  'tab\there',
];

function text(key: string, making: Making): string {
  const { dice, pool, names } = making;
  const known = pool.texts.get(key);
  const roll = dice.below(10);
  if (names.length > 0 && roll < 5 && key !== 'name' && key !== 'point') return dice.pick(names);
  if (known && roll < 8) return remembered(dice.pick(known), making);
  return remembered(`${dice.pick(ODD_NAMES)}${names.length % 7}`.slice(-60), making);
}

function remembered(name: string, { names }: Making): string {
  names.push(name);
  return name;
}

/** How many items: few mostly. */
function howMany(schema: Json, dice: Chance): number {
  const least = Number(schema['minItems'] ?? 0);
  const most = Number(schema['maxItems'] ?? 20);
  const wanted = least + dice.below(dice.below(25) === 0 ? 60 : 5);
  return Math.min(most, wanted);
}

function whole(key: string, schema: Json, { dice, pool }: Making): number {
  const [least, most] = [Number(schema['minimum'] ?? 0), Number(schema['maximum'] ?? 100)];
  const seen = (pool.values.get(key) ?? []).filter((v): v is number => typeof v === 'number');
  if (seen.length > 0 && dice.below(4) > 0) return dice.pick(seen);
  return Math.min(most, least + dice.below(dice.below(10) === 0 ? most - least + 1 : 8));
}

function object(schema: Json, making: Making): unknown {
  const properties = schema['properties'] as Record<string, Json>;
  const required = new Set(schema['required'] as string[]);
  const out: Record<string, unknown> = {};
  const filled = making.dice.pick([0.1, 0.3, 0.3, 0.6]);
  for (const [key, inner] of Object.entries(properties)) {
    if (required.has(key) || making.dice.next() < filled) out[key] = madeOf(inner, key, making);
  }
  return shaped(out, properties, making);
}

/** Outlines and sections come from their own makers, that know what a shape is. */
function shaped(out: Record<string, unknown>, properties: Record<string, Json>, making: Making): unknown {
  const { dice } = making;
  const isOutline = (list(properties['outline']?.['oneOf']).length ?? 0) > 6;
  if (isOutline && out['outline'] !== undefined) {
    const region =
      properties['openings'] && dice.below(3) === 0 ? someRegion(dice) : { outline: someOutline(dice) };
    delete out['openings'];
    Object.assign(out, region);
  }
  if (properties['section'] && Array.isArray(out['section']))
    out['section'] = someRing(dice).map(([x, y]) => ({
      x: `${(x / 30).toFixed(4)} m`,
      y: `${(y / 30).toFixed(4)} m`,
    }));
  return out;
}

function quantityOr(schema: Json, key: string, making: Making): unknown {
  const d = dimensionOf(schema);
  return d ? written(d, size(key, d, making), making.hand, making.dice) : fromPool(key, making);
}

/** A value as the vectors have it, where the schema says too little. */
function fromPool(key: string, { pool, dice }: Making): unknown {
  const seen = pool.values.get(key);
  return seen ? dice.pick(seen) : {};
}

function bySort(schema: Json, key: string, making: Making): unknown {
  const { dice } = making;
  switch (schema['type']) {
    case 'object':
      return schema['properties'] ? object(schema, making) : someOutline(dice);
    case 'array':
      return Array.from({ length: howMany(schema, dice) }, () =>
        madeOf(schema['items'] as Json, key, making),
      );
    case 'integer':
      return whole(key, schema, making);
    case 'number':
      return Math.round(dice.next() * 2000) / 100;
    case 'boolean':
      return dice.below(2) === 0;
    case 'string':
      return text(key, making);
    case 'null':
      return null;
    default:
      return fromPool(key, making);
  }
}

function madeOf(schema: Json, key: string, making: Making): unknown {
  const { dice } = making;
  if ('const' in schema) return schema['const'];
  if (Array.isArray(schema['enum'])) return dice.pick(schema['enum']);
  const members = [...list(schema['oneOf']), ...list(schema['anyOf'])];
  if (typeof schema['description'] === 'string') return quantityOr(schema, key, making);
  if (members.length > 0) return madeOf(dice.pick(members), key, making);
  return bySort(schema, key, making);
}

/** An input made from the schema of a calculation. */
export const madeFromSchema = (schema: Json, pool: Pool, dice: Chance): unknown =>
  madeOf(schema, '', { dice, hand: someHand(dice), pool, names: [] });

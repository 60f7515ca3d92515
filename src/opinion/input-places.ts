/**
 * The places of an input: which quantities, counts and choices stand in it, which parts may be left out, and which
 * stand in lists. Found by the schema that the calculation gives of itself, so that nothing here knows any of them.
 */
import type { Dimension } from '../quantity/dimensions';
import { isDimension } from '../quantity/dimensions';
import { readMoney } from '../quantity/money';
import type { Quantity } from '../quantity/quantity';
import { isFaulty, readQuantity } from '../quantity/read-quantity';
import type { Calculation } from '../reckoning/calculation';
import { pathText } from '../reckoning/calculation';
import type { JsonSchema } from '../reckoning/fields';
import { wholeNumber } from '../reckoning/fields';
import type { FigureSet } from '../reckoning/parts';
import { isRecord } from '../reckoning/record';

/** Any calculation, by what all of them have. */
// biome-ignore lint/suspicious/noExplicitAny: the input of any calculation at all
export type AnyCalculation = Calculation<any, FigureSet>;

/** A way into an input. */
export type Path = readonly (string | number)[];

/** A quantity of an input, or a plain count. */
export interface Leaf {
  readonly path: Path;
  /** The path as it is written. */
  readonly at: string;
  /** The last name on the way, `length` of `outline.sides[2]` being `sides`. */
  readonly name: string;
  readonly dimension: Dimension;
  readonly quantity: Quantity;
  /** True for a whole number that is given as one. */
  readonly plain: boolean;
}

/** The name of what tells a place rather than a size. */
export const COORDINATE = /^[xy]$/;

/** A word that was chosen out of several. */
export interface Choice {
  readonly path: Path;
  readonly at: string;
  readonly chosen: string;
  /** All that may be chosen, in their order. */
  readonly all: readonly string[];
}

/** What stands in an input. */
export interface Places {
  readonly leaves: readonly Leaf[];
  /** Values that one may be taken for, where these are more than may be wrong themselves. */
  readonly others?: readonly Leaf[];
  readonly choices: readonly Choice[];
  /** Parts that may be left out. */
  readonly optional: readonly Path[];
  /** Items of lists. */
  readonly items: readonly Path[];
  /** Objects, with what they hold: outlines and the like. */
  readonly objects: readonly { readonly path: Path; readonly value: Readonly<Record<string, unknown>> }[];
}

interface Found {
  readonly leaves: Leaf[];
  readonly choices: Choice[];
  readonly optional: Path[];
  readonly items: Path[];
  readonly objects: { path: Path; value: Readonly<Record<string, unknown>> }[];
}

/** More places than this are no notebook's: the rest is left as it is. */
const MOST = 400;

const schemas = new WeakMap<AnyCalculation, JsonSchema>();

/** The schema of a calculation's input, made once. */
export function schemaFor(calculation: AnyCalculation): JsonSchema {
  const known = schemas.get(calculation);
  if (known) return known;
  const made = calculation.inputSchema;
  schemas.set(calculation, made);
  return made;
}

const schemaIn = (x: unknown): JsonSchema => (typeof x === 'object' && x !== null ? (x as JsonSchema) : {});
const listIn = (x: unknown): readonly JsonSchema[] => (Array.isArray(x) ? (x as JsonSchema[]) : []);

/** A ratio that is known by its number alone, as water to cement is: 0.45. */
const bare = (dimension: Dimension, value: unknown): unknown =>
  dimension === 'ratio' && /^\s*\d*\.?\d+\s*$/.test(String(value)) ? `${String(value).trim()}:1` : value;

/** A value as a quantity of a dimension, where it is one. */
function readAs(dimension: Dimension, value: unknown): Quantity | undefined {
  const q =
    dimension === 'money' ? readMoney(value, 'it') : readQuantity(bare(dimension, value), dimension, 'it');
  return isFaulty(q) ? undefined : q;
}

/** What a part of a job may hold: its own schema stands elsewhere, so that a value tells by its unit what it is. */
const BY_UNIT: readonly Dimension[] = [
  'length',
  'area',
  'volume',
  'mass',
  'ratio',
  'density',
  'time',
  'pressure',
  'mass-per-area',
  'mass-per-length',
  'slope',
  'angle',
  'temperature',
];

/** What a part of a job may do without, and is forgotten. */
const FORGOTTEN = /^(?:margin|turnUp|openings|thickenings|minimumLoad)$/;

/** What must be given together or instead says nothing of what a value is. */
const isRule = (schema: JsonSchema): boolean =>
  !['type', '$ref', 'enum', 'const', 'x-dimension', 'oneOf', 'anyOf'].some((key) => key in schema);

/** The kinds that a value may be of. */
const membersOf = (schema: JsonSchema): JsonSchema[] =>
  schema['x-dimension']
    ? []
    : [...listIn(schema['oneOf']), ...listIn(schema['anyOf'])].filter((one) => !isRule(one));

/** Numbers of bars, by what stands behind them. */
const SERIES: readonly { readonly of: RegExp; readonly numbers: readonly string[] }[] = [
  { of: /^M$/, numbers: ['10', '15', '20', '25', '30', '35', '45', '55'] },
  { of: /^$/, numbers: ['3', '4', '5', '6', '7', '8', '9', '10', '11', '14', '18'] },
  { of: /^$/, numbers: ['10', '13', '16', '19', '22', '25', '29', '32', '36', '43', '57'] },
  { of: /^\s*(?:mm)?$/, numbers: ['6', '8', '10', '12', '14', '16', '20', '25', '28', '32', '36', '40'] },
];

const nameOf = (path: Path): string => String(path.filter((part) => typeof part === 'string').at(-1) ?? '');

/** Walks an input and its schema together. */
class Walk {
  readonly found: Found = { leaves: [], choices: [], optional: [], items: [], objects: [] };
  private readonly defs: JsonSchema;
  private left = MOST;

  constructor(root: JsonSchema) {
    this.defs = schemaIn(root['$defs']);
  }

  private settled(schema: JsonSchema): JsonSchema {
    const ref = schema['$ref'];
    return typeof ref === 'string' ? schemaIn(this.defs[ref.slice('#/$defs/'.length)]) : schema;
  }

  /** The member of several that a value is of: by its word, or by what it has. */
  private member(schema: JsonSchema, value: unknown): JsonSchema {
    const own = this.settled(schema);
    const members = membersOf(own);
    if (members.length === 0) return own;
    const fitting = members.map((one) => this.member(one, value)).filter((one) => this.fits(one, value));
    return fitting[0] ?? {};
  }

  private fits(schema: JsonSchema, value: unknown): boolean {
    const { type } = schema;
    const dimension = schema['x-dimension'];
    if (isDimension(dimension)) return readAs(dimension, value) !== undefined;
    if (type === 'object') return isRecord(value) && this.hasAll(schema, value);
    if (type === 'array') return Array.isArray(value);
    if (type === 'integer') return typeof value === 'number';
    if (Array.isArray(schema['enum'])) return schema['enum'].includes(value);
    return type === typeof value;
  }

  private hasAll(schema: JsonSchema, value: Readonly<Record<string, unknown>>): boolean {
    const properties = schemaIn(schema['properties']);
    return Object.keys(value).every((name) => {
      if (!Object.hasOwn(properties, name)) return false;
      const word = schemaIn(properties[name])['const'];
      return word === undefined || word === value[name];
    });
  }

  walk(given: JsonSchema, value: unknown, path: Path): void {
    if (value === undefined || value === null || this.left <= 0) return;
    this.left -= 1;
    if ('x-input-of' in given) {
      this.ofPart(value, path);
      return;
    }
    const schema = this.member(given, value);
    const dimension = schema['x-dimension'];
    if (isDimension(dimension)) this.leaf(dimension, value, path);
    else if (schema['type'] === 'integer') {
      // The version of a document is no count.
      if (schema['minimum'] !== schema['maximum']) this.count(value, path);
    } else if (path.at(-1) === 'bar' && schema['type'] === 'string' && !schema['enum']) this.bar(value, path);
    else if (Array.isArray(schema['enum'])) this.choice(schema['enum'] as string[], value, path);
    else if (Array.isArray(value)) this.list(schema, value, path);
    else if (isRecord(value)) this.object(schema, value, path);
  }

  /** Quantities and counts of a part of a job. */
  private ofPart(value: unknown, path: Path): void {
    if (typeof value === 'number') this.count(value, path);
    else if (typeof value === 'string') {
      const q = BY_UNIT.reduce<Quantity | undefined>((found, d) => found ?? readAs(d, value), undefined);
      if (q) this.put(q, path, false);
    } else if (Array.isArray(value))
      for (const [i, one] of value.entries()) {
        if (this.left > 0) this.found.items.push([...path, i]);
        this.inPart(one, [...path, i]);
      }
    else if (isRecord(value)) this.members(value, path);
  }

  private members(value: Readonly<Record<string, unknown>>, path: Path): void {
    for (const [name, one] of Object.entries(value)) {
      if (FORGOTTEN.test(name)) this.found.optional.push([...path, name]);
      this.inPart(one, [...path, name]);
    }
  }

  private inPart(value: unknown, path: Path): void {
    if (this.left <= 0) return;
    this.left -= 1;
    this.ofPart(value, path);
  }

  private leaf(dimension: Dimension, value: unknown, path: Path): void {
    const q = readAs(dimension, value);
    if (q) this.put(q, path, false);
  }

  private count(value: unknown, path: Path): void {
    if (typeof value === 'number' && Number.isInteger(value)) this.put(wholeNumber(value), path, true);
  }

  private put(quantity: Quantity, path: Path, plain: boolean): void {
    const { dimension } = quantity;
    this.found.leaves.push({ path, at: pathText(path), name: nameOf(path), dimension, quantity, plain });
  }

  private choice(all: readonly string[], value: unknown, path: Path): void {
    if (typeof value !== 'string') return;
    this.found.choices.push({ path, at: pathText(path), chosen: value, all });
  }

  /** A bar that is told in words of its own: another of its series is another number in it. */
  private bar(value: unknown, path: Path): void {
    const [, before, number, after] = /^(\D*)(\d+)(\D*)$/.exec(typeof value === 'string' ? value : '') ?? [];
    const series = SERIES.find((one) => one.of.test(after ?? '') && one.numbers.includes(number ?? ''));
    if (series)
      this.choice(
        series.numbers.map((one) => `${before}${one}${after}`),
        value,
        path,
      );
  }

  private list(schema: JsonSchema, value: readonly unknown[], path: Path): void {
    value.forEach((item, i) => {
      if (this.left > 0) this.found.items.push([...path, i]);
      this.walk(schemaIn(schema['items']), item, [...path, i]);
    });
  }

  private object(schema: JsonSchema, value: Readonly<Record<string, unknown>>, path: Path): void {
    const required = listIn(schema['required']) as readonly unknown[];
    const properties = schemaIn(schema['properties']);
    this.found.objects.push({ path, value });
    for (const name of Object.keys(value)) {
      if (value[name] === undefined || value[name] === null) continue;
      if (!required.includes(name)) this.found.optional.push([...path, name]);
      this.walk(schemaIn(properties[name]), value[name], [...path, name]);
    }
  }
}

/**
 * What stands in an input.
 *
 * @param input - plain data, as `plainCopy` gives it
 */
export function placesOf(calculation: AnyCalculation, input: unknown): Places {
  const schema = schemaFor(calculation);
  const walk = new Walk(schema);
  walk.walk(schema, input, []);
  return walk.found;
}

/** What is taken out rather than replaced. */
export const LEFT_OUT: unique symbol = Symbol('left out');

function withItem(list: readonly unknown[], at: number, rest: Path, value: unknown): unknown[] {
  if (rest.length === 0 && value === LEFT_OUT) return list.filter((_, i) => i !== at);
  return list.map((one, i) => (i === at ? withValue(one, rest, value) : one));
}

/** The same input with another value in one place, or without it. */
export function withValue(input: unknown, path: Path, value: unknown): unknown {
  const [name, ...rest] = path;
  if (name === undefined) return value;
  if (Array.isArray(input)) return withItem(input, Number(name), rest, value);
  const copy: Record<string, unknown> = { ...(input as Record<string, unknown>) };
  if (rest.length === 0 && value === LEFT_OUT) delete copy[name];
  else copy[name] = withValue(copy[name], rest, value);
  return copy;
}

/** The value in one place of an input. */
export const valueAt = (input: unknown, path: Path): unknown =>
  path.reduce<unknown>(
    (value, name) =>
      isRecord(value) || Array.isArray(value) ? (value as Record<string, unknown>)[name] : undefined,
    input,
  );

/** The input with each quantity read once: so the very same quantities are met again in the working. */
export const withQuantities = (input: unknown, { leaves }: Places): unknown =>
  leaves.reduce<unknown>(
    (whole, { path, quantity, plain }) => (plain ? whole : withValue(whole, path, quantity)),
    input,
  );

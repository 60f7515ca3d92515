/**
 * The fields that input schemas are built from.
 *
 * Each reads one value, adds its fault with our own code and sentence, and describes itself for the
 * JSON Schema that a front-end may ask for. Zod's global registry and configuration stay untouched.
 */
import * as z from 'zod/v4/core';
import { Decimal } from '../quantity/decimal';
import type { Dimension } from '../quantity/dimensions';
import * as faults from '../quantity/faults';
import type { Fault, IssueCode } from '../quantity/input-error';
import { canonicalValue, isFaulty, newQuantity, type Quantity, readQuantity } from '../quantity/quantity';
import { tooSmall } from '../quantity/text-faults';
import { unitOf } from '../quantity/units';
import { type Doubt, isUnusual, type Ordinary } from './ordinary';

/** A schema that reads into `T`. */
export type Field<T> = z.$ZodType<T, unknown>;

/** JSON Schema of a value. */
export type JsonSchema = { readonly [key: string]: unknown };

// Kept beside the schemas, not in them: zod's own JSON Schema writer is a fifth of a small bundle.
const descriptions = new WeakMap<object, () => JsonSchema>();
const optionals = new WeakSet<object>();

/** What a field built here says of itself in JSON Schema. */
export const descriptionOf = (field: object): JsonSchema => descriptions.get(field)?.() ?? {};

function described<T>(field: Field<T>, json: () => JsonSchema): Field<T> {
  descriptions.set(field, json);
  return field;
}

const isFault = <T>(x: T | Fault): x is Fault => typeof x === 'object' && x !== null && 'sentence' in x;

/** What a reader says besides the value: that it cannot be, or that it is out of the ordinary. */
type Remark = Fault | Doubt;

/** Where a reader puts what it has to say. */
type Report = (remark: Remark, path?: PropertyKey[]) => void;

const isDoubt = (remark: Remark): remark is Doubt => 'ordinary' in remark;

type Reader = (input: unknown, report: Report) => unknown;

/** The readers behind the fields: within another field they are called as they are. */
const readers = new WeakMap<object, Reader>();

/**
 * A field: a schema of zod that reads by a function of our own, which reports what is wrong.
 *
 * Objects, lists and kinds are read this way too: with zod's own in, the smallest bundle would pass its
 * limit, and a doubt, which is no fault, would have no way through.
 */
function readBy<T>(
  read: (input: unknown, report: Report) => T | undefined,
  json: () => JsonSchema,
): Field<T> {
  const transform = (input: unknown, { issues }: z.ParsePayload): unknown => {
    let faulty = false;
    const value = read(input, (remark, path = []) => {
      if (isDoubt(remark)) {
        issues.push({ code: 'custom', input, path, message: '', params: { doubt: remark } });
        return;
      }
      faulty = true;
      const { code, sentence } = remark;
      issues.push({ code: 'custom', input, path, message: sentence, params: { code } });
    });
    return faulty ? z.NEVER : value;
  };
  const field = new z.$ZodTransform({ type: 'transform', transform });
  readers.set(field, read);
  return described(field as unknown as Field<T>, json);
}

/** A field read by a function that gives the value or its fault. */
export function reading<T>(read: (input: unknown) => T | Fault, json: () => JsonSchema): Field<T> {
  return readBy((input, report) => {
    const value = read(input);
    if (!isFault(value)) return value;
    report(value);
    return undefined;
  }, json);
}

/** Which signs a quantity may have. */
export type Sign = 'positive' | 'not-negative' | 'any';

/** A power of ten larger than anything on a site, in any canonical unit. */
const LARGEST = 15;

/** Powers of ten below anything on a site: a tenth of a thousandth of a millimetre, or as little of the rest. */
const SMALLEST = { length: -7, other: -13 };

/** An amount that must be more than nothing, and is less than can be measured. */
const tiny = (q: Quantity): boolean =>
  q.sign() > 0 && canonicalValue(q).e < (q.dimension === 'length' ? SMALLEST.length : SMALLEST.other);

/** Why a quantity cannot be what it is given for: its sign or its size. */
function impossible(q: Quantity, what: string, sign: Sign): Fault | undefined {
  if (canonicalValue(q).e >= LARGEST) return faults.outOfRange(what);
  if (sign === 'any') return undefined;
  if (q.sign() < 0) return sign === 'positive' ? faults.notPositive(what) : faults.negative(what);
  if (sign === 'not-negative') return undefined;
  if (q.sign() === 0) return faults.notPositive(what);
  return tiny(q) ? tooSmall(what) : undefined;
}

/**
 * A quantity of one dimension.
 *
 * @param ordinary - the range beyond which the result asks for a second look
 */
export function quantity<D extends Dimension>(
  d: D,
  what: string,
  sign: Sign = 'positive',
  ordinary?: Ordinary,
): Field<Quantity<D>> {
  const possible = (input: unknown): Quantity<D> | Fault => {
    const q = readQuantity(input, d, what);
    return isFaulty(q) ? q : (impossible(q, what, sign) ?? q);
  };
  const read = (input: unknown, report: Report): Quantity<D> | undefined => {
    const value = possible(input);
    if (isFault(value)) {
      report(value);
      return undefined;
    }
    if (ordinary && isUnusual(value, ordinary)) report({ value, ordinary });
    return value;
  };
  return readBy(read, () => quantitySchema(d, what));
}

function quantitySchema(d: Dimension, what: string): JsonSchema {
  return {
    title: what,
    description: `${d.replaceAll('-', ' ')} with its unit, for example ${faults.exampleOf(d)}`,
    anyOf: [
      { type: 'string' },
      {
        type: 'object',
        properties: { value: { type: ['string', 'number'] }, unit: { type: 'string' } },
        required: ['value', 'unit'],
      },
    ],
  };
}

/** A whole number of things, given as a plain number: counting is not measuring. */
export function whole(what: string, least: number, most: number): Field<Quantity<'count'>> {
  const read = (input: unknown): Quantity<'count'> | Fault => {
    if (input === undefined || input === null) return faults.missing(what, String(Math.max(least, 2)));
    if (typeof input !== 'number' || !Number.isInteger(input) || input < least || input > most) {
      return faults.notACount(what, least, most);
    }
    return wholeNumber(input);
  };
  return reading(read, () => ({
    title: what,
    type: 'integer',
    minimum: least,
    maximum: most,
  }));
}

/** A count made from a whole number. */
export function wholeNumber(n: number): Quantity<'count'> {
  return newQuantity('count', new Decimal(n), unitOf('count', 'each') as never);
}

/** One word out of a list. */
export function choice<T extends string>(what: string, choices: readonly T[]): Field<T> {
  const read = (input: unknown): T | Fault => {
    if (input === undefined || input === null) return faults.missing(what, `"${choices[0]}"`);
    return choices.includes(input as T) ? (input as T) : faults.unknownChoice(what, choices);
  };
  return reading(read, () => ({ title: what, type: 'string', enum: [...choices] }));
}

/** Reads anything as nothing: for a gap that was marked on purpose. */
export const nothing: Field<undefined> = /*#__PURE__*/ reading<undefined>(
  () => undefined,
  () => ({ type: 'null' }),
);

/** A field that may be left out. */
export function maybe<T>(field: Field<T>): Field<T | undefined> {
  const optional = readBy<T | undefined>(
    (input, report) => (input === undefined ? undefined : within(field, input, report, [])),
    () => descriptionOf(field),
  );
  optionals.add(optional);
  return optional;
}

/** One fixed word, as the `shape` of an outline. */
export function word<T extends string>(name: T): Field<T> {
  const read = (input: unknown): T | Fault => (input === name ? name : faults.unknownChoice('it', [name]));
  return reading(read, () => ({ const: name }));
}

/** The fields of an object, by name. */
export type Shape = Record<string, Field<unknown>>;

/** Read an object within another input, as zod would: every field, then keys that are not known. */
function readObject(shape: Shape, input: unknown, report: Report): Record<string, unknown> | undefined {
  if (typeof input !== 'object' || input === null || Array.isArray(input)) {
    const names = Object.keys(shape).filter((name) => !optionals.has(shape[name] as object));
    const wanted = names.length > 0 ? `an object with ${names.join(', ')}` : 'an object';
    report(faults.wrongType('it', input === undefined ? 'given' : wanted));
    return undefined;
  }
  const given = input as Record<string, unknown>;
  // Without a prototype, so that nothing added to that of all objects is read or stands in the way.
  const out = Object.create(null) as Record<string, unknown>;
  for (const name in shape) {
    const field = shape[name] as Field<unknown>;
    if (given[name] === undefined && optionals.has(field)) continue;
    out[name] = within(field, given[name], report, [name]);
  }
  const unknown = Object.keys(given).find((name) => !Object.hasOwn(shape, name));
  if (unknown !== undefined) report(faults.unknownKey(unknown, Object.keys(shape)));
  return out;
}

/** An object with these fields and no others; `more` is what its schema says beside them. */
export function fields<S extends Shape>(
  shape: S,
  more?: JsonSchema,
): Field<{ [K in keyof S]: z.output<S[K]> }> {
  return readBy(
    (input, report) => readObject(shape, input, report) as { [K in keyof S]: z.output<S[K]> } | undefined,
    () => ({
      type: 'object',
      properties: Object.fromEntries(Object.entries(shape).map(([name, f]) => [name, descriptionOf(f)])),
      required: Object.keys(shape).filter((name) => !optionals.has(shape[name] as object)),
      additionalProperties: false,
      ...more,
    }),
  );
}

const wordOf = (member: object, key: string): unknown =>
  (descriptionOf(member)['properties'] as Record<string, JsonSchema> | undefined)?.[key]?.['const'];

/** Read an inner value with another field, and report its faults with the path to it. */
function within<T>(field: Field<T>, input: unknown, report: Report, path: PropertyKey[]): T | undefined {
  const own = readers.get(field) as Reader;
  return own(input, (remark, inner = []) => report(remark, [...path, ...inner])) as T | undefined;
}

/** A field whose value, once read without a fault, is put in its simplest form. */
export function settled<T>(field: Field<T>, settle: (value: T) => T): Field<T> {
  const read = (input: unknown, report: Report): T | undefined => {
    let faulty = false;
    const value = within(
      field,
      input,
      (remark, path) => {
        faulty ||= !isDoubt(remark);
        report(remark, path);
      },
      [],
    );
    return faulty ? undefined : settle(value as T);
  };
  return readBy(read, () => descriptionOf(field));
}

/**
 * One of several kinds of object, told apart by the word in `key`; without that word it is `otherwise`,
 * where there is one.
 */
export function kinds<T>(key: string, members: readonly Field<T>[], otherwise?: Field<T>): Field<T> {
  let byWord: Map<unknown, Field<T>> | undefined;
  const read = (input: unknown, report: Report): T | undefined => {
    byWord ??= new Map(members.map((member) => [wordOf(member, key), member]));
    if (typeof input !== 'object' || input === null) {
      const fault =
        input === undefined ? faults.missing('it', `{ ${key}: … }`) : faults.wrongType('it', 'an object');
      report(fault);
      return undefined;
    }
    const said = (input as Record<string, unknown>)[key];
    const chosen = said === undefined && otherwise ? otherwise : byWord.get(said);
    if (chosen) return within(chosen, input, report, []);
    report(faults.unknownChoice(key, [...byWord.keys()] as string[]), [key]);
    return undefined;
  };
  return readBy(read, () => ({ oneOf: members.map(descriptionOf) }));
}

/** One of two kinds of object, told apart by whether any of these keys is given. */
export function byKey<A, B>(keys: readonly string[], given: Field<A>, otherwise: Field<B>): Field<A | B> {
  const read = (input: unknown, report: Report): A | B | undefined => {
    const found =
      typeof input === 'object' &&
      input !== null &&
      keys.some((key) => (input as Record<string, unknown>)[key] !== undefined);
    return within<A | B>((found ? given : otherwise) as Field<A | B>, input, report, []);
  };
  return readBy(read, () => ({ anyOf: [descriptionOf(given), descriptionOf(otherwise)] }));
}

/** A name that people give to a thing: short text. */
export function label(what: string): Field<string> {
  const read = (input: unknown): string | Fault => {
    if (input === undefined || input === null) return faults.missing(what, '"north wall"');
    if (typeof input !== 'string' || input.trim() === '') return faults.wrongType(what, 'text');
    return input.length > LABEL_LIMIT ? faults.tooLong(what, LABEL_LIMIT) : input.trim();
  };
  return reading(read, () => ({ title: what, type: 'string', minLength: 1, maxLength: LABEL_LIMIT }));
}

const LABEL_LIMIT = 60;

/** A list of `least` to `most` values. */
export function list<T>(field: Field<T>, least: number, most: number): Field<T[]> {
  const read = (input: unknown, report: Report): T[] | undefined => {
    if (!Array.isArray(input)) {
      report(
        input === undefined
          ? faults.missing('the list', `a list of ${least}`)
          : faults.wrongType('it', 'a list'),
      );
      return undefined;
    }
    if (input.length < least || input.length > most) {
      report(input.length < least ? faults.tooFew('the list', least) : faults.tooMany('the list', most));
      return undefined;
    }
    return input.map((item, i) => within(field, item, report, [i]) as T);
  };
  const json = (): JsonSchema => ({
    type: 'array',
    items: descriptionOf(field),
    minItems: least,
    maxItems: most,
  });
  return readBy(read, json);
}

/**
 * A field that is chosen, or made, only when a value comes: for fields within themselves, and for
 * values of more than one kind.
 *
 * @param members - the kinds for the JSON Schema; left out for a field within itself
 */
export function later<T>(
  choose: (input: unknown) => Field<T>,
  members?: () => readonly Field<unknown>[],
): Field<T> {
  const json = (): JsonSchema => (members ? { anyOf: members().map(descriptionOf) } : { type: 'object' });
  return readBy((input, report) => within(choose(input), input, report, []), json);
}

type ZodIssue = z.$ZodRawIssue;

/**
 * Read with zod, keeping the value beside what was said of it: a doubt is no reason to refuse.
 */
export function parse<T>(field: Field<T>, input: unknown): { value: T; issues: readonly ZodIssue[] } {
  const { value, issues } = field._zod.run(
    { value: input, issues: [] },
    { async: false },
  ) as z.ParsePayload<T>;
  return { value, issues };
}

/** The doubt behind an issue, where it is one. */
export const doubtOf = (issue: ZodIssue): Doubt | undefined =>
  issue.code === 'custom' ? (issue.params?.['doubt'] as Doubt | undefined) : undefined;

/** The fault behind an issue that is no doubt: all issues come from the readers here. */
export const faultOf = (issue: ZodIssue): Fault => ({
  code: (issue as { params?: { code?: IssueCode } }).params?.code ?? 'wrong-type',
  sentence: String(issue.message),
});

/** One of two kinds of object: the first where `key` is given, the second where it is not. */
export function eitherBy<T>(key: string, where: Field<T>, otherwise: Field<T>): Field<T> {
  const read = (input: unknown, report: Report): T | undefined => {
    const has = typeof input === 'object' && input !== null && key in input;
    return within(has ? where : otherwise, input, report, []);
  };
  return readBy(read, () => ({ oneOf: [descriptionOf(where), descriptionOf(otherwise)] }));
}

/** Text of a bounded length, read into something else; `undefined` from `read` is a fault. */
export function text<T>(what: string, read: (text: string) => T | undefined, fault: () => Fault): Field<T> {
  return reading(
    (input): T | Fault => {
      if (input === undefined || input === null) return faults.missing(what, 'as text');
      if (typeof input !== 'string') return faults.wrongType(what, 'text');
      return (input.length > TEXT_LIMIT ? undefined : read(input)) ?? fault();
    },
    () => ({ title: what, type: 'string', maxLength: TEXT_LIMIT }),
  );
}

const TEXT_LIMIT = 100;

/** Yes or no. */
export function yesOrNo(what: string): Field<boolean> {
  const read = (input: unknown): boolean | Fault =>
    typeof input === 'boolean' ? input : faults.wrongType(what, 'true or false');
  return reading(read, () => ({ title: what, type: 'boolean' }));
}

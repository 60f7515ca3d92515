/**
 * The fields that the doors of calculations are built from.
 *
 * Each reads one value, says what is wrong with it in our own codes and sentences, or that it is out of the
 * ordinary, which is no fault; and describes itself for the JSON Schema that a front-end may ask for. A schema
 * library in between read nothing here: it was a shell of 1.9 kB (of 42) around these readers, which had to carry
 * doubts past it. It reads what is read by shape alone, the stored results of `revive`.
 */
import { Decimal } from '../quantity/decimal';
import type { Dimension } from '../quantity/dimensions';
import type { Example } from '../quantity/examples';
import * as sharedFaults from '../quantity/faults';
import type { Fault } from '../quantity/input-error';
import { canonicalValue, newQuantity, type Quantity } from '../quantity/quantity';
import { isFaulty, readQuantity } from '../quantity/read-quantity';
import { tooSmall } from '../quantity/text-faults';
import { unitOf } from '../quantity/units';
import * as faults from './faults';
import { type Doubt, isUnusual, type Ordinary } from './ordinary';
import { isRecord } from './record';

/** JSON Schema of a value. */
export type JsonSchema = { readonly [key: string]: unknown };

/** Schemas said once and referred to by name, as under `$defs`. */
export type Definitions = { [name: string]: JsonSchema };

type Json = (defs: Definitions) => JsonSchema;

/** What reads one value of an input into `T`. */
export interface Field<T> {
  /** The value; where it is faulty that has been reported, and what is returned is of no use. */
  readonly read: (input: unknown, report: Report) => T | undefined;
  /** What the field says of itself in JSON Schema; what is used in several places it puts among `defs`. */
  readonly json: Json;
  /** What it is where it is given, of one that may be left out. */
  readonly optional?: Field<unknown>;
}

/** What a field reads into. */
export type Output<F> = F extends Field<infer T> ? T : never;

/** A schema kept among the definitions under its name: a reference to it. */
export function referred(defs: Definitions, name: string, json: Json): JsonSchema {
  if (!defs[name]) {
    // The name comes first: what is within itself refers to it while it is being made.
    defs[name] = {};
    defs[name] = json(defs);
  }
  return { $ref: `#/$defs/${name}` };
}

/** A field that is described once, under a name, wherever it stands; it may stand within itself. */
export const named = <T>(name: string, field: Field<T>): Field<T> => ({
  ...field,
  json: (defs) => referred(defs, name, field.json),
});

/** A JSON Schema, whole: what a field says of itself with all that it refers to. */
export function schemaOf(field: Field<unknown>): JsonSchema {
  const defs: Definitions = {};
  const root = field.json(defs);
  return { type: 'object', ...root, ...(Object.keys(defs).length > 0 ? { $defs: defs } : {}) };
}

const isFault = <T>(x: T | Fault): x is Fault => typeof x === 'object' && x !== null && 'sentence' in x;

/** What a reader says besides the value: that it cannot be, or that it is out of the ordinary. */
export type Remark = Fault | Doubt;

/** Where a reader puts what it has to say. */
export type Report = (remark: Remark, path?: PropertyKey[]) => void;

const isDoubt = (remark: Remark): remark is Doubt => 'ordinary' in remark;

const readBy = <T>(read: Field<T>['read'], json: Json): Field<T> => ({ read, json });

/** A field read by a function that gives the value or its fault. */
export function reading<T>(read: (input: unknown) => T | Fault, json: Json): Field<T> {
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

/** Powers of ten below anything on a site: a tenth of a thousandth of a millimeter, or as little of the rest. */
const SMALLEST = { length: -7, other: -13 };

/** An amount that must be more than nothing, and is less than can be measured. */
const tiny = (q: Quantity): boolean =>
  q.sign() > 0 && canonicalValue(q).e < (q.dimension === 'length' ? SMALLEST.length : SMALLEST.other);

/** Why a quantity cannot be what it is given for: its sign or its size. */
function impossible(q: Quantity, what: string, sign: Sign): Fault | undefined {
  if (canonicalValue(q).e >= LARGEST) return sharedFaults.outOfRange(what);
  if (sign === 'any') return undefined;
  if (q.sign() < 0) return sign === 'positive' ? sharedFaults.notPositive(what) : faults.negative(what);
  if (sign === 'not-negative') return undefined;
  if (q.sign() === 0) return sharedFaults.notPositive(what);
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
    if (isFaulty(q)) return ordinary?.example ? sharedFaults.proposing(ordinary.example, q, d, what) : q;
    return impossible(q, what, sign) ?? q;
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
  return readBy(read, (defs) => quantitySchema(defs, d));
}

/** A quantity as text or as `{ value, unit }`, by its dimension; another `name` is for one read in its own way. */
export const quantitySchema = (
  defs: Definitions,
  dimension: Dimension,
  name: string = dimension,
): JsonSchema =>
  referred(defs, name, () => ({
    'x-dimension': dimension,
    anyOf: [
      { title: 'Text with its unit', type: 'string' },
      {
        title: 'Value and unit',
        type: 'object',
        properties: {
          value: {},
          unit: { type: 'string' },
        },
        required: ['value', 'unit'],
      },
    ],
  }));

/** A whole number of things, given as a plain number: counting is not measuring. */
export function whole(what: string, least: number, most: number): Field<Quantity<'count'>> {
  const read = (input: unknown): Quantity<'count'> | Fault => {
    if (input === undefined || input === null)
      return sharedFaults.missing(what, String(Math.min(most, Math.max(least, 2))));
    if (typeof input !== 'number' || !Number.isInteger(input) || input < least || input > most) {
      return sharedFaults.notACount(what, least, most, typeof input === 'string');
    }
    return wholeNumber(input);
  };
  return reading(read, () => ({
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
    if (input === undefined || input === null)
      return sharedFaults.missing(what, `"${choices.slice(0, 5).join('" or "')}"`);
    return choices.includes(input as T) ? (input as T) : faults.unknownChoice(what, choices);
  };
  return reading(read, () => ({ type: 'string', enum: [...choices] }));
}

/** Reads anything as nothing: for a gap that was marked on purpose. */
export const nothing: Field<undefined> = /*#__PURE__*/ reading<undefined>(
  () => undefined,
  () => ({ type: 'null' }),
);

/** What a form or a database holds for a value that is not given. */
const isLeftOut = (input: unknown): boolean => input === undefined || input === null || input === '';

/** A field that may be left out; nothing, as forms and databases write it, is left out too. */
export function maybe<T>(field: Field<T>): Field<T | undefined> {
  return {
    read: (input, report) => (isLeftOut(input) ? undefined : field.read(input, report)),
    json: field.json,
    optional: field,
  };
}

/** One fixed word, as the `shape` of an outline. */
export function word<T extends string>(name: T): Field<T> {
  const read = (input: unknown): T | Fault => (input === name ? name : faults.unknownChoice('it', [name]));
  return reading(read, () => ({ const: name }));
}

/** The fields of an object, by name. */
export type Shape = Record<string, Field<unknown>>;

/** What would be right in one unit system. */
type Like = (metric: boolean) => string;

/** What would be right for a field, as it says itself when nothing comes. */
function exampleOf(field: Field<unknown>, metric: boolean): string {
  let told: unknown;
  (field.optional ?? field).read(undefined, (remark) => {
    const { params } = ((metric && (remark as Fault).metric) || remark) as Fault;
    told ??= params?.['example'] ?? params?.['choices'];
  });
  // One of the words that there are.
  return (told as string | undefined)?.replace(/ or .*/, '') ?? '…';
}

/** An object as it would be right, of the members that it must have. */
const objectLike =
  (shape: Shape): Like =>
  (metric) => {
    const names = Object.keys(shape);
    const needed = names.filter((name) => !shape[name]?.optional);
    const members = (needed[0] ? needed : names.slice(0, 1)).map(
      (name) => `${name}: ${exampleOf(shape[name] as Field<unknown>, metric)}`,
    );
    return `{ ${members.join(', ')} }`;
  };

/** What is not there, or not of the kind that is asked for, with an example of it. */
function ofKind(input: unknown, kind: string, like: Like): Fault {
  const [customary, metric] = [like(false), like(true)];
  return input === undefined
    ? sharedFaults.missing('it', [customary, metric])
    : sharedFaults.wrongType('it', [`${kind} such as ${customary}`, `${kind} such as ${metric}`]);
}

/** Read an object within another input, every field, then keys that are not known. */
function readObject(shape: Shape, input: unknown, report: Report): Record<string, unknown> | undefined {
  if (!isRecord(input)) {
    report(ofKind(isLeftOut(input) ? undefined : input, 'an object', objectLike(shape)));
    return undefined;
  }
  // Without a prototype, so that nothing added to that of all objects is read or stands in the way.
  const out = Object.create(null) as Record<string, unknown>;
  for (const name in shape) {
    const field = shape[name] as Field<unknown>;
    if (field.optional && isLeftOut(input[name])) continue;
    out[name] = within(field, input[name], report, name);
  }
  const unknown = Object.keys(input).find((name) => !Object.hasOwn(shape, name));
  if (unknown !== undefined) report(sharedFaults.unknownKey(unknown, Object.keys(shape)), [unknown]);
  return out;
}

/**
 * An object with these fields and no others.
 *
 * @param more - what its schema says beside them, as the rules of `together.ts`
 */
export function fields<S extends Shape>(
  shape: S,
  more?: JsonSchema,
): Field<{ [K in keyof S]: Output<S[K]> }> {
  return readBy(
    (input, report) => readObject(shape, input, report) as { [K in keyof S]: Output<S[K]> } | undefined,
    (defs) => ({
      type: 'object',
      properties: Object.fromEntries(Object.entries(shape).map(([name, f]) => [name, f.json(defs)])),
      required: Object.keys(shape).filter((name) => !shape[name]?.optional),
      additionalProperties: false,
      ...more,
    }),
  );
}

const wordOf = (member: Field<unknown>, key: string): unknown =>
  (member.json({})['properties'] as Record<string, JsonSchema> | undefined)?.[key]?.['const'];

/** Read an inner value with another field, and report its faults with the path to it. */
const within = <T>(field: Field<T>, input: unknown, report: Report, path: PropertyKey): T | undefined =>
  field.read(input, (remark, inner = []) => report(remark, [path, ...inner]));

/** A field whose value, once read without a fault, is put in its simplest form. */
export function settled<T>(field: Field<T>, settle: (value: T) => T): Field<T> {
  const read = (input: unknown, report: Report): T | undefined => {
    let faulty = false;
    const value = field.read(input, (remark, path) => {
      faulty ||= !isDoubt(remark);
      report(remark, path);
    });
    return faulty ? undefined : settle(value as T);
  };
  return readBy(read, field.json);
}

/**
 * One of several kinds of object, told apart by the word in `key`; without that word it is `otherwise`,
 * where there is one.
 */
export function kinds<F extends Field<unknown>>(
  key: string,
  members: readonly F[],
  otherwise?: F,
): Field<Output<F>> {
  type T = Output<F>;
  let byWord: Map<unknown, Field<T>> | undefined;
  const read = (input: unknown, report: Report): T | undefined => {
    byWord ??= new Map((members as readonly Field<T>[]).map((member) => [wordOf(member, key), member]));
    if (!isRecord(input)) {
      const first = (otherwise ?? members[0]) as F;
      report(ofKind(input, 'an object', (metric) => exampleOf(first, metric)));
      return undefined;
    }
    const said = input[key];
    const chosen = otherwise && isLeftOut(said) ? (otherwise as Field<T>) : byWord.get(said);
    if (chosen) return chosen.read(input, report);
    report(faults.unknownChoice(key, [...byWord.keys()] as string[]), [key]);
    return undefined;
  };
  return readBy(read, (defs) => ({
    type: 'object',
    'x-discriminator': key,
    oneOf: members.map((member) => member.json(defs)),
  }));
}

/** Reads with the first field where any of these keys is given, and with the second where none is. */
const readByKey =
  <A, B>(keys: readonly string[], given: Field<A>, otherwise: Field<B>): Field<A | B>['read'] =>
  (input, report) => {
    const found = isRecord(input) && keys.some((key) => !isLeftOut(input[key]));
    return (found ? given : otherwise).read(input, report);
  };

/** One of two kinds of object, told apart by whether any of these keys is given. */
export const byKey = <A, B>(keys: readonly string[], given: Field<A>, otherwise: Field<B>): Field<A | B> =>
  readBy(readByKey(keys, given, otherwise), (defs) => either(given.json(defs), otherwise.json(defs)));

/** One of two kinds of object, each of which may be one of several. */
const either = (first: JsonSchema, second: JsonSchema): JsonSchema => ({
  type: 'object',
  oneOf: [first, second].flatMap((one) => (one['properties'] ? [one] : (one['oneOf'] as JsonSchema[]))),
});

/** A name that people give to a thing: short text. */
export function label(what: string): Field<string> {
  const read = (input: unknown): string | Fault => {
    if (input === undefined || input === null) return sharedFaults.missing(what, '"north wall"');
    if (typeof input !== 'string' || input.trim() === '') return sharedFaults.wrongType(what, 'text');
    return input.length > LABEL_LIMIT ? sharedFaults.tooLong(what, LABEL_LIMIT) : input.trim();
  };
  return reading(read, () => ({ type: 'string', minLength: 1, maxLength: LABEL_LIMIT }));
}

const LABEL_LIMIT = 60;

/** A list of `least` to `most` values. */
export function list<T>(field: Field<T>, least: number, most: number): Field<T[]> {
  const read = (input: unknown, report: Report): T[] | undefined => {
    if (!Array.isArray(input)) {
      report(ofKind(input, 'a list', (metric) => `[${exampleOf(field, metric)}]`));
      return undefined;
    }
    if (input.length < least || input.length > most) {
      report(
        input.length < least
          ? sharedFaults.tooFew('the list', least)
          : sharedFaults.tooMany('the list', most),
      );
      return undefined;
    }
    return input.map((item, i) => within(field, item, report, i) as T);
  };
  const json: Json = (defs) => ({
    type: 'array',
    items: field.json(defs),
    minItems: least,
    maxItems: most,
  });
  return readBy(read, json);
}

/**
 * A field that is chosen, or made, only when a value comes: for fields within themselves, and for
 * values of more than one kind.
 *
 * @param members - the kinds for the JSON Schema, by their titles
 */
export function later<T>(
  choose: (input: unknown) => Field<T>,
  members: () => { readonly [title: string]: Field<unknown> },
): Field<T> {
  const json: Json = (defs) => ({
    anyOf: Object.entries(members()).map(([title, member]) => ({ title, ...member.json(defs) })),
  });
  return readBy((input, report) => choose(input).read(input, report), json);
}

/** What was said of a value, and where in the input. */
export interface Said<R extends Remark = Remark> {
  readonly remark: R;
  readonly path: readonly PropertyKey[];
}

/** A value as it was read, with what was said of it. */
export interface Parsed<T> {
  readonly value: T;
  readonly faults: readonly Said<Fault>[];
  readonly doubts: readonly Said<Doubt>[];
}

/** Read an input with its field: the value is of use where there is no fault. */
export function parse<T>(field: Field<T>, input: unknown): Parsed<T> {
  const found: Said<Fault>[] = [];
  const doubts: Said<Doubt>[] = [];
  const value = field.read(input, (remark, path = []) => {
    if (isDoubt(remark)) doubts.push({ remark, path });
    else found.push({ remark, path });
  }) as T;
  return { value, faults: found, doubts };
}

/** One of two kinds of object: the first where `key` is given, the second where it is not. */
export const eitherBy = <T>(key: string, where: Field<T>, otherwise: Field<T>): Field<T> =>
  byKey([key], where, otherwise);

/** Text of a bounded length, such as `like`, read into something else; `undefined` from `read` is a fault. */
export function text<T>(
  what: string,
  like: Example,
  read: (text: string) => T | undefined,
  fault: () => Fault,
): Field<T> {
  return reading(
    (input): T | Fault => {
      if (input === undefined || input === null) return sharedFaults.missing(what, like);
      if (typeof input !== 'string') return sharedFaults.wrongType(what, 'text');
      return (input.length > TEXT_LIMIT ? undefined : read(input)) ?? fault();
    },
    () => ({ type: 'string', maxLength: TEXT_LIMIT }),
  );
}

const TEXT_LIMIT = 100;

/** Yes or no. */
export function yesOrNo(what: string): Field<boolean> {
  const read = (input: unknown): boolean | Fault =>
    typeof input === 'boolean' ? input : sharedFaults.wrongType(what, 'true or false');
  return reading(read, () => ({ type: 'boolean' }));
}

/**
 * Reading a result back from plain data.
 *
 * What comes back has been through files and other hands. Each part is read for what it should be, and only
 * what is known is taken over; what is of another kind is refused by its path.
 */
import * as z from 'zod/mini';
import { type Dimension, isDimension } from '../quantity/dimensions';
import { type Fault, fail, InputError, type Issue } from '../quantity/input-error';
import { readMoney } from '../quantity/money';
import { isQuantity, type Quantity, type QuantityData } from '../quantity/quantity';
import { isFaulty, readQuantity } from '../quantity/read-quantity';
import { pathText, refuse } from './calculation';
import * as faults from './faults';
import { plainCopy } from './plain';
import { type Figure, type FigureSet, makeResult, type Result, type ResultParts } from './result';
import type { Param, Params, Words } from './words';

type Plain = Record<string, unknown>;

const refused = (path: string, fault: Fault = faults.notAResult()): never => refuse(path, fault);

const isPlain = (x: unknown): x is Plain => typeof x === 'object' && x !== null && !Array.isArray(x);

const join = (path: string, name: string): string =>
  path === '' || name === '' || name.startsWith('[') ? path + name : `${path}.${name}`;

/** The members of an object, each read by the same reader. */
const membersOf = <T>(x: unknown, path: string, read: (x: unknown, path: string) => T): Record<string, T> =>
  isPlain(x)
    ? Object.fromEntries(Object.entries(x).map(([name, inner]) => [name, read(inner, join(path, name))]))
    : refused(path);

/** Whether plain data is that of a quantity. */
export const isQuantityData = (x: Plain): boolean =>
  typeof x['value'] === 'string' && typeof x['unit'] === 'string' && typeof x['dimension'] === 'string';

/** What has the members of a quantity but is none is a quantity that was spoilt, and no group of figures. */
const isSpoilt = (x: Plain): boolean => 'dimension' in x || ('value' in x && 'unit' in x);

/** A quantity, exactly as it was, in the unit that it was shown in. */
function quantity(x: unknown, path: string): Quantity {
  if (isQuantity(x)) return x;
  if (!isPlain(x) || !isQuantityData(x)) return refused(path);
  const { dimension } = x;
  if (!isDimension(dimension)) return refused(join(path, 'dimension'));
  const q = dimension === 'money' ? readMoney(x, 'the figure') : readQuantity(x, dimension, 'the figure');
  return isFaulty(q) ? refused(path, q) : q;
}

function figure(x: unknown, path: string): Figure {
  if (typeof x === 'string' || typeof x === 'boolean') return x;
  if (Array.isArray(x)) return x.map((item, i) => figure(item, `${path}[${i}]`));
  if (!isPlain(x)) return refused(path);
  if ('says' in x) return quantityOrWords(x, path);
  return isQuantity(x) || isSpoilt(x) ? quantity(x, path) : membersOf(x, path, figure);
}

/** What stands in a place of a sentence. */
function param(x: unknown, path: string): Param {
  if (typeof x === 'string' || typeof x === 'number') return x;
  if (Array.isArray(x)) return x.map((item, i) => stringOrWords(item, `${path}[${i}]`));
  return quantityOrWords(x, path);
}

const stringOrWords = (x: unknown, path: string): string | Words =>
  typeof x === 'string' ? x : words(x, path);

const paramsOf = (x: unknown, path: string): Params => membersOf(x, path, param);

function quantityOrWords(x: unknown, path: string): Quantity | Words {
  if (!isPlain(x)) return refused(path);
  return isQuantity(x) || isQuantityData(x) ? quantity(x, path) : words(x, path);
}

function words(x: unknown, path: string): Words {
  if (!isPlain(x)) return refused(path);
  const { says, params } = x;
  if (typeof says !== 'string') return refused(join(path, 'says'));
  return params === undefined ? { says } : { says, params: paramsOf(params, join(path, 'params')) };
}

const quantityOrText = (x: unknown, path: string): Quantity | string =>
  typeof x === 'string' ? x : quantity(x, path);

/** A schema that reads by a function, whose refusal goes through with its code, sentence and place. */
const readBy = <T>(read: (x: unknown, path: string) => T): z.ZodMiniType<T> =>
  z.pipe(
    z.unknown(),
    z.transform((input, { issues }) => {
      try {
        return read(input, '');
      } catch (error) {
        if (!(error instanceof InputError)) throw error;
        issues.push({ code: 'custom', input, params: { issue: error.issues[0] } });
        return z.NEVER;
      }
    }),
  );

/** Made when first asked for, so that importing the library costs nothing. */
function resultSchema() {
  const text = z.string();
  const one = readBy(quantity);
  const params = z.optional(readBy(paramsOf));
  const saying = z.object({ says: text, params });
  const source = z.object({
    kind: z.enum(['published', 'common-practice', 'closed-form']),
    title: text,
    publisher: z.optional(text),
    edition: z.optional(text),
    locator: z.optional(text),
    url: z.optional(text),
    fromMemory: z.boolean(),
  });
  const step = z.object({
    says: text,
    params,
    formula: text,
    values: readBy((x, path) => membersOf(x, path, quantity)),
    gives: one,
  });
  const value = readBy(quantityOrWords);
  const assumption = z.object({ name: text, value, because: saying, override: saying, source });
  const caution = z.object({
    code: text,
    severity: z.enum(['note', 'warning', 'stop']),
    says: text,
    params,
    limit: z.optional(one),
    actual: z.optional(one),
    input: z.optional(text),
    always: z.optional(z.literal(true)),
    source,
  });
  const take = z.object({
    item: text,
    of: readBy((x, path) => membersOf(x, path, quantityOrText)),
    quantity: one,
    from: text,
    cuts: z.optional(z.array(z.object({ length: one, count: one }))),
  });
  return z.object({
    id: text,
    title: text,
    version: z.number(),
    system: z.enum(['customary', 'metric']),
    figures: readBy((x, path) => membersOf(x, path, figure)),
    working: z.array(step),
    assumed: z.array(assumption),
    cautions: z.array(caution),
    takes: z.array(take),
    sources: z.array(source),
  });
}

/** What was read, its members in the order in which they were given, so that it is written as it was. */
function inOrder(read: unknown, given: unknown): unknown {
  if (isQuantity(read) || !isPlain(given)) {
    return Array.isArray(read) ? read.map((item, i) => inOrder(item, (given as unknown[])[i])) : read;
  }
  const names = Object.keys(given).filter((name) => (read as Plain)[name] !== undefined);
  return Object.fromEntries(names.map((name) => [name, inOrder((read as Plain)[name], given[name])]));
}

let schema: ReturnType<typeof resultSchema> | undefined;

function resultOf(plain: unknown): Result<FigureSet> {
  schema ??= resultSchema();
  const { data, error } = z.safeParse(schema, plain);
  if (data) return makeResult(inOrder(data, plain) as ResultParts<FigureSet>);
  const [issue] = error.issues;
  const inner = issue?.code === 'custom' ? (issue.params?.['issue'] as Issue) : undefined;
  const path = pathText(issue?.path ?? []);
  return inner ? refused(join(path, inner.path), inner) : refused(path);
}

/**
 * Make quantities of plain data again: of what `structuredClone`, a database, a worker or JSON made of a result or
 * of a quantity.
 *
 * @param data - the plain data, or its JSON text
 * @returns the result with its quantities, frozen, or the quantity; both exactly as they were
 * @throws {InputError} `not-a-result`, and the codes of reading a quantity, with the path of the part at fault
 * @example
 * ```ts
 * import { revive, slabVolume } from 'flatwork-reckoner';
 *
 * const result = slabVolume({
 *   outline: { shape: 'rectangle', length: '28 ft', width: '18 ft' },
 *   thickness: '5 in',
 * });
 * const clone = structuredClone(result); // exact plain data, without methods
 * revive(clone).figures.volume.format('yd3'); // '7.78 yd3'
 * revive(clone.figures.volume).format('m3'); // '5.95 m3'
 * ```
 */
export function revive<D extends Dimension>(data: QuantityData<D>): Quantity<D>;
export function revive<F extends FigureSet>(data: ResultParts<F>): Result<F>;
/** The same for what may be anything: JSON text, or what came out of a file. */
export function revive(data: unknown): Result<Record<string, Figure>>;
export function revive(data: unknown): unknown {
  const plain = plainCopy(parsed(data));
  if (isQuantity(plain) || (isPlain(plain) && isQuantityData(plain))) return quantity(plain, '');
  return resultOf(plain);
}

function parsed(json: unknown): unknown {
  if (typeof json !== 'string') return json;
  try {
    return JSON.parse(json);
  } catch {
    return fail(faults.notAResult());
  }
}

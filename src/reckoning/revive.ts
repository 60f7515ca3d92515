/**
 * Reading a result back from JSON.
 *
 * What comes back has been through files and other hands. Each part is read for what it should be, and only
 * what is known is taken over, in the order in which it stands; what is of another kind is refused by its path.
 */
import { type Dimension, isDimension } from '../quantity/dimensions';
import * as faults from '../quantity/faults';
import { type Fault, fail } from '../quantity/input-error';
import { readMoney } from '../quantity/money';
import { isFaulty, isQuantity, type Quantity, type QuantityData, readQuantity } from '../quantity/quantity';
import { refuse } from './calculation';
import { plainCopy } from './plain';
import { type Figure, type FigureSet, makeResult, type Result, type ResultParts } from './result';

type Plain = Record<string, unknown>;

/** Reads a part, or refuses it by its path. */
type Part = (x: unknown, path: string) => unknown;

const refused = (path: string, fault: Fault = faults.notAResult()): never => refuse(path, fault);

const isPlain = (x: unknown): x is Plain => typeof x === 'object' && x !== null && !Array.isArray(x);

const join = (path: string, name: string): string => (path === '' ? name : `${path}.${name}`);

/** A part of which this must be true. */
const only =
  (holds: (x: unknown) => boolean): Part =>
  (x, path) =>
    holds(x) ? x : refused(path);

const TEXT = only((x) => typeof x === 'string');

const oneOf = (...words: readonly unknown[]): Part => only((x) => words.includes(x));

const listOf =
  (part: Part): Part =>
  (x, path) =>
    Array.isArray(x) ? x.map((item, i) => part(item, `${path}[${i}]`)) : refused(path);

/** An object with these parts; those behind may be left out. */
function parts(must: Readonly<Record<string, Part>>, may: Readonly<Record<string, Part>> = {}): Part {
  const known = new Map(Object.entries({ ...must, ...may }));
  return (x, path) => {
    if (!isPlain(x)) return refused(path);
    for (const name of Object.keys(must)) if (x[name] === undefined) refused(join(path, name));
    const read = Object.entries(x).flatMap(([name, inner]) => {
      const part = inner === undefined ? undefined : known.get(name);
      return part ? [[name, part(inner, join(path, name))] as const] : [];
    });
    return Object.fromEntries(read);
  };
}

/** An object whose members are all of one kind. */
const mapOf =
  (part: Part): Part =>
  (x, path) =>
    isPlain(x)
      ? Object.fromEntries(Object.entries(x).map(([name, inner]) => [name, part(inner, join(path, name))]))
      : refused(path);

const isQuantityData = (x: Plain): boolean =>
  typeof x['value'] === 'string' && typeof x['unit'] === 'string' && typeof x['dimension'] === 'string';

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
  return isQuantity(x) || isQuantityData(x) ? quantity(x, path) : figures(x, path);
}

const figures = mapOf(figure) as (x: unknown, path: string) => Record<string, Figure>;

const quantities = mapOf(quantity);

const quantityOr =
  (other: Part): Part =>
  (x, path) =>
    isQuantity(x) || (isPlain(x) && isQuantityData(x)) ? quantity(x, path) : other(x, path);

/** What stands in a place of a sentence. */
function param(x: unknown, path: string): unknown {
  if (typeof x === 'string' || Number.isFinite(x)) return x;
  if (Array.isArray(x)) return listOf(TEXT)(x, path);
  return quantityOr(parts({ says: TEXT }, { params }))(x, path);
}

function params(x: unknown, path: string): unknown {
  return mapOf(param)(x, path);
}

/** Made when first asked for, so that importing the library costs nothing. */
function resultPart(): Part {
  const source = parts(
    {
      kind: oneOf('published', 'common-practice', 'closed-form'),
      title: TEXT,
      fromMemory: oneOf(true, false),
    },
    { publisher: TEXT, edition: TEXT, locator: TEXT, url: TEXT },
  );
  const words = parts({ says: TEXT }, { params });
  const caution = parts(
    { code: TEXT, severity: oneOf('note', 'warning', 'stop'), says: TEXT, source },
    { params, limit: quantity, actual: quantity, input: TEXT, always: oneOf(true) },
  );
  return parts({
    id: TEXT,
    title: TEXT,
    version: only(Number.isFinite),
    system: oneOf('customary', 'metric'),
    figures,
    working: listOf(parts({ says: TEXT, formula: TEXT, values: quantities, gives: quantity }, { params })),
    assumed: listOf(parts({ name: TEXT, value: quantityOr(words), because: words, override: words, source })),
    cautions: listOf(caution),
    sources: listOf(source),
  });
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
  return makeResult(resultPart()(plain, '') as ResultParts<FigureSet & Record<string, Figure>>);
}

function parsed(json: unknown): unknown {
  if (typeof json !== 'string') return json;
  try {
    return JSON.parse(json);
  } catch {
    return fail(faults.notAResult());
  }
}

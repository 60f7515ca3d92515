/**
 * Reading a result back from JSON.
 *
 * What comes back has been through files and other hands. Each part is read for what it should be, and only
 * what is known is taken over, in the order in which it stands; what is of another kind is refused by its path.
 */
import type { Dimension } from '../quantity/dimensions';
import * as faults from '../quantity/faults';
import { type Fault, fail } from '../quantity/input-error';
import { readMoney } from '../quantity/money';
import { isFaulty, isQuantity, type Quantity, readQuantity } from '../quantity/quantity';
import { unitIds } from '../quantity/units';
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

const isQuantityJson = (x: Plain): boolean =>
  typeof x['value'] === 'string' && typeof x['unit'] === 'string' && typeof x['dimension'] === 'string';

/** A quantity, exactly as it was, in the unit that it was shown in. */
function quantity(x: unknown, path: string): Quantity {
  if (isQuantity(x)) return x;
  if (!isPlain(x) || !isQuantityJson(x)) return refused(path);
  const dimension = x['dimension'] as Dimension;
  const pair = { value: x['value'], unit: x['unit'] };
  const ids = dimension === 'money' ? [x['unit']] : unitIds(dimension);
  if (ids.length === 0) refused(join(path, 'dimension'));
  const q =
    dimension === 'money' ? readMoney(pair, 'the figure') : readQuantity(pair, dimension, 'the figure');
  if (isFaulty(q)) return refused(path, q);
  const shownIn = x['shownIn'];
  if (shownIn === undefined) return q;
  return ids.includes(shownIn) ? q.in(shownIn as string) : refused(join(path, 'shownIn'));
}

function figure(x: unknown, path: string): Figure {
  if (typeof x === 'string' || typeof x === 'boolean') return x;
  if (Array.isArray(x)) return x.map((item, i) => figure(item, `${path}[${i}]`));
  if (!isPlain(x)) return refused(path);
  return isQuantity(x) || isQuantityJson(x) ? quantity(x, path) : figures(x, path);
}

const figures = (x: unknown, path: string): Record<string, Figure> =>
  isPlain(x)
    ? Object.fromEntries(Object.entries(x).map(([name, inner]) => [name, figure(inner, join(path, name))]))
    : refused(path);

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
  const caution = parts(
    { code: TEXT, severity: oneOf('note', 'warning', 'stop'), sentence: TEXT, source },
    { limit: quantity, actual: quantity, input: TEXT, always: oneOf(true) },
  );
  return parts({
    id: TEXT,
    title: TEXT,
    version: only(Number.isFinite),
    figures,
    working: listOf(parts({ what: TEXT, formula: TEXT, put: TEXT, gives: TEXT })),
    assumed: listOf(parts({ name: TEXT, value: TEXT, because: TEXT, override: TEXT, source })),
    cautions: listOf(caution),
    sources: listOf(source),
  });
}

/**
 * Read a result back from its JSON.
 *
 * @param json - what `JSON.parse` made of a result, or the text itself
 * @returns the result with its quantities, frozen; figures are exactly those that were written
 * @throws {InputError} `not-a-result`, and the codes of reading a quantity, with the path of the part at fault
 * @example
 * ```ts
 * import { resultFromJson, slabVolume } from 'flatwork-reckoner';
 *
 * const result = slabVolume({
 *   outline: { shape: 'rectangle', length: '28 ft', width: '18 ft' },
 *   thickness: '5 in',
 * });
 * const back = resultFromJson(JSON.stringify(result));
 * JSON.stringify(back) === JSON.stringify(result); // true
 * ```
 */
export function resultFromJson(json: unknown): Result<Record<string, Figure>> {
  const read = resultPart()(plainCopy(parsed(json)), '');
  return makeResult(read as ResultParts<FigureSet & Record<string, Figure>>);
}

function parsed(json: unknown): unknown {
  if (typeof json !== 'string') return json;
  try {
    return JSON.parse(json);
  } catch {
    return fail(faults.notAResult());
  }
}

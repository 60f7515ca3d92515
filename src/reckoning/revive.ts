/** Reading a result back from JSON. */
import type { Dimension } from '../quantity/dimensions';
import * as faults from '../quantity/faults';
import { fail } from '../quantity/input-error';
import { readMoney } from '../quantity/money';
import { isFaulty, readQuantity } from '../quantity/quantity';
import { unitIds } from '../quantity/units';
import { plainCopy } from './plain';
import { type Figure, type FigureSet, makeResult, type Result, type ResultParts } from './result';

type Plain = Record<string, unknown>;

const isPlain = (x: unknown): x is Plain => typeof x === 'object' && x !== null && !Array.isArray(x);

const isQuantityJson = (x: Plain): boolean =>
  typeof x['value'] === 'string' && typeof x['unit'] === 'string' && typeof x['dimension'] === 'string';

function revived(x: unknown): unknown {
  if (x === null || typeof x === 'number') return fail(faults.notAResult());
  if (Array.isArray(x)) return x.map(revived);
  if (!isPlain(x)) return x;
  if (!isQuantityJson(x)) return Object.fromEntries(Object.entries(x).map(([k, v]) => [k, revived(v)]));
  const pair = { value: x['value'], unit: x['unit'] };
  const dimension = x['dimension'] as Dimension;
  if (dimension !== 'money' && unitIds(dimension).length === 0) return fail(faults.notAResult());
  const q =
    dimension === 'money' ? readMoney(pair, 'the figure') : readQuantity(pair, dimension, 'the figure');
  if (isFaulty(q)) return fail(q);
  return typeof x['shownIn'] === 'string' ? q.in(x['shownIn']) : q;
}

const isListOfObjects = (x: unknown): boolean => Array.isArray(x) && x.every(isPlain);

const LISTS = ['working', 'assumed', 'cautions', 'sources'] as const;

/**
 * Read a result back from its JSON.
 *
 * @param json - what `JSON.parse` made of a result, or the text itself
 * @returns the result with its quantities, frozen; figures are exactly those that were written
 * @throws {InputError} `not-a-result`, and the codes of reading a quantity
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
  const data = plainCopy(parsed(json));
  if (!isPlain(data) || !isPlain(data['figures']) || LISTS.some((k) => !isListOfObjects(data[k]))) {
    return fail(faults.notAResult());
  }
  if (
    typeof data['id'] !== 'string' ||
    typeof data['title'] !== 'string' ||
    typeof data['version'] !== 'number'
  ) {
    return fail(faults.notAResult());
  }
  const { version, ...rest } = data;
  return makeResult({ ...(revived(rest) as object), version } as ResultParts<
    FigureSet & Record<string, Figure>
  >);
}

function parsed(json: unknown): unknown {
  if (typeof json !== 'string') return json;
  try {
    return JSON.parse(json);
  } catch {
    return fail(faults.notAResult());
  }
}

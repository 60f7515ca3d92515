/** What is laid before somebody as a check must be one: as `estimateCheck` gave it, or its plain data. */
import type { EstimateCheck } from '../opinion/estimate-check';
import { fault } from '../quantity/faults';
import { isQuantity, type QuantityData } from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import type { FigureSet, ResultParts } from '../reckoning/parts';
import { plainCopy } from '../reckoning/plain';
import { isRecord } from '../reckoning/record';
import { isQuantityData, revive } from '../reckoning/revive';

type Check = EstimateCheck<FigureSet>;

const notACheck = (): never =>
  refuse(
    'check',
    fault('not-a-result', 'this is no check; give what estimateCheck returned, or its JSON as data'),
  );

/** Plain data with its quantities made again. */
function alive(x: unknown): unknown {
  if (Array.isArray(x)) return x.map(alive);
  if (!isRecord(x) || isQuantity(x)) return x;
  if (isQuantityData(x)) return revive(x as unknown as QuantityData);
  return Object.fromEntries(
    Object.entries(x).map(([name, one]) => [
      name,
      name === 'result' ? revive(one as ResultParts<FigureSet>) : alive(one),
    ]),
  );
}

type Reads = (x: unknown) => boolean;

const text: Reads = (x) => typeof x === 'string';
const listOf =
  (one: Reads): Reads =>
  (x) =>
    Array.isArray(x) && x.every(one);
const having =
  (members: { readonly [name: string]: Reads }): Reads =>
  (x) =>
    isRecord(x) && Object.entries(members).every(([name, reads]) => reads(x[name]));

const maybe =
  (reads: Reads): Reads =>
  (x) =>
    x === undefined || reads(x);
const says = having({ says: text });
const slip = having({ code: text, says, input: maybe(text), figure: maybe(text) });
const quantity: Reads = isQuantity;

const isCheck = having({
  title: text,
  verdict: text,
  says,
  result: isRecord,
  claims: listOf(
    having({
      figure: text,
      verdict: text,
      claimed: quantity,
      reckoned: quantity,
      difference: quantity,
      step: quantity,
      steps: quantity,
      share: maybe(quantity),
      line: maybe(text),
    }),
  ),
  slips: listOf(
    having({
      slips: listOf(slip),
      gives: listOf(having({ figure: text, would: quantity })),
      explains: listOf(text),
      elsewhere: listOf(slip),
    }),
  ),
});

/**
 * A check with its quantities, from what `estimateCheck` gave or what JSON or a clone made of that.
 *
 * @throws {InputError} `not-a-result`
 */
export function readCheck(given: Check): Check {
  if (isCheck(given)) return given;
  const check = alive(plainCopy(given));
  return isCheck(check) ? (check as Check) : notACheck();
}

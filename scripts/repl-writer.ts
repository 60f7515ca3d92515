/** How the REPL prints what was typed: a result as its worksheet, a check as its sheet, a length as on a tape, everything else as Node does. */
import { inspect } from 'node:util';
import type { EstimateCheck } from '../src/opinion/index';
import { isQuantity } from '../src/quantity/quantity';
import type { ResultParts } from '../src/reckoning/parts';
import { checkSheet, quantityText, worksheet } from '../src/report/index';

const isResult = (x: unknown): x is ResultParts<object> =>
  typeof x === 'object' && x !== null && 'figures' in x && 'working' in x;

const isCheck = (x: unknown): x is EstimateCheck =>
  typeof x === 'object' && x !== null && 'claims' in x && 'slips' in x;

export function written(value: unknown): string {
  if (isResult(value)) return worksheet(value);
  if (isCheck(value)) return checkSheet(value);
  return isQuantity(value) && value.dimension === 'length'
    ? quantityText(value, { feet: 'fractions' })
    : inspect(value);
}

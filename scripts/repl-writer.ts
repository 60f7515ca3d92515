/** How the REPL prints what was typed: a result as its worksheet, a check as its sheet, everything else as Node does. */
import { inspect } from 'node:util';
import type { EstimateCheck } from '../src/opinion/index';
import type { ResultParts } from '../src/reckoning/parts';
import { checkSheet, worksheet } from '../src/report/index';

const isResult = (x: unknown): x is ResultParts<object> =>
  typeof x === 'object' && x !== null && 'figures' in x && 'working' in x;

const isCheck = (x: unknown): x is EstimateCheck =>
  typeof x === 'object' && x !== null && 'claims' in x && 'slips' in x;

export const written = (value: unknown): string =>
  isResult(value) ? worksheet(value) : isCheck(value) ? checkSheet(value) : inspect(value);

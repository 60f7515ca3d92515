/** How the REPL prints what was typed: a result as its worksheet, everything else as Node does. */
import { inspect } from 'node:util';
import type { ResultParts } from '../src/reckoning/parts';
import { worksheet } from '../src/report/index';

const isResult = (x: unknown): x is ResultParts<object> =>
  typeof x === 'object' && x !== null && 'figures' in x && 'working' in x;

export const written = (value: unknown): string => (isResult(value) ? worksheet(value) : inspect(value));

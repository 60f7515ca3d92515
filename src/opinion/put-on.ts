/**
 * An allowance that was put on where none is asked for: who writes down 8.56 yd3 for a slab of 7.78 has 10% in it
 * already, and orders too much when it is put on again.
 */
import { ratio } from '../quantity/make';
import type { Quantity } from '../quantity/quantity';
import { isRecord } from '../reckoning/record';
import { say, type Words } from '../reckoning/words';
import type { Scene } from './scene';
import type { Slip, Twist } from './slip';

/** The shares that are put on, in percent, with how common each is. Common practice. */
const SHARES: readonly (readonly [percent: number, weight: number])[] = [
  [10, 12],
  [5, 12],
  [8, 1.9],
  [7, 3],
  [15, 4],
  [3, 2],
  [12, 2],
];

/** What is ordered with an allowance. */
const ORDERED: ReadonlySet<string> = /*#__PURE__*/ new Set(['volume', 'mass']);
const ALLOWANCE = /allowance|waste/i;

/** Whether an allowance is among what was given: then that one is taken wrongly, and no other put on. */
function asksForOne(given: unknown): boolean {
  if (Array.isArray(given)) return given.some(asksForOne);
  return (
    isRecord(given) && Object.entries(given).some(([key, value]) => ALLOWANCE.test(key) || asksForOne(value))
  );
}

/** An allowance on a claimed figure. */
export interface PutOn extends Pick<Slip, 'code' | 'weight' | 'beside'> {
  readonly twist: Twist;
  readonly says: (figure: string, reckoned: Quantity) => Words;
}

const PUT_ON: readonly PutOn[] = /*#__PURE__*/ SHARES.map(([percent, weight]) => ({
  code: 'allowance-put-on',
  weight,
  twist: { unit: 1, times: [String(100 + percent), '100'] },
  // Nothing tells 8% from a division by 25: both are told.
  beside: true,
  says: (figure, reckoned) =>
    say`${{ figure }}, ${{ reckoned }}, has an allowance of ${{ share: ratio(`${percent}%`) }} put on it that is not asked for here`,
}));

/** What may have been put on the figures of a calculation that asks for no allowance. */
export function putOn({ input, result }: Scene): (reckoned: Quantity) => readonly PutOn[] {
  const may = !('allowance' in result.figures) && !asksForOne(input);
  return ({ dimension }) => (may && ORDERED.has(dimension) ? PUT_ON : []);
}

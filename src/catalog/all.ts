/**
 * Every calculation at once, for servers and tests: loads the whole library.
 *
 * @packageDocumentation
 */

import type { Calculation } from '../reckoning/calculation';
import type { Figure } from '../reckoning/result';
import { every } from './generated/every';

/** A calculation whatever its input is, as `estimateCheck` and the like take it. */
export type AnyCalculation = Calculation<unknown, Record<string, Figure>>;

/**
 * Every calculation, trade by trade in the order of a job.
 *
 * @example
 * ```ts
 * import { calculations } from 'flatwork-reckoner/catalog/all';
 *
 * const slope = calculations.find(({ id }) => id === 'slope');
 * const attempt = slope?.attempt({ slope: '2%', over: '10 ft' });
 * attempt?.ok; // true
 * ```
 */
export const calculations: readonly AnyCalculation[] = /*#__PURE__*/ Object.freeze(
  every as unknown as AnyCalculation[],
);

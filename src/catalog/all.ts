/**
 * Every calculation at once, for servers and tests: loads the whole library.
 *
 * @packageDocumentation
 */
import type { Attempt } from '../reckoning/calculation';
import type { JsonSchema } from '../reckoning/fields';
import type { Limit } from '../reckoning/limits';
import type { Figure } from '../reckoning/result';
import type { Source } from '../reckoning/source';
import type { StandardSchema } from '../reckoning/standard';
import { every } from './generated/every';

/** A calculation whatever its input is. */
export interface AnyCalculation {
  /** Id of the calculation. */
  readonly id: string;
  /** What it works out, in a few words. */
  readonly title: string;
  /** Version of the calculation. */
  readonly version: number;
  /** JSON Schema of its input. */
  readonly inputSchema: JsonSchema;
  /** Where its rules come from. */
  readonly sources: readonly Source[];
  /** How large a job it takes at once, beside the lengths of its lists, which are in the schema. */
  readonly limits: readonly Limit[];
  /** The Standard Schema interface, for form libraries and the like. */
  readonly '~standard': StandardSchema<unknown>;
  /** Reckon with input of any kind; never throws. */
  attempt(input: unknown): Attempt<Record<string, Figure>>;
}

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

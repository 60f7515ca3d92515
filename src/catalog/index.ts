/**
 * The list of all calculations, for front-ends that build their menus and forms from it.
 *
 * The list is plain data and small; what belongs to one calculation, itself among it, comes with
 * {@link loadCalculation} when it is wanted, and a bundler puts each in a file of its own.
 *
 * @packageDocumentation
 */
import type { JsonSchema } from '../reckoning/fields';
import type { AnyCalculation } from './all';
import { withUnits } from './form';
import list from './generated/list.json';
import { loaders } from './generated/loaders';

export type { AnyCalculation } from './all';
export { formIn } from './form';
export { jobSchema } from './job-schema';
export { openApi, type RunOutcome, runCalculation, type ToolDescription, toolDescriptions } from './run';

/** A calculation as it stands in a menu: plain data. */
export interface CatalogEntry {
  /** Id of the calculation, as {@link loadCalculation} takes it. */
  readonly id: string;
  /** What it works out, in a few words. */
  readonly title: string;
  /** What it works out, in a sentence. */
  readonly summary: string;
  /** The trade it belongs to, to be listed under. */
  readonly trade: string;
  /** Name under which the package exports it. */
  readonly name: string;
  /** Raised when the figures for an input change. */
  readonly version: number;
}

/** What describes a calculation to people and to programs, in words and in JSON Schema. */
export interface Description {
  /**
   * The input as a form asks for it. Every field has a title and what has to be said about it, and examples;
   * quantities are text with `x-dimension` and `x-units`. Kinds of a thing are `oneOf` with titles, told apart by
   * the member named in `x-discriminator`. What is assumed for a field left out is in its words, and never its
   * `default`: a form would fill it in, and the result no longer list it among what it assumes.
   */
  readonly formSchema: JsonSchema;
  /** The input in short, as programs that call tools take it: one object, kinds of a thing in one. */
  readonly toolSchema: JsonSchema;
  /** The figures of a result as JSON: each with its label, what it is, and its `x-dimension`. */
  readonly outputSchema: JsonSchema;
}

/** A calculation with all that describes it. */
export interface LoadedCalculation extends CatalogEntry, Description {
  /** The calculation itself. */
  readonly calculation: AnyCalculation;
}

/**
 * Every calculation, trade by trade in the order of a job.
 *
 * @example
 * ```ts
 * import { catalog } from 'flatwork-reckoner/catalog';
 *
 * catalog.filter(({ trade }) => trade === 'Steps').map(({ title }) => title); // [ 'Ramp layout', 'Step layout' ]
 * ```
 */
export const catalog: readonly CatalogEntry[] = /*#__PURE__*/ Object.freeze(
  /*#__PURE__*/ list.map((entry) => Object.freeze(entry)),
);

/**
 * Load a calculation and what describes it.
 *
 * @param id - its id in the {@link catalog}
 * @returns the entry, the calculation, and the schemas of its form, for calling it as a tool, and of its figures;
 * `undefined` for an id that is not listed
 * @example
 * ```ts
 * import { loadCalculation } from 'flatwork-reckoner/catalog';
 *
 * const slope = await loadCalculation('slope');
 * const attempt = slope?.calculation.attempt({ slope: '2%', over: '10 ft' });
 * attempt?.ok; // true
 * ```
 */
export async function loadCalculation(id: string): Promise<LoadedCalculation | undefined> {
  const entry = catalog.find((each) => each.id === id);
  const load = entry && loaders[entry.id];
  if (!load) return undefined;
  const [calculation, { formSchema, toolSchema, outputSchema }] = await load();
  return Object.freeze({
    ...entry,
    calculation,
    formSchema: withUnits(formSchema),
    toolSchema,
    outputSchema,
  });
}

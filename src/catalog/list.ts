/** What each calculation is listed by, and how it is loaded with what describes it. */
import type { AnyCalculation } from './all';
import type { Description } from './description';
import { withUnits } from './form';
import list from './generated/list.json';
import { loaders } from './generated/loaders';

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

/**
 * The list of all calculations, for front-ends that build their menus and forms from it.
 *
 * The list is plain data and small; what belongs to one calculation, itself among it, comes with
 * {@link loadCalculation} when it is wanted, and a bundler puts each in a file of its own.
 *
 * @packageDocumentation
 */
export type { AnyCalculation } from './all';
export type { Description } from './description';
export { formIn } from './form';
export { jobSchema } from './job-schema';
export {
  type CatalogEntry,
  catalog,
  type LoadedCalculation,
  loadCalculation,
} from './list';
export { openApi, type RunOutcome, runCalculation, type ToolDescription, toolDescriptions } from './run';

/**
 * The list of all calculations, for front-ends that build their menus and forms from it.
 *
 * @packageDocumentation
 */
import { baseTonnage } from '../base/base-tonnage';
import { concreteOrder } from '../concrete/concrete-order';
import { probedVolume } from '../concrete/probed-volume';
import { slabVolume } from '../concrete/slab-volume';
import { stepVolume } from '../concrete/step-volume';
import { squareCheck } from '../forms/square-check';
import { drainageCheck } from '../grade/drainage-check';
import { slopeOf } from '../grade/slope';
import { jointSpacing } from '../joints/joint-spacing';
import type { Attempt, Calculation } from '../reckoning/calculation';
import type { JsonSchema } from '../reckoning/fields';
import type { Figure, FigureSet } from '../reckoning/result';
import type { Source } from '../reckoning/source';
import { barCutting } from '../steel/bar-cutting';
import { barSize } from '../steel/bar-size';
import { dowelLayout } from '../steel/dowel-layout';
import { fibreDosage } from '../steel/fibre-dosage';
import { lapLength } from '../steel/lap-length';
import { meshLayout } from '../steel/mesh-layout';
import { meshStyle } from '../steel/mesh-style';
import { rebarLayout } from '../steel/rebar-layout';
import { steelMinimum } from '../steel/steel-minimum';
import { steelPlacement } from '../steel/steel-placement';

/** A calculation as a front-end sees it, whatever its input. */
export interface CatalogEntry {
  /** Id of the calculation. */
  readonly id: string;
  /** What it reckons, in a few words. */
  readonly title: string;
  /** Version of the calculation. */
  readonly version: number;
  /** JSON Schema of its input. */
  readonly inputSchema: JsonSchema;
  /** Where its rules come from. */
  readonly sources: readonly Source[];
  /** Reckon with input of any kind; never throws. */
  attempt(input: unknown): Attempt<Record<string, Figure>>;
}

const entry = <I, F extends FigureSet>(calculation: Calculation<I, F>): CatalogEntry =>
  calculation as unknown as CatalogEntry;

/**
 * Every calculation, in the order of a job.
 *
 * @example
 * ```ts
 * import { catalog } from 'flatwork-reckoner/catalog';
 *
 * const slope = catalog.find(({ id }) => id === 'slope');
 * const attempt = slope?.attempt({ slope: '2%', over: '10 ft' });
 * attempt?.ok; // true
 * ```
 */
export const catalog: readonly CatalogEntry[] = /*#__PURE__*/ Object.freeze([
  entry(slabVolume),
  entry(probedVolume),
  entry(stepVolume),
  entry(baseTonnage),
  entry(squareCheck),
  entry(slopeOf),
  entry(drainageCheck),
  entry(jointSpacing),
  entry(rebarLayout),
  entry(meshLayout),
  entry(dowelLayout),
  entry(lapLength),
  entry(steelMinimum),
  entry(steelPlacement),
  entry(barCutting),
  entry(barSize),
  entry(meshStyle),
  entry(fibreDosage),
  entry(concreteOrder),
]);

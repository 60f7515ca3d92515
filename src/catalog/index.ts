/**
 * The list of all calculations, for front-ends that build their menus and forms from it.
 *
 * @packageDocumentation
 */
import { baseTonnage } from '../base/base-tonnage';
import { excavation } from '../base/excavation';
import { curbVolume } from '../concrete/curb-volume';
import { footingVolume } from '../concrete/footing-volume';
import { pierVolume } from '../concrete/pier-volume';
import { probedVolume } from '../concrete/probed-volume';
import { slabVolume } from '../concrete/slab-volume';
import { stepVolume } from '../concrete/step-volume';
import { wallVolume } from '../concrete/wall-volume';
import { squareCheck } from '../forms/square-check';
import { crossSlope } from '../grade/cross-slope';
import { drainageCheck } from '../grade/drainage-check';
import { formGrades } from '../grade/form-grades';
import { gradeCorrection } from '../grade/grade-correction';
import { levelNotes } from '../grade/level-notes';
import { runoff } from '../grade/runoff';
import { slopeOf } from '../grade/slope';
import { straightedge } from '../grade/straightedge';
import { jointLayout } from '../joints/joint-layout';
import { jointSpacing } from '../joints/joint-spacing';
import { relativeStiffness } from '../joints/relative-stiffness';
import { bagCount } from '../pour/bag-count';
import { concreteOrder } from '../pour/concrete-order';
import { sawWindow } from '../pour/saw-window';
import type { Attempt, Calculation } from '../reckoning/calculation';
import type { JsonSchema } from '../reckoning/fields';
import type { Limit } from '../reckoning/limits';
import type { Figure, FigureSet } from '../reckoning/result';
import type { Source } from '../reckoning/source';
import type { StandardSchema } from '../reckoning/standard';
import { barCutting } from '../steel/bar-cutting';
import { barSize } from '../steel/bar-size';
import { dowelLayout } from '../steel/dowel-layout';
import { fiberDosage } from '../steel/fiber-dosage';
import { lapLength } from '../steel/lap-length';
import { meshLayout } from '../steel/mesh-layout';
import { meshStyle } from '../steel/mesh-style';
import { rebarLayout } from '../steel/rebar-layout';
import { steelMinimum } from '../steel/steel-minimum';
import { steelPlacement } from '../steel/steel-placement';
import { stepLayout } from '../steps/step-layout';

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
  /** How large a job it takes at once, beside the lengths of its lists, which are in the schema. */
  readonly limits: readonly Limit[];
  /** The Standard Schema interface, for form libraries and the like. */
  readonly '~standard': StandardSchema<unknown>;
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
  entry(stepLayout),
  entry(footingVolume),
  entry(wallVolume),
  entry(pierVolume),
  entry(curbVolume),
  entry(excavation),
  entry(baseTonnage),
  entry(squareCheck),
  entry(slopeOf),
  entry(drainageCheck),
  entry(formGrades),
  entry(gradeCorrection),
  entry(levelNotes),
  entry(crossSlope),
  entry(runoff),
  entry(straightedge),
  entry(jointSpacing),
  entry(jointLayout),
  entry(sawWindow),
  entry(relativeStiffness),
  entry(rebarLayout),
  entry(meshLayout),
  entry(dowelLayout),
  entry(lapLength),
  entry(steelMinimum),
  entry(steelPlacement),
  entry(barCutting),
  entry(barSize),
  entry(meshStyle),
  entry(fiberDosage),
  entry(concreteOrder),
  entry(bagCount),
]);

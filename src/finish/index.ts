/** Finish: what goes onto the slab and into its joints, and the ground beside it. */
export {
  type BackfillFigures,
  type BackfillInput,
  backfill,
  type GapInput,
  type GroundInput,
  type PublishedSeeding,
  type SeedInput,
  type SeedPublished,
  type StrawInput,
  type TopsoilInput,
} from './backfill';
export {
  type ColorInput,
  type FilledJointsInput,
  type FinishMaterialsFigures,
  type FinishMaterialsInput,
  finishMaterials,
  type LiquidInput,
  type LiquidNeeded,
  type PowderInput,
  type PowderNeeded,
  type PublishedCoverage,
} from './finish-materials';

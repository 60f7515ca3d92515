/** Finish: what goes onto the slab and into its joints. */
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

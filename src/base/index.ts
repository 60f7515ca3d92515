/** Earth and base: what is dug out, and what is brought in under the concrete. */
export type { BaseTonnageFigures, TonFigures, TonKind } from './base-figures';
export { baseTonnage } from './base-tonnage';
export type { BaseTonnageInput } from './base-tonnage-input';
export {
  type ExcavationFigures,
  excavation,
  type FillFigures,
  type HaulFigures,
  type ReplacementFigures,
  type RunOut,
  type SectionFigures,
  type ShrinkConvention,
  type SideFigures,
  type StretchFigures,
} from './excavation';
export type {
  AreaSectionInput,
  CellInput,
  EarthInput,
  ExcavationInput,
  GridInput,
  HaulInput,
  PitInput,
  RaisedInput,
  ReplacementInput,
  SectionPlace,
  SectionsInput,
  ShrinkInput,
  TrapezoidSectionInput,
  TrenchInput,
} from './excavation-input';
export type { GeotextileFigures, GeotextileInput } from './geotextile';
export type { Compactor, LiftFigures } from './lifts';
export type { BaseMaterial } from './materials';
export { type VaporRetarderFigures, type VaporRetarderInput, vaporRetarder } from './vapor-retarder';

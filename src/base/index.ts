/** Earth and base: what is dug out, and what is brought in under the concrete. */
export {
  type BaseTonnageFigures,
  type BaseTonnageInput,
  baseTonnage,
  type TonFigures,
  type TonKind,
} from './base-tonnage';
export {
  type AreaSectionInput,
  type CellInput,
  type EarthInput,
  type ExcavationFigures,
  type ExcavationInput,
  excavation,
  type FillFigures,
  type GridInput,
  type HaulFigures,
  type HaulInput,
  type PitInput,
  type RaisedInput,
  type ReplacementFigures,
  type ReplacementInput,
  type RunOut,
  type SectionFigures,
  type SectionPlace,
  type SectionsInput,
  type ShrinkConvention,
  type ShrinkInput,
  type SideFigures,
  type StretchFigures,
  type TrapezoidSectionInput,
  type TrenchInput,
} from './excavation';
export type { GeotextileFigures, GeotextileInput } from './geotextile';
export type { Compactor, LiftFigures } from './lifts';
export type { BaseMaterial } from './materials';

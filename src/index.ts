/**
 * Flatwork reckoner: quantities and checks for concrete flatwork.
 *
 * @packageDocumentation
 */
export {
  type BaseTonnageFigures,
  type BaseTonnageInput,
  baseTonnage,
} from './base/base-tonnage';
export {
  type ConcreteOrderFigures,
  type ConcreteOrderInput,
  concreteOrder,
} from './concrete/concrete-order';
export {
  type ProbedVolumeFigures,
  type ProbedVolumeInput,
  type ProbeInput,
  probedVolume,
} from './concrete/probed-volume';
export { type SlabVolumeFigures, type SlabVolumeInput, slabVolume } from './concrete/slab-volume';
export { type StepVolumeFigures, type StepVolumeInput, stepVolume } from './concrete/step-volume';
export type { BeamInput, EdgeInput } from './concrete/thickened';
export type {
  PlaceOfThickness,
  ThicknessInput,
  ThicknessPlaneInput,
  ThicknessTaperInput,
} from './concrete/thickness';
export { type SquareCheckFigures, type SquareCheckInput, squareCheck } from './forms/square-check';
export type {
  CircleInput,
  CombinedInput,
  CurvedInput,
  CurvedPointInput,
  LegInput,
  LengthInput,
  LInput,
  OffsetsInput,
  OutlineInput,
  PointInput,
  PolygonInput,
  RectangleInput,
  RegularInput,
  RingInput,
  SectorInput,
  TapedInput,
  TrapezoidInput,
  TriangleInput,
  UInput,
  WalkInput,
} from './geometry/outline';
export type { CircleOpeningInput, OpeningInput, RectangleOpeningInput, RegionInput } from './geometry/region';
export { type CrossSlopeFigures, type CrossSlopeInput, crossSlope } from './grade/cross-slope';
export {
  type DrainageCheck,
  type DrainageCheckFigures,
  type DrainageCheckInput,
  type DrainedSurface,
  drainageCheck,
} from './grade/drainage-check';
export {
  type ElevationBoundInput,
  type FallFigure,
  type FormGradesFigures,
  type FormGradesInput,
  type FormSquareInput,
  formGrades,
  type RequiredFallInput,
  type StakeFigure,
  type StakeInput,
} from './grade/form-grades';
export {
  type GradeCorrectionFigures,
  type GradeCorrectionInput,
  gradeCorrection,
  type SillAfterFigure,
  type SpotFallInput,
  type SpotMoveFigure,
  type SpotSillInput,
  type SpotThicknessInput,
} from './grade/grade-correction';
export {
  type BenchMarkInput,
  type LevelledPoint,
  type LevelNotesByLaserInput,
  type LevelNotesByRodInput,
  type LevelNotesByStringInput,
  type LevelNotesByWaterInput,
  type LevelNotesFigures,
  type LevelNotesInput,
  type LevelRowInput,
  levelNotes,
} from './grade/level-notes';
export { type GradeLimit, type GradeUse, gradeLimits } from './grade/limits';
export type { LineKind, SurfaceLineInput } from './grade/lines';
export {
  type RunoffAreaInput,
  type RunoffFigures,
  type RunoffInput,
  type RunoffSurface,
  runoff,
} from './grade/runoff';
export type {
  DrainFallInput,
  FixedPointInput,
  FoldInput,
  FormSurfaceInput,
  PlaneInput,
  SlopedPlaneInput,
  WarpedInput,
} from './grade/shapes';
export { type SlopeFigures, type SlopeInput, slopeOf } from './grade/slope';
export type { FormReadingsInput, SpotGridInput, SpotInput, SpotsInput, SpotTableInput } from './grade/spots';
export { type StraightedgeFigures, type StraightedgeInput, straightedge } from './grade/straightedge';
export type {
  FacetFigure,
  InflowFigure,
  InflowInput,
  LowSpotFigure,
  PathFigure,
  PlanPointFigure,
  PondFigure,
  ReachFigure,
  SillFigure,
  SillInput,
  SurfaceDrainageFigures,
  SurfaceDrainageInput,
} from './grade/surface-check';
export {
  type GoverningRule,
  type JointSpacingFigures,
  type JointSpacingInput,
  jointSpacing,
} from './joints/joint-spacing';
export * from './quantity/index';
export * from './reckoning/index';
export type { BarSize } from './steel/bars';
export {
  type MeshLayoutFigures,
  type MeshLayoutInput,
  type MeshStyle,
  meshLayout,
} from './steel/mesh-layout';
export {
  type BarRun,
  type RebarLayoutFigures,
  type RebarLayoutInput,
  rebarLayout,
} from './steel/rebar-layout';
export type { StepRules } from './steps/rules';
export {
  type StepDoorInput,
  type StepLayoutFigures,
  type StepLayoutInput,
  type StepLayoutsFigures,
  type StoryPoleMark,
  stepLayout,
} from './steps/step-layout';

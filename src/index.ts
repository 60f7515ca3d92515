/**
 * Flatwork reckoner: quantities and checks for concrete flatwork.
 *
 * @packageDocumentation
 */
export {
  type BaseTonnageFigures,
  type BaseTonnageInput,
  baseTonnage,
  type TonFigures,
  type TonKind,
} from './base/base-tonnage';
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
} from './base/excavation';
export type { GeotextileFigures, GeotextileInput } from './base/geotextile';
export type { Compactor, LiftFigures } from './base/lifts';
export type { BaseMaterial } from './base/materials';
export { type BagCountFigures, type BagCountInput, bagCount } from './pour/bag-count';
export {
  type ConcreteOrderFigures,
  type ConcreteOrderInput,
  concreteOrder,
  type OrderElementInput,
  type PourKind,
} from './pour/concrete-order';
export type { CrownForm, ThicknessCrownInput } from './concrete/crown';
export {
  type CurbCurveInput,
  type CurbDropInput,
  type CurbVolumeFigures,
  type CurbVolumeInput,
  type CurveCentre,
  curbVolume,
} from './concrete/curb-volume';
export {
  type FootingInput,
  type FootingStepsInput,
  type FootingVolumeFigures,
  type FootingVolumeInput,
  footingVolume,
  type LoopFootingInput,
  type PadFootingInput,
  type SteppedPadFootingInput,
  type StripFootingInput,
  type TaperedPadFootingInput,
  type TaperedStripFootingInput,
  type TierInput,
} from './concrete/footing-volume';
export type { FoundedInput } from './concrete/frost';
export type { LoadSplit } from './pour/loads';
export {
  type BelledPierInput,
  type PierInput,
  type PierVolumeFigures,
  type PierVolumeInput,
  pierVolume,
  type RectangularPierInput,
  type RoundPierInput,
  type TaperedRectangularPierInput,
  type TaperedRoundPierInput,
} from './concrete/pier-volume';
export {
  type ProbedVolumeFigures,
  type ProbedVolumeInput,
  type ProbeGridInput,
  type ProbeInput,
  probedVolume,
} from './concrete/probed-volume';
export { type SlabVolumeFigures, type SlabVolumeInput, slabVolume } from './concrete/slab-volume';
export type { CoreKind, StepCoreInput } from './concrete/step-cores';
export {
  type MidLandingInput,
  type RoundStepsInput,
  type StepParts,
  type StepVolumeFigures,
  type StepVolumeInput,
  type StraightStepsInput,
  stepVolume,
  type WindingStepsInput,
  type WrappedStepsInput,
} from './concrete/step-volume';
export type { BeamInput, EdgeInput } from './concrete/thickened';
export type {
  PlaceOfThickness,
  ThicknessInput,
  ThicknessPlaneInput,
  ThicknessTaperInput,
} from './concrete/thickness';
export {
  type LoopWallInput,
  type PilasterInput,
  type RingWallInput,
  type StraightWallInput,
  type WallInput,
  type WallOpeningInput,
  type WallParts,
  type WallVolumeFigures,
  type WallVolumeInput,
  wallVolume,
} from './concrete/wall-volume';
export type { WingWallInput } from './concrete/wing-walls';
export { type SquareCheckFigures, type SquareCheckInput, squareCheck } from './forms/square-check';
export type {
  AreaInput,
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
} from './outline/outline';
export type {
  CircleOpeningInput,
  OpeningInput,
  RectangleOpeningInput,
  RegionInput,
  RegularOpeningInput,
} from './outline/region';
export type { ConcreteStage, CorrectionStepFigure, CorrectionVerdict } from './grade/correction/advice';
export { type CrossSlopeFigures, type CrossSlopeInput, crossSlope } from './grade/cross-slope';
export {
  type DrainageCheck,
  type DrainageCheckFigures,
  type DrainageCheckInput,
  type DrainedSurface,
  drainageCheck,
} from './grade/drainage-check';
export type { FallFigure } from './grade/form-falls';
export {
  type ElevationBoundInput,
  type FormGradesFigures,
  type FormGradesInput,
  type FormSquareInput,
  formGrades,
  type RequiredFallInput,
  type StakeInput,
} from './grade/form-grades';
export type { StakeFigure } from './grade/form-stakes';
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
  FallsBackFigure,
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
  ValleyFigure,
} from './grade/surface-check';
export {
  type FixedJointInput,
  type GivenWay,
  type IsolationInput,
  type JointLayoutFigures,
  type JointLayoutInput,
  jointLayout,
  type Neighbour,
  type Panel,
  type Place,
  type PlanJoint,
  type SawRateInput,
  type SealantInput,
  type SearchNote,
} from './joints/joint-layout';
export {
  type GoverningRule,
  type JointSpacingFigures,
  type JointSpacingInput,
  jointSpacing,
} from './joints/joint-spacing';
export type { BackerRod, IsolationBoard, Sawing, Sealant } from './joints/layout/take-off';
export {
  type RelativeStiffnessFigures,
  type RelativeStiffnessInput,
  relativeStiffness,
  type SubgradeInput,
} from './joints/relative-stiffness';
export type { ClockTime, ClockWindow } from './pour/saw-clock';
export type { Hours, PublishedHours } from './pour/saw-hours';
export { type ReadyInput, type SawWindowFigures, type SawWindowInput, sawWindow } from './pour/saw-window';
export type { DepthBySource, IsolationBySource, SpacingBySource } from './joints/spacing-rules';
export * from './quantity/index';
export * from './reckoning/index';
export {
  type BarCuttingFigures,
  type BarCuttingInput,
  barCutting,
  type Cut,
  type CutBars,
  type CuttingAim,
  type LengthWorth,
  type PieceInput,
  type StockInput,
  type StockOrder,
} from './steel/bar-cutting';
export { type BarSizeFigures, type BarSizeInput, barSize } from './steel/bar-size';
export type { AnyBarSize, BarGrade, BarSeries, BarSize, MetricBarSize } from './steel/bars';
export type { Exposure } from './steel/cover';
export {
  type DowelLayoutFigures,
  type DowelLayoutInput,
  type DowelTable,
  dowelLayout,
} from './steel/dowel-layout';
export {
  type FibreDosageFigures,
  type FibreDosageInput,
  type FibreKind,
  fibreDosage,
} from './steel/fibre-dosage';
export {
  type DevelopmentLapInput,
  type DiametersLapInput,
  type LapLengthFigures,
  type LapLengthInput,
  lapLength,
} from './steel/lap-length';
export {
  type MeshFigures,
  type MeshInput,
  type MeshLayout,
  type MeshLayoutFigures,
  type MeshLayoutInput,
  meshLayout,
  meshPlaces,
} from './steel/mesh-layout';
export type { MeshPieces, MeshPlace, MeshRegionFigures, MeshRegionInput } from './steel/mesh-region';
export {
  type MeshSize,
  type MeshStyleFigures,
  type MeshStyleInput,
  type MeshWires,
  meshStyle,
} from './steel/mesh-style';
export {
  barPlaces,
  type RebarFigures,
  type RebarInput,
  type RebarLayout,
  rebarLayout,
} from './steel/rebar-layout';
export type { BarRun, RebarLayoutFigures, RebarLayoutInput } from './steel/rebar-rectangle';
export type { BarPlace } from './steel/rebar-region';
export type {
  RebarStripFigures,
  RebarStripInput,
  StripBarsInput,
  StripStartersInput,
  StripTiesInput,
} from './steel/rebar-strip';
export type {
  BarMark,
  MarkUse,
  MatDowelInput,
  MatFigures,
  MatInput,
  MatLayer,
  MatLines,
  MatStepsInput,
  RebarListFigures,
  RebarRegionFigures,
  RebarRegionInput,
  SizeTotal,
} from './steel/rebar-types';
export {
  type BarChoice,
  type DragSteelInput,
  type MeshChoice,
  type RatioSteelInput,
  type SteelMinimumFigures,
  type SteelMinimumInput,
  type SteelNeed,
  steelMinimum,
} from './steel/steel-minimum';
export {
  type SteelPlacementFigures,
  type SteelPlacementInput,
  steelPlacement,
} from './steel/steel-placement';
export type { StepRules } from './steps/rules';
export {
  type StepDoorInput,
  type StepLayoutFigures,
  type StepLayoutInput,
  type StepLayoutsFigures,
  type StoryPoleMark,
  stepLayout,
} from './steps/step-layout';

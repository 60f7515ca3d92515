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
export type { PlaceOfThickness, PlaneInput, TaperInput, ThicknessInput } from './concrete/thickness';
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
export {
  type DrainageCheckFigures,
  type DrainageCheckInput,
  type DrainedSurface,
  drainageCheck,
} from './grade/drainage-check';
export { type SlopeFigures, type SlopeInput, slopeOf } from './grade/slope';
export {
  type GoverningRule,
  type JointSpacingFigures,
  type JointSpacingInput,
  jointSpacing,
} from './joints/joint-spacing';
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
export type { BarGrade, BarSeries, BarSize } from './steel/bars';
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
  type MeshLayout,
  type MeshLayoutFigures,
  type MeshLayoutInput,
  type MeshStyle,
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
  type BarRun,
  barPlaces,
  type RebarLayout,
  type RebarLayoutFigures,
  type RebarLayoutInput,
  rebarLayout,
} from './steel/rebar-layout';
export type {
  BarMark,
  BarPlace,
  MarkUse,
  MatDowelInput,
  MatFigures,
  MatInput,
  MatLayer,
  MatLines,
  MatStepsInput,
  RebarRegionFigures,
  RebarRegionInput,
  SizeTotal,
} from './steel/rebar-region';
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

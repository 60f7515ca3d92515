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

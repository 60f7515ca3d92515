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
export { type SlabVolumeFigures, type SlabVolumeInput, slabVolume } from './concrete/slab-volume';
export { type StepVolumeFigures, type StepVolumeInput, stepVolume } from './concrete/step-volume';
export type {
  CircleInput,
  LengthInput,
  LInput,
  OutlineInput,
  PointInput,
  PolygonInput,
  RectangleInput,
  TrapezoidInput,
  TriangleInput,
} from './geometry/outline';
export {
  type DrainageCheckFigures,
  type DrainageCheckInput,
  type DrainedSurface,
  drainageCheck,
} from './grade/drainage-check';
export { type SlopeFigures, type SlopeInput, slopeOf } from './grade/slope';
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
export {
  type RelativeStiffnessFigures,
  type RelativeStiffnessInput,
  relativeStiffness,
  type SubgradeInput,
} from './joints/relative-stiffness';
export {
  type ClockTime,
  type ClockWindow,
  type Hours,
  type PublishedHours,
  type ReadyInput,
  type SawWindowFigures,
  type SawWindowInput,
  sawWindow,
} from './joints/saw-window';
export type { DepthBySource, IsolationBySource, SpacingBySource } from './joints/spacing-rules';
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

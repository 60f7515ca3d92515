/** Joints: how far apart, how deep and where. */

export type { FewerJoints } from './fewer-joints';
export { jointLayout } from './joint-layout';
export {
  type GoverningRule,
  type JointSpacingFigures,
  type JointSpacingInput,
  jointSpacing,
} from './joint-spacing';
export type { BackerRod, IsolationBoard, Sawing, Sealant } from './layout/take-off';
export type {
  EdgePlaces,
  GivenWay,
  JointLayoutFigures,
  Panel,
  PlanJoint,
  SearchNote,
} from './layout-figures';
export type {
  FixedJointInput,
  IsolationInput,
  JointLayoutInput,
  Neighbor,
  Place,
  SawRateInput,
  SealantInput,
} from './layout-input';
export {
  type RelativeStiffnessFigures,
  type RelativeStiffnessInput,
  relativeStiffness,
  type SubgradeInput,
} from './relative-stiffness';
export type { DepthBySource, IsolationBySource, SpacingBySource } from './spacing-rules';

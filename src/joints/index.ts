/** Joints: how far apart, how deep and where. */
export {
  type FixedJointInput,
  type GivenWay,
  type IsolationInput,
  type JointLayoutFigures,
  type JointLayoutInput,
  jointLayout,
  type Neighbor,
  type Panel,
  type Place,
  type PlanJoint,
  type SawRateInput,
  type SealantInput,
  type SearchNote,
} from './joint-layout';
export {
  type GoverningRule,
  type JointSpacingFigures,
  type JointSpacingInput,
  jointSpacing,
} from './joint-spacing';
export type { BackerRod, IsolationBoard, Sawing, Sealant } from './layout/take-off';
export {
  type RelativeStiffnessFigures,
  type RelativeStiffnessInput,
  relativeStiffness,
  type SubgradeInput,
} from './relative-stiffness';
export type { DepthBySource, IsolationBySource, SpacingBySource } from './spacing-rules';

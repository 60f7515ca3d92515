/**
 * Plans as SVG: plain, accessible, without external resources.
 *
 * @packageDocumentation
 */
export type {
  CircleOpeningInput,
  OpeningInput,
  RectangleOpeningInput,
  RegionInput,
} from '../outline/region';
export { type JointPlanOptions, jointPlan } from './joint-plan';
export { matPlan, matSection, meshPlan } from './mat-plan';
export { outlinePlan, type PlanOptions } from './outline-plan';
export { type StakeMarkInput, type SurfacePlanInput, surfacePlan } from './surface-plan';
export { thicknessPlan } from './thickness-plan';

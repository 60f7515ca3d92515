/**
 * Plans as SVG: plain, accessible, without external resources. All take the same options.
 *
 * @packageDocumentation
 */
export type {
  CircleOpeningInput,
  OpeningInput,
  RectangleOpeningInput,
  RegionInput,
} from '../outline/region';
export type { Language, View } from '../report/show';
export { dayTimeline } from './day-timeline';
export { jointPlan } from './joint-plan';
export { matPlan } from './mat-plan';
export { matSection } from './mat-section';
export { meshPlan } from './mesh-plan';
export { outlinePlan } from './outline-plan';
export type { OwnColors, PlanColors, PlanOptions } from './plan-options';
export { sitePlan } from './site-plan';
export { type StakeMarkInput, type SurfacePlanInput, surfacePlan } from './surface-plan';
export { thicknessPlan } from './thickness-plan';
export { truckTimeline } from './truck-timeline';

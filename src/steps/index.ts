/** Steps: how many, how high and how deep. */

export type { StepLayoutFigures, StepLayoutsFigures, StoryPoleMark } from './layouts';
export type { StepRules } from './rules';
export { stepLayout } from './step-layout';
export type { StepDoorInput, StepLayoutInput } from './step-layout-input';

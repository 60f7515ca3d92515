/** Steps: how many, how high and how deep. Ramps: how many runs, how long, and the landings between them. */

export type { StepLayoutFigures, StepLayoutsFigures, StoryPoleMark } from './layouts';
export type { RampBreak, RampLayoutFigures, RampLayoutInput } from './ramp-layout';
export { rampLayout } from './ramp-layout';
export type { RampRules } from './ramp-rules';
export type { StepRules } from './rules';
export { stepLayout } from './step-layout';
export type { StepDoorInput, StepLayoutInput } from './step-layout-input';

/** Steps: how many, how high and how deep. */
export type { StepRules } from './rules';
export {
  type StepDoorInput,
  type StepLayoutFigures,
  type StepLayoutInput,
  type StepLayoutsFigures,
  type StoryPoleMark,
  stepLayout,
} from './step-layout';

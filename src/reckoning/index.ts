/** Floor 2: the contract of a calculation. What users may name of it. */
export type { Attempt, Calculation } from './calculation';
export type { CautionCode } from './caution-code';
export type { JsonSchema } from './fields';
export type { Limit } from './limits';
export type {
  Assumption,
  Caution,
  Figure,
  FigureSet,
  Result,
  ResultParts,
  Severity,
  Step,
} from './result';
export { revive } from './revive';
export type { Source } from './source';
export type { StandardIssue, StandardOutcome, StandardSchema } from './standard';
export type { ReckonOptions } from './system';
export type { Take, TakeCut, TakeItem } from './takes';
export type { Param, Params, Words } from './words';

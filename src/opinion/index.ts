/** The second opinion: what is wrong with a hand estimate, and what if. */
export type { AnyQuantityInput, Claim, Claims } from './claims';
export {
  type ComparedInputs,
  type Comparison,
  compareResults,
  type FigureChange,
  type InputChange,
  type Through,
} from './compare-results';
export {
  type ClaimCheck,
  type ClaimVerdict,
  type EstimateCheck,
  estimateCheck,
  type LikelySlip,
  type NamedSlip,
  type WouldGive,
} from './estimate-check';
export type { SlipCode } from './slip';
export { type Solution, type SolveForInput, solveFor } from './solve-for';
export {
  type Contribution,
  type FigureTolerance,
  type Measures,
  type ToleranceOptions,
  type Tolerances,
  tolerances,
} from './tolerances';

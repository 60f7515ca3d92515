/** The second opinion: what is wrong with a hand estimate, and what if. */
export type { AnyQuantityInput, Claim, Claims } from './claims';
export {
  type ClaimCheck,
  type ClaimVerdict,
  type EstimateCheck,
  estimateCheck,
  type LikelySlip,
  type NamedSlip,
} from './estimate-check';
export type { SlipCode } from './slip';

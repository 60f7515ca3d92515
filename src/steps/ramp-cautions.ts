/**
 * Cautions about ramps.
 *
 * They inform; the plans, the local code and a licensed designer decide.
 */
import type { Quantity } from '../quantity/quantity';
import type { Caution } from '../reckoning/parts';
import { say } from '../reckoning/words';
import type { RampLimits } from './ramp-rules';

type Length = Quantity<'length'>;
type Slope = Quantity<'slope'>;

export const steepRamp = ({ source }: RampLimits, limit: Slope, actual: Slope): Caution => ({
  code: 'steeper-than-ramp',
  severity: 'stop',
  ...say`steeper than ${{ limit }}, the most that these rules allow a ramp; make it longer, or fold it at a landing. Check the local code`,
  limit,
  actual,
  source,
});

export const longForItsPlace = ({ source }: RampLimits, limit: Length, actual: Length): Caution => ({
  code: 'ramp-too-long',
  severity: 'stop',
  ...say`with its landings it takes ${{ actual }}, and there are ${{ limit }}: fold it at a level landing as wide as both runs, in more runs if it is, or lower the landing at the top; never make it steeper to fit`,
  limit,
  actual,
  source,
});

/** A slope was given, and one that the rules have would fit. */
export const flatForItsPlace = (
  { source }: RampLimits,
  limit: Length,
  actual: Length,
  { slope, overall }: { readonly slope: Slope; readonly overall: Length },
): Caution => ({
  code: 'ramp-too-long',
  severity: 'stop',
  ...say`with its landings it takes ${{ actual }}, and there are ${{ limit }}: at ${{ slope }}, which these rules allow, it takes ${{ overall }} and fits`,
  limit,
  actual,
  source,
});

export const narrowRamp = ({ source }: RampLimits, limit: Length, actual: Length): Caution => ({
  code: 'ramp-too-narrow',
  severity: 'warning',
  ...say`narrower than ${{ limit }}, the least clear width between handrails or curbs that these rules have; widen the forms. Check the local code`,
  limit,
  actual,
  source,
});

export const shortRampLanding = ({ source }: RampLimits, limit: Length, actual: Length): Caution => ({
  code: 'landing-too-short',
  severity: 'warning',
  ...say`a landing shorter than ${{ limit }} is less than these rules have on a ramp: a wheelchair cannot rest or turn on it. Check the local code`,
  limit,
  actual,
  source,
});

/** Curbs are cast with the ramp, and anchors of rails are set in it: both are told before the pour. */
export const railsBothSides = ({ source }: RampLimits, limit: Length, actual: Length): Caution => ({
  code: 'ramp-handrails',
  severity: 'warning',
  says: 'these rules ask for handrails on both sides of this ramp and a curb or rail along open edges; plan them before the pour and check the local code',
  limit,
  actual,
  source,
});

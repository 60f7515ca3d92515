/** Whether paving falls so steeply that those who walk on it are on a ramp, whoever drains it that way. */
import { constant, slope } from '../quantity/make';
import type { Quantity } from '../quantity/quantity';
import type { Pad } from '../reckoning/pad';
import * as cautions from './cautions';
import { type GradeUse, isWalked, limitOf } from './limits';

const WALK = constant(() => slope('1:20'));
const RAMP = constant(() => slope('1:12'));

/** What is steeper than its own use allows has been told of that, and needs no word of a ramp that it might be. */
const isTold = (s: Quantity<'slope'>, use: GradeUse): boolean => limitOf(use).most?.lessThan(s) ?? false;

/** Tell of paving steeper than a walk, and of what is steeper than a ramp may be. */
export function heedOnFoot(s: Quantity<'slope'>, use: GradeUse, pad: Pad): void {
  if (!isWalked(use)) return;
  if (s.greaterThan(RAMP())) pad.caution(cautions.steeperThanRamp(RAMP(), s, false));
  else if (s.greaterThan(WALK()) && !isTold(s, use)) pad.caution(cautions.steepAlong(WALK(), s));
}

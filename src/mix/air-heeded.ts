/** Whether the air in a mix is what it has to be: as it is offered, or in the truck. */
import { constant, ratio } from '../quantity/make';
import type { Quantity } from '../quantity/quantity';
import type { Pad } from '../reckoning/pad';
import type { Source } from '../reckoning/source';
import * as cautions from './cautions';

type Ratio = Quantity<'ratio'>;

/** Air that is in concrete without any being added: 1% to 3% by the stone. */
const ENTRAPPED = constant(() => ratio('3%'));

/** True for air that is there without any being added. */
export const isEntrapped = (air: Ratio): boolean => air.lessThan(ENTRAPPED());

/** What the air is held to. */
export interface AirAsked {
  readonly minimum: Ratio | undefined;
  readonly maximum: Ratio | undefined;
  /** True where concrete without air would scale. */
  readonly scales: boolean;
  readonly when: cautions.When;
  readonly source: Source;
}

/**
 * Note what is wrong with the air, or that nothing is said of it.
 *
 * @returns whether nothing is
 */
export function heedAir(air: Ratio | undefined, asked: AirAsked, pad: Pad): boolean {
  const { minimum, maximum, scales, when, source } = asked;
  const before = pad.cautions.length;
  if (minimum && !air) pad.caution(cautions.airUnsaid(minimum, source));
  if (minimum && air?.lessThan(minimum)) {
    const caution = scales && isEntrapped(air) ? cautions.noAir : cautions.littleAir;
    pad.caution(caution(when, minimum, air, source));
  }
  if (maximum && air?.greaterThan(maximum)) pad.caution(cautions.muchAir(when, maximum, air, source));
  return pad.cautions.length === before;
}

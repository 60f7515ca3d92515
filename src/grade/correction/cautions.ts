/** Cautions about the correction of grades in wet concrete. */

import { paired } from '../../quantity/paired';
import type { Quantity } from '../../quantity/quantity';
import type { Caution } from '../../reckoning/result';
import { CLOSED_FORM, COMMON_PRACTICE } from '../../reckoning/source';
import { NO_WORDS, say, type Words } from '../../reckoning/words';
import { IRC_DRAINAGE } from '../sources';
import { BLEED_WATER, DUSTING, GRINDING, THICKNESS_TOLERANCE } from './sources';

type Length = Quantity<'length'>;

const HALF_INCH = /*#__PURE__*/ paired('length', '1/2 in', '12 mm');

export const buildingRaised = (spots: readonly string[], line: string, actual: Length): Caution => ({
  code: 'building-raised',
  severity: 'stop',
  ...say`concrete would be raised at ${{ line }} (${{ spots }}): that buries the sill or the siding and leads water to the door. Leave the building's edge as it is and strike off what lies before it`,
  limit: actual.minus(actual),
  actual,
  source: IRC_DRAINAGE,
});

export const blocked = (names: readonly Words[]): Caution => ({
  code: 'correction-blocked',
  severity: 'stop',
  ...say`no correction of the wet concrete will do, these cannot be met together: ${{ names }}. Stop placing there: take concrete out and reset the forms or the base, or change one of these with whoever answers for the plans`,
  source: CLOSED_FORM,
});

export const stillNotDrained = (verdict: string, where: readonly string[]): Caution => ({
  code: 'still-not-drained',
  severity: 'stop',
  ...say`after these moves the surface still does not drain, ${{ verdict }}${
    where.length > 0 ? say`: at ${{ where }}` : NO_WORDS
  }. Do not finish it so: free more spots, give it a drain or another outlet, or reset the forms`,
  source: IRC_DRAINAGE,
});

export const thicknessUnknown = (spots: readonly string[], limit: Length, actual: Length): Caution => ({
  code: 'thickness-unknown',
  severity: HALF_INCH.exceededBy(actual) ? 'stop' : 'warning',
  ...say`more than ${{ limit }} is struck off at ${{ spots }}, where no thickness is given: probe the depth first and give it, so that the thickness of the plans is left. A slab of ${{ slab: paired('length', '4 in', '100 mm') }} that loses more than ${{ loses: HALF_INCH }} is thinner than most codes allow`,
  limit,
  actual,
  source: THICKNESS_TOLERANCE,
});

export const thinAlready = (spots: readonly string[], limit: Length, actual: Length): Caution => ({
  code: 'thin-already',
  severity: 'warning',
  ...say`the slab is thinner than ${{ limit }} at ${{ spots }} before anything is moved: nothing is struck off there; lower the base or raise the forms if the plans ask for more`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

export const afterBullFloat: Caution = {
  code: 'after-bull-float',
  severity: 'warning',
  says: 'the surface has been bull-floated: work at once, before bleed water shows. Cut high spots with a straightedge, loosen low ones and work fresh concrete in, not a skin on top; add no water; bull-float those places again and then wait',
  source: DUSTING,
};

export const bleedWater: Caution = {
  code: 'bleed-water',
  severity: 'stop',
  says: 'bleed water stands on the concrete: move and add nothing now, it would be worked in and the surface would scale. Wait until it is gone or drag it off; after that high spots can be cut, but nothing can be laid on top',
  source: BLEED_WATER,
};

export const concreteSet = (limit: Length, actual: Length): Caution => ({
  code: 'concrete-set',
  severity: 'stop',
  ...say`the concrete has set: it can be neither raised nor struck off, and no more than ${{ limit }} is ground off. Break out and replace what is wrong, or have an overlay designed`,
  limit,
  actual,
  source: GRINDING,
});

export const grinding = (limit: Length, actual: Length): Caution => ({
  code: 'grind-set-concrete',
  severity: 'warning',
  ...say`the concrete has set: grind the high spots, nowhere deeper than ${{ limit }}; grind wet or with extraction, the dust harms the lungs`,
  limit,
  actual,
  source: GRINDING,
});

export const edgeMoved = (spots: readonly string[], line: string, actual: Length): Caution => ({
  code: 'edge-lip',
  severity: 'note',
  ...say`the edge at ${{ line }} moves (${{ spots }}): see that no lip is left there for feet and wheels`,
  limit: actual.minus(actual),
  actual,
  source: COMMON_PRACTICE,
});

/** What to watch out for when concrete is ordered, placed and cut. */

import * as sources from '../joints/sources';
import type { Quantity } from '../quantity/quantity';
import type { Caution } from '../reckoning/result';
import { ACI_SAW_TIMES, COMMON_PRACTICE, LIFTING_GUIDE, type Source } from '../reckoning/source';
import { NO_WORDS, say, type Words } from '../reckoning/words';
import { clockText } from './clock';
import { NRMCA_YIELD, WASTE_TEXTS } from './sources';

type Ratio = Quantity<'ratio'>;
type Time = Quantity<'time'>;
type Volume = Quantity<'volume'>;

export const tryACut: Caution = {
  code: 'try-a-cut',
  severity: 'warning',
  says: 'the hours are guides: make a trial cut. Edges that ravel mean too early; a crack that runs ahead of the blade means too late. Where a crack has formed near a line, leave that cut out',
  always: true,
  source: ACI_SAW_TIMES,
};

/** By the clock, since midnight of any day. */
export interface Due {
  readonly from: Time;
  readonly to: Time;
}

export const sawAtNight = ({ from, to }: Due, limit: Time, actual: Time): Caution => ({
  code: 'saw-at-night',
  severity: 'warning',
  ...say`the cuts are due between ${{ from: clockText(from) }} and ${{ to: clockText(to) }}, and too little of that is working time; the next morning is too late. Keep a crew with proper lights for those hours, or place earlier, or cut a morning placement the same day with an early-entry saw`,
  limit,
  actual,
  source: sources.UFGS_SAWING,
});

export const mostlyAfterHours = (limit: Time, actual: Time): Caution => ({
  code: 'mostly-after-hours',
  severity: 'note',
  ...say`only ${{ actual }} of the ${{ limit }} in which the cuts are due are working time: see that the cutting fits, or arrange for people and lights to stay`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

export const littleSlack = (limit: Time, actual: Time): Caution => ({
  code: 'little-slack',
  severity: 'note',
  ...say`the cutting takes ${{ actual }} and fits only if the concrete is ready early: ready in the middle of its hours, ${{ limit }} of working time are left. Have a second saw or a late crew at hand`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

export const sawTooSlow = (limit: Time, actual: Time): Caution => ({
  code: 'saw-too-slow',
  severity: 'stop',
  ...say`the cutting takes ${{ actual }} and the window is open for ${{ limit }}, night included: joints cut late crack beside the cut. Bring more saws, or place less at a time`,
  limit,
  actual,
  source: ACI_SAW_TIMES,
});

export const lateToSet = (limit: Time, actual: Time): Caution => ({
  code: 'late-to-set',
  severity: 'warning',
  ...say`the concrete may be ready as late as ${{ actual }} after placing, though by the weather the cuts should be done ${{ limit }} after placing: watch the slab from then on, cut as soon as a trial cut holds, and ask the supplier about the mix`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

export const noAllowance: Caution = {
  code: 'no-allowance',
  severity: 'warning',
  says: 'nothing is allowed for waste, spillage and an uneven base; published texts add 5% to 10%',
  source: WASTE_TEXTS,
};

/** Against earth, where what is published for slabs is too little. */
export const noAllowanceInEarth = (what: string, least: Ratio): Caution => ({
  code: 'no-allowance',
  severity: 'warning',
  ...say`nothing is allowed for waste, spillage and earth that is never cut as drawn; for ${{ what }} at least ${{ limit: least }} is usual`,
  source: COMMON_PRACTICE,
});

export const smallAllowance = (what: string, source: Source, limit: Ratio, actual: Ratio): Caution => ({
  code: 'small-allowance',
  severity: 'warning',
  ...say`${{ actual }} is little for ${{ what }}, where at least ${{ limit }} is usual: measure the depth to the base or the holes as they really are, or order more`,
  limit,
  actual,
  source,
});

export const largeAllowance = (what: string, limit: Ratio, actual: Ratio): Caution => ({
  code: 'large-allowance',
  severity: 'warning',
  ...say`an allowance above ${{ limit }} is more than usual for ${{ what }}; it is the share added on top, so a factor of 1.08 is 8%`,
  limit,
  actual,
  source: WASTE_TEXTS,
});

export const smallLastLoad = (limit: Volume, actual: Volume): Caution => ({
  code: 'small-last-load',
  severity: 'note',
  says: 'the last load is less than a quarter of a truck; most suppliers charge more for it, so ask, or split the order evenly',
  limit,
  actual,
  source: COMMON_PRACTICE,
});

/** All there is, so that nothing of it can be split or evened out. */
export const shortLoad = (limit: Volume, actual: Volume): Caution => ({
  code: 'small-load',
  severity: 'note',
  says: 'the only load is less than a quarter of a truck; most suppliers charge more for so little, so ask, or pour something else on the same day',
  limit,
  actual,
  source: COMMON_PRACTICE,
});

export const belowMinimumLoad = (limit: Volume, actual: Volume): Caution => ({
  code: 'below-minimum-load',
  severity: 'note',
  says: 'a load is below the least that the supplier carries without a charge; ask what it costs',
  limit,
  actual,
  source: COMMON_PRACTICE,
});

const orLower = (lower: Volume, covered: boolean): Words =>
  covered ? say`, or order ${{ lower }} and measure what is left before the last truck is sent` : NO_WORDS;

export const justOverLoad = (limit: Volume, actual: Volume, lower: Volume, covered: boolean): Caution => ({
  code: 'just-over-load',
  severity: 'warning',
  ...say`one more truck is for ${{ actual }} above ${{ lower }} in full loads, less than any measuring of the job can know: check the measurements again${orLower(lower, covered)}`,
  limit,
  actual,
  source: NRMCA_YIELD,
});

export const justOverIncrement = (
  limit: Volume,
  actual: Volume,
  lower: Volume,
  covered: boolean,
): Caution => ({
  code: 'just-over-increment',
  severity: 'note',
  ...say`the last step of the order is for ${{ actual }} above ${{ lower }}, less than any measuring of the job can know: check the measurements again${covered ? say`, or order ${{ lower }}` : NO_WORDS}`,
  limit,
  actual,
  source: NRMCA_YIELD,
});

export const liftingBags = (limit: Quantity<'mass'>, actual: Quantity<'mass'>): Caution => ({
  code: 'lifting-bags',
  severity: 'warning',
  ...say`a bag heavier than ${{ limit }} is more than one person should lift again and again; lift it in pairs, or buy smaller bags`,
  limit,
  actual,
  source: LIFTING_GUIDE,
});

export const muchForBags = (limit: Volume, actual: Volume, bags: Quantity<'count'>): Caution => ({
  code: 'much-for-bags',
  severity: 'warning',
  ...say`more than ${{ limit }} is much for bags: the first of ${{ bags }} sets before the last is mixed, and the pour gets a cold joint. Ask for a part load from a plant, or plan construction joints and enough mixers`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

export const slurry: Caution = {
  code: 'slurry',
  severity: 'warning',
  says: 'slurry of a wet saw is as caustic as wet concrete: keep it off skin and eyes, and out of drains, gutters and lawns. Vacuum it up before it dries to dust, and take it to where concrete is washed out',
  source: COMMON_PRACTICE,
};

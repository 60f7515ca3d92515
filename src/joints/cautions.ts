/** Cautions about joints: what to heed, why, and by which source. */
import type { Quantity } from '../quantity/quantity';
import { clockText } from '../reckoning/clock';
import type { Caution } from '../reckoning/result';
import { ACI_SAW_TIMES, COMMON_PRACTICE } from '../reckoning/source';
import * as sources from './sources';

type Time = Quantity<'time'>;

export const tryACut: Caution = {
  code: 'try-a-cut',
  severity: 'warning',
  sentence:
    'the hours are guides: make a trial cut. Edges that ravel mean too early; a crack that runs ahead of the blade means too late. Where a crack has formed near a line, leave that cut out',
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
  sentence: `the cuts are due between ${clockText(from)} and ${clockText(to)}, and too little of that is working time; the next morning is too late. Keep a crew with proper lights for those hours, or place earlier, or cut a morning placement the same day with an early-entry saw`,
  limit,
  actual,
  source: sources.UFGS_SAWING,
});

export const mostlyAfterHours = (limit: Time, actual: Time): Caution => ({
  code: 'mostly-after-hours',
  severity: 'note',
  sentence: `only ${actual.format()} of the ${limit.format()} in which the cuts are due are working time: see that the cutting fits, or arrange for people and lights to stay`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

export const littleSlack = (limit: Time, actual: Time): Caution => ({
  code: 'little-slack',
  severity: 'note',
  sentence: `the cutting takes ${actual.format()} and fits only if the concrete is ready early: ready in the middle of its hours, ${limit.format()} of working time are left. Have a second saw or a late crew at hand`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

export const sawTooSlow = (limit: Time, actual: Time): Caution => ({
  code: 'saw-too-slow',
  severity: 'stop',
  sentence: `the cutting takes ${actual.format()} and the window is open for ${limit.format()}, night included: joints cut late crack beside the cut. Bring more saws, or place less at a time`,
  limit,
  actual,
  source: ACI_SAW_TIMES,
});

export const lateToSet = (limit: Time, actual: Time): Caution => ({
  code: 'late-to-set',
  severity: 'warning',
  sentence: `the concrete may be ready as late as ${actual.format()} after placing, though by the weather the cuts should be done ${limit.format()} after placing: watch the slab from then on, cut as soon as a trial cut holds, and ask the supplier about the mix`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

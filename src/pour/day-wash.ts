/**
 * Whether somebody is at work, by daylight, when the stones of exposed aggregate are to be washed free.
 *
 * The wash is due from `b` to `e`, the finish most likely done and the hours of the retarder on top; `w` of that is
 * working time before sunset. With none of it nobody is there; with less than half the wash may come too late.
 */
import * as sharedFaults from '../quantity/faults';
import { lesserOf } from '../quantity/greater';
import { constant, time } from '../quantity/make';
import type { Quantity } from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import { wholeNumber } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { COMMON_PRACTICE } from '../reckoning/source';
import { washAtNight } from './day-cautions';
import { type DayParsed, USUAL_END } from './day-door';
import type { Day } from './day-stages';
import { workedBetween } from './saw-clock';

type Time = Quantity<'time'>;

const USUAL_START = constant(() => time('7 h'));

/** When the crew of the wash comes: a night crew as on the day, others in the morning. */
function workFromOf({ workFrom, workTo, startAt }: DayParsed, pad: Pad): Time {
  if (workFrom) return workFrom;
  const usual = workTo?.lessThan(startAt) ? startAt : lesserOf(startAt, USUAL_START());
  pad.assume({
    name: 'workFrom',
    value: { reckoned: usual },
    because: 'a usual working day begins then, or as this one does where that is earlier or at night',
    override: 'Give workFrom',
    source: COMMON_PRACTICE,
  });
  return usual;
}

/** Working hours of the days that follow, as far as there is light. */
function shiftOf(input: DayParsed, pad: Pad): readonly [Time, Time] {
  const { sunset, workTo } = input;
  const from = workFromOf(input, pad);
  const to = workTo ?? sunset ?? USUAL_END();
  if (from.compareTo(to) === 0) refuse('workFrom', sharedFaults.doesNotFit('workFrom', 'workTo'));
  const byDay = sunset && from.lessThan(sunset) && from.lessThan(to);
  return [from, byDay ? lesserOf(to, sunset) : to];
}

/** Tell of a wash that falls mostly, or wholly, after dark or after the end of work. */
export function heedWash({ stages }: Day, input: DayParsed, clock: (t: Time) => string, pad: Pad): void {
  const wash = stages.find(({ stage }) => stage === 'wash');
  if (!wash) return;
  const shift = shiftOf(input, pad);
  const [b, e] = [wash.begins.likely, wash.ends.likely];
  const worked = workedBetween(input.startAt.plus(b), input.startAt.plus(e), shift);
  const open = e.minus(b).in('h');
  if (!worked.times(wholeNumber(2)).lessThan(open)) return;
  pad.caution(
    washAtNight(worked.sign() === 0 ? 'warning' : 'note', open, worked, { from: clock(b), to: clock(e) }),
  );
}

/**
 * The hours of sawing by the clock: which of them are working time, and whether the cutting fits.
 *
 * Working time is the overlap of the stretch in which the cuts are due with the shifts of each day. A shift
 * may run past midnight. The cutting fits where it can begin when the concrete is ready in the middle of the
 * hours given for it, and end in working time before the cuts are due; sawing outside working hours is
 * ordinary work with lights, so it needs a crew, not a stop.
 */
import { greaterOf, lesserOf } from '../quantity/greater';
import { constant, time } from '../quantity/make';
import type { Quantity } from '../quantity/quantity';
import { wholeNumber } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import * as cautions from './cautions';
import type { Hours } from './saw-hours';

type Time = Quantity<'time'>;

/** A time by the clock. */
export interface ClockTime {
  /** 0 on the day of placing, 1 on the next. */
  readonly day: Quantity<'count'>;
  /** From midnight of that day. */
  readonly time: Quantity<'time'>;
}

/** The window by the clock. */
export interface ClockWindow {
  /** Earliest that sawing can start. */
  readonly startFrom: ClockTime;
  /** Latest that the concrete may be ready. */
  readonly startTo: ClockTime;
  /** When the cuts must be done. */
  readonly finishBy: ClockTime;
  /** True when the cuts are due at an hour outside working hours. */
  readonly closesOvernight: boolean;
  /** Working time between the earliest start and the close. */
  readonly workable: Quantity<'time'>;
  /** Latest start that leaves working time for the cutting, where its time is known and there is so much. */
  readonly startBy?: ClockTime;
}

/** Whether the cutting fits. */
export type SawVerdict = 'fits' | 'fits if ready early' | 'outside working hours' | 'too slow';

/** When the cuts are due, after midnight of the day of placing or after the moment that hours are counted from. */
export interface DueTimes {
  /** When cutting can start, at the earliest and at the latest. */
  readonly start: Hours;
  /** When it must be done. */
  readonly finishBy: Time;
}

type Stretch = readonly [from: Time, to: Time];

const NONE = constant(() => time('0 h'));
const DAY = constant(() => time('24 h'));

const sum = (times: readonly Time[]): Time => times.reduce((all, t) => all.plus(t), NONE());

/** Middle of the hours in which the concrete gets ready. */
export const middleOf = ({ from, to }: Hours): Time => from.plus(to).over(wholeNumber(2));

export function clockTime(sinceMidnight: Time): ClockTime {
  const midnight = sinceMidnight.downTo(DAY());
  return {
    day: wholeNumber(Math.round(midnight.over(DAY()).toNumber(':1'))),
    time: sinceMidnight.minus(midnight),
  };
}

/** Working time between two times, shift by shift. Times are bounded at the door, so shifts are few. */
function workingStretches(from: Time, to: Time, [start, end]: Stretch): Stretch[] {
  const until = start.lessThan(end) ? end : end.plus(DAY());
  const stretches: Stretch[] = [];
  for (
    let midnight = from.downTo(DAY()).minus(DAY());
    midnight.lessThan(to);
    midnight = midnight.plus(DAY())
  ) {
    const [a, b] = [greaterOf(from, midnight.plus(start)), lesserOf(to, midnight.plus(until))];
    if (a.lessThan(b)) stretches.push([a, b]);
  }
  return stretches;
}

const worked = (stretches: readonly Stretch[]): Time => sum(stretches.map(([a, b]) => b.minus(a)));

/** Working time between two times. */
export const workedBetween = (from: Time, to: Time, shift: Stretch): Time =>
  worked(workingStretches(from, to, shift)).in('h');

/** The latest time from which so much working time is left. */
function latestStart(stretches: readonly Stretch[], needed: Time): Time | undefined {
  let left = needed;
  for (const [a, b] of [...stretches].reverse()) {
    const length = b.minus(a);
    if (!length.lessThan(left)) return b.minus(left);
    left = left.minus(length);
  }
  return undefined;
}

const inShift = (at: Time, shift: Stretch): boolean => {
  const [start, end] = shift;
  const { time: t } = clockTime(at);
  return start.lessThan(end)
    ? !t.lessThan(start) && !t.greaterThan(end)
    : !t.lessThan(start) || !t.greaterThan(end);
};

/** The window by the clock, from times since midnight. */
export function clockWindow(due: DueTimes, shift: Stretch, cutting: Time | undefined): ClockWindow {
  const { start, finishBy } = due;
  const stretches = workingStretches(start.from, finishBy, shift);
  const startBy = cutting && latestStart(stretches, cutting);
  return {
    startFrom: clockTime(start.from),
    startTo: clockTime(start.to),
    finishBy: clockTime(finishBy),
    closesOvernight: !inShift(finishBy, shift),
    workable: worked(stretches).in('h'),
    ...(startBy ? { startBy: clockTime(startBy) } : {}),
  };
}

/** Whether the cutting fits into what is left once the concrete is ready in the middle of its hours. */
function judgeSlack(left: Time, cutting: Time, pad: Pad): SawVerdict {
  if (!cutting.greaterThan(left)) return 'fits';
  pad.caution(cautions.littleSlack(left, cutting));
  return 'fits if ready early';
}

/** Whether cutting of known time fits where no clock is known: night and day count alike. */
export function judgeOpen({ start, finishBy }: DueTimes, cutting: Time, pad: Pad): SawVerdict {
  const open = finishBy.minus(start.from);
  if (cutting.greaterThan(open)) {
    pad.caution(cautions.sawTooSlow(open, cutting));
    return 'too slow';
  }
  return judgeSlack(finishBy.minus(middleOf(start)), cutting, pad);
}

/**
 * Whether nobody is at work while the cuts are best made: from the earliest start until the concrete is surely
 * ready, and at least half way to the close. What is left of the window next morning does not count.
 */
function nobodyThere({ start, finishBy }: DueTimes, shift: Stretch): boolean {
  const half = middleOf({ from: start.from, to: finishBy });
  return workedBetween(start.from, greaterOf(start.to, half), shift).sign() === 0;
}

/** Whether the cutting fits into working hours before it is due. */
export function judgeByClock(
  due: DueTimes,
  shift: Stretch,
  cutting: Time | undefined,
  pad: Pad,
): SawVerdict | undefined {
  const { start, finishBy } = due;
  const [open, workable] = [finishBy.minus(start.from), workedBetween(start.from, finishBy, shift)];
  if (cutting?.greaterThan(open)) {
    pad.caution(cautions.sawTooSlow(open, cutting));
    return 'too slow';
  }
  if (nobodyThere(due, shift) || cutting?.greaterThan(workable)) {
    pad.caution(cautions.sawAtNight({ from: start.from, to: finishBy }, cutting ?? open, workable));
    return 'outside working hours';
  }
  if (cutting) return judgeSlack(workedBetween(middleOf(start), finishBy, shift), cutting, pad);
  if (workable.times(wholeNumber(2)).lessThan(open)) pad.caution(cautions.mostlyAfterHours(open, workable));
  return undefined;
}

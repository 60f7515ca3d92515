/** How a day is told: by the clock, who waits, what light is left, and what the finishers get done. */
import type { Quantity } from '../quantity/quantity';
import type { Pad } from '../reckoning/pad';
import type { DayParsed } from './day-door';
import type { DayClock, Daylight, DayPlanFigures, DayStage, HeldUp } from './day-plan';
import type { DayRange } from './day-set';
import type { Day, DayWork } from './day-stages';
import { clockTime } from './saw-clock';

type Time = Quantity<'time'>;

/** The parts of the work with their times by the clock. */
export function told({ stages }: Day, clock: (t: Time) => string): DayStage[] {
  const by = ({ earliest, likely, latest }: DayRange): DayClock => ({
    earliest: clock(earliest),
    likely: clock(likely),
    latest: clock(latest),
  });
  return stages.map(({ stage, begins, ends }) => ({
    stage,
    begins,
    ends,
    clock: { begins: by(begins), ends: by(ends) },
  }));
}

/** Placers wait for whoever follows them, finishers for water to leave and for what is placed last. */
export function heldUpOf({ strikeOff, bullFloat, placing, area }: DayWork, day: Day): HeldUp[] {
  const { placingTime: P, finishingTime: W, begins } = day;
  const waits: HeldUp[] = [];
  if (P.greaterThan(placing)) {
    const floated = bullFloat?.in.times(area.over(bullFloat.area));
    const by = floated && !floated.lessThan(P) ? 'bull-float' : 'strike-off';
    waits.push({ who: 'placers', by: strikeOff ? by : 'bull-float', for: P.minus(placing) });
  }
  if (begins.likely.greaterThan(P))
    waits.push({ who: 'finishers', by: 'bleed-water', for: begins.likely.minus(P) });
  if (W.lessThan(P)) waits.push({ who: 'finishers', by: 'placing', for: P.minus(W) });
  return waits;
}

/** What is left of the daylight by the slowest concrete, and when to begin so that it is enough. */
export function daylightOf(input: DayParsed, day: Day, pad: Pad): Daylight | undefined {
  const { startAt, sunset } = input;
  if (!sunset) return undefined;
  const { soonest, ends, placingTime: P } = day;
  const n = sunset.in('min');
  const [b, e] = [startAt.in('min'), ends.latest];
  const left = pad.step('daylight behind the finish', 'l = n − b − e', { n, b, e }, n.minus(b).minus(e));
  const startBy = n.minus(soonest.latest);
  if (startBy.sign() < 0) return { left };
  const lastPlaced = startBy.plus(P);
  return { left, startBy: clockTime(startBy), lastPlacedBy: clockTime(lastPlaced) };
}

/** What the finishers do in the shortest window, from the first opening to the last close. */
export function finishableOf(
  { area: A }: DayWork,
  day: Day,
  pad: Pad,
): Pick<DayPlanFigures, 'finishable' | 'unfinished'> {
  const { placingTime: P, window: d, finishingTime: W } = day;
  const open = P.plus(d);
  const finishable = pad.step(
    'area that they finish in time',
    'B = A × ((P + d) ÷ W)',
    { A, P, d, W },
    A.times(open.over(W)),
  );
  return finishable.lessThan(A) ? { finishable, unfinished: A.minus(finishable) } : { finishable };
}

/**
 * What slips when the weather turns: the same day worked out again, warmer, colder, in more wind, or wet.
 *
 * Warmer and colder by 10 degF or 5 degC, concrete and air alike; a measured set goes by the rule from one temperature
 * to the other. Wind crusts the top, so that it closes a tenth of initial set sooner; damp air dries nothing up, so
 * that it opens a tenth later. Both tenths are common practice.
 */
import { Decimal } from '../quantity/decimal';
import { greaterOf, lesserOf } from '../quantity/greater';
import { pure } from '../quantity/numbers';
import { paired } from '../quantity/paired';
import { canonicalValue, type Quantity } from '../quantity/quantity';
import { Pad } from '../reckoning/pad';
import { raised } from '../weather/degrees';
import { byOneEquation } from '../weather/evaporation';
import { type DayBounds, type DayVerdict, judgeDay } from './day-advice';
import { type DayConditions, type DayRange, daySet, warmest } from './day-set';
import { type Day, type DayWork, dayOf } from './day-stages';
import { factorAt, SET_LEAST, SET_MOST } from './set-time';

type Temperature = Quantity<'temperature'>;
type Drying = Quantity<'evaporation'>;

/** The same day in other weather. */
export interface DayShift {
  /** The concrete that it is reckoned with. */
  readonly concreteTemperature: Quantity<'temperature'>;
  /** What the surface then dries at, where humidity and wind are given. */
  readonly evaporation?: Quantity<'evaporation'>;
  /** When the surface opens, after it is placed. */
  readonly opens: DayRange;
  /** When it closes, after it is placed. */
  readonly closes: DayRange;
  /** When the finish begins, after the first concrete. */
  readonly finishBegins: DayRange;
  /** When it is done. */
  readonly finishEnds: DayRange;
  /** When the crew leaves. */
  readonly leaves: DayRange;
  /** How much later the finish is most likely done than in the weather given; below zero, sooner. */
  readonly later: Quantity<'time'>;
  /** When it is then most likely done, by the clock. */
  readonly finishEndsAt: string;
  /** Finishers that keep up. */
  readonly finishersNeeded: Quantity<'count'>;
  /** How it then goes. */
  readonly verdict: DayVerdict;
}

/** All that a day is worked out of. */
export interface DayJob {
  readonly work: DayWork;
  readonly bounds: DayBounds;
  readonly conditions: DayConditions;
  readonly humidity: Quantity<'ratio'> | undefined;
  readonly wind: Quantity<'speed'> | undefined;
  readonly evaporation: Drying | undefined;
}

const WARMER = /*#__PURE__*/ paired('temperature-difference', '10 degF', '5 degC');
const WINDIER = /*#__PURE__*/ paired('speed', '5 mph', '8 km/h');

/** What the surface dries at: as given, or by air, humidity and wind. */
export function dryingOf({ conditions, humidity, wind, evaporation }: DayJob, pad: Pad): Drying | undefined {
  const { concrete, air } = conditions;
  if (!air || !humidity || !wind) return evaporation;
  return byOneEquation('drying of the surface', { concrete, air, humidity, wind }, pad);
}

/** A temperature so much higher or lower, where set times are still known. */
function turned(t: Temperature, way: 'hotter' | 'colder', { system }: Pad): Temperature {
  const by = WARMER.as(system);
  const moved = raised(t, way === 'hotter' ? by : by.negated());
  return lesserOf(greaterOf(moved, lesserOf(SET_LEAST.as(system), t)), greaterOf(SET_MOST.as(system), t));
}

function inOtherHeat(job: DayJob, way: 'hotter' | 'colder', pad: Pad): DayJob {
  const { concrete, air, measured } = job.conditions;
  const T = turned(concrete, way, pad);
  const ratio = new Decimal(canonicalValue(factorAt(T))).div(canonicalValue(factorAt(concrete)));
  return {
    ...job,
    conditions: {
      ...job.conditions,
      concrete: T,
      air: air && turned(air, way, pad),
      slower: measured ? pure(ratio) : undefined,
    },
  };
}

const TURNS: Readonly<
  Record<'ifHotter' | 'ifColder' | 'ifWindier' | 'ifWet', (j: DayJob, p: Pad) => DayJob>
> = {
  ifHotter: (job, pad) => inOtherHeat(job, 'hotter', pad),
  ifColder: (job, pad) => inOtherHeat(job, 'colder', pad),
  ifWindier: (job, pad) => ({
    ...job,
    conditions: { ...job.conditions, windy: true },
    wind: job.wind?.plus(WINDIER.as(pad.system)),
  }),
  ifWet: (job) => ({ ...job, conditions: { ...job.conditions, wet: true } }),
};

function shiftOf(job: DayJob, now: Day, { system }: Pad): DayShift {
  // On a pad of its own: the working and the advice are those of the day as it was given.
  const pad = new Pad(system);
  const { work, bounds, conditions } = job;
  const concrete = daySet(conditions, work.finish, bounds.sheenAt, pad);
  const day = dayOf(work, concrete, warmest(conditions), pad);
  const drying = job.wind && !conditions.wet ? dryingOf(job, pad) : undefined;
  return {
    concreteTemperature: conditions.concrete,
    ...(drying ? { evaporation: drying } : {}),
    opens: concrete.opens,
    closes: concrete.closes,
    finishBegins: day.begins,
    finishEnds: day.ends,
    leaves: day.leaves,
    later: day.ends.likely.minus(now.ends.likely),
    finishEndsAt: bounds.clock(day.ends.likely),
    finishersNeeded: day.needed,
    verdict: judgeDay(day, bounds, conditions.air, pad),
  };
}

/** The day in other weather. */
export const shiftsOf = (
  job: DayJob,
  now: Day,
  pad: Pad,
): Record<'ifHotter' | 'ifColder' | 'ifWindier' | 'ifWet', DayShift> => {
  const turn = (name: keyof typeof TURNS): DayShift => shiftOf(TURNS[name](job, pad), now, pad);
  return {
    ifHotter: turn('ifHotter'),
    ifColder: turn('ifColder'),
    ifWindier: turn('ifWindier'),
    ifWet: turn('ifWet'),
  };
};

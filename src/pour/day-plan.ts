/**
 * The day of a pour: what begins when, as ranges, who waits for whom, and what slips when the weather turns.
 *
 * Placing takes `P`; the surface opens `o` and closes `c` after it is placed (`day-set.ts`); the finish takes all
 * finishers `W` and is done at `max(b + W, P + o)` (`day-stages.ts`). The day is held to bleed water, to the close of
 * the surface, to daylight and working hours (`day-advice.ts`), and worked out again for other weather
 * (`day-shifts.ts`). Set times are those of two sources; when a surface opens and closes is common practice.
 */
import type { Quantity, QuantityInput } from '../quantity/quantity';
import { type Calculation, define } from '../reckoning/calculation';
import { alkali, silica } from '../reckoning/cautions';
import type { Pad } from '../reckoning/pad';
import { ACI_SAW_TIMES } from '../reckoning/source';
import { tryACut } from './cautions';
import { type DayVerdict, heedOverlap, heedWeather, judgeDay } from './day-advice';
import { testNotClock } from './day-cautions';
import { ageOf, boundsOf, checkDrying, checkTogether, type DayParsed, dayDoor, workOf } from './day-door';
import {
  assumeShares,
  checkAge,
  type DayConditions,
  type DayFinish,
  type DayRange,
  daySet,
  eachCase,
  warmest,
} from './day-set';
import { type DayJob, type DayShift, dryingOf, shiftsOf } from './day-shifts';
import { FOOTPRINT_RULE, NO_FINISH_IN_WATER } from './day-sources';
import { type DayStageName, dayOf } from './day-stages';
import { daylightOf, finishableOf, heldUpOf, told } from './day-told';
import { heedWash } from './day-wash';
import { type HoursInput, inOrder } from './measured-hours';
import { type ClockTime, clockTime } from './saw-clock';
import { temperatureOf } from './set-time';
import { SET_FACTOR, SET_TIMES } from './truck-sources';

/** How much of an area somebody does in a time. */
export interface AreaRateInput {
  /** What is done. */
  readonly area: QuantityInput<'area'>;
  /** In this time. */
  readonly in: QuantityInput<'time'>;
}

/** How much of a length somebody does in a time. */
export interface LengthRateInput {
  /** What is done. */
  readonly length: QuantityInput<'length'>;
  /** In this time. */
  readonly in: QuantityInput<'time'>;
}

/** Input of {@link dayPlan}. */
export interface DayPlanInput {
  /** Time of day when the first concrete is placed: `7:00`, `7:30 am`. */
  readonly startAt: QuantityInput<'time'>;
  /** What is finished. */
  readonly area: QuantityInput<'area'>;
  /** How long placing takes, as `truckPlan` has it; or `volume` and `placingRate`. */
  readonly placingTime?: QuantityInput<'time'>;
  /** What is placed; with `placingRate`. */
  readonly volume?: QuantityInput<'volume'>;
  /** What is placed in a given time; with `volume`. */
  readonly placingRate?: QuantityInput<'volume-rate'>;
  /** What the crew strikes off, all told; not given, it keeps up with placing. */
  readonly strikeOffRate?: AreaRateInput;
  /** What the crew bull-floats, all told; not given, it keeps up with placing. */
  readonly bullFloatRate?: AreaRateInput;
  /** How it is finished. */
  readonly finish: 'float' | 'broom' | 'hard-trowel' | 'stamp' | 'exposed-aggregate' | 'rock-salt';
  /** How many finish. */
  readonly finishers: number;
  /** What one finisher does, all passes of the finish together. */
  readonly finishRate: AreaRateInput;
  /** Edges and hand grooves that the finishers tool. */
  readonly edgeLength?: QuantityInput<'length'>;
  /** What one finisher tools of them. */
  readonly edgeRate?: LengthRateInput;
  /** Time of day when the finish is planned to begin; before `startAt` it is on the next day. */
  readonly finishAt?: QuantityInput<'time'>;
  /** Time of day when sheen was last seen on what was placed first; before `startAt` it is on the next day. */
  readonly sheenAt?: QuantityInput<'time'>;
  /** Of the concrete as it is placed; by default `70 degF` or `21 degC`. */
  readonly concreteTemperature?: QuantityInput<'temperature'>;
  /** Of the air while it sets: a slab draws toward it. */
  readonly airTemperature?: QuantityInput<'temperature'>;
  /** Initial set of this mix on such a day as measured, or as its supplier says of a retarder or an accelerator. */
  readonly initialSet?: HoursInput;
  /** Of the concrete as it is placed, from its loading on, as `truckPlan` has it; by default nothing. */
  readonly age?: QuantityInput<'time'>;
  /** What the surface dries at, as `evaporationRate` has it; or `humidity` and `wind` with `airTemperature`. */
  readonly evaporation?: QuantityInput<'evaporation'>;
  /** Relative humidity of the air. */
  readonly humidity?: QuantityInput<'ratio'>;
  /** Wind near the surface. */
  readonly wind?: QuantityInput<'speed'>;
  /** Air in the concrete, by the ticket. */
  readonly airContent?: QuantityInput<'ratio'>;
  /** Whether it will freeze when it is in use. */
  readonly freezes?: boolean;
  /** Time of day from which rain is expected; before `startAt` it rains already. */
  readonly rainAt?: QuantityInput<'time'>;
  /** Time of day of sunset; before `startAt` it is dark already. */
  readonly sunset?: QuantityInput<'time'>;
  /**
   * Time of day when work begins on the days after, for who washes exposed aggregate; with `washAfter`. By default 7:00,
   * or `startAt` where that is earlier or `workTo` comes after midnight.
   */
  readonly workFrom?: QuantityInput<'time'>;
  /** Time of day when work ends; before `startAt` it is on the next day. By default 18:00, where `sunset` is not told. */
  readonly workTo?: QuantityInput<'time'>;
  /** Spraying or covering it behind the finish; by default `15 min`. */
  readonly curingTime?: QuantityInput<'time'>;
  /** From the finish until stones are washed free, as the maker of the retarder says; for exposed aggregate. */
  readonly washAfter?: HoursInput;
  /** Which saw cuts joints on the day; left out where they are tooled. */
  readonly saw?: 'conventional' | 'early-entry';
  /** As the crew would call it, for the hours of sawing; by default by the concrete, or the air where that is warmer. */
  readonly weather?: 'hot' | 'mild' | 'cold';
  /** How long the cutting takes; with `saw`. */
  readonly cuttingTime?: QuantityInput<'time'>;
}

/** A range of times by the clock; `+1` stands behind a time of the next day. */
export interface DayClock {
  /** At the earliest. */
  readonly earliest: string;
  /** Most likely. */
  readonly likely: string;
  /** At the latest. */
  readonly latest: string;
}

/** One part of the day's work; times are from the first concrete on. */
export interface DayStage {
  /** What is done; `wait` is for bleed water to leave. */
  readonly stage: DayStageName;
  /** When it begins. */
  readonly begins: DayRange;
  /** When it ends. */
  readonly ends: DayRange;
  /** The same by the clock. */
  readonly clock: {
    /** When it begins. */
    readonly begins: DayClock;
    /** When it ends. */
    readonly ends: DayClock;
  };
}

/** Somebody who waits. */
export interface HeldUp {
  /** Who waits. */
  readonly who: 'placers' | 'finishers';
  /** For what. */
  readonly by: 'strike-off' | 'bull-float' | 'bleed-water' | 'placing';
  /** How long, most likely. */
  readonly for: Quantity<'time'>;
}

/** Daylight for the finish, by the slowest concrete. */
export interface Daylight {
  /** What is left of it behind the finish; below zero, what is missing. */
  readonly left: Quantity<'time'>;
  /** The latest that placing may begin, where there is such a time on that day. */
  readonly startBy?: ClockTime;
  /** The latest that the last concrete may be placed. */
  readonly lastPlacedBy?: ClockTime;
}

/** Figures of {@link dayPlan}. */
export interface DayPlanFigures {
  /** When the first concrete is placed. */
  readonly startsAt: ClockTime;
  /** Each part of the work in its order. */
  readonly stages: readonly DayStage[];
  /** The finish that is planned. */
  readonly finish: DayFinish;
  /** From the first concrete to the last, struck off and bull-floated. */
  readonly placingTime: Quantity<'time'>;
  /** What the finish takes all finishers. */
  readonly finishingTime: Quantity<'time'>;
  /** Initial set, after a place is placed. */
  readonly initialSet: DayRange;
  /** When the surface opens there: no sheen, a shallow footprint. */
  readonly opens: DayRange;
  /** When it closes there, and takes the finish no longer. */
  readonly closes: DayRange;
  /** How long it is open at one place, in the shortest of the cases. */
  readonly window: Quantity<'time'>;
  /** What these finishers do from the first opening to the last close, in that case. */
  readonly finishable: Quantity<'area'>;
  /** What they do not get to then. */
  readonly unfinished?: Quantity<'area'>;
  /** Finishers in this plan. */
  readonly finishers: Quantity<'count'>;
  /** Finishers that keep up with the set in every case. */
  readonly finishersNeeded: Quantity<'count'>;
  /** Who waits for whom. */
  readonly heldUp: readonly HeldUp[];
  /** Daylight, where sunset is given. */
  readonly daylight?: Daylight;
  /** Working hours left when the crew leaves at the latest, where `workTo` is given; below zero, what is over them. */
  readonly workLeft?: Quantity<'time'>;
  /** Until then rain is kept off: the last concrete has set. */
  readonly coverUntil: DayRange;
  /** What the surface dries at, where that is given or humidity and wind are. */
  readonly evaporation?: Quantity<'evaporation'>;
  /** The same day 10 degF or 5 degC warmer. */
  readonly ifHotter: DayShift;
  /** The same day as much colder. */
  readonly ifColder: DayShift;
  /** The same day in more wind, which crusts the top. */
  readonly ifWindier: DayShift;
  /** The same day so damp that nothing dries up. */
  readonly ifWet: DayShift;
  /** How it goes. */
  readonly verdict: DayVerdict;
}

function conditionsOf(input: DayParsed, concrete: Quantity<'temperature'>, pad: Pad): DayConditions {
  return {
    concrete,
    air: input.airTemperature,
    measured: inOrder('initialSet', input.initialSet),
    age: ageOf(input, pad),
    slower: undefined,
    wet: false,
    windy: false,
  };
}

function reckon(input: DayParsed, pad: Pad): DayPlanFigures {
  checkTogether(input);
  checkDrying(input, pad);
  const { finish } = input;
  const bounds = boundsOf(input, pad);
  const concrete = temperatureOf(input.concreteTemperature, pad, input.initialSet !== undefined);
  const conditions = conditionsOf(input, concrete, pad);
  assumeShares(finish, pad);
  const set = daySet(conditions, finish, bounds.sheenAt, pad);
  checkAge(conditions, pad);
  const work = workOf(input, bounds.finishAt, pad);
  const day = dayOf(work, set, warmest(conditions), pad);
  const job: DayJob = { work, bounds, conditions, ...driedBy(input) };
  const drying = dryingOf(job, pad);
  const daylight = daylightOf(input, day, pad);
  const { placingTime: P } = day;
  const verdict = judgeDay(day, bounds, conditions.air, pad);
  heedWash(day, input, bounds.clock, pad);
  heedWeather(
    finish,
    { concrete, air: input.airTemperature, drying, airContent: input.airContent, freezes: input.freezes },
    pad,
  );
  heedOverlap(day, pad);
  for (const caution of [testNotClock, alkali, ...(work.saw ? [tryACut, silica] : [])]) pad.caution(caution);
  return {
    startsAt: clockTime(input.startAt),
    stages: told(day, bounds.clock),
    finish,
    placingTime: P,
    finishingTime: day.finishingTime,
    initialSet: set.set,
    opens: set.opens,
    closes: set.closes,
    window: day.window,
    ...finishableOf(work, day, pad),
    finishers: work.finishers,
    finishersNeeded: day.needed,
    heldUp: heldUpOf(work, day),
    ...(daylight ? { daylight } : {}),
    ...(bounds.workEnds ? { workLeft: bounds.workEnds.minus(day.leaves.latest) } : {}),
    coverUntil: eachCase((name) => P.plus(set.set[name])),
    ...(drying ? { evaporation: drying } : {}),
    ...shiftsOf(job, day, pad),
    verdict,
  };
}

const driedBy = ({ humidity, wind, evaporation }: DayParsed) => ({ humidity, wind, evaporation });

/**
 * The day of a pour: stages with the earliest, likely and latest time that each begins and ends, finishers that keep
 * up, daylight, and the same day in other weather.
 *
 * @param input - the start, the area and how long placing takes, the finish with its finishers and their rate; the
 * temperatures, a measured set, drying, daylight, rain and working hours where they are known
 * @returns each stage by time and clock, when the surface opens and closes, finishers needed, who waits, what slips in
 * other weather, and a verdict
 * @throws {InputError} `missing`; `give-one-of` placing time and volume with its rate, drying and humidity; `does-not-fit`
 * for hours that end before they begin, for a start beyond 24 h, and for times beyond 30 days; `outside-range` for a
 * humidity or air that the equation of drying does not serve, and for a set within seconds; `not-served` for a temperature at which no concrete is
 * placed; quantities that cannot be read or are not greater than zero
 * @source set times from L&M Construction Chemicals and the National Frame Building Association; hours of sawing from
 * the American Concrete Institute; when a surface opens and closes is common practice
 * @example
 * ```ts
 * import { dayPlan } from 'flatwork-reckoner';
 *
 * const { figures } = dayPlan({
 *   startAt: '7:30 am',
 *   area: '960 ft2',
 *   volume: '13 yd3',
 *   placingRate: '13 yd3/h',
 *   finish: 'broom',
 *   finishers: 3,
 *   finishRate: { area: '150 ft2', in: '1 h' },
 *   concreteTemperature: '70 degF',
 *   sunset: '18:40',
 * });
 * const finish = figures.stages.find(({ stage }) => stage === 'finish');
 * finish?.clock.begins.likely; // '10:30'
 * finish?.clock.ends.latest; // '13:50'
 * figures.finishersNeeded.format(); // '3 each'
 * figures.ifHotter.finishEndsAt; // '11:45'
 * figures.verdict; // 'fits the day'
 * ```
 */
export const dayPlan: Calculation<DayPlanInput, DayPlanFigures> = /*#__PURE__*/ define({
  id: 'day-plan',
  title: 'The order of the day of a pour',
  version: 1,
  sources: [SET_TIMES, SET_FACTOR, FOOTPRINT_RULE, NO_FINISH_IN_WATER, ACI_SAW_TIMES],
  input: dayDoor,
  reckon,
});

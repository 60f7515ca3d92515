/** How the input of a day is read, and what of it must go together. */

import { AIR as AIR_CONTENT } from '../mix/ordinary';
import * as sharedFaults from '../quantity/faults';
import { constant, ratio, time } from '../quantity/make';
import type { Quantity } from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import {
  choice,
  type Field,
  fields,
  maybe,
  type Output,
  quantity,
  whole,
  yesOrNo,
} from '../reckoning/fields';
import { isUnusual, unusual } from '../reckoning/ordinary';
import type { Pad } from '../reckoning/pad';
import { COMMON_PRACTICE } from '../reckoning/source';
import { all, allOrNone, given, needs, notBoth, oneOf, says, where } from '../reckoning/together';
import * as weatherFaults from '../weather/faults';
import { AIR, HUMIDITY, WIND } from '../weather/ordinary';
import { bounded, boundedMinutes } from './bounded';
import { clock, clockText } from './clock';
import type { DayBounds } from './day-advice';
import * as ordinary from './day-ordinary';
import type { AreaPace, DayWork } from './day-stages';
import { hoursField, inOrder } from './measured-hours';
import { CUTTING_TIME, POUR } from './ordinary';
import { clockTime } from './saw-clock';
import { SET_LEAST, SET_MOST } from './set-time';
import { AREA_PLACED, CONCRETE_TEMPERATURE, PLACING_RATE } from './truck-ordinary';

type Time = Quantity<'time'>;

const MOST_FINISHERS = 200;

const areaRate = () =>
  fields({
    area: quantity('area', 'area', 'positive', ordinary.PACE_AREA),
    in: quantity('time', 'in', 'positive', ordinary.PACE_TIME),
  });

/** The members of the input. */
const members = () => ({
  startAt: clock('startAt'),
  area: quantity('area', 'area', 'positive', AREA_PLACED),
  placingTime: maybe(quantity('time', 'placingTime', 'positive', ordinary.PLACING_TIME)),
  volume: maybe(quantity('volume', 'volume', 'positive', POUR)),
  placingRate: maybe(quantity('volume-rate', 'placingRate', 'positive', PLACING_RATE)),
  strikeOffRate: maybe(areaRate()),
  bullFloatRate: maybe(areaRate()),
  finish: choice('finish', [
    'float',
    'broom',
    'hard-trowel',
    'stamp',
    'exposed-aggregate',
    'rock-salt',
  ] as const),
  finishers: whole('finishers', 1, MOST_FINISHERS),
  finishRate: areaRate(),
  edgeLength: maybe(quantity('length', 'edgeLength', 'positive', ordinary.EDGES)),
  edgeRate: maybe(
    fields({
      length: quantity('length', 'length', 'positive', ordinary.PACE_LENGTH),
      in: quantity('time', 'in', 'positive', ordinary.PACE_TIME),
    }),
  ),
  finishAt: maybe(clock('finishAt')),
  sheenAt: maybe(clock('sheenAt')),
  concreteTemperature: maybe(quantity('temperature', 'concreteTemperature', 'any', CONCRETE_TEMPERATURE)),
  airTemperature: maybe(quantity('temperature', 'airTemperature', 'any', AIR)),
  initialSet: maybe(hoursField(ordinary.SET)),
  age: maybe(quantity('time', 'age', 'not-negative', ordinary.AGE)),
  evaporation: maybe(quantity('evaporation', 'evaporation', 'not-negative', ordinary.DRYING)),
  humidity: maybe(quantity('ratio', 'humidity', 'not-negative', HUMIDITY)),
  wind: maybe(quantity('speed', 'wind', 'not-negative', WIND)),
  airContent: maybe(quantity('ratio', 'airContent', 'not-negative', AIR_CONTENT)),
  freezes: maybe(yesOrNo('freezes')),
  rainAt: maybe(clock('rainAt')),
  sunset: maybe(clock('sunset')),
  workFrom: maybe(clock('workFrom')),
  workTo: maybe(clock('workTo')),
  curingTime: maybe(quantity('time', 'curingTime', 'positive', ordinary.CURING_TIME)),
  washAfter: maybe(hoursField(ordinary.WASH_AFTER)),
  saw: maybe(choice('saw', ['conventional', 'early-entry'] as const)),
  weather: maybe(choice('weather', ['hot', 'mild', 'cold'] as const)),
  cuttingTime: maybe(quantity('time', 'cuttingTime', 'positive', CUTTING_TIME)),
});

/** The input as it is read. */
export type DayParsed = {
  readonly [K in keyof ReturnType<typeof members>]: Output<ReturnType<typeof members>[K]>;
};

/** The field of the whole input. */
export const dayDoor = (): Field<DayParsed> =>
  fields(
    members(),
    all(
      oneOf(['placingTime'], ['volume', 'placingRate']),
      allOrNone('volume', 'placingRate'),
      notBoth('placingTime', 'volume'),
      allOrNone('edgeLength', 'edgeRate'),
      allOrNone('humidity', 'wind'),
      needs('humidity', 'airTemperature'),
      notBoth('evaporation', 'humidity'),
      needs('cuttingTime', 'saw'),
      needs('workFrom', 'washAfter'),
      where(says('finish', 'exposed-aggregate'), given('washAfter'), { not: given('washAfter') }),
    ),
  );

const DAY = constant(() => time('24 h'));
const NONE = constant(() => time('0 min'));
const QUARTER_HOUR = constant(() => time('15 min'));
/** When a usual working day ends. */
export const USUAL_END = constant(() => time('18 h'));
const WHOLE = constant(() => ratio('100%'));

function placingOf({ placingTime, volume: V, placingRate: R }: DayParsed, pad: Pad): Time {
  if (placingTime && (V || R))
    refuse('placingTime', sharedFaults.giveOneOf(['placingTime', 'volume with placingRate']));
  if (placingTime) return boundedMinutes('placingTime', placingTime);
  if (!V && !R) return refuse('placingTime', sharedFaults.missing('placingTime', '"75 min"'));
  if (!V) return refuse('volume', sharedFaults.missing('volume', ['"13 yd3"', '"10 m3"']));
  if (!R) return refuse('placingRate', sharedFaults.missing('placingRate', ['"20 yd3/h"', '"15 m3/h"']));
  const p = boundedMinutes('placingRate', pad.step('placing', 'p = V ÷ R', { V, R }, V.over(R).in('min')));
  if (isUnusual(p, ordinary.PLACING_TIME))
    pad.caution(unusual('placingRate', { value: p, ordinary: ordinary.PLACING_TIME }, pad.system));
  return p;
}

function curingOf({ curingTime }: DayParsed, pad: Pad): Time {
  if (curingTime) return boundedMinutes('curingTime', curingTime);
  pad.assume({
    name: 'curingTime',
    value: QUARTER_HOUR(),
    because: 'spraying a compound on a small slab, or covering it',
    override: 'Give curingTime',
    source: COMMON_PRACTICE,
  });
  return QUARTER_HOUR();
}

function checkWash({ finish, washAfter, workFrom }: DayParsed): void {
  if (finish === 'exposed-aggregate' && !washAfter)
    refuse('washAfter', sharedFaults.missing('washAfter', '{ from: "12 h", to: "24 h" }'));
  if (finish !== 'exposed-aggregate' && washAfter)
    refuse('washAfter', sharedFaults.giveOneOf(['washAfter', 'another finish than exposed-aggregate']));
  if (finish !== 'exposed-aggregate' && workFrom)
    refuse('workFrom', sharedFaults.giveOneOf(['workFrom', 'another finish than exposed-aggregate']));
}

/** What is missing, or is there without what it goes with. */
export function checkTogether(input: DayParsed): void {
  checkWash(input);
  const { edgeLength, edgeRate, saw, cuttingTime, humidity, wind, airTemperature } = input;
  if (edgeLength && !edgeRate)
    refuse(
      'edgeRate',
      sharedFaults.missing('edgeRate', ['{ length: "100 ft", in: "1 h" }', '{ length: "30 m", in: "1 h" }']),
    );
  if (edgeRate && !edgeLength)
    refuse('edgeLength', sharedFaults.missing('edgeLength', ['"120 ft"', '"40 m"']));
  if (cuttingTime && !saw) refuse('saw', sharedFaults.missing('saw', '"early-entry"'));
  if (humidity && !wind) refuse('wind', sharedFaults.missing('wind', ['"8 mph"', '"12 km/h"']));
  if (wind && !humidity) refuse('humidity', sharedFaults.missing('humidity', '"40%"'));
  if (humidity && !airTemperature)
    refuse('airTemperature', sharedFaults.missing('airTemperature', ['"75 degF"', '"24 degC"']));
}

/** The equation of drying ends where water freezes, and humidity where air is saturated. */
export function checkDrying({ evaporation, humidity, airTemperature: T }: DayParsed, pad: Pad): void {
  if (evaporation && humidity)
    refuse('evaporation', sharedFaults.giveOneOf(['evaporation', 'humidity with wind']));
  if (!humidity || !T) return;
  if (humidity.greaterThan(WHOLE())) refuse('humidity', weatherFaults.outsideRange('humidity', '0% to 100%'));
  if (T.lessThan(SET_LEAST.as(pad.system)) || T.greaterThan(SET_MOST.as(pad.system)))
    refuse(
      'airTemperature',
      weatherFaults.outsideRange('airTemperature', ['32 degF to 120 degF', '0 degC to 50 degC']),
    );
}

/** A time of day as the time since the start; one before it is on the next day. */
const onwards = (start: Time, at: Time | undefined): Time | undefined =>
  at && (at.lessThan(start) ? at.plus(DAY()) : at).minus(start).in('min');

function clockOfDay(start: Time): (t: Time) => string {
  return (t) => {
    const { day, time: at } = clockTime(start.plus(t));
    const days = Number(day.value);
    return days > 0 ? `${clockText(at)} +${days}` : clockText(at);
  };
}

/** Of the concrete as it is placed: older than that it would have set before. */
export function ageOf({ age }: DayParsed, pad: Pad): Time {
  if (age) return boundedMinutes('age', age);
  pad.assume({
    name: 'age',
    value: NONE(),
    because: 'set is counted from placing; concrete that rode for an hour sets an hour sooner',
    override: 'Give age as the concrete is placed, from its loading on, as truckPlan has it',
    source: COMMON_PRACTICE,
  });
  return NONE();
}

/** When work ends; as on a usual day where neither that nor sunset is told. */
function workToOf({ workTo, sunset, startAt }: DayParsed, pad: Pad): Time | undefined {
  if (workTo || sunset || !startAt.lessThan(USUAL_END())) return workTo;
  pad.assume({
    name: 'workTo',
    value: USUAL_END(),
    because: 'a usual working day ends then, and daylight is not told',
    override: 'Give workTo, or sunset',
    source: COMMON_PRACTICE,
  });
  return USUAL_END();
}

/** What the day is held to. */
export function boundsOf(input: DayParsed, pad: Pad): DayBounds {
  const { startAt: start, finish, sunset, rainAt } = input;
  const workTo = workToOf(input, pad);
  if (!start.lessThan(DAY())) refuse('startAt', sharedFaults.doesNotFit('startAt', '24 h'));
  if (workTo && workTo.compareTo(start) === 0) refuse('workTo', sharedFaults.doesNotFit('startAt', 'workTo'));
  const rain = rainAt?.minus(start).in('min');
  return {
    finish,
    finishAt: onwards(start, input.finishAt),
    sheenAt: onwards(start, input.sheenAt),
    sunset: sunset?.minus(start).in('min'),
    workEnds: onwards(start, workTo),
    rainAt: rain && (rain.sign() < 0 ? NONE() : rain),
    clock: clockOfDay(start),
  };
}

/** A rate that would take longer than any plan looks ahead. */
function checkPace(
  path: 'strikeOffRate' | 'bullFloatRate' | 'finishRate',
  A: Quantity<'area'>,
  pace: AreaPace,
): void {
  bounded(path, pace.in.times(A.over(pace.area)));
}

function checkPaces(input: DayParsed): void {
  const { area, strikeOffRate, bullFloatRate, finishRate, edgeLength, edgeRate } = input;
  checkPace('finishRate', area, finishRate);
  if (strikeOffRate) checkPace('strikeOffRate', area, strikeOffRate);
  if (bullFloatRate) checkPace('bullFloatRate', area, bullFloatRate);
  if (!edgeLength || !edgeRate) return;
  bounded('edgeRate', edgeRate.in.times(edgeLength.over(edgeRate.length)));
}

/** The work of the day. */
export function workOf(input: DayParsed, finishAt: Time | undefined, pad: Pad): DayWork {
  checkPaces(input);
  const { area, finish, finishRate, finishers, weather, saw, edgeRate } = input;
  return {
    area,
    placing: placingOf(input, pad),
    strikeOff: input.strikeOffRate,
    bullFloat: input.bullFloatRate,
    edges: input.edgeLength,
    edgeRate,
    finish,
    finishRate,
    finishers,
    finishAt,
    curing: curingOf(input, pad),
    washAfter: inOrder('washAfter', input.washAfter),
    saw,
    weather,
    cutting: input.cuttingTime && boundedMinutes('cuttingTime', input.cuttingTime),
  };
}

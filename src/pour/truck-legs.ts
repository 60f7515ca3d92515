/** How long a truck is away: the way out and back, washing, loading, and how old a load may be. */

import { BY_OLD_EDITIONS, C94_BEFORE_2021, OLD_TIME_LIMIT } from '../mix/time-limit';
import * as sharedFaults from '../quantity/faults';
import { constant, time } from '../quantity/make';
import { paired } from '../quantity/paired';
import type { Quantity } from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import type { Pad } from '../reckoning/pad';
import { COMMON_PRACTICE } from '../reckoning/source';
import { say } from '../reckoning/words';
import { boundedMinutes } from './bounded';
import type { TruckParsed } from './truck-input';

type Time = Quantity<'time'>;

const TEN_MINUTES = constant(() => time('10 min'));

/** From here on the older editions shorten the limit. */
export const HOT = /*#__PURE__*/ paired('temperature', '80 degF', '27 degC');

function travelOf({ travelTime, distance: d, speed: v }: TruckParsed, pad: Pad): Time {
  if (travelTime && (d || v))
    refuse('travelTime', sharedFaults.giveOneOf(['travelTime', 'distance with speed']));
  if (travelTime) return boundedMinutes('travelTime', travelTime);
  if (!d && !v) return refuse('travelTime', sharedFaults.missing('travelTime', '"25 min"'));
  if (!d) return refuse('distance', sharedFaults.missing('distance', ['"12 mi"', '"20 km"']));
  if (!v) return refuse('speed', sharedFaults.missing('speed', ['"30 mph"', '"50 km/h"']));
  return boundedMinutes('speed', pad.step('the way', 't = d ÷ v', { d, v }, d.over(v).in('min')));
}

type Plain = 'loadingTime' | 'washOutTime';

const BECAUSE: Readonly<Record<Plain, string>> = {
  loadingTime: 'batching, loading and rinsing the chute of one truck',
  washOutTime: 'rinsing chute and hopper before the truck may drive on a road',
};

/** A time as it was given, or ten minutes as is usual. */
function usualTime(name: Plain, input: TruckParsed, pad: Pad): Time {
  const t = input[name];
  if (t) return boundedMinutes(name, t);
  pad.assume({
    name,
    value: TEN_MINUTES(),
    because: BECAUSE[name],
    override: say`Give ${{ name }} as the supplier has it`,
    source: COMMON_PRACTICE,
  });
  return TEN_MINUTES();
}

function returnOf({ returnTime }: TruckParsed, t: Time, pad: Pad): Time {
  if (returnTime) return boundedMinutes('returnTime', returnTime);
  pad.assume({
    name: 'returnTime',
    value: { reckoned: t },
    because: 'as long as the way out',
    override: 'Give returnTime',
    source: COMMON_PRACTICE,
  });
  return t;
}

export function ageLimitOf({ ageLimit, concreteTemperature: T }: TruckParsed, pad: Pad): Time {
  if (ageLimit) return ageLimit;
  pad.assume({
    name: 'ageLimit',
    value: OLD_TIME_LIMIT(),
    because:
      T && HOT.exceededBy(T)
        ? 'the default of ASTM C94 before its edition of 2021, which is shortened in hot weather; since then the purchaser states the limit, else the producer, and it is on the ticket'
        : BY_OLD_EDITIONS,
    override: 'Give ageLimit as it is stated for this concrete',
    source: C94_BEFORE_2021,
  });
  return OLD_TIME_LIMIT();
}

/** Parts of a round, all in minutes. */
export interface Legs {
  readonly loading: Time;
  readonly travel: Time;
  readonly washOut: Time;
  readonly way: Time;
}

export function legsOf(input: TruckParsed, pad: Pad): Legs {
  const travel = travelOf(input, pad);
  return {
    loading: usualTime('loadingTime', input, pad),
    travel,
    washOut: usualTime('washOutTime', input, pad),
    way: returnOf(input, travel, pad),
  };
}

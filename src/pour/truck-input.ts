/** What a plan of trucks is asked for: as it is written, and as it is read. */

import type { Quantity, QuantityInput } from '../quantity/quantity';
import { choice, type Field, fields, list, maybe, quantity, whole } from '../reckoning/fields';
import { all, allOrNone, given, notBoth, oneOf, says, where } from '../reckoning/together';
import { AIR } from '../weather/ordinary';
import { clock as clockField } from './clock';
import { SET } from './day-ordinary';
import { type HoursInput, hoursField } from './measured-hours';
import { INCREMENT, POUR, TRUCK } from './ordinary';
import { type Placing, type PlacingInput, placingField } from './placing';
import type { Hours } from './saw-hours';
import { MOST_LOADS } from './truck-loads';
import * as ordinary from './truck-ordinary';

type Time = Quantity<'time'>;
type Volume = Quantity<'volume'>;
type Count = Quantity<'count'>;

/** Input of {@link truckPlan}. */
export interface TruckPlanInput {
  /** Concrete to place; full trucks, then the rest. Or `loads`. */
  readonly volume?: QuantityInput<'volume'>;
  /** What one truck carries. */
  readonly truckCapacity?: QuantityInput<'volume'>;
  /** Each load in turn, as `concreteOrder` splits them, in place of volume and capacity. */
  readonly loads?: readonly QuantityInput<'volume'>[];
  /** The step in which the supplier sells: loads are rounded to it, a full truck down and the rest up. */
  readonly increment?: QuantityInput<'volume'>;
  /** How concrete comes from the truck to its place. */
  readonly placing: PlacingInput;
  /** What the crew can spread, strike off and float; the most that is placed, however it comes. */
  readonly crewRate?: QuantityInput<'volume-rate'>;
  /** How many trucks there are; by default as many as it takes. */
  readonly trucks?: number;
  /** `spaced` by a schedule, or each loaded again `at-once` when it is back; by default spaced. */
  readonly sending?: 'spaced' | 'at-once';
  /** Time between arrivals; by default what the load before takes to place. */
  readonly spacing?: QuantityInput<'time'>;
  /** From the plant to the site; or `distance` and `speed`. */
  readonly travelTime?: QuantityInput<'time'>;
  /** By road from the plant. */
  readonly distance?: QuantityInput<'length'>;
  /** On that road, stops and lights included. */
  readonly speed?: QuantityInput<'speed'>;
  /** Loading a truck, one at a time; by default `10 min`. */
  readonly loadingTime?: QuantityInput<'time'>;
  /** Washing out at the site; by default `10 min`. */
  readonly washOutTime?: QuantityInput<'time'>;
  /** From the site to the plant; by default as long as the way out. */
  readonly returnTime?: QuantityInput<'time'>;
  /** Of the concrete as it is placed; by default `70 degF` or `21 degC`. */
  readonly concreteTemperature?: QuantityInput<'temperature'>;
  /** Of the air at the site: where it is warmer than the concrete, the open edge crusts over by it. */
  readonly airTemperature?: QuantityInput<'temperature'>;
  /**
   * Initial set of this mix on such a day, from its mixing on, as measured, or as its supplier says of a retarder or an
   * accelerator; by default by its temperature.
   */
  readonly initialSet?: HoursInput;
  /** Age at the end of unloading that the purchaser or the producer states; by default `90 min`. */
  readonly ageLimit?: QuantityInput<'time'>;
  /** Time at the site that a truck may take without a charge. */
  readonly freeTime?: QuantityInput<'time'>;
  /** Time of day when the first truck arrives: `7:00`, `1 pm`. */
  readonly firstTruckAt?: QuantityInput<'time'>;
}

export interface TruckParsed {
  readonly volume: Volume | undefined;
  readonly truckCapacity: Volume | undefined;
  readonly loads: readonly Volume[] | undefined;
  readonly increment: Volume | undefined;
  readonly placing: Placing;
  readonly crewRate: Quantity<'volume-rate'> | undefined;
  readonly trucks: Count | undefined;
  readonly sending: 'spaced' | 'at-once' | undefined;
  readonly spacing: Time | undefined;
  readonly travelTime: Time | undefined;
  readonly distance: Quantity<'length'> | undefined;
  readonly speed: Quantity<'speed'> | undefined;
  readonly loadingTime: Time | undefined;
  readonly washOutTime: Time | undefined;
  readonly returnTime: Time | undefined;
  readonly concreteTemperature: Quantity<'temperature'> | undefined;
  readonly airTemperature: Quantity<'temperature'> | undefined;
  readonly initialSet: Hours | undefined;
  readonly ageLimit: Time | undefined;
  readonly freeTime: Time | undefined;
  readonly firstTruckAt: Time | undefined;
}

const MOST_TRUCKS = 500;

const minutes = (name: string, range: Parameters<typeof quantity>[3], sign: 'positive' | 'not-negative') =>
  maybe(quantity('time', name, sign, range));

export function door(): Field<TruckParsed> {
  return fields(
    {
      volume: maybe(quantity('volume', 'volume', 'positive', POUR)),
      truckCapacity: maybe(quantity('volume', 'truckCapacity', 'positive', TRUCK)),
      loads: maybe(list(quantity('volume', 'load', 'positive', TRUCK), 1, MOST_LOADS)),
      increment: maybe(quantity('volume', 'increment', 'positive', INCREMENT)),
      placing: placingField(),
      crewRate: maybe(quantity('volume-rate', 'crewRate', 'positive', ordinary.PLACING_RATE)),
      trucks: maybe(whole('trucks', 1, MOST_TRUCKS)),
      sending: maybe(choice('sending', ['spaced', 'at-once'] as const)),
      spacing: minutes('spacing', ordinary.SPACING, 'positive'),
      travelTime: minutes('travelTime', ordinary.TRAVEL, 'not-negative'),
      distance: maybe(quantity('length', 'distance', 'positive', ordinary.ROAD)),
      speed: maybe(quantity('speed', 'speed', 'positive', ordinary.ROAD_SPEED)),
      loadingTime: minutes('loadingTime', ordinary.LOADING, 'positive'),
      washOutTime: minutes('washOutTime', ordinary.WASHING, 'not-negative'),
      returnTime: minutes('returnTime', ordinary.TRAVEL, 'not-negative'),
      concreteTemperature: maybe(
        quantity('temperature', 'concreteTemperature', 'any', ordinary.CONCRETE_TEMPERATURE),
      ),
      airTemperature: maybe(quantity('temperature', 'airTemperature', 'any', AIR)),
      initialSet: maybe(hoursField(SET)),
      ageLimit: minutes('ageLimit', ordinary.AGE_LIMIT, 'positive'),
      freeTime: minutes('freeTime', ordinary.FREE_TIME, 'positive'),
      firstTruckAt: maybe(clockField('firstTruckAt')),
    },
    all(
      oneOf(['volume', 'truckCapacity'], ['loads']),
      notBoth('volume', 'loads'),
      notBoth('truckCapacity', 'loads'),
      oneOf(['travelTime'], ['distance', 'speed']),
      allOrNone('distance', 'speed'),
      notBoth('travelTime', 'distance'),
      where(says('sending', 'at-once'), all(given('trucks'), { not: given('spacing') })),
    ),
  );
}

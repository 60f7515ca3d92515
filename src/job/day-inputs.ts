/**
 * The days on which a job is poured: which elements, in which order, and what the day is like.
 *
 * A part of a day is the input of one calculation, as that of an element is; what the day says of itself, and what
 * follows from the elements and their orders, is put into each part that asks for it.
 */
import type { DayPlanInput } from '../pour/day-plan';
import type { TruckPlanInput } from '../pour/truck-input';
import type { Quantity, QuantityInput } from '../quantity/quantity';
import type { EvaporationRateInput } from '../weather/evaporation-rate';
import type { ForecastInput, PlacingLimitsInput } from '../weather/placing-limits-input';
import type { PartInput } from './part-inputs';

/** Limits of placing; the air at placing is that of the day, unless the forecast says it. */
export interface DayLimitsInput extends Omit<PlacingLimitsInput, 'forecast'> {
  /** The air that is expected. */
  readonly forecast: Partial<ForecastInput>;
}

/** Parts that a day may have, in the order in which they are reckoned. */
export interface DayParts {
  /** What the surface dries at. */
  readonly evaporation?: PartInput<EvaporationRateInput>;
  /** Whether it may be placed in that weather, and how it is kept. */
  readonly limits?: PartInput<DayLimitsInput>;
  /** Trucks for each order of the day; what the job says of trucks holds where the day does not. */
  readonly trucks?: PartInput<Omit<TruckPlanInput, 'volume' | 'truckCapacity' | 'loads'>>;
  /** The stages of the day by the clock. */
  readonly plan?: PartInput<DayPlanInput>;
}

/** A day on which concrete is poured. */
export interface JobDayInput extends DayParts {
  /** What the day is called: `Tuesday`. */
  readonly name: string;
  /** The elements that are poured, by name, in the order of pouring. */
  readonly elements: readonly string[];
  /** Time of day when the first concrete is placed: `7:00`. */
  readonly startAt?: QuantityInput<'time'>;
  /** Of the air while it is placed and sets. */
  readonly airTemperature?: QuantityInput<'temperature'>;
  /** Of the concrete as it is placed. */
  readonly concreteTemperature?: QuantityInput<'temperature'>;
  /** Relative humidity of the air. */
  readonly humidity?: QuantityInput<'ratio'>;
  /** Wind near the surface. */
  readonly wind?: QuantityInput<'speed'>;
}

/** Parts of a day, each with its calculation. */
export const DAY_PARTS = {
  evaporation: 'evaporation-rate',
  limits: 'placing-limits',
  trucks: 'truck-plan',
  plan: 'day-plan',
} as const;

/** A part of a day. */
export type DayPart = keyof typeof DAY_PARTS;

/** What a day says of itself. */
export type DayFact = 'startAt' | 'airTemperature' | 'concreteTemperature' | 'humidity' | 'wind';

/** A day, read; its parts stand among the rest by their names. */
export interface Day extends Readonly<Record<DayFact, Quantity | undefined>> {
  readonly name: string;
  readonly elements: readonly string[];
}

/** What each part calls what the day says of itself. */
export const DAY_FACTS: Readonly<Record<DayPart, Readonly<Record<string, DayFact>>>> = {
  evaporation: {
    airTemperature: 'airTemperature',
    humidity: 'humidity',
    concreteTemperature: 'concreteTemperature',
    wind: 'wind',
  },
  limits: { concreteTemperature: 'concreteTemperature' },
  trucks: {
    firstTruckAt: 'startAt',
    airTemperature: 'airTemperature',
    concreteTemperature: 'concreteTemperature',
  },
  plan: {
    startAt: 'startAt',
    airTemperature: 'airTemperature',
    concreteTemperature: 'concreteTemperature',
    humidity: 'humidity',
    wind: 'wind',
  },
};

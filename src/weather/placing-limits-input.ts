/** Weather and concrete of a placement: as they are written, and as they are read. */
import type { Quantity, QuantityInput } from '../quantity/quantity';
import type { Temperature } from './degrees';

/** What keeps the concrete warm. */
export type Protection = 'none' | 'blankets' | 'heated-enclosure';

/** Air that is expected. */
export interface ForecastInput {
  /** When the concrete is placed. */
  readonly placing: QuantityInput<'temperature'>;
  /** The lowest in the days of protection behind it. */
  readonly low: QuantityInput<'temperature'>;
  /** The lowest in the nights before it, which the ground has frozen in or not. */
  readonly before?: QuantityInput<'temperature'>;
}

/** Input of {@link placingLimits}. */
export interface PlacingLimitsInput {
  /** Least dimension of what is cast: the thickness of a slab. */
  readonly thickness: QuantityInput<'length'>;
  /** The air that is expected. */
  readonly forecast: ForecastInput;
  /** The concrete as it comes to the slab. */
  readonly concreteTemperature?: QuantityInput<'temperature'>;
  /** Whether the ground beneath is frozen; not said, it is doubted where it froze before the pour, or freezes then. */
  readonly ground?: 'frozen' | 'not-frozen';
  /** By default `ordinary`; `high-early` is type III, more cement or an accelerator. */
  readonly cement?: 'ordinary' | 'high-early';
  /** What it carries early: nothing, part of its load, or all. By default nothing, as flatwork. */
  readonly service?: 'no-load' | 'partial-load' | 'full-load';
  /** Whether it will freeze when it is in use; by default it will, as flatwork outdoors. */
  readonly exposed?: boolean;
  /** What keeps it warm; by default nothing. */
  readonly protection?: Protection;
  /** How many layers of blankets; by default one, where there are blankets. */
  readonly layers?: number;
  /** How an enclosure is heated. */
  readonly heater?: 'vented' | 'unvented' | 'electric';
  /** Whether salt will be strewn on it. */
  readonly deicers?: boolean;
  /** Time from placing to the first hard frost and salt, in autumn. */
  readonly beforeFrost?: QuantityInput<'time'>;
}

export interface PlacingParsed {
  readonly thickness: Quantity<'length'>;
  readonly forecast: {
    readonly placing: Temperature;
    readonly low: Temperature;
    readonly before: Temperature | undefined;
  };
  readonly concreteTemperature: Temperature | undefined;
  readonly ground: 'frozen' | 'not-frozen' | undefined;
  readonly cement: 'ordinary' | 'high-early' | undefined;
  readonly service: 'no-load' | 'partial-load' | 'full-load' | undefined;
  readonly exposed: boolean | undefined;
  readonly protection: Protection | undefined;
  readonly layers: Quantity<'count'> | undefined;
  readonly heater: 'vented' | 'unvented' | 'electric' | undefined;
  readonly deicers: boolean | undefined;
  readonly beforeFrost: Quantity<'time'> | undefined;
}

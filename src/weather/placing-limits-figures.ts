/** What is told of placing in this weather: the least and the most of the concrete, and how long it is protected. */
import type { Quantity } from '../quantity/quantity';

/** What is done next about the weather. */
export type WeatherMeasure =
  | 'thaw-the-ground'
  | 'look-for-frost-in-the-ground'
  | 'hotter-mix'
  | 'cooler-mix'
  | 'cooler-hour'
  | 'blankets'
  | 'another-blanket'
  | 'heated-enclosure'
  | 'vent-the-heater'
  | 'cool-slowly'
  | 'no-deicer'
  | 'postpone';

/** What a source allows of hot concrete. */
export interface HotLimit {
  /** Title of the source. */
  readonly source: string;
  /** The most as placed. */
  readonly most: Quantity<'temperature'>;
}

/** What a source asks for: warmth, or no more than that it does not freeze. */
export type ProtectionRule = 'keep from freezing' | 'keep warm' | 'keep from freezing after that';

/** How long a source has concrete protected. */
export interface PublishedProtection {
  /** Title of the source. */
  readonly source: string;
  /** What is asked for. */
  readonly rule: ProtectionRule;
  /** What it is kept at, where it is kept warm. */
  readonly keptAt?: Quantity<'temperature'>;
  /** How long. */
  readonly time: Quantity<'time'>;
}

/** Figures of {@link placingLimits}. */
export interface PlacingLimitsFigures {
  /** Whether it is cold weather: air below 40 degF (5 degC), now or expected. */
  readonly coldWeather: boolean;
  /** The least as mixed in this air; left out where it is not cold. */
  readonly mixedAtLeast?: Quantity<'temperature'>;
  /** The least as placed, and kept so long as it is protected. */
  readonly keptAtLeast: Quantity<'temperature'>;
  /** The most as placed, above which a load is held: the greater of `hotLimits`; left out where it is cold. */
  readonly placedAtMost?: Quantity<'temperature'>;
  /** The most that it may cool in the day after protection ends. */
  readonly coolingPerDay: Quantity<'temperature-difference'>;
  /**
   * The coldest that it may come to in that day, gradually and never at once: from what it is kept at, or from the
   * concrete as it came where that is warmer; left out where it is not cold.
   */
  readonly gradualDropTo?: Quantity<'temperature'>;
  /** The most that it may cool in an hour. */
  readonly coolingPerHour: Quantity<'temperature-difference'>;
  /** How long it is kept from freezing; left out where it is not cold, and for a full load, which is the engineer's. */
  readonly protection?: Quantity<'time'>;
  /** How long until forms come off safely with part of the load on it. */
  readonly untilForms?: Quantity<'time'>;
  /** Protection by other sources. */
  readonly published: readonly PublishedProtection[];
  /** Limits of hot concrete. */
  readonly hotLimits: readonly HotLimit[];
  /** Layers of blankets for the lowest air; left out where it takes an enclosure, or has a heated one. */
  readonly blankets?: Quantity<'count'>;
  /** What it comes to. */
  readonly verdict: 'place' | 'place and protect' | 'hold' | 'postpone';
  /** What to do, in order. */
  readonly next: readonly WeatherMeasure[];
}

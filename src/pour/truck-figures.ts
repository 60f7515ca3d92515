/** What a plan of trucks tells: every load with its times, and the day as a whole. */
import type { Quantity } from '../quantity/quantity';
import type { PublishedLoad, PublishedRate } from './placing';
import type { ClockTime } from './saw-clock';
import type { Hours } from './saw-hours';
import type { TruckVerdict } from './truck-advice';

/** One load on its way; times are from the first arrival on. */
export interface TruckLoad {
  /** Which truck brings it. */
  readonly truck: Quantity<'count'>;
  /** How much it brings. */
  readonly volume: Quantity<'volume'>;
  /** Leaves the plant; below zero before the first arrival. */
  readonly departs: Quantity<'time'>;
  /** Is at the site. */
  readonly arrives: Quantity<'time'>;
  /** Is placed from then on. */
  readonly starts: Quantity<'time'>;
  /** Is out of the truck. */
  readonly ends: Quantity<'time'>;
  /** Waits at the site before it is placed. */
  readonly waits: Quantity<'time'>;
  /** Placing stands still before it. */
  readonly gap: Quantity<'time'>;
  /** Age at the end of unloading, from the beginning of loading. */
  readonly age: Quantity<'time'>;
  /** By the clock, where the first truck has a time of day. */
  readonly clock?: TruckClock;
}

/** Times of a load by the clock. */
export interface TruckClock {
  /** Leaves the plant. */
  readonly departs: string;
  /** Is at the site. */
  readonly arrives: string;
  /** Is out of the truck. */
  readonly ends: string;
}

/** Figures of {@link truckPlan}. */
export interface TruckPlanFigures {
  /** Each load on its way. */
  readonly loads: readonly TruckLoad[];
  /** How many loads. */
  readonly loadCount: Quantity<'count'>;
  /** All of them. */
  readonly volume: Quantity<'volume'>;
  /** What is placed in a given time while there is concrete. */
  readonly placingRate: Quantity<'volume-rate'>;
  /** To place the largest load. */
  readonly placingTime: Quantity<'time'>;
  /** A truck's round with the largest load, waiting left out. */
  readonly round: Quantity<'time'>;
  /** Trucks so that placing never waits for one. */
  readonly trucksNeeded: Quantity<'count'>;
  /** Trucks in this plan. */
  readonly trucks: Quantity<'count'>;
  /** From one full load to the next once all is running: what placing, the plant, the schedule or few trucks take. */
  readonly interval: Quantity<'time'>;
  /** The last concrete is out, after the first arrival. */
  readonly ends: Quantity<'time'>;
  /** The same by the clock. */
  readonly endsAt?: ClockTime;
  /** The longest that placing stands still. */
  readonly longestGap: Quantity<'time'>;
  /** All that placing stands still. */
  readonly gaps: Quantity<'time'>;
  /** The longest that a truck waits. */
  readonly longestWait: Quantity<'time'>;
  /** All that trucks wait. */
  readonly waits: Quantity<'time'>;
  /** The longest that a truck is at the site before it washes out. */
  readonly longestAtSite: Quantity<'time'>;
  /** All that trucks are at the site beyond the free time, where that is given. */
  readonly charged?: Quantity<'time'>;
  /** Age of the oldest concrete at the end of unloading. */
  readonly oldest: Quantity<'time'>;
  /** What that is held to. */
  readonly ageLimit: Quantity<'time'>;
  /** Initial set after mixing, at this temperature, or as measured. */
  readonly initialSet: Hours;
  /** How long the open edge may wait for the next load: beyond it crusts over. */
  readonly gapAtMost: Quantity<'time'>;
  /** The oldest that the open edge gets before the next load, where placing stands still. */
  readonly oldestEdge?: Quantity<'time'>;
  /** How far the farthest concrete is out of the chute's reach. */
  readonly beyondReach?: Quantity<'length'>;
  /** How steep the chute lies, where its drop is given. */
  readonly chuteSlope?: Quantity<'slope'>;
  /** How it goes. */
  readonly verdict: TruckVerdict;
  /** Rates that sources print for this way of placing. */
  readonly publishedRates?: readonly PublishedRate[];
  /** What sources print for a trip of it. */
  readonly publishedLoads?: readonly PublishedLoad[];
}

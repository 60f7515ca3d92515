/** What is told of gravel: how much, in tons of each kind, in loads, and how far they go. */
import type { Quantity } from '../quantity/quantity';
import type { GeotextileFigures } from './geotextile';
import type { LiftFigures } from './lifts';

/** Short tons of 2,000 lb, long tons of 2,240 lb, or tonnes of 1,000 kg. */
export type TonKind = 'short' | 'long' | 'metric';

/** The weight to buy in each of the tons that were asked for. */
export interface TonFigures {
  /** Tons of 2,000 lb. */
  readonly short?: Quantity<'mass'>;
  /** Tons of 2,240 lb. */
  readonly long?: Quantity<'mass'>;
  /** Tonnes of 1,000 kg. */
  readonly metric?: Quantity<'mass'>;
}

/** Figures of {@link baseTonnage}. */
export interface BaseTonnageFigures {
  /** Weight in place, dry as the density says. */
  readonly mass: Quantity<'mass'>;
  /** Weight to buy: with the trim, the allowance and the water. */
  readonly deliveredMass: Quantity<'mass'>;
  /** The same in the tons that were asked for. */
  readonly tons?: TonFigures;
  /** Depth after compaction. */
  readonly depth: Quantity<'length'>;
  /** Plan area of the base in place. */
  readonly area: Quantity<'area'>;
  /** Volume in place. */
  readonly compactedVolume: Quantity<'volume'>;
  /** Volume as delivered, with the trim and the allowance. */
  readonly looseVolume: Quantity<'volume'>;
  /** Loose volume lost in compaction, as a share of it. */
  readonly shrinkage: Quantity<'ratio'>;
  /** Compacted density that was used. */
  readonly compactedDensity: Quantity<'density'>;
  /** Weight on each unit of area. */
  readonly rateOfSpread: Quantity<'mass-per-area'>;
  /** Weight on each unit of area for each inch of depth, or for each centimeter where the depth is metric. */
  readonly rateForUnitDepth: Quantity<'mass-per-area'>;
  /** How far a ton (a tonne where the depth is metric) reaches at the width spread. */
  readonly reach?: Quantity<'length'>;
  /** How far all of it reaches at the width spread. */
  readonly spreadLength?: Quantity<'length'>;
  /** Whole truckloads. */
  readonly loads?: Quantity<'count'>;
  /** Loads if only weight counted. */
  readonly loadsByWeight?: Quantity<'count'>;
  /** Loads if only volume counted. */
  readonly loadsByVolume?: Quantity<'count'>;
  /** What limits a load. */
  readonly governs?: 'weight' | 'volume';
  /** What a truck filled by volume weighs, without added water. */
  readonly fullTruck?: Quantity<'mass'>;
  /** Lifts to place it in. */
  readonly lifts?: LiftFigures;
  /** Geotextile to buy. */
  readonly geotextile?: GeotextileFigures;
}

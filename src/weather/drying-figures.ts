/** What is told of the drying of fresh concrete: the rate, the limits that are set, and what would slow it. */
import type { Quantity } from '../quantity/quantity';

/** Whether water rises to the surface as it does in ordinary concrete, or little, as with silica fume. */
export type Bleeding = 'ordinary' | 'little';

/** What a source allows. */
export interface DryingLimit {
  /** Title of the source. */
  readonly source: string;
  /** For which concrete. */
  readonly bleeding: Bleeding;
  /** The most. */
  readonly limit: Quantity<'evaporation'>;
}

/** What can be changed about the drying of a slab. */
export type DryingChange = 'windbreak' | 'fog' | 'cooler-concrete' | 'cooler-air';

/** The drying with one thing changed. */
export interface ChangedDrying {
  /** What is changed. */
  readonly change: DryingChange;
  /** What the surface then dries at. */
  readonly rate: Quantity<'evaporation'>;
}

/** What to do, and what the surface dries at when that and all before it is done. */
export interface DryingMeasure {
  /** What to do. */
  readonly do: DryingChange | 'evaporation-retarder' | 'sheet' | 'enclosure' | 'postpone';
  /** What the surface then dries at, where it can be reckoned. */
  readonly rate?: Quantity<'evaporation'>;
}

/** Figures of {@link evaporationRate}. */
export interface EvaporationRateFigures {
  /** What the surface dries at, by the one equation; below zero, dew settles. */
  readonly rate: Quantity<'evaporation'>;
  /** The same by the pressures of vapor. */
  readonly byVaporPressure: Quantity<'evaporation'>;
  /** Pressure of the vapor at the surface of the concrete. */
  readonly vaporAtSurface: Quantity<'pressure'>;
  /** Pressure of the vapor in the air. */
  readonly vaporInAir: Quantity<'pressure'>;
  /** The least and the most that it may truly be: 40% either way. */
  readonly range: {
    /** The least. */
    readonly from: Quantity<'evaporation'>;
    /** The most. */
    readonly to: Quantity<'evaporation'>;
  };
  /** The limit that it is held to. */
  readonly limit: Quantity<'evaporation'>;
  /** What it comes to. */
  readonly verdict: 'over the limit' | 'near the limit' | 'under the limit' | 'no drying';
  /** The wind near the surface. */
  readonly windAtSurface: Quantity<'speed'>;
  /** What each source allows. */
  readonly limits: readonly DryingLimit[];
  /** The drying with one thing changed, the one that helps most first; in cold air without fog and cooler air. */
  readonly changes: readonly ChangedDrying[];
  /** What to do, in order; left out where nothing need be done. */
  readonly next?: readonly DryingMeasure[];
}

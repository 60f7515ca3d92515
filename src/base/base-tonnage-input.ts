/** Gravel that is to be placed: as it is written, and as it is read. */

import type { Outline, OutlineInput } from '../outline/outline';
import type { Opening, OpeningInput } from '../outline/region';
import type { Quantity, QuantityInput } from '../quantity/quantity';
import type { TonKind } from './base-figures';
import type { GeotextileInput } from './geotextile';
import type { Compactor } from './lifts';
import type { BaseMaterial } from './materials';
import type { Roll } from './rolls';

type Length = Quantity<'length'>;
type Area = Quantity<'area'>;
type Density = Quantity<'density'>;
type Mass = Quantity<'mass'>;
type Volume = Quantity<'volume'>;
type Ratio = Quantity<'ratio'>;

/**
 * Input of {@link baseTonnage}. Give the area or the outline, not both, and the compacted density or a
 * material or the solid density with its voids.
 */
export interface BaseTonnageInput {
  /** The plan of the base, or of the slab when `margin` is given. */
  readonly outline?: OutlineInput;
  /** Openings in it, which are left as they are, as a pool or a tree is; none by default. */
  readonly openings?: readonly OpeningInput[];
  /** Its area, where the outline is not at hand. */
  readonly area?: QuantityInput<'area'>;
  /** How far the base reaches beyond the outline, all around; none by default. */
  readonly margin?: QuantityInput<'length'>;
  /** Strip beyond the base that is placed and trimmed away again; none by default. */
  readonly edgeTrim?: QuantityInput<'length'>;
  /** Depth after compaction. Give it or `rateOfSpread`. */
  readonly depth?: QuantityInput<'length'>;
  /** Compacted weight on each unit of area, `650 lb/yd2`, in place of the depth. */
  readonly rateOfSpread?: QuantityInput<'mass-per-area'>;
  /** Density after compaction, from the supplier or a test. */
  readonly compactedDensity?: QuantityInput<'density'>;
  /** Material whose usual densities stand in for those that are not given. */
  readonly material?: BaseMaterial;
  /** Density of the solid stone, with `voids`, in place of the compacted density. */
  readonly solidDensity?: QuantityInput<'density'>;
  /** Share of voids once compacted. */
  readonly voids?: QuantityInput<'ratio'>;
  /** Density as delivered; by default as much lighter as the material usually is. */
  readonly looseDensity?: QuantityInput<'density'>;
  /** Water in the material, as a share of its dry weight; it is paid for and hauled. */
  readonly moisture?: QuantityInput<'ratio'>;
  /** Share added for waste and soft spots. */
  readonly allowance?: QuantityInput<'ratio'>;
  /** What one truck carries by weight. */
  readonly truckPayload?: QuantityInput<'mass'>;
  /** What one truck holds by volume, loose. */
  readonly truckVolume?: QuantityInput<'volume'>;
  /** What compacts it; with it the lifts are given. */
  readonly compactor?: Compactor;
  /** Weight of the roller; with it the lift of a vibratory roller goes by its weight. */
  readonly rollerMass?: QuantityInput<'mass'>;
  /** Thickness of a lift as spread, in place of the rule for the compactor. */
  readonly looseLift?: QuantityInput<'length'>;
  /** Width that is spread at once; with it the length that a ton reaches is given. */
  readonly spreadWidth?: QuantityInput<'length'>;
  /** Geotextile under the base. */
  readonly geotextile?: GeotextileInput;
  /** Tons to give the weight to buy in, besides the one that is usual for the units of the input. */
  readonly tons?: readonly TonKind[];
}

export interface TonnageParsed {
  readonly outline: Outline | undefined;
  readonly openings: readonly Opening[] | undefined;
  readonly area: Area | undefined;
  readonly margin: Length | undefined;
  readonly edgeTrim: Length | undefined;
  readonly depth: Length | undefined;
  readonly rateOfSpread: Quantity<'mass-per-area'> | undefined;
  readonly rollerMass: Mass | undefined;
  readonly tons: readonly TonKind[] | undefined;
  readonly compactedDensity: Density | undefined;
  readonly material: BaseMaterial | undefined;
  readonly solidDensity: Density | undefined;
  readonly voids: Ratio | undefined;
  readonly looseDensity: Density | undefined;
  readonly moisture: Ratio | undefined;
  readonly allowance: Ratio | undefined;
  readonly truckPayload: Mass | undefined;
  readonly truckVolume: Volume | undefined;
  readonly compactor: Compactor | undefined;
  readonly looseLift: Length | undefined;
  readonly spreadWidth: Length | undefined;
  readonly geotextile: Roll | undefined;
}

/** Geotextile under a base: what the laps add, and how many rolls. */
import type { Quantity, QuantityInput } from '../quantity/quantity';
import type { Pad } from '../reckoning/pad';
import { type Roll, rolledOut } from './rolls';

/** A roll of geotextile and how far its edges lap. */
export interface GeotextileInput {
  /** Width of the roll. */
  readonly rollWidth: QuantityInput<'length'>;
  /** Length of the roll. */
  readonly rollLength: QuantityInput<'length'>;
  /** How far one strip laps over the next, at sides and ends. */
  readonly lap: QuantityInput<'length'>;
}

/** Geotextile to buy. */
export interface GeotextileFigures {
  /** Fabric with its laps: the area times what a roll has over what it covers. */
  readonly area: Quantity<'area'>;
  /** Whole rolls. */
  readonly rolls: Quantity<'count'>;
}

const NAMES = { what: 'geotextile with laps', symbol: 'A', before: 'geotextile.' } as const;

/**
 * Fabric for an area.
 *
 * @throws {InputError} `does-not-fit` for a lap as wide as the roll; `too-many` rolls
 */
export function geotextileOf(A: Quantity<'area'>, fabric: Roll, pad: Pad): GeotextileFigures {
  const { laid, rolls } = rolledOut(A, fabric, NAMES, pad);
  return { area: laid, rolls };
}

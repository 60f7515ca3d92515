/** Geotextile under a base: what the laps add, and how many rolls. */
import * as faults from '../quantity/faults';
import type { Quantity, QuantityInput } from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import type { Pad } from '../reckoning/pad';
import { wholeUnits } from '../reckoning/whole';

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

type Length = Quantity<'length'>;

/** Geotextile, read. */
export interface Geotextile {
  readonly rollWidth: Length;
  readonly rollLength: Length;
  readonly lap: Length;
}

/**
 * Fabric for an area.
 *
 * @throws {InputError} `does-not-fit` for a lap as wide as the roll; `too-many` rolls
 */
export function geotextileOf(A: Quantity<'area'>, fabric: Geotextile, pad: Pad): GeotextileFigures {
  const { rollWidth: w, rollLength: l, lap: o } = fabric;
  if (!o.lessThan(w)) refuse('geotextile.lap', faults.doesNotFit('lap', 'rollWidth'));
  if (!o.lessThan(l)) refuse('geotextile.lap', faults.doesNotFit('lap', 'rollLength'));
  const R = pad.step('area of a roll', 'R = w × l', { w, l }, w.times(l));
  const C = pad.step('what it covers', 'C = (w − o) × (l − o)', { w, l, o }, w.minus(o).times(l.minus(o)));
  const area = pad.step('geotextile with laps', 'G = A × R ÷ C', { A, R, C }, A.times(R.over(C)));
  return { area, rolls: wholeUnits('rolls', area, R, 'geotextile.rollWidth', pad) };
}

/**
 * An area covered from rolls whose strips lap at sides and ends: `C = (w − o) × (l − o)` of a roll `R = w × l` covers
 * ground, and what is laid has its share more.
 */
import * as faults from '../quantity/faults';
import type { Quantity } from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import type { Pad } from '../reckoning/pad';
import { wholeUnits } from '../reckoning/whole';

/** A roll and how far its edges lap. */
export interface Roll {
  readonly rollWidth: Quantity<'length'>;
  readonly rollLength: Quantity<'length'>;
  readonly lap: Quantity<'length'>;
}

/** How it is told. */
export interface RollNames {
  /** What is laid, with its laps. */
  readonly what: string;
  /** The symbol of the area to be covered. */
  readonly symbol: string;
  /** What stands before the members of the roll in the input. */
  readonly before: string;
}

/** What is laid on an area with its laps, and the whole rolls of it. */
export interface RolledOut {
  readonly laid: Quantity<'area'>;
  readonly rolls: Quantity<'count'>;
}

/**
 * Cover an area.
 *
 * @throws {InputError} `does-not-fit` for a lap as wide as the roll; `too-many` rolls
 */
export function rolledOut(
  area: Quantity<'area'>,
  { rollWidth: w, rollLength: l, lap: o }: Roll,
  { what, symbol, before }: RollNames,
  pad: Pad,
): RolledOut {
  for (const [side, length] of [
    ['rollWidth', w],
    ['rollLength', l],
  ] as const) {
    if (!o.lessThan(length)) refuse(`${before}lap`, faults.doesNotFit('lap', side));
  }
  const R = pad.step('area of a roll', 'R = w × l', { w, l }, w.times(l));
  const C = pad.step('what it covers', 'C = (w − o) × (l − o)', { w, l, o }, w.minus(o).times(l.minus(o)));
  const laid = pad.step(what, `G = ${symbol} × R ÷ C`, { [symbol]: area, R, C }, area.times(R.over(C)));
  return { laid, rolls: wholeUnits('rolls', laid, R, `${before}rollWidth`, pad) };
}

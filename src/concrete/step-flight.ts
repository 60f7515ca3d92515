/** What every kind of flight has in common: its figures, and numbers that its formulas share. */

import * as faults from '../quantity/faults';
import { angle, constant } from '../quantity/make';
import type { Quantity } from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import { wholeNumber } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import type { Around } from './step-cores';

type Angle = Quantity<'angle'>;
type Area = Quantity<'area'>;
type Count = Quantity<'count'>;
type Length = Quantity<'length'>;
type Volume = Quantity<'volume'>;

/** What each plan comes to, before cores. */
export interface Flight {
  readonly volume: Volume;
  readonly run: Length;
  readonly footprint: Area;
  readonly formed: Area;
  /** Depth of a tread, to be checked. */
  readonly tread: Length;
  readonly around?: Around;
  /** Side to side at the back, where cores stand beside each other. */
  readonly across?: Length;
}

export const ONE = constant(() => wholeNumber(1));

export const TWO = constant(() => wholeNumber(2));

const SIX = constant(() => wholeNumber(6));

const FULL = constant(() => angle('360 deg'));

/** `n (n − 1) ÷ 2` and `n (n − 1) (2 n − 1) ÷ 6`: sums of j and of j² for j below n. */
export function sums(n: Count): [first: Quantity<'ratio'>, second: Quantity<'ratio'>] {
  const pairs = n.times(n.minus(ONE()));
  return [pairs.over(TWO()), pairs.times(n.times(TWO()).minus(ONE())).over(SIX())];
}

export function shareOfTurn(turn: Angle, all: Angle, path: string, pad: Pad): Quantity<'ratio'> {
  const F = FULL();
  if (all.greaterThan(F)) refuse(path, faults.doesNotFit('the turn in all', '360 deg'));
  return pad.step('share of a full turn', 'f = a ÷ F', { a: turn, F }, turn.over(F));
}

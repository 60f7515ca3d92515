/** What reading a text comes to. */
import type { Decimal } from './decimal';
import type { Fault } from './input-error';
import type { Unit } from './units';

/** What a text came to: the canonical value and the unit it was written in. */
export interface Reading {
  readonly value: Decimal;
  readonly unit: Unit;
  /** The number as written, where it was one. */
  readonly number?: Decimal;
}

export const isFault = (r: Reading | Fault): r is Fault => 'code' in r;

/** A quantity as plain data, read. */
import { type Dimension, isDimension } from './dimensions';
import * as faults from './faults';
import type { Fault } from './input-error';
import { readPair } from './parse';
import type { QuantityData } from './quantity';
import { isFault, type Reading } from './reading';
import { idOf, unitOf } from './units';

const KEYS: readonly string[] = ['value', 'unit', 'dimension', 'shownIn'];

/** Plain data is exact; what it says of its dimension and of the unit to show it in must hold. */
export function readData(input: object, d: Dimension, what: string): Reading | Fault {
  try {
    const { value, unit, dimension, shownIn } = input as Partial<QuantityData>;
    if (!('value' in input)) return faults.notAQuantity(what, d);
    const extra = Object.keys(input).find((k) => !KEYS.includes(k));
    if (extra !== undefined) return faults.unknownKey(extra, ['value', 'unit']);
    if (dimension !== undefined && dimension !== d) return otherDimension(dimension, d, what);
    return inShownUnit(readPair(value, unit, d, what), shownIn, d, what);
  } catch {
    // A getter may be a trap.
    return faults.notAQuantity(what, d);
  }
}

const otherDimension = (said: unknown, d: Dimension, what: string): Fault =>
  isDimension(said) ? faults.wrongDimension(what, said, d) : faults.notAQuantity(what, d);

function inShownUnit(read: Reading | Fault, shownIn: unknown, d: Dimension, what: string): Reading | Fault {
  if (isFault(read) || shownIn === undefined) return read;
  const unit = unitOf(d, idOf(shownIn));
  return unit ? { value: read.value, unit } : faults.unknownUnit(what, idOf(shownIn), d);
}

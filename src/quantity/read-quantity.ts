/** Whatever a caller gives for a quantity, read. */
import type { Dimension } from './dimensions';
import * as faults from './faults';
import type { Fault } from './input-error';
import { readText } from './parse';
import { isQuantity, newQuantity, type Quantity } from './quantity';
import { readData } from './read-data';
import { isFault, type Reading } from './reading';

/** Read any accepted input but money as a quantity, or say what is wrong with it. */
export function readQuantity<D extends Dimension>(input: unknown, d: D, what: string): Quantity<D> | Fault {
  if (isQuantity(input)) {
    return input.dimension === d ? (input as Quantity<D>) : faults.wrongDimension(what, input.dimension, d);
  }
  if (typeof input === 'string') return made(readText(input, d, what), d);
  if (typeof input === 'number' || typeof input === 'bigint')
    return faults.missingUnit(what, d, typed(input));
  if (input === undefined || input === null) return faults.missing(what, faults.examplesOf(d, what));
  if (typeof input !== 'object') return faults.notAQuantity(what, d);
  return made(readData(input, d, what), d);
}

/** A number as it was typed, where it is short enough to be told. */
function typed(number: number | bigint): string | undefined {
  const text = String(number);
  return PLAIN_NUMBER.test(text) ? text : undefined;
}

const PLAIN_NUMBER = /^-?\d{1,9}(?:\.\d{1,6})?$/;

function made<D extends Dimension>(reading: Reading | Fault, d: D): Quantity<D> | Fault {
  return isFault(reading) ? reading : newQuantity(d, reading.value, reading.unit, reading.number);
}

/** True for a code and a sentence in place of a quantity. */
export function isFaulty(q: Quantity | Fault): q is Fault {
  return !isQuantity(q);
}

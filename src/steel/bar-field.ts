/** A field for the size of a bar: read as it is written, and refused with the sizes of the job's own unit system. */
import { missing } from '../quantity/faults';
import type { Fault } from '../quantity/input-error';
import * as faults from '../reckoning/faults';
import { type Field, reading } from '../reckoning/fields';
import { ALL_BARS, type AnyBarSize, BAR_SIZES } from './bars';

const METRIC: readonly AnyBarSize[] = /*#__PURE__*/ ALL_BARS.filter((size) => !size.startsWith('#'));

const noSuchBar = (what: string): Fault => ({
  ...faults.unknownChoice(what, BAR_SIZES),
  metric: faults.unknownChoice(what, METRIC),
});

/** One size of bar of any series. */
export function barField(what: string): Field<AnyBarSize> {
  const read = (input: unknown): AnyBarSize | Fault => {
    if (input === undefined || input === null) return missing(what, ['"#4"', '"12 mm"']);
    return ALL_BARS.includes(input as AnyBarSize) ? (input as AnyBarSize) : noSuchBar(what);
  };
  return reading(read, () => ({ type: 'string', enum: [...ALL_BARS] }));
}

/**
 * A field for the size of a bar: read as it is written, and refused with the sizes of the job's own unit system. What
 * schedules name by steel and diameter, as `H12` or `N16`, is the bar of that diameter: the letter says no other size.
 */
import { missing } from '../quantity/faults';
import type { Fault } from '../quantity/input-error';
import * as faults from '../reckoning/faults';
import { type Field, reading } from '../reckoning/fields';
import { ALL_BARS, type AnyBarSize, BAR_SIZES, byInches, IN_INCHES, STEELS } from './bars';

const METRIC: readonly AnyBarSize[] = /*#__PURE__*/ ALL_BARS.filter((size) => !size.startsWith('#'));

const LETTER = `^(?:${/*#__PURE__*/ STEELS.join('|')})`;
const NAMED = /*#__PURE__*/ new RegExp(`(?:${LETTER}|^[ø⌀φ]) ?(\\d{1,2})$|^(\\d{1,2})mm$`, 'i');
/** Numbers that no soft metric bar has. */
const NUMBERED = /^no\.? ?([3-9]|1[148])$/i;

/** The shape of all these names, for a schema. */
const SPOKEN = /*#__PURE__*/ `^([A-Za-zøØ⌀φ]{1,2}\\.? ?\\d\\d?|\\d\\d?mm|${IN_INCHES})$`;

/** The size that a name says. */
const sizeOf = (input: unknown): AnyBarSize =>
  (typeof input === 'string'
    ? byInches(input.trim()).replace(NAMED, '$1$2 mm').replace(NUMBERED, '#$1')
    : input) as AnyBarSize;

const noSuchBar = (what: string): Fault => ({
  ...faults.unknownChoice(what, BAR_SIZES),
  metric: faults.unknownChoice(what, METRIC),
});

/** One size of bar of any series. */
export function barField(what: string): Field<AnyBarSize> {
  const read = (input: unknown): AnyBarSize | Fault => {
    if (input === undefined || input === null) return missing(what, ['"#4"', '"12 mm"']);
    const size = sizeOf(input);
    return ALL_BARS.includes(size) ? size : noSuchBar(what);
  };
  return reading(read, () => ({
    anyOf: [
      { title: 'Size', type: 'string', enum: [...ALL_BARS] },
      { title: 'Steel and diameter, as H12, or inches, as 1/2 in', type: 'string', pattern: SPOKEN },
    ],
  }));
}

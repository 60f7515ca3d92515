/**
 * Sentences about text that reads two ways, or that no tape and no scale shows.
 *
 * Where two readings make sense both are named, each as it could be written: a guess would be the costly
 * kind of wrong, and a refusal without the way out costs a telephone call.
 */

import { fault, quoted, withExample } from './faults';
import type { Fault } from './input-error';
import { say } from './words';

/** Both readings of a text, in words that could be typed instead. */
export const twoWays = (what: string, text: string, first: string, second: string): Fault =>
  fault(
    'ambiguous',
    say`${{ what }} can be read two ways from ${{ text: quoted(text) }}: ${{ first: quoted(first) }} or ${{ second: quoted(second) }}; write the one that is meant`,
  );

/** A sign without width between two digits: `125` that may have been `12` and `5`. */
export const hiddenSign = (what: string): Fault =>
  fault('ambiguous', say`${{ what }} has a sign between its digits that does not show; type it anew`);

/** Ounces where a bottle or a cartridge is measured. */
export const notFluid = (what: string): Fault =>
  fault('wrong-dimension', say`${{ what }} must be a volume, and oz is a mass; write fl oz for fluid ounces`);

/** Feet and millimeters in one text. */
export const mixedSystems = (what: string, text: string): Fault =>
  fault(
    'unreadable-quantity',
    say`${{ what }} mixes metric and customary units in ${{ text: quoted(text) }}; write all of it in one of them`,
  );

/** A fraction of one or more without a whole number before it, where no slip explains it. */
export const improperFraction = (what: string, text: string, mixed: string): Fault =>
  fault(
    'unreadable-quantity',
    say`${{ what }} cannot be read from ${{ text: quoted(text) }}: a fraction of one or more; write it as ${{ mixed: quoted(mixed) }}`,
  );

/** `28 mPa`: by its letter case a billion times less than what is meant. */
export const wrongCase = (what: string, unit: string, means: string, meant: string): Fault =>
  fault(
    'ambiguous',
    say`${{ what }} is in ${{ unit: quoted(unit) }}, which is ${{ means }}; write ${{ meant: quoted(meant) }} if that is meant`,
  );

export const belowAbsoluteZero = (what: string): Fault =>
  withExample(
    'out-of-range',
    ['-459.67 degF', '-273.15 degC'],
    (zero) => say`${{ what }} is below absolute zero, ${{ zero }}; check the number and its unit`,
  );

export const tooSmall = (what: string): Fault =>
  fault('out-of-range', say`${{ what }} is smaller than anything on a site; check the number and its unit`);

/**
 * The largest size of the coarse aggregate as a ticket writes it: `3/4 in`, `20 mm`, the size number `#57` of ASTM C33,
 * whose nominal size is the largest but for a few percent, or the two sieves `4/20` of EN 12620, the larger of which it is.
 * Both from memory.
 */
import { fault, quoted } from '../quantity/faults';
import type { Fault } from '../quantity/input-error';
import { length } from '../quantity/make';
import type { Quantity } from '../quantity/quantity';
import { say } from '../quantity/words';
import { type Field, quantity } from './fields';
import { orNamed } from './or-named';
import type { Ordinary } from './ordinary';

/** Size numbers, with the nominal size in inches. */
const NUMBERS: Readonly<Record<string, string>> = {
  '2': '2 1/2',
  '3': '2',
  '357': '2',
  '4': '1 1/2',
  '467': '1 1/2',
  '5': '1',
  '56': '1',
  '57': '1',
  '6': '3/4',
  '67': '3/4',
  '7': '1/2',
  '78': '1/2',
  '8': '3/8',
  '89': '3/8',
};

const NUMBER = /^(?:#|no\.?|size) ?(\d{1,3})(?: stone)?$/i;
/** Two sieves in millimeters, the larger one of 8 mm or more: what is a fraction of an inch has less below its line. */
const SIEVES = /^(0|2|4|5|6|8|10|11|16|20)\/(8|10|11|14|16|20|22|31|32|40|63)(?: ?mm)?$/;

const noSuchNumber = (what: string, text: string): Fault =>
  fault(
    'unknown-designation',
    say`${{ what }} is no size number of coarse aggregate in ${{ text: quoted(text) }}; write one as in ${{ example: '"#57"' }}, or the largest size with its unit`,
  );

function sizeNamed(what: string, text: string): Quantity<'length'> | Fault | undefined {
  const number = NUMBER.exec(text)?.[1];
  if (number) return NUMBERS[number] ? length(`${NUMBERS[number]} in`) : noSuchNumber(what, text);
  const [, small, large] = SIEVES.exec(text) ?? [];
  return large && Number(small) < Number(large) ? length(`${large} mm`) : undefined;
}

/** The largest size of aggregate as a length or by its designation. */
export const stoneSize = (what: string, ordinary: Ordinary): Field<Quantity<'length'>> =>
  orNamed(quantity('length', what, 'positive', ordinary), what, sizeNamed);

/** A number as people write it: digits with a point, thousands in threes, and no more of them than are kept. */
import { Decimal } from './decimal';
import * as faults from './faults';
import type { Fault } from './input-error';

const WHOLE_DIGITS = 45;
const DECIMAL_DIGITS = 160;

/** Whole number with thousands in threes, or none. */
const GROUPED = /^(?:\d+|[1-9]\d{0,2}(?:,\d{3})+)(?:\.\d*)?$|^\.\d+$/;

/** A plain number as written, or what is wrong with it. */
export function plainNumber(text: string, what: string): Decimal | Fault {
  if (!GROUPED.test(text)) return faults.decimalComma(what, text);
  const digits = text.replaceAll(',', '');
  const [whole = '', decimals = ''] = digits.split('.');
  if (whole.replace(/^0+/, '').length > WHOLE_DIGITS) return faults.outOfRange(what);
  if (decimals.length > DECIMAL_DIGITS) return faults.tooManyDigits(what);
  return new Decimal(digits);
}

/**
 * Money: an exact amount with its currency, kept apart so that what needs no money does not carry the
 * list of currencies.
 */
import { isCurrency } from './currencies';
import { Decimal } from './decimal';
import * as faults from './faults';
import { type Fault, fail } from './input-error';
import { HIDDEN, TEXT_LIMIT, tidy } from './parse';
import { plainNumber } from './plain-number';
import { isQuantity, newQuantity, type Quantity, type QuantityData, type QuantityInput } from './quantity';
import { isFaulty } from './read-quantity';
import { hiddenSign } from './text-faults';
import { currencyUnit } from './units';

type Money = Quantity<'money'>;

const MONEY = /^([+-])? ?(?:([A-Z]{3}) ?)?(\d[\d,]*(?:\.\d*)?|\.\d+)(?: ?([A-Z]{3}))?$/;

/** Digits and fractions set small, which are no digits of an amount. */
const SMALL = /[\u00b2\u00b3\u00b9\u00bc-\u00be\u2070-\u2089\u2150-\u215e]/;

function amount(number: string, minus: boolean, code: string, what: string): Money | Fault {
  if (!isCurrency(code)) return faults.unknownUnit(what, code, 'money');
  const value = plainNumber(number, what);
  if (!(value instanceof Decimal)) return value as Fault;
  return newQuantity('money', minus ? value.neg() : value, currencyUnit(code));
}

function readText(text: string, what: string): Money | Fault {
  if (text.length > TEXT_LIMIT) return faults.tooLong(what, TEXT_LIMIT);
  const tidied = tidy(text);
  if (tidied === '') return faults.missing(what, faults.examplesOf('money', what));
  if (HIDDEN.test(text)) return hiddenSign(what);
  const [, sign, before, number, after] = MONEY.exec(tidied) ?? [];
  if (number === undefined || SMALL.test(text)) return faults.unreadable(what, text, 'money');
  const code = before ?? after;
  if (code === undefined || (before && after)) return faults.missingUnit(what, 'money');
  return amount(number, sign === '-', code, what);
}

/** A getter may be a trap; what it throws is not looked into. */
function readPair(input: object, what: string): Money | Fault {
  try {
    const { dimension, value, unit } = input as Partial<QuantityData>;
    if (dimension !== undefined && dimension !== 'money') return faults.notAQuantity(what, 'money');
    return readParts({ value, unit }, what);
  } catch {
    return faults.notAQuantity(what, 'money');
  }
}

function readParts({ value, unit }: { value?: unknown; unit?: unknown }, what: string): Money | Fault {
  const text = typeof value === 'number' && Number.isFinite(value) ? new Decimal(value).toFixed() : value;
  if (typeof text !== 'string' || typeof unit !== 'string') return faults.notAQuantity(what, 'money');
  return readText(`${text} ${unit}`, what);
}

/** Read any accepted input as money, or say what is wrong with it. */
export function readMoney(input: unknown, what: string): Money | Fault {
  if (isQuantity(input)) {
    return input.dimension === 'money'
      ? (input as Money)
      : faults.wrongDimension(what, input.dimension, 'money');
  }
  if (typeof input === 'string') return readText(input, what);
  if (typeof input === 'number' || typeof input === 'bigint') return faults.missingUnit(what, 'money');
  if (input === undefined || input === null) return faults.missing(what, faults.examplesOf('money', what));
  return typeof input === 'object' ? readPair(input, what) : faults.notAQuantity(what, 'money');
}

/**
 * Read an amount of money with its ISO 4217 code: `165 USD`, `CAD 12.50`.
 *
 * @param input - text with a code, `{ value, unit }`, or a quantity
 * @throws {InputError} `missing-unit`, `wrong-dimension` and the other codes of reading
 * @example
 * ```ts
 * import { money } from 'flatwork-reckoner';
 *
 * money('165 USD').plus(money('USD 12.50')).format(); // '177.50 USD'
 * ```
 */
export function money(input: QuantityInput<'money'>): Quantity<'money'> {
  const q = readMoney(input, 'the money');
  return isFaulty(q) ? fail(q) : q;
}

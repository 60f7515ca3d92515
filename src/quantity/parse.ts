/**
 * Reading a quantity as people write it: `12' 6-1/2"`, `3.5 in`, `1/4 in/ft`, `6 cubic yards`.
 *
 * One pass over a text of bounded length. A number without a unit is never accepted, because the
 * guess would be the costly kind of wrong.
 */
import { Decimal, ZERO } from './decimal';
import type { Dimension } from './dimensions';
import * as faults from './faults';
import { show } from './format';
import type { Fault } from './input-error';
import { plainNumber } from './plain-number';
import { readRatio } from './ratio-text';
import { isFault, type Reading } from './reading';
import * as textFaults from './text-faults';
import { type Unit, unitOf, unitsNamed } from './units';

export const TEXT_LIMIT = 200;

const VULGAR = /[\u00bc-\u00be\u2150-\u215e]/g;

/** A fraction set small: raised digits over lowered or plain ones. */
const RAISED = /([\u00b2\u00b3\u00b9\u2070\u2074-\u2079]+)\s*[\u2044/]\s*([\u2080-\u2089\d]+)/g;

/** Digits right behind a fraction sign or a raised digit: `12½5 in`, `10½6"`, `²5 in`. */
const BEHIND_FRACTION = /([\u00b2\u00b3\u00b9\u00bc-\u00be\u2070-\u2089\u2150-\u215e])(\.?\d)/;

/** A raised or lowered digit behind a number is a power, a footnote or a slip: never a digit of the number. */
const POWER_OF_NUMBER = /(\d)[\u00b2\u00b3\u00b9\u2070-\u2089](?!\s*[\u2044/])/;

/** A point behind a unit and before a digit may end the unit or begin a decimal. */
const POINT_BETWEEN = /([A-Za-z'"])\.(\d)/;

/** A dash before a part and set off from the one before: it joins them, or takes away. */
const MINUS_BETWEEN = /^([^-].*[A-Za-z'"]) -(\d)/;

/** Thousands parted by spaces, as metric text has them: `1 000 mm` could be 1 and 000. */
const SPACED = /^[+-]?\d{1,3}(?: \d{3})+(?![\d/,])/;

/** Thousands parted by apostrophes, as some write them, or feet and then a long number. */
const APOSTROPHES = /\d'\d{3}(?!\d)/;

/** Signs without any width, which come along with what is pasted. */
const UNSEEN_SIGN = '[\\u00ad\\u200b-\\u200f\\u2060\\ufeff]';
const UNSEEN = /*#__PURE__*/ new RegExp(UNSEEN_SIGN, 'g');

/** Such a sign where a number goes on behind it, which may have parted two numbers. */
export const HIDDEN = /*#__PURE__*/ new RegExp(`[\\d.,]${UNSEEN_SIGN}+[\\d.,]`);

/** One spelling for the many signs of fractions, primes, dashes and spaces. */
export function tidy(text: string): string {
  return text
    .replace(
      RAISED,
      (_, top: string, bottom: string) => ` ${top.normalize('NFKC')}/${bottom.normalize('NFKC')}`,
    )
    .replace(VULGAR, (sign) => ` ${sign.normalize('NFKC')}`)
    .replace(UNSEEN, '')
    .replace(/\u00ba/g, '\u00b0')
    .replace(/[\u2033\u201c\u201d\u201e\u3003]/g, '"')
    .replace(/[\u2032\u2018\u2019\u00b4`]/g, "'")
    .replace(/''/g, '"')
    .normalize('NFKC')
    .replace(/\u2044/g, '/')
    .replace(/[\u2010-\u2015\u2212]/g, '-')
    .replace(/\s+/g, ' ')
    .trim();
}

/** Number part: `1,250.5`, `.5`, `5/8`, `6 1/2` or `6-1/2`. */
const NUMBER = /(?:(\d[\d,]*) ?[ -] ?)?(\d+) ?\/ ?(\d+)(?![\d.])|(\d[\d,]*(?:\.\d*)?|\.\d+)/y;

interface NumberPart {
  readonly value: Decimal;
  readonly end: number;
}

function readNumber(text: string, from: number, what: string, d: Dimension): NumberPart | Fault {
  NUMBER.lastIndex = from;
  const match = NUMBER.exec(text);
  if (!match) return faults.unreadable(what, text, d);
  const end = NUMBER.lastIndex;
  const [, whole, top, bottom, decimal] = match;
  if (decimal !== undefined) {
    const value = plainNumber(decimal, what);
    return value instanceof Decimal ? { value, end } : (value as Fault);
  }
  const base = whole === undefined ? ZERO : plainNumber(whole, what);
  const over = plainNumber(top as string, what);
  const under = plainNumber(bottom as string, what);
  for (const part of [base, over, under]) if (!(part instanceof Decimal)) return part as Fault;
  const [b, o, u] = [base, over, under] as [Decimal, Decimal, Decimal];
  if (u.isZero() || (whole !== undefined && o.greaterThanOrEqualTo(u))) {
    return faults.unreadable(what, text, d);
  }
  if (TAPE.has(u.toString()) && o.greaterThanOrEqualTo(u))
    return improper(what, text, top as string, bottom as string);
  // Put over one denominator first, so that there is one division only.
  return { value: b.times(u).plus(o).div(u), end };
}

/** Fractions that a tape shows. Others, as 94/13, are reckoned exactly and are no slip of the thumb. */
const TAPE: ReadonlySet<string> = /*#__PURE__*/ new Set(['2', '4', '8', '16', '32', '64']);

/** The longest end of a numerator that is less than the denominator: the 15 of `315/16`. */
function slipOf(top: string, under: Decimal): string | undefined {
  const ends = Array.from({ length: top.length - 1 }, (_, i) => top.slice(i + 1));
  return ends.find((end) => !end.startsWith('0') && new Decimal(end).lessThan(under));
}

/** `31/2 in` is 15 1/2 in as written and 3 1/2 in as most likely meant; `9/8 in` is only badly written. */
function improper(what: string, text: string, top: string, bottom: string): Fault {
  const under = new Decimal(bottom);
  const rest = new Decimal(top).mod(under);
  const whole = new Decimal(top).divToInt(under).toFixed();
  const instead = (number: string): string => text.replace(/\d+ ?\/ ?\d+/, number);
  const asWritten = instead(rest.isZero() ? whole : `${whole} ${rest.toFixed()}/${bottom}`);
  const slip = slipOf(top, under);
  if (slip === undefined) return textFaults.improperFraction(what, text, asWritten);
  return textFaults.twoWays(
    what,
    text,
    asWritten,
    instead(`${top.slice(0, -slip.length)} ${slip}/${bottom}`),
  );
}

/** Everything up to the next number; a 2 or 3 right behind a letter is a power. */
const UNIT = /(?:[^\d.,\s/^-]|[.\s/^-](?![\d.,])|\^[23](?![\d.])|(?<=[A-Za-z])[23](?![\d.A-Za-z"']))+/y;

/** What may stand between two parts, as in `12'-6"` or `12 ft, 6 in`. */
const GAP = /\s*(?:[,-]\s*)?/y;

/** Units whose letter case changes their size a billion times, and what is meant by them on a site. */
const WRONG_CASE: ReadonlyMap<string, readonly [means: string, meant: string]> = /*#__PURE__*/ new Map([
  ['mPa', ['a thousandth of a pascal', 'MPa']],
  ['Mm', ['a million meters', 'mm']],
  ['ML', ['a million liters', 'mL']],
]);

/** Units that mean one thing to one trade or country and another to the next. */
const TWO_UNITS: ReadonlyMap<string, readonly [string, string]> = /*#__PURE__*/ new Map([
  ['t', ['ton', 'tonne']],
  ['deg', ['degF', 'degC']],
]);

const POWER = /^(sq(?:uare)?|cu(?:bic)?) (.+)$|^(.+) (squ|cub)(?:ar)?ed$/;
const PARTS: readonly Dimension[] = ['length', 'area', 'volume', 'mass', 'time'];

/** `cubic yards` to `yd3`, `hour` to `h`; what is not known stays as it was. */
function partName(part: string): string {
  const [, before, behind, first, after] = POWER.exec(part) ?? [];
  const bare = behind ?? first ?? part.replace(/[23]$/, '');
  const kind = before ?? after;
  const power = kind ? (kind.startsWith('s') ? '2' : '3') : part.slice(bare.length);
  const named = unitsNamed(bare).find((u) => PARTS.includes(u.dimension));
  return `${named ? named.id : bare}${power}`;
}

/** The one spelling of a unit that the table knows. */
function unitName(text: string): string {
  const name = text
    .replaceAll('.', '')
    .replace(/\s+/g, ' ')
    .trim()
    .replace(/per cent$/i, '%')
    // Before a unit or, as spacings on plans, behind it: `12" o.c.`, `200 mm c/c`.
    .replace(/^lin(?:eal|ear)? (?=\S)|(?<=.) ?(?:o(?:c|n cent[er]+s?)|c\/c)$/gi, '')
    // Tons with a word before them; without one a ton has 2,000 lb.
    .replace(/\bmetric ton(?:ne)?/i, 'tonne')
    .replace(/\b(?:(long)|short) (?=tons?\b)/i, '$1');
  if (unitsNamed(name).length > 0) return name;
  const temperature = /^(?:(?:deg|degrees?|°) ?)?(c|f|celsius|fahrenheit)$/i.exec(name);
  if (temperature) return (temperature[1] as string).charAt(0).toLowerCase();
  return name
    .replace(/\^/g, '')
    .replace(/ per /gi, '/')
    .split('/')
    .map((part) => partName(part.trim().toLowerCase()))
    .join('/');
}

function findUnit(text: string, what: string, d: Dimension): Unit | Fault {
  if (/survey|^ft ?us$|^us ?ft$/i.test(text)) return faults.surveyFoot(what);
  const wrong = WRONG_CASE.get(text);
  if (wrong) return textFaults.wrongCase(what, text, ...wrong);
  const named = unitsNamed(unitName(text));
  const found = named.find((u) => u.dimension === d);
  if (found) return found;
  const first = named[0];
  const two = TWO_UNITS.get(first?.id ?? text.toLowerCase());
  if (two && unitOf(d, two[0])) return textFaults.twoWays(what, text, ...two);
  if (first?.id === 'oz' && d === 'volume') return textFaults.notFluid(what);
  return first ? faults.wrongDimension(what, first.dimension, d) : faults.unknownUnit(what, text, d);
}

/** A canonical value from a number in a unit. */
export function canonical(value: Decimal, unit: Unit): Decimal {
  const scaled = value.times(unit.factor);
  return unit.offset ? scaled.plus(unit.offset) : scaled;
}

const CHAINED: readonly Dimension[] = ['length', 'mass', 'time'];

interface ChainPart {
  readonly value: Decimal;
  readonly unit: Unit;
  /** Where this part begins. */
  readonly at: number;
  /** Where the next part begins. */
  readonly next: number;
}

/** A number with nothing behind it, or with what makes no number of it: `1.200,5 mm`, `1.5.5 m`. */
function bareNumber(
  text: string,
  at: number,
  number: NumberPart,
  sign: 1 | -1,
  what: string,
  d: Dimension,
): Fault {
  const rest = text.slice(number.end);
  if (at === 0 && !/\d/.test(rest)) {
    const typed = (sign < 0 ? '-' : '') + text.slice(0, number.end);
    return faults.missingUnit(what, d, typed, number.value.times(sign).toNumber());
  }
  const chained = CHAINED.includes(d) && !/^ ?[.,/]|^ \d{3}\b/.test(rest);
  return chained ? faults.missingPartUnit(what, d) : faults.unreadable(what, text, d);
}

/** One number with its unit. */
function readPart(text: string, at: number, sign: 1 | -1, what: string, d: Dimension): ChainPart | Fault {
  const number = readNumber(text, at, what, d);
  if ('code' in number) return number;
  UNIT.lastIndex = number.end;
  const written = UNIT.exec(text)?.[0] ?? '';
  const name = written.replace(/^\s*-?\s*|\s*-?\s*$/g, '');
  if (name === '') return bareNumber(text, at, number, sign, what, d);
  const unit = findUnit(name, what, d);
  if ('code' in unit) return unit;
  // In metric text a comma is more likely a decimal point than a mark of thousands.
  const digits = text.slice(at, number.end);
  if (unit.system === 'metric' && /^\d+,\d+$/.test(digits)) {
    const rest = text.slice(number.end);
    return textFaults.twoWays(what, text, digits.replaceAll(',', '') + rest, digits.replace(',', '.') + rest);
  }
  // A dash that the name of the unit took along is the one dash that may stand between two parts.
  GAP.lastIndex = UNIT.lastIndex - (/\s*-\s*$/.exec(written)?.[0].length ?? 0);
  const dash = GAP.exec(text)?.[0].includes('-');
  if (dash && GAP.lastIndex === text.length) return faults.unreadable(what, text, d);
  return { value: number.value, unit, at, next: GAP.lastIndex };
}

/** What is wrong with a part behind another: `3' 14"`, `12.5' 6"`, `5' 20 cm`. */
function misfit(
  before: ChainPart,
  part: ChainPart,
  text: string,
  what: string,
  d: Dimension,
): Fault | undefined {
  if (!CHAINED.includes(d) || !part.unit.factor.lessThan(before.unit.factor))
    return faults.unreadable(what, text, d);
  if (part.unit.system !== before.unit.system) return textFaults.mixedSystems(what, text);
  const whole = before.value.isInteger();
  if (whole && canonical(part.value, part.unit).lessThan(before.unit.factor)) return undefined;
  const reading = (a: Decimal): string => {
    const { value, unit } = joined([{ ...before, value: a }, part], 1);
    return show(value, unit);
  };
  const tenth = `${before.value.toFixed()} ${before.unit.id} ${part.value.div(10).toFixed()} ${part.unit.id}`;
  const lead = text.slice(0, before.at);
  const other = whole ? tenth : reading(before.value.floor());
  return textFaults.twoWays(what, text, lead + reading(before.value), lead + other);
}

function joined(parts: readonly { value: Decimal; unit: Unit }[], sign: 1 | -1): Reading {
  const [first, second] = parts as [{ value: Decimal; unit: Unit }, { unit: Unit }?];
  // Not a product with the sign, which would round what has more digits than are kept.
  if (!second)
    return { value: canonical(sign < 0 ? first.value.neg() : first.value, first.unit), unit: first.unit };
  const value = parts.reduce((sum, p) => sum.plus(canonical(p.value, p.unit)), ZERO).times(sign);
  const feetInches = first.unit.id === 'ft' && second.unit.id === 'in';
  return { value, unit: feetInches ? (unitOf('length', 'ft-in') as Unit) : first.unit };
}

/** `12 ft 6 in`: each unit smaller than the one before it, and less of it than makes one of that. */
function readChain(text: string, what: string, d: Dimension, sign: 1 | -1): Reading | Fault {
  const parts: ChainPart[] = [];
  do {
    const before = parts.at(-1);
    const part = readPart(text, before?.next ?? 0, sign, what, d);
    if ('code' in part) return part;
    const fault = before && misfit(before, part, text, what, d);
    if (fault) return fault;
    parts.push(part);
  } while ((parts.at(-1)?.next ?? 0) < text.length);
  return joined(parts, sign);
}

/** `1e3`, which nobody writes on a tape. */
const EXPONENT = /^[+-]?[\d.,]+e[+-]?\d/i;

/** Signs and marks that make two readings of a text, with both of them. */
function twoReadings(text: string, tidied: string, d: Dimension): readonly [string, string] | undefined {
  if (SPACED.test(tidied)) {
    const parted = /(\d) (?=\d{3})/g;
    return [tidied.replace(parted, '$1'), tidied.replace(parted, '$1.')];
  }
  if (d === 'length' && APOSTROPHES.test(tidied))
    return ['', ' ft '].map((mark) => tidied.replace(/'(?=\d)/g, mark)) as [string, string];
  if (BEHIND_FRACTION.test(text)) return [tidied, tidy(text.replace(BEHIND_FRACTION, '$1 and $2'))];
  if (POWER_OF_NUMBER.test(text)) return [tidied, tidy(text.replace(POWER_OF_NUMBER, '$1'))];
  if (MINUS_BETWEEN.test(tidied)) {
    return [tidied.replace(MINUS_BETWEEN, '$1 $2'), tidied.replace(MINUS_BETWEEN, '$1 less $2')];
  }
  if (POINT_BETWEEN.test(tidied))
    return [tidied.replace(POINT_BETWEEN, '$1 $2'), tidied.replace(POINT_BETWEEN, '$1 0.$2')];
  return undefined;
}

/** One number and one unit that the table has as written: most of what is ever read. */
const SIMPLE = /^(-?\d{1,12}(?:\.\d{1,12})?) ?([A-Za-z'"%][A-Za-z\d/]*)$/;

function readSimple(text: string, d: Dimension): Reading | undefined {
  const match = SIMPLE.exec(text);
  const unit = match && unitsNamed(match[2] as string).find((u) => u.dimension === d);
  if (!unit || WRONG_CASE.has(match[2] as string)) return undefined;
  const number = new Decimal(match[1] as string);
  return { value: canonical(number, unit), unit, number };
}

/**
 * Read a text as a quantity of one dimension.
 *
 * @param text - what was written
 * @param d - the dimension wanted
 * @param what - the name of the value, for the sentence of a fault
 */
export function readText(text: string, d: Dimension, what: string): Reading | Fault {
  if (text.length > TEXT_LIMIT) return faults.tooLong(what, TEXT_LIMIT);
  const simple = readSimple(text, d);
  const reading = simple ?? readWritten(text, d, what);
  return d === 'temperature' ? aboveZero(reading, what) : reading;
}

/** Nothing is colder than absolute zero: a slip of the sign or the unit. */
const ABSOLUTE_ZERO = /*#__PURE__*/ new Decimal('-459.67');

const aboveZero = (r: Reading | Fault, what: string): Reading | Fault =>
  isFault(r) || !r.value.lessThan(ABSOLUTE_ZERO) ? r : textFaults.belowAbsoluteZero(what);

function readWritten(text: string, d: Dimension, what: string): Reading | Fault {
  const tidied = tidy(text);
  if (tidied === '') return faults.missing(what, faults.examplesOf(d, what));
  if (HIDDEN.test(text)) return textFaults.hiddenSign(what);
  if (EXPONENT.test(tidied)) return faults.exponent(what, text);
  const readings = twoReadings(text, tidied, d);
  if (readings) return textFaults.twoWays(what, text, ...readings);
  const signed = /^([+-]) ?/.exec(tidied);
  const body = signed ? tidied.slice(signed[0].length) : tidied;
  const sign = signed?.[1] === '-' ? -1 : 1;
  if (/^[+-]/.test(body)) return faults.unreadable(what, text, d);
  const special = readRatio(body, what, d, (part, of) => readChain(part, what, of, 1));
  if (!special) return readChain(body, what, d, sign);
  return isFault(special) || sign === 1 ? special : { ...special, value: special.value.neg() };
}

/** Read the `{ value, unit }` form. */
export function readPair(value: unknown, unit: unknown, d: Dimension, what: string): Reading | Fault {
  const reading = readParts(value, unit, d, what);
  return d === 'temperature' ? aboveZero(reading, what) : reading;
}

function readParts(value: unknown, unit: unknown, d: Dimension, what: string): Reading | Fault {
  const text = typeof value === 'number' && Number.isFinite(value) ? new Decimal(value).toFixed() : value;
  if (typeof text !== 'string' || typeof unit !== 'string') return faults.notAQuantity(what, d);
  if (text.length > TEXT_LIMIT || unit.length > TEXT_LIMIT) return faults.tooLong(what, TEXT_LIMIT);
  const match = /^(-?)(\d+(?:\.\d+)?)$/.exec(text.trim());
  if (!match) return faults.unreadable(what, text, d);
  const number = plainNumber(match[2] as string, what);
  if (!(number instanceof Decimal)) return number as Fault;
  const signedNumber = match[1] === '-' ? number.neg() : number;
  const found = unit.trim() === '' ? faults.missingUnit(what, d) : findUnit(unit.trim(), what, d);
  if ('code' in found) return found;
  if (found.form !== 'one-in') return { value: canonical(signedNumber, found), unit: found };
  return number.isZero() ? faults.notPositive(what) : { value: found.factor.div(signedNumber), unit: found };
}

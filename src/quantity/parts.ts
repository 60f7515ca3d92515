/**
 * A quantity in parts, as `Intl.NumberFormat` gives the parts of a number (ECMA-402, `formatToParts`), so that a
 * front-end can set number and unit as it likes: `5,80` and `m³`.
 *
 * The digits are those of `format`, exact and rounded as the trade reads them; the locale gives the marks of
 * thousands and decimals and, where it has its own, the digits.
 */
import * as faults from './faults';
import { fail } from './input-error';

/** One part of a quantity as it is shown. */
export interface QuantityPart {
  /** What it is: the names are those of `Intl.NumberFormat`; a tape's fraction of an inch is `ratio`. */
  readonly type: 'minusSign' | 'integer' | 'group' | 'decimal' | 'fraction' | 'ratio' | 'unit' | 'literal';
  /** Its text. Those of all parts, joined, are the quantity as it is shown. */
  readonly value: string;
}

/** A sign, a fraction, a number, what stands between, and units, of the text that `format` gives. */
const PIECES = /((?<!\d)-)|(\d+\/\d+)|(\d+)(?:\.(\d+))?|([\s:-]+)|[^\d\s:-]\S*/g;

const RAISED: Readonly<Record<string, string>> = { 2: '²', 3: '³' };

/** A unit as print sets it: `m³`, `lb/ft²/h`, `°C`. */
export const unitSign = (unit: string): string =>
  unit.replace(/^deg/, '°').replace(/(?<=[a-z])[23]/g, (power) => RAISED[power] as string);

interface Marks {
  readonly decimal: string;
  readonly minus: string;
  /** The parts of a whole number. */
  readonly whole: (digits: string) => QuantityPart[];
  /** Digits as the locale writes them. */
  readonly digits: (digits: string) => string;
}

const PLAIN: Marks = {
  decimal: '.',
  minus: '-',
  whole: (digits) => [{ type: 'integer', value: digits }],
  digits: (digits) => digits,
};

function marksOf(locale: string): Marks {
  let numbers: Intl.NumberFormat;
  try {
    numbers = new Intl.NumberFormat(locale, { maximumFractionDigits: 1 });
  } catch {
    return fail(faults.wrongType('locale', 'a language tag, for example "de-DE"'));
  }
  const sample = numbers.formatToParts(-0.5);
  const mark = (type: string, otherwise: string): string =>
    sample.find((part) => part.type === type)?.value ?? otherwise;
  const ungrouped = new Intl.NumberFormat(locale, { useGrouping: false });
  const digits = Array.from({ length: 10 }, (_, n) => ungrouped.format(n));
  return {
    decimal: mark('decimal', '.'),
    minus: mark('minusSign', '-'),
    whole: (text) =>
      numbers
        .formatToParts(BigInt(text))
        .map(({ type, value }) => ({ type: type as QuantityPart['type'], value })),
    digits: (text) => text.replace(/\d/g, (digit) => digits[Number(digit)] as string),
  };
}

function piecesOf(match: RegExpMatchArray, marks: Marks): QuantityPart[] {
  const [all, minus, ratio, integer, fraction, between] = match;
  if (minus) return [{ type: 'minusSign', value: marks.minus }];
  if (ratio) return [{ type: 'ratio', value: marks.digits(ratio) }];
  if (between) return [{ type: 'literal', value: between }];
  if (integer === undefined) return [{ type: 'unit', value: unitSign(all) }];
  const whole = marks.whole(integer);
  if (fraction === undefined) return whole;
  return [
    ...whole,
    { type: 'decimal', value: marks.decimal },
    { type: 'fraction', value: marks.digits(fraction) },
  ];
}

/**
 * Cut what `format` gave into parts.
 *
 * @param locale - a language tag; without one, numbers are as `format` writes them
 */
export function partsOfText(text: string, locale: string | undefined): readonly QuantityPart[] {
  const marks = locale === undefined ? PLAIN : marksOf(locale);
  return Object.freeze([...text.matchAll(PIECES)].flatMap((match) => piecesOf(match, marks)));
}

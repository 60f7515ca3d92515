/**
 * What can be wrong with an input wherever quantities are read, in words; what only one trade knows of
 * stands in its folder.
 *
 * Each says what was found and what to write instead. Kept as single functions so that a bundle
 * carries only those it can reach.
 */

import type { Dimension } from './dimensions';
import { type Example, exampleFor, exampleIn, remade, withNumber } from './examples';
import type { Fault, IssueCode } from './input-error';
import type { System } from './units';
import { type Saying, say, sentenceOf, type Words, wordsOf } from './words';

/** A fault of what it says; its English sentence is made at once, since a fault is about to be thrown. */
export function fault(code: IssueCode, saying: Saying): Fault {
  const words = wordsOf(saying);
  return { code, ...words, sentence: sentenceOf(words) };
}

/** At most 40 characters of what was written, safe to print on one line. */

export function quoted(text: string): string {
  const line = text.slice(0, 40).replace(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/gu, ' ');
  return `"${line}${text.length > 40 ? '…' : ''}"`;
}
/** An example of a quantity of the dimension, in double quotes. */
export const exampleOf = (d: Dimension, what = ''): string =>
  `"${exampleIn(exampleFor(d, what), 'customary')}"`;

/** A fault with an example in it, as each unit system writes it. */
export function withExample(code: IssueCode, example: Example, saying: (example: string) => Words): Fault {
  if (typeof example === 'string') return fault(code, saying(example));
  return { ...fault(code, saying(example[0])), metric: fault(code, saying(example[1])) };
}

const inQuotes = (example: Example): Example =>
  typeof example === 'string' ? `"${example}"` : [`"${example[0]}"`, `"${example[1]}"`];

/** Examples of a quantity, in double quotes. */
export const examplesOf = (d: Dimension, what: string): Example => inQuotes(exampleFor(d, what));

/** The same fault with another example in place of that of the name or dimension; a number as it was typed stays. */
export function proposing(own: Example, found: Fault, d: Dimension, what: string): Fault {
  const usual = exampleFor(d, what);
  const told = (one: Fault, system: System): Fault => {
    const text = one.params?.['example'];
    if (!text) return one;
    const example = remade(String(text).slice(1, -1), exampleIn(usual, system), exampleIn(own, system));
    return fault(one.code, { says: one.says, params: { ...one.params, example: `"${example}"` } });
  };
  return { ...told(found, 'customary'), metric: told(found.metric ?? found, 'metric') };
}

const words = (d: Dimension): string => d.replaceAll('-', ' ');

const article = (d: Dimension): string => (/^[aeiou]/.test(d) ? 'an' : 'a');

export const missing = (what: string, example: Example): Fault =>
  withExample(
    'missing',
    example,
    (e) => say`${{ what }} is missing; write it, for example ${{ example: e }}`,
  );

/**
 * @param number - what was typed without a unit
 * @param value - what that comes to
 */
export function missingUnit(what: string, d: Dimension, number?: string, value = Number(number)): Fault {
  const example = exampleFor(d, what);
  return withExample(
    'missing-unit',
    inQuotes(number === undefined ? example : withNumber(d, example, number, value)),
    (e) => say`${{ what }} needs a unit, for example ${{ example: e }}`,
  );
}

export const missingPartUnit = (what: string, d: Dimension): Fault =>
  withExample(
    'missing-unit',
    d === 'length' ? ['"12 ft 6 in"', '"3.8 m"'] : examplesOf(d, what),
    (e) => say`${{ what }} needs a unit behind each of its numbers, for example ${{ example: e }}`,
  );

export const notAQuantity = (what: string, d: Dimension): Fault =>
  withExample(
    'not-a-quantity',
    examplesOf(d, what),
    (e) => say`${{ what }} must be text with a unit, for example ${{ example: e }}, or { value, unit }`,
  );

export const unreadable = (what: string, text: string, d: Dimension): Fault =>
  writtenAs(what, text, examplesOf(d, what));

/** @param example - what may be written instead, in double quotes */
export const writtenAs = (what: string, text: string, example: Example): Fault =>
  withExample(
    'unreadable-quantity',
    example,
    (e) => say`${{ what }} cannot be read from ${{ text: quoted(text) }}; write it as in ${{ example: e }}`,
  );

export const decimalComma = (what: string, text: string): Fault =>
  fault(
    'unreadable-quantity',
    say`${{ what }} cannot be read from ${{ text: quoted(text) }}; leave the comma out, or write a point if decimals follow it`,
  );

export const exponent = (what: string, text: string): Fault =>
  fault(
    'unreadable-quantity',
    say`${{ what }} cannot be read from ${{ text: quoted(text) }}; write the number out in full`,
  );

export const unknownUnit = (what: string, unit: string, d: Dimension): Fault =>
  withExample(
    'unknown-unit',
    examplesOf(d, what),
    (e) => say`${{ what }} has the unknown unit ${{ unit: quoted(unit) }}; write it as in ${{ example: e }}`,
  );

export const surveyFoot = (what: string): Fault =>
  fault(
    'survey-foot',
    say`${{ what }} is in US survey feet, retired at the end of 2022; convert to the international foot of exactly 0.3048 m and write ft`,
  );

export const wrongDimension = (what: string, found: Dimension, wanted: Dimension): Fault =>
  withExample(
    'wrong-dimension',
    examplesOf(wanted, what),
    (e) =>
      say`${{ what }} must be ${{ article: article(wanted) }} ${{ dimension: words(wanted) }} such as ${{ example: e }}, but ${{ article2: article(found) }} ${{ dimension2: words(found) }} was given`,
  );

export const tooLong = (what: string, limit: number): Fault =>
  fault('too-long', say`${{ what }} is longer than ${{ limit }} characters; write it shorter`);

export const tooManyDigits = (what: string): Fault =>
  fault('too-many-digits', say`${{ what }} has more digits than any measurement carries; round it`);

export const outOfRange = (what: string): Fault =>
  fault(
    'out-of-range',
    say`${{ what }} is larger than anything this library works with; check the number and its unit`,
  );

export const notPositive = (what: string): Fault =>
  fault('not-positive', say`${{ what }} must be greater than zero`);

/** @param text - it came as text, in which a whole number looks right */
export function notACount(what: string, least: number, most: number, text = false): Fault {
  const words = say`${{ what }} must be a whole number from ${{ least }} to ${{ most }}`;
  return fault('not-a-count', text ? say`${words}, not text` : words);
}

export const wrongType = (what: string, wanted: Example): Fault =>
  withExample('wrong-type', wanted, (w) => say`${{ what }} must be ${{ wanted: w }}`);

/** What is known is told with the likest name first: that with most of the pairs of letters that were typed. */
export const unknownKey = (key: string, known: readonly string[]): Fault => {
  const typed = key.slice(0, 40).toLowerCase();
  const likeness = (name: string): number =>
    [...typed].filter((_, i) => name.toLowerCase().includes(typed.slice(i, i + 2))).length;
  return fault(
    'unknown-key',
    say`${{ key: quoted(key) }} is not known here; known: ${{ known: [...known].sort((a, b) => likeness(b) - likeness(a)).join(', ') }}`,
  );
};

export const tooFew = (what: string, least: number): Fault =>
  fault('too-few', say`${{ what }} needs at least ${{ least }}`);

export const tooMany = (what: string, most: number): Fault =>
  fault('too-many', say`${{ what }} may have at most ${{ most }}; split the work`);

export const mismatch = (verb: string, a: Dimension, b: Dimension): Fault =>
  fault(
    'dimension-mismatch',
    say`cannot ${{ verb }} ${{ article: article(a) }} ${{ dimension: words(a) }} and ${{ article2: article(b) }} ${{ dimension2: words(b) }}`,
  );

export const currencyMismatch = (a: string, b: string): Fault =>
  fault(
    'currency-mismatch',
    say`cannot mix ${{ a }} and ${{ value: /^[A-Z]{3}$/.test(b) ? b : quoted(b) }}; convert one of them first`,
  );

export const divideByZero = (): Fault => fault('divide-by-zero', 'cannot divide by zero; check the divisor');

export const bareArithmetic = (): Fault =>
  fault('bare-arithmetic', 'operators such as + and < drop the unit; use .plus, .times or .lessThan');

export const repeatedPoint = (index: number): Fault =>
  fault('repeated-point', say`corner ${{ index: index + 1 }} repeats the corner before it; leave it out`);

export const doesNotFit = (what: string, inside: string): Fault =>
  fault('does-not-fit', say`${{ what }} must be smaller than ${{ inside }}`);

export const giveOneOf = (names: readonly string[]): Fault =>
  fault('give-one-of', say`give exactly one of ${{ names: names.join(', ') }}`);

export const giveSomeOf = (names: readonly string[]): Fault =>
  fault('give-one-of', say`give at least one of ${{ names: names.join(', ') }}`);

const NAMED = 12;
/** Names in quotes, joined; more than a dozen are cut short. */

export const named = (names: readonly string[]): string => {
  const shown = names.slice(0, NAMED).map(quoted).join(', ');
  return names.length > NAMED ? `${shown} and ${names.length - NAMED} more` : shown;
};

export const outOfOrder = (what: string, before: string): Fault =>
  fault('out-of-order', say`${{ what }} must lie beyond ${{ before }}; list them in order along the line`);

/**
 * Text made of a result's words: for who reads it, in their units and language.
 *
 * A language is a map from each English sentence to its own, places in braces and all; what it does not have stays
 * English.
 */
import { isQuantity, type Quantity } from '../quantity/quantity';
import type { Assumption, Step } from '../reckoning/parts';
import type { Param, Words } from '../reckoning/words';
import { writtenTime } from './clock';
import { placeInSentence } from './labels';
import { mustBeQuantity, mustBeView, mustBeWords } from './must-be';
import { nameText, wordText } from './names';
import { hasLarge, putIn } from './put-in';
import { exactFraction, localized, numberText, type SideBySide, shownText, type View, viewed } from './show';

export { nameText, wordText } from './names';
export type { Language, View } from './show';

/** A quantity as text; counts and factors go without their unit. */
export function quantityText(q: Quantity, view: View = {}): string {
  mustBeQuantity(q);
  mustBeView(view);
  return localized(shownText(q, view), view);
}

const PLACE = /\{(\w+)\}/g;

/** A limit within a sentence: an eighth of an inch is that, where nobody measures in tenths. */
function limitText(q: Quantity, view: View): string {
  const fraction = view.feet === 'tenths' ? undefined : exactFraction(viewed(q, view), { feet: 'fractions' });
  return fraction === undefined ? quantityText(q, view) : localized(fraction, view);
}

/** Places in a sentence that take a name that somebody gave. */
const NAMES: ReadonlySet<string> = new Set(['first', 'name', 'names', 'second', 'spots', 'stake']);

/** Places in a sentence that take a path of an input or of a figure. */
const PATHS: ReadonlySet<string> = new Set([
  'place',
  'places',
  'figure',
  'figures',
  'other',
  'vary',
  'measure',
]);

/** A path, and no name that somebody gave. */
const isPath = (text: string): boolean =>
  /^[a-z][A-Za-z0-9]*(?:\[\d+\])?(?:\.[a-z][A-Za-z0-9]*(?:\[\d+\])?)*$/.test(text);

/** Places that take a piece of a name of the purchase list. */
const PIECE = /^piece\d/;

/** A word to choose from as it is spoken, where the language has no other for it: `crushed-stone` to `crushed stone`. */
export function choiceText(word: string, view: View): string {
  const text = wordText(word, view);
  return text === word && /^[a-z]+(?:-[a-z]+)+$/.test(word) ? word.replaceAll('-', ' ') : text;
}

/** A list of names, or of words that may have lists of names in them. */
const listText = (list: readonly (string | Words)[], view: View): string =>
  list
    .map((one) => (typeof one === 'string' ? nameText(one, view) : wordsText(one, view)))
    .join(list.every((one) => typeof one === 'string') ? ', ' : '; ');

function paramText(place: string, param: Param, view: View): string {
  if (isQuantity(param)) return limitText(param, view);
  if (PATHS.has(place)) {
    const paths = [param].flat().map(String);
    if (paths.every(isPath)) return paths.map((one) => placeInSentence(one, view)).join(', ');
  }
  if (typeof param === 'string') {
    if (PIECE.test(place)) return choiceText(param, view);
    return NAMES.has(place) ? nameText(param, view) : (writtenTime(param, view) ?? wordText(param, view));
  }
  if (typeof param === 'number') return String(param);
  if (Array.isArray(param)) return listText(param as readonly (string | Words)[], view);
  return wordsText(param as Words, view);
}

/**
 * Words as text.
 *
 * @param words - a caution, a step, a default's reason: anything that `says` something
 * @param view - units, marks of numbers and language
 */
export function wordsText(words: Words, view: View = {}): string {
  mustBeWords(words);
  mustBeView(view);
  const { says, params = {} } = words;
  return wordText(says, view).replace(PLACE, (place, name: string) => {
    const param = params[name];
    return param === undefined ? place : paramText(name, param, view);
  });
}

/** What a default came to, as text. */
export const valueText = (value: Assumption['value'], view: View = {}): string =>
  isQuantity(value) ? quantityText(value, view) : wordsText(value, view);

/** A step of the working as it is printed. */
export interface StepText {
  /** What is computed. */
  readonly what: string;
  /** The formula in symbols. */
  readonly formula: string;
  /** Its right-hand side with the numbers put in. */
  readonly put: string;
  /** What it came to, rounded for show. */
  readonly gives: string;
}

/** A step of the working as text. */
export function stepText(step: Step, view: View = {}): StepText {
  const what = wordsText(step, view);
  const { formula, values, gives } = step;
  mustBeQuantity(gives);
  const told: SideBySide = hasLarge(values, view) ? { ...view, volumes: 'as-given' } : view;
  return {
    what,
    formula,
    put: putIn(formula, values, view),
    gives: localized(numberText(gives, told), view),
  };
}

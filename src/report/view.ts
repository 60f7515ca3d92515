/**
 * Text made of a result's words: for who reads it, in their units and language.
 *
 * A language is a map from each English sentence to its own, places in braces and all; what it does not have stays
 * English.
 */
import { isQuantity, type Quantity } from '../quantity/quantity';
import type { Assumption, Step } from '../reckoning/parts';
import type { Param, Words } from '../reckoning/words';
import { putIn } from './put-in';
import { exactFraction, type Language, localized, shownText, type View, viewed } from './show';

export type { Language, View } from './show';

/** A quantity as text; counts and factors go without their unit. */
export const quantityText = (q: Quantity, view: View = {}): string => localized(shownText(q, view), view);

/** Names that the library makes of others, as what is between them is said. */
const COMPOSED: readonly (readonly [RegExp, string])[] = [
  [/^row (?<row>\d+) spot (?<spot>\d+)$/, 'row {row} spot {spot}'],
  [/^ground at (?<name>.+)$/, 'ground at {name}'],
  [/^along (?<curb>.+) from (?<from>.+) to (?<to>.+)$/, 'along {curb} from {from} to {to}'],
  [/^from (?<from>.+) to (?<to>.+)$/, 'from {from} to {to}'],
  [/^sections (?<from>\d+) to (?<to>\d+)$/, 'sections {from} to {to}'],
  [/^middle of (?<names>.+)$/, 'middle of {names}'],
  [/^(?<name>.+) at (?<place>-?\d.*)$/, '{name} at {place}'],
];

/** What has no name of its own is called by what it is and its number. */
const NUMBERED = /^(footing|opening|pier|row|run|section|side|spot|wall) (\d+)$/;

const PLACE = /\{(\w+)\}/g;

/** A name that the library made, in a language; one that somebody gave stays as it is. */
function nameIn(name: string, language: Language): string {
  const [, what = '', number] = NUMBERED.exec(name) ?? [];
  if (number !== undefined) return `${toldIn(what, language)} ${number}`;
  const [pattern, says = ''] = COMPOSED.find(([each]) => each.test(name)) ?? [];
  const inner = pattern?.exec(name)?.groups;
  if (!inner) return name;
  const told = (names: string): string[] => names.split(', ').map((each) => nameIn(each, language));
  return toldIn(says, language).replace(PLACE, (place, key: string) => told(inner[key] ?? place).join(', '));
}

/** A text in a language: its own there, else that of a name that the library made, else as it is. */
const toldIn = (text: string, language: Language): string =>
  Object.hasOwn(language, text)
    ? (language[text] as string)
    : text.includes('{')
      ? text
      : nameIn(text, language);

/** A name: what the library made of others is told in the language of the view. */
export const nameText = (name: string, { language }: View = {}): string =>
  language ? nameIn(name, language) : name;

/** A word in the language of the view. */
export const wordText = (word: string, { language }: View = {}): string =>
  language ? toldIn(word, language) : word;

/** A limit within a sentence: an eighth of an inch is that, where nobody measures in tenths. */
function limitText(q: Quantity, view: View): string {
  const fraction = view.feet === 'tenths' ? undefined : exactFraction(viewed(q, view), { feet: 'fractions' });
  return fraction === undefined ? quantityText(q, view) : localized(fraction, view);
}

/** Places in a sentence that take a name that somebody gave. */
const NAMES: ReadonlySet<string> = new Set(['first', 'name', 'names', 'second', 'spots', 'stake']);

function paramText(place: string, param: Param, view: View): string {
  if (isQuantity(param)) return limitText(param, view);
  if (typeof param === 'string') return NAMES.has(place) ? nameText(param, view) : wordText(param, view);
  if (typeof param === 'number') return String(param);
  if (Array.isArray(param)) return param.map((one) => nameText(String(one), view)).join(', ');
  return wordsText(param as Words, view);
}

/**
 * Words as text.
 *
 * @param words - a caution, a step, a default's reason: anything that `says` something
 * @param view - units, marks of numbers and language
 */
export const wordsText = ({ says, params = {} }: Words, view: View = {}): string =>
  wordText(says, view).replace(PLACE, (place, name: string) => {
    const param = params[name];
    return param === undefined ? place : paramText(name, param, view);
  });

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
export const stepText = (step: Step, view: View = {}): StepText => ({
  what: wordsText(step, view),
  formula: step.formula,
  put: putIn(step.formula, step.values, view),
  gives: quantityText(step.gives, view),
});

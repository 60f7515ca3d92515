/** Words and names in the language of who reads: what the library says, and names that it made of others. */
import type { Language, View } from './show';

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

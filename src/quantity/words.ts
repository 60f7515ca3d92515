/**
 * Words as data: a sentence in English with places in braces, and what stands in them. Text is made of it when it
 * is asked for, in the units and the language of who reads.
 *
 * The English sentence is also the key under which a language has its own, as in other catalogs of messages.
 */
import type { AnyPair } from './paired';
import type { Quantity } from './quantity';

/** What stands in a place of a sentence: a quantity, a name or word, a number, words of their own, or a list of some. */
export type Param = Quantity | string | number | Words | readonly (string | Words)[];

/** What stands in the places of a sentence, by the name of the place. */
export type Params = { readonly [name: string]: Param };

/** A sentence or a part of one, as data. */
export interface Words {
  /** In English, with places in braces: `a riser higher than {limit} is not allowed`. */
  readonly says: string;
  /** What stands in the places; left out where there are none. */
  readonly params?: Params;
}

/** Words, or text without places. */
export type Saying = string | Words;

/**
 * What may stand in a hole: one named value, or words that become part of the sentence. A pair becomes the quantity
 * of the job's family when the result is made.
 */
type Hole = Params | Words | { readonly [name: string]: AnyPair | Param };

const isWords = (hole: Hole): hole is Words => typeof (hole as Words).says === 'string';

/**
 * Words from a template: a hole holds one named value, `${{ limit }}`, or other words.
 *
 * @internal
 */
export function say(texts: TemplateStringsArray, ...holes: readonly Hole[]): Words {
  let says = texts[0] as string;
  let params: Params | undefined;
  holes.forEach((hole, i) => {
    if (isWords(hole)) {
      says += hole.says;
      params = hole.params ? { ...params, ...hole.params } : params;
    } else {
      says += Object.keys(hole).map((name) => `{${name}}`);
      params = { ...params, ...(hole as Params) };
    }
    says += texts[i + 1];
  });
  return params ? { says, params } : { says };
}

/** Text without places as words. */
export const wordsOf = (saying: Saying): Words => (typeof saying === 'string' ? { says: saying } : saying);

/** The same words once, in their order. */
export const distinct = (words: readonly Words[]): Words[] => [
  ...new Map(words.map((one) => [sentenceOf(one), one])).values(),
];

/** Nothing, where a part of a sentence is left out. */
export const NO_WORDS: Words = { says: '' };

const PLACE = /\{(\w+)\}/g;

function plainText(param: Param): string {
  if (typeof param === 'string' || typeof param === 'number') return String(param);
  if (Array.isArray(param)) return param.map(plainText).join(', ');
  return 'says' in param ? sentenceOf(param as Words) : (param as Quantity).format();
}

/** Words in English, for those who ask for no language; sheets have a view of their own. */
export const sentenceOf = ({ says, params = {} }: Words): string =>
  says.replace(PLACE, (place, name: string) =>
    Object.hasOwn(params, name) ? plainText(params[name] as Param) : place,
  );

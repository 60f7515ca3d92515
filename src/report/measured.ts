/**
 * Groups that people say in one breath: `4 h to 6 h`, `2 × 16 ft`, `1-1/2 in × 5-1/2 in`, `168 USD per yd3`. The names of
 * their members need not be told.
 */
import { type View, wordText } from './view';

/** The texts of a group's members by their names. */
type Texts = { readonly [member: string]: string };

/** As it is said, with the members in braces; the words between them are those of the language. */
const SAID: Readonly<Record<string, string>> = {
  'amount,per': '{amount} per {per}',
  'area,in': '{area} in {in}',
  'count,length': '{count} × {length}',
  'from,to': '{from} to {to}',
  'height,thickness': '{thickness} × {height}',
  'height,width': '{width} × {height}',
  'length,shape,width': '{shape} {length} × {width}',
  'thickness,x,y': '{thickness} at ({x}, {y})',
  'length,width': '{length} × {width}',
};

/** A price of one of what is counted. */
const OF_ONE = '{amount} apiece';

const PLACE = /\{(\w+)\}/g;

/** `1 yd3` behind a word for each; what is counted has no unit: `3 USD per 100`. */
const ONE_OF = /^1 (?=\D)|(?<=\d) each$/;

/** A group that is said in one breath; `undefined` for any other. */
export function measuredText(texts: Texts, view: View): string | undefined {
  const names = Object.keys(texts).sort().join();
  if (!Object.hasOwn(SAID, names)) return undefined;
  const said = texts['per'] === '1 each' ? OF_ONE : (SAID[names] as string);
  const words = /[a-z]\} [a-z]/.test(said) ? wordText(said, view) : said;
  return words.replace(PLACE, (_, name: string) => {
    const text = texts[name] ?? '';
    return name === 'per' ? text.replace(ONE_OF, '') : text;
  });
}

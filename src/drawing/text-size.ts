/**
 * How much room text takes, before anything has drawn it.
 *
 * Widths are those of a wide sans-serif, so that text fits in whichever one a page has. Signs of scripts that are
 * not in the table take a full square, and are told to keep to it when drawn.
 */

/** Widths in hundredths of the height of the text, by the signs that have them. */
const WIDTHS: readonly (readonly [hundredths: number, signs: string])[] = [
  [29, "ijlIJ'|"],
  [34, ' \u00a0,.:;/\\f'],
  [40, 'rt()[]-"`'],
  [53, '“”°'],
  [56, 's½¼¾'],
  [62, 'acezkvxyLFT?'],
  [66, 'bdghnopqu0123456789EPSY_+=*$<>'],
  [70, 'ABCKRVXZ–'],
  [80, 'DGHNOQU&#~^×÷−±²³'],
  [90, 'wM'],
  [100, 'mW%@…—'],
];

const WIDTH_OF = new Map(WIDTHS.flatMap(([width, signs]) => [...signs].map((sign) => [sign, width / 100])));

const LATIN = 0x24f;
const LATIN_WIDTH = 0.85;
const SQUARE = 1.2;
const MARK = /\p{M}/u;

const signWidth = (sign: string): number => {
  const known = WIDTH_OF.get(sign);
  if (known !== undefined) return known;
  if ((sign.codePointAt(0) as number) <= LATIN) return LATIN_WIDTH;
  return MARK.test(sign) ? 0 : SQUARE;
};

/** Bold signs are this much wider. */
const BOLD = 1.16;

/** How wide text is, by its height. */
export function textWidth(text: string, size: number, bold = false): number {
  let width = 0;
  for (const sign of text) width += signWidth(sign);
  return width * size * (bold ? BOLD : 1);
}

/** True where the width is a guess, to which the drawn text must be held. */
export const isGuessed = (text: string): boolean =>
  [...text].some((sign) => !WIDTH_OF.has(sign) && (sign.codePointAt(0) as number) > LATIN);

/** What turns the direction of text around or does not show at all. */
const UNSEEN = /[\p{Cc}\p{Cf}\p{Co}\p{Cs}\p{Cn}\u2028\u2029]/gu;

/** Marks above and below a sign, as far as they stay within its line. */
const STACKED = /(\p{M}{2})\p{M}+/gu;

/** A name on one line: without signs that do not show, cut short where it is too long. */
export function neatText(text: string, most: number): string {
  // Longer than what is kept, whatever is taken out of it.
  const start = text.slice(0, most * 20);
  const signs = [
    ...start.normalize('NFC').replace(/\s+/gu, ' ').replace(UNSEEN, '').replace(STACKED, '$1').trim(),
  ];
  return signs.length <= most
    ? signs.join('')
    : `${signs
        .slice(0, most - 1)
        .join('')
        .trimEnd()}…`;
}

/** A word cut where it is wider than a line. */
function cutWord(word: string, fits: (text: string) => boolean): string[] {
  const pieces: string[] = [];
  let piece = '';
  for (const sign of word) {
    if (piece && !fits(piece + sign)) {
      pieces.push(piece);
      piece = '';
    }
    piece += sign;
  }
  return [...pieces, piece];
}

/** Where a line may not end: within a length, as between `1 ft` and `1 15/16 in`. */
const WITHIN_LENGTH = /(?<=\d) (?=\d+\/\d|(?:ft|in|mm|cm|m|yd)\b)|(?<=\d ft) (?=\d)/g;
const HARD = '\u00a0';

/** Text in lines no wider than `width`. */
export function wrapped(text: string, size: number, width: number, bold = false): string[] {
  const fits = (line: string): boolean => textWidth(line, size, bold) <= width;
  const lines: string[] = [];
  let line = '';
  for (const word of text
    .replace(WITHIN_LENGTH, HARD)
    .split(' ')
    .flatMap((one) => cutWord(one, fits))) {
    const longer = line ? `${line} ${word}` : word;
    if (!line || fits(longer)) {
      line = longer;
      continue;
    }
    lines.push(line);
    line = word;
  }
  return [...lines, line].map((one) => one.replaceAll(HARD, ' '));
}

/** The first so many lines; what is cut off shows. */
export function firstLines(lines: readonly string[], most: number): string[] {
  if (lines.length <= most) return [...lines];
  const last = lines[most - 1] as string;
  return [...lines.slice(0, most - 1), `${last.slice(0, -1).trimEnd()}…`];
}

/** Lines of a text sheet: wrapped, so that none is wider than a page, and tables in columns. */

/** The widest line of a text sheet. */
export const WIDTH = 100;

/** A name keeps to its own line and its own direction. */
const onOneLine = (text: string): string =>
  text.replace(/[\t\n\v\f\r\u2028\u2029]+/g, ' ').replace(/[\u202a-\u202e\u2066-\u2069]/g, '');

/** Text that stays text in Markdown, whatever signs are in it. */
export const markdownText = (text: string): string =>
  onOneLine(text).replaceAll('<', '&lt;').replace(/\s+/g, ' ');

/** A word that no line holds is cut. */
function* words(text: string, room: number): Generator<string> {
  for (const word of text.split(' ')) {
    const signs = Array.from(word);
    for (let at = 0; at === 0 || at < signs.length; at += room) yield signs.slice(at, at + room).join('');
  }
}

/** Text in lines of at most so many characters. */
function broken(text: string, room: number): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of words(onOneLine(text), room)) {
    if (line !== '' && line.length + 1 + word.length > room) {
      lines.push(line);
      line = word;
    } else line = line === '' ? word : `${line} ${word}`;
  }
  return [...lines, line];
}

/**
 * Text in lines of at most {@link WIDTH}.
 *
 * @param first - what stands before the first line
 * @param rest - what stands before the others
 */
export const wrapped = (text: string, first: string, rest: string): string[] =>
  broken(text, WIDTH - Math.max(first.length, rest.length)).map((one, i) =>
    `${i === 0 ? first : rest}${one}`.trimEnd(),
  );

/** A label and a text beside each other; a long label stands above. */
export const pair = (label: string, text: string, indent: string, width: number): string[] =>
  wrapped(text, `${indent}${label.padEnd(width)}  `, `${indent}${' '.repeat(width)}  `);

/** Head and rows of a table. */
export interface Cells {
  /** Titles of the columns; nothing where each row is a label and what is beside it. */
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
  /** Each row in words, for where the columns are too wide for the page. */
  readonly told: readonly string[];
}

/** The head of a table in Markdown, which has none without. */
export const headOf = ({ head, rows }: Pick<Cells, 'head' | 'rows'>): readonly string[] =>
  head.length > 0 ? head : (rows[0] ?? []).map(() => '');

/** A column in which cells are wrapped keeps at least so many characters. */
const NARROWEST = 12;
const BETWEEN = '  ';

const longest = (texts: readonly string[]): number =>
  texts.reduce((most, text) => Math.max(most, text.length), 0);

/** Widths of columns within a room: the widest give way first, down to their longest word; nothing where none fits. */
function columnWidths(columns: readonly (readonly string[])[], room: number): number[] | undefined {
  const widths = columns.map(longest);
  const least = columns.map((cells) =>
    Math.min(Math.max(NARROWEST, longest(cells.flatMap((cell) => cell.split(' ')))), longest(cells)),
  );
  let over = widths.reduce((sum, width) => sum + width, 0) + BETWEEN.length * (columns.length - 1) - room;
  while (over > 0) {
    const spare = widths.map((width, i) => (width > (least[i] as number) ? width : 0));
    const widest = spare.indexOf(Math.max(...spare));
    if ((spare[widest] ?? 0) === 0) return undefined;
    widths[widest] = (widths[widest] as number) - 1;
    over -= 1;
  }
  return widths;
}

/** A row, its cells wrapped to the widths of their columns. */
function rowLines(row: readonly string[], widths: readonly number[], indent: string): string[] {
  const cells = row.map((cell, i) => broken(cell, widths[i] as number));
  const height = cells.reduce((most, lines) => Math.max(most, lines.length), 1);
  return Array.from({ length: height }, (_, k) =>
    `${indent}${cells.map((lines, i) => (lines[k] ?? '').padEnd(widths[i] as number)).join(BETWEEN)}`.trimEnd(),
  );
}

/** A table in columns, or its rows in words where the columns are too wide for the page. */
export function tableLines({ head, rows, told }: Cells, indent: string): string[] {
  const lines = head.length > 0 ? [head, ...rows] : rows;
  const columns = (lines[0] ?? []).map((_, i) => lines.map((row) => row[i] ?? ''));
  const widths = columnWidths(columns, WIDTH - indent.length);
  if (widths) return lines.flatMap((row) => rowLines(row, widths, indent));
  return told.flatMap((text, k) => wrapped(text, `${indent}${k + 1}. `, `${indent}   `));
}

/** A text that begins a line of its own. */
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

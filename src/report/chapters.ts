/**
 * A page before it is HTML, text or Markdown: chapters of a few kinds of pieces. Every text in them is told already, in
 * the units and the language of who reads.
 */
import { csvText } from './csv';
import { escapeHtml, type Picture, pairsHtml, pictureHtml, tableHtml, textTag } from './html';
import { capital, headOf, markdownText, pair, tableLines, wrapped } from './lines';
import { markdownRow } from './markdown-sheet';

/** A table. */
export interface TablePiece {
  readonly kind: 'table';
  readonly caption: string;
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
  /** Amounts stand below each other, as in a sum. */
  readonly money?: boolean;
  /** The last row is the sum of the others. */
  readonly sum?: boolean;
}

/** One piece of a chapter. */
export type Piece =
  | { readonly kind: 'text'; readonly text: string; readonly grave?: boolean }
  | { readonly kind: 'list'; readonly title?: string; readonly items: readonly string[] }
  | { readonly kind: 'pairs'; readonly pairs: readonly (readonly [label: string, text: string])[] }
  | (Picture & { readonly kind: 'picture' })
  | { readonly kind: 'blanks'; readonly title: string; readonly labels: readonly string[] }
  | TablePiece;

/** A heading with what stands under it; the first chapter of a page may have none. */
export interface Chapter {
  readonly title: string;
  readonly pieces: readonly Piece[];
}

/** Chapters without those that have nothing to say. */
export const telling = (chapters: readonly Chapter[]): Chapter[] =>
  chapters.flatMap(({ title, pieces }) => {
    const some = pieces.filter(isTelling);
    return some.length > 0 ? [{ title, pieces: some }] : [];
  });

function isTelling(piece: Piece): boolean {
  switch (piece.kind) {
    case 'text':
      return piece.text !== '';
    case 'list':
      return piece.items.length > 0;
    case 'pairs':
      return piece.pairs.length > 0;
    case 'table':
      return piece.rows.length > 0;
    default:
      return true;
  }
}

/** Longer lists are printed in two columns. */
const LONG = 3;

const blankHtml = (label: string): string => `<div class="blank">${textTag('span', label)}</div>`;

function pieceHtml(piece: Piece): string {
  switch (piece.kind) {
    case 'text':
      return piece.grave
        ? `<p class="stop"><bdi>${escapeHtml(piece.text)}</bdi></p>`
        : textTag('p', piece.text);
    case 'list': {
      const head = piece.title === undefined ? '' : textTag('h3', piece.title);
      const items = piece.items.map((item) => textTag('li', item)).join('');
      return `${head}<ul${piece.items.length > LONG ? ' class="long"' : ''}>${items}</ul>`;
    }
    case 'pairs':
      return pairsHtml(piece.pairs);
    case 'picture':
      return pictureHtml(piece);
    case 'blanks':
      return `<div class="blanks">${textTag('h3', piece.title)}${piece.labels.map(blankHtml).join('')}</div>`;
    case 'table':
      return tableHtml(piece.caption, piece.head, piece.rows, piece);
  }
}

/** Chapters as HTML. */
export const chaptersHtml = (chapters: readonly Chapter[]): string =>
  chapters
    .map(({ title, pieces }) => (title === '' ? '' : textTag('h2', title)) + pieces.map(pieceHtml).join(''))
    .join('');

const INDENT = '  ';
const BLANK = 40;

function pieceLines(piece: Piece): string[] {
  switch (piece.kind) {
    case 'text':
      return wrapped(piece.text, INDENT, INDENT);
    case 'list': {
      const head = piece.title === undefined ? [] : wrapped(piece.title, INDENT, INDENT);
      return [...head, ...piece.items.flatMap((item) => wrapped(item, `${INDENT}- `, `${INDENT}  `))];
    }
    case 'pairs': {
      const width = piece.pairs.reduce((most, [label]) => Math.max(most, label.length), 0);
      return piece.pairs.flatMap(([label, text]) => pair(label, text, INDENT, width));
    }
    case 'picture':
      return [];
    case 'blanks':
      return ['', `${INDENT}${piece.title}`, ...piece.labels.flatMap((label) => blankLines(label))];
    case 'table': {
      const { caption, head, rows } = piece;
      const told = rows.map((row) =>
        row.map((cell, i) => [head[i], cell].filter(Boolean).join(' ')).join('; '),
      );
      return [`${INDENT}${caption}`, ...tableLines({ head, rows, told }, INDENT.repeat(2))];
    }
  }
}

const blankLines = (label: string): string[] => ['', `${INDENT}${'_'.repeat(BLANK)}  ${label}`];

/** Chapters as lines of text, none longer than a page is wide. */
export const chaptersText = (chapters: readonly Chapter[]): string[] =>
  chapters.flatMap(({ title, pieces }) => [
    '',
    ...(title === '' ? [] : [title]),
    ...pieces.flatMap(pieceLines),
  ]);

function pieceMarkdown(piece: Piece): string[] {
  switch (piece.kind) {
    case 'text':
      return ['', markdownText(piece.text)];
    case 'list':
      return [
        ...(piece.title === undefined ? [] : ['', `### ${markdownText(piece.title)}`]),
        '',
        ...piece.items.map((item) => `- ${markdownText(item)}`),
      ];
    case 'pairs':
      return ['', ...piece.pairs.map(([label, text]) => `- ${markdownText(`${label}: ${text}`)}`)];
    case 'picture':
      return [];
    case 'blanks':
      return [
        '',
        `### ${piece.title}`,
        ...piece.labels.flatMap((label) => ['', `${label}: ${'_'.repeat(BLANK)}`]),
      ];
    case 'table':
      return [
        '',
        `**${piece.caption}**`,
        '',
        markdownRow(headOf(piece)),
        markdownRow(headOf(piece).map(() => '---')),
        ...piece.rows.map((row) => markdownRow(row.map(markdownText))),
      ];
  }
}

/** Chapters as lines of Markdown. */
export const chaptersMarkdown = (chapters: readonly Chapter[]): string[] =>
  chapters.flatMap(({ title, pieces }) => [
    ...(title === '' ? [] : ['', `## ${title}`]),
    ...pieces.flatMap(pieceMarkdown),
  ]);

/** The tables of chapters one below the other, each with its caption in front, for a spreadsheet. */
export const chaptersCsv = (chapters: readonly Chapter[]): string =>
  csvText(
    chapters
      .flatMap(({ pieces }) => pieces)
      .filter((piece): piece is TablePiece => piece.kind === 'table')
      .flatMap(({ caption, head, rows }) => [
        [caption, ...head.map(capital)],
        ...rows.map((row) => [caption, ...row]),
      ]),
  );

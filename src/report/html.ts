/**
 * A page of HTML that stands alone: no scripts, nothing loaded from elsewhere, every text escaped. It prints on letter
 * or A4 and reads on a phone.
 */

import { CANONICAL_PER_SI, type Dimension } from '../quantity/dimensions';
import { constant } from '../quantity/make';
import { unitSign } from '../quantity/parts';
import { unitsIn } from '../quantity/units';

const ESCAPES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** What no document may have: control characters but for tabs and line ends, and two that are no characters. */
const isUnprintable = (code: number): boolean =>
  (code < 0x20 && code !== 0x09 && code !== 0x0a && code !== 0x0d) ||
  code === 0x7f ||
  code === 0xfffe ||
  code === 0xffff;

/** Marks that turn the direction of the text around them. */
const turnsDirection = (code: number): boolean =>
  (code >= 0x202a && code <= 0x202e) || (code >= 0x2066 && code <= 0x2069);

/** Text as HTML. */
export const escapeHtml = (text: string): string =>
  Array.from(text, (c) => {
    const code = c.codePointAt(0) ?? 0;
    return isUnprintable(code) || turnsDirection(code) ? '' : (ESCAPES[c] ?? c);
  }).join('');

/** An element with what is in it, which is HTML already. */
export const tag = (name: string, ...inner: readonly string[]): string =>
  `<${name}>${inner.join('')}</${name}>`;

/** Every unit as it is written and as print sets it, the longest first; coins, and the halves of a day. */
const UNITS = constant(() =>
  (Object.keys(CANONICAL_PER_SI) as Dimension[])
    .flatMap((dimension) => unitsIn(dimension).map(({ id }) => id))
    .filter((id) => /^[a-z]/i.test(id))
    .flatMap((id) => [id, unitSign(id)])
    .sort((a, b) => b.length - a.length)
    .concat('AM', 'PM', '[A-Z]{3}')
    .join('|'),
);

/** Numbers with their units, feet with their inches, and mixed numbers: `5-` above `1/2 in` would be read as another size. */
const AMOUNTS = constant(() => {
  const one = `\\d[\\d.,:]*(?:[-/]\\d+)* (?:${UNITS()})(?![\\p{L}\\d])`;
  return new RegExp(`${one}(?: ${one})*|\\d+-\\d+/\\d+`, 'gu');
});

/** Text as HTML in which no line ends between a number and its unit, nor within a mixed number. */
const inline = (text: string): string => escapeHtml(text).replace(AMOUNTS(), '<span class="whole">$&</span>');

/** An element with text in it; a name in another script keeps its direction to itself. */
export const textTag = (name: string, text: string): string => tag(name, tag('bdi', inline(text)));

/** A number with its unit, or feet and inches, stays on one line. */
const AMOUNT = /^-?[\d.,]+(?:[-/]\d+)*%?(?: (?:fl oz|\S+))?(?: [\d/-]+ in)?$/;

const rowHead = (text: string): string => `<th scope="row"><bdi>${inline(text)}</bdi></th>`;

const columnHead = (text: string): string =>
  text === '' ? '<td></td>' : `<th scope="col">${escapeHtml(text)}</th>`;

/** A table of more columns than a phone has room for is read there row by row, each cell under its head. */
const COLUMNS_OF_A_PHONE = 4;

/** A table; where the screen is too narrow, it is read row by row or scrolls sideways. */
export function tableHtml(
  caption: string,
  head: readonly string[],
  rows: readonly (readonly string[])[],
  { money = false, sum = false }: { readonly money?: boolean; readonly sum?: boolean } = {},
): string {
  if (rows.length === 0) return '';
  const many = head.length > COLUMNS_OF_A_PHONE;
  const cell = (text: string, i: number): string =>
    text === ''
      ? '<td></td>'
      : `<td${AMOUNT.test(text) ? ' class="amount"' : ''}${many ? ` data-head="${escapeHtml(head[i] ?? '')}"` : ''}><bdi>${inline(text)}</bdi></td>`;
  const cells = (row: readonly string[]): string =>
    row.map((text, i) => (i === 0 ? rowHead(text) : cell(text, i))).join('');
  const sumRow = (row: readonly string[]): string => `<tr class="sum">${cells(row)}</tr>`;
  return `<div class="wide${money ? ' money' : ''}${many ? ' many' : ''}" tabindex="0" role="region" aria-label="${escapeHtml(caption)}">${tag(
    'table',
    tag('caption', escapeHtml(caption)),
    head.length > 0 ? tag('thead', tag('tr', ...head.map(columnHead))) : '',
    tag(
      'tbody',
      ...rows.map((row, i) => (sum && i === rows.length - 1 ? sumRow(row) : tag('tr', cells(row)))),
    ),
  )}</div>`;
}

/** Labels with what is beside them. */
export const pairsHtml = (pairs: readonly (readonly [label: string, text: string])[]): string =>
  pairs.length === 0
    ? ''
    : tag('dl', ...pairs.map(([label, text]) => `<div>${textTag('dt', label)}${textTag('dd', text)}</div>`));

/** A drawing with what it shows. */
export interface Picture {
  /** What it shows. */
  readonly title: string;
  /** The drawing as SVG, from `flatwork-reckoner/drawing`. */
  readonly svg: string;
  /** The same drawn for a phone, `width: 358`, which stands in its place on a narrow screen. */
  readonly phone?: string;
}

/** Drawings no wider than this are shown whole on a phone, where their text can still be read. */
const PHONE = 400;

/** How wide a drawing is meant to be shown. */
const WIDTH = /viewBox="0 0 (\d{1,4})/;

const dataOf = (svg: string): string => `data:image/svg+xml,${encodeURIComponent(svg)}`;

/**
 * A drawing as a picture: whatever is in it, no script of it runs. It is as wide as it was drawn for, where it can be
 * read; on a narrower screen it scrolls sideways, or the one that was drawn for a phone stands in its place.
 */
export function pictureHtml({ title, svg, phone }: Picture): string {
  const name = escapeHtml(title);
  const width = WIDTH.exec(svg)?.[1];
  const look = phone === undefined && Number(width) > PHONE ? ' class="broad"' : '';
  const size = width === undefined ? '' : ` width="${width}"${look}`;
  const image = `<img alt="${name}"${size} src="${dataOf(svg)}">`;
  const either =
    phone === undefined
      ? image
      : tag('picture', `<source media="(max-width: 30rem)" srcset="${dataOf(phone)}">`, image);
  return `<figure><div class="wide" tabindex="0" role="region" aria-label="${name}">${either}</div>${textTag('figcaption', title)}</figure>`;
}

/** Paper to print on. */
export type Paper = 'letter' | 'a4';

const style = (paper: Paper): string => `
@page { size: ${paper === 'letter' ? 'letter' : 'A4'}; margin: 15mm }
:root { color-scheme: light; color: #000; background: #fff; font: 17px/1.45 system-ui, sans-serif }
body { max-width: 46rem; margin: 0 auto; padding: 1rem; overflow-wrap: break-word }
h1 { font-size: 1.5rem; margin: 0 0 .2rem } h2 { font-size: 1.2rem; margin: 1.4rem 0 .3rem; border-bottom: 2px solid }
h3 { font-size: 1rem; margin: .9rem 0 .2rem } p, dl, ul, ol { margin: .3rem 0 } ul, ol { padding-left: 1.4rem }
dl > div { display: flex; gap: .6rem; padding: .15rem 0; border-bottom: 1px solid #999 }
dt { flex: 1 1 45% } dd { flex: 1 1 55%; margin: 0; font-weight: 600 }
.wide { overflow-x: auto } table { border-collapse: collapse; width: 100%; margin: .4rem 0 }
caption { text-align: left; font-weight: 600 } th, td { text-align: left; vertical-align: top; padding: .25rem .5rem .25rem 0; border-bottom: 1px solid #999 }
.whole { white-space: nowrap } td.amount { white-space: nowrap; font-weight: 600 } .money td, .money th + th { text-align: right } .sum > * { border-top: 2px solid; font-weight: 700 }
.blanks { display: flex; flex-wrap: wrap; gap: 0 1rem; break-inside: avoid } .blanks h3 { flex: 1 0 100% } .blank { flex: 1 1 10rem; margin-top: 2rem; border-top: 1px solid; font-size: .85rem }
.stop { border: 3px solid; padding: .3rem .6rem; font-weight: 700 } .warning { border-left: 4px solid; padding-left: .6rem }
figure { margin: .6rem 0; break-inside: avoid } img { max-width: 100%; height: auto } figcaption { font-size: .9rem }
@media (max-width: 30rem) { table { font-size: .9rem } img.broad { max-width: none } .many thead, .many td:empty { display: none } .many :is(table, tbody, tr, th, td) { display: block; text-align: left } .many :is(th, td) { padding: .1rem 0; border: 0 } .many tr { border-bottom: 1px solid; padding: .2rem 0 } .many td::before { content: attr(data-head) " "; font-weight: 400 } }
@media print { :root { font-size: 9pt } td, th, dl > div { padding-top: 1pt; padding-bottom: 1pt } body { max-width: none; padding: 0 } img, img.broad { max-width: 100% } .wide { overflow: visible } ul.long { columns: 2; column-gap: 2rem } li { break-inside: avoid } h2 { margin-top: .8rem } h2, h3 { break-after: avoid } tr, dl > div { break-inside: avoid } }
`;

/** What a page is made of. */
export interface PageParts {
  readonly title: string;
  /** Tag of the language, `en`. */
  readonly lang: string;
  readonly paper: Paper;
  /** HTML of what stands on it. */
  readonly body: string;
}

/** A whole document. */
export const pageHtml = ({ title, lang, paper, body }: PageParts): string =>
  [
    '<!doctype html>',
    `<html lang="${escapeHtml(lang)}">`,
    '<head>',
    '<meta charset="utf-8">',
    `<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'; img-src data:">`,
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    tag('title', escapeHtml(title)),
    `<style>${style(paper)}</style>`,
    '</head>',
    `<body><main>${body}</main></body>`,
    '</html>',
    '',
  ].join('\n');

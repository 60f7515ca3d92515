/** A sheet as a picture: what the example on a page prints, set in the letters of a typewriter. */
import { readFileSync } from 'node:fs';
import ts from 'typescript';
import { concreteOrder, slabVolume } from '../../../src/index';
import { textSheet } from '../../../src/report/index';

const README = new URL('../../../README.md', import.meta.url);

/** The example, and the picture under it. */
const WITH_SHEET = /```ts\n((?:(?!```)[\s\S])*)```\n\n<img src="docs\/(plans\/sheet\.svg)"/;

const MODULES: Readonly<Record<string, unknown>> = {
  'flatwork-reckoner': { concreteOrder, slabVolume },
  'flatwork-reckoner/report': { textSheet },
};

/** The sheet that an example makes, called `sheet` in it. */
function printed(code: string): string {
  const { outputText } = ts.transpileModule(`${code}\nexport { sheet };`, {
    compilerOptions: { module: ts.ModuleKind.CommonJS, target: ts.ScriptTarget.ES2022 },
  });
  const exported: { sheet?: string } = {};
  new Function('require', 'exports', outputText)((name: string) => MODULES[name], exported);
  return exported.sheet ?? '';
}

const SIZE = 12;
const LINE = 17;
const MARGIN = 18;
/** A letter of a typewriter is so wide for its height. */
const LETTER = 0.61;

/** Blanks that stay as many as they are: browsers run others together. */
const escaped = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll(' ', '\u00a0');

/** Lines of text as SVG: black on white, as they come out of a printer. */
function drawn(sheet: string): string {
  const lines = sheet.trimEnd().split('\n');
  const longest = lines.reduce((most, line) => Math.max(most, line.length), 0);
  const width = Math.ceil(longest * SIZE * LETTER + 2 * MARGIN);
  const height = lines.length * LINE + 2 * MARGIN;
  const text = lines.map((line, i) =>
    line === '' ? '' : `<text x="${MARGIN}" y="${MARGIN + LINE * (i + 1) - 5}">${escaped(line)}</text>`,
  );
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" role="img" aria-labelledby="sheet-title">`,
    `<title id="sheet-title">${escaped(lines[0] ?? '')}</title>`,
    `<rect width="${width}" height="${height}" fill="#fff" stroke="#000"/>`,
    `<g font-family="ui-monospace, Menlo, Consolas, monospace" font-size="${SIZE}" fill="#000">`,
    ...text.filter((one) => one !== ''),
    '</g>',
    '</svg>',
    '',
  ].join('\n');
}

/** The picture of the sheet on the first page. */
export function sheetPicture(): { readonly file: string; readonly svg: string } {
  const [, code = '', file = ''] = WITH_SHEET.exec(readFileSync(README, 'utf8')) ?? [];
  return { file, svg: drawn(printed(code)) };
}

/**
 * The pages and lists that follow from the calculations: tables of README and docs, how much the check vectors rest on,
 * limits, codes with their meaning, and the type of caution codes. Text that is not between marks is left as it is.
 */
import { readFileSync } from 'node:fs';
import { type CatalogEntry, catalog } from '../../src/catalog/index';
import { CODES_START, cautionRows, codeTables } from '../../test/support/codes';
import { limitTables, TABLES_START } from '../../test/support/limits';
import { foundations } from '../../test/support/sources';
import { behind, tableOf } from '../tables';

const ROOT = new URL('../../', import.meta.url);

/** A page with the text that it should have. */
export interface Page {
  readonly file: string;
  readonly text: string;
}

/** What a calculation works out, as it stands in a table. */
const said = ({ summary }: CatalogEntry): string => summary.replace(/\.$/, '');

const rowsOf = (entries: readonly CatalogEntry[]): string =>
  tableOf(
    ['id', 'import', 'what'],
    entries.map((entry) => [`\`${entry.id}\``, `\`${entry.name}\``, said(entry)]),
  );

/** A table for each trade, with its name over it. */
const byTrade = (): string =>
  [...new Set(catalog.map(({ trade }) => trade))]
    .map((trade) => `**${trade}**\n\n${rowsOf(catalog.filter((entry) => entry.trade === trade))}`)
    .join('\n\n');

/** Text between `<!-- calculations -->`, or `<!-- calculations: Steel -->`, and the mark that ends it. */
const MARKED = /(<!-- calculations(?:: ([^>]+?))? -->\n)[\s\S]*?(\n<!-- end of calculations -->)/g;

const withTables = (text: string): string =>
  text.replace(MARKED, (_, start: string, trade: string | undefined, end: string) => {
    const table = trade ? rowsOf(catalog.filter((entry) => entry.trade === trade)) : byTrade();
    return `${start}\n${table}\n${end}`;
  });

/** The counts that README gives, wherever its lines break. */
function withCounts(text: string): string {
  const all = foundations().at(-1);
  return text
    .replace(
      /\d+(\s+published\s+tables\s+and\s+worked\s+examples\s+out\s+of\s+)\d+(\s+works)/,
      `${all?.places}$1${all?.works}$2`,
    )
    .replace(/\d+(\s+cases\s+from\s+practice)/, `${all?.advice}$1`);
}

/** The type of caution codes, of the codes that cautions carry. */
function withCautionCodes(text: string): string {
  const codes = [...new Set(cautionRows().map(({ code }) => code))];
  const [head] = text.split('export type CautionCode =');
  return `${head}export type CautionCode =\n${codes.map((code) => `  | '${code}'`).join('\n')};\n`;
}

const MADE: readonly (readonly [file: string, make: (text: string) => string])[] = [
  ['README.md', (text) => withCounts(withTables(text))],
  ['docs/steel.md', withTables],
  ['docs/limits.md', behind(TABLES_START, limitTables)],
  ['docs/codes.md', behind(CODES_START, codeTables)],
  ['src/reckoning/caution-code.ts', withCautionCodes],
];

/** Every page, as it is to be. */
export const pages = (): Page[] =>
  MADE.map(([file, make]) => ({ file, text: make(readFileSync(new URL(file, ROOT), 'utf8')) }));

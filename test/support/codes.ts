/** The codes of cautions and of issues with what they mean, read from where they are written. */
import { readdirSync, readFileSync } from 'node:fs';
import { tableOf } from '../../scripts/tables';

const SRC = new URL('../../src/', import.meta.url);
export const files = readdirSync(SRC, { recursive: true, encoding: 'utf8' })
  .filter((f) => f.endsWith('.ts'))
  .sort();
export const read = (file: string): string => readFileSync(new URL(file, SRC), 'utf8');

/** A caution is an object with its code, its severity, and what it says. */
const CAUTION =
  /code: '([a-z-]+)',\s+severity(?:: ([^,]+))?,(?:(?!code: ')[\s\S])*?(?:\.\.\.say`([^`]*(?:`[^`]*`[^`]*)*?)`,|says:\s*(?:'((?:[^'\\]|\\.)*)'|"([^"]*)"))/g;

export interface CodeRow {
  readonly code: string;
  readonly severity: string;
  readonly says: string;
}

const severities = (text: string | undefined): string => {
  const found = [...new Set((text ?? '').match(/note|warning|stop/g) ?? [])];
  return found.length > 0 ? found.join(' or ') : 'note, warning or stop';
};

/** A hole with words of their own is left out: it differs from case to case. */
const plain = (text: string): string =>
  text
    .replace(/\$\{\{ (\w+)(?:: [^}]*)? \}\}/g, '{$1}')
    .replace(/\$\{(?:[^{}`]|`[^`]*`)*\}/g, '…')
    .replace(/\\'/g, "'")
    .replace(/\s+/g, ' ');

/** All cautions in the order of their codes; one that is said in several ways has a row for each. */
export function cautionRows(): CodeRow[] {
  const rows = files.flatMap((file) =>
    [...read(file).matchAll(CAUTION)].map(([, code, severity, template, single, double]) => ({
      code: code as string,
      severity: severities(severity),
      says: plain(template ?? single ?? double ?? ''),
    })),
  );
  const seen = new Set<string>();
  return rows
    .filter(({ code, says }) => !seen.has(`${code} ${says}`) && seen.add(`${code} ${says}`))
    .sort((a, b) => (a.code < b.code ? -1 : a.code > b.code ? 1 : 0));
}

/** All codes of issues with their meaning, in the order of the list. */
export const issueRows = (): (readonly [code: string, meaning: string])[] =>
  [...read('quantity/input-error.ts').matchAll(/\/\*\* (.*) \*\/\n {2}\| '([a-z-]+)'/g)].map(
    ([, meaning, code]) => [code as string, meaning as string],
  );

/** Where the tables of docs/codes.md begin. */
export const CODES_START = '## Cautions';

const cell = (text: string): string => text.replaceAll('|', '\\|');

/** The tables of docs/codes.md. */
export const codeTables = (): string =>
  [
    tableOf(
      ['code', 'severity', 'says'],
      cautionRows().map(({ code, severity, says }) => [`\`${code}\``, severity, cell(says)]),
    ),
    '## Issues',
    tableOf(
      ['code', 'means'],
      issueRows().map(([code, meaning]) => [`\`${code}\``, cell(meaning)]),
    ),
  ].join('\n\n');

/** Sheets in Markdown, with a table for each kind of thing. */
import { withUnit } from '../quantity/format';
import { inSystem } from '../quantity/like-unit';
import { isQuantity, numberShown, type Quantity, systemOfQuantity, unitShown } from '../quantity/quantity';
import type { System } from '../quantity/units';
import type { Figure } from '../reckoning/parts';
import { isNamedByUnit } from '../reckoning/system';
import type { Entry } from './entries';
import { labelText } from './labels';
import { headOf, markdownText } from './lines';
import { mustBeTitle } from './must-be';
import { type Block, living, moreCautions, type Part, type SheetView, sheetOf } from './sheet';
import { type View, wordText } from './view';

const cell = (text: string): string => markdownText(text).replaceAll('|', '\\|');

export const markdownRow = (cells: readonly string[]): string => `| ${cells.map(cell).join(' | ')} |`;

function table(head: readonly string[], rows: readonly (readonly string[])[], view: View): string[] {
  if (rows.length === 0) return [];
  return [
    '',
    markdownRow(head.map((title) => wordText(title, view))),
    markdownRow(head.map(() => '---')),
    ...rows.map(markdownRow),
  ];
}

/** Figures that are lists of groups have a table of their own. */
function entryTables(head: readonly string[], entries: readonly Entry[], view: View, exact: Exact): string[] {
  const plain = entries.filter((entry) => !entry.table);
  return [
    ...table(
      head,
      plain.map(({ label, text }) =>
        head.length > 2 ? [label, text, exact.get(label) ?? ''] : [label, text],
      ),
      view,
    ),
    ...entries.flatMap(({ label, table: cells }) =>
      cells
        ? [
            '',
            `**${label}**`,
            '',
            markdownRow(headOf(cells)),
            markdownRow(headOf(cells).map(() => '---')),
            ...cells.rows.map(markdownRow),
          ]
        : [],
    ),
  ];
}

type Exact = ReadonlyMap<string, string>;

/** A column of sixty digits helps nobody. */
const EXACT_DIGITS = 15;

/** In the units of the sheet; in inches or feet where it is shown as on a tape. */
function exactText(figure: Figure, system: System): string {
  if (!isQuantity(figure)) return '';
  const q = inSystem(figure as Quantity, system);
  const { form } = unitShown(q);
  // A slope that is no whole ratio is told as one of its own.
  if (form === 'one-in') return exactText((q as Quantity<'slope'>).in('%'), system);
  const told = form === 'feet-inches' ? (q as Quantity<'length'>).in('ft') : q;
  const number = numberShown(told);
  const short = number.toSignificantDigits(EXACT_DIGITS - 3);
  return `${short.equals(number) ? '' : '≈ '}${withUnit(short.toFixed(), unitShown(told))}`;
}

const exactOf = (figures: object, system: System, view: View): Exact =>
  new Map(
    Object.entries(figures as Record<string, Figure>).map(([name, q]) => [
      labelText(name, view),
      exactText(q, isNamedByUnit(name) && isQuantity(q) ? systemOfQuantity(q as Quantity) : system),
    ]),
  );

const NOTHING: Exact = new Map();

function blockMarkdown(block: Block, exact: Exact, view: View): string[] {
  return [
    '',
    `### ${markdownText(block.title)}`,
    ...entryTables(['put in', 'as'], block.input, view, NOTHING),
    ...entryTables(['figure', 'shown', 'exact'], block.figures, view, exact),
    ...table(
      ['step', 'formula', 'numbers put in', 'gives'],
      block.working.map(({ what, formula, put, gives }) => [what, formula, put, gives]),
      view,
    ),
    ...table(
      ['assumed', 'value and reason'],
      block.assumed.map(({ label, text }) => [label, text]),
      view,
    ),
  ];
}

/**
 * One sheet of several results in Markdown, with a table for each kind of thing; each caution and each source once, at
 * the end.
 *
 * @param title - what the job is
 * @param parts - its parts in order, with results or the plain data of results, and with their inputs where these are
 * to be printed
 * @param view - units, marks of numbers, language, and how much is shown
 * @returns Markdown
 * @throws {InputError} `not-a-result`; `wrong-type` for what is no language tag
 * @example
 * ```ts
 * import { slopeOf } from 'flatwork-reckoner';
 * import { markdownSheet } from 'flatwork-reckoner/report';
 *
 * const sheet = markdownSheet('Ramp', [{ name: 'Pitch', results: [slopeOf({ slope: '1:12' })] }]);
 * sheet.split('\n')[0]; // '# Ramp'
 * ```
 */
export function markdownSheet(title: string, parts: readonly Part[], view: SheetView = {}): string {
  mustBeTitle(title);
  const sheet = sheetOf(parts, view);
  const body = sheet.parts.flatMap(({ name, blocks }, p) => [
    '',
    `## ${markdownText(name)}`,
    ...blocks.flatMap((block, i) => {
      const one = parts[p]?.results[i];
      const data = one && 'result' in one ? one.result : one;
      if (!data) return [];
      const { figures, system } = living(data);
      return blockMarkdown(block, exactOf(figures, view.system ?? system, view), view);
    }),
  ]);
  const { cautions, always, left, sources } = sheet;
  const cautionRow = ({ head, text, source }: (typeof cautions)[number]): string[] => [
    head,
    text,
    `${source}`,
  ];
  const job = [view.job, view.date].filter(Boolean).join(', ');
  return `${[
    `# ${markdownText(title)}`,
    ...(job === '' ? [] : ['', markdownText(job)]),
    ...body,
    ...table(['watch out for', 'what', 'source'], cautions.map(cautionRow), view),
    ...(left > 0 ? ['', moreCautions(left, view)] : []),
    ...table(['always', 'what', 'source'], always.map(cautionRow), view),
    ...table(
      ['source', 'work'],
      view.detail === 'crew' ? [] : sources.map((text, i) => [`${i + 1}`, text]),
      view,
    ),
  ].join('\n')}\n`;
}

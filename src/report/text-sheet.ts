/** Sheets in plain text, as a crew can carry them: no line wider than a page, lists in columns. */
import type { FigureSet, ResultParts } from '../reckoning/parts';
import type { Entry } from './entries';
import { capital, pair, tableLines, wrapped } from './lines';
import { mustBeResult, mustBeTitle, mustBeView } from './must-be';
import { type Block, moreCautions, type Part, type Sheet, type SheetView, sheetOf, type Told } from './sheet';
import type { StepText } from './view';
import { type View, wordText } from './view';

const INDENT = '  ';

/** Longer labels stand above what they are of. */
const LABEL = 32;

function entryLines(entries: readonly Entry[], indent: string): string[] {
  const short = entries.filter(({ table, label }) => !table && label.length <= LABEL);
  const width = short.reduce((most, { label }) => Math.max(most, label.length), 0);
  return entries.flatMap(({ label, text, table }) => {
    if (table) return [`${indent}${label}`, ...tableLines(table, `${indent}${INDENT}`)];
    return label.length > LABEL
      ? wrapped(`${label}: ${text}`, indent, indent + INDENT)
      : pair(label, text, indent, width);
  });
}

const section = (title: string, lines: readonly string[], view: View): string[] =>
  lines.length > 0 ? ['', wordText(title, view), ...lines] : [];

const stepLines = ({ what, formula, put, gives }: StepText): string[] =>
  wrapped(`${what}: ${formula} = ${put} = ${gives}`, INDENT, INDENT.repeat(2));

/** What fits on the line of what was put in, and is understood there. */
const isShort = ({ text, table }: Entry): boolean => !table && !text.includes(', ');

/** What a crew is told: what was put in on one line as far as it is short, then the rest and the figures. */
function crewLines({ input, figures }: Block, view: SheetView): string[] {
  const short = input.filter(isShort).map(({ label, text }) => `${label} ${text}`);
  return [
    ...(short.length > 0
      ? wrapped(`${wordText('Put in', view)}: ${short.join(', ')}`, INDENT, INDENT.repeat(2))
      : []),
    ...entryLines([...input.filter((entry) => !isShort(entry)), ...figures], INDENT),
  ];
}

/** What was put in, a line to a value, and the figures. */
const fullLines = ({ input, figures }: Block, view: SheetView): string[] => [
  ...(input.length > 0
    ? [wordText('Put in', view), ...entryLines(input, INDENT), '', wordText('Figures', view)]
    : []),
  ...entryLines(figures, INDENT),
];

function blockLines(block: Block, view: SheetView): string[] {
  const { title, working, assumed } = block;
  return [
    title,
    ...(view.detail === 'crew' ? crewLines(block, view) : fullLines(block, view)),
    ...section('How it was figured', working.flatMap(stepLines), view),
    ...section(
      'Assumed',
      assumed.flatMap(({ label, text }) => wrapped(`${label}: ${text}`, INDENT, INDENT.repeat(2))),
      view,
    ),
  ];
}

const cited = (source: number, view: SheetView): string => (view.detail === 'crew' ? '' : ` [${source}]`);

const toldLine = ({ head, text, source }: Told, view: SheetView): string[] =>
  wrapped(`${capital(head)}: ${text}${cited(source, view)}`, INDENT, INDENT.repeat(2));

/** What holds for every job, one after the other. */
const alwaysLines = (told: readonly Told[], view: SheetView): string[] =>
  told.length > 0
    ? wrapped(
        told.map(({ text, source }) => `${capital(text)}${cited(source, view)}.`).join(' '),
        INDENT,
        INDENT.repeat(2),
      )
    : [];

/** Cautions and sources, once for the sheet. */
function foot({ cautions, left, always, sources }: Sheet, view: SheetView): string[] {
  const told = cautions.flatMap((one) => toldLine(one, view));
  if (left > 0) told.push(`${INDENT}${moreCautions(left, view)}`);
  return [
    ...section('Watch out for', told, view),
    ...section('Always', alwaysLines(always, view), view),
    ...(view.detail === 'crew'
      ? []
      : section(
          'Sources',
          sources.flatMap((text, i) => wrapped(text, `${INDENT}[${i + 1}] `, `${INDENT}    `)),
          view,
        )),
  ];
}

const jobLine = ({ job, date }: SheetView): string[] => {
  const told = [job, date].filter(Boolean).join(', ');
  return told === '' ? [] : wrapped(told, '', '');
};

/**
 * A result as a worksheet in plain text: what was put in, figures, how they came about, what was assumed, what to
 * watch out for and where the rules come from. No line has more than 100 characters.
 *
 * @param data - a result, or the plain data of one, as `structuredClone` and JSON give it
 * @param view - units, marks of numbers, language, how much is shown; and the `input`, to be printed on top
 * @returns lines of text
 * @throws {InputError} `not-a-result`; `wrong-type` for what is no language tag
 * @example
 * ```ts
 * import { slopeOf } from 'flatwork-reckoner';
 * import { worksheet } from 'flatwork-reckoner/report';
 *
 * const lines = worksheet(slopeOf({ slope: '1:12', over: '10 ft' }), { system: 'metric' }).split('\n');
 * lines.find((line) => line.startsWith('  fall')); // '  fall                   254 mm'
 * ```
 */
export function worksheet(
  data: ResultParts<FigureSet>,
  view: SheetView & { readonly input?: unknown } = {},
): string {
  mustBeResult(data, 'result');
  mustBeView(view);
  const { input, ...rest } = view;
  const sheet = sheetOf(
    [{ name: '', results: [input === undefined ? data : { result: data, input }] }],
    rest,
  );
  const [block] = sheet.parts[0]?.blocks ?? [];
  return [...jobLine(rest), ...(block ? blockLines(block, rest) : []), ...foot(sheet, rest)].join('\n');
}

const underlined = (text: string, sign: string): string[] => {
  const lines = wrapped(text, '', '');
  return [...lines, sign.repeat(lines.reduce((most, line) => Math.max(most, line.length), 0))];
};

/**
 * One sheet of several results in plain text, as a crew can carry it: part by part, then each caution and each source
 * once.
 *
 * @param title - what the job is
 * @param parts - its parts in order, with results or the plain data of results, and with their inputs where these are
 * to be printed
 * @param view - units, marks of numbers, language, and how much is shown
 * @returns lines of text, none longer than 100 characters
 * @throws {InputError} `not-a-result`; `wrong-type` for what is no language tag
 * @example
 * ```ts
 * import { slopeOf } from 'flatwork-reckoner';
 * import { textSheet } from 'flatwork-reckoner/report';
 *
 * const input = { slope: '1:12' };
 * const sheet = textSheet('Ramp', [{ name: 'Pitch', results: [{ input, result: slopeOf(input) }] }]);
 * sheet.split('\n')[0]; // 'RAMP'
 * ```
 */
export function textSheet(title: string, parts: readonly Part[], view: SheetView = {}): string {
  mustBeTitle(title);
  const sheet = sheetOf(parts, view);
  const body = sheet.parts.flatMap(({ name, blocks }) => [
    '',
    ...underlined(name, '-'),
    ...blocks.flatMap((block, i) => [...(i > 0 ? [''] : []), ...blockLines(block, view)]),
  ]);
  return `${[...underlined(title.toUpperCase(), '='), ...jobLine(view), ...body, ...foot(sheet, view)].join('\n')}\n`;
}

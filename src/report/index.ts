/**
 * Worksheets of several results together.
 *
 * @packageDocumentation
 */
import { isQuantity } from '../quantity/quantity';
import type { Figure, FigureSet, Result } from '../reckoning/result';
import { stepText, type View, valueText, wordsText } from './view';
import { figureText, living, sourceText, spoken, worksheet } from './worksheet';

/** A part of a job: what it is, and the results that belong to it. */
export interface Part {
  /** What this part of the job is. */
  readonly name: string;
  /** The results that belong to it. */
  readonly results: readonly Result<FigureSet>[];
}

/**
 * Worksheets in plain text, one under the other, as a crew can carry them.
 *
 * @param title - what the job is
 * @param parts - its parts in order, with results or the plain data of results
 * @param view - units, marks of numbers and language
 * @returns lines of text
 * @example
 * ```ts
 * import { slopeOf } from 'flatwork-reckoner';
 * import { textSheet } from 'flatwork-reckoner/report';
 *
 * const sheet = textSheet('Ramp', [{ name: 'Pitch', results: [slopeOf({ slope: '1:12' })] }]);
 * sheet.split('\n')[0]; // 'RAMP'
 * ```
 */
export function textSheet(title: string, parts: readonly Part[], view: View = {}): string {
  const lines = [title.toUpperCase(), '='.repeat(title.length)];
  for (const part of parts) {
    lines.push('', part.name, '-'.repeat(part.name.length));
    for (const result of part.results) lines.push('', worksheet(result, view));
  }
  return `${lines.join('\n')}\n`;
}

const cell = (text: string): string => text.replaceAll('|', '\\|').replaceAll('\n', ' ');

const row = (cells: readonly string[]): string => `| ${cells.map(cell).join(' | ')} |`;

function table(head: readonly string[], rows: readonly (readonly string[])[]): string[] {
  if (rows.length === 0) return [];
  return ['', row(head), row(head.map(() => '---')), ...rows.map(row)];
}

function figureRows(figures: FigureSet, view: View): string[][] {
  return Object.entries(figures as Record<string, Figure>).map(([name, figure]) => [
    spoken(name),
    figureText(figure, view),
    isQuantity(figure) ? figure.toString() : '',
  ]);
}

function resultMarkdown(data: Result<FigureSet>, view: View): string[] {
  const result = living(data);
  return [
    '',
    `### ${result.title}`,
    ...table(['figure', 'shown', 'exact'], figureRows(result.figures, view)),
    ...table(
      ['step', 'formula', 'numbers put in', 'gives'],
      result.working.map((s) => Object.values(stepText(s, view))),
    ),
    ...table(
      ['assumed', 'value', 'because', 'to change it', 'source'],
      result.assumed.map((a) => [
        spoken(a.name),
        valueText(a.value, view),
        wordsText(a.because, view),
        wordsText(a.override, view),
        sourceText(a.source),
      ]),
    ),
    ...table(
      ['caution', 'what', 'source'],
      result.cautions.map((c) => [c.severity, wordsText(c, view), sourceText(c.source)]),
    ),
  ];
}

/**
 * Worksheets in Markdown, with a table for each kind of thing.
 *
 * @param title - what the job is
 * @param parts - its parts in order, with results or the plain data of results
 * @param view - units, marks of numbers and language
 * @returns Markdown
 * @example
 * ```ts
 * import { slopeOf } from 'flatwork-reckoner';
 * import { markdownSheet } from 'flatwork-reckoner/report';
 *
 * const sheet = markdownSheet('Ramp', [{ name: 'Pitch', results: [slopeOf({ slope: '1:12' })] }]);
 * sheet.split('\n')[0]; // '# Ramp'
 * ```
 */
export function markdownSheet(title: string, parts: readonly Part[], view: View = {}): string {
  const body = parts.flatMap(({ name, results }) => [
    '',
    `## ${name}`,
    ...results.flatMap((one) => resultMarkdown(one, view)),
  ]);
  return `${[`# ${title}`, ...body].join('\n')}\n`;
}

export {
  barOrderCsv,
  barOrderMarkdown,
  barScheduleCsv,
  barScheduleMarkdown,
  cuttingCsv,
  cuttingMarkdown,
  type ScheduleUnits,
} from './bar-schedule';
export {
  type Language,
  quantityText,
  type StepText,
  stepText,
  type View,
  valueText,
  wordsText,
} from './view';
export { worksheet } from './worksheet';

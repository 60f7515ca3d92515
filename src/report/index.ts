/**
 * Worksheets of several results together.
 *
 * @packageDocumentation
 */
import { Quantity } from '../quantity/quantity';
import type { Figure, FigureSet, Result } from '../reckoning/result';
import { figureText, sourceText, spoken, worksheet } from '../reckoning/worksheet';

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
 * @param parts - its parts in order
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
export function textSheet(title: string, parts: readonly Part[]): string {
  const lines = [title.toUpperCase(), '='.repeat(title.length)];
  for (const part of parts) {
    lines.push('', part.name, '-'.repeat(part.name.length));
    for (const result of part.results) lines.push('', worksheet(result));
  }
  return `${lines.join('\n')}\n`;
}

const cell = (text: string): string => text.replaceAll('|', '\\|').replaceAll('\n', ' ');

const row = (cells: readonly string[]): string => `| ${cells.map(cell).join(' | ')} |`;

function table(head: readonly string[], rows: readonly (readonly string[])[]): string[] {
  if (rows.length === 0) return [];
  return ['', row(head), row(head.map(() => '---')), ...rows.map(row)];
}

function figureRows(figures: FigureSet): string[][] {
  return Object.entries(figures as Record<string, Figure>).map(([name, figure]) => [
    spoken(name),
    figureText(figure),
    figure instanceof Quantity ? figure.toString() : '',
  ]);
}

function resultMarkdown(result: Result<FigureSet>): string[] {
  return [
    '',
    `### ${result.title}`,
    ...table(['figure', 'shown', 'exact'], figureRows(result.figures)),
    ...table(
      ['step', 'formula', 'numbers put in', 'gives'],
      result.working.map((s) => [s.what, s.formula, s.put, s.gives]),
    ),
    ...table(
      ['assumed', 'value', 'because', 'to change it', 'source'],
      result.assumed.map((a) => [spoken(a.name), a.value, a.because, a.override, sourceText(a.source)]),
    ),
    ...table(
      ['caution', 'what', 'source'],
      result.cautions.map((c) => [c.severity, c.sentence, sourceText(c.source)]),
    ),
  ];
}

/**
 * Worksheets in Markdown, with a table for each kind of thing.
 *
 * @param title - what the job is
 * @param parts - its parts in order
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
export function markdownSheet(title: string, parts: readonly Part[]): string {
  const body = parts.flatMap(({ name, results }) => ['', `## ${name}`, ...results.flatMap(resultMarkdown)]);
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

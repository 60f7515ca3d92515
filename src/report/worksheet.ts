/** A result as a worksheet in plain text: figures first, then how they came about. */
import { isQuantity } from '../quantity/quantity';
import type { Assumption, Caution, Figure, FigureSet, ResultParts, Step } from '../reckoning/parts';
import { revive } from '../reckoning/revive';
import type { Source } from '../reckoning/source';
import { quantityText, stepText, type View, valueText, wordsText, wordText } from './view';

/** `looseVolume` to `loose volume`. */
export function spoken(name: string): string {
  return name.replace(/([a-z])([A-Z0-9])/g, '$1 $2').toLowerCase();
}

/** A figure on one line. Counts go without their unit, and a group within a group stands in brackets. */
export function figureText(figure: Figure, view: View = {}): string {
  if (isQuantity(figure)) return quantityText(figure, view);
  if (typeof figure === 'boolean') return figure ? 'yes' : 'no';
  if (typeof figure === 'string') return wordText(figure, view);
  if (Array.isArray(figure)) {
    return figure.length > 0 ? listed(figure.map((one) => figureText(one, view))).join(', ') : 'none';
  }
  return Object.entries(figure)
    .map((part) => partText(part, view))
    .join('; ');
}

function partText([name, part]: [string, Figure], view: View): string {
  const text = figureText(part, view);
  return `${spoken(name)} ${isGroup(part) && !Array.isArray(part) ? `(${text})` : text}`;
}

const LIST_LIMIT = 12;

/** Equal neighbors as `3 × 9.00 yd3`; a long list is cut short and says so. */
function listed(items: readonly string[]): string[] {
  const runs: { text: string; times: number }[] = [];
  for (const text of items) {
    const last = runs.at(-1);
    if (last?.text === text) last.times += 1;
    else runs.push({ text, times: 1 });
  }
  const shown = runs.slice(0, LIST_LIMIT).map(({ text, times }) => (times > 1 ? `${times} × ${text}` : text));
  const left = runs.slice(LIST_LIMIT).reduce((sum, run) => sum + run.times, 0);
  return left > 0 ? [...shown, `and ${left} more`] : shown;
}

const isGroup = (figure: Figure): boolean => typeof figure === 'object' && !isQuantity(figure);

/** A figure with its name in front; a list of groups has a line for each. */
function figureLines(name: string, figure: Figure, view: View): string[] {
  if (!Array.isArray(figure) || !figure.some(isGroup)) return [`${name}  ${figureText(figure, view)}`];
  return [name.trimEnd(), ...listed(figure.map((one) => figureText(one, view))).map((line) => `    ${line}`)];
}

/** A source on one line. */
export function sourceText(source: Source): string {
  const parts = [source.title, source.publisher, source.edition, source.locator].filter(Boolean);
  const memory = source.fromMemory && source.kind !== 'common-practice' ? ' (from memory)' : '';
  return parts.join(', ') + memory;
}

function section(title: string, lines: readonly string[]): string[] {
  return lines.length > 0 ? ['', title, ...lines.map((line) => `  ${line}`)] : [];
}

function stepLine(step: Step, view: View): string {
  const { what, formula, put, gives } = stepText(step, view);
  return `${what}: ${formula} = ${put} = ${gives}`;
}

const assumedLine = ({ name, value, because, override }: Assumption, view: View): string =>
  `${spoken(name)}: ${valueText(value, view)}, ${wordsText(because, view)}. ${wordsText(override, view)}.`;

const cautionLine = (caution: Caution, view: View): string =>
  `${wordText(caution.severity, view)}: ${wordsText(caution, view)} [${sourceText(caution.source)}]`;

/**
 * A result as a worksheet in plain text: figures first, then how they came about.
 *
 * @param data - a result, or the plain data of one, as `structuredClone` and JSON give it
 * @param view - units, marks of numbers and language; by default as the result has them
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
export function worksheet(data: ResultParts<FigureSet>, view: View = {}): string {
  const result = living(data);
  const figures = Object.entries(result.figures as Record<string, Figure>);
  const width = Math.max(0, ...figures.map(([name]) => spoken(name).length));
  return [
    `${wordText(result.title, view)} (${result.id})`,
    ...figures.flatMap(([name, figure]) => figureLines(`  ${spoken(name).padEnd(width)}`, figure, view)),
    ...section(
      'Working',
      result.working.map((step) => stepLine(step, view)),
    ),
    ...section(
      'Assumed',
      result.assumed.map((assumption) => assumedLine(assumption, view)),
    ),
    ...section(
      'Cautions',
      result.cautions.map((caution) => cautionLine(caution, view)),
    ),
    ...section('Sources', result.sources.map(sourceText)),
  ].join('\n');
}

/** What this copy of the library made goes through as it is; plain data and what another made is revived first. */
export const living = <F extends FigureSet>(data: ResultParts<F>): ResultParts<F> =>
  isQuantity(data.working?.[0]?.gives) ? data : revive(data);

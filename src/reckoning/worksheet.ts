/** A result as a worksheet in plain text: figures first, then how they came about. */
import { Quantity } from '../quantity/quantity';
import type { Figure, FigureSet, ResultParts } from './parts';
import type { Source } from './source';

/** `looseVolume` to `loose volume`. */
export function spoken(name: string): string {
  return name.replace(/([a-z])([A-Z0-9])/g, '$1 $2').toLowerCase();
}

const EACH = / each$/;

/** A figure on one line. Counts go without their unit, and a group within a group stands in brackets. */
export function figureText(figure: Figure): string {
  if (figure instanceof Quantity) return figure.format().replace(EACH, '');
  if (typeof figure === 'boolean') return figure ? 'yes' : 'no';
  if (typeof figure === 'string') return figure;
  if (Array.isArray(figure)) return figure.length > 0 ? listed(figure.map(figureText)).join(', ') : 'none';
  return Object.entries(figure).map(partText).join('; ');
}

function partText([name, part]: [string, Figure]): string {
  const text = figureText(part);
  return `${spoken(name)} ${isGroup(part) && !Array.isArray(part) ? `(${text})` : text}`;
}

const LIST_LIMIT = 12;

/** Equal neighbours as `3 × 9.00 yd3`; a long list is cut short and says so. */
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

const isGroup = (figure: Figure): boolean => typeof figure === 'object' && !(figure instanceof Quantity);

/** A figure with its name in front; a list of groups has a line for each. */
function figureLines(name: string, figure: Figure): string[] {
  if (!Array.isArray(figure) || !figure.some(isGroup)) return [`${name}  ${figureText(figure)}`];
  return [name.trimEnd(), ...listed(figure.map(figureText)).map((line) => `    ${line}`)];
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

/** The whole worksheet. */
export function worksheet(result: ResultParts<FigureSet>): string {
  const figures = Object.entries(result.figures as Record<string, Figure>);
  const width = Math.max(0, ...figures.map(([name]) => spoken(name).length));
  return [
    `${result.title} (${result.id})`,
    ...figures.flatMap(([name, figure]) => figureLines(`  ${spoken(name).padEnd(width)}`, figure)),
    ...section(
      'Working',
      result.working.map((s) => `${s.what}: ${s.formula} = ${s.put} = ${s.gives}`),
    ),
    ...section(
      'Assumed',
      result.assumed.map((a) => `${spoken(a.name)}: ${a.value}, ${a.because}. ${a.override}.`),
    ),
    ...section(
      'Cautions',
      result.cautions.map((c) => `${c.severity}: ${c.sentence} [${sourceText(c.source)}]`),
    ),
    ...section('Sources', result.sources.map(sourceText)),
  ].join('\n');
}

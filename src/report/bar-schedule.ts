/**
 * The bar list and the bars to buy of `rebarLayout`, and the cutting plan of `barCutting`, as tables in Markdown and CSV.
 *
 * Lengths and weights in CSV are exact numbers with their unit in the head, so that a spreadsheet can add
 * them up.
 */

import { type Quantity, systemOfQuantity } from '../quantity/quantity';
import type { System, UnitId } from '../quantity/units';
import type { BarCuttingFigures } from '../steel/cutting-figures';
import type { RebarListFigures } from '../steel/rebar-types';
import { csvText } from './csv';
import { mustBeView, mustHave } from './must-be';

/** Text, or a quantity with the unit that a column is in. */
type Cell = string | Quantity;

interface Table {
  readonly head: readonly string[];
  /** The unit of each column, empty where there is none. */
  readonly units: readonly string[];
  readonly rows: readonly (readonly Cell[])[];
}

const shown = (cell: Cell, unit: string): string => {
  if (typeof cell === 'string') return cell;
  return unit === 'each' ? String(cell.toNumber('each')) : cell.format(unit as UnitId);
};

const PLACES = 6;

const plain = (cell: Cell, unit: string): string =>
  typeof cell === 'string' ? cell : String(Number(cell.toNumber(unit as UnitId).toFixed(PLACES)));

const markdownCell = (text: string): string => text.replaceAll('|', '\\|').replaceAll('\n', ' ');

function markdownOf({ head, units, rows }: Table): string {
  const line = (cells: readonly string[]): string => `| ${cells.map(markdownCell).join(' | ')} |`;
  const body = rows.map((row) => line(row.map((cell, i) => shown(cell, units[i] ?? ''))));
  return `${[line(head), line(head.map(() => '---')), ...body].join('\n')}\n`;
}

function csvOf({ head, units, rows }: Table): string {
  const titles = head.map((title, i) => (units[i] && units[i] !== 'each' ? `${title} (${units[i]})` : title));
  const lines = [titles, ...rows.map((row) => row.map((cell, i) => plain(cell, units[i] ?? '')))];
  return csvText(lines);
}

/** In which units a table is written. */
export interface ScheduleUnits {
  /** Unit of lengths; by default `m` of a metric job, else `ft-in` in Markdown and `ft` in CSV. */
  readonly length?: UnitId<'length'>;
  /** Unit of weights; by default `kg` of a metric job, else `lb`. */
  readonly mass?: UnitId<'mass'>;
}

type Units = Required<ScheduleUnits>;

const MARKDOWN: Readonly<Record<System, Units>> = {
  customary: { length: 'ft-in', mass: 'lb' },
  metric: { length: 'm', mass: 'kg' },
};
const CSV: Readonly<Record<System, Units>> = { ...MARKDOWN, customary: { length: 'ft', mass: 'lb' } };

/** The units asked for, else those of the job, which are those of its first length. */
const unitsFor = (
  usual: Readonly<Record<System, Units>>,
  first: Quantity<'length'> | undefined,
  asked: ScheduleUnits,
): Units => {
  const own = usual[first ? systemOfQuantity(first) : 'customary'];
  return { length: asked.length ?? own.length, mass: asked.mass ?? own.mass };
};

const barTable = ({ bars }: RebarListFigures, { length, mass }: Units): Table => ({
  head: ['mark', 'mat', 'use', 'bar', 'shape', 'length', 'count', 'total length', 'weight'],
  units: ['', '', '', '', '', length, 'each', length, mass],
  rows: bars.map((b) => [
    b.mark,
    b.layer ?? '',
    b.use,
    b.bar,
    b.shape.replaceAll('-', ' '),
    b.length,
    b.count,
    b.totalLength,
    b.weight,
  ]),
});

const orderTable = ({ sizes }: RebarListFigures, { length, mass }: Units): Table => ({
  head: ['bar', 'bars to buy', 'stock length', 'length as cut', 'weight as cut'],
  units: ['', 'each', length, length, mass],
  rows: sizes.map((s) => [s.bar, s.barsToBuy, s.stockLength, s.length, s.weight]),
});

const cutsText = (cuts: BarCuttingFigures['plan'][number]['cuts'], unit: UnitId<'length'>): string =>
  cuts.map(({ length, count }) => `${count.toNumber('each')} of ${length.format(unit)}`).join('; ');

const cutTable = ({ plan }: BarCuttingFigures, { length }: Units): Table => ({
  head: ['stock', 'bars', 'cut from each', 'left of each'],
  units: [length, 'each', '', length],
  rows: plan.map(({ stock, bars, cuts, drop }) => [stock, bars, cutsText(cuts, length), drop]),
});

/**
 * The bar list as a Markdown table.
 *
 * @param figures - figures of `rebarLayout`
 * @throws {InputError} `unknown-unit`; `not-a-result` for what are no such figures
 * @example
 * ```ts
 * import { rebarLayout } from 'flatwork-reckoner';
 * import { barScheduleMarkdown } from 'flatwork-reckoner/report';
 *
 * const { figures } = rebarLayout({
 *   outline: { shape: 'rectangle', length: '10 ft', width: '8 ft' },
 *   mats: [{ layer: 'bottom', bar: '#4', spacing: '12 in' }],
 * });
 * barScheduleMarkdown(figures).split('\n')[2]; // '| BL1 | bottom | along | #4 | straight | 9 ft 6 in | 9 | 85 ft 6 in | 57.1 lb |'
 * ```
 */
export function barScheduleMarkdown(figures: RebarListFigures, units: ScheduleUnits = {}): string {
  mustHave(figures, 'bars', 'rebarLayout');
  mustBeView(units);
  return markdownOf(barTable(figures, unitsFor(MARKDOWN, figures.bars[0]?.length, units)));
}

/**
 * The bar list as CSV (RFC 4180), with plain numbers.
 *
 * @param figures - figures of `rebarLayout`
 * @throws {InputError} `unknown-unit`; `not-a-result` for what are no such figures
 * @example
 * ```ts
 * import { rebarLayout } from 'flatwork-reckoner';
 * import { barScheduleCsv } from 'flatwork-reckoner/report';
 *
 * const { figures } = rebarLayout({
 *   outline: { shape: 'rectangle', length: '10 ft', width: '8 ft' },
 *   mats: [{ layer: 'bottom', bar: '#4', spacing: '12 in' }],
 * });
 * barScheduleCsv(figures).split('\r\n')[1]; // 'BL1,bottom,along,#4,straight,9.5,9,85.5,57.114'
 * ```
 */
export function barScheduleCsv(figures: RebarListFigures, units: ScheduleUnits = {}): string {
  mustHave(figures, 'bars', 'rebarLayout');
  mustBeView(units);
  return csvOf(barTable(figures, unitsFor(CSV, figures.bars[0]?.length, units)));
}

/**
 * The bars to buy, size by size, as a Markdown table.
 *
 * @param figures - figures of `rebarLayout`
 * @throws {InputError} `unknown-unit`; `not-a-result` for what are no such figures
 * @example
 * ```ts
 * import { rebarLayout } from 'flatwork-reckoner';
 * import { barOrderMarkdown } from 'flatwork-reckoner/report';
 *
 * const { figures } = rebarLayout({ length: '28 ft', width: '18 ft', bar: '#4', spacing: '18 in' });
 * barOrderMarkdown(figures).split('\n')[2]; // '| #4 | 40 | 20 ft | 729 ft 2 in | 487.1 lb |'
 * ```
 */
export function barOrderMarkdown(figures: RebarListFigures, units: ScheduleUnits = {}): string {
  mustHave(figures, 'sizes', 'rebarLayout');
  mustBeView(units);
  return markdownOf(orderTable(figures, unitsFor(MARKDOWN, figures.sizes[0]?.length, units)));
}

/**
 * The bars to buy, size by size, as CSV (RFC 4180), with plain numbers.
 *
 * @param figures - figures of `rebarLayout`
 * @throws {InputError} `unknown-unit`; `not-a-result` for what are no such figures
 */
export function barOrderCsv(figures: RebarListFigures, units: ScheduleUnits = {}): string {
  mustHave(figures, 'sizes', 'rebarLayout');
  mustBeView(units);
  return csvOf(orderTable(figures, unitsFor(CSV, figures.sizes[0]?.length, units)));
}

/**
 * The cutting plan as a Markdown table.
 *
 * @param figures - figures of `barCutting`
 * @throws {InputError} `unknown-unit`; `not-a-result` for what are no such figures
 */
export function cuttingMarkdown(figures: BarCuttingFigures, units: ScheduleUnits = {}): string {
  mustHave(figures, 'plan', 'barCutting');
  mustBeView(units);
  return markdownOf(cutTable(figures, unitsFor(MARKDOWN, figures.plan[0]?.stock, units)));
}

/**
 * The cutting plan as CSV (RFC 4180).
 *
 * @param figures - figures of `barCutting`
 * @throws {InputError} `unknown-unit`; `not-a-result` for what are no such figures
 */
export function cuttingCsv(figures: BarCuttingFigures, units: ScheduleUnits = {}): string {
  mustHave(figures, 'plan', 'barCutting');
  mustBeView(units);
  return csvOf(cutTable(figures, unitsFor(CSV, figures.plan[0]?.stock, units)));
}

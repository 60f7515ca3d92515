/**
 * Which bar a designation means: `#4`, `No. 13`, `15M`, `12 mm`, `H12`.
 *
 * Four series use the same numbers for different bars. What only one of them makes is read as that; what two
 * of them make is refused with both readings, unless the series is given. ASTM A615/A615M has the inch-pound and
 * the soft metric numbers; CSA G30.18 has the numbers with an M (from memory, but for the sizes of A615M-95c);
 * elsewhere bars are named by their diameter, with the letter of their steel before it in British schedules (H, T, B),
 * Australian (N), New Zealand (HD) and South African ones (Y), from memory.
 */
import { fault } from '../quantity/faults';
import type { Fault } from '../quantity/input-error';
import { say } from '../quantity/words';
import {
  BAR_SIZES,
  type BarSeries,
  type BarSize,
  barProperties,
  byInches,
  designationsOf,
  diameterOf,
  softNumberOf,
} from './bars';

/** A designation cut up: `#`, `No.`, `Ø` or a letter of the steel before it, the number, `M` or `mm` behind it. */
export interface BarMark {
  readonly written: string;
  readonly number: string;
  readonly prefix: 'number' | 'diameter' | undefined;
  readonly suffix: 'M' | 'mm' | undefined;
  /** A diameter is one of millimeters, also where no unit says so. */
  readonly namedIn?: 'metric';
}

const MARK = /^(#|no\.?|n°|ø|⌀|φ|(?:hd|[htbyn])(?= ?\d{1,2}$))? ?(\d{1,2}) ?(m|mm)?$/i;

/** Cut a designation up; `undefined` for anything that is none. */
export function barMark(text: string): BarMark | undefined {
  const written = text.trim();
  // The sign of a diameter stands behind it too: 12Ø.
  const found = MARK.exec(byInches(written).replace(/^(\d{1,2}) ?([ø⌀φ])$/i, '$2$1'));
  if (!found) return undefined;
  const [, before, number = '', behind] = found;
  const prefix = before === undefined ? undefined : /^[ø⌀φhtby]|^n$/i.test(before) ? 'diameter' : 'number';
  const suffix = behind === undefined ? undefined : behind.length === 1 ? 'M' : 'mm';
  const mark = { written, number: String(Number(number)), prefix, suffix } as const;
  return prefix === 'diameter' ? { ...mark, namedIn: 'metric' } : mark;
}

/** The series whose way of writing a mark may follow. */
export function seriesOf({ prefix, suffix }: BarMark): readonly BarSeries[] {
  if (prefix === 'diameter') return suffix === 'M' ? [] : ['diameter'];
  if (suffix === 'mm') return prefix === 'number' ? [] : ['diameter'];
  if (suffix === 'M') return prefix === 'number' ? ['soft-metric', 'hard-metric'] : ['hard-metric'];
  if (prefix === 'number') return ['inch-pound', 'soft-metric'];
  return ['inch-pound', 'soft-metric', 'hard-metric', 'diameter'];
}

/** The series that make the bar that a mark may mean. */
export function candidates(mark: BarMark, series: BarSeries | undefined): readonly BarSeries[] {
  const makes = (s: BarSeries): boolean => barProperties(s, mark.number) !== undefined;
  const found = seriesOf(mark).filter((s) => makes(s) && (series === undefined || s === series));
  if (found.length > 0 || mark.suffix !== 'M' || barProperties('hard-metric', mark.number)) return found;
  // 13M and the like are no Canadian sizes; they stand for the soft metric ones.
  return makes('soft-metric') && (series ?? 'soft-metric') === 'soft-metric' ? ['soft-metric'] : [];
}

/** The number of a series, as it is written there. */
export const designation = (series: BarSeries, number: string): string =>
  designationsOf(series).find((d) => barMark(d)?.number === number) ?? number;

/** A reading in words: what it is, and how thick. */
function reading(series: BarSeries, number: string): string {
  if (series === 'inch-pound') return `#${number} of ${diameterOf(`#${number}` as BarSize).format('in')}`;
  if (series === 'hard-metric')
    return `${number}M of ${barProperties(series, number)?.diameter.format('mm') ?? ''}`;
  if (series === 'diameter') return `a bar of ${number} mm`;
  const same = BAR_SIZES.find((size) => softNumberOf(size) === number) ?? '';
  return `soft metric ${number}, the same bar as ${same}`;
}

/** More than one series makes a bar of that number. */
export function ambiguousBar(mark: BarMark, found: readonly BarSeries[]): Fault {
  const readings = found.map((s) => reading(s, mark.number));
  const last = readings.pop() ?? '';
  return fault(
    'ambiguous',
    say`the bar can be read more ways than one from ${{ text: `"${mark.written}"` }}: ${{ readings: readings.join(', ') }} or ${{ last }}; give series: ${{ series: found.join(' or ') }}`,
  );
}

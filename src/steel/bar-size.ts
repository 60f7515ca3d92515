/**
 * Nominal size of a reinforcing bar: diameter, area and weight from the table of its series, and the
 * weight of a bundle to lift.
 */
import { constant, mass } from '../quantity/make';
import { type Quantity, type QuantityInput, systemOfQuantity } from '../quantity/quantity';
import { type Calculation, define, refuse } from '../reckoning/calculation';
import { choice, fields, maybe, quantity, text, whole, wholeNumber } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { barGrade } from './bar-grade';
import {
  BAR_SIZES,
  type BarGrade,
  type BarProperties,
  type BarSeries,
  type BarSize,
  barProperties,
  designationsOf,
  softNumberOf,
  tensileOf,
  yieldOf,
} from './bars';
import { heavyLift } from './cautions';
import { ambiguousBar, type BarMark, barMark, candidates, designation, seriesOf } from './designation';
import * as faults from './faults';
import { BAR_LENGTH } from './ordinary';
import { A615_HARD_METRIC, A615_SOFT_METRIC, CRSI_BARS, METRIC_ROUND } from './sources';

/** Input of {@link barSize}. */
export interface BarSizeInput {
  /** As marked or spoken: `#4`, `No. 4`, `4`, `#13`, `15M`, `12 mm`, `Ø12`, `H12`, `1/2 in`. */
  readonly bar: string;
  /** Which table the number belongs to; needed only where two have a bar of that number, as `#10`. */
  readonly series?: BarSeries;
  /** Grade, where its strength is wanted. */
  readonly grade?: BarGrade;
  /** Length of a bar in a bundle, where the weight is wanted. */
  readonly length?: QuantityInput<'length'>;
  /** Bars in the bundle; by default one. */
  readonly count?: number;
}

/** Figures of {@link barSize}. */
export interface BarSizeFigures {
  /** As it is written in its series: `#4`, `13`, `15M`, `12 mm`. */
  readonly designation: string;
  /** The series that it belongs to. */
  readonly series: BarSeries;
  /** The soft metric number of an inch-pound bar, or the other way around. */
  readonly sameBar?: string;
  /** Nominal diameter, without the ribs. */
  readonly diameter: Quantity<'length'>;
  /** Nominal area of the section. */
  readonly area: Quantity<'area'>;
  /** Nominal weight; not the area times a density. */
  readonly unitWeight: Quantity<'mass-per-length'>;
  /** Of the grade, where one is given. */
  readonly yieldStrength?: Quantity<'pressure'>;
  /** Where the table that was read prints it. */
  readonly tensileStrength?: Quantity<'pressure'>;
  /** Of the bundle, where a length is given. */
  readonly weight?: Quantity<'mass'>;
}

interface Parsed {
  readonly bar: BarMark;
  readonly series: BarSeries | undefined;
  readonly grade: BarGrade | undefined;
  readonly length: Quantity<'length'> | undefined;
  readonly count: Quantity<'count'> | undefined;
}

const COUNT_LIMIT = 100_000;

/** What one person may lift at best: the load constant of the lifting equation, 51 lb or 23 kg. */
const LIFT = constant(() => mass('51 lb'));

function sameBarOf(series: BarSeries, number: string): string | undefined {
  if (series === 'inch-pound') return softNumberOf(`#${number}` as BarSize);
  return series === 'soft-metric' ? BAR_SIZES.find((size) => softNumberOf(size) === number) : undefined;
}

function bundleWeight(input: Parsed, u: Quantity<'mass-per-length'>, pad: Pad): Quantity<'mass'> | undefined {
  if (!input.length) return undefined;
  const n = input.count ?? wholeNumber(1);
  const values = { n, L: input.length, u };
  const M = pad.step('weight of the bundle', 'M = n × L × u', values, input.length.times(u).times(n));
  if (M.greaterThan(LIFT()))
    pad.caution(heavyLift(systemOfQuantity(M) === 'metric' ? LIFT().in('kg') : LIFT(), M));
  return M;
}

/** As metric jobs write them. */
const METRIC_BARS: readonly string[] = /*#__PURE__*/ (['diameter', 'hard-metric'] as const).flatMap(
  (series) => designationsOf(series).map((d) => `"${d}"`),
);

/** The one series that the designation belongs to. */
function seriesFor({ bar, series }: Parsed): BarSeries {
  const found = candidates(bar, series);
  const [only, second] = found;
  if (only && !second) return only;
  if (only) return refuse('bar', ambiguousBar(bar, found));
  const made = designationsOf(series ?? seriesOf(bar)[0] ?? 'inch-pound').map((d) => `"${d}"`);
  return refuse('bar', faults.unknownDesignation('the bar', made, series ? made : METRIC_BARS));
}

function reckon(input: Parsed, pad: Pad): BarSizeFigures {
  const series = seriesFor(input);
  const { number } = input.bar;
  const found = barProperties(series, number) as BarProperties;
  const sameBar = sameBarOf(series, number);
  const tensile = input.grade ? tensileOf(input.grade) : undefined;
  const weight = bundleWeight(input, found.weight, pad);
  return {
    designation: designation(series, number),
    series,
    ...(sameBar ? { sameBar } : {}),
    diameter: found.diameter,
    area: found.area,
    unitWeight: found.weight,
    ...(input.grade ? { yieldStrength: yieldOf(input.grade) } : {}),
    ...(tensile ? { tensileStrength: tensile } : {}),
    ...(weight ? { weight } : {}),
  };
}

/**
 * Nominal size of a reinforcing bar: diameter, area, weight, and its name in every series.
 *
 * @param input - the bar as it is marked, and the series that its number belongs to
 * @returns diameter, area, weight, strength of the grade, weight of a bundle
 * @throws {InputError} `unknown-designation` for a number that is not rolled in the series; `ambiguous` for
 * one that two series have, as `#10`, where series is not given
 * @source CRSI Manual of Standard Practice; ASTM A615/A615M as reproduced; soft metric 43 and 57,
 * 55M and the grades other than 40 and 60 are from memory; bars by diameter: round steel at 7850 kg/m3
 * @example
 * ```ts
 * import { barSize } from 'flatwork-reckoner';
 *
 * const { figures } = barSize({ bar: 'No. 4', length: '20 ft', count: 50 });
 * figures.area.format('in2'); // '0.2 in2'
 * figures.weight?.format(); // '668 lb'
 * ```
 */
export const barSize: Calculation<BarSizeInput, BarSizeFigures> = /*#__PURE__*/ define({
  id: 'bar-size',
  title: 'Bar size',
  version: 1,
  sources: [CRSI_BARS, A615_SOFT_METRIC, A615_HARD_METRIC, METRIC_ROUND],
  input: () =>
    fields({
      bar: text('bar', ['"#4"', '"12 mm"'], barMark, () =>
        faults.unknownDesignation('the bar', ['"#4"', '"No. 4"'], ['"12 mm"', '"15M"']),
      ),
      series: maybe(choice('series', ['inch-pound', 'soft-metric', 'hard-metric', 'diameter'] as const)),
      grade: maybe(barGrade('grade')),
      length: maybe(quantity('length', 'length', 'positive', BAR_LENGTH)),
      count: maybe(whole('count', 1, COUNT_LIMIT)),
    }),
  reckon,
});

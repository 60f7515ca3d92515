/**
 * A mat of bars in two directions: counts, lengths, laps, weight. Any outline: see `rebar-region`.
 *
 * Over a rectangle:
 * Bars across a width `W` with cover `c` at both edges and spacing `s`: `ceil((W − 2c) ÷ s) + 1`,
 * each `L − 2c` long. A line longer than the stock is made of `k` pieces lapped by `l`,
 * `k = ceil((N − l) ÷ (S − l))`, and takes `N + (k − 1) × l` of bar.
 */
import * as faults from '../quantity/faults';
import { constant, ratio } from '../quantity/make';
import type { Quantity, QuantityInput } from '../quantity/quantity';
import { type Calculation, define, refuse } from '../reckoning/calculation';
import * as cautions from '../reckoning/cautions';
import { choice, eitherBy, type Field, fields, maybe, quantity, wholeNumber } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { ACI_318_COVER, CRSI_BARS, STAGGER_RULE, VCC_LAP, WSDOT_TIES } from '../reckoning/source';
import { BAR_SIZES, type BarSize, diameterOf, weightOf } from './bars';
import { throughDoor } from './common';
import { COVER, coverOf, lapOf, stockOf, WIDE } from './mat-defaults';
import {
  type BarPlace,
  type ParsedRegion,
  placesOf,
  type RebarRegionFigures,
  type RebarRegionInput,
  reckonRegion,
  regionInput,
} from './rebar-region';

/** Input of {@link rebarLayout} for a rectangle. */
export interface RebarLayoutInput {
  /** Length of the slab. */
  readonly length: QuantityInput<'length'>;
  /** Width of the slab. */
  readonly width: QuantityInput<'length'>;
  /** Bar size, both ways. */
  readonly bar: BarSize;
  /** Centre to centre, both ways; the most that any two bars are apart. */
  readonly spacing: QuantityInput<'length'>;
  /** Centre to centre of the bars that run across the length, where it differs. */
  readonly spacingAcross?: QuantityInput<'length'>;
  /** From the edge of the slab to the end of a bar, and to the outermost bar; by default 3 in. */
  readonly cover?: QuantityInput<'length'>;
  /** Length of the bars as bought; by default 20 ft. */
  readonly stockLength?: QuantityInput<'length'>;
  /** Overlap of two bars in a line; by default the larger of 40 diameters and 12 in. */
  readonly lap?: QuantityInput<'length'>;
}

/** The bars that run one way. */
export interface BarRun {
  /** How many lines of bar. */
  readonly lines: Quantity<'count'>;
  /** From end to end of a line. */
  readonly lineLength: Quantity<'length'>;
  /** Pieces in a line. */
  readonly pieces: Quantity<'count'>;
  /** Bar in a line, laps included. */
  readonly barPerLine: Quantity<'length'>;
  /** Centre to centre as it comes out with the lines spread evenly. */
  readonly evenSpacing: Quantity<'length'>;
}

/** Figures of {@link rebarLayout} for a rectangle. */
export interface RebarLayoutFigures {
  /** Bars that run along the length. */
  readonly along: BarRun;
  /** Bars that run across, along the width. */
  readonly across: BarRun;
  /** Bar in all, laps included, with nothing for waste. */
  readonly totalLength: Quantity<'length'>;
  /** Weight of the bar in all. */
  readonly weight: Quantity<'mass'>;
  /** Nominal weight of the bar. */
  readonly unitWeight: Quantity<'mass-per-length'>;
  /** Crossings of two bars. */
  readonly intersections: Quantity<'count'>;
  /** Lap used. */
  readonly lap: Quantity<'length'>;
}

type Length = Quantity<'length'>;
type Count = Quantity<'count'>;

interface Parsed {
  readonly length: Length;
  readonly width: Length;
  readonly bar: BarSize;
  readonly spacing: Length;
  readonly spacingAcross: Length | undefined;
  readonly cover: Length | undefined;
  readonly stockLength: Length | undefined;
  readonly lap: Length | undefined;
}

const LINE_LIMIT = 100_000;
const ONE = constant(() => wholeNumber(1));
const TWO = constant(() => wholeNumber(2));

/** A quotient of lengths rounded up, as a count. */
function ceilOver(a: Length, b: Length, path: string): Count {
  const times = a.over(b);
  if (times.greaterThan(ratio(`${LINE_LIMIT}:1`)))
    refuse(path, faults.tooMany('the mat in bars', LINE_LIMIT));
  return wholeNumber(Math.round(a.upTo(b).over(b).toNumber(':1')));
}

interface Run {
  readonly name: string;
  /** The side that the bars run along, and the side that they are spread over. */
  readonly along: Length;
  readonly over: Length;
  readonly spacing: Length;
  readonly spacingPath: string;
}

interface Common {
  readonly cover: Length;
  readonly stock: Length;
  readonly lap: Length;
}

function pieces(N: Length, { stock: S, lap: l }: Common, pad: Pad, name: string): [Count, Length] {
  if (!N.greaterThan(S)) return [ONE(), N];
  const k = ceilOver(N.minus(l), S.minus(l), 'stockLength');
  pad.step(`pieces in a line ${name}`, 'k = ceil((N − l) ÷ (S − l))', { N, l, S }, k);
  const bar = N.plus(l.times(k.minus(ONE())));
  pad.step(`bar in a line ${name}`, 'b = N + (k − 1) × l', { N, k, l }, bar);
  return [k, bar];
}

function layRun(run: Run, common: Common, pad: Pad): BarRun {
  const { name, along, over: w, spacing: s } = run;
  const c = common.cover;
  const field = w.minus(c.times(TWO()));
  const gaps = ceilOver(field, s, run.spacingPath);
  const lines = gaps.plus(ONE());
  pad.step(`lines ${name}`, 'n = ceil((w − 2 × c) ÷ s) + 1', { w, c, s }, lines);
  const N = along.minus(c.times(TWO()));
  pad.step(`length of a line ${name}`, 'N = a − 2 × c', { a: along, c }, N);
  const [k, barPerLine] = pieces(N, common, pad, name);
  return { lines, lineLength: N, pieces: k, barPerLine, evenSpacing: field.over(gaps) };
}

function checkFit(input: Parsed, { cover, stock, lap }: Common): void {
  const twice = cover.times(TWO());
  for (const side of ['length', 'width'] as const) {
    if (!twice.lessThan(input[side])) refuse('cover', faults.doesNotFit('twice the cover', `the ${side}`));
  }
  for (const path of ['spacing', 'spacingAcross'] as const) {
    const s = input[path];
    if (s && !diameterOf(input.bar).lessThan(s)) refuse(path, faults.doesNotFit('the bar', 'its spacing'));
  }
  if (!lap.lessThan(stock)) refuse('lap', faults.doesNotFit('the lap', 'the stock length'));
}

function heed(input: Parsed, cover: Length, pad: Pad): void {
  if (cover.lessThan(COVER())) pad.caution(cautions.steelCover(COVER(), cover));
  if (input.spacing.greaterThan(WIDE())) pad.caution(cautions.wideSpacing(WIDE(), input.spacing));
  const across = input.spacingAcross;
  if (across?.greaterThan(WIDE())) pad.caution(cautions.wideSpacing(WIDE(), across));
  if (input.bar === '#14' || input.bar === '#18') pad.caution(cautions.heavyLap);
  pad.caution(cautions.impalement);
}

function totals(along: BarRun, across: BarRun, bar: BarSize, pad: Pad): [Length, Quantity<'mass'>] {
  const symbols = { n: along.lines, b: along.barPerLine, m: across.lines, e: across.barPerLine };
  const totalLength = along.barPerLine.times(along.lines).plus(across.barPerLine.times(across.lines));
  const T = pad.step('bar in all', 'T = n × b + m × e', symbols, totalLength);
  const u = weightOf(bar);
  return [T, pad.step('weight', 'M = T × u', { T, u }, T.times(u))];
}

function reckonRectangle(input: Parsed, pad: Pad): RebarLayoutFigures {
  const cover = coverOf(input.cover, pad);
  const stock = stockOf(input.stockLength, pad);
  const lap = lapOf(input.lap, input.bar, pad);
  const common = { cover, stock, lap };
  checkFit(input, common);
  const { length: L, width: W, spacing } = input;
  const across = input.spacingAcross ?? spacing;
  const acrossPath = input.spacingAcross ? 'spacingAcross' : 'spacing';
  const runs = {
    along: layRun({ name: 'along', along: L, over: W, spacing, spacingPath: 'spacing' }, common, pad),
    across: layRun(
      { name: 'across', along: W, over: L, spacing: across, spacingPath: acrossPath },
      common,
      pad,
    ),
  };
  const [totalLength, weight] = totals(runs.along, runs.across, input.bar, pad);
  const i = runs.along.lines.times(runs.across.lines);
  pad.step('crossings', 'i = n × m', { n: runs.along.lines, m: runs.across.lines }, i);
  heed(input, cover, pad);
  return { ...runs, totalLength, weight, unitWeight: weightOf(input.bar), intersections: i, lap };
}

const rectangleInput = (): Field<Parsed> =>
  fields({
    length: quantity('length', 'length'),
    width: quantity('length', 'width'),
    bar: choice('bar', BAR_SIZES),
    spacing: quantity('length', 'spacing'),
    spacingAcross: maybe(quantity('length', 'spacingAcross')),
    cover: maybe(quantity('length', 'cover', 'not-negative')),
    stockLength: maybe(quantity('length', 'stockLength')),
    lap: maybe(quantity('length', 'lap')),
  });

/** {@link rebarLayout}: one calculation with two kinds of input, each with its figures. */
export type RebarLayout = Calculation<RebarLayoutInput, RebarLayoutFigures> &
  Calculation<RebarRegionInput, RebarRegionFigures>;

/**
 * A mat of bars in two directions: over a rectangle by its sides, or over any outline with openings.
 *
 * With `outline` and `mats` it clips the bars to the outline, adds bars along edges and across corners that
 * jut into the slab, staggers the laps, and gives a bar list with ties, wire and supports.
 *
 * @param input - sides of the slab, bar, spacing; or an outline with mats. Cover, stock length and lap
 * where they are known
 * @returns lines, lengths and pieces each way, total length, weight and crossings; or the bar list
 * @throws {InputError} `does-not-fit` for a cover, lap or bar too large; `stock-too-short` for a bar that has
 * no lap; `give-one-of` spacing and lines; `too-many` bars, above 200,000; the codes of an outline; lengths
 * that cannot be read or are not greater than zero
 * @source bar weights: CRSI Manual of Standard Practice; default cover: ACI 318-71 as quoted; default
 * lap: Virginia Construction Code 2107.2.1; ties: Washington State; stagger of laps: EN 1992-1-1 from memory.
 * The plans and the engineer govern
 * @example
 * ```ts
 * import { rebarLayout } from 'flatwork-reckoner';
 *
 * const { figures } = rebarLayout({
 *   length: '28 ft',
 *   width: '18 ft',
 *   bar: '#4',
 *   spacing: '18 in',
 * });
 * figures.along.lines.format(); // '13 each'
 * figures.weight.format(); // '487.1 lb'
 *
 * const ell = rebarLayout({
 *   outline: { shape: 'L', length: '28 ft', width: '18 ft', notchLength: '8 ft', notchWidth: '6 ft' },
 *   mats: [{ layer: 'bottom', bar: '#4', spacing: '18 in' }],
 * });
 * ell.figures.bars[0]?.mark; // 'BL1'
 * ```
 */
export const rebarLayout: RebarLayout = /*#__PURE__*/ define<
  RebarLayoutInput,
  Parsed | ParsedRegion,
  RebarLayoutFigures | RebarRegionFigures
>({
  id: 'rebar-layout',
  title: 'Mat of reinforcing bars',
  version: 1,
  sources: [CRSI_BARS, ACI_318_COVER, VCC_LAP, WSDOT_TIES, STAGGER_RULE],
  input: () => eitherBy<Parsed | ParsedRegion>('outline', regionInput(), rectangleInput()),
  reckon: (input, pad) => ('outline' in input ? reckonRegion(input, pad) : reckonRectangle(input, pad)),
}) as unknown as RebarLayout;

/**
 * Where the bars of `rebarLayout` lie, for drawing and for checking: plain metres, not figures.
 *
 * @param input - the same as for `rebarLayout` over an outline
 * @returns each bar of the mats with its mark and its path; dowels and bars in steps are in the list only
 * @throws {InputError} as `rebarLayout` does
 * @example
 * ```ts
 * import { barPlaces } from 'flatwork-reckoner';
 *
 * const places = barPlaces({
 *   outline: { shape: 'rectangle', length: '10 ft', width: '8 ft' },
 *   mats: [{ layer: 'bottom', bar: '#4', spacing: '12 in' }],
 * });
 * places.length; // 20
 * ```
 */
export function barPlaces(input: RebarRegionInput): readonly BarPlace[] {
  return throughDoor(input, regionInput, placesOf).places;
}

/**
 * Bars in a slab or a footing: counts, lengths, laps, bars to buy, weight.
 *
 * One calculation with three kinds of input: a mat over a rectangle by its sides (`rebar-rectangle`), mats over
 * any outline (`rebar-region`), and the lines of a strip footing (`rebar-strip`). The rectangle is read into an
 * outline, so that both give the same bar list and the same cautions.
 */
import { type Calculation, define, readInput } from '../reckoning/calculation';
import { eitherBy } from '../reckoning/fields';
import type { Result } from '../reckoning/result';
import type { TakeNote } from '../reckoning/takes';
import { MARK_LIMIT } from './bar-list';
import { NEAR_LINES } from './mat';
import { EDGE_LOOKS, NEAR_EDGES } from './mat-edges';
import { SIDE_LIMIT } from './mat-extras';
import { BAR_LIMIT, CORNER_LIMIT } from './mat-ground';
import { CENTER_TO_THIRD, RICHARDSON_SPACING } from './mat-sources';
import { type ParsedRegion, regionInput } from './rebar-fields';
import {
  type ParsedRectangle,
  type RebarLayoutFigures,
  type RebarLayoutInput,
  RUN_LIMIT,
  reckonRectangle,
  rectangleInput,
} from './rebar-rectangle';
import { type BarPlace, placesOf, reckonRegion } from './rebar-region';
import {
  type ParsedStrip,
  type RebarStripFigures,
  type RebarStripInput,
  reckonStrip,
  stripInput,
} from './rebar-strip';
import type { RebarRegionFigures, RebarRegionInput } from './rebar-types';
import { ACI_318_COVER, CRSI_BARS, STAGGER_RULE, VCC_LAP, WSDOT_TIES } from './sources';

/** Bars by size, with the pieces of each, and what holds them. */
const barsTaken = ({ sizes, bars }: RebarFigures): TakeNote[] => [
  ...sizes.map(
    ({ bar, stockLength }, i): TakeNote => ({
      item: 'bar',
      from: `sizes[${i}].barsToBuy`,
      of: { bar, stockLength },
      cuts: bars.filter((mark) => mark.bar === bar).map(({ length, count }) => ({ length, count })),
    }),
  ),
  { item: 'tie', from: 'ties' },
  { item: 'bar-support', from: 'supports' },
];

type Parsed = ParsedRectangle | ParsedRegion | ParsedStrip;

/** What goes into {@link rebarLayout}: a rectangle by its sides, an outline with mats, or a strip footing. */
export type RebarInput = RebarLayoutInput | RebarRegionInput | RebarStripInput;

/** Figures of any kind of input: what only one kind has is there after `'along' in figures` and the like. */
export type RebarFigures = RebarLayoutFigures | RebarRegionFigures | RebarStripFigures;

/** {@link rebarLayout}: one calculation with three kinds of input, each with its figures. */
export interface RebarLayout extends Calculation<RebarInput, RebarFigures> {
  /** Reckon a mat over a rectangle. */
  (input: RebarLayoutInput): Result<RebarLayoutFigures>;
  /** Reckon mats over an outline. */
  (input: RebarRegionInput): Result<RebarRegionFigures>;
  /** Reckon the steel of a strip footing. */
  (input: RebarStripInput): Result<RebarStripFigures>;
  /** Reckon any kind of input. */
  (input: RebarInput): Result<RebarFigures>;
}

/**
 * Bars in a slab or a footing: a mat over a rectangle by its sides, mats over any outline with openings, or
 * the lines of a strip footing.
 *
 * With `outline` and `mats` it clips the bars to the outline, adds bars along edges and across corners that
 * jut into the slab, staggers the laps, and gives a bar list with the bars to buy, ties, wire and supports. With
 * `strip` it gives the same for lines along a footing with corner bars, bars across, closed ties and starters.
 *
 * @param input - sides of the slab, bar, spacing; or an outline with mats; or the stretches of a footing. Cover,
 * stock length and lap where they are known
 * @returns bars to buy, the bar list, total length, weight, ties, supports; over a rectangle also lines, lengths
 * and pieces each way
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
 * figures.barsToBuy.format(); // '40 each'
 * figures.weight.format(); // '487.1 lb'
 *
 * const ell = rebarLayout({
 *   outline: { shape: 'L', length: '28 ft', width: '18 ft', notchLength: '8 ft', notchWidth: '6 ft' },
 *   mats: [{ layer: 'bottom', bar: '#4', spacing: '18 in' }],
 * });
 * ell.figures.bars[0]?.mark; // 'BL1'
 *
 * const footing = rebarLayout({ strip: ['40 ft', '28 ft', '40 ft', '28 ft'], closed: true, width: '16 in', bar: '#4', lines: 2 });
 * footing.figures.corners.format(); // '4 each'
 * ```
 */
export const rebarLayout: RebarLayout = /*#__PURE__*/ define<RebarInput, Parsed, RebarFigures>({
  id: 'rebar-layout',
  title: 'Rebar layout',
  version: 2,
  limits: [CORNER_LIMIT, BAR_LIMIT, RUN_LIMIT, MARK_LIMIT, SIDE_LIMIT, NEAR_LINES, EDGE_LOOKS, NEAR_EDGES],
  sources: [CRSI_BARS, ACI_318_COVER, CENTER_TO_THIRD, RICHARDSON_SPACING, VCC_LAP, WSDOT_TIES, STAGGER_RULE],
  input: () =>
    eitherBy<Parsed>('outline', regionInput(), eitherBy<Parsed>('strip', stripInput(), rectangleInput())),
  reckon: (input, pad) => {
    if ('outline' in input) return reckonRegion(input, pad);
    return 'strip' in input ? reckonStrip(input, pad) : reckonRectangle(input, pad);
  },
  takes: barsTaken,
}) as unknown as RebarLayout;

/**
 * Where the bars of `rebarLayout` lie, for drawing and for checking: plain meters, not figures.
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
  return placesOf(readInput(regionInput(), input)).places;
}

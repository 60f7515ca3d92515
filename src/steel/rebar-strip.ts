/**
 * Steel along a strip footing: lines of bar with laps, corner bars, bars across, closed ties and starters.
 *
 * The footing is a row of straight stretches, each measured along its outer edge, that meet at square corners.
 * A line in a stretch of length `L` with cover `c` is `L − 2 × c` long, and is cut and lapped as the lines of a
 * mat are. At each corner a bent bar for each line laps both ways. Across, ties and starters stand over the
 * stretch less the width `w` of the one before it, which has the corner: `n = ceil((R − 2 × c) ÷ s) + 1`.
 */

import * as faults from '../quantity/faults';
import { constant, length, ratio } from '../quantity/make';
import { paired } from '../quantity/paired';
import { canonicalValue, type Quantity, type QuantityInput } from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import { type Field, fields, list, maybe, quantity, whole, wholeNumber, yesOrNo } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { COMMON_PRACTICE } from '../reckoning/source';
import { needs } from '../reckoning/together';
import { barField } from './bar-field';
import { type Alike, type Buying, lengthOf, listFigures } from './bar-list';
import { type AnyBarSize, type BarName, bySize, diameterOf, isHeavy } from './bars';
import * as cautions from './cautions';
import { EARTH_COVER } from './cover';
import { earthCover, lapsBeside } from './mat-cautions';
import { coverOf, lapOf, stockOf, supportsOf } from './mat-defaults';
import { checkStock, countAlong } from './mat-extras';
import { checkClear } from './mat-figures';
import { BAR_LIMIT, bounded, cutRule, stepOf } from './mat-ground';
import {
  CUT_TO,
  DOWEL_SPACING,
  FOOTING_DEPTH,
  FOOTING_WIDTH,
  HOOKS,
  LAP,
  STARTER,
  STOCK_LENGTH,
  STRETCH,
  SUPPORTS_APART,
  TIE,
  TIE_WIRE,
} from './mat-ordinary';
import { type CutLines, cutLines } from './mat-stagger';
import { COVER } from './ordinary';
import { tieWireFor } from './rebar-region';
import type { RebarListFigures } from './rebar-types';

/** Bars side by side along a footing, across it, around its lines or up out of it. */
export interface StripBarsInput {
  /** Size of the bars. */
  readonly bar: BarName;
  /** Center to center at most, along the footing. */
  readonly spacing: QuantityInput<'length'>;
}

/** Closed ties around the lines. */
export interface StripTiesInput extends StripBarsInput {
  /** What both hooks of a tie take beyond the way around; by default 8 in, or 200 mm. */
  readonly hooks?: QuantityInput<'length'>;
}

/** Bars that stand up out of the footing into a wall. */
export interface StripStartersInput extends StripBarsInput {
  /** Length of each, its bend included. */
  readonly length: QuantityInput<'length'>;
}

/** Input of `rebarLayout` along a strip footing. */
export interface RebarStripInput {
  /** The straight stretches in order, each along its outer edge; they meet at square corners. */
  readonly strip: readonly QuantityInput<'length'>[];
  /** The last stretch meets the first; by default it does not. */
  readonly closed?: boolean;
  /** Width of the footing. */
  readonly width: QuantityInput<'length'>;
  /** Depth of the footing; needed for ties. */
  readonly depth?: QuantityInput<'length'>;
  /** Size of the bars along the footing. */
  readonly bar: BarName;
  /** How many lines of it; with `depth` and ties half of them lie at the top. */
  readonly lines: number;
  /** Bars across the footing; none by default. */
  readonly across?: StripBarsInput;
  /** Closed ties around the lines; none by default. */
  readonly ties?: StripTiesInput;
  /** Bars up into a wall; none by default. */
  readonly starters?: StripStartersInput;
  /** From the sides and ends of the footing to the bars; by default 3 in, or 75 mm. */
  readonly cover?: QuantityInput<'length'>;
  /** Length of the bars as bought; by default 20 ft, or 6 m. */
  readonly stockLength?: QuantityInput<'length'>;
  /** Overlap of two bars in a line and at a corner; by default the larger of 40 diameters and 12 in, or 300 mm. */
  readonly lap?: QuantityInput<'length'>;
  /** Lengths are rounded down to a multiple of this; by default 1/16 in, or 1 mm. */
  readonly cutTo?: QuantityInput<'length'>;
  /** Between chairs or blocks along the footing; by default 4 ft, or 1.2 m; 3 ft, or 0.9 m, under #4 and thinner. */
  readonly supports?: QuantityInput<'length'>;
  /** Wire for one tie; by default 12 in, or 0.3 m. */
  readonly wirePerTie?: QuantityInput<'length'>;
  /** Weight of the wire; by default 1 lb for 79 ft, or 1 kg for 53 m. */
  readonly wireWeight?: QuantityInput<'mass-per-length'>;
}

/** Figures of `rebarLayout` along a strip footing. */
export interface RebarStripFigures extends RebarListFigures {
  /** Corners, each with a bent bar for each line. */
  readonly corners: Quantity<'count'>;
  /** Laps within the lines; those at corners are not counted. */
  readonly laps: Quantity<'count'>;
  /** Laps beside a lap of the next line: none unless the stock is short for its lap. */
  readonly lapsInLine: Quantity<'count'>;
  /** Lap of the bars along. */
  readonly lap: Quantity<'length'>;
}

type Length = Quantity<'length'>;
type Count = Quantity<'count'>;

interface ParsedBars {
  readonly bar: AnyBarSize;
  readonly spacing: Length;
}

/** The input, read. */
export interface ParsedStrip {
  readonly strip: readonly Length[];
  readonly closed: boolean | undefined;
  readonly width: Length;
  readonly depth: Length | undefined;
  readonly bar: AnyBarSize;
  readonly lines: Count;
  readonly across: ParsedBars | undefined;
  readonly ties: (ParsedBars & { readonly hooks: Length | undefined }) | undefined;
  readonly starters: (ParsedBars & { readonly length: Length }) | undefined;
  readonly cover: Length | undefined;
  readonly stockLength: Length | undefined;
  readonly lap: Length | undefined;
  readonly cutTo: Length | undefined;
  readonly supports: Length | undefined;
  readonly wirePerTie: Length | undefined;
  readonly wireWeight: Quantity<'mass-per-length'> | undefined;
}

const STRETCHES = 1000;
const MOST_LINES = 40;
const TWO = constant(() => wholeNumber(2));
const USUAL_HOOKS = /*#__PURE__*/ paired('length', '8 in', '200 mm');
const FOOT = constant(() => length('300 mm'));
const LONGEST = constant(() => ratio('100000:1'));

/** What the footing is laid by, read and defaulted. */
interface Ground extends Buying {
  readonly cover: Length;
  readonly corners: number;
}

const sizesOf = ({ bar, across, ties, starters }: ParsedStrip): AnyBarSize[] =>
  bySize(new Set([bar, across?.bar ?? bar, ties?.bar ?? bar, starters?.bar ?? bar]));

function groundOf(input: ParsedStrip, pad: Pad): Ground {
  const like = input.strip[0] as Length;
  const cover = coverOf(input.cover, like, pad);
  const stock = stockOf(input.stockLength, like, pad);
  const step = stepOf(input.cutTo, like, pad);
  const laps = new Map(
    sizesOf(input).map((size) => [size, lapOf(size === input.bar ? input.lap : undefined, size, like, pad)]),
  );
  const twice = cover.times(TWO());
  for (const [side, name] of [
    [input.width, 'the width'],
    [input.depth, 'the depth'],
  ] as const) {
    if (side && !twice.lessThan(side)) refuse('cover', faults.doesNotFit('twice the cover', name));
  }
  const lap = laps.get(input.bar) as Length;
  if (!lap.lessThan(stock)) refuse('lap', faults.doesNotFit('the lap', 'the stock length'));
  if (!step.lessThan(stock)) refuse('cutTo', faults.doesNotFit('the cutting step', 'the stock length'));
  input.strip.forEach((side, i) => {
    if (!input.width.lessThan(side))
      refuse(`strip[${i}]`, faults.doesNotFit('the width of the footing', 'this stretch'));
    if (side.over(input.width).greaterThan(LONGEST()))
      refuse(`strip[${i}]`, faults.outOfRange('the stretch'));
  });
  if (input.closed && input.strip.length < CLOSED_FROM)
    refuse('strip', faults.tooFew('the stretches that close', CLOSED_FROM));
  const corners = input.closed ? input.strip.length : input.strip.length - 1;
  return { cover, stock, step, laps, corners };
}

const CLOSED_FROM = 4;

/** The lines of all stretches, cut. */
function cutStretches(input: ParsedStrip, { cover, stock, step, laps }: Ground): CutLines[] {
  const cut = cutRule(laps.get(input.bar) as Length, stock, step);
  const [c, n] = [canonicalValue(cover).toNumber(), input.lines.toNumber('each')];
  let left = BAR_LIMIT.most;
  return input.strip.map((side, i) => {
    const line = [[c, canonicalValue(side).toNumber() - c]] as const;
    const stretches = Array.from({ length: n }, () => line);
    const done = bounded(`strip[${i}]`, () => cutLines({ stretches, cut, size: input.bar }, left));
    left -= [...done.counts.values()].reduce((a, b) => a + b, 0);
    return done;
  });
}

const alike = (
  use: Alike['use'],
  shape: Alike['shape'],
  bar: AnyBarSize,
  l: Length,
  count: number,
): Alike[] => (count > 0 ? [{ layer: undefined, use, bar, shape, length: l, count }] : []);

function lineGroups(cut: readonly CutLines[], bar: AnyBarSize, step: Length): Alike[] {
  const counts = new Map<number, number>();
  for (const { counts: own } of cut)
    for (const [steps, n] of own) counts.set(steps, (counts.get(steps) ?? 0) + n);
  return [...counts].flatMap(([steps, n]) => alike('along', 'straight', bar, lengthOf(steps, step), n));
}

/** How many bars stand along all stretches at a spacing; a corner belongs to the stretch that ends there. */
function countOver(input: ParsedStrip, spacing: Length, cover: Length, path: string): number {
  return input.strip.reduce((n, side, i) => {
    const begins = input.closed || i > 0;
    const run = begins ? side.minus(input.width).plus(cover) : side;
    return n + countAlong(run, spacing, cover, path);
  }, 0);
}

interface Crossing {
  readonly groups: readonly Alike[];
  /** Bars that each line crosses and is tied to. */
  readonly crossed: number;
  /** Every crossing is tied. */
  readonly all: boolean;
}

function checkSpacing({ bar, spacing }: ParsedBars, path: string): void {
  if (!diameterOf(bar).lessThan(spacing))
    refuse(`${path}.spacing`, faults.doesNotFit('the bar', 'its spacing'));
}

function acrossGroups(input: ParsedStrip, { cover, stock }: Ground, pad: Pad): Crossing {
  const groups: Alike[] = [];
  let [crossed, all] = [0, true];
  const tied = (
    { bar, spacing }: ParsedBars,
    name: 'across' | 'ties',
    shape: Alike['shape'],
    l: Length,
  ): void => {
    checkStock(l, stock, name);
    const n = countOver(input, spacing, cover, `${name}.spacing`);
    groups.push(...alike(name === 'ties' ? 'tie' : name, shape, bar, l, n));
    crossed += n;
    all = all && !spacing.lessThan(FOOT());
  };
  const net = (side: Length): Length => side.minus(cover.times(TWO()));
  const { across, ties, depth, width } = input;
  if (across) {
    checkSpacing(across, 'across');
    tied(across, 'across', 'straight', net(width));
  }
  if (ties) {
    checkSpacing(ties, 'ties');
    if (!depth) return refuse('depth', faults.missing('depth', faults.examplesOf('length', 'depth')));
    const h = hooksOf(ties.hooks, depth, pad);
    const [a, b] = [net(width), net(depth)];
    const around = a.plus(b).times(TWO()).plus(h);
    pad.step('length of a tie', 't = 2 × (a + b) + h', { a, b, h }, around);
    tied(ties, 'ties', 'closed', around);
  }
  return { groups, crossed, all };
}

function hooksOf(given: Length | undefined, like: Length, pad: Pad): Length {
  if (given) return given;
  pad.assume({
    name: 'ties.hooks',
    value: USUAL_HOOKS,
    because: 'two hooks that hold the tie closed',
    override: 'Give ties.hooks as the bars are bent',
    source: COMMON_PRACTICE,
  });
  return USUAL_HOOKS.like(like);
}

function starterGroups(input: ParsedStrip, { cover, stock }: Ground): Alike[] {
  const { starters } = input;
  if (!starters) return [];
  checkSpacing(starters, 'starters');
  checkStock(starters.length, stock, 'starters.length');
  const n = countOver(input, starters.spacing, cover, 'starters.spacing');
  return alike('starter', 'one-bend', starters.bar, starters.length, n);
}

/** Ties: where lines cross bars, two to a lap, two to each leg at a corner, one to a starter. */
function tiesOf(
  input: ParsedStrip,
  { crossed, all }: Crossing,
  laps: number,
  bent: number,
  starters: number,
): Count {
  const crossings = crossed * input.lines.toNumber('each');
  return wholeNumber((all ? crossings : Math.ceil(crossings / 2)) + 2 * laps + 4 * bent + starters);
}

function heed(
  input: ParsedStrip,
  { cover, laps }: Ground,
  cut: { laps: number; inLine: number },
  pad: Pad,
): void {
  if (EARTH_COVER.undercutBy(cover)) pad.caution(earthCover(EARTH_COVER.like(cover), cover));
  checkAcross(input, cover, pad);
  if (cut.inLine > 0) pad.caution(lapsBeside(wholeNumber(cut.inLine)));
  if (laps.size > 0 && isHeavy(input.bar) && (cut.laps > 0 || input.strip.length > 1))
    pad.caution(cautions.noLapOfLargeBars);
  if (input.starters) pad.caution(cautions.impalement);
}

/** The lines must fit beside each other; within ties half of them lie at the top. */
function checkAcross(input: ParsedStrip, cover: Length, pad: Pad): void {
  const n = input.lines.toNumber('each');
  const beside = input.ties ? Math.ceil(n / 2) : n;
  if (beside < 2) return;
  const d = diameterOf(input.bar);
  const field = input.width.minus(cover.times(TWO())).minus(d);
  const clear = field.over(wholeNumber(beside - 1)).minus(d);
  if (clear.sign() <= 0) refuse('lines', faults.doesNotFit('the lines of bar', 'the width of the footing'));
  checkClear([{ clear, d }], pad);
}

/** Reckon the steel of a strip footing. */
export function reckonStrip(input: ParsedStrip, pad: Pad): RebarStripFigures {
  const ground = groundOf(input, pad);
  const { corners, step, laps: lapBySize } = ground;
  const lap = lapBySize.get(input.bar) as Length;
  const cut = cutStretches(input, ground);
  const bent = corners * input.lines.toNumber('each');
  if (bent > 0) checkStock(lap.times(TWO()), ground.stock, 'lap');
  const crossing = acrossGroups(input, ground, pad);
  const starters = starterGroups(input, ground);
  const groups = [
    ...lineGroups(cut, input.bar, step),
    ...crossing.groups,
    ...alike('corner', 'one-bend', input.bar, lap.times(TWO()), bent),
    ...starters,
  ];
  const list = listFigures(groups, ground, pad);
  const [laps, inLine] = [cut.reduce((n, c) => n + c.laps, 0), cut.reduce((n, c) => n + c.inLine, 0)];
  const ties = tiesOf(
    input,
    crossing,
    laps,
    bent,
    starters.reduce((n, s) => n + s.count, 0),
  );
  const apart = supportsOf(input.supports, input.bar, input.strip[0] as Length, pad);
  heed(input, ground, { laps, inLine }, pad);
  return {
    ...list,
    corners: wholeNumber(corners),
    laps: wholeNumber(laps),
    lapsInLine: wholeNumber(inLine),
    lap,
    ties,
    tieWire: tieWireFor(ties, input, pad),
    supports: wholeNumber(countOver(input, apart, ground.cover, 'supports')),
    cover: ground.cover,
  };
}

const besides = () => ({
  bar: barField('bar'),
  spacing: quantity('length', 'spacing', 'positive', DOWEL_SPACING),
});

/** The schema of the input. */
export const stripInput = (): Field<ParsedStrip> =>
  fields(
    {
      strip: list(quantity('length', 'stretch', 'positive', STRETCH), 1, STRETCHES),
      closed: maybe(yesOrNo('closed')),
      width: quantity('length', 'width', 'positive', FOOTING_WIDTH),
      depth: maybe(quantity('length', 'depth', 'positive', FOOTING_DEPTH)),
      bar: barField('bar'),
      lines: whole('lines', 1, MOST_LINES),
      across: maybe(fields(besides())),
      ties: maybe(fields({ ...besides(), hooks: maybe(quantity('length', 'hooks', 'not-negative', HOOKS)) })),
      starters: maybe(fields({ ...besides(), length: quantity('length', 'length', 'positive', STARTER) })),
      cover: maybe(quantity('length', 'cover', 'not-negative', COVER)),
      stockLength: maybe(quantity('length', 'stockLength', 'positive', STOCK_LENGTH)),
      lap: maybe(quantity('length', 'lap', 'positive', LAP)),
      cutTo: maybe(quantity('length', 'cutTo', 'positive', CUT_TO)),
      supports: maybe(quantity('length', 'supports', 'positive', SUPPORTS_APART)),
      wirePerTie: maybe(quantity('length', 'wirePerTie', 'positive', TIE)),
      wireWeight: maybe(quantity('mass-per-length', 'wireWeight', 'positive', TIE_WIRE)),
    },
    needs('ties', 'depth'),
  );

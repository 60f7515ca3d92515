/**
 * A mat over a rectangle by its sides: read into a mat over an outline and reckoned as one.
 *
 * Bars across a width `W` with cover `c` at both edges and spacing `s`: `ceil((W − 2c) ÷ s) + 1`,
 * each `L − 2c` long. A line longer than the stock is made of `k` pieces lapped by `l`,
 * `k = ceil((N − l) ÷ (S − l))`, and takes `N + (k − 1) × l` of bar.
 */

import * as faults from '../quantity/faults';
import { InputError } from '../quantity/input-error';
import { constant, length } from '../quantity/make';
import type { Quantity, QuantityInput } from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import { choice, type Field, fields, maybe, quantity, wholeNumber } from '../reckoning/fields';
import { type Limit, withinTimes } from '../reckoning/limits';
import { PLAN_LENGTH, SLAB_THICKNESS } from '../reckoning/ordinary';
import type { Pad } from '../reckoning/pad';
import { say } from '../reckoning/words';
import { barField } from './bar-field';
import { type AnyBarSize, type BarName, diameterOf, weightOf } from './bars';
import { CAST_AGAINST, type CastAgainst, EXPOSURES, type Exposure } from './cover';
import { CUT_TO, LAP, MAT_SPACING, STOCK_LENGTH, SUPPORTS_APART, TIE, TIE_WIRE } from './mat-ordinary';
import { COVER } from './ordinary';
import { LINE_LIMIT, type ParsedRegion } from './rebar-fields';
import { reckonRegion } from './rebar-region';
import type { MatLayer, MatLines, RebarRegionFigures } from './rebar-types';

/** Input of `rebarLayout` for a rectangle. */
export interface RebarLayoutInput {
  /** Length of the slab. */
  readonly length: QuantityInput<'length'>;
  /** Width of the slab. */
  readonly width: QuantityInput<'length'>;
  /** Bar size, both ways. */
  readonly bar: BarName;
  /** Bars that run across the length, where they differ. */
  readonly barAcross?: BarName;
  /** Center to center, both ways; the most that any two bars are apart. */
  readonly spacing: QuantityInput<'length'>;
  /** Center to center of the bars that run across the length, where it differs. */
  readonly spacingAcross?: QuantityInput<'length'>;
  /** From the edge of the slab to the end of a bar, and to the outermost bar; by default 3 in, or 75 mm. */
  readonly cover?: QuantityInput<'length'>;
  /** Length of the bars as bought; by default 20 ft, or 6 m. */
  readonly stockLength?: QuantityInput<'length'>;
  /** Overlap of two bars in a line; by default the larger of 40 diameters and 12 in, or 300 mm. */
  readonly lap?: QuantityInput<'length'>;
  /** Lengths are rounded down to a multiple of this; by default 1/16 in, or 1 mm. */
  readonly cutTo?: QuantityInput<'length'>;
  /** Thickness of the slab, to check the cover against. */
  readonly thickness?: QuantityInput<'length'>;
  /** Near the bottom of the slab or near its top; by default the bottom. */
  readonly layer?: MatLayer;
  /** From the face of the slab to the nearer bars, where the cover is to be checked. */
  readonly faceCover?: QuantityInput<'length'>;
  /** Whether the top of the slab is in the weather or inside a building; by default in the weather. */
  readonly exposure?: Exposure;
  /** What the edges are cast against, forms or the ground of the dig; without it the cover is told for both. */
  readonly edges?: CastAgainst;
  /** Between chairs or blocks, both ways; by default 4 ft, or 1.2 m; 3 ft, or 0.9 m, under #4 and thinner. */
  readonly supports?: QuantityInput<'length'>;
  /** Wire for one tie; by default 12 in, or 0.3 m. */
  readonly wirePerTie?: QuantityInput<'length'>;
  /** Weight of the wire; by default 1 lb for 79 ft, or 1 kg for 53 m. */
  readonly wireWeight?: QuantityInput<'mass-per-length'>;
}

/** The bars that run one way. */
export interface BarRun {
  /** How many lines of bar. */
  readonly lines: Quantity<'count'>;
  /** From end to end of a line. */
  readonly runLength: Quantity<'length'>;
  /** Pieces in a line, each as long as the stock allows: not bars to buy, from which several are cut. */
  readonly piecesPerRun: Quantity<'count'>;
  /** Bar in such a line, laps included. */
  readonly barPerRun: Quantity<'length'>;
  /** Center to center as it comes out with the lines spread evenly. */
  readonly evenSpacing: Quantity<'length'>;
}

/** Figures of `rebarLayout` for a rectangle: those over an outline, with the two ways by themselves. */
export interface RebarLayoutFigures extends RebarRegionFigures {
  /** Bars that run along the length. */
  readonly along: BarRun;
  /** Bars that run across, along the width. */
  readonly across: BarRun;
  /** Nominal weight of the bar that runs along. */
  readonly unitWeight: Quantity<'mass-per-length'>;
  /** Lap of the bar that runs along. */
  readonly lap: Quantity<'length'>;
}

type Length = Quantity<'length'>;
type Count = Quantity<'count'>;

/** The input, read. */
export interface ParsedRectangle {
  readonly length: Length;
  readonly width: Length;
  readonly bar: AnyBarSize;
  readonly barAcross: AnyBarSize | undefined;
  readonly spacing: Length;
  readonly spacingAcross: Length | undefined;
  readonly cover: Length | undefined;
  readonly stockLength: Length | undefined;
  readonly lap: Length | undefined;
  readonly cutTo: Length | undefined;
  readonly thickness: Length | undefined;
  readonly layer: MatLayer | undefined;
  readonly faceCover: Length | undefined;
  readonly exposure: Exposure | undefined;
  readonly edges: CastAgainst | undefined;
  readonly supports: Length | undefined;
  readonly wirePerTie: Length | undefined;
  readonly wireWeight: Quantity<'mass-per-length'> | undefined;
}

const ONE = constant(() => wholeNumber(1));
const TWO = constant(() => wholeNumber(2));
const NOTHING = constant(() => length('0 in'));

/** The same mat over an outline; every bar is laid, and edges and corners have their lines already. */
function asRegion(input: ParsedRectangle): ParsedRegion {
  const { length: long, width, bar, barAcross, spacing, spacingAcross, layer, faceCover } = input;
  const mat = {
    layer: layer ?? ('bottom' as const),
    bar,
    barAcross,
    spacing,
    lines: undefined,
    spacingAcross,
    linesAcross: undefined,
    angle: undefined,
    angleAcross: undefined,
    faceCover,
  };
  return {
    outline: { shape: 'rectangle', length: long, width },
    openings: undefined,
    mats: [mat],
    cover: input.cover,
    stockLength: input.stockLength,
    lap: input.lap,
    edgeBars: false,
    cornerBars: wholeNumber(0),
    cornerBarLength: undefined,
    cutTo: input.cutTo,
    shortest: NOTHING(),
    thickness: input.thickness,
    exposure: input.exposure,
    edges: input.edges,
    dowels: undefined,
    steps: undefined,
    supports: input.supports,
    wirePerTie: input.wirePerTie,
    wireWeight: input.wireWeight,
  };
}

/** Bars side by side, one way. */
export const RUN_LIMIT: Limit = { of: 'the mat in bars', most: LINE_LIMIT };

function checkLines(side: Length, spacing: Length, path: string): void {
  withinTimes(RUN_LIMIT, side.over(spacing), path);
}

/** Faults are told by the names of this form; the outline would tell them by its own. */
function check(input: ParsedRectangle): void {
  const { length: long, width, spacing } = input;
  if (input.cover) {
    const twice = input.cover.times(TWO());
    for (const side of ['length', 'width'] as const) {
      if (!twice.lessThan(input[side])) refuse('cover', faults.doesNotFit('twice the cover', `the ${side}`));
    }
  }
  const ways = [
    ['spacing', spacing, input.bar],
    ['spacingAcross', input.spacingAcross ?? spacing, input.barAcross ?? input.bar],
  ] as const;
  for (const [name, s, bar] of ways) {
    const path = input[name] ? name : 'spacing';
    if (!diameterOf(bar).lessThan(s)) refuse(path, faults.doesNotFit('the bar', 'its spacing'));
    checkLines(name === 'spacing' ? width : long, s, path);
  }
}

interface Run {
  readonly name: string;
  readonly side: Length;
  readonly lines: MatLines;
  readonly lap: Length;
}

interface Laid {
  readonly cover: Length;
  readonly stock: Length;
}

function runOf({ name, side: a, lines, lap: l }: Run, { cover: c, stock: S }: Laid, pad: Pad): BarRun {
  const N = a.minus(c.times(TWO()));
  pad.step(say`length of a line ${{ name }}`, 'N = a − 2 × c', { a, c }, N);
  const [k, barPerRun] = piecesOf(N, S, l, pad, name);
  return { lines: lines.lines, runLength: N, piecesPerRun: k, barPerRun, evenSpacing: lines.evenSpacing };
}

function piecesOf(N: Length, S: Length, l: Length, pad: Pad, name: string): [Count, Length] {
  if (!N.greaterThan(S)) return [ONE(), N];
  const [far, step] = [N.minus(l), S.minus(l)];
  const k = wholeNumber(Math.round(far.upTo(step).over(step).toNumber(':1')));
  pad.step(say`pieces in a line ${{ name }}`, 'k = ceil((N − l) ÷ (S − l))', { N, l, S }, k);
  const bar = N.plus(l.times(k.minus(ONE())));
  pad.step(say`bar in a line ${{ name }}`, 'b = N + (k − 1) × l', { N, k, l }, bar);
  return [k, bar];
}

/** What the engine refuses, at the field of this form that it came from. */
function inOwnNames<T>(work: () => T): T {
  try {
    return work();
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    const own = (path: string): string => path.replace(/^mats\[0\]\./, '').replace(/^outline$/, 'length');
    throw new InputError(error.issues.map((issue) => ({ ...issue, path: own(issue.path) })));
  }
}

/** Reckon a mat over a rectangle. */
export function reckonRectangle(input: ParsedRectangle, pad: Pad): RebarLayoutFigures {
  check(input);
  const region = inOwnNames(() => reckonRegion(asRegion(input), pad));
  const [mat] = region.mats as unknown as readonly [RebarRegionFigures['mats'][number]];
  const sizeOf = (bar: AnyBarSize): RebarRegionFigures['sizes'][number] =>
    region.sizes.find((size) => size.bar === bar) as RebarRegionFigures['sizes'][number];
  const own = sizeOf(input.bar);
  const laid = { cover: region.cover, stock: own.stockLength };
  const lapAcross = sizeOf(input.barAcross ?? input.bar).lap;
  const along = { name: 'along', side: input.length, lines: mat.along, lap: own.lap };
  const across = { name: 'across', side: input.width, lines: mat.across, lap: lapAcross };
  return {
    along: runOf(along, laid, pad),
    across: runOf(across, laid, pad),
    ...region,
    unitWeight: weightOf(input.bar),
    lap: own.lap,
  };
}

/** The schema of the input. */
export const rectangleInput = (): Field<ParsedRectangle> =>
  fields({
    length: quantity('length', 'length', 'positive', PLAN_LENGTH),
    width: quantity('length', 'width', 'positive', PLAN_LENGTH),
    bar: barField('bar'),
    barAcross: maybe(barField('barAcross')),
    spacing: quantity('length', 'spacing', 'positive', MAT_SPACING),
    spacingAcross: maybe(quantity('length', 'spacingAcross', 'positive', MAT_SPACING)),
    cover: maybe(quantity('length', 'cover', 'not-negative', COVER)),
    stockLength: maybe(quantity('length', 'stockLength', 'positive', STOCK_LENGTH)),
    lap: maybe(quantity('length', 'lap', 'positive', LAP)),
    cutTo: maybe(quantity('length', 'cutTo', 'positive', CUT_TO)),
    thickness: maybe(quantity('length', 'thickness', 'positive', SLAB_THICKNESS)),
    layer: maybe(choice('layer', ['bottom', 'top'] as const)),
    faceCover: maybe(quantity('length', 'faceCover', 'positive', COVER)),
    exposure: maybe(choice('exposure', EXPOSURES)),
    edges: maybe(choice('edges', CAST_AGAINST)),
    supports: maybe(quantity('length', 'supports', 'positive', SUPPORTS_APART)),
    wirePerTie: maybe(quantity('length', 'wirePerTie', 'positive', TIE)),
    wireWeight: maybe(quantity('mass-per-length', 'wireWeight', 'positive', TIE_WIRE)),
  });

/**
 * Mats of bars over any outline with openings, with the bars around them: the second kind of input of
 * `rebar-layout`.
 *
 * Lines of bar are spread evenly over the outline less its cover, at most the spacing apart, and
 * clipped where they come nearer to an edge than the cover. They are searched for in binary
 * numbers and rounded down to whole cutting steps, 1/16 in or 1 mm unless another is given, so
 * reported lengths are exact and at most one step short of what would fit.
 */

import { type OutlineInput, outline } from '../geometry/outline';
import { type OpeningInput, openings, type Region, type Rings, ringsOf } from '../geometry/region';
import { Decimal } from '../quantity/decimal';
import * as faults from '../quantity/faults';
import { constant, length, mass, ratio } from '../quantity/make';
import {
  canonicalValue,
  type Quantity,
  type QuantityInput,
  quantityOf,
  systemOfQuantity,
  unitShown,
} from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import * as cautions from '../reckoning/cautions';
import {
  choice,
  type Field,
  fields,
  list,
  maybe,
  quantity,
  whole,
  wholeNumber,
  yesOrNo,
} from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { COMMON_PRACTICE, TIE_WIRE_COURSE } from '../reckoning/source';
import { BAR_SIZES, type BarSize, diameterOf, weightOf } from './bars';
import { metresLike } from './common';
import {
  type LineRule,
  layMat,
  type MatBar,
  type MatRule,
  type PlacedLines,
  type PlacedMat,
  supportsUnder,
} from './mat';
import { type Spot, spotsOf } from './mat-clip';
import { COVER, coverOf, lapOf, stockOf, WIDE } from './mat-defaults';
import { stepsIn, TooManyBars } from './mat-laps';

/** Near the bottom of the slab or near its top. */
export type MatLayer = 'bottom' | 'top';

/** A mat of bars in two directions. */
export interface MatInput {
  /** Where in the slab the mat lies. */
  readonly layer: MatLayer;
  /** Size of the bars that run along, and across by default. */
  readonly bar: BarSize;
  /** Bars that run across, where they differ. */
  readonly barAcross?: BarSize;
  /** Centre to centre at most; give this or `lines`. */
  readonly spacing?: QuantityInput<'length'>;
  /** How many lines run along. */
  readonly lines?: number;
  /** Of the bars that run across; by default as along. */
  readonly spacingAcross?: QuantityInput<'length'>;
  /** How many lines run across. */
  readonly linesAcross?: number;
  /** Direction of the bars along, anticlockwise from x; by default along x. */
  readonly angle?: QuantityInput<'angle'>;
  /** Direction of the bars across; by default square to the others. */
  readonly angleAcross?: QuantityInput<'angle'>;
  /** From the face of the slab to the nearer bars, where the thickness is to be checked. */
  readonly faceCover?: QuantityInput<'length'>;
}

/** Bars that tie the slab to what it is cast against, along one side. */
export interface MatDowelInput {
  /** Which side: 1 is that from the first corner of the outline to the second, anticlockwise. */
  readonly side: number;
  /** Size of the bars. */
  readonly bar: BarSize;
  /** Centre to centre at most. */
  readonly spacing: QuantityInput<'length'>;
  /** Length of each bar, both sides of the joint together. */
  readonly length: QuantityInput<'length'>;
  /** From the ends of the side to the first bar; by default half the spacing. */
  readonly endDistance?: QuantityInput<'length'>;
}

/** Bars in steps that are cast with the slab. */
export interface MatStepsInput {
  /** How many risers; each has a nosing bar. */
  readonly risers: number;
  /** Length of each step. */
  readonly width: QuantityInput<'length'>;
  /** Size of all bars in the steps. */
  readonly bar: BarSize;
  /** Bars along each tread besides the one at the nosing; by default 1. */
  readonly treadBars?: number;
  /** Between bent starters from the slab; leave out for none. */
  readonly starterSpacing?: QuantityInput<'length'>;
  /** Each leg of a starter; by default the lap of its bar. */
  readonly starterLeg?: QuantityInput<'length'>;
}

/** Input of `rebarLayout` for any outline. */
export interface RebarRegionInput {
  /** Outer edge of the slab. */
  readonly outline: OutlineInput;
  /** Holes in the slab, from which bars keep the cover; none by default. */
  readonly openings?: readonly OpeningInput[];
  /** One mat, or a bottom and a top mat. */
  readonly mats: readonly MatInput[];
  /** From an edge to the end of a bar and to the outermost bar; by default 3 in. */
  readonly cover?: QuantityInput<'length'>;
  /** Length of the bars as bought; by default 20 ft. */
  readonly stockLength?: QuantityInput<'length'>;
  /** Overlap of two bars in a line; by default the larger of 40 diameters and 12 in of each size. */
  readonly lap?: QuantityInput<'length'>;
  /** Bars along every edge that no line of the mat lies on; by default yes. */
  readonly edgeBars?: boolean;
  /** Bars across each corner that juts into the slab; by default one. */
  readonly cornerBars?: number;
  /** Length of these; by default 4 ft. */
  readonly cornerBarLength?: QuantityInput<'length'>;
  /** Lengths are rounded down to a multiple of this; by default 1/16 in, or 1 mm. */
  readonly cutTo?: QuantityInput<'length'>;
  /** Shorter bars are left out; by default half the spacing, at most 12 in. */
  readonly shortest?: QuantityInput<'length'>;
  /** Thickness of the slab, to check the mats against. */
  readonly thickness?: QuantityInput<'length'>;
  /** Bars into what the slab is cast against, side by side; none by default. */
  readonly dowels?: readonly MatDowelInput[];
  /** Steps cast with the slab; none by default. */
  readonly steps?: MatStepsInput;
  /** Between chairs or blocks, both ways; by default 4 ft. */
  readonly supports?: QuantityInput<'length'>;
  /** Wire for one tie; by default 0.30 m. */
  readonly wirePerTie?: QuantityInput<'length'>;
  /** Weight of the wire; by default 1 kg for 53 m. */
  readonly wireWeight?: QuantityInput<'mass-per-length'>;
}

/** What a bar is there for. */
export type MarkUse = 'along' | 'across' | 'edge' | 'corner' | 'dowel' | 'nosing' | 'tread' | 'starter';

/** Bars that are alike. */
export interface BarMark {
  /** Mark on the bar list: `BL3` is bottom mat, along, third longest. */
  readonly mark: string;
  /** The mat that it belongs to; left out for dowels and steps. */
  readonly layer?: MatLayer;
  /** What the bars are there for. */
  readonly use: MarkUse;
  /** Size of the bars. */
  readonly bar: BarSize;
  /** Straight, bent to follow an edge, or bent once. */
  readonly shape: 'straight' | 'follows-edge' | 'one-bend';
  /** Length of each bar, along the bar where it is bent. */
  readonly length: Quantity<'length'>;
  /** How many bars. */
  readonly count: Quantity<'count'>;
  /** All of them end to end. */
  readonly totalLength: Quantity<'length'>;
  /** Weight of all of them. */
  readonly weight: Quantity<'mass'>;
}

/** The lines that run one way. */
export interface MatLines {
  /** From the first place to the last. */
  readonly lines: Quantity<'count'>;
  /** Centre to centre; exact along the axes, else to a millionth of a metre. */
  readonly evenSpacing: Quantity<'length'>;
  /** Between the faces of two bars. */
  readonly clearSpacing: Quantity<'length'>;
}

/** A mat as it comes out. */
export interface MatFigures {
  /** Where in the slab the mat lies. */
  readonly layer: MatLayer;
  /** Lines that run along. */
  readonly along: MatLines;
  /** Lines that run across. */
  readonly across: MatLines;
  /** Places where a line along crosses a line across. */
  readonly crossings: Quantity<'count'>;
  /** Every crossing where the bars are a foot or more apart both ways, else every other. */
  readonly ties: Quantity<'count'>;
  /** Laps in the lines, edge bars and corner bars. */
  readonly laps: Quantity<'count'>;
  /** Laps beside a lap of the next line: none unless the stock is short for its lap. */
  readonly lapsInLine: Quantity<'count'>;
  /** Chairs or blocks under this mat. */
  readonly supports: Quantity<'count'>;
}

/** Bar of one size in all. */
export interface SizeTotal {
  /** Size of the bars. */
  readonly bar: BarSize;
  /** All bars of the size end to end, laps included. */
  readonly length: Quantity<'length'>;
  /** Weight of all bars of the size. */
  readonly weight: Quantity<'mass'>;
  /** Overlap of two bars of the size. */
  readonly lap: Quantity<'length'>;
}

/** Figures of `rebarLayout` for any outline. */
export interface RebarRegionFigures {
  /** The bar list. */
  readonly bars: readonly BarMark[];
  /** Length and weight by bar size, smallest first. */
  readonly sizes: readonly SizeTotal[];
  /** How many bars. */
  readonly pieces: Quantity<'count'>;
  /** Bar in all, laps included, with nothing for waste. */
  readonly totalLength: Quantity<'length'>;
  /** Weight of all bars, laps included. */
  readonly weight: Quantity<'mass'>;
  /** Each mat as it comes out, in the order given. */
  readonly mats: readonly MatFigures[];
  /** Crossings of two lines in all mats. */
  readonly intersections: Quantity<'count'>;
  /** Every crossing where the bars are a foot or more apart, else every other. */
  readonly ties: Quantity<'count'>;
  /** Wire for all ties. */
  readonly tieWire: Quantity<'mass'>;
  /** Chairs or blocks. */
  readonly supports: Quantity<'count'>;
}

type Length = Quantity<'length'>;
type Count = Quantity<'count'>;

interface ParsedMat {
  readonly layer: MatLayer;
  readonly bar: BarSize;
  readonly barAcross: BarSize | undefined;
  readonly spacing: Length | undefined;
  readonly lines: Count | undefined;
  readonly spacingAcross: Length | undefined;
  readonly linesAcross: Count | undefined;
  readonly angle: Quantity<'angle'> | undefined;
  readonly angleAcross: Quantity<'angle'> | undefined;
  readonly faceCover: Length | undefined;
}

interface ParsedDowels {
  readonly side: Count;
  readonly bar: BarSize;
  readonly spacing: Length;
  readonly length: Length;
  readonly endDistance: Length | undefined;
}

interface ParsedSteps {
  readonly risers: Count;
  readonly width: Length;
  readonly bar: BarSize;
  readonly treadBars: Count | undefined;
  readonly starterSpacing: Length | undefined;
  readonly starterLeg: Length | undefined;
}

/** The input, read. */
export interface ParsedRegion extends Region {
  readonly mats: readonly ParsedMat[];
  readonly cover: Length | undefined;
  readonly stockLength: Length | undefined;
  readonly lap: Length | undefined;
  readonly edgeBars: boolean | undefined;
  readonly cornerBars: Count | undefined;
  readonly cornerBarLength: Length | undefined;
  readonly cutTo: Length | undefined;
  readonly shortest: Length | undefined;
  readonly thickness: Length | undefined;
  readonly dowels: readonly ParsedDowels[] | undefined;
  readonly steps: ParsedSteps | undefined;
  readonly supports: Length | undefined;
  readonly wirePerTie: Length | undefined;
  readonly wireWeight: Quantity<'mass-per-length'> | undefined;
}

/** Bars in all mats together. */
const BAR_LIMIT = 200_000;
const LINE_LIMIT = 100_000;
/** Each side is looked at for each other one. */
const CORNER_LIMIT = 3_000;
const DOWEL_LIMIT = 100_000;
/** Binary metres are exact enough up to here. */
const FARTHEST = constant(() => new Decimal(100_000));
const SIXTEENTH = constant(() => length('1/16 in'));
const MILLIMETRE = constant(() => length('1 mm'));
const CORNER_LENGTH = constant(() => length('4 ft'));
const SUPPORTS = constant(() => length('4 ft'));
const FOOT = constant(() => length('1 ft'));
const INCH = constant(() => length('1 in'));
const WIRE = constant(() => length('0.3 m'));
const WIRE_WEIGHT = constant(() => mass('1 kg').over(length('53 m')));
const ONE = constant(() => wholeNumber(1));
const TWO = constant(() => wholeNumber(2));

const metres = (q: Length): number => canonicalValue(q).toNumber();

/** What the mats are laid by, read and defaulted. */
interface Ground {
  readonly rings: Rings;
  readonly cover: Length;
  readonly stock: Length;
  readonly step: Length;
  readonly laps: ReadonlyMap<BarSize, Length>;
}

function stepOf(input: ParsedRegion, like: Length, pad: Pad): Length {
  if (input.cutTo) return input.cutTo;
  const step = systemOfQuantity(like) === 'metric' ? MILLIMETRE() : SIXTEENTH();
  pad.assume({
    name: 'cutTo',
    value: step.format(),
    because: 'bars are not cut closer than this',
    override: 'Give cutTo, for example 1 in, for fewer marks',
    source: COMMON_PRACTICE,
  });
  return step;
}

function sizesOf({ mats, dowels, steps }: ParsedRegion): BarSize[] {
  const used = new Set<BarSize>([
    ...mats.flatMap((m) => [m.bar, m.barAcross ?? m.bar]),
    ...(dowels ?? []).map((d) => d.bar),
    ...(steps ? [steps.bar] : []),
  ]);
  return BAR_SIZES.filter((size) => used.has(size));
}

function groundOf(input: ParsedRegion, pad: Pad): Ground {
  const rings = ringsOf(input);
  if (rings.outer.some(({ x, y }) => x.abs().greaterThan(FARTHEST()) || y.abs().greaterThan(FARTHEST()))) {
    refuse('outline', faults.outOfRange('the outline'));
  }
  const corners = rings.openings.reduce((n, ring) => n + ring.length, rings.outer.length);
  if (corners > CORNER_LIMIT)
    refuse('outline', faults.tooMany('the outline with its openings in corners', CORNER_LIMIT));
  const cover = coverOf(input.cover, pad);
  const stock = stockOf(input.stockLength, pad);
  const step = stepOf(input, input.cover ?? input.mats[0]?.spacing ?? cover, pad);
  const laps = new Map(sizesOf(input).map((size) => [size, lapOf(input.lap, size, pad)]));
  for (const lap of laps.values()) {
    if (!lap.lessThan(stock)) refuse('lap', faults.doesNotFit('the lap', 'the stock length'));
  }
  if (!step.lessThan(stock)) refuse('cutTo', faults.doesNotFit('the cutting step', 'the stock length'));
  return { rings, cover, stock, step, laps };
}

function lineRule(
  bar: BarSize,
  spacing: Length | undefined,
  lines: Count | undefined,
  degrees: number,
  { stock, step, laps }: Ground,
): LineRule {
  const each = metres(step);
  const lap = laps.get(bar) as Length;
  const cut = { step: each, stock: stepsIn(metres(stock), each), lap: Math.ceil(metres(lap) / each - 1e-6) };
  const most = lines ? { lines: lines.toNumber('each') } : { spacing: metres(spacing as Length) };
  return { degrees, cut, ...most };
}

/** Exactly one of a spacing and a number of lines; across, neither means as along. */
function checkGiven(mat: ParsedMat, path: string): void {
  if ((mat.spacing === undefined) === (mat.lines === undefined)) {
    refuse(path, faults.giveOneOf(['spacing', 'lines']));
  }
  if (mat.spacingAcross && mat.linesAcross) refuse(path, faults.giveOneOf(['spacingAcross', 'linesAcross']));
  if (mat.lines && !mat.spacingAcross && !mat.linesAcross) {
    refuse(path, faults.giveOneOf(['spacingAcross', 'linesAcross']));
  }
  const spacings = [
    ['spacing', mat.spacing, mat.bar],
    ['spacingAcross', mat.spacingAcross, mat.barAcross ?? mat.bar],
  ] as const;
  for (const [name, spacing, bar] of spacings) {
    if (spacing && !diameterOf(bar).lessThan(spacing)) {
      refuse(`${path}.${name}`, faults.doesNotFit('the bar', 'its spacing'));
    }
  }
}

function anglesOf(mat: ParsedMat, path: string): [number, number] {
  const along = mat.angle?.toNumber('deg') ?? 0;
  const across = mat.angleAcross?.toNumber('deg') ?? along + 90;
  const apart = Math.abs((((across - along) % 180) + 180) % 180);
  if (apart < LEAST_ANGLE || apart > 180 - LEAST_ANGLE) {
    refuse(`${path}.angleAcross`, faults.doesNotFit('10 degrees', 'the angle between the two ways'));
  }
  return [along, across];
}

const LEAST_ANGLE = 10;

function shortestOf(input: ParsedRegion, mat: ParsedMat): number {
  if (input.shortest) return metres(input.shortest);
  const foot = metres(FOOT());
  const spacings = [mat.spacing, mat.spacingAcross].flatMap((s) => (s ? [metres(s) / 2] : []));
  return Math.min(foot, ...spacings);
}

function matRule(input: ParsedRegion, mat: ParsedMat, i: number, ground: Ground): MatRule {
  const path = `mats[${i}]`;
  checkGiven(mat, path);
  const [along, across] = anglesOf(mat, path);
  const spacingAcross = mat.linesAcross ? undefined : (mat.spacingAcross ?? mat.spacing);
  return {
    rings: spotsOf(ground.rings),
    cover: metres(ground.cover),
    along: lineRule(mat.bar, mat.spacing, mat.lines, along, ground),
    across: lineRule(mat.barAcross ?? mat.bar, spacingAcross, mat.linesAcross, across, ground),
    edges: input.edgeBars ?? true,
    cornerLength: metres(input.cornerBarLength ?? CORNER_LENGTH()),
    cornerCount: input.cornerBars?.toNumber('each') ?? 1,
    shortest: shortestOf(input, mat),
    limit: BAR_LIMIT,
  };
}

/** A mat with what it was laid by. */
interface Laid {
  readonly mat: ParsedMat;
  readonly rule: MatRule;
  readonly placed: PlacedMat;
}

function layAll(input: ParsedRegion, ground: Ground): Laid[] {
  const rules = input.mats.map((mat, i) => matRule(input, mat, i, ground));
  const laid: Laid[] = [];
  let left = BAR_LIMIT;
  rules.forEach((rule, i) => {
    const placed = bounded(`mats[${i}].spacing`, () => layMat({ ...rule, limit: left }));
    left -= placed.bars.length;
    if (placed.along.lines === 0 || placed.across.lines === 0) {
      refuse('cover', faults.doesNotFit('twice the cover', 'the slab'));
    }
    laid.push({ mat: input.mats[i] as ParsedMat, rule, placed });
  });
  return laid;
}

function bounded<T>(path: string, work: () => T): T {
  try {
    return work();
  } catch (error) {
    if (error instanceof TooManyBars) return refuse(path, faults.tooMany('the mats in bars', BAR_LIMIT));
    throw error;
  }
}

/** Bars alike, before they have a mark. */
interface Alike {
  readonly layer: MatLayer | undefined;
  readonly use: MarkUse;
  readonly bar: BarSize;
  readonly shape: BarMark['shape'];
  readonly length: Length;
  count: number;
}

const sizeFor = (mat: ParsedMat, use: MatBar['use']): BarSize =>
  use === 'across' ? (mat.barAcross ?? mat.bar) : mat.bar;

const LETTERS: Record<MarkUse, string> = {
  along: 'L',
  across: 'C',
  edge: 'E',
  corner: 'K',
  dowel: 'D',
  nosing: 'N',
  tread: 'T',
  starter: 'S',
};

/** `BL3`: bottom mat, along, the third of its lengths. */
const prefixOf = ({ layer, use }: Alike): string =>
  `${layer === 'bottom' ? 'B' : layer === 'top' ? 'T' : ''}${LETTERS[use]}`;

/** The mark of each placed bar of a mat needs its group, so groups are kept by key. */
const keyOf = (mat: ParsedMat, { use, bent, steps }: MatBar): string =>
  `${mat.layer} ${use} ${sizeFor(mat, use)} ${bent ? 'follows-edge' : 'straight'} ${steps}`;

function grouped(laid: readonly Laid[], step: Length): Map<string, Alike> {
  const groups = new Map<string, Alike>();
  for (const { mat, placed } of laid) {
    for (const placedBar of placed.bars) {
      const { use, steps, bent } = placedBar;
      const key = keyOf(mat, placedBar);
      const known = groups.get(key);
      if (known) known.count += 1;
      else {
        groups.set(key, {
          layer: mat.layer,
          use,
          bar: sizeFor(mat, use),
          shape: bent ? 'follows-edge' : 'straight',
          length: step.times(wholeNumber(steps)).in(unitShown(step).system === 'metric' ? 'm' : 'ft-in'),
          count: 1,
        });
      }
    }
  }
  return groups;
}

const ORDER: readonly MarkUse[] = [
  'along',
  'across',
  'edge',
  'corner',
  'dowel',
  'nosing',
  'tread',
  'starter',
];

const rank = ({ layer, use }: Alike): number =>
  ORDER.indexOf(use) + (layer === 'bottom' ? 0 : layer === 'top' ? 10 : 20);

/** In the order of the list, each with its mark. */
function marked(groups: readonly Alike[]): Map<Alike, string> {
  const order = [...groups].sort((a, b) => rank(a) - rank(b) || b.length.compareTo(a.length));
  const counts = new Map<string, number>();
  return new Map(
    order.map((group) => {
      const prefix = prefixOf(group);
      const n = (counts.get(prefix) ?? 0) + 1;
      counts.set(prefix, n);
      return [group, `${prefix}${n}`];
    }),
  );
}

/** A bar in its place, for drawing and for checking: plain metres, not figures. */
export interface BarPlace {
  /** Mark on the bar list. */
  readonly mark: string;
  /** The mat that it belongs to. */
  readonly layer: MatLayer;
  /** What the bar is there for. */
  readonly use: MarkUse;
  /** Size of the bar. */
  readonly bar: BarSize;
  /** Two ends, or more corners where it follows an edge; metres, as the outline lies. */
  readonly path: readonly {
    /** Along x, in metres, as the outline lies. */
    readonly x: number;
    /** Along y, in metres, as the outline lies. */
    readonly y: number;
  }[];
}

/** Bars in their places, with the rings that they lie in. */
export interface MatSheet {
  readonly places: BarPlace[];
  readonly rings: readonly (readonly Spot[])[];
}

/** Where the bars of laid mats lie. */
export function placesOf(input: ParsedRegion, pad: Pad): MatSheet {
  const ground = groundOf(input, pad);
  const laid = layAll(input, ground);
  const groups = grouped(laid, ground.step);
  const marks = marked([...groups.values()]);
  const places = laid.flatMap(({ mat, placed }) =>
    placed.bars.map((placedBar): BarPlace => {
      const group = groups.get(keyOf(mat, placedBar)) as Alike;
      const { use, spots } = placedBar;
      return { mark: marks.get(group) ?? '', layer: mat.layer, use, bar: group.bar, path: spots };
    }),
  );
  return { places, rings: spotsOf(ground.rings) };
}

function countAlong(run: Length, spacing: Length, end: Length, path: string): number {
  const room = run.minus(end.times(TWO()));
  if (room.sign() < 0) return refuse(path, faults.doesNotFit('twice the end distance', 'the side'));
  if (room.over(spacing).greaterThan(ratio(`${DOWEL_LIMIT}:1`))) {
    refuse(path, faults.tooMany('the side in bars', DOWEL_LIMIT));
  }
  return Math.round(room.upTo(spacing).over(spacing).toNumber(':1')) + 1;
}

function checkStock(piece: Length, stock: Length, path: string): void {
  if (!piece.greaterThan(stock)) return;
  refuse(
    path,
    faults.stockTooShort(`a bar of ${piece.format()} that has no lap`, 'give a longer stockLength'),
  );
}

function dowelGroups(input: ParsedRegion, { rings, stock, cover }: Ground): Alike[] {
  return (input.dowels ?? []).map((dowel, i): Alike => {
    const path = `dowels[${i}]`;
    const n = dowel.side.toNumber('each');
    const [a, b] = [rings.outer[n - 1], rings.outer[n % rings.outer.length]];
    if (!a || !b) return refuse(`${path}.side`, faults.notACount('side', 1, rings.outer.length));
    const run = metresLike(Decimal.hypot(b.x.minus(a.x), b.y.minus(a.y)), cover);
    if (!diameterOf(dowel.bar).lessThan(dowel.spacing)) {
      refuse(`${path}.spacing`, faults.doesNotFit('the bar', 'its spacing'));
    }
    const end = dowel.endDistance ?? dowel.spacing.over(TWO());
    const count = countAlong(run, dowel.spacing, end, `${path}.spacing`);
    checkStock(dowel.length, stock, `${path}.length`);
    return { layer: undefined, use: 'dowel', bar: dowel.bar, shape: 'straight', length: dowel.length, count };
  });
}

function stepGroups(steps: ParsedSteps | undefined, { cover, stock, laps }: Ground, pad: Pad): Alike[] {
  if (!steps) return [];
  const { bar, width, risers } = steps;
  const long = width.minus(cover.times(TWO()));
  if (long.sign() <= 0)
    return refuse('steps.width', faults.doesNotFit('twice the cover', 'the width of the steps'));
  checkStock(long, stock, 'steps.width');
  const n = risers.toNumber('each');
  const alike = (use: MarkUse, shape: BarMark['shape'], l: Length, count: number): Alike[] =>
    count > 0 ? [{ layer: undefined, use, bar, shape, length: l, count }] : [];
  const treads = steps.treadBars ?? ONE();
  if (!steps.treadBars) {
    pad.assume({
      name: 'steps.treadBars',
      value: treads.format(),
      because: 'one bar along each tread besides the one at its nosing',
      override: 'Give steps.treadBars from the plans',
      source: COMMON_PRACTICE,
    });
  }
  const leg = steps.starterLeg ?? (laps.get(bar) as Length);
  const spacing = steps.starterSpacing;
  const starters = spacing ? countAlong(width, spacing, cover, 'steps.starterSpacing') : 0;
  checkStock(leg.times(TWO()), stock, 'steps.starterLeg');
  return [
    ...alike('nosing', 'straight', long, n),
    ...alike('tread', 'straight', long, n * treads.toNumber('each')),
    ...alike('starter', 'one-bend', leg.times(TWO()), starters),
  ];
}

function markFigures(groups: readonly Alike[]): BarMark[] {
  return [...marked(groups)].map(([group, mark]) => {
    const { layer, use, bar, shape, length: l } = group;
    const count = wholeNumber(group.count);
    const totalLength = l.times(count);
    return {
      mark,
      ...(layer ? { layer } : {}),
      use,
      bar,
      shape,
      length: l,
      count,
      totalLength,
      weight: totalLength.times(weightOf(bar)),
    };
  });
}

function sizeTotals(bars: readonly BarMark[], { laps, step }: Ground, pad: Pad): SizeTotal[] {
  const zero = metresLike(new Decimal(0), bars[0]?.length ?? step);
  return BAR_SIZES.flatMap((bar) => {
    const own = bars.filter((b) => b.bar === bar);
    if (own.length === 0) return [];
    const T = own.reduce((sum, b) => sum.plus(b.totalLength), zero);
    const u = weightOf(bar);
    const weight = pad.step(`weight of ${bar}`, 'M = T × u', { T, u }, T.times(u));
    return [{ bar, length: T, weight, lap: laps.get(bar) as Length }];
  });
}

/** Exact where the direction is along an axis, else to a millionth of a metre. */
function evenSpacingOf(placed: PlacedLines, degrees: number, { rings, cover }: Ground): Length {
  const gaps = placed.lines - 1;
  if (gaps <= 0) return metresLike(new Decimal(0), cover);
  if (!Number.isInteger(degrees / 90)) return metresLike(new Decimal(placed.evenSpacing.toFixed(6)), cover);
  const across = rings.outer.map(({ x, y }) => (Number.isInteger(degrees / 180) ? y : x));
  const field = Decimal.max(...across)
    .minus(Decimal.min(...across))
    .minus(canonicalValue(cover).times(2));
  return metresLike(field.div(gaps), cover);
}

/** Lines at a spacing, along an axis, where the distance that they spread over is exact. */
function noteLines(even: Length, lines: Count, spacing: Length | undefined, rule: LineRule, pad: Pad): void {
  if (!spacing || !Number.isInteger(rule.degrees / 90)) return;
  const w = even.times(lines.minus(ONE()));
  const what = 'lines over a distance w less the covers';
  pad.step(what, 'n = ceil(w ÷ s) + 1', { w, s: spacing }, lines);
}

interface Way {
  readonly placed: PlacedLines;
  readonly rule: LineRule;
  readonly bar: BarSize;
  readonly spacing: Length | undefined;
}

function linesFigure({ placed, rule, bar, spacing }: Way, ground: Ground, pad: Pad): MatLines {
  const even = evenSpacingOf(placed, rule.degrees, ground);
  const lines = wholeNumber(placed.lines);
  noteLines(even, lines, spacing, rule, pad);
  const clear = placed.lines > 1 ? even.minus(diameterOf(bar)) : even;
  const d = diameterOf(bar);
  const least = d.lessThan(INCH()) ? INCH() : d;
  if (placed.lines > 1 && clear.lessThan(least)) pad.caution(cautions.closeBars(least, clear));
  return { lines, evenSpacing: even, clearSpacing: clear };
}

/** Every crossing at a foot or more both ways, every other one below. */
function tiesOf(crossings: Count, along: MatLines, across: MatLines, pad: Pad): Count {
  const wide = !along.evenSpacing.lessThan(FOOT()) && !across.evenSpacing.lessThan(FOOT());
  if (wide) return crossings;
  const t = wholeNumber(Math.ceil(crossings.toNumber('each') / 2));
  return pad.step('ties, at every other crossing', 't = ceil(i ÷ 2)', { i: crossings }, t);
}

function matFigures({ mat, rule, placed }: Laid, apart: Length, ground: Ground, pad: Pad): MatFigures {
  const along = linesFigure(
    { placed: placed.along, rule: rule.along, bar: mat.bar, spacing: mat.spacing },
    ground,
    pad,
  );
  const across = linesFigure(
    {
      placed: placed.across,
      rule: rule.across,
      bar: mat.barAcross ?? mat.bar,
      spacing: mat.linesAcross ? undefined : (mat.spacingAcross ?? mat.spacing),
    },
    ground,
    pad,
  );
  const crossings = wholeNumber(placed.crossings);
  const supports = bounded('supports', () => supportsUnder(rule, metres(apart)));
  return {
    layer: mat.layer,
    along,
    across,
    crossings,
    ties: tiesOf(crossings, along, across, pad),
    laps: wholeNumber(placed.laps),
    lapsInLine: wholeNumber(placed.lapsInLine),
    supports: wholeNumber(supports),
  };
}

/** Two bars cross in a mat. */
const layersOf = ({ bar, barAcross }: ParsedMat): Length =>
  diameterOf(bar).plus(diameterOf(barAcross ?? bar));

function checkThickness({ mats, thickness }: ParsedRegion, pad: Pad): void {
  if (!thickness) return;
  let left = thickness;
  mats.forEach((mat, i) => {
    if (!mat.faceCover) return;
    const path = `mats[${i}].faceCover`;
    if (mat.faceCover.times(TWO()).greaterThan(thickness)) {
      refuse(path, faults.doesNotFit('twice the cover', 'the thickness'));
    }
    left = left.minus(mat.faceCover).minus(layersOf(mat));
    if (left.sign() < 0) refuse(path, faults.doesNotFit('the cover and the bars', 'the thickness'));
  });
  const only = mats.length === 1 ? mats[0] : undefined;
  if (only?.faceCover && left.lessThan(INCH())) pad.caution(cautions.littleTopCover(INCH(), left));
}

function assumeUsual(input: ParsedRegion, pad: Pad): void {
  const usual = [
    ['cornerBars', ONE(), 'one bar across each corner that cracks start from', COMMON_PRACTICE],
    ['cornerBarLength', CORNER_LENGTH(), 'bars of 4 ft across such corners', COMMON_PRACTICE],
    ['supports', SUPPORTS(), 'chairs that hold bars when people walk on them', COMMON_PRACTICE],
    ['wirePerTie', WIRE(), 'wire for one tie', TIE_WIRE_COURSE],
    ['wireWeight', WIRE_WEIGHT(), 'No. 16 wire, 53 m to the kilogram', TIE_WIRE_COURSE],
  ] as const;
  for (const [name, value, because, source] of usual) {
    if (input[name]) continue;
    pad.assume({ name, value: value.format(), because, override: `Give ${name}`, source });
  }
  if (input.edgeBars === undefined) {
    pad.assume({
      name: 'edgeBars',
      value: 'yes',
      because: 'no place is then farther from a bar than half the spacing',
      override: 'Give edgeBars: false',
      source: COMMON_PRACTICE,
    });
  }
}

const added = (counts: readonly Count[]): Count => counts.reduce((a, b) => a.plus(b), wholeNumber(0));

function heed(input: ParsedRegion, { cover }: Ground, mats: readonly MatFigures[], pad: Pad): void {
  if (cover.lessThan(COVER())) pad.caution(cautions.steelCover(COVER(), cover));
  const widest = mats
    .flatMap(({ along, across }) => [along.evenSpacing, across.evenSpacing])
    .reduce((a, b) => (a.lessThan(b) ? b : a));
  if (widest.greaterThan(WIDE())) pad.caution(cautions.wideSpacing(WIDE(), widest));
  const inLine = added(mats.map((m) => m.lapsInLine));
  if (inLine.sign() > 0) pad.caution(cautions.lapsBeside(inLine));
  if (input.dowels?.length) pad.caution(cautions.drillDust);
  pad.caution(cautions.impalement);
}

/** Reckon mats over any outline. */
export function reckonRegion(input: ParsedRegion, pad: Pad): RebarRegionFigures {
  const ground = groundOf(input, pad);
  checkThickness(input, pad);
  assumeUsual(input, pad);
  const laid = layAll(input, ground);
  const groups = [
    ...grouped(laid, ground.step).values(),
    ...dowelGroups(input, ground),
    ...stepGroups(input.steps, ground, pad),
  ];
  const bars = markFigures(groups);
  const sizes = sizeTotals(bars, ground, pad);
  const apart = input.supports ?? SUPPORTS();
  const mats = laid.map((one) => matFigures(one, apart, ground, pad));
  const ties = added(mats.map((m) => m.ties));
  const [w, q] = [input.wirePerTie ?? WIRE(), input.wireWeight ?? WIRE_WEIGHT()];
  const tieWire = pad.step('tie wire', 'W = t × w × q', { t: ties, w, q }, w.times(ties).times(q));
  heed(input, ground, mats, pad);
  const like = bars[0]?.length ?? ground.step;
  return {
    bars,
    sizes,
    pieces: added(bars.map((b) => b.count)),
    totalLength: sizes.reduce((sum, s) => sum.plus(s.length), metresLike(new Decimal(0), like)),
    weight: sizes.reduce(
      (sum, s) => sum.plus(s.weight),
      quantityOf('mass', new Decimal(0), systemOfQuantity(like)),
    ),
    mats,
    intersections: added(mats.map((m) => m.crossings)),
    ties,
    tieWire,
    supports: added(mats.map((m) => m.supports)),
  };
}

const MAT_LIMIT = 2;
const DOWEL_RUNS = 100;
const STEP_LIMIT = 1000;

/** The schema of the input. */
export const regionInput = (): Field<ParsedRegion> =>
  fields({
    outline: outline(),
    openings: maybe(openings()),
    mats: list(
      fields({
        layer: choice('layer', ['bottom', 'top'] as const),
        bar: choice('bar', BAR_SIZES),
        barAcross: maybe(choice('barAcross', BAR_SIZES)),
        spacing: maybe(quantity('length', 'spacing')),
        lines: maybe(whole('lines', 1, LINE_LIMIT)),
        spacingAcross: maybe(quantity('length', 'spacingAcross')),
        linesAcross: maybe(whole('linesAcross', 1, LINE_LIMIT)),
        angle: maybe(quantity('angle', 'angle', 'any')),
        angleAcross: maybe(quantity('angle', 'angleAcross', 'any')),
        faceCover: maybe(quantity('length', 'faceCover')),
      }),
      1,
      MAT_LIMIT,
    ),
    cover: maybe(quantity('length', 'cover', 'not-negative')),
    stockLength: maybe(quantity('length', 'stockLength')),
    lap: maybe(quantity('length', 'lap')),
    edgeBars: maybe(yesOrNo('edgeBars')),
    cornerBars: maybe(whole('cornerBars', 0, 10)),
    cornerBarLength: maybe(quantity('length', 'cornerBarLength')),
    cutTo: maybe(quantity('length', 'cutTo')),
    shortest: maybe(quantity('length', 'shortest', 'not-negative')),
    thickness: maybe(quantity('length', 'thickness')),
    dowels: maybe(
      list(
        fields({
          side: whole('side', 1, LINE_LIMIT),
          bar: choice('bar', BAR_SIZES),
          spacing: quantity('length', 'spacing'),
          length: quantity('length', 'length'),
          endDistance: maybe(quantity('length', 'endDistance', 'not-negative')),
        }),
        0,
        DOWEL_RUNS,
      ),
    ),
    steps: maybe(
      fields({
        risers: whole('risers', 1, STEP_LIMIT),
        width: quantity('length', 'width'),
        bar: choice('bar', BAR_SIZES),
        treadBars: maybe(whole('treadBars', 0, 20)),
        starterSpacing: maybe(quantity('length', 'starterSpacing')),
        starterLeg: maybe(quantity('length', 'starterLeg')),
      }),
    ),
    supports: maybe(quantity('length', 'supports')),
    wirePerTie: maybe(quantity('length', 'wirePerTie')),
    wireWeight: maybe(quantity('mass-per-length', 'wireWeight')),
  });

/** What mats over an outline are laid by, and the mats laid: the input checked, defaulted and put into meters. */
import type { Corner } from '../geometry/polygon';
import { type Rings, ringsFromCorner } from '../outline/region';
import { Decimal } from '../quantity/decimal';
import * as faults from '../quantity/faults';
import { constant, length } from '../quantity/make';
import { paired } from '../quantity/paired';
import { canonicalValue, type Quantity } from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import { beyond, type Limit, withinLimit } from '../reckoning/limits';
import type { Pad } from '../reckoning/pad';
import { COMMON_PRACTICE } from '../reckoning/source';
import { say } from '../reckoning/words';
import { type AnyBarSize, bySize, diameterOf } from './bars';
import { listedCorners } from './corners';
import { type LineRule, layMat, type MatRule, type PlacedMat } from './mat';
import { spotsOf } from './mat-clip';
import { CORNER_LENGTH, coverOf, firstLength, lapOf, stockOf } from './mat-defaults';
import { type CutRule, stepsIn, TooManyBars } from './mat-laps';
import type { ParsedMat, ParsedRegion } from './rebar-fields';

type Length = Quantity<'length'>;
type Count = Quantity<'count'>;

/** Bars in all mats together. */
export const BAR_LIMIT: Limit = { of: 'the mats in bars', most: 200_000 };
/** Each side is looked at for each other one. */
export const CORNER_LIMIT: Limit = { of: 'the outline with its openings in corners', most: 2000 };
/** Binary meters are exact enough up to here. */
const FARTHEST = constant(() => new Decimal(100_000));
const CUT_TO = /*#__PURE__*/ paired('length', '1/16 in', '1 mm');
const COARSE = /*#__PURE__*/ paired('length', '1 in', '25 mm');
const FOOT = constant(() => length('1 ft'));

const meters = (q: Length): number => canonicalValue(q).toNumber();

/** What the mats are laid by, read and defaulted. */
export interface Ground {
  /** A length in the units that the job is written in. */
  readonly like: Length;
  /** As from their first corner. */
  readonly rings: Rings;
  /** Where that corner stands. */
  readonly origin: Corner;
  readonly cover: Length;
  readonly stock: Length;
  readonly step: Length;
  readonly laps: ReadonlyMap<AnyBarSize, Length>;
}

/** What lengths are rounded down to, given or usual. */
export function stepOf(given: Length | undefined, like: Length, pad: Pad): Length {
  if (given) return given;
  pad.assume({
    name: 'cutTo',
    value: CUT_TO,
    because: 'bars are not cut closer than this',
    override: say`Give cutTo, for example ${{ step: COARSE }}, for fewer marks`,
    source: COMMON_PRACTICE,
  });
  return CUT_TO.like(like);
}

function sizesOf({ mats, dowels, steps }: ParsedRegion): AnyBarSize[] {
  const used = new Set<AnyBarSize>([
    ...mats.flatMap((m) => [m.bar, m.barAcross ?? m.bar]),
    ...(dowels ?? []).map((d) => d.bar),
    ...(steps ? [steps.bar] : []),
  ]);
  return bySize(used);
}

/** Read and check what the mats are laid by. */
export function groundOf(input: ParsedRegion, pad: Pad): Ground {
  withinLimit(CORNER_LIMIT, listedCorners(input), 'outline');
  const { rings, origin } = ringsFromCorner(input);
  if (rings.outer.some(({ x, y }) => x.abs().greaterThan(FARTHEST()) || y.abs().greaterThan(FARTHEST()))) {
    refuse('outline', faults.outOfRange('the outline'));
  }
  const corners = rings.openings.reduce((n, ring) => n + ring.length, rings.outer.length);
  withinLimit(CORNER_LIMIT, corners, 'outline');
  const like = input.mats[0]?.spacing ?? input.cover ?? firstLength(input.outline) ?? FOOT();
  const cover = coverOf(input.cover, like, pad);
  const stock = stockOf(input.stockLength, like, pad);
  const step = stepOf(input.cutTo, like, pad);
  const laps = new Map(sizesOf(input).map((size) => [size, lapOf(input.lap, size, like, pad)]));
  for (const lap of laps.values()) {
    if (!lap.lessThan(stock)) refuse('lap', faults.doesNotFit('the lap', 'the stock length'));
  }
  if (!step.lessThan(stock)) refuse('cutTo', faults.doesNotFit('the cutting step', 'the stock length'));
  return { like, rings, origin, cover, stock, step, laps };
}

/** Lengths in whole cutting steps. */
export function cutRule(lap: Length, stock: Length, step: Length): CutRule {
  const each = meters(step);
  return { step: each, stock: stepsIn(meters(stock), each), lap: Math.ceil(meters(lap) / each - 1e-6) };
}

function lineRule(
  bar: AnyBarSize,
  spacing: Length | undefined,
  lines: Count | undefined,
  degrees: number,
  { stock, step, laps }: Ground,
): LineRule {
  const cut = cutRule(laps.get(bar) as Length, stock, step);
  const most = lines ? { lines: lines.toNumber('each') } : { spacing: meters(spacing as Length) };
  return { degrees, cut, size: bar, ...most };
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

/** No bar is shorter than the step that lengths are cut to. */
function shortestOf(input: ParsedRegion, mat: ParsedMat, step: Length): number {
  if (input.shortest) return Math.max(meters(input.shortest), meters(step));
  const foot = meters(FOOT());
  const spacings = [mat.spacing, mat.spacingAcross].flatMap((s) => (s ? [meters(s) / 2] : []));
  return Math.min(foot, ...spacings);
}

function matRule(input: ParsedRegion, mat: ParsedMat, i: number, ground: Ground): MatRule {
  const path = `mats[${i}]`;
  checkGiven(mat, path);
  const [along, across] = anglesOf(mat, path);
  const spacingAcross = mat.linesAcross ? undefined : (mat.spacingAcross ?? mat.spacing);
  return {
    rings: spotsOf(ground.rings),
    cover: meters(ground.cover),
    along: lineRule(mat.bar, mat.spacing, mat.lines, along, ground),
    across: lineRule(mat.barAcross ?? mat.bar, spacingAcross, mat.linesAcross, across, ground),
    edges: input.edgeBars ?? true,
    cornerLength: meters(input.cornerBarLength ?? CORNER_LENGTH.like(ground.like)),
    cornerCount: input.cornerBars?.toNumber('each') ?? 1,
    shortest: shortestOf(input, mat, ground.step),
    limit: BAR_LIMIT.most,
  };
}

/** A mat with what it was laid by. */
export interface Laid {
  readonly mat: ParsedMat;
  readonly rule: MatRule;
  readonly placed: PlacedMat;
}

/** Lay all mats. */
export function layAll(input: ParsedRegion, ground: Ground): Laid[] {
  const rules = input.mats.map((mat, i) => matRule(input, mat, i, ground));
  const laid: Laid[] = [];
  let left = BAR_LIMIT.most;
  rules.forEach((rule, i) => {
    const placed = bounded(`mats[${i}].spacing`, () => layMat({ ...rule, limit: left }));
    left -= placed.pieces;
    if (placed.along.lines === 0 || placed.across.lines === 0) {
      refuse('cover', faults.doesNotFit('twice the cover', 'the slab'));
    }
    laid.push({ mat: input.mats[i] as ParsedMat, rule, placed });
  });
  return laid;
}

/** Too much work is refused at the input that asks for it. */
export function bounded<T>(path: string, work: () => T): T {
  try {
    return work();
  } catch (error) {
    if (error instanceof TooManyBars) return beyond(error.limit ?? BAR_LIMIT, path);
    throw error;
  }
}

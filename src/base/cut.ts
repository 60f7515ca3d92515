/** The volume that a cut takes out of the bank, measured in one of four ways. */

import { measure } from '../geometry/measure';
import type { Outline } from '../geometry/outline';
import * as faults from '../quantity/faults';
import { constant, length, ratio } from '../quantity/make';
import { type Quantity, systemOfQuantity } from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import { wholeNumber } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { COMMON_PRACTICE } from '../reckoning/source';
import { total } from '../reckoning/whole';
import { type Spreadable, spreadArea, spreadable } from './spread';

/** How the share by which earth shrinks is defined: `1/(1+s)` of the compacted volume, `1-s` of the bank volume. */
export type ShrinkConvention = '1/(1+s)' | '1-s';

/** What replaces unsuitable soil. */
export interface ReplacementFigures {
  /** Fill in place, compacted. */
  readonly compacted: Quantity<'volume'>;
  /** Its weight, where the density is known. */
  readonly mass?: Quantity<'mass'>;
}

/** Average end area against the prismoidal formula. */
export interface SectionFigures {
  /** Area of each section, in order. */
  readonly areas: readonly Quantity<'area'>[];
  /** By average end area. */
  readonly averageEndArea: Quantity<'volume'>;
  /** By the prismoidal formula; left out where a middle section is not known. */
  readonly prismoidal?: Quantity<'volume'>;
  /** How much more the average end area gives. */
  readonly difference?: Quantity<'volume'>;
}

type Length = Quantity<'length'>;
type Area = Quantity<'area'>;
type Volume = Quantity<'volume'>;
type Ratio = Quantity<'ratio'>;

interface Earth {
  readonly swell: Ratio | undefined;
  readonly shrink: { readonly convention: ShrinkConvention; readonly share: Ratio } | undefined;
  readonly bankDensity: Quantity<'density'> | undefined;
  readonly haul:
    | { readonly truckVolume: Volume | undefined; readonly payload: Quantity<'mass'> | undefined }
    | undefined;
}

interface Dug extends Earth {
  readonly depth: Length;
  readonly margin: Length | undefined;
  readonly sideSlope: Ratio | undefined;
  readonly replacement:
    | { readonly depth: Length; readonly compactedDensity: Quantity<'density'> | undefined }
    | undefined;
}

interface Pit extends Dug {
  readonly method: 'pit';
  readonly outline: Outline | undefined;
  readonly area: Area | undefined;
}

interface Trench extends Dug {
  readonly method: 'trench';
  readonly length: Length;
  readonly width: Length;
}

/** A cell that is not dug. */
interface LeftOut {
  readonly row: Quantity<'count'>;
  readonly column: Quantity<'count'>;
}

interface Grid extends Earth {
  readonly method: 'grid';
  readonly across: Length;
  readonly along: Length;
  readonly depths: readonly (readonly Length[])[] | undefined;
  readonly levels: readonly (readonly Length[])[] | undefined;
  readonly grade: Length | undefined;
  readonly leaveOut: readonly LeftOut[] | undefined;
}

type Section =
  | { readonly by: 'area'; readonly at: Length; readonly area: Area; readonly middleArea: Area | undefined }
  | {
      readonly by: 'trapezoid';
      readonly at: Length;
      readonly width: Length;
      readonly depth: Length;
      readonly sideSlope: Ratio;
    };

interface Sections extends Earth {
  readonly method: 'sections';
  readonly sections: readonly Section[];
}

/** An excavation, read. */
export type Parsed = Pit | Trench | Grid | Sections;

/** What was cut. */
export interface Cut {
  readonly volume: Volume;
  readonly bottom?: Area;
  readonly top?: Area;
  readonly deepest?: Length;
  readonly sections?: SectionFigures;
  readonly replacement?: ReplacementFigures;
}

const TWO = constant(() => wholeNumber(2));
const FOUR = constant(() => wholeNumber(4));
const SIX = constant(() => wholeNumber(6));
const NO_LENGTH = constant(() => length('0 in'));
const UPRIGHT = constant(() => ratio('0:1'));

function marginOf({ margin, depth }: Dug, pad: Pad): Length {
  if (margin) return margin;
  pad.assume({
    name: 'margin',
    value: 'none',
    because: 'the cut is no wider than what is built in it',
    override: 'Give margin for working room beyond the forms',
    source: COMMON_PRACTICE,
  });
  return depth.minus(depth);
}

function slopeOfSides({ sideSlope }: Dug, pad: Pad): Ratio {
  if (sideSlope) return sideSlope;
  pad.assume({
    name: 'sideSlope',
    value: 'upright',
    because: 'shallow cuts for flatwork are dug straight down',
    override: 'Give sideSlope as level run for each unit of depth, for example "1:1"',
    source: COMMON_PRACTICE,
  });
  return UPRIGHT();
}

function depthOf({ depth, replacement }: Dug, pad: Pad): Length {
  if (!replacement) return depth;
  const u = replacement.depth;
  return pad.step('depth with the soil to be replaced', 'D = d + u', { d: depth, u }, depth.plus(u));
}

function filled(volume: Volume, { replacement }: Dug, pad: Pad): { replacement?: ReplacementFigures } {
  if (!replacement) return {};
  const c = replacement.compactedDensity;
  if (!c) return { replacement: { compacted: volume } };
  const unit = systemOfQuantity(volume) === 'metric' ? 'tonne' : 'ton';
  const mass = pad.step('weight of the fill', 'M = R × c', { R: volume, c }, volume.times(c).in(unit));
  return { replacement: { compacted: volume, mass } };
}

/** The volume of a cut with sloping sides up to a height, by the prismoidal formula: exact, as the area is a square function of the height. */
function prismoid(
  what: string,
  spread: Spreadable,
  [m, s, H]: readonly [margin: Length, slope: Ratio, height: Length],
  pad: Pad,
): { volume: Volume; bottom: Area; top: Area } {
  const B = spreadArea(spread, m, ['area at the bottom', 'B', 'margin'], pad);
  if (s.sign() === 0) {
    return { volume: pad.step(what, 'V = B × H', { B, H }, B.times(H)), bottom: B, top: B };
  }
  const o = pad.step('spread at the top', 'o = m + s × H', { m, s, H }, m.plus(H.times(s)));
  const h = pad.step('spread halfway up', 'h = m + s × H ÷ 2', { m, s, H }, m.plus(H.times(s).over(TWO())));
  const T = spreadArea(spread, o, ['area at the top', 'T', 'sideSlope'], pad);
  const M = spreadArea(spread, h, ['area halfway up', 'M', 'sideSlope'], pad);
  const volume = H.times(B.plus(M.times(FOUR())).plus(T)).over(SIX());
  pad.step(what, 'V = H × (B + 4 × M + T) ÷ 6', { H, B, M, T }, volume);
  return { volume, bottom: B, top: T };
}

/** A pit given by its area only has upright sides and no margin. */
function bareSpread({ area }: Pit, m: Length, s: Ratio): Spreadable {
  if (m.sign() !== 0 || s.sign() !== 0) {
    refuse('area', faults.perimeterUnknown('a margin or a side slope'));
  }
  return { area: area as Area, perimeter: NO_LENGTH(), corners: undefined, ring: undefined };
}

function pitSpread(input: Pit, m: Length, s: Ratio, pad: Pad): Spreadable {
  if ((input.outline === undefined) === (input.area === undefined)) {
    refuse('', faults.giveOneOf(['outline', 'area']));
  }
  if (!input.outline) return bareSpread(input, m, s);
  if (m.sign() !== 0 || s.sign() !== 0) return spreadable(input.outline, 'a margin or a side slope', pad);
  const { area } = measure(input.outline, pad);
  return { area, perimeter: NO_LENGTH(), corners: undefined, ring: undefined };
}

/** A pit of one depth. */
export function pitCut(input: Pit, pad: Pad): Cut {
  const [m, s] = [marginOf(input, pad), slopeOfSides(input, pad)];
  const spread = pitSpread(input, m, s, pad);
  const D = depthOf(input, pad);
  const { volume, bottom, top } = prismoid('bank volume', spread, [m, s, D], pad);
  const u = input.replacement?.depth;
  const fill = u
    ? filled(prismoid('fill for the soil replaced', spread, [m, s, u], pad).volume, input, pad)
    : {};
  return { volume, bottom, top, deepest: D, ...fill };
}

/** A trench with upright ends. */
export function trenchCut(input: Trench, pad: Pad): Cut {
  const { length: L, width: w } = input;
  const [m, s] = [marginOf(input, pad), slopeOfSides(input, pad)];
  const W = pad.step('width at the bottom', 'W = w + 2 × m', { w, m }, w.plus(m.times(TWO())));
  const D = depthOf(input, pad);
  const upTo = (what: string, H: Length): Volume =>
    pad.step(what, 'V = L × H × (W + s × H)', { L, H, W, s }, L.times(H).times(W.plus(H.times(s))));
  const volume = upTo('bank volume', D);
  const u = input.replacement?.depth;
  const fill = u ? filled(upTo('fill for the soil replaced', u), input, pad) : {};
  const bottom = pad.step('area at the bottom', 'B = L × W', { L, W }, L.times(W));
  const top = pad.step(
    'area at the top',
    'T = L × (W + 2 × s × D)',
    { L, W, s, D },
    L.times(W.plus(D.times(s).times(TWO()))),
  );
  return { volume, bottom, top, deepest: D, ...fill };
}

/** Depths at the corners of a grid: rows of equal length, none negative. */
function gridDepths({ depths, levels, grade }: Grid): readonly (readonly Length[])[] {
  if ((depths === undefined) === (levels === undefined)) {
    return refuse('', faults.giveOneOf(['depths', 'levels']));
  }
  if (levels && !grade) return refuse('grade', faults.missing('grade', '"98.5 ft", the level to dig to'));
  const rows = depths ?? (levels ?? []).map((row) => row.map((level) => level.minus(grade as Length)));
  const name = depths ? 'depths' : 'levels';
  const width = rows[0]?.length;
  rows.forEach((row, i) => {
    if (row.length !== width) {
      refuse(`${name}[${i}]`, faults.wrongType('each row', `as long as the first, with ${width} values`));
    }
    row.forEach((depth, j) => {
      if (depth.sign() < 0) refuse(`${name}[${i}][${j}]`, faults.negative('the cut at a corner'));
    });
  });
  return rows;
}

/** Which cells are dug, row by row. */
function cellsDug(rows: number, columns: number, leftOut: readonly LeftOut[]): boolean[][] {
  const cells = Array.from({ length: rows }, () => Array.from({ length: columns }, () => true));
  for (const [i, { row, column }] of leftOut.entries()) {
    const line = cells[row.toNumber('each')];
    const at = column.toNumber('each');
    if (line?.[at] === undefined) {
      return refuse(
        `leaveOut[${i}]`,
        faults.notACount('the cell, counted from zero,', 0, rows * columns - 1),
      );
    }
    line[at] = false;
  }
  return cells;
}

/** Each corner counts as often as dug cells meet there. */
export function gridCut(input: Grid, pad: Pad): Cut {
  const rows = gridDepths(input);
  const first = rows[0] as readonly Length[];
  const cells = cellsDug(rows.length - 1, first.length - 1, input.leaveOut ?? []);
  const none = (first[0] as Length).minus(first[0] as Length);
  const sums = [none, none, none, none];
  let deepest = none;
  rows.forEach((row, i) => {
    row.forEach((depth, j) => {
      const around = [cells[i - 1]?.[j - 1], cells[i - 1]?.[j], cells[i]?.[j - 1], cells[i]?.[j]];
      const times = around.filter(Boolean).length;
      if (times === 0) return;
      sums[times - 1] = (sums[times - 1] as Length).plus(depth);
      if (depth.greaterThan(deepest)) deepest = depth;
    });
  });
  if (!cells.flat().some(Boolean))
    refuse('leaveOut', faults.tooFew('the grid, apart from cells left out,', 1));
  const { across: a, along: b } = input;
  const A = pad.step('area of a cell', 'A = a × b', { a, b }, a.times(b));
  const [S1, S2, S3, S4] = sums as [Length, Length, Length, Length];
  const weighted = S1.plus(S2.times(TWO()))
    .plus(S3.times(wholeNumber(3)))
    .plus(S4.times(FOUR()));
  const volume = pad.step(
    'bank volume, S1 to S4 being the sums of the depths where one to four cells meet',
    'V = A × (S1 + 2 × S2 + 3 × S3 + 4 × S4) ÷ 4',
    { A, S1, S2, S3, S4 },
    weighted.times(A).over(FOUR()),
  );
  return { volume, deepest };
}

function sectionArea(section: Section, i: number, pad: Pad): Area {
  if (section.by === 'area') return section.area;
  const { width: w, depth: d, sideSlope: s } = section;
  return pad.step(
    `area of section ${i + 1}`,
    'A = d × (w + s × d)',
    { d, w, s },
    d.times(w.plus(d.times(s))),
  );
}

/** The section halfway, of mean dimensions: not the mean of the areas. */
function middleOf(from: Section, to: Section, i: number, pad: Pad): Area | undefined {
  if (from.by === 'area') return from.middleArea;
  if (to.by === 'area') return undefined;
  const w = from.width.plus(to.width).over(TWO());
  const d = from.depth.plus(to.depth).over(TWO());
  const s = from.sideSlope.plus(to.sideSlope).over(TWO());
  return pad.step(
    `middle area after section ${i + 1}, of mean dimensions`,
    'M = d × (w + s × d)',
    { d, w, s },
    d.times(w.plus(d.times(s))),
  );
}

interface Stretch {
  readonly average: Volume;
  readonly prismoidal: Volume | undefined;
}

function stretch(
  ends: readonly [Section, Section],
  areas: readonly [Area, Area],
  i: number,
  pad: Pad,
): Stretch {
  const [from, to] = ends;
  const [A, B] = areas;
  if (!to.at.greaterThan(from.at)) {
    refuse(`sections[${i + 1}].at`, faults.outOfOrder(`section ${i + 2}`, `section ${i + 1}`));
  }
  const L = to.at.minus(from.at);
  const average = pad.step(
    `average end area, sections ${i + 1} to ${i + 2}`,
    'V = L × (A + B) ÷ 2',
    { L, A, B },
    L.times(A.plus(B)).over(TWO()),
  );
  const M = middleOf(from, to, i, pad);
  if (!M) return { average, prismoidal: undefined };
  const prismoidal = pad.step(
    `prismoidal formula, sections ${i + 1} to ${i + 2}`,
    'V = L × (A + 4 × M + B) ÷ 6',
    { L, A, M, B },
    L.times(A.plus(M.times(FOUR())).plus(B)).over(SIX()),
  );
  return { average, prismoidal };
}

/** Cross sections along a line. */
export function sectionsCut({ sections }: Sections, pad: Pad): Cut {
  const areas = sections.map((section, i) => sectionArea(section, i, pad));
  const parts = sections.slice(1).map((to, i) => {
    const ends = [sections[i] as Section, to] as const;
    return stretch(ends, [areas[i] as Area, areas[i + 1] as Area], i, pad);
  });
  const average = total(
    'by average end area',
    'V',
    parts.map((p) => p.average),
    pad,
  );
  const solid = parts.map((p) => p.prismoidal).filter((v) => v !== undefined);
  const depths = sections.map((s) => (s.by === 'trapezoid' ? s.depth : NO_LENGTH()));
  const deepest = depths.reduce((most, depth) => (depth.greaterThan(most) ? depth : most));
  const known = deepest.sign() > 0 ? { deepest } : {};
  if (solid.length < parts.length) {
    return { volume: average, sections: { areas, averageEndArea: average }, ...known };
  }
  const prismoidal = total('by the prismoidal formula', 'P', solid, pad);
  const difference = pad.step(
    'more by average end area',
    'E = V − P',
    { V: average, P: prismoidal },
    average.minus(prismoidal),
  );
  return {
    volume: prismoidal,
    sections: { areas, averageEndArea: average, prismoidal, difference },
    ...known,
  };
}

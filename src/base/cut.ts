/** The volume that a cut takes out of the bank and that a fill takes in place, measured in one of five ways. */

import { measure } from '../outline/measure';
import { openAreas } from '../outline/net-area';
import type { Outline } from '../outline/outline';
import type { Opening } from '../outline/region';
import * as sharedFaults from '../quantity/faults';
import { constant, length, ratio } from '../quantity/make';
import { type Quantity, systemOfQuantity } from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import { wholeNumber } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { COMMON_PRACTICE } from '../reckoning/source';
import type { GridSpots } from './cut-grid';
import type { Compared, SectionFigures, SectionList } from './cut-sections';
import * as faults from './faults';
import type { Shrink } from './shrink';
import { type Spreadable, spreadArea, spreadable } from './spread';

/** What replaces unsuitable soil. */
export interface ReplacementFigures {
  /** Fill in place, compacted. */
  readonly compacted: Quantity<'volume'>;
  /** Its weight, where the density is known. */
  readonly mass?: Quantity<'mass'>;
}

type Length = Quantity<'length'>;
type Area = Quantity<'area'>;
type Volume = Quantity<'volume'>;
type Ratio = Quantity<'ratio'>;

interface Earth {
  readonly swell: Ratio | undefined;
  readonly shrink: Shrink | undefined;
  readonly bankDensity: Quantity<'density'> | undefined;
  readonly haul:
    | {
        readonly truckVolume: Volume | undefined;
        readonly payload: Quantity<'mass'> | undefined;
        readonly stays: Volume | undefined;
      }
    | undefined;
  readonly water: boolean | undefined;
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
  readonly kind: 'pit';
  readonly outline: Outline | undefined;
  readonly openings: readonly Opening[] | undefined;
  readonly area: Area | undefined;
}

interface Trench extends Dug {
  readonly kind: 'trench';
  readonly length: Length;
  readonly width: Length;
}

/** An embankment under an outline, its sides sloping outwards and down. */
interface Raised extends Earth {
  readonly kind: 'fill';
  readonly outline: Outline | undefined;
  readonly openings: readonly Opening[] | undefined;
  readonly area: Area | undefined;
  readonly depth: Length;
  readonly margin: Length | undefined;
  readonly sideSlope: Ratio | undefined;
}

interface Grid extends Earth, GridSpots {
  readonly kind: 'grid';
}

interface Sections extends Earth, SectionList {
  readonly kind: 'sections';
}

/** An excavation, read. */
export type Parsed = Pit | Trench | Raised | Grid | Sections;

/** A cut to be judged for the safety of those in it; the slope is left out where it is not known. */
export interface DeepCut {
  readonly depth: Length;
  readonly sideSlope: Ratio | undefined;
}

/** What was cut, and what was filled. */
export interface Cut {
  /** Dug, as it lay in the ground. */
  readonly volume: Volume;
  /** Filled, in place; left out where nothing is. */
  readonly fill?: Volume;
  readonly bottom?: Area;
  readonly top?: Area;
  readonly cuts: readonly DeepCut[];
  /** True where the depth of a cut is not known. */
  readonly depthUnknown?: boolean;
  /** Deepest fill. */
  readonly highest?: Length | undefined;
  readonly sections?: SectionFigures;
  readonly prismoids?: Compared | undefined;
  readonly runOuts?: Compared | undefined;
  readonly replacement?: ReplacementFigures;
}

const TWO = constant(() => wholeNumber(2));
const FOUR = constant(() => wholeNumber(4));
const SIX = constant(() => wholeNumber(6));
const NO_LENGTH = constant(() => length('0 in'));
const UPRIGHT = constant(() => ratio('0:1'));

type Sided = Pick<Dug, 'depth' | 'margin' | 'sideSlope'>;

function marginOf({ margin, depth }: Sided, pad: Pad): Length {
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

function slopeOfSides({ sideSlope }: Sided, pad: Pad): Ratio {
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

/** The edge of a fill stands upright only against a wall or a form. */
function slopeOfFill({ sideSlope }: Sided, pad: Pad): Ratio {
  if (sideSlope) return sideSlope;
  pad.assume({
    name: 'sideSlope',
    value: 'upright',
    because: 'the fill is taken to be held by walls or forms',
    override: 'Give sideSlope as level run for each unit of height, for example "2:1"',
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
  const B = spreadArea(spread, m, ['area within the margin', 'B', 'margin'], pad);
  if (s.sign() === 0) {
    return { volume: pad.step(what, 'V = B × H', { B, H }, B.times(H)), bottom: B, top: B };
  }
  const o = pad.step('spread where the sides end', 'o = m + s × H', { m, s, H }, m.plus(H.times(s)));
  const h = pad.step('spread halfway', 'h = m + s × H ÷ 2', { m, s, H }, m.plus(H.times(s).over(TWO())));
  const T = spreadArea(spread, o, ['area where the sides end', 'T', 'sideSlope'], pad);
  const M = spreadArea(spread, h, ['area halfway', 'M', 'sideSlope'], pad);
  const volume = H.times(B.plus(M.times(FOUR())).plus(T)).over(SIX());
  pad.step(what, 'V = H × (B + 4 × M + T) ÷ 6', { H, B, M, T }, volume);
  return { volume, bottom: B, top: T };
}

/** What stands in a pit or on a fill: one outline or one area. */
type Planned = Pick<Pit, 'outline' | 'openings' | 'area'>;

/** A pit given by its area only has upright sides and no margin. */
function bareSpread({ area }: Planned, m: Length, s: Ratio): Spreadable {
  if (m.sign() !== 0 || s.sign() !== 0) {
    refuse('area', faults.perimeterUnknown('a margin or a side slope'));
  }
  return { area: area as Area, perimeter: NO_LENGTH(), corners: undefined, ring: undefined };
}

function pitSpread(input: Planned, m: Length, s: Ratio, pad: Pad): Spreadable {
  if ((input.outline === undefined) === (input.area === undefined)) {
    refuse('', sharedFaults.giveOneOf(['outline', 'area']));
  }
  const open = openAreas(input.outline, input.openings, pad);
  if (!input.outline) return bareSpread(input, m, s);
  if (m.sign() !== 0 || s.sign() !== 0)
    return { ...spreadable(input.outline, 'a margin or a side slope', pad), open };
  const { area } = measure(input.outline, pad);
  return { area, perimeter: NO_LENGTH(), corners: undefined, ring: undefined, open };
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
  return { volume, bottom, top, cuts: [{ depth: D, sideSlope: s }], ...fill };
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
  return { volume, bottom, top, cuts: [{ depth: D, sideSlope: s }], ...fill };
}

/** An embankment: as a pit, turned over. The outline with its margin is the top. */
export function raisedFill(input: Raised, pad: Pad): Cut {
  const m = input.margin ?? marginOf(input, pad);
  const s = slopeOfFill(input, pad);
  const spread = pitSpread(input, m, s, pad);
  const { volume, bottom: top, top: bottom } = prismoid('fill in place', spread, [m, s, input.depth], pad);
  const nothing = volume.minus(volume);
  return { volume: nothing, fill: volume, bottom, top, cuts: [], highest: input.depth };
}

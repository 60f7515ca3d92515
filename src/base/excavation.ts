/**
 * Excavation: volume in the bank, loose and compacted, and the loads to haul.
 *
 * A pit with sloping sides is a prismoid: `V = D × (B + 4 × M + T) ÷ 6` with the areas at the bottom,
 * halfway and at the top. A grid of spot depths counts each corner as often as cells meet there (four
 * corner method). Cross sections go by average end area, `L × (A1 + A2) ÷ 2`, and by the prismoidal
 * formula, `L × (A1 + 4 × M + A2) ÷ 6`, with the difference shown.
 *
 * Swell makes bank volume loose: `U = V × (1 + w)`. For shrinkage published sources use two
 * conventions, `V ÷ (1 + s)` and `V × (1 − s)`; which one is meant must be said.
 */
import { type OutlineInput, outline } from '../geometry/outline';
import * as faults from '../quantity/faults';
import { constant, length, ratio } from '../quantity/make';
import { type Quantity, type QuantityInput, systemOfQuantity } from '../quantity/quantity';
import { type Calculation, define, refuse } from '../reckoning/calculation';
import * as cautions from '../reckoning/cautions';
import { choice, fields, kinds, list, maybe, quantity, type Shape, whole, word } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { CLOSED_FORM, FHWA_EARTHWORK, PEARSON_EXCAVATION } from '../reckoning/source';
import { wholeUnits } from '../reckoning/whole';
import {
  type Cut,
  gridCut,
  type Parsed,
  pitCut,
  type ReplacementFigures,
  type SectionFigures,
  type ShrinkConvention,
  sectionsCut,
  trenchCut,
} from './cut';

export type { ReplacementFigures, SectionFigures, ShrinkConvention } from './cut';

/** Shrinkage from bank to compacted. Both parts must be given. */
export interface ShrinkInput {
  /** Which published convention the share follows. */
  readonly convention: ShrinkConvention;
  /** The share itself, for example `25%`. */
  readonly share: QuantityInput<'ratio'>;
}

/** What hauls the earth away. Give the volume, the payload or both. */
export interface HaulInput {
  /** What one truck holds of loose earth; needs `swell`. */
  readonly truckVolume?: QuantityInput<'volume'>;
  /** What one truck may carry by weight; needs `bankDensity`. */
  readonly payload?: QuantityInput<'mass'>;
}

/** Unsuitable soil below the cut that is dug out and replaced. */
export interface ReplacementInput {
  /** How much deeper to dig. */
  readonly depth: QuantityInput<'length'>;
  /** Density of the fill once compacted; with it the weight is given. */
  readonly compactedDensity?: QuantityInput<'density'>;
}

/** What every way of measuring an excavation may add. */
export interface EarthInput {
  /** Share by which the earth grows when dug, of its bank volume. */
  readonly swell?: QuantityInput<'ratio'>;
  /** Shrinkage from bank to compacted, with its convention. */
  readonly shrink?: ShrinkInput;
  /** Weight of the earth in the bank. */
  readonly bankDensity?: QuantityInput<'density'>;
  /** What hauls it away. */
  readonly haul?: HaulInput;
}

/** A pit under an outline, dug to one depth. Give the outline or the area. */
export interface PitInput extends EarthInput {
  /** Always `pit`. */
  readonly method: 'pit';
  /** The outline of what is built in the pit. */
  readonly outline?: OutlineInput;
  /** Its area, where neither margin nor slope is wanted. */
  readonly area?: QuantityInput<'area'>;
  /** Depth of the cut. */
  readonly depth: QuantityInput<'length'>;
  /** Working room at the bottom beyond the outline, all around; none by default. */
  readonly margin?: QuantityInput<'length'>;
  /** Level run of the sides for each unit of depth, `1.5:1`; upright by default. */
  readonly sideSlope?: QuantityInput<'ratio'>;
  /** Unsuitable soil to be replaced below. */
  readonly replacement?: ReplacementInput;
}

/** A straight trench with upright ends. */
export interface TrenchInput extends EarthInput {
  /** Always `trench`. */
  readonly method: 'trench';
  /** Along the trench. */
  readonly length: QuantityInput<'length'>;
  /** Across its bottom, without the margin. */
  readonly width: QuantityInput<'length'>;
  /** Depth of the cut. */
  readonly depth: QuantityInput<'length'>;
  /** Working room at the bottom on each side; none by default. */
  readonly margin?: QuantityInput<'length'>;
  /** Level run of the sides for each unit of depth, `1:1`; upright by default. */
  readonly sideSlope?: QuantityInput<'ratio'>;
  /** Unsuitable soil to be replaced below. */
  readonly replacement?: ReplacementInput;
}

/** A cell of a grid, counted from zero. */
export interface CellInput {
  /** Which row of cells. */
  readonly row: number;
  /** Which column of cells. */
  readonly column: number;
}

/** A grid of spot depths, equally spaced each way. Give depths, or levels with the grade. */
export interface GridInput extends EarthInput {
  /** Always `grid`. */
  readonly method: 'grid';
  /** Between neighbours in a row. */
  readonly across: QuantityInput<'length'>;
  /** Between rows. */
  readonly along: QuantityInput<'length'>;
  /** Rows of depths of cut at the corners of the cells. */
  readonly depths?: readonly (readonly QuantityInput<'length'>[])[];
  /** Rows of ground levels instead. */
  readonly levels?: readonly (readonly QuantityInput<'length'>[])[];
  /** Level to dig to, with `levels`. */
  readonly grade?: QuantityInput<'length'>;
  /** Cells that are not dug. */
  readonly leaveOut?: readonly CellInput[];
}

/** A cross section by its area. */
export interface AreaSectionInput {
  /** Always `area`. */
  readonly by: 'area';
  /** Where along the line. */
  readonly at: QuantityInput<'length'>;
  /** Area of the section. */
  readonly area: QuantityInput<'area'>;
  /** Area halfway to the next section, measured there; with it the prismoidal formula applies. */
  readonly middleArea?: QuantityInput<'area'>;
}

/** A cross section by its bottom width, depth and side slopes. */
export interface TrapezoidSectionInput {
  /** Always `trapezoid`. */
  readonly by: 'trapezoid';
  /** Where along the line. */
  readonly at: QuantityInput<'length'>;
  /** Across the bottom. */
  readonly width: QuantityInput<'length'>;
  /** Depth of the cut; may be zero. */
  readonly depth: QuantityInput<'length'>;
  /** Level run of both sides for each unit of depth. */
  readonly sideSlope: QuantityInput<'ratio'>;
}

/** Cross sections along a line, in order. */
export interface SectionsInput extends EarthInput {
  /** Always `sections`. */
  readonly method: 'sections';
  /** Two sections or more. Between two trapezoids the middle section has their mean dimensions. */
  readonly sections: readonly (AreaSectionInput | TrapezoidSectionInput)[];
}

/** Input of {@link excavation}: one of four ways to measure. */
export type ExcavationInput = PitInput | TrenchInput | GridInput | SectionsInput;

/** The loads to haul. */
export interface HaulFigures {
  /** Whole loads. */
  readonly loads: Quantity<'count'>;
  /** Loads if only the volume counted. */
  readonly loadsByVolume?: Quantity<'count'>;
  /** Loads if only the weight counted. */
  readonly loadsByWeight?: Quantity<'count'>;
  /** What limits a load: `volume` or `weight`. */
  readonly governs: 'volume' | 'weight';
}

/** Figures of {@link excavation}. */
export interface ExcavationFigures {
  /** As it lies in the ground, with any soil to be replaced. */
  readonly bankVolume: Quantity<'volume'>;
  /** Area at the bottom, with the margin. */
  readonly bottomArea?: Quantity<'area'>;
  /** Area at the top. */
  readonly topArea?: Quantity<'area'>;
  /** Average end area and prismoidal formula side by side. */
  readonly sections?: SectionFigures;
  /** Once dug; needs `swell`. */
  readonly looseVolume?: Quantity<'volume'>;
  /** Loose for each unit in the bank. */
  readonly swellFactor?: Quantity<'ratio'>;
  /** Once placed as fill and compacted; needs `shrink`. */
  readonly compactedVolume?: Quantity<'volume'>;
  /** Compacted for each unit in the bank. */
  readonly shrinkFactor?: Quantity<'ratio'>;
  /** Weight, where the bank density is given. */
  readonly mass?: Quantity<'mass'>;
  /** Loads to haul. */
  readonly haul?: HaulFigures;
  /** Fill for soil that is replaced. */
  readonly replacement?: ReplacementFigures;
}

type Volume = Quantity<'volume'>;

const ONE = constant(() => ratio('1:1'));
const EXIT_FROM = constant(() => length('4 ft'));
const PROTECT_FROM = constant(() => length('5 ft'));
const ENGINEER_ABOVE = constant(() => length('20 ft'));
const NOTICEABLE = constant(() => ratio('2%'));

const inTons = (mass: Quantity<'mass'>): Quantity<'mass'> =>
  mass.in(systemOfQuantity(mass) === 'metric' ? 'tonne' : 'ton');

type Swollen = Pick<ExcavationFigures, 'looseVolume' | 'swellFactor'>;

function swollen(V: Volume, w: Quantity<'ratio'> | undefined, pad: Pad): Swollen {
  if (!w) return {};
  const swellFactor = pad.step('swell factor', 'F = 1 + w', { w }, ONE().plus(w));
  const looseVolume = pad.step('loose volume', 'U = V × (1 + w)', { V, w }, V.times(swellFactor));
  return { looseVolume, swellFactor };
}

type Shrunk = Pick<ExcavationFigures, 'compactedVolume' | 'shrinkFactor'>;

function shrunk(V: Volume, shrink: Parsed['shrink'], pad: Pad): Shrunk {
  if (!shrink) return {};
  const { convention, share: s } = shrink;
  if (convention === '1/(1+s)') {
    const over = ONE().plus(s);
    const shrinkFactor = pad.step('shrink factor, 1/(1+s)', 'F = 1 ÷ (1 + s)', { s }, ONE().over(over));
    const compactedVolume = pad.step('compacted volume', 'C = V ÷ (1 + s)', { V, s }, V.over(over));
    return { compactedVolume, shrinkFactor };
  }
  const left = ONE().minus(s);
  if (left.sign() <= 0) return refuse('shrink.share', faults.doesNotFit('share', '100%'));
  const shrinkFactor = pad.step('shrink factor, 1-s', 'F = 1 − s', { s }, left);
  const compactedVolume = pad.step('compacted volume', 'C = V × (1 − s)', { V, s }, V.times(left));
  return { compactedVolume, shrinkFactor };
}

function byVolume(haul: NonNullable<Parsed['haul']>, U: Volume | undefined, pad: Pad) {
  if (!haul.truckVolume) return undefined;
  if (!U) return refuse('swell', faults.missing('swell', '"25%", to know what a truck holds'));
  return wholeUnits('loads by volume', U, haul.truckVolume, 'haul.truckVolume', pad);
}

function byWeight(haul: NonNullable<Parsed['haul']>, M: Quantity<'mass'> | undefined, pad: Pad) {
  if (!haul.payload) return undefined;
  if (!M)
    return refuse('bankDensity', faults.missing('bankDensity', '"100 pcf", to know what a load weighs'));
  return wholeUnits('loads by weight', M, haul.payload, 'haul.payload', pad);
}

function hauled(
  { haul }: Parsed,
  loose: Volume | undefined,
  mass: Quantity<'mass'> | undefined,
  pad: Pad,
): HaulFigures | undefined {
  if (!haul) return undefined;
  const [v, w] = [byVolume(haul, loose, pad), byWeight(haul, mass, pad)];
  if (!v && !w) return refuse('haul', faults.giveOneOf(['truckVolume', 'payload']));
  const each = { ...(v ? { loadsByVolume: v } : {}), ...(w ? { loadsByWeight: w } : {}) };
  if (!v) return { loads: w as Quantity<'count'>, ...each, governs: 'weight' };
  if (!w) return { loads: v, ...each, governs: 'volume' };
  // A full truck against its payload: exact, where the counts may happen to be equal.
  const { truckVolume, payload } = haul as { truckVolume: Volume; payload: Quantity<'mass'> };
  const heavier = (mass as Quantity<'mass'>).over(payload).greaterThan((loose as Volume).over(truckVolume));
  const loads = pad.step('loads', 'n = max(v, w)', { v, w }, heavier ? w : v);
  return { loads, ...each, governs: heavier ? 'weight' : 'volume' };
}

function heed({ deepest, sections }: Cut, pad: Pad): void {
  if (deepest) {
    const exit = EXIT_FROM();
    if (!deepest.lessThan(exit)) pad.caution(cautions.trenchExit(exit, deepest));
    if (!deepest.lessThan(PROTECT_FROM())) pad.caution(cautions.trenchDepth(PROTECT_FROM(), deepest));
    if (deepest.greaterThan(ENGINEER_ABOVE()))
      pad.caution(cautions.engineeredExcavation(ENGINEER_ABOVE(), deepest));
  }
  const { prismoidal, difference } = sections ?? {};
  if (prismoidal && difference && prismoidal.sign() > 0) {
    const share = difference.abs().over(prismoidal);
    if (share.greaterThan(NOTICEABLE())) pad.caution(cautions.endAreasDiffer(NOTICEABLE(), share.in('%')));
  }
  pad.caution(cautions.buriedUtilities);
  pad.caution(cautions.spoilAtEdge);
}

function cutOf(input: Parsed, pad: Pad): Cut {
  switch (input.method) {
    case 'pit':
      return pitCut(input, pad);
    case 'trench':
      return trenchCut(input, pad);
    case 'grid':
      return gridCut(input, pad);
    case 'sections':
      return sectionsCut(input, pad);
  }
}

function reckon(input: Parsed, pad: Pad): ExcavationFigures {
  const cut = cutOf(input, pad);
  const V = cut.volume;
  const loose = swollen(V, input.swell, pad);
  const compacted = shrunk(V, input.shrink, pad);
  const density = input.bankDensity;
  const mass = density
    ? pad.step('weight', 'M = V × w', { V, w: density }, inTons(V.times(density)))
    : undefined;
  const haul = hauled(input, loose.looseVolume, mass, pad);
  heed(cut, pad);
  return {
    bankVolume: V,
    ...(cut.bottom ? { bottomArea: cut.bottom } : {}),
    ...(cut.top ? { topArea: cut.top } : {}),
    ...(cut.sections ? { sections: cut.sections } : {}),
    ...loose,
    ...compacted,
    ...(mass ? { mass } : {}),
    ...(haul ? { haul } : {}),
    ...(cut.replacement ? { replacement: cut.replacement } : {}),
  };
}

/** Rows, columns and sections beyond any yard. */
const ROWS = 200;
const SECTIONS = 200;

const earth = (): Shape => ({
  swell: maybe(quantity('ratio', 'swell', 'not-negative')),
  shrink: maybe(
    fields({
      convention: choice<ShrinkConvention>('convention', ['1/(1+s)', '1-s']),
      share: quantity('ratio', 'share', 'not-negative'),
    }),
  ),
  bankDensity: maybe(quantity('density', 'bankDensity')),
  haul: maybe(
    fields({
      truckVolume: maybe(quantity('volume', 'truckVolume')),
      payload: maybe(quantity('mass', 'payload')),
    }),
  ),
});

const dug = (): Shape => ({
  depth: quantity('length', 'depth'),
  margin: maybe(quantity('length', 'margin', 'not-negative')),
  sideSlope: maybe(quantity('ratio', 'sideSlope', 'not-negative')),
  replacement: maybe(
    fields({
      depth: quantity('length', 'depth'),
      compactedDensity: maybe(quantity('density', 'compactedDensity')),
    }),
  ),
});

function door() {
  const row = (what: string) => list(quantity('length', what, 'any'), 2, ROWS);
  const cell = fields({ row: whole('row', 0, ROWS), column: whole('column', 0, ROWS) });
  const section = kinds<unknown>('by', [
    fields({
      by: word('area'),
      at: quantity('length', 'at', 'any'),
      area: quantity('area', 'area', 'not-negative'),
      middleArea: maybe(quantity('area', 'middleArea', 'not-negative')),
    }),
    fields({
      by: word('trapezoid'),
      at: quantity('length', 'at', 'any'),
      width: quantity('length', 'width'),
      depth: quantity('length', 'depth', 'not-negative'),
      sideSlope: quantity('ratio', 'sideSlope', 'not-negative'),
    }),
  ]);
  return kinds<unknown>('method', [
    fields({
      method: word('pit'),
      outline: maybe(outline()),
      area: maybe(quantity('area', 'area')),
      ...dug(),
      ...earth(),
    }),
    fields({
      method: word('trench'),
      length: quantity('length', 'length'),
      width: quantity('length', 'width'),
      ...dug(),
      ...earth(),
    }),
    fields({
      method: word('grid'),
      across: quantity('length', 'across'),
      along: quantity('length', 'along'),
      depths: maybe(list(row('depth'), 2, ROWS)),
      levels: maybe(list(row('level'), 2, ROWS)),
      grade: maybe(quantity('length', 'grade', 'any')),
      leaveOut: maybe(list(cell, 0, ROWS * ROWS)),
      ...earth(),
    }),
    fields({ method: word('sections'), sections: list(section, 2, SECTIONS), ...earth() }),
  ]) as never;
}

/**
 * Earth to dig: in the bank, loose, compacted, and in loads.
 *
 * @param input - a pit, a trench, a grid of spot depths or cross sections; swell, shrinkage and trucks
 * @returns bank volume, and whatever the rest of the input allows
 * @throws {InputError} `perimeter-unknown` and `grown-together` for outlines that cannot be spread;
 * `out-of-order` sections; `negative` cuts; `give-one-of` and `missing` where inputs depend on each
 * other; `too-many` loads
 * @source geometry; swell and shrinkage as in the design manual of the Federal Highway Administration and
 * in Estimating in Building Construction (Pearson)
 * @example
 * ```ts
 * import { excavation } from 'flatwork-reckoner';
 *
 * const { figures } = excavation({
 *   method: 'pit',
 *   outline: { shape: 'rectangle', length: '28 ft', width: '18 ft' },
 *   depth: '10 in',
 *   margin: '1 ft',
 *   swell: '25%',
 *   haul: { truckVolume: '10 yd3' },
 * });
 * figures.bankVolume.format(); // '18.52 yd3'
 * figures.looseVolume?.format(); // '23.15 yd3'
 * figures.haul?.loads.format(); // '3 each'
 * ```
 */
export const excavation: Calculation<ExcavationInput, ExcavationFigures> = /*#__PURE__*/ define({
  id: 'excavation',
  title: 'Excavation',
  version: 1,
  sources: [CLOSED_FORM, FHWA_EARTHWORK, PEARSON_EXCAVATION],
  input: door,
  reckon,
});

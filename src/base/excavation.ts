/**
 * Excavation: volume in the bank, loose and compacted, and the loads to haul.
 *
 * A pit with sloping sides is a prismoid: `V = D × (B + 4 × M + T) ÷ 6` with the areas at the bottom,
 * halfway and at the top. A grid of spot depths counts each corner as often as cells meet there (four
 * corner method). Cross sections go by average end area, `L × (A1 + A2) ÷ 2`, and by the prismoidal
 * formula, `L × (A1 + 4 × M + A2) ÷ 6`, stretch by stretch, with the difference shown.
 *
 * Sections and grids may be cut in one place and filled in another, each with a sum of its own. Swell makes
 * bank volume loose: `U = V × (1 + w)`. For shrinkage published sources use two conventions, `V ÷ (1 + s)`
 * and `V × (1 − s)`; which one is meant must be said.
 */
import { type OutlineInput, outline } from '../outline/outline';
import { constant, ratio } from '../quantity/make';
import { paired } from '../quantity/paired';
import type { Quantity, QuantityInput } from '../quantity/quantity';
import { type Calculation, define } from '../reckoning/calculation';
import {
  choice,
  fields,
  type JsonSchema,
  kinds,
  list,
  maybe,
  quantity,
  whole,
  word,
  yesOrNo,
} from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { CLOSED_FORM } from '../reckoning/source';
import type { TakeNote } from '../reckoning/takes';
import { all, anyOf, given, holds, needs, oneOf, where } from '../reckoning/together';
import { carried } from '../reckoning/whole';
import * as cautions from './cautions';
import {
  type Cut,
  type DeepCut,
  type Parsed,
  pitCut,
  type ReplacementFigures,
  raisedFill,
  trenchCut,
} from './cut';
import { CROSSED_CELLS, gridCut } from './cut-grid';
import { type Compared, type RunOut, type SectionFigures, sectionsCut } from './cut-sections';
import { type FillFigures, filling, type HaulFigures, loadsOf, looseFill, swollen, weightOf } from './earth';
import * as ordinary from './ordinary';
import { SOIL_DENSITY } from './ordinary';
import { compactedFrom, type ShrinkConvention } from './shrink';
import { END_AREA_TEXT, FHWA_EARTHWORK, PEARSON_EXCAVATION } from './sources';
import { SPREAD_CORNERS } from './spread';

export type { ReplacementFigures } from './cut';
export type { RunOut, SectionFigures, SideFigures, StretchFigures } from './cut-sections';
export type { FillFigures, HaulFigures } from './earth';
export type { ShrinkConvention } from './shrink';

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
  /** True where water stands in the cut or seeps in. */
  readonly water?: boolean;
}

/** A pit under an outline, dug to one depth. Give the outline or the area. */
export interface PitInput extends EarthInput {
  /** Always `pit`. */
  readonly kind: 'pit';
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
  readonly kind: 'trench';
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

/** A fill under an outline to one height: a pit turned over. Give the outline or the area. */
export interface RaisedInput extends EarthInput {
  /** Always `fill`. */
  readonly kind: 'fill';
  /** The outline of what is built on the fill. */
  readonly outline?: OutlineInput;
  /** Its area, where neither margin nor slope is wanted. */
  readonly area?: QuantityInput<'area'>;
  /** Depth of the fill, compacted. */
  readonly depth: QuantityInput<'length'>;
  /** How far the top of the fill reaches beyond the outline, all around; none by default. */
  readonly margin?: QuantityInput<'length'>;
  /** Level run of the sides for each unit of height, `2:1`; upright by default, as within walls. */
  readonly sideSlope?: QuantityInput<'ratio'>;
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
  readonly kind: 'grid';
  /** Between neighbors in a row. */
  readonly across: QuantityInput<'length'>;
  /** Between rows. */
  readonly along: QuantityInput<'length'>;
  /** Rows of depths of cut at the corners of the cells; below zero where the ground is filled. */
  readonly depths?: readonly (readonly QuantityInput<'length'>[])[];
  /** Rows of ground levels instead; what lies below the grade is filled. */
  readonly levels?: readonly (readonly QuantityInput<'length'>[])[];
  /** Level to dig and fill to, with `levels`. */
  readonly grade?: QuantityInput<'length'>;
  /** Cells that are not dug. */
  readonly leaveOut?: readonly CellInput[];
}

/** What every cross section has. */
export interface SectionPlace {
  /** Where along the line. */
  readonly at: QuantityInput<'length'>;
  /** Area of the cut halfway to the next section, measured there; with it the prismoidal formula applies. */
  readonly middleArea?: QuantityInput<'area'>;
  /** Area of the fill halfway to the next section. */
  readonly middleFill?: QuantityInput<'area'>;
}

/** A cross section by its area. */
export interface AreaSectionInput extends SectionPlace {
  /** Always `area`. */
  readonly by: 'area';
  /** Area of the cut; zero where there is none. */
  readonly area: QuantityInput<'area'>;
  /** Area of the fill in the same section; none by default. */
  readonly fill?: QuantityInput<'area'>;
  /** Depth of the cut at its deepest, so that its safety can be judged. */
  readonly depth?: QuantityInput<'length'>;
}

/** A cross section by its width, depth and side slopes. */
export interface TrapezoidSectionInput extends SectionPlace {
  /** Always `trapezoid`. */
  readonly by: 'trapezoid';
  /** Across the bottom of a cut, or the top of a fill. */
  readonly width: QuantityInput<'length'>;
  /** Depth of the cut; zero where there is none, and below zero for the height of a fill. */
  readonly depth: QuantityInput<'length'>;
  /** Level run of both sides for each unit of depth. */
  readonly sideSlope: QuantityInput<'ratio'>;
}

/** Cross sections along a line, in order. */
export interface SectionsInput extends EarthInput {
  /** Always `sections`. */
  readonly kind: 'sections';
  /** Two sections or more. Between two trapezoids the middle section has their mean dimensions. */
  readonly sections: readonly (AreaSectionInput | TrapezoidSectionInput)[];
  /**
   * What a stretch is like that runs out to nothing and has no area halfway: a `wedge`, which keeps its
   * width, by default, or a `pyramid`, which tapers in width and depth.
   */
  readonly runOut?: RunOut;
}

/** Input of {@link excavation}: one of five ways to measure. */
export type ExcavationInput = PitInput | TrenchInput | RaisedInput | GridInput | SectionsInput;

/** Figures of {@link excavation}. */
export interface ExcavationFigures {
  /** What is dug, as it lies in the ground, with any soil to be replaced. */
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
  /** What is filled, where anything is. */
  readonly fill?: FillFigures;
  /** Weight, where the bank density is given. */
  readonly mass?: Quantity<'mass'>;
  /** Loads to haul. */
  readonly haul?: HaulFigures;
  /** Fill for soil that is replaced. */
  readonly replacement?: ReplacementFigures;
}

const EXIT_FROM = /*#__PURE__*/ paired('length', '4 ft', '1.2 m');
const PROTECT_FROM = /*#__PURE__*/ paired('length', '5 ft', '1.5 m');
const ENGINEER_ABOVE = /*#__PURE__*/ paired('length', '20 ft', '6 m');
const EARTH_FILL = /*#__PURE__*/ paired('length', '8 in', '200 mm');
const GRANULAR_FILL = /*#__PURE__*/ paired('length', '24 in', '600 mm');
const NOTICEABLE = constant(() => ratio('2%'));
/** Steeper than this no slope is protection; this flat it is in any soil but rock that slides. */
const STEEPEST = constant(() => ratio('0.75:1'));
const FLAT_ENOUGH = constant(() => ratio('1.5:1'));

const deepestOf = (cuts: readonly DeepCut[]): DeepCut | undefined => {
  const [first, ...rest] = cuts;
  return first && rest.reduce((most, cut) => (cut.depth.greaterThan(most.depth) ? cut : most), first);
};

/** Cuts from about 5 ft on whose sides are no protection, or are one in some soils only; none of these is wet. */
function heedSides(cuts: readonly DeepCut[], wet: boolean, pad: Pad): void {
  const deep = cuts.filter(({ depth }) => PROTECT_FROM.reachedBy(depth));
  const least = wet ? FLAT_ENOUGH() : STEEPEST();
  const steep = deepestOf(deep.filter(({ sideSlope }) => !sideSlope || sideSlope.lessThan(least)));
  if (steep) {
    const limit = PROTECT_FROM.reachedBy(steep.depth);
    if (limit) pad.caution(cautions.trenchDepth(limit, steep.depth));
    return;
  }
  const slope = deep
    .flatMap(({ sideSlope }) => (sideSlope ? [sideSlope] : []))
    .reduce((flat, s) => (s.lessThan(flat) ? s : flat), FLAT_ENOUGH());
  if (slope.lessThan(FLAT_ENOUGH())) pad.caution(cautions.slopeByClass(FLAT_ENOUGH(), slope));
}

function heedDepth({ cuts, depthUnknown }: Cut, wet: boolean, pad: Pad): void {
  const deepest = deepestOf(cuts)?.depth;
  const exit = deepest && EXIT_FROM.reachedBy(deepest);
  if (exit) pad.caution(cautions.trenchExit(exit, deepest));
  heedSides(cuts, wet, pad);
  const engineer = deepest && ENGINEER_ABOVE.exceededBy(deepest);
  if (engineer) pad.caution(cautions.engineeredExcavation(engineer, deepest));
  if (depthUnknown) pad.caution(cautions.depthUnknown());
}

function heedRules(prismoids: Compared | undefined, runOuts: Compared | undefined, pad: Pad): void {
  if (prismoids && prismoids.used.sign() > 0) {
    const share = prismoids.other.minus(prismoids.used).abs().over(prismoids.used);
    if (share.greaterThan(NOTICEABLE())) {
      pad.caution(cautions.endAreasDiffer(prismoids.stretches, NOTICEABLE(), share.in('%')));
    }
  }
  if (!runOuts) return;
  pad.assume({
    name: 'runOut',
    value: 'wedge',
    because: 'a cut or a fill that runs out is taken to keep its width, so that end areas are right for it',
    override: 'Give runOut: "pyramid", or the area halfway in middleArea',
    source: END_AREA_TEXT,
  });
  pad.caution(cautions.runsOut(runOuts.stretches, runOuts.other, runOuts.used));
}

function heedFill({ fill, highest, volume }: Cut, shrinks: boolean, pad: Pad): void {
  if (!fill || fill.sign() === 0) return;
  if (volume.sign() > 0 && !shrinks) pad.caution(cautions.fillNeedsShrink);
  const limit = highest && (GRANULAR_FILL.exceededBy(highest) ?? EARTH_FILL.exceededBy(highest));
  if (limit) pad.caution(cautions.deepFill(limit, highest));
  pad.caution(cautions.fillInLifts);
}

function heed(cut: Cut, { shrink, water }: Parsed, pad: Pad): void {
  const wet = water === true && cut.volume.sign() > 0;
  heedDepth(cut, wet, pad);
  if (wet) pad.caution(cautions.waterInCut);
  heedRules(cut.prismoids, cut.runOuts, pad);
  heedFill(cut, shrink !== undefined, pad);
  if (cut.volume.sign() === 0) return;
  pad.caution(cautions.buriedUtilities);
  pad.caution(cautions.spoilAtEdge());
}

function cutOf(input: Parsed, pad: Pad): Cut {
  switch (input.kind) {
    case 'pit':
      return pitCut(input, pad);
    case 'trench':
      return trenchCut(input, pad);
    case 'fill':
      return raisedFill(input, pad);
    case 'grid': {
      const { deepest, ...grid } = gridCut(input, pad);
      return { ...grid, cuts: deepest.sign() > 0 ? [{ depth: deepest, sideSlope: undefined }] : [] };
    }
    case 'sections':
      return sectionsCut(input, pad);
  }
}

function reckon(input: Parsed, pad: Pad): ExcavationFigures {
  const cut = cutOf(input, pad);
  const V = cut.volume;
  const loose = swollen(V, input.swell, pad);
  const compacted = input.shrink && V.sign() > 0 ? compactedFrom(V, input.shrink, pad) : {};
  const set = filling(cut, input.shrink, pad);
  const fill = set && looseFill(set, input.swell, pad);
  const mass = weightOf('weight', V, input.bankDensity, pad);
  const haul = loadsOf(input, V, fill, pad);
  heed(cut, input, pad);
  return {
    bankVolume: V,
    ...(cut.bottom ? { bottomArea: cut.bottom } : {}),
    ...(cut.top ? { topArea: cut.top } : {}),
    ...(cut.sections ? { sections: cut.sections } : {}),
    ...loose,
    ...compacted,
    ...(fill ? { fill } : {}),
    ...(mass ? { mass } : {}),
    ...(haul ? { haul } : {}),
    ...(cut.replacement ? { replacement: cut.replacement } : {}),
  };
}

/** What is dug is hauled, less what is filled with it; what that lacks is brought, and what replaces soft ground. */
const dugAndFilled = ({ looseVolume, fill, replacement }: ExcavationFigures): TakeNote[] => [
  fill
    ? { item: 'haul-away', from: 'fill.surplus', of: { measured: 'bank' } }
    : looseVolume
      ? { item: 'haul-away', from: 'looseVolume', of: { measured: 'loose' } }
      : { item: 'haul-away', from: 'bankVolume', of: { measured: 'bank' } },
  { item: 'fill', from: 'fill.borrow', of: { measured: 'bank' } },
  {
    item: 'fill',
    from: replacement?.mass ? 'replacement.mass' : 'replacement.compacted',
    of: { measured: 'compacted' },
  },
];

/** Rows, columns and sections beyond any yard. */
const ROWS = 200;
const SECTIONS = 200;

const earth = () => ({
  swell: maybe(quantity('ratio', 'swell', 'not-negative', ordinary.SWELL)),
  shrink: maybe(
    fields({
      convention: choice<ShrinkConvention>('convention', ['1/(1+s)', '1-s']),
      share: quantity('ratio', 'share', 'not-negative', ordinary.SHRINK_SHARE),
    }),
  ),
  bankDensity: maybe(quantity('density', 'bankDensity', 'positive', SOIL_DENSITY)),
  haul: maybe(
    fields(
      {
        truckVolume: maybe(quantity('volume', 'truckVolume', 'positive', ordinary.TRUCK_VOLUME)),
        payload: maybe(quantity('mass', 'payload', 'positive', ordinary.TRUCK_PAYLOAD)),
      },
      anyOf(given('truckVolume'), given('payload')),
    ),
  ),
  water: maybe(yesOrNo('water')),
});

const planned = () => ({
  outline: maybe(outline()),
  area: maybe(quantity('area', 'area', 'positive', ordinary.PLAN_AREA)),
});

const sided = () => ({
  depth: quantity('length', 'depth', 'positive', ordinary.CUT_DEPTH),
  margin: maybe(quantity('length', 'margin', 'not-negative', ordinary.WORKING_MARGIN)),
  sideSlope: maybe(quantity('ratio', 'sideSlope', 'not-negative', ordinary.SIDE_SLOPE)),
});

const dug = () => ({
  ...sided(),
  replacement: maybe(
    fields({
      depth: quantity('length', 'depth', 'positive', ordinary.CUT_DEPTH),
      compactedDensity: maybe(quantity('density', 'compactedDensity', 'positive', SOIL_DENSITY)),
    }),
  ),
});

const sectionArea = (what: string) => quantity('area', what, 'not-negative', ordinary.SECTION_AREA);

const place = () => ({
  at: quantity('length', 'at', 'any'),
  middleArea: maybe(sectionArea('middleArea')),
  middleFill: maybe(sectionArea('middleFill')),
});

/** What a truck is filled by must be known of the earth. */
const hauling = (): JsonSchema[] => [
  where(holds('haul', 'truckVolume'), given('swell')),
  where(holds('haul', 'payload'), given('bankDensity')),
];

const section = () =>
  kinds('by', [
    fields({
      by: word('area'),
      ...place(),
      area: sectionArea('area'),
      fill: maybe(sectionArea('fill')),
      depth: maybe(quantity('length', 'depth', 'positive', ordinary.CUT_DEPTH)),
    }),
    fields({
      by: word('trapezoid'),
      ...place(),
      width: quantity('length', 'width', 'positive', ordinary.SECTION_WIDTH),
      depth: quantity('length', 'depth', 'any', ordinary.CUT_DEPTH),
      sideSlope: quantity('ratio', 'sideSlope', 'not-negative', ordinary.SIDE_SLOPE),
    }),
  ]);

function door() {
  const depths = list(quantity('length', 'depth', 'any', ordinary.CUT_DEPTH), 2, ROWS);
  const levels = list(quantity('length', 'level', 'any'), 2, ROWS);
  const cell = fields({ row: whole('row', 0, ROWS), column: whole('column', 0, ROWS) });
  return kinds('kind', [
    fields(
      { kind: word('pit'), ...planned(), ...dug(), ...earth() },
      all(oneOf(['outline'], ['area']), ...hauling()),
    ),
    fields(
      {
        kind: word('trench'),
        length: quantity('length', 'length', 'positive', ordinary.TRENCH_LENGTH),
        width: quantity('length', 'width', 'positive', ordinary.SECTION_WIDTH),
        ...dug(),
        ...earth(),
      },
      all(...hauling()),
    ),
    fields(
      { kind: word('fill'), ...planned(), ...sided(), ...earth() },
      all(oneOf(['outline'], ['area']), needs('haul', 'shrink'), ...hauling()),
    ),
    fields(
      {
        kind: word('grid'),
        across: quantity('length', 'across', 'positive', ordinary.GRID_SPACING),
        along: quantity('length', 'along', 'positive', ordinary.GRID_SPACING),
        depths: maybe(list(depths, 2, ROWS)),
        levels: maybe(list(levels, 2, ROWS)),
        grade: maybe(quantity('length', 'grade', 'any')),
        leaveOut: maybe(list(cell, 0, ROWS * ROWS)),
        ...earth(),
      },
      all(oneOf(['depths'], ['levels']), needs('levels', 'grade'), ...hauling()),
    ),
    fields(
      {
        kind: word('sections'),
        sections: list(section(), 2, SECTIONS),
        runOut: maybe(choice<RunOut>('runOut', ['wedge', 'pyramid'])),
        ...earth(),
      },
      all(...hauling()),
    ),
  ]);
}

/**
 * Earth to dig and to fill: in the bank, loose, compacted, and in loads.
 *
 * @param input - a pit, a trench, a fill, a grid of spot depths or cross sections; swell, shrinkage and trucks
 * @returns bank volume, and whatever the rest of the input allows
 * @throws {InputError} `perimeter-unknown` and `grown-together` for outlines that cannot be spread;
 * `out-of-order` sections; `does-not-fit` for a middle area after the last; `give-one-of` and `missing` where inputs depend on each
 * other; `too-many` loads
 * @source geometry; swell and shrinkage as in the design manual of the Federal Highway Administration and
 * in Estimating in Building Construction (Pearson)
 * @example
 * ```ts
 * import { excavation } from 'flatwork-reckoner';
 *
 * const { figures } = excavation({
 *   kind: 'pit',
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
  limits: [SPREAD_CORNERS, CROSSED_CELLS, carried('loads by weight'), carried('loads by volume')],
  input: door,
  reckon,
  takes: dugAndFilled,
});

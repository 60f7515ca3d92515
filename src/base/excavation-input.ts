/** What is dug or filled, in pits, trenches, grids and sections: as it is written, and as it is read. */

import { type OutlineInput, outline } from '../outline/outline';
import { type OpeningInput, openings } from '../outline/region';
import type { QuantityInput } from '../quantity/quantity';
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
import { all, anyOf, given, holds, needs, notBoth, oneOf, where } from '../reckoning/together';
import type { RunOut } from './cut-sections';
import * as ordinary from './ordinary';
import { SOIL_DENSITY } from './ordinary';
import type { ShrinkConvention } from './shrink';

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
  /** Loose earth of it that stays on the site, for filling in along the edges; needs `swell`. By default none. */
  readonly stays?: QuantityInput<'volume'>;
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
  /** Openings in it, which are left as they are, as a pool or a tree is; none by default. */
  readonly openings?: readonly OpeningInput[];
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
  /** Openings in it, which are left as they are, as a pool or a tree is; none by default. */
  readonly openings?: readonly OpeningInput[];
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
        stays: maybe(quantity('volume', 'stays', 'not-negative', ordinary.STAYS)),
      },
      anyOf(given('truckVolume'), given('payload')),
    ),
  ),
  water: maybe(yesOrNo('water')),
});

const planned = () => ({
  outline: maybe(outline()),
  openings: maybe(openings()),
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

export function door() {
  const depths = list(quantity('length', 'depth', 'any', ordinary.CUT_DEPTH), 2, ROWS);
  const levels = list(quantity('length', 'level', 'any'), 2, ROWS);
  const cell = fields({ row: whole('row', 0, ROWS), column: whole('column', 0, ROWS) });
  return kinds('kind', [
    fields(
      { kind: word('pit'), ...planned(), ...dug(), ...earth() },
      all(oneOf(['outline'], ['area']), notBoth('openings', 'area'), ...hauling()),
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
      all(oneOf(['outline'], ['area']), notBoth('openings', 'area'), needs('haul', 'shrink'), ...hauling()),
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

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

import type { Quantity } from '../quantity/quantity';
import { type Calculation, define } from '../reckoning/calculation';
import type { Pad } from '../reckoning/pad';
import { CLOSED_FORM } from '../reckoning/source';
import type { TakeNote } from '../reckoning/takes';
import { carried } from '../reckoning/whole';
import { type Cut, type Parsed, pitCut, type ReplacementFigures, raisedFill, trenchCut } from './cut';
import { CROSSED_CELLS, gridCut } from './cut-grid';
import { type SectionFigures, sectionsCut } from './cut-sections';
import { type FillFigures, filling, type HaulFigures, loadsOf, looseFill, swollen, weightOf } from './earth';
import { heed } from './earth-advice';
import { door, type ExcavationInput } from './excavation-input';
import { compactedFrom } from './shrink';
import { FHWA_EARTHWORK, PEARSON_EXCAVATION } from './sources';
import { SPREAD_CORNERS } from './spread';

export type { ReplacementFigures } from './cut';
export type { RunOut, SectionFigures, SideFigures, StretchFigures } from './cut-sections';
export type { FillFigures, HaulFigures } from './earth';
export type { ShrinkConvention } from './shrink';

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
const dugAndFilled = ({ looseVolume, fill, haul, replacement }: ExcavationFigures): TakeNote[] => [
  haul?.looseVolume
    ? { item: 'haul-away', from: 'haul.looseVolume', of: { measured: 'loose' } }
    : fill
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

/**
 * Volume of a slab: `V = A × t`, with the thickness at the centroid where it varies in a plane, the mean
 * under a crown, and what is thickened below it.
 *
 * Source: geometry.
 */

import type { Corner } from '../geometry/polygon';
import { ringCentroid } from '../outline/centroid';
import { measure } from '../outline/measure';
import { netArea, openingArea } from '../outline/net-area';
import type { Outline, OutlineInput } from '../outline/outline';
import { type Opening, type OpeningInput, regionFields, ringsOf } from '../outline/region';
import { paired } from '../quantity/paired';
import { canonicalValue, type Quantity, type QuantityInput } from '../quantity/quantity';
import { type Calculation, define } from '../reckoning/calculation';
import { fields, maybe, quantity } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { CLOSED_FORM } from '../reckoning/source';
import * as cautions from './cautions';
import { BASE_TOLERANCE } from './ordinary';
import {
  type Beam,
  type BeamInput,
  beams,
  beamVolume,
  checkClearOfEdge,
  EDGE_CORNERS,
  type EdgeInput,
  edge,
  edgeVolume,
  type ThickEdge,
} from './thickened';
import {
  type MeasuredOpening,
  type PlaceOfThickness,
  type Thickness,
  type ThicknessInput,
  type ThicknessOver,
  thickness,
  thicknessOver,
} from './thickness';

/** Input of {@link slabVolume}. */
export interface SlabVolumeInput {
  /** The plan of the slab. */
  readonly outline: OutlineInput;
  /** Openings in it, placed in its plan; they must lie inside and apart. */
  readonly openings?: readonly OpeningInput[];
  /** Thickness of the concrete: the same everywhere, varying in a plane, or with a crown. */
  readonly thickness: ThicknessInput;
  /** An edge thickened below the slab, all around. */
  readonly edge?: EdgeInput;
  /** Beams or ribs below the slab. They must not overlap each other or the edge; that is not checked. */
  readonly beams?: readonly BeamInput[];
  /** How much lower than planned the base may be on the average. */
  readonly baseTolerance?: QuantityInput<'length'>;
}

/** Figures of {@link slabVolume}. */
export interface SlabVolumeFigures {
  /** Concrete in place as drawn, with no allowance for waste or an uneven base. */
  readonly volume: Quantity<'volume'>;
  /** Plan area, openings taken off. */
  readonly area: Quantity<'area'>;
  /** Once around the outline, without openings; of a ring both of its edges. Left out where the outline does not fix it. */
  readonly perimeter?: Quantity<'length'>;
  /** How far from its start a walk around ended. */
  readonly closingError?: Quantity<'length'>;
  /** Where the thickness varies: its mean over the plan. */
  readonly meanThickness?: Quantity<'length'>;
  /** Where it is least. */
  readonly thinnest?: PlaceOfThickness;
  /** Where it is greatest. */
  readonly thickest?: PlaceOfThickness;
  /** Part of the volume in the thickened edge, below the slab. */
  readonly edgeVolume?: Quantity<'volume'>;
  /** Part of the volume in beams, below the slab. */
  readonly beamVolume?: Quantity<'volume'>;
  /** What the tolerance of the base would take on top. */
  readonly toleranceVolume?: Quantity<'volume'>;
  /** The volume with it. */
  readonly withTolerance?: Quantity<'volume'>;
}

interface Parsed {
  readonly outline: Outline;
  readonly openings: readonly Opening[] | undefined;
  readonly thickness: Thickness;
  readonly edge: ThickEdge | undefined;
  readonly beams: readonly Beam[] | undefined;
  readonly baseTolerance: Quantity<'length'> | undefined;
}

/** IRC 2009 R506.1, as quoted. */
const LEAST_THICKNESS = /*#__PURE__*/ paired('length', '3.5 in', '89 mm');

/** Thinner than this nothing is cast on ground. */
const TOPPING = /*#__PURE__*/ paired('length', '2 in', '50 mm');

/** The middle of an opening; that of a round or regular one is where it stands. */
const middleOf = (opening: Opening, ring: readonly Corner[]): Corner =>
  opening.shape === 'circle' || opening.shape === 'regular'
    ? { x: canonicalValue(opening.at.x), y: canonicalValue(opening.at.y) }
    : ringCentroid(ring);

/** The openings, checked to lie inside and apart, each measured. */
function openingsOf({ outline: shape, openings = [], edge: thick }: Parsed, pad: Pad): MeasuredOpening[] {
  if (openings.length === 0) return [];
  const { openings: rings } = ringsOf({ outline: shape, openings });
  if (thick) checkClearOfEdge(shape, thick, rings);
  return openings.map((opening, i) => {
    const ring = rings[i] as readonly Corner[];
    return { opening, ring, area: openingArea(opening, i, pad), centroid: middleOf(opening, ring) };
  });
}

type Varying = Pick<SlabVolumeFigures, 'meanThickness' | 'thinnest' | 'thickest'>;

function thicknessFigures(over: ThicknessOver, pad: Pad): Varying {
  const { mean, least: thin, thinnest, thickest } = over;
  const limit = LEAST_THICKNESS.undercutBy(thin);
  const isTopping = mean === thin && TOPPING.undercutBy(thin);
  if (limit) pad.caution((isTopping ? cautions.thinTopping : cautions.thinSlab)(limit, thin));
  if (mean === thin) return {};
  return thinnest && thickest ? { meanThickness: mean, thinnest, thickest } : { meanThickness: mean };
}

/** What goes below the slab. */
function belowSlab(
  input: Parsed,
  slab: Quantity<'volume'>,
  pad: Pad,
): Pick<SlabVolumeFigures, 'volume' | 'edgeVolume' | 'beamVolume'> {
  const E = input.edge && edgeVolume(input.outline, input.edge, pad);
  const G = input.beams && beamVolume(input.beams, pad);
  if (!E && !G) return { volume: slab };
  const parts = { S: slab, ...(E && { E }), ...(G && { G }) };
  const volume = Object.values(parts).reduce((sum, part) => sum.plus(part));
  pad.step('volume in all', `V = ${Object.keys(parts).join(' + ')}`, parts, volume);
  return { volume, ...(E && { edgeVolume: E }), ...(G && { beamVolume: G }) };
}

function tolerance(V: Quantity<'volume'>, A: Quantity<'area'>, t: Quantity<'length'> | undefined, pad: Pad) {
  if (!t) return {};
  const X = pad.step('for the tolerance of the base', 'X = A × t', { A, t }, A.times(t));
  const withTolerance = pad.step('with tolerance', 'W = V + X', { V, X }, V.plus(X));
  return { toleranceVolume: X, withTolerance };
}

/** What an outline's measurements leave open and the rest needs to know. */
function assumeShape({ outline: shape, edge: thick, thickness: t }: Parsed, pad: Pad): void {
  if (shape.shape === 'taped' && shape.diagonals.length > 0) {
    pad.assume({
      name: 'outline',
      value: 'every diagonal lies inside',
      because: 'tape alone cannot tell on which side of a diagonal a corner is',
      override: 'Start at a corner from which all others can be seen, or give the corners',
      source: CLOSED_FORM,
    });
  }
  if (shape.shape === 'trapezoid' && (thick || 'kind' in t)) {
    pad.assume({
      name: 'outline',
      value: 'an even trapezoid',
      because: 'parallel sides and height do not fix the slant of the others',
      override: 'Give the corners as a polygon',
      source: CLOSED_FORM,
    });
  }
}

function reckon(input: Parsed, pad: Pad): SlabVolumeFigures {
  const { area: whole, perimeter, closingError } = measure(input.outline, pad);
  assumeShape(input, pad);
  const openings = openingsOf(input, pad);
  const area = netArea(
    whole,
    openings.map((opening) => opening.area),
    pad,
  );
  const over = thicknessOver(input.outline, whole, openings, input.thickness, pad);
  const slab = area.times(over.mean);
  pad.step('volume', 'V = A × t', { A: area, t: over.mean }, slab);
  const { volume, ...parts } = belowSlab(input, slab, pad);
  return {
    volume,
    area,
    ...(perimeter && { perimeter }),
    ...(closingError && { closingError }),
    ...thicknessFigures(over, pad),
    ...parts,
    ...tolerance(volume, area, input.baseTolerance, pad),
  };
}

/**
 * Volume of a slab: any outline, thickness the same, in a plane or with a crown, edges and beams thickened
 * below.
 *
 * @param input - the outline in plan and the thickness; edge, beams and base tolerance where there are any
 * @returns volume, area and perimeter, exact until shown
 * @throws {InputError} for an outline that crosses itself, does not close or encloses nothing; `too-thin`
 * where a varying thickness goes below nothing; `does-not-fit` for an edge too wide; `not-placed` for
 * openings, an edge or a plane of thickness in an outline without a place; `not-served` for a crown or an edge
 * that the outline has no room for; and for lengths that cannot be read or are not greater than zero
 * @source closed form; the least thickness cautioned about is that of IRC 2009 R506.1 as quoted
 * @example
 * ```ts
 * import { slabVolume } from 'flatwork-reckoner';
 *
 * const { figures } = slabVolume({
 *   outline: { shape: 'rectangle', length: '28 ft', width: '18 ft' },
 *   thickness: '5 in',
 * });
 * figures.volume.format('yd3'); // '7.78 yd3'
 * ```
 */
export const slabVolume: Calculation<SlabVolumeInput, SlabVolumeFigures> = /*#__PURE__*/ define({
  id: 'slab-volume',
  title: 'Slab volume',
  version: 1,
  sources: [CLOSED_FORM],
  limits: [EDGE_CORNERS],
  input: () =>
    fields({
      ...regionFields(),
      thickness: thickness(),
      edge: maybe(edge()),
      beams: maybe(beams()),
      baseTolerance: maybe(quantity('length', 'baseTolerance', 'positive', BASE_TOLERANCE)),
    }),
  reckon,
  takes: ({ withTolerance }) => [{ item: 'concrete', from: withTolerance ? 'withTolerance' : 'volume' }],
});

/**
 * Volume of a slab: `V = A × t`, with the thickness at the centroid where it varies in a plane, and what
 * is thickened below it.
 *
 * Source: geometry.
 */
import { measure } from '../geometry/measure';
import { type Outline, type OutlineInput, outline } from '../geometry/outline';
import { constant, length } from '../quantity/make';
import type { Quantity, QuantityInput } from '../quantity/quantity';
import { type Calculation, define } from '../reckoning/calculation';
import * as cautions from '../reckoning/cautions';
import { fields, maybe, quantity } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { CLOSED_FORM } from '../reckoning/source';
import {
  type Beam,
  type BeamInput,
  beams,
  beamVolume,
  type EdgeInput,
  edge,
  edgeVolume,
  type ThickEdge,
} from './thickened';
import {
  type PlaceOfThickness,
  type Thickness,
  type ThicknessInput,
  thickness,
  thicknessOver,
} from './thickness';

/** Input of {@link slabVolume}. */
export interface SlabVolumeInput {
  /** The plan of the slab. */
  readonly outline: OutlineInput;
  /** Thickness of the concrete: the same everywhere, or varying in a plane. */
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
  /** Plan area. */
  readonly area: Quantity<'area'>;
  /** Once around the edge; left out where the outline does not fix it. */
  readonly perimeter?: Quantity<'length'>;
  /** How far from its start a walk around ended. */
  readonly closingError?: Quantity<'length'>;
  /** Where the thickness varies: its mean over the plan. */
  readonly meanThickness?: Quantity<'length'>;
  /** Where it is least, at a corner. */
  readonly thinnest?: PlaceOfThickness;
  /** Where it is greatest, at a corner. */
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
  readonly thickness: Thickness;
  readonly edge: ThickEdge | undefined;
  readonly beams: readonly Beam[] | undefined;
  readonly baseTolerance: Quantity<'length'> | undefined;
}

/** IRC 2009 R506.1, as quoted. */
const LEAST_THICKNESS = constant(() => length('3.5 in'));

function thicknessFigures(
  input: Parsed,
  pad: Pad,
): Pick<SlabVolumeFigures, 'meanThickness' | 'thinnest' | 'thickest'> & { mean: Quantity<'length'> } {
  const { mean, thinnest, thickest } = thicknessOver(input.outline, input.thickness, pad);
  const least = LEAST_THICKNESS();
  const thin = thinnest?.thickness ?? mean;
  if (thin.lessThan(least)) pad.caution(cautions.thinSlab(least, thin));
  return thinnest && thickest ? { mean, meanThickness: mean, thinnest, thickest } : { mean };
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
  const parts = { S: slab, ...(E ? { E } : {}), ...(G ? { G } : {}) };
  const volume = Object.values(parts).reduce((sum, part) => sum.plus(part));
  pad.step('volume in all', `V = ${Object.keys(parts).join(' + ')}`, parts, volume);
  return { volume, ...(E ? { edgeVolume: E } : {}), ...(G ? { beamVolume: G } : {}) };
}

function tolerance(V: Quantity<'volume'>, A: Quantity<'area'>, t: Quantity<'length'> | undefined, pad: Pad) {
  if (!t) return {};
  const X = pad.step('for the tolerance of the base', 'X = A × t', { A, t }, A.times(t));
  const withTolerance = pad.step('with tolerance', 'W = V + X', { V, X }, V.plus(X));
  return { toleranceVolume: X, withTolerance };
}

function reckon(input: Parsed, pad: Pad): SlabVolumeFigures {
  const { area, perimeter, closingError } = measure(input.outline, pad);
  const { mean, ...varying } = thicknessFigures(input, pad);
  const slab = area.times(mean);
  pad.step('volume', 'V = A × t', { A: area, t: mean }, slab);
  const { volume, ...parts } = belowSlab(input, slab, pad);
  return {
    volume,
    area,
    ...(perimeter ? { perimeter } : {}),
    ...(closingError ? { closingError } : {}),
    ...varying,
    ...parts,
    ...tolerance(volume, area, input.baseTolerance, pad),
  };
}

/**
 * Volume of a slab: any outline, thickness the same or in a plane, edges and beams thickened below.
 *
 * @param input - the outline in plan and the thickness; edge, beams and base tolerance where there are any
 * @returns volume, area and perimeter, exact until shown
 * @throws {InputError} for an outline that crosses itself, does not close or encloses nothing; `too-thin`
 * where a varying thickness goes below nothing; `does-not-fit` for an edge too wide; and for lengths
 * that cannot be read or are not greater than zero
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
  title: 'Volume of a slab',
  version: 1,
  sources: [CLOSED_FORM],
  input: () =>
    fields({
      outline: outline(),
      thickness: thickness(),
      edge: maybe(edge()),
      beams: maybe(beams()),
      baseTolerance: maybe(quantity('length', 'baseTolerance')),
    }),
  reckon,
});

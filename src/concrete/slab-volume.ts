/**
 * Volume of a slab of uniform thickness: `V = A × t`.
 *
 * Source: geometry.
 */
import { measure } from '../geometry/measure';
import { type Outline, type OutlineInput, outline } from '../geometry/outline';
import { constant, length } from '../quantity/make';
import type { Quantity, QuantityInput } from '../quantity/quantity';
import { type Calculation, define } from '../reckoning/calculation';
import * as cautions from '../reckoning/cautions';
import { fields, quantity } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { CLOSED_FORM } from '../reckoning/source';

/** Input of {@link slabVolume}. */
export interface SlabVolumeInput {
  /** The plan of the slab. */
  readonly outline: OutlineInput;
  /** Thickness of the concrete, greater than zero. */
  readonly thickness: QuantityInput<'length'>;
}

/** Figures of {@link slabVolume}. */
export interface SlabVolumeFigures {
  /** Concrete in place, with no allowance for waste or an uneven base. */
  readonly volume: Quantity<'volume'>;
  /** Plan area. */
  readonly area: Quantity<'area'>;
  /** Once around the edge; left out where the outline does not fix it. */
  readonly perimeter?: Quantity<'length'>;
}

interface Parsed {
  readonly outline: Outline;
  readonly thickness: Quantity<'length'>;
}

/** IRC 2009 R506.1, as quoted. */
const LEAST_THICKNESS = constant(() => length('3.5 in'));

function reckon(input: Parsed, pad: Pad): SlabVolumeFigures {
  const { area, perimeter } = measure(input.outline, pad);
  const volume = area.times(input.thickness);
  pad.step('volume', 'V = A × t', { A: area, t: input.thickness }, volume);
  const least = LEAST_THICKNESS();
  if (input.thickness.lessThan(least)) pad.caution(cautions.thinSlab(least, input.thickness));
  return { volume, area, ...(perimeter ? { perimeter } : {}) };
}

/**
 * Volume of a slab of uniform thickness.
 *
 * @param input - the outline in plan and the thickness
 * @returns volume, area and perimeter, exact until shown
 * @throws {InputError} for an outline that crosses itself or encloses nothing, and for lengths that
 * cannot be read or are not greater than zero
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
  input: () => fields({ outline: outline(), thickness: quantity('length', 'thickness') }),
  reckon,
});

/**
 * Where the steel sits in the slab: cover above and below, and whether it is held there.
 *
 * A layer of thickness `d` with its top `k` below the surface of a slab of thickness `t` has
 * `t − k − d` of concrete below it. Mesh is wanted 2 in below the surface or in the upper third of the slab.
 */
import * as faults from '../quantity/faults';
import { constant, length } from '../quantity/make';
import type { Quantity, QuantityInput } from '../quantity/quantity';
import { type Calculation, define, refuse } from '../reckoning/calculation';
import * as cautions from '../reckoning/cautions';
import { choice, fields, maybe, quantity, wholeNumber } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { ACI_318_COVER, WIRE_SUPPORTS } from '../reckoning/source';

/** Input of {@link steelPlacement}. */
export interface SteelPlacementInput {
  /** What the steel is. */
  readonly steel: 'bars' | 'mesh';
  /** Of the slab. */
  readonly thickness: QuantityInput<'length'>;
  /** From the surface of the slab to the top of the steel. */
  readonly coverTop: QuantityInput<'length'>;
  /** From the top to the bottom of the steel: one bar, or two where they cross. */
  readonly layer: QuantityInput<'length'>;
  /** Distance between chairs or blocks; leave out where the steel lies on the ground. */
  readonly supports?: QuantityInput<'length'>;
  /** How high above the next lower floor the steel is tied, where it is. */
  readonly workHeight?: QuantityInput<'length'>;
}

/** Figures of {@link steelPlacement}. */
export interface SteelPlacementFigures {
  /** Concrete above the steel, as given. */
  readonly coverTop: Quantity<'length'>;
  /** Concrete below the steel. */
  readonly coverBottom: Quantity<'length'>;
  /** From the surface to the middle of the steel. */
  readonly depth: Quantity<'length'>;
  /** That depth over the thickness. */
  readonly depthRatio: Quantity<'ratio'>;
  /** True when the middle of the steel is within the upper third of the slab. */
  readonly inUpperThird: boolean;
}

type Length = Quantity<'length'>;

interface Parsed {
  readonly steel: 'bars' | 'mesh';
  readonly thickness: Length;
  readonly coverTop: Length;
  readonly layer: Length;
  readonly supports: Length | undefined;
  readonly workHeight: Length | undefined;
}

const TWO = constant(() => wholeNumber(2));
const THREE = constant(() => wholeNumber(3));
const TWO_INCHES = constant(() => length('2 in'));
const LEAST_TOP = constant(() => length('1.5 in'));
const LEAST_BOTTOM = constant(() => length('3 in'));
const SIX_FEET = constant(() => length('6 ft'));

function heed(
  input: Parsed,
  { coverTop, coverBottom, depth }: Omit<SteelPlacementFigures, 'depthRatio' | 'inUpperThird'>,
  pad: Pad,
): void {
  const { thickness, supports, workHeight } = input;
  if (coverBottom.sign() === 0 || !supports) pad.caution(cautions.steelOnGround);
  if (supports?.greaterThan(SIX_FEET())) pad.caution(cautions.supportsFarApart(SIX_FEET(), supports));
  if (coverTop.lessThan(LEAST_TOP())) pad.caution(cautions.littleTopCover(LEAST_TOP(), coverTop));
  const third = thickness.over(THREE());
  const lowest = third.lessThan(TWO_INCHES()) ? TWO_INCHES() : third;
  if (input.steel === 'mesh' && depth.greaterThan(lowest)) pad.caution(cautions.meshTooLow(lowest, depth));
  if (input.steel === 'bars' && coverBottom.lessThan(LEAST_BOTTOM())) {
    pad.caution(cautions.littleBottomCover(LEAST_BOTTOM(), coverBottom));
  }
  pad.caution(cautions.impalement);
  if (workHeight && !workHeight.lessThan(SIX_FEET())) pad.caution(cautions.tieOff(SIX_FEET(), workHeight));
}

function reckon(input: Parsed, pad: Pad): SteelPlacementFigures {
  const { thickness: t, coverTop: k, layer: d } = input;
  const coverBottom = t.minus(k).minus(d);
  if (coverBottom.sign() < 0)
    return refuse('coverTop', faults.doesNotFit('the cover with the steel', 'the thickness'));
  pad.step('cover below', 'c = t − k − d', { t, k, d }, coverBottom);
  const depth = pad.step(
    'depth of the middle of the steel',
    'z = k + d ÷ 2',
    { k, d },
    k.plus(d.over(TWO())),
  );
  const depthRatio = pad.step('as a share of the slab', 'r = z ÷ t', { z: depth, t }, depth.over(t).in('%'));
  heed(input, { coverTop: k, coverBottom, depth }, pad);
  const inUpperThird = !depth.greaterThan(t.over(THREE()));
  return { coverTop: k, coverBottom, depth, depthRatio, inUpperThird };
}

/**
 * Where the steel sits in the slab.
 *
 * @param input - thickness, cover above the steel, the steel, its supports
 * @returns cover below and depth, with cautions where the steel lies too low, too shallow or on the ground
 * @throws {InputError} `does-not-fit` for steel that is not within the slab; lengths that cannot be read
 * @source mesh and supports: Concrete Construction on the practice of the Wire Reinforcement Institute;
 * cover: ACI 318-71 as quoted
 * @example
 * ```ts
 * import { steelPlacement } from 'flatwork-reckoner';
 *
 * const { figures, cautions } = steelPlacement({
 *   steel: 'mesh',
 *   thickness: '5 in',
 *   coverTop: '2 in',
 *   layer: '0.27 in',
 *   supports: '3 ft',
 * });
 * figures.coverBottom.format('in'); // '2.73 in'
 * cautions.map(({ code }) => code).join(); // 'mesh-too-low,impalement'
 * ```
 */
export const steelPlacement: Calculation<SteelPlacementInput, SteelPlacementFigures> = /*#__PURE__*/ define({
  id: 'steel-placement',
  title: 'Steel in its place in the slab',
  version: 1,
  sources: [WIRE_SUPPORTS, ACI_318_COVER],
  input: () =>
    fields({
      steel: choice('steel', ['bars', 'mesh'] as const),
      thickness: quantity('length', 'thickness'),
      coverTop: quantity('length', 'coverTop', 'not-negative'),
      layer: quantity('length', 'layer'),
      supports: maybe(quantity('length', 'supports')),
      workHeight: maybe(quantity('length', 'workHeight')),
    }),
  reckon,
});

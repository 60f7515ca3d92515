/**
 * Where the steel sits in the slab: cover above and below, and whether it is held there.
 *
 * A layer of thickness `d` with its top `k` below the surface of a slab of thickness `t` has `t − k − d` of
 * concrete below it. Mesh is wanted 2 in below the surface or in the upper third of the slab. Bars in a slab on
 * ground are held from its middle to the upper third; lower than that they want the 3 in of concrete that is cast
 * against earth, for which a slab of 4 in or 5 in has no room.
 */

import * as faults from '../quantity/faults';
import { constant, length } from '../quantity/make';
import { type Paired, paired } from '../quantity/paired';
import type { Quantity, QuantityInput } from '../quantity/quantity';
import { type Calculation, define, refuse } from '../reckoning/calculation';
import { choice, fields, maybe, quantity, wholeNumber, yesOrNo } from '../reckoning/fields';
import { SLAB_THICKNESS } from '../reckoning/ordinary';
import type { Pad } from '../reckoning/pad';
import { COMMON_PRACTICE } from '../reckoning/source';
import { say } from '../reckoning/words';
import { barField } from './bar-field';
import { type AnyBarSize, type BarName, diameterOf } from './bars';
import * as cautions from './cautions';
import { impalement } from './cautions';
import { EARTH_COVER, EXPOSURES, type Exposure, faceCoverFor } from './cover';
import { supportsFor } from './mat-defaults';
import { CENTER_TO_THIRD } from './mat-sources';
import { unknownStyle } from './mesh-style';
import { meshSupportsFor } from './mesh-supports';
import { CHAIRS_APART, DEPTH, LAYER, WORK_HEIGHT } from './ordinary';
import { ACI_318_COVER, PLACING_TOLERANCE, WIRE_SUPPORTS } from './sources';
import { roundWire, styleField, type WireStyle } from './wire';

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
  /** Size of the bars, for their cover; without it the layer counts as one bar. */
  readonly bar?: BarName;
  /** Style of the mesh, for the distance of its supports; without it two wires make the layer. */
  readonly style?: string;
  /** What the surface has to bear; by default the weather. */
  readonly exposure?: Exposure;
  /** Distance between chairs or blocks. */
  readonly supports?: QuantityInput<'length'>;
  /** The steel is laid on the ground, to be pulled up during the pour. */
  readonly onGround?: boolean;
  /** Bars stick out of the slab: starter bars, dowels, stakes. */
  readonly projecting?: boolean;
  /** How high above the next lower floor the steel is tied, where it is. */
  readonly workHeight?: QuantityInput<'length'>;
}

/** Figures of {@link steelPlacement}. */
export interface SteelPlacementFigures {
  /** Concrete above the steel, as given. */
  readonly coverTop: Quantity<'length'>;
  /** Concrete below the steel: the height of the chairs. */
  readonly coverBottom: Quantity<'length'>;
  /** From the surface to the middle of the steel. */
  readonly depth: Quantity<'length'>;
  /** That depth over the thickness. */
  readonly depthRatio: Quantity<'ratio'>;
  /** True when the middle of the steel is within the upper third of the slab. */
  readonly inUpperThird: boolean;
  /** The least that should be above the steel. */
  readonly coverDue: Quantity<'length'>;
}

type Length = Quantity<'length'>;

interface Parsed {
  readonly steel: 'bars' | 'mesh';
  readonly thickness: Length;
  readonly coverTop: Length;
  readonly layer: Length;
  readonly bar: AnyBarSize | undefined;
  readonly style: WireStyle | undefined;
  readonly exposure: Exposure | undefined;
  readonly supports: Length | undefined;
  readonly onGround: boolean | undefined;
  readonly projecting: boolean | undefined;
  readonly workHeight: Length | undefined;
}

const TWO = constant(() => wholeNumber(2));
const THREE = constant(() => wholeNumber(3));
const TWO_INCHES = /*#__PURE__*/ paired('length', '2 in', '50 mm');
const SIX_FEET = /*#__PURE__*/ paired('length', '6 ft', '1.8 m');
/** Bars may lie so much off their place. */
const TOLERANCE = constant(() => length('1/4 in'));
/** A layer this thin is #5 at most, whether bars cross in it or not. */
const SURELY_SMALL = constant(() => length('16 mm'));

type Placed = Pick<SteelPlacementFigures, 'coverTop' | 'coverBottom' | 'depth'>;

/** The cover that is due above the steel, by its thickness and what the surface bears. */
function coverDue(input: Parsed, pad: Pad): Paired<'length'> {
  const { bar, layer, steel } = input;
  if (!input.exposure) {
    pad.assume({
      name: 'exposure',
      value: 'weather',
      because: 'a slab out of doors, or one that is open until the roof is on',
      override: 'Give exposure: inside',
      source: ACI_318_COVER,
    });
  }
  const one = bar ? diameterOf(bar) : steel === 'mesh' ? layer.over(TWO()) : layer;
  if (!bar && steel === 'bars' && layer.greaterThan(SURELY_SMALL())) {
    pad.assume({
      name: 'bar',
      value: { reckoned: layer },
      because: 'the whole layer counts as one bar',
      override: 'Give bar where two cross in the layer',
      source: ACI_318_COVER,
    });
  }
  return faceCoverFor(one, input.exposure ?? 'weather');
}

/** The most that supports may be apart under this steel. */
function supportsDue({ steel, layer, bar, style }: Parsed): Paired<'length'> | undefined {
  if (steel === 'mesh') return meshSupportsFor(style ?? roundWire(layer.over(TWO())));
  return bar ? supportsFor(bar) : undefined;
}

function heedSupports(input: Parsed, coverBottom: Length, pad: Pad): void {
  const { supports } = input;
  const due = supportsDue(input) ?? SIX_FEET;
  if (input.onGround || coverBottom.sign() === 0) pad.caution(cautions.steelOnGround);
  else if (supports && due.exceededBy(supports))
    pad.caution(cautions.supportsFarApart(due.like(supports), supports));
  else if (!supports) {
    pad.assume({
      name: 'supports',
      value: say`chairs or blocks at most ${{ apart: due.like(input.thickness) }} apart`,
      because: 'the steel stays at its height only where it is held there during the pour',
      override: 'Give supports, or onGround where there are none',
      source: input.steel === 'mesh' ? WIRE_SUPPORTS : COMMON_PRACTICE,
    });
  }
}

/** Mesh two inches down, or with its top in the upper third. */
function heedMesh({ thickness }: Parsed, coverTop: Length, pad: Pad): void {
  const third = thickness.over(THREE());
  const two = TWO_INCHES;
  if (!two.exceededBy(coverTop) || !coverTop.greaterThan(third)) return;
  const named = two.like(coverTop);
  pad.caution(cautions.meshTooLow(third.greaterThan(named) ? third : named, coverTop));
}

/** From the middle up bars are where they belong; lower, they want their 3 in, or the middle where it has no room. */
function heedBelow(input: Parsed, { coverBottom, depth }: Placed, due: Length, pad: Pad): void {
  const { thickness, layer } = input;
  const middle = thickness.over(TWO());
  if (!EARTH_COVER.undercutBy(coverBottom) || !depth.greaterThan(middle.plus(TOLERANCE()))) return;
  const earth = EARTH_COVER.like(thickness);
  if (thickness.lessThan(earth.plus(layer).plus(due))) pad.caution(cautions.belowMiddle(middle, depth));
  else pad.caution(cautions.littleBottomCover(earth, coverBottom));
}

function heed(input: Parsed, placed: Placed, due: Paired<'length'>, pad: Pad): void {
  const { coverTop, coverBottom } = placed;
  heedSupports(input, coverBottom, pad);
  const named = due.like(coverTop);
  if (due.undercutBy(coverTop))
    pad.caution(cautions.littleTopCover(named, coverTop, input.exposure === 'inside'));
  if (input.steel === 'mesh') heedMesh(input, coverTop, pad);
  else heedBelow(input, placed, named, pad);
  if (input.projecting) pad.caution(impalement);
  const { workHeight } = input;
  if (workHeight && !SIX_FEET.undercutBy(workHeight))
    pad.caution(cautions.tieOff(SIX_FEET.like(workHeight), workHeight));
}

function checkFit({ bar, layer }: Parsed): void {
  if (bar && layer.lessThan(diameterOf(bar)))
    refuse('bar', faults.doesNotFit('the bar', 'the layer it lies in'));
}

function reckon(input: Parsed, pad: Pad): SteelPlacementFigures {
  const { thickness: t, coverTop: k, layer: d } = input;
  checkFit(input);
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
  const due = coverDue(input, pad);
  heed(input, { coverTop: k, coverBottom, depth }, due, pad);
  const inUpperThird = !depth.greaterThan(t.over(THREE()));
  return { coverTop: k, coverBottom, depth, depthRatio, inUpperThird, coverDue: due.like(k) };
}

/**
 * Where the steel ends up in the slab, held to cover and to its place.
 *
 * @param input - thickness, cover above the steel, the steel, its supports
 * @returns cover below and depth, with cautions where the steel lies too low, too shallow or on the ground
 * @throws {InputError} `does-not-fit` for steel that is not within the slab; lengths that cannot be read
 * @source mesh and supports: Concrete Construction on the practice of the Wire Reinforcement Institute;
 * cover: ACI 318-71 as quoted; bars in thin slabs: International Residential Code R506.2.4, from memory
 * @example
 * ```ts
 * import { steelPlacement } from 'flatwork-reckoner';
 *
 * const { figures, cautions } = steelPlacement({
 *   steel: 'bars',
 *   thickness: '5 in',
 *   coverTop: '1 in',
 *   layer: '0.5 in',
 *   bar: '#4',
 *   supports: '3 ft',
 * });
 * figures.coverBottom.format('in'); // '3.5 in'
 * cautions.map(({ code }) => code).join(); // 'little-top-cover'
 * ```
 */
export const steelPlacement: Calculation<SteelPlacementInput, SteelPlacementFigures> = /*#__PURE__*/ define({
  id: 'steel-placement',
  title: 'Steel placement',
  version: 1,
  sources: [WIRE_SUPPORTS, ACI_318_COVER, CENTER_TO_THIRD, PLACING_TOLERANCE],
  input: () =>
    fields({
      steel: choice('steel', ['bars', 'mesh'] as const),
      thickness: quantity('length', 'thickness', 'positive', SLAB_THICKNESS),
      coverTop: quantity('length', 'coverTop', 'not-negative', DEPTH),
      layer: quantity('length', 'layer', 'positive', LAYER),
      bar: maybe(barField('bar')),
      style: maybe(styleField(unknownStyle)),
      exposure: maybe(choice('exposure', EXPOSURES)),
      supports: maybe(quantity('length', 'supports', 'positive', CHAIRS_APART)),
      onGround: maybe(yesOrNo('onGround')),
      projecting: maybe(yesOrNo('projecting')),
      workHeight: maybe(quantity('length', 'workHeight', 'positive', WORK_HEIGHT)),
    }),
  reckon,
});

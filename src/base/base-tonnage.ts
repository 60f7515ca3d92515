/**
 * Granular base under flatwork: compacted volume, tons, loose volume, loads, rate of spread.
 *
 * `mass = area × compacted depth × compacted density`; the loose volume is that mass at the loose
 * density, and the rate of spread is depth × compacted density.
 */
import { measure } from '../geometry/measure';
import { type Outline, type OutlineInput, outline } from '../geometry/outline';
import * as faults from '../quantity/faults';
import { constant, density, ratio } from '../quantity/make';
import { type Quantity, type QuantityInput, systemOfQuantity } from '../quantity/quantity';
import { type Calculation, define, refuse } from '../reckoning/calculation';
import * as cautions from '../reckoning/cautions';
import { fields, maybe, quantity, wholeNumber } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { ARMY_WEIGHTS, CLOSED_FORM } from '../reckoning/source';

/** Input of {@link baseTonnage}. Give the area or the outline, not both. */
export interface BaseTonnageInput {
  /** The plan of the base, with whatever it reaches beyond the slab. */
  readonly outline?: OutlineInput;
  /** Its area, where the outline is not at hand. */
  readonly area?: QuantityInput<'area'>;
  /** Depth after compaction. */
  readonly depth: QuantityInput<'length'>;
  /** Density after compaction, from the supplier or a test. */
  readonly compactedDensity: QuantityInput<'density'>;
  /** Density as delivered; by default that of loose crushed stone. */
  readonly looseDensity?: QuantityInput<'density'>;
  /** What one truck carries by weight; the loads are left out without it. */
  readonly truckPayload?: QuantityInput<'mass'>;
}

/** Figures of {@link baseTonnage}. */
export interface BaseTonnageFigures {
  /** Material to buy by weight, dry as the density says. */
  readonly mass: Quantity<'mass'>;
  /** Plan area. */
  readonly area: Quantity<'area'>;
  /** Volume in place. */
  readonly compactedVolume: Quantity<'volume'>;
  /** Volume as delivered. */
  readonly looseVolume: Quantity<'volume'>;
  /** Weight on each unit of area. */
  readonly rateOfSpread: Quantity<'mass-per-area'>;
  /** Whole truckloads. */
  readonly loads?: Quantity<'count'>;
}

interface Parsed {
  readonly outline: Outline | undefined;
  readonly area: Quantity<'area'> | undefined;
  readonly depth: Quantity<'length'>;
  readonly compactedDensity: Quantity<'density'>;
  readonly looseDensity: Quantity<'density'> | undefined;
  readonly truckPayload: Quantity<'mass'> | undefined;
}

const LOOSE_STONE = constant(() => density('95 pcf'));
const LOAD_LIMIT = 100_000;

function areaOf({ outline: shape, area }: Parsed, pad: Pad): Quantity<'area'> {
  if ((shape === undefined) === (area === undefined)) {
    return refuse('', faults.giveOneOf(['outline', 'area']));
  }
  return area ?? measure(shape as Outline, pad).area;
}

function looseDensity(given: Quantity<'density'> | undefined, pad: Pad): Quantity<'density'> {
  if (given) return given;
  pad.assume({
    name: 'looseDensity',
    value: LOOSE_STONE().format(),
    because: 'loose crushed rock and stone',
    override: 'Give looseDensity from the supplier',
    source: ARMY_WEIGHTS,
  });
  return LOOSE_STONE();
}

function loadsOf(M: Quantity<'mass'>, P: Quantity<'mass'>, pad: Pad): Quantity<'count'> {
  const times = M.over(P);
  if (times.greaterThan(ratio(`${LOAD_LIMIT}:1`))) {
    refuse('truckPayload', faults.tooMany('the material in loads', LOAD_LIMIT));
  }
  const loads = wholeNumber(Math.round(M.upTo(P).over(P).toNumber(':1')));
  return pad.step('loads', 'n = ceil(M ÷ P)', { M, P }, loads);
}

/** Customary masses of this size are spoken of in tons, metric ones in tonnes. */
const inTons = (mass: Quantity<'mass'>): Quantity<'mass'> =>
  mass.in(systemOfQuantity(mass) === 'metric' ? 'tonne' : 'ton');

function reckon(input: Parsed, pad: Pad): BaseTonnageFigures {
  const A = areaOf(input, pad);
  const { depth: d, compactedDensity: C, truckPayload } = input;
  const V = pad.step('compacted volume', 'V = A × d', { A, d }, A.times(d));
  const M = pad.step('weight', 'M = V × C', { V, C }, inTons(V.times(C)));
  const L = looseDensity(input.looseDensity, pad);
  const looseVolume = pad.step('loose volume', 'U = M ÷ L', { M, L }, M.over(L));
  const rateOfSpread = pad.step('rate of spread', 'S = d × C', { d, C }, d.times(C));
  const loads = truckPayload ? { loads: loadsOf(M, truckPayload, pad) } : {};
  if (!L.lessThan(C)) pad.caution(cautions.looseNotLighter(C, L));
  pad.caution(cautions.wetBase);
  pad.caution(cautions.buriedUtilities);
  return { mass: M, area: A, compactedVolume: V, looseVolume, rateOfSpread, ...loads };
}

/**
 * Granular base: how much to order.
 *
 * @param input - outline or area, compacted depth, compacted density
 * @returns weight, volumes compacted and loose, rate of spread, and loads where the truck is known
 * @throws {InputError} `give-one-of` outline and area; lengths and densities that cannot be read or
 * are not greater than zero; `too-many` loads
 * @source closed form; default loose density from TM 9-2320-366-10-1, table 2-15
 * @example
 * ```ts
 * import { baseTonnage } from 'flatwork-reckoner';
 *
 * const { figures } = baseTonnage({
 *   area: '504 ft2',
 *   depth: '6 in',
 *   compactedDensity: '135 pcf',
 *   truckPayload: '15 ton',
 * });
 * figures.mass.format(); // '17.01 ton'
 * figures.loads?.format(); // '2 each'
 * ```
 */
export const baseTonnage: Calculation<BaseTonnageInput, BaseTonnageFigures> = /*#__PURE__*/ define({
  id: 'base-tonnage',
  title: 'Granular base',
  version: 1,
  sources: [CLOSED_FORM, ARMY_WEIGHTS],
  input: () =>
    fields({
      outline: maybe(outline()),
      area: maybe(quantity('area', 'area')),
      depth: quantity('length', 'depth'),
      compactedDensity: quantity('density', 'compactedDensity'),
      looseDensity: maybe(quantity('density', 'looseDensity')),
      truckPayload: maybe(quantity('mass', 'truckPayload')),
    }),
  reckon,
});

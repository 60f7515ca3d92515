/**
 * Granular base under flatwork: what to order, by weight and by volume, and how it is placed.
 *
 * `mass = area × compacted depth × compacted density`; the loose volume is that mass at the loose
 * density, and the rate of spread is depth × compacted density. A density may be given, looked up, or
 * worked out from the solid stone and its voids: `C = solid × (1 − voids)`.
 */

import { measure } from '../outline/measure';
import { netArea, openAreas } from '../outline/net-area';
import { type Outline, outline } from '../outline/outline';
import { openings } from '../outline/region';
import * as sharedFaults from '../quantity/faults';
import { constant, ratio } from '../quantity/make';
import { type Quantity, systemOfQuantity } from '../quantity/quantity';
import { type Calculation, define, refuse } from '../reckoning/calculation';
import { choice, fields, list, maybe, quantity } from '../reckoning/fields';
import { WASTE_ALLOWANCE } from '../reckoning/ordinary';
import type { Pad } from '../reckoning/pad';
import { CLOSED_FORM } from '../reckoning/source';
import { all, allOrNone, anyOf, given, notBoth, oneOf } from '../reckoning/together';
import { carried } from '../reckoning/whole';
import { delivered, inTons, loadsOf, spreading, tonsOf } from './base-delivery';
import { compactedDensity, looseDensity, ONE } from './base-densities';
import type { BaseTonnageFigures, TonKind } from './base-figures';
import type { BaseTonnageInput, TonnageParsed } from './base-tonnage-input';
import * as cautions from './cautions';
import * as faults from './faults';
import { geotextileOf } from './geotextile';
import { COMPACTORS, type Compactor, liftsOf } from './lifts';
import { BASE_MATERIALS, type BaseMaterial } from './materials';
import * as ordinary from './ordinary';
import { SOIL_DENSITY } from './ordinary';
import { ARMY_WEIGHTS, OHIO_DENSITIES, VIRGINIA_SPREAD } from './sources';
import { SPREAD_CORNERS, spreadArea, spreadable } from './spread';

type Length = Quantity<'length'>;
type Area = Quantity<'area'>;
type Density = Quantity<'density'>;
type Mass = Quantity<'mass'>;
type Volume = Quantity<'volume'>;
type Ratio = Quantity<'ratio'>;

const LEAST_SHRINKAGE = constant(() => ratio('5%'));
const MOST_SHRINKAGE = constant(() => ratio('35%'));

/** The base in place, and with the strip that is trimmed away. */
function areasOf(input: TonnageParsed, pad: Pad): { placed: Area; withTrim: Area } {
  const { outline: shape, openings: holes, area, margin, edgeTrim } = input;
  if ((shape === undefined) === (area === undefined)) {
    return refuse('', sharedFaults.giveOneOf(['outline', 'area']));
  }
  const open = openAreas(shape, holes, pad);
  const wider = margin?.sign() || edgeTrim?.sign();
  if (!wider) {
    const placed = netArea(area ?? measure(shape as Outline, pad).area, open, pad);
    return { placed, withTrim: placed };
  }
  if (!shape) return refuse('area', faults.perimeterUnknown('a margin or an edge trim'));
  const spread = { ...spreadable(shape, 'a margin or an edge trim', pad), open };
  const m = margin ?? (edgeTrim as Length).minus(edgeTrim as Length);
  const placed = spreadArea(spread, m, ['area of the base', 'B', 'margin'], pad);
  if (!edgeTrim) return { placed, withTrim: placed };
  const o = pad.step('reach with the trim', 'o = m + t', { m, t: edgeTrim }, m.plus(edgeTrim));
  return { placed, withTrim: spreadArea(spread, o, ['area with the trim', 'W', 'edgeTrim'], pad) };
}

/** The depth, given or out of the rate of spread. */
function depthOf({ depth, rateOfSpread: S }: TonnageParsed, C: Density, pad: Pad): Length {
  if ((depth === undefined) === (S === undefined)) {
    return refuse('', sharedFaults.giveOneOf(['depth', 'rateOfSpread']));
  }
  if (depth) return depth;
  const rate = S as Quantity<'mass-per-area'>;
  const unit = systemOfQuantity(rate) === 'metric' ? 'mm' : 'in';
  return pad.step('depth', 'd = S ÷ C', { S: rate, C }, rate.over(C).in(unit));
}

function heed(input: TonnageParsed, C: Density, L: Density, shrinkage: Ratio, pad: Pad): void {
  if (!L.lessThan(C)) pad.caution(cautions.looseNotLighter(C, L));
  else if (input.looseDensity) {
    const [least, most] = [LEAST_SHRINKAGE(), MOST_SHRINKAGE()];
    const little = shrinkage.lessThan(least);
    if (little || shrinkage.greaterThan(most)) {
      pad.caution(cautions.oddShrinkage(little ? least : most, shrinkage));
    }
  }
  pad.caution(cautions.wetBase);
  pad.caution(cautions.buriedUtilities);
  pad.caution(cautions.wheelLoads);
}

/** By the rate where that was given, so that nothing is lost on the way over the depth. */
function weightOf(
  { rateOfSpread: S }: TonnageParsed,
  { A, V, C }: { A: Area; V: Volume; C: Density },
  pad: Pad,
): Mass {
  if (S) return pad.step('weight', 'M = A × S', { A, S }, inTons(A.times(S)));
  return pad.step('weight', 'M = V × C', { V, C }, inTons(V.times(C)));
}

function reckon(input: TonnageParsed, pad: Pad): BaseTonnageFigures {
  const { placed: A, withTrim } = areasOf(input, pad);
  const C = compactedDensity(input, pad);
  const d = depthOf(input, C, pad);
  const V = pad.step('compacted volume', 'V = A × d', { A, d }, A.times(d));
  const M = weightOf(input, { A, V, C }, pad);
  const T = withTrim.equals(A)
    ? M
    : pad.step(
        'weight with the trim',
        'T = W × d × C',
        { W: withTrim, d, C },
        inTons(withTrim.times(d).times(C)),
      );
  const L = looseDensity(input, C, pad);
  const { dry, wet } = delivered(input, { M, T }, pad);
  const looseVolume = pad.step('loose volume', 'U = N ÷ L', { N: dry, L }, dry.over(L));
  const shrinkage = pad.step(
    'shrinkage, loose to compacted',
    's = 1 − L ÷ C',
    { L, C },
    ONE().minus(L.over(C)).in('%'),
  );
  const spread = spreading(input, d, C, M, pad);
  const loads = loadsOf(input, wet, looseVolume, L, pad);
  const lifts = liftsOf(d, C.over(L), input, pad);
  const fabric = input.geotextile ? { geotextile: geotextileOf(A, input.geotextile, pad) } : {};
  heed(input, C, L, shrinkage, pad);
  return {
    mass: M,
    deliveredMass: wet,
    ...(input.tons ? { tons: tonsOf(wet, input.tons) } : {}),
    depth: d,
    area: A,
    compactedVolume: V,
    looseVolume,
    shrinkage,
    compactedDensity: C,
    ...spread,
    ...loads,
    ...(lifts ? { lifts } : {}),
    ...fabric,
  };
}

/**
 * Granular base: tons to order, loose and compacted volume, lifts by the tool, loads.
 *
 * @param input - outline or area, compacted depth, and a density or a material
 * @returns weight, volumes compacted and loose, rate of spread, and loads where the truck is known
 * @throws {InputError} `give-one-of` outline and area; and depth and rate of spread; `missing` density; `perimeter-unknown` and
 * `grown-together` for outlines that cannot be spread; lengths and densities that cannot be read or
 * are not greater than zero; `too-many` loads
 * @source closed form; densities as in specifications of the Ohio Department of Transportation and TM 9-2320-366-10-1; spread as in the paving
 * guide of the Virginia Department of Transportation
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
  sources: [CLOSED_FORM, OHIO_DENSITIES, ARMY_WEIGHTS, VIRGINIA_SPREAD],
  limits: [
    SPREAD_CORNERS,
    carried('loads by weight'),
    carried('loads by volume'),
    carried('lifts'),
    carried('rolls'),
  ],
  input: () =>
    fields(
      {
        outline: maybe(outline()),
        openings: maybe(openings()),
        area: maybe(quantity('area', 'area', 'positive', ordinary.PLAN_AREA)),
        margin: maybe(quantity('length', 'margin', 'not-negative', ordinary.WORKING_MARGIN)),
        edgeTrim: maybe(quantity('length', 'edgeTrim', 'not-negative', ordinary.WORKING_MARGIN)),
        depth: maybe(quantity('length', 'depth', 'positive', ordinary.BASE_DEPTH)),
        rateOfSpread: maybe(quantity('mass-per-area', 'rateOfSpread', 'positive', ordinary.SPREAD_RATE)),
        compactedDensity: maybe(quantity('density', 'compactedDensity', 'positive', SOIL_DENSITY)),
        material: maybe(choice<BaseMaterial>('material', BASE_MATERIALS)),
        solidDensity: maybe(quantity('density', 'solidDensity', 'positive', ordinary.SOLID_DENSITY)),
        voids: maybe(quantity('ratio', 'voids', 'not-negative', ordinary.VOIDS)),
        looseDensity: maybe(quantity('density', 'looseDensity', 'positive', SOIL_DENSITY)),
        moisture: maybe(quantity('ratio', 'moisture', 'not-negative', ordinary.MOISTURE)),
        allowance: maybe(quantity('ratio', 'allowance', 'not-negative', WASTE_ALLOWANCE)),
        truckPayload: maybe(quantity('mass', 'truckPayload', 'positive', ordinary.TRUCK_PAYLOAD)),
        truckVolume: maybe(quantity('volume', 'truckVolume', 'positive', ordinary.TRUCK_VOLUME)),
        compactor: maybe(choice<Compactor>('compactor', COMPACTORS)),
        rollerMass: maybe(quantity('mass', 'rollerMass', 'positive', ordinary.ROLLER_MASS)),
        looseLift: maybe(quantity('length', 'looseLift', 'positive', ordinary.LIFT)),
        spreadWidth: maybe(quantity('length', 'spreadWidth', 'positive', ordinary.SPREAD_WIDTH)),
        tons: maybe(list(choice<TonKind>('tons', ['short', 'long', 'metric']), 1, 3)),
        geotextile: maybe(
          fields({
            rollWidth: quantity('length', 'rollWidth', 'positive', ordinary.ROLL_WIDTH),
            rollLength: quantity('length', 'rollLength', 'positive', ordinary.ROLL_LENGTH),
            lap: quantity('length', 'lap', 'not-negative', ordinary.FABRIC_LAP),
          }),
        ),
      },
      all(
        oneOf(['outline'], ['area']),
        notBoth('openings', 'area'),
        oneOf(['depth'], ['rateOfSpread']),
        anyOf(given('compactedDensity'), given('solidDensity', 'voids'), given('material')),
        allOrNone('solidDensity', 'voids'),
        notBoth('compactedDensity', 'solidDensity'),
      ),
    ),
  reckon,
  takes: (_, { material, geotextile }) => [
    { item: 'base', from: 'deliveredMass', of: { material } },
    {
      item: 'geotextile',
      from: 'geotextile.rolls',
      of: { rollWidth: geotextile?.rollWidth, rollLength: geotextile?.rollLength },
    },
  ],
});

/**
 * Granular base under flatwork: what to order, by weight and by volume, and how it is placed.
 *
 * `mass = area × compacted depth × compacted density`; the loose volume is that mass at the loose
 * density, and the rate of spread is depth × compacted density. A density may be given, looked up, or
 * worked out from the solid stone and its voids: `C = solid × (1 − voids)`.
 */

import { measure } from '../outline/measure';
import { type Outline, type OutlineInput, outline } from '../outline/outline';
import * as sharedFaults from '../quantity/faults';
import { constant, length, mass, ratio } from '../quantity/make';
import { type Quantity, type QuantityInput, systemOfQuantity } from '../quantity/quantity';
import type { UnitId } from '../quantity/units';
import { type Calculation, define, refuse } from '../reckoning/calculation';
import { choice, fields, list, maybe, quantity } from '../reckoning/fields';
import { WASTE_ALLOWANCE } from '../reckoning/ordinary';
import type { Pad } from '../reckoning/pad';
import { CLOSED_FORM } from '../reckoning/source';
import { all, allOrNone, anyOf, given, notBoth, oneOf } from '../reckoning/together';
import { carried, wholeUnits } from '../reckoning/whole';
import { say } from '../reckoning/words';
import * as cautions from './cautions';
import * as faults from './faults';
import { type Geotextile, type GeotextileFigures, type GeotextileInput, geotextileOf } from './geotextile';
import { COMPACTORS, type Compactor, type LiftFigures, liftsOf } from './lifts';
import { BASE_MATERIALS, type BaseMaterial, densityOf, looseFor } from './materials';
import * as ordinary from './ordinary';
import { SOIL_DENSITY } from './ordinary';
import { ARMY_WEIGHTS, OHIO_DENSITIES, VIRGINIA_SPREAD } from './sources';
import { SPREAD_CORNERS, spreadArea, spreadable } from './spread';

/**
 * Input of {@link baseTonnage}. Give the area or the outline, not both, and the compacted density or a
 * material or the solid density with its voids.
 */
export interface BaseTonnageInput {
  /** The plan of the base, or of the slab when `margin` is given. */
  readonly outline?: OutlineInput;
  /** Its area, where the outline is not at hand. */
  readonly area?: QuantityInput<'area'>;
  /** How far the base reaches beyond the outline, all around; none by default. */
  readonly margin?: QuantityInput<'length'>;
  /** Strip beyond the base that is placed and trimmed away again; none by default. */
  readonly edgeTrim?: QuantityInput<'length'>;
  /** Depth after compaction. Give it or `rateOfSpread`. */
  readonly depth?: QuantityInput<'length'>;
  /** Compacted weight on each unit of area, `650 lb/yd2`, in place of the depth. */
  readonly rateOfSpread?: QuantityInput<'mass-per-area'>;
  /** Density after compaction, from the supplier or a test. */
  readonly compactedDensity?: QuantityInput<'density'>;
  /** Material whose usual densities stand in for those that are not given. */
  readonly material?: BaseMaterial;
  /** Density of the solid stone, with `voids`, in place of the compacted density. */
  readonly solidDensity?: QuantityInput<'density'>;
  /** Share of voids once compacted. */
  readonly voids?: QuantityInput<'ratio'>;
  /** Density as delivered; by default as much lighter as the material usually is. */
  readonly looseDensity?: QuantityInput<'density'>;
  /** Water in the material, as a share of its dry weight; it is paid for and hauled. */
  readonly moisture?: QuantityInput<'ratio'>;
  /** Share added for waste and soft spots. */
  readonly allowance?: QuantityInput<'ratio'>;
  /** What one truck carries by weight. */
  readonly truckPayload?: QuantityInput<'mass'>;
  /** What one truck holds by volume, loose. */
  readonly truckVolume?: QuantityInput<'volume'>;
  /** What compacts it; with it the lifts are given. */
  readonly compactor?: Compactor;
  /** Weight of the roller; with it the lift of a vibratory roller goes by its weight. */
  readonly rollerMass?: QuantityInput<'mass'>;
  /** Thickness of a lift as spread, in place of the rule for the compactor. */
  readonly looseLift?: QuantityInput<'length'>;
  /** Width that is spread at once; with it the length that a ton reaches is given. */
  readonly spreadWidth?: QuantityInput<'length'>;
  /** Geotextile under the base. */
  readonly geotextile?: GeotextileInput;
  /** Tons to give the weight to buy in, besides the one that is usual for the units of the input. */
  readonly tons?: readonly TonKind[];
}

/** Short tons of 2,000 lb, long tons of 2,240 lb, or tonnes of 1,000 kg. */
export type TonKind = 'short' | 'long' | 'metric';

/** The weight to buy in each of the tons that were asked for. */
export interface TonFigures {
  /** Tons of 2,000 lb. */
  readonly short?: Quantity<'mass'>;
  /** Tons of 2,240 lb. */
  readonly long?: Quantity<'mass'>;
  /** Tonnes of 1,000 kg. */
  readonly metric?: Quantity<'mass'>;
}

/** Figures of {@link baseTonnage}. */
export interface BaseTonnageFigures {
  /** Weight in place, dry as the density says. */
  readonly mass: Quantity<'mass'>;
  /** Weight to buy: with the trim, the allowance and the water. */
  readonly deliveredMass: Quantity<'mass'>;
  /** The same in the tons that were asked for. */
  readonly tons?: TonFigures;
  /** Depth after compaction. */
  readonly depth: Quantity<'length'>;
  /** Plan area of the base in place. */
  readonly area: Quantity<'area'>;
  /** Volume in place. */
  readonly compactedVolume: Quantity<'volume'>;
  /** Volume as delivered, with the trim and the allowance. */
  readonly looseVolume: Quantity<'volume'>;
  /** Loose volume lost in compaction, as a share of it. */
  readonly shrinkage: Quantity<'ratio'>;
  /** Compacted density that was used. */
  readonly compactedDensity: Quantity<'density'>;
  /** Weight on each unit of area. */
  readonly rateOfSpread: Quantity<'mass-per-area'>;
  /** Weight on each unit of area for each inch of depth, or for each centimeter where the depth is metric. */
  readonly rateForUnitDepth: Quantity<'mass-per-area'>;
  /** How far a ton (a tonne where the depth is metric) reaches at the width spread. */
  readonly reach?: Quantity<'length'>;
  /** How far all of it reaches at the width spread. */
  readonly spreadLength?: Quantity<'length'>;
  /** Whole truckloads. */
  readonly loads?: Quantity<'count'>;
  /** Loads if only weight counted. */
  readonly loadsByWeight?: Quantity<'count'>;
  /** Loads if only volume counted. */
  readonly loadsByVolume?: Quantity<'count'>;
  /** What limits a load. */
  readonly governs?: 'weight' | 'volume';
  /** What a truck filled by volume weighs, without added water. */
  readonly fullTruck?: Quantity<'mass'>;
  /** Lifts to place it in. */
  readonly lifts?: LiftFigures;
  /** Geotextile to buy. */
  readonly geotextile?: GeotextileFigures;
}

type Length = Quantity<'length'>;
type Area = Quantity<'area'>;
type Density = Quantity<'density'>;
type Mass = Quantity<'mass'>;
type Volume = Quantity<'volume'>;
type Ratio = Quantity<'ratio'>;

interface Parsed {
  readonly outline: Outline | undefined;
  readonly area: Area | undefined;
  readonly margin: Length | undefined;
  readonly edgeTrim: Length | undefined;
  readonly depth: Length | undefined;
  readonly rateOfSpread: Quantity<'mass-per-area'> | undefined;
  readonly rollerMass: Mass | undefined;
  readonly tons: readonly TonKind[] | undefined;
  readonly compactedDensity: Density | undefined;
  readonly material: BaseMaterial | undefined;
  readonly solidDensity: Density | undefined;
  readonly voids: Ratio | undefined;
  readonly looseDensity: Density | undefined;
  readonly moisture: Ratio | undefined;
  readonly allowance: Ratio | undefined;
  readonly truckPayload: Mass | undefined;
  readonly truckVolume: Volume | undefined;
  readonly compactor: Compactor | undefined;
  readonly looseLift: Length | undefined;
  readonly spreadWidth: Length | undefined;
  readonly geotextile: Geotextile | undefined;
}

const LEAST_SHRINKAGE = constant(() => ratio('5%'));
const MOST_SHRINKAGE = constant(() => ratio('35%'));
const ONE = constant(() => ratio('1:1'));
const NONE = constant(() => ratio('0:1'));
const INCH = constant(() => length('1 in'));
const CENTIMETER = constant(() => length('1 cm'));
const TON = constant(() => mass('1 ton'));
const TONNE = constant(() => mass('1 tonne'));

/** The base in place, and with the strip that is trimmed away. */
function areasOf(input: Parsed, pad: Pad): { placed: Area; withTrim: Area } {
  const { outline: shape, area, margin, edgeTrim } = input;
  if ((shape === undefined) === (area === undefined)) {
    return refuse('', sharedFaults.giveOneOf(['outline', 'area']));
  }
  const wider = margin?.sign() || edgeTrim?.sign();
  if (!wider) {
    const placed = area ?? measure(shape as Outline, pad).area;
    return { placed, withTrim: placed };
  }
  if (!shape) return refuse('area', faults.perimeterUnknown('a margin or an edge trim'));
  const spread = spreadable(shape, 'a margin or an edge trim', pad);
  const m = margin ?? (edgeTrim as Length).minus(edgeTrim as Length);
  const placed = spreadArea(spread, m, ['area of the base', 'B', 'margin'], pad);
  if (!edgeTrim) return { placed, withTrim: placed };
  const o = pad.step('reach with the trim', 'o = m + t', { m, t: edgeTrim }, m.plus(edgeTrim));
  return { placed, withTrim: spreadArea(spread, o, ['area with the trim', 'W', 'edgeTrim'], pad) };
}

function fromVoids({ solidDensity, voids }: Parsed, pad: Pad): Density | undefined {
  if (!solidDensity) {
    return voids
      ? refuse(
          'solidDensity',
          sharedFaults.missing('solidDensity', ['"165 pcf", with voids', '"2650 kg/m3", with voids']),
        )
      : undefined;
  }
  if (!voids) return refuse('voids', sharedFaults.missing('voids', '"35%", with solidDensity'));
  const left = ONE().minus(voids);
  if (left.sign() <= 0) return refuse('voids', sharedFaults.doesNotFit('voids', '100%'));
  return pad.step(
    'compacted density',
    'C = S × (1 − v)',
    { S: solidDensity, v: voids },
    solidDensity.times(left),
  );
}

/** Densities are shown in the family of units that the job is in. */
const densityUnit = ({ system }: Pad): 'pcf' | 'kg/m3' => (system === 'metric' ? 'kg/m3' : 'pcf');

function compactedDensity(input: Parsed, pad: Pad): Density {
  const { compactedDensity: given, material } = input;
  const solid = fromVoids(input, pad);
  if (given && solid) return refuse('', sharedFaults.giveOneOf(['compactedDensity', 'solidDensity']));
  const known = given ?? solid;
  if (known) return known;
  if (!material) {
    return refuse(
      'compactedDensity',
      sharedFaults.missing('compactedDensity', [
        '"135 pcf", or give material',
        '"2160 kg/m3", or give material',
      ]),
    );
  }
  const { value, range, source } = densityOf(material, 'compacted', densityUnit(pad));
  pad.assume({
    name: 'compactedDensity',
    value: { reckoned: value },
    because: range,
    override: 'Give compactedDensity from the supplier or a test',
    source,
  });
  return value;
}

/** Loose density: given, that of the table with the compacted one beside it, or by their usual pair. */
function looseDensity(input: Parsed, C: Density, pad: Pad): Density {
  const { looseDensity: given, material } = input;
  if (given) return given;
  const tabled = material && !input.compactedDensity && !input.solidDensity;
  const known = tabled ? densityOf(material, 'loose', densityUnit(pad)) : looseFor(C, material);
  pad.assume({
    name: 'looseDensity',
    value: { reckoned: known.value },
    because: known.range,
    override: 'Give looseDensity from the supplier',
    source: known.source,
  });
  return known.value;
}

/** The depth, given or out of the rate of spread. */
function depthOf({ depth, rateOfSpread: S }: Parsed, C: Density, pad: Pad): Length {
  if ((depth === undefined) === (S === undefined)) {
    return refuse('', sharedFaults.giveOneOf(['depth', 'rateOfSpread']));
  }
  if (depth) return depth;
  const rate = S as Quantity<'mass-per-area'>;
  const unit = systemOfQuantity(rate) === 'metric' ? 'mm' : 'in';
  return pad.step('depth', 'd = S ÷ C', { S: rate, C }, rate.over(C).in(unit));
}

/** Customary masses of this size are spoken of in tons, metric ones in tonnes. */
const inTons = (q: Mass): Mass => q.in(systemOfQuantity(q) === 'metric' ? 'tonne' : 'ton');

type LoadFigures = Pick<
  BaseTonnageFigures,
  'loads' | 'loadsByWeight' | 'loadsByVolume' | 'governs' | 'fullTruck'
>;

/** Loads by weight, by volume and the greater of the two. */
function loadsOf(
  { truckPayload: P, truckVolume: T }: Parsed,
  D: Mass,
  U: Volume,
  L: Density,
  pad: Pad,
): LoadFigures {
  const w = P ? wholeUnits('loads by weight', D, P, 'truckPayload', pad) : undefined;
  const v = T ? wholeUnits('loads by volume', U, T, 'truckVolume', pad) : undefined;
  const full = T
    ? { fullTruck: pad.step('a truck filled by volume', 'F = T × L', { T, L }, inTons(T.times(L))) }
    : {};
  if (!w && !v) return {};
  const each = { ...(w ? { loadsByWeight: w } : {}), ...(v ? { loadsByVolume: v } : {}), ...full };
  if (!v) return { loads: w as Quantity<'count'>, ...each, governs: 'weight' };
  if (!w) return { loads: v, ...each, governs: 'volume' };
  const heavier = D.over(P as Mass).greaterThan(U.over(T as Volume));
  const loads = pad.step('loads', 'n = max(v, w)', { v, w }, heavier ? w : v);
  return { loads, ...each, governs: heavier ? 'weight' : 'volume' };
}

/** What is bought above what lies in place: the trim, the allowance and the water. */
function delivered(input: Parsed, { M, T }: { M: Mass; T: Mass }, pad: Pad): { dry: Mass; wet: Mass } {
  const a = input.allowance ?? NONE();
  const dry = input.allowance
    ? pad.step('with the allowance', 'N = T × (1 + a)', { T, a }, T.times(ONE().plus(a)))
    : T;
  const w = input.moisture;
  if (w)
    return {
      dry,
      wet: pad.step('with its water', 'D = N × (1 + w)', { N: dry, w }, dry.times(ONE().plus(w))),
    };
  pad.assume({
    name: 'moisture',
    value: 'none',
    because: say`the weight of ${{ M }} is dry, as the density says`,
    override: 'Give moisture, the share of water that comes with the material',
    source: CLOSED_FORM,
  });
  return { dry, wet: dry };
}

type SpreadFigures = Pick<BaseTonnageFigures, 'rateOfSpread' | 'rateForUnitDepth' | 'reach' | 'spreadLength'>;

function spreading(
  { spreadWidth: W, rateOfSpread: given }: Parsed,
  d: Length,
  C: Density,
  M: Mass,
  pad: Pad,
): SpreadFigures {
  const metric = systemOfQuantity(d) === 'metric';
  const S = given ?? pad.step('rate of spread', 'S = d × C', { d, C }, d.times(C));
  const u = metric ? CENTIMETER() : INCH();
  const unit = metric ? 'kg/m2' : 'lb/yd2';
  const rateForUnitDepth = pad.step(
    say`rate for each ${{ depth: u }} of depth`,
    'R = u × C',
    { u, C },
    u.times(C).in(unit),
  );
  if (!W) return { rateOfSpread: S, rateForUnitDepth };
  const T = metric ? TONNE() : TON();
  const line = S.times(W);
  const reach = pad.step(
    say`length that ${{ weight: T }} reaches`,
    'l = T ÷ (S × W)',
    { T, S, W },
    T.over(line),
  );
  const spreadLength = pad.step(
    'length that all of it reaches',
    'l = M ÷ (S × W)',
    { M, S, W },
    M.over(line),
  );
  return { rateOfSpread: S, rateForUnitDepth, reach, spreadLength };
}

const TON_UNITS: Record<TonKind, UnitId<'mass'>> = { short: 'ton', long: 'longton', metric: 'tonne' };

const tonsOf = (wet: Mass, kinds: readonly TonKind[]): TonFigures =>
  Object.fromEntries(kinds.map((kind) => [kind, wet.in(TON_UNITS[kind])]));

function heed(input: Parsed, C: Density, L: Density, shrinkage: Ratio, pad: Pad): void {
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
  { rateOfSpread: S }: Parsed,
  { A, V, C }: { A: Area; V: Volume; C: Density },
  pad: Pad,
): Mass {
  if (S) return pad.step('weight', 'M = A × S', { A, S }, inTons(A.times(S)));
  return pad.step('weight', 'M = V × C', { V, C }, inTons(V.times(C)));
}

function reckon(input: Parsed, pad: Pad): BaseTonnageFigures {
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

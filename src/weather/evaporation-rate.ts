/**
 * How fast the surface of fresh concrete dries, and what to do about it.
 *
 * One equation, of Uno (1998), fitted to the nomograph that goes back to Menzel (1954). In customary units, degrees
 * Fahrenheit and miles an hour, `E = ((Tc)^2.5 − r × Ta^2.5) × (1 + 0.4 × V) × 10^-6` in lb/ft2/h; in metric units,
 * degrees Celsius and kilometers an hour, `E = 5 × ((Tc + 18)^2.5 − r × (Ta + 18)^2.5) × (V + 4) × 10^-6` in kg/m2/h.
 * The metric constants are rounded, so that both differ by some 4%; each job is told what its own system prints.
 *
 * By the pressures of vapor, as a second method: `W = 0.44 × (e0 − r × ea) × (0.253 + 0.096 × V)` with psi and miles
 * an hour, `W = 0.315 × (e0 − r × ea) × (0.253 + 0.06 × V)` with kPa and kilometers an hour.
 *
 * The wind is that at 20 in (0.5 m) above the surface. One that was measured higher is brought down by the seventh
 * root of the heights. What a source means by the limit is the estimate, which may be 40% off either way.
 */

import { Decimal } from '../quantity/decimal';
import { greaterOf } from '../quantity/greater';
import { constant, ratio } from '../quantity/make';
import { numberOf, pure } from '../quantity/numbers';
import { paired } from '../quantity/paired';
import type { Quantity, QuantityInput } from '../quantity/quantity';
import type { System } from '../quantity/units';
import { type Calculation, define, refuse } from '../reckoning/calculation';
import { choice, fields, maybe, quantity } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { COMMON_PRACTICE, type Source } from '../reckoning/source';
import { say } from '../reckoning/words';
import { toPower } from '../solve/exponential';
import * as cautions from './cautions';
import { above, type Difference, FREEZING, ONE_DEGREE, raised, type Temperature } from './degrees';
import * as faults from './faults';
import { AIR, CONCRETE, DRYING_LIMIT, HUMIDITY, WIND, WIND_HEIGHT } from './ordinary';
import {
  ACI_EVAPORATION,
  CSA_DRYING,
  HOVER_EVAPORATION,
  MENZEL,
  SILICA_FUME_DRYING,
  UFGS_WEATHER,
  UNO,
  WIND_PROFILE,
} from './sources';
import { saturated, saturation } from './vapor';

/** Whether water rises to the surface as it does in ordinary concrete, or little, as with silica fume. */
export type Bleeding = 'ordinary' | 'little';

/** Input of {@link evaporationRate}. */
export interface EvaporationRateInput {
  /** Of the air, in the shade, 4 ft to 6 ft above the slab. */
  readonly air: QuantityInput<'temperature'>;
  /** Relative humidity of the air, `0%` to `100%`. */
  readonly humidity: QuantityInput<'ratio'>;
  /** Of the concrete at its surface; that of the load where it is not measured. */
  readonly concrete: QuantityInput<'temperature'>;
  /** Wind over the slab. */
  readonly wind: QuantityInput<'speed'>;
  /** How high above the surface the wind was measured; by default 20 in. A weather station measures at 33 ft. */
  readonly windHeight?: QuantityInput<'length'>;
  /** By default `ordinary`; `little` for silica fume, very low water and the like, which dry out sooner. */
  readonly bleeding?: Bleeding;
  /** The most that the plans allow; by default 0.2 lb/ft2/h, or half of it where little bleeds. */
  readonly limit?: QuantityInput<'evaporation'>;
}

/** What a source allows. */
export interface DryingLimit {
  /** Title of the source. */
  readonly source: string;
  /** For which concrete. */
  readonly bleeding: Bleeding;
  /** The most. */
  readonly limit: Quantity<'evaporation'>;
}

/** What can be changed about the drying of a slab. */
export type DryingChange = 'windbreak' | 'fog' | 'cooler-concrete' | 'cooler-air';

/** The drying with one thing changed. */
export interface ChangedDrying {
  /** What is changed. */
  readonly change: DryingChange;
  /** What the surface then dries at. */
  readonly rate: Quantity<'evaporation'>;
}

/** What to do, and what the surface dries at when that and all before it is done. */
export interface DryingMeasure {
  /** What to do. */
  readonly do: DryingChange | 'evaporation-retarder' | 'sheet' | 'enclosure' | 'postpone';
  /** What the surface then dries at, where it can be reckoned. */
  readonly rate?: Quantity<'evaporation'>;
}

/** Figures of {@link evaporationRate}. */
export interface EvaporationRateFigures {
  /** What the surface dries at, by the one equation; below zero, dew settles. */
  readonly rate: Quantity<'evaporation'>;
  /** The same by the pressures of vapor. */
  readonly byVaporPressure: Quantity<'evaporation'>;
  /** Pressure of the vapor at the surface of the concrete. */
  readonly vaporAtSurface: Quantity<'pressure'>;
  /** Pressure of the vapor in the air. */
  readonly vaporInAir: Quantity<'pressure'>;
  /** The least and the most that it may truly be: 40% either way. */
  readonly range: {
    /** The least. */
    readonly from: Quantity<'evaporation'>;
    /** The most. */
    readonly to: Quantity<'evaporation'>;
  };
  /** The limit that it is held to. */
  readonly limit: Quantity<'evaporation'>;
  /** What it comes to. */
  readonly verdict: 'over the limit' | 'near the limit' | 'under the limit' | 'no drying';
  /** The wind near the surface. */
  readonly windAtSurface: Quantity<'speed'>;
  /** What each source allows. */
  readonly limits: readonly DryingLimit[];
  /** The drying with one thing changed, the one that helps most first; in cold air without fog and cooler air. */
  readonly changes: readonly ChangedDrying[];
  /** What to do, in order; left out where nothing need be done. */
  readonly next?: readonly DryingMeasure[];
}

type Drying = Quantity<'evaporation'>;
type Speed = Quantity<'speed'>;
type Ratio = Quantity<'ratio'>;

interface Parsed {
  readonly air: Temperature;
  readonly humidity: Ratio;
  readonly concrete: Temperature;
  readonly wind: Speed;
  readonly windHeight: Quantity<'length'> | undefined;
  readonly bleeding: Bleeding | undefined;
  readonly limit: Drying | undefined;
}

/** What the drying is made of. */
export interface Conditions {
  readonly concrete: Temperature;
  readonly air: Temperature;
  readonly humidity: Ratio;
  /** Near the surface. */
  readonly wind: Speed;
}

/** The constants of both equations, as each unit system prints them. */
interface Constants {
  readonly zero: string;
  readonly speed: string;
  readonly unit: string;
  readonly still: string;
  readonly perSpeed: string;
  readonly vapor: string;
  readonly pressure: string;
  readonly vaporPerSpeed: string;
}

const CONSTANTS: Readonly<Record<System, Constants>> = {
  customary: {
    zero: '0 degF',
    speed: '1 mph',
    unit: '0.000001 lb/ft2/h',
    still: '1:1',
    perSpeed: '0.4:1',
    vapor: '0.44 lb/ft2/h',
    pressure: '1 psi',
    vaporPerSpeed: '0.096:1',
  },
  metric: {
    zero: '-18 degC',
    speed: '1 km/h',
    unit: '0.000005 kg/m2/h',
    still: '4:1',
    perSpeed: '1:1',
    vapor: '0.315 kg/m2/h',
    pressure: '1 kPa',
    vaporPerSpeed: '0.06:1',
  },
};

const pairedBy = <D extends 'speed' | 'evaporation' | 'ratio' | 'pressure' | 'temperature'>(
  dimension: D,
  name: keyof Constants,
) => paired(dimension, CONSTANTS.customary[name], CONSTANTS.metric[name]);

const ZERO = /*#__PURE__*/ pairedBy('temperature', 'zero');
const ONE_SPEED = /*#__PURE__*/ pairedBy('speed', 'speed');
const UNIT = /*#__PURE__*/ pairedBy('evaporation', 'unit');
const STILL = /*#__PURE__*/ pairedBy('ratio', 'still');
const PER_SPEED = /*#__PURE__*/ pairedBy('ratio', 'perSpeed');
const VAPOR = /*#__PURE__*/ pairedBy('evaporation', 'vapor');
const ONE_PRESSURE = /*#__PURE__*/ pairedBy('pressure', 'pressure');
const VAPOR_PER_SPEED = /*#__PURE__*/ pairedBy('ratio', 'vaporPerSpeed');
const VAPOR_STILL = '0.253';
const POWER = '2.5';

const WHOLE = constant(() => ratio('100%'));
/** How far off the estimate may be. */
const OFF = constant(() => ratio('40%'));

/** Water freezes below, and neither the tables nor the equations go above. */
const LOWEST = FREEZING;
const HIGHEST = /*#__PURE__*/ paired('temperature', '122 degF', '50 degC');
/** The chart that the equation was fitted to, from memory. */
const CHART = {
  coldest: /*#__PURE__*/ paired('temperature', '40 degF', '4 degC'),
  warmest: /*#__PURE__*/ paired('temperature', '100 degF', '38 degC'),
  windiest: /*#__PURE__*/ paired('speed', '25 mph', '40 km/h'),
};

const WIND_MEASURED = /*#__PURE__*/ paired('length', '20 in', '0.5 m');
const PROFILE = 7;

const LIMITS: Readonly<Record<Bleeding, ReturnType<typeof paired<'evaporation'>>>> = {
  ordinary: /*#__PURE__*/ paired('evaporation', '0.2 lb/ft2/h', '1 kg/m2/h'),
  little: /*#__PURE__*/ paired('evaporation', '0.1 lb/ft2/h', '0.5 kg/m2/h'),
};
const LIMIT_SOURCE: Readonly<Record<Bleeding, Source>> = {
  ordinary: ACI_EVAPORATION,
  little: SILICA_FUME_DRYING,
};
/** What sources allow: those that disagree stand side by side. */
const PUBLISHED: readonly (readonly [Source, Bleeding, Bleeding])[] = [
  [ACI_EVAPORATION, 'ordinary', 'ordinary'],
  [UFGS_WEATHER, 'ordinary', 'ordinary'],
  [CSA_DRYING, 'ordinary', 'little'],
  [SILICA_FUME_DRYING, 'little', 'little'],
];

const HALF_WIND = constant(() => ratio('50%'));
const FOGGED = constant(() => ratio('90%'));
const COOLER_CONCRETE = /*#__PURE__*/ paired('temperature-difference', '10 degF', '5 degC');
const COOLER_AIR = /*#__PURE__*/ paired('temperature-difference', '15 degF', '8 degC');
const HEAT = /*#__PURE__*/ paired('temperature', '90 degF', '32 degC');
/** Below, fog freezes on what it wets, and a cooler hour is a frost: there is only shelter. */
const COLD_AIR = /*#__PURE__*/ paired('temperature', '50 degF', '10 degC');
/** Concrete of a thin section comes no colder in cold weather. */
const KEPT_WARM = /*#__PURE__*/ paired('temperature', '55 degF', '13 degC');

function within(path: 'air' | 'concrete', t: Temperature): void {
  const high = HIGHEST.as('customary').lessThan(t);
  if (high || t.lessThan(LOWEST.as('customary')))
    refuse(path, faults.outsideRange(path, ['32 degF to 122 degF', '0 degC to 50 degC']));
}

function checked({ air, concrete, humidity }: Parsed): void {
  within('air', air);
  within('concrete', concrete);
  if (humidity.greaterThan(WHOLE())) refuse('humidity', faults.outsideRange('humidity', '0% to 100%'));
}

/** The wind near the surface, from the height at which it was measured. */
function nearSurface({ wind: V, windHeight: H }: Parsed, pad: Pad): Speed {
  const h = WIND_MEASURED.as(pad.system);
  if (!H) {
    pad.assume({
      name: 'windHeight',
      value: WIND_MEASURED,
      because: 'the equations want the wind near the surface; one from a weather station is stronger',
      override: say`Give windHeight, ${{ height: paired('length', '33 ft', '10 m') }} for a weather station`,
      source: ACI_EVAPORATION,
    });
    return V;
  }
  const factor = toPower(numberOf(h.over(H)), new Decimal(1).div(PROFILE));
  return pad.step(
    'wind near the surface',
    `w = V × (h ÷ H)^(1 ÷ ${PROFILE})`,
    { V, h, H },
    V.times(pure(factor)),
  );
}

/** To the power of 2.5, by a root, which costs a tenth of a power. */
function raisedTo(d: Difference, u: Difference): Decimal {
  const n = numberOf(d.over(u));
  return n.times(n).times(n.sqrt());
}

/** The one equation. */
export function byOneEquation(
  what: string,
  { concrete, air, humidity: r, wind: V }: Conditions,
  pad: Pad,
): Drying {
  const z = ZERO.as(pad.system);
  const [C, A] = [above(z, concrete), above(z, air)];
  const [u, v, e] = [ONE_DEGREE.as(pad.system), ONE_SPEED.as(pad.system), UNIT.as(pad.system)];
  const [s, k] = [STILL.as(pad.system), PER_SPEED.as(pad.system)];
  const drive = raisedTo(C, u).minus(raisedTo(A, u).times(numberOf(r)));
  const wind = numberOf(s).plus(numberOf(V.over(v)).times(numberOf(k)));
  return pad.step(
    what,
    `E = e × (((T − z) ÷ u)^${POWER} − r × ((A − z) ÷ u)^${POWER}) × (s + k × V ÷ v)`,
    { e, T: concrete, A: air, z, u, r, s, k, V, v },
    e.times(pure(drive.times(wind))),
  );
}

type ByPressures = Pick<EvaporationRateFigures, 'vaporAtSurface' | 'vaporInAir' | 'byVaporPressure'>;

/** By the pressures of vapor at the surface and in the air. */
function byPressures({ concrete, air, humidity: r, wind: V }: Conditions, pad: Pad): ByPressures {
  const e = saturation('vapor at the surface', concrete, pad);
  const m = saturation('vapor in the air, were it saturated', air, pad);
  const a = pad.step('vapor in the air', 'a = r × m', { r, m }, m.times(r));
  const [c, p, v] = [VAPOR, ONE_PRESSURE, ONE_SPEED].map((pair) => pair.as(pad.system)) as [
    Drying,
    Quantity<'pressure'>,
    Speed,
  ];
  const k = VAPOR_PER_SPEED.as(pad.system);
  const wind = new Decimal(VAPOR_STILL).plus(numberOf(k).times(numberOf(V.over(v))));
  const drive = numberOf(e.minus(a).over(p));
  const byVaporPressure = pad.step(
    'drying by the pressures of vapor',
    `W = c × ((e − a) ÷ p) × (${VAPOR_STILL} + k × V ÷ v)`,
    { c, e, a, p, k, V, v },
    c.times(pure(drive.times(wind))),
  );
  return { vaporAtSurface: e, vaporInAir: a, byVaporPressure };
}

const moreHumid = (a: Ratio, b: Ratio): Ratio => (a.lessThan(b) ? b : a);

/** No colder than where the equations end. */
const cooled = (t: Temperature, by: Difference, { system }: Pad): Temperature =>
  greaterOf(raised(t, by.negated()), LOWEST.as(system));

/** Air of an earlier hour: cooler, with the same water in it. */
function earlier({ air, humidity, ...rest }: Conditions, pad: Pad): Conditions {
  const cooler = cooled(air, COOLER_AIR.as(pad.system), pad);
  const same = humidity.times(saturated(air, pad).over(saturated(cooler, pad)));
  const r = WHOLE().lessThan(same) ? WHOLE() : same.in('%');
  return { ...rest, air: cooler, humidity: r };
}

const CHANGES: Readonly<Record<DryingChange, (c: Conditions, pad: Pad) => Conditions>> = {
  windbreak: (c) => ({ ...c, wind: c.wind.times(HALF_WIND()) }),
  fog: (c) => ({ ...c, humidity: moreHumid(c.humidity, FOGGED()) }),
  'cooler-concrete': (c, pad) => ({
    ...c,
    concrete: cooled(c.concrete, COOLER_CONCRETE.as(pad.system), pad),
  }),
  'cooler-air': earlier,
};

const CHANGE_NAMES: Readonly<Record<DryingChange, string>> = {
  windbreak: 'drying behind a windbreak',
  fog: 'drying under fog',
  'cooler-concrete': 'drying of cooler concrete',
  'cooler-air': 'drying at a cooler hour',
};

const isCold = ({ air }: Conditions): boolean => COLD_AIR.undercutBy(air) !== undefined;

/** Whether all of the cooling leaves the concrete as warm as cold weather wants it. */
const stands = ({ concrete }: Conditions, pad: Pad): boolean =>
  !raised(concrete, COOLER_CONCRETE.as(pad.system).negated()).lessThan(KEPT_WARM.as(pad.system));

/** What can be changed: in cold air neither fog nor an hour that is colder still. */
const possible = (change: DryingChange, conditions: Conditions, pad: Pad): boolean => {
  if (!isCold(conditions) || change === 'windbreak') return true;
  return change === 'cooler-concrete' && stands(conditions, pad);
};

/** What is taken of the changes, in words. */
function assumeChanges(conditions: Conditions, pad: Pad): void {
  const [wind, humidity, concrete, air] = [HALF_WIND(), FOGGED(), COOLER_CONCRETE, COOLER_AIR];
  const inTheCold = stands(conditions, pad)
    ? say`a windbreak leaves ${{ wind }} of the wind, concrete comes ${{ concrete }} cooler`
    : say`a windbreak leaves ${{ wind }} of the wind`;
  pad.assume({
    name: 'changes',
    value: isCold(conditions)
      ? inTheCold
      : say`a windbreak leaves ${{ wind }} of the wind, fog brings the air over the slab to ${{ humidity }}, concrete comes ${{ concrete }} cooler, an early hour has air ${{ air }} cooler with the same water in it`,
    because: 'what a crew can bring about; what it does on your site differs',
    override: 'Reckon again with what was measured',
    source: COMMON_PRACTICE,
  });
}

function changed(conditions: Conditions, pad: Pad): ChangedDrying[] {
  assumeChanges(conditions, pad);
  return (Object.keys(CHANGES) as DryingChange[])
    .filter((change) => possible(change, conditions, pad))
    .map((change) => ({
      change,
      rate: byOneEquation(CHANGE_NAMES[change], CHANGES[change](conditions, pad), pad),
    }))
    .sort((a, b) => a.rate.compareTo(b.rate));
}

/** In the order in which a crew does them. */
const IN_ORDER = ['windbreak', 'fog', 'cooler-concrete'] as const;
const TOGETHER: Readonly<Record<(typeof IN_ORDER)[number], string>> = {
  windbreak: 'drying, first behind a windbreak',
  fog: 'drying, then under fog too',
  'cooler-concrete': 'drying, with cooler concrete too',
};

/** Still air needs no windbreak, moist air no fog, and no concrete is cooled below what the cold wants. */
function helps(change: (typeof IN_ORDER)[number], conditions: Conditions, pad: Pad): boolean {
  const { wind, humidity } = conditions;
  if (change === 'windbreak') return wind.sign() > 0;
  if (change === 'fog') return !isCold(conditions) && humidity.lessThan(FOGGED());
  return stands(conditions, pad);
}

/** What to do until the limit is kept, with what always helps behind it. */
function nextOf(conditions: Conditions, before: Drying, limit: Drying, pad: Pad): DryingMeasure[] {
  const measures: DryingMeasure[] = [];
  let now = conditions;
  let rate = before;
  for (const change of IN_ORDER.filter((one) => helps(one, conditions, pad))) {
    now = CHANGES[change](now, pad);
    rate = byOneEquation(TOGETHER[change], now, pad);
    measures.push({ do: change, rate });
    if (!rate.greaterThan(limit)) break;
  }
  return [...measures, ...behind(isCold(conditions), rate, limit, pad)];
}

/** What always helps, and what is left where all of it is not enough: in the cold a tent, else another day. */
function behind(cold: boolean, rate: Drying, limit: Drying, pad: Pad): DryingMeasure[] {
  const covers: DryingMeasure[] = cold
    ? [{ do: 'sheet' }]
    : [{ do: 'evaporation-retarder' }, { do: 'sheet' }];
  if (!rate.greaterThan(limit)) return covers;
  pad.caution(cold ? cautions.pastHelpInCold(limit, rate) : cautions.dryingPastHelp(limit, rate));
  return [...covers, { do: cold ? 'enclosure' : 'postpone' }];
}

function limitOf({ limit, bleeding }: Parsed, pad: Pad): readonly [Drying, Source] {
  if (limit) return [limit, COMMON_PRACTICE];
  const of = bleeding ?? 'ordinary';
  if (!bleeding) {
    pad.assume({
      name: 'bleeding',
      value: 'ordinary',
      because: 'nothing says that the concrete bleeds little, as with silica fume',
      override: 'Give bleeding: "little"',
      source: LIMIT_SOURCE.little,
    });
  }
  pad.assume({
    name: 'limit',
    value: LIMITS[of],
    because: say`what is commonly allowed for concrete of ${{ bleeding: of }} bleeding`,
    override: 'Give limit as the plans have it',
    source: LIMIT_SOURCE[of],
  });
  return [LIMITS[of].as(pad.system), LIMIT_SOURCE[of]];
}

function heedChart({ air, concrete, wind }: Conditions, pad: Pad): void {
  const off = (t: Temperature): boolean =>
    CHART.coldest.undercutBy(t) !== undefined || CHART.warmest.exceededBy(t) !== undefined;
  const beyond = [
    ...(off(air) ? ['air'] : []),
    ...(off(concrete) ? ['concrete'] : []),
    ...(CHART.windiest.exceededBy(wind) ? ['wind'] : []),
  ];
  if (beyond.length > 0) pad.caution(cautions.beyondChart(beyond.join(' and ')));
}

function heedVerdict(
  verdict: EvaporationRateFigures['verdict'],
  cold: boolean,
  [limit, rate, source]: readonly [Drying, Drying, Source],
  pad: Pad,
): void {
  if (verdict === 'over the limit')
    pad.caution((cold ? cautions.fastDryingInCold : cautions.fastDrying)(limit, rate, source));
  if (verdict === 'near the limit')
    pad.caution((cold ? cautions.nearLimitInCold : cautions.dryingNearLimit)(limit, rate));
}

function reckon(input: Parsed, pad: Pad): EvaporationRateFigures {
  checked(input);
  const { air, concrete, humidity } = input;
  const windAtSurface = nearSurface(input, pad);
  const conditions: Conditions = { air, concrete, humidity, wind: windAtSurface };
  const [limit, source] = limitOf(input, pad);
  const E = byOneEquation('drying', conditions, pad);
  const pressures = byPressures(conditions, pad);
  const d = OFF();
  const size = pad.step('how far it may be off', 'o = abs(E) × d', { E, d }, E.abs().times(d));
  const range = { from: E.minus(size), to: E.plus(size) };
  const changes = changed(conditions, pad);
  heedChart(conditions, pad);
  const verdict = verdictOf(E, range.to, limit);
  heedVerdict(verdict, isCold(conditions), [limit, E, source], pad);
  if (verdict === 'no drying') pad.caution(cautions.dewOnConcrete(E.minus(E), E));
  const next =
    /limit$/.test(verdict) && verdict !== 'under the limit' ? nextOf(conditions, E, limit, pad) : undefined;
  const hot = HEAT.reachedBy(air);
  if (hot) pad.caution(cautions.heatStress(hot, air));
  return {
    rate: E,
    ...pressures,
    range,
    limit,
    verdict,
    windAtSurface,
    limits: PUBLISHED.map(([from, bleeding, row]) => ({
      source: from.title,
      bleeding,
      limit: LIMITS[row].as(pad.system),
    })),
    changes,
    ...(next ? { next } : {}),
  };
}

function verdictOf(rate: Drying, most: Drying, limit: Drying): EvaporationRateFigures['verdict'] {
  if (rate.sign() <= 0) return 'no drying';
  if (rate.greaterThan(limit)) return 'over the limit';
  return most.greaterThan(limit) ? 'near the limit' : 'under the limit';
}

/**
 * How fast the surface of fresh concrete dries, held to the limit, and what to do about it.
 *
 * The estimate may be 40% off: measure again at the slab when the concrete comes.
 *
 * @param input - temperatures of air and concrete, humidity and wind; the height of the wind, how the concrete
 * bleeds and the limit where they are known
 * @returns the rate by both methods, its range, the verdict, what sources allow, what changes it most, and what to
 * do in order
 * @throws {InputError} `outside-range` for temperatures below 32 degF (0 degC) or above 122 degF (50 degC) and for
 * a humidity over 100%; `negative` for wind or humidity below zero; quantities that cannot be read
 * @source Uno, ACI Materials Journal 1998, from memory, held to a worked example of the American Concrete Institute;
 * limits as listed in `limits`
 * @example
 * ```ts
 * import { evaporationRate } from 'flatwork-reckoner';
 *
 * const { figures, cautions } = evaporationRate({
 *   air: '80 degF',
 *   humidity: '50%',
 *   concrete: '87 degF',
 *   wind: '12 mph',
 * });
 * figures.rate.format(); // '0.243 lb/ft2/h'
 * figures.verdict; // 'over the limit'
 * figures.changes[0]?.change; // 'fog'
 * cautions[0]?.code; // 'fast-drying'
 * ```
 */
export const evaporationRate: Calculation<EvaporationRateInput, EvaporationRateFigures> =
  /*#__PURE__*/ define({
    id: 'evaporation-rate',
    title: 'Evaporation rate',
    version: 1,
    sources: [
      UNO,
      MENZEL,
      ACI_EVAPORATION,
      HOVER_EVAPORATION,
      SILICA_FUME_DRYING,
      UFGS_WEATHER,
      CSA_DRYING,
      WIND_PROFILE,
    ],
    input: () =>
      fields({
        air: quantity('temperature', 'air', 'any', AIR),
        humidity: quantity('ratio', 'humidity', 'not-negative', HUMIDITY),
        concrete: quantity('temperature', 'concrete', 'any', CONCRETE),
        wind: quantity('speed', 'wind', 'not-negative', WIND),
        windHeight: maybe(quantity('length', 'windHeight', 'positive', WIND_HEIGHT)),
        bleeding: maybe(choice('bleeding', ['ordinary', 'little'] as const)),
        limit: maybe(quantity('evaporation', 'limit', 'positive', DRYING_LIMIT)),
      }),
    reckon,
  });

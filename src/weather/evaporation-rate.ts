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
import { numberOf, pure } from '../quantity/numbers';
import { paired } from '../quantity/paired';
import type { Quantity, QuantityInput } from '../quantity/quantity';
import { type Calculation, define, refuse } from '../reckoning/calculation';
import { choice, fields, maybe, quantity } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { COMMON_PRACTICE, type Source } from '../reckoning/source';
import { say } from '../reckoning/words';
import { toPower } from '../solve/exponential';
import * as cautions from './cautions';
import type { Temperature } from './degrees';
import { changed, HEAT, isCold, LOWEST, nextOf, OFF, WHOLE } from './drying-changes';
import type { Bleeding, EvaporationRateFigures } from './drying-figures';
import { byOneEquation, byPressures, type Conditions } from './evaporation';
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

/** Input of {@link evaporationRate}. */
export interface EvaporationRateInput {
  /** Of the air, in the shade, 4 ft to 6 ft above the slab. */
  readonly airTemperature: QuantityInput<'temperature'>;
  /** Relative humidity of the air, `0%` to `100%`. */
  readonly humidity: QuantityInput<'ratio'>;
  /** Of the concrete at its surface; that of the load where it is not measured. */
  readonly concreteTemperature: QuantityInput<'temperature'>;
  /** Wind over the slab. */
  readonly wind: QuantityInput<'speed'>;
  /** How high above the surface the wind was measured; by default 20 in. A weather station measures at 33 ft. */
  readonly windHeight?: QuantityInput<'length'>;
  /** By default `ordinary`; `little` for silica fume, very low water and the like, which dry out sooner. */
  readonly bleeding?: Bleeding;
  /** The most that the plans allow; by default 0.2 lb/ft2/h, or half of it where little bleeds. */
  readonly limit?: QuantityInput<'evaporation'>;
}

type Drying = Quantity<'evaporation'>;
type Speed = Quantity<'speed'>;
type Ratio = Quantity<'ratio'>;

interface Parsed {
  readonly airTemperature: Temperature;
  readonly humidity: Ratio;
  readonly concreteTemperature: Temperature;
  readonly wind: Speed;
  readonly windHeight: Quantity<'length'> | undefined;
  readonly bleeding: Bleeding | undefined;
  readonly limit: Drying | undefined;
}

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

function within(path: 'airTemperature' | 'concreteTemperature', t: Temperature): void {
  const high = HIGHEST.as('customary').lessThan(t);
  if (high || t.lessThan(LOWEST.as('customary')))
    refuse(path, faults.outsideRange(path, ['32 degF to 122 degF', '0 degC to 50 degC']));
}

function checked({ airTemperature, concreteTemperature, humidity }: Parsed): void {
  within('airTemperature', airTemperature);
  within('concreteTemperature', concreteTemperature);
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
    ...(off(air) ? ['airTemperature'] : []),
    ...(off(concrete) ? ['concrete'] : []),
    ...(CHART.windiest.exceededBy(wind) ? ['wind'] : []),
  ];
  if (beyond.length > 0) pad.caution(cautions.beyondChart(beyond));
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
  const { airTemperature: air, concreteTemperature: concrete, humidity } = input;
  const windAtSurface = nearSurface(input, pad);
  const conditions: Conditions = { air, concrete, humidity, wind: windAtSurface };
  const [limit, source] = limitOf(input, pad);
  const E = byOneEquation('drying', conditions, pad);
  const pressures = byPressures(conditions, pad);
  const d = OFF();
  const size = pad.step('how far it may be off', 'o = abs(E) × d', { E, d }, E.abs().times(d));
  const range = { from: E.minus(size), to: E.plus(size) };
  const changes = changed(conditions, E, pad);
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
 *   airTemperature: '80 degF',
 *   humidity: '50%',
 *   concreteTemperature: '87 degF',
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
        airTemperature: quantity('temperature', 'airTemperature', 'any', AIR),
        humidity: quantity('ratio', 'humidity', 'not-negative', HUMIDITY),
        concreteTemperature: quantity('temperature', 'concreteTemperature', 'any', CONCRETE),
        wind: quantity('speed', 'wind', 'not-negative', WIND),
        windHeight: maybe(quantity('length', 'windHeight', 'positive', WIND_HEIGHT)),
        bleeding: maybe(choice('bleeding', ['ordinary', 'little'] as const)),
        limit: maybe(quantity('evaporation', 'limit', 'positive', DRYING_LIMIT)),
      }),
    reckon,
  });

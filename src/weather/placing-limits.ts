/**
 * Between which temperatures concrete is placed and kept, for how long it is protected, and what to do about the
 * weather that is coming.
 *
 * In cold weather by the table of ACI 306, by the least dimension of what is cast: as mixed by the cold of the air, as
 * placed and kept, and the most that it may cool in a day when protection ends. These are temperatures of the concrete
 * and not of the air. In hot weather by limits that disagree, side by side. How many blankets a night takes no table
 * that was read says: it is common practice.
 */
import { greaterOf } from '../quantity/greater';
import { constant, time } from '../quantity/make';
import { type Paired, paired } from '../quantity/paired';
import type { Quantity, QuantityInput } from '../quantity/quantity';
import { type Calculation, define, refuse } from '../reckoning/calculation';
import { choice, fields, maybe, quantity, whole, wholeNumber, yesOrNo } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import type { Source } from '../reckoning/source';
import { all, needs } from '../reckoning/together';
import * as cautions from './cautions';
import { raised, type Temperature } from './degrees';
import * as faults from './faults';
import { AIR, BEFORE_FROST, CONCRETE, SECTION } from './ordinary';
import {
  ACI_306_TABLES,
  ACI_306_THICK,
  AIR_IS_NOT_CONCRETE,
  BLANKET_PRACTICE,
  COLD_DEFINITIONS,
  DEICER_WAIT,
  HOT_LIMIT,
  HOT_SPECIFICATION,
  OLD_COLD_RULE,
  PROTECTION_SPECIFICATION,
  UFGS_WEATHER,
} from './sources';

/** What keeps the concrete warm. */
export type Protection = 'none' | 'blankets' | 'heated-enclosure';

/** What is done next about the weather. */
export type WeatherMeasure =
  | 'thaw-the-ground'
  | 'look-for-frost-in-the-ground'
  | 'hotter-mix'
  | 'cooler-mix'
  | 'cooler-hour'
  | 'blankets'
  | 'another-blanket'
  | 'heated-enclosure'
  | 'vent-the-heater'
  | 'cool-slowly'
  | 'no-deicer'
  | 'postpone';

/** Air that is expected. */
export interface ForecastInput {
  /** When the concrete is placed. */
  readonly placing: QuantityInput<'temperature'>;
  /** The lowest in the days of protection behind it. */
  readonly low: QuantityInput<'temperature'>;
  /** The lowest in the nights before it, which the ground has frozen in or not. */
  readonly before?: QuantityInput<'temperature'>;
}

/** Input of {@link placingLimits}. */
export interface PlacingLimitsInput {
  /** Least dimension of what is cast: the thickness of a slab. */
  readonly thickness: QuantityInput<'length'>;
  /** The air that is expected. */
  readonly forecast: ForecastInput;
  /** The concrete as it comes to the slab. */
  readonly concrete?: QuantityInput<'temperature'>;
  /** Whether the ground beneath is frozen; not said, it is doubted where it froze before the pour, or freezes then. */
  readonly ground?: 'frozen' | 'not-frozen';
  /** By default `ordinary`; `high-early` is type III, more cement or an accelerator. */
  readonly cement?: 'ordinary' | 'high-early';
  /** What it carries early: nothing, part of its load, or all. By default nothing, as flatwork. */
  readonly service?: 'no-load' | 'partial-load' | 'full-load';
  /** Whether it will freeze when it is in use; by default it will, as flatwork outdoors. */
  readonly exposed?: boolean;
  /** What keeps it warm; by default nothing. */
  readonly protection?: Protection;
  /** How many layers of blankets; by default one, where there are blankets. */
  readonly layers?: number;
  /** How an enclosure is heated. */
  readonly heater?: 'vented' | 'unvented' | 'electric';
  /** Whether salt will be strewn on it. */
  readonly deicers?: boolean;
  /** Time from placing to the first hard frost and salt, in autumn. */
  readonly beforeFrost?: QuantityInput<'time'>;
}

/** What a source allows of hot concrete. */
export interface HotLimit {
  /** Title of the source. */
  readonly source: string;
  /** The most as placed. */
  readonly most: Quantity<'temperature'>;
}

/** What a source asks for: warmth, or no more than that it does not freeze. */
export type ProtectionRule = 'keep from freezing' | 'keep warm' | 'keep from freezing after that';

/** How long a source has concrete protected. */
export interface PublishedProtection {
  /** Title of the source. */
  readonly source: string;
  /** What is asked for. */
  readonly rule: ProtectionRule;
  /** What it is kept at, where it is kept warm. */
  readonly keptAt?: Quantity<'temperature'>;
  /** How long. */
  readonly time: Quantity<'time'>;
}

/** Figures of {@link placingLimits}. */
export interface PlacingLimitsFigures {
  /** Whether it is cold weather: air below 40 degF (5 degC), now or expected. */
  readonly coldWeather: boolean;
  /** The least as mixed in this air; left out where it is not cold. */
  readonly mixedAtLeast?: Quantity<'temperature'>;
  /** The least as placed, and kept so long as it is protected. */
  readonly keptAtLeast: Quantity<'temperature'>;
  /** The most that it may cool in the day after protection ends. */
  readonly coolingPerDay: Quantity<'temperature-difference'>;
  /**
   * The coldest that it may come to in that day, gradually and never at once: from what it is kept at, or from the
   * concrete as it came where that is warmer.
   */
  readonly gradualDropTo: Quantity<'temperature'>;
  /** The most that it may cool in an hour. */
  readonly coolingPerHour: Quantity<'temperature-difference'>;
  /** How long it is kept from freezing; left out where it is not cold, and for a full load, which is the engineer's. */
  readonly protection?: Quantity<'time'>;
  /** How long until forms come off safely with part of the load on it. */
  readonly untilForms?: Quantity<'time'>;
  /** Protection by other sources. */
  readonly published: readonly PublishedProtection[];
  /** Limits of hot concrete. */
  readonly hotLimits: readonly HotLimit[];
  /** Layers of blankets for the lowest air; left out where it takes an enclosure. */
  readonly blankets?: Quantity<'count'>;
  /** What it comes to. */
  readonly verdict: 'place' | 'place and protect' | 'hold' | 'postpone';
  /** What to do, in order. */
  readonly next: readonly WeatherMeasure[];
}

interface Parsed {
  readonly thickness: Quantity<'length'>;
  readonly forecast: {
    readonly placing: Temperature;
    readonly low: Temperature;
    readonly before: Temperature | undefined;
  };
  readonly concrete: Temperature | undefined;
  readonly ground: 'frozen' | 'not-frozen' | undefined;
  readonly cement: 'ordinary' | 'high-early' | undefined;
  readonly service: 'no-load' | 'partial-load' | 'full-load' | undefined;
  readonly exposed: boolean | undefined;
  readonly protection: Protection | undefined;
  readonly layers: Quantity<'count'> | undefined;
  readonly heater: 'vented' | 'unvented' | 'electric' | undefined;
  readonly deicers: boolean | undefined;
  readonly beforeFrost: Quantity<'time'> | undefined;
}

type Degrees = Paired<'temperature'>;

/** One column of the table: concrete of a least dimension. */
interface Column {
  /** Below this least dimension. */
  readonly below: Paired<'length'> | undefined;
  readonly kept: Degrees;
  /** As mixed above 30 degF, from 0 degF, and below. */
  readonly mixed: readonly [mild: Degrees, cold: Degrees, bitter: Degrees];
  readonly drop: Paired<'temperature-difference'>;
  readonly source: Source;
}

const degrees = (customary: number, metric: number): Degrees =>
  paired('temperature', `${customary} degF`, `${metric} degC`);
const drop = (customary: number, metric: number): Paired<'temperature-difference'> =>
  paired('temperature-difference', `${customary} degF`, `${metric} degC`);

/** Degrees in both systems as the standard has them; a drop of 50 degF is one of 28 degC. */
const TABLE = constant((): readonly Column[] => [
  {
    below: paired('length', '12 in', '300 mm'),
    kept: degrees(55, 13),
    mixed: [degrees(60, 16), degrees(65, 18), degrees(70, 21)],
    drop: drop(50, 28),
    source: ACI_306_TABLES,
  },
  {
    below: paired('length', '36 in', '900 mm'),
    kept: degrees(50, 10),
    mixed: [degrees(55, 13), degrees(60, 16), degrees(65, 18)],
    drop: drop(40, 22),
    source: ACI_306_TABLES,
  },
  {
    below: paired('length', '72 in', '1800 mm'),
    kept: degrees(45, 7),
    mixed: [degrees(50, 10), degrees(55, 13), degrees(60, 16)],
    drop: drop(30, 17),
    source: ACI_306_THICK,
  },
  {
    below: undefined,
    kept: degrees(40, 5),
    mixed: [degrees(45, 7), degrees(50, 10), degrees(55, 13)],
    drop: drop(20, 11),
    source: ACI_306_THICK,
  },
]);

const HOURLY = constant(() => drop(5, 3));
const COLD_AIR = /*#__PURE__*/ degrees(40, 5);
const FROST = /*#__PURE__*/ degrees(32, 0);
const MILD = /*#__PURE__*/ degrees(30, -1);
const BITTER = /*#__PURE__*/ degrees(0, -18);
const HOT = /*#__PURE__*/ degrees(90, 32);
const TOO_HOT = /*#__PURE__*/ degrees(95, 35);
const HEAT = HOT;
const COOL = /*#__PURE__*/ degrees(50, 10);
const WARM = /*#__PURE__*/ degrees(70, 21);
/** What one blanket, and two, hold on a slab of ordinary thickness. */
const ONE_BLANKET = /*#__PURE__*/ degrees(20, -7);
/** Warmer than it has to be, concrete cools more than it gains. */
const MUCH_WARMER = /*#__PURE__*/ drop(20, 11);
const MOST_LAYERS = 10;
const WAIT = constant(() => time('42 day'));

/** Days of protection: ordinary cement, and high-early. */
type Days = readonly [ordinary: string, early: string];
const DAYS: Readonly<Record<'sheltered' | 'exposed' | 'forms', Days>> = {
  sheltered: ['2 day', '1 day'],
  exposed: ['3 day', '2 day'],
  forms: ['6 day', '4 day'],
};

const PUBLISHED: readonly (readonly [Source, ProtectionRule, string, Degrees?])[] = [
  [PROTECTION_SPECIFICATION, 'keep from freezing', '3 day'],
  [OLD_COLD_RULE, 'keep warm', '3 day', WARM],
  [OLD_COLD_RULE, 'keep warm', '5 day', COOL],
  [OLD_COLD_RULE, 'keep from freezing after that', '4 day'],
];
const HOT_LIMITS: readonly (readonly [Source, Degrees])[] = [
  [HOT_LIMIT, HOT],
  [HOT_SPECIFICATION, TOO_HOT],
];

/** What is gathered while the weather is judged. */
interface Judged {
  readonly next: WeatherMeasure[];
  hold: boolean;
  postpone: boolean;
}

const columnOf = (t: Quantity<'length'>): Column =>
  TABLE().find(({ below }) => below === undefined || below.reachedBy(t) === undefined) as Column;

const under = (pair: Degrees, t: Temperature): Temperature | undefined => pair.undercutBy(t);

function mixedFor({ mixed }: Column, air: Temperature): Degrees {
  const [mild, cold, bitter] = mixed;
  if (under(BITTER, air)) return bitter;
  return under(MILD, air) ? cold : mild;
}

function heedGround({ ground, forecast }: Parsed, judged: Judged, pad: Pad): void {
  const { before, placing } = forecast;
  if (ground === 'frozen') {
    judged.hold = true;
    judged.next.push('thaw-the-ground');
    pad.caution(cautions.frozenGround);
    return;
  }
  // The night behind the pour freezes no ground that concrete already lies on.
  const coldest = before?.lessThan(placing) ? before : placing;
  if (ground === undefined && !FROST.exceededBy(coldest)) {
    judged.next.push('look-for-frost-in-the-ground');
    pad.caution(cautions.frostInGround(FROST.as(pad.system), coldest));
  }
}

function heedTooCold(t: Temperature, kept: Temperature, source: Source, judged: Judged, pad: Pad): void {
  if (t.lessThan(kept)) {
    judged.hold = true;
    judged.next.push('hotter-mix');
    pad.caution(cautions.tooColdToPlace(kept, t, source));
    return;
  }
  const warm = raised(kept, MUCH_WARMER.as(pad.system));
  if (t.greaterThan(warm)) pad.caution(cautions.warmerThanNeeded(warm, t));
}

function heedTooHot(t: Temperature, judged: Judged, pad: Pad): void {
  const [hot, most] = [HOT.exceededBy(t), TOO_HOT.exceededBy(t)];
  if (!hot) return;
  judged.next.push('cooler-mix', 'cooler-hour');
  if (most) judged.hold = true;
  pad.caution(most ? cautions.tooHotToPlace(most, t) : cautions.hotConcrete(hot, t));
}

function heedConcrete(input: Parsed, cold: boolean, column: Column, judged: Judged, pad: Pad): void {
  const { concrete: t } = input;
  if (!t) return;
  if (cold) heedTooCold(t, column.kept.as(pad.system), column.source, judged, pad);
  else {
    const cool = COOL.undercutBy(t);
    if (cool) pad.caution(cautions.coldConcrete(cool, t));
  }
  heedTooHot(t, judged, pad);
}

/** Layers that hold the slab through the coldest night; nothing where it takes heat. */
const layersFor = (low: Temperature): number | undefined => {
  if (!under(FROST, low)) return under(COLD_AIR, low) ? 1 : 0;
  if (!under(ONE_BLANKET, low)) return 1;
  return under(BITTER, low) ? undefined : 2;
};

function heedNight(input: Parsed, judged: Judged, pad: Pad): void {
  const { low } = input.forecast;
  const protection = input.protection ?? 'none';
  const needed = layersFor(low);
  if (protection === 'heated-enclosure') {
    judged.next.push('cool-slowly');
    return;
  }
  if (needed === undefined) {
    heedBitter(protection, judged);
    pad.caution(cautions.beyondBlankets(BITTER.as(pad.system), low));
  } else if (protection === 'none') {
    judged.next.push('blankets');
    if (needed > 1) judged.next.push('another-blanket');
    const frost = under(FROST, low);
    if (frost) pad.caution(cautions.coldNight(frost, low));
  } else if (input.layers ? input.layers.toNumber('each') < needed : needed > 1) {
    judged.next.push('another-blanket');
    pad.caution(cautions.tooFewBlankets(ONE_BLANKET.as(pad.system), low));
  }
  if (!judged.postpone) judged.next.push('cool-slowly');
}

/** Whoever has blankets there encloses and heats before the truck comes; whoever has nothing waits. */
function heedBitter(protection: Protection, judged: Judged): void {
  if (protection === 'none') {
    judged.postpone = true;
    judged.next.push('postpone');
    return;
  }
  judged.hold = true;
  judged.next.push('heated-enclosure');
}

/** In any weather: what fills a tent does not ask how cold it is outside. */
function heedHeater({ protection, heater }: Parsed, judged: Judged, pad: Pad): void {
  if (protection !== 'heated-enclosure' || heater === 'vented' || heater === 'electric') return;
  if (heater === 'unvented') judged.hold = true;
  judged.next.push('vent-the-heater');
  pad.caution(cautions.carbonMonoxide(heater === 'unvented'));
}

function heedPeople({ forecast }: Parsed, pad: Pad): void {
  const { placing } = forecast;
  const [hot, frost] = [HEAT.reachedBy(placing), under(FROST, placing)];
  if (hot) pad.caution(cautions.heatStress(hot, placing));
  if (frost) pad.caution(cautions.coldStress(frost, placing));
}

function heedWinter({ deicers, beforeFrost }: Parsed, judged: Judged, pad: Pad): void {
  if (beforeFrost?.lessThan(WAIT())) {
    judged.next.push('no-deicer');
    pad.caution(cautions.youngForWinter(WAIT(), beforeFrost));
    return;
  }
  if (!deicers) return;
  judged.next.push('no-deicer');
  pad.caution(cautions.noDeicer(WAIT()));
}

interface ProtectedFor {
  readonly protection?: Quantity<'time'>;
  readonly untilForms?: Quantity<'time'>;
}

function protectionOf(input: Parsed, pad: Pad): ProtectedFor {
  const { service, exposed, cement } = input;
  if (service === 'full-load') {
    pad.caution(cautions.engineerProtects);
    return {};
  }
  if (!service) {
    pad.assume({
      name: 'service',
      value: 'no-load',
      because: 'flatwork on the ground carries nothing early',
      override: 'Give service: partial-load or full-load',
      source: ACI_306_TABLES,
    });
  }
  if (exposed === undefined) {
    pad.assume({
      name: 'exposed',
      value: 'yes',
      because: 'flatwork outdoors freezes when it is in use',
      override: 'Give exposed: false for a floor that stays warm',
      source: ACI_306_TABLES,
    });
  }
  const early = cement === 'high-early' ? 1 : 0;
  const partial = service === 'partial-load';
  const days = DAYS[(exposed ?? true) || partial ? 'exposed' : 'sheltered'];
  return {
    protection: time(days[early]),
    ...(partial ? { untilForms: time(DAYS.forms[early]) } : {}),
  };
}

function check({ forecast, protection, layers, heater }: Parsed): void {
  if (forecast.placing.lessThan(forecast.low)) refuse('forecast.low', faults.lowAbovePlacing());
  if (layers && protection !== 'blankets')
    refuse('layers', faults.onlyWith('layers', 'protection: "blankets"'));
  if (heater && protection !== 'heated-enclosure')
    refuse('heater', faults.onlyWith('heater', 'protection: "heated-enclosure"'));
}

function verdictOf({ hold, postpone }: Judged, cold: boolean): PlacingLimitsFigures['verdict'] {
  if (postpone) return 'postpone';
  if (hold) return 'hold';
  return cold ? 'place and protect' : 'place';
}

function reckon(input: Parsed, pad: Pad): PlacingLimitsFigures {
  check(input);
  const { forecast, thickness } = input;
  const { placing, low } = forecast;
  const cold = under(COLD_AIR, placing) !== undefined || under(COLD_AIR, low) !== undefined;
  const column = columnOf(thickness);
  const judged: Judged = { next: [], hold: false, postpone: false };
  heedGround(input, judged, pad);
  heedConcrete(input, cold, column, judged, pad);
  heedHeater(input, judged, pad);
  if (cold) heedNight(input, judged, pad);
  heedPeople(input, pad);
  heedWinter(input, judged, pad);
  const guarded = cold ? protectionOf(input, pad) : {};
  const kept = column.kept.as(pad.system);
  const fall = column.drop.as(pad.system);
  const k = input.concrete ? greaterOf(kept, input.concrete) : kept;
  const gradualDropTo = pad.step(
    'coldest that it comes to gradually, over a day',
    'a = k − d',
    { k, d: fall },
    raised(k, fall.negated()),
  );
  const layers = layersFor(low);
  return {
    coldWeather: cold,
    ...(cold ? { mixedAtLeast: mixedFor(column, placing).as(pad.system) } : {}),
    keptAtLeast: kept,
    coolingPerDay: fall,
    gradualDropTo,
    coolingPerHour: HOURLY().as(pad.system),
    ...guarded,
    published: PUBLISHED.map(([source, rule, days, at]) => ({
      source: source.title,
      rule,
      ...(at ? { keptAt: at.as(pad.system) } : {}),
      time: time(days),
    })),
    hotLimits: HOT_LIMITS.map(([source, most]) => ({ source: source.title, most: most.as(pad.system) })),
    ...(layers === undefined ? {} : { blankets: wholeNumber(layers) }),
    verdict: verdictOf(judged, cold),
    next: judged.next,
  };
}

/**
 * Between which temperatures concrete is placed and kept, for how long it is protected, and what to do next about the
 * weather that is coming.
 *
 * @param input - the least dimension and the forecast; the concrete, the ground, what protects it and what is to come
 * of it where they are known
 * @returns the limits as mixed, as placed and kept, and of cooling; days of protection and hot limits, with sources
 * that differ; layers of blankets, the verdict, and what to do in order
 * @throws {InputError} `out-of-order` for a low above the air at placing; `does-not-fit` for layers without blankets or
 * a heater without an enclosure; quantities that cannot be read
 * @source ACI 306R as a handbook of masonry and concrete has it; the rows above 36 in from memory; others as listed
 * @example
 * ```ts
 * import { placingLimits } from 'flatwork-reckoner';
 *
 * const { figures, cautions } = placingLimits({
 *   thickness: '5 in',
 *   forecast: { placing: '45 degF', low: '26 degF' },
 *   concrete: '62 degF',
 *   ground: 'not-frozen',
 * });
 * figures.keptAtLeast.format(); // '55 degF'
 * figures.protection?.format(); // '3 day'
 * figures.verdict; // 'place and protect'
 * figures.next.join(', '); // 'blankets, cool-slowly'
 * cautions[0]?.code; // 'cold-night'
 * ```
 */
export const placingLimits: Calculation<PlacingLimitsInput, PlacingLimitsFigures> = /*#__PURE__*/ define({
  id: 'placing-limits',
  title: 'Placing limits in hot and cold weather',
  version: 1,
  sources: [
    ACI_306_TABLES,
    ACI_306_THICK,
    AIR_IS_NOT_CONCRETE,
    COLD_DEFINITIONS,
    PROTECTION_SPECIFICATION,
    OLD_COLD_RULE,
    UFGS_WEATHER,
    HOT_LIMIT,
    HOT_SPECIFICATION,
    DEICER_WAIT,
    BLANKET_PRACTICE,
  ],
  input: () =>
    fields(
      {
        thickness: quantity('length', 'thickness', 'positive', SECTION),
        forecast: fields({
          placing: quantity('temperature', 'placing', 'any', AIR),
          low: quantity('temperature', 'low', 'any', AIR),
          before: maybe(quantity('temperature', 'before', 'any', AIR)),
        }),
        concrete: maybe(quantity('temperature', 'concrete', 'any', CONCRETE)),
        ground: maybe(choice('ground', ['frozen', 'not-frozen'] as const)),
        cement: maybe(choice('cement', ['ordinary', 'high-early'] as const)),
        service: maybe(choice('service', ['no-load', 'partial-load', 'full-load'] as const)),
        exposed: maybe(yesOrNo('exposed')),
        protection: maybe(choice('protection', ['none', 'blankets', 'heated-enclosure'] as const)),
        layers: maybe(whole('layers', 1, MOST_LAYERS)),
        heater: maybe(choice('heater', ['vented', 'unvented', 'electric'] as const)),
        deicers: maybe(yesOrNo('deicers')),
        beforeFrost: maybe(quantity('time', 'beforeFrost', 'positive', BEFORE_FROST)),
      },
      all(needs('layers', 'protection'), needs('heater', 'protection')),
    ),
  reckon,
});

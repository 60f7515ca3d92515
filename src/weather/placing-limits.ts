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
import type { Paired } from '../quantity/paired';
import { type Calculation, define, refuse } from '../reckoning/calculation';
import { choice, fields, maybe, quantity, whole, wholeNumber, yesOrNo } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { COMMON_PRACTICE, type Source } from '../reckoning/source';
import { all, needs } from '../reckoning/together';
import * as cautions from './cautions';
import {
  COOL,
  type Column,
  columnOf,
  degrees,
  drop,
  type Judged,
  PUBLISHED,
  protectionOf,
} from './cold-table';
import { type Difference, raised, type Temperature } from './degrees';
import * as faults from './faults';
import { AIR, BEFORE_FROST, CONCRETE, SECTION } from './ordinary';
import type { PlacingLimitsFigures } from './placing-limits-figures';
import type { PlacingLimitsInput, PlacingParsed, Protection } from './placing-limits-input';
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

type Degrees = Paired<'temperature'>;

const HOURLY = constant(() => drop(5, 3));
const COLD_AIR = /*#__PURE__*/ degrees(40, 5);
const FROST = /*#__PURE__*/ degrees(32, 0);
const MILD = /*#__PURE__*/ degrees(30, -1);
const BITTER = /*#__PURE__*/ degrees(0, -18);
const HOT = /*#__PURE__*/ degrees(90, 32);
const TOO_HOT = /*#__PURE__*/ degrees(95, 35);
const HEAT = HOT;

/** What one blanket, and two, hold on a slab of ordinary thickness. */
const ONE_BLANKET = /*#__PURE__*/ degrees(20, -7);
/** Warmer than it has to be, concrete cools more than it gains. */
const MUCH_WARMER = /*#__PURE__*/ drop(20, 11);
const MOST_LAYERS = 10;
const WAIT = constant(() => time('42 day'));

const HOT_LIMITS: readonly (readonly [Source, Degrees])[] = [
  [HOT_LIMIT, HOT],
  [HOT_SPECIFICATION, TOO_HOT],
];

const under = (pair: Degrees, t: Temperature): Temperature | undefined => pair.undercutBy(t);

function mixedFor({ mixed }: Column, air: Temperature): Degrees {
  const [mild, cold, bitter] = mixed;
  if (under(BITTER, air)) return bitter;
  return under(MILD, air) ? cold : mild;
}

function heedGround({ ground, forecast }: PlacingParsed, judged: Judged, pad: Pad): void {
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

function heedConcrete(input: PlacingParsed, cold: boolean, column: Column, judged: Judged, pad: Pad): void {
  const { concreteTemperature: t } = input;
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

/** How many layers there are where there are blankets. */
function layersOf({ layers }: PlacingParsed, pad: Pad): number {
  if (layers) return layers.toNumber('each');
  pad.assume({
    name: 'layers',
    value: wholeNumber(1),
    because: 'blankets are laid in one layer, unless more are asked for',
    override: 'Give layers',
    source: COMMON_PRACTICE,
  });
  return 1;
}

function heedNight(input: PlacingParsed, judged: Judged, pad: Pad): void {
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
  } else if (layersOf(input, pad) < needed) {
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
function heedHeater({ protection, heater }: PlacingParsed, judged: Judged, pad: Pad): void {
  if (protection !== 'heated-enclosure' || heater === 'vented' || heater === 'electric') return;
  if (heater === 'unvented') judged.hold = true;
  judged.next.push('vent-the-heater');
  pad.caution(cautions.carbonMonoxide(heater === 'unvented'));
}

function heedPeople({ forecast }: PlacingParsed, pad: Pad): void {
  const { placing } = forecast;
  const [hot, frost] = [HEAT.reachedBy(placing), under(FROST, placing)];
  if (hot) pad.caution(cautions.heatStress(hot, placing));
  if (frost) pad.caution(cautions.coldStress(frost, placing));
}

function heedWinter({ deicers, beforeFrost }: PlacingParsed, judged: Judged, pad: Pad): void {
  if (beforeFrost?.lessThan(WAIT())) {
    judged.next.push('no-deicer');
    pad.caution(cautions.youngForWinter(WAIT(), beforeFrost));
    return;
  }
  if (!deicers) return;
  judged.next.push('no-deicer');
  pad.caution(cautions.noDeicer(WAIT()));
}

function check({ forecast, protection, layers, heater }: PlacingParsed): void {
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

/** Where a day of cooling leaves the slab. In mild weather nothing is uncovered into the cold. */
function gradualDrop(
  { concreteTemperature: t }: PlacingParsed,
  kept: Temperature,
  d: Difference,
  pad: Pad,
): Temperature {
  const k = t ? greaterOf(kept, t) : kept;
  const what = 'coldest that it comes to gradually, over a day';
  return pad.step(what, 'a = k − d', { k, d }, raised(k, d.negated()));
}

function reckon(input: PlacingParsed, pad: Pad): PlacingLimitsFigures {
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
  const layers = layersFor(low);
  return {
    coldWeather: cold,
    ...(cold ? { mixedAtLeast: mixedFor(column, placing).as(pad.system) } : {}),
    keptAtLeast: kept,
    ...(cold ? {} : { placedAtMost: TOO_HOT.as(pad.system) }),
    coolingPerDay: fall,
    ...(cold ? { gradualDropTo: gradualDrop(input, kept, fall, pad) } : {}),
    coolingPerHour: HOURLY().as(pad.system),
    ...guarded,
    published: PUBLISHED.map(([source, rule, days, at]) => ({
      source: source.title,
      rule,
      ...(at ? { keptAt: at.as(pad.system) } : {}),
      time: time(days),
    })),
    hotLimits: HOT_LIMITS.map(([source, most]) => ({ source: source.title, most: most.as(pad.system) })),
    // What a heated enclosure keeps warm, no blanket has to.
    ...(layers === undefined || input.protection === 'heated-enclosure'
      ? {}
      : { blankets: wholeNumber(layers) }),
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
 *   concreteTemperature: '62 degF',
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
        concreteTemperature: maybe(quantity('temperature', 'concreteTemperature', 'any', CONCRETE)),
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

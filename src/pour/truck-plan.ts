/**
 * Trucks for a pour: when each comes, how many it takes, who waits for whom, and how old the concrete gets.
 *
 * A load of `q` takes `p = q ÷ R` to place, and trucks come that far apart. A truck's round is
 * `C = l + t + p + w + r`: loading, the way, unloading, washing out, the way back. `N = ceil(C ÷ max(p, l))` trucks
 * keep placing going; with fewer a load comes every `C ÷ N`. Each load is then followed on its way
 * (`truck-rounds.ts`), which shows gaps, queues and ages that the mean does not.
 *
 * Concrete ages from the beginning of loading. The limit at the end of unloading is the purchaser's or the producer's
 * to state since ASTM C94-21; 90 min stand for it otherwise, the default of earlier editions, as quoted. Cold joints
 * are judged by the age of the open edge against initial set at the concrete's temperature (`set-time.ts`).
 */

import { BY_OLD_EDITIONS, C94_21, C94_BEFORE_2021, OLD_TIME_LIMIT } from '../mix/time-limit';
import { type Decimal, ZERO } from '../quantity/decimal';
import * as sharedFaults from '../quantity/faults';
import { greaterOf } from '../quantity/greater';
import { constant, ratio, time } from '../quantity/make';
import { paired } from '../quantity/paired';
import { canonicalValue, type Quantity, type QuantityInput } from '../quantity/quantity';
import { type Calculation, define, refuse } from '../reckoning/calculation';
import { alkali } from '../reckoning/cautions';
import { choice, type Field, fields, list, maybe, quantity, whole, wholeNumber } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { COMMON_PRACTICE } from '../reckoning/source';
import { all, allOrNone, given, notBoth, oneOf, says, where } from '../reckoning/together';
import { say } from '../reckoning/words';
import { clock as clockField, clockOf } from './clock';
import { INCREMENT, POUR, TRUCK } from './ordinary';
import {
  chuteOf,
  heedPlacing,
  type Placing,
  type PlacingInput,
  type PublishedLoad,
  type PublishedRate,
  placingField,
  placingRate,
  publishedFor,
} from './placing';
import { type ClockTime, clockTime } from './saw-clock';
import type { Hours } from './saw-hours';
import { initialSet } from './set-time';
import { heedTrucks, type TruckVerdict } from './truck-advice';
import * as cautions from './truck-cautions';
import { DAY_LOADS, heedSteps, loadsOf, MOST_LOADS } from './truck-loads';
import * as ordinary from './truck-ordinary';
import {
  closeArrivals,
  minutesOf,
  type Round,
  roundsOf,
  spacedArrivals,
  tallied,
  trucksOut,
} from './truck-rounds';
import { SET_FACTOR, SET_TIMES } from './truck-sources';

/** Input of {@link truckPlan}. */
export interface TruckPlanInput {
  /** Concrete to place; full trucks, then the rest. Or `loads`. */
  readonly volume?: QuantityInput<'volume'>;
  /** What one truck carries. */
  readonly truckCapacity?: QuantityInput<'volume'>;
  /** Each load in turn, as `concreteOrder` splits them, in place of volume and capacity. */
  readonly loads?: readonly QuantityInput<'volume'>[];
  /** The step in which the supplier sells: loads are rounded to it, a full truck down and the rest up. */
  readonly increment?: QuantityInput<'volume'>;
  /** How concrete comes from the truck to its place. */
  readonly placing: PlacingInput;
  /** What the crew can spread, strike off and float; the most that is placed, however it comes. */
  readonly crewRate?: QuantityInput<'volume-rate'>;
  /** How many trucks there are; by default as many as it takes. */
  readonly trucks?: number;
  /** `spaced` by a schedule, or each loaded again `at-once` when it is back; by default spaced. */
  readonly sending?: 'spaced' | 'at-once';
  /** Time between arrivals; by default what the load before takes to place. */
  readonly spacing?: QuantityInput<'time'>;
  /** From the plant to the site; or `distance` and `speed`. */
  readonly travelTime?: QuantityInput<'time'>;
  /** By road from the plant. */
  readonly distance?: QuantityInput<'length'>;
  /** On that road, stops and lights included. */
  readonly speed?: QuantityInput<'speed'>;
  /** Loading a truck, one at a time; by default `10 min`. */
  readonly loadingTime?: QuantityInput<'time'>;
  /** Washing out at the site; by default `10 min`. */
  readonly washOutTime?: QuantityInput<'time'>;
  /** From the site to the plant; by default as long as the way out. */
  readonly returnTime?: QuantityInput<'time'>;
  /** Of the concrete as it is placed; by default `70 degF` or `21 degC`. */
  readonly concreteTemperature?: QuantityInput<'temperature'>;
  /** Age at the end of unloading that the purchaser or the producer states; by default `90 min`. */
  readonly ageLimit?: QuantityInput<'time'>;
  /** Time at the site that a truck may take without a charge. */
  readonly freeTime?: QuantityInput<'time'>;
  /** Time of day when the first truck arrives: `7:00`, `1 pm`. */
  readonly firstTruckAt?: QuantityInput<'time'>;
}

/** One load on its way; times are from the first arrival on. */
export interface TruckLoad {
  /** Which truck brings it. */
  readonly truck: Quantity<'count'>;
  /** How much it brings. */
  readonly volume: Quantity<'volume'>;
  /** Leaves the plant; below zero before the first arrival. */
  readonly departs: Quantity<'time'>;
  /** Is at the site. */
  readonly arrives: Quantity<'time'>;
  /** Is placed from then on. */
  readonly starts: Quantity<'time'>;
  /** Is out of the truck. */
  readonly ends: Quantity<'time'>;
  /** Waits at the site before it is placed. */
  readonly waits: Quantity<'time'>;
  /** Placing stands still before it. */
  readonly gap: Quantity<'time'>;
  /** Age at the end of unloading, from the beginning of loading. */
  readonly age: Quantity<'time'>;
  /** By the clock, where the first truck has a time of day. */
  readonly clock?: TruckClock;
}

/** Times of a load by the clock. */
export interface TruckClock {
  /** Leaves the plant. */
  readonly departs: string;
  /** Is at the site. */
  readonly arrives: string;
  /** Is out of the truck. */
  readonly ends: string;
}

/** Figures of {@link truckPlan}. */
export interface TruckPlanFigures {
  /** Each load on its way. */
  readonly loads: readonly TruckLoad[];
  /** How many loads. */
  readonly loadCount: Quantity<'count'>;
  /** All of them. */
  readonly volume: Quantity<'volume'>;
  /** What is placed in a given time while there is concrete. */
  readonly placingRate: Quantity<'volume-rate'>;
  /** To place the largest load. */
  readonly placingTime: Quantity<'time'>;
  /** A truck's round with the largest load, waiting left out. */
  readonly round: Quantity<'time'>;
  /** Trucks so that placing never waits for one. */
  readonly trucksNeeded: Quantity<'count'>;
  /** Trucks in this plan. */
  readonly trucks: Quantity<'count'>;
  /** From one full load to the next once all is running: what placing, the plant, the schedule or few trucks take. */
  readonly interval: Quantity<'time'>;
  /** The last concrete is out, after the first arrival. */
  readonly ends: Quantity<'time'>;
  /** The same by the clock. */
  readonly endsAt?: ClockTime;
  /** The longest that placing stands still. */
  readonly longestGap: Quantity<'time'>;
  /** All that placing stands still. */
  readonly gaps: Quantity<'time'>;
  /** The longest that a truck waits. */
  readonly longestWait: Quantity<'time'>;
  /** All that trucks wait. */
  readonly waits: Quantity<'time'>;
  /** The longest that a truck is at the site before it washes out. */
  readonly longestAtSite: Quantity<'time'>;
  /** All that trucks are at the site beyond the free time, where that is given. */
  readonly charged?: Quantity<'time'>;
  /** Age of the oldest concrete at the end of unloading. */
  readonly oldest: Quantity<'time'>;
  /** What that is held to. */
  readonly ageLimit: Quantity<'time'>;
  /** Initial set after mixing, at this temperature. */
  readonly initialSet: Hours;
  /** The oldest that the open edge gets before the next load, where placing stands still. */
  readonly oldestEdge?: Quantity<'time'>;
  /** How far the farthest concrete is out of the chute's reach. */
  readonly beyondReach?: Quantity<'length'>;
  /** How steep the chute lies, where its drop is given. */
  readonly chuteSlope?: Quantity<'slope'>;
  /** How it goes. */
  readonly verdict: TruckVerdict;
  /** Rates that sources print for this way of placing. */
  readonly publishedRates?: readonly PublishedRate[];
  /** What sources print for a trip of it. */
  readonly publishedLoads?: readonly PublishedLoad[];
}

type Time = Quantity<'time'>;
type Volume = Quantity<'volume'>;
type Count = Quantity<'count'>;

interface Parsed {
  readonly volume: Volume | undefined;
  readonly truckCapacity: Volume | undefined;
  readonly loads: readonly Volume[] | undefined;
  readonly increment: Volume | undefined;
  readonly placing: Placing;
  readonly crewRate: Quantity<'volume-rate'> | undefined;
  readonly trucks: Count | undefined;
  readonly sending: 'spaced' | 'at-once' | undefined;
  readonly spacing: Time | undefined;
  readonly travelTime: Time | undefined;
  readonly distance: Quantity<'length'> | undefined;
  readonly speed: Quantity<'speed'> | undefined;
  readonly loadingTime: Time | undefined;
  readonly washOutTime: Time | undefined;
  readonly returnTime: Time | undefined;
  readonly concreteTemperature: Quantity<'temperature'> | undefined;
  readonly ageLimit: Time | undefined;
  readonly freeTime: Time | undefined;
  readonly firstTruckAt: Time | undefined;
}

const MOST_TRUCKS = 500;
/** No schedule looks farther ahead; longer times are slips of a unit. */
const LONGEST = constant(() => time('30 day'));
const TEN_MINUTES = constant(() => time('10 min'));
const ONE = constant(() => ratio('1:1'));
/** From here on the older editions shorten the limit. */
const HOT = /*#__PURE__*/ paired('temperature', '80 degF', '27 degC');

function bounded(path: string, t: Time): Time {
  return t.greaterThan(LONGEST()) ? refuse(path, sharedFaults.doesNotFit(path, '30 days')) : t.in('min');
}

function travelOf({ travelTime, distance: d, speed: v }: Parsed, pad: Pad): Time {
  if (travelTime && (d || v))
    refuse('travelTime', sharedFaults.giveOneOf(['travelTime', 'distance with speed']));
  if (travelTime) return bounded('travelTime', travelTime);
  if (!d && !v) return refuse('travelTime', sharedFaults.missing('travelTime', '"25 min"'));
  if (!d) return refuse('distance', sharedFaults.missing('distance', ['"12 mi"', '"20 km"']));
  if (!v) return refuse('speed', sharedFaults.missing('speed', ['"30 mph"', '"50 km/h"']));
  return bounded('speed', pad.step('the way', 't = d ÷ v', { d, v }, d.over(v).in('min')));
}

type Plain = 'loadingTime' | 'washOutTime';

const BECAUSE: Readonly<Record<Plain, string>> = {
  loadingTime: 'batching, loading and rinsing the chute of one truck',
  washOutTime: 'rinsing chute and hopper before the truck may drive on a road',
};

/** A time as it was given, or ten minutes as is usual. */
function usualTime(name: Plain, input: Parsed, pad: Pad): Time {
  const t = input[name];
  if (t) return bounded(name, t);
  pad.assume({
    name,
    value: TEN_MINUTES(),
    because: BECAUSE[name],
    override: say`Give ${{ name }} as the supplier has it`,
    source: COMMON_PRACTICE,
  });
  return TEN_MINUTES();
}

function returnOf({ returnTime }: Parsed, t: Time, pad: Pad): Time {
  if (returnTime) return bounded('returnTime', returnTime);
  pad.assume({
    name: 'returnTime',
    value: { reckoned: t },
    because: 'as long as the way out',
    override: 'Give returnTime',
    source: COMMON_PRACTICE,
  });
  return t;
}

function ageLimitOf({ ageLimit, concreteTemperature: T }: Parsed, pad: Pad): Time {
  if (ageLimit) return ageLimit;
  pad.assume({
    name: 'ageLimit',
    value: OLD_TIME_LIMIT(),
    because:
      T && HOT.exceededBy(T)
        ? 'the default of ASTM C94 before its edition of 2021, which is shortened in hot weather; since then the purchaser states the limit, else the producer, and it is on the ticket'
        : BY_OLD_EDITIONS,
    override: 'Give ageLimit as it is stated for this concrete',
    source: C94_BEFORE_2021,
  });
  return OLD_TIME_LIMIT();
}

/** Parts of a round, all in minutes. */
interface Legs {
  readonly loading: Time;
  readonly travel: Time;
  readonly washOut: Time;
  readonly way: Time;
}

function legsOf(input: Parsed, pad: Pad): Legs {
  const travel = travelOf(input, pad);
  return {
    loading: usualTime('loadingTime', input, pad),
    travel,
    washOut: usualTime('washOutTime', input, pad),
    way: returnOf(input, travel, pad),
  };
}

const largest = <D extends 'volume' | 'time'>(all: readonly Quantity<D>[]): Quantity<D> =>
  all.reduce((a, b) => greaterOf(a, b));

/** When each is due at the site; nothing where trucks are loaded as they come back. */
function arrivalsOf(
  { sending, spacing, trucks, loads }: Parsed,
  placing: readonly Time[],
  loading: Time,
  pad: Pad,
): readonly Decimal[] | undefined {
  if (sending === 'at-once') {
    if (spacing) refuse('spacing', sharedFaults.giveOneOf(['spacing', 'sending: "at-once"']));
    if (!trucks) refuse('trucks', sharedFaults.missing('trucks', '4'));
    return undefined;
  }
  if (spacing) return spacedArrivals(placing.length, canonicalValue(bounded('spacing', spacing)));
  const p = largest(placing);
  pad.assume({
    name: 'spacing',
    value: loads ? 'what the load before takes to place' : { reckoned: loading.greaterThan(p) ? loading : p },
    because: 'each truck comes as the one before is empty, or as soon as the plant can load it',
    override: 'Give spacing as the supplier sends them',
    source: COMMON_PRACTICE,
  });
  return closeArrivals(placing.map(canonicalValue), canonicalValue(loading));
}

/** How many trucks are out at once where placing never waits for one. */
function outAtOnce(placing: readonly Time[], byFormula: Count, legs: Legs): number {
  const { loading, travel, washOut, way } = legs;
  // Loads that are alike but for the last, which nothing follows, are out as the formula says.
  if (placing.every((t, i) => t === placing[0] || i === placing.length - 1))
    return Math.min(placing.length, Number(byFormula.value));
  const seconds = placing.map(canonicalValue);
  const planned = closeArrivals(seconds, canonicalValue(loading));
  const back = canonicalValue(washOut.plus(way));
  const rounds = { loading: canonicalValue(loading), travel: canonicalValue(travel), back };
  return trucksOut(roundsOf({ ...rounds, placing: seconds, trucks: undefined, planned }));
}

/** The round of a truck with the largest load, and how many keep placing going. */
function needed(
  placing: readonly Time[],
  legs: Legs,
  pad: Pad,
): { readonly round: Time; readonly trucksNeeded: Count } {
  const { loading: l, travel: t, washOut: w, way: r } = legs;
  const p = largest(placing);
  const C = pad.step(
    'round of a truck, without waiting',
    'C = l + t + p + w + r',
    { l, t, p, w, r },
    l.plus(t).plus(p).plus(w).plus(r),
  );
  const n = wholeNumber(placing.length);
  const whole = C.over(greaterOf(p, l)).upTo(ONE());
  const byFormula = wholeNumber(Math.round(whole.toNumber(':1')));
  const N = wholeNumber(outAtOnce(placing, byFormula, legs));
  // Loads that differ take as many as are out at once; that is no line of sums.
  if (N.equals(byFormula)) {
    const even = whole.compareTo(C.over(greaterOf(p, l))) === 0;
    const formula = even ? 'N = C ÷ max(p, l)' : 'N = ceil(C ÷ max(p, l))';
    pad.step('trucks that keep placing going', formula, { C, p, l }, N);
  } else if (N.equals(n)) {
    pad.step('trucks, one for each load', 'N = n', { n }, N);
  }
  return { round: C, trucksNeeded: N };
}

interface Pace {
  readonly p: Time;
  readonly l: Time;
  readonly s: Time | undefined;
  readonly C: Time;
  /** How many trucks hold it up; nothing where there are as many as it takes. */
  readonly few: Count | undefined;
}

/** From one full load to the next once all is running. Trucks that never come round again hold nothing up. */
function intervalOf({ p, l, s, C, few: N }: Pace, pad: Pad): Time {
  const own = s ? greaterOf(greaterOf(p, l), s) : greaterOf(p, l);
  const given = s ? { p, l, s } : { p, l };
  if (!N) return pad.step('from load to load', s ? 'I = max(p, l, s)' : 'I = max(p, l)', given, own);
  const formula = s ? 'I = max(p, l, s, C ÷ N)' : 'I = max(p, l, C ÷ N)';
  return pad.step('from load to load', formula, { ...given, C, N }, greaterOf(own, C.over(N)));
}

/** Times as quantities, each made once: most are those of the load before, or nothing. */
function minutesOnce(): (seconds: Decimal) => Time {
  let last = ZERO;
  let made = minutesOf(ZERO);
  return (seconds) => {
    if (seconds !== last && !seconds.equals(last)) [last, made] = [seconds, minutesOf(seconds)];
    return made;
  };
}

const SECONDS = 60;
const DAY_MINUTES = 1440;

/** The loads as they are told. */
function told(
  rounds: readonly Round[],
  volumes: readonly Volume[],
  N: Count,
  first: Time | undefined,
): TruckLoad[] {
  const trucks = Array.from({ length: Math.min(Number(N.value), rounds.length) }, (_, i) =>
    wholeNumber(i + 1),
  );
  const [waits, gaps, ages] = [minutesOnce(), minutesOnce(), minutesOnce()];
  // The first truck leaves the plant before it arrives: a day more keeps its clock above nothing.
  const since = (first?.toNumber('min') ?? 0) + DAY_MINUTES;
  const at = (seconds: Decimal): string => clockOf(since + seconds.toNumber() / SECONDS);
  let empty = minutesOf(ZERO);
  return rounds.map((round, i): TruckLoad => {
    const { departs, arrives, starts, ends } = round;
    const before = rounds[i - 1];
    const comes = minutesOf(arrives);
    const goesOn = starts === before?.ends ? empty : minutesOf(starts);
    const begins = starts === arrives ? comes : goesOn;
    empty = minutesOf(ends);
    return {
      truck: trucks[i % trucks.length] as Count,
      volume: volumes[i] as Volume,
      departs: minutesOf(departs),
      arrives: comes,
      starts: begins,
      ends: empty,
      waits: waits(round.wait),
      gap: gaps(round.gap),
      age: ages(round.age),
      ...(first ? { clock: { departs: at(departs), arrives: at(arrives), ends: at(ends) } } : {}),
    };
  });
}

function reckon(input: Parsed, pad: Pad): TruckPlanFigures {
  const { placing: way, crewRate, spacing, sending, firstTruckAt: first, freeTime } = input;
  const volumes = loadsOf(input, pad);
  const R = placingRate(way, crewRate, pad);
  const q = largest(volumes);
  // Equal loads take equal times: reckoned once.
  const perLoad = bounded('placing', q.over(R));
  const placing = volumes.map((v) => (v === q ? perLoad : v.over(R).in('min')));
  const p = pad.step('to place a load', 'p = q ÷ R', { q, R }, perLoad);
  const legs = legsOf(input, pad);
  const { round, trucksNeeded } = needed(placing, legs, pad);
  const planned = arrivalsOf(input, placing, legs.loading, pad);
  const rounds = roundsOf({
    placing: placing.map(canonicalValue),
    loading: canonicalValue(legs.loading),
    travel: canonicalValue(legs.travel),
    back: canonicalValue(legs.washOut.plus(legs.way)),
    trucks: input.trucks && Number(input.trucks.value),
    planned,
  });
  const trucks = input.trucks ?? wholeNumber(trucksOut(rounds));
  const few = input.trucks?.lessThan(trucksNeeded) ? trucks : undefined;
  const pace: Pace = { p, l: legs.loading, s: spacing?.in('min'), C: round, few };
  const interval = intervalOf(pace, pad);
  const loads = told(rounds, volumes, trucks, first);
  const ends = (loads.at(-1) as TruckLoad).ends;
  const tally = tallied(rounds, freeTime && canonicalValue(freeTime));
  const figures = {
    loads,
    loadCount: wholeNumber(loads.length),
    volume: input.increment || !input.volume ? volumes.reduce((a, b) => a.plus(b)) : input.volume,
    placingRate: R,
    placingTime: p,
    round,
    trucksNeeded,
    trucks,
    interval,
    ends,
    ...(first ? { endsAt: clockTime(first.plus(ends)) } : {}),
    longestGap: minutesOf(tally.longestGap),
    gaps: minutesOf(tally.gaps),
    longestWait: minutesOf(tally.longestWait),
    waits: minutesOf(tally.waits),
    longestAtSite: minutesOf(tally.longestAtSite),
    ...(freeTime ? { charged: minutesOf(tally.charged) } : {}),
    oldest: minutesOf(tally.oldest),
    ageLimit: ageLimitOf(input, pad),
    initialSet: initialSet(input.concreteTemperature, pad),
    ...(tally.oldestEdge ? { oldestEdge: minutesOf(tally.oldestEdge) } : {}),
    ...chuteOf(way, pad),
  };
  const T = input.concreteTemperature;
  const hot = T !== undefined && HOT.exceededBy(T) !== undefined;
  const verdict = heedTrucks(
    figures,
    { loading: legs.loading, spacing, few: few !== undefined, freeTime, hot, sending },
    pad,
  );
  heedSteps(volumes, input.increment, pad);
  heedPlacing(way, pad);
  for (const caution of [cautions.reversingTrucks, cautions.washOut, alkali]) pad.caution(caution);
  return { ...figures, verdict, ...publishedFor(way) };
}

const minutes = (name: string, range: Parameters<typeof quantity>[3], sign: 'positive' | 'not-negative') =>
  maybe(quantity('time', name, sign, range));

function door(): Field<Parsed> {
  return fields(
    {
      volume: maybe(quantity('volume', 'volume', 'positive', POUR)),
      truckCapacity: maybe(quantity('volume', 'truckCapacity', 'positive', TRUCK)),
      loads: maybe(list(quantity('volume', 'load', 'positive', TRUCK), 1, MOST_LOADS)),
      increment: maybe(quantity('volume', 'increment', 'positive', INCREMENT)),
      placing: placingField(),
      crewRate: maybe(quantity('volume-rate', 'crewRate', 'positive', ordinary.PLACING_RATE)),
      trucks: maybe(whole('trucks', 1, MOST_TRUCKS)),
      sending: maybe(choice('sending', ['spaced', 'at-once'] as const)),
      spacing: minutes('spacing', ordinary.SPACING, 'positive'),
      travelTime: minutes('travelTime', ordinary.TRAVEL, 'not-negative'),
      distance: maybe(quantity('length', 'distance', 'positive', ordinary.ROAD)),
      speed: maybe(quantity('speed', 'speed', 'positive', ordinary.ROAD_SPEED)),
      loadingTime: minutes('loadingTime', ordinary.LOADING, 'positive'),
      washOutTime: minutes('washOutTime', ordinary.WASHING, 'not-negative'),
      returnTime: minutes('returnTime', ordinary.TRAVEL, 'not-negative'),
      concreteTemperature: maybe(
        quantity('temperature', 'concreteTemperature', 'any', ordinary.CONCRETE_TEMPERATURE),
      ),
      ageLimit: minutes('ageLimit', ordinary.AGE_LIMIT, 'positive'),
      freeTime: minutes('freeTime', ordinary.FREE_TIME, 'positive'),
      firstTruckAt: maybe(clockField('firstTruckAt')),
    },
    all(
      oneOf(['volume', 'truckCapacity'], ['loads']),
      notBoth('volume', 'loads'),
      notBoth('truckCapacity', 'loads'),
      oneOf(['travelTime'], ['distance', 'speed']),
      allOrNone('distance', 'speed'),
      notBoth('travelTime', 'distance'),
      where(says('sending', 'at-once'), all(given('trucks'), { not: given('spacing') })),
    ),
  );
}

/**
 * Trucks for a pour, load by load: how many, gaps, queues, age against its limit, cold joints.
 *
 * @param input - volume and truck, or loads; the way of placing; the way from the plant; trucks and how they are
 * sent, temperature and limits where they are known
 * @returns each load on its way, trucks needed, gaps, waits, ages, initial set, and a verdict
 * @throws {InputError} `missing`; `give-one-of` volume and loads, travel time and distance, spacing and `at-once`;
 * `too-many` loads; `does-not-fit` for times beyond 30 days and for an increment above what a truck carries; `not-served` for a temperature at which no concrete is
 * placed; quantities that cannot be read or are not greater than zero
 * @source arithmetic of rounds; set times from L&M Construction Chemicals and the National Frame Building
 * Association; limits of age from ASTM C94, as quoted
 * @example
 * ```ts
 * import { truckPlan } from 'flatwork-reckoner';
 *
 * const { figures } = truckPlan({
 *   volume: '38 yd3',
 *   truckCapacity: '10 yd3',
 *   placing: { kind: 'chute', rate: '20 yd3/h' },
 *   travelTime: '25 min',
 *   firstTruckAt: '7:00',
 * });
 * figures.trucksNeeded.format(); // '4 each'
 * figures.loads.map(({ clock }) => clock?.arrives).join(' '); // '7:00 7:30 8:00 8:30'
 * figures.oldest.format(); // '65 min'
 * figures.verdict; // 'keeps going'
 * ```
 */
export const truckPlan: Calculation<TruckPlanInput, TruckPlanFigures> = /*#__PURE__*/ define({
  id: 'truck-plan',
  title: 'Trucks for a pour',
  version: 1,
  sources: [SET_TIMES, SET_FACTOR, C94_BEFORE_2021, C94_21],
  limits: [DAY_LOADS],
  input: door,
  reckon,
});

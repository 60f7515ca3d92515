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
 * are judged by the age of the open edge against initial set at the temperature of the concrete, or of warmer air
 * (`set-time.ts`), or as it was measured on this mix (`truck-set.ts`).
 */

import { C94_21, C94_BEFORE_2021 } from '../mix/time-limit';
import type { Decimal } from '../quantity/decimal';
import * as sharedFaults from '../quantity/faults';
import { greaterOf } from '../quantity/greater';
import { canonicalValue, type Quantity } from '../quantity/quantity';
import { type Calculation, define, refuse } from '../reckoning/calculation';
import { alkali } from '../reckoning/cautions';
import { wholeNumber } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { COMMON_PRACTICE } from '../reckoning/source';
import { boundedMinutes } from './bounded';
import { chuteOf, heedPlacing, placingRate, publishedFor } from './placing';
import { clockTime } from './saw-clock';
import { heedTrucks } from './truck-advice';
import * as cautions from './truck-cautions';
import type { TruckLoad, TruckPlanFigures } from './truck-figures';
import { door, type TruckParsed, type TruckPlanInput } from './truck-input';
import { ageLimitOf, HOT, type Legs, legsOf } from './truck-legs';
import { DAY_LOADS, heedSteps, loadsOf, STEP } from './truck-loads';
import { closeArrivals, minutesOf, roundsOf, spacedArrivals, tallied, trucksOut } from './truck-rounds';
import { setOfTrucks } from './truck-set';
import { SET_FACTOR, SET_TIMES } from './truck-sources';
import { ONE, told } from './truck-told';

type Time = Quantity<'time'>;

type Count = Quantity<'count'>;

const largest = <D extends 'volume' | 'time'>(all: readonly Quantity<D>[]): Quantity<D> =>
  all.reduce((a, b) => greaterOf(a, b));

/** When each is due at the site; nothing where trucks are loaded as they come back. */
function arrivalsOf(
  { sending, spacing, trucks, loads }: TruckParsed,
  placing: readonly Time[],
  loading: Time,
  pad: Pad,
): readonly Decimal[] | undefined {
  if (sending === 'at-once') {
    if (spacing) refuse('spacing', sharedFaults.giveOneOf(['spacing', 'sending: "at-once"']));
    if (!trucks) refuse('trucks', sharedFaults.missing('trucks', '4'));
    return undefined;
  }
  if (spacing) return spacedArrivals(placing.length, canonicalValue(boundedMinutes('spacing', spacing)));
  const p = largest(placing);
  pad.assume({
    name: 'spacing',
    value: loads ? 'what the load before takes to place' : { reckoned: greaterOf(p, loading) },
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

/** What each load takes to place. Loads of one size take one time, reckoned once: a division is slow. */
function placingTimes(
  volumes: readonly Quantity<'volume'>[],
  [q, perLoad]: readonly [Quantity<'volume'>, Time],
  R: Quantity<'volume-rate'>,
): Time[] {
  const known = new Map<string, Time>([[canonicalValue(q).toString(), perLoad]]);
  return volumes.map((v) => {
    if (v === q) return perLoad;
    const size = canonicalValue(v).toString();
    const time = known.get(size) ?? v.over(R).in('min');
    known.set(size, time);
    return time;
  });
}

function reckon(input: TruckParsed, pad: Pad): TruckPlanFigures {
  const { placing: way, crewRate, spacing, sending, firstTruckAt: first, freeTime } = input;
  const volumes = loadsOf(input, pad);
  const R = placingRate(way, crewRate, pad);
  const q = largest(volumes);
  const perLoad = boundedMinutes('placing', q.over(R));
  const placing = placingTimes(volumes, [q, perLoad], R);
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
    ...setOfTrucks(input, pad),
    ...(tally.oldestEdge ? { oldestEdge: minutesOf(tally.oldestEdge) } : {}),
    ...chuteOf(way, pad),
  };
  const T = input.concreteTemperature;
  const hot = T !== undefined && HOT.exceededBy(T) !== undefined;
  const verdict = heedTrucks(
    figures,
    {
      loading: legs.loading,
      spacing,
      few: few !== undefined,
      freeTime,
      capacity: input.truckCapacity,
      step: input.increment ?? STEP.as(pad.system),
      hot,
      sending,
    },
    pad,
  );
  heedSteps(volumes, input.increment, pad);
  heedPlacing(way, pad);
  for (const caution of [cautions.reversingTrucks, cautions.washOut, alkali]) pad.caution(caution);
  return { ...figures, verdict, ...publishedFor(way, pad) };
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

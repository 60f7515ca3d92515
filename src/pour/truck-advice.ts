/**
 * How a pour with trucks goes, and what to do about it.
 *
 * The open edge is judged against the earliest initial set: concrete placed against an edge that may have set makes a
 * cold joint. Before that it crusts over: common practice wants the next load within an hour in mild weather and within
 * half an hour when it is hot, a quarter of the earliest set in both; and past three quarters of it hauled concrete is
 * stiff by age alone. A gap of 5 min and a wait of 15 min are part of
 * every pour (common practice). Concrete that may set before it is out of the truck is not placed at all, whatever
 * limit of age was agreed on.
 */
import { greaterOf } from '../quantity/greater';
import { constant, ratio, time } from '../quantity/make';
import type { Quantity } from '../quantity/quantity';
import { wholeNumber } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import type { Words } from '../reckoning/words';
import { justOverLoad, shortLoad, smallLastLoad } from './cautions';
import { UNKNOWABLE } from './order-advice';
import * as cautions from './truck-cautions';
import type { TruckPlanFigures } from './truck-figures';

/** How it goes. */
export type TruckVerdict =
  | 'keeps going'
  | 'trucks wait'
  | 'placing waits'
  | 'too old'
  | 'cold joint'
  | 'sets in the truck';

type Time = Quantity<'time'>;
type Volume = Quantity<'volume'>;
type Figures = Omit<TruckPlanFigures, 'verdict' | 'publishedRates' | 'publishedLoads'>;

/** What of the input decides on advice. */
export interface TruckWays {
  readonly loading: Time;
  readonly spacing: Time | undefined;
  /** There are fewer trucks than it takes, by what was said and not by the schedule. */
  readonly few: boolean;
  readonly freeTime: Time | undefined;
  /** What one truck carries, where that is told. */
  readonly capacity: Quantity<'volume'> | undefined;
  /** The step of the order. */
  readonly step: Quantity<'volume'>;
  readonly hot: boolean;
  readonly sending: 'spaced' | 'at-once' | undefined;
}

const SHORT_GAP = constant(() => time('5 min'));
const SHORT_WAIT = constant(() => time('15 min'));
/** Times of two sums differ by what rounding leaves. */
const A_SECOND = constant(() => time('1 s'));
const MOST_OF_SET = constant(() => ratio('75%'));
const QUARTER = constant(() => ratio('25%'));

const slower = ({ placingTime }: Figures, loading: Time): Time => greaterOf(placingTime, loading);

/** Whether the load after the longest gap was loaded as soon as the one before had left the plant. */
function byPlant({ loads, longestGap }: Figures, loading: Time): boolean {
  const at = loads.findIndex(({ gap }) => gap.compareTo(longestGap) === 0);
  const [before, after] = [loads[at - 1], loads[at]];
  if (!before || !after) return false;
  return !after.departs.minus(before.departs).minus(loading).greaterThan(A_SECOND());
}

/** Whether all loads but the last are as large as the first. */
const alike = ({ loads }: Figures): boolean =>
  loads.every(
    ({ volume }, i) => i === loads.length - 1 || volume.compareTo(loads[0]?.volume ?? volume) === 0,
  );

/** What is left of the gaps where each truck comes as soon as the plant can load it. */
function restOfGaps({ loads }: Figures, loading: Time): Time {
  const placed = loads.slice(0, -1).map(({ starts, ends }) => ends.minus(starts));
  return placed.reduce((rest, p) => greaterOf(rest, loading.minus(p)), loading.minus(loading));
}

function againstGaps(figures: Figures, { loading, spacing, few, sending }: TruckWays): Words {
  const { trucksNeeded } = figures;
  // Where the plant holds it up, no truck more helps.
  if (byPlant(figures, loading)) return cautions.plantIsSlower(loading);
  const rest = restOfGaps(figures, loading);
  if (rest.greaterThan(SHORT_GAP())) return cautions.downToPlant(trucksNeeded, loading, rest);
  const apart = slower(figures, loading);
  const even = alike(figures);
  if (!few) return even ? cautions.closerTrucks(apart) : cautions.trucksInTurn;
  // More of them bunch up where all are sent at once, or closer together than they are emptied.
  const asSent = spacing ? spacing.compareTo(apart) === 0 : sending !== 'at-once';
  if (asSent) return cautions.moreTrucks(trucksNeeded);
  return even ? cautions.moreAndSpaced(trucksNeeded, apart) : cautions.trucksEachInTurn(trucksNeeded);
}

/** Gaps against what the concrete at the edge stands. */
function heedGaps(figures: Figures, ways: TruckWays, pad: Pad): TruckVerdict | undefined {
  const { longestGap, oldestEdge, initialSet, gapAtMost: crust } = figures;
  if (!oldestEdge) return undefined;
  const remedy = againstGaps(figures, ways);
  if (!oldestEdge.lessThan(initialSet.from)) {
    pad.caution(cautions.coldJoint(initialSet.from.in('min'), oldestEdge, remedy));
    return 'cold joint';
  }
  if (longestGap.greaterThan(crust)) {
    pad.caution(cautions.coldJointRisk(crust, longestGap, remedy));
    return 'placing waits';
  }
  if (!longestGap.greaterThan(SHORT_GAP())) return undefined;
  const old = initialSet.from.times(MOST_OF_SET()).in('min');
  if (oldestEdge.greaterThan(old)) {
    pad.caution(cautions.oldEdge(old, oldestEdge, remedy));
    return 'placing waits';
  }
  pad.caution(cautions.placingWaits(SHORT_GAP(), longestGap, remedy));
  return 'placing waits';
}

/** Sent one by one, and no more of them than it takes. */
function againstQueues(figures: Figures, { sending, loading, spacing, few }: TruckWays): Words {
  const { trucks, trucksNeeded } = figures;
  const even = alike(figures);
  // Of loads that differ one comes late for want of trucks, and the next waits for it.
  if (few && !even) {
    const inTurn = !spacing && sending !== 'at-once';
    return inTurn ? cautions.moreTrucks(trucksNeeded) : cautions.trucksEachInTurn(trucksNeeded);
  }
  const apart = slower(figures, loading);
  if (sending === 'at-once' && trucks.greaterThan(trucksNeeded))
    return even ? cautions.fewerTrucks(trucksNeeded, apart) : cautions.trucksEachInTurn(trucksNeeded);
  return even ? cautions.spaceTrucks(apart) : cautions.spaceInTurn;
}

function heedQueue(figures: Figures, ways: TruckWays, pad: Pad): TruckVerdict | undefined {
  const { longestWait } = figures;
  if (!longestWait.greaterThan(SHORT_WAIT())) return undefined;
  pad.caution(cautions.trucksQueue(SHORT_WAIT(), longestWait, againstQueues(figures, ways), ways.hot));
  return 'trucks wait';
}

/** Of each load, how old it is without what it waits. */
const unwaited = ({ age, waits }: Figures['loads'][number]): Time => age.minus(waits);

/** What helps loads that are past a limit: to wait no more, or to be emptied in what the way leaves. */
function againstAge({ loads, placingRate: R }: Figures, limit: Time, step: Volume): Words {
  const load = loads.reduce((a, b) => (unwaited(b).greaterThan(unwaited(a)) ? b : a));
  if (!unwaited(load).greaterThan(limit)) return cautions.noWaiting;
  const way = unwaited(load).minus(load.ends.minus(load.starts));
  const room = limit.minus(way);
  if (room.sign() <= 0) return cautions.nearerPlant;
  const most = R.times(room)
    .downTo(step)
    .in(step.shownIn ?? step.unit);
  return most.lessThan(load.volume.times(QUARTER())) ? cautions.fasterPlacing : cautions.smallerLoads(most);
}

/** The oldest load against its limit, and against what it can stand: it is old by waiting, or by its round. */
function heedAge(figures: Figures, { step }: TruckWays, pad: Pad): TruckVerdict | undefined {
  const { loads, oldest, ageLimit, initialSet } = figures;
  const at = loads.findIndex(({ age }) => age.compareTo(oldest) === 0);
  const load = wholeNumber(at + 1);
  const sets = !oldest.lessThan(initialSet.from);
  if (sets) {
    const young = loads.every((one) => unwaited(one).lessThan(initialSet.from));
    const remedy = young ? cautions.noWaiting : cautions.youngerLoads;
    pad.caution(cautions.setsInTruck(initialSet.from.in('min'), oldest, load, remedy));
  }
  if (!oldest.greaterThan(ageLimit)) {
    if (sets) return 'sets in the truck';
    // Within its limit, and yet stiff by age alone.
    const stiff = initialSet.from.times(MOST_OF_SET()).in('min');
    if (oldest.greaterThan(stiff)) {
      pad.caution(cautions.stiffLoad(stiff, oldest, load, againstAge(figures, stiff, step)));
    }
    return undefined;
  }
  pad.caution(cautions.tooOld(ageLimit, oldest, load, againstAge(figures, ageLimit, step)));
  return sets ? 'sets in the truck' : 'too old';
}

/** A truck for a hair, and loads that are small beside the largest. */
function heedLoads(figures: Figures, { capacity }: TruckWays, pad: Pad): void {
  const { loads, volume } = figures;
  const sizes = loads.map((load) => load.volume);
  const last = sizes.at(-1);
  if (!last) return;
  if (sizes.length < 2) {
    const quarter = capacity?.times(QUARTER());
    if (quarter && last.lessThan(quarter)) pad.caution(shortLoad(quarter, last));
    return;
  }
  const small = sizes.reduce((a, b) => (b.greaterThan(a) ? b : a)).times(QUARTER());
  const early = sizes.findIndex((size, i) => i < sizes.length - 1 && size.lessThan(small));
  if (early >= 0) pad.caution(cautions.smallLoad(small, sizes[early] ?? small, wholeNumber(early + 1)));
  if (!last.lessThan(small)) return;
  const hair = volume.times(UNKNOWABLE()).in(last.shownIn ?? last.unit);
  const forNothing = alike(figures) && !last.greaterThan(hair);
  pad.caution(forNothing ? justOverLoad(hair, last, volume.minus(last), false) : smallLastLoad(small, last));
}

const GRAVEST: readonly TruckVerdict[] = [
  'sets in the truck',
  'cold joint',
  'too old',
  'placing waits',
  'trucks wait',
];

/** All advice about trucks, and the verdict: the gravest of what was found. */
export function heedTrucks(figures: Figures, ways: TruckWays, pad: Pad): TruckVerdict {
  const found = [heedGaps(figures, ways, pad), heedQueue(figures, ways, pad), heedAge(figures, ways, pad)];
  const { charged, longestAtSite } = figures;
  if (charged && charged.sign() > 0 && ways.freeTime)
    pad.caution(cautions.slowToUnload(ways.freeTime, longestAtSite, charged));
  heedLoads(figures, ways, pad);
  return GRAVEST.find((verdict) => found.includes(verdict)) ?? 'keeps going';
}

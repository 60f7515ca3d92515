/**
 * How a pour with trucks goes, and what to do about it.
 *
 * The open edge is judged against the earliest initial set: concrete placed against an edge that may have set makes a
 * cold joint. Before that it crusts over: common practice wants the next load within an hour in mild weather and within
 * half an hour when it is hot, a quarter of the earliest set in both; and past three quarters of it hauled concrete is
 * stiff by age alone. A gap of 5 min and a wait of 15 min are part of
 * every pour (common practice).
 */
import { constant, ratio, time } from '../quantity/make';
import type { Quantity } from '../quantity/quantity';
import { wholeNumber } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import type { Words } from '../reckoning/words';
import { smallLastLoad } from './cautions';
import * as cautions from './truck-cautions';
import type { TruckPlanFigures } from './truck-plan';

/** How it goes. */
export type TruckVerdict = 'keeps going' | 'trucks wait' | 'placing waits' | 'cold joint';

type Time = Quantity<'time'>;
type Figures = Omit<TruckPlanFigures, 'verdict' | 'publishedRates' | 'publishedLoads'>;

/** What of the input decides on advice. */
export interface TruckWays {
  readonly loading: Time;
  readonly freeTime: Time | undefined;
  readonly hot: boolean;
  readonly sending: 'spaced' | 'at-once' | undefined;
}

const SHORT_GAP = constant(() => time('5 min'));
const SHORT_WAIT = constant(() => time('15 min'));
const MOST_OF_SET = constant(() => ratio('75%'));
const QUARTER = constant(() => ratio('25%'));

const slower = ({ placingTime }: Figures, loading: Time): Time =>
  loading.greaterThan(placingTime) ? loading : placingTime;

function againstGaps(figures: Figures, { loading }: TruckWays): Words {
  const { trucks, trucksNeeded, placingTime, interval } = figures;
  if (trucks.lessThan(trucksNeeded)) return cautions.moreTrucks(trucksNeeded);
  // Where the plant holds it up, no truck more helps.
  if (loading.greaterThan(placingTime) && interval.compareTo(loading) === 0)
    return cautions.plantIsSlower(loading);
  return cautions.closerTrucks(slower(figures, loading));
}

/** Gaps against what the concrete at the edge stands. */
function heedGaps(figures: Figures, ways: TruckWays, pad: Pad): TruckVerdict | undefined {
  const { longestGap, oldestEdge, initialSet } = figures;
  if (!oldestEdge) return undefined;
  const remedy = againstGaps(figures, ways);
  if (!oldestEdge.lessThan(initialSet.from)) {
    pad.caution(cautions.coldJoint(initialSet.from, oldestEdge, remedy));
    return 'cold joint';
  }
  const crust = initialSet.from.times(QUARTER()).in('min');
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

function heedQueue(
  figures: Figures,
  { hot, sending, loading }: TruckWays,
  pad: Pad,
): TruckVerdict | undefined {
  const { longestWait, trucks, trucksNeeded } = figures;
  if (!longestWait.greaterThan(SHORT_WAIT())) return undefined;
  const tooMany = sending === 'at-once' && trucks.greaterThan(trucksNeeded);
  const remedy = tooMany
    ? cautions.fewerTrucks(trucksNeeded)
    : cautions.spaceTrucks(slower(figures, loading));
  pad.caution(cautions.trucksQueue(SHORT_WAIT(), longestWait, remedy, hot));
  return 'trucks wait';
}

/** The oldest load, and whether it is old by waiting. */
function heedAge({ loads, oldest, ageLimit }: Figures, pad: Pad): void {
  if (!oldest.greaterThan(ageLimit)) return;
  const at = loads.findIndex(({ age }) => age.compareTo(oldest) === 0);
  const waits = loads[at]?.waits;
  const byWaiting = waits !== undefined && !oldest.minus(waits).greaterThan(ageLimit);
  const remedy = byWaiting ? cautions.noWaiting : cautions.shorterRound;
  pad.caution(cautions.tooOld(ageLimit, oldest, wholeNumber(at + 1), remedy));
}

function heedLoads({ loads }: Figures, pad: Pad): void {
  const [first, last] = [loads[0]?.volume, loads.at(-1)?.volume];
  const small = first?.times(QUARTER());
  if (last && small && loads.length > 1 && last.lessThan(small)) pad.caution(smallLastLoad(small, last));
}

/** All advice about trucks, and the verdict. */
export function heedTrucks(figures: Figures, ways: TruckWays, pad: Pad): TruckVerdict {
  const gaps = heedGaps(figures, ways, pad);
  const queue = heedQueue(figures, ways, pad);
  heedAge(figures, pad);
  const { charged, longestAtSite } = figures;
  if (charged && charged.sign() > 0 && ways.freeTime)
    pad.caution(cautions.slowToUnload(ways.freeTime, longestAtSite, charged));
  heedLoads(figures, pad);
  return gaps ?? queue ?? 'keeps going';
}

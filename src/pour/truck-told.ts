/** The loads as they are told: minutes from the first truck on, and the clock where it is known. */

import { type Decimal, ZERO } from '../quantity/decimal';
import { constant, ratio } from '../quantity/make';
import type { Quantity } from '../quantity/quantity';
import { wholeNumber } from '../reckoning/fields';
import { clockOf } from './clock';
import type { TruckLoad } from './truck-figures';
import { minutesOf, type Round } from './truck-rounds';

type Time = Quantity<'time'>;
type Volume = Quantity<'volume'>;
type Count = Quantity<'count'>;

export const ONE = constant(() => ratio('1:1'));

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
export function told(
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

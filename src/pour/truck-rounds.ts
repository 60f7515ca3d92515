/**
 * The rounds of trucks, one load after another: loading, the way, waiting, unloading, washing out, the way back.
 *
 * One truck is loaded at a time and one unloaded at a time, in the order in which they are sent. Nothing is left to
 * chance, so the same rounds come out every time. Times are in seconds from the first arrival.
 */
import { Decimal, ZERO } from '../quantity/decimal';
import { newQuantity, type Quantity } from '../quantity/quantity';
import { unitOf } from '../quantity/units';

/** What rounds are made with, in seconds. */
export interface Rounds {
  /** How long each load takes to place. */
  readonly placing: readonly Decimal[];
  /** How long a truck takes to be loaded. */
  readonly loading: Decimal;
  /** The way to the site. */
  readonly travel: Decimal;
  /** Washing out and the way back. */
  readonly back: Decimal;
  /** How many trucks there are; as many as it takes where it is not said. */
  readonly trucks: number | undefined;
  /** When each is to arrive; as soon as it can where it is not said. */
  readonly planned: readonly Decimal[] | undefined;
}

/** One load on its way. */
export interface Round {
  /** From here on its concrete ages. */
  readonly loaded: Decimal;
  readonly departs: Decimal;
  readonly arrives: Decimal;
  readonly starts: Decimal;
  readonly ends: Decimal;
  /** When its truck can be loaded again. */
  readonly free: Decimal;
}

const later = (a: Decimal, b: Decimal): Decimal => (a.lessThan(b) ? b : a);

/** What rounding of sixty digits may leave between two times that are the same. */
const STRAY = new Decimal('1e-30');

/** The earliest that load `i` can be loaded: when it is due, its truck is back and the place at the plant is free. */
function loadedAt(i: number, done: readonly Round[], { trucks, planned, travel, loading }: Rounds): Decimal {
  const way = travel.plus(loading);
  const last = done[i - 1];
  const due = planned?.[i];
  const own = trucks === undefined ? undefined : done[i - trucks];
  let at = due ? due.minus(way) : (last?.departs ?? way.neg());
  if (last) at = later(at, last.departs);
  return own ? later(at, own.free) : at;
}

/** Every load in turn. */
export function roundsOf(rounds: Rounds): Round[] {
  const { placing, loading, travel, back } = rounds;
  const done: Round[] = [];
  for (let i = 0; i < placing.length; i += 1) {
    const loaded = loadedAt(i, done, rounds);
    const departs = loaded.plus(loading);
    const arrives = departs.plus(travel);
    const before = done[i - 1];
    const starts = before ? later(arrives, before.ends) : arrives;
    const ends = starts.plus(placing[i] as Decimal);
    done.push({ loaded, departs, arrives, starts, ends, free: ends.plus(back) });
  }
  return done;
}

/** The most trucks that are out at once. Both loading and coming back are in the order of the loads. */
export function trucksOut(rounds: readonly Round[]): number {
  let [most, back] = [0, 0];
  rounds.forEach(({ loaded }, i) => {
    const now = loaded.plus(STRAY);
    while (rounds[back]?.free.lessThanOrEqualTo(now)) back += 1;
    most = Math.max(most, i + 1 - back);
  });
  return most;
}

/** Arrivals in which each comes as the one before is empty, or as soon as the plant can load it. */
export function closeArrivals(placing: readonly Decimal[], loading: Decimal): Decimal[] {
  let at = ZERO;
  return placing.map((p) => {
    const here = at;
    at = at.plus(p.lessThan(loading) ? loading : p);
    return here;
  });
}

/** Arrivals so far apart. */
export const spacedArrivals = (count: number, spacing: Decimal): Decimal[] =>
  Array.from({ length: count }, (_, i) => spacing.times(i));

/** What all rounds come to, in seconds. */
export interface Tally {
  readonly longestGap: Decimal;
  readonly gaps: Decimal;
  readonly longestWait: Decimal;
  readonly waits: Decimal;
  readonly longestAtSite: Decimal;
  /** At the site beyond the free time. */
  readonly charged: Decimal;
  readonly oldest: Decimal;
  /** The oldest that the open edge gets, where placing stands still. */
  readonly oldestEdge: Decimal | undefined;
}

/** How long placing stands still before a load. */
export const gapBefore = (round: Round, before: Round | undefined): Decimal =>
  !before || round.starts === before.ends ? ZERO : round.starts.minus(before.ends);

/** How long a truck waits at the site. */
export const waitOf = ({ starts, arrives }: Round): Decimal =>
  starts === arrives ? ZERO : starts.minus(arrives);

/** Greatest and sum of what is put in. */
class Extent {
  most = ZERO;
  sum = ZERO;

  put(value: Decimal): void {
    if (value === ZERO || value.lessThanOrEqualTo(STRAY)) return;
    this.most = later(this.most, value);
    this.sum = this.sum.plus(value);
  }
}

/** Add up gaps, waits and ages. */
export function tallied(rounds: readonly Round[], free: Decimal | undefined): Tally {
  const [gap, wait, site, over, age, edge] = Array.from({ length: 6 }, () => new Extent()) as [
    Extent,
    Extent,
    Extent,
    Extent,
    Extent,
    Extent,
  ];
  rounds.forEach((round, i) => {
    const before = rounds[i - 1];
    const still = gapBefore(round, before);
    gap.put(still);
    // What lies at the edge is as old as its load, and has lain there for the gap.
    if (before && still.greaterThan(STRAY)) edge.put(round.starts.minus(before.loaded));
    wait.put(waitOf(round));
    const atSite = round.ends.minus(round.arrives);
    site.put(atSite);
    if (free) over.put(atSite.minus(free));
    age.put(round.ends.minus(round.loaded));
  });
  return {
    longestGap: gap.most,
    gaps: gap.sum,
    longestWait: wait.most,
    waits: wait.sum,
    longestAtSite: site.most,
    charged: over.sum,
    oldest: age.most,
    oldestEdge: edge.most === ZERO ? undefined : edge.most,
  };
}

/** Seconds as a time, told in minutes. */
export const minutesOf = (seconds: Decimal): Quantity<'time'> =>
  newQuantity('time', seconds, unitOf('time', 'min') as never);

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
  /** How long the truck waits at the site. */
  readonly wait: Decimal;
  /** How long placing stands still before it. */
  readonly gap: Decimal;
  /** From arrival to the end of unloading. */
  readonly atSite: Decimal;
  /** From the beginning of loading to the end of unloading. */
  readonly age: Decimal;
}

const later = (a: Decimal, b: Decimal): Decimal => (a !== b && a.lessThan(b) ? b : a);

/** What rounding of sixty digits may leave between two times that are the same. */
const STRAY = /*#__PURE__*/ new Decimal('1e-30');

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

/** Every load in turn. What does not wait is not reckoned with: most loads are like the one before. */
export function roundsOf(rounds: Rounds): Round[] {
  const { placing, loading, travel, back } = rounds;
  const way = loading.plus(travel);
  const done: Round[] = [];
  let [placed, young] = [ZERO, way];
  for (let i = 0; i < placing.length; i += 1) {
    const takes = placing[i] as Decimal;
    if (takes !== placed) [placed, young] = [takes, way.plus(takes)];
    const loaded = loadedAt(i, done, rounds);
    const departs = loaded.plus(loading);
    const arrives = departs.plus(travel);
    const before = done[i - 1];
    const starts = before ? later(arrives, before.ends) : arrives;
    const ends = starts.plus(takes);
    const wait = starts === arrives ? ZERO : starts.minus(arrives);
    const gap = !before || starts === before.ends ? ZERO : starts.minus(before.ends);
    const atSite = wait === ZERO ? takes : takes.plus(wait);
    const age = wait === ZERO ? young : young.plus(wait);
    done.push({ loaded, departs, arrives, starts, ends, free: ends.plus(back), wait, gap, atSite, age });
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

/** The greatest of what is put in. */
class Greatest {
  most = ZERO;

  put(value: Decimal): void {
    if (value !== this.most) this.most = later(this.most, value);
  }
}

/** The same with the sum; strays of rounding count for nothing. */
class Summed extends Greatest {
  sum = ZERO;

  override put(value: Decimal): void {
    if (value === ZERO || value.lessThanOrEqualTo(STRAY)) return;
    super.put(value);
    this.sum = this.sum.plus(value);
  }
}

/** Add up gaps, waits and ages. */
export function tallied(rounds: readonly Round[], free: Decimal | undefined): Tally {
  const [gaps, waits, over] = [new Summed(), new Summed(), new Summed()];
  const [site, age, edge] = [new Greatest(), new Greatest(), new Greatest()];
  rounds.forEach((round, i) => {
    gaps.put(round.gap);
    waits.put(round.wait);
    site.put(round.atSite);
    age.put(round.age);
    if (free) over.put(round.atSite.minus(free));
    const before = rounds[i - 1];
    // What lies at the edge is as old as its load, and has lain there for the gap.
    if (before && round.gap !== ZERO && round.gap.greaterThan(STRAY)) edge.put(before.age.plus(round.gap));
  });
  return {
    longestGap: gaps.most,
    gaps: gaps.sum,
    longestWait: waits.most,
    waits: waits.sum,
    longestAtSite: site.most,
    charged: over.sum,
    oldest: age.most,
    oldestEdge: edge.most === ZERO ? undefined : edge.most,
  };
}

/** Seconds as a time, told in minutes. */
export const minutesOf = (seconds: Decimal): Quantity<'time'> =>
  newQuantity('time', seconds, unitOf('time', 'min') as never);

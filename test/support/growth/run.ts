/**
 * Grows one size by doubling until it is refused, looks for the largest that is taken, and times it.
 *
 * The exponent of the growth is the slope of the logarithm of time over that of size, by least squares,
 * over the upper sizes that take long enough to be timed.
 */
import { type Answer, answer, namesTheMost } from './answer';
import type { Growth } from './growth';
import { ENDS, KNOWN } from './known';

interface Timed extends Answer {
  readonly size: number;
  /** Processor time in milliseconds. */
  readonly ms: number;
}

export interface Grown {
  readonly growth: Growth;
  /** The largest size that is taken; 0 where none is. */
  readonly largest: number;
  readonly ms: number;
  /** Left out where it is over before it can be timed. */
  readonly exponent?: number;
  /** How it is refused beyond; left out where growing ended before. */
  readonly beyond?: string;
  /** What is wrong with it. */
  readonly faults: readonly string[];
}

const MOST_MS = 1000;
const MOST_EXPONENT = 1.3;
/** Shorter times say nothing about growth; nor does growth matter that ends before a tenth of a second. */
const TIMED_MS = 10;
/** Answers that are quick enough to be asked for often. */
const QUICK_MS = 100;
/** Growing stops where an answer takes so long. */
const STOP_MS = 2500;
const UPPER = 4;
/** How often an answer is asked for again, of which the quickest counts. */
const AGAIN = 4;

function timed(growth: Growth, size: number): Timed {
  const input = growth.input(size);
  const once = (): { found: Answer; ms: number } => {
    const before = process.cpuUsage();
    const found = answer(growth.of, input);
    const { user, system } = process.cpuUsage(before);
    return { found, ms: (user + system) / 1000 };
  };
  let { found, ms } = once();
  // What compiling and clearing up takes is no part of it.
  const times = ms > MOST_MS / 2 ? 2 : AGAIN;
  for (let again = 0; again < times && ms > TIMED_MS / 2 && ms < MOST_MS * 1.5; again += 1)
    ms = Math.min(ms, once().ms);
  return { ...found, size, ms };
}

/** The largest size that is taken, between one that is and one that is not. */
function closeIn(growth: Growth, taken: Timed, refused: Timed): [Timed, Timed] {
  let [low, high] = [taken, refused];
  // To the very limit where that is quick, and near it otherwise.
  const near = (): number => (low.ms > QUICK_MS ? low.size / 64 : 1);
  while (high.size - low.size > Math.max(1, near())) {
    const middle = timed(growth, Math.floor((low.size + high.size) / 2));
    if (middle.refused) high = middle;
    else low = middle;
  }
  return [low, high];
}

function exponentOf(all: readonly Timed[]): number | undefined {
  const upper = all.filter(({ ms }) => ms > TIMED_MS).slice(-UPPER);
  const [first, last] = [upper[0], upper[upper.length - 1]];
  if (!first || !last || last.size < 3 * first.size || last.ms < QUICK_MS) return undefined;
  const logs = upper.map(({ size, ms }) => [Math.log(size), Math.log(ms)] as const);
  const mean = (pick: 0 | 1): number => logs.reduce((sum, l) => sum + l[pick], 0) / logs.length;
  const [mx, my] = [mean(0), mean(1)];
  const over = logs.reduce((sum, [x, y]) => sum + (x - mx) * (y - my), 0);
  return over / logs.reduce((sum, [x]) => sum + (x - mx) ** 2, 0);
}

interface Found {
  readonly taken: readonly Timed[];
  readonly beyond?: Timed;
}

function grown(growth: Growth): Found {
  const taken: Timed[] = [];
  for (let size = growth.from; size <= growth.to; size *= 2) {
    const found = timed(growth, size);
    const last = taken[taken.length - 1];
    if (found.refused) {
      if (!last) return { taken, beyond: found };
      const [largest, beyond] = closeIn(growth, last, found);
      return { taken: largest === last ? taken : [...taken, largest], beyond };
    }
    taken.push(found);
    if (found.ms > STOP_MS) break;
  }
  return { taken };
}

const known = ({ of, what }: Growth): boolean => KNOWN.some((one) => one.of === of && one.what.test(what));

const ends = ({ what }: Growth, { refused }: Timed): boolean =>
  ENDS.some((one) => one.what.test(what) && refused?.codes[0] === one.code);

function faultsOf(growth: Growth, { taken, beyond }: Found, exponent: number | undefined): string[] {
  const faults: string[] = [];
  if (taken.length === 0 && !growth.anyRefusal) faults.push('not even the first size is taken');
  const slow = taken.find(({ ms }) => ms > MOST_MS);
  if (slow) faults.push(`takes ${Math.round(slow.ms)} ms at ${slow.size}`);
  if (exponent !== undefined && exponent > MOST_EXPONENT && !known(growth))
    faults.push('grows beyond proportion');
  if (beyond && !growth.anyRefusal && !namesTheMost(beyond) && !ends(growth, beyond))
    faults.push('is refused, but not as too many');
  if (beyond && beyond.ms > MOST_MS) faults.push(`takes ${Math.round(beyond.ms)} ms to refuse`);
  return faults;
}

/** Grow one size. */
export function grow(growth: Growth): Grown {
  try {
    const found = grown(growth);
    const largest = found.taken[found.taken.length - 1];
    const exponent = exponentOf(found.taken);
    const refused = found.beyond?.refused;
    return {
      growth,
      largest: largest?.size ?? 0,
      ms: largest?.ms ?? 0,
      ...(exponent === undefined ? {} : { exponent }),
      ...(refused ? { beyond: `${refused.codes[0]}: ${refused.text}` } : {}),
      faults: faultsOf(growth, found, exponent),
    };
  } catch (error) {
    return { growth, largest: 0, ms: 0, faults: [`throws ${String(error).slice(0, 200)}`] };
  }
}

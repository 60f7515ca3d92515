/** How often the slip that was made is the one that is named, and where. */
import type { EstimateCheck, LikelySlip, NamedSlip } from '../../../src/index';
import { estimateCheck } from '../../../src/index';
import { siOf } from '../../../src/opinion/scale';
import type { Chance } from '../relations/random';
import { type Estimate, estimate } from './estimates';
import { ESTIMATED } from './jobs';
import { same } from './notebook';
import type { Made } from './slip';

type Found = EstimateCheck;

const near = (a: string, b: string): boolean => a.startsWith(b) || b.startsWith(a);

/** One place within the other, where both say one. */
const placed = (made: Made, named: NamedSlip): boolean =>
  (made.input === undefined || named.input === undefined || near(made.input, named.input)) &&
  (made.step === undefined || named.step === undefined || made.step === named.step) &&
  (made.figure === undefined || named.figure === undefined || made.figure === named.figure);

const isNamed = (made: Made, named: NamedSlip): boolean =>
  made.codes.includes(named.code) && placed(made, named);

/** The same figures as were meant: then nothing tells the two slips apart, and either name is right. */
const sameFigures = ({ meant }: Estimate, { gives }: LikelySlip): boolean =>
  gives.length === meant.length &&
  gives.every(({ would }, i) => same(siOf(would), meant[i] ?? Number.NaN, 1e-6));

/** What is named first is what was made, for one slip or for the pair. */
function isTrue(made: Estimate, likely: LikelySlip): boolean {
  if (sameFigures(made, likely)) return true;
  if (likely.slips.length !== made.slips.length) return false;
  const places = [likely.slips, ...(made.slips.length === 1 ? likely.elsewhere.map((one) => [one]) : [])];
  return places.some((named) => made.slips.every((slip) => named.some((one) => isNamed(slip, one))));
}

/** Where what was made stands, counted from one; 0 where it is not named. */
const rankOf = (made: Estimate, found: Found): number =>
  found.slips.findIndex((likely) => isTrue(made, likely)) + 1;

export interface Miss {
  readonly made: Estimate;
  readonly found: Found;
  readonly rank: number;
}

export interface Tally {
  readonly count: number;
  readonly first: number;
  readonly firstThree: number;
  /** Where another name stands first that gives all that was claimed as written: the figures do not tell them apart. */
  readonly asWell: number;
  /** Not in the first three where nothing was off but for rounding, so that there was nothing to explain. */
  readonly hidden: number;
  /** Not in the first three where three others give all that was claimed as written. */
  readonly crowded: number;
  readonly misses: readonly Miss[];
  /** Names of what was made, with what was named first and how often. */
  readonly confusion: ReadonlyMap<string, ReadonlyMap<string, number>>;
  readonly calculations: number;
}

const checked = ({ job, claims }: Estimate): Found =>
  estimateCheck(job.calculation as never, job.input as never, claims) as unknown as Found;

const codesOf = (likely: LikelySlip | undefined): string =>
  likely ? likely.slips.map(({ code }) => code).join(' + ') : 'none found';

/** So many estimates, of all calculations in turn; of those with too little in them, fewer. */
function* estimates(count: number, slips: 0 | 1 | 2, chance: Chance): Generator<Estimate> {
  for (let [i, made] = [0, 0]; made < count && i < 3 * count + 100; i++) {
    const one = estimate(ESTIMATED[(7 * i) % ESTIMATED.length] as string, slips, chance);
    if (!one) continue;
    made++;
    yield one;
  }
}

/** What is named first gives every claim that is off, just as it was written. */
const givesAll = ({ claims, slips: [likely] }: Found): boolean =>
  likely?.exact === true &&
  claims.every(({ figure, verdict }) => verdict === 'agrees' || likely.explains.includes(figure));

/** Estimates with one slip or two each, over all calculations in turn. */
export function slipsTold(count: number, slips: 1 | 2, chance: Chance): Tally {
  const misses: Miss[] = [];
  const confusion = new Map<string, Map<string, number>>();
  let [first, firstThree] = [0, 0];
  const over = new Set<string>();
  for (const made of estimates(count, slips, chance)) {
    over.add(made.job.calculation.id);
    const found = checked(made);
    const rank = rankOf(made, found);
    if (rank === 1) first++;
    if (rank > 0 && rank <= 3) firstThree++;
    const row = confusion.get(nameOf(made)) ?? new Map<string, number>();
    const named = rank === 1 ? 'right' : codesOf(found.slips[0]);
    confusion.set(nameOf(made), row.set(named, (row.get(named) ?? 0) + 1));
    if (rank !== 1) misses.push({ made, found, rank });
  }
  const asWell = misses.filter(({ found }) => givesAll(found)).length;
  const beyond = misses.filter(({ rank }) => rank === 0 || rank > 3);
  const isHidden = ({ found }: Miss): boolean => found.claims.every(({ verdict }) => verdict === 'agrees');
  const isCrowded = ({ found }: Miss): boolean =>
    found.slips.length > 2 && found.slips.slice(0, 3).every(({ exact }) => exact);
  return {
    count: first + misses.length,
    first,
    firstThree,
    asWell,
    hidden: beyond.filter(isHidden).length,
    crowded: beyond.filter(isCrowded).length,
    misses,
    confusion,
    calculations: over.size,
  };
}

export const nameOf = ({ slips }: Estimate): string => slips.map(({ name }) => name).join(' + ');

/** Right but rounded estimates: those that are said to differ, and those for which a slip is named. */
export function falseAlarms(count: number, chance: Chance): { differs: Miss[]; named: Miss[] } {
  const misses: Miss[] = [];
  for (const made of estimates(count, 0, chance)) misses.push({ made, found: checked(made), rank: 0 });
  return {
    differs: misses.filter(({ found }) => found.verdict === 'differs'),
    named: misses.filter(({ found }) => found.slips.length > 0),
  };
}

/**
 * From a rise to a ramp: runs that are all alike, the landings between them, and the heights to set forms to.
 *
 * A run at a slope s may rise m at most, so that a rise H takes `n = ceil(H ÷ m)` runs, each `r = H ÷ n` high and
 * `L = r ÷ s` long on the level. Between n runs lie `k = n − 1` landings. Where rules have several slopes, each with a
 * length of its own, the shortest ramp is taken. A folded ramp has its runs beside each other, `W = L + f + g` long with
 * the landings at the far and the near end, in as few runs as fit the place.
 *
 * Sources: the 2010 ADA Standards, Approved Document M, DIN 18040-1 and AS 1428.1, from memory.
 */
import { toMark } from '../grade/marks';
import { missing } from '../quantity/faults';
import { hypotenuse } from '../quantity/hypotenuse';
import { constant, length } from '../quantity/make';
import { greaterOfPair, type Paired } from '../quantity/paired';
import { canonicalValue, type Quantity, type QuantityInput } from '../quantity/quantity';
import { type Calculation, define, refuse } from '../reckoning/calculation';
import { choice, fields, maybe, quantity, wholeNumber, yesOrNo } from '../reckoning/fields';
import { type Limit, withinTimes } from '../reckoning/limits';
import type { Pad } from '../reckoning/pad';
import type { Caution } from '../reckoning/parts';
import { all, given, says, where } from '../reckoning/together';
import { guard } from './cautions';
import * as ordinary from './ordinary';
import {
  flatForItsPlace,
  longForItsPlace,
  narrowRamp,
  railsBothSides,
  shortRampLanding,
  steepRamp,
} from './ramp-cautions';
import {
  mostRise,
  RAMP_RULES,
  type RampLimits,
  type RampRules,
  type RampStretch,
  rampLimits,
} from './ramp-rules';
import { stepLimits } from './rules';
import { ADA_RAMP_RUNS, ADM_RAMPS, AS_RAMPS, COMMON_PRACTICE, DIN_RAMPS, IRC_RAMPS, NBC } from './sources';

type Length = Quantity<'length'>;
type Slope = Quantity<'slope'>;
type Count = Quantity<'count'>;

/** Input of {@link rampLayout}. */
export interface RampLayoutInput {
  /** From the ground at the foot up to the landing at the top. */
  readonly totalRise: QuantityInput<'length'>;
  /**
   * Whose limits: `ada`, `approved-document-m`, `din-18040`, `as-1428` or `nbc` of Canada for a way in, `dwelling` for
   * one to a house of the USA, `service` for a ramp that only carts and bins take. By default `ada`.
   */
  readonly rules?: RampRules;
  /** Slope along the runs; by default the one that makes the shortest ramp under these rules. */
  readonly slope?: QuantityInput<'slope'>;
  /** Clear width; with it the surface and the body under it are told. */
  readonly width?: QuantityInput<'length'>;
  /** Level length of the landings at the foot and at the top; by default the least that the rules allow. */
  readonly endLanding?: QuantityInput<'length'>;
  /** Level length of a landing between two runs; by default the least that the rules allow. */
  readonly landing?: QuantityInput<'length'>;
  /** Level length that there is in a straight line, landings at both ends counted in. */
  readonly lengthAvailable?: QuantityInput<'length'>;
  /** Runs lie beside each other, two or as many as it takes to fit `lengthAvailable`, and the ramp turns back at each landing. */
  readonly folded?: boolean;
}

interface Parsed {
  readonly totalRise: Length;
  readonly rules: RampRules | undefined;
  readonly slope: Slope | undefined;
  readonly width: Length | undefined;
  readonly endLanding: Length | undefined;
  readonly landing: Length | undefined;
  readonly lengthAvailable: Length | undefined;
  readonly folded: boolean | undefined;
}

/** Where a run or a landing begins. */
export interface RampBreak {
  /** Level distance from the foot of the first run; folded, the way back leads down to it again. */
  readonly at: Quantity<'length'>;
  /** Height over the foot, exactly. */
  readonly height: Quantity<'length'>;
  /** To the nearest 1/16 in or mm, each from the exact height, so that nothing adds up. */
  readonly mark: Quantity<'length'>;
}

/** Figures of {@link rampLayout}. */
export interface RampLayoutFigures {
  /** Whether it is within the rules and fits the place. */
  readonly verdict: 'fits' | 'too steep' | 'too narrow' | 'landing too short' | 'too long';
  /** How many runs. */
  readonly runs: Quantity<'count'>;
  /** Slope along the runs. */
  readonly slope: Quantity<'slope'>;
  /** Rise of each run. */
  readonly riseOfRun: Quantity<'length'>;
  /** Level length of each run. */
  readonly runLength: Quantity<'length'>;
  /** Length of each run along its surface: what its side forms are cut to. */
  readonly alongSlope: Quantity<'length'>;
  /** Landings between runs. */
  readonly landings: Quantity<'count'>;
  /** Length of a landing between two runs, left out where there is none; folded, it is as wide as both. */
  readonly landingLength?: Quantity<'length'>;
  /** Level length of runs and the landings between them, on the way that is walked. */
  readonly rampLength: Quantity<'length'>;
  /** Length of the landings at the foot and at the top. */
  readonly endLanding?: Quantity<'length'>;
  /** Level length over all, landings at both ends counted in. */
  readonly overall: Quantity<'length'>;
  /** Clear width of all runs of a folded ramp; curbs and what stands between them come on top. */
  readonly breadth?: Quantity<'length'>;
  /** What lacks of the length that there is. */
  readonly lacks?: Quantity<'length'>;
  /** Most slope across, and of landings in any direction, under the rules. */
  readonly acrossAtMost?: Quantity<'slope'>;
  /** Surface of runs and all landings, along the slope. */
  readonly surface?: Quantity<'area'>;
  /** What lies between level ground at the foot and the surface, the landing at the top counted in. */
  readonly body?: Quantity<'volume'>;
  /** Heights of the forms, from the foot to the top. */
  readonly breaks: readonly RampBreak[];
}

const RUNS: Limit = { of: 'a ramp in runs', most: 100 };
const NONE = constant(() => length('0 in'));
const TWO = constant(() => wholeNumber(2));
const ONE = constant(() => wholeNumber(1));

const countOf = (rise: Length, most: Length | undefined): number =>
  most ? Math.ceil(Number(canonicalValue(rise.over(most)).toFixed(12))) : 1;

/** A ramp at one slope. */
interface Ramp {
  readonly stretch: RampStretch;
  readonly slope: Slope;
  readonly most: Length | undefined;
  readonly runs: number;
  /** Landings between two runs, and at the foot and the top. */
  readonly between: Length;
  readonly end: Length;
  /** On the way that is walked. */
  readonly path: Length;
  readonly overall: Length;
}

/** The length of a landing, as it is given or as the rules have it at least. */
const landingOf = (given: Length | undefined, least: Paired<'length'> | undefined, like: Length): Length =>
  given ?? least?.like(like) ?? NONE();

const leastBetween = (limits: RampLimits, { folded }: Parsed): Paired<'length'> | undefined =>
  (folded ? limits.turn : undefined) ?? limits.between;

/** Landings at the far and the near end: where it turns back, at the foot, and at the top, which an odd run leads away. */
function endsOf(runs: number, d: Length, e: Length): readonly [far: Length, near: Length] {
  const longer = d.greaterThan(e) ? d : e;
  return [runs % 2 === 1 ? longer : d, runs > 2 ? longer : e];
}

const foldedLength = (runs: number, sloped: Length, d: Length, e: Length): Length => {
  const [far, near] = endsOf(runs, d, e);
  return sloped.over(wholeNumber(runs)).plus(far).plus(near);
};

/** As few runs as fit the place beside each other; where none do, as few as may be. */
function foldedRuns(fewest: number, long: (runs: number) => Length, there: Length | undefined): number {
  const least = Math.max(fewest, 2);
  for (let runs = least; there && runs <= RUNS.most; runs++) if (!long(runs).greaterThan(there)) return runs;
  return least;
}

/** One rise must take as many runs in whatever unit it was measured: what may not be more may be the greater name. */
function rampAt(stretch: RampStretch, slope: Slope, limits: RampLimits, input: Parsed): Ramp {
  const { totalRise: H, folded } = input;
  const own = mostRise(stretch, slope, H);
  const greater = stretch.rise ? greaterOfPair(stretch.rise) : own;
  if (greater) withinTimes(RUNS, H.over(greater), 'totalRise');
  const fewest = countOf(H, greater);
  const most = own && countOf(H, own) === fewest ? own : greater;
  const d = landingOf(input.landing, leastBetween(limits, input), H);
  const e = landingOf(input.endLanding, limits.end, H);
  const sloped = H.over(slope);
  const long = (n: number): Length => foldedLength(n, sloped, d, e);
  const runs = folded ? foldedRuns(fewest, long, input.lengthAvailable) : fewest;
  const path = sloped.plus(d.times(wholeNumber(runs - 1))).plus(e.times(TWO()));
  return { stretch, slope, most, runs, between: d, end: e, path, overall: folded ? long(runs) : path };
}

/** What lacks of the length that there is; nothing where it fits. */
const lacking = ({ lengthAvailable: there }: Parsed, { overall }: Ramp): Length | undefined =>
  there?.lessThan(overall) ? overall.minus(there) : undefined;

/** A slope that is given is held to the next steeper of the rules; else the shortest ramp that fits, the flatter of two. */
function chosen(input: Parsed, limits: RampLimits): Ramp {
  const { stretches } = limits;
  const { slope } = input;
  if (slope) {
    const allowed = stretches.filter((one) => !slope.greaterThan(one.slope));
    return rampAt(allowed.at(-1) ?? (stretches[0] as RampStretch), slope, limits, input);
  }
  const beyond = (ramp: Ramp): number => Number(lacking(input, ramp) !== undefined);
  const ramps = stretches.map((one) => rampAt(one, one.slope, limits, input));
  return ramps.reduce((best, one) =>
    (beyond(one) - beyond(best) || one.path.compareTo(best.path)) > 0 ? best : one,
  );
}

function assumptions(input: Parsed, ramp: Ramp, limits: RampLimits, pad: Pad): void {
  const { rules, slope } = input;
  if (rules === undefined)
    pad.assume({
      name: 'rules',
      value: 'ada',
      because: 'a new ramp of the USA; other countries have flatter ones',
      override:
        'Give rules: dwelling, approved-document-m, din-18040, as-1428, nbc, or service for carts only',
      source: limits.source,
    });
  if (slope === undefined)
    pad.assume({
      name: 'slope',
      value: ramp.slope,
      because: 'the shortest ramp under these rules; flatter leaves room for what the forms are off',
      override: 'Give slope',
      source: limits.source,
    });
  const landings = {
    endLanding: limits.end,
    landing: ramp.runs > 1 ? leastBetween(limits, input) : undefined,
  };
  for (const name of ['endLanding', 'landing'] as const) {
    const value = landings[name];
    if (!value || input[name]) continue;
    pad.assume({
      name,
      value,
      because: 'the least length of a landing under these rules',
      override: `Give ${name}, its length along the ramp`,
      source: limits.source,
    });
  }
}

/** Foot and top of every run; of a folded ramp every other leads back. */
function breaksOf(rise: Length, run: Length, between: Length, n: number, folded = false): RampBreak[] {
  return Array.from({ length: n }, (_, i) => {
    const near = run.plus(between).times(wholeNumber(folded ? 0 : i));
    const ends = [near, near.plus(run)] as const;
    const [start, end] = folded && i % 2 === 1 ? [ends[1], ends[0]] : ends;
    const foot = rise.times(wholeNumber(i));
    return [
      [start, foot],
      [end, foot.plus(rise)],
    ] as const;
  })
    .flat()
    .map(([at, height]) => ({ at, height, mark: toMark(height) }));
}

interface Sizes {
  readonly H: Length;
  readonly n: Count;
  readonly k: Count;
  readonly r: Length;
  readonly L: Length;
  readonly B: Length;
  /** What a landing between two runs is long and, folded, both runs wide. */
  readonly t: Length;
  readonly e: Length;
}

/** Surface and body, where the width is known. */
function wideOf(w: Length | undefined, { H, n, k, r, L, B, t, e }: Sizes, pad: Pad) {
  if (!w) return {};
  const long = n.times(B).plus(k.times(t)).plus(e.times(TWO()));
  const side = L.times(r)
    .times(n.times(n))
    .over(TWO())
    .plus(t.times(r).times(n.times(k)).over(TWO()))
    .plus(H.times(e));
  return {
    surface: pad.step(
      'surface of runs and landings',
      'S = w × (n × B + k × t + 2 × e)',
      { w, n, B, k, t, e },
      w.times(long),
    ),
    body: pad.step(
      'body from level ground to the surface',
      'V = w × (n × n × L × r ÷ 2 + n × k × t × r ÷ 2 + H × e)',
      { w, n, L, r, k, t, H, e },
      w.times(side),
    ),
  };
}

/** The first landing that is shorter than the rules have it: one is enough to go back to the plan. */
function heedLandings(input: Parsed, limits: RampLimits, runs: number, pad: Pad): boolean {
  const { endLanding, landing } = input;
  const given = [
    [endLanding, limits.end],
    [runs > 1 ? landing : undefined, leastBetween(limits, input)],
  ] as const;
  for (const [long, least] of given) {
    const short = long && least?.undercutBy(long);
    if (!short) continue;
    pad.caution(shortRampLanding(limits, short, long));
    return true;
  }
  return false;
}

/** What to do about a ramp that is too long: where a flat slope was given, a steeper one of the rules may fit. */
function tooLong(input: Parsed, limits: RampLimits, there: Length, overall: Length): Caution {
  const other = chosen({ ...input, slope: undefined }, limits);
  if (lacking(input, other)) return longForItsPlace(limits, there, overall);
  return flatForItsPlace(limits, there, overall, other);
}

/** What to watch out for, and the gravest of what keeps it from the rules or its place. */
function heed(
  input: Parsed,
  limits: RampLimits,
  ramp: Ramp,
  { r, H }: Sizes,
  pad: Pad,
): RampLayoutFigures['verdict'] {
  const { width, lengthAvailable } = input;
  const most = limits.stretches[0]?.slope as Slope;
  const steep = ramp.slope.greaterThan(most);
  if (steep) pad.caution(steepRamp(limits, most, ramp.slope));
  const least = width && limits.width?.undercutBy(width);
  if (width && least) pad.caution(narrowRamp(limits, least, width));
  const isShort = heedLandings(input, limits, ramp.runs, pad);
  const isLong = lacking(input, ramp) !== undefined;
  if (lengthAvailable && isLong) pad.caution(tooLong(input, limits, lengthAvailable, ramp.overall));
  const railed = ramp.stretch.walk ? undefined : limits.railsAbove?.exceededBy(r);
  if (railed) pad.caution(railsBothSides(limits, railed, r));
  const guards = stepLimits(limits.guards);
  const guarded = guards.guardAbove.exceededBy(H);
  if (guarded) pad.caution(guard(guards, guarded, H));
  if (steep) return 'too steep';
  if (least) return 'too narrow';
  return isShort ? 'landing too short' : isLong ? 'too long' : 'fits';
}

/** How many runs: as few as the rules allow, folded as many as fit beside each other. */
function noteRuns({ totalRise: H, folded }: Parsed, ramp: Ramp, n: Count, pad: Pad): void {
  const { most: m, slope: s, stretch } = ramp;
  if (folded || !m) return;
  if (!stretch.run) {
    pad.step('runs', 'n = ceil(H ÷ m)', { H, m }, n);
    return;
  }
  const M = stretch.run.like(H);
  pad.step('runs', 'n = ceil(H ÷ (M × s))', { H, M, s }, n);
}

function reckon(input: Parsed, pad: Pad): RampLayoutFigures {
  const limits = rampLimits(input.rules ?? 'ada');
  const { totalRise: H, folded, width: w } = input;
  if (folded && !input.landing && !limits.between)
    refuse('landing', missing('landing', ['"5 ft"', '"1.5 m"']));
  const ramp = chosen(input, limits);
  assumptions(input, ramp, limits, pad);
  const { slope: s, overall, between: d, end: e } = ramp;
  const n = wholeNumber(ramp.runs);
  const k = n.minus(ONE());
  noteRuns(input, ramp, n, pad);
  const r = pad.step('rise of a run', 'r = H ÷ n', { H, n }, H.over(n));
  const L = pad.step('level length of a run', 'L = r ÷ s', { r, s }, r.over(s));
  const B = pad.step('length along the slope', 'B = √(L² + r²)', { L, r }, hypotenuse(L, r));
  const A = pad.step(
    'runs and landings between',
    'A = n × L + k × d',
    { n, L, k, d },
    n.times(L).plus(k.times(d)),
  );
  if (folded) {
    const [f, g] = endsOf(ramp.runs, d, e);
    pad.step('runs beside each other, with landings', 'W = L + f + g', { L, f, g }, overall);
  }
  if (!folded) pad.step('with the landings at both ends', 'W = A + 2 × e', { A, e }, overall);
  const sizes = { H, n, k, r, L, B, t: folded ? d.times(TWO()) : d, e };
  const wide = wideOf(w, sizes, pad);
  const verdict = heed(input, limits, ramp, sizes, pad);
  const lacks = lacking(input, ramp);
  return {
    verdict,
    runs: n,
    slope: s,
    riseOfRun: r,
    runLength: L,
    alongSlope: B,
    landings: k,
    ...(k.sign() > 0 && d.sign() > 0 ? { landingLength: d } : {}),
    rampLength: A,
    ...(e.sign() > 0 ? { endLanding: e } : {}),
    overall,
    ...(folded && w ? { breadth: n.times(w) } : {}),
    ...(lacks ? { lacks } : {}),
    ...(limits.across ? { acrossAtMost: limits.across } : {}),
    ...wide,
    breaks: breaksOf(r, L, d, ramp.runs, folded),
  };
}

/**
 * From a rise to a ramp: how many runs, how long, the landings between them, and the heights to set forms to.
 *
 * @param input - the rise, whose rules, and whatever of slope, width and length there is is settled
 * @returns the runs with their rise and length, the ramp over all, and the height of every break over the foot
 * @throws {InputError} `too-many` above 100 runs; `missing` landing where a folded ramp has no rules for it; lengths and slopes that cannot be read
 * @source 2010 ADA Standards 405, Approved Document M, DIN 18040-1 and AS 1428.1, from memory
 * @example
 * ```ts
 * import { rampLayout } from 'flatwork-reckoner';
 *
 * const { figures } = rampLayout({ totalRise: '21 in', width: '4 ft' });
 * figures.rampLength.format(); // '21 ft'
 * figures.overall.format(); // '31 ft'
 * figures.breaks.at(-1)?.mark.format(); // '21 in'
 * ```
 */
export const rampLayout: Calculation<RampLayoutInput, RampLayoutFigures> = /*#__PURE__*/ define({
  id: 'ramp-layout',
  title: 'Ramp layout',
  version: 1,
  sources: [ADA_RAMP_RUNS, IRC_RAMPS, ADM_RAMPS, DIN_RAMPS, AS_RAMPS, NBC, COMMON_PRACTICE],
  limits: [RUNS],
  input: () =>
    fields(
      {
        totalRise: quantity('length', 'totalRise', 'positive', ordinary.RAMP_RISE),
        rules: maybe(choice('rules', RAMP_RULES)),
        slope: maybe(quantity('slope', 'slope', 'positive', ordinary.RAMP_SLOPE)),
        width: maybe(quantity('length', 'width', 'positive', ordinary.RAMP_WIDTH)),
        endLanding: maybe(quantity('length', 'endLanding', 'positive', ordinary.LANDING)),
        landing: maybe(quantity('length', 'landing', 'positive', ordinary.LANDING)),
        lengthAvailable: maybe(quantity('length', 'lengthAvailable', 'positive', ordinary.RAMP_LENGTH)),
        folded: maybe(yesOrNo('folded')),
      },
      where(all(says('rules', 'service'), says('folded', true)), given('landing')),
    ),
  reckon,
});

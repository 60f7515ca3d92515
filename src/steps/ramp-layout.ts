/**
 * From a rise to a ramp: runs that are all alike, the landings between them, and the heights to set forms to.
 *
 * A run at a slope s may rise m at most, so that a rise H takes `n = ceil(H ÷ m)` runs, each `r = H ÷ n` high and
 * `L = r ÷ s` long on the level. Between n runs lie `k = n − 1` landings. Where rules have several slopes, each with a
 * length of its own, the shortest ramp is taken.
 *
 * Sources: the 2010 ADA Standards, Approved Document M, DIN 18040-1 and AS 1428.1, from memory.
 */
import { rampHandrails } from '../grade/cautions';
import { toMark } from '../grade/marks';
import { Decimal } from '../quantity/decimal';
import { constant, length } from '../quantity/make';
import { greaterOfPair, type Paired, paired } from '../quantity/paired';
import {
  canonicalValue,
  type Quantity,
  type QuantityInput,
  quantityOf,
  systemOfQuantity,
} from '../quantity/quantity';
import { type Calculation, define } from '../reckoning/calculation';
import { choice, fields, maybe, quantity, wholeNumber } from '../reckoning/fields';
import { type Limit, withinTimes } from '../reckoning/limits';
import type { Pad } from '../reckoning/pad';
import { guard } from './cautions';
import * as ordinary from './ordinary';
import { longForItsPlace, narrowRamp, railsBothSides, shortRampLanding, steepRamp } from './ramp-cautions';
import {
  mostRise,
  RAMP_RULES,
  type RampLimits,
  type RampRules,
  type RampStretch,
  rampLimits,
} from './ramp-rules';
import { GUARD_ABOVE } from './rules';
import { ADA_RAMP_RUNS, ADM_RAMPS, AS_RAMPS, COMMON_PRACTICE, DIN_RAMPS, PUBLIC_GUARDS } from './sources';

type Length = Quantity<'length'>;
type Slope = Quantity<'slope'>;
type Count = Quantity<'count'>;

/** Input of {@link rampLayout}. */
export interface RampLayoutInput {
  /** From the ground at the foot up to the landing at the top. */
  readonly totalRise: QuantityInput<'length'>;
  /**
   * Whose limits: `ada`, `approved-document-m`, `din-18040` or `as-1428` for a way in, `service` for a ramp that only
   * carts and bins take. By default `ada`.
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
}

interface Parsed {
  readonly totalRise: Length;
  readonly rules: RampRules | undefined;
  readonly slope: Slope | undefined;
  readonly width: Length | undefined;
  readonly endLanding: Length | undefined;
  readonly landing: Length | undefined;
  readonly lengthAvailable: Length | undefined;
}

/** Where a run or a landing begins. */
export interface RampBreak {
  /** Level distance from the foot of the first run. */
  readonly at: Quantity<'length'>;
  /** Height over the foot, exactly. */
  readonly height: Quantity<'length'>;
  /** To the nearest 1/16 in or mm, each from the exact height, so that nothing adds up. */
  readonly mark: Quantity<'length'>;
}

/** Figures of {@link rampLayout}. */
export interface RampLayoutFigures {
  /** Whether it is within the rules and fits the place. */
  readonly verdict: 'fits' | 'too steep' | 'too narrow' | 'too long';
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
  /** Length of a landing between two runs; left out where there is none. */
  readonly landingLength?: Quantity<'length'>;
  /** Level length of runs and the landings between them. */
  readonly rampLength: Quantity<'length'>;
  /** Length of the landings at the foot and at the top. */
  readonly endLanding?: Quantity<'length'>;
  /** Level length over all, landings at both ends counted in. */
  readonly overall: Quantity<'length'>;
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
const GUARD = /*#__PURE__*/ paired('length', '42 in', '1067 mm');

const hypot = (a: Length, b: Length): Length =>
  quantityOf('length', Decimal.hypot(canonicalValue(a), canonicalValue(b)), systemOfQuantity(a));

const countOf = (rise: Length, most: Length | undefined): number =>
  most ? Math.ceil(Number(canonicalValue(rise.over(most)).toFixed(12))) : 1;

/** A ramp at one slope. */
interface Ramp {
  readonly stretch: RampStretch;
  readonly slope: Slope;
  readonly most: Length | undefined;
  readonly runs: number;
  readonly overall: Length;
}

/** The length of a landing, as it is given or as the rules have it at least. */
const landingOf = (given: Length | undefined, least: Paired<'length'> | undefined, like: Length): Length =>
  given ?? least?.like(like) ?? NONE();

/** One rise must take as many runs in whatever unit it was measured: what may not be more may be the greater name. */
function rampAt(stretch: RampStretch, slope: Slope, limits: RampLimits, input: Parsed): Ramp {
  const { totalRise: H } = input;
  const own = mostRise(stretch, slope, H);
  const greater = stretch.rise ? greaterOfPair(stretch.rise) : own;
  if (greater) withinTimes(RUNS, H.over(greater), 'totalRise');
  const runs = countOf(H, greater);
  const most = own && countOf(H, own) === runs ? own : greater;
  const between = landingOf(input.landing, limits.between, H).times(wholeNumber(runs - 1));
  const ends = landingOf(input.endLanding, limits.end, H).times(TWO());
  return { stretch, slope, most, runs, overall: H.over(slope).plus(between).plus(ends) };
}

/** A slope that is given is held to the next steeper of the rules; else the shortest ramp is taken, the flatter of two. */
function chosen(input: Parsed, limits: RampLimits): Ramp {
  const { stretches } = limits;
  const { slope } = input;
  if (slope) {
    const allowed = stretches.filter((one) => !slope.greaterThan(one.slope));
    return rampAt(allowed.at(-1) ?? (stretches[0] as RampStretch), slope, limits, input);
  }
  const ramps = stretches.map((one) => rampAt(one, one.slope, limits, input));
  return ramps.reduce((best, one) => (one.overall.greaterThan(best.overall) ? best : one));
}

const LEAST = 'the least length of a landing under these rules';

function assumptions(
  { rules, slope, endLanding, landing }: Parsed,
  ramp: Ramp,
  limits: RampLimits,
  pad: Pad,
): void {
  if (rules === undefined)
    pad.assume({
      name: 'rules',
      value: 'ada',
      because: limits.because,
      override: 'Give rules: approved-document-m, din-18040, as-1428, or service for carts only',
      source: limits.source,
    });
  if (slope === undefined)
    pad.assume({
      name: 'slope',
      value: ramp.slope,
      because:
        'the shortest ramp under these rules; the finished ramp may be no steeper anywhere, so that a little flatter leaves room for what the forms are off',
      override: 'Give slope, flatter where there is room',
      source: limits.source,
    });
  const { end, between } = limits;
  if (end && !endLanding)
    pad.assume({
      name: 'endLanding',
      value: end,
      because: LEAST,
      override: 'Give endLanding, its length along the ramp',
      source: limits.source,
    });
  if (between && !landing && ramp.runs > 1)
    pad.assume({
      name: 'landing',
      value: between,
      because: LEAST,
      override: 'Give landing, its length along the ramp',
      source: limits.source,
    });
}

/** Foot and top of every run. */
function breaksOf(n: number, rise: Length, run: Length, between: Length): RampBreak[] {
  return Array.from({ length: n }, (_, i) => {
    const start = run.plus(between).times(wholeNumber(i));
    const foot = rise.times(wholeNumber(i));
    return [
      [start, foot],
      [start.plus(run), foot.plus(rise)],
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
  readonly d: Length;
  readonly e: Length;
}

/** Surface and body, where the width is known. */
function wideOf(w: Length | undefined, { H, n, k, r, L, B, d, e }: Sizes, pad: Pad) {
  if (!w) return {};
  const long = n.times(B).plus(k.times(d)).plus(e.times(TWO()));
  const side = L.times(r)
    .times(n.times(n))
    .over(TWO())
    .plus(d.times(r).times(n.times(k)).over(TWO()))
    .plus(H.times(e));
  return {
    surface: pad.step(
      'surface of runs and landings',
      'S = w × (n × B + k × d + 2 × e)',
      { w, n, B, k, d, e },
      w.times(long),
    ),
    body: pad.step(
      'body from level ground to the surface',
      'V = w × (n × n × L × r ÷ 2 + n × k × d × r ÷ 2 + H × e)',
      { w, n, L, r, k, d, H, e },
      w.times(side),
    ),
  };
}

/** The first landing that is shorter than the rules have it: one is enough to go back to the plan. */
function heedLandings({ endLanding, landing }: Parsed, limits: RampLimits, runs: number, pad: Pad): void {
  const given = [
    [endLanding, limits.end],
    [runs > 1 ? landing : undefined, limits.between],
  ] as const;
  for (const [long, least] of given) {
    const short = long && least?.undercutBy(long);
    if (!short) continue;
    pad.caution(shortRampLanding(limits, short, long));
    return;
  }
}

function heed(input: Parsed, limits: RampLimits, ramp: Ramp, sizes: Sizes, pad: Pad): boolean[] {
  const { width, lengthAvailable } = input;
  const { r, H } = sizes;
  const most = limits.stretches[0]?.slope as Slope;
  const steep = ramp.slope.greaterThan(most);
  if (steep) pad.caution(steepRamp(limits, most, ramp.slope));
  const least = width && limits.width?.undercutBy(width);
  if (width && least) pad.caution(narrowRamp(limits, least, width));
  heedLandings(input, limits, ramp.runs, pad);
  const long = lengthAvailable?.lessThan(ramp.overall) ?? false;
  if (lengthAvailable && long) pad.caution(longForItsPlace(limits, lengthAvailable, ramp.overall));
  const railed = limits.railsAbove?.exceededBy(r);
  if (railed) pad.caution(railed.sign() > 0 ? rampHandrails(railed, r) : railsBothSides(limits));
  const guarded = GUARD_ABOVE.exceededBy(H);
  if (guarded) pad.caution(guard(GUARD, PUBLIC_GUARDS, guarded, H));
  return [steep, least !== undefined, long];
}

const WORST = ['too steep', 'too narrow', 'too long'] as const;

function reckon(input: Parsed, pad: Pad): RampLayoutFigures {
  const limits = rampLimits(input.rules ?? 'ada');
  const H = input.totalRise;
  const ramp = chosen(input, limits);
  assumptions(input, ramp, limits, pad);
  const { slope: s, most: m, overall } = ramp;
  const n = wholeNumber(ramp.runs);
  const k = n.minus(ONE());
  const d = landingOf(input.landing, limits.between, H);
  const e = landingOf(input.endLanding, limits.end, H);
  if (m) pad.step('runs', 'n = ceil(H ÷ m)', { H, m }, n);
  const r = pad.step('rise of a run', 'r = H ÷ n', { H, n }, H.over(n));
  const L = pad.step('level length of a run', 'L = r ÷ s', { r, s }, r.over(s));
  const B = pad.step('length along the slope', 'B = √(L² + r²)', { L, r }, hypot(L, r));
  const A = pad.step(
    'runs and landings between',
    'A = n × L + k × d',
    { n, L, k, d },
    n.times(L).plus(k.times(d)),
  );
  pad.step('with the landings at both ends', 'W = A + 2 × e', { A, e }, overall);
  const sizes = { H, n, k, r, L, B, d, e };
  const wide = wideOf(input.width, sizes, pad);
  const wrong = heed(input, limits, ramp, sizes, pad);
  const there = input.lengthAvailable;
  return {
    verdict: WORST.find((_, i) => wrong[i]) ?? 'fits',
    runs: n,
    slope: s,
    riseOfRun: r,
    runLength: L,
    alongSlope: B,
    landings: k,
    ...(k.sign() > 0 && d.sign() > 0 ? { landingLength: d } : {}),
    rampLength: A,
    ...(limits.end ? { endLanding: e } : {}),
    overall,
    ...(there?.lessThan(overall) ? { lacks: overall.minus(there) } : {}),
    ...(limits.across ? { acrossAtMost: limits.across } : {}),
    ...wide,
    breaks: breaksOf(ramp.runs, r, L, d),
  };
}

/**
 * From a rise to a ramp: how many runs, how long, the landings between them, and the heights to set forms to.
 *
 * @param input - the rise, whose rules, and whatever of slope, width and length there is is settled
 * @returns the runs with their rise and length, the ramp over all, and the height of every break over the foot
 * @throws {InputError} `too-many` above 100 runs; lengths and slopes that cannot be read
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
  sources: [ADA_RAMP_RUNS, ADM_RAMPS, DIN_RAMPS, AS_RAMPS, COMMON_PRACTICE],
  limits: [RUNS],
  input: () =>
    fields({
      totalRise: quantity('length', 'totalRise', 'positive', ordinary.RAMP_RISE),
      rules: maybe(choice('rules', RAMP_RULES)),
      slope: maybe(quantity('slope', 'slope', 'positive', ordinary.RAMP_SLOPE)),
      width: maybe(quantity('length', 'width', 'positive', ordinary.RAMP_WIDTH)),
      endLanding: maybe(quantity('length', 'endLanding', 'positive', ordinary.LANDING)),
      landing: maybe(quantity('length', 'landing', 'positive', ordinary.LANDING)),
      lengthAvailable: maybe(quantity('length', 'lengthAvailable', 'positive', ordinary.RAMP_LENGTH)),
    }),
  reckon,
});

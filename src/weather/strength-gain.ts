/**
 * How strong concrete is at an age, and how old it must be for what is to be done to it, by two published curves.
 *
 * ACI 209: `f = F × t ÷ (a + b × t)` with `t` in days, `a` of 4 and `b` of 0.85 for ordinary cement, 2.3 and 0.92 for
 * high-early cement, moist cured; so `t = p × a ÷ (1 − p × b)` for a share `p` of the strength at 28 days.
 *
 * EN 1992 and the CEB-FIP model code: `f = F × exp(s × (1 − √(28 ÷ t)))` with `s` of 0.20, 0.25 or 0.38 for cement that
 * is high-early, ordinary or slow; so `t = 28 ÷ (1 − ln(p) ÷ s)²`.
 *
 * Warmer or colder than 68 degF (20 degC), an hour counts for `exp(q ÷ Ts − q ÷ T)` of one, with 4000 kelvins.
 */
import { Decimal } from '../quantity/decimal';
import { constant, ratio, time } from '../quantity/make';
import { numberOf, pure } from '../quantity/numbers';
import { paired } from '../quantity/paired';
import type { Quantity, QuantityInput } from '../quantity/quantity';
import { type Calculation, define, refuse } from '../reckoning/calculation';
import { strength as concreteStrength } from '../reckoning/concrete-strength';
import { choice, type Field, fields, list, maybe, quantity } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { COMMON_PRACTICE } from '../reckoning/source';
import { notBoth } from '../reckoning/together';
import { say } from '../reckoning/words';
import { exponential, logarithm } from '../solve/exponential';
import { ageFactor } from './arrhenius';
import * as cautions from './cautions';
import { ABSOLUTE_ZERO, type Temperature } from './degrees';
import * as faults from './faults';
import { AGE, CURED_AT, STRENGTH } from './ordinary';
import { type PublishedTime, publishedTimes } from './published-times';
import { ACI_209, BEALL_TIMES, MINDESS_RATIO, MODEL_CODE } from './sources';

/** How fast the cement is: `high-early` as type III or class R, `ordinary` as type I or class N, `slow` as class S. */
export type CementKind = 'high-early' | 'ordinary' | 'slow';

/** What is to be done to the slab. */
export type SlabUse = 'strip' | 'saw' | 'walk' | 'uncover' | 'drive' | 'load' | 'backfill';

/** A use and what it takes: a share of the strength at 28 days, or a strength; the usual share where neither is said. */
export interface UseInput {
  /** What is to be done. */
  readonly use: SlabUse;
  /** Share of the strength at 28 days that it takes; by default what is usual for the use. */
  readonly share?: QuantityInput<'ratio'>;
  /** Strength that it takes. */
  readonly strength?: QuantityInput<'pressure'>;
  /** How long after placing it is planned. */
  readonly planned?: QuantityInput<'time'>;
}

/** Input of {@link strengthGain}. */
export interface StrengthGainInput {
  /** Strength at 28 days that the mix reaches: as specified, or as its cylinders average; or a class as `C30/37`. */
  readonly strength: QuantityInput<'pressure'>;
  /** By default `ordinary`. */
  readonly cement?: CementKind;
  /** How warm the concrete is kept; by default 68 degF (20 degC), at which the curves were found. */
  readonly curedAt?: QuantityInput<'temperature'>;
  /** Ages at which the strength is wanted. */
  readonly ages?: readonly QuantityInput<'time'>[];
  /** What is to be done, and what each takes. */
  readonly uses?: readonly UseInput[];
}

/** Strength at an age, by each curve. */
export interface StrengthAtAge {
  /** The age. */
  readonly age: Quantity<'time'>;
  /** The age that it counts for at the temperature of the curves. */
  readonly equivalentAge: Quantity<'time'>;
  /** By ACI 209; left out for slow cement, which it has no constants for. */
  readonly byAci?: Quantity<'pressure'>;
  /** By EN 1992 and the model code. */
  readonly byModelCode: Quantity<'pressure'>;
}

/** When a use can be, by each curve. */
export interface TimeForUse {
  /** What is to be done. */
  readonly use: SlabUse;
  /** The share that it takes. */
  readonly share: Quantity<'ratio'>;
  /** By the faster of both curves. */
  readonly from: Quantity<'time'>;
  /** By the slower of both: the one to go by. */
  readonly to: Quantity<'time'>;
  /** Whether it is old enough when it is planned: by both curves, by the faster only, or by neither. */
  readonly asPlanned?: 'old enough' | 'perhaps too young' | 'too young';
}

/** Figures of {@link strengthGain}. */
export interface StrengthGainFigures {
  /** What an hour counts for, against one at the temperature of the curves. */
  readonly ageFactor: Quantity<'ratio'>;
  /** Strength at each age asked for. */
  readonly atAges?: readonly StrengthAtAge[];
  /** When each use can be. */
  readonly uses?: readonly TimeForUse[];
  /** The share at 7 days, from the least that a textbook finds in practice to the most by the fastest curve. */
  readonly shareAtSevenDays: {
    /** The least. */
    readonly from: Quantity<'ratio'>;
    /** The most. */
    readonly to: Quantity<'ratio'>;
  };
  /** Rules of days, those that disagree included. */
  readonly published: readonly PublishedTime[];
}

type Time = Quantity<'time'>;
type Ratio = Quantity<'ratio'>;
type Strength = Quantity<'pressure'>;

interface Use {
  readonly use: SlabUse;
  readonly share: Ratio | undefined;
  readonly strength: Strength | undefined;
  readonly planned: Time | undefined;
}

interface Parsed {
  readonly strength: Strength;
  readonly cement: CementKind | undefined;
  readonly curedAt: Temperature | undefined;
  readonly ages: readonly Time[] | undefined;
  readonly uses: readonly Use[] | undefined;
}

const ACI: Readonly<Record<CementKind, readonly [a: string, b: string] | undefined>> = {
  'high-early': ['2.3 day', '0.92:1'],
  ordinary: ['4 day', '0.85:1'],
  slow: undefined,
};
const EN: Readonly<Record<CementKind, string>> = {
  'high-early': '0.2:1',
  ordinary: '0.25:1',
  slow: '0.38:1',
};

const DAY_28 = constant(() => time('28 day'));
const WHOLE = constant(() => ratio('100%'));
const CURVE_TEMPERATURE = /*#__PURE__*/ paired('temperature', '68 degF', '20 degC');
const ACTIVATION = /*#__PURE__*/ paired('temperature-difference', '7200 degF', '4000 degC');
const LOWEST = /*#__PURE__*/ paired('temperature', '32 degF', '0 degC');
const HIGHEST = /*#__PURE__*/ paired('temperature', '176 degF', '80 degC');
const COLD = /*#__PURE__*/ paired('temperature', '50 degF', '10 degC');
const MOST_AGES = 50;
const MOST_USES = 20;

/** Shares that the trade goes by; forms that carry, loads and backfill are released by the engineer all the same. */
const USUAL_SHARES: Readonly<Record<SlabUse, readonly [share: string, because: string]>> = {
  strip: [
    '15%',
    'edge forms that carry nothing come off on the next morning, when corners stay whole; forms that carry wait for what the engineer says',
  ],
  saw: [
    '7%',
    'about where a wet saw no longer pulls stones out; a trial cut tells, and the hours of the saw say when it is too late',
  ],
  walk: ['15%', 'people walk on it on the next morning and leave no mark'],
  uncover: [
    '70%',
    'curing may end at about this, a week for ordinary cement that is not cold; salt and wear ask for more',
  ],
  drive: ['70%', 'cars and light vans wait a week, in which ordinary concrete comes to about this'],
  load: ['100%', 'heavy trucks and full loads wait for the strength that is specified'],
  backfill: [
    '75%',
    'earth against a wall that is held at its top waits for about this; what is not held waits for the engineer',
  ],
};

interface Curves {
  readonly aci: { readonly a: Time; readonly b: Ratio } | undefined;
  readonly s: Ratio;
  readonly g: Ratio;
  readonly F: Strength;
}

function curvesOf(input: Parsed, pad: Pad): Curves {
  const cement = input.cement ?? 'ordinary';
  if (!input.cement) {
    pad.assume({
      name: 'cement',
      value: 'ordinary',
      because: 'most flatwork is made with it',
      override: 'Give cement: high-early or slow',
      source: COMMON_PRACTICE,
    });
  }
  const constants = ACI[cement];
  return {
    aci: constants && { a: time(constants[0]), b: ratio(constants[1]) },
    s: ratio(EN[cement]),
    g: factorOf(input, pad),
    F: input.strength,
  };
}

function factorOf({ curedAt: T }: Parsed, pad: Pad): Ratio {
  const s = CURVE_TEMPERATURE.as(pad.system);
  if (!T) {
    pad.assume({
      name: 'curedAt',
      value: CURVE_TEMPERATURE,
      because: 'the curves are for concrete that is kept moist at this temperature',
      override: 'Give curedAt, the temperature in the slab',
      source: MODEL_CODE,
    });
    return WHOLE().in(':1');
  }
  if (T.lessThan(LOWEST.as('customary')) || T.greaterThan(HIGHEST.as('customary')))
    refuse('curedAt', faults.outsideRange('curedAt', ['32 degF to 176 degF', '0 degC to 80 degC']));
  const cold = COLD.undercutBy(T);
  if (cold) pad.caution(cautions.gainsSlowly(cold, T));
  const q = ACTIVATION.as(pad.system);
  return pad.step(
    'what an hour counts for',
    'g = exp(q ÷ (s − o) − q ÷ (T − o))',
    { q, s, o: ABSOLUTE_ZERO.as(pad.system), T },
    ageFactor(T, s, q, pad),
  );
}

/** Strength by EN 1992. */
const modelCode = (F: Strength, s: Ratio, e: Time): Strength => {
  const root = numberOf(DAY_28().over(e)).sqrt();
  return F.times(pure(exponential(numberOf(s).times(new Decimal(1).minus(root)))));
};

/** Before and after no curve says anything. */
const SOONEST = constant(() => time('1 min'));
const LATEST = constant(() => time('40000 day'));

function checkAges({ ages = [] }: Parsed): void {
  ages.forEach((t, i) => {
    if (t.lessThan(SOONEST()) || t.greaterThan(LATEST()))
      refuse(`ages[${i}]`, faults.outsideRange('an age', '1 min to 40000 day'));
  });
}

function atAge(t: Time, { aci, s, g, F }: Curves, pad: Pad): StrengthAtAge {
  const e = pad.step(say`age that ${{ age: t }} count for`, 'e = t × g', { t, g }, t.times(g));
  const byModelCode = pad.step(
    say`strength at ${{ age: t }} by EN 1992`,
    'f = F × exp(s × (1 − √(d ÷ e)))',
    { F, s, d: DAY_28(), e },
    modelCode(F, s, e),
  );
  if (!aci) return { age: t, equivalentAge: e, byModelCode };
  const { a, b } = aci;
  const byAci = pad.step(
    say`strength at ${{ age: t }} by ACI 209`,
    'f = F × e ÷ (a + b × e)',
    { F, a, b, e },
    F.times(e.over(a.plus(e.times(b)))),
  );
  return { age: t, equivalentAge: e, byAci, byModelCode };
}

/** What is usual, where nobody has said what the use takes. */
function usualShare(use: SlabUse, at: string, pad: Pad): Ratio {
  const [share, because] = USUAL_SHARES[use];
  const value = ratio(share);
  pad.assume({
    name: `${at}.share`,
    value,
    because,
    override: 'Give share or strength, as the plans, the engineer or your own cylinders have it',
    source: COMMON_PRACTICE,
  });
  return value;
}

function shareOf({ use, share, strength: S }: Use, i: number, { F }: Curves, pad: Pad): Ratio {
  const at = `uses[${i}]`;
  if (share && S) refuse(at, faults.shareOrStrength());
  const p = S
    ? pad.step('share of the strength at 28 days', 'p = S ÷ F', { S, F }, S.over(F))
    : (share ?? usualShare(use, at, pad));
  if (p.greaterThan(WHOLE()))
    refuse(
      `${at}.${share ? 'share' : 'strength'}`,
      faults.outsideRange('what a use takes', '0% to 100% of the strength at 28 days'),
    );
  return p;
}

/** When a share is there by ACI 209: at 100% the curve is a little ahead of its 28 days. */
function byAci(p: Ratio, { aci, g }: Curves, pad: Pad): Time | undefined {
  if (!aci) return undefined;
  const { a, b } = aci;
  const t = a
    .times(p)
    .over(WHOLE().minus(p.times(b)).in(':1'))
    .over(g);
  return pad.step('time by ACI 209', 't = p × a ÷ (1 − p × b) ÷ g', { p, a, b, g }, t);
}

function byModelCodeTime(p: Ratio, { s, g }: Curves, pad: Pad): Time {
  const root = new Decimal(1).minus(logarithm(numberOf(p)).div(numberOf(s)));
  const d = DAY_28();
  return pad.step(
    'time by EN 1992',
    't = d ÷ (1 − ln(p) ÷ s)² ÷ g',
    { d, p, s, g },
    d.over(pure(root.times(root))).over(g),
  );
}

/** Short times are told in hours. */
const readable = (t: Time): Time => (t.lessThan(time('2 day')) ? t.in('h') : t.in('day'));

function whenOf(use: Use, i: number, curves: Curves, pad: Pad): TimeForUse {
  const p = shareOf(use, i, curves, pad);
  const [one, other] = [byAci(p, curves, pad), byModelCodeTime(p, curves, pad)];
  const [from, to] = one && other.lessThan(one) ? [other, one] : [one ?? other, other];
  const when = { use: use.use, share: p.in('%'), from: readable(from), to: readable(to) };
  return use.planned ? { ...when, asPlanned: judge(when, use.planned, pad) } : when;
}

/** The slower curve is the one to go by. */
function judge({ use, from, to }: TimeForUse, planned: Time, pad: Pad): NonNullable<TimeForUse['asPlanned']> {
  if (!planned.lessThan(to)) return 'old enough';
  const young = planned.lessThan(from);
  pad.caution(cautions.youngForUse(use, young, from, to, planned));
  return young ? 'too young' : 'perhaps too young';
}

const ENGINEERED: readonly SlabUse[] = ['load', 'backfill'];

/** Forms that wait for more than edge forms do carry something. */
const isEngineered = ({ use, share }: TimeForUse): boolean =>
  ENGINEERED.includes(use) || (use === 'strip' && share.greaterThan(ratio(USUAL_SHARES.strip[0])));

function reckon(input: Parsed, pad: Pad): StrengthGainFigures {
  checkAges(input);
  const curves = curvesOf(input, pad);
  const atAges = input.ages?.map((t) => atAge(t, curves, pad));
  const uses = input.uses?.map((use, i) => whenOf(use, i, curves, pad));
  pad.caution(cautions.curvesAreAverages);
  if (uses?.some(isEngineered)) pad.caution(cautions.engineerStrips);
  return {
    ageFactor: curves.g,
    ...(atAges ? { atAges } : {}),
    ...(uses ? { uses } : {}),
    shareAtSevenDays: { from: ratio('60%'), to: ratio('82%') },
    published: publishedTimes(),
  };
}

const useField = (): Field<Use> =>
  fields(
    {
      use: choice('use', ['strip', 'saw', 'walk', 'uncover', 'drive', 'load', 'backfill'] as const),
      share: maybe(quantity('ratio', 'share', 'positive')),
      strength: maybe(concreteStrength('strength', STRENGTH)),
      planned: maybe(quantity('time', 'planned', 'positive', AGE)),
    },
    notBoth('share', 'strength'),
  );

/**
 * How strong concrete is at an age, and how old it must be for what is to be done to it, by two published curves.
 *
 * Curves are averages of many mixes. Cylinders, or the maturity of the slab, tell of yours; and stripping, loading
 * and backfilling are for the engineer to release.
 *
 * @param input - the strength at 28 days; cement and temperature of curing where they are known; ages, and uses with
 * the share or the strength that each takes, where that is known
 * @returns the strength at each age by each curve, the time for each use by the faster and the slower of them, and the
 * rules of days that are published
 * @throws {InputError} `outside-range` for curing below freezing or above 176 degF (80 degC), for ages below 1 min or
 * above 40000 days, and for a use that takes more than the strength at 28 days; `give-one-of` for a use with both a share and a strength; quantities that cannot
 * be read
 * @source ACI 209 as a textbook has it; CEB-FIP Model Code 1990, whose curve is that of EN 1992
 * @example
 * ```ts
 * import { strengthGain } from 'flatwork-reckoner';
 *
 * const { figures } = strengthGain({
 *   strength: '4000 psi',
 *   ages: ['7 day'],
 *   uses: [{ use: 'drive', strength: '3000 psi' }, { use: 'walk' }],
 * });
 * figures.atAges?.[0]?.byAci?.format(); // '2814.1 psi'
 * figures.atAges?.[0]?.byModelCode.format(); // '3115.2 psi'
 * figures.uses?.[0]?.to.format(); // '8.28 day'
 * figures.uses?.[1]?.to.format(); // '16.5 h'
 * ```
 */
export const strengthGain: Calculation<StrengthGainInput, StrengthGainFigures> = /*#__PURE__*/ define({
  id: 'strength-gain',
  title: 'Strength by age',
  version: 1,
  sources: [ACI_209, MODEL_CODE, MINDESS_RATIO, BEALL_TIMES],
  input: () =>
    fields({
      strength: concreteStrength('strength', STRENGTH),
      cement: maybe(choice('cement', ['high-early', 'ordinary', 'slow'] as const)),
      curedAt: maybe(quantity('temperature', 'curedAt', 'any', CURED_AT)),
      ages: maybe(list(quantity('time', 'age', 'positive', AGE), 1, MOST_AGES)),
      uses: maybe(list(useField(), 1, MOST_USES)),
    }),
  reckon,
});

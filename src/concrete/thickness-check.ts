/**
 * Whether a placed slab is as thick as it was specified, by cores or probes.
 *
 * The mean of all samples, `m = S ÷ n`, and the thinnest of them are each held to the specified thickness less a
 * tolerance. A sample thicker than specified counts for no more than a tolerance above it, so that thick places do not
 * make up for thin ones: `s = T + o`. Nothing limits how thick a slab may be but its cost, which `over` shows.
 *
 * Source: ACI 117-06 and ACI 117-10, as quoted; how samples count, and millimeters, from memory.
 */
import { GIVEN } from '../grade/sources';
import { greaterOf } from '../quantity/greater';
import { type Paired, paired } from '../quantity/paired';
import type { Quantity, QuantityInput } from '../quantity/quantity';
import { type Calculation, define } from '../reckoning/calculation';
import { fields, list, maybe, quantity, wholeNumber } from '../reckoning/fields';
import { SLAB_THICKNESS } from '../reckoning/ordinary';
import type { Pad } from '../reckoning/pad';
import type { Source } from '../reckoning/source';
import { total } from '../reckoning/whole';
import { say } from '../reckoning/words';
import { SAMPLE, TOLERANCE } from './ordinary';
import { ACI_SAMPLES, ACI_THICKNESS, ACI_THICKNESS_BEFORE } from './sources';
import { fewSamples, thinMean, thinPlaces } from './thickness-cautions';

/** Input of {@link thicknessCheck}. */
export interface ThicknessCheckInput {
  /** Thickness that was specified. */
  readonly specified: QuantityInput<'length'>;
  /** Thickness in each place: of cores, or by a probe through the fresh concrete to its base. */
  readonly samples: readonly QuantityInput<'length'>[];
  /** How much thinner the mean of all may be; by default 3/8 in, 10 mm. */
  readonly meanUnder?: QuantityInput<'length'>;
  /** How much thinner any sample may be; by default 3/4 in, 19 mm. */
  readonly sampleUnder?: QuantityInput<'length'>;
  /** How far above the specified thickness a sample counts in the mean; by default 3/4 in, 19 mm. */
  readonly countsOver?: QuantityInput<'length'>;
}

/** What the samples come to, the gravest last. */
export type ThicknessVerdict = 'within tolerance' | 'thin in places' | 'thin on average';

/** Figures of {@link thicknessCheck}. */
export interface ThicknessCheckFigures {
  /** The mean, each sample as it counts. */
  readonly mean: Quantity<'length'>;
  /** The mean of the samples as measured. */
  readonly measuredMean: Quantity<'length'>;
  /** The thinnest sample. */
  readonly thinnest: Quantity<'length'>;
  /** The thickest sample. */
  readonly thickest: Quantity<'length'>;
  /** What the mean may come down to. */
  readonly meanAtLeast: Quantity<'length'>;
  /** What any sample may come down to. */
  readonly sampleAtLeast: Quantity<'length'>;
  /** Samples thinner than they may be. */
  readonly tooThin: Quantity<'count'>;
  /** How much more concrete is in place than the specified thickness takes; below zero where it is less. */
  readonly over: Quantity<'ratio'>;
  /** Mean and samples against the tolerances. */
  readonly verdict: ThicknessVerdict;
}

type Length = Quantity<'length'>;

interface Parsed {
  readonly specified: Length;
  readonly samples: readonly Length[];
  readonly meanUnder: Length | undefined;
  readonly sampleUnder: Length | undefined;
  readonly countsOver: Length | undefined;
}

const MEAN_UNDER = /*#__PURE__*/ paired('length', '3/8 in', '10 mm');
const SAMPLE_UNDER = /*#__PURE__*/ paired('length', '3/4 in', '19 mm');
const MOST_SAMPLES = 1000;
/** Fewer say little of a slab. */
const FEW = 4;

/** A tolerance that is published. */
interface Usual {
  readonly name: 'meanUnder' | 'sampleUnder' | 'countsOver';
  readonly pair: Paired<'length'>;
  readonly because: string;
  readonly override: string;
  readonly source: Source;
}

const USUAL: readonly [mean: Usual, sample: Usual, over: Usual] = [
  {
    name: 'meanUnder',
    pair: MEAN_UNDER,
    because: 'so much thinner the mean of a slab on ground may be',
    override: 'Give meanUnder as the plans have it',
    source: ACI_THICKNESS,
  },
  {
    name: 'sampleUnder',
    pair: SAMPLE_UNDER,
    because: 'so much thinner any sample of a slab on ground may be',
    override: 'Give sampleUnder as the plans have it',
    source: ACI_THICKNESS,
  },
  {
    name: 'countsOver',
    pair: SAMPLE_UNDER,
    because: 'thick places do not make up for thin ones: a thicker sample counts as this much above',
    override: 'Give countsOver as the plans have it',
    source: ACI_SAMPLES,
  },
];

/** What is allowed: as given, or as published by either name of the pair. */
interface Allowed {
  readonly shown: Length;
  readonly source: Source;
  readonly exceededBy: (q: Length) => Length | undefined;
}

function allowed({ name, pair, because, override, source }: Usual, input: Parsed, pad: Pad): Allowed {
  const given = input[name];
  if (given) {
    const exceededBy = (q: Length): Length | undefined => (q.greaterThan(given) ? given : undefined);
    return { shown: given, source: GIVEN, exceededBy };
  }
  pad.assume({ name, value: pair, because, override, source });
  return { shown: pair.as(pad.system), source, exceededBy: (q) => pair.exceededBy(q) };
}

/** Each sample as it counts: no thicker than the specified thickness and a tolerance. */
function counted({ specified: T, samples }: Parsed, { shown: o, exceededBy }: Allowed, pad: Pad): Length[] {
  return samples.map((sample, i) =>
    exceededBy(sample.minus(T))
      ? pad.step(say`sample ${{ n: i + 1 }} as it counts`, 's = T + o', { T, o }, T.plus(o))
      : sample,
  );
}

function meanOf(what: string, samples: readonly Length[], pad: Pad): Length {
  const S = total('all samples', 'S', samples, pad);
  const n = wholeNumber(samples.length);
  return pad.step(what, 'm = S ÷ n', { S, n }, S.over(n) as Length);
}

/** The thinnest of all and the thickest. */
const extremes = (samples: readonly Length[]): Pick<ThicknessCheckFigures, 'thinnest' | 'thickest'> => ({
  thinnest: samples.reduce((a, b) => (b.lessThan(a) ? b : a)),
  thickest: samples.reduce(greaterOf),
});

/** What is judged: the mean as it counts and the thinnest sample. */
type Judged = Pick<ThicknessCheckFigures, 'mean' | 'thinnest'>;

/** Cautions and the verdict. */
function judge(input: Parsed, found: Judged, [mean, sample]: readonly [Allowed, Allowed], pad: Pad) {
  const { specified: T, samples } = input;
  const tooThin = wholeNumber(samples.filter((s) => sample.exceededBy(T.minus(s))).length);
  const [short, shortest] = [T.minus(found.mean), T.minus(found.thinnest)];
  const [meanLimit, thinLimit] = [mean.exceededBy(short), sample.exceededBy(shortest)];
  if (meanLimit) pad.caution(thinMean(meanLimit, short, mean.source));
  if (thinLimit) pad.caution(thinPlaces(tooThin, thinLimit, shortest, sample.source));
  if (samples.length < FEW) pad.caution(fewSamples(wholeNumber(FEW), wholeNumber(samples.length)));
  const verdict: ThicknessVerdict = meanLimit
    ? 'thin on average'
    : thinLimit
      ? 'thin in places'
      : 'within tolerance';
  return { tooThin, verdict };
}

function reckon(input: Parsed, pad: Pad): ThicknessCheckFigures {
  const { specified: T, samples } = input;
  const [mean, sample, over] = USUAL.map((usual) => allowed(usual, input, pad)) as [
    Allowed,
    Allowed,
    Allowed,
  ];
  const measured = meanOf('mean as measured', samples, pad);
  const asCounted = counted(input, over, pad);
  const isCapped = asCounted.some((s, i) => s !== samples[i]);
  const m = isCapped ? meanOf('mean as it counts', asCounted, pad) : measured;
  const ends = extremes(samples);
  const least = (what: string, { shown: u }: Allowed): Length =>
    pad.step(what, 'a = T − u', { T, u }, T.minus(u));
  const x = (measured.minus(T).over(T) as Quantity<'ratio'>).in('%');
  return {
    mean: m,
    measuredMean: measured,
    ...ends,
    meanAtLeast: least('what the mean may come down to', mean),
    sampleAtLeast: least('what a sample may come down to', sample),
    over: pad.step('over what was specified', 'x = (m − T) ÷ T', { m: measured, T }, x),
    ...judge(input, { mean: m, thinnest: ends.thinnest }, [mean, sample], pad),
  };
}

/**
 * Whether a placed slab is as thick as specified, by cores or by probes through it.
 *
 * @param input - the specified thickness and that of each sample; other tolerances where the plans have them
 * @returns the mean as it counts and as measured, the thinnest and the thickest, what each may come down to, and the verdict
 * @throws {InputError} `too-few` without a sample; `too-many`; lengths that cannot be read or are not greater than zero
 * @source ACI 117-10 as quoted: the mean no more than 3/8 in thinner, no sample more than 3/4 in; how samples count and
 * the millimeters are from memory
 * @example
 * ```ts
 * import { thicknessCheck } from 'flatwork-reckoner';
 *
 * const { figures, cautions } = thicknessCheck({
 *   specified: '5 in',
 *   samples: ['4 3/4 in', '5 1/8 in', '4 1/8 in', '5 in'],
 * });
 * figures.mean.format(); // '4.75 in'
 * figures.thinnest.format(); // '4.125 in'
 * figures.verdict; // 'thin in places'
 * cautions.map(({ code }) => code).join(', '); // 'thin-places'
 * ```
 */
export const thicknessCheck: Calculation<ThicknessCheckInput, ThicknessCheckFigures> = /*#__PURE__*/ define({
  id: 'thickness-check',
  title: 'Thickness of a placed slab',
  version: 1,
  sources: [ACI_THICKNESS, ACI_THICKNESS_BEFORE, ACI_SAMPLES],
  input: () =>
    fields({
      specified: quantity('length', 'specified', 'positive', SLAB_THICKNESS),
      samples: list(quantity('length', 'each sample', 'positive', SAMPLE), 1, MOST_SAMPLES),
      meanUnder: maybe(quantity('length', 'meanUnder', 'not-negative', TOLERANCE)),
      sampleUnder: maybe(quantity('length', 'sampleUnder', 'not-negative', TOLERANCE)),
      countsOver: maybe(quantity('length', 'countsOver', 'not-negative', TOLERANCE)),
    }),
  reckon,
});

/**
 * Volume of a solid straight flight of equal steps, with or without a landing at its top.
 *
 * Each step stands on the ground, so the k-th is k risers high: with n risers of height r, treads
 * of depth t and a width w, the treads make `w × t × r × n × (n + 1) ÷ 2`. With a landing of depth
 * d the last tread is the landing itself: `w × r × n × ((n − 1) × t ÷ 2 + d)`.
 *
 * Source: geometry.
 */
import { constant, length } from '../quantity/make';
import type { Quantity, QuantityInput } from '../quantity/quantity';
import { type Calculation, define } from '../reckoning/calculation';
import * as cautions from '../reckoning/cautions';
import { fields, maybe, quantity, whole, wholeNumber } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { CLOSED_FORM, COMMON_PRACTICE } from '../reckoning/source';

/** Input of {@link stepVolume}. */
export interface StepVolumeInput {
  /** How many risers, a plain whole number. */
  readonly risers: number;
  /** Height of each riser. */
  readonly rise: QuantityInput<'length'>;
  /** Depth of each tread, front to back. */
  readonly tread: QuantityInput<'length'>;
  /** Width of the flight, side to side. */
  readonly width: QuantityInput<'length'>;
  /** Depth of the landing at the top, front to back; left out when the top tread is one like the others. */
  readonly landingDepth?: QuantityInput<'length'>;
}

/** Figures of {@link stepVolume}. */
export interface StepVolumeFigures {
  /** Concrete in place. */
  readonly volume: Quantity<'volume'>;
  /** From the ground to the top. */
  readonly totalRise: Quantity<'length'>;
  /** From the front of the first riser to the back. */
  readonly totalRun: Quantity<'length'>;
  /** Ground that the flight covers. */
  readonly footprint: Quantity<'area'>;
}

type Length = Quantity<'length'>;

interface Parsed {
  readonly risers: Quantity<'count'>;
  readonly rise: Length;
  readonly tread: Length;
  readonly width: Length;
  readonly landingDepth: Length | undefined;
}

const HIGHEST_RISER = constant(() => length('7-3/4 in'));
const NARROWEST_TREAD = constant(() => length('10 in'));
const HANDRAIL_FROM = constant(() => wholeNumber(4));
const ONE = constant(() => wholeNumber(1));
const TWO = constant(() => wholeNumber(2));

function heed({ risers, rise, tread }: Parsed, pad: Pad): void {
  if (rise.greaterThan(HIGHEST_RISER())) pad.caution(cautions.steepRiser(HIGHEST_RISER(), rise));
  if (tread.lessThan(NARROWEST_TREAD())) pad.caution(cautions.narrowTread(NARROWEST_TREAD(), tread));
  if (!risers.lessThan(HANDRAIL_FROM())) pad.caution(cautions.handrail(HANDRAIL_FROM(), risers));
}

function plainFlight({ risers: n, rise: r, tread: t, width: w }: Parsed, pad: Pad): Quantity<'volume'> {
  const steps = n.times(n.plus(ONE())).over(TWO());
  pad.assume({
    name: 'landingDepth',
    value: 'none',
    because: 'the top tread is one like the others',
    override: 'Give landingDepth when the top is a landing',
    source: COMMON_PRACTICE,
  });
  return pad.step(
    'volume',
    'V = w × t × r × n × (n + 1) ÷ 2',
    { w, t, r, n },
    w.times(t).times(r.times(steps)),
  );
}

function withLanding(
  { risers: n, rise: r, tread: t, width: w }: Parsed,
  d: Length,
  pad: Pad,
): Quantity<'volume'> {
  const side = t.times(n.minus(ONE())).over(TWO()).plus(d);
  return pad.step(
    'volume',
    'V = w × r × n × ((n − 1) × t ÷ 2 + d)',
    { w, r, n, t, d },
    w.times(r.times(n)).times(side),
  );
}

function reckon(input: Parsed, pad: Pad): StepVolumeFigures {
  const { risers: n, rise: r, tread: t, width: w, landingDepth: d } = input;
  const totalRise = pad.step('total rise', 'R = n × r', { n, r }, r.times(n));
  const totalRun = d
    ? pad.step('total run', 'L = (n − 1) × t + d', { n, t, d }, t.times(n.minus(ONE())).plus(d))
    : pad.step('total run', 'L = n × t', { n, t }, t.times(n));
  const volume = d ? withLanding(input, d, pad) : plainFlight(input, pad);
  const footprint = pad.step('footprint', 'A = L × w', { L: totalRun, w }, totalRun.times(w));
  heed(input, pad);
  return { volume, totalRise, totalRun, footprint };
}

/**
 * Volume of a solid straight flight of equal steps.
 *
 * @param input - risers, rise, tread and width, and the depth of a landing at the top if there is one
 * @returns volume, total rise and run, footprint
 * @throws {InputError} for a number of risers that is not whole, and for lengths that cannot be read
 * or are not greater than zero
 * @source closed form; cautions from IRC 2018 R311.7.5 as summarised by Jefferson County, Colorado
 * @example
 * ```ts
 * import { stepVolume } from 'flatwork-reckoner';
 *
 * const { figures } = stepVolume({
 *   risers: 2,
 *   rise: '7 in',
 *   tread: '11 in',
 *   width: '6 ft',
 *   landingDepth: '4 ft',
 * });
 * figures.volume.format('ft3'); // '31.21 ft3'
 * ```
 */
export const stepVolume: Calculation<StepVolumeInput, StepVolumeFigures> = /*#__PURE__*/ define({
  id: 'step-volume',
  title: 'Volume of solid steps',
  version: 1,
  sources: [CLOSED_FORM],
  input: () =>
    fields({
      risers: whole('risers', 1, 200),
      rise: quantity('length', 'rise'),
      tread: quantity('length', 'tread'),
      width: quantity('length', 'width'),
      landingDepth: maybe(quantity('length', 'landingDepth')),
    }),
  reckon,
});

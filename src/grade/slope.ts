/**
 * One slope in every way of writing it, and the fall over a run.
 *
 * `slope = rise ÷ run`; percent is 100 times that, in/ft 12 times, the n of 1:n its reciprocal, the
 * angle its arc tangent. 2% is not 1/4 in/ft: 1/4 in/ft is 2.083 %.
 *
 * Source: definitions.
 */

import { Decimal, PI } from '../quantity/decimal';
import * as faults from '../quantity/faults';
import { constant, slope as slopeQuantity } from '../quantity/make';
import { paired } from '../quantity/paired';
import {
  canonicalValue,
  newQuantity,
  type Quantity,
  type QuantityInput,
  quantityOf,
  systemOfQuantity,
} from '../quantity/quantity';
import { unitOf } from '../quantity/units';
import { type Calculation, define, refuse } from '../reckoning/calculation';
import { fields, maybe, quantity } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { CLOSED_FORM } from '../reckoning/source';
import { all, allOrNone, oneOf } from '../reckoning/together';
import * as cautions from './cautions';
import * as ordinary from './ordinary';

/** Input of {@link slopeOf}: a slope, an angle, or a rise with its run. */
export interface SlopeInput {
  /** `2%`, `1/4 in/ft`, `1:48` or `20 mm/m`. */
  readonly slope?: QuantityInput<'slope'>;
  /** Angle from level, less than 90 degrees. */
  readonly angle?: QuantityInput<'angle'>;
  /** How far up or down; goes with `run`. */
  readonly rise?: QuantityInput<'length'>;
  /** How far along, level. */
  readonly run?: QuantityInput<'length'>;
  /** The level distance over which the fall is wanted. */
  readonly over?: QuantityInput<'length'>;
}

/** Figures of {@link slopeOf}: one slope, shown in each way. */
export interface SlopeFigures {
  /** As a percentage. */
  readonly percent: Quantity<'slope'>;
  /** As in/ft. */
  readonly inchesPerFoot: Quantity<'slope'>;
  /** As mm/m. */
  readonly millimetersPerMeter: Quantity<'slope'>;
  /** As 1:n; left out when level. */
  readonly oneIn?: Quantity<'slope'>;
  /** Angle from level. */
  readonly angle: Quantity<'angle'>;
  /** Fall over the distance asked for. */
  readonly fall?: Quantity<'length'>;
}

type Length = Quantity<'length'>;

interface Parsed {
  readonly slope: Quantity<'slope'> | undefined;
  readonly angle: Quantity<'angle'> | undefined;
  readonly rise: Length | undefined;
  readonly run: Length | undefined;
  readonly over: Length | undefined;
}

const HALF_TURN = 180;
const INCHES_PER_FOOT = 12;
const RAMP_LIMIT = constant(() => slopeQuantity('1:12'));
/** Flatter than this it is a walk, not a ramp, and may rise as far as it likes. */
const WALK_LIMIT = constant(() => slopeQuantity('1:20'));
/** Steeper than this nothing passes for a ramp, even on old sites. */
const NO_RAMP = constant(() => slopeQuantity('1:8'));
const RAMP_RISE = /*#__PURE__*/ paired('length', '30 in', '760 mm');

/** Rise over run as a slope, shown as is usual for the lengths. */
export function slopeBetween(rise: Length, run: Length): Quantity<'slope'> {
  const value = canonicalValue(rise).times(INCHES_PER_FOOT).div(canonicalValue(run));
  return quantityOf('slope', value, systemOfQuantity(run));
}

function fromAngle(angle: Quantity<'angle'>, pad: Pad): Quantity<'slope'> {
  const degrees = canonicalValue(angle);
  if (degrees.greaterThanOrEqualTo(HALF_TURN / 2)) {
    refuse('angle', faults.doesNotFit('angle', '90 deg'));
  }
  const tangent = Decimal.tan(degrees.times(PI).div(HALF_TURN));
  const slope = quantityOf('slope', tangent.times(INCHES_PER_FOOT), 'metric');
  return pad.step('slope', 's = tan(a)', { a: angle }, slope);
}

/** Arc tangent of a slope, in degrees. */
function angleOf(slope: Quantity<'slope'>): Quantity<'angle'> {
  const tangent = canonicalValue(slope).div(INCHES_PER_FOOT);
  return quantityOf('angle', Decimal.atan(tangent).times(HALF_TURN).div(PI), 'customary');
}

function read(input: Parsed, pad: Pad): Quantity<'slope'> {
  const { slope, angle, rise, run } = input;
  const given = [slope, angle, rise ?? run].filter((x) => x !== undefined);
  if (given.length !== 1) return refuse('', faults.giveOneOf(['slope', 'angle', 'rise with run']));
  if (slope) return slope;
  if (angle) return fromAngle(angle, pad);
  if (!rise) return refuse('rise', faults.missing('rise', ['"3 in"', '"75 mm"']));
  if (!run) return refuse('run', faults.missing('run', ['"12 ft"', '"3.6 m"']));
  return pad.step('slope', 's = h ÷ l', { h: rise, l: run }, slopeBetween(rise, run));
}

const fallOver = (slope: Quantity<'slope'>, run: Length): Length => {
  const fall = slope.times(run);
  const unit = systemOfQuantity(run) === 'metric' ? 'mm' : 'in';
  return newQuantity('length', canonicalValue(fall), unitOf('length', unit) as never);
};

/** Whether it would do as a ramp: nothing says that it is one, so a long rise is but a note. */
function heedRamp(s: Quantity<'slope'>, rise: Length | undefined, pad: Pad): void {
  if (s.greaterThan(RAMP_LIMIT())) pad.caution(cautions.steeperThanRamp(RAMP_LIMIT(), s, false));
  const like = s.greaterThan(WALK_LIMIT()) && !s.greaterThan(NO_RAMP());
  const long = like && rise ? RAMP_RISE.exceededBy(rise) : undefined;
  if (rise && long) pad.caution(cautions.longRamp(long, rise, 'note'));
}

function reckon(input: Parsed, pad: Pad): SlopeFigures {
  const s = read(input, pad);
  const percent = s.in('%');
  pad.step('as a percentage', 'p = s', { s }, percent);
  const angle = pad.step('angle', 'a = atan(s)', { s }, angleOf(s));
  const over = input.over;
  const fall = over && pad.step('fall', 'f = s × d', { s, d: over }, fallOver(s, over));
  heedRamp(s, input.rise ?? fall, pad);
  return {
    percent,
    inchesPerFoot: s.in('in/ft'),
    millimetersPerMeter: s.in('mm/m'),
    ...(s.sign() === 0 ? {} : { oneIn: s.in('1:n') }),
    angle,
    ...(fall ? { fall } : {}),
  };
}

/**
 * One slope in every way of writing it, and the fall over a run.
 *
 * @param input - a slope, or an angle, or rise and run; and the distance over which the fall is wanted
 * @returns the slope as a percentage, in/ft, mm/m, 1:n and angle, and the fall
 * @throws {InputError} `give-one-of`; `does-not-fit` for 90 degrees and more; quantities that cannot
 * be read or are negative
 * @source definitions; the cautions are those of the 2010 ADA Standards 405.2 (1:12) and the 1991 ADA
 * Standards 4.8.2 (30 in in one run)
 * @example
 * ```ts
 * import { slopeOf } from 'flatwork-reckoner';
 *
 * const { figures } = slopeOf({ slope: '1/4 in/ft', over: '12 ft' });
 * figures.percent.format(); // '2.08%'
 * figures.oneIn?.format(); // '1:48'
 * figures.fall?.format(); // '3 in'
 * ```
 */
export const slopeOf: Calculation<SlopeInput, SlopeFigures> = /*#__PURE__*/ define({
  id: 'slope',
  title: 'Slope',
  version: 1,
  sources: [CLOSED_FORM],
  input: () =>
    fields(
      {
        slope: maybe(quantity('slope', 'slope', 'not-negative', ordinary.SLOPE)),
        angle: maybe(quantity('angle', 'angle', 'not-negative', ordinary.ANGLE)),
        rise: maybe(quantity('length', 'rise', 'not-negative', ordinary.RISE)),
        run: maybe(quantity('length', 'run', 'positive', ordinary.RUN)),
        over: maybe(quantity('length', 'over', 'positive', ordinary.RUN)),
      },
      all(oneOf(['slope'], ['angle'], ['rise', 'run']), allOrNone('rise', 'run')),
    ),
  reckon,
});

/**
 * Slope along and across, and what both come to together.
 *
 * The steepest slope is the hypotenuse of the two, `S = √(l² + c²)`, never their sum; it runs at
 * `atan(c ÷ l)` from the line along. The cross slope may be taken from two readings and the width
 * between them.
 */
import { angleTo, Decimal, PI } from '../quantity/decimal';
import * as faults from '../quantity/faults';
import { constant, slope } from '../quantity/make';
import {
  canonicalValue,
  type Quantity,
  type QuantityInput,
  quantityOf,
  systemOfQuantity,
} from '../quantity/quantity';
import { type Calculation, define, refuse } from '../reckoning/calculation';
import { fields, maybe, quantity } from '../reckoning/fields';
import { isUnusual, PLAN_LENGTH, unusual } from '../reckoning/ordinary';
import type { Pad } from '../reckoning/pad';
import { CLOSED_FORM, PCA_DRAINAGE } from '../reckoning/source';
import { all, allOrNone, oneOf } from '../reckoning/together';
import * as cautions from './cautions';
import { BENCH_ELEVATION, SLOPE_ACROSS, SLOPE_ALONG } from './note-ranges';
import { slopeBetween } from './slope';
import { ADA_RAMPS, ADA_WALKS, UFGS_WALKS } from './sources';

/** Input of {@link crossSlope}. */
export interface CrossSlopeInput {
  /** Slope along; level where it is left out. */
  readonly along?: QuantityInput<'slope'>;
  /** Slope across; or the two readings and the width. */
  readonly across?: QuantityInput<'slope'>;
  /** Elevation at the high side. */
  readonly highSide?: QuantityInput<'length'>;
  /** Elevation at the low side. */
  readonly lowSide?: QuantityInput<'length'>;
  /** Level distance between the two readings. */
  readonly width?: QuantityInput<'length'>;
}

/** Figures of {@link crossSlope}. */
export interface CrossSlopeFigures {
  /** Slope across, as given or from the two readings. */
  readonly across: Quantity<'slope'>;
  /** Slope along, as given; 0% where it was left out. */
  readonly along: Quantity<'slope'>;
  /** Steepest slope: the hypotenuse of both. */
  readonly steepest: Quantity<'slope'>;
  /** Angle of the steepest way down from the line along; left out when level. */
  readonly direction?: Quantity<'angle'>;
  /** Cross slope against 1:48, the most for an accessible route. */
  readonly verdict: 'within 1:48' | 'steeper than 1:48';
}

type Length = Quantity<'length'>;
type Slope = Quantity<'slope'>;

interface Parsed {
  readonly along: Slope | undefined;
  readonly across: Slope | undefined;
  readonly highSide: Length | undefined;
  readonly lowSide: Length | undefined;
  readonly width: Length | undefined;
}

const MOST_ACROSS = constant(() => slope('1:48'));
const MOST_ALONG = constant(() => slope('1:20'));
const RAMP_LIMIT = constant(() => slope('1:12'));
const LEVEL = constant(() => slope('0%'));
const HALF_TURN = 180;

function acrossOf({ across, highSide: h, lowSide: k, width: w }: Parsed, pad: Pad): Slope {
  const readings = [h, k, w].filter((x) => x !== undefined);
  if ((across !== undefined) === readings.length > 0) {
    refuse('', faults.giveOneOf(['across', 'highSide with lowSide and width']));
  }
  if (across) return across;
  if (!h) return refuse('highSide', faults.missing('highSide', '"100.1 ft"'));
  if (!k) return refuse('lowSide', faults.missing('lowSide', '"100 ft"'));
  if (!w) return refuse('width', faults.missing('width', '"5 ft"'));
  const c = pad.step('cross slope', 'c = abs(h − k) ÷ w', { h, k, w }, slopeBetween(h.minus(k).abs(), w));
  if (isUnusual(c, SLOPE_ACROSS)) pad.caution(unusual('highSide', { value: c, ordinary: SLOPE_ACROSS }));
  return c;
}

function reckon(input: Parsed, pad: Pad): CrossSlopeFigures {
  const c = acrossOf(input, pad);
  const l = input.along ?? LEVEL();
  const [x, y] = [canonicalValue(l), canonicalValue(c)];
  const steepest = pad.step(
    'steepest slope',
    'S = hypot(l, c)',
    { l, c },
    quantityOf('slope', Decimal.hypot(x, y), systemOfQuantity(c)).in('%'),
  );
  const level = x.isZero() && y.isZero();
  const direction = quantityOf(
    'angle',
    angleTo(y, x).times(HALF_TURN).div(PI).toSignificantDigits(22),
    'customary',
  );
  const steep = c.greaterThan(MOST_ACROSS());
  if (steep) pad.caution(cautions.steepAcross(MOST_ACROSS(), c));
  // An accessible route steeper than a ramp may be is not one.
  if (l.greaterThan(RAMP_LIMIT())) pad.caution(cautions.steeperThanRamp(RAMP_LIMIT(), l, true));
  else if (l.greaterThan(MOST_ALONG())) pad.caution(cautions.steepAlong(MOST_ALONG(), l));
  return {
    across: c,
    along: l,
    steepest,
    ...(level ? {} : { direction }),
    verdict: steep ? 'steeper than 1:48' : 'within 1:48',
  };
}

/**
 * Slope along and across, and what both come to together.
 *
 * @param input - the slope along, and the slope across or two readings and the width
 * @returns both slopes, the steepest and its direction, and the cross slope against 1:48
 * @throws {InputError} `give-one-of`; `missing`; quantities that cannot be read or are negative
 * @source closed form; 1:48 as the 2010 ADA Standards are commonly quoted
 * @example
 * ```ts
 * import { crossSlope } from 'flatwork-reckoner';
 *
 * const { figures } = crossSlope({ along: '4%', across: '3%' });
 * figures.steepest.format(); // '5%'
 * figures.verdict; // 'steeper than 1:48'
 * ```
 */
export const crossSlope: Calculation<CrossSlopeInput, CrossSlopeFigures> = /*#__PURE__*/ define({
  id: 'cross-slope',
  title: 'Cross slope and steepest slope',
  version: 1,
  sources: [CLOSED_FORM, ADA_WALKS, ADA_RAMPS, UFGS_WALKS, PCA_DRAINAGE],
  input: () =>
    fields(
      {
        along: maybe(quantity('slope', 'along', 'not-negative', SLOPE_ALONG)),
        across: maybe(quantity('slope', 'across', 'not-negative', SLOPE_ACROSS)),
        highSide: maybe(quantity('length', 'highSide', 'any', BENCH_ELEVATION)),
        lowSide: maybe(quantity('length', 'lowSide', 'any', BENCH_ELEVATION)),
        width: maybe(quantity('length', 'width', 'positive', PLAN_LENGTH)),
      },
      all(oneOf(['across'], ['highSide', 'lowSide', 'width']), allOrNone('highSide', 'lowSide', 'width')),
    ),
  reckon,
});

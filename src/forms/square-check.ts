/**
 * Are the forms square? From the two diagonals of four sides that are equal in pairs.
 *
 * In a parallelogram `D² − d² = 4 × L × x`, where `x` is how far one side has slid along the length
 * against the other; square forms have equal diagonals of `√(L² + W²)`.
 *
 * Source: geometry (the parallelogram law).
 */
import { Decimal } from '../quantity/decimal';
import { constant, length } from '../quantity/make';
import {
  canonicalValue,
  type Quantity,
  type QuantityInput,
  quantityOf,
  systemOfQuantity,
} from '../quantity/quantity';
import { type Calculation, define } from '../reckoning/calculation';
import * as cautions from '../reckoning/cautions';
import { fields, list, maybe, quantity, wholeNumber } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { CLOSED_FORM, COMMON_PRACTICE } from '../reckoning/source';

/** Input of {@link squareCheck}. */
export interface SquareCheckInput {
  /** Length of the forms. */
  readonly length: QuantityInput<'length'>;
  /** Width of the forms. */
  readonly width: QuantityInput<'length'>;
  /** The two diagonals as measured; left out, only the true diagonal is given. */
  readonly diagonals?: readonly [QuantityInput<'length'>, QuantityInput<'length'>];
  /** How much the diagonals may differ; by default 1/2 in. */
  readonly tolerance?: QuantityInput<'length'>;
}

/** Figures of {@link squareCheck}. */
export interface SquareCheckFigures {
  /** Both diagonals of square forms. */
  readonly trueDiagonal: Quantity<'length'>;
  /** Difference of the measured diagonals. */
  readonly difference?: Quantity<'length'>;
  /** How far to slide one long side along the other; left out where sides and diagonals do not agree. */
  readonly slide?: Quantity<'length'>;
  /** Whether the diagonals are equal, and right for the sides, within the tolerance. */
  readonly square?: boolean;
}

type Length = Quantity<'length'>;

interface Parsed {
  readonly length: Length;
  readonly width: Length;
  readonly diagonals: readonly Length[] | undefined;
  readonly tolerance: Length | undefined;
}

const TOLERANCE = constant(() => length('1/2 in'));

function toleranceOf(given: Length | undefined, pad: Pad): Length {
  if (given) return given;
  pad.assume({
    name: 'tolerance',
    value: TOLERANCE().format(),
    because: 'what most crews let pass on a slab',
    override: 'Give tolerance',
    source: COMMON_PRACTICE,
  });
  return TOLERANCE();
}

const small = (l: Length): Length => l.in(systemOfQuantity(l) === 'metric' ? 'mm' : 'in');

/** In a parallelogram D² + d² = 2 × (L² + W²): half the sum of the squares is that of the true diagonal. */
function agreed(T: Length, [D, d]: readonly [Length, Length], tolerance: Length, pad: Pad): boolean {
  const half = D.times(D).plus(d.times(d)).over(wholeNumber(2));
  const mean = quantityOf('length', canonicalValue(half).sqrt(), systemOfQuantity(D));
  pad.step('mean diagonal', 'M = √((D² + d²) ÷ 2)', { D, d }, mean);
  const off = mean.minus(T).abs();
  if (!off.greaterThan(tolerance)) return true;
  pad.caution(cautions.sidesAndDiagonals(tolerance, off));
  return false;
}

function compared(
  input: Parsed,
  T: Length,
  [p, q]: readonly [Length, Length],
  pad: Pad,
): Omit<SquareCheckFigures, 'trueDiagonal'> {
  const [D, d] = p.lessThan(q) ? [q, p] : [p, q];
  const L = input.length;
  const difference = pad.step('difference of the diagonals', 'f = D − d', { D, d }, small(D.minus(d)));
  const tolerance = toleranceOf(input.tolerance, pad);
  if (!agreed(T, [D, d], tolerance, pad)) return { difference, square: false };
  const squares = D.times(D).minus(d.times(d));
  const slide = small(squares.over(L).over(wholeNumber(4)));
  pad.step('slide along the length', 'x = (D² − d²) ÷ (4 × L)', { D, d, L }, slide);
  const square = !difference.greaterThan(tolerance);
  if (!square) pad.caution(cautions.outOfSquare(tolerance, difference));
  return { difference, slide, square };
}

function reckon(input: Parsed, pad: Pad): SquareCheckFigures {
  const { length: L, width: W, diagonals } = input;
  const value = Decimal.hypot(canonicalValue(L), canonicalValue(W));
  const trueDiagonal = quantityOf('length', value, systemOfQuantity(L));
  pad.step('true diagonal', 'T = √(L² + W²)', { L, W }, trueDiagonal);
  if (!diagonals) return { trueDiagonal };
  return {
    trueDiagonal,
    ...compared(input, trueDiagonal, diagonals as unknown as readonly [Length, Length], pad),
  };
}

/**
 * Are the forms square?
 *
 * @param input - both sides, and the two diagonals as measured
 * @returns the true diagonal, the difference of the measured ones, and how far to slide a side
 * @throws {InputError} for lengths that cannot be read or are not greater than zero
 * @source closed form; the default tolerance is common practice
 * @example
 * ```ts
 * import { squareCheck } from 'flatwork-reckoner';
 *
 * const { figures } = squareCheck({
 *   length: '28 ft',
 *   width: '18 ft',
 *   diagonals: [`33' 4"`, `33' 2 5/8"`],
 * });
 * figures.trueDiagonal.format(); // '33 ft 3 7/16 in'
 * figures.slide?.format('in', { places: 2 }); // '0.82 in'
 * figures.square; // false
 * ```
 */
export const squareCheck: Calculation<SquareCheckInput, SquareCheckFigures> = /*#__PURE__*/ define({
  id: 'square-check',
  title: 'Squareness of forms',
  version: 1,
  sources: [CLOSED_FORM],
  input: () =>
    fields({
      length: quantity('length', 'length'),
      width: quantity('length', 'width'),
      diagonals: maybe(list(quantity('length', 'each diagonal'), 2, 2)),
      tolerance: maybe(quantity('length', 'tolerance', 'not-negative')),
    }),
  reckon,
});

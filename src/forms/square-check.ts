/**
 * Are the forms square? From the two diagonals of four sides that are equal in pairs.
 *
 * Square forms have equal diagonals of `√(L² + W²)`; what the two diagonals as measured say of the forms
 * is judged in `squareness.ts`.
 *
 * Source: geometry.
 */

import { judgeSquareness } from '../grade/squareness';
import { hypotenuse } from '../quantity/hypotenuse';
import type { Quantity, QuantityInput } from '../quantity/quantity';
import { type Calculation, define } from '../reckoning/calculation';
import { fields, list, maybe, quantity } from '../reckoning/fields';
import { type Ordinary, PLAN_LENGTH } from '../reckoning/ordinary';
import type { Pad } from '../reckoning/pad';
import { CLOSED_FORM, COMMON_PRACTICE } from '../reckoning/source';
import { MEMBER_LINE, TAPE_TRUTH } from './sources';

/** Input of {@link squareCheck}. */
export interface SquareCheckInput {
  /** Length of the forms. */
  readonly length: QuantityInput<'length'>;
  /** Width of the forms. */
  readonly width: QuantityInput<'length'>;
  /** The two diagonals as measured; left out, only the true diagonal is given. */
  readonly diagonals?: readonly [QuantityInput<'length'>, QuantityInput<'length'>];
  /** How much the diagonals may differ; by default 1/8 in for each 10 ft of diagonal, from 3/16 in to 1 in. */
  readonly tolerance?: QuantityInput<'length'>;
}

/** Figures of {@link squareCheck}. */
export interface SquareCheckFigures {
  /** Both diagonals of square forms. */
  readonly trueDiagonal: Quantity<'length'>;
  /** Difference of the measured diagonals. */
  readonly difference?: Quantity<'length'>;
  /** How much they may differ: as given, or assumed. */
  readonly tolerance?: Quantity<'length'>;
  /** How far to slide one long side along the other; left out where sides and diagonals do not agree. */
  readonly slide?: Quantity<'length'>;
  /** Whether the diagonals are equal, and right for the sides, within the tolerance. */
  readonly square?: boolean;
}

type Length = Quantity<'length'>;

const SQUARE_TOLERANCE: Ordinary = {
  of: 'the difference that is allowed between diagonals',
  example: ['1/4 in', '6 mm'],
  least: ['1/32 in', '1 mm'],
  most: ['3 in', '75 mm'],
  source: COMMON_PRACTICE,
};

interface Parsed {
  readonly length: Length;
  readonly width: Length;
  readonly diagonals: readonly Length[] | undefined;
  readonly tolerance: Length | undefined;
}

function reckon(input: Parsed, pad: Pad): SquareCheckFigures {
  const { length: L, width: W, diagonals } = input;
  const trueDiagonal = pad.step('true diagonal', 'T = √(L² + W²)', { L, W }, hypotenuse(L, W));
  if (!diagonals) return { trueDiagonal };
  const [p, q] = diagonals as readonly [Length, Length];
  return { trueDiagonal, ...judgeSquareness({ ...input, trueDiagonal, diagonals: [p, q] }, pad) };
}

/**
 * Are the forms square, by their diagonals?
 *
 * @param input - both sides, and the two diagonals as measured
 * @returns the true diagonal, the difference of the measured ones, and how far to slide a side
 * @throws {InputError} for lengths that cannot be read or are not greater than zero
 * @source closed form; the default tolerance is common practice, between a least of what tapes can tell and a
 * most of UFGS 03700
 * @example
 * ```ts
 * import { squareCheck } from 'flatwork-reckoner';
 *
 * const { figures } = squareCheck({
 *   length: '28 ft',
 *   width: '18 ft',
 *   diagonals: [`33' 4"`, `33' 2 5/8"`],
 * });
 * figures.trueDiagonal.format(); // '33 ft 3-7/16 in'
 * figures.slide?.format('in', { places: 2 }); // '0.82 in'
 * figures.square; // false
 * ```
 */
export const squareCheck: Calculation<SquareCheckInput, SquareCheckFigures> = /*#__PURE__*/ define({
  id: 'square-check',
  title: 'Square check of forms',
  version: 1,
  sources: [CLOSED_FORM, TAPE_TRUTH, MEMBER_LINE],
  input: () =>
    fields({
      length: quantity('length', 'length', 'positive', PLAN_LENGTH),
      width: quantity('length', 'width', 'positive', PLAN_LENGTH),
      diagonals: maybe(list(quantity('length', 'each diagonal', 'positive', PLAN_LENGTH), 2, 2)),
      tolerance: maybe(quantity('length', 'tolerance', 'not-negative', SQUARE_TOLERANCE)),
    }),
  reckon,
});

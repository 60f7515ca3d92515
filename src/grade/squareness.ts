/**
 * The one rule of squareness: two diagonals as measured, against the sides and against each other.
 *
 * In a parallelogram `D² − d² = 4 × L × x`, where `x` is how far one side has slid along the length against
 * the other, and `D² + d² = 2 × (L² + W²)`: half the sum of the squares is that of the true diagonal.
 *
 * How much the diagonals may differ grows with them: 1/8 in for each 10 ft of the true diagonal, which is
 * common practice. It is never less than 3/16 in, since measuring must be three times as good as the
 * tolerance and a tape of up to 30 ft is true to 1/16 in, and never more than the 1 in by which a guide
 * specification lets a member stand out of its line.
 *
 * Source: geometry (the parallelogram law); the tolerances as named above.
 */

import { greaterOf, lesserOf } from '../quantity/greater';
import { constant } from '../quantity/make';
import { paired } from '../quantity/paired';
import { canonicalValue, type Quantity, quantityOf, systemOfQuantity } from '../quantity/quantity';
import { wholeNumber } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { COMMON_PRACTICE } from '../reckoning/source';
import { say } from '../reckoning/words';
import * as cautions from './cautions';

type Length = Quantity<'length'>;

/** A rectangle of forms as it was measured. */
export interface MeasuredForms {
  /** Length of the forms. */
  readonly length: Length;
  /** Diagonal that square forms of these sides have. */
  readonly trueDiagonal: Length;
  /** Both diagonals as measured, in either order. */
  readonly diagonals: readonly [Length, Length];
  /** How much the diagonals may differ; by default what `squareTolerance` gives. */
  readonly tolerance?: Length | undefined;
}

/** What the diagonals say of the forms. */
export interface Squareness {
  /** Difference of the measured diagonals. */
  readonly difference: Length;
  /** How much they may differ. */
  readonly tolerance: Length;
  /** How far to slide one long side along the other; left out where sides and diagonals do not agree. */
  readonly slide?: Length;
  /** Whether the diagonals are equal, and right for the sides, within the tolerance. */
  readonly square: boolean;
}

const PARTS = constant(() => wholeNumber(960));
const LEAST = /*#__PURE__*/ paired('length', '3/16 in', '5 mm');
const MOST = /*#__PURE__*/ paired('length', '1 in', '25 mm');

/** The 960th as people say it. */
const EACH = /*#__PURE__*/ paired('length', '1/8 in', '1 mm');
const RUN = /*#__PURE__*/ paired('length', '10 ft', '1 m');

const smallUnitOf = (l: Length): 'mm' | 'in' => (systemOfQuantity(l) === 'metric' ? 'mm' : 'in');
const small = (l: Length): Length => l.in(smallUnitOf(l));

/** How much the diagonals of forms may differ where nobody has said. */
function squareTolerance(trueDiagonal: Length): Length {
  const e = lesserOf(
    greaterOf(trueDiagonal.over(PARTS()), LEAST.like(trueDiagonal)),
    MOST.like(trueDiagonal),
  );
  return e.in(smallUnitOf(trueDiagonal));
}

function toleranceOf({ tolerance, trueDiagonal: T }: MeasuredForms, pad: Pad): Length {
  if (tolerance) return tolerance;
  const e = pad.step(
    'how much the diagonals may differ',
    'e = min(max(T ÷ n, a), b)',
    { T, n: PARTS(), a: LEAST.like(T), b: MOST.like(T) },
    squareTolerance(T),
  );
  pad.assume({
    name: 'tolerance',
    value: { reckoned: e },
    because: say`a 960th of the diagonal, ${{ each: EACH }} for each ${{ run: RUN }} of it; at least three times what a tape is true to, at most ${{ most: MOST }}`,
    override: 'Give tolerance',
    source: COMMON_PRACTICE,
  });
  return e;
}

function agree(T: Length, [D, d]: readonly [Length, Length], tolerance: Length, pad: Pad): boolean {
  const half = D.times(D).plus(d.times(d)).over(wholeNumber(2));
  const mean = quantityOf('length', canonicalValue(half).sqrt(), systemOfQuantity(D));
  pad.step('mean diagonal', 'M = √((D² + d²) ÷ 2)', { D, d }, mean);
  const off = small(mean.minus(T).abs());
  if (!off.greaterThan(tolerance)) return true;
  pad.caution(cautions.sidesAndDiagonals(tolerance, off));
  return false;
}

/**
 * Judge a rectangle of forms by its diagonals, with working, the tolerance where it is assumed, and the
 * cautions `out-of-square` and `sides-and-diagonals`.
 */
export function judgeSquareness(forms: MeasuredForms, pad: Pad): Squareness {
  const [p, q] = forms.diagonals;
  const [D, d] = p.lessThan(q) ? [q, p] : [p, q];
  const { length: L, trueDiagonal: T } = forms;
  const difference = pad.step('difference of the diagonals', 'f = D − d', { D, d }, small(D.minus(d)));
  const tolerance = toleranceOf(forms, pad);
  if (!agree(T, [D, d], tolerance, pad)) return { difference, tolerance, square: false };
  const squares = D.times(D).minus(d.times(d));
  const slide = small(squares.over(L).over(wholeNumber(4)));
  pad.step('slide along the length', 'x = (D² − d²) ÷ (4 × L)', { D, d, L }, slide);
  const square = !difference.greaterThan(tolerance);
  if (!square) pad.caution(cautions.outOfSquare(tolerance, difference));
  return { difference, tolerance, slide, square };
}

/** The rectangle of forms: its diagonals, and whether those measured are square by the one rule of forms. */

import { hypotenuse } from '../quantity/hypotenuse';
import { type Quantity, systemOfQuantity } from '../quantity/quantity';
import type { Pad } from '../reckoning/pad';
import { judgeSquareness } from './squareness';

type Length = Quantity<'length'>;

/** A rectangle of forms, read. */
export interface FormSquare {
  readonly length: Length;
  readonly width: Length;
  readonly measured: readonly Length[] | undefined;
  readonly tolerance: Length | undefined;
  readonly batterBoards: Length | undefined;
}

/** Figures of a rectangle of forms. */
export interface FormSquareFigures {
  readonly diagonal: Length;
  readonly boardDiagonal?: Length;
  readonly outOfSquare?: Length;
  readonly slide?: Length;
}

/** Diagonals that square forms have, and what those measured say. */
export function squareFigures(square: FormSquare, pad: Pad): FormSquareFigures {
  const { length: L, width: W, measured, tolerance, batterBoards: k } = square;
  const unit = systemOfQuantity(L) === 'metric' ? 'm' : 'ft-in';
  const across = (a: Length, b: Length): Length => hypotenuse(a, b).in(unit);
  const diagonal = pad.step('diagonal', 'D = hypot(L, W)', { L, W }, across(L, W));
  const boards = k && across(L.plus(k).plus(k), W.plus(k).plus(k));
  if (k && boards)
    pad.step('diagonal between batter boards', 'D = hypot(L + k + k, W + k + k)', { L, W, k }, boards);
  const figures = { diagonal, ...(boards ? { boardDiagonal: boards } : {}) };
  const [a, b] = measured ?? [];
  if (!a || !b) return figures;
  const judged = judgeSquareness({ length: L, trueDiagonal: diagonal, diagonals: [a, b], tolerance }, pad);
  return {
    ...figures,
    outOfSquare: judged.difference,
    ...(judged.slide ? { slide: judged.slide } : {}),
  };
}

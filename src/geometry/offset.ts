/**
 * A straight-sided ring moved by the same distance on every side, corners kept square (mitred).
 *
 * A corner where the ring turns by t goes `m` square to the side before it and `m × tan(t ÷ 2)` along it;
 * so each side changes in length by m times the sum of the two tangents at its ends. A ring moved so far
 * that a side would vanish is none any more.
 *
 * Source: geometry.
 */
import { Decimal } from '../quantity/decimal';
import type { Corner } from './polygon';

/** A side: which way it runs, and how far. */
interface Side {
  readonly x: Decimal;
  readonly y: Decimal;
  readonly length: Decimal;
}

/** Corners with their sides and the turns at them. */
export interface TurnedRing {
  readonly corners: readonly Corner[];
  /** From each corner to the next. */
  readonly sides: readonly Side[];
  /** Half the turn at each corner, as a tangent; negative where the ring turns to the right. */
  readonly turns: readonly Decimal[];
}

const at = <T>(list: readonly T[], i: number): T => list[(i + list.length) % list.length] as T;

function sidesOf(ring: readonly Corner[]): Side[] {
  return ring.map((a, i) => {
    const b = at(ring, i + 1);
    const [dx, dy] = [b.x.minus(a.x), b.y.minus(a.y)];
    const length = Decimal.hypot(dx, dy);
    return { x: dx.div(length), y: dy.div(length), length };
  });
}

/** Half the turn between two ways of length one as a tangent, sin t ÷ (1 + cos t); nothing where they fold back. */
export function halfTurn(before: Corner, after: Corner): Decimal | undefined {
  const sine = before.x.times(after.y).minus(before.y.times(after.x));
  const cosine = before.x.times(after.x).plus(before.y.times(after.y));
  const under = cosine.plus(1);
  return under.lessThan('1e-30') ? undefined : sine.div(under);
}

/** A ring with its sides and turns, or `undefined` where it folds back on itself. */
export function turnedRing(corners: readonly Corner[]): TurnedRing | undefined {
  const sides = sidesOf(corners);
  const turns: Decimal[] = [];
  for (const [i, side] of sides.entries()) {
    const turn = halfTurn(at(sides, i - 1), side);
    if (!turn) return undefined;
    turns.push(turn);
  }
  return { corners, sides, turns };
}

/**
 * The ring moved outwards, or `undefined` where a side would vanish. It may meet itself.
 *
 * @param ring - counterclockwise
 * @param m - how far, in the unit of the ring; negative moves inwards
 */
export function movedRing({ corners, sides, turns }: TurnedRing, m: Decimal): Corner[] | undefined {
  const moved: Corner[] = [];
  for (const [i, corner] of corners.entries()) {
    const [before, after, t] = [at(sides, i - 1), at(sides, i), turns[i] as Decimal];
    if (after.length.plus(m.times(t.plus(at(turns, i + 1)))).lessThanOrEqualTo(0)) return undefined;
    // Outwards is to the right of a side; along it by the half turn.
    moved.push({
      x: corner.x.plus(m.times(before.y.plus(before.x.times(t)))),
      y: corner.y.plus(m.times(before.y.times(t).minus(before.x))),
    });
  }
  return moved;
}

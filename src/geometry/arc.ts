/**
 * Arcs over a chord.
 *
 * With chord `c` and rise `h`: radius `(c² + 4h²) ÷ 8h`, angle at the center `4 × atan(2h ÷ c)`, and
 * between chord and arc the area `r² × (angle − sin angle) ÷ 2`.
 */

import { Decimal, PI } from '../quantity/decimal';
import type { Corner } from './polygon';

/** An edge of a curved outline, in meters. A rise of zero is a straight edge. */
export interface Edge {
  readonly from: Corner;
  readonly to: Corner;
  readonly chord: Decimal;
  /** Positive where the outline swells. */
  readonly rise: Decimal;
  /** Left out where it is straight. */
  readonly arc: Arc | undefined;
}

/** An arc in numbers, in meters and radians; none of them negative. */
export interface Arc {
  readonly radius: Decimal;
  readonly angle: Decimal;
  readonly length: Decimal;
  /** Between chord and arc. */
  readonly area: Decimal;
}

/** The arc of an edge that is known not to be straight. */
export const arcOf = ({ arc }: Edge): Arc => arc as Arc;

export function arcOver(chord: Decimal, rise: Decimal): Arc | undefined {
  if (rise.isZero()) return undefined;
  const h = rise.abs();
  const radius = chord.times(chord).plus(h.times(h).times(4)).div(h.times(8));
  const angle = Decimal.atan(h.times(2).div(chord)).times(4);
  return {
    radius,
    angle,
    length: radius.times(angle),
    area: radius
      .times(radius)
      .times(angle.minus(Decimal.sin(angle)))
      .div(2),
  };
}

/** An arc in its place: from a start angle through a turn, counterclockwise, in radians. */
export interface PlacedArc {
  readonly center: Corner;
  readonly radius: Decimal;
  readonly start: Decimal;
  readonly turn: Decimal;
}

/** The way along the chord of an edge, as a vector of length one. */
export const alongOf = ({ from, to, chord }: Edge): Corner => ({
  x: to.x.minus(from.x).div(chord),
  y: to.y.minus(from.y).div(chord),
});

/** An edge of a curved outline as a placed arc; `outwards` is 1 for an counterclockwise outline, else -1. */
export function placedArc(edge: Edge, outwards: 1 | -1): PlacedArc {
  const { radius, angle } = arcOf(edge);
  const side = edge.rise.isNegative() ? -outwards : outwards;
  const { x: ux, y: uy } = alongOf(edge);
  const depth = radius.minus(edge.rise.abs()).times(side);
  const center = {
    x: edge.from.x.plus(edge.to.x).div(2).minus(uy.times(depth)),
    y: edge.from.y.plus(edge.to.y).div(2).plus(ux.times(depth)),
  };
  // The middle of the arc lies on the side of the chord that the arc swells to.
  const middle = Decimal.atan2(ux.times(-side), uy.times(side));
  return { center, radius, start: middle.minus(angle.div(2)), turn: angle };
}

/** Points of an arc where a plane that rises along `(b, c)` is highest and lowest, where they lie on it. */
export function extremesAlong({ center, radius, start, turn }: PlacedArc, b: Decimal, c: Decimal): Corner[] {
  const steep = Decimal.hypot(b, c);
  if (steep.isZero()) return [];
  const full = PI.times(2);
  return [1, -1].flatMap((sign) => {
    const angle = Decimal.atan2(c.times(sign), b.times(sign));
    const past = angle.minus(start).mod(full).plus(full).mod(full);
    if (past.greaterThan(turn)) return [];
    return [
      {
        x: center.x.plus(radius.times(b).times(sign).div(steep)),
        y: center.y.plus(radius.times(c).times(sign).div(steep)),
      },
    ];
  });
}

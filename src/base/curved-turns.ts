/**
 * How far an outline of corners and curves turns, for its area spread outwards: `tan(t ÷ 2)` at each corner, t being
 * the turn from one tangent to the next, and half the angle of each arc, negative where it is hollow.
 *
 * Corners that jut out stay square along the tangents. At a corner that is hollow and next to an arc the spread sides
 * meet elsewhere, for which there is no such sum.
 *
 * Source: geometry.
 */
import { alongOf, type Edge } from '../geometry/arc';
import { halfTurn } from '../geometry/offset';
import { type Corner, doubleArea } from '../geometry/polygon';
import { cornersOf } from '../outline/corners';
import { edgesOf } from '../outline/curved';
import type { OutlineOf } from '../outline/outline';
import { Decimal, ZERO } from '../quantity/decimal';

/** What is left of a turn that is none. */
const NO_TURN = '1e-30';

const turned = ({ x, y }: Corner, by: Decimal): Corner => {
  const [cos, sin] = [Decimal.cos(by), Decimal.sin(by)];
  return { x: x.times(cos).minus(y.times(sin)), y: x.times(sin).plus(y.times(cos)) };
};

/** Half the angle of an arc, negative where it is hollow; nothing along a straight edge. */
const halfOf = ({ arc, rise }: Edge): Decimal => (arc ? arc.angle.div(rise.isNegative() ? -2 : 2) : ZERO);

/** Which way an edge sets out and comes in, of an outline that runs counterclockwise or, by -1, clockwise. */
function tangents(edge: Edge, sense: 1 | -1): { readonly out: Corner; readonly in: Corner } {
  const along = alongOf(edge);
  const half = halfOf(edge).times(sense);
  return half.isZero()
    ? { out: along, in: along }
    : { out: turned(along, half.negated()), in: turned(along, half) };
}

/** The sum of all turns, or `undefined` where there is none. */
export function curvedTurns({ points }: OutlineOf<'curved'>): Decimal | undefined {
  const corners = cornersOf(points);
  const edges = edgesOf(points, corners, 'outline.points');
  const sense = doubleArea(corners).isNegative() ? -1 : 1;
  const ways = edges.map((edge) => tangents(edge, sense));
  let sum = edges.reduce((all, edge) => all.plus(halfOf(edge)), ZERO);
  for (const [i, edge] of edges.entries()) {
    const before = (i + edges.length - 1) % edges.length;
    const turn = halfTurn((ways[before] as (typeof ways)[0]).in, (ways[i] as (typeof ways)[0]).out)?.times(
      sense,
    );
    if (!turn) return undefined;
    if (turn.abs().lessThan(NO_TURN)) continue;
    if (turn.isNegative() && (edge.arc ?? edges[before]?.arc)) return undefined;
    sum = sum.plus(turn);
  }
  return sum;
}

/**
 * What is left of a convex ring beside a convex part of it.
 *
 * The part touches the edge of the ring along some of its corners. Between two of those that follow each other
 * it runs through the inside, and what lies beyond is a piece: bounded by the edge of the ring from the one to
 * the other, and by the part on the way back.
 */
import type { Corner } from '../../geometry/polygon';
import { type Spot, spot } from './orthogonal';

/** A corner this near to a side lies on it, in metres. */
const ON = 1e-9;

/** How far along the edge of a ring a point lies, in sides and parts of them; `undefined` inside. */
function placeOn(p: Spot, ring: readonly Spot[]): number | undefined {
  for (let i = 0; i < ring.length; i += 1) {
    const [a, b] = [ring[i] as Spot, ring[(i + 1) % ring.length] as Spot];
    const [dx, dy] = [b.x - a.x, b.y - a.y];
    const long = Math.hypot(dx, dy);
    const along = ((p.x - a.x) * dx + (p.y - a.y) * dy) / long;
    const off = ((p.x - a.x) * dy - (p.y - a.y) * dx) / long;
    // The end of a side is the start of the next.
    if (Math.abs(off) <= ON && along >= -ON && along < long - ON) return i + Math.max(0, along / long);
  }
  return undefined;
}

/** How far one place on the edge of a ring of so many sides lies before another: none where they are one. */
function onwards(from: number, to: number, sides: number): number {
  const far = (to - from + sides) % sides;
  return far > sides - ON ? 0 : far;
}

/** The corners of a ring from one place on its edge to another, both left out. */
function cornersBetween(ring: readonly Corner[], from: number, to: number): Corner[] {
  const n = ring.length;
  const end = from + onwards(from, to, n);
  const between: Corner[] = [];
  for (let k = Math.floor(from) + 1; k < end - ON; k += 1) between.push(ring[k % n] as Corner);
  return between;
}

/** A corner of the part that lies on the edge of the ring. */
interface Touch {
  readonly i: number;
  readonly place: number;
}

/**
 * The pieces of a convex ring beside a convex part of it, both anticlockwise; `undefined` where the part does
 * not touch the edge in two places or more.
 */
export function piecesLess(ring: readonly Corner[], part: readonly Corner[]): Corner[][] | undefined {
  const spots = ring.map(spot);
  const touches = part.flatMap((corner, i): Touch[] => {
    const place = placeOn(spot(corner), spots);
    return place === undefined ? [] : [{ i, place }];
  });
  const [first] = touches;
  if (!first || touches.every(({ place }) => onwards(first.place, place, ring.length) <= ON))
    return undefined;
  const pieces = touches.map(({ i, place }, k) => {
    const next = touches[(k + 1) % touches.length] as Touch;
    const count = (next.i - i + part.length) % part.length;
    const way = Array.from({ length: count + 1 }, (_, j) => part[(i + j) % part.length] as Corner);
    return [...cornersBetween(ring, place, next.place), ...way.reverse()];
  });
  // Along one side the edge and the part are the same line.
  return pieces.filter((piece) => piece.length > 2);
}

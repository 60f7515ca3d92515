/**
 * The line that things on a plan are measured from: a side of the outline, from its corner A to its corner B, or the
 * center of what is round.
 *
 * The longest side along the bottom of the plan serves where it is not short for the longest; else the longest.
 */

import { type Corner, doubleArea } from '../geometry/polygon';
import { cornersOf } from '../outline/corners';
import { edgesOf } from '../outline/curved';
import type { Outline } from '../outline/outline';
import { Decimal, ZERO } from '../quantity/decimal';
import { type Quantity, quantityOf } from '../quantity/quantity';
import type { Sheet } from './sheet';

type Length = Quantity<'length'>;

/** A straight side of an outline, the slab on its left. */
export interface Side {
  readonly from: Corner;
  readonly to: Corner;
}

/** Where things are measured from. */
export interface BaseLine {
  readonly from: Corner;
  /** The far end; none where it is measured from a center. */
  readonly to: Corner | undefined;
  /** Of length 1, along the line. */
  readonly along: Corner;
}

/** How far along the base line something lies, and how far in from it. */
export interface Offsets {
  readonly along: Length;
  readonly in: Length;
}

const ORIGIN: Corner = { x: ZERO, y: ZERO };
const EAST: Corner = { x: new Decimal(1), y: ZERO };

const ringSides = (ring: readonly Corner[]): Side[] =>
  ring.map((from, i) => ({ from, to: ring[(i + 1) % ring.length] as Corner }));

/** Edges of a curved outline, counterclockwise, straight ones and chords apart. */
export function curvedEdges(outline: Extract<Outline, { shape: 'curved' }>) {
  const corners = cornersOf(outline.points);
  const turned = doubleArea(corners).isNegative();
  return edgesOf(outline.points, corners, 'outline.points').map(({ from, to, arc, rise }) => ({
    ...(turned ? { from: to, to: from } : { from, to }),
    arc,
    rise,
  }));
}

/** The straight sides of an outline: those of the ring that stands in for an arc are none. */
export function straightSides(outline: Outline, ring: readonly Corner[]): Side[] {
  switch (outline.shape) {
    case 'circle':
    case 'ring':
      return [];
    case 'sector': {
      // A full turn has a seam, which is no side.
      if (outline.angle.toNumber('deg') >= 360) return [];
      return sectorSides(ring, outline.innerRadius !== undefined);
    }
    case 'curved':
      return curvedEdges(outline).filter(({ arc }) => !arc);
    default:
      return ringSides(ring);
  }
}

/** The ring of a sector starts at the outer end of its first side and ends at the other end of it. */
function sectorSides(ring: readonly Corner[], inner: boolean): Side[] {
  const last = ring.length - 1;
  // As many points on the inner arc as on the outer one.
  const outerEnd = inner ? ring.length / 2 - 1 : last - 1;
  return [
    { from: ring[last] as Corner, to: ring[0] as Corner },
    { from: ring[outerEnd] as Corner, to: ring[outerEnd + 1] as Corner },
  ];
}

const longOf = ({ from, to }: Side): number => Math.hypot(...spanOf({ from, to }));

const spanOf = ({ from, to }: Side): [number, number] => [
  to.x.minus(from.x).toNumber(),
  to.y.minus(from.y).toNumber(),
];

/** A side along the bottom is taken where it is at least this share of the longest. */
const BOTTOM_SHARE = 0.4;

function chosenSide(sides: readonly Side[]): Side | undefined {
  const longest = Math.max(0, ...sides.map(longOf));
  const least = (share: number) => (side: Side) => longOf(side) >= longest * share * (1 - 1e-9);
  const atBottom = sides.filter((side) => {
    const [dx, dy] = spanOf(side);
    return dy === 0 && dx > 0;
  });
  const low = atBottom.filter(least(BOTTOM_SHARE)).sort((a, b) => longOf(b) - longOf(a));
  return low[0] ?? sides.find(least(1));
}

/** The line to measure from, for an outline with its ring. */
export function baseLineOf(outline: Outline, ring: readonly Corner[]): BaseLine {
  const { shape } = outline;
  if (shape === 'circle' || shape === 'ring' || shape === 'sector') {
    return { from: ORIGIN, to: undefined, along: EAST };
  }
  const side = chosenSide(straightSides(outline, ring)) ?? (ringSides(ring)[0] as Side);
  const { from, to } = side;
  const [dx, dy] = [to.x.minus(from.x), to.y.minus(from.y)];
  const long = Decimal.hypot(dx, dy);
  return { from, to, along: { x: dx.div(long), y: dy.div(long) } };
}

/** Nothing but what rounding left over. */
const neat = (n: Decimal): Decimal => (n.abs().lessThan('1e-9') ? ZERO : n);

/** Where a point lies by the base line, in meters. */
export function offsetsIn({ from, along }: BaseLine, { x, y }: Corner): { along: Decimal; in: Decimal } {
  const [dx, dy] = [x.minus(from.x), y.minus(from.y)];
  return {
    along: neat(along.x.times(dx).plus(along.y.times(dy))),
    in: neat(along.x.times(dy).minus(along.y.times(dx))),
  };
}

const FROM_SIDE = 'in brackets: from A along the line to B, then square in from that line';
const FROM_CENTER = 'in brackets: to the right of the center C, then up; minus is left or down';

/** A point as the crew finds it: along the base line, then in from it. A note says what stands in brackets. */
export function offsetText(sheet: Sheet, base: BaseLine, point: Corner): string {
  const offsets = offsetsIn(base, point);
  if (!base.to && offsets.along.isZero() && offsets.in.isZero()) return sheet.text('the center C');
  const told = (n: Decimal): string => sheet.length(quantityOf('length', n, sheet.system));
  sheet.note(sheet.text(base.to ? FROM_SIDE : FROM_CENTER));
  // A semicolon between them: in some languages a comma is the point of a decimal.
  return `(${told(offsets.along)}; ${told(offsets.in)})`;
}

/** Mark the ends of the base line. */
export function showBaseLine(
  sheet: Sheet,
  base: BaseLine,
  spot: (corner: Corner) => { x: number; y: number },
): void {
  const [ux, uy] = [base.along.x.toNumber(), base.along.y.toNumber()];
  /** Into the slab: away from the dimensions beside it. */
  const mark = (name: string, corner: Corner, forward: number): void => {
    const at = sheet.frame.at(spot(corner));
    const inwards = (Math.atan2(-(forward * uy + ux), forward * ux - uy) * 180) / Math.PI;
    sheet.dot(at, 2.6, { class: 'base' });
    sheet.label(name, at, { prefer: [inwards], class: 'base' });
  };
  if (!base.to) {
    mark('C', base.from, 1);
    return;
  }
  mark('A', base.from, 1);
  mark('B', base.to, -1);
}

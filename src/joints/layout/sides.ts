/**
 * The edge of a slab as it is formed: straight sides and true arcs, one after the other.
 *
 * Places on an edge are found in binary numbers, each as a side and a part of its length; the point that
 * such a place stands for is then reckoned in exact decimals from the ends of the side.
 */

import { placedArc } from '../../geometry/arc';
import { type Corner, doubleArea } from '../../geometry/polygon';
import { cornersOf } from '../../outline/corners';
import { edgesOf } from '../../outline/curved';
import type { Outline, OutlineOf } from '../../outline/outline';
import { Decimal, PI, ZERO } from '../../quantity/decimal';
import { canonicalValue } from '../../quantity/quantity';
import { type Spot, spot } from './orthogonal';
import { directionAt } from './unit-circle';

/** The arc that a side runs along: positive turns run counterclockwise. */
interface Bow {
  readonly center: Corner;
  readonly radius: Decimal;
  readonly start: Decimal;
  readonly turn: Decimal;
}

/** A side of an edge, from one corner to the next. */
export interface Side {
  readonly from: Corner;
  readonly to: Corner;
  readonly bow: Bow | undefined;
}

const around = ({ center, radius, start, turn }: Bow, part: Decimal): Corner => {
  const way = directionAt(start.plus(turn.times(part)));
  return { x: center.x.plus(radius.times(way.x)), y: center.y.plus(radius.times(way.y)) };
};

/** The sides of a ring of straight ones. */
export const straightSides = (ring: readonly Corner[]): Side[] =>
  ring.map((from, i) => ({ from, to: ring[(i + 1) % ring.length] as Corner, bow: undefined }));

/** A whole circle in two halves, counterclockwise. */
export function circleSides(center: Corner, radius: Decimal): Side[] {
  const east = { x: center.x.plus(radius), y: center.y };
  const west = { x: center.x.minus(radius), y: center.y };
  return [
    { from: east, to: west, bow: { center, radius, start: ZERO, turn: PI } },
    { from: west, to: east, bow: { center, radius, start: PI, turn: PI } },
  ];
}

function curvedSides({ points }: OutlineOf<'curved'>): Side[] {
  const corners = cornersOf(points);
  const outwards = doubleArea(corners).isNegative() ? -1 : 1;
  return edgesOf(points, corners, 'outline.points').map((edge): Side => {
    const { from, to } = edge;
    if (edge.rise.isZero()) return { from, to, bow: undefined };
    const { center, radius, start, turn } = placedArc(edge, outwards);
    // A swelling arc of an counterclockwise outline runs counterclockwise, a hollow one the other way.
    const forward = edge.rise.isPositive() === (outwards === 1);
    const bow = forward
      ? { center, radius, start, turn }
      : { center, radius, start: start.plus(turn), turn: turn.neg() };
    return { from, to, bow };
  });
}

function sectorSides({ radius, innerRadius, angle }: OutlineOf<'sector'>): Side[] {
  const turn = canonicalValue(angle).times(PI).div(180);
  const center = { x: ZERO, y: ZERO };
  const [r, q] = [canonicalValue(radius), innerRadius ? canonicalValue(innerRadius) : ZERO];
  const outer: Bow = { center, radius: r, start: ZERO, turn };
  const inner: Bow = { center, radius: q, start: turn, turn: turn.neg() };
  const [a, b, c, d] = [
    around(outer, ZERO),
    around(outer, new Decimal(1)),
    around(inner, ZERO),
    around(inner, new Decimal(1)),
  ];
  const first: Side = { from: a, to: b, bow: outer };
  if (q.isZero())
    return [first, { from: b, to: center, bow: undefined }, { from: center, to: a, bow: undefined }];
  return [
    first,
    { from: b, to: c, bow: undefined },
    { from: c, to: d, bow: inner },
    { from: d, to: a, bow: undefined },
  ];
}

/** A side walked the other way. */
export const reversed = ({ from, to, bow }: Side): Side => ({
  from: to,
  to: from,
  bow: bow && { ...bow, start: bow.start.plus(bow.turn), turn: bow.turn.neg() },
});

/** The sides of an outline in the plane of the input, with its arcs; `ring` is its corners. */
export function sidesOf(outline: Outline, ring: readonly Corner[]): Side[] {
  switch (outline.shape) {
    case 'circle':
      return circleSides({ x: ZERO, y: ZERO }, canonicalValue(outline.diameter).div(2));
    case 'ring':
      return circleSides({ x: ZERO, y: ZERO }, canonicalValue(outline.outerDiameter).div(2));
    case 'sector':
      return canonicalValue(outline.angle).equals(360)
        ? circleSides({ x: ZERO, y: ZERO }, canonicalValue(outline.radius))
        : sectorSides(outline);
    case 'curved': {
      const sides = curvedSides(outline);
      const backwards = doubleArea(cornersOf(outline.points)).isNegative();
      return backwards ? sides.reverse().map(reversed) : sides;
    }
    default:
      return straightSides(ring);
  }
}

/** Sides moved as their corners are; `mirrored` when that turns them over. */
export const movedSides = (
  sides: readonly Side[],
  move: (c: Corner) => Corner,
  turnedBy: (angle: Decimal) => Decimal,
  mirrored: boolean,
): Side[] => {
  const moved = sides.map(
    ({ from, to, bow }): Side => ({
      from: move(from),
      to: move(to),
      bow: bow && {
        center: move(bow.center),
        radius: bow.radius,
        start: turnedBy(bow.start),
        turn: mirrored ? bow.turn.neg() : bow.turn,
      },
    }),
  );
  return mirrored ? moved.reverse().map(reversed) : moved;
};

/** A side in binary numbers. */
export interface Piece {
  readonly side: Side;
  readonly a: Spot;
  readonly b: Spot;
  readonly length: number;
  readonly bow:
    | { readonly c: Spot; readonly r: number; readonly start: number; readonly turn: number }
    | undefined;
}

export function pieceOf(side: Side): Piece {
  const [a, b] = [spot(side.from), spot(side.to)];
  if (!side.bow) return { side, a, b, length: Math.hypot(b.x - a.x, b.y - a.y), bow: undefined };
  const { center, radius, start, turn } = side.bow;
  const bow = { c: spot(center), r: radius.toNumber(), start: start.toNumber(), turn: turn.toNumber() };
  return { side, a, b, length: bow.r * Math.abs(bow.turn), bow };
}

/** The point a part of the way along. */
export function pointOn({ a, b, bow }: Piece, part: number): Spot {
  if (!bow) return { x: a.x + (b.x - a.x) * part, y: a.y + (b.y - a.y) * part };
  const angle = bow.start + bow.turn * part;
  return { x: bow.c.x + bow.r * Math.cos(angle), y: bow.c.y + bow.r * Math.sin(angle) };
}

/** The way that the side runs there, of length 1. */
export function wayOn({ a, b, bow, length }: Piece, part: number): Spot {
  if (!bow) return { x: (b.x - a.x) / length, y: (b.y - a.y) / length };
  const angle = bow.start + bow.turn * part;
  const sign = Math.sign(bow.turn);
  return { x: -Math.sin(angle) * sign, y: Math.cos(angle) * sign };
}

/** Parts this close to an end are the end. */
const AT_END = 1e-12;

/** The point a part of the way along, in exact decimals. */
export function exactOn({ side }: Piece, part: number): Corner {
  if (part < AT_END) return side.from;
  if (part > 1 - AT_END) return side.to;
  const p = new Decimal(part);
  if (side.bow) return around(side.bow, p);
  const at = (from: Decimal, to: Decimal): Decimal => from.plus(to.minus(from).times(p));
  return { x: at(side.from.x, side.to.x), y: at(side.from.y, side.to.y) };
}

const clamp = (part: number): number => Math.min(1, Math.max(0, part));

/** How far along an arc a direction from its center lies, as a part; beyond 1 when it is not on it. */
function partOfAngle(bow: NonNullable<Piece['bow']>, angle: number): number {
  const full = 2 * Math.PI;
  const past = ((((angle - bow.start) * Math.sign(bow.turn)) % full) + full) % full;
  // Just before the start counts as the start.
  return (past > full - 1e-9 ? 0 : past) / Math.abs(bow.turn);
}

/** The place on a side that is nearest to a point, as a part of its length. */
export function nearestOn({ a, b, bow, length }: Piece, p: Spot): number {
  if (!bow) return clamp(((p.x - a.x) * (b.x - a.x) + (p.y - a.y) * (b.y - a.y)) / length ** 2);
  const part = partOfAngle(bow, Math.atan2(p.y - bow.c.y, p.x - bow.c.x));
  if (part <= 1) return part;
  const end = (q: Spot): number => Math.hypot(q.x - p.x, q.y - p.y);
  return end(a) < end(b) ? 0 : 1;
}

/** Where a ray meets a side: how far along the ray, and as a part of the side. */
export interface Hit {
  readonly far: number;
  readonly part: number;
}

const ON = 1e-9;

function hitsOnLine({ a, b, length }: Piece, p: Spot, d: Spot): Hit[] {
  const [ex, ey] = [(b.x - a.x) / length, (b.y - a.y) / length];
  const cross = d.x * ey - d.y * ex;
  if (Math.abs(cross) < ON) return [];
  const [dx, dy] = [a.x - p.x, a.y - p.y];
  const far = (dx * ey - dy * ex) / cross;
  const part = (dx * d.y - dy * d.x) / cross / length;
  return part < -ON || part > 1 + ON ? [] : [{ far, part: clamp(part) }];
}

function hitsOnBow(bow: NonNullable<Piece['bow']>, p: Spot, d: Spot): Hit[] {
  const [fx, fy] = [p.x - bow.c.x, p.y - bow.c.y];
  const half = fx * d.x + fy * d.y;
  const square = half * half - (fx * fx + fy * fy - bow.r * bow.r);
  if (square < 0) return [];
  return [-half - Math.sqrt(square), -half + Math.sqrt(square)].flatMap((far) => {
    const part = partOfAngle(bow, Math.atan2(fy + far * d.y, fx + far * d.x));
    return part > 1 + ON ? [] : [{ far, part: clamp(part) }];
  });
}

/** Where a ray from p along d, of length 1, meets a side. */
export const hitsOn = (piece: Piece, p: Spot, d: Spot): Hit[] =>
  piece.bow ? hitsOnBow(piece.bow, p, d) : hitsOnLine(piece, p, d);

/** The turn from the end of one side to the start of the next, in degrees, to the left if positive. */
export function turnBetween(before: Piece, after: Piece): number {
  const [u, v] = [wayOn(before, 1), wayOn(after, 0)];
  return (Math.atan2(u.x * v.y - u.y * v.x, u.x * v.x + u.y * v.y) * 180) / Math.PI;
}

/** Kinks of this many degrees and less are no corners: tape noise, or an arc in short chords. */
export const KINK = 15;

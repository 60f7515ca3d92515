/**
 * An outline spread outwards all around, its corners kept square (mitred).
 *
 * Spread by m, an outline of area A and perimeter P has `A + P × m + K × m²`, where K is the sum of
 * tan(t ÷ 2) over its corners, t being the turn at a corner and negative where the outline turns
 * inwards; an arc counts with half the angle that it turns, of an outline with curves too. K is 4 for a rectangle, an L
 * and a U, π for a circle and nothing for a ring, which widens on both sides. Exact as long as no two sides
 * meet on the way, which is checked.
 *
 * Source: geometry.
 */

import { movedRing, type TurnedRing, turnedRing } from '../geometry/offset';
import { checkSimple } from '../geometry/polygon';
import { measure } from '../outline/measure';
import { netArea } from '../outline/net-area';
import type { Outline, OutlineOf } from '../outline/outline';
import { ringOf } from '../outline/ring';
import { Decimal, PI, ZERO } from '../quantity/decimal';
import { InputError } from '../quantity/input-error';
import { pure } from '../quantity/numbers';
import { canonicalValue, type Quantity } from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import { type Limit, withinLimit } from '../reckoning/limits';
import type { Pad } from '../reckoning/pad';
import { curvedTurns } from './curved-turns';
import * as faults from './faults';

type Length = Quantity<'length'>;
type Area = Quantity<'area'>;

/** An outline that can be spread. */
export interface Spreadable {
  readonly area: Area;
  readonly perimeter: Length;
  /** K; left out for a circle, where it is π. */
  readonly corners: Quantity<'ratio'> | undefined;
  /** The ring, to see whether sides meet; left out for a circle. */
  readonly ring: TurnedRing | undefined;
  /** Across the hole of a ring, which closes from both sides. */
  readonly hole?: Length;
  /** Of openings in it, which stay as they are. */
  readonly open?: readonly Area[];
}

/** K is 4, exactly, for shapes whose corners are all right angles. */
const SQUARE = new Set<string>(['rectangle', 'L', 'U']);

/** An arc turns by its angle, half of which counts; at its ends and its center there are corners. */
function cornersOfSector({ angle, innerRadius }: OutlineOf<'sector'>): Decimal {
  if (innerRadius) return new Decimal(4);
  const half = canonicalValue(angle).times(PI).div(360);
  return Decimal.tan(PI.div(2).minus(half)).plus(2).plus(half);
}

function cornersOf(outline: Outline, { turns }: TurnedRing): Quantity<'ratio'> | undefined {
  if (outline.shape === 'curved') {
    const sum = curvedTurns(outline);
    return sum && pure(sum);
  }
  if (SQUARE.has(outline.shape)) return pure(new Decimal(4));
  if (outline.shape === 'sector') return pure(cornersOfSector(outline));
  return pure(turns.reduce((sum, turn) => sum.plus(turn), ZERO));
}

/** More corners than any pit has; spreading costs more than measuring. */
export const SPREAD_CORNERS: Limit = { of: 'an outline to be spread, in corners,', most: 2000 };

function ringWithTurns(outline: Outline): TurnedRing {
  const corners = ringOf(outline);
  withinLimit(SPREAD_CORNERS, corners.length, 'outline');
  return turnedRing(corners) ?? refuse('outline', faults.grownTogether('any width'));
}

/**
 * Measure an outline for spreading.
 *
 * @param why - what asks for it, for the error
 * @throws {InputError} `perimeter-unknown`, `too-many` corners, and as the outline does
 */
export function spreadable(outline: Outline, why: string, pad: Pad): Spreadable {
  const { area, perimeter } = measure(outline, pad);
  if (!perimeter || UNFIT.has(outline.shape)) return refuse('outline', faults.perimeterUnknown(why));
  if (outline.shape === 'circle') return { area, perimeter, corners: undefined, ring: undefined };
  if (outline.shape === 'ring') {
    // Outwards outside, inwards inside: the two halves of K cancel out.
    return { area, perimeter, corners: pure(ZERO), ring: undefined, hole: outline.innerDiameter };
  }
  const ring = ringWithTurns(outline);
  const corners = cornersOf(outline, ring) ?? refuse('outline', faults.perimeterUnknown(why));
  return { area, perimeter, corners, ring };
}

/** Outlines whose edge has no closed form here when it is spread. */
const UNFIT = new Set<string>(['offsets', 'combined']);

/** Each side must keep some of its length, and the spread ring must not meet itself. */
function refuseMeeting(ring: TurnedRing, by: Length, path: string): void {
  const spread = movedRing(ring, canonicalValue(by)) ?? refuse(path, faults.grownTogether(by.format()));
  try {
    checkSimple(spread, path);
  } catch (error) {
    if (error instanceof InputError) refuse(path, faults.grownTogether(by.format()));
    throw error;
  }
}

/**
 * The area of an outline spread by `m` all around, less the openings in it.
 *
 * @param path - where the spread stands in the input, for errors
 * @throws {InputError} `grown-together`
 */
export const spreadArea = (
  { open = [], ...outer }: Spreadable,
  m: Length,
  told: readonly [what: string, symbol: string, path: string],
  pad: Pad,
): Area => netArea(outerArea(outer, m, told, pad), open, pad);

function outerArea(
  { area: A, perimeter: P, corners: K, ring, hole }: Spreadable,
  m: Length,
  [what, symbol, path]: readonly [what: string, symbol: string, path: string],
  pad: Pad,
): Area {
  if (m.sign() === 0) return A;
  if (ring) refuseMeeting(ring, m, path);
  if (hole && !m.plus(m).lessThan(hole)) refuse(path, faults.grownTogether(m.format()));
  if (K) {
    const wide = A.plus(P.times(m)).plus(m.times(m).times(K));
    return pad.step(what, `${symbol} = A + P × m + K × m²`, { A, P, m, K }, wide);
  }
  // A circle of perimeter π D: π m² is P² m² ÷ (4 A).
  const round = m
    .times(m)
    .times(P.times(P).over(A))
    .over(pure(new Decimal(4)));
  return pad.step(what, `${symbol} = A + P × m + π × m²`, { A, P, m }, A.plus(P.times(m)).plus(round));
}

/**
 * Concrete below the underside of a slab: thickened edges all around, and beams or ribs.
 *
 * An edge that goes `e` below the slab, `b` wide at its bottom, with a haunch that slopes up over `h`:
 * at every level it is a band along the inside of the outline, of width from `b` to `b + h`. The area of
 * such a band is quadratic in its width, so the prismoidal formula is exact, corners included:
 * `e × (B(b) + 4 B(b + h/2) + B(b + h)) ÷ 6`.
 */

import { bandOf, insetRing } from '../geometry/inset';
import { type Corner, insideRing, ringsMeet } from '../geometry/polygon';
import type { Outline } from '../outline/outline';
import { ringOf } from '../outline/ring';
import { Decimal, PI } from '../quantity/decimal';
import { pure } from '../quantity/numbers';
import {
  canonicalValue,
  type Quantity,
  type QuantityInput,
  quantityOf,
  systemOfQuantity,
} from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import { type Field, fields, list, maybe, quantity, whole, wholeNumber } from '../reckoning/fields';
import { type Limit, withinLimit } from '../reckoning/limits';
import type { Pad } from '../reckoning/pad';
import * as faults from './faults';
import { BEAM_LENGTH, EDGE_DEPTH, EDGE_WIDTH, HAUNCH } from './ordinary';

/** An edge thickened below the slab, all around the outline. */
export interface EdgeInput {
  /** How far it goes below the underside of the slab. */
  readonly below: QuantityInput<'length'>;
  /** Width at its bottom. */
  readonly width: QuantityInput<'length'>;
  /** Over how far its inner face slopes up to the slab; none by default. */
  readonly haunch?: QuantityInput<'length'>;
}

/** A beam or rib below the slab, with the same slope on both faces. */
export interface BeamInput {
  /** How long. */
  readonly length: QuantityInput<'length'>;
  /** How far it goes below the underside of the slab. */
  readonly below: QuantityInput<'length'>;
  /** Width at its bottom. */
  readonly width: QuantityInput<'length'>;
  /** Over how far each face slopes up to the slab; none by default. */
  readonly haunch?: QuantityInput<'length'>;
  /** How many of them, a plain whole number; one by default. */
  readonly count?: number;
}

type Length = Quantity<'length'>;

/** An edge, read. */
export interface ThickEdge {
  readonly below: Length;
  readonly width: Length;
  readonly haunch: Length | undefined;
}

/** A beam, read. */
export interface Beam extends ThickEdge {
  readonly length: Length;
  readonly count: Quantity<'count'> | undefined;
}

const profile = () => ({
  below: quantity('length', 'below', 'positive', EDGE_DEPTH),
  width: quantity('length', 'width', 'positive', EDGE_WIDTH),
  haunch: maybe(quantity('length', 'haunch', 'positive', HAUNCH)),
});

/** The schema of an edge. */
export const edge = (): Field<ThickEdge> => fields(profile());

const BEAM_LIMIT = 1000;

/** The schema of the beams. */
export const beams = (): Field<Beam[]> =>
  list(
    fields({
      length: quantity('length', 'length', 'positive', BEAM_LENGTH),
      ...profile(),
      count: maybe(whole('count', 1, 10_000)),
    }),
    1,
    BEAM_LIMIT,
  );

/** Round outlines but the circle have no band of one width that is reckoned here. */
function checkEdgeServed({ shape }: Outline): void {
  if (shape === 'ring' || shape === 'sector' || shape === 'curved') {
    refuse('edge', faults.notServed(shape, 'a thickened edge'));
  }
}

/** An edge follows every corner: the band inside is reckoned for each of them. */
export const EDGE_CORNERS: Limit = { of: 'the corners of an outline with a thickened edge', most: 4000 };

function edgeRing(outline: Outline): readonly Corner[] {
  const ring = ringOf(outline);
  withinLimit(EDGE_CORNERS, ring.length, 'edge');
  return ring;
}

/** Perimeter and corner number of the band inside an outline. */
function bandNumbers(outline: Outline, widest: Decimal): { perimeter: Decimal; corners: Decimal } {
  if (outline.shape === 'circle') {
    const d = canonicalValue(outline.diameter);
    if (widest.times(2).greaterThan(d)) refuse('edge', faults.bandTooWide());
    return { perimeter: d.times(PI), corners: PI };
  }
  checkEdgeServed(outline);
  return bandOf(edgeRing(outline), widest) ?? refuse('edge', faults.bandTooWide());
}

/**
 * Refuse openings that reach into the edge.
 *
 * @throws {InputError} `does-not-fit`
 */
export function checkClearOfEdge(
  outline: Outline,
  { width, haunch }: ThickEdge,
  openings: readonly (readonly Corner[])[],
): void {
  checkEdgeServed(outline);
  const w = canonicalValue(haunch ? width.plus(haunch) : width);
  const inner = outline.shape === 'circle' ? undefined : insetRing(edgeRing(outline), w);
  openings.forEach((ring, i) => {
    const clear = inner
      ? insideRing(ring[0] as Corner, inner) && !ringsMeet(ring, inner)
      : ring.every(
          ({ x, y }) =>
            outline.shape === 'circle' &&
            Decimal.hypot(x, y).plus(w).times(2).lessThanOrEqualTo(canonicalValue(outline.diameter)),
        );
    if (!clear) refuse(`openings[${i}]`, faults.openingInEdge(i));
  });
}

/** Volume of an edge all around. */
export function edgeVolume(
  outline: Outline,
  { below, width, haunch }: ThickEdge,
  pad: Pad,
): Quantity<'volume'> {
  const h = haunch ?? width.minus(width);
  const widest = width.plus(h);
  const { perimeter, corners } = bandNumbers(outline, canonicalValue(widest));
  const system = systemOfQuantity(below);
  const P = quantityOf('length', perimeter, system);
  const k = pure(corners);
  const half = width.plus(h.over(wholeNumber(2)));
  const bands = [width, half, widest].map((w, i) => {
    const band = P.times(w).minus(w.times(w).times(k));
    return pad.step(
      `band ${['at the bottom', 'half way up', 'at the top'][i]} of the edge`,
      `B${i + 1} = P × w − k × w²`,
      { P, w, k },
      band,
    );
  }) as [Quantity<'area'>, Quantity<'area'>, Quantity<'area'>];
  const [B1, B2, B3] = bands;
  const sum = B1.plus(B2.times(wholeNumber(4))).plus(B3);
  const volume = below.times(sum).over(wholeNumber(6));
  return pad.step('thickened edge', 'E = d × (B1 + 4 × B2 + B3) ÷ 6', { d: below, B1, B2, B3 }, volume);
}

/** Volume of the beams. */
export function beamVolume(list: readonly Beam[], pad: Pad): Quantity<'volume'> {
  const parts = list.map(({ length, below, width, haunch, count }) => {
    const n = count ?? wholeNumber(1);
    const h = haunch ?? width.minus(width);
    const volume = length.times(below.times(width.plus(h))).times(n);
    return pad.step('beams', 'G = n × l × d × (w + h)', { n, l: length, d: below, w: width, h }, volume);
  });
  return parts.reduce((sum, part) => sum.plus(part));
}

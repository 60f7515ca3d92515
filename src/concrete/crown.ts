/**
 * A crown: the same thickness along two edges, another halfway between them, and either a parabola or two
 * straight falls from there to the edges.
 *
 * With `u` for the share of the crown at a place, none at the edges and all in the middle, the thickness is
 * `e + (c − e) × u`. Over a strip of one width the mean of `u` is 2/3 for a parabola and 1/2 for straight
 * falls; around a ring too, where the crown follows the middle radius (the rule of Pappus and Guldin). Over
 * other outlines it comes from the moments about the middle line: `1 − ∫|q| ÷ (h × A)` for straight falls,
 * `1 − ∫q² ÷ (h² × A)` for a parabola, q being the distance from the middle line and h that of the edges.
 *
 * Source: geometry.
 */

import { type Corner, doubleArea } from '../geometry/polygon';
import type { Outline } from '../outline/outline';
import type { Opening } from '../outline/region';
import { ringOf } from '../outline/ring';
import { Decimal, PI, ZERO } from '../quantity/decimal';
import { constant } from '../quantity/make';
import { pure } from '../quantity/numbers';
import { canonicalValue, type Quantity, type QuantityInput } from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import { choice, type Field, fields, maybe, quantity, wholeNumber, word } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { COMMON_PRACTICE } from '../reckoning/source';
import { crownNotServed } from './faults';
import { TAPERED_THICKNESS } from './ordinary';
import { TWO } from './solids';

/** How a crown falls from its middle to the edges. */
export type CrownForm = 'parabolic' | 'straight';

/** Thickness with a crown: the same along two edges, another halfway between them. */
export interface ThicknessCrownInput {
  /** Always `crown`. */
  readonly kind: 'crown';
  /** Thickness along both edges. */
  readonly edges: QuantityInput<'length'>;
  /** Thickness halfway between them; more than at the edges sheds water to them, less to the middle. */
  readonly center: QuantityInput<'length'>;
  /** `parabolic`, or `straight` falls from the middle to the edges. */
  readonly form: CrownForm;
  /**
   * The axis of the plan from edge to edge: `y`, across the width of a rectangle, by default. Of no matter
   * where the crown follows a ring or a sector, or where only the area is known.
   */
  readonly across?: 'x' | 'y';
}

type Length = Quantity<'length'>;

const THREE = constant(() => wholeNumber(3));

/** A crown, read. */
export interface Crown {
  readonly kind: 'crown';
  readonly edges: Length;
  readonly center: Length;
  readonly form: CrownForm;
  readonly across: 'x' | 'y' | undefined;
}

/** The schema of a crown. */
export const crown = (): Field<Crown> =>
  fields({
    kind: word('crown'),
    edges: quantity('length', 'edges', 'positive', TAPERED_THICKNESS),
    center: quantity('length', 'center', 'positive', TAPERED_THICKNESS),
    form: choice<CrownForm>('form', ['parabolic', 'straight']),
    across: maybe(choice<'x' | 'y'>('across', ['x', 'y'])),
  });

/** An opening as a part of the plan. */
export interface CrownOpening {
  readonly opening: Opening;
  readonly ring: readonly Corner[];
}

/** The strip that the crown lies over: its middle, and half of its width. */
interface Strip {
  readonly form: CrownForm;
  readonly middle: Decimal;
  readonly half: Decimal;
}

/** Corners by their distance from the middle line and their place along it. */
interface Offset {
  readonly q: Decimal;
  readonly s: Decimal;
}

const cross = (a: Offset, b: Offset): Decimal => a.s.times(b.q).minus(b.s.times(a.q));

/** Twice the area under a ring, and a moment of it, summed side by side. */
function summed(ring: readonly Offset[], term: (a: Offset, b: Offset) => Decimal): Decimal {
  return ring.reduce((sum, a, i) => {
    const b = ring[(i + 1) % ring.length] as Offset;
    return sum.plus(cross(a, b).times(term(a, b)));
  }, ZERO);
}

/** ∫q over a ring. */
const first = (ring: readonly Offset[]): Decimal => summed(ring, (a, b) => a.q.plus(b.q)).div(6);

/** ∫q² over a ring. */
const second = (ring: readonly Offset[]): Decimal =>
  summed(ring, (a, b) => a.q.times(a.q).plus(a.q.times(b.q)).plus(b.q.times(b.q))).div(12);

/** What of a ring lies beyond the middle line; pieces joined along it enclose nothing between them. */
function beyond(ring: readonly Offset[]): Offset[] {
  return ring.flatMap((a, i) => {
    const b = ring[(i + 1) % ring.length] as Offset;
    const kept = a.q.isNegative() ? [] : [a];
    if (a.q.isNegative() === b.q.isNegative()) return kept;
    const t = a.q.div(a.q.minus(b.q));
    return [...kept, { q: ZERO, s: a.s.plus(b.s.minus(a.s).times(t)) }];
  });
}

/** Area and area times crown share of a straight-sided part. */
function overRing(corners: readonly Corner[], across: 'x' | 'y', { form, middle, half }: Strip): Part {
  const along = across === 'x' ? 'y' : 'x';
  const turned = corners.map((c) => ({ q: c[across].minus(middle), s: c[along] }));
  // Looked at across x the plan is mirrored.
  const ring = across === 'x' ? turned.reverse() : turned;
  const area = doubleArea(corners).div(2);
  const less =
    form === 'parabolic'
      ? second(ring).div(half.times(half))
      : first(beyond(ring)).times(2).minus(first(ring)).div(half);
  return { area, crowned: area.minus(less) };
}

/** Area and area times crown share of a round part: its mean square, and its mean distance, in closed form. */
function overDisc(radius: Decimal, at: Decimal, { form, middle, half }: Strip): Part {
  const area = radius.times(radius).times(PI);
  const d = at.minus(middle).abs();
  const crowned = (mean: Decimal, over: Decimal): Part => ({
    area,
    crowned: area.minus(area.times(mean).div(over)),
  });
  if (form === 'parabolic') return crowned(d.times(d).plus(radius.times(radius).div(4)), half.times(half));
  return crowned(d.greaterThanOrEqualTo(radius) ? d : meanDistance(radius, d), half);
}

/** Mean distance of the points of a disc from a line that cuts it, `d` from its center. */
function meanDistance(r: Decimal, d: Decimal): Decimal {
  const [rr, dd] = [r.times(r), d.times(d)];
  const arc = d.times(Decimal.asin(d.div(r)));
  const rest = rr.minus(dd).sqrt().times(rr.times(2).plus(dd)).div(rr.times(3));
  return arc.plus(rest).times(2).div(PI);
}

interface Part {
  readonly area: Decimal;
  readonly crowned: Decimal;
}

/** Outlines whose crown lies over one width all along. */
const isStrip = (outline: Outline): boolean =>
  outline.shape === 'area' ||
  outline.shape === 'ring' ||
  (outline.shape === 'sector' && outline.innerRadius !== undefined);

/** Outlines that have no corners, or not all of them. */
const ROUND = new Set<string>(['circle', 'ring', 'sector', 'curved', 'offsets', 'area', 'combined']);

/** Mean share of the crown over an outline with corners, less its openings. */
function shareOver(
  outline: Outline,
  openings: readonly CrownOpening[],
  t: Crown,
  across: 'x' | 'y',
): Decimal {
  const ring = ringOf(outline);
  const places = ring.map((c) => c[across]);
  const [least, most] = [Decimal.min(...places), Decimal.max(...places)];
  const strip = { form: t.form, middle: least.plus(most).div(2), half: most.minus(least).div(2) };
  const cut = openings.map(({ opening, ring: corners }) =>
    opening.shape === 'circle'
      ? overDisc(canonicalValue(opening.diameter).div(2), canonicalValue(opening.at[across]), strip)
      : overRing(corners, across, strip),
  );
  const net = cut.reduce(
    (rest, part) => ({ area: rest.area.minus(part.area), crowned: rest.crowned.minus(part.crowned) }),
    overRing(ring, across, strip),
  );
  return net.crowned.div(net.area);
}

/** Mean thickness under a crown, with its steps. */
export function crownedMean(outline: Outline, openings: readonly CrownOpening[], t: Crown, pad: Pad): Length {
  const { edges: e, center: c } = t;
  const placed = !ROUND.has(outline.shape);
  if (!placed && (!isStrip(outline) || openings.length > 0)) refuse('thickness', crownNotServed());
  if (!placed || (outline.shape === 'rectangle' && openings.length === 0)) {
    return t.form === 'straight'
      ? pad.step('mean thickness, two straight falls', 't = (e + c) ÷ 2', { e, c }, e.plus(c).over(TWO()))
      : pad.step(
          'mean thickness, a parabola',
          't = (e + 2 × c) ÷ 3',
          { e, c },
          e.plus(c.times(TWO())).over(THREE()),
        );
  }
  if (!t.across) {
    pad.assume({
      name: 'thickness.across',
      value: 'y',
      because: 'the crown falls to the two edges that lie farthest apart along y',
      override: 'Give across as "x"',
      source: COMMON_PRACTICE,
    });
  }
  const u = pure(shareOver(outline, openings, t, t.across ?? 'y'));
  return pad.step(
    'mean thickness, u being the mean share of the crown over the plan',
    't = e + (c − e) × u',
    { e, c, u },
    e.plus(c.minus(e).times(u)),
  );
}

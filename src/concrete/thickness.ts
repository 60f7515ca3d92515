/**
 * Thickness that varies in a plane: over any outline the volume is exactly the area times the thickness
 * at the centroid. A crown has a file of its own.
 */

import type { Corner } from '../geometry/polygon';
import { centroidOf } from '../outline/centroid';
import { extremePoints } from '../outline/extent';
import type { Outline } from '../outline/outline';
import { Decimal } from '../quantity/decimal';
import {
  canonicalValue,
  type Quantity,
  type QuantityInput,
  quantityOf,
  systemOfQuantity,
} from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import { choice, type Field, fields, kinds, later, quantity, word } from '../reckoning/fields';
import { SLAB_OR_TOPPING } from '../reckoning/ordinary';
import type { Pad } from '../reckoning/pad';
import { say } from '../reckoning/words';
import { type Crown, type CrownOpening, crown, crownedMean, type ThicknessCrownInput } from './crown';
import * as faults from './faults';
import { AT_ORIGIN, TAPERED_THICKNESS } from './ordinary';

/** Thickness that runs evenly from one side of the outline to the other. */
export interface ThicknessTaperInput {
  /** Always `taper`. */
  readonly kind: 'taper';
  /** Along which axis of the plan. */
  readonly along: 'x' | 'y';
  /** Thickness where the axis has its least value on the outline. */
  readonly from: QuantityInput<'length'>;
  /** Thickness where it has its greatest. */
  readonly to: QuantityInput<'length'>;
}

/** Thickness in a plane, by its value at one point and how it grows along both axes. */
export interface ThicknessPlaneInput {
  /** Always `plane`. */
  readonly kind: 'plane';
  /** Thickness at the origin of the plan. */
  readonly atOrigin: QuantityInput<'length'>;
  /** How much thicker along x; negative where it thins. */
  readonly alongX: QuantityInput<'slope'>;
  /** How much thicker along y; negative where it thins. */
  readonly alongY: QuantityInput<'slope'>;
}

/** Thickness: the same everywhere, varying in a plane, or with a crown. */
export type ThicknessInput =
  | QuantityInput<'length'>
  | ThicknessTaperInput
  | ThicknessPlaneInput
  | ThicknessCrownInput;

type Length = Quantity<'length'>;

interface Taper {
  readonly kind: 'taper';
  readonly along: 'x' | 'y';
  readonly from: Length;
  readonly to: Length;
}

interface Plane {
  readonly kind: 'plane';
  readonly atOrigin: Length;
  readonly alongX: Quantity<'slope'>;
  readonly alongY: Quantity<'slope'>;
}

/** Thickness, read. */
export type Thickness = Length | Taper | Plane | Crown;

/** A place in the plan and the thickness there. */
export interface PlaceOfThickness {
  /** Thickness there. */
  readonly thickness: Quantity<'length'>;
  /** Along. */
  readonly x: Quantity<'length'>;
  /** Across. */
  readonly y: Quantity<'length'>;
}

/** Thickness over an outline. */
export interface ThicknessOver {
  readonly mean: Length;
  readonly least: Length;
  readonly thinnest?: PlaceOfThickness;
  readonly thickest?: PlaceOfThickness;
}

const varying = (): Field<Taper | Plane | Crown> =>
  kinds('kind', [
    fields({
      kind: word('taper'),
      along: choice('along', ['x', 'y'] as const),
      from: quantity('length', 'from', 'not-negative', TAPERED_THICKNESS),
      to: quantity('length', 'to', 'not-negative', TAPERED_THICKNESS),
    }),
    crown(),
    fields({
      kind: word('plane'),
      atOrigin: quantity('length', 'atOrigin', 'any', AT_ORIGIN),
      alongX: quantity('slope', 'alongX', 'any'),
      alongY: quantity('slope', 'alongY', 'any'),
    }),
  ]);

/** The schema of a thickness. */
export function thickness(): Field<Thickness> {
  const uniform = quantity('length', 'thickness', 'positive', SLAB_OR_TOPPING);
  const vary = varying();
  const choose = (input: unknown): Field<Thickness> =>
    (typeof input === 'object' && input !== null && 'kind' in input ? vary : uniform) as Field<Thickness>;
  return later(choose, () => ({ 'The same everywhere': uniform, Varying: vary }));
}

const isUniform = (t: Thickness): t is Length => !('kind' in t);

/** The plane `a + b × x + c × y`, in meters. */
interface Coefficients {
  readonly a: Decimal;
  readonly b: Decimal;
  readonly c: Decimal;
}

const INCHES_PER_FOOT = 12;

function coefficients(t: Taper | Plane, outline: Outline): Coefficients {
  const zero = new Decimal(0);
  if (t.kind === 'plane') {
    const gain = (s: Quantity<'slope'>): Decimal => canonicalValue(s).div(INCHES_PER_FOOT);
    return { a: canonicalValue(t.atOrigin), b: gain(t.alongX), c: gain(t.alongY) };
  }
  const one = new Decimal(1);
  const [b, c] = t.along === 'x' ? [one, zero] : [zero, one];
  const values = extremePoints(outline, b, c).map((p) => p[t.along]);
  const [least, most] = [Decimal.min(...values), Decimal.max(...values)];
  const gain = canonicalValue(t.to).minus(canonicalValue(t.from)).div(most.minus(least));
  const a = canonicalValue(t.from).minus(gain.times(least));
  return t.along === 'x' ? { a, b: gain, c: zero } : { a, b: zero, c: gain };
}

const at = ({ a, b, c }: Coefficients, p: Corner): Decimal => a.plus(b.times(p.x)).plus(c.times(p.y));

/** A part of the plan: its area, its middle, and whether it is cut out. */
interface PlanPart {
  readonly name: string;
  readonly area: Quantity<'area'>;
  readonly centroid: Corner;
  readonly cut: boolean;
}

/** An opening with its measured area. */
export interface MeasuredOpening extends CrownOpening {
  readonly area: Quantity<'area'>;
  readonly centroid: Corner;
}

/** Thickness at the middle of each part, and from them the mean of the whole. */
function meanOf(
  parts: readonly PlanPart[],
  plane: Coefficients,
  show: (value: Decimal) => Length,
  pad: Pad,
): Length {
  const system = systemOfQuantity(show(plane.a));
  const growth = (n: Decimal): Quantity<'slope'> => quantityOf('slope', n.times(INCHES_PER_FOOT), system);
  const [a, b, c] = [show(plane.a), growth(plane.b), growth(plane.c)];
  const thicknesses = parts.map(({ name, centroid }) => {
    const [x, y] = [quantityOf('length', centroid.x, system), quantityOf('length', centroid.y, system)];
    const t = show(at(plane, centroid));
    return pad.step(
      say`thickness at the centroid of ${{ name }}`,
      't = a + b × x + c × y',
      { a, b, c, x, y },
      t,
    );
  });
  if (parts.length === 1) return thicknesses[0] as Length;
  const values: Record<string, Quantity> = {};
  const signed = (pick: (i: number) => string): string =>
    parts.map(({ cut }, i) => `${i === 0 ? '' : cut ? ' − ' : ' + '}${pick(i)}`).join('');
  let [volume, area] = [new Decimal(0), new Decimal(0)];
  parts.forEach((part, i) => {
    values[`A${i}`] = part.area;
    values[`t${i}`] = thicknesses[i] as Length;
    const size = canonicalValue(part.area).times(part.cut ? -1 : 1);
    volume = volume.plus(size.times(at(plane, part.centroid)));
    area = area.plus(size);
  });
  const formula = `m = (${signed((i) => `A${i} × t${i}`)}) ÷ (${signed((i) => `A${i}`)})`;
  return pad.step('mean thickness', formula, values, show(volume.div(area)));
}

/**
 * Thickness over an outline less its openings: mean, thinnest and thickest, with the steps for the mean.
 *
 * @param area - of the outline, openings not taken off
 */
export function thicknessOver(
  outline: Outline,
  area: Quantity<'area'>,
  openings: readonly MeasuredOpening[],
  t: Thickness,
  pad: Pad,
): ThicknessOver {
  if (isUniform(t)) return { mean: t, least: t };
  if (t.kind === 'crown') {
    const least = t.center.lessThan(t.edges) ? t.center : t.edges;
    return { mean: crownedMean(outline, openings, t, pad), least };
  }
  const plane = coefficients(t, outline);
  const system = systemOfQuantity(t.kind === 'plane' ? t.atOrigin : t.from);
  const show = (value: Decimal): Length =>
    quantityOf('length', value, system).in(system === 'metric' ? 'mm' : 'in');
  const place = (p: Corner): PlaceOfThickness => ({
    thickness: show(at(plane, p)),
    x: quantityOf('length', p.x, system),
    y: quantityOf('length', p.y, system),
  });
  const order = extremePoints(outline, plane.b, plane.c)
    .map((p, i) => ({ p, i, t: at(plane, p) }))
    .sort((p, q) => p.t.comparedTo(q.t));
  const [thin, thick] = [order[0], order.at(-1)];
  if (!thin || !thick) return { mean: show(plane.a), least: show(plane.a) };
  // Running out to nothing along an edge is a feather edge; below nothing is a mistake.
  if (thin.t.lessThan(new Decimal('-1e-30'))) refuse('thickness', faults.tooThin(thin.i + 1));
  const parts = [
    { name: 'the outline', area, centroid: centroidOf(outline), cut: false },
    ...openings.map((o, i) => ({ name: `opening ${i + 1}`, ...o, cut: true })),
  ];
  const [thinnest, thickest] = [place(thin.p), place(thick.p)];
  return { mean: meanOf(parts, plane, show, pad), least: thinnest.thickness, thinnest, thickest };
}

/** Area and perimeter of an outline, with the working. */
import { Decimal, PI } from '../quantity/decimal';
import * as faults from '../quantity/faults';
import { canonicalValue, type Quantity, quantityOf, systemOfQuantity } from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import { wholeNumber } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import type { Outline, Point } from './outline';
import { checkSimple, cornersOf, doubleArea, perimeterOf } from './polygon';

type Length = Quantity<'length'>;

/** What a plan outline measures. */
interface Measured {
  readonly area: Quantity<'area'>;
  readonly perimeter: Length;
}

type Of<S extends Outline['shape']> = Extract<Outline, { shape: S }>;

const scaled = <D extends 'length' | 'area'>(q: Quantity<D>, by: Decimal | number): Quantity<D> =>
  quantityOf(q.dimension, canonicalValue(q).times(by), systemOfQuantity(q));

const halved = (area: Quantity<'area'>): Quantity<'area'> => area.over(wholeNumber(2));

function rectangle({ length, width }: Of<'rectangle'>, pad: Pad): Measured {
  const area = length.times(width);
  pad.step('plan area', 'A = L × W', { L: length, W: width }, area);
  return { area, perimeter: scaled(length.plus(width), 2) };
}

function circle({ diameter }: Of<'circle'>, pad: Pad): Measured {
  const area = scaled(diameter.times(diameter), PI.div(4));
  pad.step('plan area', 'A = π × D² ÷ 4', { D: diameter }, area);
  return { area, perimeter: scaled(diameter, PI) };
}

function triangle({ sides }: Of<'triangle'>, pad: Pad, path: string): Measured {
  const [a, b, c] = sides as [Length, Length, Length];
  const perimeter = a.plus(b).plus(c);
  // Sixteen times the square of the area, by Heron: one root and one division in all.
  const factors = [a.plus(b).minus(c), b.plus(c).minus(a), c.plus(a).minus(b)];
  if (factors.some((f) => f.sign() <= 0)) refuse(`${path}.sides`, faults.noSuchTriangle());
  const product = [perimeter, ...factors].reduce((p, f) => p.times(canonicalValue(f)), new Decimal(1));
  const area = quantityOf('area', product.sqrt().div(4), systemOfQuantity(a));
  pad.step(
    'plan area',
    'A = √((a + b + c) × (a + b − c) × (b + c − a) × (c + a − b)) ÷ 4',
    { a, b, c },
    area,
  );
  return { area, perimeter };
}

/** Two parallel sides and the height fix the area but not the slant sides: no perimeter. */
function trapezoid({ parallel, height }: Of<'trapezoid'>, pad: Pad): Omit<Measured, 'perimeter'> {
  const [a, b] = parallel as [Length, Length];
  const area = halved(a.plus(b).times(height));
  pad.step('plan area', 'A = (a + b) × h ÷ 2', { a, b, h: height }, area);
  return { area };
}

function ell(outline: Of<'L'>, pad: Pad, path: string): Measured {
  const { length, width, notchLength, notchWidth } = outline;
  if (!notchLength.lessThan(length))
    refuse(`${path}.notchLength`, faults.doesNotFit('notchLength', 'length'));
  if (!notchWidth.lessThan(width)) refuse(`${path}.notchWidth`, faults.doesNotFit('notchWidth', 'width'));
  const area = length.times(width).minus(notchLength.times(notchWidth));
  pad.step('plan area', 'A = L × W − l × w', { L: length, W: width, l: notchLength, w: notchWidth }, area);
  return { area, perimeter: scaled(length.plus(width), 2) };
}

/** Above this many corners the sum is not written out in full. */
const WRITTEN_OUT = 12;

function shoelace(points: readonly Point[], pad: Pad, area: Quantity<'area'>, anticlockwise: boolean): void {
  if (points.length > WRITTEN_OUT) {
    const S = scaled(area, 2);
    pad.step(
      `plan area, S being the sum of x₁ × y₂ − x₂ × y₁ around ${points.length} corners`,
      'A = S ÷ 2',
      { S },
      area,
    );
    return;
  }
  const values: Record<string, Length> = {};
  const order = anticlockwise ? points : [...points].reverse();
  const terms = order.map((p, i) => {
    const next = ((i + 1) % order.length) + 1;
    values[`x${i + 1}`] = p.x;
    values[`y${i + 1}`] = p.y;
    return `x${i + 1} × y${next} − x${next} × y${i + 1}`;
  });
  pad.step('plan area', `A = (${terms.join(' + ')}) ÷ 2`, values, area);
}

function polygon({ points }: Of<'polygon'>, pad: Pad, path: string): Measured {
  const corners = cornersOf(points);
  checkSimple(corners, `${path}.points`);
  const system = systemOfQuantity((points[0] as Point).x);
  const double = doubleArea(corners);
  const area = quantityOf('area', double.abs().div(2), system);
  shoelace(points, pad, area, double.isPositive());
  return { area, perimeter: quantityOf('length', perimeterOf(corners), system) };
}

/**
 * Area and, where it is known, perimeter of an outline.
 *
 * @param path - where the outline stands in the input, for errors
 * @throws {InputError} `no-such-triangle`, `does-not-fit`, `repeated-point`, `zero-area`, `self-crossing`
 */
export function measure(
  outline: Outline,
  pad: Pad,
  path = 'outline',
): { readonly area: Quantity<'area'>; readonly perimeter?: Length } {
  switch (outline.shape) {
    case 'rectangle':
      return rectangle(outline, pad);
    case 'circle':
      return circle(outline, pad);
    case 'triangle':
      return triangle(outline, pad, path);
    case 'trapezoid':
      return trapezoid(outline, pad);
    case 'L':
      return ell(outline, pad, path);
    case 'polygon':
      return polygon(outline, pad, path);
  }
}

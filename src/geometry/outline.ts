/**
 * Outlines as people measure them, read at the door.
 *
 * Later additions belong here: a shape is its input type, its schema and its measure.
 */
import type { Quantity, QuantityInput } from '../quantity/quantity';
import { type Field, fields, kinds, list, quantity, word } from '../reckoning/fields';

/** A length as text with a unit, `{ value, unit }`, or a quantity. */
export type LengthInput = QuantityInput<'length'>;

/** A rectangle by its two sides. */
export interface RectangleInput {
  /** Always `rectangle`. */
  readonly shape: 'rectangle';
  /** One side. */
  readonly length: LengthInput;
  /** The other side. */
  readonly width: LengthInput;
}

/** A circle by its diameter. */
export interface CircleInput {
  /** Always `circle`. */
  readonly shape: 'circle';
  /** Across the middle. */
  readonly diameter: LengthInput;
}

/** A triangle by its three sides. */
export interface TriangleInput {
  /** Always `triangle`. */
  readonly shape: 'triangle';
  /** The three sides, in any order. */
  readonly sides: readonly [LengthInput, LengthInput, LengthInput];
}

/** A trapezoid by its two parallel sides and the distance square between them. */
export interface TrapezoidInput {
  /** Always `trapezoid`. */
  readonly shape: 'trapezoid';
  /** The two parallel sides. */
  readonly parallel: readonly [LengthInput, LengthInput];
  /** Square between the parallel sides. */
  readonly height: LengthInput;
}

/** An L: a rectangle with a smaller one cut out of a corner. */
export interface LInput {
  /** Always `L`. */
  readonly shape: 'L';
  /** Overall length. */
  readonly length: LengthInput;
  /** Overall width. */
  readonly width: LengthInput;
  /** Length of the part cut out, along `length`. */
  readonly notchLength: LengthInput;
  /** Width of the part cut out, along `width`. */
  readonly notchWidth: LengthInput;
}

/** A corner: how far along and how far across from one fixed point. May be negative. */
export interface PointInput {
  /** Along. */
  readonly x: LengthInput;
  /** Across. */
  readonly y: LengthInput;
}

/** Any straight-sided outline by its corners in order, either way around, not closed. */
export interface PolygonInput {
  /** Always `polygon`. */
  readonly shape: 'polygon';
  /** The corners. */
  readonly points: readonly PointInput[];
}

/** The outline of a slab, pad or base in plan. */
export type OutlineInput =
  | RectangleInput
  | CircleInput
  | TriangleInput
  | TrapezoidInput
  | LInput
  | PolygonInput;

type Length = Quantity<'length'>;

/** A corner, read. */
export interface Point {
  readonly x: Length;
  readonly y: Length;
}

/** An outline, read. */
export type Outline =
  | { readonly shape: 'rectangle'; readonly length: Length; readonly width: Length }
  | { readonly shape: 'circle'; readonly diameter: Length }
  | { readonly shape: 'triangle'; readonly sides: readonly Length[] }
  | { readonly shape: 'trapezoid'; readonly parallel: readonly Length[]; readonly height: Length }
  | {
      readonly shape: 'L';
      readonly length: Length;
      readonly width: Length;
      readonly notchLength: Length;
      readonly notchWidth: Length;
    }
  | { readonly shape: 'polygon'; readonly points: readonly Point[] };

/** More corners than a survey of a yard ever has. */
const CORNER_LIMIT = 100_000;

const length = (what: string): Field<Length> => quantity('length', what);

/** The schema of an outline. */
export function outline(): Field<Outline> {
  const side = length('each side');
  const along = quantity('length', 'x', 'any');
  const across = quantity('length', 'y', 'any');
  return kinds<Outline>('shape', [
    fields({ shape: word('rectangle'), length: length('length'), width: length('width') }),
    fields({ shape: word('circle'), diameter: length('diameter') }),
    fields({ shape: word('triangle'), sides: list(side, 3, 3) }),
    fields({ shape: word('trapezoid'), parallel: list(side, 2, 2), height: length('height') }),
    fields({
      shape: word('L'),
      length: length('length'),
      width: length('width'),
      notchLength: length('notchLength'),
      notchWidth: length('notchWidth'),
    }),
    fields({ shape: word('polygon'), points: list(fields({ x: along, y: across }), 3, CORNER_LIMIT) }),
  ]);
}

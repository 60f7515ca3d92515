/**
 * Outlines as people measure them, read at the door.
 *
 * A shape is its input type here, its member of {@link Outline}, its line in the schema, its measure in
 * `measure.ts` and, where it has a place in the plan, its ring in `ring.ts`.
 */
import { canonicalValue, type Quantity, type QuantityInput } from '../quantity/quantity';
import {
  choice,
  type Field,
  fields,
  kinds,
  later,
  list,
  maybe,
  named,
  quantity,
  settled,
  whole,
  word,
} from '../reckoning/fields';
import { PLAN_LENGTH } from '../reckoning/ordinary';
import { notBoth } from '../reckoning/together';
import { PLAN_AREA, SHORT_SIDE } from './ordinary';
import { OUTLINE_LIMITS } from './size';

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

/** A ring: a circle with a smaller one cut out of its middle. */
export interface RingInput {
  /** Always `ring`. */
  readonly shape: 'ring';
  /** Across the outer circle. */
  readonly outerDiameter: LengthInput;
  /** Across the hole. */
  readonly innerDiameter: LengthInput;
}

/** A slice of a circle or, with an inner radius, of a ring: as of curved steps or a fan of walk. */
export interface SectorInput {
  /** Always `sector`. */
  readonly shape: 'sector';
  /** From the center to the outer edge. */
  readonly radius: LengthInput;
  /** Angle at the center, at most 360 degrees. */
  readonly angle: QuantityInput<'angle'>;
  /** From the center to the inner edge; none by default. */
  readonly innerRadius?: LengthInput;
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

/** A U: a rectangle with a smaller one cut out of the middle of a long side. */
export interface UInput {
  /** Always `U`. */
  readonly shape: 'U';
  /** Overall length. */
  readonly length: LengthInput;
  /** Overall width. */
  readonly width: LengthInput;
  /** Length of the part cut out, along `length`. */
  readonly notchLength: LengthInput;
  /** How deep the part cut out goes in, along `width`. */
  readonly notchWidth: LengthInput;
}

/** A regular polygon by how many sides it has and how long each is. */
export interface RegularInput {
  /** Always `regular`. */
  readonly shape: 'regular';
  /** How many sides, a plain whole number of 3 or more. */
  readonly sides: number;
  /** Length of each side. */
  readonly side: LengthInput;
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

/**
 * A straight-sided outline by tape alone: its sides in order, and the diagonals from the first corner to
 * each corner but its neighbors. Every diagonal must lie inside, so start at a corner from which all
 * others can be seen: distances alone cannot tell.
 */
export interface TapedInput {
  /** Always `taped`. */
  readonly shape: 'taped';
  /** The sides in order, starting at the first corner. */
  readonly sides: readonly LengthInput[];
  /** From the first corner to the third, the fourth and so on: three fewer than sides. */
  readonly diagonals: readonly LengthInput[];
}

/** One side walked, and the turn at its end. */
export interface LegInput {
  /** How far. */
  readonly length: LengthInput;
  /** How much to turn at its end: `left` or `right` by a square corner, or an angle, to the left if positive. */
  readonly turn: 'left' | 'right' | QuantityInput<'angle'>;
}

/** A straight-sided outline walked around side by side, back to the start. */
export interface WalkInput {
  /** Always `walk`. */
  readonly shape: 'walk';
  /** Every side, the last one back to the start. */
  readonly legs: readonly LegInput[];
  /** How far off the start the walk may end; by default 1% of its length. */
  readonly closingLimit?: LengthInput;
}

/** A corner, and how the edge from it to the next corner curves. At most one way of saying so. */
export interface CurvedPointInput extends PointInput {
  /** Rise of the arc over its chord; positive swells the outline, negative cuts in. */
  readonly rise?: LengthInput;
  /** Radius of the arc, the shorter way; positive swells the outline, negative cuts in. */
  readonly radius?: LengthInput;
}

/** An outline of straight and round edges by its corners in order. */
export interface CurvedInput {
  /** Always `curved`. */
  readonly shape: 'curved';
  /** The corners, each with the curve of the edge that leaves it. */
  readonly points: readonly CurvedPointInput[];
}

/** The ground between a straight baseline and an edge, by offsets square to the baseline. */
export interface OffsetsInput {
  /** Always `offsets`. */
  readonly shape: 'offsets';
  /** Distance between neighboring offsets, the same throughout. */
  readonly spacing: LengthInput;
  /** From the baseline to the edge, in order; may be zero at an end. */
  readonly offsets: readonly LengthInput[];
  /** `trapezoidal` takes the edge as straight from offset to offset; `simpson` as parabolas, over an even number of strips. */
  readonly rule: 'trapezoidal' | 'simpson';
}

/** Ground known by its area alone, as a plan or a survey prints it. It has no edge and no corners. */
export interface AreaInput {
  /** Always `area`. */
  readonly shape: 'area';
  /** How large it is. */
  readonly area: QuantityInput<'area'>;
}

/** Outlines added together, less others cut out. They must not overlap; that is not checked. */
export interface CombinedInput {
  /** Always `combined`. */
  readonly shape: 'combined';
  /** Added together. */
  readonly parts: readonly OutlineInput[];
  /** Cut out. */
  readonly less?: readonly OutlineInput[];
  /**
   * How long, in all, the lines are along which parts touch each other or a part cut out touches the
   * edge; `0 ft` where nothing touches. With it the perimeter is known.
   */
  readonly shared?: LengthInput;
}

/** The outline of a slab, pad or base in plan. */
export type OutlineInput =
  | RectangleInput
  | CircleInput
  | RingInput
  | SectorInput
  | TriangleInput
  | TrapezoidInput
  | LInput
  | UInput
  | RegularInput
  | PolygonInput
  | TapedInput
  | WalkInput
  | CurvedInput
  | OffsetsInput
  | AreaInput
  | CombinedInput;

type Length = Quantity<'length'>;

/** A corner, read. */
export interface Point {
  readonly x: Length;
  readonly y: Length;
}

/** A corner with the curve of the edge that leaves it, read. */
export interface CurvedPoint extends Point {
  readonly rise: Length | undefined;
  readonly radius: Length | undefined;
}

/** A leg of a walk, read. */
export interface Leg {
  readonly length: Length;
  readonly turn: 'left' | 'right' | Quantity<'angle'>;
}

/** An outline, read. */
export type Outline =
  | { readonly shape: 'rectangle'; readonly length: Length; readonly width: Length }
  | { readonly shape: 'circle'; readonly diameter: Length }
  | { readonly shape: 'ring'; readonly outerDiameter: Length; readonly innerDiameter: Length }
  | {
      readonly shape: 'sector';
      readonly radius: Length;
      readonly angle: Quantity<'angle'>;
      readonly innerRadius: Length | undefined;
    }
  | { readonly shape: 'triangle'; readonly sides: readonly Length[] }
  | { readonly shape: 'trapezoid'; readonly parallel: readonly Length[]; readonly height: Length }
  | Notched<'L'>
  | Notched<'U'>
  | { readonly shape: 'regular'; readonly sides: Quantity<'count'>; readonly side: Length }
  | { readonly shape: 'polygon'; readonly points: readonly Point[] }
  | { readonly shape: 'taped'; readonly sides: readonly Length[]; readonly diagonals: readonly Length[] }
  | { readonly shape: 'walk'; readonly legs: readonly Leg[]; readonly closingLimit: Length | undefined }
  | { readonly shape: 'curved'; readonly points: readonly CurvedPoint[] }
  | {
      readonly shape: 'offsets';
      readonly spacing: Length;
      readonly offsets: readonly Length[];
      readonly rule: 'trapezoidal' | 'simpson';
    }
  | { readonly shape: 'area'; readonly area: Quantity<'area'> }
  | {
      readonly shape: 'combined';
      readonly parts: readonly Outline[];
      readonly less: readonly Outline[] | undefined;
      readonly shared: Length | undefined;
    };

interface Notched<S> {
  readonly shape: S;
  readonly length: Length;
  readonly width: Length;
  readonly notchLength: Length;
  readonly notchWidth: Length;
}

/** An outline of one shape. */
export type OutlineOf<S extends Outline['shape']> = Extract<Outline, { shape: S }>;

/** More corners than a survey of a yard ever has. */
const CORNER_LIMIT = 10_000;
/** More sides than anyone walks or tapes. */
const WALKED_LIMIT = 500;
const OFFSET_LIMIT = 1000;
/** Arcs are cut up finely, so there may not be very many. */
const CURVED_LIMIT = 200;
const PART_LIMIT = 100;

const length = (what: string): Field<Length> => quantity('length', what, 'positive', PLAN_LENGTH);
/** A jog of a taped edge, or the notch for a door jamb, may be small. */
const side = (what: string): Field<Length> => quantity('length', what, 'positive', SHORT_SIDE);
const any = (what: string): Field<Length> => quantity('length', what, 'any');

const notched = <S extends string>(name: S) =>
  fields({
    shape: word(name),
    length: length('length'),
    width: length('width'),
    notchLength: side('notchLength'),
    notchWidth: side('notchWidth'),
  });

const turn = (): Field<'left' | 'right' | Quantity<'angle'>> => {
  const word = choice('turn', ['left', 'right'] as const);
  const angle = quantity('angle', 'turn', 'any');
  return later(
    (input) =>
      (input === 'left' || input === 'right' ? word : angle) as Field<'left' | 'right' | Quantity<'angle'>>,
    () => ({ 'A square corner': word, 'An angle': angle }),
  );
};

const straight = (): Field<Outline>[] => [
  fields({ shape: word('rectangle'), length: length('length'), width: length('width') }),
  fields({ shape: word('triangle'), sides: list(length('each side'), 3, 3) }),
  fields({ shape: word('trapezoid'), parallel: list(length('each side'), 2, 2), height: length('height') }),
  notched('L'),
  notched('U'),
  fields({ shape: word('regular'), sides: whole('sides', 3, 360), side: side('side') }),
  fields({ shape: word('polygon'), points: list(fields({ x: any('x'), y: any('y') }), 3, CORNER_LIMIT) }),
  fields({
    shape: word('taped'),
    sides: list(side('each side'), 3, WALKED_LIMIT),
    diagonals: list(length('each diagonal'), 0, WALKED_LIMIT),
  }),
  fields({
    shape: word('walk'),
    legs: list(fields({ length: side('length'), turn: turn() }), 3, WALKED_LIMIT),
    closingLimit: maybe(quantity('length', 'closingLimit')),
  }),
];

/** A sector that goes all the way around is a circle or a ring, and is reckoned as one everywhere. */
function wholeTurn(outline: OutlineOf<'sector'>): Outline {
  const { radius, angle, innerRadius } = outline;
  if (!canonicalValue(angle).equals(FULL_TURN)) return outline;
  if (!innerRadius) return { shape: 'circle', diameter: radius.plus(radius) };
  // Crossed radii stay as they are, to be refused by their own names.
  if (!innerRadius.lessThan(radius)) return outline;
  return {
    shape: 'ring',
    outerDiameter: radius.plus(radius),
    innerDiameter: innerRadius.plus(innerRadius),
  };
}

const FULL_TURN = 360;

const sector = (): Field<Outline> =>
  settled(
    fields({
      shape: word('sector'),
      radius: length('radius'),
      angle: quantity('angle', 'angle'),
      innerRadius: maybe(length('innerRadius')),
    }) as Field<Outline>,
    (read) => wholeTurn(read as OutlineOf<'sector'>),
  );

const round = (): Field<Outline>[] => [
  fields({ shape: word('circle'), diameter: length('diameter') }),
  fields({
    shape: word('ring'),
    outerDiameter: length('outerDiameter'),
    innerDiameter: length('innerDiameter'),
  }),
  sector(),
  fields({ shape: word('area'), area: quantity('area', 'area', 'positive', PLAN_AREA) }),
  fields({
    shape: word('curved'),
    points: list(
      fields(
        {
          x: any('x'),
          y: any('y'),
          rise: maybe(any('rise')),
          radius: maybe(any('radius')),
        },
        notBoth('rise', 'radius'),
      ),
      2,
      CURVED_LIMIT,
    ),
  }),
  fields({
    shape: word('offsets'),
    spacing: length('spacing'),
    offsets: list(quantity('length', 'each offset', 'not-negative', SHORT_SIDE), 2, OFFSET_LIMIT),
    rule: choice('rule', ['trapezoidal', 'simpson'] as const),
  }),
];

/** The schema of an outline. */
export function outline(): Field<Outline> {
  // The parts are outlines again, read by this very field: one made for each would be slow to read.
  const inner: Field<Outline> = {
    read: (input, report) => all.read(input, report),
    json: (defs) => all.json(defs),
  };
  const combined = fields(
    {
      shape: word('combined'),
      parts: list(inner, 1, PART_LIMIT),
      less: maybe(list(inner, 0, PART_LIMIT)),
      shared: maybe(quantity('length', 'shared', 'not-negative')),
    },
    { 'x-limits': OUTLINE_LIMITS },
  );
  const all: Field<Outline> = named('outline', kinds('shape', [...straight(), ...round(), combined]));
  return all;
}

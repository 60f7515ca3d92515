/**
 * A region: an outline with openings in it, all placed in one plane.
 *
 * Openings must lie inside the outline and apart from each other.
 */

import { ringsNear } from '../geometry/crossings';
import { type Corner, insideRing, ringsFarApart, ringsMeet } from '../geometry/polygon';
import { canonicalValue, type Quantity, type QuantityInput } from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import { type Field, fields, kinds, list, maybe, named, quantity, whole, word } from '../reckoning/fields';
import * as faults from './faults';
import { OPENING_SIDE, SHORT_SIDE } from './ordinary';
import {
  type Outline,
  type OutlineInput,
  outline,
  type Point,
  type PointInput,
  type PolygonInput,
} from './outline';
import { circleRing, holeOf, regularRing, ringOf } from './ring';
import { checkSize } from './size';

/** A rectangular opening by its corner nearest the origin. */
export interface RectangleOpeningInput {
  /** Always `rectangle`. */
  readonly shape: 'rectangle';
  /** The corner nearest the origin. */
  readonly at: PointInput;
  /** Side along x. */
  readonly length: QuantityInput<'length'>;
  /** Side along y. */
  readonly width: QuantityInput<'length'>;
}

/** A round opening by its center. */
export interface CircleOpeningInput {
  /** Always `circle`. */
  readonly shape: 'circle';
  /** The center. */
  readonly at: PointInput;
  /** Across the middle. */
  readonly diameter: QuantityInput<'length'>;
}

/** An opening with equal sides by its center, as a hexagonal planter. */
export interface RegularOpeningInput {
  /** Always `regular`. */
  readonly shape: 'regular';
  /** The center. */
  readonly at: PointInput;
  /** How many sides, a plain whole number of 3 or more. */
  readonly sides: number;
  /** Length of each side. */
  readonly side: QuantityInput<'length'>;
  /** How far it is turned to the left; by default a corner lies from its center along x. */
  readonly turned?: QuantityInput<'angle'>;
}

/** An opening in a slab: a column, a drain, a planter. */
export type OpeningInput = RectangleOpeningInput | CircleOpeningInput | RegularOpeningInput | PolygonInput;

/** An outline with openings. */
export interface RegionInput {
  /** The outside of the slab. */
  readonly outline: OutlineInput;
  /** Openings within the outline and apart from each other; none by default. */
  readonly openings?: readonly OpeningInput[];
}

type Length = Quantity<'length'>;

/** An opening, read. */
export type Opening =
  | { readonly shape: 'rectangle'; readonly at: Point; readonly length: Length; readonly width: Length }
  | { readonly shape: 'circle'; readonly at: Point; readonly diameter: Length }
  | {
      readonly shape: 'regular';
      readonly at: Point;
      readonly sides: Quantity<'count'>;
      readonly side: Length;
      readonly turned: Quantity<'angle'> | undefined;
    }
  | { readonly shape: 'polygon'; readonly points: readonly Point[] };

/** A region, read. */
export interface Region {
  readonly outline: Outline;
  readonly openings: readonly Opening[] | undefined;
}

/** Rings of corners in meters: the outer one counterclockwise, openings too. */
export interface Rings {
  readonly outer: readonly Corner[];
  readonly openings: readonly (readonly Corner[])[];
}

const OPENING_LIMIT = 1000;
const CORNER_LIMIT = 10_000;

const point = (): Field<Point> =>
  fields({ x: quantity('length', 'x', 'any'), y: quantity('length', 'y', 'any') });

/** The schema of the openings. */
export function openings(): Field<Opening[]> {
  const opening = named(
    'opening',
    kinds('shape', [
      fields({
        shape: word('rectangle'),
        at: point(),
        length: quantity('length', 'length', 'positive', OPENING_SIDE),
        width: quantity('length', 'width', 'positive', OPENING_SIDE),
      }),
      fields({
        shape: word('circle'),
        at: point(),
        diameter: quantity('length', 'diameter', 'positive', OPENING_SIDE),
      }),
      fields({
        shape: word('regular'),
        at: point(),
        sides: whole('sides', 3, 360),
        side: quantity('length', 'side', 'positive', SHORT_SIDE),
        turned: maybe(quantity('angle', 'turned', 'any')),
      }),
      fields({ shape: word('polygon'), points: list(point(), 3, CORNER_LIMIT) }),
    ]),
  );
  return list(opening, 0, OPENING_LIMIT);
}

/** The fields that describe a region, to be spread into the schema of a calculation. */
export const regionFields = (): { outline: Field<Outline>; openings: Field<Opening[] | undefined> } => ({
  outline: outline(),
  openings: maybe(openings()),
});

const moved = (ring: readonly Corner[], { x, y }: Point): Corner[] =>
  ring.map((c) => ({ x: c.x.plus(canonicalValue(x)), y: c.y.plus(canonicalValue(y)) }));

/** Rings of circles about the origin by their diameter: many openings of a job are of one size. */
type Circles = Map<string, Corner[]>;

function circleOf(diameter: Length, known: Circles): Corner[] {
  const key = canonicalValue(diameter).toString();
  const ring = known.get(key) ?? circleRing(diameter, 'outside');
  known.set(key, ring);
  return ring;
}

function ringAround(opening: Exclude<Opening, { shape: 'polygon' }>, circles: Circles): Corner[] {
  if (opening.shape === 'circle') return circleOf(opening.diameter, circles);
  return opening.shape === 'regular'
    ? regularRing(opening.sides, opening.side, opening.turned)
    : ringOf(opening);
}

const openingRing = (opening: Opening, path: string, circles: Circles): Corner[] =>
  opening.shape === 'polygon' ? ringOf(opening, path) : moved(ringAround(opening, circles), opening.at);

const within = (inner: readonly Corner[], outer: readonly Corner[]): boolean =>
  insideRing(inner[0] as Corner, outer) && !ringsMeet(inner, outer);

const apart = (a: readonly Corner[], b: readonly Corner[]): boolean =>
  ringsFarApart(a, b) ||
  (!ringsMeet(a, b) && !insideRing(a[0] as Corner, b) && !insideRing(b[0] as Corner, a));

/**
 * The rings of a region, checked. The hole of a ring comes last among the openings.
 *
 * @param region - outline and openings, read
 * @throws {InputError} as `ringOf` does; `outside-outline` for an opening that is not wholly inside the
 * outline, `openings-meet` for one that meets another
 */
export function ringsOf(region: Region): Rings {
  const outer = ringOf(region.outline);
  const given = region.openings ?? [];
  checkSize(given, 'openings');
  const circles: Circles = new Map();
  const rings = given.map((o, i) => openingRing(o, `openings[${i}]`, circles));
  const hole = holeOf(region.outline);
  const near = ringsNear(rings);
  rings.forEach((ring, i) => {
    const inside = within(ring, outer) && (!hole || apart(ring, hole));
    if (!inside) refuse(`openings[${i}]`, faults.outsideOutline());
    for (const j of near[i] as readonly number[]) {
      if (!apart(ring, rings[j] as Corner[])) refuse(`openings[${i}]`, faults.openingsMeet(j, i));
    }
  });
  return { outer, openings: hole ? [...rings, hole] : rings };
}

/** Rings measured from their first corner, and where that stands. */
export interface RingsFromCorner {
  readonly rings: Rings;
  readonly origin: Corner;
}

/**
 * The rings as from the first corner of the outline: survey coordinates are large, and what is laid out in
 * binary numbers is exact enough near nothing only.
 */
export function ringsFromCorner(region: Region): RingsFromCorner {
  const { outer, openings: holes } = ringsOf(region);
  const origin = outer[0] as Corner;
  const moved = (ring: readonly Corner[]): Corner[] =>
    ring.map(({ x, y }) => ({ x: x.minus(origin.x), y: y.minus(origin.y) }));
  return { rings: { outer: moved(outer), openings: holes.map(moved) }, origin };
}

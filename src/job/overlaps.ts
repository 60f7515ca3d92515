/**
 * Where elements lie over each other in plan, by clipping their outlines as they lie on the site.
 *
 * What stands on another has its own concrete. Of two others, the concrete of the overlap is counted once, as deep as
 * the thinner of them; it is taken off the slab where only one of them is of known thickness, else off the later one.
 */
import { type BinaryRegion, commonArea } from '../geometry/clip';
import type { Corner } from '../geometry/polygon';
import { outline as outlineField } from '../outline/outline';
import { direction } from '../outline/place';
import { openings as openingsField, ringsOf } from '../outline/region';
import { Decimal, ZERO } from '../quantity/decimal';
import { InputError } from '../quantity/input-error';
import { canonicalValue, type Quantity, quantityOf } from '../quantity/quantity';
import { isFaulty, readQuantity } from '../quantity/read-quantity';
import type { System } from '../quantity/units';
import { readInput } from '../reckoning/calculation';
import { fields, maybe } from '../reckoning/fields';
import { type Limit, withinLimit } from '../reckoning/limits';
import type { Element } from './document';

/** Two elements that lie over each other. */
export interface Overlap {
  readonly first: Element;
  readonly second: Element;
  readonly area: Quantity<'area'>;
  /** The one that stands on the other, where it says so. */
  readonly stands: Element | undefined;
  /** Concrete that both count; nothing where one stands on the other or no thickness is known. */
  readonly twice: Quantity<'volume'> | undefined;
  /** The one that it is taken off. */
  readonly less: Element;
}

/** An element as it lies on the site. */
export interface Placed {
  readonly element: Element;
  readonly region: BinaryRegion;
  readonly box: readonly [left: number, low: number, right: number, high: number];
}

const regionField = fields({ outline: outlineField(), openings: maybe(openingsField()) });

/** Exactly turned and moved to where it lies. */
export function move({ at, turned }: Element): (corner: Corner) => Corner {
  const { x: cos, y: sin } = direction(turned ? canonicalValue(turned) : ZERO);
  const [dx, dy] = at ? [canonicalValue(at.x), canonicalValue(at.y)] : [ZERO, ZERO];
  return ({ x, y }) => ({
    x: dx.plus(x.times(cos)).minus(y.times(sin)),
    y: dy.plus(x.times(sin)).plus(y.times(cos)),
  });
}

/** The rings of an element where it lies; what cannot be read is told where its part is reckoned. */
export function ringsAt(element: Element): Corner[][] | undefined {
  const { at, outline, openings } = element;
  if (!at || outline === undefined || outline === null) return undefined;
  try {
    const rings = ringsOf(readInput(regionField, { outline, openings }));
    const to = move(element);
    return [rings.outer, ...rings.openings].map((ring) => ring.map(to));
  } catch (error) {
    if (error instanceof InputError) return undefined;
    throw error;
  }
}

/** In binary numbers, counted from a corner of the job: far from the origin they would lose digits. */
export function placed(element: Element, rings: readonly Corner[][], from: Corner): Placed {
  const region = rings.map((ring) =>
    ring.map(({ x, y }) => ({ x: x.minus(from.x).toNumber(), y: y.minus(from.y).toNumber() })),
  );
  const [xs, ys] = [(region[0] ?? []).map(({ x }) => x), (region[0] ?? []).map(({ y }) => y)];
  return { element, region, box: [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)] };
}

const apart = ({ box: a }: Placed, { box: b }: Placed): boolean =>
  a[2] <= b[0] || b[2] <= a[0] || a[3] <= b[1] || b[3] <= a[1];

/** Beside rounding in the clipping, a square centimeter of overlap is none. */
const LEAST = 1e-4;
const DIGITS = 12;

/** What clipping found, or nothing where that is only its rounding. */
export const clipped = (area: number, system: System): Quantity<'area'> | undefined =>
  area < LEAST ? undefined : quantityOf('area', new Decimal(area.toPrecision(DIGITS)), system);

const thicknessOf = ({ thickness }: Element): Quantity<'length'> | undefined => {
  const q = readQuantity(thickness, 'length', 'thickness');
  return isFaulty(q) ? undefined : q;
};

/** The thinner of two, or the one that is known. */
function thinner(a: Element, b: Element): Quantity<'length'> | undefined {
  const [t, u] = [thicknessOf(a), thicknessOf(b)];
  return t && u ? (u.lessThan(t) ? u : t) : (t ?? u);
}

function between(a: Placed, b: Placed, system: System): Overlap[] {
  const area = clipped(commonArea(a.region, b.region), system);
  if (!area) return [];
  const [first, second] = [a.element, b.element];
  const stands = first.standsOn === second.name ? first : second.standsOn === first.name ? second : undefined;
  const less = thicknessOf(second) === undefined && thicknessOf(first) ? first : second;
  // Told as concrete is: no cubic feet beside cubic yards.
  const twice = thinner(first, second)
    ?.times(area)
    .in(system === 'metric' ? 'm3' : 'yd3');
  return [{ first, second, area, stands, less, twice: stands ? undefined : twice }];
}

/** Clipping takes as long as there are corners, of every two elements whose boxes meet. */
export const NEAR_CORNERS: Limit = {
  of: 'the corners of every two elements that lie near each other, together',
  most: 6_000,
};

const cornersIn = ({ region }: Placed): number => region.reduce((n, ring) => n + ring.length, 0);

/**
 * Every two elements whose boxes meet.
 *
 * @throws {InputError} `too-many` corners of elements that lie near each other
 */
export function nearPairs<P extends Placed>(all: readonly P[]): [P, P][] {
  const pairs = all.flatMap((a, i) =>
    all.slice(i + 1).flatMap((b): [P, P][] => (apart(a, b) ? [] : [[a, b]])),
  );
  const corners = pairs.reduce((n, [a, b]) => n + cornersIn(a) + cornersIn(b), 0);
  withinLimit(NEAR_CORNERS, corners, 'elements');
  return pairs;
}

/**
 * Every two elements that lie over each other, in the order of the job.
 *
 * @throws {InputError} `too-many` corners of elements that lie near each other
 */
export function overlapsOf(elements: readonly Element[], system: System): Overlap[] {
  const known = elements.flatMap((element) => {
    const rings = ringsAt(element);
    return rings ? [{ element, rings }] : [];
  });
  const from = known[0]?.rings[0]?.[0];
  if (!from) return [];
  const all = known.map(({ element, rings }) => placed(element, rings, from));
  return nearPairs(all).flatMap(([a, b]) => between(a, b, system));
}

/**
 * The way that water runs on an element of a site plan, and the heights of its forms.
 *
 * They come from what the job says: heights at the stakes, or a fall away from the building, where a joint against it
 * tells where that stands. On such a fall the surface is a plane: a corner lies lower by the slope times its distance
 * from the building. Over a surface of spots each piece between three of them falls its own way.
 */
import type { Corner } from '../geometry/polygon';
import type { FormGradesFigures } from '../grade/form-grades';
import type { FacetFigure } from '../grade/surface-figures';
import type { Element } from '../job/document';
import { move } from '../job/overlaps';
import type { JobPart } from '../job/work';
import { Decimal, ZERO } from '../quantity/decimal';
import { canonicalValue, isQuantity, type Quantity, quantityOf } from '../quantity/quantity';
import { isFaulty, readQuantity } from '../quantity/read-quantity';
import type { System } from '../quantity/units';
import type { PagePoint } from './room';

type Length = Quantity<'length'>;
type Slope = Quantity<'slope'>;
type Parts = readonly JobPart[];

/** A height of the forms, on the site. */
export interface Height {
  readonly at: Corner;
  readonly elevation: Length;
  /** How far to measure down or up from the top of the stake. */
  readonly mark?: { readonly way: 'down' | 'up'; readonly by: Length };
}

/** A fall; nothing may tell which way. */
export interface Fall {
  readonly slope: Slope;
  /** The way down on the site. */
  readonly way?: Corner;
  /** The facets of the surface that fall so; left out where all of the element does. */
  readonly within?: readonly (readonly Corner[])[];
}

/** What is known of the surface of an element. */
export interface Levels {
  readonly falls: readonly Fall[];
  readonly heights: readonly Height[];
}

type Move = (corner: Corner) => Corner;

const less = (a: Corner, b: Corner): Corner => ({ x: a.x.minus(b.x), y: a.y.minus(b.y) });

const lengthOf = (given: unknown): Length | undefined => {
  const q = readQuantity(given, 'length', 'length');
  return isFaulty(q) ? undefined : q;
};

function cornerOf(given: unknown): Corner | undefined {
  const { x, y } = (given ?? {}) as { x?: unknown; y?: unknown };
  const [across, up] = [lengthOf(x), lengthOf(y)];
  return across && up ? { x: canonicalValue(across), y: canonicalValue(up) } : undefined;
}

const figuresOf = (parts: Parts, name: string): Readonly<Record<string, unknown>> | undefined =>
  parts.find(({ part }) => part === name)?.result.figures as Readonly<Record<string, unknown>> | undefined;

const inputOf = (parts: Parts, name: string): Readonly<Record<string, unknown>> =>
  parts.find(({ part }) => part === name)?.input ?? {};

/** Stakes with their heights, as the forms are set. */
function staked(parts: Parts, to: Move): Levels | undefined {
  const figures = figuresOf(parts, 'stakes') as FormGradesFigures | undefined;
  if (!figures) return undefined;
  const { stakes } = inputOf(parts, 'stakes') as { stakes?: readonly { x?: unknown; y?: unknown }[] };
  const heights = figures.stakes.flatMap(({ elevation, down, up, mark }, i): Height[] => {
    const at = cornerOf(stakes?.[i]);
    if (!at) return [];
    const way = down ? 'down' : up ? 'up' : undefined;
    return [{ at: to(at), elevation, ...(way && mark ? { mark: { way, by: mark } } : {}) }];
  });
  const { alongX, alongY, steepest } = figures;
  if (!alongX || !alongY || !steepest || steepest.sign() === 0) return { falls: [], heights };
  const way = less(to({ x: canonicalValue(alongX), y: canonicalValue(alongY) }), to({ x: ZERO, y: ZERO }));
  return { falls: [{ slope: steepest, way }], heights };
}

/** Where the building stands, by the joint against it. */
function buildingLine(parts: Parts, move: Move): readonly [Corner, Corner] | undefined {
  const { isolation } = inputOf(parts, 'joints') as {
    isolation?: readonly { against?: unknown; from?: unknown; to?: unknown }[];
  };
  const lines = (isolation ?? []).filter(({ against }) => against === 'building');
  const [line, other] = lines;
  const [from, to] = [cornerOf(line?.from), cornerOf(line?.to)];
  return from && to && !other ? [move(from), move(to)] : undefined;
}

/** Distance of a corner from a line, below zero on its other side. */
function distanceFrom([from, to]: readonly [Corner, Corner], side: Corner): (corner: Corner) => Decimal {
  const [dx, dy] = [to.x.minus(from.x), to.y.minus(from.y)];
  const long = Decimal.hypot(dx, dy);
  const off = ({ x, y }: Corner): Decimal =>
    dx
      .times(y.minus(from.y))
      .minus(dy.times(x.minus(from.x)))
      .div(long);
  const sign = off(side).lessThan(0) ? -1 : 1;
  return (corner) => off(corner).times(sign);
}

/** More corners than these are an outline that nobody sets form heights for one by one. */
const MOST_CORNERS = 12;
/** A corner beyond what was leveled is not told. */
const STRAY = 0.02;

function middleOf(ring: readonly Corner[]): Corner {
  const sum = ring.reduce((all, { x, y }) => ({ x: all.x.plus(x), y: all.y.plus(y) }));
  return { x: sum.x.div(ring.length), y: sum.y.div(ring.length) };
}

/** A fall away from the building. */
function fallen(parts: Parts, move: Move, ring: readonly Corner[], system: System): Levels | undefined {
  const slope = figuresOf(parts, 'fall')?.['slope'];
  if (!isQuantity(slope) || slope.dimension !== 'slope' || slope.sign() === 0) return undefined;
  const input = inputOf(parts, 'fall');
  const [top, reach] = [lengthOf(input['atBuilding']), lengthOf(input['distance'])];
  const line = buildingLine(parts, move);
  if (!line || !top || !reach || ring.length === 0)
    return { falls: [{ slope: slope as Slope }], heights: [] };
  const distance = distanceFrom(line, middleOf(ring));
  const [from, to] = line;
  const square = { x: from.y.minus(to.y), y: to.x.minus(from.x) };
  const away = distance({ x: from.x.plus(square.x), y: from.y.plus(square.y) }).times(slope.sign());
  const way = away.lessThan(0) ? { x: square.x.times(-1), y: square.y.times(-1) } : square;
  const most = canonicalValue(reach).plus(STRAY);
  const heights = (ring.length > MOST_CORNERS ? [] : ring).flatMap((at): Height[] => {
    const off = distance(at);
    if (off.lessThan(-STRAY) || off.greaterThan(most)) return [];
    const drop = (slope as Slope).times(quantityOf('length', off, system));
    return [{ at, elevation: top.minus(drop) }];
  });
  return { falls: [{ slope: (slope as Slope).abs(), way }], heights };
}

/** Pieces of a surface that are told, the largest first, where there is room. */
const MOST_PIECES = 48;

/** Twice the area of a facet. */
function twiceArea([a, b, c]: readonly Corner[]): Decimal {
  if (!a || !b || !c) return ZERO;
  const [first, second] = [less(b, a), less(c, a)];
  return first.x.times(second.y).minus(first.y.times(second.x)).abs();
}

const areaOf = (facets: readonly (readonly Corner[])[]): Decimal =>
  facets.reduce((sum, facet) => sum.plus(twiceArea(facet)), ZERO);

/** Facets that lie beside each other in one plane are one piece. */
function piecesOf(facets: readonly FacetFigure[]): FacetFigure[][] {
  const pieces: { readonly own: FacetFigure[]; readonly spots: Set<string> }[] = [];
  for (const facet of facets) {
    const beside = pieces.find(
      ({ own: [first], spots }) =>
        first?.alongX.equals(facet.alongX) &&
        first.alongY.equals(facet.alongY) &&
        facet.spots.filter((name) => spots.has(name)).length > 1,
    );
    if (beside) {
      beside.own.push(facet);
      for (const name of facet.spots) beside.spots.add(name);
    } else pieces.push({ own: [facet], spots: new Set(facet.spots) });
  }
  return pieces.map(({ own }) => own);
}

/** The middles of cells are no spots that are given: each lies in the middle of those that its facets reach. */
function withMiddles(
  given: ReadonlyMap<string, Corner>,
  facets: readonly FacetFigure[],
): Map<string, Corner> {
  const around = new Map<string, Set<string>>();
  for (const { spots } of facets)
    for (const name of spots)
      if (!given.has(name))
        around.set(name, new Set([...(around.get(name) ?? []), ...spots.filter((one) => given.has(one))]));
  const middles = [...around].map(([name, spots]) => {
    const corners = [...spots].flatMap((one) => given.get(one) ?? []);
    const sum = corners.reduce((all, { x, y }) => ({ x: all.x.plus(x), y: all.y.plus(y) }), {
      x: ZERO,
      y: ZERO,
    });
    return [name, { x: sum.x.div(corners.length), y: sum.y.div(corners.length) }] as const;
  });
  return new Map([...given, ...middles]);
}

/** Where the spots of a surface lie, by name: those that are listed, or the rows of a table. */
function spotsOf(parts: Parts): ReadonlyMap<string, Corner> {
  const { spots, table } = inputOf(parts, 'fall') as {
    spots?: readonly { name?: unknown }[];
    table?: { unit: string; rows: readonly (readonly number[])[] };
  };
  const rows = table?.rows.map(([x, y]) => ({ x: `${x} ${table.unit}`, y: `${y} ${table.unit}` }));
  const named = Array.isArray(spots)
    ? spots.map((spot, i) => [String(spot.name ?? `spot ${i + 1}`), spot] as const)
    : (rows ?? []).map((row, i) => [`row ${i + 1}`, row] as const);
  return new Map(
    named.flatMap(([name, spot]) => {
      const at = cornerOf(spot);
      return at ? [[name, at] as const] : [];
    }),
  );
}

/** A surface of spots: each piece between three of them falls its own way. */
function surfaced(parts: Parts, to: Move): Levels | undefined {
  const { facetList } = (figuresOf(parts, 'fall') ?? {}) as { facetList?: readonly FacetFigure[] };
  if (!facetList) return undefined;
  const places = withMiddles(spotsOf(parts), facetList);
  const origin = to({ x: ZERO, y: ZERO });
  const falls = piecesOf(facetList).flatMap((piece): Required<Fall>[] => {
    const [{ slope, alongX, alongY }] = piece as [FacetFigure];
    if (slope.sign() === 0) return [];
    const within = piece
      .map(({ spots }) => spots.flatMap((name) => places.get(name) ?? []).map(to))
      .sort((a, b) => twiceArea(b).comparedTo(twiceArea(a)));
    const way = less(to({ x: canonicalValue(alongX), y: canonicalValue(alongY) }), origin);
    return [{ slope, way, within }];
  });
  const largest = [...falls].sort((a, b) => areaOf(b.within).comparedTo(areaOf(a.within)));
  return { falls: largest.slice(0, MOST_PIECES), heights: [] };
}

/**
 * The levels of an element, on the site.
 *
 * @param parts - its parts
 * @param ring - its outline where it lies
 */
export function levelsOf(element: Element, parts: Parts, ring: readonly Corner[], system: System): Levels {
  const to = move(element);
  return (
    staked(parts, to) ?? surfaced(parts, to) ?? fallen(parts, to, ring, system) ?? { falls: [], heights: [] }
  );
}

/** A way on the site as it lies on the page, where y runs down; of length 1. */
export function pageWay({ x, y }: Corner): PagePoint {
  const long = Decimal.hypot(x, y);
  return { x: x.div(long).toNumber(), y: -y.div(long).toNumber() };
}

/**
 * Volume from depths that were probed here and there.
 *
 * The depths are joined to a surface of triangles (Delaunay) over the outline; between probes it is
 * straight. Four probes or more on one circle, as on every rectangle, take the mean of their depths in
 * the middle: a cell of a grid counts by the mean of its four corners, and four probes here and there by
 * the mean of both diagonals, in whatever order they come. The corners of the outline take the depth of
 * their nearest probe, or the mean of those equally near. The volume is the sum over the triangles of
 * area × mean of the three depths; what lies beyond a re-entrant corner is cut off.
 *
 * Source: geometry; the mean of four corners and the nearest probe at corners are common practice.
 */

import { type Corner, doubleArea, insideRing, onRing } from '../geometry/polygon';
import { isConvex, type Spot, underSurface } from '../geometry/surface';
import { type Outline, type OutlineInput, outline, type PointInput } from '../outline/outline';
import { ringOf } from '../outline/ring';
import { type Decimal, ZERO } from '../quantity/decimal';
import * as sharedFaults from '../quantity/faults';
import { paired } from '../quantity/paired';
import {
  canonicalValue,
  type Quantity,
  type QuantityInput,
  quantityOf,
  systemOfQuantity,
} from '../quantity/quantity';
import { type Calculation, define, refuse } from '../reckoning/calculation';
import { type Field, fields, later, list, maybe, nothing, quantity, wholeNumber } from '../reckoning/fields';
import { type Limit, withinLimit } from '../reckoning/limits';
import type { Ordinary } from '../reckoning/ordinary';
import type { Pad } from '../reckoning/pad';
import { CLOSED_FORM, COMMON_PRACTICE } from '../reckoning/source';
import { oneOf } from '../reckoning/together';
import { say } from '../reckoning/words';
import * as cautions from './cautions';
import * as faults from './faults';
import type { PlaceOfThickness } from './thickness';

/** A place in the plan and the depth probed there. */
export interface ProbeInput extends PointInput {
  /** Depth from the finished top to the base, zero or more. */
  readonly depth: QuantityInput<'length'>;
}

/** Depths on a grid that starts at the origin of the plan. */
export interface ProbeGridInput {
  /** Distance between neighboring probes along x. */
  readonly spacingX: QuantityInput<'length'>;
  /** Distance between neighboring probes along y; by default that along x. */
  readonly spacingY?: QuantityInput<'length'>;
  /** Rows of depths along x, the first at y = 0; `null` where none was taken. */
  readonly depths: readonly (readonly (QuantityInput<'length'> | null)[])[];
}

/** Input of {@link probedVolume}: probes here and there, or on a grid. */
export interface ProbedVolumeInput {
  /** The plan; arcs are cut up into short straight sides. */
  readonly outline: OutlineInput;
  /** The probes, inside the outline or on its edge. */
  readonly probes?: readonly ProbeInput[];
  /** The probes on a grid, each inside the outline or on its edge. */
  readonly grid?: ProbeGridInput;
}

/** Figures of {@link probedVolume}. */
export interface ProbedVolumeFigures {
  /** Volume between base and finished top. */
  readonly volume: Quantity<'volume'>;
  /** Plan area. */
  readonly area: Quantity<'area'>;
  /** Volume over area. */
  readonly meanDepth: Quantity<'length'>;
  /** The least probe and where it is. */
  readonly thinnest: PlaceOfThickness;
  /** The greatest probe and where it is. */
  readonly thickest: PlaceOfThickness;
  /** Corners that took the depth of their nearest probe. */
  readonly unprobedCorners: Quantity<'count'>;
}

type Length = Quantity<'length'>;

interface Probe {
  readonly x: Length;
  readonly y: Length;
  readonly depth: Length;
  /** Where in the input it stands, where that is not the list of probes. */
  readonly path?: string;
}

interface Grid {
  readonly spacingX: Length;
  readonly spacingY: Length | undefined;
  readonly depths: readonly (readonly (Length | undefined)[])[];
}

interface Parsed {
  readonly outline: Outline;
  readonly probes: readonly Probe[] | undefined;
  readonly grid: Grid | undefined;
}

/** The probes of a grid, row by row. */
function gridProbes({ spacingX, spacingY, depths }: Grid): Probe[] {
  const dy = spacingY ?? spacingX;
  return depths.flatMap((row, j) =>
    row.flatMap((depth, i) => {
      if (!depth) return [];
      const path = `grid.depths[${j}][${i}]`;
      return [{ x: spacingX.times(wholeNumber(i)), y: dy.times(wholeNumber(j)), depth, path }];
    }),
  );
}

/**
 * The probes, however they were given.
 *
 * @throws {InputError} `give-one-of`, `too-few`
 */
export function probesOf({ probes: list, grid }: Parsed): readonly Probe[] {
  if ((list === undefined) === (grid === undefined))
    return refuse('', sharedFaults.giveOneOf(['probes', 'grid']));
  const found = list ?? gridProbes(grid as Grid);
  return found.length > 0 ? found : refuse('grid.depths', sharedFaults.tooFew('the grid', 1));
}

/** IRC 2009 R506.1, as quoted. */
const LEAST_THICKNESS = /*#__PURE__*/ paired('length', '3.5 in', '89 mm');
const PLACE: Ordinary = {
  of: 'a coordinate on the plan',
  most: ['50000000 ft', '15000000 m'],
  source: COMMON_PRACTICE,
};
const DEPTH: Ordinary = {
  of: 'the depth at a probe',
  example: ['4 in', '100 mm'],
  least: ['1/2 in', '12 mm'],
  most: ['36 in', '1 m'],
  source: COMMON_PRACTICE,
};
const SPACING: Ordinary = {
  of: 'the distance between probes',
  least: ['2 in', '50 mm'],
  most: ['200 ft', '60 m'],
  source: COMMON_PRACTICE,
};
const PROBES: Limit = { of: 'the probes', most: 5000 };
/** Every probe is held against every corner. */
const PAIRS: Limit = { of: 'corners times probes', most: 1_000_000 };
/** Every triangle is clipped by a hollow outline. */
const HOLLOW: Limit = { of: 'the corners of an outline that is hollow somewhere', most: 2000 };
const HOLLOW_PAIRS: Limit = {
  of: 'corners times probes where the outline is hollow somewhere',
  most: 200_000,
};

const probes = (): Field<Probe[]> =>
  list(
    fields({
      x: quantity('length', 'x', 'any', PLACE),
      y: quantity('length', 'y', 'any', PLACE),
      depth: quantity('length', 'depth', 'not-negative', DEPTH),
    }),
    1,
    PROBES.most,
  );

const ROW_LIMIT = 100;

const grid = (): Field<Grid> => {
  // A gap in the grid is written as null, since lists have no holes in JSON.
  const taken = quantity('length', 'each depth', 'not-negative', DEPTH) as Field<Length | undefined>;
  const depth = later<Length | undefined>(
    (input) => (input === null ? nothing : taken),
    () => ({ Depth: taken, 'Not probed': nothing }),
  );
  return fields({
    spacingX: quantity('length', 'spacingX', 'positive', SPACING),
    spacingY: maybe(quantity('length', 'spacingY', 'positive', SPACING)),
    depths: list(list(depth, 1, ROW_LIMIT), 1, ROW_LIMIT),
  });
};

const placeKey = ({ x, y }: Corner): string => `${x.toFixed()} ${y.toFixed()}`;

/** The probes in meters, each in a place of its own inside the outline. */
function spotsOf(list: readonly Probe[], ring: readonly Corner[]): Spot[] {
  const seen = new Map<string, number>();
  return list.map(({ x, y, depth, path: given }, i) => {
    const path = given ?? `probes[${i}]`;
    const spot = { x: canonicalValue(x), y: canonicalValue(y), z: canonicalValue(depth) };
    if (!insideRing(spot, ring) && !onRing(spot, ring)) refuse(path, faults.probeOutside(i));
    const before = seen.get(placeKey(spot));
    if (before !== undefined) refuse(path, faults.probedTwice(before, i));
    seen.set(placeKey(spot), i);
    return spot;
  });
}

/** Probes whose distances differ by less than this share of them are equally near. */
const EQUALLY_NEAR = 1e-9;

/** Depth at the nearest probe; the mean where several are equally near, so that order does not matter. */
function nearestDepth(corner: Corner, origin: Corner, spots: readonly Spot[], flat: Float64Array): Decimal {
  const [cx, cy] = [corner.x.minus(origin.x).toNumber(), corner.y.minus(origin.y).toNumber()];
  const far = (i: number): number =>
    ((flat[2 * i] as number) - cx) ** 2 + ((flat[2 * i + 1] as number) - cy) ** 2;
  let least = Infinity;
  for (let i = 0; i < spots.length; i += 1) least = Math.min(least, far(i));
  const near = spots.filter((_, i) => far(i) <= least * (1 + EQUALLY_NEAR));
  return near.reduce((sum, { z }) => sum.plus(z), ZERO).div(near.length);
}

function place({ x, y, depth }: Probe): PlaceOfThickness {
  return { thickness: depth, x, y };
}

/** Of probes alike in depth the one nearest to the origin along x, then y: not the one typed first. */
function extremes(list: readonly Probe[]): Pick<ProbedVolumeFigures, 'thinnest' | 'thickest'> {
  const pick = (deeper: 1 | -1): Probe =>
    list.reduce((best, p) => {
      const order = p.depth.compareTo(best.depth) * deeper || best.x.compareTo(p.x) || best.y.compareTo(p.y);
      return order > 0 ? p : best;
    });
  return { thinnest: place(pick(-1)), thickest: place(pick(1)) };
}

/** The surface that the probes make over an outline. */
export interface ProbedSurface {
  readonly ring: readonly Corner[];
  /** The probes, in the order given. */
  readonly spots: readonly Spot[];
  /** Corners with no probe, as their nearest one. */
  readonly corners: readonly Spot[];
}

/** Probes and bare corners over the outline, checked. */
export function probedSurface(input: Parsed): ProbedSurface {
  const { outline: shape } = input;
  const list = probesOf(input);
  if (shape.shape === 'ring') refuse('outline', faults.notServed('ring', 'a surface of probes'));
  const ring = ringOf(shape);
  withinLimit(PROBES, list.length, 'grid.depths');
  const hollow = !isConvex(ring);
  withinLimit(hollow ? HOLLOW_PAIRS : PAIRS, ring.length * list.length, 'probes');
  if (hollow) withinLimit(HOLLOW, ring.length, 'outline');
  const spots = spotsOf(list, ring);
  const probed = new Set(spots.map(placeKey));
  const bare = ring.filter((corner) => !probed.has(placeKey(corner)));
  const origin = ring[0] as Corner;
  const flat = Float64Array.from(
    spots.flatMap(({ x, y }) => [x.minus(origin.x).toNumber(), y.minus(origin.y).toNumber()]),
  );
  const corners = bare.map((corner) => ({ ...corner, z: nearestDepth(corner, origin, spots, flat) }));
  return { ring, spots, corners };
}

/** The door of {@link probedVolume}, for those who draw the same input. */
export const probedFields = (): Field<Parsed> =>
  fields({ outline: outline(), probes: maybe(probes()), grid: maybe(grid()) }, oneOf(['probes'], ['grid']));

function reckon(input: Parsed, pad: Pad): ProbedVolumeFigures {
  const list = probesOf(input);
  const { ring, spots, corners } = probedSurface(input);
  const unprobedCorners = wholeNumber(corners.length);
  if (corners.length > 0) {
    pad.assume({
      name: 'probes',
      value: say`${{ corners: unprobedCorners }} corners as their nearest probe`,
      because: 'no probe was taken there',
      override: 'Probe at the corners of the outline',
      source: COMMON_PRACTICE,
    });
  }
  const { volume } = underSurface([...spots, ...corners], ring);
  const system = systemOfQuantity((list[0] as Probe).depth);
  const V = quantityOf('volume', volume, system);
  const A = quantityOf('area', doubleArea(ring).div(2), system);
  const mean = V.over(A);
  const least = LEAST_THICKNESS.undercutBy(mean);
  if (least) pad.caution(cautions.thinSlab(least, mean));
  pad.step('mean depth, V being the sum over the triangles', 'd = V ÷ A', { V, A }, mean);
  return {
    volume: V,
    area: A,
    meanDepth: system === 'metric' ? mean.in('mm') : mean.in('in'),
    ...extremes(list),
    unprobedCorners,
  };
}

/**
 * Volume from depths that were probed here and there.
 *
 * @param input - the outline, and probes inside it
 * @returns volume, mean depth, the thinnest and the thickest place; exact decimals where the outline has
 * no re-entrant corner, otherwise good to about 14 digits; arcs are cut up into straight sides, which
 * makes a circle 0.07% smaller
 * @throws {InputError} `not-served` for a ring, `probe-outside`, `probed-twice`, `not-placed`, and the codes of outlines
 * @source closed form; corners take the depth of their nearest probe, as is common practice
 * @example
 * ```ts
 * import { probedVolume } from 'flatwork-reckoner';
 *
 * const { figures } = probedVolume({
 *   outline: { shape: 'rectangle', length: '20 ft', width: '10 ft' },
 *   probes: [
 *     { x: '0 ft', y: '0 ft', depth: '4 in' },
 *     { x: '20 ft', y: '0 ft', depth: '4 in' },
 *     { x: '20 ft', y: '10 ft', depth: '5 in' },
 *     { x: '0 ft', y: '10 ft', depth: '5 in' },
 *   ],
 * });
 * figures.meanDepth.format(); // '4.5 in'
 * figures.volume.format(); // '2.78 yd3'
 * ```
 */
export const probedVolume: Calculation<ProbedVolumeInput, ProbedVolumeFigures> = /*#__PURE__*/ define({
  id: 'probed-volume',
  title: 'Volume from depth probes',
  version: 1,
  sources: [CLOSED_FORM, COMMON_PRACTICE],
  limits: [PROBES, HOLLOW, HOLLOW_PAIRS, PAIRS],
  input: probedFields,
  reckon,
  takes: () => [{ item: 'concrete', from: 'volume' }],
});

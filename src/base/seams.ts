/**
 * How long the seams are of strips that are laid over a plan, side by side, each lapping over the one before.
 *
 * Strips `w` wide that lap by `o` have seams `w − o` apart; each is as long as the plan is wide there. They run along or
 * across, from either edge, whichever leaves the least to tape, as a crew lays them.
 */
import type { Corner } from '../geometry/polygon';
import type { Outline } from '../outline/outline';
import { type Opening, ringsOf } from '../outline/region';
import { type Decimal, ZERO } from '../quantity/decimal';
import { InputError } from '../quantity/input-error';

/** Strips over a plan, in meters. */
export interface Strips {
  readonly width: Decimal;
  readonly lap: Decimal;
  /** How far each end and the outer edges are turned up. */
  readonly turnUp: Decimal;
}

type Rings = readonly (readonly Corner[])[];

const swapped = (rings: Rings): Corner[][] => rings.map((ring) => ring.map(({ x, y }) => ({ x: y, y: x })));

const byValue = (a: Decimal, b: Decimal): number => (a.lessThan(b) ? -1 : 1);

/** Where edges cross a level line; those that end on it count on one of its sides. */
function crossings(rings: Rings, level: Decimal, isAbove: (y: Decimal) => boolean): Decimal[] {
  return rings
    .flatMap((ring) =>
      ring.flatMap((a, i) => {
        const b = ring[(i + 1) % ring.length] as Corner;
        if (isAbove(a.y) === isAbove(b.y)) return [];
        return [a.x.plus(level.minus(a.y).times(b.x.minus(a.x)).div(b.y.minus(a.y)))];
      }),
    )
    .sort(byValue);
}

/** How long a seam is: what of a level line lies within, with what is turned up at the ends of each stretch. */
const seamIn = (places: readonly Decimal[], turnUp: Decimal): Decimal =>
  places.reduce(
    (sum, x, i) =>
      i % 2
        ? sum
            .plus(x)
            .minus(places[i - 1] as Decimal)
            .plus(turnUp)
            .plus(turnUp)
        : sum,
    ZERO,
  );

/** The longer of both where sides lie on the line itself. */
function seamAt(rings: Rings, level: Decimal, turnUp: Decimal): Decimal {
  const below = seamIn(
    crossings(rings, level, (y) => y.lessThan(level)),
    turnUp,
  );
  const above = seamIn(
    crossings(rings, level, (y) => !y.greaterThan(level)),
    turnUp,
  );
  return below.greaterThan(above) ? below : above;
}

interface Extent {
  readonly from: Decimal;
  readonly to: Decimal;
}

function extentOf([outer = []]: Rings): Extent {
  const levels = outer.map(({ y }) => y).sort(byValue);
  return { from: levels[0] as Decimal, to: levels.at(-1) as Decimal };
}

/** So little more than whole strips is a stray digit. */
const STRAY = 1e-9;

/** How many seams lie between the strips that it takes from edge to edge. */
function seamCount({ from, to }: Extent, { width, lap, turnUp }: Strips): number {
  const across = to.minus(from).plus(turnUp).plus(turnUp);
  const strips = across.minus(lap).div(width.minus(lap)).minus(STRAY).toNumber();
  return Math.max(0, Math.ceil(strips) - 1);
}

/** All seams of strips that run along x, the first of them at the lower edge or at the upper one. */
function seamsFrom(rings: Rings, strips: Strips, upwards: boolean): Decimal {
  const extent = extentOf(rings);
  const { width, lap, turnUp } = strips;
  const within = (y: Decimal): Decimal =>
    y.lessThan(extent.from) ? extent.from : y.greaterThan(extent.to) ? extent.to : y;
  return Array.from({ length: seamCount(extent, strips) }, (_, i) => {
    const off = width
      .minus(lap)
      .times(i + 1)
      .plus(lap.div(2))
      .minus(turnUp);
    return seamAt(rings, within(upwards ? extent.from.plus(off) : extent.to.minus(off)), turnUp);
  }).reduce((sum, seam) => sum.plus(seam), ZERO);
}

/** More corners on more seams than these cost too much to be laid out. */
const MOST_WORK = 20_000;

/** The corners of a plan and of its openings; nothing where it has none that are known. */
function ringsOver(outline: Outline, openings: readonly Opening[] | undefined): Rings | undefined {
  try {
    const rings = ringsOf({ outline, openings });
    return [rings.outer, ...rings.openings];
  } catch (error) {
    if (error instanceof InputError) return undefined;
    throw error;
  }
}

/** The least to tape, in meters; nothing where corners are not known, or too many for their strips. */
export function leastSeams(
  outline: Outline,
  openings: readonly Opening[] | undefined,
  strips: Strips,
): Decimal | undefined {
  const rings = ringsOver(outline, openings);
  if (!rings) return undefined;
  const ways = [rings, swapped(rings)];
  const corners = rings.reduce((sum, ring) => sum + ring.length, 0);
  if (ways.some((way) => seamCount(extentOf(way), strips) * corners > MOST_WORK)) return undefined;
  return ways
    .flatMap((way) => [seamsFrom(way, strips, true), seamsFrom(way, strips, false)])
    .reduce((least, each) => (each.lessThan(least) ? each : least));
}

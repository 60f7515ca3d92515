/**
 * Clipping of regions, by a library, in binary numbers.
 *
 * Only where a closed form does not do: coordinates come back good to about 15 digits.
 */
import { difference, intersection } from 'polyclip-ts';
import { Decimal } from '../quantity/decimal';
import { type Corner, doubleArea } from './polygon';

type Ring = [number, number][];

const ringOfNumbers = (ring: readonly Corner[]): Ring => ring.map(({ x, y }) => [x.toNumber(), y.toNumber()]);

const cornerOf = ([x, y]: [number, number]): Corner => ({ x: new Decimal(x), y: new Decimal(y) });

/** A ring in binary numbers. */
type Binary = readonly { readonly x: number; readonly y: number }[];

const pairsOf = (ring: Binary): Ring => ring.map(({ x, y }) => [x, y]);

/** What is left of a simple ring without others: of each piece the outer ring, counterclockwise, then its holes. */
export function partsLess(ring: Binary, less: readonly Binary[]): Corner[][][] {
  const parts = difference([pairsOf(ring)], ...less.map((hole) => [pairsOf(hole)]));
  return parts.map((polygon) =>
    polygon.map((p) => p.slice(0, -1).map((c) => cornerOf(c as [number, number]))),
  );
}

/** The rings that two simple rings have in common; outer rings counterclockwise, holes clockwise. */
export function commonRings(a: readonly Corner[], b: readonly Corner[]): Corner[][] {
  return intersection([ringOfNumbers(a)], [ringOfNumbers(b)]).flatMap((polygon) =>
    polygon.map((ring, i) => {
      // The library closes its rings; ours are open.
      const open = ring.slice(0, -1).map((p) => cornerOf(p as [number, number]));
      const counterclockwise = doubleArea(open).isPositive();
      return counterclockwise === (i === 0) ? open : open.reverse();
    }),
  );
}

/** A region in binary numbers: its outer ring, then the openings in it. */
export type BinaryRegion = readonly Binary[];

const twiceArea = (ring: Ring): number =>
  ring.reduce((sum, [x, y], i) => {
    const [u, v] = ring[(i + 1) % ring.length] as [number, number];
    return sum + x * v - u * y;
  }, 0);

const areaIn = (polygons: ReturnType<typeof intersection>): number =>
  polygons
    .flatMap((polygon) => polygon.map((ring, i) => (i === 0 ? 1 : -1) * Math.abs(twiceArea(ring as Ring))))
    .reduce((sum, twice) => sum + twice / 2, 0);

/** The area that two regions have in common. */
export const commonArea = (a: BinaryRegion, b: BinaryRegion): number =>
  areaIn(intersection(a.map(pairsOf), b.map(pairsOf)));

/** The area that a region has in common with any of others, counted once where several of them are. */
export const coveredArea = (a: BinaryRegion, others: readonly BinaryRegion[]): number => {
  const whole = a.map(pairsOf);
  return areaIn([whole]) - areaIn(difference(whole, ...others.map((other) => other.map(pairsOf))));
};

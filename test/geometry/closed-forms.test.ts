/** Meshes, clipping and insets against closed forms. */
import { describe, expect, it } from 'vitest';
import { commonRings, partsLess } from '../../src/geometry/clip';
import { insetRing } from '../../src/geometry/inset';
import { type Corner, doubleArea } from '../../src/geometry/polygon';
import { edgeBefore, neighborsOf, nextEdge, type PlanSpot, type Tin, tinOver } from '../../src/geometry/tin';
import { ringCentroid } from '../../src/outline/centroid';
import { Decimal } from '../../src/quantity/decimal';

const ringOf = (...points: readonly (readonly [number, number])[]): Corner[] =>
  points.map(([x, y]) => ({ x: new Decimal(x), y: new Decimal(y) }));
const box = (x: number, y: number, w: number, h: number): Corner[] =>
  ringOf([x, y], [x + w, y], [x + w, y + h], [x, y + h]);
const areaOf = (ring: readonly Corner[]): number => doubleArea(ring).toNumber() / 2;
const areas = (rings: readonly (readonly Corner[])[]): number[] => rings.map(areaOf).sort((a, b) => a - b);

/** Spots on a plane, 1 m apart; those inside stand a little off where `jitter` is given. */
function tinOf(within: readonly PlanSpot[] | undefined, holes: readonly PlanSpot[][], jitter: number): Tin {
  const at = Array.from({ length: 81 }, (_, i) => {
    const [c, r] = [i % 9, Math.floor(i / 9)];
    // Off the lines x, y = 0, 2, 4, 6 and 8, on which the rings below run.
    const off = (c % 2) * (r % 2) * jitter;
    return [c + off * Math.sin(7 * i), r + off * Math.cos(5 * i)] as const;
  });
  const x = Float64Array.from(at, ([a]) => a);
  const y = Float64Array.from(at, ([, b]) => b);
  const z = Float64Array.from(at, ([a, b]) => 3 - 0.02 * a + 0.03 * b);
  return tinOver({ x, y, z }, { within, without: holes, thin: 1e-6 });
}

const facetArea = ({ x, y, corner }: Tin, t: number): number => {
  const [a, b, c] = [0, 1, 2].map((k) => corner[3 * t + k] ?? 0) as [number, number, number];
  const [dx, dy] = [(v: number) => (x[v] ?? 0) - (x[a] ?? 0), (v: number) => (y[v] ?? 0) - (y[a] ?? 0)];
  return Math.abs(dx(b) * dy(c) - dx(c) * dy(b)) / 2;
};

const plan = (...points: readonly (readonly [number, number])[]): PlanSpot[] =>
  points.map(([x, y]) => ({ x, y }));
const ELL = plan([0, 0], [8, 0], [8, 4], [4, 4], [4, 8], [0, 8]);
const HOLE = plan([2, 2], [4, 2], [4, 4], [2, 4]);
const FAR_HOLE = plan([6, 0], [8, 0], [8, 2], [6, 2]);

const endsOf = ({ corner }: Tin, e: number): [number, number] => [corner[e] ?? 0, corner[nextEdge(e)] ?? 0];

/** The length of all sides that have no facet beyond them. */
const lengthAround = (tin: Tin): number =>
  Array.from(tin.twin, (twin, e) => {
    const [a, b] = endsOf(tin, e);
    return twin === -1 ? Math.hypot((tin.x[a] ?? 0) - (tin.x[b] ?? 0), (tin.y[a] ?? 0) - (tin.y[b] ?? 0)) : 0;
  }).reduce((a, b) => a + b, 0);

/** A side and its twin run from one end to the other and back. */
function seeTwins(tin: Tin): void {
  for (const [e, twin] of tin.twin.entries()) {
    expect(edgeBefore(nextEdge(e))).toBe(e);
    if (twin !== -1) expect([...endsOf(tin, twin).reverse(), tin.twin[twin]]).toEqual([...endsOf(tin, e), e]);
  }
}

/** Neighbors are just the ends of sides, each once. */
function seeNeighbors(tin: Tin): void {
  const sides = Array.from(tin.corner, (_, e) => endsOf(tin, e)).flatMap(([a, b]) => [
    `${a} ${b}`,
    `${b} ${a}`,
  ]);
  const { from, to } = neighborsOf(tin);
  const packed = Array.from(tin.x, (_, v) => [...to.slice(from[v], from[v + 1])].map((w) => `${v} ${w}`));
  expect(packed.flat().sort()).toEqual([...new Set(sides)].sort());
}

describe('a mesh', () => {
  it.each([
    ['all', undefined, [], 64, 32],
    ['an L', ELL, [], 48, 32],
    ['less a hole', undefined, [HOLE], 60, 40],
    ['an L less a hole in its corner and one at its end', ELL, [HOLE, FAR_HOLE], 40, 40],
  ])('over %s covers it, and nothing else', (_, within, holes, area, around) => {
    for (const jitter of [0, 0.2]) {
      const tin = tinOf(within, holes as PlanSpot[][], jitter);
      let sum = 0;
      for (let t = 0; t < tin.facets; t += 1) sum += facetArea(tin, t);
      expect(sum).toBeCloseTo(area, 9);
      expect(lengthAround(tin)).toBeCloseTo(around, 9);
      // One plane falls alike everywhere.
      for (const fall of tin.fallX) expect(fall).toBeCloseTo(0.02, 10);
      for (const fall of tin.fallY) expect(fall).toBeCloseTo(-0.03, 10);
      seeTwins(tin);
      seeNeighbors(tin);
    }
  });

  it('has no slivers outside', () => {
    // The middle of the lower side lies 1 mm inside the line of its ends: 4 m² less 2 cm² over 2.
    const spots = {
      x: Float64Array.of(0, 1, 2, 2, 1, 0),
      y: Float64Array.of(0, 0.001, 0, 2, 2.5, 2),
      z: new Float64Array(6),
    };
    const over = (thin: number): number => {
      const tin = tinOver(spots, { within: undefined, without: [], thin });
      return Array.from({ length: tin.facets }, (_, t) => facetArea(tin, t)).reduce((a, b) => a + b, 0);
    };
    expect(over(0)).toBeCloseTo(4.5, 12);
    expect(over(0.0005)).toBeCloseTo(4.5, 12);
    expect(over(0.002)).toBeCloseTo(4.499, 12);
  });
});

const binary = (...sides: Parameters<typeof box>): { x: number; y: number }[] =>
  box(...sides).map(({ x, y }) => ({ x: x.toNumber(), y: y.toNumber() }));

describe('clipping', () => {
  it('of two boxes', () => {
    expect(areas(commonRings(box(0, 0, 4, 3), box(2, 1, 5, 7)))).toEqual([4]);
    expect(commonRings(box(0, 0, 1, 1), box(3, 3, 1, 1))).toEqual([]);
    const cross = commonRings(
      box(0, 2, 6, 2),
      ringOf([0, 0], [6, 0], [6, 6], [4, 6], [4, 1], [2, 1], [2, 6], [0, 6]),
    );
    expect(areas(cross)).toEqual([4, 4]);
  });

  it('leaves pieces, each with its holes', () => {
    const [holed] = partsLess(binary(0, 0, 6, 6), [binary(1, 1, 2, 1), binary(4, 4, 1, 1)]);
    expect(
      areas(holed ?? [])
        .map(Math.abs)
        .sort((a, b) => a - b),
    ).toEqual([1, 2, 36]);
    expect(areaOf(holed?.[0] ?? [])).toBe(36);
    expect(holed?.map((ring) => ring.length)).toEqual([4, 4, 4]);
    expect(areas(partsLess(binary(0, 0, 6, 2), [binary(2, -1, 1, 4)]).map(([outer]) => outer ?? []))).toEqual(
      [4, 6],
    );
    expect(partsLess(binary(1, 1, 1, 1), [binary(0, 0, 3, 3)])).toEqual([]);
  });
});

describe('rings', () => {
  it('set in by their width', () => {
    for (const w of [0.25, 0.5, 0.75]) {
      const by = new Decimal(w);
      expect(areaOf(insetRing(box(0, 0, 7, 4), by) ?? [])).toBeCloseTo((7 - 2 * w) * (4 - 2 * w), 12);
      // The circle in a triangle of 3, 4 and 5 has a radius of 1.
      expect(areaOf(insetRing(ringOf([0, 0], [4, 0], [0, 3]), by) ?? [])).toBeCloseTo(6 * (1 - w) ** 2, 12);
      const ell = ringOf([0, 0], [8, 0], [8, 4], [4, 4], [4, 8], [0, 8]);
      // Five corners out and one in: 48 less a band of 32 m, whose corners are counted four times too often.
      expect(areaOf(insetRing(ell, by) ?? [])).toBeCloseTo(48 - 32 * w + 4 * w * w, 12);
    }
  });

  it('balance where their parts do', () => {
    const { x, y } = ringCentroid(ringOf([0, 0], [8, 0], [8, 4], [4, 4], [4, 8], [0, 8]));
    // A box of 8 by 4 and one of 4 by 4 above its left half.
    expect([x.toNumber(), y.toNumber()]).toEqual(
      [(32 * 4 + 16 * 2) / 48, (32 * 2 + 16 * 6) / 48].map((v) => expect.closeTo(v, 12)),
    );
    const moved = ringCentroid(ringOf([1000, 2000], [1003, 2000], [1000, 2003]));
    expect([moved.x.toNumber(), moved.y.toNumber()]).toEqual([1001, 2001]);
  });
});

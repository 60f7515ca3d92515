/**
 * Slabs with slanted sides as the search sees them, against a clipping library: random rings cut to random cells, and
 * what the pieces measure.
 */
import { intersection } from 'polyclip-ts';
import { describe, expect, it } from 'vitest';
import { GeneralSpace, wedged } from '../../src/joints/layout/general';
import type { Axis } from '../../src/joints/layout/space';
import { runs } from '../support/effort';
import { drawn, isRing, type Pair, starAround } from '../support/joints/stars';

const LIMITS = { spacing: 3, leastSide: 0.6, ratio: 1.5, weight: 1e6, strict: false };
const AXES = ['x', 'y'] as const;
const KINK = 15;
const SHARPEST = 60;

const at = (axis: Axis): 0 | 1 => (axis === 'x' ? 0 : 1);

/** The turn at each corner in degrees, to the left if positive. */
const turnsOf = (ring: readonly Pair[]): number[] =>
  ring.map(([x, y], i) => {
    const [ax, ay] = ring[(i + ring.length - 1) % ring.length] as Pair;
    const [bx, by] = ring[(i + 1) % ring.length] as Pair;
    const turn = ((Math.atan2(by - y, bx - x) - Math.atan2(y - ay, x - ax)) * 180) / Math.PI;
    return ((turn + 540) % 360) - 180;
  });

const hollows = (ring: readonly Pair[]): Pair[] => {
  const turns = turnsOf(ring);
  return ring.filter((_, i) => (turns[i] as number) < -KINK - 0.001);
};

const areaOf = (ring: readonly Pair[]): number =>
  ring.reduce((sum, [x, y], i) => {
    const [u, v] = ring[(i + 1) % ring.length] as Pair;
    return sum + (x * v - u * y) / 2;
  }, 0);

interface Case {
  readonly ring: Pair[];
  readonly space: GeneralSpace;
  readonly what: string;
}

const MARK = { x: 3.25, y: -1.75 };

function cases(seed: number, count: number): { next: () => number; all: Case[] } {
  const next = drawn(seed);
  const all: Case[] = [];
  while (all.length < count) {
    const grid = next() < 0.5 ? 0 : 0.5;
    const ring = starAround(next, [3, -2], 5, grid);
    if (!isRing(ring)) continue;
    const marks = next() < 0.3 ? [MARK] : [];
    const fixed = { x: next() < 0.3 ? [2.875] : [], y: [] };
    const site = {
      ring: ring.map(([x, y]) => ({ x, y })),
      marks,
      fixed,
      leftOut: () => 0.25,
      passedOver: 0.5,
    };
    all.push({ ring, space: new GeneralSpace(site, LIMITS), what: JSON.stringify({ ring, marks, fixed }) });
  }
  return { next, all };
}

const endsOf = (ring: readonly Pair[], axis: Axis): [number, number] => [
  Math.min(...ring.map((p) => p[at(axis)])),
  Math.max(...ring.map((p) => p[at(axis)])),
];

const boxOf = (x: readonly [number, number], y: readonly [number, number]): Pair[] => [
  [x[0], y[0]],
  [x[1], y[0]],
  [x[1], y[1]],
  [x[0], y[1]],
];

/** Corners that rounding makes two of come once. */
const distinct = (ring: readonly Pair[]): Pair[] =>
  ring.filter(([x, y], i) => {
    const [u, v] = ring[(i + ring.length - 1) % ring.length] as Pair;
    return Math.hypot(x - u, y - v) > 1e-9;
  });

/** The parts of a ring in a cell, without specks. */
const partsOf = (ring: Pair[], box: Pair[]): Pair[][] =>
  (intersection([ring], [box]) as Pair[][][])
    .map(([outer]) => distinct(outer as Pair[]))
    .filter((part) => Math.abs(areaOf(part)) > 1e-9);

/** Broken rules of a part: a sliver, too long, a wedge, a sharp corner on one of the lines. */
function brokenIn(part: Pair[], x: readonly [number, number], y: readonly [number, number]): number {
  const [[x0, x1], [y0, y1]] = [endsOf(part, 'x'), endsOf(part, 'y')];
  const [w, h] = [x1 - x0, y1 - y0];
  const [short, long] = [Math.min(w, h), Math.max(w, h)];
  if (long > LIMITS.spacing + 1e-9) return Number.POSITIVE_INFINITY;
  const area = Math.abs(areaOf(part));
  const narrow = short < LIMITS.leastSide - 1e-9;
  const wedge = !narrow && area < (long * LIMITS.leastSide) / 2 - 1e-9;
  const turns = turnsOf(areaOf(part) > 0 ? part : part.reverse());
  const near = (a: number, b: readonly [number, number]): boolean =>
    Math.abs(a - b[0]) < 1e-9 || Math.abs(a - b[1]) < 1e-9;
  const sharp = part.some(
    (p, i) => (near(p[0], x) || near(p[1], y)) && (turns[i] as number) > 180 - SHARPEST + 0.001,
  );
  return (narrow ? 1 : 0) + (long > LIMITS.ratio * short + 1e-9 ? 1 : 0) + (wedge ? 1 : 0) + (sharp ? 1 : 0);
}

/** Between two of the places for lines, or a part of that. */
function cellGap({ space }: Case, axis: Axis, next: () => number): [number, number] {
  const places = [...space.anchors(axis).map((a) => a.at)];
  const i = Math.floor(next() * (places.length - 1));
  const [lo, hi] = [places[i] as number, places[i + 1] as number];
  const cut = next();
  if (cut < 0.2) return [lo, hi];
  if (cut < 0.7) return [lo, places[Math.min(places.length - 1, i + 2)] as number];
  return cut < 0.85 ? [lo, lo + (hi - lo) * 0.4] : [lo + (hi - lo) * 0.25, hi];
}

/** From the place before a corner to the one after it. */
function aroundCorner({ ring, space }: Case, axis: Axis, corner: number): [number, number] {
  const places = space.anchors(axis).map((a) => a.at);
  const i = places.indexOf((ring[corner] as Pair)[at(axis)]);
  return [places[Math.max(0, i - 1)] as number, places[Math.min(places.length - 1, i + 1)] as number];
}

/** What a cell costs, held to its pieces. */
function judgedCell({ ring, space, what }: Case, x: [number, number], y: [number, number]): string {
  const say = `${what} ${JSON.stringify([x, y])}`;
  const [gx, gy] = [space.gap('x', ...x), space.gap('y', ...y)];
  const parts = partsOf(ring, boxOf(x, y));
  expect(space.filled(gx, gy), say).toBe(parts.length > 0);
  const [cost, back] = [new Float64Array(1), new Float64Array(1)];
  space.costs('x', gx, [gy], cost);
  space.costs('y', gy, [gx], back);
  expect(back, say).toEqual(cost);
  const within = (v: number, [lo, hi]: [number, number]): boolean => v > lo + 1e-9 && v < hi - 1e-9;
  const marks = [...hollows(ring), ...space.site.marks.map((m): Pair => [m.x, m.y])];
  if (marks.some(([px, py]) => within(px, x) && within(py, y))) {
    expect(cost[0], say).toBe(Number.POSITIVE_INFINITY);
    return 'unmet';
  }
  if (parts.length === 0) expect(cost[0], say).toBe(0);
  if (parts.length !== 1) return 'none';
  const broken = brokenIn(parts[0] as Pair[], x, y);
  if (broken === Number.POSITIVE_INFINITY) expect(cost[0], say).toBe(broken);
  else expect(Math.abs((cost[0] as number) - broken), say).toBeLessThan(1e-7);
  return 'judged';
}

describe('a slab with slanted sides', () => {
  it('is sawn along a line as far as slab lies on it, less what is left out', () => {
    const { next, all } = cases(31, runs(200));
    for (const { ring, space, what } of all)
      for (const axis of AXES) {
        const [lo, hi] = endsOf(ring, axis);
        const place = lo + (hi - lo) * next();
        // A thin strip along the line has its length in slab, by its area.
        const [thin, wide] = [[place - 1e-4, place + 1e-4] as const, [-90, 90] as const];
        const strip = axis === 'x' ? boxOf(thin, wide) : boxOf(wide, thin);
        const slab = (intersection([ring], [strip]) as Pair[][][]).reduce(
          (sum, [outer]) => sum + Math.abs(areaOf((outer as Pair[]).slice(0, -1))) / 2e-4,
          0,
        );
        const near = ring.some((p) => Math.abs(p[at(axis)] - place) < 1e-3);
        if (!near)
          expect(space.lineLength(axis, place), `${what} ${axis} ${place}`).toBeCloseTo(
            Math.max(0, slab - 0.25),
            5,
          );
      }
  });

  it('has lines at its ends, its inside corners and, where they are few, at the others', () => {
    const { all } = cases(32, runs(200));
    for (const { ring, space, what } of all) {
      const turns = turnsOf(ring);
      const corners = ring.filter((_, i) => Math.abs(turns[i] as number) > KINK + 0.001);
      for (const axis of AXES) {
        const k = at(axis);
        const { fixed, marks } = space.site;
        const own = corners.length > 8 ? hollows(ring) : corners;
        const places = [
          ...own.map((p) => p[k]),
          ...endsOf(ring, axis),
          ...fixed[axis],
          ...marks.map((m) => m[axis]),
        ];
        const sorted = [...new Set(places)].sort((a, b) => a - b);
        expect(
          space.anchors(axis).map((a) => a.at),
          what,
        ).toEqual(sorted);
        expect(
          space
            .anchors(axis)
            .filter((a) => a.must)
            .map((a) => a.at),
        ).toEqual(fixed[axis]);
      }
    }
  });

  it('costs in a cell what the piece of it breaks, and cannot be where an inside corner is left unmet', () => {
    const { next, all } = cases(33, runs(200));
    let [judged, unmet] = [0, 0];
    for (const one of all) {
      const corner = Math.floor(next() * one.ring.length);
      const around = [aroundCorner(one, 'x', corner), aroundCorner(one, 'y', corner)] as const;
      const cells = [1, 2, 3, 4, 5].map(() => [cellGap(one, 'x', next), cellGap(one, 'y', next)] as const);
      const told = [around, ...cells].map(([x, y]) => judgedCell(one, x, y));
      judged += told.filter((what) => what === 'judged').length;
      unmet += told.filter((what) => what === 'unmet').length;
    }
    expect(judged).toBeGreaterThan(all.length);
    expect(unmet).toBeGreaterThan(0);
  });

  it('needs no less sawing than its rows by themselves, where it has no inside corner', () => {
    const { all } = cases(34, runs(300));
    let convex = 0;
    for (const { ring, space, what } of all) {
      if (hollows(ring).length > 0) {
        expect(space.leastLength(), what).toBe(0);
        continue;
      }
      if (turnsOf(ring).some((turn) => turn < -1e-9)) continue;
      convex += 1;
      // Rows of a width W need W / spacing - 1 lines across them, summed up over all rows; both ways.
      const area = Math.abs(areaOf(ring));
      const each = AXES.map((axis) => {
        const [lo, hi] = endsOf(ring, axis);
        return Math.max(0, area / LIMITS.spacing - (hi - lo));
      });
      expect(space.leastLength(), what).toBeCloseTo(
        Math.max(0, (each[0] as number) + (each[1] as number) - 0.5),
        9,
      );
    }
    expect(convex).toBeGreaterThan(5);
  });

  it('tells how much work it took', () => {
    const { all } = cases(35, 3);
    for (const { ring, space } of all) {
      const [x, y] = [space.gap('x', ...endsOf(ring, 'x')), space.gap('y', ...endsOf(ring, 'y'))];
      const before = space.work;
      space.filled(x, y);
      const first = space.work - before;
      expect(first).toBeGreaterThan(0);
      // The strip is cut once.
      space.filled(x, y);
      expect(space.work - before - first).toBeLessThan(first);
      expect(space.work - before - first).toBeGreaterThan(0);
      expect(space.widest('x', x)).toBe(x.hi - x.lo);
    }
  });
});

describe('a wedge', () => {
  it('has less area than a triangle as long as it and as wide as the least side', () => {
    expect(wedged(1.49, 3, 2, 1)).toBe(true);
    expect(wedged(1.5, 3, 2, 1)).toBe(false);
    expect(wedged(1.49, 2, 3, 1)).toBe(true);
    expect(wedged(1.5, 2, 3, 1)).toBe(false);
  });
});

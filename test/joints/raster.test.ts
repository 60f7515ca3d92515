/**
 * Slabs with sides along x and y as the search sees them, against counting whole cells: random yards in whole meters,
 * openings among them, each cell a square of one meter that is slab or not.
 */
import { describe, expect, it } from 'vitest';
import { type Mark, Marks, unmetIn } from '../../src/joints/layout/marks';
import { OrthogonalSpace, piecesIn } from '../../src/joints/layout/orthogonal';
import { PASSED } from '../../src/joints/layout/rules';
import type { Axis, Gap } from '../../src/joints/layout/space';
import { runs } from '../support/effort';
import { between, ringsOf, stream, type Xy, yard } from '../support/joints/yards';

const LIMITS = { spacing: 5, leastSide: 2, ratio: 1.5, weight: 1e6, strict: false };
const AXES = ['x', 'y'] as const;

/** Even and odd by sides to the left of a point. */
const inside = (rings: readonly (readonly Xy[])[], x: number, y: number): boolean =>
  rings.reduce((count, ring) => {
    const own = ring.filter(([ax, ay], i) => {
      const [, by] = ring[(i + 1) % ring.length] as Xy;
      return ax < x && ay > y !== by > y;
    });
    return count + own.length;
  }, 0) %
    2 ===
  1;

interface Case {
  readonly rings: Xy[][];
  readonly space: OrthogonalSpace;
  readonly slab: (x: number, y: number) => boolean;
  readonly size: Readonly<Record<Axis, readonly [number, number]>>;
  readonly what: string;
}

function caseOf(next: () => number, marks: readonly Mark[] = []): Case {
  const drawn = yard(next, between(next, 1, 4), 10, 14, 0.6);
  const rings = ringsOf(drawn);
  const [outer] = rings as [Xy[]];
  const fixed = { x: next() < 0.3 ? [2.5] : [], y: next() < 0.3 ? [3] : [] };
  const passed = {
    leftOut: (axis: Axis, at: number) => (axis === 'x' && at === 2.5 ? 0.75 : 0),
    passedOver: 1.5,
  };
  const site = { rings: rings.map((ring) => ring.map(([x, y]) => ({ x, y }))), marks, fixed, ...passed };
  const ends = (k: 0 | 1): [number, number] => [
    Math.min(...outer.map((p) => p[k])),
    Math.max(...outer.map((p) => p[k])),
  ];
  return {
    rings,
    space: new OrthogonalSpace(site, LIMITS),
    slab: (x, y) => inside(rings, x + 0.5, y + 0.5),
    size: { x: ends(0), y: ends(1) },
    what: JSON.stringify({ rings, fixed }),
  };
}

const cellAt = ({ slab }: Case, axis: Axis, along: number, across: number): boolean =>
  axis === 'x' ? slab(along, across) : slab(across, along);

const range = ([lo, hi]: readonly [number, number]): number[] =>
  Array.from({ length: hi - lo }, (_, i) => lo + i);

/** Whole places, and one between that lies on the slab. */
const placesOn = ({ size }: Case, axis: Axis): number[] => {
  const [lo, hi] = size[axis];
  return [...range([lo, hi]), hi, ...(lo < 2 && hi > 3 ? [2.5] : [])];
};

const acrossOf = (axis: Axis): Axis => (axis === 'x' ? 'y' : 'x');

/** How long each run of slab is between two places of a row. */
const runsOf = (one: Case, axis: Axis, across: number, between: readonly [number, number]): number[] =>
  range(between)
    .map((along) => (cellAt(one, axis, along, across) ? 'x' : ' '))
    .join('')
    .split(' ')
    .map((run) => run.length)
    .filter((run) => run > 0);

describe('a slab as a raster', () => {
  const next = stream(101);
  const cases = Array.from({ length: runs(150) }, () => caseOf(next));

  it('has a place for a line at every corner and where one must be, in order', () => {
    for (const one of cases)
      for (const axis of AXES) {
        const at = axis === 'x' ? 0 : 1;
        const must = one.space.site.fixed[axis];
        const places = new Set([...one.rings.flat().map((p) => p[at]), ...must]);
        expect(one.space.anchors(axis), one.what).toEqual(
          [...places].sort((a, b) => a - b).map((p) => ({ at: p, must: must.includes(p) })),
        );
      }
  });

  it('is sawn along a line where there is slab on both sides of it', () => {
    for (const one of cases)
      for (const axis of AXES)
        for (const at of placesOn(one, axis)) {
          const both = (across: number): boolean =>
            cellAt(one, axis, Math.floor(at), across) && cellAt(one, axis, Math.ceil(at) - 1, across);
          const sawn = range(one.size[acrossOf(axis)]).filter(both).length;
          const less = axis === 'x' && at === 2.5 && sawn > 0 ? 0.75 : 0;
          expect(one.space.lineLength(axis, at), `${one.what} ${axis} ${at}`).toBeCloseTo(sawn - less, 9);
          const told = one.space.runs(axis, at);
          expect(told.reduce((sum, [a, b]) => sum + b - a, 0)).toBe(sawn);
          told.forEach(([a, b], i) => {
            expect(b).toBeGreaterThan(a);
            // Runs that touch are one.
            if (i > 0) expect(a).toBeGreaterThan((told[i - 1] as [number, number])[1]);
          });
        }
  });

  /** A gap and the cells in it along each place across. */
  const gapsOf = (one: Case, axis: Axis, count: number): { gap: Gap; lo: number; hi: number }[] => {
    const [from, to] = one.size[axis];
    return Array.from({ length: count }, () => {
      const lo = between(next, from, to - 1);
      const hi = between(next, lo + 1, Math.min(to, lo + 7));
      return { gap: one.space.gap(axis, lo, hi), lo, hi };
    });
  };

  it('is as wide in a gap as the longest row of slab there', () => {
    for (const one of cases)
      for (const axis of AXES)
        for (const { gap, lo, hi } of gapsOf(one, axis, 6)) {
          const rows = range(one.size[acrossOf(axis)]).map((across) => runsOf(one, axis, across, [lo, hi]));
          const widest = Math.max(0, ...rows.flat());
          expect(one.space.widest(axis, gap), `${one.what} ${axis} ${lo} ${hi}`).toBe(widest);
        }
  });

  it('needs no less sawing than every row and column by itself', () => {
    for (const one of cases) {
      const rows = AXES.flatMap((axis) =>
        range(one.size[acrossOf(axis)]).flatMap((across) => runsOf(one, axis, across, one.size[axis])),
      );
      const least = rows.reduce((sum, wide) => sum + Math.ceil(wide / LIMITS.spacing) - 1, 0);
      expect(one.space.leastLength(), one.what).toBeCloseTo(Math.max(0, least - 1.5), 9);
    }
  });

  /** The cells of one part, taken out of those that are open. */
  function flooded(open: Set<string>, first: string): [number, number][] {
    const [stack, own]: [string[], [number, number][]] = [[first], []];
    open.delete(first);
    for (let at = stack.pop(); at !== undefined; at = stack.pop()) {
      const [i, j] = at.split(' ').map(Number) as [number, number];
      own.push([i, j]);
      const beside = [`${i + 1} ${j}`, `${i - 1} ${j}`, `${i} ${j + 1}`, `${i} ${j - 1}`];
      stack.push(...beside.filter((cell) => open.delete(cell)));
    }
    return own;
  }

  const over = (cells: readonly [number, number][], k: 0 | 1): number =>
    Math.max(...cells.map((p) => p[k])) - Math.min(...cells.map((p) => p[k])) + 1;

  /** The parts of slab in a cell; `undefined` where one is no rectangle. */
  function partsOf(
    one: Case,
    x: [number, number],
    y: [number, number],
  ): { w: number; h: number }[] | undefined {
    const cells = range(x).flatMap((i) => range(y).flatMap((j) => (one.slab(i, j) ? [`${i} ${j}`] : [])));
    const open = new Set(cells);
    const parts: [number, number][][] = [];
    for (const cell of cells) if (open.has(cell)) parts.push(flooded(open, cell));
    const whole = parts.every((own) => own.length === over(own, 0) * over(own, 1));
    return whole ? parts.map((own) => ({ w: over(own, 0), h: over(own, 1) })) : undefined;
  }

  const rulesBroken = ({ w, h }: { w: number; h: number }): number => {
    const [short, long] = [Math.min(w, h), Math.max(w, h)];
    if (long > LIMITS.spacing) return Number.POSITIVE_INFINITY;
    return (short < LIMITS.leastSide ? 1 : 0) + (long > LIMITS.ratio * short ? 1 : 0);
  };

  it('costs in a cell what its rectangles break, and cannot be where a corner is left unmet', () => {
    let [rectangles, met] = [0, 0];
    for (const one of cases) {
      const [xs, ys] = [gapsOf(one, 'x', 8), gapsOf(one, 'y', 8)];
      const across = ys.map(({ gap }) => gap);
      for (const x of xs) {
        const costs = new Float64Array(across.length);
        one.space.costs('x', x.gap, across, costs);
        ys.forEach((y, i) => {
          const what = `${one.what} ${[x.lo, x.hi, y.lo, y.hi]}`;
          const parts = partsOf(one, [x.lo, x.hi], [y.lo, y.hi]);
          expect(one.space.filled(x.gap, y.gap), what).toBe(parts?.length !== 0);
          const back = new Float64Array(1);
          one.space.costs('y', y.gap, [x.gap], back);
          expect(back[0], what).toBe(costs[i]);
          const expected =
            parts?.reduce((sum, part) => sum + rulesBroken(part), 0) ?? Number.POSITIVE_INFINITY;
          if (expected === Number.POSITIVE_INFINITY) expect(costs[i], what).toBe(expected);
          else {
            // A hair for a shape that is not square never comes to a rule.
            const hair = parts?.reduce((sum, { w, h }) => sum + Math.abs(w - h), 0) ?? 0;
            expect(Math.abs((costs[i] as number) - expected - 1e-9 * hair), what).toBeLessThan(1e-10);
            rectangles += 1;
          }
          if (parts === undefined) met += 1;
        });
      }
    }
    expect(rectangles).toBeGreaterThan(cases.length);
    expect(met).toBeGreaterThan(cases.length);
  });

  it('has one key for gaps that cost the same with every other, and for no others', () => {
    for (const one of cases)
      for (const axis of AXES) {
        const [all, others] = [gapsOf(one, axis, 12), gapsOf(one, acrossOf(axis), 8)];
        const cost = ({ gap }: { gap: Gap }): string => {
          const into = new Float64Array(others.length);
          one.space.costs(
            axis,
            gap,
            others.map((o) => o.gap),
            into,
          );
          return into.join();
        };
        const byKey = new Map<string, string>();
        for (const gap of all) {
          const key = gap.gap.key.join();
          expect(cost(gap), `${one.what} ${axis} ${key}`).toBe(byKey.get(key) ?? cost(gap));
          byKey.set(key, cost(gap));
        }
      }
  });

  it('falls within a block into the rectangles that flooding finds', () => {
    for (const one of cases) {
      const { raster } = one.space;
      const { xs, ys, columns, rows } = raster;
      for (let k = 0; k < 8; k += 1) {
        const [i0, j0] = [between(next, 0, columns - 1), between(next, 0, rows - 1)];
        const [i1, j1] = [between(next, i0, columns - 1), between(next, j0, rows - 1)];
        const at = (list: readonly number[], i: number): number => list[i] as number;
        const parts = partsOf(one, [at(xs, i0), at(xs, i1 + 1)], [at(ys, j0), at(ys, j1 + 1)]);
        const told = piecesIn(raster, { i0, i1, j0, j1 })?.map((p) => ({
          w: at(xs, p.i1 + 1) - at(xs, p.i0),
          h: at(ys, p.j1 + 1) - at(ys, p.j0),
        }));
        const sorted = (list: { w: number; h: number }[] | undefined): string | undefined =>
          list
            ?.map(({ w, h }) => `${w} ${h}`)
            .sort()
            .join();
        expect(sorted(told), `${one.what} ${[i0, i1, j0, j1]}`).toBe(sorted(parts));
      }
    }
  });
});

describe('points to be met', () => {
  const next = stream(102);
  const drawn = (): Mark[] =>
    Array.from({ length: between(next, 1, 9) }, () => {
      const at = { x: between(next, 0, 6), y: between(next, 0, 6) };
      return next() < 0.5 ? at : { ...at, spared: between(next, 1, 4) };
    });

  it('are counted that lie in the open between lines, those that may be passed by as they weigh', () => {
    for (let k = 0; k < runs(400); k += 1) {
      const all = drawn();
      const marks = new Marks(all, 1e-9);
      const line = (): [number, number] => {
        const lo = between(next, -1, 6) + (next() < 0.3 ? 0.5 : 0);
        return [lo, lo + between(next, 1, 4)];
      };
      const [x, y] = [line(), line()];
      const within = all.filter((m) => m.x > x[0] && m.x < x[1] && m.y > y[0] && m.y < y[1]);
      const must = within.some(({ spared }) => !spared);
      const may = within.reduce((sum, { spared = 0 }) => sum + spared, 0);
      const expected = must ? Number.POSITIVE_INFINITY : may * PASSED;
      const what = JSON.stringify({ all, x, y });
      const [rx, ry] = [marks.between('x', ...x), marks.between('y', ...y)];
      expect(marks.unmet(rx, ry), what).toBeCloseTo(expected, 12);
      expect(unmetIn(marks.along('x', rx), ry.from, ry.to), what).toBeCloseTo(expected, 12);
      expect(unmetIn(marks.along('y', ry), rx.from, rx.to), what).toBeCloseTo(expected, 12);
      expect(marks.count('x')).toBe(new Set(all.map((m) => m.x)).size);
      expect(marks.count('y')).toBe(new Set(all.map((m) => m.y)).size);
    }
  });

  it('are met by a line within a hair of them', () => {
    const marks = new Marks([{ x: 3, y: 3 }], 1e-6);
    const across = marks.between('y', 0, 6);
    const unmet = (lo: number, hi: number): number => marks.unmet(marks.between('x', lo, hi), across);
    expect(unmet(3 - 5e-7, 6)).toBe(0);
    expect(unmet(0, 3 + 5e-7)).toBe(0);
    expect(unmet(3 - 2e-6, 6)).toBe(Number.POSITIVE_INFINITY);
    expect(unmet(0, 3 + 2e-6)).toBe(Number.POSITIVE_INFINITY);
  });
});

/** Surfaces over spots: against clipping by jsts, closed forms, and what makes a triangulation one of Delaunay's. */
import { describe, expect, it } from 'vitest';
import { type Corner, doubleArea, insideRing, isSimple, onRing } from '../../src/geometry/polygon';
import {
  flatRing,
  isConvex,
  type Spot,
  shareWithin,
  type Triangle,
  trianglesOf,
  underSurface,
} from '../../src/geometry/surface';
import { insidePlanRing, tinOver } from '../../src/geometry/tin';
import { ringCentroid } from '../../src/outline/centroid';
import { Decimal } from '../../src/quantity/decimal';
import { runs } from '../support/effort';
import { seeded } from '../support/outlines';
import { oracle, type Ring } from '../support/planar';

type Flat = readonly [x: number, y: number];

const corner = ([x, y]: Flat): Corner => ({ x: new Decimal(x), y: new Decimal(y) });
const spot = (x: number, y: number, z: number): Spot => ({ ...corner([x, y]), z: new Decimal(z) });
const flat = ({ x, y }: Corner): Flat => [x.toNumber(), y.toNumber()];
const twice = ([a, b, c]: readonly [Flat, Flat, Flat]): number =>
  (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
const key = ([x, y]: Flat): string => `${x} ${y}`;

/** A simple ring of whole meters around the middle of a small grid, mostly not convex; its sides often run along lines of it. */
function gridRing(random: () => number): Flat[] {
  for (;;) {
    const count = 4 + Math.floor(random() * 6);
    const ring = Array.from({ length: count }, (_, i): Flat => {
      const [r, a] = [1 + 4 * random(), ((i + 0.8 * random()) / count) * 2 * Math.PI];
      return [5 + Math.round(r * Math.cos(a)), 5 + Math.round(r * Math.sin(a))];
    });
    const distinct = ring.every((p, i) => key(p) !== key(ring[(i + 1) % count] as Flat));
    const own = ring.map(corner);
    if (distinct && doubleArea(own).isPositive() && !doubleArea(own).isZero() && isSimple(own)) return ring;
  }
}

const pick = <T>(random: () => number, list: readonly T[]): T =>
  list[Math.floor(random() * list.length)] as T;

/** Three places, counterclockwise; now and then along a side of the ring. */
function triangleBy(random: () => number, ring: readonly Flat[]): readonly [Flat, Flat, Flat] {
  const place = (): Flat => [Math.floor(random() * 11), Math.floor(random() * 11)];
  const i = Math.floor(random() * ring.length);
  const [p, q] = [ring[i] as Flat, ring[(i + 1) % ring.length] as Flat];
  const [a, b, c] = random() < 0.5 ? [p, q, place()] : [random() < 0.5 ? p : place(), place(), place()];
  const turn = pick(random, [
    [a, b, c],
    [b, c, a],
    [c, a, b],
  ] as const);
  return twice(turn) < 0 ? [turn[0], turn[2], turn[1]] : turn;
}

describe('the share of a triangle within an outline', () => {
  it('is that of jsts, whichever way the outline runs and wherever it stands', () => {
    const random = seeded(5);
    for (let i = 0; i < runs(400); i += 1) {
      const ring = gridRing(random);
      const triangle = triangleBy(random, ring);
      const outline = pick(random, [ring, ring.toReversed()]);
      const shift = pick(random, [0, 700_000]);
      const moved = ([x, y]: Flat): Spot => spot(x + shift, y - shift, 0);
      const own = triangle.map(moved) as unknown as Triangle;
      const corners = outline.map(moved);
      const share = shareWithin(own, corners[0] as Corner, flatRing(corners));
      const area = twice(triangle) / 2;
      const wanted = area === 0 ? 0 : oracle.common(triangle as Ring, ring) / area;
      expect(share, JSON.stringify({ ring, triangle })).toBeCloseTo(wanted, 9);
    }
  });
});

/** Places on the grid, each once: the corners and some more. */
function placesOn(random: () => number, ring: readonly Flat[], more: number): Flat[] {
  const places = new Map(ring.map((p) => [key(p), p]));
  for (let i = 0; i < more; i += 1) {
    const p: Flat = [Math.floor(random() * 11), Math.floor(random() * 11)];
    places.set(key(p), p);
  }
  return [...places.values()];
}

/** A probe outside the form is none: those within, or on it. */
const within = (places: readonly Flat[], ring: readonly Flat[]): Flat[] => {
  const form = ring.map(corner);
  return places
    .map(corner)
    .filter((p) => onRing(p, form) || insideRing(p, form))
    .map(flat);
};

/** By how much a place lies within the circle through three others, in the measure of Delaunay's test. */
function withinCircle(p: Flat, three: readonly [Flat, Flat, Flat]): number {
  const [[ax, ay], [bx, by], [cx, cy]] = three.map(([x, y]) => [x - p[0], y - p[1]]) as unknown as [
    Flat,
    Flat,
    Flat,
  ];
  const [aa, bb, cc] = [ax * ax + ay * ay, bx * bx + by * by, cx * cx + cy * cy];
  return aa * (bx * cy - by * cx) - bb * (ax * cy - ay * cx) + cc * (ax * by - ay * bx);
}

describe('triangles over spots', () => {
  const hullArea = (places: readonly Flat[]): number => {
    // The monotone chain of Andrew (1979), from memory.
    const sorted = [...places].sort(([a, b], [c, d]) => a - c || b - d);
    const half = (list: readonly Flat[]): Flat[] => {
      const kept: Flat[] = [];
      for (const p of list) {
        while (kept.length > 1 && twice([kept.at(-2) as Flat, kept.at(-1) as Flat, p]) <= 0) kept.pop();
        kept.push(p);
      }
      return kept.slice(0, -1);
    };
    const hull = [...half(sorted), ...half(sorted.toReversed())];
    return doubleArea(hull.map(corner)).toNumber() / 2;
  };

  it('run counterclockwise, cover all between the spots once, and have no spot in their circles', () => {
    const random = seeded(8);
    for (let i = 0; i < runs(60); i += 1) {
      const places = placesOn(random, gridRing(random), 6);
      const spots = places.map(([x, y]) => spot(x, y, x - y));
      const found = trianglesOf(spots);
      const doubled = found.map((t) => doubleArea(t).toNumber());
      for (const area of doubled) expect(area).toBeGreaterThanOrEqual(0);
      expect(doubled.reduce((a, b) => a + b, 0) / 2).toBeCloseTo(hullArea(places), 9);
      // A plane stays one, middles of cells and all.
      for (const { x, y, z } of found.flat()) expect(z.minus(x).plus(y).abs().toNumber()).toBeLessThan(1e-12);
      const given = new Set(spots);
      const plain = found.filter((t, k) => (doubled[k] ?? 0) > 1e-9 && t.every((s) => given.has(s)));
      for (const triangle of plain) {
        const three = triangle.map(flat) as [Flat, Flat, Flat];
        for (const p of places) expect(withinCircle(p, three)).toBeLessThan(1e-6);
      }
    }
  });

  it('meet in the middle of spots on one circle, at their mean height', () => {
    const five = [
      [3, 4, 1],
      [-3, 4, 2],
      [5, 0, 4],
      [-4, -3, 8],
      [4, -3, 16],
    ] as const;
    const found = trianglesOf(five.map(([x, y, z]) => spot(100 + x, 200 + y, z)));
    expect(found.length).toBe(5);
    for (const triangle of found) {
      const middle = triangle.find(({ x, y }) => x.equals(101) && y.equals('200.4'));
      expect(middle?.z.toNumber()).toBe(6.2);
    }
    // One that lies just off the circle is a corner like others: two triangles and no middle.
    for (const off of [1e-7, -1e-7])
      expect(trianglesOf([spot(0, 0, 0), spot(10, 0, 0), spot(10, 10, 0), spot(0, 10 + off, 0)]).length).toBe(
        2,
      );
    expect(trianglesOf([spot(0, 0, 0), spot(10, 0, 0), spot(10, 10, 0), spot(0, 10, 0)]).length).toBe(4);
  });
});

describe('an outline', () => {
  it('is convex without a re-entrant corner, wherever that stands', () => {
    const ell = [
      [0, 0],
      [8, 0],
      [8, 4],
      [4, 4],
      [4, 8],
      [0, 8],
    ] as const;
    for (const [i] of ell.entries()) {
      const turned = [...ell.slice(i), ...ell.slice(0, i)];
      expect(isConvex(turned.map(corner))).toBe(false);
      const without = turned.filter(([x, y]) => x !== 4 || y !== 4);
      expect(isConvex(without.map(corner))).toBe(true);
      // A corner in a straight side is none that draws in.
      expect(isConvex([...without.map(corner), corner([0, 4])].toSorted((a, b) => angle(a) - angle(b)))).toBe(
        true,
      );
    }
  });
});

const angle = ({ x, y }: Corner): number => Math.atan2(y.toNumber() - 3, x.toNumber() - 3);

describe('volume under a surface', () => {
  it('of a plane is area times its height where the outline balances', () => {
    const random = seeded(21);
    for (let i = 0; i < runs(60); i += 1) {
      const ring = gridRing(random);
      const [shift, p, q, r] = [pick(random, [0, 900_000]), 40 + random(), random() - 0.5, random() - 0.5];
      const places = within(placesOn(random, ring, 12), ring);
      const spots = places.map(([x, y]) => spot(x + shift, y + 2 * shift, p + q * x + r * y));
      const outline = pick(random, [ring, ring.toReversed()]).map(([x, y]) =>
        corner([x + shift, y + 2 * shift]),
      );
      const { area, volume } = underSurface(spots, outline);
      const middle = ringCentroid(ring.map(corner));
      const wanted = doubleArea(ring.map(corner)).toNumber() / 2;
      expect(area.abs().toNumber()).toBeCloseTo(wanted, 8);
      const height = p + q * middle.x.toNumber() + r * middle.y.toNumber();
      expect(volume.abs().toNumber() / (wanted * height)).toBeCloseTo(1, 9);
    }
  });

  it('of any surface is that of each triangle cut by jsts', () => {
    const random = seeded(34);
    let cut = 0;
    for (let i = 0; i < runs(200); i += 1) {
      const ring = gridRing(random);
      const spots = within(placesOn(random, ring, 12), ring).map(([x, y]) =>
        spot(x, y, 5 + Math.floor(9 * random())),
      );
      let [area, volume] = [0, 0];
      for (const triangle of trianglesOf(spots)) {
        const [a, b, c] = triangle.map(flat) as [Flat, Flat, Flat];
        const all = twice([a, b, c]);
        if (all < 1e-9) continue;
        const part = oracle.commonPart([a, b, c], ring);
        if (part.area > 1e-9 && part.area < all / 2 - 1e-9) cut += 1;
        // The height where the part balances, from the shares of the corners.
        const p: Flat = [part.x, part.y];
        const shares = [twice([p, b, c]), twice([a, p, c]), twice([a, b, p])].map((v) => v / all);
        const height = triangle.reduce((sum, { z }, k) => sum + z.toNumber() * (shares[k] ?? 0), 0);
        area += part.area;
        volume += part.area * height;
      }
      const found = underSurface(spots, ring.map(corner));
      expect(found.area.toNumber()).toBeCloseTo(area, 8);
      expect(found.volume.toNumber()).toBeCloseTo(volume, 7);
    }
    expect(cut).toBeGreaterThan(runs(25));
  });
});

const QUARTERS: readonly ((p: Flat) => Flat)[] = [
  ([x, y]) => [x, y],
  ([x, y]) => [-y, x],
  ([x, y]) => [-x, -y],
  ([x, y]) => [y, -x],
];

describe('a mesh', () => {
  it('tells what lies inside a ring', () => {
    const random = seeded(13);
    for (let i = 0; i < runs(100); i += 1) {
      const ring = gridRing(random);
      for (let k = 0; k < 10; k += 1) {
        // Never on a side: those run through points of the grid with slopes of small whole numbers.
        const [x, y] = [Math.floor(random() * 11) + 0.1237, Math.floor(random() * 11) + 0.0411];
        const box: Ring = [
          [x, y],
          [x + 1e-5, y],
          [x + 1e-5, y + 1e-5],
          [x, y + 1e-5],
        ];
        const inside = oracle.common(box, ring) > 5e-11;
        expect(
          insidePlanRing(
            x,
            y,
            ring.map(([a, b]) => ({ x: a, y: b })),
          ),
        ).toBe(inside);
      }
    }
  });

  it('keeps thin facets inside', () => {
    const areaOver = (places: readonly Flat[]): number => {
      const tin = tinOver(
        {
          x: Float64Array.from(places, ([x]) => x),
          y: Float64Array.from(places, ([, y]) => y),
          z: new Float64Array(places.length),
        },
        { within: undefined, without: [], thin: 0.01 },
      );
      return Array.from({ length: tin.facets }, (_, t) => {
        const [a, b, c] = [0, 1, 2].map((k) => tin.corner[3 * t + k] ?? 0) as [number, number, number];
        const at = (v: number): Flat => [tin.x[v] ?? 0, tin.y[v] ?? 0];
        return Math.abs(twice([at(a), at(b), at(c)])) / 2;
      }).reduce((a, b) => a + b, 0);
    };
    const square: readonly Flat[] = [
      [0, 0],
      [4, 0],
      [4.1, 4],
      [0, 4.2],
    ];
    const all = doubleArea(square.map(corner)).toNumber() / 2;
    expect(areaOver([...square, [2, 2], [2.004, 2.003], [1, 3.2]])).toBeCloseTo(all, 9);
  });

  // What lies between a chain that draws in by little and its chord is no surface, however many slivers that makes.
  it('loses all slivers along its outside, one behind the other, at whichever side', () => {
    const chain = Array.from({ length: 9 }, (_, i) => [i - 4, 0.0005 * (16 - (i - 4) ** 2)] as const);
    const rest = [
      [4, 6],
      [0.3, 6.8],
      [-4, 6],
      [-1, 3],
      [1.5, 4],
    ] as const;
    for (const turn of QUARTERS)
      for (const order of [1, -1]) {
        const turned = [...chain, ...rest].map(turn);
        const places = order === 1 ? turned : turned.toReversed();
        const tin = tinOver(
          {
            x: Float64Array.from(places, ([x]) => x),
            y: Float64Array.from(places, ([, y]) => y),
            z: new Float64Array(places.length),
          },
          { within: undefined, without: [], thin: 0.01 },
        );
        let area = 0;
        for (let t = 0; t < tin.facets; t += 1) {
          const [a, b, c] = [0, 1, 2].map((k) => tin.corner[3 * t + k] ?? 0) as [number, number, number];
          const at = (v: number): Flat => [tin.x[v] ?? 0, tin.y[v] ?? 0];
          expect(Math.sign(twice([at(a), at(b), at(c)]))).toBe(tin.turn);
          area += Math.abs(twice([at(a), at(b), at(c)])) / 2;
        }
        const outside = turned.slice(0, 12).map(corner);
        expect(area).toBeCloseTo(doubleArea(outside).toNumber() / 2, 9);
        // A chain along the outside has one facet over each of its sides, and none where the slivers were.
        expect(Array.from(tin.twin).filter((e) => e === -1).length).toBe(12);
      }
  });
});

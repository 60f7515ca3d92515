/**
 * Outlines against jsts, a general-purpose geometry library, and against each other.
 *
 * 2,500 random star-shaped outlines with re-entrant corners; agreement to 1e-12.
 */
import { describe, expect, it } from 'vitest';
import { commonRings } from '../../src/geometry/clip';
import { bandOf, insetRing } from '../../src/geometry/inset';
import { type Corner, doubleArea, insideRing, isSimple, perimeterOf } from '../../src/geometry/polygon';
import { type OutlineInput, slabVolume } from '../../src/index';
import { ringCentroid } from '../../src/outline/centroid';
import { Decimal } from '../../src/quantity/decimal';
import { runs } from '../support/effort';
import { hasFlatCorner, polygonInput, seeded, starRing, type WholeRing } from '../support/outlines';
import { oracle } from '../support/planar';

const COUNT = runs(2500);
const corners = (ring: WholeRing): Corner[] =>
  ring.map(([x, y]) => ({ x: new Decimal(x), y: new Decimal(y) }));
const close = (a: number, b: number, scale = Math.max(Math.abs(a), Math.abs(b))): boolean =>
  Math.abs(a - b) <= 1e-12 * Math.max(scale, 1e-300);

const random = seeded(20_261_125);
const rings = Array.from({ length: COUNT }, () => starRing(random));

describe('random outlines against jsts', () => {
  it('agree on which are simple', () => {
    for (const ring of rings) expect(isSimple(corners(ring))).toBe(oracle.simple(ring));
    // And on rings that mostly are not.
    const wild = seeded(7);
    for (let i = 0; i < runs(2000); i += 1) {
      const ring = Array.from(
        { length: 5 },
        () => [Math.floor(wild() * 12), Math.floor(wild() * 12)] as const,
      );
      const own = corners(ring);
      const repeated = own.some(
        (c, k) => c.x.equals(own[(k + 1) % 5]?.x ?? 0) && c.y.equals(own[(k + 1) % 5]?.y ?? 0),
      );
      if (repeated || doubleArea(own).isZero()) continue;
      expect(isSimple(own), JSON.stringify(ring)).toBe(oracle.simple(ring));
    }
  });

  it('agree on area, perimeter and centroid', () => {
    for (const ring of rings) {
      const own = corners(ring);
      expect(close(doubleArea(own).abs().div(2).toNumber(), oracle.area(ring))).toBe(true);
      expect(close(perimeterOf(own).toNumber(), oracle.length(ring))).toBe(true);
      const [c, o] = [ringCentroid(own), oracle.centroid(ring)];
      // The oracle sums in binary numbers far from the origin, so the size of the plan sets the scale.
      expect(close(c.x.toNumber(), o.x, 2e4) && close(c.y.toNumber(), o.y, 2e4)).toBe(true);
    }
  });

  it('agree on the inset, wherever no side vanishes', () => {
    let compared = 0;
    for (const ring of rings) {
      const own = corners(ring);
      const w = 5 + 60 * random();
      const inset = insetRing(own, new Decimal(w));
      if (!inset || hasFlatCorner(ring)) continue;
      compared += 1;
      const area = doubleArea(inset).div(2).toNumber();
      expect(Math.abs(area - oracle.inset(ring, w)) <= 1e-12 * oracle.area(ring) * 10).toBe(true);
      const band = bandOf(own, new Decimal(w));
      const byFormula = band?.perimeter.times(w).minus(band.corners.times(w).times(w)).toNumber() ?? 0;
      expect(close(byFormula, oracle.area(ring) - area, oracle.area(ring))).toBe(true);
    }
    expect(compared).toBeGreaterThan(COUNT / 3);
  });

  it('agree on what two outlines have in common', () => {
    for (let i = 0; i + 1 < COUNT; i += 2) {
      const [a, b] = [rings[i], rings[i + 1]] as [WholeRing, WholeRing];
      const [[ax, ay], [bx, by]] = [a[0], b[0]] as [readonly [number, number], readonly [number, number]];
      const moved = b.map(([x, y]) => [x - bx + ax, y - by + ay] as const);
      const common = commonRings(corners(a), corners(moved));
      const area = common.reduce((sum, ring) => sum + doubleArea(ring).toNumber() / 2, 0);
      expect(close(area, oracle.common(a, moved), oracle.area(a))).toBe(true);
    }
  });

  it('are exact decimals where sides are straight', () => {
    for (const ring of rings.slice(0, 300)) {
      const { area } = slabVolume({ outline: polygonInput(ring), thickness: '4 in' }).figures;
      let double = 0n;
      ring.forEach(([x, y], i) => {
        const [u, v] = ring[(i + 1) % ring.length] as readonly [number, number];
        double += BigInt(x) * BigInt(v) - BigInt(u) * BigInt(y);
      });
      // Sixteenths of an inch squared, twice over: 512 to the square inch.
      const exact = new Decimal((double < 0n ? -double : double).toString()).div(512).toFixed();
      expect(area.in('in2').toString()).toBe(`${exact} in2`);
    }
  });
});

describe('jagged outlines', () => {
  const spikes = (count: number, quarter: boolean): Corner[] =>
    Array.from({ length: count }, (_, i) => {
      const [along, out] = [new Decimal(i), new Decimal(i === 0 || i === count - 1 ? 0 : 10 + (i % 2) * 500)];
      return quarter ? { x: out, y: along } : { x: along, y: out };
    });

  it('with very many long sides beside each other are looked through in a moment, however they lie', () => {
    for (const quarter of [false, true]) expect(isSimple(spikes(4000, quarter))).toBe(true);
  });

  it('are found to cross wherever they do', () => {
    const ring = spikes(1000, false);
    for (const at of [3, 500, 996]) {
      const crossed = ring.map((c, i) => (i === at ? { x: c.x.plus('2.5'), y: c.y } : c));
      expect(isSimple(crossed)).toBe(false);
    }
  });

  it('that are hopelessly tangled are refused at once', () => {
    const points = Array.from({ length: 12_000 }, (_, i) => ({
      x: `${i % 2 ? 1000 : i / 1e4} m`,
      y: `${i / 1e3} m`,
    }));
    const attempt = slabVolume.attempt({ outline: { shape: 'polygon', points }, thickness: '4 in' });
    expect(attempt.ok ? [] : attempt.error.issues.map(({ code, path }) => [code, path])).toEqual([
      ['too-many', 'outline.points'],
    ]);
  });
});

describe('outlines with very many faults', () => {
  it('are refused with the first hundred of them', () => {
    const points = Array.from({ length: 10_000 }, (_, i) => ({ x: i, y: i }));
    for (const outline of [
      { shape: 'polygon', points },
      { shape: 'combined', parts: [{ shape: 'polygon', points }] },
    ]) {
      const attempt = slabVolume.attempt({ outline, thickness: '4 in' } as never);
      expect(attempt.ok ? 0 : attempt.error.issues.length).toBe(100);
    }
  });
});

describe('outlines by different measurements', () => {
  const areaOf = (outline: OutlineInput): number =>
    slabVolume({ outline, thickness: '4 in' }).figures.area.toNumber('ft2');

  it('come to the same', () => {
    const tape = (x: number): string => `${x.toFixed(20)} ft`;
    const next = seeded(42);
    for (let i = 0; i < runs(300); i += 1) {
      // A fan that is star-shaped from its first corner: others by growing angle around it.
      const n = 3 + Math.floor(next() * 6);
      const others = Array.from({ length: n }, (_, k) => {
        const [r, a] = [5 + 20 * next(), ((k + 0.2 + 0.6 * next()) / n) * Math.PI * 0.9];
        return [r * Math.cos(a), r * Math.sin(a)] as const;
      });
      const ring = [[0, 0] as const, ...others];
      const side = ring.map((p, k) =>
        Math.hypot(
          p[0] - (ring[(k + 1) % ring.length]?.[0] ?? 0),
          p[1] - (ring[(k + 1) % ring.length]?.[1] ?? 0),
        ),
      );
      const rays = others.map(([x, y]) => Math.hypot(x, y));
      const taped: OutlineInput = {
        shape: 'taped',
        sides: side.map(tape),
        diagonals: rays.slice(1, -1).map(tape),
      };
      const heading = ring.map((p, k) => {
        const q = ring[(k + 1) % ring.length] ?? [0, 0];
        return Math.atan2(q[1] - p[1], q[0] - p[0]);
      });
      const legs = side.map((length, k) => ({
        length: tape(length),
        turn: `${((((heading[(k + 1) % heading.length] ?? 0) - (heading[k] ?? 0)) * 180) / Math.PI).toFixed(20)} deg`,
      }));
      const wanted = oracle.area(ring);
      expect(areaOf(taped) / wanted).toBeCloseTo(1, 10);
      expect(areaOf({ shape: 'walk', legs }) / wanted).toBeCloseTo(1, 10);
    }
  });

  it('U, L, regular and trapezoid are their own corners', () => {
    const ell: OutlineInput = {
      shape: 'walk',
      legs: [
        { length: '20 ft', turn: 'left' },
        { length: '10 ft', turn: 'left' },
        { length: '8 ft', turn: 'right' },
        { length: '6 ft', turn: 'left' },
        { length: '12 ft', turn: 'left' },
        { length: '16 ft', turn: 'left' },
      ],
    };
    expect(areaOf(ell)).toBe(
      areaOf({ shape: 'L', length: '20 ft', width: '16 ft', notchLength: '8 ft', notchWidth: '6 ft' }),
    );
    const you: OutlineInput = {
      shape: 'walk',
      legs: [
        { length: '20 ft', turn: 'left' },
        { length: '10 ft', turn: 'left' },
        { length: '7 ft', turn: 'left' },
        { length: '4 ft', turn: 'right' },
        { length: '6 ft', turn: 'right' },
        { length: '4 ft', turn: 'left' },
        { length: '7 ft', turn: 'left' },
        { length: '10 ft', turn: 'left' },
      ],
    };
    const u: OutlineInput = {
      shape: 'U',
      length: '20 ft',
      width: '10 ft',
      notchLength: '6 ft',
      notchWidth: '4 ft',
    };
    expect(areaOf(you)).toBe(areaOf(u));
    const perimeters = [you, u].map((outline) =>
      slabVolume({ outline, thickness: '4 in' }).figures.perimeter?.format(),
    );
    expect(perimeters).toEqual(['68 ft', '68 ft']);
    const hexagon: OutlineInput = {
      shape: 'walk',
      legs: Array.from({ length: 6 }, () => ({ length: '4 ft', turn: '60 deg' })),
    };
    expect(areaOf({ shape: 'regular', sides: 6, side: '4 ft' })).toBeCloseTo(areaOf(hexagon), 12);
  });

  it('a sector of a whole turn is a circle or a ring, and a half moon is half', () => {
    expect(areaOf({ shape: 'sector', radius: '5 ft', angle: '360 deg' })).toBeCloseTo(
      areaOf({ shape: 'circle', diameter: '10 ft' }),
      12,
    );
    expect(areaOf({ shape: 'sector', radius: '5 ft', angle: '360 deg', innerRadius: '3 ft' })).toBeCloseTo(
      areaOf({ shape: 'ring', outerDiameter: '10 ft', innerDiameter: '6 ft' }),
      12,
    );
    const moon: OutlineInput = {
      shape: 'curved',
      points: [
        { x: '-5 ft', y: '0 ft' },
        { x: '5 ft', y: '0 ft', rise: '5 ft' },
      ],
    };
    expect(areaOf(moon)).toBeCloseTo(areaOf({ shape: 'circle', diameter: '10 ft' }) / 2, 12);
    const perimeter = slabVolume({ outline: moon, thickness: '4 in' }).figures.perimeter?.toNumber('ft');
    expect(perimeter).toBeCloseTo(10 + 5 * Math.PI, 12);
  });

  it('rise and radius say the same', () => {
    const with_ = (curve: object): number =>
      areaOf({
        shape: 'curved',
        points: [
          { x: '0 ft', y: '0 ft' },
          { x: '10 ft', y: '0 ft', ...curve },
          { x: '10 ft', y: '8 ft' },
          { x: '0 ft', y: '8 ft' },
        ],
      });
    const wanted = with_({ rise: '2 ft' });
    expect(with_({ radius: '5 ft' })).toBeCloseTo(wanted, 12);
    expect(with_({ rise: '-2 ft' }) + wanted).toBeCloseTo(160, 11);
  });

  it("Simpson's rule is exact on parabolas, the trapezoidal rule on straight lines", () => {
    const next = seeded(3);
    for (let i = 0; i < runs(200); i += 1) {
      const [a, b, c] = [1 + Math.floor(next() * 9), Math.floor(next() * 9), Math.floor(next() * 9)];
      const strips = 2 * (1 + Math.floor(next() * 8));
      const curve = (x: number): number => a + b * x + c * x * x;
      const offsets = (f: (x: number) => number): string[] =>
        Array.from({ length: strips + 1 }, (_, k) => `${f(k)} ft`);
      const simpson = areaOf({ shape: 'offsets', spacing: '1 ft', offsets: offsets(curve), rule: 'simpson' });
      expect(simpson).toBeCloseTo(a * strips + (b * strips ** 2) / 2 + (c * strips ** 3) / 3, 8);
      const line = areaOf({
        shape: 'offsets',
        spacing: '1 ft',
        offsets: offsets((x) => a + b * x),
        rule: 'trapezoidal',
      });
      expect(line).toBeCloseTo(a * strips + (b * strips ** 2) / 2, 8);
    }
  });
});

describe('points and rings', () => {
  it('insideRing agrees with the area of a tiny square in common', () => {
    const next = seeded(11);
    for (const ring of rings.slice(0, 500)) {
      const [x, y] = [
        (ring[0]?.[0] ?? 0) + Math.floor(next() * 2000) - 1000,
        (ring[0]?.[1] ?? 0) + Math.floor(next() * 2000) - 1000,
      ];
      const [px, py] = [x + 0.37, y + 0.41];
      const tiny = [
        [px - 1e-3, py - 1e-3],
        [px + 1e-3, py - 1e-3],
        [px + 1e-3, py + 1e-3],
        [px - 1e-3, py + 1e-3],
      ] as const;
      const share = oracle.common(ring, tiny) / oracle.area(tiny);
      if (share > 0.01 && share < 0.99) continue;
      expect(insideRing({ x: new Decimal(px), y: new Decimal(py) }, corners(ring))).toBe(share > 0.5);
    }
  });
});

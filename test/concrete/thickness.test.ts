/**
 * Thickness that varies, edges and beams: exact integrals against other ways to them.
 *
 * Second methods: cutting the plan into strips or boxes, and the volume of a frustum.
 */
import { describe, expect, it } from 'vitest';
import { type OutlineInput, probedVolume, slabVolume, type ThicknessInput } from '../../src/index';
import { hasFlatCorner, polygonInput, seeded, starRing, type WholeRing } from '../support/outlines';
import { oracle } from '../support/planar';

const ft3 = (outline: OutlineInput, thickness: ThicknessInput, more: object = {}): number =>
  slabVolume({ outline, thickness, ...more }).figures.volume.toNumber('ft3');

const PLANE: ThicknessInput = {
  kind: 'plane',
  atOrigin: '100 ft',
  alongX: '1/8 in/ft',
  alongY: '-1/5 in/ft',
};

describe('a plane of thickness', () => {
  it('over a triangle is its area times the mean of its three corners', () => {
    const next = seeded(5);
    for (let i = 0; i < 300; i += 1) {
      const ring = starRing(next, 3);
      const z = ring.map(([x, y]) => 100 + x / 192 / 96 - y / 192 / 60);
      const wanted = ((oracle.area(ring) / 192 ** 2) * ((z[0] ?? 0) + (z[1] ?? 0) + (z[2] ?? 0))) / 3;
      expect(ft3(polygonInput(ring), PLANE) / wanted).toBeCloseTo(1, 11);
    }
  });

  it('is the same whole or cut in two, however it is cut', () => {
    const next = seeded(6);
    for (let i = 0; i < 200; i += 1) {
      const ring = starRing(next, 8);
      const whole = ft3(polygonInput(ring), PLANE);
      // A star-shaped ring falls into triangles around its middle; here any diagonal that stays inside will do.
      const middle = ring.reduce<[number, number]>(([a, b], [x, y]) => [a + x / 8, b + y / 8], [0, 0]);
      const [mx, my] = [Math.round(middle[0]), Math.round(middle[1])];
      const parts = ring.map((p, k) => [
        p,
        ring[(k + 1) % 8] as readonly [number, number],
        [mx, my] as const,
      ]);
      const signed = parts.map((t) => {
        const [[ax, ay], [bx, by], [cx, cy]] = t as [
          readonly [number, number],
          readonly [number, number],
          readonly [number, number],
        ];
        const sign = Math.sign((bx - ax) * (cy - ay) - (by - ay) * (cx - ax));
        return sign === 0 ? 0 : sign * ft3(polygonInput(t), PLANE);
      });
      const sum = signed.reduce((a, b) => a + b, 0);
      expect(Math.abs(sum) / whole).toBeCloseTo(1, 11);
    }
  });

  it('does not change with moving and turning', () => {
    const rect = ft3(
      { shape: 'rectangle', length: '20 ft', width: '10 ft' },
      { kind: 'taper', along: 'x', from: '4 in', to: '6 in' },
    );
    const moved = ft3(
      {
        shape: 'polygon',
        points: [
          { x: '7 ft', y: '3 ft' },
          { x: '7 ft', y: '23 ft' },
          { x: '-3 ft', y: '23 ft' },
          { x: '-3 ft', y: '3 ft' },
        ],
      },
      { kind: 'taper', along: 'y', from: '4 in', to: '6 in' },
    );
    expect(moved).toBe(rect);
  });

  it('over round outlines agrees with many strips', () => {
    const outlines: [OutlineInput, (x: number) => number, number, number][] = [
      // Chord of the outline at x, in feet.
      [{ shape: 'circle', diameter: '20 ft' }, (x) => 2 * Math.sqrt(Math.max(0, 100 - x * x)), -10, 10],
      [
        { shape: 'sector', radius: '10 ft', angle: '90 deg' },
        (x) => Math.sqrt(Math.max(0, 100 - x * x)),
        0,
        10,
      ],
      [
        {
          shape: 'curved',
          points: [
            { x: '0 ft', y: '-4 ft' },
            { x: '8 ft', y: '-4 ft', rise: '2 ft' },
            { x: '8 ft', y: '4 ft' },
            { x: '0 ft', y: '4 ft' },
          ],
        },
        (x) => (x < 8 ? 8 : 2 * Math.sqrt(Math.max(0, 25 - (x - 5) ** 2))),
        0,
        10,
      ],
    ];
    for (const [outline, chord, from, to] of outlines) {
      const n = 400_000;
      let sum = 0;
      for (let k = 0; k < n; k += 1) {
        const x = from + ((k + 0.5) / n) * (to - from);
        sum += chord(x) * (1 + x / 60) * ((to - from) / n);
      }
      const got = ft3(outline, { kind: 'plane', atOrigin: '1 ft', alongX: '1/5 in/ft', alongY: '0%' });
      expect(got / sum).toBeCloseTo(1, 6);
    }
  });
});

describe('a thickened edge', () => {
  const R: OutlineInput = { shape: 'rectangle', length: '20 ft', width: '10 ft' };

  it('of a rectangle is box less frustum', () => {
    // Frustum of a pyramid by its two ends: h ÷ 3 × (A + a + √(A a)) holds for similar ends only, so the
    // prismoid of two rectangles is used: h ÷ 6 × (A + a + 4 m).
    const edge = { below: '8 in', width: '12 in', haunch: '8 in' };
    const { edgeVolume } = slabVolume({ outline: R, thickness: '4 in', edge }).figures;
    const [bottom, top] = [
      [18, 8],
      [18 - 16 / 12, 8 - 16 / 12],
    ] as [[number, number], [number, number]];
    const mid = ((bottom[0] + top[0]) / 2) * ((bottom[1] + top[1]) / 2);
    const core = ((8 / 12) * (bottom[0] * bottom[1] + top[0] * top[1] + 4 * mid)) / 6;
    expect(edgeVolume?.toNumber('ft3')).toBeCloseTo(200 * (8 / 12) - core, 12);
  });

  /** Simpson over many levels, exact for the quadratic that the band is; in cubic feet. */
  function byLevels(ring: WholeRing, levels: number): number {
    let sum = 0;
    for (let k = 0; k <= levels; k += 1) {
      const weight = k === 0 || k === levels ? 1 : k % 2 === 1 ? 4 : 2;
      sum += weight * (oracle.area(ring) - oracle.inset(ring, 3 * 16 + (2 * 16 * k) / levels));
    }
    return sum / (3 * levels) / 192 ** 2;
  }

  it('agrees with levels of insets by the geometry library, on random outlines', () => {
    const next = seeded(8);
    let compared = 0;
    for (let i = 0; i < 200; i += 1) {
      const ring = starRing(next, 6);
      const edge = { below: '1 ft', width: '3 in', haunch: '2 in' };
      const attempt = slabVolume.attempt({ outline: polygonInput(ring), thickness: '4 in', edge });
      if (!attempt.ok || hasFlatCorner(ring)) continue;
      compared += 1;
      const volume = attempt.result.figures.edgeVolume?.toNumber('ft3') ?? 0;
      expect(volume / byLevels(ring, 16)).toBeCloseTo(1, 8);
    }
    expect(compared).toBeGreaterThan(50);
  });

  it('of a circle is a cylinder less a cone frustum', () => {
    const { edgeVolume } = slabVolume({
      outline: { shape: 'circle', diameter: '20 ft' },
      thickness: '4 in',
      edge: { below: '1 ft', width: '1 ft', haunch: '1 ft' },
    }).figures;
    const frustum = (Math.PI / 3) * (9 * 9 + 9 * 8 + 8 * 8);
    expect(edgeVolume?.toNumber('ft3')).toBeCloseTo(100 * Math.PI - frustum, 11);
  });
});

describe('probed-volume', () => {
  it('agrees with the plane that the probes lie in, over any outline', () => {
    const next = seeded(9);
    for (let i = 0; i < 120; i += 1) {
      const ring = starRing(next, 3 + Math.floor(next() * 7));
      const depth = (x: number, y: number): string => `${(2_000_000 + 3 * x - 5 * y) / 4096} in`;
      const probe = ([x, y]: readonly [number, number]) => ({
        x: { value: x / 16, unit: 'in' },
        y: { value: y / 16, unit: 'in' },
        depth: depth(x, y),
      });
      const { figures } = probedVolume({ outline: polygonInput(ring), probes: ring.map(probe) });
      const flat = slabVolume({
        outline: polygonInput(ring),
        thickness: {
          kind: 'plane',
          atOrigin: `${2_000_000 / 4096} in`,
          alongX: { value: (3 * 16 * 12) / 4096, unit: 'in/ft' },
          alongY: { value: (-5 * 16 * 12) / 4096, unit: 'in/ft' },
        },
      }).figures;
      expect(figures.volume.toNumber('ft3') / flat.volume.toNumber('ft3')).toBeCloseTo(1, 11);
      expect(figures.unprobedCorners.toNumber('each')).toBe(0);
    }
  });

  it('is exact where no corner is re-entrant, and grows with every probe that grows', () => {
    const outline: OutlineInput = { shape: 'rectangle', length: '20 ft', width: '10 ft' };
    const at = (middle: string) =>
      probedVolume({
        outline,
        probes: [
          { x: '0 ft', y: '0 ft', depth: '4 in' },
          { x: '20 ft', y: '0 ft', depth: '4 in' },
          { x: '20 ft', y: '10 ft', depth: '4 in' },
          { x: '0 ft', y: '10 ft', depth: '4 in' },
          { x: '10 ft', y: '5 ft', depth: middle },
        ],
      }).figures;
    // A pyramid of 200 ft2 and 3 in on a slab of 4 in: 200 × (4 + 3 ÷ 3) ÷ 12.
    expect(at('7 in').volume.format('ft3', { places: 9 })).toBe('83.333333333 ft3');
    expect(at('7.1 in').volume.greaterThan(at('7 in').volume)).toBe(true);
    expect(at('7 in').thickest.x.format()).toBe('10 ft');
    expect(at('7 in').thinnest.thickness.format()).toBe('4 in');
  });
});

/** Steps of every plan, each by a second way. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { slabVolume, stepVolume } from '../../src/index';

const n = (min: number, max: number) => fc.integer({ min, max });
const near = (got: number, wanted: number): boolean =>
  Math.abs(got - wanted) <= 1e-9 * Math.max(1, Math.abs(wanted));

interface Profile {
  readonly count: number;
  readonly rise: number;
  readonly tread: number;
  readonly wash: number;
  readonly nosing: number;
  readonly landing: number;
}

/** Corners of the profile in quarter inches: the foot and the nosing of each riser, then the back. */
function profileOf({ count, rise, tread, wash, nosing, landing }: Profile): [number, number][] {
  const up = (run: number): number => (run * wash) / 64;
  const risers = Array.from({ length: count }, (_, k): [number, number][] => [
    [k * tread + nosing, k === 0 ? 0 : k * rise + up(tread + nosing)],
    [k * tread, (k + 1) * rise],
  ]);
  const run = (count - 1) * tread + landing;
  return [...risers.flat(), [run, count * rise + up(landing)], [run, 0]];
}

/** Lengths of the risers along their slope. */
const facesOf = (corners: readonly [number, number][], count: number): number =>
  Array.from({ length: count }, (_, k) => {
    const [[a, b], [c, d]] = corners.slice(2 * k, 2 * k + 2) as [[number, number], [number, number]];
    return Math.hypot(c - a, d - b);
  }).reduce((sum, face) => sum + face, 0);

describe('a straight flight with sloping treads and leaning risers', () => {
  it('is its profile, corner by corner, times its width', () => {
    // Second method: the profile as an outline, its area by the sum around its corners.
    const cases = fc.record({
      count: n(1, 12),
      rise: n(8, 30),
      tread: n(40, 60),
      wash: n(0, 6),
      nosing: n(0, 12),
      landing: n(40, 200),
    });
    fc.assert(
      fc.property(cases, n(12, 90), (profile, w) => {
        const { count, rise, tread, wash, nosing, landing } = profile;
        const corners = profileOf(profile);
        const outline = {
          shape: 'polygon',
          points: corners.map(([x, y]) => ({ x: `${x / 4} in`, y: `${y / 4} in` })),
        } as const;
        const { figures } = stepVolume({
          risers: count,
          rise: `${(rise / 4).toFixed(2)} in`,
          tread: `${(tread / 4).toFixed(2)} in`,
          width: `${w} in`,
          wash: `${((wash * 12) / 64).toFixed(6)} in/ft`,
          nosing: `${(nosing / 4).toFixed(2)} in`,
          landingDepth: `${(landing / 4).toFixed(2)} in`,
          openSides: 2,
        });
        const side = slabVolume({ outline, thickness: `${w} in` }).figures;
        const formed = (facesOf(corners, count) / 4) * w + 2 * side.area.toNumber('in2');
        return (
          figures.volume.minus(side.volume).abs().toNumber('in3') < 1e-20 &&
          near(figures.formedArea.toNumber('in2'), formed)
        );
      }),
      { numRuns: 300 },
    );
  });
});

describe('wraparound, round and winding steps', () => {
  const cases = fc.tuple(n(1, 30), n(10, 32), n(30, 60), n(20, 400), n(20, 400));

  it('wraparound are slabs on top of each other', () => {
    fc.assert(
      fc.property(cases, fc.constantFrom('one', 'both'), ([count, r, t, w, d], sides) => {
        const c = sides === 'both' ? 2 : 1;
        let [solid, faces] = [0, 0];
        for (let j = 0; j < count; j += 1) {
          const [across, deep] = [w + c * j * t, d + j * t];
          solid += across * deep * r;
          faces += r * (across + c * deep);
        }
        const { figures } = stepVolume({
          kind: 'wraparound',
          risers: count,
          rise: `${(r / 4).toFixed(2)} in`,
          tread: `${(t / 4).toFixed(2)} in`,
          topWidth: `${(w / 4).toFixed(2)} in`,
          topDepth: `${(d / 4).toFixed(2)} in`,
          sides,
        });
        return (
          near(figures.volume.toNumber('in3'), solid / 64) &&
          near(figures.formedArea.toNumber('in2'), faces / 16)
        );
      }),
    );
  });

  it('round are sectors on top of each other', () => {
    fc.assert(
      fc.property(cases, n(1, 360), ([count, r, t, R, inner], turn) => {
        const q = Math.min(inner, R - 1);
        let [solid, faces] = [0, 0];
        for (let j = 0; j < count; j += 1) {
          const o = R + j * t;
          solid += ((Math.PI * turn) / 360) * (o * o - q * q) * r;
          faces += ((Math.PI * turn) / 180) * o * r;
        }
        const { figures } = stepVolume({
          kind: 'round',
          risers: count,
          rise: `${(r / 4).toFixed(2)} in`,
          tread: `${(t / 4).toFixed(2)} in`,
          topRadius: `${(R / 4).toFixed(2)} in`,
          innerRadius: `${(q / 4).toFixed(2)} in`,
          turn: `${turn} deg`,
        });
        return (
          near(figures.volume.toNumber('in3'), solid / 64) &&
          near(figures.formedArea.toNumber('in2'), faces / 16)
        );
      }),
    );
  });

  it('winding are sectors of a ring, each a riser higher', () => {
    fc.assert(
      fc.property(n(1, 12), n(10, 32), n(0, 60), n(61, 240), n(1, 30), (count, r, q, o, turn) => {
        const sector = ((Math.PI * turn) / 360) * (o * o - q * q);
        let [solid, faces] = [0, 0];
        for (let k = 1; k <= count; k += 1) {
          solid += sector * k * r;
          faces += r * (o - q) + k * r * ((Math.PI * turn) / 180) * (o + q);
        }
        const { figures } = stepVolume({
          kind: 'winding',
          risers: count,
          rise: `${(r / 4).toFixed(2)} in`,
          innerRadius: `${(q / 4).toFixed(2)} in`,
          outerRadius: `${(o / 4).toFixed(2)} in`,
          turnEach: `${turn} deg`,
        });
        return (
          near(figures.volume.toNumber('in3'), solid / 64) &&
          near(figures.formedArea.toNumber('in2'), faces / 16)
        );
      }),
    );
  });
});

describe('cores', () => {
  it('never break through: what is accepted lies under the treads and behind the risers', () => {
    // Second method: the box against the profile, point by point along its front and its top.
    fc.assert(
      fc.property(n(1, 8), n(16, 31), n(40, 56), n(1, 400), n(1, 200), (count, r, t, l, h) => {
        const run = count * t;
        const attempt = stepVolume.attempt({
          risers: count,
          rise: `${(r / 4).toFixed(2)} in`,
          tread: `${(t / 4).toFixed(2)} in`,
          width: '5 ft',
          cores: [
            {
              kind: 'rubble',
              length: `${(l / 4).toFixed(2)} in`,
              width: '4 ft',
              height: `${(h / 4).toFixed(2)} in`,
            },
          ],
        });
        const x = run - l;
        const topAt = (at: number): number => (Math.floor(at / t) + 1) * r;
        const inside = x > 0 && h < topAt(x) && x > (Math.ceil(h / r) - 1) * t && h < count * r;
        if (!attempt.ok) return !inside;
        const { volume: V, coreVolume, leastCover } = attempt.result.figures;
        const solid = (5 * 12 * t * r * count * (count + 1)) / 32;
        const core = (48 * l * h) / 16;
        const cover = Math.min(topAt(x) - h, x - (Math.ceil(h / r) - 1) * t) / 4;
        return (
          inside &&
          near(V.toNumber('in3'), solid - core) &&
          near(coreVolume?.toNumber('in3') ?? 0, core) &&
          near(leastCover?.toNumber('in') ?? 0, cover)
        );
      }),
      { numRuns: 500 },
    );
  });

  it('are taken out of a flight whatever it is called: straight is the plan when none is said', () => {
    const parts = { risers: 2, rise: '7 in', tread: '11 in', width: '6 ft' } as const;
    const [a, b] = [stepVolume(parts), stepVolume({ kind: 'straight', ...parts })];
    expect(JSON.stringify(a)).toBe(JSON.stringify(b));
  });
});

describe('landings part of the way up', () => {
  it('are their profile times the width, and the rules look at each flight for itself', () => {
    const flight = (after: readonly number[], more: object = {}) =>
      stepVolume({
        risers: 6,
        rise: '7 in',
        tread: '12 in',
        width: '4 ft',
        landings: after.map((k) => ({ after: k, depth: '40 in' })),
        ...more,
      });
    for (const after of [[1], [3], [2, 4], [5]]) {
      let [x, y] = [0, 0];
      const points = [{ x: '0 in', y: '0 in' }];
      for (let k = 1; k <= 6; k += 1) {
        y += 7;
        points.push({ x: `${x} in`, y: `${y} in` });
        x += after.includes(k) ? 40 : 12;
        points.push({ x: `${x} in`, y: `${y} in` });
      }
      points.push({ x: `${x} in`, y: '0 in' });
      const { figures } = flight(after);
      const profile = slabVolume({ outline: { shape: 'polygon', points }, thickness: '48 in' }).figures;
      expect(figures.volume.compareTo(profile.volume)).toBe(0);
      expect(figures.totalRun.toNumber('in')).toBeCloseTo(x, 9);
    }
    const codes = (after: readonly number[]) => flight(after).cautions.map(({ code }) => code);
    expect(codes([3])).not.toContain('handrail');
    expect(codes([1])).toContain('handrail');
    expect(codes([])).toContain('handrail');
  });
});

describe('the height of a flight', () => {
  const codes = (input: object) =>
    stepVolume({ risers: 4, rise: '7 in', tread: '12 in', width: '4 ft', ...input } as never)
      .cautions.map(({ code }) => code)
      .filter((code) => code === 'guard');

  it('asks for a guard above 30 in, and only where a side is open', () => {
    expect(codes({})).toEqual([]);
    expect(codes({ rise: '7.5 in' })).toEqual([]); // 30 in
    expect(codes({ rise: '7.75 in' })).toEqual(['guard']); // 31 in
    expect(codes({ rise: '7.75 in', openSides: 0 })).toEqual([]);
    expect(codes({ sideDrop: '40 in' })).toEqual(['guard']);
    expect(codes({ rise: '0.1905 m' })).toEqual([]);
  });

  it('asks for none where the sides are steps themselves', () => {
    const { cautions } = stepVolume({
      kind: 'wraparound',
      risers: 6,
      rise: '7 in',
      tread: '12 in',
      topWidth: '6 ft',
      topDepth: '5 ft',
      sides: 'both',
    });
    expect(cautions.map(({ code }) => code)).not.toContain('guard');
  });
});

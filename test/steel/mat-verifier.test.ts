/**
 * Mats over random outlines, 3,000 of them at full effort, checked by plain geometry of the test's own: distances to segments and
 * counting of crossings, with nothing of the library's geometry.
 */
import { describe, expect, it } from 'vitest';
import { type BarPlace, barPlaces, InputError, type RebarRegionInput } from '../../src/index';
import { runs } from '../support/effort';
import {
  boxOf,
  depthIn,
  distanceToSegment,
  type Plan,
  polygonOf,
  randomPlan,
  randoms,
  type Spot,
} from './outlines';

const OUTLINES = runs(3000);
/** Metres: cutting steps are 1 mm, binary error far below. */
const TINY = 2e-5;
const STEP = 0.001;

interface Case {
  readonly plan: Plan;
  readonly degrees: number;
  readonly spacing: number;
  readonly cover: number;
  readonly lap: number;
  readonly stock: number;
  readonly shortest: number;
}

function randomCase(random: () => number): Case {
  const round = (n: number): number => Math.round(n * 1000) / 1000;
  const spacing = round(0.2 + random() * 0.5);
  return {
    plan: randomPlan(random),
    degrees: random() < 0.5 ? 0 : Math.round(random() * 180),
    spacing,
    cover: round(0.03 + random() * 0.07),
    lap: 0.4,
    stock: round(3.5 + random() * 3),
    shortest: round(spacing / 4),
  };
}

const inputOf = (c: Case): RebarRegionInput => ({
  outline: polygonOf(c.plan.outer),
  openings: c.plan.openings.map(polygonOf),
  mats: [{ layer: 'bottom', bar: '#3', spacing: `${c.spacing} m`, angle: `${c.degrees} deg` }],
  cover: `${c.cover} m`,
  lap: `${c.lap} m`,
  stockLength: `${c.stock} m`,
  shortest: `${c.shortest} m`,
});

const ends = ({ path }: BarPlace): [Spot, Spot] => [path[0] as Spot, path.at(-1) as Spot];

/** Every bar within the outline less its cover. */
function outsideCover({ plan, cover }: Case, bars: readonly BarPlace[]): number {
  let worst = 0;
  for (const { path } of bars) {
    for (let i = 0; i + 1 < path.length; i += 1) {
      const [a, b] = [path[i] as Spot, path[i + 1] as Spot];
      for (const t of [0, 0.21, 0.5, 0.77, 1]) {
        const depth = depthIn(plan, { x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t });
        worst = Math.max(worst, cover - depth);
      }
    }
  }
  return worst;
}

/** No place inside the cover farther from a bar than is promised. */
function farthest({ plan, cover }: Case, bars: readonly BarPlace[], random: () => number): number {
  const [x0, x1, y0, y1] = boxOf(plan.outer);
  let worst = 0;
  for (let k = 0; k < 40; k += 1) {
    const p = { x: x0 + random() * (x1 - x0), y: y0 + random() * (y1 - y0) };
    if (depthIn(plan, p) < cover) continue;
    let nearest = Infinity;
    for (const { path } of bars) {
      for (let i = 0; i + 1 < path.length; i += 1) {
        nearest = Math.min(nearest, distanceToSegment(p, path[i] as Spot, path[i + 1] as Spot));
      }
    }
    worst = Math.max(worst, nearest);
  }
  return worst;
}

interface Placed {
  readonly v: number;
  readonly from: number;
  readonly to: number;
}

function turned(bars: readonly BarPlace[], degrees: number): Placed[] {
  const [c, s] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
  return bars
    .map((bar) => {
      const [a, b] = ends(bar);
      const [p, q] = [a.x * c + a.y * s, b.x * c + b.y * s];
      return { v: a.y * c - a.x * s, from: Math.min(p, q), to: Math.max(p, q) };
    })
    .sort((m, n) => (Math.abs(m.v - n.v) > TINY ? m.v - n.v : m.from - n.from));
}

interface Lap {
  readonly v: number;
  readonly from: number;
  readonly to: number;
}

/** Pieces of one line overlap by a lap, or stand apart; laps are gathered. */
function lapsOf(placed: readonly Placed[]): Lap[] {
  const laps: Lap[] = [];
  placed.forEach((piece, i) => {
    const before = placed[i - 1];
    if (!before || Math.abs(before.v - piece.v) > TINY || piece.from > before.to - TINY) return;
    laps.push({ v: piece.v, from: piece.from, to: before.to });
  });
  return laps;
}

/** Laps of neighbouring lines that lie beside each other. */
function beside(laps: readonly Lap[], spacing: number): number {
  return laps.filter((a) =>
    laps.some(
      (b) => b.v - a.v > TINY && b.v - a.v <= spacing + TINY && a.from < b.to - TINY && b.from < a.to - TINY,
    ),
  ).length;
}

function checkWay(c: Case, bars: readonly BarPlace[], degrees: number): void {
  const placed = turned(bars, degrees);
  // A line with nothing to fill is left out, so only neighbours that both have bars are compared to the limit.
  const places = [...new Set(placed.map((p) => Math.round(p.v / TINY)))].map((n) => n * TINY);
  const gaps = places.slice(1).map((v, i) => v - (places[i] as number));
  const least = Math.min(...gaps, c.spacing);
  for (const gap of gaps) expect(Math.abs(gap / least - Math.round(gap / least))).toBeLessThan(0.01);
  expect(least).toBeLessThanOrEqual(c.spacing + TINY);
  const laps = lapsOf(placed);
  for (const lap of laps) expect(lap.to - lap.from).toBeGreaterThanOrEqual(c.lap - TINY);
  for (const p of placed) expect(p.to - p.from).toBeLessThanOrEqual(c.stock + TINY);
  expect(beside(laps, least)).toBe(0);
}

describe('mats over random outlines', () => {
  it(`keep their promises on ${OUTLINES} of them`, () => {
    const random = randoms(20_260_601);
    let laid = 0;
    let refused = 0;
    for (let k = 0; k < OUTLINES; k += 1) {
      const c = randomCase(random);
      let bars: readonly BarPlace[];
      try {
        bars = barPlaces(inputOf(c));
      } catch (error) {
        // A random ring may cross itself or be too narrow for any bar: refused with a code, never otherwise.
        expect(error).toBeInstanceOf(InputError);
        refused += 1;
        continue;
      }
      laid += 1;
      expect(outsideCover(c, bars), `outside the cover, case ${k}`).toBeLessThan(TINY);
      const limit = c.spacing / 2 + c.cover + c.shortest + STEP;
      expect(farthest(c, bars, random), `far from a bar, case ${k}`).toBeLessThan(limit);
      checkWay(
        c,
        bars.filter((b) => b.use === 'along'),
        c.degrees,
      );
      checkWay(
        c,
        bars.filter((b) => b.use === 'across'),
        c.degrees + 90,
      );
    }
    expect(laid).toBeGreaterThan(OUTLINES * 0.9);
    expect(refused).toBeLessThan(OUTLINES * 0.1);
  }, 120_000);

  it('have a verifier that notices a bar moved, bars left out and laps cut short', () => {
    const random = randoms(1);
    const outer = [
      { x: 0, y: 0 },
      { x: 16, y: 0 },
      { x: 16, y: 9 },
      { x: 0, y: 9 },
    ];
    const c: Case = {
      plan: { outer, openings: [] },
      degrees: 0,
      spacing: 0.4,
      cover: 0.05,
      lap: 0.4,
      stock: 6,
      shortest: 0.1,
    };
    const bars = barPlaces(inputOf(c));
    const along = bars.filter((b) => b.use === 'along');
    const moved = bars.map((b) => ({ ...b, path: b.path.map(({ x, y }) => ({ x: x + 0.03, y })) }));
    expect(outsideCover(c, bars)).toBeLessThan(TINY);
    expect(outsideCover(c, moved)).toBeGreaterThan(0.02);
    const limit = c.spacing / 2 + c.cover + c.shortest + STEP;
    expect(farthest(c, bars.slice(Math.floor(bars.length / 2)), random)).toBeGreaterThan(limit);
    checkWay(c, along, 0);
    const inLine = along.map((b) => ({ ...b, path: b.path.map(({ x, y }) => ({ x: x - (x % 0.9), y })) }));
    expect(() => checkWay(c, inLine, 0)).toThrow();
  });
});

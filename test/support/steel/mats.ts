/**
 * Looks a mat of bars over with plain geometry of its own: distances to segments and counting of crossings, with
 * nothing of the library's geometry. Lengths in meters.
 */
import type { BarPlace, RebarRegionInput } from '../../../src/index';
import { boxOf, depthIn, distanceToSegment, type Plan, polygonOf, type Spot } from '../../steel/outlines';

/** Cutting steps are 1 mm, binary error far below. */
export const TINY = 2e-5;
const STEP = 0.001;

export interface MatCase {
  readonly plan: Plan;
  readonly degrees: number;
  readonly spacing: number;
  readonly cover: number;
  readonly lap: number;
  readonly stock: number;
  readonly shortest: number;
}

/** Rules for a mat over a plan. */
export function matCase(random: () => number, plan: Plan): MatCase {
  const round = (n: number): number => Math.round(n * 1000) / 1000;
  const spacing = round(0.2 + random() * 0.5);
  return {
    plan,
    degrees: random() < 0.5 ? 0 : Math.round(random() * 180),
    spacing,
    cover: round(0.03 + random() * 0.07),
    lap: 0.4,
    stock: round(3.5 + random() * 3),
    shortest: round(spacing / 4),
  };
}

export const matInput = (c: MatCase): RebarRegionInput => ({
  outline: polygonOf(c.plan.outer),
  openings: c.plan.openings.map(polygonOf),
  mats: [{ layer: 'bottom', bar: '#3', spacing: `${c.spacing} m`, angle: `${c.degrees} deg` }],
  cover: `${c.cover} m`,
  lap: `${c.lap} m`,
  stockLength: `${c.stock} m`,
  shortest: `${c.shortest} m`,
});

const ends = ({ path }: BarPlace): [Spot, Spot] => [path[0] as Spot, path.at(-1) as Spot];

/** By how much any bar comes too near to an edge. */
export function outsideCover({ plan, cover }: MatCase, bars: readonly BarPlace[]): number {
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

/** How far a place inside the cover may be from a bar. */
export const promised = (c: MatCase): number => c.spacing / 2 + c.cover + c.shortest + STEP;

/** The farthest from any bar that one of 40 places inside the cover is. */
export function farthest({ plan, cover }: MatCase, bars: readonly BarPlace[], random: () => number): number {
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

/** Pieces of one line overlap by a lap, or stand apart; laps are gathered. */
function lapsOf(placed: readonly Placed[]): Placed[] {
  const laps: Placed[] = [];
  placed.forEach((piece, i) => {
    const before = placed[i - 1];
    if (!before || Math.abs(before.v - piece.v) > TINY || piece.from > before.to - TINY) return;
    laps.push({ v: piece.v, from: piece.from, to: before.to });
  });
  return laps;
}

/** Laps of neighboring lines that lie beside each other. */
function beside(laps: readonly Placed[], spacing: number): number {
  return laps.filter((a) =>
    laps.some(
      (b) => b.v - a.v > TINY && b.v - a.v <= spacing + TINY && a.from < b.to - TINY && b.from < a.to - TINY,
    ),
  ).length;
}

/** What is wrong with the bars of one way: their spacing, their laps, their lengths. */
export function wayFaults(c: MatCase, bars: readonly BarPlace[], degrees: number): string[] {
  const placed = turned(bars, degrees);
  // A line with nothing to fill is left out, so only neighbors that both have bars are compared to the limit.
  const places = [...new Set(placed.map((p) => Math.round(p.v / TINY)))].map((n) => n * TINY);
  const gaps = places.slice(1).map((v, i) => v - (places[i] as number));
  const least = Math.min(...gaps, c.spacing);
  const found: string[] = [];
  if (gaps.some((gap) => Math.abs(gap / least - Math.round(gap / least)) >= 0.01))
    found.push(`lines are not evenly apart: ${gaps}`);
  if (least > c.spacing + TINY) found.push(`lines are ${least} apart, ${c.spacing} is the most`);
  const laps = lapsOf(placed);
  if (laps.some((lap) => lap.to - lap.from < c.lap - TINY)) found.push('a lap is too short');
  if (placed.some((p) => p.to - p.from > c.stock + TINY)) found.push('a bar is longer than the stock');
  const side = beside(laps, least);
  if (side > 0) found.push(`${side} laps lie beside each other`);
  return found;
}

/** Everything that is wrong with a mat; nothing when it is right. */
export function matFaults(c: MatCase, bars: readonly BarPlace[], random: () => number): string[] {
  const found: string[] = [];
  const out = outsideCover(c, bars);
  if (out >= TINY) found.push(`a bar is ${out} m too near to an edge`);
  const far = farthest(c, bars, random);
  if (far >= promised(c)) found.push(`a place is ${far} m from any bar, ${promised(c)} m is the most`);
  const by = (use: BarPlace['use']) => bars.filter((b) => b.use === use);
  return [...found, ...wayFaults(c, by('along'), c.degrees), ...wayFaults(c, by('across'), c.degrees + 90)];
}

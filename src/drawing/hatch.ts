/** Hatching drawn as lines: a pattern is referred to by its id, which another plan on the page may have too. */
import type { PagePoint } from './room';
import { coordinate } from './svg';

/** How a hatch runs. */
export interface Hatch {
  /** Degrees clockwise from the right. */
  readonly turn: number;
  /** Between two lines, in pixels. */
  readonly apart: number;
  /** Dashes of this length with half of it between; lines by default. */
  readonly dash?: number;
}

/** Lines of a hatch within rings, with holes where they lie within each other. */
export function hatch(rings: readonly (readonly PagePoint[])[], { turn, apart, dash }: Hatch): string {
  const angle = (turn * Math.PI) / 180;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const flat = ({ x, y }: PagePoint): PagePoint => ({ x: x * cos + y * sin, y: y * cos - x * sin });
  const back = (x: number, y: number): string =>
    `${coordinate(x * cos - y * sin)} ${coordinate(x * sin + y * cos)}`;
  const pieces: string[] = [];
  for (const [row, cuts] of crossings(
    rings.map((ring) => ring.map(flat)),
    apart,
  )) {
    cuts.sort((a, b) => a - b);
    for (let i = 0; i + 1 < cuts.length; i += 2) {
      for (const [from, to] of dashes(cuts[i] as number, cuts[i + 1] as number, dash)) {
        pieces.push(`M${back(from, row * apart)}L${back(to, row * apart)}`);
      }
    }
  }
  return pieces.join('');
}

/** Where the sides of rings cross level lines, by the number of the line. */
function crossings(rings: readonly (readonly PagePoint[])[], apart: number): Map<number, number[]> {
  const rows = new Map<number, number[]>();
  for (const ring of rings) {
    ring.forEach((a, i) => {
      const b = ring[(i + 1) % ring.length] as PagePoint;
      const [low, high] = a.y < b.y ? [a, b] : [b, a];
      for (let row = Math.ceil(low.y / apart); row * apart < high.y; row += 1) {
        const x = low.x + ((row * apart - low.y) / (high.y - low.y)) * (high.x - low.x);
        const there = rows.get(row);
        if (there) there.push(x);
        else rows.set(row, [x]);
      }
    });
  }
  return rows;
}

function dashes(from: number, to: number, dash: number | undefined): [number, number][] {
  if (!dash) return [[from, to]];
  const step = dash * 1.5;
  const list: [number, number][] = [];
  for (let at = Math.floor(from / step) * step; at < to; at += step) {
    const piece: [number, number] = [Math.max(from, at), Math.min(to, at + dash)];
    if (piece[1] > piece[0]) list.push(piece);
  }
  return list;
}

/** Random slabs beside a wall to be put right, and the same problem as a linear program of its own. */
import Delaunator from 'delaunator';
import type { GradeCorrectionInput } from '../../../src/index';
import { drawer } from '../draw';
import type { OracleRow } from '../oracle';

export type Row = readonly [x: number, y: number, z: number];

export const mm = (v: number): number => Math.round(v * 1000) / 1000;

/** A slab beside a wall along y = 0 with readings a little off a plane of 2.5%. */
export function slab(seed: number): Row[] {
  const draw = drawer(seed);
  const at: [number, number][] = [0, 3].flatMap((y) => [
    [0, y],
    [mm(0.8 + 0.3 * draw()), y],
    [mm(1.8 + 0.3 * draw()), y],
    [3, y],
  ]);
  for (let i = 0; i < 4; i += 1) at.push([mm(0.3 + 2.4 * draw()), mm(0.4 + 2.2 * draw())]);
  at.push([0, mm(1.3 + 0.3 * draw())], [3, mm(1.3 + 0.3 * draw())]);
  return at.map(([x, y]) => [x, y, mm(10 - 0.025 * y + 0.02 * (draw() - 0.5))] as const);
}

export const inputOf = (
  rows: readonly Row[],
  more: Partial<GradeCorrectionInput> = {},
): GradeCorrectionInput => ({
  spots: rows.map(([x, y, z], i) => ({
    name: `s${i}`,
    x: `${x} m`,
    y: `${y} m`,
    elevation: `${z} m`,
  })),
  lines: [
    {
      kind: 'building',
      name: 'wall',
      along: [
        { x: '0 m', y: '0 m' },
        { x: '3 m', y: '0 m' },
      ],
    },
  ],
  zone: '10 ft',
  ...more,
});

export const away = (rows: readonly Row[]): string[] => rows.flatMap(([, y], i) => (y > 0 ? [`s${i}`] : []));

/** The same problem set up anew: every facet's fall along y, and a third of its area at each corner. */
export function problem(rows: readonly Row[]): { aim: Record<string, number>; rows: OracleRow[] } {
  const { triangles } = new Delaunator(Float64Array.from(rows.flatMap(([x, y]) => [x, y] as const)));
  const aim: Record<string, number> = {};
  const conditions: OracleRow[] = [];
  for (let t = 0; t < triangles.length; t += 3) {
    const corners = [triangles[t], triangles[t + 1], triangles[t + 2]] as [number, number, number];
    const [a, b, c] = corners.map((k) => rows[k]) as [Row, Row, Row];
    const det = (b[0] - a[0]) * (c[1] - a[1]) - (c[0] - a[0]) * (b[1] - a[1]);
    if (Math.abs(det) < 1e-9) continue;
    // Fall along y: −∂z/∂y of the plane, linear in the three elevations.
    const weights = [c[0] - b[0], a[0] - c[0], b[0] - a[0]].map((w) => -w / det);
    const now = corners.reduce((sum, v, k) => sum + (weights[k] as number) * (rows[v] as Row)[2], 0);
    const moved: Record<string, number> = {};
    corners.forEach((v, k) => {
      if ((rows[v] as Row)[1] === 0) return;
      moved[`u${v}`] = weights[k] as number;
      moved[`d${v}`] = -(weights[k] as number);
      for (const way of ['u', 'd']) aim[`${way}${v}`] = (aim[`${way}${v}`] ?? 0) + Math.abs(det) / 6;
    });
    conditions.push({ weights: moved, least: 0.02 - now });
  }
  return { aim, rows: conditions };
}

/** Corrections: the least concrete against HiGHS, and what must hold of every correction. */
import Delaunator from 'delaunator';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  drainageCheck,
  type GradeCorrectionInput,
  gradeCorrection,
  InputError,
  length,
} from '../../src/index';
import { drawer } from '../support/draw';
import { type OracleRow, oracle } from '../support/oracle';
import { disagreement } from '../support/working';

type Row = readonly [x: number, y: number, z: number];

/** A slab beside a wall along y = 0 with readings a little off a plane of 2%. */
function slab(seed: number): Row[] {
  const draw = drawer(seed);
  const mm = (v: number): number => Math.round(v * 1000) / 1000;
  const at: [number, number][] = [0, 1, 2, 3].flatMap((x) => [
    [x, 0],
    [x, 3],
  ]);
  for (let i = 0; i < 4; i += 1) at.push([mm(0.3 + 2.4 * draw()), mm(0.4 + 2.2 * draw())]);
  at.push([0, 1.5], [3, 1.5]);
  return at.map(([x, y]) => [x, y, mm(10 - 0.025 * y + 0.02 * (draw() - 0.5))] as const);
}

const inputOf = (rows: readonly Row[], more: Partial<GradeCorrectionInput> = {}): GradeCorrectionInput => ({
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

/** The same problem set up anew: every facet's fall along y, and a third of its area at each corner. */
function problem(rows: readonly Row[]): { aim: Record<string, number>; rows: OracleRow[] } {
  const { triangles } = new Delaunator(Float64Array.from(rows.flatMap(([x, y]) => [x, y])));
  const aim: Record<string, number> = {};
  const conditions: OracleRow[] = [];
  for (let t = 0; t < triangles.length; t += 3) {
    const [i, j, k] = [triangles[t], triangles[t + 1], triangles[t + 2]] as [number, number, number];
    const [a, b, c] = [rows[i], rows[j], rows[k]] as [Row, Row, Row];
    const det = (b[0] - a[0]) * (c[1] - a[1]) - (c[0] - a[0]) * (b[1] - a[1]);
    if (Math.abs(det) < 1e-9) continue;
    // Fall along y: −∂z/∂y of the plane, linear in the three elevations.
    const [wi, wj, wk] = [(c[0] - b[0]) / det, (a[0] - c[0]) / det, (b[0] - a[0]) / det].map((w) => -w) as [
      number,
      number,
      number,
    ];
    const now = wi * a[2] + wj * b[2] + wk * c[2];
    conditions.push({ weights: { [`r${i}`]: wi, [`r${j}`]: wj, [`r${k}`]: wk }, least: 0.02 - now });
    for (const v of [i, j, k]) aim[`r${v}`] = (aim[`r${v}`] ?? 0) + Math.abs(det) / 6;
  }
  return { aim, rows: conditions };
}

describe('grade-correction', () => {
  // Outside check: HiGHS on the same problem, set up independently; its dual proves the optimum.
  it('takes the least concrete that HiGHS finds', { timeout: 60_000 }, async () => {
    const solve = await oracle();
    let moved = 0;
    for (let seed = 1; seed <= 60; seed += 1) {
      const rows = slab(seed);
      const { aim, rows: conditions } = problem(rows);
      const answer = solve(aim, conditions, new Set());
      const { figures } = gradeCorrection(inputOf(rows));
      expect(answer.status).toBe('Optimal');
      expect(Math.abs(answer.dual - answer.objective)).toBeLessThan(1e-6);
      expect(Math.abs(figures.concrete.toNumber('m3') - answer.objective), `slab ${seed}`).toBeLessThan(1e-6);
      expect(figures.after.reverse.format()).toBe('0 each');
      expect(figures.after.short.format()).toBe('0 each');
      if (figures.moves.length > 0) moved += 1;
    }
    expect(moved).toBeGreaterThan(40);
  });

  it('leaves a surface that the drainage check passes, and its working holds', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1e6 }), (seed) => {
        const rows = slab(seed);
        const { figures, working } = gradeCorrection(inputOf(rows));
        const by = new Map(figures.moves.map(({ spot, elevation }) => [spot, elevation]));
        const input = inputOf(rows);
        const spots = input.spots.map((spot) => ({
          ...spot,
          elevation: by.get(spot.name ?? '') ?? spot.elevation ?? '0 m',
        }));
        const checked = drainageCheck({ spots, lines: input.lines ?? [] });
        expect(checked.figures.reverse.format()).toBe('0 each');
        expect(checked.figures.short.format()).toBe('0 each');
        for (const step of working) expect(disagreement(step)).toBeLessThan(6e-3);
        // Corrected once, nothing is left to correct.
        expect(gradeCorrection(inputOf(rows, { spots })).figures.verdict).toBe('nothing to correct');
      }),
      { numRuns: 25 },
    );
  });

  it('raises and lowers by less concrete together than by raising alone', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1e6 }), (seed) => {
        const rows = slab(seed);
        const raised = gradeCorrection(inputOf(rows)).figures;
        const either = gradeCorrection(inputOf(rows, { how: 'either' })).figures;
        const moved = either.concrete.plus(either.struckOff);
        expect(moved.minus(raised.concrete).toNumber('m3')).toBeLessThan(1e-8);
      }),
      { numRuns: 25 },
    );
  });

  it('keeps to the farthest move, or names what cannot be met', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1e6 }), fc.integer({ min: 1, max: 12 }), (seed, mm) => {
        const attempt = gradeCorrection.attempt(inputOf(slab(seed), { farthest: `${mm} mm` }));
        if (!attempt.ok) {
          expect(attempt.error.issues[0]?.code).toBe('no-solution');
          expect(attempt.error.message).toMatch(/"s\d+/);
          return;
        }
        for (const { raise } of attempt.result.figures.moves) {
          expect(raise?.greaterThan(length(`${mm} mm`))).toBe(false);
        }
      }),
      { numRuns: 25 },
    );
  });

  it('moves a spot that was read twice as one', () => {
    const rows = slab(4);
    const twice: Row[] = [...rows, rows[2] as Row];
    const once = gradeCorrection(inputOf(rows)).figures;
    const { figures } = gradeCorrection(inputOf(twice));
    expect(figures.concrete.compareTo(once.concrete)).toBe(0);
    expect(figures.after.reverse.format()).toBe('0 each');
  });

  it('throws nothing but its own error', () => {
    fc.assert(
      fc.property(
        fc.anything(),
        fc.constantFrom('spots', 'lines', 'falls', 'movable', 'sills', 'thicknesses', 'farthest'),
        (junk, key) => {
          const attempt = gradeCorrection.attempt({ ...inputOf(slab(1)), [key]: junk });
          if (!attempt.ok) expect(attempt.error).toBeInstanceOf(InputError);
        },
      ),
      { numRuns: 150 },
    );
  });
});

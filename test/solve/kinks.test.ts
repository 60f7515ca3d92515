/** The least of kinked costs: against HiGHS, an outside solver, and by its own proof. */
import { describe, expect, it } from 'vitest';
import { Decimal } from '../../src/quantity/decimal';
import { leastOf, type Row } from '../../src/solve/kinks';
import { drawer } from '../support/draw';
import { runs } from '../support/effort';
import { type OracleRow, oracle } from '../support/oracle';

const d = (v: number): Decimal => new Decimal(v);

interface Drawn {
  readonly unknowns: number;
  readonly rows: Row[];
  readonly aim: Record<string, number>;
  readonly oracleRows: OracleRow[];
}

/** A random program: some rows must hold, some cost. Whole numbers, so that many corners fall together. */
function drawn(seed: number): Drawn {
  const draw = drawer(seed);
  const int = (low: number, high: number): number => low + Math.floor(draw() * (high - low + 1));
  const unknowns = int(1, 7);
  const rows: Row[] = [];
  const aim: Record<string, number> = {};
  const oracleRows: OracleRow[] = [];
  const count = int(unknowns, 24);
  for (let k = 0; k < count; k += 1) {
    const at = Array.from({ length: unknowns }, (_, i) => i).filter(() => draw() < 0.6);
    if (at.length === 0) at.push(k % unknowns);
    const weights = at.map(() => int(1, 4) * (draw() < 0.5 ? -1 : 1));
    const level = int(-6, 6);
    const map = Object.fromEntries(at.map((v, i) => [`x${v}`, weights[i] as number]));
    const base = { at, weights: weights.map(d), level: d(level) };
    if (draw() < 0.45) {
      const both = draw() < 0.15;
      rows.push({ ...base, below: [d(1), d(0)], above: [d(both ? 1 : 0), d(0)] });
      oracleRows.push({ weights: map, least: level, ...(both ? { most: level } : {}) });
      continue;
    }
    const [below, above] = [int(0, 3), int(1, 3)];
    rows.push({ ...base, below: [d(0), d(below)], above: [d(0), d(above)] });
    oracleRows.push({ weights: { ...map, [`u${k}`]: 1, [`o${k}`]: -1 }, least: level, most: level });
    aim[`u${k}`] = below;
    aim[`o${k}`] = above;
  }
  return { unknowns, rows, aim, oracleRows };
}

describe('kinks', () => {
  // Outside check: HiGHS solves the same program, set up as rows and columns.
  it('finds what HiGHS finds, and refuses what it refuses', async () => {
    const solve = await oracle();
    let [met, broken] = [0, 0];
    for (let seed = 1; seed <= runs(400); seed += 1) {
      const { unknowns, rows, aim, oracleRows } = drawn(seed);
      const free = new Set(Array.from({ length: unknowns }, (_, i) => `x${i}`));
      const answer = solve(aim, oracleRows, free);
      const least = leastOf({ unknowns, rows });
      expect(least, `program ${seed}`).toBeDefined();
      if (!least) continue;
      if (answer.status === 'Infeasible') {
        broken += 1;
        expect(least.total[0]?.isZero(), `program ${seed}`).toBe(false);
        // The rows that take part in the proof cannot be met by themselves.
        const heavy = leastOf({ unknowns, rows: least.heavy.map((k) => rows[k] as Row) });
        expect(heavy?.total[0]?.isZero(), `proof ${seed}`).toBe(false);
        continue;
      }
      met += 1;
      expect(answer.status).toBe('Optimal');
      expect(least.total[0]?.toNumber(), `program ${seed}`).toBe(0);
      expect(least.total[1]?.toNumber(), `program ${seed}`).toBeCloseTo(answer.objective, 6);
    }
    expect(met).toBeGreaterThan(runs(150));
    expect(broken).toBeGreaterThan(runs(40));
  });
});

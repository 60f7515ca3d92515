/** Valleys: their fall by an independent look at a fine grid, and what must hold of every surface. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drainageCheck } from '../../src/index';
import { drawer } from '../support/draw';
import { runs } from '../support/effort';
import { fineGridFlood, fineGridValleys, type GridValleys, type Row } from './fine-grid';

const SIDE = 4;

/** Two slopes that meet in a valley which falls a little, with a few spots off them. */
function yard(seed: number): Row[] {
  const draw = drawer(seed);
  const mm = (v: number): number => Math.round(v * 1000) / 1000;
  const along = 0.02 * draw();
  const [left, right] = [0.02 + 0.03 * draw(), 0.02 + 0.03 * draw()];
  const height = (x: number, y: number): number =>
    (x < 2 ? left * (2 - x) : right * (x - 2)) - along * y + 0.004 * draw();
  const at: [number, number][] = [
    [0, 0],
    [SIDE, 0],
    [0, SIDE],
    [SIDE, SIDE],
    [2, 0],
    [2, SIDE],
    [2, mm(1 + 2 * draw())],
    [0, mm(1 + 2 * draw())],
    [SIDE, mm(1 + 2 * draw())],
    [mm(0.6 + draw() * 0.8), mm(1 + 2 * draw())],
    [mm(2.6 + draw() * 0.8), mm(1 + 2 * draw())],
  ];
  return at.map(([x, y]) => [x, y, Math.round(height(x, y) * 1e5) / 1e5] as const);
}

const checked = (rows: readonly Row[]) =>
  drainageCheck({
    table: { unit: 'm', rows: rows as [number, number, number][] },
    minimum: '0.5%',
    minimumBeyond: '0.5%',
  }).figures;

type Found = ReturnType<typeof checked>;

/** 1 where there was a valley to compare; short ones may slip through the grid. */
function sameValley({ pondCount, valleyList }: Found, least: number, seed: number): number {
  const fallsOf = (shortest: number): number[] =>
    valleyList
      .filter(({ length }) => length.toNumber('m') > shortest)
      .map(({ fall }) => fall.toNumber('mm/m') / 1000);
  const long = fallsOf(0.8);
  if (pondCount.sign() > 0 || long.length === 0) return 0;
  // The grid sees every long valley, and nothing that is no valley.
  expect(least, `yard ${seed}`).toBeLessThan(Math.min(...long) + 1e-6);
  expect(least, `yard ${seed}`).toBeGreaterThan(Math.min(...fallsOf(0)) - 1e-6);
  return 1;
}

/** 1 where the grid is clear about the verdict. */
function sameVerdict(found: Found, rows: readonly Row[], grid: GridValleys, seed: number): number {
  const { least, flattest } = grid;
  const { volume } = fineGridFlood(rows, SIDE, 100, ['north', 'east', 'south', 'west']);
  const near = Math.abs(least - 0.003) < 1e-4 || Math.abs(flattest - 0.005) < 1e-4;
  if (found.pondCount.sign() > 0 || volume > 1e-4 || near) return 0;
  if (least < 0.003 || flattest < 0.005) expect(found.verdict, `yard ${seed}`).toBe('too flat');
  return 1;
}

describe('valleys', () => {
  // Second method: planes of neighboring cells of a fine grid, and the same grid flooded cell by cell.
  it('fall as a fine grid shows, and decide the verdict as it does', () => {
    let [valleys, verdicts] = [0, 0];
    for (let seed = 1; seed <= runs(300); seed += 1) {
      const rows = yard(seed);
      const figures = checked(rows);
      const grid = fineGridValleys(rows, SIDE, 100);
      valleys += sameValley(figures, grid.least, seed);
      verdicts += sameVerdict(figures, rows, grid, seed);
    }
    expect(valleys).toBeGreaterThan(runs(300) / 5);
    expect(verdicts).toBeGreaterThan(runs(300) / 5);
  });

  it('never get a better verdict by being laid flatter', () => {
    const rank = ['drains', 'too flat', 'ponding', 'runs to the building'];
    const of = (permille: number, back: number): number =>
      rank.indexOf(
        drainageCheck({
          table: {
            unit: 'm',
            rows: [
              [0, 0, 10],
              [6, 0, 10 - 0.006 * permille],
              [0, 4, 9.9],
              [6, 4, 9.9 - 0.006 * permille],
              [0, 9, 9.9 + back / 100],
              [6, 9, 9.9 + back / 100 - 0.006 * permille],
            ],
          },
          lines: [{ kind: 'building', name: 'house', along: ['row 1', 'row 2'] }],
        }).figures.verdict,
      );
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 30 }),
        fc.integer({ min: 0, max: 30 }),
        fc.integer({ min: 6, max: 30 }),
        (a, b, back) => {
          expect(of(Math.min(a, b), back)).toBeGreaterThanOrEqual(of(Math.max(a, b), back));
        },
      ),
      { numRuns: runs(100) },
    );
  });
});

/** Corrections: the least concrete against HiGHS, rain on a fine grid, and what must hold of every correction. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lookerAt } from '../../src/grade/correction/corrected';
import { jobOf, NEAR, type ParsedCorrection } from '../../src/grade/correction/job';
import { lackOf } from '../../src/grade/correction/program';
import { seek } from '../../src/grade/correction/search';
import {
  drainageCheck,
  type GradeCorrectionFigures,
  type GradeCorrectionInput,
  gradeCorrection,
  InputError,
  length,
} from '../../src/index';
import { Pad } from '../../src/reckoning/pad';
import { sentenceOf } from '../../src/reckoning/words';
import { drawer } from '../support/draw';
import { runs } from '../support/effort';
import { away, inputOf, mm, problem, type Row, slab } from '../support/grade/corrections';
import { type OracleRow, oracle } from '../support/oracle';
import { disagreement } from '../support/working';
import { fineGridRun } from './fine-grid';

const moved = ({ concrete, struckOff }: GradeCorrectionFigures): number =>
  concrete.plus(struckOff).toNumber('m3');

describe('grade-correction', () => {
  // A made slab: with a swale along the second row from the edge, let out over one corner 80 mm down, a little less is moved.
  it('digs no swale across a slab that falls away from the wall all over', () => {
    const rows = [
      [100.002, 100, 99.998, 99.998],
      [99.988, 99.972, 99.975, 99.985],
      [99.959, 99.952, 99.965, 99.954],
      [99.95, 99.932, 99.939, 99.941],
    ];
    const spots = rows.flatMap((row, y) =>
      row.map((z, x) => ({ name: `${y} ${x}`, x: `${1.5 * x} m`, y: `${2 * y} m`, elevation: `${z} m` })),
    );
    const lines = [{ kind: 'building', name: 'bakery', along: ['0 0', '0 3'] }] as const;
    const { moves, after } = gradeCorrection({ spots, lines }).figures;
    expect(after.verdict).toBe('drains');
    const moved = new Map(moves.map(({ spot, elevation }) => [spot, elevation]));
    const then = spots.map((spot) => ({ ...spot, elevation: moved.get(spot.name) ?? spot.elevation }));
    expect(drainageCheck({ spots, lines }).figures.areaBack.sign()).toBe(0);
    expect(drainageCheck({ spots: then, lines }).figures.areaBack.sign()).toBe(0);
  });

  // Outside check: HiGHS on the same problem, set up independently; its dual proves the optimum.
  it('moves the least concrete that HiGHS finds', { timeout: 60_000 }, async () => {
    const solve = await oracle();
    let corrected = 0;
    for (let seed = 1; seed <= runs(100); seed += 1) {
      const rows = slab(seed);
      const { aim, rows: conditions } = problem(rows);
      const answer = solve(aim, conditions, new Set());
      const { figures } = gradeCorrection(inputOf(rows, { movable: away(rows) }));
      expect(answer.status).toBe('Optimal');
      expect(Math.abs(answer.dual - answer.objective)).toBeLessThan(1e-6);
      expect(Math.abs(moved(figures) - answer.objective), `slab ${seed}`).toBeLessThan(1e-6);
      expect(figures.after.verdict).toBe('drains');
      if (figures.moves.length > 0) corrected += 1;
    }
    expect(corrected).toBeGreaterThan(runs(60));
  });

  it('raises and strikes off less together than by striking off alone', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1e6 }), (seed) => {
        const rows = slab(seed);
        const movable = away(rows);
        const lowered = gradeCorrection(inputOf(rows, { movable, how: 'lower' })).figures;
        const either = gradeCorrection(inputOf(rows, { movable })).figures;
        expect(lowered.after.verdict).toBe('drains');
        expect(moved(either) - moved(lowered)).toBeLessThan(1e-8);
      }),
      { numRuns: runs(25) },
    );
  });

  it('keeps to the farthest move and the least thickness, or says which of them blocks', () => {
    let [met, blocked] = [0, 0];
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1e6 }), fc.integer({ min: 1, max: 14 }), (seed, room) => {
        const rows = slab(seed);
        const thicknesses = away(rows).map((spot) => ({ spot, thickness: `${100 + room} mm` }));
        const { figures, cautions } = gradeCorrection(
          inputOf(rows, { farthest: '12 mm', thicknesses, minimumThickness: '100 mm' }),
        );
        if (figures.verdict === 'cannot be corrected') {
          blocked += 1;
          expect(figures.moves).toEqual([]);
          expect(figures.blockedBy.map(sentenceOf).join(' ')).toMatch(
            /farthest move at s\d|least thickness at s\d|fixed at wall/,
          );
          expect(cautions.some(({ severity }) => severity === 'stop')).toBe(true);
          return;
        }
        met += 1;
        for (const { raise, lower, thickness } of figures.moves) {
          expect(raise?.greaterThan(length('12 mm'))).not.toBe(true);
          expect(lower?.greaterThan(length('12 mm'))).not.toBe(true);
          if (lower) expect(thickness?.lessThan(length('100 mm'))).not.toBe(true);
        }
      }),
      { numRuns: runs(60) },
    );
    expect(Math.min(met, blocked)).toBeGreaterThan(0);
  });

  it('moves a spot that was read twice as one', () => {
    const rows = slab(4);
    const twice: Row[] = [...rows, rows[9] as Row];
    const once = gradeCorrection(inputOf(rows)).figures;
    const { figures } = gradeCorrection(inputOf(twice));
    expect(moved(figures)).toBeCloseTo(moved(once), 12);
    expect(figures.after.verdict).toBe('drains');
  });

  it('throws nothing but its own error', () => {
    fc.assert(
      fc.property(
        fc.anything(),
        fc.constantFrom('spots', 'lines', 'falls', 'movable', 'sills', 'thicknesses', 'farthest', 'stage'),
        (junk, key) => {
          const attempt = gradeCorrection.attempt({ ...inputOf(slab(1)), [key]: junk });
          if (!attempt.ok) expect(attempt.error).toBeInstanceOf(InputError);
        },
      ),
      { numRuns: runs(150) },
    );
  });
});

const SIDE = 8;

interface Yard {
  readonly rows: readonly Row[];
  readonly open: readonly string[];
}

/** A yard of 8 m with a wall along its south side, humps, hollows and now and then a curb or two. */
function yard(seed: number): Yard {
  const draw = drawer(seed * 7919);
  const at: [number, number][] = [
    [0, 0],
    [SIDE, 0],
    [0, SIDE],
    [SIDE, SIDE],
    [mm(2 + 4 * draw()), 0],
    [mm(2 + 4 * draw()), SIDE],
    [0, mm(2 + 4 * draw())],
    [SIDE, mm(2 + 4 * draw())],
  ];
  for (let i = 0; i < 6; i += 1) at.push([mm(0.7 + 6.6 * draw()), mm(0.7 + 6.6 * draw())]);
  const [fall, rough] = [-0.01 + 0.04 * draw(), 0.02 + 0.12 * draw()];
  const rows = at.map(([x, y]) => [x, y, mm(10 - fall * y + (y > 0 ? rough * (draw() - 0.5) : 0))] as const);
  const open = ['north', 'east', 'west'].filter((_, k) => k === 0 || draw() < 0.75);
  return { rows, open };
}

type Listed = GradeCorrectionInput & Required<Pick<GradeCorrectionInput, 'spots'>>;

function yardInput({ rows, open }: Yard): Listed {
  const corner = (x: number, y: number) => ({ x: `${x} m`, y: `${y} m` });
  const curbs = ['east', 'west'].filter((side) => !open.includes(side));
  return {
    spots: inputOf(rows).spots ?? [],
    // Said, since by default it is 10 ft in feet and 3 m in meters.
    zone: '3 m',
    lines: [
      { kind: 'building', name: 'wall', along: [corner(0, 0), corner(SIDE, 0)] },
      ...curbs.map((name) => {
        const x = name === 'east' ? SIDE : 0;
        return { kind: 'curb' as const, name, along: [corner(x, 0), corner(x, SIDE)] };
      }),
    ],
  };
}

const afterward = (rows: readonly Row[], { moves }: GradeCorrectionFigures): Row[] => {
  const by = new Map(moves.map(({ spot, elevation }) => [spot, elevation.toNumber('m')]));
  return rows.map(([x, y, z], i) => [x, y, by.get(`s${i}`) ?? z] as const);
};

/** The surface afterward, on a fine grid, holds no water and leads none to the wall. */
function runsDry(site: Yard, figures: ReturnType<typeof gradeCorrection>['figures'], what: string): void {
  const gridded = (cells: number) => fineGridRun(afterward(site.rows, figures), SIDE, cells, site.open);
  const { deepest, meets } = gridded(80);
  // A cell of 0.1 m on a slope of some percent: the bed and the rim are off by a few millimeters. Water
  // that really stands is as deep on a finer grid; what the cells make goes with their size.
  if (deepest >= 0.008) expect(gridded(320).deepest, what).toBeLessThan(0.3 * deepest);
  expect(meets, what).toBeLessThan(0.01);
}

describe('yards that do not drain', () => {
  it('drain afterward on a fine grid, or it says stop; the building is never raised', {
    timeout: 300_000,
  }, () => {
    let [right, stopped, moving] = [0, 0, 0];
    for (let seed = 1; seed <= runs(300); seed += 1) {
      const site = yard(seed);
      const { figures, cautions, working } = gradeCorrection(yardInput(site));
      for (const step of working) expect(disagreement(step), step.says).toBeLessThan(6e-3);
      for (const { spot, raise } of figures.moves) {
        const at = site.rows[Number(spot.slice(1))] as Row;
        expect(at[1] === 0 && raise !== undefined, `yard ${seed}`).toBe(false);
      }
      if (figures.after.verdict !== 'drains') {
        stopped += 1;
        expect(
          cautions.some(({ severity }) => severity === 'stop'),
          `yard ${seed}`,
        ).toBe(true);
        continue;
      }
      right += 1;
      if (figures.moves.length > 0) moving += 1;
      runsDry(site, figures, `yard ${seed}`);
    }
    expect(right).toBeGreaterThan(runs(150));
    expect(moving).toBeGreaterThan(runs(100));
    expect(stopped).toBeLessThan(runs(150));
  });

  // Outside check: HiGHS on the needs that the correction ended with.
  it('move the least for the needs they end with, within 1% of HiGHS', { timeout: 300_000 }, async () => {
    const solve = await oracle();
    let compared = 0;
    for (let seed = 1; seed <= runs(100); seed += 1) {
      const { rows, open } = yard(seed);
      const given = yardInput({ rows, open });
      const meters = (v: number) => length(`${v} m`);
      const parsed = {
        spots: rows.map(([x, y, z], i) => ({
          name: `s${i}`,
          x: meters(x),
          y: meters(y),
          elevation: meters(z),
          rod: undefined,
        })),
        lines: given.lines?.map((line) => ({
          ...line,
          along: line.along.map((p) => {
            const { x, y } = p as { x: string; y: string };
            return { x: length(x), y: length(y) };
          }),
        })),
      } as unknown as ParsedCorrection;
      const job = jobOf(parsed, new Pad('customary'));
      const looker = lookerAt(job.site, job.survey, job.asked, NEAR().toNumber('m'));
      const found = seek({ job, looker, base: job.needs, whole: true, forms: new Set() });
      if (!found?.drains || found.moves.size === 0) continue;
      const aim: Record<string, number> = {};
      for (const v of job.movable)
        for (const way of ['u', 'd']) aim[`${way}${v}`] = job.shares[v]?.toNumber() ?? 0;
      const may = new Set(job.movable);
      const conditions = found.needs.map((need): OracleRow => {
        const weights: Record<string, number> = {};
        need.spots.forEach((v, k) => {
          if (!may.has(v)) return;
          weights[`u${v}`] = need.weights[k]?.toNumber() ?? 0;
          weights[`d${v}`] = -(need.weights[k]?.toNumber() ?? 0);
        });
        return { weights, least: lackOf(job, need).toNumber() };
      });
      const reachable = conditions.filter(({ weights }) => Object.keys(weights).length > 0);
      const answer = solve(aim, reachable, new Set());
      const volume = [...found.moves].reduce(
        (sum, [v, m]) => sum + (job.shares[v]?.toNumber() ?? 0) * Math.abs(m.toNumber()),
        0,
      );
      expect(answer.status).toBe('Optimal');
      expect(Math.abs(volume / answer.objective - 1), `yard ${seed}`).toBeLessThan(0.01);
      compared += 1;
    }
    expect(compared).toBeGreaterThan(runs(30));
  });

  it('get the same advice in any order, turned, mirrored, shifted and in feet', { timeout: 60_000 }, () => {
    const said = ({ figures, cautions }: ReturnType<typeof gradeCorrection>): string[] => [
      figures.verdict,
      ...cautions.map(({ code, severity }) => `${code} ${severity}`),
      ...figures.moves.map(
        ({ spot, raise, lower }) =>
          `${spot} ${raise ? 'up' : 'down'} ${(raise ?? lower)?.toNumber('mm').toFixed(6)}`,
      ),
    ];
    const turns: ((p: { x: number; y: number }) => { x: number; y: number })[] = [
      ({ x, y }) => ({ x: -y, y: x }),
      ({ x, y }) => ({ x: -x, y }),
      ({ x, y }) => ({ x: x + 600_000, y: y + 150_000 }),
    ];
    for (let seed = 1; seed <= runs(40); seed += 1) {
      const site = yard(seed);
      const input = yardInput(site);
      const plain = said(gradeCorrection(input));
      expect(said(gradeCorrection({ ...input, spots: [...input.spots].reverse() })), `yard ${seed}`).toEqual(
        plain,
      );
      const number = (q: unknown): number => Number.parseFloat(String(q));
      for (const turn of turns) {
        const at = ({ x, y }: { x: unknown; y: unknown }) => {
          const p = turn({ x: number(x), y: number(y) });
          return { x: `${mm(p.x)} m`, y: `${mm(p.y)} m` };
        };
        const turned = {
          ...input,
          spots: input.spots.map((spot) => ({ ...spot, ...at(spot) })),
          lines: (input.lines ?? []).map((line) => ({
            ...line,
            along: line.along.map((p) => at(p as { x: unknown; y: unknown })),
          })),
        };
        expect(said(gradeCorrection(turned)), `yard ${seed}`).toEqual(plain);
      }
      const feet = {
        ...input,
        spots: input.spots.map((spot) => ({
          ...spot,
          x: length(spot.x as string).in('ft'),
          y: length(spot.y as string).in('ft'),
          elevation: length(spot.elevation as string).in('ft'),
        })),
      };
      expect(said(gradeCorrection(feet)), `yard ${seed}`).toEqual(plain);
    }
  });

  it('are corrected once: nothing is left to do, and the check itself says so', () => {
    for (let seed = 1; seed <= runs(60); seed += 1) {
      const site = yard(seed);
      const input = yardInput(site);
      const { figures } = gradeCorrection(input);
      if (figures.after.verdict !== 'drains') continue;
      const by = new Map(figures.moves.map(({ spot, elevation }) => [spot, elevation]));
      const spots = input.spots.map((spot) => ({
        ...spot,
        elevation: by.get(spot.name ?? '') ?? spot.elevation ?? '0 m',
      }));
      const checked = drainageCheck({ spots, lines: input.lines ?? [] });
      expect(checked.figures.verdict, `yard ${seed}`).toBe('drains');
      expect(gradeCorrection({ ...input, spots }).figures.verdict).toBe('nothing to correct');
    }
  });
});

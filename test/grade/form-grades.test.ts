/** Form grades: the least fill against HiGHS and its dual, closed forms, and what must hold. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type FormGradesInput, formGrades, InputError } from '../../src/index';
import { sentenceOf } from '../../src/reckoning/words';
import { drawer } from '../support/draw';
import { runs } from '../support/effort';
import { FREE, randomSite } from '../support/grade/forms';
import { type OracleRow, oracle } from '../support/oracle';
import { disagreement } from '../support/working';

const m = (v: number): string => `${v.toFixed(3)} m`;

const namedIn = (error: InputError): string[] =>
  [...error.message.matchAll(/"([^"]+)"/g)].map(([, name]) => name as string);

describe('the plane with the least fill', () => {
  // Outside check: HiGHS, a general-purpose solver, on random sites; its dual proves the optimum.
  it('has the fill that HiGHS finds, on random sites', { timeout: 120_000 }, async () => {
    const solve = await oracle();
    let [met, refused] = [0, 0];
    for (let seed = 1; seed <= runs(300); seed += 1) {
      const { input, rows, fill } = randomSite(seed);
      const answer = solve(fill, rows, new Set(['h', 'b', 'c']));
      const attempt = formGrades.attempt(input);
      if (answer.status === 'Infeasible') {
        refused += 1;
        expect(attempt.ok, `site ${seed}`).toBe(false);
        if (!attempt.ok) expect(attempt.error.issues[0]?.code).toBe('conflicting-grades');
        continue;
      }
      met += 1;
      expect(answer.status).toBe('Optimal');
      expect(Math.abs(answer.dual - answer.objective), `dual of site ${seed}`).toBeLessThan(1e-6);
      if (!attempt.ok) throw attempt.error;
      const { figures } = attempt.result;
      expect(Math.abs(figures.fillHeights.toNumber('m') - answer.objective), `site ${seed}`).toBeLessThan(
        1e-5,
      );
      expect(figures.verdict, `site ${seed}`).toBe('all falls met');
    }
    expect(met).toBeGreaterThan(runs(150));
    expect(refused).toBeGreaterThan(runs(12));
  });

  it('names conditions that HiGHS finds to conflict, and not without any one of them', async () => {
    const solve = await oracle();
    let named = 0;
    for (let seed = 1; seed <= runs(200); seed += 1) {
      const { input, rows } = randomSite(seed);
      const attempt = formGrades.attempt(input);
      if (attempt.ok) continue;
      const names = namedIn(attempt.error);
      const all = [...(input.fixed ?? []), ...(input.bounds ?? []), ...(input.falls ?? [])].map(
        (c) => c.name,
      );
      const status = (wanted: (name: string) => boolean): string => {
        const picked = rows.slice(input.stakes.length).filter((_, i) => wanted(all[i] as string));
        return picked.length === 0 ? 'Optimal' : solve({}, picked, FREE).status;
      };
      expect(status((name) => names.includes(name))).toBe('Infeasible');
      for (const leftOut of names) {
        expect(status((name) => names.includes(name) && name !== leftOut)).not.toBe('Infeasible');
      }
      named += 1;
    }
    expect(named).toBeGreaterThan(runs(10));
  });

  it('is the flattest that has the falls asked for, where there is no ground', () => {
    const { figures } = formGrades({
      fixed: [{ name: 'door', x: '0 m', y: '0 m', elevation: '10 m' }],
      falls: [{ name: 'away', from: { x: '0 m', y: '0 m' }, to: { x: '0 m', y: '5 m' }, minimum: '2%' }],
      stakes: [{ name: 'A', x: '3 m', y: '5 m' }],
    });
    expect(figures.alongX?.format()).toBe('0%');
    expect(figures.alongY?.format()).toBe('2%');
    expect(figures.stakes[0]?.elevation.toString()).toBe('9.9 m');
    expect(figures.binding.map(sentenceOf)).toEqual(['door', 'away', 'level along x']);
  });
});

describe('how steep the plane may be', () => {
  it('keeps within the most, with the fill that a fine fan of tangents allows', {
    timeout: 60_000,
  }, async () => {
    const solve = await oracle();
    let bound = 0;
    for (let seed = 1; seed <= runs(60); seed += 1) {
      const draw = drawer(seed * 31);
      const mm = (low: number, high: number): number =>
        Math.round((low + (high - low) * draw()) * 1000) / 1000;
      const most = mm(0.03, 0.08);
      const stakes = Array.from({ length: 5 }, (_, i) => [i, mm(0, 8), mm(2, 8), mm(8.6, 9.8)] as const);
      const input: FormGradesInput = {
        fixed: [{ name: 'door', x: '0 m', y: '0 m', elevation: '10 m' }],
        falls: [{ name: 'away', from: { x: '0 m', y: '0 m' }, to: { x: '0 m', y: '8 m' }, minimum: '2%' }],
        maximum: { value: most * 1000, unit: 'mm/m' },
        stakes: stakes.map(([i, x, y, g]) => ({ name: `s${i}`, x: m(x), y: m(y), ground: m(g) })),
      };
      const { figures } = formGrades(input);
      const steepest = figures.steepest?.toNumber('mm/m') ?? Number.NaN;
      expect(steepest).toBeLessThanOrEqual(most * 1000 + 1e-9);
      // Outside check: HiGHS with 720 tangents to the circle, which lie outside it by 1e-5 of its size.
      const rows: OracleRow[] = stakes.map(([i, x, y, g]) => ({
        weights: { [`f${i}`]: 1, b: -x, c: -y },
        least: 10 - g,
      }));
      rows.push({ weights: { c: -1 }, least: 0.02 });
      for (let k = 0; k < 720; k += 1) {
        const angle = (k * Math.PI) / 360;
        rows.push({ weights: { b: Math.cos(angle), c: Math.sin(angle) }, most });
      }
      const aim = Object.fromEntries(stakes.map(([i]) => [`f${i}`, 1]));
      const answer = solve(aim, rows, new Set(['b', 'c']));
      const fill = figures.fillHeights.toNumber('m');
      expect(fill - answer.objective, `site ${seed}`).toBeGreaterThan(-1e-6);
      expect(fill - answer.objective, `site ${seed}`).toBeLessThan(5 * 8 * most * 2e-5 + 1e-6);
      if (steepest > most * 1000 - 1e-3) bound += 1;
    }
    expect(bound).toBeGreaterThan(runs(20));
  });

  it('is met by every fall given alone, exactly', () => {
    for (let seed = 1; seed <= runs(400); seed += 1) {
      const draw = drawer(seed * 17);
      const place = () => ({ x: m(12 * draw()), y: m(12 * draw()) });
      const { figures } = formGrades({
        fixed: [{ name: 'door', ...place(), elevation: m(100 * draw()) }],
        falls: [{ name: 'away', from: place(), to: place(), minimum: '2%' }],
        stakes: [{ name: 'A', ...place() }],
      });
      expect(figures.falls[0]?.verdict, `fall ${seed}`).toBe('met');
      expect(figures.steepest?.toNumber('%')).toBeCloseTo(2, 12);
    }
  });

  it('turns and mirrors with the site, in any order and in feet', () => {
    for (let seed = 1; seed <= runs(40); seed += 1) {
      const { input } = randomSite(seed);
      const attempt = formGrades.attempt(input);
      if (!attempt.ok) continue;
      const said = (i: FormGradesInput): string[] => {
        const { figures, cautions } = formGrades(i);
        const heights = figures.stakes.map(
          ({ name, elevation }) => `${name} ${elevation.toNumber('m').toFixed(8)}`,
        );
        return [figures.verdict, ...heights.sort(), ...cautions.map(({ code }) => code)];
      };
      const turned = <P extends { x: unknown; y: unknown }>(p: P): P => ({ ...p, x: negative(p.y), y: p.x });
      const negative = (q: unknown): string => (String(q).startsWith('-') ? String(q).slice(1) : `-${q}`);
      const turnedInput = {
        ...input,
        stakes: input.stakes.map(turned).reverse(),
        bounds: (input.bounds ?? []).map(turned).reverse(),
        falls: (input.falls ?? []).map((f) => ({ ...f, from: turned(f.from), to: turned(f.to) })).reverse(),
        ...(input.fixed ? { fixed: input.fixed.map(turned).reverse() } : {}),
      };
      expect(said(turnedInput), `site ${seed}`).toEqual(said(input));
    }
  });
});

describe('surfaces in closed form', () => {
  const point = (name: string, x: number, y: number, z: number) => ({
    name,
    x: m(x),
    y: m(y),
    elevation: m(z),
  });
  const stake = (x: number, y: number) => ({ name: 'S', x: m(x), y: m(y) });
  const at = (surface: FormGradesInput['surface'], x: number, y: number): number => {
    const { figures } = formGrades({ ...(surface ? { surface } : {}), stakes: [stake(x, y)] });
    return figures.stakes[0]?.elevation.toNumber('m') ?? Number.NaN;
  };
  const coordinate = fc.integer({ min: -40, max: 40 }).map((n) => n / 8);

  it('a cone to a drain rises by slope times distance', () => {
    fc.assert(
      fc.property(coordinate, coordinate, (x, y) => {
        const z = at({ kind: 'fall-to-drain', drain: point('D', 0, 0, 1), slope: '2%' }, x, y);
        expect(z).toBeCloseTo(1 + 0.02 * Math.hypot(x, y), 9);
      }),
    );
  });

  it('two planes fall away from a ridge and down to a valley', () => {
    fc.assert(
      fc.property(coordinate, coordinate, (x, y) => {
        const line = [point('P', 0, 0, 1), point('Q', 10, 0, 1.1)];
        const rise = y >= 0 ? 0.02 * y : -0.03 * y;
        expect(at({ kind: 'ridge', line, left: '2%', right: '3%' }, x, y)).toBeCloseTo(
          1 + 0.01 * x - rise,
          9,
        );
        expect(at({ kind: 'valley', line, left: '2%', right: '3%' }, x, y)).toBeCloseTo(
          1 + 0.01 * x + rise,
          9,
        );
      }),
    );
  });

  it('a warped quad is bilinear, and met by its ruling lines', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 8 }), fc.integer({ min: 0, max: 8 }), (i, j) => {
        const [u, v] = [i / 8, j / 8];
        const corners = [
          point('A', 0, 0, 1),
          point('B', 8, 0, 1.2),
          point('C', 7, 6, 1.1),
          point('D', 1, 4, 1.4),
        ];
        const mix = (a: number, b: number, c: number, d: number): number =>
          (1 - u) * (1 - v) * a + u * (1 - v) * b + u * v * c + (1 - u) * v * d;
        const [x, y] = [mix(0, 8, 7, 1), mix(0, 0, 6, 4)];
        const { figures } = formGrades({
          surface: { kind: 'warped-quad', corners },
          stakes: [{ name: 'S', x: { value: x, unit: 'm' }, y: { value: y, unit: 'm' } }],
        });
        expect(figures.stakes[0]?.elevation.toNumber('m')).toBeCloseTo(mix(1, 1.2, 1.1, 1.4), 9);
      }),
    );
  });

  it('a plane passes through its three points, and its working holds', () => {
    fc.assert(
      fc.property(coordinate, coordinate, coordinate, coordinate, (x, y, p, q) => {
        const z = (a: number, b: number): number => 5 - 0.001 * p * a - 0.001 * q * b;
        const through = [point('A', 0, 0, 5), point('B', 4, 1, 0), point('C', 1, 6, 0)].map((f, i) => {
          const [a, b] = [
            [0, 0],
            [4, 1],
            [1, 6],
          ][i] as [number, number];
          return { ...f, elevation: { value: Number(z(a, b).toFixed(9)), unit: 'm' } };
        });
        const { figures, working } = formGrades({
          surface: { kind: 'plane', through },
          stakes: [stake(x, y)],
        });
        expect(figures.stakes[0]?.elevation.toNumber('m')).toBeCloseTo(z(x, y), 6);
        for (const step of working) expect(disagreement(step)).toBeLessThan(6e-3);
      }),
    );
  });
});

describe('what cannot be', () => {
  it('names the two conditions that conflict', () => {
    const attempt = formGrades.attempt({
      fixed: [
        { name: 'threshold', x: '0 m', y: '0 m', elevation: '10 m' },
        { name: 'walk', x: '0 m', y: '5 m', elevation: '10 m' },
      ],
      falls: [
        {
          name: 'along the wall',
          from: { x: '0 m', y: '0 m' },
          to: { x: '1 m', y: '0 m' },
          minimum: '1%',
          maximum: '3%',
        },
        { name: 'away', from: { x: '0 m', y: '0 m' }, to: { x: '0 m', y: '5 m' }, minimum: '2%' },
      ],
      stakes: [{ name: 'A', x: '1 m', y: '1 m' }],
    });
    expect(attempt.ok).toBe(false);
    if (attempt.ok) return;
    expect(attempt.error.issues[0]?.code).toBe('conflicting-grades');
    expect(attempt.error.message).toContain('"threshold", "walk", "away"');
    expect(attempt.error.message).not.toContain('along the wall');
  });

  it('names two where two conflict', () => {
    const attempt = formGrades.attempt({
      fixed: [
        { name: 'door', x: '0 m', y: '0 m', elevation: '10 m' },
        { name: 'walk', x: '4 m', y: '0 m', elevation: '10 m' },
      ],
      bounds: [{ name: 'below the sill', x: '0 m', y: '0 m', maximum: '9.95 m' }],
      stakes: [{ name: 'A', x: '1 m', y: '1 m' }],
    });
    expect(attempt.ok ? '' : attempt.error.message).toContain('"door", "below the sill" conflict');
  });

  it('throws nothing but its own error', () => {
    fc.assert(
      fc.property(
        fc.anything(),
        fc.constantFrom('surface', 'fixed', 'bounds', 'falls', 'stakes', 'square'),
        (junk, key) => {
          const attempt = formGrades.attempt({ stakes: [{ name: 'A', x: '0 m', y: '0 m' }], [key]: junk });
          if (!attempt.ok) expect(attempt.error).toBeInstanceOf(InputError);
        },
      ),
      { numRuns: runs(300) },
    );
  });
});

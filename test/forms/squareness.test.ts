/** Squareness: forms set out in the plane and slid, and what must always hold of the verdict. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formGrades, squareCheck } from '../../src/index';
import type { Words } from '../../src/reckoning/words';
import { stepText, valueText, wordsText } from '../../src/report/view';
import { runs } from '../support/effort';

/** Sides in eighths of an inch, and how far the far side has slid. */
const side = fc.integer({ min: 300, max: 8000 }).map((n) => n / 8);
const slid = fc.integer({ min: 0, max: 160 }).map((n) => n / 16);

/** Both diagonals of a parallelogram of these sides, whose far side has slid along the length. */
function diagonals(L: number, W: number, x: number): readonly [number, number] {
  const rise = Math.sqrt(W * W - x * x);
  return [Math.hypot(L + x, rise), Math.hypot(L - x, rise)];
}

const inches = (n: number): string => `${n.toFixed(10)} in`;

describe('square check', () => {
  it('finds how far a side has slid', () => {
    fc.assert(
      fc.property(side, side, slid, (L, W, x) => {
        const [D, d] = diagonals(L, W, x);
        const { figures } = squareCheck({
          length: inches(L),
          width: inches(W),
          diagonals: [inches(D), inches(d)],
        });
        expect(figures.slide?.toNumber('in')).toBeCloseTo(x, 6);
      }),
      { numRuns: runs(200) },
    );
  });

  it('judges alike whichever diagonal comes first, and in millimeters', () => {
    fc.assert(
      fc.property(side, side, slid, (L, W, x) => {
        const [D, d] = diagonals(L, W, x).map((n) => Number(n.toFixed(4))) as [number, number];
        const given = { length: inches(L), width: inches(W) };
        const one = squareCheck({ ...given, diagonals: [inches(D), inches(d)] });
        const other = squareCheck({ ...given, diagonals: [inches(d), inches(D)] });
        const mm = (n: number): string => `${(n * 25.4).toFixed(6)} mm`;
        const metric = squareCheck({ length: mm(L), width: mm(W), diagonals: [mm(D), mm(d)] });
        for (const same of [other, metric]) {
          expect(same.figures.square).toBe(one.figures.square);
          expect(same.cautions.map(({ code }) => code)).toEqual(one.cautions.map(({ code }) => code));
        }
      }),
      { numRuns: runs(200) },
    );
  });

  const judge = (L: number, W: number, x: number): { square: boolean | undefined; apart: number } => {
    const [D, d] = diagonals(L, W, x);
    const { square } = squareCheck({
      length: inches(L),
      width: inches(W),
      diagonals: [inches(D), inches(d)],
    }).figures;
    return { square, apart: D - d };
  };

  it('is never better with more out', () => {
    fc.assert(
      fc.property(side, side, slid, slid, (L, W, a, b) => {
        const [less, more] = [judge(L, W, Math.min(a, b)), judge(L, W, Math.max(a, b))];
        if (more.square) expect(less.square).toBe(true);
      }),
      { numRuns: runs(200) },
    );
  });

  it('lets pass an eighth in ten feet, at least 3/16 in and at most 1 in', () => {
    fc.assert(
      fc.property(side, side, slid, (L, W, x) => {
        const { square, apart } = judge(L, W, x);
        const allowed = Math.min(Math.max(Math.hypot(L, W) / 960, 3 / 16), 1);
        fc.pre(Math.abs(apart - allowed) > 1e-6);
        expect(square).toBe(apart < allowed);
      }),
      { numRuns: runs(200) },
    );
  });

  it.each([
    ['40 ft', '30 ft', '50 ft', '0.625 in', 'in', /1\/8 in for each 10 ft/],
    ['8 m', '6 m', '10 m', '10.4 mm', 'mm', /a 960th of the diagonal/],
  ])(
    'says what it allows %s by %s in the units of the job',
    (length, width, diagonal, shown, unit, because) => {
      const given = { length, width, diagonals: [diagonal, diagonal] } as const;
      const { assumed, figures, working } = squareCheck(given);
      expect(assumed.map((a) => [a.name, valueText(a.value)])).toEqual([['tolerance', shown]]);
      expect(wordsText(assumed[0]?.because as Words)).toMatch(because);
      expect(figures.difference?.format()).toBe(`0 ${unit}`);
      expect(figures.slide?.format()).toBe(`0 ${unit}`);
      const allowed = working.map((one) => stepText(one)).find(({ formula }) => formula.startsWith('e ='));
      expect(allowed?.gives).toBe(shown);
      expect(allowed?.put).toMatch(
        new RegExp(`^min\\(max\\(${diagonal} ÷ 960, [\\d.]+ ${unit}\\), [\\d.]+ ${unit}\\)$`),
      );
      const own = squareCheck({ ...given, tolerance: `5 ${unit}` });
      expect(own.assumed).toEqual([]);
      expect(own.working.some(({ formula }) => formula.startsWith('e ='))).toBe(false);
    },
  );

  it('is the rule that forms set to grades are judged by too', () => {
    fc.assert(
      fc.property(side, side, slid, (L, W, x) => {
        const [D, d] = diagonals(L, W, x).map((n) => inches(Number(n.toFixed(4)))) as [string, string];
        const sides = { length: inches(L), width: inches(W) };
        const own = squareCheck({ ...sides, diagonals: [D, d] }).cautions.map(({ code }) => code);
        const { cautions } = formGrades({
          surface: {
            kind: 'sloped-plane',
            at: { name: 'door', x: '0 ft', y: '0 ft', elevation: '100 ft' },
            alongX: '0%',
            alongY: '2%',
          },
          stakes: [{ name: 'A', x: '0 ft', y: '18 ft' }],
          square: { ...sides, measured: [D, d] },
        });
        const codes = cautions.map(({ code }) => code).filter((code) => /square|sides/.test(code));
        expect(codes).toEqual(own);
      }),
      { numRuns: runs(50) },
    );
  });
});

/**
 * The searches against closed forms: equations with a solution that is known, the least at a corner found by
 * trying every corner, the point nearest the origin of a turned box, conflicts that are built in.
 */
import { describe, expect, it } from 'vitest';
import { Decimal } from '../../src/quantity/decimal';
import { type Arithmetic, BINARY, EXACT } from '../../src/solve/arithmetic';
import { conflictAmong } from '../../src/solve/conflict';
import { type Equation, solved } from '../../src/solve/equations';
import { type Kinks, type Least, leastOf, type Row, rough } from '../../src/solve/kinks';
import { smallestOf } from '../../src/solve/smallest';
import { drawer } from '../support/draw';
import { runs } from '../support/effort';

const d = (v: number | string): Decimal => new Decimal(v);

const drawInts = (seed: number): ((low: number, high: number) => number) => {
  const draw = drawer(seed);
  return (low, high) => low + Math.floor(draw() * (high - low + 1));
};

const row = (
  weights: readonly number[],
  level: Decimal | number | string,
  below: readonly number[],
  above: readonly number[],
): Row => ({
  at: weights.flatMap((w, i) => (w === 0 ? [] : [i])),
  weights: weights.filter((w) => w !== 0).map(d),
  level: new Decimal(level),
  below: below.map(d),
  above: above.map(d),
});

const leastOrFail = (kinks: Kinks): Least => {
  const least = leastOf(kinks);
  if (!least) throw new Error('the search did not end');
  return least;
};

const overOf = ({ at, weights, level }: Row, point: readonly Decimal[]): Decimal =>
  at.reduce((sum, v, i) => sum.plus((weights[i] ?? d(0)).times(point[v] ?? d(0))), level.neg());

/** The total by place, by the definition. */
const costAt = (rows: readonly Row[], point: readonly Decimal[]): Decimal[] =>
  (rows[0]?.below ?? []).map((_, p) =>
    rows.reduce((sum, r) => {
      const over = overOf(r, point);
      return sum.plus(over.abs().times((over.isNegative() ? r.below[p] : r.above[p]) ?? 0));
    }, d(0)),
  );

const orderOf = (a: readonly Decimal[], b: readonly Decimal[]): number => {
  const at = a.findIndex((v, p) =>
    v
      .minus(b[p] ?? 0)
      .abs()
      .greaterThan(1e-35),
  );
  return at === -1 ? 0 : (a[at] ?? d(0)).comparedTo(b[at] ?? 0);
};

describe('equations', () => {
  const close = { exact: 1e-50, binary: 1e-9 };
  const trial = <T>(sum: Arithmetic<T>, near: number, seed: number): void => {
    const int = drawInts(seed);
    const n = int(1, 6);
    const wanted = Array.from({ length: n }, () => int(-9, 9));
    // A lower with an upper triangle of ones has a determinant of 1; an equation more hangs on the others.
    const part = (keep: (i: number, j: number) => boolean): number[][] =>
      Array.from({ length: n }, (_, i) =>
        Array.from({ length: n }, (__, j) => (i === j ? 1 : keep(i, j) ? int(-3, 3) : 0)),
      );
    const [low, up] = [part((i, j) => j < i), part((i, j) => j > i)];
    const matrix = low.map((l) =>
      Array.from({ length: n }, (_, j) => l.reduce((s, v, k) => s + v * (up[k]?.[j] ?? 0), 0)),
    );
    const first = matrix[0] ?? [];
    const equalsOf = (weights: readonly number[]): number =>
      weights.reduce((s, w, k) => s + w * (wanted[k] ?? 0), 0);
    // The second is a seventh of the first, but for the last digit: it decides nothing.
    const all = [first, first, ...matrix.slice(1)];
    const equations = all.map((weights, at): Equation<T> => {
      const part = (v: number): T => sum.over(sum.of(d(v)), sum.of(d(at === 1 ? 7 : 1)));
      return { weights: weights.map(part), equals: part(equalsOf(weights)) };
    });
    const found = solved(sum, equations, n).map((v) => Number(v));
    for (const [k, v] of found.entries())
      expect(Math.abs(v - (wanted[k] ?? 0)), `seed ${seed}`).toBeLessThan(near);
  };

  it('with a solution that is known', () => {
    for (let seed = 1; seed <= runs(200); seed += 1) {
      trial(EXACT, close.exact, seed);
      trial(BINARY, close.binary, seed);
    }
  });

  it('leave at nought what nothing decides', () => {
    const of = (weights: number[], equals: number) => ({ weights: weights.map(d), equals: d(equals) });
    expect(solved(EXACT, [of([0, 2, 0], 6), of([0, 4, 0], 12)], 3).map(Number)).toEqual([0, 3, 0]);
    // The largest weight is taken out first, so that the other one is left over.
    expect(solved(EXACT, [of([1, -4], 8)], 2).map(Number)).toEqual([0, -2]);
    expect(solved(EXACT, [], 2).map(Number)).toEqual([0, 0]);
  });

  it('are not decided by the stray of a last digit', () => {
    const of = (weights: number[], equals: number, part = 1) => ({
      weights: weights.map((w) => d(w).div(part)),
      equals: d(equals).div(part),
    });
    // An eleventh of the first leaves -1e-60 of the second unknown.
    const all = [of([3, 5, 7], 15), of([3, 5, 7], 15, 11), of([0, 1, 0], 3), of([1, 0, 0], 0)];
    expect(solved(EXACT, all, 3).map(Number)).toEqual([0, 3, 0].map((v) => expect.closeTo(v, 12)));
  });

  it('reckon alike in both ways', () => {
    const values = ['-3.5', '-1', '0', '0.25', '1', '7'];
    for (const a of values) {
      expect(EXACT.sign(d(a))).toBe(Math.sign(Number(a)));
      expect(BINARY.sign(Number(a))).toBe(Math.sign(Number(a)));
      expect(BINARY.of(d(a))).toBe(Number(EXACT.of(d(a))));
      for (const b of values) {
        const [x, y] = [Number(a), Number(b)];
        expect([EXACT.plus(d(a), d(b)).toNumber(), BINARY.plus(x, y)]).toEqual([x + y, x + y]);
        expect(Number(EXACT.times(d(a), d(b))) + 0).toBe(x * y + 0);
        expect(BINARY.times(x, y)).toBe(x * y);
        expect(Math.sign(EXACT.order(d(a), d(b)))).toBe(Math.sign(BINARY.order(x, y)));
        if (y !== 0) expect(EXACT.over(d(a), d(b)).toNumber() + 0).toBeCloseTo(BINARY.over(x, y) + 0, 12);
        for (const c of values)
          expect(EXACT.less(d(a), d(b), d(c)).toNumber()).toBe(BINARY.less(x, y, Number(c)));
      }
    }
    // A stray of the last digits is nothing, and so is one of the last bits.
    expect([EXACT.sign(d('1e-41')), EXACT.sign(d('-1e-41')), EXACT.sign(d('1e-39'))]).toEqual([0, 0, 1]);
    expect([BINARY.sign(1e-11), BINARY.sign(-1e-11), BINARY.sign(-1e-9)]).toEqual([0, 0, -1]);
  });
});

/** Every corner of a program of two unknowns: where two rows, or a row and an axis, meet. */
function cornersOf(rows: readonly Row[]): Decimal[][] {
  const lines = rows.map((r) => {
    const of = (v: number): number => Number(r.weights[r.at.indexOf(v)] ?? 0);
    return { a: of(0), b: of(1), c: r.level };
  });
  lines.push({ a: 1, b: 0, c: d(0) }, { a: 0, b: 1, c: d(0) });
  return lines.flatMap((p, i) =>
    lines.slice(0, i).flatMap((q) => {
      const det = p.a * q.b - p.b * q.a;
      if (det === 0) return [];
      const x = p.c.times(q.b).minus(q.c.times(p.b)).div(det);
      return [[x, q.c.times(p.a).minus(p.c.times(q.a)).div(det)]];
    }),
  );
}

/** Whether a point stands to a row as the proof says of all that are as good. */
function stands(r: Row, how: string | undefined, point: readonly Decimal[]): boolean {
  const over = overOf(r, point);
  const sign = over.abs().lessThan(1e-35) ? 0 : over.isNegative() ? -1 : 1;
  return how === 'free' || sign === 0 || (how === 'above' && sign > 0) || (how === 'below' && sign < 0);
}

/** Off its level at no cost, and so no part of a proof. */
function idle(r: Row, point: readonly Decimal[]): boolean {
  const over = overOf(r, point);
  return over.abs().greaterThan(1e-35) && Number((over.isNegative() ? r.below : r.above)[0]) === 0;
}

describe('the least of kinked costs', () => {
  it('is the best of all corners, and its proof tells just the points that are as good', () => {
    let many = 0;
    for (let seed = 1; seed <= runs(250); seed += 1) {
      const int = drawInts(seed);
      const rows = Array.from({ length: int(2, 7) }, () => {
        const weights = [int(-3, 3), int(-3, 3)];
        if (!weights.some(Boolean)) weights[int(0, 1)] = 1;
        const costs = (): number[] => (int(0, 2) === 0 ? [int(0, 1), int(0, 2)] : [0, int(0, 3)]);
        return row(weights, int(-5, 5), costs(), costs());
      });
      const least = leastOrFail({ unknowns: 2, rows });
      const corners = cornersOf(rows);
      const totals = corners.map((corner) => costAt(rows, corner));
      const best = totals.reduce((a, b) => (orderOf(b, a) < 0 ? b : a));
      expect(orderOf(least.total, best), `seed ${seed}`).toBe(0);
      expect(orderOf(costAt(rows, least.values), best), `seed ${seed}`).toBe(0);
      const approximate = rough({ unknowns: 2, rows });
      approximate.total.forEach((t, p) => {
        expect(t, `seed ${seed}`).toBeCloseTo(Number(best[p]), 6);
      });
      const good = corners.filter((_, i) => orderOf(totals[i] ?? [], best) === 0);
      corners.forEach((corner, i) => {
        const all = rows.every((r, k) => stands(r, least.stands[k], corner));
        expect(all, `seed ${seed}, corner ${corner}`).toBe(orderOf(totals[i] ?? [], best) === 0);
      });
      const apart = good.some((corner) =>
        corner.some((v, k) =>
          v
            .minus(least.values[k] ?? 0)
            .abs()
            .greaterThan(1e-30),
        ),
      );
      if (apart) many += 1;
      if (least.only) expect(apart, `seed ${seed}`).toBe(false);
      for (const k of least.heavy) expect(idle(rows[k] as Row, least.values), `seed ${seed}`).toBe(false);
      if (least.total[0]?.isZero()) continue;
      const heavy = least.heavy.map((k) => rows[k] as Row);
      expect(leastOrFail({ unknowns: 2, rows: heavy }).total[0]?.isZero(), `seed ${seed}`).toBe(false);
    }
    expect(many).toBeGreaterThan(runs(10));
  });

  it('of one unknown is the weighted median', () => {
    for (let seed = 1; seed <= runs(100); seed += 1) {
      const int = drawInts(seed);
      const levels = Array.from({ length: int(1, 9) }, () => ({ at: int(-20, 20), weight: int(1, 5) }));
      const rows = levels.map(({ at, weight }) => row([1], at, [weight], [weight]));
      const { values, only } = leastOrFail({ unknowns: 1, rows });
      const half = levels.reduce((s, { weight }) => s + weight, 0) / 2;
      const x = Number(values[0]);
      const weighing = (keep: (at: number) => boolean): number =>
        levels.filter(({ at }) => keep(at)).reduce((s, { weight }) => s + weight, 0);
      const [under, over] = [weighing((at) => at < x), weighing((at) => at > x)];
      expect(under <= half && over <= half, `seed ${seed}`).toBe(true);
      const here = levels.filter(({ at }) => at === x).length;
      if (under < half && over < half && here === 1) expect(only, `seed ${seed}`).toBe(true);
      if (under === half || over === half) expect(only, `seed ${seed}`).toBe(false);
    }
  });

  it('is nearly the same in binary numbers, with many rows and unknowns', () => {
    for (let seed = 1; seed <= runs(40); seed += 1) {
      const int = drawInts(seed);
      const unknowns = int(4, 7);
      const rows = Array.from({ length: int(15, 25) }, () => {
        const weights = Array.from({ length: unknowns }, () => int(-3, 3));
        if (!weights.some(Boolean)) weights[0] = 1;
        return row(weights, int(-9, 9), [0, int(0, 3)], [int(0, 4) === 0 ? 1 : 0, int(1, 3)]);
      });
      const { total } = leastOrFail({ unknowns, rows });
      const found = rough({ unknowns, rows });
      expect(found.total, `seed ${seed}`).toEqual(total.map((t) => expect.closeTo(Number(t), 6)));
    }
  });

  it('of no rows is nothing at nought', () => {
    expect(leastOrFail({ unknowns: 2, rows: [] }).values.map(Number)).toEqual([0, 0]);
    expect(rough({ unknowns: 2, rows: [] })).toEqual({ values: [0, 0], total: [0] });
  });
});

/** Maps whose rows are of one length and at right angles, in whole numbers. */
const TURNS: readonly (readonly (readonly number[])[])[] = [
  [[1]],
  [
    [3, 4],
    [-4, 3],
  ],
  [
    [7, -4, -4],
    [-4, 1, -8],
    [-4, -8, 1],
  ],
  Array.from({ length: 8 }, (_, i) => Array.from({ length: 8 }, (__, j) => (i === j ? 1 : 0))),
];

describe('the smallest of those as good', () => {
  it('is the point of a turned box that is nearest the origin', () => {
    for (let seed = 1; seed <= runs(150); seed += 1) {
      const int = drawInts(seed);
      const turn = TURNS[seed % TURNS.length] ?? [];
      const n = turn.length;
      const far = [1, 1e6][seed % 5 === 0 ? 1 : 0] ?? 1;
      const spans = turn.map(() => {
        const low = int(-8, 6);
        return { low: far * low, high: far * (low + int(0, 6)) };
      });
      const rows = turn.flatMap((weights, k) => {
        const { low, high } = spans[k] ?? { low: 0, high: 0 };
        return [row(weights, low, [1], [0]), row(weights, high, [0], [1])];
      });
      const least = leastOrFail({ unknowns: n, rows });
      expect(least.total.map(Number)).toEqual([0]);
      const near = spans.map(({ low, high }) => Math.min(Math.max(0, low), high));
      const square = (turn[0] ?? []).reduce((s, w) => s + w * w, 0);
      const wanted = turn.map(
        (_, i) => turn.reduce((s, weights, k) => s + (weights[i] ?? 0) * (near[k] ?? 0), 0) / square,
      );
      // Squares of one weight, whatever it is.
      const size = new Decimal(int(1, 5)).times(['1', '1e-8', '1e8'][seed % 3] ?? 1);
      const found = smallestOf(
        { unknowns: n, rows },
        least,
        turn.map(() => size),
      );
      found.forEach((v, i) => {
        expect(Number(v) / far, `seed ${seed}`).toBeCloseTo((wanted[i] ?? 0) / far, 12);
      });
    }
  });

  it('takes no heed of a row that costs nothing', () => {
    const walls = [row([1, 0], 1, [1], [0]), row([0, 1], 2, [1], [0])];
    for (const level of [9, 0]) {
      const kinks = { unknowns: 2, rows: [...walls, row([1, 1], level, [0], [0])] };
      const found = smallestOf(kinks, leastOrFail(kinks), [d(1), d(1)]);
      expect(found.map(Number)).toEqual([1, 2]);
    }
  });

  it('shares a sum out by the weights of the squares', () => {
    for (let seed = 1; seed <= runs(100); seed += 1) {
      const int = drawInts(seed);
      const squares = Array.from({ length: int(2, 5) }, () => int(1, 4));
      const total = int(-9, 9);
      const rows = [
        row(
          squares.map(() => 1),
          total,
          [1],
          [1],
        ),
      ];
      const kinks = { unknowns: squares.length, rows };
      const found = smallestOf(kinks, leastOrFail(kinks), squares.map(d));
      const all = squares.reduce((s, q) => s + 1 / q, 0);
      found.forEach((v, i) => {
        expect(Number(v), `seed ${seed}`).toBeCloseTo(total / (squares[i] ?? 1) / all, 12);
      });
    }
  });

  it('keeps to rows that binary numbers cannot tell apart', () => {
    // 1e9 and a billionth more are one binary number; as decimals the one row forbids what the other allows.
    const close = [row([1, 0], '1e9', [1], [0]), row([1, 0], '1000000000.000000001', [1], [0])];
    for (const [a, b] of [close, close.toReversed()] as [Row, Row][]) {
      const rows = [a, b, row([0, 1], 1, [1], [0]), row([0, 1], 5, [0], [1])];
      const kinks = { unknowns: 2, rows };
      const least = leastOrFail(kinks);
      expect(least.total.map(Number)).toEqual([0]);
      const found = smallestOf(kinks, least, [d(1), d(1)]);
      expect(costAt(rows, found).map(Number)).toEqual([0]);
    }
  });

  it('lets a row go that it ran against', () => {
    // Toward the origin from far along the wall x + y >= 2, whose foot is (1, 1), past walls that do not hold it.
    const walls = [
      row([1, 1], 2, [1], [0]),
      row([1, 0], 9, [0], [1]),
      row([0, 1], -9, [1], [0]),
      row([1, -1], 18, [0], [1]),
    ];
    const kinks = { unknowns: 2, rows: walls };
    const far = { ...leastOrFail(kinks), values: [d(9), d(-7)] };
    expect(smallestOf(kinks, far, [d(1), d(1)]).map(Number)).toEqual([1, 1]);
    // From (0.5, 9) the way to the origin meets 4x + y >= 4 first, slides along it to x + y >= 2 and leaves it there.
    for (const rows of [
      [row([4, 1], 4, [1], [0]), row([1, 1], 2, [1], [0])],
      [row([-4, -1], -4, [0], [1]), row([-1, -1], -2, [0], [1])],
    ]) {
      const least = { ...leastOrFail({ unknowns: 2, rows }), values: [d('0.5'), d(9)] };
      expect(least.only).toBe(false);
      const [x, y] = smallestOf({ unknowns: 2, rows }, least, [d(1), d(1)]).map(Number);
      expect([x, y]).toEqual([expect.closeTo(1, 12), expect.closeTo(1, 12)]);
    }
  });
});

describe('a conflict', () => {
  const atLeast = (weights: number[], level: number): Row => row(weights, level, [1], [0]);
  const atMost = (weights: number[], level: number): Row => row(weights, level, [0], [1]);

  it('of two is named by the two', () => {
    const rows = [
      atLeast([1, 0], 0),
      atLeast([0, 1], 3),
      atMost([1, 0], 5),
      atMost([0, 1], 2),
      atLeast([1, 1], 1),
    ];
    expect(conflictAmong(2, rows)).toEqual([1, 3]);
  });

  it('of two is named where there is one of three as well', () => {
    const three = [atLeast([1, 0], 1), atMost([1, 1], 1), atLeast([0, 1], 1)].map((r) => ({
      ...r,
      below: r.below.map((c) => c.times(9)),
      above: r.above.map((c) => c.times(9)),
    }));
    expect(conflictAmong(3, [atLeast([0, 0, 1], 3), atMost([0, 0, 1], 2), ...three])).toEqual([0, 1]);
  });

  it('of three is named by the three, none of which can be left out', () => {
    const rows = [
      atMost([1, 0], 9),
      atLeast([1, 0], 1),
      atMost([1, 1], 1),
      atLeast([1, -1], -9),
      atLeast([0, 1], 1),
    ];
    expect(conflictAmong(2, rows).sort((a, b) => a - b)).toEqual([1, 2, 4]);
  });

  it('is one where there are several of three', () => {
    const three = (at: number): Row[] => {
      const weights = (x: number, y: number): number[] =>
        [0, 1, 2, 3].map((i) => (i === at ? x : i === at + 1 ? y : 0));
      return [atLeast(weights(1, 0), 1), atMost(weights(1, 1), 1), atLeast(weights(0, 1), 1)];
    };
    const rows = [...three(0), ...three(2), atMost([1, 1, 1, 1], 50)];
    const found = conflictAmong(4, rows).sort((a, b) => a - b);
    expect([
      [0, 1, 2],
      [3, 4, 5],
    ]).toContainEqual(found);
  });

  it('is found among very many rows', () => {
    for (const idle of [57, 58, 59, 90]) {
      const rows = Array.from({ length: idle }, (_, k) => atMost([1, 0], 10 + k));
      rows.splice(20, 0, atLeast([0, 1], 1));
      rows.splice(40, 0, atMost([0, 1], 0));
      expect(conflictAmong(2, rows).sort((a, b) => a - b)).toEqual([20, 40]);
    }
  });
});

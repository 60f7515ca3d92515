/**
 * Cutting plans against HiGHS, a general-purpose solver of linear and integer programs, and against sums
 * that the test does itself.
 */
import highsLoader from 'highs';
import { beforeAll, describe, expect, it } from 'vitest';
import { type BarCuttingFigures, barCutting } from '../../src/index';
import { runs } from '../support/effort';
import { allPatterns, type CutList, type Highs, leastCut } from '../support/steel/patterns';
import { randoms } from './outlines';

type List = CutList;

/** Data as printed in the works that the vectors name; the optima are left to HiGHS. */
const PUBLISHED: Record<string, List> = {
  'the cutting stock case study of the NEOS Guide': {
    stock: 100,
    pieces: [
      [45, 97],
      [36, 610],
      [31, 395],
      [14, 211],
    ],
  },
  'course IE 316, problem 4': {
    stock: 110,
    pieces: [
      [75, 8],
      [55, 10],
      [50, 24],
      [45, 35],
      [20, 48],
    ],
  },
  'University of Toronto, MIE 376, lecture 8': {
    stock: 17,
    pieces: [
      [9, 15],
      [5, 20],
      [3, 25],
    ],
  },
  'boards of 25 ft': {
    stock: 25,
    pieces: [
      [10, 300],
      [9, 1200],
      [7, 700],
    ],
  },
  'boards of 25 ft, 500 of 10 ft': {
    stock: 25,
    pieces: [
      [10, 500],
      [9, 1200],
      [7, 700],
    ],
  },
  'boards of 25 ft with 11 ft': {
    stock: 25,
    pieces: [
      [11, 300],
      [9, 1200],
      [7, 5000],
    ],
  },
  'boards of 20 ft': {
    stock: 20,
    pieces: [
      [10, 70],
      [8, 15],
      [4, 25],
      [3, 50],
    ],
  },
};

let highs: Highs;
beforeAll(async () => {
  highs = await highsLoader();
});

const figuresOf = ({ stock, pieces }: List, unit = 'ft'): BarCuttingFigures =>
  barCutting({
    pieces: pieces.map(([l, count]) => ({ length: `${l} ${unit}`, count })),
    stock: [{ length: `${stock} ${unit}` }],
    kerf: '0 in',
  }).figures;

const highsOptimum = (list: List): number => {
  const columns = allPatterns(list);
  const counts = list.pieces.map(([, d]) => d);
  return Math.round(
    leastCut(
      highs,
      counts,
      columns,
      columns.map(() => 1),
      true,
    ),
  );
};

/** Add up what a plan makes, and see that each bar holds it. */
function checkPlan(
  { stock, pieces }: List,
  figures: BarCuttingFigures,
  unit: 'ft' | 'm' | 'mm' | 'in' = 'ft',
): void {
  const made = new Map<number, number>();
  let bars = 0;
  for (const { bars: alike, cuts } of figures.plan) {
    const n = alike.toNumber('each');
    bars += n;
    let used = 0;
    for (const { length, count } of cuts) {
      const l = Math.round(length.toNumber(unit) * 1e6) / 1e6;
      made.set(l, (made.get(l) ?? 0) + n * count.toNumber('each'));
      used += l * count.toNumber('each');
    }
    expect(used).toBeLessThanOrEqual(stock + 1e-6);
  }
  expect(bars).toBe(figures.bars.toNumber('each'));
  for (const [l, d] of pieces) expect(made.get(l)).toBe(d);
}

/** The proof, read by itself: no pattern is worth more than a bar, and the pieces come to the bound. */
function checkProof(list: List, figures: BarCuttingFigures): void {
  const worth = new Map(
    figures.lengthValues.map((w) => [
      Math.round(w.length.toNumber('ft') * 1e6) / 1e6,
      w.value.toNumber(':1'),
    ]),
  );
  for (const pattern of allPatterns(list)) {
    const held = pattern.reduce((s, n, i) => s + n * (worth.get(list.pieces[i]?.[0] ?? 0) ?? 0), 0);
    expect(held).toBeLessThanOrEqual(1 + 1e-9);
  }
  const all = list.pieces.reduce((s, [l, d]) => s + d * (worth.get(l) ?? 0), 0);
  expect(Math.ceil(all - 1e-9)).toBe(figures.lowerBound.toNumber('each'));
}

describe('published cutting lists', () => {
  it.each(Object.entries(PUBLISHED))('%s: as good as HiGHS, and proved', (_, list) => {
    const figures = figuresOf(list);
    expect(figures.bars.toNumber('each')).toBe(highsOptimum(list));
    expect(figures.proved).toBe(true);
    checkPlan(list, figures);
    checkProof(list, figures);
  });

  it('counts the 37 feasible patterns that the NEOS Guide prints', () => {
    const list = PUBLISHED['the cutting stock case study of the NEOS Guide'] as List;
    let count = 0;
    const go = (i: number, room: number): void => {
      const [l] = list.pieces[i] ?? [0];
      if (i === list.pieces.length) count += 1;
      else for (let n = Math.floor(room / l); n >= 0; n -= 1) go(i + 1, room - n * l);
    };
    go(0, list.stock);
    // All but the empty one.
    expect(count - 1).toBe(37);
  });
});

/** Lists such as bar lists are: 1 to 40 lengths in sixteenths of an inch out of 20 ft. */
function randomList(random: () => number, k: number): List {
  const lengths = new Map<number, number>();
  const low = [40, 200, 400, 900][k % 4] as number;
  const high = [3840, 3000, 1900, 1800][Math.floor(k / 4) % 4] as number;
  const most = [5, 50, 200][k % 3] as number;
  const kinds = 1 + Math.floor(random() * 40);
  while (lengths.size < kinds) {
    lengths.set(low + Math.floor(random() * (high - low)), 1 + Math.floor(random() * most));
  }
  return { stock: 3840, pieces: [...lengths] };
}

/** First-fit decreasing written out bin by bin. */
function firstFitDecreasing({ stock, pieces }: List): number {
  const rooms: number[] = [];
  for (const [l, d] of [...pieces].sort((a, b) => b[0] - a[0])) {
    for (let n = 0; n < d; n += 1) {
      const at = rooms.findIndex((room) => room >= l);
      if (at < 0) rooms.push(stock - l);
      else rooms[at] = (rooms[at] as number) - l;
    }
  }
  return rooms.length;
}

describe('1,000 random cutting lists', () => {
  it('are at most one bar above the bound, and never worse than first-fit decreasing', () => {
    const random = randoms(12_345);
    let notProved = 0;
    for (let k = 0; k < runs(1000); k += 1) {
      const list = randomList(random, k);
      const figures = figuresOf(list, 'mm');
      const gap = figures.gap as import('../../src/index').Quantity<'count'>;
      expect(gap.toNumber('each')).toBeLessThanOrEqual(1);
      if (!figures.proved) notProved += 1;
      checkPlan(list, figures, 'mm');
      if (k % 10 === 0) {
        const greedy = firstFitDecreasing(list);
        expect(figures.bars.toNumber('each')).toBeLessThanOrEqual(greedy);
        expect(figures.firstFit.toNumber('each')).toBe(greedy);
      }
    }
    expect(notProved).toBeLessThan(10);
  }, 300_000);
});

describe('cutting by cost and by length', () => {
  it('finds what an exhaustive search over two stocks finds', () => {
    const random = randoms(5);
    for (let k = 0; k < 30; k += 1) {
      const pieces = [
        { length: '7 ft', count: 1 + Math.floor(random() * 4) },
        { length: '5 ft', count: 1 + Math.floor(random() * 4) },
        { length: '3 ft', count: 1 + Math.floor(random() * 4) },
      ];
      const { figures } = barCutting({
        pieces,
        stock: [
          { length: '10 ft', price: '11 USD' },
          { length: '16 ft', price: '16 USD' },
        ],
        kerf: '0 in',
      });
      const best = exhaustive(
        pieces.map((p) => p.count),
        new Map(),
      );
      expect(figures.cost?.toNumber('USD')).toBe(best);
      expect(figures.lowerBound.toNumber('USD')).toBeLessThanOrEqual(best);
    }
  });
});

/** Least cost for what is left of 7, 5 and 3 ft, trying every bar. */
function exhaustive(left: readonly number[], known: Map<string, number>): number {
  if (left.every((n) => n === 0)) return 0;
  const key = left.join();
  const found = known.get(key);
  if (found !== undefined) return found;
  const costs = barsOf(left).map(
    ({ cost, taken }) =>
      cost +
      exhaustive(
        left.map((n, i) => n - (taken[i] as number)),
        known,
      ),
  );
  const best = Math.min(...costs);
  known.set(key, best);
  return best;
}

/** From none to the most. */
const upTo = (most: number): number[] => Array.from({ length: most + 1 }, (_, n) => n);

/** Every bar that may be cut from what is left. */
function barsOf([most7 = 0, most5 = 0, most3 = 0]: readonly number[]): { cost: number; taken: number[] }[] {
  const all = upTo(most7).flatMap((a) => upTo(most5).flatMap((b) => upTo(most3).map((c) => [a, b, c])));
  return all
    .map((taken) => ({ taken, used: [7, 5, 3].reduce((s, l, i) => s + l * (taken[i] as number), 0) }))
    .filter(({ used }) => used > 0 && used <= 16)
    .map(({ taken, used }) => ({ taken, cost: used <= 10 ? 11 : 16 }));
}

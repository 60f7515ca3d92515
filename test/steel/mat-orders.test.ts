/** What is bought for a mat, and that it depends on nothing but the job: turns, mirrors, forms, units, worse inputs. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  barCutting,
  barPlaces,
  type MeshRegionFigures,
  meshLayout,
  type RebarRegionFigures,
  type RebarRegionInput,
  rebarLayout,
} from '../../src/index';
import { valueText, wordsText } from '../../src/report/view';
import { runs } from '../support/effort';
import { clippedLines } from './clipped';
import { type Plan, polygonOf, randomPlan, randoms, type Spot } from './outlines';

const whole = (min: number, max: number) => fc.integer({ min, max });
const codes = ({ cautions }: { cautions: readonly { code: string }[] }): string =>
  cautions
    .map(({ code }) => code)
    .sort()
    .join();

/** Turned by a quarter, mirrored, and both. */
const MOVES: readonly ((p: Spot) => Spot)[] = [
  ({ x, y }) => ({ x: -y, y: x }),
  ({ x, y }) => ({ x: -x, y }),
  ({ x, y }) => ({ x, y: -y }),
  ({ x, y }) => ({ x: y, y: x }),
];

const moved = ({ outer, openings }: Plan, move: (p: Spot) => Spot): Plan => ({
  outer: outer.map(move),
  openings: openings.map((ring) => ring.map(move)),
});

const matOver = (plan: Plan, stock: string): RebarRegionInput => ({
  outline: polygonOf(plan.outer),
  openings: plan.openings.map(polygonOf),
  mats: [{ layer: 'bottom', bar: '#3', spacing: '0.3 m' }],
  cover: '50 mm',
  lap: '0.4 m',
  stockLength: stock,
});

const orderOf = (f: RebarRegionFigures): string =>
  [
    f.barsToBuy,
    f.pieces,
    f.totalLength,
    f.weight,
    f.ties,
    f.supports,
    ...f.mats.flatMap((m) => [m.laps, m.lapsInLine]),
  ]
    .map((q) => q.toString())
    .join(' ');

const meshOf = (f: MeshRegionFigures): string =>
  [f.pieces, f.withoutReuse, f.laidLength, f.strips, f.supports].map((q) => q.toString()).join(' ');

describe('mats and mesh turned and mirrored', () => {
  it('take the same bars, ties and supports', () => {
    const random = randoms(41);
    for (let k = 0; k < runs(150); k += 1) {
      const plan = randomPlan(random);
      const stock = `${3 + Math.round(random() * 30) / 10} m`;
      const attempt = rebarLayout.attempt(matOver(plan, stock));
      if (!attempt.ok) continue;
      const order = orderOf(rebarLayout(matOver(plan, stock)).figures);
      for (const move of MOVES)
        expect(orderOf(rebarLayout(matOver(moved(plan, move), stock)).figures), `case ${k}`).toBe(order);
    }
  });

  it('take the same sheets', () => {
    const random = randoms(42);
    const sheets = { form: 'sheets', pieceLength: '3 m', pieceWidth: '1.5 m', edge: '50 mm' } as const;
    for (let k = 0; k < runs(150); k += 1) {
      const plan = randomPlan(random);
      const over = (p: Plan) => ({
        outline: polygonOf(p.outer),
        openings: p.openings.map(polygonOf),
        ...sheets,
      });
      if (!meshLayout.attempt(over(plan)).ok) continue;
      const order = meshOf(meshLayout(over(plan)).figures);
      for (const move of MOVES)
        expect(meshOf(meshLayout(over(moved(plan, move))).figures), `case ${k}`).toBe(order);
    }
  });
});

describe('lines of bar', () => {
  it('are as long in all as jsts clips them', () => {
    const random = randoms(43);
    for (let k = 0; k < runs(200); k += 1) {
      const plan = randomPlan(random);
      const input = {
        ...matOver(plan, '60 m'),
        edgeBars: false,
        cornerBars: 0,
        shortest: '0 m',
      };
      const attempt = rebarLayout.attempt(input);
      if (!attempt.ok) continue;
      const lines = [false, true].flatMap((upright) =>
        clippedLines(plan, { cover: 0.05, spacing: 0.3, upright }).flat(),
      );
      const total = lines.reduce((a, b) => a + b, 0);
      // Each line is rounded down to a millimeter.
      const off = total - attempt.result.figures.totalLength.toNumber('m');
      expect(off, `case ${k}`).toBeGreaterThan(-0.005);
      expect(off, `case ${k}`).toBeLessThan(0.001 * lines.length + 0.01);
    }
  });
});

describe('bars to buy', () => {
  it('are those that a cutting plan of the bar list takes, and never fewer than it can', () => {
    fc.assert(
      fc.property(
        whole(10, 70),
        whole(8, 40),
        whole(12, 24),
        fc.constantFrom('20 ft', '40 ft'),
        (L, W, s, stock) => {
          const { figures } = rebarLayout({
            outline: {
              shape: 'L',
              length: `${L} ft`,
              width: `${W} ft`,
              notchLength: `${L / 2} ft`,
              notchWidth: `${W / 2} ft`,
            },
            mats: [{ layer: 'bottom', bar: '#4', spacing: `${s} in` }],
            cutTo: '1 in',
            stockLength: stock,
          });
          const pieces = figures.bars.map(({ length, count }) => ({ length, count: count.toNumber('each') }));
          const cut = barCutting({ pieces, stock: [{ length: stock }], kerf: '0 in' }).figures;
          expect(figures.barsToBuy.equals(cut.bars)).toBe(true);
          expect(cut.lowerBound.toNumber('each')).toBeLessThanOrEqual(figures.barsToBuy.toNumber('each'));
          expect(figures.mats[0]?.lapsInLine.format()).toBe('0 each');
        },
      ),
      { numRuns: runs(60) },
    );
  });

  it('are fewer with every second line turned end for end than with laps pulled back', () => {
    // Pulled back by 1.3 laps: 20 ft and 9 ft 2 in in one line, 17 ft 10 in and 11 ft 4 in in the next.
    const across = { length: '17.5 ft', count: 20 };
    const pulled = barCutting({
      pieces: [
        { length: '20 ft', count: 7 },
        { length: '9\' 2"', count: 7 },
        { length: '17\' 10"', count: 6 },
        { length: '11\' 4"', count: 6 },
        across,
      ],
      stock: [{ length: '20 ft' }],
    }).figures.bars;
    const { barsToBuy } = rebarLayout({
      length: '28 ft',
      width: '18 ft',
      bar: '#4',
      spacing: '18 in',
    }).figures;
    expect([barsToBuy.format(), pulled.format()]).toEqual(['40 each', '43 each']);
  });

  it('keep laps of neighbors apart in long lines, whatever the stock', () => {
    fc.assert(
      fc.property(whole(20, 300), whole(12, 40), whole(12, 30), (L, S, lap) => {
        const places = barPlaces({
          outline: { shape: 'rectangle', length: `${L} ft`, width: '8 ft' },
          mats: [{ layer: 'bottom', bar: '#4', spacing: '12 in' }],
          stockLength: `${S} ft`,
          lap: `${lap} in`,
        }).filter((b) => b.use === 'along');
        const lines = new Map<string, number[][]>();
        for (const { path } of places) {
          const [a, b] = [path[0] as Spot, path[1] as Spot];
          const key = a.y.toFixed(6);
          lines.set(key, [...(lines.get(key) ?? []), [Math.min(a.x, b.x), Math.max(a.x, b.x)]]);
        }
        const laps = [...lines]
          .sort((a, b) => Number(a[0]) - Number(b[0]))
          .map(([, bars]) => {
            const sorted = bars.sort((a, b) => (a[0] as number) - (b[0] as number));
            return sorted.slice(1).map((bar, i) => [bar[0] as number, (sorted[i] as number[])[1] as number]);
          });
        const apart = laps.every((own, i) =>
          own.every(([from = 0, to = 0]) =>
            (laps[i + 1] ?? []).every(([a = 0, b = 0]) => a >= to - 1e-6 || b <= from + 1e-6),
          ),
        );
        // 1.3 laps each way fit into the stock when it is some eight laps long.
        if (S * 12 >= 8 * lap) expect(apart).toBe(true);
      }),
      { numRuns: runs(100) },
    );
  });
});

describe('the forms of one mat', () => {
  it('give the same order and the same cautions', () => {
    const bars = fc.constantFrom('#3', '#4', '#6', '#8', '#14', '15M', '12 mm') as fc.Arbitrary<'#4'>;
    fc.assert(
      fc.property(whole(5, 90), whole(5, 60), whole(3, 40), whole(0, 8), bars, (L, W, s, c, bar) => {
        const both = { cover: `${c / 2} in`, stockLength: '20 ft', thickness: '6 in' };
        const plain = rebarLayout({
          length: `${L} ft`,
          width: `${W} ft`,
          bar,
          spacing: `${s} in`,
          faceCover: '1 in',
          ...both,
        });
        const region = rebarLayout({
          outline: { shape: 'rectangle', length: `${L} ft`, width: `${W} ft` },
          mats: [{ layer: 'bottom', bar, spacing: `${s} in`, faceCover: '1 in' }],
          shortest: '0 in',
          ...both,
        });
        expect(orderOf(plain.figures)).toBe(orderOf(region.figures));
        expect(codes(plain)).toBe(codes(region));
      }),
      { numRuns: runs(60) },
    );
  });

  it('of mesh give the same sheets', () => {
    fc.assert(
      fc.property(whole(5, 90), whole(5, 60), fc.constantFrom('sheets', 'rolls'), (L, W, form) => {
        const mesh = {
          form,
          pieceLength: form === 'rolls' ? '150 ft' : '10 ft',
          pieceWidth: '5 ft',
        } as const;
        const plain = meshLayout({ length: `${L} ft`, width: `${W} ft`, ...mesh });
        const region = meshLayout({
          outline: { shape: 'rectangle', length: `${L} ft`, width: `${W} ft` },
          edge: '0 in',
          angle: '0 deg',
          ...mesh,
        });
        expect(meshOf(plain.figures)).toBe(meshOf(region.figures));
        expect(codes(plain)).toBe(codes(region));
      }),
      { numRuns: runs(60) },
    );
  });
});

describe('cautions of mats', () => {
  const slab = (more: Partial<RebarRegionInput>, mat = {}): string =>
    codes(
      rebarLayout({
        outline: { shape: 'rectangle', length: '30 ft', width: '20 ft' },
        mats: [{ layer: 'bottom', bar: '#4', spacing: '12 in', ...mat }],
        ...more,
      }),
    );

  it('never vanish as the cover shrinks', () => {
    const graded = (cover: number): number => {
      const { cautions } = rebarLayout({
        length: '30 ft',
        width: '20 ft',
        bar: '#6',
        spacing: '12 in',
        cover: `${cover} in`,
      });
      const own = cautions.find(({ code }) => code === 'little-cover');
      return own ? (own.severity === 'warning' ? 2 : 1) : 0;
    };
    const grades = [3, 2.5, 2, 1.75, 1.5, 1, 0.75, 0].map(graded);
    expect(grades).toEqual([...grades].sort((a, b) => a - b));
    expect(grades).toEqual([0, 1, 1, 2, 2, 2, 2, 2]);
  });

  it.each([
    ['1.5 in', '38 mm'],
    ['2 in', '50 mm'],
    ['3 in', '75 mm'],
    ['1 in', '25 mm'],
  ])('say the same of %s and %s', (customary, metric) => {
    for (const layer of ['bottom', 'top'] as const) {
      const of = (faceCover: string): string => slab({ thickness: '10 in' }, { layer, bar: '#6', faceCover });
      expect(of(metric)).toBe(of(customary));
    }
    expect(slab({ cover: metric })).toBe(slab({ cover: customary }));
  });

  it('speak metric where the job is metric', () => {
    const { cautions, assumed } = rebarLayout({
      length: '10 m',
      width: '6 m',
      bar: '12 mm',
      spacing: '700 mm',
      cover: '20 mm',
      thickness: '200 mm',
      faceCover: '20 mm',
      supports: '2 m',
    });
    const text = [...cautions.map((c) => wordsText(c)), ...assumed.map((a) => valueText(a.value))].join(' ');
    expect(text).not.toMatch(/\d (in|ft)\b(?! or)/);
    expect(cautions.length).toBeGreaterThan(3);
  });

  it('ask that only what stands up is capped', () => {
    expect(slab({})).toBe('');
    expect(slab({ steps: { risers: 2, width: '5 ft', bar: '#4' } })).toBe('');
    expect(slab({ steps: { risers: 2, width: '5 ft', bar: '#4', starterSpacing: '12 in' } })).toBe(
      'impalement',
    );
  });
});

describe('work', () => {
  it('does not grow with the square of a line', () => {
    const { figures } = rebarLayout({
      length: '1000 ft',
      width: '20 ft',
      bar: '#4',
      spacing: '12 in',
      stockLength: '2 ft',
    });
    expect(figures.pieces.toNumber('each')).toBeGreaterThan(100_000);
  });

  it('is refused up front for mesh over more than 10,000 corners', () => {
    const n = 10_001;
    const points = Array.from({ length: n }, (_, i) => {
      const r = i % 2 ? 30 : 29;
      const a = (2 * Math.PI * i) / (n + 1);
      return { x: `${(r * Math.cos(a)).toFixed(6)} m`, y: `${(r * Math.sin(a)).toFixed(6)} m` };
    });
    const attempt = meshLayout.attempt({
      outline: { shape: 'polygon', points },
      form: 'sheets',
      pieceLength: '6 m',
      pieceWidth: '2.4 m',
    });
    expect(attempt.ok ? '' : attempt.error.issues[0]?.code).toBe('too-many');
  });
});

// A bar is cut to whole steps; the stock may be a hair longer or shorter than a number of them.
it('buys enough bars whatever the stock measures', () => {
  fc.assert(
    fc.property(fc.integer({ min: 600_000, max: 1_000_000 }), (stock) => {
      const stockLength = `${stock / 100_000} ft`;
      const { figures } = rebarLayout({
        outline: { shape: 'rectangle', length: '9.42708 ft', width: '6.0625 ft' },
        mats: [{ layer: 'bottom', bar: '#4', spacing: '6 in' }],
        stockLength,
      });
      const [size] = 'sizes' in figures ? figures.sizes : [];
      const bought = (size?.barsToBuy.toNumber('each') ?? 0) * (stock / 100_000);
      expect(bought, stockLength).toBeGreaterThan((size?.length.toNumber('ft') ?? 1e9) - 0.01);
    }),
    { numRuns: runs(60), examples: [[673_958]] },
  );
});

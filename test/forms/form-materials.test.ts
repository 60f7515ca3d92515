/** Forms: boards against HiGHS, pieces and stakes walked along, kerfs by arcs, and what must hold for any job. */
import fc from 'fast-check';
import highsLoader from 'highs';
import { beforeAll, describe, expect, it } from 'vitest';
import { type FormMaterialsFigures, type FormMaterialsInput, formMaterials } from '../../src/index';
import { runs } from '../support/effort';
import { allPatterns, type Highs, leastCut } from '../support/steel/patterns';

let highs: Highs;
beforeAll(async () => {
  highs = await highsLoader();
});

const figuresOf = (input: Partial<FormMaterialsInput>): FormMaterialsFigures =>
  formMaterials({
    kind: 'slab-edge',
    height: '3.5 in',
    board: { nominal: '2x4' },
    stock: ['16 ft'],
    ...input,
  }).figures;

const each = (q: { toNumber(unit: 'each'): number }): number => q.toNumber('each');
const feet = (q: { toNumber(unit: 'ft'): number }): number => Math.round(q.toNumber('ft') * 1e6) / 1e6;

const edge = fc.record({
  length: fc.integer({ min: 12, max: 1200 }).map((inches) => `${inches} in`),
  count: fc.integer({ min: 1, max: 4 }),
});
const edges = fc.array(edge, { minLength: 1, maxLength: 5 });
const stocks = fc.uniqueArray(fc.constantFrom(8, 10, 12, 14, 16, 20), { minLength: 1, maxLength: 3 });

/** Least feet of stock that pieces are cut from, as one integer program. */
function leastFeet(stock: readonly number[], pieces: readonly (readonly [number, number])[]): number {
  const columns = stock.flatMap((s) => allPatterns({ stock: s, pieces }).map((pattern) => ({ s, pattern })));
  const useful = columns.filter(({ pattern }) => pattern.some((n) => n > 0));
  return leastCut(
    highs,
    pieces.map(([, n]) => n),
    useful.map(({ pattern }) => pattern),
    useful.map(({ s }) => s),
    true,
  );
}

describe('boards', () => {
  it('are as few feet as HiGHS finds for the same pieces', () => {
    fc.assert(
      fc.property(edges, stocks, (list, stock) => {
        const figures = figuresOf({ runs: list, stock: stock.map((s) => `${s} ft`) });
        const pieces = new Map<number, number>();
        for (const { pieces: some, count } of figures.edges) {
          for (const { length, count: n } of some) {
            pieces.set(feet(length), (pieces.get(feet(length)) ?? 0) + each(n) * each(count));
          }
        }
        const least = leastFeet(stock, [...pieces.entries()]);
        if (figures.proved) expect(feet(figures.lengthBought)).toBeCloseTo(least, 4);
        else expect(feet(figures.lengthBought)).toBeGreaterThanOrEqual(least - 1e-6);
      }),
      { numRuns: runs(40) },
    );
  });

  it('make up each edge with the fewest joints, and no piece too short to hold', () => {
    fc.assert(
      fc.property(edges, stocks, fc.integer({ min: 6, max: 60 }), (list, stock, least) => {
        const figures = figuresOf({
          runs: list,
          stock: stock.map((s) => `${s} ft`),
          leastPiece: `${least} in`,
        });
        const longest = Math.max(...stock);
        for (const { length, pieces, joints } of figures.edges) {
          const sum = pieces.reduce((s, p) => s + p.length.toNumber('ft') * each(p.count), 0);
          expect(sum).toBeCloseTo(length.toNumber('ft'), 9);
          expect(each(joints)).toBe(Math.ceil(length.toNumber('ft') / longest - 1e-9) - 1);
          const shortest = Math.min(...pieces.map((p) => p.length.toNumber('in')));
          const whole = length.toNumber('in') / (each(joints) + 1);
          // Boards chosen for little waste may be shorter than the longest; no end is a scrap.
          if (each(joints) > 0) expect(shortest).toBeGreaterThanOrEqual(Math.min(least, whole / 2) - 1e-6);
        }
      }),
      { numRuns: runs(120) },
    );
  });

  it('are no more for a longer list of lengths to buy', () => {
    fc.assert(
      fc.property(edge, fc.constantFrom('8 ft', '10 ft', '12 ft', '14 ft'), (run, other) => {
        const [one, two] = [['16 ft'], ['16 ft', other]].map((stock) => figuresOf({ runs: [run], stock }));
        expect(feet((two as FormMaterialsFigures).lengthBought)).toBeLessThanOrEqual(
          feet((one as FormMaterialsFigures).lengthBought),
        );
      }),
      { numRuns: runs(100) },
    );
  });

  it('are named larger than they are', () => {
    const sizes = ['2x4', '2x6', '2x8', '2x10', '2x12', '1x4'] as const;
    const actual = sizes.map((nominal) => {
      const { board } = figuresOf({ runs: [{ length: '8 ft' }], board: { nominal } });
      return [board.thickness.toNumber('in'), board.height.toNumber('in')];
    });
    expect(actual).toEqual([
      [1.5, 3.5],
      [1.5, 5.5],
      [1.5, 7.25],
      [1.5, 9.25],
      [1.5, 11.25],
      [0.75, 3.5],
    ]);
  });
});

/** Stakes by walking along: one at each end of every piece, then each as far on as it may be. */
function walked(figures: FormMaterialsFigures, spacing: number): number {
  let stakes = 0;
  for (const { pieces, count } of figures.edges) {
    for (const piece of pieces) {
      const length = Math.round(piece.length.toNumber('in') * 1e6) / 1e6;
      let n = 2;
      for (let at = spacing; at < length - 1e-6; at += spacing) n += 1;
      stakes += n * each(piece.count) * each(count);
    }
  }
  return stakes;
}

describe('stakes', () => {
  it('are those that walking along sets', () => {
    fc.assert(
      fc.property(edges, fc.integer({ min: 12, max: 48 }), (list, spacing) => {
        const figures = figuresOf({ runs: list, stakes: { spacing: `${spacing} in` } });
        expect(each(figures.stakes)).toBe(walked(figures, spacing));
      }),
      { numRuns: runs(100) },
    );
  });

  it('are marked at both ends and no farther apart than they stand', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 30, max: 900 }),
        fc.integer({ min: 12, max: 48 }),
        fc.integer({ min: -40, max: 40 }).filter((n) => n !== 0),
        (length, spacing, fall) => {
          const figures = figuresOf({
            runs: [{ length: `${length} in`, fall: `${fall} in` }],
            stakes: { spacing: `${spacing} in` },
          });
          const marks = figures.edges[0]?.marks ?? [];
          const places = marks.map(({ at }) => at.toNumber('in'));
          expect(places[0]).toBe(0);
          expect(places.at(-1)).toBeCloseTo(length, 9);
          places.slice(1).forEach((at, i) => {
            expect(at - (places[i] as number)).toBeLessThanOrEqual(spacing + 1e-9);
          });
          for (const { at, down, mark } of marks) {
            expect(down.toNumber('in')).toBeCloseTo((fall * at.toNumber('in')) / length, 9);
            expect(Math.abs(mark.toNumber('in') - down.toNumber('in'))).toBeLessThanOrEqual(1 / 32 + 1e-9);
          }
        },
      ),
      { numRuns: runs(100) },
    );
  });

  it('close a circle with as many joints as boards', () => {
    const { edges: sides, cleats } = figuresOf({
      outline: { shape: 'circle', diameter: '40 ft' },
      board: { nominal: '1x4' },
    });
    const boards = sides[0]?.pieces.reduce((n, { count }) => n + each(count), 0);
    expect(boards).toBe(Math.ceil((40 * Math.PI) / 16));
    expect(each(cleats)).toBe(boards);
  });
});

describe('kerfs', () => {
  it('close by what the outer arc is longer than the inner one', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 24, max: 200 }),
        fc.integer({ min: 10, max: 180 }),
        fc.constantFrom(1 / 8, 3 / 32, 1 / 4),
        (radius, degrees, width) => {
          const length = ((radius * degrees * Math.PI) / 180).toFixed(4);
          const angle = Number(length) / radius;
          const figures = figuresOf({
            runs: [{ length: `${length} in`, radius: `${radius} in` }],
            curves: { kind: 'kerfed', width: `${width} in` },
          });
          const [inner, outer] = [radius * angle, (radius + 1.5) * angle];
          const [{ kerfs, kerfSpacing }] = figures.edges as [FormMaterialsFigures['edges'][number]];
          expect(each(kerfs as never)).toBe(Math.ceil((outer - inner) / width - 1e-9));
          expect(kerfSpacing?.toNumber('in')).toBeCloseTo(Number(length) / each(kerfs as never), 9);
        },
      ),
      { numRuns: runs(100) },
    );
  });
});

describe('a curve', () => {
  it('is too tight below the radius at which its faces are strained by half a percent', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 24 }), fc.integer({ min: 100, max: 6000 }), (sixteenths, r) => {
        const thickness = sixteenths / 16;
        const radius = r / 10;
        const { cautions } = formMaterials({
          kind: 'slab-edge',
          runs: [{ length: '4 ft', radius: `${radius} in` }],
          height: '4 in',
          board: { thickness: `${thickness} in`, height: '4 in' },
          stock: ['8 ft'],
        });
        const strain = thickness / (2 * radius);
        expect(cautions.some(({ code }) => code === 'tight-curve')).toBe(strain > 0.005 + 1e-12);
      }),
      { numRuns: runs(100) },
    );
  });
});

describe('edges', () => {
  it('are those of the outline, whichever way it is told', () => {
    const box = figuresOf({ outline: { shape: 'rectangle', length: '20 ft', width: '12 ft' } });
    const corners = [
      ['0 ft', '0 ft'],
      ['20 ft', '0 ft'],
      ['20 ft', '12 ft'],
      ['0 ft', '12 ft'],
    ] as const;
    const ring = figuresOf({
      outline: { shape: 'polygon', points: corners.map(([x, y]) => ({ x, y })) },
    });
    const lengths = figuresOf({
      runs: [
        { length: '20 ft', count: 2 },
        { length: '12 ft', count: 2 },
      ],
    });
    for (const { stakes, boards, contactArea, cleats } of [ring, lengths]) {
      expect(stakes.equals(box.stakes)).toBe(true);
      expect(boards.equals(box.boards)).toBe(true);
      expect(contactArea.equals(box.contactArea)).toBe(true);
      expect(cleats.equals(box.cleats)).toBe(true);
    }
  });

  it('go around an L as it is drawn', () => {
    const { edges: sides } = figuresOf({
      outline: { shape: 'L', length: '20 ft', width: '16 ft', notchLength: '8 ft', notchWidth: '6 ft' },
    });
    expect(sides.map(({ length }) => feet(length))).toEqual([20, 10, 8, 6, 12, 16]);
  });

  it('add up: a job of two edges is two jobs, but for boards that share what they are cut from', () => {
    fc.assert(
      fc.property(edge, edge, (a, b) => {
        const [both, one, two] = [[a, b], [a], [b]].map((list) => figuresOf({ runs: list })) as [
          FormMaterialsFigures,
          FormMaterialsFigures,
          FormMaterialsFigures,
        ];
        expect(each(both.stakes)).toBe(each(one.stakes) + each(two.stakes));
        expect(each(both.cleats)).toBe(each(one.cleats) + each(two.cleats));
        expect(feet(both.formLength)).toBeCloseTo(feet(one.formLength) + feet(two.formLength), 4);
        expect(each(both.boards)).toBeLessThanOrEqual(each(one.boards) + each(two.boards));
      }),
      { numRuns: runs(60) },
    );
  });
});

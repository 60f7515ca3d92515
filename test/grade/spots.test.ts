/** Spots as they are written down: the same surface from a list, a table, a grid, readings along forms and a rod. */
import { describe, expect, it } from 'vitest';
import { drainageCheck } from '../../src/index';

/** Feet on a plane that falls 2% along x and rises 1% along y. */
const level = (x: number, y: number): number => Math.round((100 - 0.02 * x + 0.01 * y) * 1e6) / 1e6;

const XS = [10, 15, 20];
const YS = [20, 24];
const places = YS.flatMap((y) => XS.map((x) => ({ x, y, z: level(x, y) })));
const at = (x: number, y: number) => ({ x: `${x} ft`, y: `${y} ft` });

/** The same six spots in every way of writing. */
const WAYS = {
  list: { spots: places.map(({ x, y, z }) => ({ ...at(x, y), elevation: `${z} ft` })) },
  rods: {
    heightOfInstrument: '104 ft',
    spots: places.map(({ x, y, z }) => ({ ...at(x, y), rod: `${(104 - z).toFixed(6)} ft` })),
  },
  table: { table: { unit: 'ft', rows: places.map(({ x, y, z }) => [x, y, z]) } },
  grid: {
    grid: {
      at: at(10, 20),
      along: '5 ft',
      across: '4 ft',
      unit: 'in',
      elevations: YS.map((y) => XS.map((x) => Math.round(level(x, y) * 12e6) / 1e6)),
    },
  },
  forms: {
    forms: YS.map((y) => ({
      name: `form at ${y}`,
      from: at(10, y),
      to: at(20, y),
      readings: XS.map((x) => ({ at: `${x - 10} ft`, elevation: `${level(x, y)} ft` })),
    })),
  },
} as const;

const check = (spots: object) =>
  drainageCheck({ use: 'patio', ...spots } as Parameters<typeof drainageCheck>[0]);

describe('the spots of a surface', () => {
  it.each(Object.entries(WAYS))('are the same plane as a %s', (_, spots) => {
    const { figures } = check(spots);
    if (!('facetList' in figures)) throw new Error('no surface');
    expect(figures.spots.format()).toBe('6 each');
    expect(figures.facetList.length).toBeGreaterThan(3);
    for (const { alongX, alongY } of figures.facetList) {
      expect(alongX.toNumber('%')).toBeCloseTo(2, 9);
      expect(alongY.toNumber('%')).toBeCloseTo(-1, 9);
    }
    // Along the side that the water is pressed against, from its higher end.
    const [from, to] = [figures.longestPath?.points[0], figures.longestPath?.points.at(-1)];
    expect(
      [from?.x, from?.y, to?.x, to?.y].map((q) => Math.round((q?.toNumber('ft') ?? 0) * 1e9) / 1e9),
    ).toEqual([10, 20, 20, 20]);
  });

  it.each([
    ['list', ['spot 1', 'spot 2', 'spot 3', 'spot 4', 'spot 5', 'spot 6']],
    ['table', ['row 1', 'row 2', 'row 3', 'row 4', 'row 5', 'row 6']],
    [
      'grid',
      ['row 1 spot 1', 'row 1 spot 2', 'row 1 spot 3', 'row 2 spot 1', 'row 2 spot 2', 'row 2 spot 3'],
    ],
    ['forms', YS.flatMap((y) => ['0 ft', '5 ft', '10 ft'].map((x) => `form at ${y} at ${x}`))],
  ] as const)('have the names of a %s', (way, names) => {
    const { figures } = check(WAYS[way]);
    if (!('facetList' in figures)) throw new Error('no surface');
    const found = new Set(figures.facetList.flatMap(({ spots }) => spots));
    expect([...found].filter((name) => !name.startsWith('middle')).sort()).toEqual([...names].sort());
  });

  it('of a grid begin at nothing where no place is given, and leave out what is null', () => {
    const { figures } = check({
      grid: {
        along: '5 ft',
        across: '4 ft',
        unit: 'ft',
        elevations: [
          [100, 99.9, null],
          [100, 99.9, 99.8],
        ],
      },
    });
    if (!('facetList' in figures)) throw new Error('no surface');
    expect(figures.spots.format()).toBe('5 each');
    const points = figures.longestPath?.points.map(({ x, y }) => [x.toNumber('ft'), y.toNumber('ft')]);
    expect(Math.max(...(points ?? []).map(([x]) => x as number))).toBeCloseTo(10, 9);
    expect(points?.[0]?.[0]).toBe(0);
  });

  const placeOf = (spots: object): string[] => {
    const attempt = drainageCheck.attempt({ use: 'patio', ...spots });
    return attempt.ok ? [] : attempt.error.issues.map(({ code, path }) => `${code} ${path}`);
  };

  it.each([
    ['table', 'conflicting-spots table.rows[4]'],
    ['grid', 'conflicting-spots grid.elevations[1][1]'],
    ['forms', 'conflicting-spots forms[1].readings[1]'],
  ] as const)('that meet a spot of another level are named where they stand, in a %s', (way, where) => {
    const other = { spots: [{ name: 'A', ...at(15, 24), elevation: '99 ft' }] };
    expect(placeOf({ ...other, ...WAYS[way] })).toEqual([where]);
  });

  it('are refused where they are missing, twice, or without what they are read from', () => {
    const { forms, list, rods } = { ...WAYS, list: WAYS.list.spots };
    const [first] = forms.forms;
    expect(placeOf({ forms: [{ ...first, to: first?.from }] })).toEqual(['repeated-point forms[0].to']);
    expect(placeOf({ spots: rods.spots })).toEqual(['no-datum heightOfInstrument']);
    expect(placeOf({ spots: list.slice(0, 2) })).toEqual(['few-spots spots']);
    const named = list.map((spot, i) => ({ ...spot, name: i < 2 ? 'A' : `P${i}` }));
    expect(placeOf({ spots: named })).toEqual(['repeated-name spots[1].name']);
  });
});

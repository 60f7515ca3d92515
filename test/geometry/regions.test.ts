/** Openings: where they lie, which are refused, and what their dimensions are called. */

import { describe, expect, it } from 'vitest';
import type { Corner } from '../../src/geometry/polygon';
import { InputError, slabVolume } from '../../src/index';
import {
  type OpeningInput,
  type RegionInput,
  regionFields,
  ringsFromCorner,
  ringsOf,
} from '../../src/outline/region';
import { CIRCLE_SIDES } from '../../src/outline/ring';
import { fields, parse } from '../../src/reckoning/fields';

const read = (region: RegionInput) => parse(fields(regionFields()), region).value;
const pairs = (ring: readonly Corner[] | undefined): number[][] =>
  (ring ?? []).map(({ x, y }) => [x.toNumber(), y.toNumber()]);
const near = (rows: readonly (readonly number[])[]) =>
  rows.map((row) => row.map((v) => expect.closeTo(v, 12)));
const at = (x: number, y: number) => ({ x: `${x} m`, y: `${y} m` });
const box = (x: number, y: number, l: number, w: number) =>
  ({ shape: 'rectangle', at: at(x, y), length: `${l} m`, width: `${w} m` }) as const;

const SLAB = { shape: 'rectangle', length: '10 m', width: '8 m' } as const;

describe('openings', () => {
  it('lie where they are put', () => {
    const { outer, openings } = ringsOf(
      read({
        outline: SLAB,
        openings: [
          box(1, 2, 3, 1),
          { shape: 'circle', at: at(7, 3), diameter: '2 m' },
          { shape: 'regular', at: at(3, 6), sides: 4, side: '1 m', turned: '45 deg' },
          { shape: 'polygon', points: [at(6, 6), at(7, 7), at(8, 6)] },
        ],
      }),
    );
    expect(pairs(outer)).toEqual([
      [0, 0],
      [10, 0],
      [10, 8],
      [0, 8],
    ]);
    expect(pairs(openings[0])).toEqual([
      [1, 2],
      [4, 2],
      [4, 3],
      [1, 3],
    ]);
    // Around the circle, so that the middles of its sides lie on it.
    const around = 1 / Math.cos(Math.PI / CIRCLE_SIDES);
    for (const [x = 0, y = 0] of pairs(openings[1])) expect(Math.hypot(x - 7, y - 3)).toBeCloseTo(around, 12);
    expect(openings[1]?.length).toBe(CIRCLE_SIDES);
    expect(pairs(openings[2])).toEqual(
      near([
        [3.5, 6.5],
        [2.5, 6.5],
        [2.5, 5.5],
        [3.5, 5.5],
      ]),
    );
    // Given clockwise, kept counterclockwise.
    expect(pairs(openings[3])).toEqual([
      [8, 6],
      [7, 7],
      [6, 6],
    ]);
  });

  it('have the hole of a ring among them, as the last', () => {
    const outline = { shape: 'ring', outerDiameter: '8 m', innerDiameter: '2 m' } as const;
    expect(ringsOf(read({ outline })).openings.map(({ length }) => length)).toEqual([CIRCLE_SIDES]);
    const { openings } = ringsOf(read({ outline, openings: [box(2, 0, 1, 1)] }));
    expect(openings.map(({ length }) => length)).toEqual([4, CIRCLE_SIDES]);
    expect(ringsOf(read({ outline: SLAB })).openings).toEqual([]);
  });

  it('are counted from the first corner of the outline', () => {
    const outline = {
      shape: 'polygon',
      points: [at(100, 200), at(110, 200), at(110, 208), at(100, 208)],
    } as const;
    const { rings, origin } = ringsFromCorner(read({ outline, openings: [box(101, 202, 3, 1)] }));
    expect(pairs([origin])).toEqual([[100, 200]]);
    expect(pairs(rings.outer)).toEqual([
      [0, 0],
      [10, 0],
      [10, 8],
      [0, 8],
    ]);
    expect(pairs(rings.openings[0])).toEqual([
      [1, 2],
      [4, 2],
      [4, 3],
      [1, 3],
    ]);
  });
});

describe('an opening', () => {
  const said = (region: RegionInput): string[] => {
    try {
      ringsOf(read(region));
    } catch (error) {
      if (error instanceof InputError) return error.issues.map(({ code, path }) => `${code} at ${path}`);
      throw error;
    }
    return [];
  };
  const U = { shape: 'U', length: '10 m', width: '8 m', notchLength: '4 m', notchWidth: '5 m' } as const;
  const RING = { shape: 'ring', outerDiameter: '16 m', innerDiameter: '4 m' } as const;

  it.each<[string, RegionInput['outline'], OpeningInput, boolean]>([
    ['within', SLAB, box(1, 1, 8, 6), true],
    ['along an edge', SLAB, box(0, 1, 2, 2), false],
    ['with a corner on an edge', SLAB, { shape: 'polygon', points: [at(0, 4), at(2, 3), at(2, 5)] }, false],
    ['through an edge', SLAB, box(-1, 1, 2, 2), false],
    ['outside', SLAB, box(20, 1, 2, 2), false],
    ['around all', SLAB, box(-1, -1, 12, 10), false],
    ['as large as the slab', SLAB, box(0, 0, 10, 8), false],
    ['in a leg', U, box(0.5, 4, 2, 3), true],
    ['in the notch', U, box(4, 5, 2, 2), false],
    ['across the notch', U, box(1, 5, 8, 1), false],
    ['below the notch', U, box(1, 1, 8, 1), true],
    ['in the band of a ring', RING, box(3, -1, 2, 2), true],
    ['in the hole of a ring', RING, box(-0.5, -0.5, 1, 1), false],
    ['around the hole of a ring', RING, box(-3, -3, 6, 6), false],
    ['over the edge of the hole', RING, box(1, -0.5, 4, 1), false],
  ])('%s is taken or refused', (_, outline, opening, taken) => {
    expect(said({ outline, openings: [opening] })).toEqual(taken ? [] : ['outside-outline at openings[0]']);
    const other = outline.shape === 'ring' ? box(-7, 0, 0.5, 0.5) : box(9.1, 0.2, 0.1, 0.1);
    const second = said({ outline, openings: [other, opening] });
    if (_ !== 'around all') expect(second).toEqual(taken ? [] : ['outside-outline at openings[1]']);
  });

  it.each<[string, OpeningInput, OpeningInput, boolean]>([
    ['beside', box(1, 1, 2, 2), box(4, 1, 2, 2), true],
    ['edge on edge', box(1, 1, 2, 2), box(3, 1, 2, 2), false],
    ['corner on corner', box(1, 1, 2, 2), box(3, 3, 2, 2), false],
    ['over each other', box(1, 1, 2, 2), box(2, 2, 2, 2), false],
    ['one within the other', box(1, 1, 6, 6), box(2, 2, 1, 1), false],
    ['one in place of the other', box(1, 1, 2, 2), box(1, 1, 2, 2), false],
    [
      'one in the bay of the other',
      box(5, 3, 1, 1),
      {
        shape: 'polygon',
        points: [at(3, 1), at(8, 1), at(8, 6), at(7, 6), at(7, 2), at(4, 2), at(4, 6), at(3, 6)],
      },
      true,
    ],
  ])('%s another is taken or refused', (_, first, second, taken) => {
    for (const both of [
      [first, second],
      [second, first],
    ] as const) {
      expect(said({ outline: SLAB, openings: both })).toEqual(taken ? [] : ['openings-meet at openings[1]']);
      const third = said({ outline: SLAB, openings: [both[0], box(9, 7, 0.5, 0.5), both[1]] });
      expect(third).toEqual(taken ? [] : ['openings-meet at openings[2]']);
    }
  });
});

const GOOD: readonly OpeningInput[] = [
  box(1, 1, 2, 2),
  { shape: 'circle', at: at(2, 2), diameter: '1 m' },
  { shape: 'regular', at: at(2, 2), sides: 5, side: '1 m', turned: '10 deg' },
];

describe('a dimension of an opening', () => {
  const said = (opening: object): string => {
    const openings = [opening] as unknown as OpeningInput[];
    const tried = slabVolume.attempt({ outline: SLAB, openings, thickness: '100 mm' });
    return tried.ok
      ? 'taken'
      : tried.error.issues.map((i) => `${i.code} ${i.path}: ${i.sentence}`).join('; ');
  };

  it.each(
    GOOD.flatMap((good) =>
      Object.entries(good).flatMap(([name, value]) =>
        typeof value === 'string' && /\d/.test(value) ? [[good.shape, name, good] as const] : [],
      ),
    ),
  )('of %s, %s, is named where it cannot be', (_, name, good) => {
    const path = `openings[0].${name}`;
    expect(said(good)).toBe('taken');
    expect(said({ ...good, [name]: '5' })).toContain(`${path}: `);
    expect(said({ ...good, [name]: '5' })).toContain(`${path}: ${name} needs a unit`);
    if (name === 'turned') expect(said({ ...good, turned: '-10 deg' })).toBe('taken');
    else {
      expect(said({ ...good, [name]: '-1 m' })).toContain(`not-positive ${path}: `);
      expect(said({ ...good, [name]: '0 m' })).toContain(`not-positive ${path}: `);
    }
  });

  it('is a place with x and y, of either sign', () => {
    for (const good of GOOD) {
      expect(said({ ...good, at: { x: '5', y: '2 m' } })).toMatch(
        /^missing-unit openings\[0\]\.at\.x: x needs a unit/,
      );
      expect(said({ ...good, at: { x: '2 m', y: '5' } })).toMatch(
        /^missing-unit openings\[0\]\.at\.y: y needs a unit/,
      );
      expect(said({ ...good, at: { x: '-20 m', y: '2 m' } })).toMatch(/^outside-outline openings\[0\]: /);
    }
  });

  it('that counts sides is from 3 to 360', () => {
    const sides = (n: number): string => said({ shape: 'regular', at: at(5, 4), sides: n, side: '10 mm' });
    expect([sides(3), sides(360)]).toEqual(['taken', 'taken']);
    expect(sides(2)).toContain('openings[0].sides: ');
    expect(sides(361)).toContain('openings[0].sides: ');
  });
});

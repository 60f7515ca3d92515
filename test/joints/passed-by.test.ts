/**
 * Slabs with small openings: many, or one in a place where joints to its corners would cut up the slab.
 *
 * Checked against: noding joints and edges with a geometry library (test/support/joints/faces.ts); that every
 * corner of an opening is met or its opening named; and that no plan has many more panels than the spacing
 * asks for, which a foreman would not cut.
 */
import { describe, expect, it } from 'vitest';
import { jointLayout } from '../../src/index';
import { runs } from '../support/effort';
import { faultsOf, type Slab } from '../support/joints/faces';
import { between, stream, type Xy } from '../support/joints/yards';

interface Pits extends Slab {
  readonly input: Parameters<typeof jointLayout>[0];
}

const ft = (n: number): string => `${n} ft`;

/** A rectangle with square pits, apart from each other, sides in whole feet. */
function pits(next: () => number, spacing: number, count: number): Pits {
  const [length, width] = [between(next, 5, 12) * 10, between(next, 4, 9) * 10];
  const holes: [number, number, number][] = [];
  for (let tries = 0; holes.length < count && tries < 400; tries += 1) {
    const size = between(next, 1, Math.floor(spacing / 2));
    const [x, y] = [between(next, 2, length - size - 2), between(next, 2, width - size - 2)];
    if (holes.every(([a, b, s]) => x + size + 1 < a || a + s + 1 < x || y + size + 1 < b || b + s + 1 < y))
      holes.push([x, y, size]);
  }
  const ring = (x: number, y: number, w: number, h: number): Xy[] => [
    [x, y],
    [x + w, y],
    [x + w, y + h],
    [x, y + h],
  ];
  const rings = holes.map(([x, y, s]) => ring(x, y, s, s));
  return {
    rings: [ring(0, 0, length, width), ...rings],
    inside: rings.filter((_, i) => (holes[i]?.[2] ?? 0) > 2).flat(),
    input: {
      outline: { shape: 'rectangle', length: ft(length), width: ft(width) },
      openings: holes.map(([x, y, s]) => ({
        shape: 'rectangle',
        at: { x: ft(x), y: ft(y) },
        length: ft(s),
        width: ft(s),
      })),
      thickness: '5 in',
      spacing: ft(spacing),
    },
  };
}

describe('a slab with many small openings', () => {
  it('is cut into panels that fill it, each opening met or named, for 12 random yards', () => {
    const next = stream(41);
    for (let i = 0; i < runs(12); i += 1) {
      const spacing = between(next, 8, 14);
      const slab = pits(next, spacing, between(next, 5, 30));
      const { figures, cautions } = jointLayout(slab.input);
      const what = JSON.stringify(slab.input);
      expect(faultsOf(slab, figures, { spacing, leastSide: 2 }), what).toEqual([]);
      const passed = figures.givesWay.filter(({ rule }) => rule === 'opening passed by');
      expect(
        cautions.some(({ code }) => code === 'openings-passed-by'),
        what,
      ).toBe(passed.length > 0);
      if (passed.length > 0) expect(figures.search.kind, what).toBe('bounded');
      const fewest = figures.area.toNumber('ft2') / spacing ** 2;
      expect(figures.panelCount.toNumber('each'), what).toBeLessThan(2.5 * Math.ceil(fewest) + 4);
    }
  });
});

describe('a small opening beside a corner', () => {
  const floor = { outline: { shape: 'rectangle', length: '24 ft', width: '20 ft' } } as const;
  const planOf = (opening?: object): ReturnType<typeof jointLayout> =>
    jointLayout({
      ...floor,
      ...(opening && { openings: [opening as never] }),
      thickness: '4 in',
      spacing: '12 ft',
    });
  const pit = (x: number, y: number): object => ({
    shape: 'circle',
    diameter: '18 in',
    at: { x: ft(x), y: ft(y) },
  });

  it.each([
    ['a sump 2 ft off both walls', pit(2, 2)],
    ['a sump 1 ft off both walls', pit(1, 1)],
    [
      'a box 1 ft off both walls',
      { shape: 'rectangle', length: '2 ft', width: '2 ft', at: { x: '1 ft', y: '1 ft' } },
    ],
  ])('is passed by and named where joints to it would cut up the slab: %s', (_, opening) => {
    // Common practice: the floor is cut as if it were not there, with isolation board around it.
    const { figures, cautions } = planOf(opening);
    expect(figures.panelCount.toNumber('each')).toBe(4);
    expect(figures.contraction.toNumber('ft')).toBe(44);
    expect(figures.givesWay).toMatchObject([{ rule: 'opening passed by' }]);
    expect(cautions.map(({ code }) => code)).toContain('openings-passed-by');
    expect(figures.isolation.sign()).toBe(1);
  });

  it.each([
    ['a drain where joints cross', { shape: 'circle', diameter: '6 in', at: { x: '12 ft', y: '10 ft' } }],
    ['a sump by the middle of a wall', pit(2, 10)],
  ])('is met where that costs nothing: %s', (_, opening) => {
    const { figures, cautions } = planOf(opening);
    expect(figures.pattern).toBe('straight');
    expect(figures.panelCount.toNumber('each')).toBe(4);
    expect(figures.givesWay).toEqual([]);
    expect(cautions.map(({ code }) => code)).toEqual(['silica-dust']);
  });

  it('fills the slab with panels wherever it is, for 40 random floors', () => {
    // Checked against: noding joints and edges with a geometry library.
    const next = stream(43);
    for (let i = 0; i < runs(40); i += 1) {
      const spacing = between(next, 8, 14);
      const slab = pits(next, spacing, between(next, 1, 4));
      const { figures } = jointLayout(slab.input);
      expect(faultsOf(slab, figures, { spacing, leastSide: 2 }), JSON.stringify(slab.input)).toEqual([]);
    }
  });
});

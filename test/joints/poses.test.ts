/** A plan does not depend on how the slab was drawn: its first corner, quarter turns, mirroring, coordinates. */
import { describe, expect, it } from 'vitest';
import { jointLayout } from '../../src/index';
import { runs } from '../support/effort';
import { between, inputOf, stream, type Xy, yard } from '../support/joints/yards';

type Move = (p: Xy) => Xy;

const MOVES: readonly (readonly [string, Move])[] = [
  ['moved to state-plane coordinates', ([x, y]) => [x + 2_000_000, y + 500_000]],
  ['turned by a quarter', ([x, y]) => [-y, x]],
  ['mirrored', ([x, y]) => [-x, y]],
  ['turned by three, four and five', ([x, y]) => [0.6 * x - 0.8 * y, 0.8 * x + 0.6 * y]],
];

const told = (ring: readonly Xy[], openings: readonly (readonly Xy[])[], spacing: number): string => {
  const points = (list: readonly Xy[]): { x: string; y: string }[] =>
    list.map(([x, y]) => ({ x: `${x.toFixed(4)} ft`, y: `${y.toFixed(4)} ft` }));
  const { figures } = jointLayout({
    outline: { shape: 'polygon', points: points(ring) },
    openings: openings.map((o) => ({ shape: 'polygon' as const, points: points(o) })),
    thickness: '4 in',
    spacing: `${spacing} ft`,
  });
  const areas = figures.panels.map((p) => p.area.toNumber('ft2').toFixed(3)).sort();
  const ways = figures.givesWay.map((w) => w.rule).sort();
  return [figures.contraction.toNumber('ft').toFixed(3), figures.search.kind, areas, ways].join(' ');
};

describe('the plan of a slab', () => {
  it('stays the same when the slab is moved, turned, mirrored or begun elsewhere, for 100 random slabs', () => {
    const next = stream(41);
    for (let i = 0; i < runs(100); i += 1) {
      const slab = yard(next, between(next, 2, 4), 12, 18, 0.4);
      const { ring } = slab;
      const openings = slab.openings.map(([x, y, l, w]): Xy[] => [
        [x, y],
        [x + l, y],
        [x + l, y + w],
        [x, y + w],
      ]);
      const spacing = between(next, 6, 12);
      const plain = told(ring, openings, spacing);
      for (const [name, move] of MOVES) {
        const moved = told(
          ring.map(move),
          openings.map((o) => o.map(move)),
          spacing,
        );
        expect(moved, `${name}: ${JSON.stringify(inputOf(slab))}`).toBe(plain);
      }
      const k = between(next, 1, ring.length - 1);
      expect(told([...ring.slice(k), ...ring.slice(0, k)], openings, spacing)).toBe(plain);
      expect(told([...ring].reverse(), openings, spacing)).toBe(plain);
    }
  });
});

/** The same slab lying another way takes the same steel: eight poses, both directions of the list, any first corner, far away. */
import { describe, expect, it } from 'vitest';
import { meshLayout, rebarLayout } from '../../src/index';
import { runs } from '../support/effort';
import { polygonOf, randomPlan, randoms, type Spot } from './outlines';

const POSES: readonly { readonly move: (p: Spot) => Spot; readonly swaps: boolean }[] = [
  { move: ({ x, y }) => ({ x, y }), swaps: false },
  { move: ({ x, y }) => ({ x: -y, y: x }), swaps: true },
  { move: ({ x, y }) => ({ x: -x, y: -y }), swaps: false },
  { move: ({ x, y }) => ({ x: y, y: -x }), swaps: true },
  { move: ({ x, y }) => ({ x: -x, y }), swaps: false },
  { move: ({ x, y }) => ({ x, y: -y }), swaps: false },
  { move: ({ x, y }) => ({ x: y, y: x }), swaps: true },
  { move: ({ x, y }) => ({ x: -y, y: -x }), swaps: true },
];
const FAR = { x: 612_345.678, y: 152_401.219 };
const rounded = (n: number): number => Math.round(n * 1000) / 1000;

/** Corners rounded off by three short sides each, so that bars around them are bent. */
function softened(ring: readonly Spot[]): Spot[] {
  return ring.flatMap((b, i) => {
    const [a, c] = [ring[(i + ring.length - 1) % ring.length] as Spot, ring[(i + 1) % ring.length] as Spot];
    const on = (to: Spot): Spot => ({
      x: rounded(b.x + (to.x - b.x) / 8),
      y: rounded(b.y + (to.y - b.y) / 8),
    });
    return [on(a), on(c)];
  });
}

describe('a slab lying another way', () => {
  it('takes the same bars, bent and straight, and the same mesh', () => {
    const random = randoms(20_261_127);
    for (let k = 0; k < runs(60); k += 1) {
      const { outer } = randomPlan(random);
      const ring = k % 2 === 1 ? softened(softened(outer)) : outer;
      const [spacing, across] = [rounded(0.25 + random() * 0.3), rounded(0.25 + random() * 0.3)];
      const stock = `${rounded(2 + random() * 4)} m`;
      const lying = (at: number, first: number, off: Spot): string => {
        const { move, swaps } = POSES[at] as (typeof POSES)[number];
        const moved = ring.map(move).map(({ x, y }) => ({ x: rounded(x + off.x), y: rounded(y + off.y) }));
        const listed = [...moved.slice(first), ...moved.slice(0, first)];
        const outline = polygonOf(at % 3 === 1 ? listed.reverse() : listed);
        const [s, t] = swaps ? [across, spacing] : [spacing, across];
        const mats = [{ layer: 'bottom', bar: '#3', spacing: `${s} m`, spacingAcross: `${t} m` }] as const;
        const bars = rebarLayout.attempt({ outline, mats, stockLength: stock, lap: '0.4 m', cover: '50 mm' });
        const mesh = meshLayout.attempt({ outline, form: 'sheets', pieceLength: '3 m', pieceWidth: '1.5 m' });
        return JSON.stringify([
          bars.ok && [
            bars.result.figures.bars
              .map(({ use, length, count, shape }) => [
                swaps && use === 'along' ? 'across' : swaps && use === 'across' ? 'along' : use,
                length,
                count,
                shape,
              ])
              .map((row) => JSON.stringify(row))
              .sort(),
            bars.result.figures.barsToBuy,
            bars.result.figures.ties,
            bars.result.figures.supports,
          ],
          mesh.ok && { ...mesh.result.figures, direction: undefined },
        ]);
      };
      const plain = lying(0, 0, { x: 0, y: 0 });
      for (let at = 1; at < POSES.length; at += 1) {
        const first = Math.floor(random() * ring.length);
        expect(lying(at, first, at % 2 ? FAR : { x: 0, y: 0 }), `slab ${k}, pose ${at}`).toBe(plain);
      }
    }
  });
});

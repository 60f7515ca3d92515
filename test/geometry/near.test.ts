/** Which rings lie near which: a sweep over boxes against looking at every pair. */
import { describe, expect, it } from 'vitest';
import { ringsNear } from '../../src/geometry/crossings';
import { type Corner, ringsFarApart } from '../../src/geometry/polygon';
import { slabVolume } from '../../src/index';
import { Decimal } from '../../src/quantity/decimal';
import { runs } from '../support/effort';
import { seeded } from '../support/outlines';

/** A box on a coarse grid, so that many touch, share sides or are the same; far from the origin. */
function box(random: () => number): Corner[] {
  const whole = (most: number): number => Math.floor(random() * most);
  const [x, y, l, w] = [whole(12), whole(12), 1 + whole(3), 1 + whole(8)];
  const at = (dx: number, dy: number): Corner => ({
    x: new Decimal('500000.1').plus(x + dx),
    y: new Decimal('4000000.3').plus(y + dy),
  });
  return [at(0, 0), at(l, 0), at(l, w), at(0, w)];
}

describe('rings near each other', () => {
  it('are those that do not lie wholly beside each other, each with those before it', () => {
    const random = seeded(17);
    for (let k = 0; k < runs(300); k += 1) {
      const rings = Array.from({ length: Math.floor(random() * 12) }, () => box(random));
      const expected = rings.map((ring, i) =>
        [...Array(i).keys()].filter((j) => !ringsFarApart(ring, rings[j] as Corner[])),
      );
      expect(ringsNear(rings)).toEqual(expected);
    }
  });

  it('of several openings that meet, name the first that meets one before it', () => {
    const opening = (x: number, y: number) =>
      ({ shape: 'rectangle', at: { x: `${x} m`, y: `${y} m` }, length: '1 m', width: '1 m' }) as const;
    const openings = [opening(6, 6), opening(1, 1), opening(4, 1), opening(4.5, 1), opening(1.5, 1)];
    const tried = slabVolume.attempt({
      outline: { shape: 'rectangle', length: '10 m', width: '8 m' },
      openings,
      thickness: '100 mm',
    });
    expect(tried.ok ? [] : tried.error.issues.map(({ code, path }) => [code, path])).toEqual([
      ['openings-meet', 'openings[3]'],
    ]);
  });
});

/**
 * Joint plans of random slabs of every kind, looked over by a general-purpose geometry library: the faces
 * between edges and joints are the panels, each inside corner is met or named, and no panel is wider than the
 * spacing; whatever is not so must be said in `givesWay`.
 */
import { describe, expect, it } from 'vitest';
import { jointLayout } from '../../src/index';
import { runs } from '../support/effort';
import { faultsOf } from '../support/joints/faces';
import { slabOf } from '../support/joints/slabs';
import { between, stream } from '../support/joints/yards';

describe('the plan of any slab', () => {
  it('holds what it says, for 300 random slabs of twelve kinds', () => {
    // Checked against: JSTS, its polygonizer, overlay and minimum width.
    const next = stream(31);
    let refused = 0;
    for (let i = 0; i < runs(300); i += 1) {
      const slab = slabOf(next, i);
      const spacing = between(next, 6, 13);
      const attempt = jointLayout.attempt({ ...slab.input, thickness: '4 in', spacing: `${spacing} ft` });
      if (!attempt.ok) {
        // A slab may have more corners than plans are made for; that is said, and it is rare.
        expect(attempt.error.issues.map(({ code }) => code)).toEqual(['too-many']);
        refused += 1;
        continue;
      }
      const { figures, cautions } = attempt.result;
      const what = `${i} ${JSON.stringify([slab.kind, slab.input, spacing])}`;
      expect(faultsOf(slab, figures, { spacing, leastSide: 2 }), what).toEqual([]);
      expect(
        // Panels up to 2 to 1 are told by a note, those of a longest ratio that nobody gave.
        cautions.some((c) => c.code === 'rule-gives-way' || (c.code === 'many-panels' && !figures.fewer)),
        what,
      ).toBe(figures.givesWay.some(({ rule }) => rule !== 'opening passed by'));
    }
    expect(refused).toBeLessThan(0.05 * runs(300));
  });
});

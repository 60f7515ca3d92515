/**
 * Slabs that keeping every rule would cut up: what they get instead, and what is told of it.
 *
 * Checked against: noding joints and edges with a geometry library (test/support/joints/faces.ts); the plan by the ratio
 * that is asked for; sums by hand.
 */
import { describe, expect, it } from 'vitest';
import { type JointLayoutInput, jointLayout } from '../../src/index';
import { runs } from '../support/effort';
import { faultsOf } from '../support/joints/faces';
import { between, stream, type Xy } from '../support/joints/yards';

const ft = (n: number): string => `${n} ft`;

/** A rectangle with a corner out of it, as its corners. */
const corners = (l: number, w: number, a: number, b: number): Xy[] => [
  [0, 0],
  [l, 0],
  [l, w - b],
  [l - a, w - b],
  [l - a, w],
  [0, w],
];

const notched = (ring: readonly Xy[], spacing: number): JointLayoutInput => ({
  outline: { shape: 'polygon', points: ring.map(([x, y]) => ({ x: ft(x), y: ft(y) })) },
  thickness: '5 in',
  spacing: ft(spacing),
});

const codesOf = (input: JointLayoutInput): string[] =>
  jointLayout(input).cautions.map(({ code }) => code as string);

describe('a slab that keeping every rule would cut up', () => {
  // Common practice: nobody saws a slab into squares of a pace for one small notch.
  it.each([
    // 41 / 15 and 36 / 15 are 3 each way: 2 x 36 + 2 x 41 ft; bars across the corner.
    ['a corner of 3 ft out of it', corners(41, 36, 3, 3), 15, 9, 154, ['corner not met']],
    ['a corner of 2 ft out of it', corners(30, 20, 2, 2), 10, 6, 70, ['corner not met']],
    // A joint up from the corner, two that divide the 29 ft before it, one along the middle: 15 + 18 + 18 + 39 ft.
    ['a long corner out of it', corners(39, 18, 10, 3), 15, 8, 90, ['panel shape']],
  ] as const)('is cut as a foreman cuts it: %s', (_, ring, spacing, panels, length, broken) => {
    const { figures } = jointLayout(notched(ring, spacing));
    expect(figures.panelCount.toNumber('each')).toBe(panels);
    expect(figures.contraction.toNumber('ft')).toBeCloseTo(length, 9);
    expect(figures.givesWay.map(({ rule }) => rule)).toEqual(broken);
  });

  it.each([
    // One cut of 24 ft 6 in in all: two of 8 ft in the leg, the notch's own.
    ['a small slab', corners(16, 12, 3.5, 5), '1.6:1', 4, 24.5],
    // Strips of 3 ft beside a notch 10 ft long.
    ['a long notch', corners(24, 17, 10, 3), '1.75:1', 8, 69],
  ] as const)(
    'has a few panels longer than usual where that does: %s',
    (_, ring, longestRatio, panels, length) => {
      const input = notched(ring, 10);
      const { figures } = jointLayout(input);
      expect(figures.panelCount.toNumber('each')).toBe(panels);
      expect(figures.contraction.toNumber('ft')).toBe(length);
      expect(codesOf(input)).toContain('many-panels');
      expect(codesOf(input)).not.toContain('rule-gives-way');
      const asked = jointLayout({ ...input, longestRatio }).figures;
      expect(asked.joints).toEqual(figures.joints);
    },
  );

  it('gets the plan that keeps the rules when its ratio is given, and is told what that takes', () => {
    const next = stream(51);
    let eased = 0;
    for (let i = 0; i < runs(120); i += 1) {
      const spacing = between(next, 8, 15);
      const [l, w] = [between(next, 16, 44), between(next, 12, 36)];
      const ring = corners(l, w, between(next, 1, 10), between(next, 1, 8));
      const input = notched(ring, spacing);
      const what = JSON.stringify([ring, spacing]);
      const { figures, cautions } = jointLayout(input);
      const slab = { rings: [ring], inside: [ring[3] as Xy] };
      expect(faultsOf(slab, figures, { spacing, leastSide: 2 }), what).toEqual([]);
      const strict = jointLayout({ ...input, longestRatio: '1.5:1' }).figures;
      if (figures.givesWay.length === 0) continue;
      const told = cautions.find(({ code }) => code === 'rule-gives-way' || code === 'many-panels');
      const others = told?.params?.['others'];
      if (!others) continue;
      eased += 1;
      expect(strict.givesWay, what).toEqual([]);
      expect(strict.panelCount.compareTo(others as typeof strict.panelCount), what).toBe(0);
      expect(
        strict.contraction
          .minus(told.params?.['length'] as typeof strict.contraction)
          .abs()
          .toNumber('m'),
        what,
      ).toBeLessThan(0.051);
      const panels = figures.panelCount.toNumber('each');
      expect(2 * panels, what).toBeLessThanOrEqual(strict.panelCount.toNumber('each'));
    }
    expect(eased).toBeGreaterThan(0);
  });

  it('keeps its rules where nobody would cut it otherwise', () => {
    expect(codesOf(notched(corners(28, 22, 8, 6), 10))).toEqual(['silica-dust']);
  });
});

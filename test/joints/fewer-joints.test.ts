/** A plan with far fewer joints, where a longer ratio gives one: what is told of it is what that ratio gives. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type JointLayoutInput, jointLayout } from '../../src/index';
import { runs } from '../support/effort';
import '../support/seed';

const notched = ([length, width, notchLength, notchWidth]: readonly number[]): JointLayoutInput => ({
  outline: {
    shape: 'L',
    length: `${length} ft`,
    width: `${width} ft`,
    notchLength: `${notchLength} ft`,
    notchWidth: `${notchWidth} ft`,
  },
  thickness: '4 in',
  spacing: '10 ft',
});

const toldOf = (input: JointLayoutInput) => {
  const { figures, cautions } = jointLayout(input);
  const eased = figures.givesWay.length > 0 && !cautions.some(({ code }) => code === 'rule-gives-way');
  expect(cautions.some(({ code }) => code === 'many-panels')).toBe(figures.fewer !== undefined || eased);
  return figures;
};

describe('a plan with fewer joints', () => {
  it.each([
    // 4 x 3 panels below the notch and 3 beside it become 3 x 3, the one beside the notch 1.58 to 1.
    ['a small notch', [20, 18, 3.5, 5], '1.6:1', 9, 72.5],
  ])('is told of %s', (_, sides, longestRatio, panels, length) => {
    const { fewer } = toldOf(notched(sides));
    expect(fewer?.longestRatio.format()).toBe(longestRatio);
    expect(fewer?.panelCount.toNumber('each')).toBe(panels);
    expect(fewer?.contraction.toNumber('ft')).toBe(length);
  });

  it.each([
    ['a rectangle', { outline: { shape: 'rectangle', length: '40 ft', width: '30 ft' } }],
    [
      'a walk, whose ratio makes its panels',
      { outline: { shape: 'rectangle', length: '60 ft', width: '3 ft' } },
    ],
    ['a ratio that is given', { ...notched([20, 18, 3.5, 5]), longestRatio: '1.5:1' }],
    ['a plan that breaks a rule', { outline: { shape: 'triangle', sides: ['22 ft', '16 ft', '27.203 ft'] } }],
    ['a notch that costs little', notched([28, 22, 8, 6])],
  ] as const)('is not told of %s', (_, input) => {
    expect(
      toldOf({ thickness: '4 in', spacing: '10 ft', ...input } as JointLayoutInput).fewer,
    ).toBeUndefined();
  });

  it('is the plan that its ratio gives, with few long panels and much less to saw', () => {
    const half = fc.integer({ min: 4, max: 20 }).map((n) => n / 2);
    const sides = fc.tuple(fc.integer({ min: 12, max: 36 }), fc.integer({ min: 12, max: 30 }), half, half);
    fc.assert(
      fc.property(sides, (drawn) => {
        const plan = toldOf(notched(drawn));
        if (!plan.fewer) return;
        const { longestRatio, panelCount, contraction } = plan.fewer;
        const other = jointLayout({ ...notched(drawn), longestRatio }).figures;
        expect(other.panelCount.compareTo(panelCount)).toBe(0);
        expect(other.contraction.compareTo(contraction)).toBe(0);
        expect(other.givesWay).toEqual([]);
        const long = other.panels.filter(({ ratio }) => ratio.toNumber(':1') > 1.5 + 1e-9);
        expect(long.length).toBeGreaterThan(0);
        const onThem = long.reduce((sum, { area }) => sum + area.toNumber('ft2'), 0);
        expect(
          long.length <= other.panels.length / 4 || onThem <= other.area.toNumber('ft2') / 4 + 1e-9,
        ).toBe(true);
        expect(contraction.toNumber('ft')).toBeLessThanOrEqual(0.75 * plan.contraction.toNumber('ft'));
      }),
      { numRuns: runs(60) },
    );
  });
});

/** Kinks of 15 degrees and less are no corners, one by one or in a chain; what turns by more is met by a joint. */
import { describe, expect, it } from 'vitest';
import { type JointLayoutFigures, jointLayout } from '../../src/index';
import { directionAt } from '../../src/joints/layout/unit-circle';
import { Decimal, PI } from '../../src/quantity/decimal';
import type { Xy } from '../support/joints/yards';

const planOf = (ring: readonly Xy[], spacing: string): JointLayoutFigures =>
  jointLayout({
    outline: {
      shape: 'polygon',
      points: ring.map(([x, y]) => ({ x: `${x.toFixed(4)} ft`, y: `${y.toFixed(4)} ft` })),
    },
    thickness: '4 in',
    spacing,
  }).figures;

const RADIANS = Math.PI / 180;

/** A slab with an inside corner of so many degrees in the middle of its far side. */
const dented = (degrees: number): Xy[] => [
  [0, 0],
  [30, 0],
  [30, 20],
  [15, 20 - 15 * Math.tan((degrees / 2) * RADIANS)],
  [0, 20],
];

/** Joints that pass through a place, in feet. */
const met = ({ joints }: JointLayoutFigures, x: number, y: number): boolean =>
  joints.some(({ from, to }) => {
    const at = ({ x: u, y: v }: typeof from): Xy => [u.toNumber('ft'), v.toNumber('ft')];
    const [a, b] = [at(from), at(to)];
    const long = Math.hypot(b[0] - a[0], b[1] - a[1]);
    return Math.abs(Math.hypot(x - a[0], y - a[1]) + Math.hypot(x - b[0], y - b[1]) - long) < 1e-4;
  });

/** An L whose inside corner at (10, 10) is rounded by so many sides. */
function rounded(sides: number, radius: number): Xy[] {
  const fillet = Array.from({ length: sides + 1 }, (_, i): Xy => {
    const a = (90 * RADIANS * i) / sides;
    return [10 + radius * (1 - Math.sin(a)), 10 + radius * (1 - Math.cos(a))];
  });
  return [[0, 0], [24, 0], [24, 10], ...fillet, [10, 24], [0, 24]];
}

describe('a kink', () => {
  it.each([5, 10, 14, 14.9])('of %d degrees is no corner', (degrees) => {
    const figures = planOf(dented(degrees), '12 ft');
    expect(figures.givesWay.map(({ rule }) => rule)).not.toContain('corner not met');
    expect(met(figures, 15, 20 - 15 * Math.tan((degrees / 2) * RADIANS))).toBe(false);
  });

  it.each([15.1, 20, 40])('of %d degrees is a corner, met by a joint', (degrees) => {
    const figures = planOf(dented(degrees), '12 ft');
    expect(met(figures, 15, 20 - 15 * Math.tan((degrees / 2) * RADIANS))).toBe(true);
  });

  it('in a chain is an arc, though the chain turns by a right angle', () => {
    for (const [sides, radius] of [
      [7, 0.5],
      [9, 3],
    ] as const) {
      const figures = planOf(rounded(sides, radius), '8 ft');
      expect(figures.givesWay).toEqual([]);
      expect(figures.search.kind).toBe('exact');
    }
    // Of two sides each kink turns by more, and both are corners.
    const two = planOf(rounded(2, 3), '8 ft');
    const corner = 10 + 3 * (1 - Math.SQRT1_2);
    const named = two.givesWay.some(({ rule }) => rule === 'corner not met');
    expect(named || met(two, corner, corner)).toBe(true);
  });
});

describe('a direction', () => {
  it('is that of cosine and sine to 49 digits, and neat at quarter turns', () => {
    // Checked against: decimal.js, its own series.
    for (const text of ['0.1', '1', '-1', '3', '6.2', '7', '-12.5', '1e-30', '100']) {
      const angle = new Decimal(text);
      const { x, y } = directionAt(angle);
      expect(x.minus(Decimal.cos(angle)).abs().lessThan('1e-49')).toBe(true);
      expect(y.minus(Decimal.sin(angle)).abs().lessThan('1e-49')).toBe(true);
    }
    const quarter = directionAt(PI.div(2));
    expect([quarter.x.toFixed(), quarter.y.toFixed()]).toEqual(['0', '1']);
  });
});

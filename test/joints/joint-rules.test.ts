/** Spacing, depth and stiffness: second ways to the same figures, and what must always hold. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { jointSpacing, relativeStiffness } from '../../src/index';

const inches = fc.integer({ min: 3, max: 20 });

describe('joint spacing', () => {
  const input = fc.record({
    thickness: inches.map((t) => `${t} in`),
    aggregateSize: fc.constantFrom('3/8 in', '3/4 in', '1 in'),
    slump: fc.integer({ min: 1, max: 8 }).map((s) => `${s} in`),
    width: fc.option(
      fc.integer({ min: 3, max: 40 }).map((w) => `${w} ft`),
      { nil: undefined },
    ),
    use: fc.constantFrom('slab', 'walk', 'curb'),
    maximum: fc.option(
      fc.integer({ min: 4, max: 30 }).map((m) => `${m} ft`),
      { nil: undefined },
    ),
    reinforced: fc.boolean(),
  });
  const given = (x: object): never =>
    Object.fromEntries(Object.entries(x).filter(([, value]) => value !== undefined)) as never;

  it('is never over any rule that is applied', () => {
    fc.assert(
      fc.property(input, (x) => {
        const { figures } = jointSpacing(given(x));
        const limits = [figures.byThickness, figures.maximum, ...(figures.byShape ? [figures.byShape] : [])];
        for (const limit of limits) expect(figures.spacing.greaterThan(limit)).toBe(false);
        if (x.maximum)
          expect(figures.spacing.toNumber('ft')).toBeLessThanOrEqual(Number.parseInt(x.maximum, 10));
        if (x.use === 'walk') expect(figures.spacing.toNumber('ft')).toBeLessThanOrEqual(5);
        if (x.use === 'curb') expect(figures.spacing.toNumber('ft')).toBeLessThanOrEqual(10);
      }),
      { numRuns: 200 },
    );
  });

  it('shows each source with its own figure, closer ends before farther ones', () => {
    fc.assert(
      fc.property(input, (x) => {
        const { spacings, depths } = jointSpacing(given(x)).figures;
        expect(spacings.length).toBeGreaterThan(5);
        for (const s of spacings) if (s.least) expect(s.least.greaterThan(s.spacing)).toBe(false);
        for (const d of depths) if (d.most) expect(d.most.lessThan(d.depth)).toBe(false);
      }),
      { numRuns: 100 },
    );
  });

  it('an early-entry cut is never deeper than a conventional one', () => {
    fc.assert(
      fc.property(inches, (t) => {
        const depth = (making: 'conventional saw' | 'early-entry saw'): number =>
          jointSpacing({
            thickness: `${t} in`,
            aggregateSize: '1 in',
            slump: '4 in',
            making,
          }).figures.depth.toNumber('in');
        expect(depth('early-entry saw')).toBeLessThanOrEqual(depth('conventional saw'));
      }),
    );
  });

  it('sources that disagree are both there', () => {
    const { figures } = jointSpacing({ thickness: '8 in', aggregateSize: '1 in', slump: '3 in' });
    const caps = figures.spacings.map((s) => s.spacing.format());
    expect(caps).toContain('18 ft');
    expect(caps).toContain('5 m');
    expect(caps).toContain('25 ft');
    expect(figures.because).toMatch(/18 ft|allows no more/);
  });
});

describe('radius of relative stiffness', () => {
  it('is the fourth root, reckoned in binary numbers another way', () => {
    fc.assert(
      fc.property(inches, fc.integer({ min: 50, max: 500 }), fc.integer({ min: 2, max: 6 }), (h, k, e) => {
        const { figures } = relativeStiffness({
          thickness: `${h} in`,
          elasticity: `${e}000000 psi`,
          subgrade: { pressure: `${k} psi`, deflection: '1 in' },
        });
        const l = Math.exp((Math.log(e * 1e6) + 3 * Math.log(h) - Math.log(12 * (1 - 0.0225) * k)) / 4);
        expect(figures.radius.toNumber('in')).toBeCloseTo(l, 9);
      }),
    );
  });

  it('does not mind how the plate test is written', () => {
    const radius = (pressure: string, deflection: string): string =>
      relativeStiffness({
        thickness: '6 in',
        elasticity: '4000 psi',
        subgrade: { pressure, deflection },
      }).figures.radius.format('in', { places: 12 });
    expect(radius('10 psi', '0.1 in')).toBe(radius('100 psi', '1 in'));
  });
});

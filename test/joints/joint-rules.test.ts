/** Spacing, depth, timing and stiffness: second ways to the same figures, and what must always hold. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { jointSpacing, relativeStiffness, sawWindow } from '../../src/index';

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

/** Goes through the hours minute by minute. */
function walked(
  placed: number,
  from: number,
  close: number,
  work: [number, number],
): { overnight: boolean; minutes: number } {
  let minutes = 0;
  for (let m = placed + from; m < placed + close; m += 1) {
    const clock = m % 1440;
    if (clock >= work[0] && clock < work[1]) minutes += 1;
  }
  const end = (placed + close) % 1440;
  return { overnight: end < work[0] || end > work[1], minutes };
}

describe('saw window', () => {
  const input = fc.record({
    saw: fc.constantFrom('conventional', 'early-entry'),
    weather: fc.constantFrom('hot', 'mild', 'cold'),
    placed: fc.integer({ min: 0, max: 1439 }),
  });

  it('by the clock is what counting minutes gives', () => {
    fc.assert(
      fc.property(input, ({ saw, weather, placed }) => {
        const { figures, cautions } = sawWindow({ saw, weather, placedAt: `${placed} min` } as never);
        const { start, finishBy, clock } = figures;
        const told = walked(placed, start.from.toNumber('min'), finishBy.toNumber('min'), [7 * 60, 18 * 60]);
        expect(clock?.closesOvernight).toBe(told.overnight);
        expect(clock?.workable.toNumber('min')).toBeCloseTo(told.minutes, 6);
        expect(cautions.some((c) => c.code === 'saw-at-night')).toBe(told.overnight);
      }),
      { numRuns: 300 },
    );
  });

  it('starts before it closes and is as uncertain as it is wide', () => {
    fc.assert(
      fc.property(input, ({ saw, weather }) => {
        const { start, finishBy, uncertainty } = sawWindow({ saw, weather } as never).figures;
        expect(start.from.lessThan(start.to)).toBe(true);
        expect(finishBy.lessThan(start.to)).toBe(false);
        expect(uncertainty.compareTo(start.to.minus(start.from))).toBe(0);
      }),
    );
  });

  it('cold weather is never earlier than hot', () => {
    for (const saw of ['conventional', 'early-entry'] as const) {
      const [hot, cold] = [
        sawWindow({ saw, weather: 'hot' }).figures,
        sawWindow({ saw, weather: 'cold' }).figures,
      ];
      expect(cold.start.from.lessThan(hot.start.from)).toBe(false);
      expect(cold.finishBy.lessThan(hot.finishBy)).toBe(false);
    }
  });
});

/**
 * Advice on bars, laps, cover and ties: what must hold whatever the input.
 *
 * No worse input gets a better verdict, what is not said never counts in one's favor, the two unit systems agree, and
 * there is always a way to do it right.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  barSize,
  dowelLayout,
  lapLength,
  meshStyle,
  type SteelPlacementInput,
  steelMinimum,
  steelPlacement,
} from '../../src/index';
import { runs } from '../support/effort';

const codes = (cautions: readonly { code: string }[]): string =>
  cautions
    .map(({ code }) => code)
    .sort()
    .join();

const eighths = (least: number, most: number): fc.Arbitrary<number> =>
  fc.integer({ min: least * 8, max: most * 8 }).map((n) => n / 8);

describe('designations of bars', () => {
  const SERIES = ['inch-pound', 'soft-metric', 'hard-metric', 'diameter'] as const;
  const prefixes = ['', '#', 'No. ', 'no ', 'Ø'];
  const suffixes = ['', 'M', ' mm'];
  const texts = Array.from({ length: 60 }, (_, i) =>
    prefixes.flatMap((prefix) => suffixes.map((suffix) => `${prefix}${i + 1}${suffix}`)),
  ).flat();

  it('mean one bar, or are refused: no text means two bars by its spelling', () => {
    for (const bar of texts) {
      const found = SERIES.filter((series) => barSize.attempt({ bar, series }).ok);
      const read = barSize.attempt({ bar });
      const code = read.ok ? 'read' : read.error.issues[0]?.code;
      expect(code, `${bar}: ${found.join()}`).toBe(
        ['unknown-designation', 'read'][found.length] ?? 'ambiguous',
      );
    }
  });

  it('read back as they are written, in their series', () => {
    for (const bar of ['#4', '#13', '15M', '12 mm', '#18', '#57', '55M', '40 mm']) {
      const { designation, series, area } = barSize({ bar }).figures;
      expect(barSize({ bar: designation, series }).figures.area.equals(area)).toBe(true);
    }
  });

  it('name every reading that there is', () => {
    expect(() => barSize({ bar: '10' })).toThrow(
      '#10 of 1.27 in, soft metric 10, the same bar as #3, 10M of 11.3 mm or a bar of 10 mm',
    );
    expect(() => barSize({ bar: '#10' })).toThrow('#10 of 1.27 in or soft metric 10, the same bar as #3');
  });
});

describe('designations of mesh', () => {
  it('are never read with wires an inch thick or feet apart', () => {
    const number = fc.constantFrom(
      '2',
      '4',
      '6',
      '8',
      '10',
      '12',
      '25',
      '50',
      '100',
      '150',
      '152',
      '200',
      '300',
    );
    const wire = fc.constantFrom('1.4', '2.9', '4', '5', '6', '8', '9.1', '10', '16', '20');
    const prefix = fc.constantFrom('', 'W', 'D', 'MW', 'MD');
    fc.assert(
      fc.property(number, number, prefix, wire, wire, (a, b, p, x, y) => {
        const read = meshStyle.attempt({ style: `${a}x${b}-${p}${x}x${p}${y}` });
        if (!read.ok) return;
        const { along, across } = read.result.figures;
        for (const { spacing, wireDiameter } of [along, across]) {
          expect(spacing.toNumber('mm')).toBeLessThanOrEqual(620);
          expect(wireDiameter.toNumber('mm')).toBeLessThanOrEqual(17);
        }
      }),
      { numRuns: runs(1000) },
    );
  });
});

describe('laps', () => {
  const bars = fc.constantFrom('#3', '#4', '#5', '#6', '#8', '#11', '15M', '25M', '12 mm', '25 mm');
  const inches = (n: number | undefined): string | undefined => (n === undefined ? undefined : `${n} in`);

  it('are never shorter for less cover, closer bars, weaker concrete, or what is not said', () => {
    const place = fc.record({
      bar: bars,
      cover: fc.option(eighths(1, 4), { nil: undefined }),
      spacing: fc.option(eighths(3, 18), { nil: undefined }),
      psi: fc.integer({ min: 25, max: 100 }),
    });
    const lap = (p: {
      bar: string;
      cover?: number | undefined;
      spacing?: number | undefined;
      psi: number;
    }): number =>
      lapLength({
        kind: 'development',
        bar: p.bar as '#4',
        strength: `${p.psi}00 psi`,
        ...(p.cover === undefined ? {} : { cover: `${p.cover} in` }),
        ...(p.spacing === undefined ? {} : { spacing: inches(p.spacing) as string }),
      }).figures.lap.toNumber('in');
    fc.assert(
      fc.property(place, (p) => {
        const own = lap(p);
        expect(lap({ ...p, cover: undefined })).toBeGreaterThanOrEqual(own - 1e-9);
        expect(lap({ ...p, spacing: undefined })).toBeGreaterThanOrEqual(own - 1e-9);
        if (p.cover !== undefined)
          expect(lap({ ...p, cover: p.cover * 0.75 })).toBeGreaterThanOrEqual(own - 1e-9);
        if (p.spacing !== undefined)
          expect(lap({ ...p, spacing: p.spacing * 0.75 })).toBeGreaterThanOrEqual(own - 1e-9);
        expect(lap({ ...p, psi: p.psi - 5 })).toBeGreaterThanOrEqual(own - 1e-9);
      }),
      { numRuns: runs(300) },
    );
  });

  it('list each thing that was not said', () => {
    const names = lapLength({ kind: 'development', bar: '#5', strength: '4000 psi' }).assumed.map(
      (a) => a.name,
    );
    expect(names).toEqual(['grade', 'lapClass', 'cover', 'spacing']);
  });
});

describe('least steel', () => {
  it('is never offered as bars farther apart than five thicknesses or 18 in', () => {
    fc.assert(
      fc.property(eighths(3, 12), fc.integer({ min: 3, max: 100 }), fc.boolean(), (t, feet, drag) => {
        const { along, across, spacingLimit } = steelMinimum(
          drag
            ? { kind: 'drag', thickness: `${t} in`, length: `${feet} ft` }
            : { kind: 'ratio', thickness: `${t} in` },
        ).figures;
        expect(spacingLimit.toNumber('in')).toBeCloseTo(Math.min(5 * t, 18), 9);
        for (const { spacing } of [...along.bars, ...across.bars])
          expect(spacing.greaterThan(spacingLimit)).toBe(false);
      }),
      { numRuns: runs(300) },
    );
  });
});

describe('steel in its place', () => {
  const slabs = fc.record({
    thickness: eighths(3.5, 14),
    bar: fc.constantFrom('#3', '#4', '#5', '#6'),
    crossing: fc.boolean(),
  });
  const thick = { '#3': 0.375, '#4': 0.5, '#5': 0.625, '#6': 0.75 } as const;
  const placed = (t: number, bar: keyof typeof thick, layer: number, coverTop: number): string =>
    codes(
      steelPlacement({
        steel: 'bars',
        thickness: `${t} in`,
        coverTop: `${coverTop} in`,
        layer: `${layer} in`,
        bar,
        supports: '2 ft',
      }).cautions,
    );

  it('has a place that nothing is said against, in every slab with room for bars', () => {
    fc.assert(
      fc.property(slabs, ({ thickness: t, bar, crossing }) => {
        const layer = thick[bar as keyof typeof thick] * (crossing ? 2 : 1);
        const top = bar === '#6' ? 2 : 1.5;
        const middle = (t - layer) / 2;
        fc.pre(middle >= top);
        expect(placed(t, bar as '#4', layer, middle)).toBe('');
      }),
      { numRuns: runs(300) },
    );
  });

  it('gets no better verdict by lying lower than the middle, or higher than its cover', () => {
    fc.assert(
      fc.property(slabs, eighths(1, 4), ({ thickness: t, bar, crossing }, down) => {
        const layer = thick[bar as keyof typeof thick] * (crossing ? 2 : 1);
        const low = (t - layer) / 2 + down;
        fc.pre(low + layer <= t);
        const below = t - low - layer;
        const said = placed(t, bar as '#4', layer, low);
        if (below === 0) expect(said).toContain('steel-on-ground');
        if (below < 2.9 && down > 0.3) expect(said).toMatch(/bars-too-low|little-bottom-cover/);
      }),
      { numRuns: runs(300) },
    );
  });

  it('is judged alike in inches and in millimeters', () => {
    const text = (n: number, metric: boolean): string => (metric ? `${(n * 25.4).toFixed(3)} mm` : `${n} in`);
    const input = (
      metric: boolean,
      p: Record<'t' | 'k' | 'd' | 's', number>,
      mesh: boolean,
    ): SteelPlacementInput => ({
      steel: mesh ? 'mesh' : 'bars',
      thickness: text(p.t, metric),
      coverTop: text(p.k, metric),
      layer: text(p.d, metric),
      supports: text(p.s, metric),
    });
    const place = fc.record({
      t: eighths(4, 12),
      k: eighths(0.5, 4),
      d: fc.constantFrom(0.25, 0.375, 0.5, 0.75, 1, 1.25, 1.5),
      s: fc.integer({ min: 12, max: 84 }),
    });
    fc.assert(
      fc.property(place, fc.boolean(), (p, mesh) => {
        fc.pre(p.k + p.d <= p.t);
        const [a, b] = [steelPlacement(input(false, p, mesh)), steelPlacement(input(true, p, mesh))];
        expect(codes(b.cautions)).toBe(codes(a.cautions));
        expect(b.figures.coverBottom.toNumber('in')).toBeCloseTo(a.figures.coverBottom.toNumber('in'), 4);
      }),
      { numRuns: runs(400) },
    );
  });
});

describe('ties', () => {
  it('are drawn closer for a wider slab, and never farther apart than their drag allows', () => {
    fc.assert(
      fc.property(fc.integer({ min: 4, max: 60 }), eighths(4, 12), (feet, t) => {
        const ties = (width: number): number =>
          dowelLayout({
            kind: 'ties',
            placing: 'basket',
            thickness: `${t} in`,
            joint: '100 ft',
            freeWidth: `${width} ft`,
          }).figures.spacing.toNumber('in');
        // Statics: a bar of 0.2 in2 at 40,000 psi holds 8,000 lb; a foot of joint is pulled by 1.5 × 150 pcf × t × B.
        const most = (8000 / (1.5 * 150 * (t / 12) * feet)) * 12;
        expect(ties(feet)).toBeLessThanOrEqual(Math.min(30, most) + 1e-9);
        expect(ties(feet)).toBeGreaterThan(Math.min(30, most) - 1 - 1e-9);
        expect(ties(feet + 5)).toBeLessThanOrEqual(ties(feet));
      }),
      { numRuns: runs(200) },
    );
  });

  it('and isolation are never both let pass', () => {
    for (const placing of ['basket', 'drilled'] as const) {
      const input = { kind: 'ties', placing, thickness: '5 in', joint: '16 ft' } as const;
      const stops = (isolation: boolean): number =>
        dowelLayout({ ...input, isolation }).cautions.filter(({ severity }) => severity === 'stop').length;
      expect(stops(true)).toBe(1);
      expect(stops(false)).toBe(0);
    }
  });
});

describe('epoxy', () => {
  // Common practice: it is sold by the fluid ounce or the milliliter.
  const epoxyOf = (input: Parameters<typeof dowelLayout>[0]) =>
    dowelLayout(input)
      .takes.find(({ item }) => item === 'epoxy')
      ?.quantity.format();

  it('is bought in fluid ounces, or in milliliters', () => {
    expect(epoxyOf({ thickness: '6 in', joint: '18 ft', placing: 'drilled' })).toMatch(/ fl oz$/);
    expect(epoxyOf({ thickness: '150 mm', joint: '5.4 m', placing: 'drilled' })).toMatch(/ mL$/);
  });
});

/** Mats over outlines: against the closed form of a rectangle, against symmetry, and at their limits. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { matPlan, matSection, meshPlan } from '../../src/drawing/index';
import { barCutting, barPlaces, InputError, type RebarRegionInput, rebarLayout } from '../../src/index';
import { barScheduleCsv, barScheduleMarkdown, cuttingCsv, cuttingMarkdown } from '../../src/report/index';

const whole = (min: number, max: number) => fc.integer({ min, max });

describe('rebar-layout over an outline', () => {
  it('over a rectangle without laps comes to the closed form of the rectangle', () => {
    fc.assert(
      fc.property(whole(24, 400), whole(24, 400), whole(4, 24), whole(1, 4), (L, W, s, c) => {
        const common = { bar: '#4', spacing: `${s} in` } as const;
        const other = { cover: `${c} in`, stockLength: '60 ft' };
        const plain = rebarLayout({ length: `${L} in`, width: `${W} in`, ...common, ...other }).figures;
        const region = rebarLayout({
          outline: { shape: 'rectangle', length: `${L} in`, width: `${W} in` },
          mats: [{ layer: 'bottom', ...common }],
          ...other,
        }).figures;
        const mat = region.mats[0];
        expect(mat?.along.lines.equals(plain.along.lines)).toBe(true);
        expect(mat?.across.lines.equals(plain.across.lines)).toBe(true);
        expect(mat?.along.evenSpacing.compareTo(plain.along.evenSpacing)).toBe(0);
        expect(region.totalLength.compareTo(plain.totalLength)).toBe(0);
        expect(region.intersections.equals(plain.intersections)).toBe(true);
      }),
      { numRuns: 200 },
    );
  });

  it('turned a quarter, with bars along and across changed places, takes the same bar', () => {
    fc.assert(
      fc.property(whole(60, 300), whole(60, 300), whole(6, 20), whole(6, 20), (L, W, s, t) => {
        const steel = (input: Partial<RebarRegionInput>, along: string, across: string): string =>
          rebarLayout({
            outline: { shape: 'rectangle', length: '1 ft', width: '1 ft' },
            ...input,
            mats: [{ layer: 'bottom', bar: '#4', spacing: along, spacingAcross: across }],
            stockLength: '60 ft',
          }).figures.totalLength.toString();
        const one = { outline: { shape: 'rectangle', length: `${L} in`, width: `${W} in` } } as const;
        const two = { outline: { shape: 'rectangle', length: `${W} in`, width: `${L} in` } } as const;
        expect(steel(one, `${s} in`, `${t} in`)).toBe(steel(two, `${t} in`, `${s} in`));
      }),
      { numRuns: 100 },
    );
  });

  it('adds up: bar list, sizes, totals and places agree', () => {
    const input: RebarRegionInput = {
      outline: { shape: 'L', length: '58 ft', width: '38 ft', notchLength: '8 ft', notchWidth: '6 ft' },
      openings: [{ shape: 'circle', at: { x: '20 ft', y: '10 ft' }, diameter: '4 ft' }],
      mats: [
        { layer: 'bottom', bar: '#4', barAcross: '#5', spacing: '18 in' },
        { layer: 'top', bar: '#3', spacing: '12 in', angle: '30 deg' },
      ],
    };
    const { figures } = rebarLayout(input);
    const places = barPlaces(input);
    expect(figures.pieces.toNumber('each')).toBe(places.length);
    for (const mark of figures.bars) {
      const own = places.filter((p) => p.mark === mark.mark);
      expect(own.length).toBe(mark.count.toNumber('each'));
      for (const { path, bar } of own) {
        let long = 0;
        path.forEach((p, i) => {
          const q = path[i + 1];
          if (q) long += Math.hypot(p.x - q.x, p.y - q.y);
        });
        expect(Math.abs(long - mark.length.toNumber('m'))).toBeLessThan(1e-5);
        expect(bar).toBe(mark.bar);
      }
    }
    const weight = figures.bars.reduce((s, b) => s + b.weight.toNumber('lb'), 0);
    expect(figures.weight.toNumber('lb')).toBeCloseTo(weight, 6);
  });

  it('lays out more than 100,000 bars, and refuses above 200,000 with a code', () => {
    const big = (spacing: string): RebarRegionInput => ({
      outline: { shape: 'rectangle', length: '2000 ft', width: '1000 ft' },
      mats: [{ layer: 'bottom', bar: '#3', spacing }],
    });
    expect(rebarLayout(big('24 in')).figures.pieces.toNumber('each')).toBeGreaterThan(100_000);
    const codes = (): string[] => {
      try {
        rebarLayout(big('6 in'));
      } catch (error) {
        if (error instanceof InputError) return error.issues.map((i) => i.code);
      }
      return [];
    };
    expect(codes()).toEqual(['too-many']);
  });
});

/** One element inside the other, each closed: enough of XML for what is drawn. */
function wellFormed(svg: string): boolean {
  const open: string[] = [];
  for (const [, close, name, , self] of svg.matchAll(/<(\/?)([a-z]+)((?: [\w:-]+="[^"<]*")*)(\/?)>/gi)) {
    if (close) {
      if (open.pop() !== name) return false;
    } else if (!self) open.push(name ?? '');
  }
  return open.length === 0;
}

describe('plans and schedules', () => {
  const input: RebarRegionInput = {
    outline: { shape: 'L', length: '28 ft', width: '18 ft', notchLength: '8 ft', notchWidth: '6 ft' },
    openings: [{ shape: 'circle', at: { x: '7 ft', y: '8 ft' }, diameter: '3 ft' }],
    mats: [{ layer: 'bottom', bar: '#4', spacing: '18 in', faceCover: '2 in' }],
    thickness: '6 in',
  };

  it('draw every bar once, every mark once, and nothing that loads or runs', () => {
    const svg = matPlan(input);
    expect(wellFormed(svg)).toBe(true);
    expect(svg.match(/<path[^>]*class="bar"/g)?.length).toBe(barPlaces(input).length);
    for (const { mark } of rebarLayout(input).figures.bars) expect(svg).toContain(`>${mark}</text>`);
    expect(svg).not.toMatch(/<script|href=|url\(/);
    for (const other of [
      matSection(input),
      meshPlan({ outline: input.outline, form: 'sheets', pieceLength: '10 ft', pieceWidth: '5 ft' }),
    ])
      expect(wellFormed(other)).toBe(true);
  });

  it('refuse what cannot be drawn, with a code', () => {
    const { thickness: _, ...without } = input;
    expect(() => matSection(without)).toThrow(InputError);
    expect(() =>
      matPlan({
        outline: { shape: 'rectangle', length: '900 ft', width: '900 ft' },
        mats: [{ layer: 'bottom', bar: '#4', spacing: '12 in' }],
      }),
    ).toThrow(InputError);
  });

  it('list as many rows as marks, with totals that a spreadsheet adds up to the weight', () => {
    const { figures } = rebarLayout(input);
    const rows = barScheduleCsv(figures).trimEnd().split('\r\n').slice(1);
    expect(rows.length).toBe(figures.bars.length);
    const sum = rows.reduce((s, row) => s + Number(row.split(',').at(-1)), 0);
    expect(sum).toBeCloseTo(figures.weight.toNumber('lb'), 3);
    expect(barScheduleMarkdown(figures).trimEnd().split('\n').length).toBe(figures.bars.length + 2);
    const cut = barCutting({
      pieces: [{ length: '9.5 ft', count: 9 }],
      stock: [{ length: '20 ft' }],
    }).figures;
    expect(cuttingCsv(cut).split('\r\n')[1]).toBe('20,4,2 of 9.5 ft,1');
    expect(cuttingMarkdown(cut).split('\n')[2]).toBe('| 20 ft | 4 | 2 of 9 ft 6 in | 1 ft |');
  });
});

describe('bounds of work', () => {
  it('refuse outlines of very many corners with a code, at once', () => {
    const corners = 3001;
    const points = Array.from({ length: corners }, (_, i) => ({
      x: `${(20 * Math.cos((2 * Math.PI * i) / corners)).toFixed(6)} m`,
      y: `${(20 * Math.sin((2 * Math.PI * i) / corners)).toFixed(6)} m`,
    }));
    const attempt = rebarLayout.attempt({
      outline: { shape: 'polygon', points },
      mats: [{ layer: 'bottom', bar: '#4', spacing: '12 in' }],
    });
    expect(attempt.ok ? '' : attempt.error.issues[0]?.code).toBe('too-many');
  });

  it('lay no bar shorter than one cutting step where none is too short', () => {
    // In the long point at 2,000 ft one line is shorter than 1/16 in.
    const tip = (feet: number) => [
      { x: '0 ft', y: '0 ft' },
      { x: `${feet} ft`, y: '0 ft' },
      { x: '18 ft', y: '10 ft' },
      { x: '30 ft', y: '20 ft' },
      { x: '0 ft', y: '20 ft' },
    ];
    for (const feet of [1000, 2000, 3000]) {
      const { bars } = rebarLayout({
        outline: { shape: 'polygon', points: tip(feet) },
        mats: [{ layer: 'bottom', bar: '#4', spacing: '19.5 in' }],
        cover: '2 in',
        stockLength: '40 ft',
        edgeBars: false,
        cornerBars: 0,
        shortest: '0 in',
      }).figures;
      const lengths = bars.map(({ length }) => length.toNumber('in'));
      expect(Math.min(...lengths)).toBeGreaterThanOrEqual(1 / 16);
    }
  });
});

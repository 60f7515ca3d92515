/** Steps: what must hold for every rise, and a second way to the admissible counts. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { length, stepLayout } from '../../src/index';
import { wordsText } from '../../src/report/view';
import { runs } from '../support/effort';
import { disagreement } from '../support/working';

/** Sixteenths of an inch, so that a second method can reckon in whole numbers. */
const rise = fc.integer({ min: 64, max: 16 * 200 });
const asText = (sixteenths: number): string => `${sixteenths / 16} in`;

describe('step-layout', () => {
  it('finds exactly the counts that whole-number arithmetic allows', () => {
    fc.assert(
      fc.property(rise, (h) => {
        const { figures } = stepLayout({ totalRise: asText(h), tread: '11 in', rules: 'dwelling' });
        // 100 mm, the lesser name of 4 in, is 1600/25.4 sixteenths, and 7-3/4 in is 124: in whole numbers.
        const allowed = Array.from({ length: 200 }, (_, i) => i + 1).filter(
          (n) => 16_000 * n <= 254 * h && h <= 124 * n,
        );
        const found = figures.layouts.map(({ risers }) => risers.toNumber('each')).sort((a, b) => a - b);
        expect(found).toEqual(allowed);
      }),
    );
  });

  it('marks a pole that ends on the total and whose risers differ by 1/16 in at most', () => {
    fc.assert(
      fc.property(rise, (h) => {
        const { figures } = stepLayout({ totalRise: asText(h), tread: '11 in' });
        const last = figures.marks.at(-1);
        if (!last) return;
        expect(last.mark.compareTo(length(asText(h)))).toBe(0);
        expect(figures.markedDifference.greaterThan(length('1/16 in'))).toBe(false);
        figures.marks.forEach(({ height, mark }) => {
          expect(mark.minus(height).abs().greaterThan(length('1/32 in'))).toBe(false);
        });
      }),
    );
  });

  it('gives back the total: risers and the fall of the landing', () => {
    fc.assert(
      fc.property(
        rise,
        fc.integer({ min: 24, max: 120 }),
        fc.integer({ min: 0, max: 30 }),
        (h, d, permille) => {
          const input = {
            totalRise: asText(h + 80),
            tread: '11 in',
            landing: `${d} in`,
            pitch: { value: permille, unit: 'mm/m' },
          };
          const { figures, working } = stepLayout(input);
          for (const { riser, risers } of figures.layouts) {
            expect(
              riser
                .times(risers)
                .plus(figures.landingFall)
                .compareTo(length(asText(h + 80))),
            ).toBe(0);
          }
          for (const step of working) expect(disagreement(step), JSON.stringify(step)).toBeLessThan(6e-3);
        },
      ),
    );
  });

  it('takes the threshold off a rise to the sill, and nothing else changes', () => {
    fc.assert(
      fc.property(rise, fc.integer({ min: 1, max: 48 }), (h, o) => {
        const door = { swing: 'in', width: '36 in', threshold: asText(o) } as const;
        const input = { tread: '11 in', landing: '5 ft', door } as const;
        const toSill = stepLayout({ ...input, totalRise: asText(h + o) });
        const toLanding = stepLayout({ ...input, totalRise: asText(h), riseTo: 'landing' });
        expect(toSill.figures.riserTotal.compareTo(toLanding.figures.riserTotal)).toBe(0);
        expect(toSill.cautions.map(({ code }) => code)).toEqual(toLanding.cautions.map(({ code }) => code));
        expect(toSill.assumed.map(({ name }) => name)).toContain('riseTo');
      }),
      { numRuns: runs(60) },
    );
  });

  it('says the same in both unit systems', () => {
    fc.assert(
      fc.property(rise, fc.constantFrom('dwelling' as const, 'public' as const), (h, rules) => {
        const codes = (totalRise: string, tread: string, landing: string): string =>
          stepLayout({ totalRise, tread, landing, rules })
            .cautions.map(({ code }) => code)
            .join();
        const mm = `${((h / 16 + 1) * 25.4).toFixed(6)} mm`;
        expect(codes(mm, '279.4 mm', '1219.2 mm')).toBe(codes(asText(h + 16), '11 in', '4 ft'));
      }),
      { numRuns: runs(60) },
    );
  });

  it('reads its limits in the units of the job', () => {
    const { cautions } = stepLayout({ totalRise: '900 mm', risers: 4, tread: '240 mm', landing: '0.8 m' });
    const texts = cautions.map((one) => `${wordsText(one)} ${one.limit?.format() ?? ''}`);
    expect(texts.find((text) => text.startsWith('open sides'))).toMatch(/more than 762 mm/);
    expect(cautions.filter(({ limit }) => limit?.dimension === 'length').length).toBeGreaterThan(2);
    for (const { limit } of cautions)
      if (limit?.dimension === 'length') expect(limit.format()).toMatch(/ mm$/);
  });

  it('asks for no less the higher it goes', () => {
    const asked = (inches: number, rules: 'dwelling' | 'public'): string[] =>
      stepLayout({ totalRise: `${inches} in`, tread: '11 in', rules, pitch: '2%' }).cautions.map(
        ({ code }) => code,
      );
    for (const rules of ['dwelling', 'public'] as const) {
      for (const code of ['handrail', 'guard', 'flight-too-tall', 'frost-depth']) {
        const from = Array.from({ length: 160 }, (_, i) => i + 14).filter((h) =>
          asked(h, rules).includes(code),
        );
        const first = from[0] ?? 0;
        expect(from, `${code} ${rules}`).toEqual(Array.from({ length: 174 - first }, (_, i) => first + i));
      }
    }
    expect(asked(30, 'dwelling')).not.toContain('guard');
    expect(asked(31, 'dwelling')).toContain('guard');
  });

  it('names the code whose limits it goes by', () => {
    const sentences = (rules: 'dwelling' | 'accessible' | 'public'): string[] =>
      stepLayout({ totalRise: '16 in', risers: 2, tread: '9 in', rules }).cautions.map(
        (one) => `${wordsText(one)} (${one.source.title})`,
      );
    expect(sentences('dwelling').filter((text) => /dwelling/.test(text))).toHaveLength(2);
    for (const rules of ['accessible', 'public'] as const) {
      expect(sentences(rules).filter((text) => /dwelling|Residential/.test(text))).toEqual([]);
    }
  });

  it('ranks by walking rules met, then by nearness to 25 in', () => {
    fc.assert(
      fc.property(rise, (h) => {
        const { layouts } = stepLayout({ totalRise: asText(h), tread: '11 in' }).figures;
        for (let i = 1; i < layouts.length; i += 1) {
          const before = layouts[i - 1]?.walkingRules.length ?? 0;
          expect(layouts[i]?.walkingRules.length ?? 0).toBeLessThanOrEqual(before);
        }
      }),
    );
  });

  it.each([
    ['at the lower end of all three', '14 in', '10 in', ['2r + t', 'r + t', 'r × t']],
    ['just under all three', '14 in', '9.99 in', []],
    ['at the upper end of the sums', '12 in', '13 in', ['2r + t', 'r + t', 'r × t']],
    ['just over the sums', '12 in', '13.01 in', ['r × t']],
    ['at the upper end of the product', '12.8 in', '12.5 in', ['r + t', 'r × t']],
    ['just over the product', '12.8 in', '12.51 in', ['r + t']],
  ])('meets the walking rules %s', (_, totalRise, tread, met) => {
    expect(stepLayout({ totalRise, risers: 2, tread }).figures.best?.walkingRules).toEqual(met);
  });

  const door = (width: string, threshold?: string) =>
    ({ door: { swing: 'out', width, ...(threshold ? { threshold } : {}) }, riseTo: 'landing' }) as const;

  it.each<[string, Partial<Parameters<typeof stepLayout>[0]>, string[]]>([
    ['nothing to say', {}, []],
    ['treads of 1:48', { pitch: '1:48' }, []],
    ['treads over 1:48', { pitch: '2.09%' }, ['treads-too-steep']],
    ['treads of 1%', { pitch: '1%' }, []],
    ['treads under 1%', { pitch: '0.99%' }, ['treads-hold-water']],
    ['treads of 10 in', { tread: '10 in' }, []],
    ['treads under 10 in', { tread: '9.99 in' }, ['tread-too-narrow']],
    ['treads of 11 in in public', { tread: '11 in', rules: 'public' }, ['handrail']],
    ['treads under 11 in in public', { tread: '10.9 in', rules: 'public' }, ['tread-too-narrow', 'handrail']],
    ['one riser has no tread', { totalRise: '7 in', risers: 1, tread: '9 in' }, []],
    ['risers of 4 in', { totalRise: '8 in' }, []],
    ['risers under 100 mm', { totalRise: '7.87 in' }, ['riser-too-low']],
    ['three risers', { totalRise: '21 in', risers: 3 }, ['frost-depth']],
    ['four risers', { totalRise: '28 in', risers: 4 }, ['frost-depth', 'handrail']],
    ['a landing of 36 in', { landing: '36 in' }, []],
    ['a landing between 900 mm and 36 in', { landing: '35.5 in' }, []],
    ['a landing under both', { landing: '35.4 in' }, ['landing-too-short']],
    ['a door that leaves 12 in', { landing: '48 in', ...door('36 in') }, []],
    ['a door that leaves less', { landing: '47.8 in', ...door('36 in') }, ['door-swings-over-steps']],
    ['a threshold of 1-1/2 in', { landing: '48 in', ...door('36 in', '1.5 in') }, []],
    ['a threshold over it', { landing: '48 in', ...door('36 in', '1.51 in') }, ['threshold-too-high']],
    ['a threshold of 1 in', { landing: '48 in', ...door('36 in', '1 in') }, []],
    ['a threshold under it', { landing: '48 in', ...door('36 in', '0.98 in') }, ['little-sill-clearance']],
    ['ground 30 in down', { sideDrop: '30 in' }, []],
    ['ground farther down', { sideDrop: '30.1 in' }, ['guard']],
    ['ground higher than the foot', { sideDrop: '6 in' }, []],
    ['risers 3/8 in apart', { measured: ['7 in', '7.1875 in', '7.375 in'] }, []],
    ['risers farther apart', { measured: ['7 in', '7.18 in', '7.38 in'] }, ['uneven-risers']],
    ['neighbors 3/16 in apart', { measured: ['7 in', '7.1875 in'] }, []],
    ['neighbors farther apart', { measured: ['7 in', '7.2 in'] }, ['uneven-risers']],
    ['the same, going down', { measured: ['7.2 in', '7 in'] }, ['uneven-risers']],
  ])('cautions at the bounds of its rules: %s', (_, changed, codes) => {
    const { cautions } = stepLayout({
      totalRise: '14 in',
      risers: 2,
      tread: '11 in',
      pitch: '2%',
      ...changed,
    });
    expect(cautions.map(({ code }) => code).sort()).toEqual([...codes].sort());
  });

  it.each([
    ['147 in', 'dwelling', 21, []],
    ['147.1 in', 'dwelling', 21, ['flight-too-tall']],
    ['144 in', 'public', 24, []],
    ['144.1 in', 'public', 24, ['flight-too-tall']],
  ] as const)('parts a flight of more than its most: %s, %s', (totalRise, rules, risers, codes) => {
    const { cautions } = stepLayout({ totalRise, rules, risers, tread: '11 in' });
    expect(cautions.map(({ code }) => code).filter((code) => code === 'flight-too-tall')).toEqual(codes);
  });

  it('asks for a handrail on one side of a dwelling and on both in public', () => {
    const said = (rules: 'dwelling' | 'accessible' | 'public'): string =>
      stepLayout({ totalRise: '28 in', tread: '11 in', rules })
        .cautions.filter(({ code }) => code === 'handrail')
        .map((caution) => wordsText(caution))
        .join();
    expect(said('dwelling')).toMatch(/on one side/);
    expect(said('accessible')).toMatch(/on both sides/);
    expect(said('public')).toMatch(/on both sides/);
  });

  it('lists what it takes for granted, and only that', () => {
    const names = (input: Parameters<typeof stepLayout>[0]): string[] =>
      stepLayout(input).assumed.map(({ name }) => name);
    const settled = { rules: 'dwelling', pitch: '2%', landing: '4 ft' } as const;
    expect(names({ totalRise: '14 in' })).toEqual(['tread', 'rules', 'pitch', 'landing']);
    expect(names({ ...settled, totalRise: '14 in', tread: '11 in' })).toEqual([]);
    expect(names({ ...settled, totalRise: '14 in', totalRun: '11 in' })).toEqual([]);
    const closed = { swing: 'in', width: '36 in', threshold: '1 in' } as const;
    expect(names({ ...settled, totalRise: '14 in', tread: '11 in', door: closed })).toEqual(['riseTo']);
    expect(names({ ...settled, totalRise: '14 in', tread: '11 in', door: closed, riseTo: 'sill' })).toEqual(
      [],
    );
  });

  it('has no tread behind a single riser, however the treads are given', () => {
    for (const treads of [{ tread: '11 in' }, { totalRun: '11 in' }]) {
      const { best } = stepLayout({ totalRise: '7 in', risers: 1, ...treads }).figures;
      expect([best?.riserForm, best?.firstRiserForm, best?.riser].map((l) => l?.format())).toEqual(
        Array(3).fill('7 in'),
      );
      expect(best?.treads.format()).toBe('0 each');
      expect(best?.run.sign()).toBe(0);
    }
  });

  it('shares a run out over the treads', () => {
    const { best } = stepLayout({ totalRise: '21 in', risers: 3, totalRun: '24 in' }).figures;
    expect([best?.tread, best?.run].map((l) => l?.format('in'))).toEqual(['12 in', '24 in']);
  });

  it.each([
    [{ totalRise: '2 in', landing: '10 ft' }, 'landing'],
    [{ totalRise: '12 in', risers: 3, tread: '10 ft', pitch: '5%' }, 'pitch'],
    [{ totalRise: '3 in', risers: 3, tread: '6 ft' }, 'tread'],
    [{ totalRise: '14 in', riseTo: 'sill' }, 'door.threshold'],
    [{ totalRise: '6 in', door: { swing: 'in', width: '3 ft', threshold: '7 in' } }, 'door.threshold'],
    [{ totalRise: '6 in', door: { swing: 'in', width: '3 ft', threshold: '6 in' } }, 'door.threshold'],
    [{ totalRise: '100 ft' }, 'totalRise'],
  ])('refuses %j at %s', (input, path) => {
    const attempt = stepLayout.attempt(input as Parameters<typeof stepLayout>[0]);
    expect(attempt.ok ? [] : attempt.error.issues.map((issue) => issue.path)).toEqual([path]);
  });

  // Treads of a dwelling are 10 in at least (IRC R311.7.5.2): three risers share 19 in into two of 9-1/2 in.
  it('takes fewer risers before treads that are too narrow, and says what run they take', () => {
    const { figures } = stepLayout({ totalRise: '15 in', totalRun: '19 in', pitch: '1%' });
    expect(figures.best?.risers.format()).toBe('2 each');
    expect(figures.best?.tread.format()).toBe('19 in');
    // 54 in ÷ 7-3/4 in takes 7 risers, whose six treads take 60 in.
    const short = stepLayout({ totalRise: '54 in', totalRun: '40 in', pitch: '1%' });
    const narrow = short.cautions.find(({ code }) => code === 'tread-too-narrow');
    expect(narrow && wordsText(narrow)).toBe(
      'in this run the treads come out narrower than 10 in, which is not allowed in most dwellings; people miss them: with the fewest risers they take 60 in. Check the local code',
    );
    const codes = (totalRun: string) =>
      stepLayout({ totalRise: '54 in', totalRun, pitch: '1%' }).cautions.map(({ code }) => code);
    expect(codes('59.9 in')).toContain('tread-too-narrow');
    expect(codes('60 in')).not.toContain('tread-too-narrow');
  });

  const GENERAL = { rules: 'approved-document-k-general', tread: '280 mm' } as const;

  it.each([
    [
      { totalRise: '7-1/2 in', rules: 'accessible', tread: '11 in' },
      'with 1 it is 7 in at most, and with 2 it is 8 in at least',
      ['7 in', '8 in'],
    ],
    [
      { totalRise: '702 mm', ...GENERAL },
      'with 4 it is 680 mm at most, and with 5 it is 750 mm at least',
      ['680 mm', '750 mm'],
    ],
    [
      { totalRise: '3 in', rules: 'accessible', tread: '11 in' },
      'less than a single riser of these rules, 4 in at least',
      ['4 in'],
    ],
  ] as const)('says for %j which rises there are, and finds steps in those', (input, said, rises) => {
    const { cautions, figures } = stepLayout(input);
    expect(figures.verdict).toBe('none fits');
    expect(cautions.map((one) => wordsText(one)).join()).toContain(said);
    for (const totalRise of rises)
      expect(stepLayout({ ...input, totalRise }).figures.verdict).toBe('steps found');
  });
});

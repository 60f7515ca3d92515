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
});

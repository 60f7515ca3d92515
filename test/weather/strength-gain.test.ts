/** Strength by age: there and back by each curve, and what is published beside them. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { maturity, strengthGain, time } from '../../src/index';
import { runs } from '../support/effort';

const cements = fc.constantFrom('high-early', 'ordinary', 'slow');
const EN = { 'high-early': 0.2, ordinary: 0.25, slow: 0.38 } as const;

const share = (cement: 'high-early' | 'ordinary', days: number): number =>
  strengthGain({ strength: '1000 psi', cement, ages: [`${days} day`] }).figures.atAges?.[0]?.byAci?.toNumber(
    'psi',
  ) ?? 0;

describe('the curves', () => {
  it('are the curve of the model code in floating numbers, and grow', () => {
    fc.assert(
      fc.property(cements, fc.integer({ min: 1, max: 9000 }), (cement, tenths) => {
        const ages = [`${tenths / 10} day`, `${tenths / 10 + 1} day`];
        const [now, later] = strengthGain({ strength: '1000 psi', cement, ages }).figures.atAges ?? [];
        const found = now?.byModelCode.toNumber('psi') ?? 0;
        const wanted = 1000 * Math.exp(EN[cement] * (1 - Math.sqrt(280 / tenths)));
        const grows = later && now && later.byModelCode.greaterThan(now.byModelCode);
        return Math.abs(found - wanted) < 1e-8 && grows === true;
      }),
      { numRuns: runs(60) },
    );
  });

  it('come to the share that a time was found for', () => {
    fc.assert(
      fc.property(
        cements,
        fc.integer({ min: 5, max: 100 }),
        fc.integer({ min: 0, max: 40 }),
        (cement, p, t) => {
          const job = { strength: '100 MPa', cement, curedAt: `${t} degC` } as const;
          const [use] = strengthGain({ ...job, uses: [{ use: 'walk', share: `${p}%` }] }).figures.uses ?? [];
          if (!use) return false;
          const { atAges } = strengthGain({ ...job, ages: [use.from, use.to] }).figures;
          const found =
            atAges?.flatMap(({ byAci, byModelCode }) => [byAci ?? byModelCode, byModelCode]) ?? [];
          const near = found.filter((f) => Math.abs(f.toNumber('MPa') - p) < 1e-9);
          return near.length >= 2 && !use.from.greaterThan(use.to);
        },
      ),
      { numRuns: runs(60) },
    );
  });

  it('have high-early cement ahead by about what a magazine prints', () => {
    // 150% at 3 days, 120% at 7, 110% at 28, of the strength of ordinary cement (Concrete Construction).
    for (const [days, printed] of [
      [3, 1.5],
      [7, 1.2],
      [28, 1.1],
    ] as const)
      expect(
        Math.abs((1.1 * share('high-early', days)) / share('ordinary', days) / printed - 1),
      ).toBeLessThan(0.06);
  });

  it('count an age at a temperature as maturity does', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 60 }), (t) => {
        const { ageFactor } = strengthGain({ strength: '30 MPa', curedAt: `${t} degC` }).figures;
        const { equivalentAge } = maturity({
          history: [
            { at: '0 h', temperature: `${t} degC` },
            { at: '6 h', temperature: `${t} degC` },
          ],
          activation: '4000 degC',
        }).figures;
        return time('6 h').times(ageFactor).compareTo(equivalentAge) === 0;
      }),
      { numRuns: runs(20) },
    );
  });
});

describe('a use that nobody gives a share for', () => {
  it('takes the usual one, told as assumed, and the same as that share given openly', () => {
    for (const use of ['strip', 'saw', 'walk', 'drive', 'load', 'backfill'] as const) {
      const told = strengthGain({ strength: '30 MPa', uses: [{ use }] });
      const [share] = told.assumed.filter(({ name }) => name === 'uses[0].share');
      expect(share?.source.kind).toBe('common-practice');
      const [own] = told.figures.uses ?? [];
      if (!own) throw new Error(use);
      const open = strengthGain({ strength: '30 MPa', uses: [{ use, share: own.share }] });
      expect(open.figures).toEqual(told.figures);
      expect(open.assumed.some(({ name }) => name.includes('share'))).toBe(false);
    }
  });
});

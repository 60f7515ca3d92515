/** No draw within the tolerances leaves the bounds; the chance is that of the normal distribution. */
import fc from 'fast-check';
import { erf } from 'mathjs';
import { describe, expect, it } from 'vitest';
import {
  evaporationRate,
  excavation,
  InputError,
  length,
  slabVolume,
  stepVolume,
  tolerances,
  truckPlan,
  wallVolume,
} from '../../src/index';
import { chanceAbove } from '../../src/opinion/normal';
import { Decimal } from '../../src/quantity/decimal';
import { sentenceOf } from '../../src/quantity/words';
import { runs } from '../support/effort';

const SLAB = { outline: { shape: 'rectangle', length: '28 ft', width: '18 ft' }, thickness: '4 in' } as const;

const figureOf = (
  measures: Record<string, string>,
  figure = 'volume',
  ordered?: string,
): ReturnType<typeof tolerances>['figures'][number] => {
  const options = { figures: [figure], ...(ordered ? { ordered: { [figure]: ordered } } : {}) };
  const [first] = tolerances(slabVolume, SLAB, measures, options).figures;
  return first ?? expect.unreachable();
};

describe('tolerances', () => {
  it('bound a figure at the ends of its measurements', () => {
    const own = figureOf({ 'outline.length': '1/2 in', 'outline.width': '1/2 in', thickness: '3/8 in' });
    // (336 ± 1/2) × (216 ± 1/2) × (4 ± 3/8) in3.
    expect(own.low.toNumber('in3')).toBeCloseTo(335.5 * 215.5 * 3.625, 6);
    expect(own.high.toNumber('in3')).toBeCloseTo(336.5 * 216.5 * 4.375, 6);
    expect(own.bounds).toBe('corners');
    expect(own.contributions.map(({ measure }) => measure)).toEqual([
      'thickness',
      'outline.width',
      'outline.length',
    ]);
    expect(own.contributions.reduce((sum, { share }) => sum + share.toNumber('%'), 0)).toBeCloseTo(100, 9);
  });

  it('say which measurement to take again', () => {
    const all = tolerances(slabVolume, SLAB, { 'outline.length': '1/2 in', thickness: '3/8 in' });
    expect(all.measureAgain).toBe('thickness');
    expect(sentenceOf(all.says)).toBe(
      'volume lies between 5.63 yd3 and 6.82 yd3; most of that comes from thickness.',
    );
    expect(all.figures.map(({ figure }) => figure)).toContain('perimeter');
  });

  it('tell the chance of running short by the stated model', () => {
    // Thickness alone: a standard deviation of 3/16 in, or 0.29167 yd3.
    const own = figureOf({ thickness: '3/8 in' }, 'volume', '6.5 yd3');
    const z = (6.5 - 504 / 81) / ((504 * 3) / 16 / 12 / 27);
    expect(own.shortChance?.toNumber('%')).toBeCloseTo(50 * (1 - erf(z / Math.SQRT2)), 3);
    expect(figureOf({ thickness: '3/8 in' }, 'volume', '60 yd3').shortChance?.toNumber('%')).toBe(0);
    expect(figureOf({ thickness: '3/8 in' }, 'volume', '1 yd3').shortChance?.toNumber('%')).toBe(100);
  });

  it('never bound less than what may be', () => {
    const share = fc.double({ min: -1, max: 1, noNaN: true });
    const draw = fc.record({ a: share, b: share, c: share, d: share, t: share });
    const sides = { length: '28 ft', width: '18 ft', notchLength: '10 ft', notchWidth: '6 ft' };
    const ell = { outline: { shape: 'L', ...sides }, thickness: '4 in' } as const;
    const reach = { length: 0.5, width: 0.5, notchLength: 1, notchWidth: 1 };
    const measures = {
      ...Object.fromEntries(Object.entries(reach).map(([name, n]) => [`outline.${name}`, `${n} in`])),
      thickness: '3/8 in',
    };
    const { figures } = tolerances(slabVolume, ell, measures, { figures: ['volume', 'area', 'perimeter'] });
    const moved = (text: string, by: number): string => `${(length(text).toNumber('in') + by).toFixed(9)} in`;
    fc.assert(
      fc.property(draw, ({ a, b, c, d, t }) => {
        const outline = {
          shape: 'L',
          length: moved('28 ft', a * 0.5),
          width: moved('18 ft', b * 0.5),
          notchLength: moved('10 ft', c),
          notchWidth: moved('6 ft', d),
        } as const;
        const result = slabVolume({ outline, thickness: moved('4 in', t * 0.375) });
        for (const { figure, low, high, bounds } of figures) {
          const q = result.figures[figure as 'volume'];
          expect(bounds).toBe('corners');
          expect(q.compareTo(low as typeof q)).toBeGreaterThanOrEqual(0);
          expect(q.compareTo(high as typeof q)).toBeLessThanOrEqual(0);
        }
      }),
      { numRuns: runs(400) },
    );
  });

  it('refuse what they cannot read', () => {
    const codeOf = (run: () => unknown): string => {
      try {
        run();
      } catch (error) {
        if (error instanceof InputError) return error.issues[0]?.code ?? '';
        throw error;
      }
      return '';
    };
    expect(codeOf(() => tolerances(slabVolume, SLAB, { thick: '1 in' }))).toBe('unknown-name');
    expect(codeOf(() => tolerances(slabVolume, SLAB, {}))).toBe('too-few');
    expect(codeOf(() => tolerances(slabVolume, SLAB, { thickness: '1 lb' }))).toBe('wrong-dimension');
    expect(codeOf(() => tolerances(slabVolume, SLAB, undefined as never))).toBe('wrong-type');
    expect(codeOf(() => tolerances(slabVolume, SLAB, { thickness: '1 in' }, { figures: ['x'] }))).toBe(
      'unknown-name',
    );
    expect(codeOf(() => tolerances(truckPlan, {} as never, { thickness: '1 in' }))).toBe('missing');
  });
});

describe('a plus or minus that goes beyond what can be', () => {
  it('ends at nothing: the low is that of no margin', () => {
    const input = {
      kind: 'pit',
      outline: { shape: 'rectangle', length: '40 ft', width: '24 ft' },
      depth: '14 in',
      margin: '1 ft',
    } as const;
    const [own] = tolerances(excavation, input, { margin: '15 in' }, { figures: ['bankVolume'] }).figures;
    // 40 × 24 ft without a margin, and 44.5 × 28.5 ft with one of 27 in, 14 in deep.
    expect(own?.low.toNumber('ft3' as never)).toBeCloseTo((960 * 14) / 12, 6);
    expect(own?.high.toNumber('ft3' as never)).toBeCloseTo((44.5 * 28.5 * 14) / 12, 6);
    expect(own?.bounds).toBe('corners');
  });

  it('ends next to nothing where there must be something', () => {
    const opening = { width: '900 mm', height: '600 mm' };
    const wall = {
      kind: 'straight',
      length: '14.5 m',
      height: '1.2 m',
      thickness: '200 mm',
      openings: [opening],
    };
    const measures = { 'walls[0].openings[0].width': '1000 mm' };
    const [own] = tolerances(wallVolume, { walls: [wall] } as never, measures, {
      figures: ['volume'],
    }).figures;
    // Without the opening 3.48 m3, with one of 1.9 m 3.252.
    expect(own?.high.toNumber('m3' as never)).toBeCloseTo(3.48, 5);
    expect(own?.low.toNumber('m3' as never)).toBeCloseTo(3.252, 5);
  });

  it('ends at all of it for a share', () => {
    const input = {
      airTemperature: '30 degC',
      humidity: '90%',
      concreteTemperature: '27 degC',
      wind: '20 km/h',
    } as const;
    const [own] = tolerances(evaporationRate, input, { humidity: '20%' }, { figures: ['rate'] }).figures;
    const wet = evaporationRate({ ...input, humidity: '100%' }).figures.rate;
    expect(own?.low.compareTo(wet as never)).toBe(0);
  });

  it('may be a share of what was measured', () => {
    const own = figureOf({ thickness: '10%' });
    // 336 × 216 × (4 ± 0.4) in3.
    expect(own.low.toNumber('in3')).toBeCloseTo(336 * 216 * 3.6, 6);
    expect(own.high.toNumber('in3')).toBeCloseTo(336 * 216 * 4.4, 6);
    expect(own.contributions[0]?.tolerance.format('in' as never)).toBe('0.4 in');
    // Of a share 5% are 5 of a hundred: 1.25 ± 0.05.
    const pit = { kind: 'pit', outline: SLAB.outline, depth: '9 in', swell: '25%' } as const;
    const [factor] = tolerances(excavation, pit, { swell: '5%' }, { figures: ['swellFactor'] }).figures;
    expect([factor?.low.format(), factor?.high.format()]).toEqual(['1.2:1', '1.3:1']);
  });

  it('say why nothing changes, and name nothing to take again where nothing moves a figure', () => {
    const none = tolerances(slabVolume, SLAB, { thickness: '0 in' });
    expect(none.figures).toEqual([]);
    expect(sentenceOf(none.says)).toBe(
      'The plus or minus of every measurement is nothing, so that no figure changes.',
    );
    const other = tolerances(slabVolume, SLAB, { thickness: '1/2 in' }, { figures: ['perimeter'] });
    expect(other.measureAgain).toBeUndefined();
    expect(sentenceOf(other.says)).toBe('perimeter does not change with these measurements.');
    const square = { ...SLAB, outline: { ...SLAB.outline, width: '28 ft' } } as const;
    const alike = tolerances(slabVolume, square, { 'outline.length': '1 in', 'outline.width': '1 in' });
    expect(sentenceOf(alike.says)).toContain('; no more of that comes from ');
  });

  it('may be a plain count', () => {
    const steps = { risers: 4, rise: '7 in', tread: '11 in', width: '5 ft' } as const;
    const [own] = tolerances(stepVolume, steps, { risers: 1 }, { figures: ['totalRise'] }).figures;
    expect([own?.low.format('in' as never), own?.high.format('in' as never)]).toEqual(['21 in', '35 in']);
  });
});

describe('the normal distribution', () => {
  it('is that of a general-purpose library', () => {
    for (let z = -6.9; z < 7; z += 0.1)
      expect(chanceAbove(new Decimal(z)).toNumber()).toBeCloseTo((1 - erf(z / Math.SQRT2)) / 2, 5);
    expect(chanceAbove(new Decimal(9)).toNumber()).toBe(0);
    expect(chanceAbove(new Decimal(-9)).toNumber()).toBe(1);
  });
});

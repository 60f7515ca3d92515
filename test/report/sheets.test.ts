/** Sheets: what a crew reads, whatever was figured. */
import { describe, expect, it } from 'vitest';
import {
  bagCount,
  concreteOrder,
  evaporationRate,
  excavation,
  jointLayout,
  levelNotes,
  rebarLayout,
  slabVolume,
} from '../../src/index';
import { unitsOf } from '../../src/quantity/units';
import { markdownSheet, textSheet, worksheet } from '../../src/report/index';
import { runs } from '../support/effort';
import { listening } from '../support/phrases';
import { outcomeOf, readVectors, type Vector } from '../support/vectors';

const all = readVectors().map(({ vector }) => vector);
/** A different share of the vectors each, spread over all calculations. */
const share = (count: number, from: number): Vector[] => {
  const step = Math.max(1, Math.floor(all.length / runs(count)));
  return all.filter((_, i) => i % step === from % step);
};

const slab = { outline: { shape: 'rectangle', length: "28'", width: "18'" }, thickness: '6"' } as const;

/** What stands outside of double brackets. */
function outside(text: string): string {
  let [depth, out] = [0, ''];
  for (const sign of text) {
    if (sign === '⟦') depth += 1;
    if (depth === 0) out += sign;
    if (sign === '⟧') {
      depth -= 1;
      out += ' ';
    }
  }
  return out;
}

/** Unit ids are letters and numbers: what a unit may be called is in the one table of units. */
const UNITS = (
  [
    'length',
    'area',
    'volume',
    'mass',
    'density',
    'mass-per-length',
    'mass-per-area',
    'slope',
    'angle',
    'time',
  ] as const
)
  .flatMap((d) => unitsOf(d))
  .concat(unitsOf('speed') as never, unitsOf('force') as never, unitsOf('pressure') as never)
  .concat(unitsOf('volume-rate') as never, unitsOf('temperature') as never, ['USD', 'EUR'] as never)
  .flatMap((unit) => String(unit).split(/[^A-Za-z]+/));
const FUNCTIONS = ['min', 'max', 'ceil', 'floor', 'sqrt', 'tan', 'atan', 'hypot', 'sin', 'cos', 'level'];

/** Every text in a figure. */
function texts(figure: unknown): string[] {
  if (typeof figure === 'string') return [figure];
  return typeof figure === 'object' && figure !== null
    ? Object.entries(figure).flatMap(([k, v]) => [k, ...texts(v)])
    : [];
}

describe('a sheet', () => {
  it('has no line of more than 100 characters, in any detail and in either system', () => {
    for (const vector of share(120, 0)) {
      const tried = outcomeOf(vector);
      if (!tried.ok) continue;
      for (const detail of ['full', 'crew'] as const) {
        for (const system of ['customary', 'metric'] as const) {
          const sheet = worksheet(tried.result, { input: vector.input, detail, system });
          expect(
            sheet.split('\n').filter((line) => line.length > 100),
            vector.id,
          ).toEqual([]);
          expect(sheet, vector.id).not.toMatch(/and \d+ more\b|undefined|\[object|\beach\b(?=[;,]|$)/);
        }
      }
    }
  });

  it('goes through the language, word by word', () => {
    const language = listening(new Set(), (english) => `⟦${english}⟧`);
    for (const vector of share(150, 1)) {
      const tried = outcomeOf(vector);
      if (!tried.ok) continue;
      const [sheet = ''] = worksheet(tried.result, { input: vector.input, language }).split('⟦Sources⟧');
      const known = new Set([
        ...UNITS,
        ...FUNCTIONS,
        ...texts([vector.input, tried.result.figures]).flatMap((text) => text.split(/[^A-Za-z]+/)),
        ...tried.result.working.flatMap(({ formula }) => formula.split(/[^A-Za-z]+/)),
      ]);
      const left = outside(sheet).match(/[A-Za-z]{3,}/g) ?? [];
      expect(
        left.filter((word) => !known.has(word)),
        vector.id,
      ).toEqual([]);
    }
  });

  it('starts with what was put in, as it was written', () => {
    const lines = worksheet(slabVolume(slab), { input: slab, job: 'Bakery', date: 'May 4' }).split('\n');
    expect(lines.slice(0, 7)).toEqual([
      'Bakery, May 4',
      'Slab volume',
      'Put in',
      "  outline    rectangle 28' × 18'",
      '  thickness  6"',
      '',
      'Figures',
    ]);
  });

  it('tells each caution and each source once, the gravest first', () => {
    const dig = (depth: string) =>
      excavation({ kind: 'pit', outline: slab.outline, depth, swell: '30%' } as never);
    const parts = [{ name: 'Ground', results: [dig('12 in'), dig('6 ft'), dig('14 in')] }];
    const sheet = textSheet('Yard', parts);
    expect(sheet.match(/buried lines/g)).toHaveLength(1);
    expect(sheet.match(/Geometry and the definitions/g)).toHaveLength(1);
    const severities = [...sheet.matchAll(/^ {2}(Stop|Warning|Note):/gm)].map(([, one]) => one);
    expect(severities).toEqual([...severities].sort((a, b) => rank(a) - rank(b)));
    expect(textSheet('Yard', parts, { detail: 'crew' })).not.toContain('How it was figured');
    expect(markdownSheet('Yard', parts).match(/buried lines/g)).toHaveLength(1);
  });

  const rank = (severity: string | undefined): number => ['Stop', 'Warning', 'Note'].indexOf(severity ?? '');

  it('leaves names as they were given', () => {
    const vector = all.find(({ calculation, expect: { error } }) => calculation === 'level-notes' && !error);
    const result = levelNotes(vector?.input as never);
    const sheet = worksheet(result, { input: vector?.input });
    for (const name of Object.keys(result.figures.elevations)) expect(sheet).toContain(name);
  });

  it('has fractions where feet and inches were typed, and tenths where tenths were', () => {
    const taped = { ...slab, thickness: '4 3/8 in' };
    expect(worksheet(slabVolume(taped), { input: taped })).not.toContain('4.375');
    const sheet = worksheet(jointLayout({ outline: slab.outline, thickness: '7 in', spacing: '12 ft' }), {
      feet: 'fractions',
    });
    expect(sheet).toContain('1-3/4 in');
    expect(sheet).not.toContain('1.75 in');
  });

  it('has inches without an end as fractions of a tape, though none were typed', () => {
    const order = {
      volume: '6 yd3',
      allowance: '8%',
      increment: '0.25 yd3',
      truckCapacity: '9 yd3',
    } as const;
    const line = {
      length: '100 ft',
      bore: '2 in',
      aggregateSize: '0.75 in',
      hopper: '0 yd3',
      pushedOut: false,
    };
    const input = { ...order, pumpLine: line };
    const sheet = worksheet(concreteOrder(input), { input }).replace(/\s+/g, ' ');
    // A third of two inches.
    expect(sheet).toContain('up to a third of it, 21/32 in:');
    expect(sheet).toContain('0.75 in');
  });

  it('shows lists of groups as tables, and small volumes in feet', () => {
    const mat = worksheet(rebarLayout({ length: '28 ft', width: '18 ft', bar: '#4', spacing: '18 in' }));
    expect(mat).toMatch(/mark {2,}layer {2,}use/);
    const small = { ...slab, outline: { shape: 'circle', diameter: '4 ft' } as const };
    expect(worksheet(slabVolume(small))).toContain('volume     6.28 ft3');
  });

  it('works a small job in the small unit that its sheet tells, and what is sold by the yard in yards', () => {
    const order = { increment: '0.25 yd3', truckCapacity: '9 yd3', pour: 'slab' } as const;
    const little = worksheet(concreteOrder({ volume: '8 ft3', allowance: '10%', ...order }));
    expect(little).toContain('with allowance: W = V × (1 + a) = 8 ft3 × (1 + 10%) = 8.8 ft3');
    const more = worksheet(concreteOrder({ volume: '2 yd3', allowance: '10%', ...order }));
    expect(more).toContain('W = V × (1 + a) = 2 yd3 × (1 + 10%) = 2.20 yd3');
    const metric = worksheet(
      slabVolume({
        outline: { shape: 'rectangle', length: '1 m', width: '500 mm' },
        thickness: '100 mm',
        baseTolerance: '10 mm',
      }),
    );
    expect(metric).toContain('50 L + 5 L = 55 L');
    const pad = slabVolume({
      outline: { shape: 'rectangle', length: '5 ft', width: '4 ft' },
      thickness: '4 in',
    });
    const bags = worksheet(bagCount({ volume: pad.figures.volume, allowance: '10%', bag: '80 lb' }));
    expect(bags).toMatch(/ceil\(7\.33333333333333\d* ft3 ÷ 0\.6 ft3\) = 13/);
  });

  it('bounds the exact column of Markdown', () => {
    const round = slabVolume({ outline: { shape: 'circle', diameter: '12 ft' }, thickness: '4 in' });
    for (const line of markdownSheet('Pad', [{ name: 'Pad', results: [round] }]).split('\n')) {
      if (line.startsWith('| volume')) expect(line.length).toBeLessThan(60);
    }
  });

  it.each([
    [
      { airTemperature: '86 degF', humidity: '60%', concreteTemperature: '70 degF', wind: '12 mph' },
      'lb/ft2/h',
    ],
    [
      { airTemperature: '30 degC', humidity: '60%', concreteTemperature: '21 degC', wind: '20 km/h' },
      'kg/m2/h',
    ],
  ])('tells no rate of drying where dew settles, and keeps the figure: %j', (air, unit) => {
    const result = evaporationRate(air);
    expect(result.figures.rate.sign()).toBe(-1);
    const sheet = textSheet('Slab', [{ name: 'Slab', results: [result] }]);
    const shown = sheet.slice(0, sheet.indexOf('How it was figured'));
    expect(shown).toMatch(/^ {2}rate +no drying$/m);
    expect(shown).toMatch(/^ +fog +no drying$/m);
    const drying = evaporationRate({ ...air, humidity: '20%' });
    const dry = textSheet('Slab', [{ name: 'Slab', results: [drying] }]);
    expect(dry).toMatch(new RegExp(`^ {2}rate +\\d[\\d.]* ${unit}$`, 'm'));
    expect(dry).toMatch(/^ +fog +no drying$/m);
  });
});

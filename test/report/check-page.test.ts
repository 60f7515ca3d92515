/** The page of a check: what was claimed beside what is reckoned, with its working, and no word of blame. */
import { describe, expect, it } from 'vitest';
import { concreteOrder, estimateCheck, slabVolume } from '../../src/index';
import { spanish } from '../../src/language/spanish/index';
import { InputError } from '../../src/quantity/input-error';
import { checkHtml, checkMarkdown, checkSheet } from '../../src/report/index';

const input = {
  outline: { shape: 'rectangle', length: '28 ft', width: '18 ft' },
  thickness: '4 in',
} as const;

/** Words that turn a difference into a fault of somebody. */
const BLAME =
  /\b(?:mistakes?|errors?|wrong|fault|cheat\w*|false|lie[ds]?|blunder|incorrect|overcharg\w*|guilty)\b/i;

const flat = (text: string): string => text.replace(/\s+/g, ' ');

describe('a check that went through other hands', () => {
  const slab = {
    outline: { shape: 'rectangle', length: '28 ft', width: '18 ft' },
    thickness: '5 in',
  } as const;
  const own = estimateCheck(slabVolume, slab, [
    { figure: 'volume', claimed: '9.33 yd3', line: '28 × 18 × .5 / 27' },
  ]);
  it('is printed as it was', () => {
    for (const copy of [structuredClone(own), JSON.parse(JSON.stringify(own)) as typeof own]) {
      expect(checkSheet(copy)).toBe(checkSheet(own));
      expect(checkHtml('Apron', copy)).toBe(checkHtml('Apron', own));
      expect(checkMarkdown('Apron', copy)).toBe(checkMarkdown('Apron', own));
    }
  });
  it('is refused where a part of it is spoilt, and nothing else is thrown', () => {
    const text = JSON.stringify(own);
    const spoilt: unknown[] = [
      ['"unit":"ft3"', '"unit":"ells"'],
      ['"claims":[', '"claims":[5,'],
      ['"slips":[{', '"slips":[{"slips":3},{'],
      ['"elsewhere":[]', '"elsewhere":[{"code":"x","says":{"says":"x"},"input":7}]'],
      ['"title":"Slab volume"', '"title":9'],
    ].map(([is, to]) => JSON.parse(text.replaceAll(is as string, to as string)));
    for (const one of [...spoilt, null, 'check', {}, { claims: [], result: own.result }])
      expect(() => checkSheet(one as never)).toThrow(InputError);
  });
});

describe('the page of a check', () => {
  it('lays each claim beside what is reckoned, with the difference in terms of the trade', () => {
    const claims = [
      { figure: 'volume', claimed: '7.47 yd3', line: '28 x 18 x 0.4 / 27' },
      { figure: 'area', claimed: '504 ft2' },
    ];
    const page = flat(
      checkMarkdown('Invoice', estimateCheck(slabVolume, input, claims), { input, claimedBy: 'the plant' }),
    );
    expect(page).toContain('Claimed by the plant. Not as reckoned: volume. As reckoned: area.');
    // 28 × 18 × 1/3 ÷ 27 = 6.2222; 7.47 less that is 1.25, five quarters of a yard.
    expect(page).toContain(
      '| Volume | 7.47 yd3 | 6.22 yd3 | differs: 1.25 yd3 more, 20.05%; 5 times 0.25 yd3 |',
    );
    expect(page).toContain('28 x 18 x 0.4 / 27');
    expect(page).toContain(
      'A likely explanation is this: thickness is 4 in, and 0.4 ft was taken. That gives volume 7.47 yd3, area 504 ft2.',
    );
    expect(page).toContain('Look at thickness in what it was reckoned from.');
    expect(page).toContain('2. volume: V = A × t = 504 ft2 × 4 in = 6.22 yd3');
    expect(page).toContain('Thickness: 4 in');
    expect(page).toContain('Measured again by');
    expect(page).not.toMatch(BLAME);
  });

  it('tells less as less, and names the step of the working where it would show', () => {
    const order = {
      volume: '12.25 yd3',
      allowance: '8%',
      increment: '0.25 yd3',
      truckCapacity: '9 yd3',
    } as const;
    const check = estimateCheck(concreteOrder, order, { order: '12.25 yd3' });
    const page = flat(checkMarkdown('Order', check, { input: order }));
    expect(page).toMatch(/differs: 1(?:\.00)? yd3 less/);
    expect(page).toMatch(/A likely explanation is .*allowance/);
    expect(page).not.toMatch(BLAME);
  });

  it('says that nothing explains it, where nothing does', () => {
    const check = estimateCheck(slabVolume, input, { volume: '4321 yd3', area: '17.3 ft2' });
    const page = checkMarkdown('Invoice', { ...check, slips: [] });
    expect(page).toContain('No single slip was found that would explain it.');
    expect(page).not.toContain('None of them is certain');
  });

  it('confirms what agrees, without a word of explanation', () => {
    const page = checkMarkdown('Invoice', estimateCheck(slabVolume, input, { volume: '6.22 yd3' }), {
      input,
    });
    expect(page).toContain('What was claimed agrees with what is reckoned, but for rounding.');
    expect(page).not.toContain('What would explain it');
    expect(page).not.toContain('Measured again');
  });

  it('stays in the units of the job', () => {
    const metric = {
      outline: { shape: 'rectangle', length: '8.5 m', width: '5.4 m' },
      thickness: '125 mm',
    } as const;
    const page = checkMarkdown('Rechnung', estimateCheck(slabVolume, metric, { volume: '7.5 m3' }), {
      input: metric,
    });
    expect(page).not.toMatch(/\d (?:ft|in|yd3)\b/);
    expect(checkHtml('Rechnung', estimateCheck(slabVolume, metric, { volume: '7.5 m3' }))).toContain(
      'size: A4',
    );
    const other = checkMarkdown('Invoice', estimateCheck(slabVolume, input, { volume: '7.47 yd3' }), {
      system: 'metric',
    });
    expect(other).toContain('| Volume | 5.71 m3 | 4.76 m3 |');
  });

  it('keeps hostile words to their own text, and refuses what is no check', () => {
    const bad = `<script>alert(1)</script>"><img src=x onerror=alert(1)>\u202E`;
    const check = estimateCheck(slabVolume, input, [{ figure: 'volume', claimed: '7.47 yd3', line: bad }]);
    const html = checkHtml(bad, check, { input, claimedBy: bad, job: bad, date: bad });
    expect(html).not.toMatch(/<script|<img src=x/i);
    expect(html).not.toContain('\u202E');
    expect(checkMarkdown(bad, check, { claimedBy: bad })).not.toContain('<script');
    for (const nothing of [{}, null, { claims: [] }, { claims: [{ claimed: '7 yd3' }] }] as never[]) {
      expect(() => checkHtml('Invoice', nothing)).toThrow(InputError);
      expect(() => checkSheet(nothing)).toThrow(InputError);
    }
    for (const page of [checkHtml, checkMarkdown]) {
      expect(() => page(check as never, undefined as never)).toThrow(InputError);
      expect(() => page(check as never, check)).toThrow('the title must be text; the check comes after it');
    }
    expect(checkSheet(check)).toContain('reckoned 6.22 yd3');
  });
});

describe('the page of a check in Spanish', () => {
  const english =
    /\b(?:was|were|taken|divided|turn|instead|would|likely|explanation|claimed|reckoned|differs)\b/;

  it.each([
    ['28 yd3', 'divided-by-9', 'se dividió'],
    ['7.47 yd3', 'inches-as-tenths', '0.4 ft'],
    ['12.44 yd3', undefined, ''],
    ['3.11 yd3', undefined, ''],
    ['168 yd3', undefined, ''],
  ])('has the sentences of slips in it: %s', (volume, code, said) => {
    const thick = volume === '28 yd3' ? { ...input, thickness: '6 in' } : input;
    const check = estimateCheck(slabVolume, thick, { volume });
    if (code) expect(check.slips[0]?.slips[0]?.code).toBe(code);
    expect(check.slips.length).toBeGreaterThan(0);
    const page = flat(checkMarkdown('Factura', check, { language: spanish }));
    expect(page).toContain(said);
    expect(page).not.toMatch(english);
    expect(page).not.toMatch(BLAME);
  });
});

/** Reading what people write. Expected inches by hand; the spellings are common practice. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Dimension } from '../../src/quantity/dimensions';
import {
  area,
  count,
  density,
  InputError,
  length,
  mass,
  massPerArea,
  massPerLength,
  money,
  pressure,
  ratio,
  slope,
  temperature,
  time,
  volume,
} from '../../src/quantity/index';
import type { Fault } from '../../src/quantity/input-error';
import { readMoney } from '../../src/quantity/money';
import { isFaulty, readQuantity } from '../../src/quantity/read-quantity';
import { unitsOf } from '../../src/quantity/units';
import { runs } from '../support/effort';
import { DIMENSIONS } from './dimensions';

describe('lengths', () => {
  it.each([
    [`12' 6-1/2"`, '150.5'],
    ['12 ft 6 1/2 in', '150.5'],
    ['12 feet, 6 1/2 inches', '150.5'],
    ['12\'-6 1/2"', '150.5'],
    ['12’-6½”', '150.5'],
    ['12′ 6½″', '150.5'],
    ["12' 6''", '150'],
    ['12ft6in', '150'],
    ['12ft2in', '146'],
    ['10 ft. 6 in.', '126'],
    ['3.5"', '3.5'],
    ['5/8 in', '0.625'],
    ['8-inch', '8'],
    ["13'", '156'],
    ['13 ft', '156'],
    ['1,250 ft', '15000'],
    ['1,250.5 ft', '15006'],
    ['.5 in', '0.5'],
    ['5. in', '5'],
    ['1 yd 2 ft 3 in', '63'],
    ['  4   in ', '4'],
    ['4\u00a0in', '4'],
    ['-3 in', '-3'],
    ['−3 in', '-3'],
    ['+3 in', '3'],
    ['-1 ft 6 in', '-18'],
    ['6 in', '6'],
    ['6 INCHES', '6'],
  ])('%s', (text, inches) => {
    expect(length(text).equals(length(`${inches} in`))).toBe(true);
  });

  it.each([
    ['100 mm', '0.1 m'],
    ['2.4m', '2.4 m'],
    ['2 m 40 cm', '2.4 m'],
    ['1/3 yd', '1 ft'],
  ])('%s', (text, same) => {
    expect(length(text).compareTo(length(same))).toBe(0);
  });
});

describe('the other dimensions', () => {
  it('reads areas and volumes in every spelling', () => {
    for (const text of [
      '504 ft2',
      '504 sq ft',
      '504 sq. ft.',
      '504 square feet',
      '504 ft²',
      '504 ft^2',
      '504 SF',
    ]) {
      expect(area(text).equals(area('56 yd2'))).toBe(true);
    }
    for (const text of [
      '6 yd3',
      '6 cubic yards',
      '6 cu yd',
      '6 cu. yd.',
      '6 yd³',
      '6 yd^3',
      '6 CY',
      '6 yards cubed',
    ]) {
      expect(volume(text).equals(volume('162 ft3'))).toBe(true);
    }
  });

  it('reads slopes', () => {
    for (const text of ['1/4 in/ft', '1/4" per ft', '1/4 inch per foot', '0.25"/ft', '1:48', '1 : 48']) {
      expect(slope(text).equals(slope('0.25 in/ft'))).toBe(true);
    }
    for (const text of ['2%', '2 %', '2 percent', '2 per cent', '20 mm/m', '0.24 in per foot']) {
      expect(slope(text).equals(slope('2%'))).toBe(true);
    }
    expect(slope('-1:48').equals(slope('-1/4 in/ft'))).toBe(true);
    expect(() => slope('1:0')).toThrow('greater than zero');
  });

  it('reads a fall as it is measured: one number in another, or a length over a length', () => {
    for (const text of [
      '1 in 48',
      '1:48',
      '1 in in 4 ft',
      '1 in over 4 ft',
      '1/4 in / 1 ft',
      '3" per 12\'',
    ]) {
      expect(slope(text).equals(slope('1/4 in/ft'))).toBe(true);
    }
    expect(slope('1 in 1,200').equals(slope('1:1200'))).toBe(true);
    for (const text of ['1 in 50', '60 mm in 3 m', '2 cm/m', '2pct', '2 m over 100 m']) {
      expect(slope(text).equals(slope('2%'))).toBe(true);
    }
    // Six inches in the first ten feet, as building codes say it of ground beside a wall.
    expect(slope('6 in in 10 ft').format()).toBe('5%');
    expect(slope('-60 mm in 3 m').equals(slope('-2%'))).toBe(true);
    expect(() => slope('1 in 0')).toThrow('greater than zero');
    expect(() => slope('2 in over 0 ft')).toThrow('greater than zero');
    expect(() => slope('4 in 12')).toThrow('"33.33%" or "300%"');
    expect(() => slope('1 in 10 ft')).toThrow('"1 in in 10 ft" or "1:10"');
    expect(() => slope('2 lb in 10 ft')).toThrow(InputError);
  });

  it('reads an amount on as many as a bag or a data sheet names', () => {
    for (const text of ['5 lb per 1000 ft2', '5 lb/1,000 sq ft', '0.5 lb / 100 ft2', '1/2 lb per 100 ft2']) {
      expect(massPerArea(text).equals(massPerArea('0.005 lb/ft2'))).toBe(true);
    }
    expect(massPerArea('3 kg per 100 m2').equals(massPerArea('30 g/m2'))).toBe(true);
    expect(massPerLength('1 lb per 4 ft').equals(massPerLength('0.25 lb/ft'))).toBe(true);
    expect(() => massPerArea('5 lb per 1000 ft')).toThrow(InputError);
    expect(() => massPerArea('5 lb per 0 ft2')).toThrow(InputError);
    expect(() => length('5 ft/12 in')).toThrow(InputError);
  });

  it('proposes the unit that was most likely meant for a number without one', () => {
    const proposed = (ask: () => unknown): string | undefined => {
      try {
        ask();
      } catch (error) {
        return /for example "(.*)"/.exec((error as InputError).message)?.[1];
      }
      return undefined;
    };
    expect(['0.02', '2', '1/60', '1/4', '0.25', '1.5', '0.1'].map((n) => proposed(() => slope(n)))).toEqual([
      '2%',
      '2%',
      '1:60',
      '1/4 in/ft',
      '0.25 in/ft',
      '1.5%',
      '10%',
    ]);
    expect(['0.05', '5', '1,200'].map((n) => proposed(() => ratio(n)))).toEqual(['5%', '5%', '1,200%']);
    expect(proposed(() => length('1,200'))).toBe('1,200 in');
  });

  it('reads the rest', () => {
    for (const text of [
      '150 pcf',
      '150 lb/ft3',
      '150 lb per cubic foot',
      '150 pounds per cubic foot',
      '4050 lb/yd3',
      '2.025 tons per cubic yard',
    ]) {
      expect(density(text).equals(density('150 pcf'))).toBe(true);
    }
    for (const text of ['55 degF', '55°F', '55 deg F', '55 F', '55 degrees F']) {
      expect(temperature(text).equals(temperature('55 degF'))).toBe(true);
    }
    expect(time('1 h 30 min').equals(time('90 min'))).toBe(true);
    expect(ratio('1.5:1').equals(ratio('150%'))).toBe(true);
    expect(count('3 ea').equals(count('3 each'))).toBe(true);
    expect(money('CAD 12.50').equals(money('12.5 CAD'))).toBe(true);
    expect(money('12 USD').equals(money('12 CAD'))).toBe(false);
    expect(() => money('$12')).toThrow(InputError);
    expect(() => money('12')).toThrow('needs a unit');
    expect(() => money('12 XXQ')).toThrow('unknown unit');
    expect(() => money('USD 12 CAD')).toThrow(InputError);
  });

  it('knows the currencies that ICU knows', () => {
    // Reference: ICU, through Intl, holds every active code of ISO 4217.
    const icu = new Set(Intl.supportedValuesOf('currency'));
    const ours = [...icu].filter((code) => {
      try {
        return money(`1 ${code}`);
      } catch {
        return false;
      }
    });
    expect(ours.length).toBeGreaterThan(145);
    for (const code of ['USD', 'CAD', 'EUR', 'GBP', 'AUD', 'NZD', 'JPY', 'MXN', 'CHF'])
      expect(ours).toContain(code);
  });
});

/** Either it is read, or one issue says why not. */
function refusedWell(make: () => unknown): void {
  try {
    make();
  } catch (error) {
    if (!(error instanceof InputError) || error.issues.length !== 1) throw error;
  }
}

describe('what could be read two ways', () => {
  it.each([
    '10² ft',
    '4²',
    '12ft.6in.',
    '5 ft.6 in.',
    '1 000 mm',
    '12 500 ft',
    '0,125 in',
    '4,125 m',
    '1,250 mm',
    "12'6",
    '12 ft 6',
  ])('%s is refused', (text) => {
    expect(() => length(text)).toThrow(InputError);
  });

  it('is read where only one way makes sense', () => {
    expect(length('4³⁄₄"').equals(length('4.75 in'))).toBe(true);
    expect(length('5³⁄₁₆ in').equals(length('5.1875 in'))).toBe(true);
    expect(length('4³/₄"').equals(length('4.75 in'))).toBe(true);
    expect(length('10 ft. 6 in.').equals(length('126 in'))).toBe(true);
    expect(() => length('12 ft 6')).toThrow('behind each of its numbers');
    for (const text of ['20 T', '20 t'])
      expect(() => mass(text)).toThrow(/can be read two ways from "[tT]": "ton" or "tonne"/);
    for (const text of ['20 deg', '20°', '20 degrees'])
      expect(() => temperature(text)).toThrow('"degF" or "degC"');
    expect(length('1,500.5 m').equals(length('1500.5 m'))).toBe(true);
    expect(length('1,234,567 mm').equals(length('1234.567 m'))).toBe(true);
    expect(length('1.500 m').equals(length('1.5 m'))).toBe(true);
    expect(length('-5 ft -6 in').equals(length('-66 in'))).toBe(true);
    expect(() => length('5-6 ft')).toThrow('behind each of its numbers');
    expect(() => length('--5 ft')).toThrow('cannot be read from "--5 ft"');
  });
});

describe('edges of what is read', () => {
  it('keeps to its limits exactly', () => {
    expect(length(`${'9'.repeat(45)} ft`).sign()).toBe(1);
    expect(length(`${'0'.repeat(20)}1 ft`).equals(length('1 ft'))).toBe(true);
    expect(length(`1000000000000000 ft`.replace('1', '9').slice(1)).sign()).toBe(0);
    expect(length(`0.${'3'.repeat(160)} ft`).sign()).toBe(1);
    expect(length('4 in'.padEnd(200)).equals(length('4 in'))).toBe(true);
    expect(() => length('4 in'.padEnd(201))).toThrow('longer than 200');
    expect(() => length({ value: '4'.padEnd(201), unit: 'in' })).toThrow('longer than 200');
    expect(length({ value: '4'.padEnd(200), unit: ' in ' }).equals(length('4 in'))).toBe(true);
    expect(length({ value: ' -4 ', unit: 'in' }).equals(length('-4 in'))).toBe(true);
    expect(length({ value: 0.1, unit: 'in' }).equals(length('0.1 in'))).toBe(true);
    expect(() => length({ value: '9'.repeat(46), unit: 'in' })).toThrow('larger than');
    expect(() => length({ value: '4', unit: 4 as unknown as string })).toThrow('text with a unit');
    expect(() => length({ value: '4', unit: '  ' })).toThrow('needs a unit');
    expect(slope({ value: '48', unit: '1:n' }).equals(slope('1:48'))).toBe(true);
    expect(slope({ value: '-48', unit: '1:n' }).equals(slope('-1:48'))).toBe(true);
    expect(() => slope({ value: '0', unit: '1:n' })).toThrow('greater than zero');
    expect(() => slope(`1:${'9'.repeat(46)}`)).toThrow('larger than');
  });

  it('reads parts with their own faults', () => {
    expect(() => length('1,23 1/2 in')).toThrow('write a point if decimals follow it');
    expect(() => length(`${'9'.repeat(46)} 1/2 in`)).toThrow('larger than');
    expect(() => length('1/0 in')).toThrow('cannot be read');
    expect(() => ratio('1:48')).toThrow();
    expect(() => slope('48:1')).toThrow();
    expect(length('1  ft   6   in').equals(length('18 in'))).toBe(true);
    expect(area('5 square  feet').equals(area('5 ft2'))).toBe(true);
    expect(length('2 yd 1 ft').format()).toBe('2.333 yd');
    expect(length('1 ft 6 in').format()).toBe('1 ft 6 in');
    expect(length('2 m 40 cm').format()).toBe('2.4 m');
    expect(temperature('55degrees f').equals(temperature('55 degF'))).toBe(true);
    expect(temperature('55 DEGREE C').equals(temperature('55 degC'))).toBe(true);
    expect(density('150 LB / FT3').equals(density('150 pcf'))).toBe(true);
    for (const text of ['12 ft us', '12 us ft', '12 ftus', '12 usft', '12 US Survey Feet'])
      expect(() => length(text)).toThrow('survey');
    for (const text of ['12 bus ft', '12 ft usual']) expect(() => length(text)).toThrow('unknown unit');
  });

  it('reads money to the end', () => {
    expect(money('-12 USD').sign()).toBe(-1);
    expect(money('+12 USD').sign()).toBe(1);
    expect(money({ value: 12.5, unit: 'USD' }).equals(money('12.50 USD'))).toBe(true);
    expect(money({ value: '-12.5', unit: 'USD' }).sign()).toBe(-1);
    expect(money(money('12 USD')).equals(money('12 USD'))).toBe(true);
    expect(money('1,250 USD').equals(money('1250 USD'))).toBe(true);
    expect(money('12 USD'.padEnd(200)).format()).toBe('12.00 USD');
    expect(() => money('12 USD'.padEnd(201))).toThrow('longer than 200');
    expect(() => money('')).toThrow('missing; write it, for example "165 USD"');
    expect(() => money(12 as unknown as string)).toThrow('needs a unit, for example "165 USD"');
    expect(() => money(undefined as unknown as string)).toThrow('missing');
    expect(() => money(true as unknown as string)).toThrow('text with a unit');
    expect(() => money({ value: '12' } as unknown as string)).toThrow('text with a unit');
    expect(() => money(length('1 ft') as unknown as string)).toThrow('must be a money such as');
    expect(() => money(`${'9'.repeat(46)} USD`)).toThrow('larger than');
    expect(() => money('twelve USD')).toThrow('cannot be read');
    expect(() => money('12.50² USD')).toThrow('cannot be read');
  });
});

describe('anything at all', () => {
  it('is read, or refused with an issue, in time that grows with its length at most', () => {
    const pieces = fc.constantFrom(
      '1',
      '12',
      '.',
      ',',
      '/',
      '-',
      ' ',
      'ft',
      'in',
      "'",
      '"',
      '½',
      'yd3',
      '²',
      '%',
      ':',
      'per',
      'sq',
      'e',
      '\u0000',
      '\u{1f600}',
      '(',
      '^2',
    );
    const text = fc.oneof(
      fc.string({ unit: 'grapheme' }),
      fc.array(pieces, { maxLength: 60 }).map((p) => p.join('')),
    );
    fc.assert(
      fc.property(text, (t) => {
        for (const make of [length, area, slope, ratio, money, temperature, density])
          refusedWell(() => make(t));
      }),
      { numRuns: runs(5000) },
    );
  });

  it('is never read two ways: what is written out reads back as the same', () => {
    const inches = fc.tuple(fc.integer({ min: 0, max: 100_000 }), fc.constantFrom(1, 2, 4, 8, 16));
    fc.assert(
      fc.property(inches, ([n, d]) => {
        const fraction = d === 1 ? '' : ` ${n % d}/${d}`;
        const q = length(`${Math.floor(n / d)}${fraction} in`);
        for (const unit of ['ft-in', 'in', 'ft', undefined] as const) {
          const shown = unit === 'in' || unit === 'ft' ? q.in(unit).toString() : q.format(unit);
          if (!length(shown).equals(q)) throw new Error(`${n}/${d} in: ${shown}`);
        }
      }),
      { numRuns: runs(3000) },
    );
  });
});

describe('what is shown', () => {
  const all = DIMENSIONS.flatMap((d) => unitsOf(d).map((unit) => [d, unit] as const));
  const number = fc
    .tuple(fc.integer({ min: -99_999_999, max: 99_999_999 }), fc.integer({ min: 0, max: 12 }))
    .map(
      ([n, places]) =>
        (n < 0 ? '-' : '') +
        `${Math.abs(n)}`
          .padStart(places + 1, '0')
          .replace(new RegExp(`(?=\\d{${places}}$)`), places ? '.' : ''),
    );

  /** Half of the last thing that is shown: a sixteenth, or a unit of the second digit or of the last place. */
  const room = (unit: string, a: number): number =>
    unit === 'ft-in' ? 1 / 384 : Math.max(Math.abs(a) * 0.05, unit === '1:n' ? 0 : 0.05);

  it('is read back, in every unit and at every size, to within what was rounded off', () => {
    fc.assert(
      fc.property(fc.constantFrom(...all), number, ([d, unit], value) => {
        const it = readQuantity({ value, unit }, d, 'it');
        if (isFaulty(it)) return; // colder than anything, or 1 in 0
        const back = readQuantity(it.format(), d, it.format());
        if (isFaulty(back)) throw new Error(back.sentence);
        const [a, b] = [it.toNumber(unit), back.toNumber(unit)];
        expect(Math.abs(a - b), it.format()).toBeLessThanOrEqual(room(unit, a) * 1.000001);
        expect(back.in(unit).format()).toBe(it.format());
      }),
      { numRuns: runs(4000) },
    );
  });
});

describe('text that reads two ways', () => {
  const whole = fc.integer({ min: 1, max: 99 });
  const three = fc.integer({ min: 0, max: 999 }).map((n) => `${n}`.padStart(3, '0'));
  const tape = fc.constantFrom(2, 4, 8, 16, 32, 64);
  const customary = fc.constantFrom('in', 'ft', '"', "'", 'yd');
  const metric = fc.constantFrom('mm', 'm', 'cm');
  const sign = fc.constantFrom('½', '¼', '¾', '⅜', '⅞');
  const traps = fc.oneof(
    fc.tuple(whole, three, fc.oneof(metric, customary)).map(([a, b, u]) => `${a}'${b} ${u}`),
    fc.tuple(whole, three, fc.oneof(metric, customary)).map(([a, b, u]) => `${a} ${b} ${u}`),
    fc.tuple(whole, three, metric).map(([a, b, u]) => `${a},${b} ${u}`),
    fc.tuple(whole, sign, whole, customary).map(([a, f, b, u]) => `${a}${f}${b} ${u}`),
    fc
      .tuple(whole, whole, tape, customary)
      .map(([a, n, d, u]) => `${a}${n % d}/${d} ${u}`)
      .filter((t) => {
        const [n, d] = (t.match(/\d+/g) ?? []).map(Number) as [number, number];
        return n >= d && n > 9;
      }),
    fc.tuple(whole, fc.integer({ min: 12, max: 99 })).map(([a, b]) => `${a}' ${b}"`),
    fc
      .tuple(whole, fc.integer({ min: 1, max: 9 }), fc.integer({ min: 0, max: 11 }))
      .map(([a, t, b]) => `${a}.${t}' ${b}"`),
    fc.tuple(whole, whole).map(([a, b]) => `${a}ft.${b}in.`),
    fc.tuple(whole, fc.constantFrom('²', '³'), customary).map(([a, p, u]) => `${a}${p} ${u}`),
  );

  it('is refused, and the sentence gives two readings', () => {
    fc.assert(
      fc.property(traps, (text) => {
        const q = readQuantity(text, 'length', 'it');
        if (!isFaulty(q)) throw new Error(`${text} was read as ${q.format()}`);
        const readings = /: "(.+)" or "(.+)"; write/.exec(q.sentence);
        if (q.code === 'ambiguous') expect(readings?.[1], q.sentence).not.toBe(readings?.[2]);
        else expect(q.sentence).toMatch(/cannot be read .* write it as|behind each/);
      }),
      { numRuns: runs(2000) },
    );
  });

  it.each([
    ["12'500 mm", '12500 mm', '12 ft 500 mm'],
    ["5'000 mm", '5000 mm', '5 ft 000 mm'],
    ['12½5 in', '12 1/25 in', '12 1/2 and 5 in'],
    ['10½6"', '10 1/26"', '10 1/2 and 6"'],
    ['31/2 in', '15 1/2 in', '3 1/2 in'],
    ['11/2 in', '5 1/2 in', '1 1/2 in'],
    ['315/16"', '19 11/16"', '3 15/16"'],
    ['2 ft 31/2 in', '2 ft 15 1/2 in', '2 ft 3 1/2 in'],
    [`3' 14"`, '4 ft 2 in', '3 ft 1.4 in'],
    [`12.5' 6"`, '13 ft', '12 ft 6 in'],
    ['1 yd 2 ft 14 in', '1 yd 3 ft 2 in', '1 yd 2 ft 1.4 in'],
    ['4,125 m', '4125 m', '4.125 m'],
    ['1 000 mm', '1000 mm', '1.000 mm'],
    ['12ft.6in.', '12ft 6in.', '12ft 0.6in.'],
    ['10² ft', '102 ft', '10 ft'],
    ['5 ft -6 in', '5 ft 6 in', '5 ft less 6 in'],
    ['12₂ ft', '122 ft', '12 ft'],
    ['²12 ft', '212 ft', '2 and 12 ft'],
  ])('%s is %s or %s', (text, first, second) => {
    expect(() => length(text)).toThrow(`"${text}": "${first}" or "${second}"; write the one that is meant`);
  });

  it.each([
    ['48:1', slope, '4800%', '2.083%'],
    ['4:12', slope, '33.33%', '300%'],
    ['1:1.5', ratio, '66.67%', '150%'],
    ['3:2', ratio, '150%', '66.67%'],
  ] as const)('%s is one to the other or the other to the one', (text, make, first, second) => {
    expect(() => make(text)).toThrow(`"${text}": "${first}" or "${second}"; write the one that is meant`);
  });

  it('says what else is wrong with what no tape shows', () => {
    expect(() => length('6 ft --6 in')).toThrow('cannot be read');
    expect(() => length('6 ft -')).toThrow('cannot be read');
    expect(() => length('9/8 in')).toThrow('write it as "1 1/8 in"');
    expect(() => length('4/4 in')).toThrow('write it as "1 in"');
    expect(() => length('5 ft 20 cm')).toThrow('mixes metric and customary units');
    expect(() => time('1 h 90 min')).toThrow('"2.5 h" or "1 h 9 min"');
    expect(() => length('100 Mm')).toThrow('write "mm" if that is meant');
    expect(() => length({ value: 100, unit: 'Mm' })).toThrow('a million meters');
    expect(() => pressure('28 mPa')).toThrow('write "MPa" if that is meant');
    expect(() => temperature('-300 C')).toThrow('below absolute zero');
    expect(() => temperature({ value: -460, unit: 'degF' })).toThrow('below absolute zero');
    expect(temperature('-459.67 degF').equals(temperature('-273.15 degC'))).toBe(true);
    for (const unit of ['constructor', 'toString', '__proto__'])
      expect(() => length({ value: 4, unit })).toThrow('unknown unit');
  });

  it('is none where only one reading makes sense', () => {
    expect(length('94/13 ft').times(count('13 each')).compareTo(length('94 ft'))).toBe(0);
    expect(length('6 ft - 6 in').equals(length('78 in'))).toBe(true);
    expect(length(`12'-11 15/16"`).equals(length('155.9375 in'))).toBe(true);
    expect(time('1 h 59 min').equals(time('119 min'))).toBe(true);
  });
});

describe('words of the trade', () => {
  it('reads yards of concrete, feet along a line, and tons by their names', () => {
    for (const text of ['7.5 yards', '7.5 yds', '7.5 cubic yards'])
      expect(volume(text).equals(volume('7.5 yd3'))).toBe(true);
    expect(length('7.5 yards').equals(length('22.5 ft'))).toBe(true);
    expect(() => volume('7.5 yd')).toThrow('such as "6 yd3"');
    for (const text of ['40 LF', '40 lin ft', '40 lin. ft.', '40 linear feet', '40 lineal feet'])
      expect(length(text).equals(length('40 ft'))).toBe(true);
    // A long ton has 2,240 lb, a metric ton 1,000 kg: NIST Special Publication 811, appendix B.8, from memory.
    for (const text of ['2 long tons', '2 LONG TON', '4480 lb'])
      expect(mass(text).equals(mass('2 longton'))).toBe(true);
    for (const text of ['2 metric tons', '2 metric ton', '2 tonnes'])
      expect(mass(text).equals(mass('2000 kg'))).toBe(true);
    expect(mass('2 short tons').equals(mass('4000 lb'))).toBe(true);
  });

  it('reads strengths and loads in their other spellings', () => {
    expect(pressure('4 ksi').equals(pressure('4000 psi'))).toBe(true);
    expect(pressure('2 ksf').equals(pressure('2000 psf'))).toBe(true);
    expect(pressure('28 N/mm2').equals(pressure('28 MPa'))).toBe(true);
    expect(pressure('5 kN/m²').equals(pressure('5 kPa'))).toBe(true);
    expect(pressure('4000 pounds per square inch').equals(pressure('4000 psi'))).toBe(true);
    expect(ratio('.5:1').equals(ratio('50%'))).toBe(true);
    expect(slope('level').sign()).toBe(0);
  });
});

describe('the proposal where a unit is missing', () => {
  const whole = fc.integer({ min: 0, max: 9999 }).map(String);
  const number = fc.oneof(
    whole,
    whole.map((n) => `${n}.`),
    fc.tuple(whole, fc.integer({ min: 0, max: 999 })).map(([a, b]) => `${a}.${b}`),
    fc.constantFrom('1/2', '½', '6 1/2', '5¾', '3/12', '1/60', '.5', '1,200', '1,200.5', '0.04', '7/8'),
  );
  const typed = fc.tuple(fc.constantFrom('', '-', '+'), number).map(([sign, n]) => `${sign}${n}`);
  const dimension = fc.constantFrom(...DIMENSIONS.filter((d) => d !== 'money'));
  const proposed = ({ sentence }: Fault): string => /for example "(.+)"$/.exec(sentence)?.[1] ?? '';
  /** A share, or degrees, that there is none of is refused for that reason alone. */
  const isRead = (text: string, d: Dimension): boolean => {
    const q = readQuantity(text, d, 'it');
    return !isFaulty(q) || q.code === 'not-positive' || q.code === 'out-of-range';
  };
  const refusal = (text: string, d: Dimension): Fault => {
    const q = readQuantity(text, d, 'it');
    if (!isFaulty(q)) throw new Error(`${text} was read as ${q.format()}`);
    return q;
  };

  it('is read when it is typed, in both unit systems, with the sign', () => {
    fc.assert(
      fc.property(typed, dimension, (text, d) => {
        const fault = refusal(text, d);
        if (fault.code !== 'missing-unit') return;
        for (const each of [proposed(fault), proposed(fault.metric ?? fault)]) {
          expect(isRead(each, d), `${text}: ${each}`).toBe(true);
          if (/[1-9½¾]/.test(text))
            expect(each.startsWith('-'), `${text}: ${each}`).toBe(text.startsWith('-'));
        }
      }),
      { numRuns: runs(3000) },
    );
  });

  it.each([
    ['-40', temperature, '"-40 degF"'],
    ['-0.25', length, '"-0.25 in"'],
    ['1/2', ratio, '"50%"'],
    ['½', ratio, '"50%"'],
    ['-0.05', ratio, '"-5%"'],
    ['1/60', slope, '"1:60"'],
    ['3/12', slope, '"25%"'],
    ['6 1/2', slope, '"6 1/2%"'],
    ['-2', slope, '"-2%"'],
    ['1h 30', time, '"90 min"'],
    ['5 lb 4', mass, '"50 lb"'],
  ] as const)('is what is most likely meant by %s', (text, make, proposed) => {
    expect(() => make(text)).toThrow(`for example ${proposed}`);
  });
});

// What parts two numbers in a table without being seen would make one number of them.
describe('a sign that does not show', () => {
  it.each(['12\u200b5 ft', '1.\u20605 m', '12 ft 1\u00ad1 in', '1:4\u200b8', '6\ufeff\u200b4%'])(
    'between digits is refused: %j',
    (text) => {
      const d = /[ftm]/.test(text) ? 'length' : 'slope';
      expect(readQuantity(text, d, 'it')).toMatchObject({ code: 'ambiguous' });
    },
  );

  it('is refused in money all the same, and dropped where it parts no digits', () => {
    expect(readMoney('33963\u200b69 USD', 'it')).toMatchObject({ code: 'ambiguous' });
    expect(readMoney('33963\u200b USD', 'it')).toMatchObject({ value: '33963', unit: 'USD' });
    expect(readQuantity('12\u200b ft\u200b', 'length', 'it')).toMatchObject({ value: '12', unit: 'ft' });
  });
});

describe('what else is typed and pasted', () => {
  it.each([
    ['4\u200b in', length('4 in')],
    ['\ufeff4 in', length('4 in')],
    ['13 \u00baC', temperature('13 degC')],
    ['55 degrees Fahrenheit', temperature('55 degF')],
    ['13 Celsius', temperature('13 degC')],
    ['2 metric tonnes', mass('2 tonne')],
    ['2.2 t/m3', density('2200 kg/m3')],
    ['4 t/ha', massPerArea('0.4 kg/m2')],
    ['300 kg per ha', massPerArea('30 g/m2')],
    ['4356 lb/acre', massPerArea('0.1 lb/ft2')],
    ['21.78 tons/acre', massPerArea('1 lb/ft2')],
    ['1.5 ha', area('15000 m2')],
    ['12" o.c.', length('1 ft')],
    ['18 in. O.C.', length('18 in')],
    ['300 mm c/c', length('0.3 m')],
    ['50 Kgs', mass('50 kg')],
    ['4 ins.', length('4 in')],
    ['3 mtrs', length('3 m')],
    ['6 gals', volume('6 gal')],
    ['0.02 ft/ft', slope('2%')],
    ['.015 m/m', slope('1.5%')],
    ['-0.02 ft per ft', slope('-2%')],
  ])('%s', (text, same) => {
    const q = readQuantity(text, same.dimension, 'it');
    expect(isFaulty(q) ? q.sentence : q.equals(same as never)).toBe(true);
  });

  it.each([
    ['1.200,5 mm', length],
    ['10 000,5 mm', length],
    ['1.5.5 m', length],
    ['3000-4000 psi', pressure],
    ['12-14 m2', area],
  ] as const)('%s is not told to have parts', (text, make) => {
    expect(() => make(text)).toThrow(/cannot be read from ".*"; write it as in/);
  });
});

/**
 * Units against published conversion tables.
 *
 * Sources: NIST, U.S. Survey Foot: Revised Unit Conversion Factors (international values, exact);
 * MIL-HDBK-1004/6, Appendix B, US Naval Facilities Engineering Command; Residential Structural
 * Design Guide, Appendix B, US Department of Housing and Urban Development; Information Circular
 * 9298, US Bureau of Mines. Printed digits set the tolerance.
 */
import { describe, expect, it } from 'vitest';
import type { Dimension } from '../../src/quantity/index';
import { area, InputError, length, mass, volume } from '../../src/quantity/index';
import { Quantity } from '../../src/quantity/quantity';
import { isFaulty, readQuantity } from '../../src/quantity/read-quantity';
import { unitsOf } from '../../src/quantity/units';
import { DIMENSIONS } from './dimensions';

function read(text: string, d: Dimension): Quantity {
  const q = readQuantity(text, d, 'it');
  if (isFaulty(q)) throw new Error(`${text}: ${q.sentence}`);
  return q;
}

/** The number of `q` in `unit`, to the places that the source prints. */
function shows(text: string, d: Dimension, unit: string, printed: string): void {
  const places = printed.split('.')[1]?.length ?? 0;
  expect(read(text, d).format(unit, { places })).toBe(`${printed} ${unit}`);
}

describe('NIST, exact', () => {
  it.each([
    ['1 ft', 'length', 'm', '0.3048'],
    ['1 mi', 'length', 'm', '1609.344'],
    ['1 acre', 'area', 'm2', '4046.8564224'],
    ['43560 ft2', 'area', 'acre', '1'],
    ['1 in', 'length', 'mm', '25.4'],
    ['1 yd', 'length', 'm', '0.9144'],
  ] as const)('%s', (text, d, unit, printed) => {
    expect(read(text, d).equals(read(`${printed} ${unit}`, d))).toBe(true);
  });
});

describe('MIL-HDBK-1004/6, Appendix B', () => {
  it.each([
    ['1 yd2', 'area', 'm2', '0.836127'],
    ['1 ft2', 'area', 'm2', '0.092903'],
    ['1 acre', 'area', 'ha', '0.404686'],
    ['1 yd3', 'volume', 'm3', '0.764555'],
    ['1 ft3', 'volume', 'm3', '0.028317'],
    ['1 gal', 'volume', 'L', '3.78541'],
    ['1 mph', 'speed', 'km/h', '1.609344'],
    ['1 ton', 'mass', 'tonne', '0.907185'],
    ['1 lb', 'mass', 'kg', '0.453592'],
    ['1 oz', 'mass', 'g', '28.3495'],
    ['1 pcf', 'density', 'kg/m3', '16.0185'],
    ['1 kip', 'force', 'kN', '4.44822'],
    ['1 lbf', 'force', 'N', '4.44822'],
  ] as const)('%s', (text, d, unit, printed) => shows(text, d, unit, printed));
});

describe('Residential Structural Design Guide, Appendix B', () => {
  it.each([
    ['1 ft3', 'volume', 'm3', '0.02831685'],
    ['1 yd3', 'volume', 'm3', '0.7645549'],
    ['1 gal', 'volume', 'L', '3.7854118'],
    ['1 lb', 'mass', 'kg', '0.4535924'],
    ['1 psi', 'pressure', 'MPa', '0.00689476'],
    ['1 psf', 'pressure', 'kPa', '0.04788'],
    ['1 lbf', 'force', 'N', '4.448222'],
    ['1 in3', 'volume', 'cm3', '16.387064'],
  ] as const)('%s', (text, d, unit, printed) => shows(text, d, unit, printed));

  it('misprints the square yard: nine square feet are 0.8361274 m2, not 0.8391274 m2', () => {
    expect(area('9 ft2').equals(area('1 yd2'))).toBe(true);
    expect(area('1 yd2').format('m2', { places: 7 })).toBe('0.8361274 m2');
  });
});

describe('identities of the definitions', () => {
  it.each([
    ['27 ft3', '1 yd3', 'volume'],
    ['231 in3', '1 gal', 'volume'],
    ['4 qt', '1 gal', 'volume'],
    ['128 fl oz', '1 gal', 'volume'],
    ['1000 mL', '1 L', 'volume'],
    ['1000 L', '1 m3', 'volume'],
    ['2000 lb', '1 ton', 'mass'],
    ['16 oz', '1 lb', 'mass'],
    ['27 lb/yd3', '1 pcf', 'density'],
    ['9 lb/yd2', '1 lb/ft2', 'mass-per-area'],
    ['16 oz/yd2', '1 lb/yd2', 'mass-per-area'],
    ['1000 g/m2', '1 kg/m2', 'mass-per-area'],
    ['144 psf', '1 psi', 'pressure'],
    ['1 N', '0.001 kN', 'force'],
    ['1 MPa', '1000 kPa', 'pressure'],
    ['12 in/ft', '100%', 'slope'],
    ['1:48', '1/4 in/ft', 'slope'],
    ['10 mm/m', '1%', 'slope'],
    ['60 mph', '88 ft/s', 'speed'],
    ['18 km/h', '5 m/s', 'speed'],
    ['3600 s', '1 h', 'time'],
    ['24 h', '1 day', 'time'],
    ['6 weeks', '42 days', 'time'],
    ['3 wk', '504 h', 'time'],
    ['212 degF', '100 degC', 'temperature'],
    ['-40 degF', '-40 degC', 'temperature'],
    ['9 degF', '5 degC', 'temperature-difference'],
    ['50%', '0.5:1', 'ratio'],
  ] as const)('%s is %s', (a, b, d) => {
    expect(read(a, d).compareTo(read(b, d))).toBe(0);
    expect(read(a, d).equals(read(b, d))).toBe(true);
  });
});

describe('every unit', () => {
  const all = DIMENSIONS.flatMap((d) => unitsOf(d).map((unit) => [d, unit] as const));

  it('is one of those the trade asks for', () => {
    const ids = all.map(([, id]) => id);
    const wanted =
      'in ft yd mi mm cm m km in2 ft2 yd2 acre m2 in3 ft3 yd3 gal L m3 lb oz ton kg tonne pcf lb/yd3 kg/m3 lb/ft kg/m ' +
      'lb/ft2 lb/yd2 kg/m2 in/ft % 1:n deg mm/m s min h day week degF degC mph km/h m/s ft/s psi psf kPa MPa yd3/h m3/h ' +
      'lb/ft2/h kg/m2/h each';
    for (const id of wanted.split(' ')) expect(ids).toContain(id);
  });

  it.each(all)('%s in %s goes through JSON and text unchanged', (d, unit) => {
    const made = readQuantity({ value: '12.625', unit }, d, 'it');
    const q = unit === 'ft-in' ? read('12 ft 7 1/2 in', d) : made;
    if (isFaulty(q)) throw new Error(q.sentence);
    expect(q).toBeInstanceOf(Quantity);
    expect(read(q.toString(), d).equals(q)).toBe(true);
    const back = readQuantity(JSON.parse(JSON.stringify(q)), d, 'it');
    expect(isFaulty(back) ? back.sentence : back.equals(q)).toBe(true);
  });
});

describe('what is refused', () => {
  const codeOf = (make: () => unknown): string => {
    try {
      make();
    } catch (error) {
      if (error instanceof InputError) return error.issues.map(({ code }) => code).join();
      throw error;
    }
    return 'nothing';
  };

  it.each([
    ['4', 'missing-unit'],
    [4, 'missing-unit'],
    [10n, 'missing-unit'],
    ['', 'missing'],
    [null, 'missing'],
    [undefined, 'missing'],
    [true, 'not-a-quantity'],
    [Symbol('x'), 'not-a-quantity'],
    [() => 4, 'not-a-quantity'],
    [Number.NaN, 'missing-unit'],
    [Number.POSITIVE_INFINITY, 'missing-unit'],
    ['NaN ft', 'unreadable-quantity'],
    ['Infinity ft', 'unreadable-quantity'],
    ['1e9999 ft', 'unreadable-quantity'],
    ['1e3 ft', 'unreadable-quantity'],
    ['0x1f ft', 'unknown-unit'],
    ['1_000 ft', 'unknown-unit'],
    ['1/0 ft', 'unreadable-quantity'],
    ['6 5/4 in', 'unreadable-quantity'],
    ['2,4 m', 'unreadable-quantity'],
    ['12,34 ft', 'unreadable-quantity'],
    ["6' 6", 'missing-unit'],
    ['6 in 2 ft', 'unreadable-quantity'],
    ['6 ft 2 ft', 'unreadable-quantity'],
    ['ft', 'unreadable-quantity'],
    ['12 furlongs', 'unknown-unit'],
    ['12 survey feet', 'survey-foot'],
    ['12 ft (US survey)', 'survey-foot'],
    ['4 ft2', 'wrong-dimension'],
    [area('4 ft2'), 'wrong-dimension'],
    [`${'9'.repeat(46)} ft`, 'out-of-range'],
    [`0.${'3'.repeat(161)} ft`, 'too-many-digits'],
    ['4 in'.padEnd(1_000_000), 'too-long'],
    [{ value: '4' }, 'not-a-quantity'],
    [{ value: '4', unit: '' }, 'missing-unit'],
    [{ value: '', unit: 'ft' }, 'unreadable-quantity'],
    [{ value: '1e3', unit: 'ft' }, 'unreadable-quantity'],
    [{ value: Number.NaN, unit: 'ft' }, 'not-a-quantity'],
    [{ value: '4', unit: 'ft', more: 1 }, 'unknown-key'],
    [{ value: '4', unit: 'x'.repeat(300) }, 'too-long'],
    [[], 'not-a-quantity'],
  ])('%s', (input, code) => {
    expect(codeOf(() => length(input as string))).toBe(code);
  });

  it('says what to write instead', () => {
    expect(() => length('4')).toThrow('the length needs a unit, for example "4 in"');
    expect(() => length('4 ft2')).toThrow('must be a length such as "4 in", but an area was given');
    expect(() => volume('6 yd')).toThrow('must be a volume such as "6 yd3", but a length was given');
    expect(() => length('2 survey ft')).toThrow('international foot of exactly 0.3048 m');
    // Control and direction characters do not reach a terminal.
    expect(() => mass('4 \u0007\u202e stones')).toThrow(/unknown unit "[ a-z]*"/);
  });

  it('proposes fluid ounces where a volume is told in ounces', () => {
    expect(() => volume('12.5 oz')).toThrow(/must be a volume, and oz is a mass; write fl oz/);
    expect(volume('12.5 fl oz').format('mL')).toBe('369.7 mL');
    expect(() => length('12.5 oz')).toThrow(/a mass was given/);
  });

  it('carries the whole list, frozen, and as JSON', () => {
    try {
      length('4');
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      expect(Object.isFrozen(error.issues)).toBe(true);
      expect(JSON.parse(JSON.stringify(error))).toEqual({ name: 'InputError', issues: [...error.issues] });
      expect(error.message).toBe(error.issues[0]?.sentence);
      return;
    }
    throw new Error('not refused');
  });
});

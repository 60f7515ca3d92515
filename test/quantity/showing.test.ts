/** Showing quantities. The forms are common practice of the trade; half rounds up. */
import { inspect } from 'node:util';
import { describe, expect, it } from 'vitest';
import {
  area,
  count,
  length,
  mass,
  money,
  ratio,
  slope,
  temperature,
  volume,
} from '../../src/quantity/index';

describe('feet and inches', () => {
  it.each([
    ['150.5 in', undefined, '12 ft 6-1/2 in'],
    ['12 ft', undefined, '12 ft'],
    ['0 in', undefined, '0 in'],
    ['1/32 in', undefined, '1/16 in'],
    ['1/33 in', undefined, '0 in'],
    ['-1/33 in', undefined, '0 in'],
    ['11 31/32 in', undefined, '1 ft'],
    ['5 ft 11 63/64 in', undefined, '6 ft'],
    ['5 ft 11 63/64 in', { denominator: 64 }, '5 ft 11-63/64 in'],
    ['5 ft 11 63/64 in', { denominator: 1 }, '6 ft'],
    ['6 3/4 in', { denominator: 2 }, '7 in'],
    ['6 3/4 in', { denominator: 4 }, '6-3/4 in'],
    ['-18.25 in', undefined, '-1 ft 6-1/4 in'],
    ['1 ft 0 1/2 in', undefined, '1 ft 1/2 in'],
    ['1 m', { denominator: 8 }, '3 ft 3-3/8 in'],
  ] as const)('%s', (text, options, shown) => {
    expect(length(text).format('ft-in', options)).toBe(shown);
  });
});

describe('decimals', () => {
  it.each([
    ['7.78 yd3', () => volume('7.775 yd3').format()],
    ['6.00 yd3', () => volume('6 yd3').format()],
    ['0.001 yd3', () => volume('0.001 yd3').format()],
    ['0.0044 yd3', () => volume('0.0044 yd3').format()],
    ['0.00 yd3', () => volume('-0.0044 yd3').format('yd3', { places: 2 })],
    ['0.005 yd3', () => volume('0.005 yd3').format()],
    ['0.50 yd3', () => volume('0.5 yd3').format()],
    ['0.10 yd3', () => volume('0.0999 yd3').format()],
    ['0.073 in2', () => area('0.0733 in2').format()],
    ['0.0063 m2', () => area('62.8 cm2').format('m2')],
    ['-0.0063 m2', () => area('-62.8 cm2').format('m2')],
    ['0.34 lb', () => mass('0.34 lb').format()],
    ['0.1 degC', () => temperature('0.05 degC').format()],
    ['0.01 USD', () => money('0.0051 USD').format()],
    ['0.76 m3', () => volume('1 yd3').format('m3')],
    ['0.76455 m3', () => volume('1 yd3').format('m3', { places: 5 })],
    ['17.01 ton', () => mass('34020 lb').format('ton')],
    ['0.05 lb', () => mass('0.05 lb').format()],
    ['504 ft2', () => area('46.82313216 m2').format('ft2')],
    ['1:48', () => slope('1:48').format()],
    ['2.08%', () => slope('1:48').format('%')],
    ['1:50', () => slope('2%').format('1:n')],
    ['1:33.33', () => slope('3%').format('1:n')],
    ['-1:50', () => slope('-2%').format('1:n')],
    ['level', () => slope('0%').format('1:n')],
    ['0.24 in/ft', () => slope('2%').format('in/ft')],
    ['1.08:1', () => ratio('108%').format(':1')],
    ['12.8 degC', () => temperature('55 degF').format('degC')],
    ['-40 degF', () => temperature('-40 degC').format('degF')],
    ['12 each', () => count('12 each').format()],
    ['12.35 USD', () => money('12.345 USD').format()],
  ])('%s', (wanted, shown) => {
    expect(shown()).toBe(wanted);
  });

  it('shows a small amount to two digits, but not where places are asked for', () => {
    expect(volume('0.004 yd3').format()).toBe('0.004 yd3');
    expect(volume('0.00444 yd3').format()).toBe('0.0044 yd3');
    expect(volume('-0.00444 yd3').format()).toBe('-0.0044 yd3');
    expect(volume('0.00444 yd3').format('yd3', { places: 2 })).toBe('0.00 yd3');
    expect(volume('-0.00444 yd3').format('yd3', { places: 0 })).toBe('0 yd3');
    expect(volume('0 yd3').format()).toBe('0.00 yd3');
    expect(area('1.5 ft2').format('ft2', { places: 3 })).toBe('1.500 ft2');
    expect(length('1 ft').plus(length('2 in')).format()).toBe('1 ft 2 in');
    expect(length('1.5 ft').format()).toBe('1.5 ft');
    expect(length('1 m').plus(length('2 in')).format()).toBe('1.051 m');
    expect(length('1 m').times(length('1 ft')).format()).toBe('0.3 m2');
    expect(length('1 ft').times(length('1 m')).format()).toBe('3.28 ft2');
    expect(slope('2%').times(length('10 m')).format()).toBe('0.2 m');
    expect(slope('2%').times(length('10 ft')).format()).toBe('2-3/8 in');
    expect(length('1 ft').in('in').format()).toBe('12 in');
    expect(money('5 USD').format('USD')).toBe('5.00 USD');
  });

  it('writes the rest of the exact forms', () => {
    expect(JSON.stringify(ratio('1.5:1'))).toBe('{"value":"1.5","unit":":1","dimension":"ratio"}');
    expect(String(ratio('1.5:1'))).toBe('1.5:1');
    expect(String(slope('2%'))).toBe('2%');
    expect(String(length('1.123456789012345678901234 m'))).toBe('1.123456789012345678901234 m');
    expect(String(length('12 ft 6 in').in('m'))).toBe('3.81 m');
    expect(String(length('100 mm').in('ft-in'))).toBe('0.1 m');
    expect(String(temperature('1 degF').in('degC'))).toBe('1 degF');
  });

  it('does not change what is shown', () => {
    const v = volume('7.7777 yd3');
    v.format();
    expect(v.toString()).toBe('7.7777 yd3');
    expect(v.in('m3').equals(v)).toBe(true);
    expect(v.in('ft3').format()).toBe('210 ft3');
  });

  it('is what a REPL prints', () => {
    expect(inspect(length('12 ft 6 in'))).toBe('12 ft 6 in');
    expect(inspect({ v: volume('1 yd3') })).toBe('{ v: 1.00 yd3 }');
  });
});

describe('exact text and JSON', () => {
  it.each([
    [{ value: '210', unit: 'ft3' }, () => length('28 ft').times(length('18 ft')).times(length('5 in'))],
    [{ value: '12.5', unit: 'ft' }, () => length('12 ft 6 in')],
    [{ value: '146', unit: 'in' }, () => length('12 ft 2 in')],
    [{ value: '5.25', unit: 'yd3' }, () => volume('5.25 yd3')],
    [{ value: '0.25', unit: 'in/ft' }, () => slope('1:48')],
    [{ value: '12.5', unit: 'USD' }, () => money('12.50 USD')],
    [{ value: '-40', unit: 'degC' }, () => temperature('-40 degC')],
  ])('%j', (wanted, json) => {
    const { value, unit, dimension } = json();
    expect({ value, unit }).toEqual(wanted);
    expect(JSON.parse(JSON.stringify(json()))).toMatchObject({ ...wanted, dimension });
  });

  it('falls back on the canonical unit for what no unit holds exactly', () => {
    const third = length('1 m').over(count('3 each'));
    expect({ ...third }).toEqual({ value: `0.${'3'.repeat(60)}`, unit: 'm', dimension: 'length' });
    expect(length({ ...third }).equals(third)).toBe(true);
    expect(length(third.toString()).equals(third)).toBe(true);
  });

  it('gives the nearest binary number when one is asked for', () => {
    expect(volume('1 yd3').toNumber('m3')).toBe(0.764554857984);
    expect(slope('1:48').toNumber('%')).toBe(100 / 48);
    expect(temperature('212 degF').toNumber('degC')).toBe(100);
  });
});

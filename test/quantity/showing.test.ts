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
    ['150.5 in', undefined, '12 ft 6 1/2 in'],
    ['12 ft', undefined, '12 ft'],
    ['0 in', undefined, '0 in'],
    ['1/32 in', undefined, '1/16 in'],
    ['1/33 in', undefined, '0 in'],
    ['-1/33 in', undefined, '0 in'],
    ['11 31/32 in', undefined, '1 ft'],
    ['5 ft 11 63/64 in', undefined, '6 ft'],
    ['5 ft 11 63/64 in', { denominator: 64 }, '5 ft 11 63/64 in'],
    ['5 ft 11 63/64 in', { denominator: 1 }, '6 ft'],
    ['6 3/4 in', { denominator: 2 }, '7 in'],
    ['6 3/4 in', { denominator: 4 }, '6 3/4 in'],
    ['-18.25 in', undefined, '-1 ft 6 1/4 in'],
    ['1 ft 0 1/2 in', undefined, '1 ft 1/2 in'],
    ['1 m', { denominator: 8 }, '3 ft 3 3/8 in'],
  ] as const)('%s', (text, options, shown) => {
    expect(length(text).format('ft-in', options)).toBe(shown);
  });
});

describe('decimals', () => {
  it.each([
    [volume('7.775 yd3').format(), '7.78 yd3'],
    [volume('6 yd3').format(), '6.00 yd3'],
    [volume('0.001 yd3').format(), '0.001 yd3'],
    [volume('0.0044 yd3').format(), '0.0044 yd3'],
    [volume('-0.0044 yd3').format('yd3', { places: 2 }), '0.00 yd3'],
    [volume('0.005 yd3').format(), '0.01 yd3'],
    [volume('1 yd3').format('m3'), '0.76 m3'],
    [volume('1 yd3').format('m3', { places: 5 }), '0.76455 m3'],
    [mass('34020 lb').format('ton'), '17.01 ton'],
    [mass('0.05 lb').format(), '0.1 lb'],
    [area('46.82313216 m2').format('ft2'), '504 ft2'],
    [slope('1:48').format(), '1:48'],
    [slope('1:48').format('%'), '2.08%'],
    [slope('2%').format('1:n'), '1:50'],
    [slope('3%').format('1:n'), '1:33.33'],
    [slope('-2%').format('1:n'), '-1:50'],
    [slope('0%').format('1:n'), 'level'],
    [slope('2%').format('in/ft'), '0.24 in/ft'],
    [ratio('108%').format(':1'), '1.08:1'],
    [temperature('55 degF').format('degC'), '12.8 degC'],
    [temperature('-40 degC').format('degF'), '-40 degF'],
    [count('12 each').format(), '12 each'],
    [money('12.345 USD').format(), '12.35 USD'],
  ])('%s', (shown, wanted) => {
    expect(shown).toBe(wanted);
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
    [length('28 ft').times(length('18 ft')).times(length('5 in')).toJSON(), { value: '210', unit: 'ft3' }],
    [length('12 ft 6 in').toJSON(), { value: '12.5', unit: 'ft' }],
    [length('12 ft 2 in').toJSON(), { value: '146', unit: 'in' }],
    [volume('5.25 yd3').toJSON(), { value: '5.25', unit: 'yd3' }],
    [slope('1:48').toJSON(), { value: '0.25', unit: 'in/ft' }],
    [money('12.50 USD').toJSON(), { value: '12.5', unit: 'USD' }],
    [temperature('-40 degC').toJSON(), { value: '-40', unit: 'degC' }],
  ])('%j', (json, wanted) => {
    expect(json).toEqual(wanted);
  });

  it('falls back on the canonical unit for what no unit holds exactly', () => {
    const third = length('1 m').over(count('3 each'));
    expect(third.toJSON()).toEqual({ value: `0.${'3'.repeat(60)}`, unit: 'm' });
    expect(length(third.toJSON()).equals(third)).toBe(true);
    expect(length(third.toString()).equals(third)).toBe(true);
  });

  it('gives the nearest binary number when one is asked for', () => {
    expect(volume('1 yd3').toNumber('m3')).toBe(0.764554857984);
    expect(slope('1:48').toNumber('%')).toBe(100 / 48);
    expect(temperature('212 degF').toNumber('degC')).toBe(100);
  });
});

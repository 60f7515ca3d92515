/** What is said of text that cannot be read: what was typed stands in it, and an example that suits the place. */
import { describe, expect, it } from 'vitest';
import { length } from '../../src/index';
import * as faults from '../../src/quantity/faults';
import { type Fault, InputError, toldIn } from '../../src/quantity/input-error';
import { readMoney } from '../../src/quantity/money';
import { isFaulty, readQuantity } from '../../src/quantity/read-quantity';
import * as textFaults from '../../src/quantity/text-faults';
import { type Field, quantity } from '../../src/reckoning/fields';

const said: readonly (readonly [Fault, readonly string[]])[] = [
  [faults.missing('the width', '"12 ft"'), ['the width', '"12 ft"']],
  [faults.missingUnit('the width', 'length', '7'), ['the width', '"7 in"']],
  [faults.missingPartUnit('the width', 'length'), ['the width', '"12 ft 6 in"']],
  [faults.notAQuantity('the width', 'length'), ['the width', '"4 in"']],
  [faults.unreadable('the width', 'wide', 'length'), ['the width', '"wide"', '"4 in"']],
  [faults.decimalComma('the width', '1,5 m'), ['the width', '"1,5 m"']],
  [faults.exponent('the width', '1e5 ft'), ['the width', '"1e5 ft"']],
  [faults.unknownUnit('the width', 'cubits', 'length'), ['the width', '"cubits"', '"4 in"']],
  [faults.surveyFoot('the width'), ['the width']],
  [faults.wrongDimension('the width', 'area', 'length'), ['the width', 'an area', 'a length', '"4 in"']],
  [faults.tooLong('the width', 77), ['the width', '77']],
  [faults.tooManyDigits('the width'), ['the width']],
  [faults.outOfRange('the width'), ['the width']],
  [faults.notPositive('the width'), ['the width']],
  [faults.notACount('bars', 3, 77), ['bars', '3', '77']],
  [faults.wrongType('bars', 'a list of bars'), ['bars', 'a list of bars']],
  [faults.unknownKey('widht', ['width', 'length']), ['"widht"', 'width, length']],
  [faults.tooFew('the list', 3), ['the list', '3']],
  [faults.tooMany('the list', 77), ['the list', '77']],
  [faults.mismatch('add', 'length', 'area'), ['add', 'length', 'area']],
  [faults.currencyMismatch('USD', 'CAD'), ['USD', 'CAD']],
  [faults.wrongType('places', 'a whole number'), ['places', 'a whole number']],
  [faults.doesNotFit('the notch', 'the side'), ['the notch', 'the side']],
  [faults.outOfOrder('the start', 'the end'), ['the start', 'the end']],
  [textFaults.twoWays('the fall', '4:12', '33%', '300%'), ['the fall', '"4:12"', '"33%"', '"300%"']],
  [textFaults.mixedSystems('the width', '1 ft 3 cm'), ['the width', '"1 ft 3 cm"']],
  [textFaults.improperFraction('the width', '9/2 in', '4 1/2 in'), ['the width', '"9/2 in"', '"4 1/2 in"']],
  [textFaults.wrongCase('the strength', 'mPa', 'a millipascal', 'MPa'), ['the strength', '"mPa"', 'MPa']],
  [textFaults.tooSmall('the width'), ['the width']],
  [textFaults.hiddenSign('the width'), ['the width']],
];

describe('a fault', () => {
  it.each(said.map(([fault, parts]) => [fault.sentence, fault, parts] as const))('%s', (_, fault, parts) => {
    for (const part of parts) expect(fault.sentence).toContain(part);
    const holes = [...fault.says.matchAll(/\{(\w+)\}/g)].map(([, name]) => name);
    expect([...new Set(holes)].sort()).toEqual(Object.keys(fault.params ?? {}).sort());
    expect(fault.sentence).not.toMatch(/undefined|\{\w*\}/);
  });
});

const sentenceOf = (input: unknown, dimension: Parameters<typeof readQuantity>[1], what: string): string => {
  const q = readQuantity(input, dimension, what);
  return isFaulty(q) ? q.sentence : '';
};

describe('an example', () => {
  it('suits what is asked for', () => {
    expect(sentenceOf(undefined, 'speed', 'wind')).toContain('"10 mph"');
    expect(sentenceOf(undefined, 'ratio', 'humidity')).toContain('"60%"');
    expect(sentenceOf(undefined, 'length', 'run')).toContain('"12 ft"');
    expect(sentenceOf(undefined, 'length', 'yield')).toContain('"4 in"');
  });

  it('has the number that was typed, in either system', () => {
    expect(sentenceOf(4, 'length', 'thickness')).toContain('"4 in"');
    const q = readQuantity(4, 'length', 'thickness');
    if (!isFaulty(q)) throw new Error('read');
    expect(toldIn(new InputError([{ ...q, path: '' }]), 'metric').issues[0]?.sentence).toContain('mm"');
  });

  it('is that of its own range where it has one', () => {
    const source = {
      kind: 'common-practice',
      title: 'Common practice of the trade',
      fromMemory: false,
    } as const;
    const told = (input: unknown, field: Field<unknown>, system: 'customary' | 'metric'): string => {
      const faults: Fault[] = [];
      field.read(input, (remark) => faults.push(remark as Fault));
      return toldIn(new InputError(faults.map((fault) => ({ ...fault, path: '' }))), system).message;
    };
    const riser = quantity('length', 'riser', 'positive', {
      of: 'a riser',
      example: ['7 in', '175 mm'],
      source,
    });
    expect(told(undefined, riser, 'customary')).toContain('"7 in"');
    expect(told(undefined, riser, 'metric')).toContain('"175 mm"');
    expect(told(12, riser, 'customary')).toContain('"12 in"');
    expect(told(180, riser, 'metric')).toContain('"180 mm"');
    expect(told('7 lb', riser, 'customary')).toContain('"7 in"');
    expect(told('', riser, 'metric')).toContain('"175 mm"');
    const slope = quantity('ratio', 'sideSlope', 'positive', { of: 'a slope', example: '1.5:1', source });
    expect(told(undefined, slope, 'metric')).toContain('"1.5:1"');
    expect(told(4, slope, 'metric')).toContain('"4:1"');
    // What says how to write parts keeps its own example.
    expect(told('12 ft 6', riser, 'customary')).toContain('"12 ft 6 in"');
  });
});

describe('what is no text', () => {
  it.each([true, false, () => 1])('is no amount of money: %s', (input) => {
    expect(readMoney(input, 'price')).toMatchObject({ code: 'not-a-quantity', params: { what: 'price' } });
  });
});

describe('odd spellings', () => {
  it('have their points and spaces taken off', () => {
    expect(length('40 lin. ft. ').equals(length('40 ft'))).toBe(true);
    expect(length('7 ft.').equals(length('7 ft'))).toBe(true);
  });

  it.each(['4:0', '0:4', '0:0'])('of nothing to something are read in no way: %s', (text) => {
    expect(sentenceOf(text, 'slope', 'fall')).not.toMatch(/two ways|Infinity|NaN/);
  });
});

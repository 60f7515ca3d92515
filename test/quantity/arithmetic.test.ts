/**
 * Arithmetic of quantities: exactness, rounding, ordering, and independence of the host.
 *
 * Second method: rational numbers of big integers, written here.
 */
import { Decimal as HostDecimal } from 'decimal.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Attempt, concreteOrder, type FigureSet, slabVolume } from '../../src/index';
import {
  area,
  count,
  density,
  evaporation,
  force,
  InputError,
  length,
  mass,
  massPerArea,
  massPerLength,
  money,
  pressure,
  type Quantity,
  ratio,
  slope,
  speed,
  temperature,
  temperatureDifference,
  temperatureTime,
  time,
  volume,
  volumeRate,
} from '../../src/quantity/index';

describe('products and quotients', () => {
  it.each([
    [
      `length('12 ft').times(length('10 ft'))`,
      () => length('12 ft').times(length('10 ft')),
      () => area('120 ft2'),
    ],
    [
      `length('4 in').times(area('81 ft2'))`,
      () => length('4 in').times(area('81 ft2')),
      () => volume('1 yd3'),
    ],
    [
      `area('81 ft2').times(length('4 in'))`,
      () => area('81 ft2').times(length('4 in')),
      () => volume('1 yd3'),
    ],
    [
      `slope('1/4 in/ft').times(length('12 ft'))`,
      () => slope('1/4 in/ft').times(length('12 ft')),
      () => length('3 in'),
    ],
    [
      `length('100 ft').times(massPerLength('0.668 lb/ft'))`,
      () => length('100 ft').times(massPerLength('0.668 lb/ft')),
      () => mass('66.8 lb'),
    ],
    [
      `length('3 ft').times(massPerArea('2 lb/ft2'))`,
      () => length('3 ft').times(massPerArea('2 lb/ft2')),
      () => massPerLength('6 lb/ft'),
    ],
    [
      `length('1 in').times(density('12 pcf'))`,
      () => length('1 in').times(density('12 pcf')),
      () => massPerArea('1 lb/ft2'),
    ],
    [
      `area('100 ft2').times(massPerArea('0.21 lb/ft2'))`,
      () => area('100 ft2').times(massPerArea('0.21 lb/ft2')),
      () => mass('21 lb'),
    ],
    [
      `area('2 ft2').times(density('150 pcf'))`,
      () => area('2 ft2').times(density('150 pcf')),
      () => massPerLength('300 lb/ft'),
    ],
    [
      `volume('6 yd3').times(density('4050 lb/yd3'))`,
      () => volume('6 yd3').times(density('4050 lb/yd3')),
      () => mass('24300 lb'),
    ],
    [
      `area('1 m2').times(speed('1 m/h'.replace('m/h', 'm/s')))`,
      () => area('1 m2').times(speed('1 m/h'.replace('m/h', 'm/s'))),
      () => volumeRate('3600 m3/h'),
    ],
    [
      `area('144 in2').times(pressure('1 psi'))`,
      () => area('144 in2').times(pressure('1 psi')),
      () => force('144 lbf'),
    ],
    [`time('2 h').times(speed('10 mph'))`, () => time('2 h').times(speed('10 mph')), () => length('20 mi')],
    [
      `time('30 min').times(volumeRate('20 yd3/h'))`,
      () => time('30 min').times(volumeRate('20 yd3/h')),
      () => volume('10 yd3'),
    ],
    [
      `time('5 h').times(temperatureDifference('20 degF'))`,
      () => time('5 h').times(temperatureDifference('20 degF')),
      () => temperatureTime('100 degF-h'),
    ],
    [
      `time('5 h').times(evaporation('0.2 lb/ft2/h'))`,
      () => time('5 h').times(evaporation('0.2 lb/ft2/h')),
      () => massPerArea('1 lb/ft2'),
    ],
    [`length('10 ft').times(ratio('10%'))`, () => length('10 ft').times(ratio('10%')), () => length('1 ft')],
    [`ratio('10%').times(length('10 ft'))`, () => ratio('10%').times(length('10 ft')), () => length('1 ft')],
    [`ratio('50%').times(ratio('50%'))`, () => ratio('50%').times(ratio('50%')), () => ratio('25%')],
    [`ratio('50%').times(count('4 each'))`, () => ratio('50%').times(count('4 each')), () => count('2 each')],
    [`count('4 each').times(ratio('50%'))`, () => count('4 each').times(ratio('50%')), () => count('2 each')],
    [
      `count('3 each').times(money('12 USD'))`,
      () => count('3 each').times(money('12 USD')),
      () => money('36 USD'),
    ],
  ] as [string, () => Quantity, () => Quantity][])('%s', (_text, productOf, wantedOf) => {
    const [product, wanted] = [productOf(), wantedOf()];
    expect(product.dimension).toBe(wanted.dimension);
    expect(product.equals(wanted)).toBe(true);
  });

  it.each([
    [
      `area('120 ft2').over(length('10 ft'))`,
      () => area('120 ft2').over(length('10 ft')),
      () => length('12 ft'),
    ],
    [
      `volume('1 yd3').over(area('81 ft2'))`,
      () => volume('1 yd3').over(area('81 ft2')),
      () => length('4 in'),
    ],
    [
      `volume('1 yd3').over(length('4 in'))`,
      () => volume('1 yd3').over(length('4 in')),
      () => area('81 ft2'),
    ],
    [
      `length('3 in').over(slope('1/4 in/ft'))`,
      () => length('3 in').over(slope('1/4 in/ft')),
      () => length('12 ft'),
    ],
    [
      `mass('24300 lb').over(volume('6 yd3'))`,
      () => mass('24300 lb').over(volume('6 yd3')),
      () => density('150 pcf'),
    ],
    [
      `mass('24300 lb').over(density('150 pcf'))`,
      () => mass('24300 lb').over(density('150 pcf')),
      () => volume('6 yd3'),
    ],
    [
      `mass('66.8 lb').over(length('100 ft'))`,
      () => mass('66.8 lb').over(length('100 ft')),
      () => massPerLength('0.668 lb/ft'),
    ],
    [
      `volume('10 yd3').over(volumeRate('20 yd3/h'))`,
      () => volume('10 yd3').over(volumeRate('20 yd3/h')),
      () => time('30 min'),
    ],
    [
      `force('144 lbf').over(area('1 ft2'))`,
      () => force('144 lbf').over(area('1 ft2')),
      () => pressure('1 psi'),
    ],
    [
      `massPerArea('1 lb/ft2').over(time('5 h'))`,
      () => massPerArea('1 lb/ft2').over(time('5 h')),
      () => evaporation('0.2 lb/ft2/h'),
    ],
    [`length('3 ft').over(length('2 ft'))`, () => length('3 ft').over(length('2 ft')), () => ratio('1.5:1')],
    [
      `length('3 ft').over(count('2 each'))`,
      () => length('3 ft').over(count('2 each')),
      () => length('18 in'),
    ],
    [
      `count('3 each').over(count('2 each'))`,
      () => count('3 each').over(count('2 each')),
      () => ratio('1.5:1'),
    ],
    [
      `money('36 USD').over(money('12 USD'))`,
      () => money('36 USD').over(money('12 USD')),
      () => ratio('3:1'),
    ],
    [
      `temperatureDifference('9 degF').over(temperatureDifference('5 degC'))`,
      () => temperatureDifference('9 degF').over(temperatureDifference('5 degC')),
      () => ratio('1:1'),
    ],
  ] as [string, () => Quantity, () => Quantity][])('%s', (_text, quotientOf, wantedOf) => {
    const [quotient, wanted] = [quotientOf(), wantedOf()];
    expect(quotient.dimension).toBe(wanted.dimension);
    expect(quotient.compareTo(wanted)).toBe(0);
  });

  it('are refused where they have no meaning', () => {
    const any = (q: Quantity<never> | Quantity): Quantity<'length'> => q as unknown as Quantity<'length'>;
    expect(() => any(mass('1 lb')).times(any(mass('1 lb')))).toThrow('cannot multiply a mass and a mass');
    expect(() => any(temperature('50 degF')).times(any(ratio('2:1')))).toThrow(InputError);
    expect(() => any(ratio('2:1')).times(any(temperature('50 degF')))).toThrow(InputError);
    expect(() => any(temperature('50 degF')).over(any(temperature('50 degF')))).toThrow(InputError);
    expect(() => any(length('1 ft')).over(any(mass('1 lb')))).toThrow('cannot divide a length and a mass');
    expect(() => length('1 ft').plus(any(area('1 ft2')))).toThrow('cannot add a length and an area');
    expect(() => length('1 ft').minus(any(area('1 ft2')))).toThrow('cannot subtract a length and an area');
    expect(() => length('1 ft').compareTo(any(area('1 ft2')))).toThrow('cannot compare a length and an area');
    expect(() => length('1 ft').plus(undefined as never)).toThrow(InputError);
    expect(() => length('1 ft').plus('1 ft' as never)).toThrow(InputError);
    const point = temperature('20 degC');
    for (const make of [
      () => point.plus(point),
      () => point.minus(point),
      () => point.negated(),
      () => point.abs(),
    ]) {
      expect(make).toThrow(InputError);
    }
    expect(() => length('1 ft').times(5 as never)).toThrow(InputError);
    expect(() => length('1 ft').over(5 as never)).toThrow(InputError);
    for (const places of [-1, 1.5, 61, Number.NaN])
      expect(() => length('1 ft').format('ft', { places })).toThrow(InputError);
    expect(() => length('1 ft').format('ft-in', { denominator: 3 as never })).toThrow('one of 1, 2, 4');
    expect(() => length('1 ft').over(length('0 ft'))).toThrow('cannot divide by zero');
    expect(() => money('1 USD').plus(money('1 CAD'))).toThrow('cannot mix USD and CAD');
    expect(() => money('1 USD').over(money('1 CAD'))).toThrow('cannot mix USD and CAD');
    expect(() => money('1 USD').format('CAD')).toThrow('cannot mix USD and CAD');
    expect(() => length('1 ft').format('yd3' as never)).toThrow('unknown unit "yd3"');
    expect(() => length('1 ft').upTo(length('0 ft'))).toThrow('the increment must be greater than zero');
  });

  it('are refused to bare operators', () => {
    expect(() => Number(length('1 ft'))).toThrow('operators such as + and < drop the unit');
    // @ts-expect-error a quantity is no number
    expect(() => length('1 ft') * 2).toThrow(InputError);
    expect(() => (length('1 ft') as unknown as number) < 2).toThrow(InputError);
    expect(`${length('1 ft')}`).toBe('1 ft');
  });
});

describe('rounding up and down', () => {
  it('does not tip at a whole number of increments', () => {
    const slab = length('4 in').times(length('12 ft')).times(length('35.4375 ft'));
    expect(slab.upTo(volume('0.25 yd3')).format()).toBe('5.25 yd3');
    expect(slab.downTo(volume('0.25 yd3')).format()).toBe('5.25 yd3');
  });

  it('holds for every exact number of quarter yards, however it is come by', () => {
    const quarters = fc.integer({ min: 1, max: 4000 });
    const inches = fc.integer({ min: 1, max: 24 });
    const feet = fc.integer({ min: 1, max: 60 });
    fc.assert(
      fc.property(quarters, inches, feet, (q, t, w) => {
        const net = volume(`${q} yd3`).over(count('4 each'));
        // The length that makes exactly q quarter yards, often without a finite decimal.
        const long = net.over(length(`${t} in`)).over(length(`${w} ft`));
        const slab = long.times(length(`${w} ft`)).times(length(`${t} in`));
        for (const rounded of [slab.upTo(volume('0.25 yd3')), slab.downTo(volume('0.25 yd3'))]) {
          if (rounded.compareTo(net) !== 0) throw new Error(`${q}/4 yd3 became ${rounded}`);
        }
      }),
      { numRuns: 3000 },
    );
  });

  it('does tip at the smallest real excess', () => {
    const inc = volume('0.25 yd3');
    expect(volume('5.25000000000000000001 yd3').upTo(inc).format()).toBe('5.50 yd3');
    expect(volume('5.24999999999999999999 yd3').downTo(inc).format()).toBe('5.00 yd3');
    expect(volume('-0.1 yd3').upTo(inc).sign()).toBe(0);
    expect(volume('-0.1 yd3').downTo(inc).equals(volume('-0.25 yd3'))).toBe(true);
  });

  it('never goes below what goes in, nor a whole increment above', () => {
    const thousandths = fc.integer({ min: 0, max: 10_000_000 });
    fc.assert(
      fc.property(thousandths, fc.integer({ min: 1, max: 5000 }), (n, d) => {
        const [v, inc] = [volume(`${n}/1000 yd3`), volume(`${d}/1000 yd3`)];
        const up = v.upTo(inc);
        if (up.lessThan(v) || !up.minus(v).lessThan(inc)) throw new Error(`${v} by ${inc}: ${up}`);
      }),
    );
  });
});

describe('exactness', () => {
  /** Rational numbers: numerator and denominator. */
  type Rational = readonly [bigint, bigint];
  const mul = (a: Rational, b: Rational): Rational => [a[0] * b[0], a[1] * b[1]];
  const add = (a: Rational, b: Rational): Rational => [a[0] * b[1] + b[0] * a[1], a[1] * b[1]];
  const same = (text: string, [n, d]: Rational): boolean => {
    const [whole = '', decimals = ''] = text.split('.');
    return BigInt(whole + decimals) * d === n * 10n ** BigInt(decimals.length);
  };

  it('agrees with rational arithmetic to the last digit', () => {
    const sixteenths = (n: number): Quantity<'length'> => length(`${Math.floor(n / 16)} ${n % 16}/16 in`);
    const term = fc.tuple(
      fc.integer({ min: 1, max: 9999 }),
      fc.integer({ min: 1, max: 9999 }),
      fc.integer({ min: 1, max: 999 }),
    );
    fc.assert(
      fc.property(fc.array(term, { minLength: 1, maxLength: 12 }), (terms) => {
        let sum = volume('0 in3');
        let exact: Rational = [0n, 1n];
        for (const [a, b, c] of terms) {
          sum = sum.plus(sixteenths(a).times(sixteenths(b)).times(sixteenths(c)));
          exact = add(exact, mul(mul([BigInt(a), 16n], [BigInt(b), 16n]), [BigInt(c), 16n]));
        }
        const shown = sum;
        if (shown.unit !== 'in3' || !same(shown.value, exact)) throw new Error(JSON.stringify(shown));
      }),
    );
  });

  it('does not see what the host does to its own decimals', () => {
    const before = volume('5.25 yd3').over(area('425.25 ft2')).toString();
    const [precision, rounding] = [HostDecimal.precision, HostDecimal.rounding];
    try {
      HostDecimal.set({ precision: 2, rounding: 0, toExpNeg: 0, toExpPos: 0 });
      expect(volume('5.25 yd3').over(area('425.25 ft2')).toString()).toBe(before);
      expect(length('28 ft').times(length('18 ft')).times(length('5 in')).format('yd3')).toBe('7.78 yd3');
    } finally {
      HostDecimal.set({ precision, rounding, toExpNeg: -7, toExpPos: 21 });
    }
  });

  it('reads back however large it grew', () => {
    const huge = length('999999999999 ft').times(length('999999999999 ft'));
    expect(area(huge.toString()).equals(huge)).toBe(true);
  });

  it('cannot be changed from outside', () => {
    const q = length('4 in');
    expect(() => {
      (q as unknown as { dimension: string }).dimension = 'area';
    }).toThrow(TypeError);
    const sum = q.plus(length('1 in'));
    expect(q.format()).toBe('4 in');
    expect(sum.format()).toBe('5 in');
  });
});

describe('signs and order', () => {
  it('orders', () => {
    expect(length('1 ft').compareTo(length('12 in'))).toBe(0);
    expect(length('1 ft').lessThan(length('13 in'))).toBe(true);
    expect(length('1 ft').lessThan(length('12 in'))).toBe(false);
    expect(length('1 ft').greaterThan(length('11 in'))).toBe(true);
    expect(length('1 ft').greaterThan(length('12 in'))).toBe(false);
    expect(length('1 ft').equals(area('1 ft2'))).toBe(false);
    expect(length('1 ft').equals('1 ft' as never)).toBe(false);
  });

  it('sees no difference in the 60th digit, but one in the 25th', () => {
    const third = length('1 m').over(count('3 each'));
    const almost = third.plus(third).plus(third);
    expect(almost.equals(length('1 m'))).toBe(false);
    expect(almost.compareTo(length('1 m'))).toBe(0);
    expect(length('1 m').compareTo(almost)).toBe(0);
    expect(almost.lessThan(length('1 m'))).toBe(false);
    expect(almost.upTo(length('1 m')).equals(length('1 m'))).toBe(true);
    expect(almost.downTo(length('1 m')).equals(length('1 m'))).toBe(true);
    const hair = length('0.0000000000000000000000001 m');
    expect(almost.minus(hair).compareTo(length('1 m'))).toBe(-1);
    expect(almost.plus(hair).compareTo(length('1 m'))).toBe(1);
    expect(almost.plus(hair).upTo(length('1 m')).equals(length('2 m'))).toBe(true);
    // Small and large amounts alike: the room is a share of the amount.
    const tiny = third.times(ratio('0.0000000001%'));
    expect(tiny.plus(tiny).plus(tiny).compareTo(length('0.000000000001 m'))).toBe(0);
    expect(tiny.plus(hair).compareTo(tiny)).toBe(1);
    expect(length('-1 m').compareTo(almost.negated())).toBe(0);
    // Typed numbers of any length up to 30 digits are never blurred.
    expect(length('0.10000000000000000000000000001 m').compareTo(length('0.1 m'))).toBe(1);
  });

  it('takes a third of a yard for a foot, but not a hair more', () => {
    const third = length('1 yd').over(count('3 each'));
    expect(third.compareTo(length('1 ft'))).toBe(0);
    const product = length('1 ft').over(count('7 each')).times(count('7 each'));
    expect(product.compareTo(length('1 ft'))).toBe(0);
    expect(product.plus(length('0.00000000000000000001 in')).compareTo(length('1 ft'))).toBe(1);
    expect(product.minus(length('0.00000000000000000001 in')).compareTo(length('1 ft'))).toBe(-1);
  });

  it('has signs', () => {
    expect([length('-1 ft').sign(), length('0 ft').sign(), length('1 ft').sign()]).toEqual([-1, 0, 1]);
    expect(length('-1 ft').abs().equals(length('1 ft'))).toBe(true);
    expect(length('1 ft').abs().equals(length('1 ft'))).toBe(true);
    expect(length('1 ft').negated().equals(length('-1 ft'))).toBe(true);
  });
});

describe('next to nothing', () => {
  const residue = `0.${'0'.repeat(121)}3`;

  it('is zero once it is less than any rounding leaves, so that a result can be read again', () => {
    const stray = length('1 m').times(ratio({ value: residue, unit: ':1' }));
    expect(stray.sign()).toBe(0);
    expect({ ...stray }).toEqual({ value: '0', unit: 'm', dimension: 'length' });
    expect(length({ value: residue, unit: 'm' }).format()).toBe('0 m');
    const small = length({ value: `0.${'0'.repeat(38)}3`, unit: 'm' });
    expect(small.sign()).toBe(1);
    expect(length({ ...small }).equals(small)).toBe(true);
  });

  it('is refused at the door where something must be there', () => {
    const tiny = `0.${'0'.repeat(29)}1`;
    const codes = <F extends FigureSet>(result: Attempt<F>): string =>
      result.ok ? 'read' : result.error.issues.map(({ code }) => code).join();
    const side = { shape: 'rectangle', length: '10 ft', width: `${tiny} in` } as const;
    const thin = slabVolume.attempt({ outline: { ...side, width: '8 ft' }, thickness: `${tiny} in` });
    expect(codes(thin)).toBe('out-of-range');
    expect(codes(concreteOrder.attempt({ elements: [{ volume: `${tiny} ft3` }] } as never))).toMatch(
      /^out-of-range/,
    );
  });
});

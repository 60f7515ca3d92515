/**
 * More misprints that stand in print, from the tables and examples that the check vectors were taken from: what is
 * printed beside what is right.
 */
import { footingVolume } from '../../src/index';
import type { AnyCalculation } from '../../src/opinion/input-places';
import { GILLETTE, len, line, NONE, n, one, type Published, usd } from './published-slips';

const FOOTING = {
  footings: [{ kind: 'strip', length: '66.66 ft', width: '2 ft', depth: '1 ft' }],
} as const;

export const misprints: readonly Published[] = [
  line(
    'Teaching site, network with a target of 30 weeks',
    '2 over 1.41 is 1.41, with the divisor printed 141',
    one('z', 'z = d ÷ s', 'ratio', NONE),
    { d: n('2'), s: n('1.414214') },
    { z: '0.0141:1' },
    ['point-moved'],
  ),
  line(
    'CRC Handbook, vapor pressure at 38 degC',
    '6.6298 kPa, printed 6.6398',
    one('pressure', 'p = k × u', 'pressure', 'kPa'),
    { k: n('1'), u: ['pressure', '6.6298 kPa'] },
    { pressure: '6.6398 kPa' },
    ['digit-off', 'carried-wrongly'],
  ),
  line(
    'Thumb rules of mixes, in SI units',
    '10 degF are 5.6 degC, printed 1',
    one('rise', 'r = k × u', 'temperature-difference', 'degC'),
    { k: n('1'), u: ['temperature-difference', '10 degF'] },
    { rise: '1 degC' },
    'unexplained',
  ),
  line(
    'Engineer’s table of CSA A23.3, 12.2.3',
    '20M at 30 MPa is 513 mm, printed 650, as it is without the 0.8 of small bars',
    one('length', 'l = f × k × d', 'length', 'mm'),
    { f: n('32.8634'), k: n('0.8'), d: len('19.5 mm') },
    { length: '650 mm' },
    ['factor-left-out'],
  ),
  line(
    'Design table of AS 3600, 13.1.2.2',
    '16 mm at 32 MPa is 609.6 mm, printed 600',
    one('length', 'l = k × d', 'length', 'mm'),
    { k: n('38.1'), d: len('16 mm') },
    { length: '600 mm' },
    'unexplained',
  ),
  line(
    'Measurement table of a staircase',
    'half of 0.25 by 0.15 m, printed 1/2 (0.25 + 1.5)',
    one('side', 'A = a × b ÷ 2', 'area', 'm2'),
    { a: len('0.25 m'), b: len('0.15 m') },
    { side: '0.1875 m2' },
    ['point-moved'],
  ),
  line(
    'Handbook of Railroad Construction (G. L. Vose), section 106',
    '764.8 yd3 for 7 ft, printed 802',
    one('cut', 'V = k × h × (b + s × h) ÷ c', 'ratio', NONE),
    { k: n('100'), h: n('7'), b: n('19'), s: n('1.5'), c: n('27') },
    { cut: '802:1' },
    'unexplained',
  ),
  line(
    `${GILLETTE}, ch. XV, Toronto walk`,
    '2.7 yd3 at $0.80 are $2.16, printed 2.21',
    one('gravel', 'g = n × p', 'money', 'USD'),
    { n: n('2.7'), p: usd('0.80') },
    { gravel: '2.21 USD' },
    'unexplained',
  ),
  line(
    `${GILLETTE}, ch. XV, Quincy walk`,
    '$13.57 over 324 ft2 is $0.0419, printed 0.038',
    one('finish', 'f = c ÷ a × k', 'money', 'USD'),
    { c: usd('13.57'), a: n('324'), k: n('100') },
    { finish: '3.8 USD' },
    'unexplained',
  ),
  line(
    `${GILLETTE}, paving, p. 291`,
    '2,000 ft of a street of 30 ft at 6 in are 1,111 yd3, printed 667',
    one('volume', 'V = L × W × t', 'volume', 'yd3'),
    { L: len('2000 ft'), W: len('30 ft'), t: len('6 in') },
    { volume: '667 yd3' },
    'unexplained',
  ),
  line(
    'Product data sheet of a bagged mix',
    '0.45 ft3 are 0.01274 m3, printed 0.017',
    one('volume', 'V = k × u', 'volume', 'm3'),
    { k: n('1'), u: ['volume', '0.45 ft3'] },
    { volume: '0.017 m3' },
    'unexplained',
  ),
  line(
    'Bureau of Mines, IC 9298',
    'a gallon is 3.7854 L, printed 3.7853',
    one('volume', 'V = k × u', 'volume', 'L'),
    { k: n('1'), u: ['volume', '1 gal'] },
    { volume: '3.7853 L' },
    'rounding',
  ),
  line(
    'Army table of hauled weights',
    '7.78 yd3 at 2,565 lb/yd3 are 19,956 lb, printed 19,958',
    one('mass', 'W = V × d', 'mass', 'lb'),
    { V: ['volume', '7.78 yd3'], d: ['density', '95 pcf'] },
    { mass: '19958 lb' },
    'rounding',
  ),
  {
    where: 'Navy Engineering Aid, figure 5-2',
    what: '2 × 33.33 × 2 × 1 is 133.32 ft3, printed 133.032',
    calculation: footingVolume as unknown as AnyCalculation,
    input: FOOTING,
    claims: { volume: '133.032 ft3' },
    is: 'rounding',
  },
];

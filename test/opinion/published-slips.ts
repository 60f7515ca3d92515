/**
 * Misprints and slips that stand in print, each as the claim that it makes beside what is right, with the slip that it
 * is; and roundings in print, which are none. Arithmetic that no calculation of the library does stands as a line of a
 * notebook.
 */
import { type SlipCode, slabVolume } from '../../src/index';
import type { AnyCalculation } from '../../src/opinion/input-places';
import { type Line, notebook, type Values } from './line';

/** One place in print. */
export interface Published {
  /** Where it stands. */
  readonly where: string;
  /** What is printed, and what is right. */
  readonly what: string;
  readonly calculation: AnyCalculation;
  readonly input: unknown;
  readonly claims: Readonly<Record<string, string>>;
  /** The slip, by any of the codes that name it rightly; `rounding` where it is none and must not be flagged. */
  readonly is: readonly SlipCode[] | 'rounding' | 'unexplained';
}

type Is = Published['is'];

export function line(
  where: string,
  what: string,
  lines: readonly Line[],
  values: Values,
  claims: Published['claims'],
  is: Is,
): Published {
  const [calculation, input] = notebook(lines, values);
  return { where, what, calculation: calculation as AnyCalculation, input, claims, is };
}

export const one = (figure: string, formula: string, ...gives: Line['gives']): Line[] => [
  { figure, formula, gives },
];

export const GILLETTE = 'Gillette and Hill, Concrete Construction: Methods and Costs, 1908';
export const NONE = ':1';

/** A number without a unit. */
export const n = (text: string): readonly ['ratio', string] => ['ratio', `${text}:1`];
export const usd = (text: string): readonly ['money', string] => ['money', `${text} USD`];
export const len = (text: string): readonly ['length', string] => ['length', text];

const money: readonly Published[] = [
  line(
    `${GILLETTE}, p. 318`,
    '16 ct a square foot is $1.44 a square yard, printed $1.54',
    one('price', 'P = p × n', 'money', 'USD'),
    { p: usd('0.16'), n: n('9') },
    { price: '1.54 USD' },
    ['carried-wrongly', 'digit-off'],
  ),
  line(
    'OpenStax, Contemporary Mathematics, 6.2',
    '36.70 less 29.52 is 7.18, printed 7.38',
    one('discount', 'd = o − s', 'money', 'USD'),
    { o: usd('36.70'), s: usd('29.52') },
    { discount: '7.38 USD' },
    ['digit-off', 'carried-wrongly'],
  ),
  line(
    'OpenStax, Contemporary Mathematics, 6.2',
    'a markup of 125% is a factor of 2.25, printed 1 + 2.25, which would give $8.17 for $11.80',
    one('cost', 'c = r ÷ (1 + m)', 'money', 'USD'),
    { r: usd('26.55'), m: ['ratio', '125%'] },
    { cost: '8.17 USD' },
    ['allowance-as-factor'],
  ),
  line(
    `${GILLETTE}, retaining wall, ch. XIII`,
    '224 h at 35 ct are $78.40, printed 77.40, and the sum carries it',
    [
      { figure: 'foreman', formula: 'f = t × p', gives: ['money', 'USD'] },
      { figure: 'total', formula: 's = c + f', gives: ['money', 'USD'] },
    ],
    { t: n('224'), p: usd('0.35'), c: usd('359.70') },
    { foreman: '77.40 USD', total: '437.10 USD' },
    ['carried-wrongly', 'digit-off'],
  ),
  line(
    `${GILLETTE}, retaining wall, ch. XIII`,
    '460 h at 35 ct are $161.00, printed 171.00',
    one('foreman', 'f = t × p', 'money', 'USD'),
    { t: n('460'), p: usd('0.35') },
    { foreman: '171.00 USD' },
    ['carried-wrongly', 'digit-off'],
  ),
  line(
    `${GILLETTE}, pp. 59-60, in a transcription`,
    'the line of 12 ct is dropped, and six lines add to 78 ct for 90',
    one('total', 't = a + b + c + d + e + f + g', 'ratio', NONE),
    { a: n('17'), b: n('6'), c: n('30'), d: n('12'), e: n('5'), f: n('5'), g: n('15') },
    { total: '78:1' },
    ['term-left-out'],
  ),
  line(
    'Comptroller General, JV Contractors, B-250059',
    'the total stands in the column of the unit price',
    [
      { figure: 'unit', formula: 'u = p × f', gives: ['money', 'USD'] },
      { figure: 'total', formula: 't = u × q', gives: ['money', 'USD'] },
    ],
    { p: usd('4.15'), f: n('1.25'), q: n('38') },
    { unit: '197.13 USD', total: '197.13 USD' },
    ['unit-price-for-total'],
  ),
  line(
    `${GILLETTE}, ch. III`,
    '$17.00 over 8 is $2.125, printed 2.12',
    one('cost', 'c = a ÷ n', 'money', 'USD'),
    { a: usd('17.00'), n: n('8') },
    { cost: '2.12 USD' },
    'rounding',
  ),
  line(
    `${GILLETTE}, p. 283`,
    '49 h at 12.5 ct are $6.125, printed 6.11',
    one('labor', 'l = t × p', 'money', 'USD'),
    { t: n('49'), p: usd('0.125') },
    { labor: '6.11 USD' },
    'unexplained',
  ),
  line(
    `${GILLETTE}, ch. XV, Toronto walk`,
    '1.66 bbl at $1.54 are $2.56, printed 2.49',
    one('cement', 'c = n × p', 'money', 'USD'),
    { n: n('1.66'), p: usd('1.54') },
    { cement: '2.49 USD' },
    'unexplained',
  ),
  line(
    `${GILLETTE}, columns, fig. 232`,
    '$11.70 over 18.52 yd3 is 63.2 ct, printed 62.7',
    one('cost', 'c = a ÷ v × 100', 'money', 'USD'),
    { a: usd('11.70'), v: n('18.52') },
    { cost: '62.7 USD' },
    'unexplained',
  ),
];

const masses: readonly Published[] = [
  line(
    `${GILLETTE}, p. 42`,
    'printed 190 × 8.355 = 23 gal: the quotient; the product is 1,587',
    one('water', 'g = w ÷ k', 'ratio', NONE),
    { w: n('190'), k: n('8.355') },
    { water: '1587:1' },
    ['multiplied-for-divided'],
  ),
  line(
    `${GILLETTE}, p. 42`,
    '399 and 1188 lb are 1,587 lb, printed 1.587',
    one('dry', 'd = c + s', 'mass', 'lb'),
    { c: ['mass', '399 lb'], s: ['mass', '1188 lb'] },
    { dry: '1.587 lb' },
    ['point-moved'],
  ),
  line(
    'State highway specifications, section 109, example II',
    '2,819,610 lb, printed 2,819.610',
    one('load', 'w = a + b', 'mass', 'lb'),
    { a: ['mass', '2819000 lb'], b: ['mass', '610 lb'] },
    { load: '2819.610 lb' },
    ['point-moved'],
  ),
  line(
    'Teaching site, batch weights',
    '1000 kg with 2% surface moisture is batched as 1020 kg, printed 980',
    one('batch', 'w = s × (1 + m)', 'mass', 'kg'),
    { s: ['mass', '1000 kg'], m: ['ratio', '2%'] },
    { batch: '980 kg' },
    ['allowance-turned'],
  ),
  line(
    'ASTM A615M table 1 on a mill’s page',
    '#5 is 1.552 kg/m, printed 1.522',
    one('mass', 'w = k × u', 'mass-per-length', 'kg/m'),
    { k: n('1'), u: ['mass-per-length', '1.043 lb/ft'] },
    { mass: '1.522 kg/m' },
    ['digit-off', 'digit-dropped'],
  ),
  line(
    'ASTM A615M table 1 on a mill’s page',
    '#11 is 7.907 kg/m, printed 7.970',
    one('mass', 'w = k × u', 'mass-per-length', 'kg/m'),
    { k: n('1'), u: ['mass-per-length', '5.313 lb/ft'] },
    { mass: '7.970 kg/m' },
    ['digits-transposed'],
  ),
  line(
    'ASTM A615M table 1 on a mill’s page',
    'once around #11 is 112.5 mm, printed 1125',
    one('around', 'p = π × d', 'length', 'mm'),
    { d: len('35.81 mm') },
    { around: '1125 mm' },
    ['point-moved'],
  ),
  line(
    'City of Austin, item 406S, size table',
    '#8 is 1.211 kg a foot, printed 2.211',
    one('mass', 'm = l × u', 'mass', 'kg'),
    { l: len('1 ft'), u: ['mass-per-length', '2.670 lb/ft'] },
    { mass: '2.211 kg' },
    ['digit-off', 'carried-wrongly'],
  ),
  line(
    'Fajardo, Simplified Construction Estimate, table 3-1',
    '10.5 m of 20 mm bar are 25.89 kg, printed 25.69',
    one('mass', 'm = π × d² ÷ 4 × l × g', 'mass', 'kg'),
    { d: len('20 mm'), l: len('10.5 m'), g: ['density', '7850 kg/m3'] },
    { mass: '25.69 kg' },
    ['digit-off'],
  ),
  line(
    'Homework site, overlay of 2.5 mi',
    '5,856.84 tons at 147.9 lb/ft3, printed 58,568.4 at 1479',
    one('mass', 'W = V × d', 'mass', 'ton'),
    { V: ['volume', '79200 ft3'], d: ['density', '147.9 pcf'] },
    { mass: '58568.4 ton' },
    ['point-moved'],
  ),
  line(
    `${GILLETTE}, ch. I`,
    '2,035 over 1.05 is 1,938, with the divisor printed 1.5',
    one('dry', 'd = w ÷ f', 'ratio', NONE),
    { w: n('2035'), f: n('1.05') },
    { dry: '1356.7:1' },
    ['digit-dropped', 'digits-transposed'],
  ),
  line(
    `${GILLETTE}, ch. I`,
    '2,035 over 1.05 is 1,938, printed 1,98',
    one('dry', 'd = w ÷ f', 'ratio', NONE),
    { w: n('2035'), f: n('1.05') },
    { dry: '198:1' },
    ['digit-dropped'],
  ),
  line(
    `${GILLETTE}, ch. I`,
    'loose dry sand of 45% voids is 2,457 lb/yd3, printed 3,457',
    one('sand', 's = g × (1 − v)', 'density', 'lb/yd3'),
    { g: ['density', '4467.27 lb/yd3'], v: ['ratio', '45%'] },
    { sand: '3457 lb/yd3' },
    ['digit-off', 'carried-wrongly'],
  ),
  line(
    'Takeoff of a slab 100 ft by 83 ft',
    '12,286.84 lb, printed 12,286',
    one('steel', 'W = s × (1 + a)', 'mass', 'lb'),
    { s: ['mass', '11169.86 lb'], a: ['ratio', '10%'] },
    { steel: '12286 lb' },
    'rounding',
  ),
  line(
    'University course, evaporation nomograph',
    '0.2 lb/ft2/h is 0.976 kg/m2/h, printed 1',
    one('rate', 'r = k × e', 'evaporation', 'kg/m2/h'),
    { k: n('1'), e: ['evaporation', '0.2 lb/ft2/h'] },
    { rate: '1 kg/m2/h' },
    'rounding',
  ),
];

const sizes: readonly Published[] = [
  line(
    'reference.com, tenths to inches',
    'an inch is 0.833 tenths of a foot, printed 0.0833',
    one('tenths', 't = i ÷ f × 10', 'ratio', NONE),
    { i: len('1 in'), f: len('1 ft') },
    { tenths: '0.0833:1' },
    ['point-moved'],
  ),
  line(
    'UFC 3-260-03, second frost example',
    '30 in are 762 mm, printed 76',
    one('base', 'b = k × a', 'length', 'mm'),
    { k: n('1'), a: len('30 in') },
    { base: '76 mm' },
    ['digit-dropped', 'point-moved'],
  ),
  line(
    'UFC 3-260-03, second frost example',
    'from 11 October to 16 April are 187 days, printed 188',
    one('season', 'd = e − b', 'count', 'each'),
    { b: ['count', '284 each'], e: ['count', '471 each'] },
    { season: '188 each' },
    ['one-off-count', 'carried-wrongly'],
  ),
  line(
    'UFGS 03300N, curbs',
    '100 ft are 30.48 m, printed 30 mm',
    one('spacing', 's = k × a', 'length', 'm'),
    { k: n('1'), a: len('100 ft') },
    { spacing: '30 mm' },
    ['wrong-unit'],
  ),
  line(
    'EN5622, pace method',
    'the pace is 0.75 m, printed 0.075',
    one('distance', 'H = p × n', 'length', 'm'),
    { p: len('0.75 m'), n: n('200') },
    { distance: '15 m' },
    ['point-moved'],
  ),
  line(
    'International Residential Code in a county summary',
    '31.5 in are 800 mm, printed 787, which is 31 in',
    one('width', 'w = k × a', 'length', 'mm'),
    { k: n('1'), a: len('31.5 in') },
    { width: '787 mm' },
    ['digit-dropped'],
  ),
  line(
    'CTM4, column footing',
    '6000 over 1432 is 4.19, printed 4.12',
    one('pieces', 'n = a ÷ b', 'ratio', NONE),
    { a: len('6000 mm'), b: len('1432 mm') },
    { pieces: '4.12:1' },
    ['digit-off'],
  ),
  line(
    'NPTEL, lecture 29, tie bar',
    'a bond of 24.6 printed 246 makes the length 3.56 for 35.57 cm',
    one('length', 'L = 2 × d × s ÷ (4 × b)', 'length', 'cm'),
    { d: len('1 cm'), s: n('1750'), b: n('24.6') },
    { length: '3.56 cm' },
    ['point-moved'],
  ),
  line(
    'Engineer’s table of CSA A23.3, 12.2.3',
    '15M at 30 MPa is 430 mm, printed 530',
    one('length', 'L = ceil(a ÷ i) × i', 'length', 'mm'),
    { a: len('420.7 mm'), i: len('10 mm') },
    { length: '530 mm' },
    ['digit-off', 'carried-wrongly'],
  ),
  line(
    'Beam of 3 m with stirrups',
    '3.0 over 0.2 are 15 spaces and 16 stirrups, printed 15',
    one('stirrups', 'n = L ÷ s + 1', 'count', 'each'),
    { L: len('3.0 m'), s: len('0.2 m') },
    { stirrups: '15 each' },
    ['spaces-for-bars'],
  ),
  line(
    'Beam of 3 m with stirrups',
    'one leg of 0.25 m is printed 0.15, and the stirrup 0.80 m for 0.90',
    one('stirrup', 'l = a + b + c + d + e + f', 'length', 'm'),
    {
      a: len('0.15 m'),
      b: len('0.25 m'),
      c: len('0.15 m'),
      d: len('0.25 m'),
      e: len('0.05 m'),
      f: len('0.05 m'),
    },
    { stirrup: '0.80 m' },
    ['digit-off', 'carried-wrongly', 'other-input'],
  ),
  line(
    'Forum answer on IS 456, 26.2.1',
    'the full yield for 0.87 of it: 1350 mm for 1175',
    one('length', 'L = d × k × y ÷ (4 × b)', 'length', 'mm'),
    { d: len('25 mm'), k: n('0.87'), y: ['pressure', '415 MPa'], b: ['pressure', '1.92 MPa'] },
    { length: '1351 mm' },
    ['factor-left-out'],
  ),
  line(
    'Construction Materials and Methods, footing widths',
    '29 in, printed 19',
    one('width', 'w = P ÷ q', 'length', 'in'),
    { P: len('3625 ft'), q: n('1500') },
    { width: '19 in' },
    ['digit-off', 'carried-wrongly'],
  ),
  line(
    'EN5466, lesson 3, example 1',
    'a wall of 40 ft by 2 ft, printed 40 in',
    one('area', 'A = L × W', 'area', 'ft2'),
    { L: len('40 ft'), W: len('2 ft') },
    { area: '6.67 ft2' },
    ['feet-as-inches'],
  ),
  line(
    `${GILLETTE}, chutes, p. 65`,
    'a batch of 13.5 ft3 is 14 loads of a barrow, printed 13',
    one('loads', 'n = ceil(V ÷ b)', 'count', 'each'),
    { V: ['volume', '13.5 ft3'], b: ['volume', '1 ft3'] },
    { loads: '13 each' },
    ['rounded-down'],
  ),
  line(
    'UFGS 03300N, cooling limit',
    'a fall of 50 degF is 27.8 degC, printed 10, which is the temperature',
    one('fall', 'D = k × d', 'temperature-difference', 'degC'),
    { k: n('1'), d: ['temperature-difference', '50 degF'] },
    { fall: '10 degC' },
    ['degree-interval'],
  ),
  line(
    'Ohio DOT, item 304.04',
    '6 in are 152 mm, printed 200',
    one('lift', 'l = k × a', 'length', 'mm'),
    { k: n('1'), a: len('6 in') },
    { lift: '200 mm' },
    'unexplained',
  ),
  line(
    'Steps by the foot, 13 risers',
    '94 over 13 rounded to 7-1/4 in makes 94-1/4 in',
    one('rise', 'H = r × n', 'length', 'in'),
    { r: len('7.230769 in'), n: n('13') },
    { rise: '94.25 in' },
    'rounding',
  ),
  line(
    'Joint tables',
    '2.5 × 5 is 12.5 ft, printed 13',
    one('spacing', 's = k × t', 'length', 'ft'),
    { k: n('30'), t: len('5 in') },
    { spacing: '13 ft' },
    'rounding',
  ),
];

const volumes: readonly Published[] = [
  line(
    'Teaching site, staircase of 20 risers',
    '20 risers have 19 treads, and 20 were counted',
    one('steps', 'V = n × r × t ÷ 2 × w', 'volume', 'ft3'),
    { n: ['count', '19 each'], r: len('6 in'), t: len('12 in'), w: len('4 ft') },
    { steps: '20 ft3' },
    ['one-off-count', 'carried-wrongly'],
  ),
  line(
    'Estimating in Building Construction, p. 102',
    'a lap of a tenth of the width takes 11.1% more mesh, printed 10%',
    one('mesh', 'A = N ÷ (1 − l)', 'area', 'ft2'),
    { N: ['area', '6000 ft2'], l: ['ratio', '10%'] },
    { mesh: '6600 ft2' },
    ['markup-for-margin'],
  ),
  line(
    'FHWA Design Manual, 9.4.C',
    'a shrink of 25% as 1/(1 + s) is 0.80; others take 1 − s, 0.75',
    one('factor', 'f = 1 ÷ (1 + s)', 'ratio', NONE),
    { s: ['ratio', '25%'] },
    { factor: '0.75:1' },
    ['markup-for-margin', 'allowance-turned'],
  ),
  line(
    'Residential Structural Design Guide, appendix B',
    'a square yard is 0.8361274 m2, printed 0.8391274',
    one('area', 'A = k × a', 'area', 'm2'),
    { k: n('1'), a: ['area', '1 yd2'] },
    { area: '0.8391274 m2' },
    ['digit-off'],
  ),
  line(
    'FM 5-428, appendix A',
    'a cubic centimeter is 0.0610 in3, printed 0.610',
    one('volume', 'V = k × a', 'volume', 'in3'),
    { k: n('1'), a: ['volume', '1 cm3'] },
    { volume: '0.610 in3' },
    ['point-moved'],
  ),
  line(
    'Curb of 100 ft',
    '6.173, printed 6.175',
    one('curb', 'V = A × L', 'volume', 'yd3'),
    { A: ['area', '1.66667 ft2'], L: len('100 ft') },
    { curb: '6.175 yd3' },
    'rounding',
  ),
  line(
    'Navy Engineering Aid, footing and slab',
    '580.14 over 27 is 21.49 yd3, printed 21',
    one('volume', 'V = a + b', 'volume', 'yd3'),
    { a: ['volume', '446.82 ft3'], b: ['volume', '133.32 ft3'] },
    { volume: '21 yd3' },
    'rounding',
  ),
  line(
    `${GILLETTE}, paving, p. 289`,
    '100 yd3 at 6 in are said to make 300 ft of a street of 30 ft, which takes 166.67',
    one('volume', 'V = L × W × t', 'volume', 'yd3'),
    { L: len('300 ft'), W: len('30 ft'), t: len('6 in') },
    { volume: '100 yd3' },
    'unexplained',
  ),
];

const SLAB = { outline: { shape: 'rectangle', length: '28 ft', width: '18 ft' }, thickness: '4 in' } as const;
const FAR = 'Federal Acquisition Regulation, 14.407-2';

const own = (
  where: string,
  what: string,
  calculation: unknown,
  input: unknown,
  claims: Published['claims'],
  is: Is,
): Published => ({ where, what, calculation: calculation as AnyCalculation, input, claims, is });

/** Those that a calculation of the library does, and the clerical slips that the regulation lists, on one slab. */
const slabs: readonly Published[] = [
  own(
    'Producer’s advice to homeowners',
    'forms of 2 by 4 are 3-1/2 in deep, for a slab of 4 in',
    slabVolume,
    { ...SLAB, thickness: '3.5 in' },
    { volume: '6.22 yd3' },
    ['nominal-for-actual'],
  ),
  own(FAR, 'unit: cubic feet for cubic yards', slabVolume, SLAB, { volume: '168 yd3' }, [
    'not-divided-by-27',
  ]),
  own(FAR, 'unit: square feet for square yards', slabVolume, SLAB, { area: '504 yd2' }, ['wrong-unit']),
  own(FAR, 'unit: inches for feet', slabVolume, SLAB, { volume: '74.67 yd3' }, ['inches-as-feet']),
  own(FAR, 'decimal point', slabVolume, SLAB, { volume: '62.22 yd3' }, ['point-moved']),
  line(
    FAR,
    'unit: pounds for tons',
    one('mass', 'W = V × d', 'mass', 'ton'),
    { V: ['volume', '350 ft3'], d: ['density', '120 pcf'] },
    { mass: '42000 ton' },
    ['wrong-unit'],
  ),
];

export const published: readonly Published[] = [...money, ...masses, ...sizes, ...volumes, ...slabs];

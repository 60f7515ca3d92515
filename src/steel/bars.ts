/**
 * Reinforcing bars: designation, nominal diameter, area and weight.
 *
 * Weights are the nominal ones of the tables, never π ÷ 4 × d² × density: the two differ by up to
 * 0.2%. Sources: inch-pound sizes, Manual of Standard Practice, CRSI, 27th ed., inside front cover
 * (the same figures as ASTM A615/A615M table 1); soft metric, that table as reproduced on a mill's
 * page, with its two misprints put right; hard metric, ASTM A615/A615M-95c as reproduced.
 */

import { PI } from '../quantity/decimal';
import { area, constant, length, massPerLength, pressure } from '../quantity/make';
import type { Quantity } from '../quantity/quantity';
import type { System } from '../quantity/units';

/** US bar sizes, by the number that is rolled into the bar. */
export type BarSize = '#3' | '#4' | '#5' | '#6' | '#7' | '#8' | '#9' | '#10' | '#11' | '#14' | '#18';

/** Which table a bar number belongs to: the same number means different bars. */
export type BarSeries = 'inch-pound' | 'soft-metric' | 'hard-metric' | 'diameter';

/** Nominal figures of one bar. */
export interface BarProperties {
  readonly diameter: Quantity<'length'>;
  readonly area: Quantity<'area'>;
  readonly weight: Quantity<'mass-per-length'>;
}

/** Soft metric number, diameter in inches, area in square inches and weight in pounds per foot. */
const INCH_POUND: Record<BarSize, readonly [soft: string, diameter: string, area: string, weight: string]> = {
  '#3': ['10', '0.375', '0.11', '0.376'],
  '#4': ['13', '0.5', '0.2', '0.668'],
  '#5': ['16', '0.625', '0.31', '1.043'],
  '#6': ['19', '0.75', '0.44', '1.502'],
  '#7': ['22', '0.875', '0.6', '2.044'],
  '#8': ['25', '1', '0.79', '2.67'],
  '#9': ['29', '1.128', '1', '3.4'],
  '#10': ['32', '1.27', '1.27', '4.303'],
  '#11': ['36', '1.41', '1.56', '5.313'],
  '#14': ['43', '1.693', '2.25', '7.65'],
  '#18': ['57', '2.257', '4', '13.6'],
};

/** Millimeters, square millimeters, kilograms per meter. 43 and 57 are from memory. */
const SOFT_METRIC: Record<string, readonly [diameter: string, area: string, weight: string]> = {
  '10': ['9.5', '71', '0.56'],
  '13': ['12.7', '129', '0.994'],
  '16': ['15.9', '199', '1.552'],
  '19': ['19.1', '284', '2.235'],
  '22': ['22.2', '387', '3.042'],
  '25': ['25.4', '510', '3.973'],
  '29': ['28.7', '645', '5.06'],
  '32': ['32.3', '819', '6.404'],
  '36': ['35.8', '1006', '7.907'],
  '43': ['43', '1452', '11.38'],
  '57': ['57.3', '2581', '20.24'],
};

/** Millimeters, square millimeters; the weight is the area at 7850 kg/m3. 55 is Canadian only, from memory. */
const HARD_METRIC: Record<string, readonly [diameter: string, area: string, weight: string]> = {
  '10': ['11.3', '100', '0.785'],
  '15': ['16', '200', '1.57'],
  '20': ['19.5', '300', '2.355'],
  '25': ['25.2', '500', '3.925'],
  '30': ['29.9', '700', '5.495'],
  '35': ['35.7', '1000', '7.85'],
  '45': ['43.7', '1500', '11.775'],
  '55': ['56.4', '2500', '19.625'],
};

/** All inch-pound sizes, smallest first. */
export const BAR_SIZES = /*#__PURE__*/ Object.keys(INCH_POUND) as BarSize[];

/** Metric bars: hard metric numbers as `15M`, or by their diameter as `12 mm`. */
export type MetricBarSize =
  | '10M'
  | '15M'
  | '20M'
  | '25M'
  | '30M'
  | '35M'
  | '45M'
  | '55M'
  | '6 mm'
  | '8 mm'
  | '10 mm'
  | '12 mm'
  | '14 mm'
  | '16 mm'
  | '20 mm'
  | '24 mm'
  | '25 mm'
  | '28 mm'
  | '32 mm'
  | '36 mm'
  | '40 mm';

/** Any bar that a mat is laid of. */
export type AnyBarSize = BarSize | MetricBarSize;

/** Diameters in inches that yards name bars by: as many eighths as the number of the bar. */
const EIGHTHS = ['3/8', '1/2', '5/8', '3/4', '7/8', '1'];

/**
 * A bar as a job names it: its size, or its steel and diameter as schedules write it, `H12`, `T12` or
 * `B12` in Britain, `N12` in Australia, `HD12` in New Zealand, `Y12` in South Africa: a bar of 12 mm; or its diameter in
 * inches, `1/2 in` for a #4.
 */
export type BarName =
  | AnyBarSize
  | `${(typeof STEELS)[number]}${number}`
  | `${number}/${number} in`
  | `${number}/${number}"`;

/** A diameter in inches as the name of a bar, for a pattern. */
export const IN_INCHES = /*#__PURE__*/ `(${/*#__PURE__*/ EIGHTHS.join('|')}) ?(?:in|")`;

const BY_INCHES = /*#__PURE__*/ new RegExp(`^${IN_INCHES}$`);

/** `1/2 in` as `#4`; what is no such name stays as it is. */
export const byInches = (name: string): string =>
  name.replace(BY_INCHES, (_, d: string) => `#${3 + EIGHTHS.indexOf(d)}`);

/** Letters of the steel before a diameter. */
export const STEELS = ['H', 'T', 'B', 'N', 'Y', 'HD'] as const;

/** Kilograms per meter of round bars: π ÷ 4 × d² at 7850 kg/m3, to three places as tables print it. */
const BY_DIAMETER: Record<string, string> = {
  '6 mm': '0.222',
  '8 mm': '0.395',
  '10 mm': '0.617',
  '12 mm': '0.888',
  '14 mm': '1.208',
  '16 mm': '1.578',
  '20 mm': '2.466',
  '24 mm': '3.551',
  '25 mm': '3.853',
  '28 mm': '4.834',
  '32 mm': '6.313',
  '36 mm': '7.990',
  '40 mm': '9.865',
};

/** All bars that a mat may be laid of. */
export const ALL_BARS: readonly AnyBarSize[] = /*#__PURE__*/ [
  ...BAR_SIZES,
  ...Object.keys(HARD_METRIC).map((n) => `${n}M`),
  ...Object.keys(BY_DIAMETER),
] as AnyBarSize[];

const isInchPound = (size: AnyBarSize): size is BarSize => size.startsWith('#');

/** Nominal diameter. */
export function diameterOf(size: AnyBarSize): Quantity<'length'> {
  if (isInchPound(size)) return length(`${INCH_POUND[size][1]} in`);
  return length(size.endsWith('M') ? `${HARD_METRIC[size.slice(0, -1)]?.[0]} mm` : size);
}

const inchSection = (size: BarSize): Quantity<'area'> => area(`${INCH_POUND[size][2]} in2`);

/** Nominal cross-section. */
export function sectionOf(size: AnyBarSize): Quantity<'area'> {
  if (isInchPound(size)) return inchSection(size);
  const [series, number] = size.endsWith('M')
    ? (['hard-metric', size.slice(0, -1)] as const)
    : (['diameter', size.slice(0, -3)] as const);
  return (barProperties(series, number) as BarProperties).area;
}

/** Sizes by their diameter, thinnest first. */
export const bySize = (sizes: ReadonlySet<AnyBarSize>): AnyBarSize[] =>
  [...sizes].sort((a, b) => diameterOf(a).compareTo(diameterOf(b)));

const THICKEST_LAPPED = constant(() => length('40 mm'));

/** Thicker than #11 and 40 mm: such bars are coupled, not lapped. */
export const isHeavy = (size: AnyBarSize): boolean => diameterOf(size).greaterThan(THICKEST_LAPPED());

/** Nominal weight. */
export function weightOf(size: AnyBarSize): Quantity<'mass-per-length'> {
  if (isInchPound(size)) return massPerLength(`${INCH_POUND[size][3]} lb/ft`);
  const weight = size.endsWith('M') ? HARD_METRIC[size.slice(0, -1)]?.[2] : BY_DIAMETER[size];
  return massPerLength(`${weight} kg/m`);
}

/** The soft metric number of an inch-pound size. */
export const softNumberOf = (size: BarSize): string => INCH_POUND[size][0];

/** The numbers of a series, smallest first, as they are written: `#4`, `13`, `15M`, `12 mm`. */
export function designationsOf(series: BarSeries): readonly string[] {
  if (series === 'inch-pound') return BAR_SIZES;
  if (series === 'soft-metric') return BAR_SIZES.map(softNumberOf);
  if (series === 'diameter') return Object.keys(BY_DIAMETER);
  return Object.keys(HARD_METRIC).map((n) => `${n}M`);
}

/** π ÷ 4 × d² in square millimeters, to two places. */
const roundSection = (d: string): string => PI.times(d).times(d).div(4).toFixed(2);

/** The nominal figures of a bar number of a series; `undefined` where there is no such bar. */
export function barProperties(series: BarSeries, number: string): BarProperties | undefined {
  if (series === 'inch-pound') {
    const size = `#${number}` as BarSize;
    if (!BAR_SIZES.includes(size)) return undefined;
    return { diameter: diameterOf(size), area: inchSection(size), weight: weightOf(size) };
  }
  const row =
    series === 'diameter'
      ? byDiameter(number)
      : (series === 'soft-metric' ? SOFT_METRIC : HARD_METRIC)[number];
  if (!row) return undefined;
  return {
    diameter: length(`${row[0]} mm`),
    area: area(`${row[1]} mm2`),
    weight: massPerLength(`${row[2]} kg/m`),
  };
}

function byDiameter(number: string): readonly [string, string, string] | undefined {
  const weight = BY_DIAMETER[`${number} mm`];
  return weight === undefined ? undefined : [number, roundSection(number), weight];
}

/** Grades of bar, by their least yield strength: in thousands of psi, in MPa, or with the class of ductility. */
export type BarGrade =
  | '40'
  | '50'
  | '60'
  | '75'
  | '80'
  | '100'
  | '280'
  | '350'
  | '400'
  | '420'
  | '500'
  | '520'
  | '550'
  | '690'
  | 'B500A'
  | 'B500B'
  | 'B500C';

/**
 * Least yield strength of each grade, as it is named where it is sold: in thousands of psi; in MPa, the same steel under
 * its metric name and the grades of bars by their metric numbers; and by the classes of ductility of bars by diameter.
 * Weakest first of each kind.
 */
const YIELDS: readonly (readonly [grade: BarGrade, strength: string])[] = [
  ['40', '40000 psi'],
  ['50', '50000 psi'],
  ['60', '60000 psi'],
  ['75', '75000 psi'],
  ['80', '80000 psi'],
  ['100', '100000 psi'],
  ['280', '280 MPa'],
  ['350', '350 MPa'],
  ['400', '400 MPa'],
  ['420', '420 MPa'],
  ['500', '500 MPa'],
  ['520', '520 MPa'],
  ['550', '550 MPa'],
  ['690', '690 MPa'],
  ['B500A', '500 MPa'],
  ['B500B', '500 MPa'],
  ['B500C', '500 MPa'],
];

/** All grades: those in psi, in MPa, and with a class, each weakest first. */
export const BAR_GRADES: readonly BarGrade[] = /*#__PURE__*/ YIELDS.map(([grade]) => grade);

/** Least yield strength of a grade; the grade is named after it. */
export const yieldOf = (grade: BarGrade): Quantity<'pressure'> =>
  pressure((YIELDS.find(([name]) => name === grade) as readonly [BarGrade, string])[1]);

/** What most bars are, where a job does not say: grade 60, and in a metric job 420. */
const USUAL_GRADE = { customary: '60', metric: '420' } as const;

/** The usual grade, by the unit system alone. */
export const usualGrade = (system: System): '60' | '420' => USUAL_GRADE[system];

/** The usual grade of a bar where its name says whose steel it is: B500B of bars by diameter, 400 of 10M to 55M. */
export function usualGradeOf(size: AnyBarSize, system: System): BarGrade {
  if (isInchPound(size)) return usualGrade(system);
  return size.endsWith('M') ? '400' : 'B500B';
}

/** Least tensile strength, where the table that was read prints it. */
export function tensileOf(grade: BarGrade): Quantity<'pressure'> | undefined {
  if (grade === '40') return pressure('60000 psi');
  return grade === '60' ? pressure('90000 psi') : undefined;
}

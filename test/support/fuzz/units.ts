/**
 * A table of units of the fuzzer's own, in SI: for writing quantities in many notations and for reading
 * printed ones, apart from the library. Factors as in NIST Special Publication 811, from memory.
 */
import type { Dimension } from '../../../src/quantity/dimensions';

/** A unit: how many SI units it is, and how else it may be written. */
export interface UnitNote {
  readonly name: string;
  readonly si: number;
  readonly system: 'customary' | 'metric' | 'both';
  readonly spellings: readonly string[];
}

type System = UnitNote['system'];

const c = (name: string, si: number, ...spellings: string[]): UnitNote =>
  note(name, si, 'customary', spellings);
const m = (name: string, si: number, ...spellings: string[]): UnitNote => note(name, si, 'metric', spellings);
const b = (name: string, si: number, ...spellings: string[]): UnitNote => note(name, si, 'both', spellings);
const note = (name: string, si: number, system: System, spellings: string[]): UnitNote => ({
  name,
  si,
  system,
  spellings: [name, ...spellings],
});

const FT = 0.3048;
const IN = 0.0254;
const YD = 0.9144;
const LB = 0.45359237;
const LBF = 4.4482216152605;

export const UNITS: Readonly<Record<Exclude<Dimension, 'money'>, readonly UnitNote[]>> = {
  length: [
    m('m', 1, 'metre', 'meters'),
    c('in', IN, 'inches', 'inch', '"'),
    c('ft', FT, 'feet', 'foot', "'", 'LF'),
    c('yd', YD, 'yards'),
    c('mi', 1609.344, 'miles'),
    m('mm', 0.001, 'millimeters'),
    m('cm', 0.01, 'centimetres'),
    m('km', 1000),
  ],
  area: [
    m('m2', 1, 'm²', 'sqm', 'sq m', 'square meters'),
    c('in2', IN ** 2, 'sq in', 'square inches'),
    c('ft2', FT ** 2, 'sq ft', 'sf', 'ft²', 'square feet'),
    c('yd2', YD ** 2, 'sq yd', 'sy'),
    c('acre', 4046.8564224, 'acres'),
    m('ha', 10_000, 'hectares'),
    m('mm2', 1e-6, 'mm²'),
    m('cm2', 1e-4),
  ],
  volume: [
    m('m3', 1, 'm³', 'cubic meters'),
    c('in3', IN ** 3, 'cu in'),
    c('ft3', FT ** 3, 'cu ft', 'cf', 'cubic feet', 'ft³'),
    c('yd3', YD ** 3, 'cy', 'cubic yards', 'cu yd', 'yards', 'yd³'),
    c('gal', 0.003785411784, 'gallons'),
    c('qt', 0.000946352946, 'quarts'),
    c('fl oz', 0.0000295735295625, 'fl. oz.', 'fluid ounces', 'floz'),
    m('L', 0.001, 'l', 'liters'),
    m('mL', 1e-6, 'ml', 'milliliters'),
    m('cm3', 1e-6),
  ],
  mass: [
    m('kg', 1, 'kilograms'),
    c('lb', LB, 'lbs', 'pounds'),
    c('oz', LB / 16, 'ounces'),
    c('ton', 2000 * LB, 'tons', 'short tons', 'tn'),
    c('longton', 2240 * LB, 'long tons'),
    m('g', 0.001, 'grams'),
    m('tonne', 1000, 'metric tons'),
  ],
  density: [
    m('kg/m3', 1, 'kg/m³', 'kg per cubic meter'),
    c('pcf', LB / FT ** 3, 'lb/ft3', 'lb/cu ft'),
    c('lb/yd3', LB / YD ** 3, 'lb/cu yd'),
    c('ton/yd3', (2000 * LB) / YD ** 3, 'tons per cubic yard'),
    m('tonne/m3', 1000, 't/m3', 'tonnes per cubic meter'),
  ],
  'mass-per-length': [m('kg/m', 1), c('lb/ft', LB / FT, 'plf', 'pounds per foot')],
  'mass-per-area': [
    m('kg/m2', 1, 'kg/m²'),
    c('lb/ft2', LB / FT ** 2),
    c('lb/yd2', LB / YD ** 2),
    c('oz/yd2', LB / 16 / YD ** 2),
    m('g/m2', 0.001, 'g/m²'),
  ],
  slope: [
    c('in/ft', 1 / 12, 'in per foot', '"/ft', 'in. per ft'),
    b('%', 0.01, 'percent', ' percent', 'pct'),
    m('mm/m', 0.001, 'mm per metre'),
    b('1:n', 1),
  ],
  angle: [b('deg', Math.PI / 180, 'degrees', '°')],
  time: [b('s', 1, 'sec'), b('min', 60, 'minutes'), b('h', 3600, 'hours', 'hr'), b('day', 86_400, 'days')],
  temperature: [c('degF', 1, '°F', 'F'), m('degC', 1.8, '°C', 'C')],
  'temperature-difference': [c('degF', 1, '°F', 'F'), m('degC', 1.8, '°C', 'C')],
  'temperature-time': [c('degF-h', 3600, '°F-h'), m('degC-h', 6480, '°C-h')],
  speed: [
    m('m/s', 1),
    c('mph', 1609.344 / 3600),
    c('ft/s', FT, 'fps'),
    m('km/h', 1 / 3.6, 'kph', 'kmh'),
    c('in/h', IN / 3600),
    m('mm/h', 0.001 / 3600),
    c('ft/h', (12 * IN) / 3600),
    m('m/h', 1 / 3600),
  ],
  force: [m('N', 1), m('kN', 1000), c('lbf', LBF), c('kip', 1000 * LBF)],
  pressure: [
    m('kPa', 1000, 'kN/m2'),
    m('MPa', 1e6, 'N/mm2'),
    m('GPa', 1e9),
    c('psi', LBF / IN ** 2, 'lbf/in2'),
    c('psf', LBF / FT ** 2, 'lb/ft2'),
    c('ksi', (1000 * LBF) / IN ** 2),
    c('ksf', (1000 * LBF) / FT ** 2),
  ],
  'volume-rate': [
    m('m3/h', 1 / 3600),
    m('L/s', 0.001),
    c('yd3/h', YD ** 3 / 3600, 'yd/h'),
    c('gal/min', 0.003785411784 / 60, 'gpm'),
    c('ft3/s', FT ** 3, 'cfs'),
  ],
  evaporation: [m('kg/m2/h', 1 / 3600), c('lb/ft2/h', LB / FT ** 2 / 3600)],
  ratio: [b(':1', 1), b('%', 0.01, 'percent', 'pct')],
  count: [b('each', 1, 'ea', 'pcs')],
};

/** The dimensions that are measured. */
export const MEASURED = Object.keys(UNITS) as (keyof typeof UNITS)[];

export type Measured = keyof typeof UNITS;

/** A temperature is on a scale: its SI number here is that of degrees Fahrenheit. */
export const toSi = (d: Measured, unit: UnitNote, n: number): number =>
  d === 'temperature' && unit.name === 'degC' ? n * 1.8 + 32 : n * unit.si;

export const fromSi = (d: Measured, unit: UnitNote, si: number): number =>
  d === 'temperature' && unit.name === 'degC' ? (si - 32) / 1.8 : si / unit.si;

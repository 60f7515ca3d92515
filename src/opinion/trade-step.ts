/**
 * The steps in which the trade tells a difference: a quarter of a yard, a sixteenth of an inch, a whole bar.
 *
 * Common practice: no published text lists them together.
 */
import type { Dimension } from '../quantity/dimensions';
import { inSystem } from '../quantity/like-unit';
import { money } from '../quantity/money';
import { type Quantity, unitShown } from '../quantity/quantity';
import { isFaulty, readQuantity } from '../quantity/read-quantity';
import type { System } from '../quantity/units';
import { siOf } from './scale';

type Ends = readonly [customary: string, metric: string];

const STEPS: Readonly<Record<Exclude<Dimension, 'money'>, Ends>> = {
  length: ['1/16 in', '1 mm'],
  area: ['1 ft2', '0.1 m2'],
  volume: ['0.25 yd3', '0.25 m3'],
  mass: ['1 lb', '1 kg'],
  density: ['1 pcf', '10 kg/m3'],
  'mass-per-length': ['0.01 lb/ft', '0.01 kg/m'],
  'mass-per-area': ['0.1 lb/ft2', '0.1 kg/m2'],
  slope: ['1/16 in/ft', '0.1%'],
  angle: ['0.1 deg', '0.1 deg'],
  time: ['1 min', '1 min'],
  temperature: ['1 degF', '1 degC'],
  'temperature-difference': ['1 degF', '1 degC'],
  'temperature-time': ['1 degF-h', '1 degC-h'],
  speed: ['1 mph', '1 km/h'],
  force: ['10 lbf', '0.1 kN'],
  pressure: ['10 psi', '0.1 MPa'],
  'volume-rate': ['1 yd3/h', '1 m3/h'],
  evaporation: ['0.01 lb/ft2/h', '0.05 kg/m2/h'],
  ratio: ['1%', '1%'],
  count: ['1 each', '1 each'],
};

/** Where a figure is shown in one of these, its step is another. */
const BY_UNIT: Readonly<Record<string, string>> = {
  gal: '1 gal',
  qt: '1 qt',
  'fl oz': '1 fl oz',
  L: '1 L',
  mL: '10 mL',
  ft3: '1 ft3',
  in3: '1 in3',
  cm3: '1 cm3',
  ton: '0.25 ton',
  tonne: '0.25 tonne',
  longton: '0.25 longton',
  oz: '1 oz',
  g: '1 g',
  yd2: '1 yd2',
  in2: '0.01 in2',
  mm2: '10 mm2',
  cm2: '1 cm2',
  'gal/min': '1 gal/min',
  'ft3/s': '0.01 ft3/s',
  'L/s': '0.1 L/s',
  psf: '10 psf',
  kPa: '1 kPa',
  'in/h': '0.1 in/h',
  'mm/h': '1 mm/h',
  'ft/h': '0.1 ft/h',
  'm/h': '0.1 m/h',
  h: '0.25 h',
  day: '1 day',
};

/** Below it a density is a dosage, as of fibers, and told in finer steps. */
const DOSAGE = 100;
const DOSAGES: Ends = ['0.1 lb/yd3', '0.1 kg/m3'];

/** Slopes are told in steps of the unit that they are written in. */
const SLOPES: Readonly<Record<string, string>> = { '%': '0.1%', 'mm/m': '1 mm/m' };

function read(text: string, d: Dimension): Quantity {
  const q = readQuantity(text, d, 'the step');
  if (isFaulty(q)) throw new TypeError(`${text}: ${q.sentence}`);
  return q;
}

/** The step in which a difference of such a figure is told. */
export function tradeStep(figure: Quantity, system: System): Quantity {
  if (figure.dimension === 'money') return money({ value: '1', unit: figure.unit });
  const unit = unitShown(figure).id;
  const isDosage = figure.dimension === 'density' && Math.abs(siOf(figure)) < DOSAGE;
  const [customary, metric] = isDosage ? DOSAGES : STEPS[figure.dimension];
  const own = unitShown(figure).system ?? system;
  const d = figure.dimension === 'temperature' ? 'temperature-difference' : figure.dimension;
  const bySlope = d === 'slope' ? SLOPES[unit] : undefined;
  const text = bySlope ?? BY_UNIT[unit] ?? (own === 'metric' ? metric : customary);
  return inSystem(read(text, d), own);
}

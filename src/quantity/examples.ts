/**
 * Examples of quantities for the sentences of faults, as each unit system writes them and as suit what is asked for:
 * a coordinate is not a thickness, and rain is not wind.
 */
import type { Dimension } from './dimensions';
import type { System } from './units';

/** The same example in both systems; one text where there is no unit system in it. */
export type Example = string | readonly [customary: string, metric: string];

const BY_DIMENSION: Readonly<Record<Dimension, Example>> = {
  length: ['4 in', '100 mm'],
  area: ['504 ft2', '46.8 m2'],
  volume: ['6 yd3', '4.5 m3'],
  mass: ['50 lb', '25 kg'],
  density: ['150 pcf', '2400 kg/m3'],
  'mass-per-length': ['0.668 lb/ft', '0.994 kg/m'],
  'mass-per-area': ['0.21 lb/ft2', '1.03 kg/m2'],
  slope: ['1/4 in/ft', '20 mm/m'],
  angle: '2 deg',
  time: '90 min',
  temperature: ['55 degF', '13 degC'],
  'temperature-difference': ['10 degF', '5 degC'],
  'temperature-time': ['2500 degF-h', '1400 degC-h'],
  speed: ['10 mph', '15 km/h'],
  force: ['800 lbf', '3.5 kN'],
  pressure: ['4000 psi', '28 MPa'],
  'volume-rate': ['20 yd3/h', '15 m3/h'],
  evaporation: ['0.2 lb/ft2/h', '1 kg/m2/h'],
  ratio: '10%',
  count: '3 each',
  money: '165 USD',
};

/** Names of inputs that another example suits better than that of their dimension. */
const BY_NAME: readonly (readonly [Dimension, RegExp, Example])[] = [
  ['length', /^(?:height|margin|lap|founded|be\w+)$/, ['12 in', '300 mm']],
  ['length', /^(?:elevation|level|grade|ground|top|height\w+|\w+Side|at\w+)$/, ['100.25 ft', '30.55 m']],
  [
    'length',
    /^(?:[xy]|at|from|to|along|across|run|over|zone|each .+|\w*(?:ength|idth|Run|Rise|adius|ameter|istance))$/,
    ['12 ft', '3.6 m'],
  ],
  ['ratio', /^hum/, '60%'],
  ['volume', /^increment/, ['0.25 yd3', '0.1 m3']],
  ['volume', /^(?:truckCapacity|loads?|minimumLoad)$/, ['9 yd3', '7 m3']],
  ['time', /^per$/, '1 h'],
  ['volume', /^per$/, ['1 yd3', '1 m3']],
];

/** The example of one system. */
export const exampleIn = (example: Example, system: System): string =>
  typeof example === 'string' ? example : example[system === 'metric' ? 1 : 0];

/** The example that suits a name, else that of the dimension. */
export const exampleFor = (d: Dimension, what: string): Example =>
  BY_NAME.find(([dimension, name]) => dimension === d && name.test(what))?.[2] ?? BY_DIMENSION[d];

/** The number of an example, which gives way to the one that was typed. */
const NUMBER = /^[\d./]+/;

const inPercent = (share: number): string => `${+(100 * share).toPrecision(6)}%`;

/** A text made of the usual example, made of another one instead: with the number that was typed, where there was one. */
export function remade(text: string, usual: string, own: string): string {
  if (text === usual) return own;
  const [number = ''] = NUMBER.exec(text) ?? [];
  return text === usual.replace(NUMBER, number) ? own.replace(NUMBER, number) : text;
}

/** `1/4` of what a tape shows is inches in a foot; `1/60` is one in sixty. */
const TAPE = /\/(?:2|4|8|16|32)$/;

const FRACTION = /^-?\d+\/\d+$/;

/** A slope without its unit: percent from one on and as a small decimal, inches in a foot between. */
function slopeOf(number: string, share: number): Example {
  if (FRACTION.test(number)) {
    const other = number.replace(/^(-?1)\//, '$1:');
    const plain = other === number ? inPercent(share) : other;
    return TAPE.test(number) ? [`${number} in/ft`, plain] : plain;
  }
  if (Math.abs(share) >= 1) return `${number}%`;
  return Math.abs(share) <= 0.1 ? inPercent(share) : [`${number} in/ft`, inPercent(share)];
}

/**
 * The same unit with the number that was typed: `4` for a thickness is most likely `4 in`. Shares are typed as
 * decimals too: `0.05` for an allowance is `5%`, and to propose `0.05%` would be a trap.
 *
 * @param value - what the number comes to
 */
export function withNumber(d: Dimension, example: Example, number: string, value: number): Example {
  if (d === 'slope') return slopeOf(number, value);
  if (typeof example !== 'string') {
    // A comma in metric text may be a decimal point.
    return [example[0].replace(NUMBER, number), example[1].replace(NUMBER, number.replaceAll(',', ''))];
  }
  const decimal = example.endsWith('%') && Math.abs(value) < 1;
  return decimal ? inPercent(value) : example.replace(NUMBER, number);
}

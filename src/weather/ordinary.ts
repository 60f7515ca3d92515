/** Ordinary ranges of what is measured on the day: temperatures, air, wind. */
import { type Ordinary, range } from '../reckoning/ordinary';
import { COMMON_PRACTICE } from '../reckoning/source';

export const AIR = /*#__PURE__*/ range(
  'the temperature of the air at a pour',
  ['-10 degF', '-25 degC'],
  ['120 degF', '49 degC'],
);

export const CONCRETE = /*#__PURE__*/ range(
  'the temperature of fresh concrete',
  ['38 degF', '3 degC'],
  ['105 degF', '41 degC'],
);

/** A share typed as a number, 0.5% for 50%, is far below. */
export const HUMIDITY: Ordinary = {
  of: 'the relative humidity of the air',
  least: '5%',
  source: COMMON_PRACTICE,
};

export const WIND = /*#__PURE__*/ range('the wind at a pour', ['0.2 mph', '0.3 km/h'], ['45 mph', '72 km/h']);

export const WIND_HEIGHT = /*#__PURE__*/ range(
  'the height at which wind is measured',
  ['12 in', '300 mm'],
  ['65 ft', '20 m'],
  ['20 in', '500 mm'],
);

export const DRYING_LIMIT = /*#__PURE__*/ range(
  'the most drying that a specification allows',
  ['0.03 lb/ft2/h', '0.15 kg/m2/h'],
  ['0.3 lb/ft2/h', '1.5 kg/m2/h'],
);

export const CEMENT = /*#__PURE__*/ range(
  'the temperature of cement',
  ['-20 degF', '-29 degC'],
  ['190 degF', '88 degC'],
);
export const AGGREGATE = /*#__PURE__*/ range(
  'the temperature of sand and stone',
  ['-40 degF', '-40 degC'],
  ['220 degF', '105 degC'],
);
export const WATER = /*#__PURE__*/ range(
  'the temperature of mixing water',
  ['32 degF', '0 degC'],
  ['200 degF', '95 degC'],
);
export const WANTED = /*#__PURE__*/ range(
  'the temperature that fresh concrete is wanted at',
  ['40 degF', '4 degC'],
  ['95 degF', '35 degC'],
);
export const MIX_CHANGE = /*#__PURE__*/ range(
  'what concrete warms or cools on the way to the slab',
  undefined,
  ['25 degF', '14 degC'],
);
export const CEMENT_MASS = /*#__PURE__*/ range(
  'the cement of a batch',
  ['5 lb', '2 kg'],
  ['15000 lb', '7000 kg'],
);
export const AGGREGATE_MASS = /*#__PURE__*/ range(
  'sand or stone of a batch',
  ['10 lb', '5 kg'],
  ['60000 lb', '28000 kg'],
);
export const WATER_MASS = /*#__PURE__*/ range(
  'the water or the ice of a batch',
  ['0.5 lb', '0.2 kg'],
  ['6000 lb', '2800 kg'],
);
export const MOISTURE = /*#__PURE__*/ range('the water in and on sand or stone', undefined, '15%');

export const READING_TIME = /*#__PURE__*/ range(
  'the age of concrete whose temperature is read',
  undefined,
  '90 day',
);
export const CURING = /*#__PURE__*/ range(
  'the temperature in young concrete',
  ['25 degF', '-4 degC'],
  ['165 degF', '74 degC'],
);
export const GAP = /*#__PURE__*/ range('the longest gap between readings', '10 min', '24 h');
export const DATUM = /*#__PURE__*/ range(
  'a datum of maturity',
  ['10 degF', '-12 degC'],
  ['41 degF', '5 degC'],
  ['32 degF', '0 degC'],
);
export const ACTIVATION = /*#__PURE__*/ range(
  'activation energy over the gas constant',
  ['5000 degF', '2800 degC'],
  ['14000 degF', '7800 degC'],
  ['9000 degF', '5000 degC'],
);
export const MATURITY = /*#__PURE__*/ range(
  'the maturity of a specimen',
  ['100 degF-h', '60 degC-h'],
  ['180000 degF-h', '100000 degC-h'],
);
export const CALIBRATED = /*#__PURE__*/ range('the equivalent age of a specimen', '2 h', '400 day', '7 day');
export const STRENGTH = /*#__PURE__*/ range(
  'the strength of concrete',
  ['50 psi', '0.3 MPa'],
  ['15000 psi', '100 MPa'],
);

export const CURED_AT = /*#__PURE__*/ range(
  'the temperature that concrete is kept at',
  ['35 degF', '2 degC'],
  ['120 degF', '49 degC'],
);
export const AGE = /*#__PURE__*/ range('the age of concrete', '4 h', '400 day', '7 day');
export const SECTION = /*#__PURE__*/ range(
  'the least dimension of what is cast',
  ['2 in', '50 mm'],
  ['10 ft', '3 m'],
);
export const BEFORE_FROST = /*#__PURE__*/ range(
  'the time before the first hard frost',
  '1 day',
  '300 day',
  '30 day',
);

/** Ordinary ranges of what is measured on the day: temperatures, air, wind. */
import { range } from '../concrete/ordinary';
import type { Ordinary } from '../reckoning/ordinary';
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
);

export const DRYING_LIMIT = /*#__PURE__*/ range(
  'the most drying that a specification allows',
  ['0.03 lb/ft2/h', '0.15 kg/m2/h'],
  ['0.3 lb/ft2/h', '1.5 kg/m2/h'],
);

/** Ordinary ranges of what is formed, beside those that all calculations share. */
import { range } from '../reckoning/ordinary';

export const FORM_HEIGHT = /*#__PURE__*/ range(
  'the height placed in one go',
  ['6 in', '150 mm'],
  ['40 ft', '12 m'],
);
export const RISE = /*#__PURE__*/ range(
  'the rise of concrete in forms',
  ['0.25 ft/h', '0.08 m/h'],
  ['60 ft/h', '18 m/h'],
);
export const OUTPUT = /*#__PURE__*/ range(
  'the concrete placed in an hour',
  ['0.5 yd3/h', '0.4 m3/h'],
  ['150 yd3/h', '115 m3/h'],
);
export const PLAN_AREA = /*#__PURE__*/ range(
  'the plan of forms',
  ['0.5 ft2', '0.05 m2'],
  ['2000 ft2', '185 m2'],
);
export const FORM_TEMPERATURE = /*#__PURE__*/ range(
  'the temperature of fresh concrete',
  ['40 degF', '4 degC'],
  ['100 degF', '38 degC'],
);
export const FORM_DENSITY = /*#__PURE__*/ range(
  'the density of fresh concrete',
  ['90 pcf', '1400 kg/m3'],
  ['250 pcf', '4000 kg/m3'],
);
export const FORM_STRENGTH = /*#__PURE__*/ range(
  'the pressure that forms are made for',
  ['150 psf', '7 kPa'],
  ['3500 psf', '170 kPa'],
);

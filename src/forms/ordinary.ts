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
  ['4 ft/h', '1.2 m/h'],
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
  // Colder than tabled has a caution of its own; frozen is refused.
  ['32 degF', '0 degC'],
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
  ['600 psf', '30 kPa'],
);
export const CONCRETE_HEIGHT = /*#__PURE__*/ range(
  'the height of concrete against forms',
  ['2 in', '50 mm'],
  ['4 ft', '1.2 m'],
);
export const BOARD_THICKNESS = /*#__PURE__*/ range(
  'the thickness of a form board',
  ['1/8 in', '3 mm'],
  ['3 in', '75 mm'],
  ['3/4 in', '19 mm'],
);
export const BOARD_HEIGHT = /*#__PURE__*/ range(
  'the height of a form board',
  ['2 in', '50 mm'],
  ['4 ft', '1.25 m'],
);
export const BOARD_STOCK = /*#__PURE__*/ range('a board as bought', ['4 ft', '1.2 m'], ['24 ft', '7.2 m']);
export const BOARD_KERF = /*#__PURE__*/ range(
  'the kerf of a saw',
  ['1/32 in', '0.5 mm'],
  ['1/4 in', '6 mm'],
  ['1/8 in', '3 mm'],
);
export const SAW_KERF = /*#__PURE__*/ range(
  'the kerf of a saw',
  ['1/32 in', '0.5 mm'],
  ['1/2 in', '12 mm'],
  ['1/8 in', '3 mm'],
);
export const LEAST_PIECE = /*#__PURE__*/ range(
  'the shortest piece of a form',
  ['3 in', '75 mm'],
  ['8 ft', '2.4 m'],
);
export const FORMED = /*#__PURE__*/ range('the length of an edge', ['6 in', '150 mm'], ['5000 ft', '1500 m']);
export const CURVE = /*#__PURE__*/ range(
  'the radius of a curved edge',
  ['6 in', '150 mm'],
  ['1000 ft', '300 m'],
);
export const EDGE_FALL = /*#__PURE__*/ range('the fall along an edge', ['1/16 in', '1 mm'], ['20 ft', '6 m']);
export const BEND = /*#__PURE__*/ range(
  'the radius a board bears for its thickness',
  '20:1',
  '400:1',
  '100:1',
);
export const LAYER = /*#__PURE__*/ range(
  'a layer of a bent form',
  ['1/16 in', '1.5 mm'],
  ['1 in', '25 mm'],
  ['1/4 in', '6 mm'],
);
export const SHEET = /*#__PURE__*/ range('a side of a sheet', ['1 ft', '300 mm'], ['12 ft', '3.7 m']);
export const BELOW_BOARDS = /*#__PURE__*/ range(
  'what the ground lies below the boards',
  ['1/2 in', '10 mm'],
  ['3 ft', '900 mm'],
);
export const STAKE_SPACING = /*#__PURE__*/ range(
  'the spacing of stakes',
  ['6 in', '150 mm'],
  ['6 ft', '1.8 m'],
  ['3 ft', '900 mm'],
);
export const STAKE_DEPTH = /*#__PURE__*/ range(
  'the depth of stakes in the ground',
  ['4 in', '100 mm'],
  ['5 ft', '1.5 m'],
);
export const STAKE_LENGTH = /*#__PURE__*/ range(
  'the length of a stake',
  ['8 in', '200 mm'],
  ['7 ft', '2.1 m'],
  ['24 in', '600 mm'],
);
export const STIFFENS = /*#__PURE__*/ range('the time in which concrete stiffens', '15 min', '8 h');
export const LIFT = /*#__PURE__*/ range(
  'a lift of concrete',
  ['6 in', '150 mm'],
  ['12 ft', '3.6 m'],
  ['24 in', '600 mm'],
);

/** Concrete that levels itself stands in forms too. */
export const FORM_SLUMP = /*#__PURE__*/ range(
  'the slump of concrete in forms',
  ['1 in', '25 mm'],
  ['11 in', '280 mm'],
);

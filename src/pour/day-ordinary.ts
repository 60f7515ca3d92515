/** Ordinary ranges of what a crew does on the day. */
import { range } from '../reckoning/ordinary';

export const PLACING_TIME = /*#__PURE__*/ range('the placing of one pour', '5 min', '14 h');
export const PACE_AREA = /*#__PURE__*/ range(
  'the area that is given for a rate of work',
  ['1 ft2', '0.1 m2'],
  ['50000 ft2', '5000 m2'],
);
export const PACE_LENGTH = /*#__PURE__*/ range(
  'the length that is given for a rate of work',
  ['1 ft', '300 mm'],
  ['5000 ft', '1500 m'],
);
export const PACE_TIME = /*#__PURE__*/ range('the time that is given for a rate of work', '30 s', '12 h');
export const EDGES = /*#__PURE__*/ range(
  'the length of edges and grooves that are tooled',
  ['2 ft', '600 mm'],
  ['20000 ft', '6000 m'],
);
export const SET = /*#__PURE__*/ range('a measured initial set', '45 min', '30 h');
export const AGE = /*#__PURE__*/ range('the age of concrete as it is placed', '2 min', '4 h');
export const CURING_TIME = /*#__PURE__*/ range('spraying or covering a slab', '2 min', '6 h');
export const WASH_AFTER = /*#__PURE__*/ range('the time until aggregate is washed free', '30 min', '72 h');
export const DRYING = /*#__PURE__*/ range(
  'what a surface dries at',
  ['0.002 lb/ft2/h', '0.01 kg/m2/h'],
  ['1 lb/ft2/h', '5 kg/m2/h'],
);

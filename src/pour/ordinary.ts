/** Ordinary ranges of orders, bags and saw cuts, beside those that all calculations share. */
import { type Ordinary, range } from '../reckoning/ordinary';
import { COMMON_PRACTICE, SAW_TIMES_ANSWER } from '../reckoning/source';

export const POUR = /*#__PURE__*/ range(
  'the volume of a pour',
  ['0.1 ft3', '0.003 m3'],
  ['5000 yd3', '4000 m3'],
);

export const INCREMENT = /*#__PURE__*/ range(
  'the step in which concrete is sold',
  ['0.01 yd3', '0.01 m3'],
  ['2 yd3', '2 m3'],
);

export const TRUCK = /*#__PURE__*/ range('what a truck carries', ['0.5 yd3', '0.4 m3'], ['15 yd3', '12 m3']);

export const LEAST_LOAD = /*#__PURE__*/ range(
  'the least load without a charge',
  ['0.25 yd3', '0.2 m3'],
  ['10 yd3', '8 m3'],
);

export const LINE_LENGTH = /*#__PURE__*/ range(
  'the length of the line of a pump',
  ['10 ft', '3 m'],
  ['1500 ft', '450 m'],
);

export const LINE_BORE = /*#__PURE__*/ range(
  'the bore of the line of a pump',
  ['1 1/2 in', '38 mm'],
  ['8 in', '200 mm'],
);

export const HOPPER = /*#__PURE__*/ range(
  'what stays in the hopper of a pump',
  undefined,
  ['1 yd3', '0.75 m3'],
  ['0.25 yd3', '0.2 m3'],
);

export const BAG = /*#__PURE__*/ range('the weight of a bag of mix', ['10 lb', '4 kg'], ['110 lb', '50 kg']);

export const BAG_YIELD = /*#__PURE__*/ range(
  'what a bag of mix makes',
  ['0.05 ft3', '1.5 L'],
  ['1 ft3', '28 L'],
  ['0.6 ft3', '17 L'],
);

export const BAG_WATER = /*#__PURE__*/ range(
  'the water for a bag of mix',
  ['0.05 gal', '0.2 L'],
  ['3 gal', '11 L'],
  ['0.75 gal', '3 L'],
);

export const WHEELBARROW = /*#__PURE__*/ range(
  'what a wheelbarrow or a buggy carries',
  ['1 ft3', '28 L'],
  ['21 ft3', '600 L'],
  ['3 ft3', '80 L'],
);

export const READY_AFTER: Ordinary = {
  of: 'the time until concrete can be sawn',
  least: '30 min',
  most: '72 h',
  source: SAW_TIMES_ANSWER,
};

export const READY_WITHIN: Ordinary = {
  of: 'the uncertainty of when concrete can be sawn',
  least: '5 min',
  most: '12 h',
  source: COMMON_PRACTICE,
};

export const CUTTING_TIME: Ordinary = {
  of: 'the cutting of one placement',
  least: '2 min',
  most: '24 h',
  source: COMMON_PRACTICE,
};

export const SAW_LENGTH: Ordinary = {
  of: 'the length of joints in one placement',
  least: ['3 ft', '900 mm'],
  most: ['20000 ft', '6000 m'],
  source: COMMON_PRACTICE,
};

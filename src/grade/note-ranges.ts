/** What is ordinary in level notes, cross slopes and storm water. */
import type { Ordinary } from '../reckoning/ordinary';
import { COMMON_PRACTICE } from '../reckoning/source';

export const BENCH_ELEVATION: Ordinary = {
  of: 'an elevation',
  most: ['15000 ft', '4500 m'],
  source: COMMON_PRACTICE,
};

export const ROD_READING: Ordinary = {
  of: 'the reading of a rod',
  example: ['4 ft', '1.2 m'],
  most: ['26 ft', '8 m'],
  source: COMMON_PRACTICE,
};

export const LASER_OFFSET: Ordinary = {
  of: 'a height above or below the bench mark',
  most: ['30 ft', '9 m'],
  source: COMMON_PRACTICE,
};

export const WATER_HEIGHT: Ordinary = {
  of: 'the height of the water in a water level',
  example: ['4 ft', '1.2 m'],
  most: ['10 ft', '3 m'],
  source: COMMON_PRACTICE,
};

export const STRING_LENGTH: Ordinary = {
  of: 'the length of a string line',
  least: ['1 ft', '300 mm'],
  most: ['500 ft', '150 m'],
  source: COMMON_PRACTICE,
};

export const STRING_DROP: Ordinary = {
  of: 'the drop below a string line',
  most: ['10 ft', '3 m'],
  source: COMMON_PRACTICE,
};

export const CLOSURE: Ordinary = {
  of: 'the misclosure that is allowed',
  example: ['1/8 in', '3 mm'],
  least: ['1/64 in', '0.5 mm'],
  most: ['3 in', '75 mm'],
  source: COMMON_PRACTICE,
};

export const SLOPE_ALONG: Ordinary = {
  of: 'the slope along a walk, a drive or a yard',
  most: '25%',
  source: COMMON_PRACTICE,
};

export const SLOPE_ACROSS: Ordinary = {
  of: 'a cross slope',
  most: '15%',
  source: COMMON_PRACTICE,
};

export const DRAINED_AREA: Ordinary = {
  of: 'an area that drains to one place on a site',
  least: ['4 ft2', '0.4 m2'],
  most: ['4000000 ft2', '400000 m2'],
  source: COMMON_PRACTICE,
};

export const RAIN: Ordinary = {
  of: 'the intensity of a design storm',
  example: ['4 in/h', '100 mm/h'],
  least: ['0.04 in/h', '1 mm/h'],
  most: ['20 in/h', '500 mm/h'],
  source: COMMON_PRACTICE,
};

export const RUNOFF_SHARE: Ordinary = {
  of: 'the share of the rain that runs off',
  least: '2%',
  most: '100%',
  source: COMMON_PRACTICE,
};

/** What is ordinary for forms and for the correction of grades. */
import type { Ordinary } from '../reckoning/ordinary';
import { COMMON_PRACTICE } from '../reckoning/source';

const source = COMMON_PRACTICE;

export const PLACE: Ordinary = {
  of: 'a coordinate on the plan',
  least: ['1/16 in', '1 mm'],
  most: ['50000000 ft', '15000000 m'],
  source,
};

export const ELEVATION: Ordinary = {
  of: 'an elevation',
  least: ['1/32 in', '0.5 mm'],
  most: ['30000 ft', '9000 m'],
  source,
};

export const PLANE_SLOPE: Ordinary = {
  of: 'the slope of forms and paving',
  least: '0.05%',
  most: '33.5%',
  source,
};

export const STAKE_AREA: Ordinary = {
  of: 'the area that one stake stands for',
  least: ['1 ft2', '0.1 m2'],
  most: ['100000 ft2', '10000 m2'],
  source,
};

export const FORM_SIDE: Ordinary = {
  of: 'a side or diagonal of forms',
  least: ['3 in', '75 mm'],
  most: ['2000 ft', '600 m'],
  source,
};

export const SQUARE_TOLERANCE: Ordinary = {
  of: 'the tolerance of the diagonals',
  example: ['1/4 in', '6 mm'],
  least: ['1/32 in', '0.5 mm'],
  most: ['2 in', '50 mm'],
  source,
};

export const BATTER_BOARDS: Ordinary = {
  of: 'the distance of batter boards from the forms',
  example: ['4 ft', '1.2 m'],
  least: ['1 ft', '300 mm'],
  most: ['20 ft', '6 m'],
  source,
};

export const ZONE: Ordinary = {
  of: 'the strip along a building within which paving must fall away',
  least: ['2 ft', '600 mm'],
  most: ['30 ft', '10 m'],
  source,
};

export const MOVE: Ordinary = {
  of: 'the farthest that wet concrete is moved up or down',
  least: ['1/16 in', '1 mm'],
  most: ['12 in', '300 mm'],
  source,
};

export const SILL_CLEARANCE: Ordinary = {
  of: 'how far paving stays below a sill',
  least: ['1/4 in', '5 mm'],
  most: ['12 in', '300 mm'],
  source,
};

export const ROD: Ordinary = {
  of: 'a rod reading',
  example: ['4 ft', '1.2 m'],
  least: ['1/16 in', '1 mm'],
  most: ['25 ft', '8 m'],
  source,
};

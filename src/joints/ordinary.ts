/** What is ordinary in jointing: ranges beyond which an input asks for a second look. */
import type { Ordinary } from '../reckoning/ordinary';
import * as sources from '../reckoning/source';
import { COMMON_PRACTICE } from '../reckoning/source';

export const SAW_RATE_LENGTH: Ordinary = {
  of: 'the length that a saw cuts in the time given for its rate',
  least: ['1 ft', '300 mm'],
  most: ['5000 ft', '1500 m'],
  source: COMMON_PRACTICE,
};

export const SAW_RATE_TIME: Ordinary = {
  of: 'the time given for the rate of a saw',
  least: '10 s',
  most: '12 h',
  source: COMMON_PRACTICE,
};

export const PANEL_RATIO: Ordinary = {
  of: 'the longest that a panel may be for its width',
  example: '1.5:1',
  least: '1:1',
  most: '3:1',
  source: COMMON_PRACTICE,
};

export const ELASTICITY: Ordinary = {
  of: 'the modulus of elasticity of concrete',
  example: ['4000000 psi', '28000 MPa'],
  least: ['1500000 psi', '10000 MPa'],
  most: ['8000000 psi', '55000 MPa'],
  source: COMMON_PRACTICE,
};

export const PLATE_PRESSURE: Ordinary = {
  of: 'the pressure of a plate test',
  example: ['10 psi', '70 kPa'],
  least: ['1 psi', '5 kPa'],
  most: ['1000 psi', '7 MPa'],
  source: COMMON_PRACTICE,
};

export const PLATE_DEFLECTION: Ordinary = {
  of: 'the deflection of a plate test',
  example: ['0.05 in', '1.25 mm'],
  least: ['0.005 in', '0.1 mm'],
  most: ['2 in', '50 mm'],
  source: COMMON_PRACTICE,
};

export const POISSON_RATIO: Ordinary = {
  of: "Poisson's ratio of concrete",
  least: '0.1:1',
  most: '0.3:1',
  source: COMMON_PRACTICE,
};

export const LONGEST_RATIO: Ordinary = {
  of: 'how long a panel may be for its width',
  example: '1.5:1',
  most: '3:1',
  source: COMMON_PRACTICE,
};

export const LEAST_SIDE: Ordinary = {
  of: 'the least side of a panel',
  example: ['2 ft', '600 mm'],
  least: ['6 in', '150 mm'],
  most: ['10 ft', '3 m'],
  source: COMMON_PRACTICE,
};

export const MODULE: Ordinary = {
  of: 'the module of a pattern',
  least: ['2 in', '50 mm'],
  most: ['15 ft', '4.5 m'],
  source: COMMON_PRACTICE,
};

export const JOINT_DEPTH_RANGE: Ordinary = {
  of: 'the depth of a contraction joint',
  least: ['1/4 in', '6 mm'],
  most: ['6 in', '150 mm'],
  source: COMMON_PRACTICE,
};

export const JOINT_WIDTH: Ordinary = {
  of: 'the width of a joint or the depth of a bead',
  example: ['1/2 in', '12 mm'],
  least: ['1/16 in', '1.5 mm'],
  most: ['2 in', '50 mm'],
  source: COMMON_PRACTICE,
};

export const SLUMP: Ordinary = {
  of: 'the slump of concrete for flatwork',
  least: ['1 in', '25 mm'],
  most: ['9 in', '230 mm'],
  source: sources.SLUMP_RANGE,
};

export const AGGREGATE_SIZE: Ordinary = {
  of: 'the largest stone in concrete for flatwork',
  example: ['3/4 in', '20 mm'],
  least: ['1/4 in', '6 mm'],
  most: ['2 in', '50 mm'],
  source: sources.AGGREGATE_RANGE,
};

export const BAR_SPACING: Ordinary = {
  of: 'the spacing of bars in flatwork',
  least: ['3 in', '75 mm'],
  most: ['36 in', '900 mm'],
  source: COMMON_PRACTICE,
};

export const JOINT_SPACING: Ordinary = {
  of: 'the spacing of joints in a slab',
  example: ['10 ft', '3 m'],
  least: ['2 ft', '600 mm'],
  most: ['30 ft', '9 m'],
  source: COMMON_PRACTICE,
};

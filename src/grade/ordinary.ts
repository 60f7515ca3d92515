/** What is ordinary on drained surfaces: ranges outside which a figure is worth a second look. */
import type { Ordinary } from '../reckoning/ordinary';
import { COMMON_PRACTICE } from '../reckoning/source';
import { GRADING_STANDARDS } from './sources';

const source = COMMON_PRACTICE;

export const COORDINATE: Ordinary = {
  of: 'a coordinate on the plan',
  most: ['50000000 ft', '15000000 m'],
  source,
};

export const ELEVATION: Ordinary = { of: 'an elevation', most: ['30000 ft', '9000 m'], source };

/** Under a straightedge, from a line of its own. */
export const GAP_READ: Ordinary = { ...ELEVATION, example: ['1/8 in', '3 mm'] };

export const ROD: Ordinary = {
  of: 'a rod reading',
  example: ['4 ft', '1.2 m'],
  most: ['30 ft', '9 m'],
  source,
};

export const GRID_STEP: Ordinary = {
  of: 'the distance between spots of a grid',
  least: ['1 in', '25 mm'],
  most: ['200 ft', '60 m'],
  source,
};

export const LEAST_FALL: Ordinary = {
  of: 'the least fall asked of a surface',
  least: '0.1%',
  most: '12%',
  source,
};

export const MOST_FALL: Ordinary = {
  of: 'the most that a surface may fall',
  least: '0.5%',
  most: '100%',
  source: GRADING_STANDARDS,
};

export const FALL_DISTANCE: Ordinary = {
  of: 'the distance over which a surface is checked',
  least: ['3 in', '75 mm'],
  most: ['2000 ft', '600 m'],
  source,
};

export const SLOPE: Ordinary = { of: 'the slope of paving, ground or a pipe', most: '100%', source };

export const ANGLE: Ordinary = { of: 'the angle of paving or ground', most: '45 deg', source };

export const RISE: Ordinary = { of: 'a rise', most: ['1000 ft', '300 m'], source };

export const RUN: Ordinary = {
  of: 'a run',
  least: ['1 in', '25 mm'],
  most: ['50000 ft', '15000 m'],
  source,
};

export const ZONE: Ordinary = {
  of: 'the strip along a building within which paving must fall away',
  least: ['2 ft', '600 mm'],
  most: ['30 ft', '10 m'],
  source,
};

export const NEAR_LINE: Ordinary = {
  of: 'how near a spot must be to a line to lie on it',
  least: ['1/16 in', '1 mm'],
  most: ['12 in', '300 mm'],
  source,
};

export const POND_DEPTH: Ordinary = {
  of: 'the depth of a puddle that counts for nothing',
  example: ['1/8 in', '3 mm'],
  least: ['1/32 in', '0.5 mm'],
  most: ['1 in', '25 mm'],
  source,
};

export const INFLOW: Ordinary = {
  of: 'the flow of a downspout',
  example: ['50 gal/min', '3 L/s'],
  least: ['0.05 gal/min', '0.01 m3/h'],
  most: ['1000 gal/min', '250 m3/h'],
  source,
};

export const EDGE: Ordinary = {
  of: 'the length of a straightedge',
  example: ['10 ft', '2 m'],
  least: ['2 ft', '600 mm'],
  most: ['20 ft', '6 m'],
  source,
};

export const GAP: Ordinary = {
  of: 'the gap allowed under a straightedge',
  example: ['1/8 in', '3 mm'],
  least: ['1/32 in', '0.5 mm'],
  most: ['1 in', '25 mm'],
  source,
};

export const READING_SPACING: Ordinary = {
  of: 'the distance between readings under a straightedge',
  example: ['12 in', '300 mm'],
  least: ['1 in', '25 mm'],
  most: ['10 ft', '3 m'],
  source,
};

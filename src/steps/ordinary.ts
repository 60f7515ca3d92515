/** What is ordinary in steps. Wide ranges: outside them the result asks for a second look. */
import { type Ordinary, range } from '../reckoning/ordinary';
import { COMMON_PRACTICE } from './sources';

const trade = COMMON_PRACTICE;

export const RISE: Ordinary = {
  of: 'the rise of a flight of steps',
  example: ['21 in', '525 mm'],
  least: ['3 in', '75 mm'],
  most: ['20 ft', '6 m'],
  source: trade,
};

export const RISER: Ordinary = {
  of: 'the height of a riser',
  example: ['7 in', '175 mm'],
  least: ['2 in', '50 mm'],
  most: ['12 in', '300 mm'],
  source: trade,
};

export const TREAD: Ordinary = {
  of: 'the depth of a tread',
  example: ['11 in', '280 mm'],
  least: ['8 in', '200 mm'],
  most: ['6 ft', '1.8 m'],
  source: trade,
};

export const RUN: Ordinary = {
  of: 'the run of a flight of steps',
  least: ['8 in', '200 mm'],
  most: ['100 ft', '30 m'],
  source: trade,
};

export const LANDING: Ordinary = {
  of: 'the depth of a landing',
  example: ['5 ft', '1.5 m'],
  least: ['18 in', '450 mm'],
  most: ['20 ft', '6 m'],
  source: trade,
};

export const PITCH: Ordinary = {
  of: 'the pitch of treads and landings',
  least: '0.25%',
  most: '6%',
  source: trade,
};

export const DOOR_WIDTH: Ordinary = {
  of: 'the width of a door leaf',
  example: ['36 in', '900 mm'],
  least: ['18 in', '450 mm'],
  most: ['10 ft', '3 m'],
  source: trade,
};

export const THRESHOLD: Ordinary = {
  of: 'the height of a threshold above the landing',
  least: ['1/8 in', '3 mm'],
  most: ['10 in', '250 mm'],
  source: trade,
};

export const SIDE_DROP: Ordinary = {
  of: 'the drop beside a landing',
  least: ['1 in', '25 mm'],
  most: ['20 ft', '6 m'],
  source: trade,
};

export const RAMP_RISE = /*#__PURE__*/ range(
  'the rise of a ramp',
  ['1 in', '25 mm'],
  ['10 ft', '3 m'],
  ['12 in', '300 mm'],
);
export const RAMP_SLOPE = /*#__PURE__*/ range('the slope of a ramp', '2%', '25%');
export const RAMP_WIDTH = /*#__PURE__*/ range('the width of a ramp', ['30 in', '750 mm'], ['20 ft', '6 m']);
export const RAMP_LENGTH = /*#__PURE__*/ range(
  'the length for a ramp',
  ['3 ft', '900 mm'],
  ['200 ft', '60 m'],
  ['20 ft', '6 m'],
);

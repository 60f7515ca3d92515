/** What is ordinary in jointing: ranges beyond which an input asks for a second look. */
import type { Ordinary } from '../reckoning/ordinary';
import { COMMON_PRACTICE, SAW_TIMES_ANSWER } from '../reckoning/source';

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

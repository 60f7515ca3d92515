/** Ordinary ranges of what outlines are measured by, beside those that all calculations share. */
import type { Ordinary } from '../reckoning/ordinary';
import { COMMON_PRACTICE } from '../reckoning/source';

export const SHORT_SIDE: Ordinary = {
  of: 'a side of an outline',
  least: ['1/4 in', '5 mm'],
  most: ['2000 ft', '600 m'],
  source: COMMON_PRACTICE,
};

export const PLAN_AREA: Ordinary = {
  of: 'the area of a slab, a pad or a walk',
  least: ['1 ft2', '0.1 m2'],
  most: ['500000 ft2', '50000 m2'],
  source: COMMON_PRACTICE,
};

export const OPENING_SIDE: Ordinary = {
  of: 'the size of an opening in a slab',
  least: ['1 in', '25 mm'],
  most: ['200 ft', '60 m'],
  source: COMMON_PRACTICE,
};

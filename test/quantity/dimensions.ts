/** All dimensions but money, whose units are currencies. */
import type { Dimension } from '../../src/quantity/index';

export const DIMENSIONS: readonly Dimension[] = [
  'length',
  'area',
  'volume',
  'mass',
  'density',
  'mass-per-length',
  'mass-per-area',
  'slope',
  'angle',
  'time',
  'temperature',
  'temperature-difference',
  'temperature-time',
  'speed',
  'force',
  'pressure',
  'volume-rate',
  'evaporation',
  'ratio',
  'count',
];

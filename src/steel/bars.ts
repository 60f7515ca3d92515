/**
 * Reinforcing bars: designation, nominal diameter and weight.
 *
 * Weights are the nominal ones of the table, never π ÷ 4 × d² × density: the two differ by up to
 * 0.2%. Source: Manual of Standard Practice, CRSI, 27th ed., inside front cover (the same figures
 * as ASTM A615/A615M table 1).
 */

import { length, massPerLength } from '../quantity/make';
import type { Quantity } from '../quantity/quantity';

/** US bar sizes, by the number that is rolled into the bar. */
export type BarSize = '#3' | '#4' | '#5' | '#6' | '#7' | '#8' | '#9' | '#10' | '#11' | '#14' | '#18';

/** Nominal diameter in inches and weight in pounds per foot. */
const TABLE: Record<BarSize, readonly [diameter: string, weight: string]> = {
  '#3': ['0.375', '0.376'],
  '#4': ['0.5', '0.668'],
  '#5': ['0.625', '1.043'],
  '#6': ['0.75', '1.502'],
  '#7': ['0.875', '2.044'],
  '#8': ['1', '2.67'],
  '#9': ['1.128', '3.4'],
  '#10': ['1.27', '4.303'],
  '#11': ['1.41', '5.313'],
  '#14': ['1.693', '7.65'],
  '#18': ['2.257', '13.6'],
};

/** All sizes, smallest first. */
export const BAR_SIZES = /*#__PURE__*/ Object.keys(TABLE) as BarSize[];

/** Nominal diameter. */
export const diameterOf = (size: BarSize): Quantity<'length'> => length(`${TABLE[size][0]} in`);

/** Nominal weight. */
export const weightOf = (size: BarSize): Quantity<'mass-per-length'> =>
  massPerLength(`${TABLE[size][1]} lb/ft`);

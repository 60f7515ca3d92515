/** The water-cement ratio as people write it: `0.45`, a number that needs no unit since both are mass. */
import type { Quantity } from '../quantity/quantity';
import { bareRatio } from '../reckoning/bare-ratio';
import type { Field } from '../reckoning/fields';
import { range } from '../reckoning/ordinary';

const ORDINARY = /*#__PURE__*/ range('the water for the cement, by mass', '0.3:1', '0.8:1', '0.45:1');

const BARE = /^\s*0?\.\d{1,4}\s*$/;

/** Water to cementitious material by mass: `0.45`, `0.45:1` or `45%`. */
export const waterCement = (what: string): Field<Quantity<'ratio'>> =>
  bareRatio(what, 'positive', ORDINARY, BARE);

/** What to watch out for when concrete is cured and sealed, and when the ground beside it is made good. */
import type { Quantity } from '../quantity/quantity';
import type { Caution } from '../reckoning/result';
import { COMMON_PRACTICE } from '../reckoning/source';
import { say } from '../reckoning/words';
import { CURING_PRACTICES } from './sources';

type Area = Quantity<'area'>;
type Length = Quantity<'length'>;
type Ratio = Quantity<'ratio'>;

export const thinCuring = (limit: Area, actual: Area): Caution => ({
  code: 'thin-curing',
  severity: 'warning',
  ...say`all coats together come to ${{ actual }} for each measure, thinner than the ${{ limit }} at which such compounds are tested: it will not keep the water in. Spray another coat, across the first`,
  limit,
  actual,
  source: CURING_PRACTICES,
});

export const readTheLabel: Caution = {
  code: 'read-the-label',
  severity: 'warning',
  always: true,
  says: 'compounds, sealers and releases harm eyes, skin and lungs, and some burn: follow label and data sheet, keep flames away, and never let rinse water run into a drain',
  source: COMMON_PRACTICE,
};

export const dustyShake: Caution = {
  code: 'dusty-shake',
  severity: 'warning',
  says: 'dry shakes, powders and pigments raise dust that holds silica and cement: wear a respirator that fits, and cast low and downwind',
  source: COMMON_PRACTICE,
};

export const sealTooSoon: Caution = {
  code: 'cure-before-seal',
  severity: 'note',
  says: 'a curing compound keeps sealers and joint sealants from holding: use one that goes with them, or let it wear or clean it off, and seal when the concrete is dry',
  source: COMMON_PRACTICE,
};

export const muchColor = (limit: Ratio, actual: Ratio): Caution => ({
  code: 'much-color',
  severity: 'warning',
  ...say`${{ actual }} of the cement is more pigment than the ${{ limit }} at which color no longer deepens and strength suffers`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

export const deepSealant = (limit: Length, actual: Length): Caution => ({
  code: 'deep-sealant',
  severity: 'note',
  ...say`sealant ${{ actual }} deep is deeper than the joint is wide, ${{ limit }}: it tears where a shallower one over a backer rod stretches`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

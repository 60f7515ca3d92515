/** What to watch out for when concrete is cured and sealed, and when the ground beside it is made good. */
import type { Quantity } from '../quantity/quantity';
import type { Caution } from '../reckoning/result';
import { COMMON_PRACTICE, type Source } from '../reckoning/source';
import { say } from '../reckoning/words';
import { CURING_PRACTICES, SEED_CORNELL } from './sources';

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
  ...say`sealant ${{ actual }} deep is deeper than the ${{ limit }} that a joint so wide is filled: it tears where a shallower one over a backer rod stretches`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

export const earlyBackfill = (limit: Quantity<'time'>, actual: Quantity<'time'>): Caution => ({
  code: 'early-backfill',
  severity: 'warning',
  ...say`the concrete is ${{ actual }} old: a tamper beside it before ${{ limit }} chips its edges and can shift it. Fill loose, by hand, and tamp later`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

export const flatGround = (limit: Quantity<'slope'>, actual: Quantity<'slope'>, source: Source): Caution => ({
  code: 'flat-ground',
  severity: 'warning',
  ...say`the ground falls ${{ actual }} away from the building, and ${{ limit }} is asked: fill settles, and then it drains to the wall. Raise it there, keeping below sill and siding, or take the fall farther`,
  limit,
  actual,
  source,
});

/** A mower and a person still stand on it. */
export const steepGround = (limit: Quantity<'slope'>, actual: Quantity<'slope'>): Caution => ({
  code: 'steep-ground',
  severity: 'note',
  ...say`ground that falls ${{ actual }}, more than ${{ limit }}, washes out before grass holds it, and no mower stands on it: flatten it, hold it by a low wall, or cover it with matting and plants`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

export const groundRunsBack = (
  limit: Quantity<'slope'>,
  actual: Quantity<'slope'>,
  source: Source,
): Caution => ({
  code: 'runs-to-building',
  severity: 'stop',
  ...say`the ground falls ${{ back: actual.negated() }} toward the building: rain runs to the wall, stands there and freezes under the slab. Before anything is sown raise it at the wall until it falls ${{ limit }} away, keeping below sill and siding, or cut a swale that leads the water off`,
  limit,
  actual,
  source,
});

export const poorSeed = (limit: Ratio, actual: Ratio): Caution => ({
  code: 'poor-seed',
  severity: 'note',
  ...say`${{ actual }} of this seed is pure and alive, below ${{ limit }}: old seed, or a mix with much filler. Look at the date on the bag`,
  limit,
  actual,
  source: SEED_CORNELL,
});

export const thinRod = (limit: Length, actual: Length): Caution => ({
  code: 'thin-rod',
  severity: 'warning',
  ...say`a rod of ${{ actual }} is no thicker than the joint is wide, ${{ limit }}: it slides down, and the sealant with it. Take one a quarter thicker`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

export const shakeOnAir: Caution = {
  code: 'shake-on-air',
  severity: 'warning',
  says: 'a hard shake troweled onto air-entrained concrete seals air and bleed water under a skin that blisters and comes off: have the mix without added air, at most 3%, or leave the shake out. Where it freezes wet, the air is needed and the shake is not',
  source: COMMON_PRACTICE,
};

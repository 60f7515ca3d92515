/** What to heed about bodies of concrete, orders and bags. */
import type { Quantity } from '../quantity/quantity';
import type { Caution } from '../reckoning/parts';
import { COMMON_PRACTICE, LIFTING_GUIDE, type Source, WASTE_TEXTS } from '../reckoning/source';
import { NO_WORDS, say, type Words } from '../reckoning/words';
import { IRC_FROST, NRMCA_YIELD } from './sources';

type Length = Quantity<'length'>;
type Volume = Quantity<'volume'>;
type Ratio = Quantity<'ratio'>;

export const noAllowance: Caution = {
  code: 'no-allowance',
  severity: 'warning',
  says: 'nothing is allowed for waste, spillage and an uneven base; published texts add 5% to 10%',
  source: WASTE_TEXTS,
};

export const smallAllowance = (what: string, source: Source, limit: Ratio, actual: Ratio): Caution => ({
  code: 'small-allowance',
  severity: 'warning',
  ...say`${{ actual }} is little for ${{ what }}, where at least ${{ limit }} is usual: measure the depth to the base or the holes as they really are, or order more`,
  limit,
  actual,
  source,
});

export const largeAllowance = (what: string, limit: Ratio, actual: Ratio): Caution => ({
  code: 'large-allowance',
  severity: 'warning',
  ...say`an allowance above ${{ limit }} is more than usual for ${{ what }}; it is the share added on top, so a factor of 1.08 is 8%`,
  limit,
  actual,
  source: WASTE_TEXTS,
});

export const smallLastLoad = (limit: Volume, actual: Volume): Caution => ({
  code: 'small-last-load',
  severity: 'note',
  says: 'the last load is less than a quarter of a truck; most suppliers charge more for it, so ask, or split the order evenly',
  limit,
  actual,
  source: COMMON_PRACTICE,
});

export const belowMinimumLoad = (limit: Volume, actual: Volume): Caution => ({
  code: 'below-minimum-load',
  severity: 'note',
  says: 'a load is below the least that the supplier carries without a charge; ask what it costs',
  limit,
  actual,
  source: COMMON_PRACTICE,
});

const orLower = (lower: Volume, covered: boolean): Words =>
  covered ? say`, or order ${{ lower }} and measure what is left before the last truck is sent` : NO_WORDS;

export const justOverLoad = (limit: Volume, actual: Volume, lower: Volume, covered: boolean): Caution => ({
  code: 'just-over-load',
  severity: 'warning',
  ...say`one more truck is for ${{ actual }} above ${{ lower }} in full loads, less than any measuring of the job can know: check the measurements again${orLower(lower, covered)}`,
  limit,
  actual,
  source: NRMCA_YIELD,
});

export const justOverIncrement = (
  limit: Volume,
  actual: Volume,
  lower: Volume,
  covered: boolean,
): Caution => ({
  code: 'just-over-increment',
  severity: 'note',
  ...say`the last step of the order is for ${{ actual }} above ${{ lower }}, less than any measuring of the job can know: check the measurements again${covered ? say`, or order ${{ lower }}` : NO_WORDS}`,
  limit,
  actual,
  source: NRMCA_YIELD,
});

export const liftingBags = (limit: Quantity<'mass'>, actual: Quantity<'mass'>): Caution => ({
  code: 'lifting-bags',
  severity: 'warning',
  ...say`a bag heavier than ${{ limit }} is more than one person should lift again and again; lift it in pairs, or buy smaller bags`,
  limit,
  actual,
  source: LIFTING_GUIDE,
});

export const muchForBags = (limit: Volume, actual: Volume, bags: Quantity<'count'>): Caution => ({
  code: 'much-for-bags',
  severity: 'warning',
  ...say`more than ${{ limit }} is much for bags: the first of ${{ bags }} sets before the last is mixed, and the pour gets a cold joint. Ask for a part load from a plant, or plan construction joints and enough mixers`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

export const thinOverCore = (limit: Length, actual: Length): Caution => ({
  code: 'thin-over-core',
  severity: 'warning',
  ...say`less than ${{ limit }} of concrete lies over the core; it may break through. The plans and the engineer govern`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

export const aboveFrost = (what: string, limit: Length, actual: Length): Caution => ({
  code: 'above-frost',
  severity: 'warning',
  ...say`${{ what }} is founded ${{ actual }} deep, above the frost depth of ${{ limit }}: the ground under it freezes and lifts it. Go deeper, or protect it from frost as the local code and the engineer allow`,
  limit,
  actual,
  source: IRC_FROST,
});

export const shallowFooting = (what: string, limit: Length, actual: Length): Caution => ({
  code: 'shallow-footing',
  severity: 'warning',
  ...say`${{ what }} is founded ${{ actual }} deep; under exterior footings at least ${{ limit }} below undisturbed ground is usual even without frost. The plans and the local code govern`,
  limit,
  actual,
  source: IRC_FROST,
});

export const unknownFrost = (what: string): Caution => ({
  code: 'frost-depth',
  severity: 'note',
  ...say`whether ${{ what }} reaches below frost is not known here: ask the local building department for the depth, and give frostDepth and how deep it is founded`,
  source: IRC_FROST,
});

/** What to watch out for about bodies of concrete, orders and bags. */
import type { Quantity } from '../quantity/quantity';
import type { Caution } from '../reckoning/parts';
import * as sources from '../reckoning/source';
import { COMMON_PRACTICE } from '../reckoning/source';
import { say } from '../reckoning/words';
import { IRC_FOOTINGS, IRC_FROST } from './sources';

type Length = Quantity<'length'>;

export const thinOverCore = (limit: Length, actual: Length): Caution => ({
  code: 'thin-over-core',
  severity: 'warning',
  ...say`less than ${{ limit }} of concrete lies over the core; it may break through. The plans and the engineer govern`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

export const anchorsApart = (limit: Length, actual: Length): Caution => ({
  code: 'anchors-apart',
  severity: 'warning',
  ...say`bolts of a plate stand ${{ actual }} apart: ${{ limit }} is the most that is usual. The plans and the local code govern`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

export const anchorsFromEnd = (limit: Length, actual: Length): Caution => ({
  code: 'anchors-apart',
  severity: 'warning',
  ...say`the last bolt stands ${{ actual }} from the end of a piece of plate: ${{ limit }} is the most that is usual. The plans and the local code govern`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

export const anchorsByCode: Caution = {
  code: 'anchors-by-code',
  severity: 'note',
  says: 'how thick, how deep and how close anchor bolts are set is by the plans and the local code, which ask for more where wind is strong or the ground shakes',
  source: COMMON_PRACTICE,
};

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

export const thinFooting = (what: string, limit: Length, actual: Length): Caution => ({
  code: 'thin-footing',
  severity: 'warning',
  ...say`${{ what }} is ${{ actual }} thick; codes have footings at least ${{ limit }} thick, since what they carry breaks a thinner one. The plans and the local code govern`,
  limit,
  actual,
  source: IRC_FOOTINGS,
});

export const unknownFrost = (what: string, frost?: Length): Caution => ({
  code: 'frost-depth',
  severity: 'note',
  ...(frost
    ? say`whether ${{ what }} reaches below the frost depth of ${{ frost }} is not known here: give how deep it is founded`
    : say`whether ${{ what }} reaches below frost is not known here: ask the local building department for the depth, and give frostDepth and how deep it is founded`),
  source: IRC_FROST,
});

export const thinSlab = (limit: Length, actual: Length): Caution => ({
  code: 'thin-slab',
  severity: 'warning',
  ...say`the slab is thinner than the ${{ limit }} that a slab on ground is usually required to have; follow the plans and the local code`,
  limit,
  actual,
  source: sources.IRC_SLAB_THICKNESS,
});

/** No slab on ground is so thin: what is, is bonded to one. */
export const thinTopping = (limit: Length, actual: Length): Caution => ({
  ...thinSlab(limit, actual),
  ...say`the slab is thinner than the ${{ limit }} that a slab on ground is usually required to have; follow the plans and the local code. So thin only a topping lasts, bonded to a slab and jointed over its joints`,
});

export const buriedUtilities: Caution = {
  code: 'buried-utilities',
  severity: 'warning',
  always: true,
  says: 'have buried lines located and marked before you dig; in the United States call 811',
  source: sources.COMMON_PRACTICE,
};

/**
 * Cautions of weather, one each.
 *
 * A caution informs; the plans, the local code and a licensed engineer decide.
 */
import type { Quantity } from '../quantity/quantity';
import type { Caution } from '../reckoning/result';
import { COMMON_PRACTICE, type Source } from '../reckoning/source';
import { say } from '../reckoning/words';
import type { Difference, Temperature } from './degrees';
import {
  BATCH_HEATING,
  BLEED_UNSEEN,
  FREEZING_YOUNG,
  HEAT_AT_WORK,
  HOT_LIMIT,
  HOVER_EVAPORATION,
  ICE_RULES,
  MATURITY_PRACTICE,
  MENZEL,
  NRMCA_COLD,
  OLD_WATER_LIMIT,
  SCALDING,
  UNDER_THE_SUN,
} from './sources';

type Drying = Quantity<'evaporation'>;

export const fastDrying = (limit: Drying, actual: Drying, source: Source): Caution => ({
  code: 'fast-drying',
  severity: 'warning',
  ...say`the surface dries at ${{ actual }}, more than the ${{ limit }} that is safe: it cracks while it is soft. Before the truck comes put up windbreaks and dampen the base; fog the air over the slab, spread an evaporation retarder after strike-off and between passes, sheet what is not being worked, and cure at once. A dull surface may still be bleeding beneath`,
  limit,
  actual,
  source,
});

export const dryingNearLimit = (limit: Drying, actual: Drying): Caution => ({
  code: 'drying-near-limit',
  severity: 'note',
  ...say`the surface dries at ${{ actual }}, and the estimate may be 40% low: the limit of ${{ limit }} can be passed. Have windbreaks, fog and an evaporation retarder at hand, and measure again when the concrete comes`,
  limit,
  actual,
  source: HOVER_EVAPORATION,
});

export const dryingPastHelp = (limit: Drying, actual: Drying): Caution => ({
  code: 'drying-past-help',
  severity: 'stop',
  ...say`with the wind broken, fog over the slab and cooler concrete the surface still dries at ${{ actual }}, more than ${{ limit }}: wait for another day, or place at night or in the early morning`,
  limit,
  actual,
  source: UNDER_THE_SUN,
});

export const dewOnConcrete = (actual: Drying): Caution => ({
  code: 'dew-on-concrete',
  severity: 'note',
  says: 'the concrete is so much colder than the moist air that dew settles on it: wait until it is gone, and do not work it into the surface; setting will be slow',
  actual,
  source: BLEED_UNSEEN,
});

export const beyondChart = (what: string): Caution => ({
  code: 'beyond-chart',
  severity: 'note',
  ...say`the chart that the one equation was fitted to ends before this ${{ what }}: hold it against the figure by the pressures of vapor, and go by the larger`,
  source: MENZEL,
});

export const heatStress = (limit: Temperature, actual: Temperature): Caution => ({
  code: 'heat-stress',
  severity: 'warning',
  ...say`at ${{ actual }} people fall ill from heat: water, shade and rest every hour, easy first days for new hands, and someone who watches for confusion and fainting, which need an ambulance`,
  limit,
  actual,
  source: HEAT_AT_WORK,
});

export const iceLeft = (actual: Difference): Caution => ({
  code: 'ice-left',
  severity: 'stop',
  says: 'the batch has not the heat to melt its ice, and ice left in concrete leaves holes: use less ice, or thaw the aggregates',
  actual,
  source: COMMON_PRACTICE,
});

export const muchIce = (limit: Quantity<'ratio'>, actual: Quantity<'ratio'>): Caution => ({
  code: 'much-ice',
  severity: 'note',
  ...say`${{ actual }} of the batch water as ice is more than the ${{ limit }} that plants manage to melt while mixing: see that none is left, or cool the aggregates too`,
  limit,
  actual,
  source: ICE_RULES,
});

export const notCooled = (actual: Temperature): Caution => ({
  code: 'not-cooled',
  severity: 'warning',
  ...say`all of the batch water as ice brings the concrete to ${{ actual }} and no lower: shade and wet the aggregates, have the cement cool before it is used, or place when it is cooler`,
  actual,
  source: ICE_RULES,
});

export const notWarmed: Caution = {
  code: 'not-warmed',
  severity: 'warning',
  says: 'hot water and warm aggregates within their limits do not bring the concrete to what is wanted: have the plant thaw and heat the aggregates earlier, or wait for warmer days',
  source: BATCH_HEATING,
};

export const scalds = (limit: Temperature, actual: Temperature): Caution => ({
  code: 'scalding-water',
  severity: 'warning',
  ...say`water of ${{ actual }} scalds; above ${{ limit }} it takes no more than moments of a splash: closed hoses, gloves and face shields, and nobody over the drum while it is filled`,
  limit,
  actual,
  source: SCALDING,
});

export const flashSet = (limit: Temperature, actual: Temperature): Caution => ({
  code: 'flash-set',
  severity: 'warning',
  ...say`water hotter than ${{ limit }} makes cement set in a flash and ball up: mix it with the aggregates first, and let the cement in when both are below that`,
  limit,
  actual,
  source: OLD_WATER_LIMIT,
});

export const mixInOrder = (limit: Temperature, actual: Temperature): Caution => ({
  code: 'mix-in-order',
  severity: 'note',
  ...say`with water or aggregates above ${{ limit }} the order counts: water and aggregates first, cement last`,
  limit,
  actual,
  source: BATCH_HEATING,
});

export const hotAggregates = (limit: Temperature, actual: Temperature): Caution => ({
  code: 'hot-aggregates',
  severity: 'warning',
  ...say`aggregates at ${{ actual }} are hotter than the ${{ limit }} that is allowed: they dry out, burn who handles them and set the cement off. Heat them more gently and longer`,
  limit,
  actual,
  source: BATCH_HEATING,
});

export const frozenAggregate = (limit: Temperature, actual: Temperature): Caution => ({
  code: 'frozen-aggregate',
  severity: 'warning',
  ...say`aggregate at ${{ actual }} has ice in it: lumps stay in the concrete and thaw into holes. Thaw it until none is left before it is batched`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

export const hotConcrete = (limit: Temperature, actual: Temperature): Caution => ({
  code: 'hot-concrete',
  severity: 'warning',
  ...say`concrete at ${{ actual }} is hotter than the ${{ limit }} commonly allowed: it stiffens early, wants more water, cracks, and ends weaker. Cool the mix or place in the cool of the day`,
  limit,
  actual,
  source: HOT_LIMIT,
});

export const coldConcrete = (limit: Temperature, actual: Temperature): Caution => ({
  code: 'cold-concrete',
  severity: 'warning',
  ...say`concrete at ${{ actual }} is colder than ${{ limit }}: it sets late, bleeds long and dusts, and freezes sooner. Ask the plant for hot water`,
  limit,
  actual,
  source: NRMCA_COLD,
});

export const frozeYoung = (limit: Temperature, actual: Temperature): Caution => ({
  code: 'froze-young',
  severity: 'stop',
  ...say`the concrete was at ${{ actual }}, below ${{ limit }}, before it had the age of a day: frozen so young it can lose half of its strength, and no maturity shows that. Have it looked at before anything is built on it`,
  limit,
  actual,
  source: FREEZING_YOUNG,
});

export const beyondCalibration: Caution = {
  code: 'beyond-calibration',
  severity: 'warning',
  says: 'the calibration ends before this: no strength is told beyond its weakest and its strongest specimen. Break more of them',
  source: MATURITY_PRACTICE,
};

export const maturityIsHeat: Caution = {
  code: 'maturity-is-heat',
  severity: 'warning',
  always: true,
  says: 'maturity tells of warmth and time and not of what was in the batch: it holds for the mix that was calibrated, at the place where the sensor sat. Have the strength checked another way before forms are stripped or anything is loaded, which the engineer decides',
  source: MATURITY_PRACTICE,
};

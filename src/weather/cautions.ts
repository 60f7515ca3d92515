/**
 * Cautions of weather, one each.
 *
 * A caution informs; the plans, the local code and a licensed engineer decide.
 */
import type { Quantity } from '../quantity/quantity';
import type { Caution } from '../reckoning/result';
import type { Source } from '../reckoning/source';
import { say } from '../reckoning/words';
import type { Temperature } from './degrees';
import { BLEED_UNSEEN, HEAT_AT_WORK, HOVER_EVAPORATION, MENZEL, UNDER_THE_SUN } from './sources';

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

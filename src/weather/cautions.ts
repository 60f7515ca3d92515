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
  ACI_306_TABLES,
  ACI_306_THICK,
  BATCH_HEATING,
  BLANKET_PRACTICE,
  BLEED_UNSEEN,
  COLD_AT_WORK,
  DEICER_WAIT,
  FREEZING_YOUNG,
  FROZEN_SUBGRADE,
  HEAT_AT_WORK,
  HOT_LIMIT,
  HOT_SPECIFICATION,
  HOVER_EVAPORATION,
  ICE_RULES,
  MATURITY_PRACTICE,
  MENZEL,
  MINDESS_RATIO,
  MODEL_CODE,
  NRMCA_COLD,
  OLD_WATER_LIMIT,
  SCALDING,
  UNDER_THE_SUN,
  UNVENTED_HEATERS,
} from './sources';
import type { SlabUse } from './strength-gain';

type Drying = Quantity<'evaporation'>;

export const fastDrying = (limit: Drying, actual: Drying, source: Source): Caution => ({
  code: 'fast-drying',
  severity: 'warning',
  ...say`the surface dries at ${{ actual }}, more than the ${{ limit }} that is safe: it cracks while it is soft. Before the truck comes put up windbreaks and dampen the base; fog the air over the slab, spread an evaporation retarder after strike-off and between passes, sheet what is not being worked, in the sun with white sheets, since clear and black ones heat it, and cure at once. A dull surface may still be bleeding beneath`,
  limit,
  actual,
  source,
});

export const fastDryingInCold = (limit: Drying, actual: Drying, source: Source): Caution => ({
  code: 'fast-drying',
  severity: 'warning',
  ...say`the surface dries at ${{ actual }}, more than the ${{ limit }} that is safe: concrete warmer than the air cracks while it is soft in the cold too. Before the truck comes put up windbreaks or an enclosure; sheet what is not being worked, cover it for good as soon as it bears that, and have the concrete no warmer than cold weather asks for. Spray no water where it may freeze. A dull surface may still be bleeding beneath`,
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

export const nearLimitInCold = (limit: Drying, actual: Drying): Caution => ({
  code: 'drying-near-limit',
  severity: 'note',
  ...say`the surface dries at ${{ actual }}, and the estimate may be 40% low: the limit of ${{ limit }} can be passed. Have windbreaks and sheets at hand, and measure again when the concrete comes`,
  limit,
  actual,
  source: HOVER_EVAPORATION,
});

export const dryingPastHelp = (limit: Drying, actual: Drying): Caution => ({
  code: 'drying-past-help',
  severity: 'stop',
  ...say`with the wind broken, fog over the slab and the concrete no warmer than it has to be the surface still dries at ${{ actual }}, more than ${{ limit }}: wait for another day, or place at night or in the early morning`,
  limit,
  actual,
  source: UNDER_THE_SUN,
});

/** The night is colder and no moister: there is shelter, or another day. */
export const pastHelpInCold = (limit: Drying, actual: Drying): Caution => ({
  code: 'drying-past-help',
  severity: 'stop',
  ...say`with the wind broken and the concrete no warmer than it has to be the surface still dries at ${{ actual }}, more than ${{ limit }}: place in an enclosure whose heater is vented outdoors, or wait for a calmer or milder day`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

export const dewOnConcrete = (limit: Drying, actual: Drying): Caution => ({
  code: 'dew-on-concrete',
  severity: 'note',
  says: 'the concrete is so much colder than the moist air that dew settles on it: wait until it is gone, and do not work it into the surface; setting will be slow',
  limit,
  actual,
  source: BLEED_UNSEEN,
});

export const beyondChart = (places: readonly string[]): Caution => ({
  code: 'beyond-chart',
  severity: 'note',
  ...say`the chart that the one equation was fitted to ends before what is given here, ${{ places }}: hold it against the figure by the pressures of vapor, and go by the larger`,
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

export const iceLeft = (limit: Difference, actual: Difference): Caution => ({
  code: 'ice-left',
  severity: 'stop',
  says: 'the batch has not the heat to melt its ice, and ice left in concrete leaves holes: use less ice, or thaw the aggregates',
  limit,
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

export const notCooled = (limit: Temperature, actual: Temperature): Caution => ({
  code: 'not-cooled',
  severity: 'warning',
  ...say`all of the batch water as ice brings the concrete to ${{ actual }} and no lower: shade and wet the aggregates, have the cement cool before it is used, or place when it is cooler`,
  limit,
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

export const curvesAreAverages: Caution = {
  code: 'curves-are-averages',
  severity: 'warning',
  always: true,
  says: 'the curves are averages of many mixes, kept moist: at 7 days mixes have anything from 60% to 82% of their strength at 28. Cylinders kept beside the slab, or its maturity, tell of yours; go by the slower curve until they do',
  source: MINDESS_RATIO,
};

export const engineerStrips: Caution = {
  code: 'engineer-releases',
  severity: 'warning',
  says: 'forms that carry, loads and backfill are released by the engineer, on the strength that was found in the concrete and not on a day of the calendar: props left in too long cost nothing, props taken too early kill',
  source: COMMON_PRACTICE,
};

export const gainsSlowly = (limit: Temperature, actual: Temperature): Caution => ({
  code: 'gains-slowly',
  severity: 'note',
  ...say`at ${{ actual }}, below ${{ limit }}, strength comes slowly and the curves are least sure: have the slab measured before it is used`,
  limit,
  actual,
  source: MODEL_CODE,
});

export const frozenGround: Caution = {
  code: 'frozen-ground',
  severity: 'stop',
  says: 'no concrete on frozen ground: it has heaved and drops when it thaws, the bottom of the slab sets late while the top crusts, and it may freeze. Cover the ground with blankets days ahead or heat it, and see that it is thawed through',
  source: FROZEN_SUBGRADE,
};

export const frostInGround = (limit: Temperature, actual: Temperature): Caution => ({
  code: 'frost-in-ground',
  severity: 'warning',
  ...say`air that is or was down to ${{ actual }} before the pour may have frozen the ground: drive a rod into it in the shade and along the edges before the truck is called, and keep blankets on it until then`,
  limit,
  actual,
  source: FROZEN_SUBGRADE,
});

export const tooColdToPlace = (limit: Temperature, actual: Temperature, source: Source): Caution => ({
  code: 'too-cold-to-place',
  severity: 'warning',
  ...say`concrete at ${{ actual }} is colder than the ${{ limit }} that a section so thin is placed and kept at, whatever the air is: hold the truck, and have the next load come hotter`,
  limit,
  actual,
  source,
});

export const warmerThanNeeded = (limit: Temperature, actual: Temperature): Caution => ({
  code: 'warmer-than-needed',
  severity: 'note',
  ...say`concrete at ${{ actual }} is warmer than ${{ limit }}, far above the least: it dries and cools faster and cracks sooner. Ask for it a little cooler`,
  limit,
  actual,
  source: ACI_306_THICK,
});

export const tooHotToPlace = (limit: Temperature, actual: Temperature): Caution => ({
  code: 'too-hot-to-place',
  severity: 'stop',
  ...say`concrete at ${{ actual }} is above the ${{ limit }} that specifications allow at most: do not place it, ask for ice or chilled water, or place in the cool of the day`,
  limit,
  actual,
  source: HOT_SPECIFICATION,
});

export const coldNight = (limit: Temperature, actual: Temperature): Caution => ({
  code: 'cold-night',
  severity: 'warning',
  ...say`${{ actual }} is coming, below ${{ limit }}, and nothing covers the slab: have blankets there before the truck, lay them as soon as they leave no mark, tuck edges and corners in, and keep them on for the days of protection`,
  limit,
  actual,
  source: ACI_306_TABLES,
});

export const tooFewBlankets = (limit: Temperature, actual: Temperature): Caution => ({
  code: 'too-few-blankets',
  severity: 'warning',
  ...say`one layer of blankets holds a slab to about ${{ limit }}, and ${{ actual }} is coming: lay a second one, lapped over the joints of the first, and watch a thermometer beneath at an edge`,
  limit,
  actual,
  source: BLANKET_PRACTICE,
});

export const beyondBlankets = (limit: Temperature, actual: Temperature): Caution => ({
  code: 'beyond-blankets',
  severity: 'warning',
  ...say`below ${{ limit }}, as the ${{ actual }} that is coming, blankets alone do not hold a slab: it takes a heated enclosure, or milder days`,
  limit,
  actual,
  source: BLANKET_PRACTICE,
});

export const carbonMonoxide = (unvented: boolean): Caution => ({
  code: 'carbon-monoxide',
  severity: unvented ? 'stop' : 'warning',
  says: 'a heater that burns fuel and vents into an enclosure fills it with carbon monoxide, which kills without a warning, and with carbon dioxide, which turns the surface of young concrete to dust: vent it outdoors or heat with electricity or hot water, air the tent before anyone goes in, and hang up an alarm',
  source: UNVENTED_HEATERS,
});

export const coldStress = (limit: Temperature, actual: Temperature): Caution => ({
  code: 'cold-stress',
  severity: 'warning',
  ...say`at ${{ actual }}, below ${{ limit }}, and with wet gloves and boots, hands and feet freeze: dry changes, a warm place to go to, work in pairs, and an eye for shivering and slurred words`,
  limit,
  actual,
  source: COLD_AT_WORK,
});

const PLANNED: Readonly<Record<SlabUse, string>> = {
  strip: 'forms are to come off',
  saw: 'it is to be sawn',
  walk: 'people are to walk on it',
  uncover: 'its curing is to end',
  drive: 'cars are to drive on it',
  load: 'it is to be loaded',
  backfill: 'it is to be backfilled',
};

export const youngForUse = (
  use: SlabUse,
  young: boolean,
  from: Quantity<'time'>,
  limit: Quantity<'time'>,
  actual: Quantity<'time'>,
): Caution => ({
  code: 'young-for-use',
  severity: young ? 'warning' : 'note',
  ...say`${{ planned: PLANNED[use] }} after ${{ actual }}, and the strength for it comes after ${{ from }} by the faster curve and ${{ limit }} by the slower, kept as warm as it is: wait until then, keep the slab warmer, order a mix that is stronger early, or have the strength found in the slab itself`,
  limit,
  actual,
  source: MODEL_CODE,
});

export const youngForWinter = (limit: Quantity<'time'>, actual: Quantity<'time'>): Caution => ({
  code: 'young-for-winter',
  severity: 'warning',
  ...say`${{ actual }} before frost and salt is less than the ${{ limit }} above freezing, dried, that new concrete wants: no salt on it this winter, sand instead, and say so to the owner in writing; or place in spring`,
  limit,
  actual,
  source: DEICER_WAIT,
});

export const noDeicer = (limit: Quantity<'time'>): Caution => ({
  code: 'no-deicer',
  severity: 'note',
  ...say`no salt in the first winter, nor any before ${{ limit }} of mild and dry weather: tell the owner to strew sand`,
  source: DEICER_WAIT,
});

export const engineerProtects: Caution = {
  code: 'engineer-protects',
  severity: 'warning',
  says: 'what carries its full load early is protected until its strength has been found, which the engineer says and no table',
  source: ACI_306_TABLES,
};

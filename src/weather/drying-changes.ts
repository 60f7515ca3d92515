/** What would slow the drying, each measure reckoned again, and which of them together are enough. */

import { greaterOf } from '../quantity/greater';
import { constant, ratio } from '../quantity/make';
import { paired } from '../quantity/paired';
import type { Quantity } from '../quantity/quantity';
import type { Pad } from '../reckoning/pad';
import { COMMON_PRACTICE } from '../reckoning/source';
import { say } from '../reckoning/words';
import * as cautions from './cautions';
import { type Difference, FREEZING, raised, type Temperature } from './degrees';
import type { ChangedDrying, DryingChange, DryingMeasure } from './drying-figures';
import { byOneEquation, type Conditions } from './evaporation';
import { saturated } from './vapor';

type Drying = Quantity<'evaporation'>;

type Ratio = Quantity<'ratio'>;

export const WHOLE = constant(() => ratio('100%'));
/** How far off the estimate may be. */
export const OFF = constant(() => ratio('40%'));

/** Water freezes below, and neither the tables nor the equations go above. */
export const LOWEST = FREEZING;

const HALF_WIND = constant(() => ratio('50%'));
const FOGGED = constant(() => ratio('90%'));
const COOLER_CONCRETE = /*#__PURE__*/ paired('temperature-difference', '10 degF', '5 degC');
const COOLER_AIR = /*#__PURE__*/ paired('temperature-difference', '15 degF', '8 degC');
export const HEAT = /*#__PURE__*/ paired('temperature', '90 degF', '32 degC');
/** Below, fog freezes on what it wets, and a cooler hour is a frost: there is only shelter. */
const COLD_AIR = /*#__PURE__*/ paired('temperature', '50 degF', '10 degC');
/** Concrete of a thin section comes no colder in cold weather. */
const KEPT_WARM = /*#__PURE__*/ paired('temperature', '55 degF', '13 degC');

const moreHumid = (a: Ratio, b: Ratio): Ratio => (a.lessThan(b) ? b : a);

/** No colder than where the equations end. */
const cooled = (t: Temperature, by: Difference, { system }: Pad): Temperature =>
  greaterOf(raised(t, by.negated()), LOWEST.as(system));

/** Air of an earlier hour: cooler, with the same water in it. */
function earlier({ air, humidity, ...rest }: Conditions, pad: Pad): Conditions {
  const cooler = cooled(air, COOLER_AIR.as(pad.system), pad);
  const same = humidity.times(saturated(air, pad).over(saturated(cooler, pad)));
  const r = WHOLE().lessThan(same) ? WHOLE() : same.in('%');
  return { ...rest, air: cooler, humidity: r };
}

const CHANGES: Readonly<Record<DryingChange, (c: Conditions, pad: Pad) => Conditions>> = {
  windbreak: (c) => ({ ...c, wind: c.wind.times(HALF_WIND()) }),
  fog: (c) => ({ ...c, humidity: moreHumid(c.humidity, FOGGED()) }),
  'cooler-concrete': (c, pad) => ({
    ...c,
    concrete: cooled(c.concrete, COOLER_CONCRETE.as(pad.system), pad),
  }),
  'cooler-air': earlier,
};

const CHANGE_NAMES: Readonly<Record<DryingChange, string>> = {
  windbreak: 'drying behind a windbreak',
  fog: 'drying under fog',
  'cooler-concrete': 'drying of cooler concrete',
  'cooler-air': 'drying at a cooler hour',
};

export const isCold = ({ air }: Conditions): boolean => COLD_AIR.undercutBy(air) !== undefined;

/** Whether all of the cooling leaves the concrete as warm as cold weather wants it. */
const stands = ({ concrete }: Conditions, pad: Pad): boolean =>
  !raised(concrete, COOLER_CONCRETE.as(pad.system).negated()).lessThan(KEPT_WARM.as(pad.system));

/** What can be changed: in cold air neither fog nor an hour that is colder still. */
const possible = (change: DryingChange, conditions: Conditions, pad: Pad): boolean => {
  if (!isCold(conditions) || change === 'windbreak') return true;
  return change === 'cooler-concrete' && stands(conditions, pad);
};

/** What is taken of the changes, in words. */
function assumeChanges(conditions: Conditions, pad: Pad): void {
  const [wind, humidity, concrete, air] = [HALF_WIND(), FOGGED(), COOLER_CONCRETE, COOLER_AIR];
  const inTheCold = stands(conditions, pad)
    ? say`a windbreak leaves ${{ wind }} of the wind, concrete comes ${{ concrete }} cooler`
    : say`a windbreak leaves ${{ wind }} of the wind`;
  pad.assume({
    name: 'changes',
    value: isCold(conditions)
      ? inTheCold
      : say`a windbreak leaves ${{ wind }} of the wind, fog brings the air over the slab to ${{ humidity }}, concrete comes ${{ concrete }} cooler, an early hour has air ${{ air }} cooler with the same water in it`,
    because: 'what a crew can bring about; what it does on your site differs',
    override: 'Reckon again with what was measured',
    source: COMMON_PRACTICE,
  });
}

export function changed(conditions: Conditions, before: Drying, pad: Pad): ChangedDrying[] {
  const dries = before.sign() > 0;
  assumeChanges(conditions, pad);
  return (Object.keys(CHANGES) as DryingChange[])
    .filter((change) => possible(change, conditions, pad))
    .map((change) => ({
      change,
      rate: byOneEquation(CHANGE_NAMES[change], CHANGES[change](conditions, pad), pad, dries),
    }))
    .sort((a, b) => a.rate.compareTo(b.rate));
}

/** In the order in which a crew does them. */
const IN_ORDER = ['windbreak', 'fog', 'cooler-concrete'] as const;
const TOGETHER: Readonly<Record<(typeof IN_ORDER)[number], string>> = {
  windbreak: 'drying, first behind a windbreak',
  fog: 'drying, then under fog too',
  'cooler-concrete': 'drying, with cooler concrete too',
};

/** Still air needs no windbreak, moist air no fog, and no concrete is cooled below what the cold wants. */
function helps(change: (typeof IN_ORDER)[number], conditions: Conditions, pad: Pad): boolean {
  const { wind, humidity } = conditions;
  if (change === 'windbreak') return wind.sign() > 0;
  if (change === 'fog') return !isCold(conditions) && humidity.lessThan(FOGGED());
  return stands(conditions, pad);
}

/** What to do until the limit is kept, with what always helps behind it. */
export function nextOf(conditions: Conditions, before: Drying, limit: Drying, pad: Pad): DryingMeasure[] {
  const measures: DryingMeasure[] = [];
  let now = conditions;
  let rate = before;
  for (const change of IN_ORDER.filter((one) => helps(one, conditions, pad))) {
    now = CHANGES[change](now, pad);
    rate = byOneEquation(TOGETHER[change], now, pad, true);
    measures.push({ do: change, rate });
    if (!rate.greaterThan(limit)) break;
  }
  return [...measures, ...behind(isCold(conditions), rate, limit, pad)];
}

/** What always helps, and what is left where all of it is not enough: in the cold a tent, else another day. */
function behind(cold: boolean, rate: Drying, limit: Drying, pad: Pad): DryingMeasure[] {
  const covers: DryingMeasure[] = cold
    ? [{ do: 'sheet' }]
    : [{ do: 'evaporation-retarder' }, { do: 'sheet' }];
  if (!rate.greaterThan(limit)) return covers;
  pad.caution(cold ? cautions.pastHelpInCold(limit, rate) : cautions.dryingPastHelp(limit, rate));
  return [...covers, { do: cold ? 'enclosure' : 'postpone' }];
}

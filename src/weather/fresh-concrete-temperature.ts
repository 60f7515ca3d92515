/**
 * The temperature of fresh concrete from that of its ingredients, and what brings it to one that is wanted.
 *
 * A heat balance with the freezing point for a zero. A pound of cement or dry aggregate takes 0.22 of the heat of a
 * pound of water, so that the whole batch is worth `H = 0.22 × (c + a) + w + f + i` of water; each ingredient brings
 * its share of `H` times how far it is above freezing. Ice must be melted first, which takes as much as 144 degF
 * (80 degC) of water, and takes half the heat of water below freezing; so does the water in aggregate that is frozen.
 *
 * With those zeros it is the equation of ACI 305 and ACI 306, `T = (0.22 (TaWa + TcWc) + TwWw + TaWwa − 112 Wi) ÷
 * (0.22 (Wa + Wc) + Ww + Wi + Wwa)` in degrees Fahrenheit, with 80 in place of 112 in degrees Celsius.
 */

import * as sharedFaults from '../quantity/faults';
import { paired } from '../quantity/paired';
import type { Quantity } from '../quantity/quantity';
import { type Calculation, define, refuse } from '../reckoning/calculation';
import { fields, label, list, maybe, quantity } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import * as cautions from './cautions';
import { above, FREEZING, raised, type Temperature } from './degrees';
import * as faults from './faults';
import {
  type Aggregate,
  type FreshConcreteTemperatureInput,
  type FreshParsed,
  MOST_AGGREGATES,
} from './fresh-mix';
import { type Balance, balanced, frozen, NONE, sum, zeroLike } from './heat-balance';
import {
  AGGREGATE,
  AGGREGATE_MASS,
  CEMENT,
  CEMENT_MASS,
  MIX_CHANGE,
  MOISTURE,
  WANTED,
  WATER,
  WATER_MASS,
} from './ordinary';
import { BATCH_HEATING, FRESH_TEMPERATURE, ICE_RULES } from './sources';
import {
  BOILING,
  HOT_AGGREGATE,
  HOTTEST_WATER,
  heedMuchIce,
  pointOf,
  STEP,
  type WantedTemperature,
  wantedOf,
} from './wanted-temperature';

/** What an ingredient does to the concrete. */
export interface IngredientHeat {
  /** Which ingredient: `cement`, `water`, `ice`, or the name of an aggregate. */
  readonly ingredient: string;
  /** How far it brings the concrete above freezing; below zero for ice. */
  readonly brings: Quantity<'temperature-difference'>;
  /** What the concrete rises when the ingredient is 10 degF, or 5 degC, warmer. */
  readonly moves: Quantity<'temperature-difference'>;
}

/** Figures of {@link freshConcreteTemperature}. */
export interface FreshConcreteTemperatureFigures {
  /** As mixed. */
  readonly temperature: Quantity<'temperature'>;
  /** At the slab. */
  readonly atSlab: Quantity<'temperature'>;
  /** What the batch is worth in water, for its heat. */
  readonly waterEquivalent: Quantity<'mass'>;
  /** What each ingredient does. */
  readonly ingredients: readonly IngredientHeat[];
  /** How to come to the temperature that is wanted; left out where none is. */
  readonly wanted?: WantedTemperature;
}

const ORDERED_MIXING = /*#__PURE__*/ paired('temperature', '100 degF', '38 degC');
const SCALDS = /*#__PURE__*/ paired('temperature', '120 degF', '49 degC');
const HOT_CONCRETE = /*#__PURE__*/ paired('temperature', '90 degF', '32 degC');
const COLD_CONCRETE = /*#__PURE__*/ paired('temperature', '50 degF', '10 degC');

function check({ water, ice, aggregates, wanted }: FreshParsed, pad: Pad): void {
  if (wanted && (frozen(wanted, pad) || BOILING.as(pad.system).lessThan(wanted)))
    refuse('wanted', faults.outsideRange('wanted', ['32 degF to 212 degF', '0 degC to 100 degC']));
  if (frozen(water.temperature, pad) || BOILING.as(pad.system).lessThan(water.temperature))
    refuse(
      'water.temperature',
      faults.outsideRange('water.temperature', ['32 degF to 212 degF', '0 degC to 100 degC']),
    );
  if (ice?.temperature && FREEZING.as(pad.system).lessThan(ice.temperature))
    refuse('ice.temperature', sharedFaults.doesNotFit('ice.temperature', 'freezing'));
  const wet = water.mass.sign() > 0 || ice !== undefined || aggregates.some((a) => a.moisture.sign() > 0);
  if (!wet) refuse('water.mass', sharedFaults.notPositive('water.mass'));
}

/** Water and aggregates that burn, and that must not meet cement alone. */
function heedHeat(water: Temperature, aggregates: readonly Temperature[], mean: Temperature, pad: Pad): void {
  const scalds = SCALDS.exceededBy(water);
  if (scalds) pad.caution(cautions.scalds(scalds, water));
  const flash = HOTTEST_WATER.exceededBy(water);
  if (flash) pad.caution(cautions.flashSet(flash, water));
  const hottest = aggregates.reduce((a, b) => (a.lessThan(b) ? b : a), mean);
  const inOrder = ORDERED_MIXING.exceededBy(hottest.lessThan(water) ? water : hottest);
  if (inOrder && !flash) pad.caution(cautions.mixInOrder(inOrder, hottest.lessThan(water) ? water : hottest));
  const [hot, boiling] = [HOT_AGGREGATE.exceededBy(mean), BOILING.exceededBy(hottest)];
  if (boiling) pad.caution(cautions.hotAggregates(boiling, hottest));
  else if (hot) pad.caution(cautions.hotAggregates(hot, mean));
}

function meanOf(aggregates: readonly Aggregate[], pad: Pad): Temperature {
  const f = FREEZING.as(pad.system);
  const first = (aggregates[0] as Aggregate).mass;
  const all = sum(
    aggregates.map(({ mass }) => mass),
    zeroLike(first),
  );
  return raised(
    f,
    sum(
      aggregates.map(({ mass, temperature }) => above(f, temperature).times(mass.over(all))),
      NONE.as(pad.system),
    ),
  );
}

function heedConcrete(t: Temperature, pad: Pad): void {
  const [hot, cold] = [HOT_CONCRETE.exceededBy(t), COLD_CONCRETE.undercutBy(t)];
  if (hot) pad.caution(cautions.hotConcrete(hot, t));
  if (cold) pad.caution(cautions.coldConcrete(cold, t));
}

/** Heated to what is wanted, or as it came. */
function heed(
  input: FreshParsed,
  { D }: Balance,
  atSlab: Temperature,
  wanted: WantedTemperature | undefined,
  pad: Pad,
): void {
  const reached = wanted && wanted.by !== 'none of these';
  if (D.sign() < 0 && !reached) pad.caution(cautions.iceLeft(NONE.as(pad.system), D));
  const heated = wanted?.by.includes('aggregates') ? wanted.aggregates : undefined;
  const water = wanted?.by.includes('water')
    ? (wanted.water ?? input.water.temperature)
    : input.water.temperature;
  const stones = heated ? [heated] : input.aggregates.map(({ temperature }) => temperature);
  heedHeat(water, stones, heated ?? meanOf(input.aggregates, pad), pad);
  const icy = heated
    ? undefined
    : input.aggregates.find((one) => frozen(one.temperature, pad) && one.moisture.sign() > 0);
  if (icy) pad.caution(cautions.frozenAggregate(FREEZING.as(pad.system), icy.temperature));
  if (input.ice) heedMuchIce(input.ice.mass, input, pad);
  heedConcrete(reached && input.wanted ? input.wanted : atSlab, pad);
}

function reckon(input: FreshParsed, pad: Pad): FreshConcreteTemperatureFigures {
  check(input, pad);
  const balance = balanced(input, pad);
  const temperature = pointOf(balance.D, pad);
  const g = input.change;
  if (!g) {
    pad.assume({
      name: 'change',
      value: NONE,
      because: 'what mixing and the way to the slab add or take is found by measuring a load',
      override: 'Give change, below zero where the concrete cools on the way',
      source: FRESH_TEMPERATURE,
    });
  }
  const atSlab = g
    ? pad.step('temperature at the slab', 'P = T + g', { T: temperature, g }, raised(temperature, g))
    : temperature;
  const wanted = wantedOf(input, balance, pad);
  heed(input, balance, atSlab, wanted, pad);
  const s = STEP.as(pad.system);
  return {
    temperature,
    atSlab,
    waterEquivalent: balance.H,
    ingredients: balance.weighed.map(({ name, brings, share }) => ({
      ingredient: name,
      brings,
      moves: s.times(share),
    })),
    ...(wanted ? { wanted } : {}),
  };
}

/**
 * The temperature of fresh concrete from its ingredients, and what brings it to the one that is wanted.
 *
 * @param input - weights and temperatures of cement, aggregates with their moisture, water and ice; what the way to
 * the slab adds; and the temperature that is wanted
 * @returns the temperature as mixed and at the slab, what each ingredient does, and for a wanted one the water, the
 * ice or the aggregates that make it so
 * @throws {InputError} `outside-range` for water, or a wanted temperature, below freezing or above boiling; `does-not-fit` for ice above
 * freezing; `not-positive` for a batch without any water; quantities that cannot be read
 * @source the heat balance of ACI 305 and ACI 306, as a manual of the US Army and course notes print it
 * @example
 * ```ts
 * import { freshConcreteTemperature } from 'flatwork-reckoner';
 *
 * const { figures } = freshConcreteTemperature({
 *   cement: { mass: '564 lb', temperature: '150 degF' },
 *   aggregates: [{ mass: '3000 lb', moisture: '2%', temperature: '90 degF' }],
 *   water: { mass: '240 lb', temperature: '75 degF' },
 *   wanted: '85 degF',
 * });
 * figures.temperature.format(); // '93.5 degF'
 * figures.wanted?.by; // 'water'
 * figures.wanted?.water?.format(); // '36.4 degF'
 * figures.wanted?.ice?.format(); // '49.5 lb'
 * ```
 */
export const freshConcreteTemperature: Calculation<
  FreshConcreteTemperatureInput,
  FreshConcreteTemperatureFigures
> = /*#__PURE__*/ define({
  id: 'fresh-concrete-temperature',
  title: 'Temperature of fresh concrete',
  version: 1,
  sources: [FRESH_TEMPERATURE, BATCH_HEATING, ICE_RULES],
  input: () =>
    fields({
      cement: fields({
        mass: quantity('mass', 'mass', 'positive', CEMENT_MASS),
        temperature: quantity('temperature', 'temperature', 'any', CEMENT),
      }),
      aggregates: list(
        fields({
          name: maybe(label('name')),
          mass: quantity('mass', 'mass', 'positive', AGGREGATE_MASS),
          moisture: quantity('ratio', 'moisture', 'not-negative', MOISTURE),
          temperature: quantity('temperature', 'temperature', 'any', AGGREGATE),
        }),
        1,
        MOST_AGGREGATES,
      ),
      water: fields({
        mass: quantity('mass', 'mass', 'not-negative', WATER_MASS),
        temperature: quantity('temperature', 'temperature', 'any', WATER),
      }),
      ice: maybe(
        fields({
          mass: quantity('mass', 'mass', 'positive', WATER_MASS),
          temperature: maybe(quantity('temperature', 'temperature', 'any')),
        }),
      ),
      change: maybe(quantity('temperature-difference', 'change', 'any', MIX_CHANGE)),
      wanted: maybe(quantity('temperature', 'wanted', 'any', WANTED)),
    }),
  reckon,
});

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
import { constant, ratio } from '../quantity/make';
import { paired } from '../quantity/paired';
import type { Quantity, QuantityInput } from '../quantity/quantity';
import { type Calculation, define, refuse } from '../reckoning/calculation';
import { fields, label, list, maybe, quantity } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { say } from '../reckoning/words';
import * as cautions from './cautions';
import { above, type Difference, FREEZING, raised, type Temperature } from './degrees';
import * as faults from './faults';
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

/** An ingredient by its weight and temperature; weights of a batch, or for a cubic yard or meter. */
export interface IngredientInput {
  /** How much of it. */
  readonly mass: QuantityInput<'mass'>;
  /** How warm it is. */
  readonly temperature: QuantityInput<'temperature'>;
}

/** Sand or stone. */
export interface AggregateInput {
  /** What it is called. */
  readonly name?: string;
  /** Weight dry. */
  readonly mass: QuantityInput<'mass'>;
  /** Water in and on it, over its dry weight. */
  readonly moisture: QuantityInput<'ratio'>;
  /** How warm it is; below freezing its water is ice. */
  readonly temperature: QuantityInput<'temperature'>;
}

/** Ice put in with the water. */
export interface IceInput {
  /** How much of it. */
  readonly mass: QuantityInput<'mass'>;
  /** How cold it is; by default at freezing, melting. */
  readonly temperature?: QuantityInput<'temperature'>;
}

/** Input of {@link freshConcreteTemperature}. */
export interface FreshConcreteTemperatureInput {
  /** Cement, with fly ash and the like. */
  readonly cement: IngredientInput;
  /** Sand and stone. */
  readonly aggregates: readonly AggregateInput[];
  /** Water put in, besides that in the aggregates. */
  readonly water: IngredientInput;
  /** Ice put in besides the water. */
  readonly ice?: IceInput;
  /** What mixing and the way to the slab add; below zero where it cools. Found by measuring a load; by default none. */
  readonly change?: QuantityInput<'temperature-difference'>;
  /** The temperature that is wanted at the slab. */
  readonly wanted?: QuantityInput<'temperature'>;
}

/** What an ingredient does to the concrete. */
export interface IngredientHeat {
  /** Which ingredient: `cement`, `water`, `ice`, or the name of an aggregate. */
  readonly ingredient: string;
  /** How far it brings the concrete above freezing; below zero for ice. */
  readonly brings: Quantity<'temperature-difference'>;
  /** What the concrete rises when the ingredient is 10 degF, or 5 degC, warmer. */
  readonly moves: Quantity<'temperature-difference'>;
}

/** What brings the concrete to the temperature that is wanted; each by itself, but where `by` says otherwise. */
export interface WantedTemperature {
  /** The way to go: less ice where it has too much, cold or heated water, then ice, then the aggregates. */
  readonly by:
    | 'as it is'
    | 'less ice'
    | 'water'
    | 'ice'
    | 'aggregates'
    | 'water and aggregates'
    | 'none of these';
  /** The water at this temperature. */
  readonly water?: Quantity<'temperature'>;
  /** This much ice in place of as much water. */
  readonly ice?: Quantity<'mass'>;
  /** The water that is then left. */
  readonly waterLeft?: Quantity<'mass'>;
  /** The ice that is then left, with water in place of the rest: none of it, where the batch is to be heated as well. */
  readonly iceLeft?: Quantity<'mass'>;
  /** All aggregates at this temperature; with the water as hot as it may be, where `by` says so. */
  readonly aggregates?: Quantity<'temperature'>;
  /** What all of the water as ice comes to, where that is not enough. */
  readonly coldest?: Quantity<'temperature'>;
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

type Mass = Quantity<'mass'>;

interface Part {
  readonly mass: Mass;
  readonly temperature: Temperature;
}

interface Aggregate extends Part {
  readonly name: string | undefined;
  readonly moisture: Quantity<'ratio'>;
}

interface Parsed {
  readonly cement: Part;
  readonly aggregates: readonly Aggregate[];
  readonly water: Part;
  readonly ice: { readonly mass: Mass; readonly temperature: Temperature | undefined } | undefined;
  readonly change: Difference | undefined;
  readonly wanted: Temperature | undefined;
}

const SOLID = constant(() => ratio('0.22:1'));
const ICE_HEAT = constant(() => ratio('0.5:1'));
/** The heat that melts ice, in degrees of as much water: 144 Btu/lb, or 80 calories a gram. */
const MELTING = /*#__PURE__*/ paired('temperature-difference', '144 degF', '80 degC');
const STEP = /*#__PURE__*/ paired('temperature-difference', '10 degF', '5 degC');
const NONE = /*#__PURE__*/ paired('temperature-difference', '0 degF', '0 degC');

/** As cold as plants chill water, and as hot as it may meet cement. */
const COLDEST_WATER = /*#__PURE__*/ paired('temperature', '35 degF', '2 degC');
const HOTTEST_WATER = /*#__PURE__*/ paired('temperature', '140 degF', '60 degC');
const HOT_AGGREGATE = /*#__PURE__*/ paired('temperature', '150 degF', '65 degC');
const BOILING = /*#__PURE__*/ paired('temperature', '212 degF', '100 degC');
const ORDERED_MIXING = /*#__PURE__*/ paired('temperature', '100 degF', '38 degC');
const SCALDS = /*#__PURE__*/ paired('temperature', '120 degF', '49 degC');
const HOT_CONCRETE = /*#__PURE__*/ paired('temperature', '90 degF', '32 degC');
const COLD_CONCRETE = /*#__PURE__*/ paired('temperature', '50 degF', '10 degC');
const MUCH_ICE = constant(() => ratio('75%'));
const MOST_AGGREGATES = 12;

/** A share of the batch, by what it is worth in water. */
type Share = Quantity<'ratio'>;

/** An ingredient put in the balance. */
interface Weighed {
  readonly name: string;
  readonly brings: Difference;
  /** What a degree of it moves the concrete, as a share of a degree. */
  readonly share: Share;
}

interface Balance {
  readonly H: Mass;
  readonly weighed: readonly Weighed[];
  /** The concrete above freezing, below zero where ice is left. */
  readonly D: Difference;
}

const frozen = (t: Temperature, { system }: Pad): boolean => t.lessThan(FREEZING.as(system));

const sum = <D extends 'mass' | 'temperature-difference'>(parts: readonly Quantity<D>[], none: Quantity<D>) =>
  parts.reduce((all, part) => all.plus(part), none);

const zeroLike = (m: Mass): Mass => m.minus(m);

const waterOf = ({ mass, moisture }: Aggregate): Mass => mass.times(moisture);

function check({ water, ice, aggregates, wanted }: Parsed, pad: Pad): void {
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

/** Ingredients that neither melt nor freeze. */
function plain(name: string, { mass: m, temperature: T }: Part, worth: Share, H: Mass, pad: Pad): Weighed {
  const f = FREEZING.as(pad.system);
  const share = m.times(worth).over(H);
  const brings = pad.step(
    say`what ${{ ingredient: name }} brings`,
    'd = (k × m ÷ H) × (T − f)',
    { k: worth, m, H, T, f },
    above(f, T).times(share),
  );
  return { name, brings, share };
}

/** Ice, or water that is frozen: warmed to freezing, melted, and worth as much as water from there. */
const melted = (T: Temperature, pad: Pad): Difference =>
  above(FREEZING.as(pad.system), T).times(ICE_HEAT()).minus(MELTING.as(pad.system));

function aggregate(one: Aggregate, i: number, H: Mass, pad: Pad): Weighed {
  const name = one.name ?? `aggregate ${i + 1}`;
  const { mass: m, temperature: T, moisture: r } = one;
  const [f, k, w] = [FREEZING.as(pad.system), SOLID(), waterOf(one)];
  const cold = frozen(T, pad);
  const D = above(f, T);
  const dry = D.times(m.times(k).over(H));
  const wet = (cold ? melted(T, pad) : D).times(w.over(H));
  const values = { k, m, H, T, f, r };
  const share = m
    .times(k)
    .plus(cold ? w.times(ICE_HEAT()) : w)
    .over(H);
  const brings = cold
    ? pad.step(
        say`what ${{ ingredient: name }} brings, its water frozen`,
        'd = (k × m ÷ H) × (T − f) + (m × r ÷ H) × (s × (T − f) − L)',
        { ...values, s: ICE_HEAT(), L: MELTING.as(pad.system) },
        dry.plus(wet),
      )
    : pad.step(
        say`what ${{ ingredient: name }} and its water bring`,
        'd = ((k + r) × m ÷ H) × (T − f)',
        values,
        dry.plus(wet),
      );
  return { name, brings, share };
}

function iceOf({ ice }: Parsed, H: Mass, pad: Pad): Weighed[] {
  if (!ice) return [];
  const [f, s, L, i] = [FREEZING.as(pad.system), ICE_HEAT(), MELTING.as(pad.system), ice.mass];
  const T = ice.temperature ?? f;
  const share = i.over(H);
  const brings = pad.step(
    'what ice brings',
    'd = (i ÷ H) × (s × (T − f) − L)',
    { i, H, s, T, f, L },
    melted(T, pad).times(share),
  );
  return [{ name: 'ice', brings, share: share.times(s) }];
}

function worthOf({ cement, aggregates, water, ice }: Parsed, pad: Pad): Mass {
  const none = zeroLike(cement.mass);
  const k = SOLID();
  const a = sum(
    aggregates.map((one) => one.mass),
    none,
  );
  const f = sum(aggregates.map(waterOf), none);
  const [c, w, i] = [cement.mass, water.mass, ice?.mass ?? none];
  return pad.step(
    'the batch in water',
    'H = k × (c + a) + w + f + i',
    { k, c, a, w, f, i },
    c.plus(a).times(k).plus(w).plus(f).plus(i),
  );
}

function balanced(input: Parsed, pad: Pad): Balance {
  const { cement, water, aggregates } = input;
  const H = worthOf(input, pad);
  const weighed = [
    plain('cement', cement, SOLID(), H, pad),
    ...aggregates.map((one, i) => aggregate(one, i, H, pad)),
    plain('water', water, ratio('1:1'), H, pad),
    ...iceOf(input, H, pad),
  ];
  const values = Object.fromEntries(weighed.map(({ brings }, i) => [`d${i + 1}`, brings]));
  const D = pad.step(
    'the concrete above freezing',
    `D = ${Object.keys(values).join(' + ')}`,
    values,
    sum(
      weighed.map(({ brings }) => brings),
      NONE.as(pad.system),
    ),
  );
  return { H, weighed, D };
}

/** The point that far above freezing; where ice is left it stays at freezing. */
function pointOf(D: Difference, pad: Pad): Temperature {
  const f = FREEZING.as(pad.system);
  const n = NONE.as(pad.system);
  if (D.sign() >= 0) return pad.step('temperature as mixed', 'T = f + D', { f, D }, raised(f, D));
  return pad.step('temperature as mixed, with ice left', 'T = f + max(D, n)', { f, D, n }, f);
}

/** What the water must bring to make up for what is lacking. */
function waterFor(lacking: Difference, { water }: Parsed, { H }: Balance, pad: Pad): Temperature | undefined {
  if (water.mass.sign() === 0) return undefined;
  const T = water.temperature;
  const rise = lacking.times(H.over(water.mass));
  const wanted = raised(T, rise);
  if (frozen(wanted, pad) || BOILING.as(pad.system).lessThan(wanted)) return undefined;
  return pad.step(
    'the water that makes it so',
    'W = T + l × (H ÷ w)',
    { T, l: lacking, H, w: water.mass },
    wanted,
  );
}

/** The part of the batch that aggregates and the water in them are, thawed. */
const aggregateWorth = ({ aggregates, cement }: Parsed): Mass =>
  sum(
    aggregates.map((one) => one.mass.times(SOLID()).plus(waterOf(one))),
    zeroLike(cement.mass),
  );

/** The one temperature of all aggregates that makes up for what is lacking. */
function aggregatesFor(
  lacking: Difference,
  input: Parsed,
  balance: Balance,
  pad: Pad,
): Temperature | undefined {
  const f = FREEZING.as(pad.system);
  const A = aggregateWorth(input);
  const now = sum(
    balance.weighed.slice(1, 1 + input.aggregates.length).map(({ brings }) => brings),
    NONE.as(pad.system),
  );
  const rise = now.plus(lacking).times(balance.H.over(A));
  const wanted = raised(f, rise);
  if (frozen(wanted, pad) || HOT_AGGREGATE.as(pad.system).lessThan(wanted)) return undefined;
  return pad.step(
    'the aggregates that make it so',
    'A = f + (b + l) × (H ÷ a)',
    { f, b: now, l: lacking, H: balance.H, a: A },
    wanted,
  );
}

interface Iced {
  readonly ice: Mass;
  readonly waterLeft: Mass;
}

/** Ice in place of water that takes the excess away; `undefined` where there is not so much water. */
function iceFor(excess: Difference, input: Parsed, { H }: Balance, pad: Pad): Iced | undefined {
  const { water, ice: given } = input;
  const [f, L, s] = [FREEZING.as(pad.system), MELTING.as(pad.system), ICE_HEAT()];
  const T = given?.temperature ?? f;
  // What a pound of ice takes away more than a pound of this water brings.
  const each = above(f, water.temperature).minus(melted(T, pad));
  const ice = H.times(excess.over(each));
  if (ice.greaterThan(water.mass)) return undefined;
  const i = pad.step(
    'ice in place of water',
    'i = H × (x ÷ ((W − f) − s × (T − f) + L))',
    { H, x: excess, W: water.temperature, f, s, T, L },
    ice,
  );
  const w = water.mass;
  return { ice: i, waterLeft: pad.step('water left', 'v = w − i', { w, i }, w.minus(i)) };
}

function colder(lacking: Difference, input: Parsed, balance: Balance, pad: Pad): WantedTemperature {
  const water = waterFor(lacking, input, balance, pad);
  const iced = iceFor(lacking.negated(), input, balance, pad);
  const aggregates = aggregatesFor(lacking, input, balance, pad);
  const ways = { ...(water ? { water } : {}), ...iced, ...(aggregates ? { aggregates } : {}) };
  if (water && !water.lessThan(COLDEST_WATER.as(pad.system))) return { by: 'water', ...ways };
  if (iced) {
    heedMuchIce(iced.ice.plus(input.ice?.mass ?? zeroLike(iced.ice)), input, pad);
    return { by: 'ice', ...ways };
  }
  const coldest = allIce(input, balance, pad);
  pad.caution(cautions.notCooled(input.wanted as Temperature, coldest));
  return { by: aggregates ? 'aggregates' : 'none of these', ...ways, coldest };
}

/** What the batch comes to with all of its water as ice. */
function allIce({ water, ice, change }: Parsed, { H, D }: Balance, pad: Pad): Temperature {
  const f = FREEZING.as(pad.system);
  const each = above(f, water.temperature).minus(melted(ice?.temperature ?? f, pad));
  const low = D.minus(each.times(water.mass.over(H)));
  const least = low.sign() < 0 ? NONE.as(pad.system) : low;
  return raised(raised(f, least), change ?? NONE.as(pad.system));
}

/** A batch that is too cold for its ice: water in place of some of it, or of all of it and then heat. */
function warmed(lacking: Difference, input: Parsed, balance: Balance, pad: Pad): WantedTemperature {
  const { ice, water } = input;
  if (!ice || ice.mass.sign() === 0) return warmerMix(lacking, input, balance, pad);
  const [f, L, s] = [FREEZING.as(pad.system), MELTING.as(pad.system), ICE_HEAT()];
  const T = ice.temperature ?? f;
  // What a pound of this water brings more than a pound of ice takes away.
  const each = above(f, water.temperature).minus(melted(T, pad));
  const { H } = balance;
  const [W, i] = [water.temperature, ice.mass];
  const less = H.times(lacking.over(each));
  if (!less.greaterThan(i)) {
    const x = pad.step(
      'ice to leave out',
      'x = H × (l ÷ ((W − f) − s × (T − f) + L))',
      { H, l: lacking, W, f, s, T, L },
      less,
    );
    return { by: 'less ice', iceLeft: pad.step('ice left', 'v = i − x', { i, x }, i.minus(x)) };
  }
  const rest = pad.step(
    'what water in place of all ice leaves lacking',
    'r = l − ((W − f) − s × (T − f) + L) × (i ÷ H)',
    { l: lacking, W, f, s, T, L, i, H },
    lacking.minus(each.times(i.over(H))),
  );
  const thawed: Parsed = { ...input, ice: undefined, water: { ...water, mass: water.mass.plus(i) } };
  return { ...warmerMix(rest, thawed, balance, pad), iceLeft: zeroLike(i) };
}

function warmerMix(lacking: Difference, input: Parsed, balance: Balance, pad: Pad): WantedTemperature {
  const hottest = HOTTEST_WATER.as(pad.system);
  const water = waterFor(lacking, input, balance, pad);
  const alone = aggregatesFor(lacking, input, balance, pad);
  if (water && !hottest.lessThan(water))
    return { by: 'water', water, ...(alone ? { aggregates: alone } : {}) };
  if (input.water.mass.sign() === 0 || hottest.lessThan(input.water.temperature))
    return alone ? { by: 'aggregates', aggregates: alone } : { by: 'none of these' };
  const [T, w] = [input.water.temperature, input.water.mass];
  const { H } = balance;
  const rest = pad.step(
    'what water as hot as it may be leaves lacking',
    'r = l − (h − T) × (w ÷ H)',
    { l: lacking, h: hottest, T, w, H },
    lacking.minus(above(T, hottest).times(w.over(H))),
  );
  const aggregates = aggregatesFor(rest, input, balance, pad);
  if (aggregates) return { by: 'water and aggregates', water: hottest, aggregates };
  pad.caution(cautions.notWarmed);
  return { by: 'none of these' };
}

function wantedOf(input: Parsed, balance: Balance, pad: Pad): WantedTemperature | undefined {
  const { wanted: P } = input;
  if (!P) return undefined;
  const f = FREEZING.as(pad.system);
  const g = input.change ?? NONE.as(pad.system);
  const { D } = balance;
  const lacking = pad.step(
    'what the batch lacks',
    'l = (P − f) − g − D',
    { P, f, g, D },
    above(f, P).minus(g).minus(D),
  );
  if (lacking.sign() === 0) return { by: 'as it is' };
  return lacking.sign() < 0 ? colder(lacking, input, balance, pad) : warmed(lacking, input, balance, pad);
}

function heedMuchIce(ice: Mass, { water, ice: given }: Parsed, pad: Pad): void {
  const all = water.mass.plus(given?.mass ?? zeroLike(water.mass));
  if (all.sign() === 0) return;
  const share = ice.over(all).in('%');
  if (share.greaterThan(MUCH_ICE())) pad.caution(cautions.muchIce(MUCH_ICE(), share));
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
  input: Parsed,
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

function reckon(input: Parsed, pad: Pad): FreshConcreteTemperatureFigures {
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

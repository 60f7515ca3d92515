/** What brings a mix to the temperature that is wanted: colder or hotter water, warmer stone, ice in place of water. */

import { constant, ratio } from '../quantity/make';
import { paired } from '../quantity/paired';
import type { Quantity } from '../quantity/quantity';
import type { Pad } from '../reckoning/pad';
import * as cautions from './cautions';
import { above, type Difference, FREEZING, raised, type Temperature } from './degrees';
import type { FreshParsed } from './fresh-mix';
import {
  type Balance,
  frozen,
  ICE_HEAT,
  MELTING,
  melted,
  NONE,
  SOLID,
  sum,
  waterOf,
  zeroLike,
} from './heat-balance';

type Mass = Quantity<'mass'>;

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

export const STEP = /*#__PURE__*/ paired('temperature-difference', '10 degF', '5 degC');

/** As cold as plants chill water, and as hot as it may meet cement. */
const COLDEST_WATER = /*#__PURE__*/ paired('temperature', '35 degF', '2 degC');
export const HOTTEST_WATER = /*#__PURE__*/ paired('temperature', '140 degF', '60 degC');
export const HOT_AGGREGATE = /*#__PURE__*/ paired('temperature', '150 degF', '65 degC');
export const BOILING = /*#__PURE__*/ paired('temperature', '212 degF', '100 degC');

const MUCH_ICE = constant(() => ratio('75%'));

/** The point that far above freezing; where ice is left it stays at freezing. */
export function pointOf(D: Difference, pad: Pad): Temperature {
  const f = FREEZING.as(pad.system);
  const n = NONE.as(pad.system);
  if (D.sign() >= 0) return pad.step('temperature as mixed', 'T = f + D', { f, D }, raised(f, D));
  return pad.step('temperature as mixed, with ice left', 'T = f + max(D, n)', { f, D, n }, f);
}

/** What the water must bring to make up for what is lacking. */
function waterFor(
  lacking: Difference,
  { water }: FreshParsed,
  { H }: Balance,
  pad: Pad,
): Temperature | undefined {
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
const aggregateWorth = ({ aggregates, cement }: FreshParsed): Mass =>
  sum(
    aggregates.map((one) => one.mass.times(SOLID()).plus(waterOf(one))),
    zeroLike(cement.mass),
  );

/** The one temperature of all aggregates that makes up for what is lacking. */
function aggregatesFor(
  lacking: Difference,
  input: FreshParsed,
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
function iceFor(excess: Difference, input: FreshParsed, { H }: Balance, pad: Pad): Iced | undefined {
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

function colder(lacking: Difference, input: FreshParsed, balance: Balance, pad: Pad): WantedTemperature {
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
function allIce({ water, ice, change }: FreshParsed, { H, D }: Balance, pad: Pad): Temperature {
  const f = FREEZING.as(pad.system);
  const each = above(f, water.temperature).minus(melted(ice?.temperature ?? f, pad));
  const low = D.minus(each.times(water.mass.over(H)));
  const least = low.sign() < 0 ? NONE.as(pad.system) : low;
  return raised(raised(f, least), change ?? NONE.as(pad.system));
}

/** A batch that is too cold for its ice: water in place of some of it, or of all of it and then heat. */
function warmed(lacking: Difference, input: FreshParsed, balance: Balance, pad: Pad): WantedTemperature {
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
  const thawed: FreshParsed = { ...input, ice: undefined, water: { ...water, mass: water.mass.plus(i) } };
  return { ...warmerMix(rest, thawed, balance, pad), iceLeft: zeroLike(i) };
}

function warmerMix(lacking: Difference, input: FreshParsed, balance: Balance, pad: Pad): WantedTemperature {
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

export function wantedOf(input: FreshParsed, balance: Balance, pad: Pad): WantedTemperature | undefined {
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

export function heedMuchIce(ice: Mass, { water, ice: given }: FreshParsed, pad: Pad): void {
  const all = water.mass.plus(given?.mass ?? zeroLike(water.mass));
  if (all.sign() === 0) return;
  const share = ice.over(all).in('%');
  if (share.greaterThan(MUCH_ICE())) pad.caution(cautions.muchIce(MUCH_ICE(), share));
}

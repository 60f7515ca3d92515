/**
 * How fast concrete is placed, by the way it comes from the truck.
 *
 * A rate is given, or follows from trips: `R = n × q ÷ (2 × d ÷ v + f)` for `n` wheelbarrows, carts or buggies of `q`
 * that go `d` and back at the speed `v` and lose `f` on each trip. The crew behind may be slower: what it spreads,
 * strikes off and floats is the most that is placed.
 *
 * Published, from 1908: 200 ft/min both ways and 3/4 min lost each trip, 1 to 2 ft3 of wet concrete in a wheelbarrow.
 * Carts of 6 to 8 ft3 make 3 to 5 yd3/h for each man. Half an hour for a truck of 10 yd3 down its chute is common
 * practice. Of pumps only ratings are published, and these are wide apart: their rate is asked for.
 */
import { constant, slope, time } from '../quantity/make';
import { type Paired, paired } from '../quantity/paired';
import type { Quantity, QuantityInput } from '../quantity/quantity';
import { type Field, fields, kinds, maybe, quantity, whole, wholeNumber, word } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { COMMON_PRACTICE, type Source } from '../reckoning/source';
import * as cautions from './truck-cautions';
import * as ordinary from './truck-ordinary';
import { BARROW_TRIPS, BUGGY_LOADS, CART_RATES, PUMP_RATES } from './truck-sources';

/** A rate that is known, however concrete comes. */
export interface RatedPlacingInput {
  /** A known rate. */
  readonly kind: 'rate';
  /** What is placed in a given time, all told. */
  readonly rate: QuantityInput<'volume-rate'>;
}

/** Straight down the chute of the truck. */
export interface ChutePlacingInput {
  /** Down the chute. */
  readonly kind: 'chute';
  /** What comes down and is spread; by default `20 yd3/h` or `15 m3/h`. */
  readonly rate?: QuantityInput<'volume-rate'>;
  /** How far the farthest concrete is to go from where the truck can stand. */
  readonly farthest?: QuantityInput<'length'>;
  /** How far the chute reaches, extensions on; by default `16 ft` or `5 m`. */
  readonly reach?: QuantityInput<'length'>;
  /** How far the chute falls from the truck to its end, as it is laid. */
  readonly drop?: QuantityInput<'length'>;
}

/** With wheelbarrows or two-wheeled hand carts. */
export interface WheeledPlacingInput {
  /** By hand on one wheel, or on two. */
  readonly kind: 'wheelbarrow' | 'cart';
  /** How many go round at once, each with somebody. */
  readonly carriers: number;
  /** What one carries on each trip. */
  readonly load: QuantityInput<'volume'>;
  /** From the truck to the slab. */
  readonly distance: QuantityInput<'length'>;
  /** Going and coming; by default `3.3 ft/s` or `1 m/s`, a walk. */
  readonly speed?: QuantityInput<'speed'>;
  /** Filling, turning and dumping, each trip; by default `45 s`. */
  readonly lostTime?: QuantityInput<'time'>;
}

/** With power buggies. */
export interface BuggyPlacingInput {
  /** Driven. */
  readonly kind: 'buggy';
  /** How many go round at once. */
  readonly carriers: number;
  /** What one carries on each trip. */
  readonly load: QuantityInput<'volume'>;
  /** From the truck to the slab. */
  readonly distance: QuantityInput<'length'>;
  /** Going and coming. */
  readonly speed: QuantityInput<'speed'>;
  /** Filling, turning and dumping, each trip. */
  readonly lostTime: QuantityInput<'time'>;
}

/** Through a pump with a boom, or through a line on the ground. */
export interface PumpPlacingInput {
  /** Boom or line. */
  readonly kind: 'boom-pump' | 'line-pump';
  /** What is placed, less than the pump is rated for. */
  readonly rate: QuantityInput<'volume-rate'>;
}

/** How concrete comes from the truck to its place. */
export type PlacingInput =
  | RatedPlacingInput
  | ChutePlacingInput
  | WheeledPlacingInput
  | BuggyPlacingInput
  | PumpPlacingInput;

/** A rate that a source prints. */
export interface PublishedRate {
  /** Title of the source. */
  readonly source: string;
  /** The least that it gives. */
  readonly from: Quantity<'volume-rate'>;
  /** The most that it gives. */
  readonly to: Quantity<'volume-rate'>;
}

/** What is carried at a time, as a source prints it. */
export interface PublishedLoad {
  /** Title of the source. */
  readonly source: string;
  /** The least that it gives. */
  readonly from: Quantity<'volume'>;
  /** The most that it gives. */
  readonly to: Quantity<'volume'>;
}

type Rate = Quantity<'volume-rate'>;
type Length = Quantity<'length'>;

interface Rated {
  readonly kind: 'rate' | 'boom-pump' | 'line-pump';
  readonly rate: Rate;
}

interface Chute {
  readonly kind: 'chute';
  readonly rate: Rate | undefined;
  readonly farthest: Length | undefined;
  readonly reach: Length | undefined;
  readonly drop: Length | undefined;
}

interface Carried {
  readonly carriers: Quantity<'count'>;
  readonly load: Quantity<'volume'>;
  readonly distance: Length;
}

interface Wheeled extends Carried {
  readonly kind: 'wheelbarrow' | 'cart';
  readonly speed: Quantity<'speed'> | undefined;
  readonly lostTime: Quantity<'time'> | undefined;
}

interface Driven extends Carried {
  readonly kind: 'buggy';
  readonly speed: Quantity<'speed'>;
  readonly lostTime: Quantity<'time'>;
}

/** A way of placing as it was read. */
export type Placing = Rated | Chute | Wheeled | Driven;

const CHUTE_RATE = /*#__PURE__*/ paired('volume-rate', '20 yd3/h', '15 m3/h');
const CHUTE_REACH = /*#__PURE__*/ paired('length', '16 ft', '5 m');
const WALK = /*#__PURE__*/ paired('speed', '3.3 ft/s', '1 m/s');
/** Flatter concrete does not run, steeper it comes apart: from memory, see its source. */
const FLATTEST = constant(() => slope('1:3'));
const STEEPEST = constant(() => slope('1:2'));
const UPRIGHT = constant(() => slope('100%'));
const LOST = constant(() => time('45 s'));
const FAR = /*#__PURE__*/ paired('length', '200 ft', '60 m');
const CLEAR = /*#__PURE__*/ paired('length', '20 ft', '6 m');

/** What goes round beside each other at one truck. */
const MOST_CARRIERS = 100;

function chuteRate({ rate }: Chute, pad: Pad): Rate {
  if (rate) return rate;
  pad.assume({
    name: 'placing.rate',
    value: CHUTE_RATE,
    because: 'a truck of ten yards down its chute in half an hour, with a crew that keeps up',
    override: 'Give placing.rate as this crew places',
    source: COMMON_PRACTICE,
  });
  return CHUTE_RATE.as(pad.system);
}

/** Whether concrete runs down the chute as it is laid, all in one piece. */
function slopeOf(drop: Length, run: Length, pad: Pad): Quantity<'slope'> {
  const v = UPRIGHT();
  const s = pad.step(
    'slope of the chute',
    's = v × (d ÷ l)',
    { v, d: drop, l: run },
    v.times(drop.over(run)),
  );
  if (s.lessThan(FLATTEST())) pad.caution(cautions.flatChute(FLATTEST(), s));
  if (s.greaterThan(STEEPEST())) pad.caution(cautions.steepChute(STEEPEST(), s));
  return s;
}

/** What a chute comes to. */
export interface ChuteFigures {
  readonly beyondReach?: Length;
  readonly chuteSlope?: Quantity<'slope'>;
}

/** How far the farthest concrete is out of reach, and how steep the chute lies, with the cautions about both. */
export function chuteOf(placing: Placing, pad: Pad): ChuteFigures {
  if (placing.kind !== 'chute') return {};
  const { farthest: f, reach, drop } = placing;
  if (!reach && (f || drop)) {
    pad.assume({
      name: 'placing.reach',
      value: CHUTE_REACH,
      because: 'a chute with its extensions on, from behind the truck',
      override: 'Give placing.reach as the supplier says',
      source: COMMON_PRACTICE,
    });
  }
  const c = reach ?? CHUTE_REACH.as(pad.system);
  // Laid no farther than it has to go.
  const chuteSlope = drop && slopeOf(drop, f?.lessThan(c) ? f : c, pad);
  const sloped = chuteSlope ? { chuteSlope } : {};
  if (!f?.greaterThan(c)) return sloped;
  pad.caution(cautions.beyondChute(c, f));
  return { ...sloped, beyondReach: pad.step('beyond the chute', 'b = f − c', { f, c }, f.minus(c)) };
}

function walkOf({ speed }: Wheeled | Driven, pad: Pad): Quantity<'speed'> {
  if (speed) return speed;
  pad.assume({
    name: 'placing.speed',
    value: WALK,
    because: 'somebody who wheels concrete and comes back',
    override: 'Give placing.speed',
    source: BARROW_TRIPS,
  });
  return WALK.as(pad.system);
}

function lostOf({ lostTime }: Wheeled | Driven, pad: Pad): Quantity<'time'> {
  if (lostTime) return lostTime;
  pad.assume({
    name: 'placing.lostTime',
    value: LOST(),
    because: 'filling, turning and dumping on each trip',
    override: 'Give placing.lostTime',
    source: BARROW_TRIPS,
  });
  return LOST();
}

function carriedRate(placing: Wheeled | Driven, pad: Pad): Rate {
  const { kind, carriers: n, load: q, distance: d } = placing;
  const [v, f] = [walkOf(placing, pad), lostOf(placing, pad)];
  const far = kind === 'buggy' ? undefined : FAR.exceededBy(d);
  if (far) pad.caution(cautions.farToWheel(far, d));
  const way = d.over(v).times(wholeNumber(2)).in('s');
  const c = pad.step('one trip', 'c = 2 × d ÷ v + f', { d, v, f }, way.plus(f));
  return pad.step('rate of the trips', 'R = n × q ÷ c', { n, q, c }, q.times(n).over(c));
}

function ownRate(placing: Placing, pad: Pad): Rate {
  if (placing.kind === 'chute') return chuteRate(placing, pad);
  return 'carriers' in placing ? carriedRate(placing, pad) : placing.rate;
}

/**
 * The rate at which concrete is placed: what comes, or what the crew keeps up with.
 *
 * @param crew - what the crew spreads, strikes off and floats
 */
export function placingRate(placing: Placing, crew: Rate | undefined, pad: Pad): Rate {
  const R = ownRate(placing, pad).in(pad.system === 'metric' ? 'm3/h' : 'yd3/h');
  if (!crew) return R;
  return pad.step('placing', 'P = min(R, k)', { R, k: crew }, crew.lessThan(R) ? crew : R);
}

/** Cautions that this way of placing has for every job. */
export function heedPlacing({ kind }: Placing, pad: Pad): void {
  if (kind === 'boom-pump') pad.caution(cautions.overheadLines(CLEAR));
  if (kind === 'boom-pump' || kind === 'line-pump') pad.caution(cautions.pumpHose);
}

/** Printed in yards and cubic feet; in liters and cubic meters as round as they were. */
const PUMPED = [
  /*#__PURE__*/ paired('volume-rate', '12 yd3/h', '9 m3/h'),
  /*#__PURE__*/ paired('volume-rate', '65 yd3/h', '50 m3/h'),
] as const;
const CARTED = [
  /*#__PURE__*/ paired('volume-rate', '3 yd3/h', '2.3 m3/h'),
  /*#__PURE__*/ paired('volume-rate', '5 yd3/h', '3.8 m3/h'),
] as const;
const CART_HOLDS = [
  /*#__PURE__*/ paired('volume', '6 ft3', '170 L'),
  /*#__PURE__*/ paired('volume', '8 ft3', '225 L'),
] as const;
const BARROW_HOLDS = [
  /*#__PURE__*/ paired('volume', '1 ft3', '28 L'),
  /*#__PURE__*/ paired('volume', '2 ft3', '57 L'),
] as const;
const BUGGY_HOLDS = [
  /*#__PURE__*/ paired('volume', '9 ft3', '255 L'),
  /*#__PURE__*/ paired('volume', '16 ft3', '450 L'),
] as const;

type Ends<D extends 'volume' | 'volume-rate'> = readonly [from: Paired<D>, to: Paired<D>];

/** What sources print for this way of placing. */
export function publishedFor(
  { kind }: Placing,
  { system }: Pad,
): {
  readonly publishedRates?: readonly PublishedRate[];
  readonly publishedLoads?: readonly PublishedLoad[];
} {
  const printed = <D extends 'volume' | 'volume-rate'>({ title }: Source, [from, to]: Ends<D>) => [
    { source: title, from: from.as(system), to: to.as(system) },
  ];
  switch (kind) {
    case 'boom-pump':
    case 'line-pump':
      return { publishedRates: printed(PUMP_RATES, PUMPED) };
    case 'cart':
      return {
        publishedRates: printed(CART_RATES, CARTED),
        publishedLoads: printed(CART_RATES, CART_HOLDS),
      };
    case 'wheelbarrow':
      return { publishedLoads: printed(BARROW_TRIPS, BARROW_HOLDS) };
    case 'buggy':
      return { publishedLoads: printed(BUGGY_LOADS, BUGGY_HOLDS) };
    default:
      return {};
  }
}

const rate = (): Field<Rate> => quantity('volume-rate', 'rate', 'positive', ordinary.PLACING_RATE);

const wheeled = <K extends 'wheelbarrow' | 'cart'>(kind: K) =>
  fields({
    kind: word(kind),
    ...carriedFields(),
    speed: maybe(quantity('speed', 'speed', 'positive', ordinary.CARRIER_SPEED)),
    lostTime: maybe(quantity('time', 'lostTime', 'positive', ordinary.TRIP_TIME)),
  });

const carriedFields = () => ({
  carriers: whole('carriers', 1, MOST_CARRIERS),
  load: quantity('volume', 'load', 'positive', ordinary.CARRIED),
  distance: quantity('length', 'distance', 'positive', ordinary.HAUL),
});

/** The field for a way of placing. */
export const placingField = (): Field<Placing> =>
  kinds('kind', [
    fields({ kind: word('rate'), rate: rate() }),
    fields({
      kind: word('chute'),
      rate: maybe(rate()),
      farthest: maybe(quantity('length', 'farthest', 'positive', ordinary.HAUL)),
      reach: maybe(quantity('length', 'reach', 'positive', ordinary.REACH)),
      drop: maybe(quantity('length', 'drop', 'positive', ordinary.DROP)),
    }),
    wheeled('wheelbarrow'),
    wheeled('cart'),
    fields({
      kind: word('buggy'),
      ...carriedFields(),
      speed: quantity('speed', 'speed', 'positive', ordinary.CARRIER_SPEED),
      lostTime: quantity('time', 'lostTime', 'positive', ordinary.TRIP_TIME),
    }),
    fields({ kind: word('boom-pump'), rate: rate() }),
    fields({ kind: word('line-pump'), rate: rate() }),
  ]);

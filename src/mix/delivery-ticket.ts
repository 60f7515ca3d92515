/**
 * A delivery ticket read at the truck: whether it is the mix that was ordered, how much water is in it, how much more
 * it would bear, and how much concrete it makes.
 *
 * Water to cement counts the water batched, the free water of the aggregate, `M × (m − a) ÷ (1 + m)` by moisture and
 * absorption of the dry aggregate, and what was added since. Water added on site goes into what is left in the drum.
 * Yield is the mass of all that was batched by the density of the fresh concrete; relative yield is that by the volume
 * on the ticket.
 */

import { AGGREGATE_SIZE, SLUMP } from '../joints/ordinary';
import * as faults from '../quantity/faults';
import { lesserOf } from '../quantity/greater';
import { constant, density, ratio } from '../quantity/make';
import type { Quantity, QuantityInput } from '../quantity/quantity';
import type { UnitId } from '../quantity/units';
import { type Calculation, define, refuse } from '../reckoning/calculation';
import { alkali } from '../reckoning/cautions';
import { strength as concreteStrength } from '../reckoning/concrete-strength';
import { choice, fields, list, maybe, quantity } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import type { Read } from '../reckoning/read';
import { COMMON_PRACTICE } from '../reckoning/source';
import { stoneSize } from '../reckoning/stone-size';
import { all, allOrNone, needs, notBoth } from '../reckoning/together';
import { say } from '../reckoning/words';
import { heedAir, isEntrapped } from './air-heeded';
import * as cautions from './cautions';
import { moreThanDelivered } from './faults';
import { FLOW_CLASSES, type FlowClass, flowsEnough, heedFlow } from './flow';
import { AGE, AIR, BATCHED, DENSITY, LOAD, MOISTURE, SPREAD, STRENGTH, WATER } from './ordinary';
import { effectOf, roomBySlump, type WaterEffect } from './site-water';
import { heedSlump, SLUMP_CLASSES, type SlumpClass, slumpsOf } from './slump';
import { AIR_TOLERANCE, WATER_ADDED, YIELD_FORMULA } from './sources';
import { BY_OLD_EDITIONS, C94_21, C94_BEFORE_2021, OLD_TIME_LIMIT } from './time-limit';
import { waterCement } from './water-cement';

/** An aggregate as it was batched. */
export interface BatchedAggregateInput {
  /** As weighed, damp. */
  readonly mass: QuantityInput<'mass'>;
  /** All of its moisture, as a share of the dry mass. */
  readonly moisture: QuantityInput<'ratio'>;
  /** What the stone keeps for itself, as a share of the dry mass; by default nothing, which counts more water. */
  readonly absorption?: QuantityInput<'ratio'>;
}

/** What was ordered. */
export interface OrderedMixInput {
  /** Strength at 28 days, of cylinders, or a class as `C30/37` or `N32`. */
  readonly strength?: QuantityInput<'pressure'>;
  /** Least air. */
  readonly minimumAir?: QuantityInput<'ratio'>;
  /** Most air. */
  readonly maximumAir?: QuantityInput<'ratio'>;
  /** Most water for the cement, by mass. */
  readonly waterCement?: QuantityInput<'ratio'>;
  /** Most slump, or the slump that is aimed at, as `slumpIs` says. */
  readonly slump?: QuantityInput<'length'>;
  /** Whether `slump` is the `most` that may come, or a `target` that loads may be a little off, either way. By default the most. */
  readonly slumpIs?: 'most' | 'target';
  /** Class of the slump by EN 206, in place of a slump: S3 is 100 mm to 150 mm. */
  readonly slumpClass?: SlumpClass;
  /** Class of the flow by EN 206, in place of a slump: F3 spreads to 420 mm to 480 mm on the flow table. */
  readonly flowClass?: FlowClass;
  /** Largest size of the stone. */
  readonly aggregateSize?: QuantityInput<'length'>;
}

/** Input of {@link deliveryTicket}. Masses and water are those of the whole load. */
export interface DeliveryTicketInput {
  /** Concrete by the ticket. */
  readonly volume: QuantityInput<'volume'>;
  /** What was ordered. */
  readonly ordered: OrderedMixInput;
  /** Cement and all that counts as it. */
  readonly cement?: QuantityInput<'mass'>;
  /** Water that was batched. */
  readonly water?: QuantityInput<'volume'>;
  /** Aggregates as batched. */
  readonly aggregates?: readonly BatchedAggregateInput[];
  /** Water added to the drum since, all of it. */
  readonly waterAdded?: QuantityInput<'volume'>;
  /** Concrete in the drum when that went in; by default the whole load. */
  readonly addedTo?: QuantityInput<'volume'>;
  /** Water that somebody wants to add now. */
  readonly waterToAdd?: QuantityInput<'volume'>;
  /** Concrete in the drum now, where water is to be added; by default the whole load. */
  readonly left?: QuantityInput<'volume'>;
  /** Strength by the ticket, or its class. */
  readonly strength?: QuantityInput<'pressure'>;
  /** Air as tested, or by the ticket. */
  readonly airContent?: QuantityInput<'ratio'>;
  /** Slump as tested, or by the ticket. */
  readonly slump?: QuantityInput<'length'>;
  /** Diameter that a sample spreads to on the flow table, as tested. */
  readonly spread?: QuantityInput<'length'>;
  /** Largest size of the stone by the ticket. */
  readonly aggregateSize?: QuantityInput<'length'>;
  /** Density of the fresh concrete, where it was weighed. */
  readonly density?: QuantityInput<'density'>;
  /** From batching to the end of discharge. */
  readonly age?: QuantityInput<'time'>;
  /** The limit on that, by the ticket or the order. */
  readonly timeLimit?: QuantityInput<'time'>;
}

/** What may be asked of a load. */
export type OrderedPart = 'strength' | 'air' | 'water to cement' | 'slump' | 'flow' | 'stone';

/** Figures of {@link deliveryTicket}. */
export interface DeliveryTicketFigures {
  /** Whether what was told is as ordered; left out where nothing of it was. */
  readonly asOrdered?: boolean;
  /** What was ordered and is not told: ask for it before discharge. */
  readonly notTold?: readonly OrderedPart[];
  /** Free water in the aggregate. */
  readonly aggregateWater?: Quantity<'mass'>;
  /** Water to cement as batched, with the water of the aggregate. */
  readonly waterCementBatched?: Quantity<'ratio'>;
  /** Water to cement with what was added since. */
  readonly waterCement?: Quantity<'ratio'>;
  /** Water to cement if what is wanted is added. */
  readonly waterCementAfter?: Quantity<'ratio'>;
  /** Water that may still be added before the limit of water or of slump is reached; nothing past the time limit. */
  readonly waterLeft?: Quantity<'volume'>;
  /** What the water that is wanted would do. */
  readonly effect?: WaterEffect;
  /** Cement in a volume of concrete, by the ticket. */
  readonly cementContent?: Quantity<'density'>;
  /** What the load makes, by its mass and density. */
  readonly yield?: Quantity<'volume'>;
  /** That by the volume on the ticket. */
  readonly relativeYield?: Quantity<'ratio'>;
}

type Parsed = Read<DeliveryTicketInput>;
type Mass = Quantity<'mass'>;
type Ratio = Quantity<'ratio'>;
type Volume = Quantity<'volume'>;

const ONE = constant(() => ratio('1:1'));
const NONE = constant(() => ratio('0%'));
const SHORT = constant(() => ratio('98%'));
/** A plant sends the next mix up; one so much stronger is another. */
const A_FIFTH_MORE = constant(() => ratio('120%'));
const WATER_DENSITY = constant(() => density('1000 kg/m3'));
const waterDensity = ({ system }: Pad): Quantity<'density'> =>
  WATER_DENSITY().in(system === 'metric' ? 'kg/m3' : 'pcf');
/** Sizes under two names, 3/4 in and 20 mm, are one. */
const SAME_STONE = constant(() => ratio('10%'));

/** What ordinary sand and stone keep for themselves at most, common practice. */
const KEPT_MOST = constant(() => ratio('2%'));

interface Wet {
  readonly water: Mass;
  readonly cement: Mass;
  readonly aggregateWater?: Mass;
}

/** Free water of the aggregates: what they carry above what they keep. */
function aggregateWater(input: Parsed, like: Mass, pad: Pad): Mass | undefined {
  const { aggregates } = input;
  if (!aggregates) {
    pad.assume({
      name: 'aggregates',
      value: 'no water of their own',
      because: 'as where the ticket has the water of sand and stone in its water',
      override: 'Give aggregates with their moisture, where water is only what the plant put in',
      source: YIELD_FORMULA,
    });
    return undefined;
  }
  return aggregates
    .map(({ mass: M, moisture: m, absorption }, i) => {
      const a = absorption ?? NONE();
      if (!absorption) {
        pad.assume({
          name: `aggregates[${i}].absorption`,
          value: a,
          because: 'all of the moisture is counted as water of the mix, which is the safe side',
          override: 'Give absorption as the supplier tells it',
          source: YIELD_FORMULA,
        });
      }
      const free = M.times(m.minus(a)).over(ONE().plus(m));
      return pad.step(
        say`free water of aggregate ${{ n: i + 1 }}`,
        'F = M × (m − a) ÷ (1 + m)',
        { M, m, a },
        free.in(like.unit),
      );
    })
    .reduce((sum, free) => sum.plus(free));
}

function batched(input: Parsed, pad: Pad): Wet | undefined {
  const { cement: C, water: B } = input;
  if (!C || !B) return undefined;
  const d = waterDensity(pad);
  const mass = pad.step('water batched', 'W = B × d', { B, d }, B.times(d).in(C.unit));
  const F = aggregateWater(input, C, pad);
  const water = F ? pad.step('mixing water', 'G = W + F', { W: mass, F }, mass.plus(F)) : mass;
  return { water, cement: C, ...(F ? { aggregateWater: F } : {}) };
}

type Waters = Pick<
  DeliveryTicketFigures,
  'aggregateWater' | 'waterCementBatched' | 'waterCement' | 'waterCementAfter' | 'waterLeft' | 'cementContent'
>;

interface Drum {
  /** What is in it now. */
  readonly left: Volume;
  /** What was in it when water was added. */
  readonly addedTo: Volume;
  /** Past its time limit. */
  readonly late: boolean;
}

/** Water to cement of what is in the drum: water that was added went into what was in it then. */
function ratioNow({ volume: V, waterAdded: a }: Parsed, wet: Wet, { addedTo: b }: Drum, pad: Pad): Ratio {
  const { water: G, cement: C } = wet;
  if (!a || a.sign() === 0) return pad.step('water to cement', 'w = G ÷ C', { G, C }, G.over(C));
  const d = waterDensity(pad);
  const q = pad.step('share of the load that it went into', 'q = b ÷ V', { b, V }, b.over(V));
  const A = pad.step('water added', 'A = a × d', { a, d }, a.times(d).in(C.unit));
  const w = G.times(q).plus(A).over(C.times(q));
  return pad.step('water to cement', 'w = (G × q + A) ÷ (C × q)', { G, q, A, C }, w);
}

/** Cement in what is left in the drum. */
function cementLeft({ volume: V }: Parsed, { cement: C }: Wet, { left: l }: Drum, pad: Pad): Mass {
  if (l.compareTo(V) === 0) return C;
  return pad.step('cement in what is left', 'Q = C × (l ÷ V)', { C, l, V }, C.times(l.over(V)));
}

function ratioThen({ waterToAdd: t }: Parsed, w: Ratio, Q: Mass, pad: Pad): Ratio | undefined {
  if (!t) return undefined;
  const d = waterDensity(pad);
  const after = w.plus(t.times(d).over(Q));
  return pad.step('water to cement if more is added', 'x = w + t × d ÷ Q', { w, t, d, Q }, after);
}

/** Water to the limit; nothing of it where that is reached. */
function roomToLimit(w: Ratio, m: Ratio, Q: Mass, unit: UnitId<'volume'>, pad: Pad): Volume {
  const d = waterDensity(pad);
  const R = Q.times(m.minus(w)).over(d).in(unit);
  if (R.sign() <= 0) return R.minus(R);
  return pad.step('water to the limit', 'R = (m − w) × Q ÷ d', { m, w, Q, d }, R);
}

/** Whether it spreads as far as it was ordered to: then no water is to go in. */
const hasItsFlow = ({ spread, ordered: { flowClass } }: Parsed): boolean =>
  spread !== undefined && flowClass !== undefined && flowsEnough(spread, flowClass);

/** Water that limit and slump leave, in the unit that water is told in; nothing of it past the time limit. */
function roomFor(input: Parsed, w: Ratio, Q: Mass, { left, late }: Drum, pad: Pad): Volume | undefined {
  const { ordered, slump } = input;
  const { unit } = input.water as Volume;
  const rooms: Volume[] = [];
  if (hasItsFlow(input)) rooms.push(left.minus(left).in(unit));
  if (ordered.waterCement) rooms.push(roomToLimit(w, ordered.waterCement, Q, unit, pad));
  if (slump && ordered.slump) rooms.push(roomBySlump(left, slump, ordered.slump, pad).in(unit));
  if (rooms.length === 0) return undefined;
  const room = rooms.reduce((a, b) => lesserOf(a, b));
  return late ? room.minus(room) : room;
}

/** What the ratio may be lower by, where aggregates keep water that nobody has told of. */
function inDoubt({ aggregates = [] }: Parsed, { cement: C }: Wet): Ratio {
  const kept = aggregates
    .filter(({ absorption }) => !absorption)
    .map(({ mass: M, moisture: m }) => M.times(lesserOf(m, KEPT_MOST())).over(ONE().plus(m)).over(C));
  return kept.reduce((sum, one) => sum.plus(one), NONE());
}

function heedLimit(limit: Ratio, now: Ratio, after: Ratio | undefined, doubt: Ratio, pad: Pad): void {
  if (now.greaterThan(limit)) {
    const may = !now.minus(doubt).greaterThan(limit);
    pad.caution((may ? cautions.waterMayBeOver : cautions.waterOverLimit)(limit, now));
  } else if (after?.greaterThan(limit)) pad.caution(cautions.waterWillBreakLimit(limit, after));
}

function waters(input: Parsed, drum: Drum, pad: Pad): Waters {
  const wet = batched(input, pad);
  const { volume: V, ordered, waterToAdd } = input;
  const limit = ordered.waterCement;
  if (!wet) {
    if (limit && waterToAdd && waterToAdd.sign() > 0) pad.caution(cautions.waterUnknown);
    return {};
  }
  const now = ratioNow(input, wet, drum, pad);
  const Q = cementLeft(input, wet, drum, pad);
  const after = ratioThen(input, now, Q, pad);
  if (limit) heedLimit(limit, now, after, inDoubt(input, wet), pad);
  const room = roomFor(input, now, Q, drum, pad);
  return {
    ...(wet.aggregateWater ? { aggregateWater: wet.aggregateWater } : {}),
    waterCementBatched: wet.water.over(wet.cement),
    waterCement: now,
    ...(after ? { waterCementAfter: after } : {}),
    ...(room ? { waterLeft: room } : {}),
    cementContent: pad.step(
      'cement content',
      'c = C ÷ V',
      { C: wet.cement, V },
      wet.cement.over(V).in(pad.system === 'metric' ? 'kg/m3' : 'lb/yd3'),
    ),
  };
}

/** All that was batched, by its density: needs cement, water and aggregates. */
function yields(input: Parsed, pad: Pad): Pick<DeliveryTicketFigures, 'yield' | 'relativeYield'> {
  const { density: D, cement, water, aggregates, waterAdded, volume: V } = input;
  if (!D || !cement || !water || !aggregates) return {};
  const waterMass = water.plus(waterAdded ?? water.minus(water)).times(waterDensity(pad));
  const M = aggregates.reduce((sum, { mass }) => sum.plus(mass), cement.plus(waterMass));
  const Y = pad.step('yield', 'Y = M ÷ D', { M, D }, M.over(D).in(V.unit));
  const y = pad.step('relative yield', 'y = Y ÷ V', { Y, V }, Y.over(V).in('%'));
  if (y.lessThan(SHORT())) pad.caution(cautions.shortYield(SHORT(), y));
  return { yield: Y, relativeYield: y };
}

function isOther(actual: Quantity<'length'>, wanted: Quantity<'length'>): boolean {
  return actual.minus(wanted).abs().greaterThan(wanted.times(SAME_STONE()));
}

function judgeMix(input: Parsed, pad: Pad): void {
  const { strength, airContent: air, slump, spread, aggregateSize, ordered } = input;
  if (strength && ordered.strength && strength.lessThan(ordered.strength)) {
    pad.caution(cautions.weakMix('delivered', ordered.strength, strength, COMMON_PRACTICE));
  }
  if (strength && ordered.strength?.times(A_FIFTH_MORE()).lessThan(strength)) {
    pad.caution(cautions.strongerMix(ordered.strength, strength));
  }
  const { minimumAir: minimum, maximumAir: maximum } = ordered;
  const scales = minimum !== undefined && !isEntrapped(minimum);
  heedAir(air, { minimum, maximum, scales, when: 'delivered', source: AIR_TOLERANCE }, pad);
  if (slump) heedSlump(slump, ordered, pad);
  if (spread) heedFlow(spread, ordered.flowClass, pad);
  if (aggregateSize && ordered.aggregateSize && isOther(aggregateSize, ordered.aggregateSize)) {
    pad.caution(cautions.otherStone(ordered.aggregateSize, aggregateSize));
  }
}

/** Whether it is past its time limit. */
function isLate({ age, timeLimit }: Parsed, pad: Pad): boolean {
  if (!age) return false;
  const limit = timeLimit ?? OLD_TIME_LIMIT();
  if (!timeLimit) {
    pad.assume({
      name: 'timeLimit',
      value: OLD_TIME_LIMIT(),
      because: BY_OLD_EDITIONS,
      override: 'Give timeLimit as the ticket or the order states it',
      source: C94_BEFORE_2021,
    });
  }
  if (age.greaterThan(limit)) pad.caution(cautions.pastTimeLimit(limit, age));
  return age.greaterThan(limit);
}

/** So much in the drum when water goes in: as told, or the whole load. */
function inDrum(
  name: 'left' | 'addedTo',
  { volume, ...input }: Parsed,
  water: Volume | undefined,
  pad: Pad,
): Volume {
  const told = input[name];
  if (told) return told.greaterThan(volume) ? refuse(name, moreThanDelivered(name)) : told;
  if (water) {
    pad.assume({
      name,
      value: { reckoned: volume },
      because: 'the whole load is taken to be in the drum when water is added',
      override: say`Give ${{ name }}: what was in the drum, since the same water does more to less concrete`,
      source: WATER_ADDED,
    });
  }
  return volume;
}

/** What the water that is wanted would do, and whether it may go in. */
function effectWanted(input: Parsed, { left, late }: Drum, pad: Pad): WaterEffect | undefined {
  const { waterToAdd, slump, ordered } = input;
  if (!waterToAdd) return undefined;
  const effect = effectOf(waterToAdd, left, slump, pad);
  if (waterToAdd.sign() === 0) return effect;
  if (ordered.slump && effect.slump?.greaterThan(ordered.slump) && !slump?.greaterThan(ordered.slump)) {
    pad.caution(cautions.slumpWillPass(ordered.slump, effect.slump));
  }
  if (late) pad.caution(cautions.noWaterWhenOld);
  return effect;
}

/** What was ordered: what of it is told, and what is not. */
function orderTold({
  ordered,
  cement,
  water,
  strength,
  airContent: air,
  slump,
  spread,
  aggregateSize,
}: Parsed): {
  readonly told: readonly OrderedPart[];
  readonly missing: readonly OrderedPart[];
} {
  const asked = (
    [
      ['strength', ordered.strength, strength],
      ['air', ordered.minimumAir ?? ordered.maximumAir, air],
      ['water to cement', ordered.waterCement, cement && water],
      ['slump', ordered.slump, slump],
      ['flow', ordered.flowClass, spread],
      ['stone', ordered.aggregateSize, aggregateSize],
    ] as const
  ).filter(([, wanted]) => wanted);
  const names = (told: boolean): OrderedPart[] =>
    asked.filter(([, , actual]) => (actual !== undefined) === told).map(([name]) => name);
  return { told: names(true), missing: names(false) };
}

/** What a figure hangs on must be there with it. */
function together({ cement, water, aggregates, density: D }: Parsed): void {
  if (!cement && (water || aggregates || D))
    refuse('cement', faults.missing('cement', ['"4500 lb"', '"2100 kg"']));
  if (!water && cement) refuse('water', faults.missing('water', ['"240 gal"', '"900 L"']));
  if (D && !aggregates) {
    refuse('aggregates', faults.missing('aggregates', 'a list of them with mass and moisture'));
  }
}

/** The most of a class stands for its slump: so much water may bring it to. */
function withSlump(input: Parsed, { system }: Pad): Parsed {
  const { slump, slumpIs, slumpClass } = input.ordered;
  if (slumpIs && !slump) refuse('ordered.slump', faults.missing('slump', ['"4 in"', '"100 mm"']));
  const { flowClass } = input.ordered;
  const given = Object.entries({ slump, slumpClass, flowClass }).flatMap(([name, value]) =>
    value ? name : [],
  );
  if (given.length > 1) refuse('ordered', faults.giveOneOf(given));
  if (!slumpClass) return input;
  return { ...input, ordered: { ...input.ordered, slump: slumpsOf(slumpClass, system)[1] } };
}

/** Water is wanted, and goes in by a ratio that counts none of the aggregates. */
function heedDry(
  { aggregates, waterToAdd, ordered }: Parsed,
  { waterCementAfter: x }: Waters,
  pad: Pad,
): void {
  const limit = ordered.waterCement;
  if (aggregates || !limit || !waterToAdd || waterToAdd.sign() === 0 || x?.greaterThan(limit)) return;
  pad.caution(cautions.aggregatesUntold);
}

function reckon(given: Parsed, pad: Pad): DeliveryTicketFigures {
  const input = withSlump(given, pad);
  together(input);
  const left = inDrum('left', input, input.waterToAdd, pad);
  const addedTo = inDrum('addedTo', input, input.waterAdded, pad);
  const before = pad.cautions.length;
  judgeMix(input, pad);
  const drum: Drum = { left, addedTo, late: isLate(input, pad) };
  const water = waters(input, drum, pad);
  const effect = effectWanted(input, drum, pad);
  const made = yields(input, pad);
  const { told, missing } = orderTold(input);
  const asOrdered = pad.cautions.length === before;
  const bySlump = (input.slump && input.ordered.slump) ?? (input.spread && input.ordered.flowClass);
  if (water.waterLeft && water.waterLeft.sign() > 0) {
    if (!bySlump) pad.caution(cautions.slumpUnknown);
    heedDry(input, water, pad);
  }
  pad.caution(alkali);
  return {
    ...(told.length > 0 || !asOrdered ? { asOrdered } : {}),
    ...(missing.length > 0 ? { notTold: missing } : {}),
    ...water,
    ...(effect ? { effect } : {}),
    ...made,
  };
}

/**
 * Whether a load is what was ordered, and what its water comes to.
 *
 * @param input - volume and what was ordered; what the ticket and the tests at the truck say
 * @returns water to cement, water that may still be added and what it would do, yield
 * @throws {InputError} `give-one-of` both a slump and its class; `missing` of cement and water one without the other; quantities that cannot be read, are not
 * greater than zero, or `out-of-range` where more is left than was delivered
 * @source ASTM C94 and C138 as quoted; Concrete Construction on water added in the field
 * @example
 * ```ts
 * import { deliveryTicket } from 'flatwork-reckoner';
 *
 * const { figures } = deliveryTicket({
 *   volume: '8 yd3',
 *   ordered: { waterCement: '0.50', slump: '4 in' },
 *   cement: '4512 lb',
 *   water: '240 gal',
 *   slump: '2.5 in',
 *   left: '7 yd3',
 *   waterToAdd: '10 gal',
 * });
 * figures.waterCement?.format(); // '0.4439:1'
 * figures.effect?.slump?.format(); // '4 in'
 * ```
 */
export const deliveryTicket: Calculation<DeliveryTicketInput, DeliveryTicketFigures> = /*#__PURE__*/ define({
  id: 'delivery-ticket',
  title: 'Delivery ticket',
  version: 1,
  sources: [AIR_TOLERANCE, WATER_ADDED, YIELD_FORMULA, C94_BEFORE_2021, C94_21],
  input: () => {
    const strength = concreteStrength('strength', STRENGTH);
    const air = (what: string) => maybe(quantity('ratio', what, 'positive', AIR));
    const slump = maybe(quantity('length', 'slump', 'positive', SLUMP));
    const aggregateSize = maybe(stoneSize('aggregateSize', AGGREGATE_SIZE));
    const aggregate = fields({
      mass: quantity('mass', 'mass', 'positive', BATCHED),
      moisture: quantity('ratio', 'moisture', 'not-negative', MOISTURE),
      absorption: maybe(quantity('ratio', 'absorption', 'not-negative', MOISTURE)),
    });
    const water = (what: string) => maybe(quantity('volume', what, 'not-negative', WATER));
    return fields(
      {
        volume: quantity('volume', 'volume', 'positive', LOAD),
        ordered: fields(
          {
            strength: maybe(strength),
            minimumAir: air('minimumAir'),
            maximumAir: air('maximumAir'),
            waterCement: maybe(waterCement('waterCement')),
            slump,
            slumpIs: maybe(choice('slumpIs', ['most', 'target'] as const)),
            slumpClass: maybe(choice('slumpClass', SLUMP_CLASSES)),
            flowClass: maybe(choice('flowClass', FLOW_CLASSES)),
            aggregateSize,
          },
          all(
            notBoth('slump', 'slumpClass'),
            notBoth('slump', 'flowClass'),
            notBoth('slumpClass', 'flowClass'),
            needs('slumpIs', 'slump'),
          ),
        ),
        cement: maybe(quantity('mass', 'cement', 'positive', BATCHED)),
        water: maybe(quantity('volume', 'water', 'positive', WATER)),
        aggregates: maybe(list(aggregate, 1, 6)),
        waterAdded: water('waterAdded'),
        addedTo: maybe(quantity('volume', 'addedTo', 'positive', LOAD)),
        waterToAdd: water('waterToAdd'),
        left: maybe(quantity('volume', 'left', 'positive', LOAD)),
        strength: maybe(strength),
        airContent: maybe(quantity('ratio', 'airContent', 'not-negative', AIR)),
        slump,
        spread: maybe(quantity('length', 'spread', 'positive', SPREAD)),
        aggregateSize,
        density: maybe(quantity('density', 'density', 'positive', DENSITY)),
        age: maybe(quantity('time', 'age', 'positive', AGE)),
        timeLimit: maybe(quantity('time', 'timeLimit', 'positive', AGE)),
      },
      all(
        allOrNone('cement', 'water'),
        needs('aggregates', 'cement', 'water'),
        needs('density', 'cement', 'water', 'aggregates'),
      ),
    );
  },
  reckon,
});

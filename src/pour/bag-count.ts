/**
 * Bagged mix for small pads: whole bags, water, and trips with a wheelbarrow.
 *
 * `bags = roundup(V × (1 + a) ÷ yield)`. Makers' data sheets give 0.60 ft3 for 80 lb, 0.45 ft3 for 60 lb,
 * 0.375 ft3 for 50 lb and 0.30 ft3 for 40 lb, which is 0.0075 ft3 for each pound. Whether a truck is the
 * better buy is for the caller's prices to say.
 */

import * as faults from '../quantity/faults';
import { constant, mass, ratio, volume } from '../quantity/make';
import { paired } from '../quantity/paired';
import type { Quantity, QuantityInput } from '../quantity/quantity';
import { type Calculation, define, refuse } from '../reckoning/calculation';
import { alkali } from '../reckoning/cautions';
import { type Field, fields, maybe, quantity } from '../reckoning/fields';
import { WASTE_ALLOWANCE } from '../reckoning/ordinary';
import type { Pad } from '../reckoning/pad';
import { carried, wholeUnits } from '../reckoning/whole';
import { say } from '../reckoning/words';
import * as cautions from './cautions';
import { BAG, BAG_WATER, BAG_YIELD, POUR, WHEELBARROW } from './ordinary';
import { BAG_SHEETS, WASTE_TEXTS } from './sources';

/** Input of {@link bagCount}. */
export interface BagCountInput {
  /** Concrete in place, net. */
  readonly volume: QuantityInput<'volume'>;
  /** Share added for waste and spillage, `0%` or more. */
  readonly allowance: QuantityInput<'ratio'>;
  /** Weight of one bag. */
  readonly bag: QuantityInput<'mass'>;
  /** What one bag makes; printed yields stand in for bags of 40, 50, 60 and 80 lb. */
  readonly yield?: QuantityInput<'volume'>;
  /** Water for one bag; by default as printed for 80 lb, in proportion to the weight. */
  readonly water?: QuantityInput<'volume'>;
  /** What a wheelbarrow carries at a time; the trips are left out without it. */
  readonly wheelbarrow?: QuantityInput<'volume'>;
  /** What a buggy carries at a time; the trips are left out without it. */
  readonly buggy?: QuantityInput<'volume'>;
}

/** Figures of {@link bagCount}. */
export interface BagCountFigures {
  /** Whole bags. */
  readonly bags: Quantity<'count'>;
  /** Volume with the allowance. */
  readonly withAllowance: Quantity<'volume'>;
  /** What one bag was taken to make. */
  readonly yield: Quantity<'volume'>;
  /** What the bags make. */
  readonly made: Quantity<'volume'>;
  /** Made above the net volume. */
  readonly overNet: Quantity<'volume'>;
  /** Weight of the bags. */
  readonly weight: Quantity<'mass'>;
  /** Water for all of them; add no more than the bag says. */
  readonly water: Quantity<'volume'>;
  /** Trips with the wheelbarrow. */
  readonly wheelbarrowTrips?: Quantity<'count'>;
  /** Trips with the buggy. */
  readonly buggyTrips?: Quantity<'count'>;
}

type Volume = Quantity<'volume'>;
type Mass = Quantity<'mass'>;

interface Parsed {
  readonly volume: Volume;
  readonly allowance: Quantity<'ratio'>;
  readonly bag: Mass;
  readonly yield: Volume | undefined;
  readonly water: Volume | undefined;
  readonly wheelbarrow: Volume | undefined;
  readonly buggy: Volume | undefined;
}

const PRINTED = [
  ['40 lb', '0.30 ft3'],
  ['50 lb', '0.375 ft3'],
  ['60 lb', '0.45 ft3'],
  ['80 lb', '0.60 ft3'],
] as const;

const ONE = constant(() => ratio('1:1'));
/** The bag that water is printed for. */
const PRINTED_BAG = /*#__PURE__*/ paired('mass', '80 lb', '36.3 kg');
/** Six pints. */
const WATER = /*#__PURE__*/ paired('volume', '0.75 gal', '2.84 L');
const LIFT = /*#__PURE__*/ paired('mass', '51 lb', '23 kg');
const LEAST_ALLOWANCE = constant(() => ratio('5%'));
/** Some 45 bags of 80 lb: what a few people mix and place before the first of it sets. */
const MUCH = /*#__PURE__*/ paired('volume', '1 yd3', '0.75 m3');

function yieldOf({ yield: given, bag }: Parsed, pad: Pad): Volume {
  if (given) return given;
  const row = PRINTED.find(([weight]) => mass(weight).equals(bag));
  if (!row)
    return refuse(
      'yield',
      faults.missing('yield', ['"0.6 ft3", which the bag prints', '"11 L", which the bag prints']),
    );
  pad.assume({
    name: 'yield',
    value: { reckoned: volume(row[1]) },
    because: say`printed for a bag of ${{ bag }}; it says "approximately"`,
    override: 'Give yield as the bag prints it',
    source: BAG_SHEETS,
  });
  return volume(row[1]);
}

function waterOf({ water: given, bag: B }: Parsed, pad: Pad): Volume {
  if (given) return given;
  const [E, W] = [PRINTED_BAG.as(pad.system), WATER.as(pad.system)];
  const w = pad.step('water for one bag', 'w = W × B ÷ E', { W, B, E }, W.times(B.over(E)));
  pad.assume({
    name: 'water',
    value: { reckoned: w },
    because: say`${{ water: WATER }} are printed for a bag of ${{ bag: PRINTED_BAG }}, here in proportion to the weight`,
    override: 'Give water as the bag prints it',
    source: BAG_SHEETS,
  });
  return w;
}

function reckon(input: Parsed, pad: Pad): BagCountFigures {
  const { volume: V, allowance: a, bag: B, wheelbarrow, buggy } = input;
  const withAllowance = pad.step('with allowance', 'W = V × (1 + a)', { V, a }, V.times(ONE().plus(a)));
  const Y = yieldOf(input, pad);
  const n = wholeUnits('bags', withAllowance, Y, 'yield', pad);
  const made = pad.step('what they make', 'M = n × Y', { n, Y }, Y.times(n));
  const overNet = pad.step('above the net volume', 'x = M − V', { M: made, V }, made.minus(V));
  const weight = pad.step('weight', 'G = n × B', { n, B }, B.times(n));
  const w = waterOf(input, pad);
  const water = pad.step('water', 'T = n × w', { n, w }, w.times(n));
  if (a.sign() === 0) pad.caution(cautions.noAllowance);
  if (a.sign() !== 0 && a.lessThan(LEAST_ALLOWANCE())) {
    pad.caution(cautions.smallAllowance('a small pad', WASTE_TEXTS, LEAST_ALLOWANCE(), a));
  }
  const [much, heavy] = [MUCH.exceededBy(V), LIFT.exceededBy(B)];
  if (much) pad.caution(cautions.muchForBags(much, V, n));
  if (heavy) pad.caution(cautions.liftingBags(heavy, B));
  pad.caution(alkali);
  return {
    bags: n,
    withAllowance,
    yield: Y,
    made,
    overNet,
    weight,
    water,
    ...(wheelbarrow
      ? { wheelbarrowTrips: wholeUnits('wheelbarrow trips', withAllowance, wheelbarrow, 'wheelbarrow', pad) }
      : {}),
    ...(buggy ? { buggyTrips: wholeUnits('buggy trips', withAllowance, buggy, 'buggy', pad) } : {}),
  };
}

function door(): Field<Parsed> {
  return fields({
    volume: quantity('volume', 'volume', 'positive', POUR),
    allowance: quantity('ratio', 'allowance', 'not-negative', WASTE_ALLOWANCE),
    bag: quantity('mass', 'bag', 'positive', BAG),
    yield: maybe(quantity('volume', 'yield', 'positive', BAG_YIELD)),
    water: maybe(quantity('volume', 'water', 'positive', BAG_WATER)),
    wheelbarrow: maybe(quantity('volume', 'wheelbarrow', 'positive', WHEELBARROW)),
    buggy: maybe(quantity('volume', 'buggy', 'positive', WHEELBARROW)),
  });
}

/**
 * Bags for a small pad, with the water, the weight and the trips.
 *
 * @param input - net volume, allowance and the bag
 * @returns bags, what they make and weigh, water, trips
 * @throws {InputError} `missing` yield for a bag of other than 40, 50, 60 or 80 lb; `too-many` bags; volumes
 * that cannot be read or are not greater than zero
 * @source arithmetic; default yields from makers' data sheets
 * @example
 * ```ts
 * import { bagCount } from 'flatwork-reckoner';
 *
 * const { figures, assumed } = bagCount({ volume: '9 ft3', allowance: '10%', bag: '80 lb', wheelbarrow: '3 ft3' });
 * figures.bags.format(); // '17 each'
 * figures.wheelbarrowTrips?.format(); // '4 each'
 * assumed[0]?.value; // 0.6 ft3
 * ```
 */
export const bagCount: Calculation<BagCountInput, BagCountFigures> = /*#__PURE__*/ define({
  id: 'bag-count',
  title: 'Bagged mix',
  version: 1,
  sources: [BAG_SHEETS],
  limits: [carried('bags'), carried('wheelbarrow trips'), carried('buggy trips')],
  input: door,
  reckon,
  takes: (_, { bag }) => [{ item: 'bagged-mix', from: 'bags', of: { bag } }],
});

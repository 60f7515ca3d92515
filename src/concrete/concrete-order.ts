/**
 * What to order: net volume plus an allowance, rounded up to the supplier's increment, in loads.
 *
 * `order = roundup(V × (1 + a), increment)`. The allowance is always said, never assumed: published
 * texts give from 5% to 10% and disagree.
 */
import * as faults from '../quantity/faults';
import { constant, ratio } from '../quantity/make';
import type { Quantity, QuantityInput } from '../quantity/quantity';
import { type Calculation, define, refuse } from '../reckoning/calculation';
import * as cautions from '../reckoning/cautions';
import { fields, quantity, wholeNumber } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { WASTE_TEXTS } from '../reckoning/source';

/** Input of {@link concreteOrder}. */
export interface ConcreteOrderInput {
  /** Concrete in place, net. */
  readonly volume: QuantityInput<'volume'>;
  /** Share added for waste, spillage and an uneven base, `0%` or more. */
  readonly allowance: QuantityInput<'ratio'>;
  /** The step in which the supplier sells, for example `0.25 yd3`. */
  readonly increment: QuantityInput<'volume'>;
  /** What one truck carries. */
  readonly truckCapacity: QuantityInput<'volume'>;
}

/** Figures of {@link concreteOrder}. */
export interface ConcreteOrderFigures {
  /** What to order in all. */
  readonly order: Quantity<'volume'>;
  /** Net volume with the allowance, before rounding up. */
  readonly withAllowance: Quantity<'volume'>;
  /** Ordered above the net volume. */
  readonly overNet: Quantity<'volume'>;
  /** How many loads. */
  readonly loadCount: Quantity<'count'>;
  /** Each load, full trucks first. */
  readonly loads: readonly Quantity<'volume'>[];
}

type Volume = Quantity<'volume'>;

interface Parsed {
  readonly volume: Volume;
  readonly allowance: Quantity<'ratio'>;
  readonly increment: Volume;
  readonly truckCapacity: Volume;
}

const LOAD_LIMIT = 10_000;
const QUARTER = constant(() => ratio('25%'));

/** Full trucks, then the rest. */
function loadsOf(order: Volume, truck: Volume, pad: Pad): Volume[] {
  const times = order.over(truck);
  if (times.greaterThan(ratio(`${LOAD_LIMIT}:1`))) {
    refuse('truckCapacity', faults.tooMany('the order in loads', LOAD_LIMIT));
  }
  const full = Math.round(order.downTo(truck).over(truck).toNumber(':1'));
  const rest = order.minus(truck.times(wholeNumber(full)));
  const loads: Volume[] = Array.from({ length: full }, () => truck);
  if (rest.sign() > 0) loads.push(rest);
  pad.step('loads', 'n = ceil(O ÷ T)', { O: order, T: truck }, wholeNumber(loads.length));
  return loads;
}

function heed(input: Parsed, loads: readonly Volume[], pad: Pad): void {
  if (input.allowance.sign() === 0) pad.caution(cautions.noAllowance);
  const last = loads.at(-1) as Volume;
  const small = input.truckCapacity.times(QUARTER());
  if (loads.length > 1 && last.lessThan(small)) pad.caution(cautions.smallLastLoad(small, last));
  pad.caution(cautions.alkali);
}

function reckon(input: Parsed, pad: Pad): ConcreteOrderFigures {
  const { volume: V, allowance: a, increment: i, truckCapacity } = input;
  const withAllowance = V.plus(V.times(a));
  pad.step('with allowance', 'W = V × (1 + a)', { V, a }, withAllowance);
  const order = withAllowance.upTo(i);
  pad.step('order, rounded up to whole increments', 'O = ceil(W ÷ i) × i', { W: withAllowance, i }, order);
  const loads = loadsOf(order, truckCapacity, pad);
  heed(input, loads, pad);
  return { order, withAllowance, overNet: order.minus(V), loadCount: wholeNumber(loads.length), loads };
}

/**
 * What to order from the plant.
 *
 * @param input - net volume, allowance, increment and truck capacity
 * @returns the order and its loads
 * @throws {InputError} `negative` allowance; volumes that cannot be read or are not greater than
 * zero; `too-many` loads
 * @source arithmetic; published allowances are shown in the caution when none is made
 * @example
 * ```ts
 * import { concreteOrder } from 'flatwork-reckoner';
 *
 * const { figures } = concreteOrder({
 *   volume: '20.4 yd3',
 *   allowance: '8%',
 *   increment: '0.25 yd3',
 *   truckCapacity: '9 yd3',
 * });
 * figures.order.format(); // '22.25 yd3'
 * figures.loads.map((load) => load.format()).join(', '); // '9.00 yd3, 9.00 yd3, 4.25 yd3'
 * ```
 */
export const concreteOrder: Calculation<ConcreteOrderInput, ConcreteOrderFigures> = /*#__PURE__*/ define({
  id: 'concrete-order',
  title: 'Concrete to order',
  version: 1,
  sources: [WASTE_TEXTS],
  input: () =>
    fields({
      volume: quantity('volume', 'volume'),
      allowance: quantity('ratio', 'allowance', 'not-negative'),
      increment: quantity('volume', 'increment'),
      truckCapacity: quantity('volume', 'truckCapacity'),
    }),
  reckon,
});

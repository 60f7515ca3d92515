/**
 * What to order: net volume plus an allowance, rounded up to the supplier's increment, in loads.
 *
 * `order = roundup(V × (1 + a), increment)`, or with several elements the sum of each with its own
 * allowance; and what a pump keeps in its line. The allowance is always said, never assumed: published
 * texts give from 5% to 10% and disagree. It is judged by what is poured.
 */
import * as faults from '../quantity/faults';
import { constant, ratio, volume } from '../quantity/make';
import type { Quantity, QuantityInput } from '../quantity/quantity';
import { type Calculation, define, refuse } from '../reckoning/calculation';
import { alkali } from '../reckoning/cautions';
import { choice, type Field, fields, label, list, maybe, quantity, wholeNumber } from '../reckoning/fields';
import { WASTE_ALLOWANCE } from '../reckoning/ordinary';
import type { Pad } from '../reckoning/pad';
import type { Read } from '../reckoning/read';
import { COMMON_PRACTICE } from '../reckoning/source';
import { all, notBoth, oneOf } from '../reckoning/together';
import { total } from '../reckoning/whole';
import { say } from '../reckoning/words';
import * as cautions from './cautions';
import { evenly, fullFirst, fullTruck, LOADS, type LoadSplit } from './loads';
import { heedAllowances, heedBare, heedRounding } from './order-advice';
import { INCREMENT, LEAST_LOAD, POUR, TRUCK } from './ordinary';
import { heldByPump, type PumpLineFigures, type PumpLineInput, pumpLine } from './pump-line';
import { WASTE_TEXTS } from './sources';

/**
 * What is poured, by what holds it: a `slab` on a base, `formed` between forms, a `trench` cut in the earth,
 * or `augered` holes.
 */
export type PourKind = 'slab' | 'formed' | 'trench' | 'augered';

/** One element of the pour. */
export interface OrderElementInput {
  /** What it is called, in the working; by default its number. */
  readonly name?: string;
  /** What it is: the allowance is judged by it. */
  readonly pour?: PourKind;
  /** Concrete in place, net. */
  readonly volume: QuantityInput<'volume'>;
  /** Share added to it, `0%` or more. */
  readonly allowance: QuantityInput<'ratio'>;
}

/** Input of {@link concreteOrder}. Give one volume with its allowance, or a list of elements. */
export interface ConcreteOrderInput {
  /** Concrete in place, net. */
  readonly volume?: QuantityInput<'volume'>;
  /** Share added for waste, spillage and an uneven base, `0%` or more. */
  readonly allowance?: QuantityInput<'ratio'>;
  /** What the volume is: the allowance is judged by it. Elements each say their own. */
  readonly pour?: PourKind;
  /** Elements poured together, each with its own allowance, in place of volume and allowance. */
  readonly elements?: readonly OrderElementInput[];
  /** The step in which the supplier sells, for example `0.25 yd3`. */
  readonly increment: QuantityInput<'volume'>;
  /** What one truck carries. */
  readonly truckCapacity: QuantityInput<'volume'>;
  /** The least that the supplier carries without a charge. */
  readonly minimumLoad?: QuantityInput<'volume'>;
  /**
   * Full trucks first, or as even as increments allow. By default full trucks first, unless the last load
   * would be below `minimumLoad` and an even split avoids it.
   */
  readonly split?: LoadSplit;
  /** The line of a pump, which keeps what fills it. */
  readonly pumpLine?: PumpLineInput;
}

/** An allowance that a published text gives. */
export interface PublishedAllowance {
  /** What is added to the net volume. */
  readonly allowance: Quantity<'ratio'>;
  /** What it is given for, where the text says. */
  readonly pour?: 'slabs' | 'footings, columns and beams';
  /** The largest order it is given for, where the text says. */
  readonly upTo?: Quantity<'volume'>;
  /** Where it stands. */
  readonly source: string;
}

/** Figures of {@link concreteOrder}. */
export interface ConcreteOrderFigures extends PumpLineFigures {
  /** What to order in all, in the unit of the increment. */
  readonly order: Quantity<'volume'>;
  /** Net volume with the allowance, before what a pump keeps and before rounding up. */
  readonly withAllowance: Quantity<'volume'>;
  /** Net volume. */
  readonly net: Quantity<'volume'>;
  /** Each element with its allowance, in order; left out for a single volume. */
  readonly elements?: readonly Quantity<'volume'>[];
  /** Ordered above the net volume. */
  readonly overNet: Quantity<'volume'>;
  /** How many loads. */
  readonly loadCount: Quantity<'count'>;
  /** Each load, the larger ones first. */
  readonly loads: readonly Quantity<'volume'>[];
  /** Where the last of several loads is not full: what can be ordered for certain now. */
  readonly firm?: Quantity<'volume'>;
  /** That last load, best called for when what is left to fill has been measured. */
  readonly balance?: Quantity<'volume'>;
  /** How far the last load falls short of a full truck, where trucks are filled first. */
  readonly shortOfTruck?: Quantity<'volume'>;
  /** How the order was split. */
  readonly split: LoadSplit;
  /** Loads below the minimum that are paid for all the same. */
  readonly loadsBelowMinimum?: Quantity<'count'>;
  /** Allowances that published texts give; they disagree, so none is assumed. */
  readonly publishedAllowances: readonly PublishedAllowance[];
}

type Volume = Quantity<'volume'>;
type Ratio = Quantity<'ratio'>;

interface Element {
  readonly name: string | undefined;
  readonly pour: PourKind | undefined;
  readonly volume: Volume;
  readonly allowance: Ratio;
}

interface Parsed {
  readonly volume: Volume | undefined;
  readonly allowance: Ratio | undefined;
  readonly pour: PourKind | undefined;
  readonly elements: readonly Element[] | undefined;
  readonly increment: Volume;
  readonly truckCapacity: Volume;
  readonly minimumLoad: Volume | undefined;
  readonly split: LoadSplit | undefined;
  readonly pumpLine: Read<PumpLineInput> | undefined;
}

const QUARTER = constant(() => ratio('25%'));

/** As read; the sources stand in {@link WASTE_TEXTS}. */
const ESTIMATING = 'Estimating in Building Construction, section 10-2';

const PUBLISHED = constant((): readonly PublishedAllowance[] => [
  { allowance: ratio('5%'), pour: 'footings, columns and beams', source: ESTIMATING },
  { allowance: ratio('8%'), pour: 'slabs', source: ESTIMATING },
  { allowance: ratio('10%'), source: 'NAVEDTRA 14070, chapter 5' },
  { allowance: ratio('10%'), upTo: volume('200 yd3'), source: 'US Army Engineer School, EN5466, lesson 2' },
]);

interface Needed {
  readonly net: Volume;
  readonly withAllowance: Volume;
  readonly elements?: readonly Volume[];
  readonly bare: boolean;
}

function single(V: Volume, a: Ratio, pad: Pad): Needed {
  const withAllowance = pad.step('with allowance', 'W = V × (1 + a)', { V, a }, V.plus(V.times(a)));
  return { net: V, withAllowance, bare: a.sign() === 0 };
}

function several(elements: readonly Element[], pad: Pad): Needed {
  const each = elements.map(({ name, volume: V, allowance: a }, i) => {
    const what = name ? say`${{ name }} with allowance` : say`element ${{ n: i + 1 }} with allowance`;
    return pad.step(what, 'W = V × (1 + a)', { V, a }, V.plus(V.times(a)));
  });
  const net = total(
    'net volume',
    'V',
    elements.map((e) => e.volume),
    pad,
  );
  const withAllowance = total('with allowances', 'W', each, pad);
  return { net, withAllowance, elements: each, bare: elements.every((e) => e.allowance.sign() === 0) };
}

function needed({ volume, allowance, pour, elements }: Parsed, pad: Pad): Needed {
  if ((volume === undefined) === (elements === undefined)) {
    return volume
      ? refuse('', faults.giveOneOf(['volume', 'elements']))
      : refuse(
          'volume',
          faults.missing('volume', ['"6 yd3", or give elements', '"4.5 m3", or give elements']),
        );
  }
  if (elements) {
    if (allowance) refuse('allowance', faults.giveOneOf(['allowance', 'elements']));
    if (pour) refuse('pour', faults.giveOneOf(['pour', 'elements']));
    return several(elements, pad);
  }
  if (!allowance) return refuse('allowance', faults.missing('allowance', '"8%"'));
  return single(volume as Volume, allowance, pad);
}

const smallest = (loads: readonly Volume[]): Volume =>
  loads.reduce((least, load) => (load.lessThan(least) ? load : least));

/** The loads as asked, or evenly where that spares a load below the minimum. */
function splitOf(order: Volume, input: Parsed, pad: Pad): { loads: Volume[]; split: LoadSplit } {
  const { truckCapacity: truck, increment, minimumLoad: least, split } = input;
  if (split === 'even') return { loads: evenly(order, truck, increment, pad), split };
  const loads = fullFirst(order, truck, increment, pad);
  const last = loads.at(-1) as Volume;
  const dribble = !split && least && loads.length > 1 && last.lessThan(least);
  if (!dribble || truck.lessThan(increment)) return { loads, split: 'full-first' };
  const even = evenly(order, truck, increment, pad);
  if (even.length > loads.length || smallest(even).lessThan(least)) return { loads, split: 'full-first' };
  pad.assume({
    name: 'split',
    value: 'even',
    because: say`the last load would be ${{ last }}, below the minimum of ${{ least }}`,
    override: 'Give split as "full-first"',
    source: COMMON_PRACTICE,
  });
  return { loads: even, split: 'even' };
}

function heed(input: Parsed, bare: boolean, loads: readonly Volume[], over: boolean, pad: Pad): void {
  if (bare) heedBare(input, pad);
  else heedAllowances(input, pad);
  const { truckCapacity, minimumLoad } = input;
  const last = loads.at(-1) as Volume;
  const small = truckCapacity.times(QUARTER());
  const least = smallest(loads);
  if (minimumLoad && least.lessThan(minimumLoad)) {
    pad.caution(cautions.belowMinimumLoad(minimumLoad, least));
  } else if (!over && last.lessThan(small)) {
    pad.caution((loads.length > 1 ? cautions.smallLastLoad : cautions.shortLoad)(small, last));
  }
  pad.caution(alkali);
}

/** Where trucks are filled first and the last is not: what is certain, what is called for, what is left. */
function balanceOf(
  order: Volume,
  loads: readonly Volume[],
  split: LoadSplit,
  { truckCapacity, increment }: Parsed,
  pad: Pad,
): Pick<ConcreteOrderFigures, 'firm' | 'balance' | 'shortOfTruck'> {
  const last = loads.at(-1) as Volume;
  const q = fullTruck(order, truckCapacity, increment);
  const short = q.minus(last);
  if (split !== 'full-first' || short.sign() <= 0) return {};
  pad.step('room left in the last truck', 'e = q − r', { q, r: last }, short);
  if (loads.length === 1) return { shortOfTruck: short };
  const firm = pad.step('certain, in full trucks', 'F = O − r', { O: order, r: last }, order.minus(last));
  return { firm, balance: last, shortOfTruck: short };
}

function reckon(input: Parsed, pad: Pad): ConcreteOrderFigures {
  const { increment: i, minimumLoad } = input;
  const { net, withAllowance, elements, bare } = needed(input, pad);
  const shown = (q: Volume): Volume => q.in(i.shownIn ?? i.unit);
  const pump = heldByPump(input.pumpLine, shown, pad);
  const P = pump.leftInPump;
  const W = P
    ? pad.step('with what the pump keeps', 'N = W + P', { W: withAllowance, P }, withAllowance.plus(P))
    : withAllowance;
  const order = shown(W.upTo(i));
  // What comes out even is printed as it is: a last digit rounded up for show must not look like more.
  const even = order.compareTo(W) === 0;
  const formula = even ? 'O = W' : 'O = ceil(W ÷ i) × i';
  pad.step('order, rounded up to whole increments', formula, even ? { W } : { W, i }, order);
  const overNet = pad.step('above the net volume', 'x = O − V', { O: order, V: net }, order.minus(net));
  const { loads, split } = splitOf(order, input, pad);
  const over = heedRounding({ net: P ? net.plus(P) : net, withAllowance: W, order }, input, pad);
  heed(input, bare, loads, over, pad);
  const below = minimumLoad ? loads.filter((load) => load.lessThan(minimumLoad)).length : 0;
  return {
    order,
    withAllowance,
    net,
    ...(elements ? { elements } : {}),
    ...pump,
    overNet,
    loadCount: wholeNumber(loads.length),
    loads,
    ...balanceOf(order, loads, split, input, pad),
    split,
    ...(minimumLoad ? { loadsBelowMinimum: wholeNumber(below) } : {}),
    publishedAllowances: PUBLISHED(),
  };
}

const pour = (): Field<PourKind | undefined> =>
  maybe(choice<PourKind>('pour', ['slab', 'formed', 'trench', 'augered']));

function door(): Field<Parsed> {
  const element = fields({
    name: maybe(label('name')),
    pour: pour(),
    volume: quantity('volume', 'volume', 'positive', POUR),
    allowance: quantity('ratio', 'allowance', 'not-negative', WASTE_ALLOWANCE),
  });
  return fields(
    {
      volume: maybe(quantity('volume', 'volume', 'positive', POUR)),
      allowance: maybe(quantity('ratio', 'allowance', 'not-negative', WASTE_ALLOWANCE)),
      pour: pour(),
      elements: maybe(list(element, 1, 500)),
      increment: quantity('volume', 'increment', 'positive', INCREMENT),
      truckCapacity: quantity('volume', 'truckCapacity', 'positive', TRUCK),
      minimumLoad: maybe(quantity('volume', 'minimumLoad', 'positive', LEAST_LOAD)),
      split: maybe(choice<LoadSplit>('split', ['full-first', 'even'])),
      pumpLine: maybe(pumpLine()),
    },
    all(
      oneOf(['volume', 'allowance'], ['elements']),
      ...['volume', 'allowance', 'pour'].map((name) => notBoth(name, 'elements')),
    ),
  );
}

/**
 * What to order from the plant: allowance, increment, and the loads it comes in.
 *
 * @param input - net volume with its allowance, or elements each with their own; increment and truck
 * capacity; the least load, how to split, and the line of a pump
 * @returns the order and its loads, in the unit of the increment
 * @throws {InputError} `missing` or `negative` allowance; `give-one-of` volume and elements; volumes that
 * cannot be read or are not greater than zero; `too-many` loads
 * @source arithmetic; published allowances are among the figures
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
  title: 'Concrete order',
  version: 1,
  sources: [WASTE_TEXTS],
  limits: [LOADS],
  input: door,
  reckon,
  takes: () => [{ item: 'ready-mix', from: 'order' }],
});

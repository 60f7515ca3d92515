/** The working of the parts of a job, as its concrete and its purchases go on from them. */

import type { Quantity } from '../quantity/quantity';
import type { PartsWorking, PartWorking } from '../reckoning/part-working';
import type { Step } from '../reckoning/parts';
import { say } from '../reckoning/words';
import { sumOf } from './fill';
import type { ElementConcrete, MixConcrete } from './orders';
import type { Purchase } from './purchases';
import type { WorkedElement } from './work';

/** A sum that no part tells, as a step. */
function sumStep(says: Step['says'], params: Step['params'], of: readonly Quantity[], gives: Quantity): Step {
  const values = Object.fromEntries(of.map((q, i) => [`V${i + 1}`, q]));
  const formula = `V = ${Object.keys(values).join(' + ')}`;
  return { says, ...(params ? { params } : {}), formula, values, gives };
}

/** Bodies of one element, where it has several. */
function bodiesOf(
  { element, index, parts }: WorkedElement,
  concrete: readonly ElementConcrete[],
): PartWorking[] {
  const one = concrete.find((each) => each.element === element)?.one;
  const bodies = parts.flatMap(({ result: { takes } }) =>
    takes.flatMap(({ item, quantity }) => (item === 'concrete' ? [quantity] : [])),
  );
  if (!one || bodies.length < 2) return [];
  const { says, params } = say`concrete of ${{ name: element.name }} in place`;
  return [{ at: `elements[${index}]`, working: [sumStep(says, params, bodies, one)] }];
}

/** What is bought for several elements, where that is the sum of what each takes. */
function boughtOf({ item, quantity, by }: Purchase, k: number): PartWorking[] {
  const each = by.map((share) => share.quantity);
  const sum = sumOf(each as Quantity<'volume'>[]);
  if (each.length < 2 || !sum?.equals(quantity as Quantity<'volume'>)) return [];
  const { says, params } = say`${{ item }} in all`;
  return [{ at: `purchases[${k}]`, working: [sumStep(says, params, each, quantity)] }];
}

/** Of parts that were reckoned once for several no step is told: a slip is made in one of them. */
function ownWorking(elements: readonly WorkedElement[]): PartWorking[] {
  const all = elements.flatMap(({ index, parts }) =>
    parts.map(({ part, result: { working } }) => ({ at: `elements[${index}].${part}`, working })),
  );
  const times = new Map<unknown, number>();
  for (const { working } of all) times.set(working, (times.get(working) ?? 0) + 1);
  return all.map((one) => (times.get(one.working) === 1 ? one : { ...one, working: [] }));
}

/** The working of a job's parts. */
export const partsWorking = (
  elements: readonly WorkedElement[],
  concrete: readonly ElementConcrete[],
  mixes: readonly MixConcrete[],
  purchases: readonly Purchase[],
): PartsWorking => ({
  before: [...ownWorking(elements), ...elements.flatMap((one) => bodiesOf(one, concrete))],
  after: [
    ...mixes.flatMap(({ order, bags }) => [
      ...(order ? [{ at: 'order', working: order.result.working }] : []),
      ...(bags ? [{ at: 'bags', working: bags.result.working }] : []),
    ]),
    ...purchases.flatMap(boughtOf),
  ],
});

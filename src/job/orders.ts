/**
 * Concrete of a job by mix: what each element takes, less what two would count twice, and an order for each mix.
 */
import type { Air } from '../mix/air';
import type { ConcreteOrderFigures } from '../pour/concrete-order';
import type { Quantity } from '../quantity/quantity';
import type { Choices, Element, Job, Raw, RawPart } from './document';
import { concreteOf, sumOf } from './fill';
import type { Overlap } from './overlaps';
import type { Purchase } from './purchases';
import { type Bench, membersOf, under, type WorkedElement, type WorkedPart } from './work';

type Volume = Quantity<'volume'>;

/** Concrete of one element. */
export interface ElementConcrete {
  readonly element: Element;
  readonly index: number;
  /** Of all that are alike, before overlaps. */
  readonly gross: Volume;
  /** What other elements count already. */
  readonly less: Volume | undefined;
  readonly net: Volume;
}

/** Concrete of one mix, and its order. */
export interface MixConcrete {
  readonly mix: string | undefined;
  readonly elements: readonly ElementConcrete[];
  readonly order: WorkedPart | undefined;
  readonly trucks: WorkedPart | undefined;
  /** What the mix must be. */
  readonly asked: WorkedPart | undefined;
}

/** An overlap is taken off once, and never leaves less than nothing. */
function lessTwice(gross: Volume, overlaps: readonly Overlap[], element: Element): Volume | undefined {
  const twice = sumOf(overlaps.flatMap((o) => (o.less === element && o.twice ? [o.twice] : [])));
  return twice?.greaterThan(gross) ? gross : twice;
}

/** Concrete of each element that has any. */
export const concreteOfElements = (
  elements: readonly WorkedElement[],
  overlaps: readonly Overlap[],
): ElementConcrete[] =>
  elements.flatMap(({ element, index, parts }) => {
    const one = concreteOf(parts.map(({ result }) => result));
    if (!one) return [];
    const gross = element.count ? one.times(element.count) : one;
    const less = lessTwice(gross, overlaps, element);
    return [{ element, index, gross, less, net: less ? gross.minus(less) : gross }];
  });

const shareOf = (element: Element, shared: Partial<Choices> | undefined): Raw => ({
  allowance: element.allowance ?? shared?.allowance,
  pour: element.pour ?? shared?.pour,
});

/** Where the elements of an order stand in the document. */
const placeOfOrder =
  (concrete: readonly ElementConcrete[]) =>
  (path: string): string => {
    const [, k, rest] = /^elements\[(\d+)\]\.?(.*)$/.exec(path) ?? [];
    return k === undefined
      ? under('order')(path)
      : under(`elements[${concrete[Number(k)]?.index}]`)(rest ?? '');
  };

function orderOf(
  concrete: readonly ElementConcrete[],
  { job, order, bench }: Ordering,
): WorkedPart | undefined {
  if (order === undefined || order === false) return undefined;
  const elements = concrete
    .filter(({ net }) => net.sign() > 0)
    .map(({ element, net }) => ({ volume: net, ...shareOf(element, job.shared) }));
  if (elements.length === 0) return undefined;
  const input = { ...membersOf(order), elements };
  const at = { element: undefined, part: 'order', id: 'concrete-order' };
  return bench.reckon(at, input, placeOfOrder(concrete));
}

function trucksOf(order: WorkedPart | undefined, { trucks, bench }: Ordering): WorkedPart | undefined {
  if (!order || trucks === undefined || trucks === false) return undefined;
  const { loads } = order.result.figures as ConcreteOrderFigures;
  const input = { ...membersOf(trucks), loads };
  return bench.reckon({ element: undefined, part: 'trucks', id: 'truck-plan' }, input, under('trucks'));
}

function askedOf(mix: string | undefined, { job, bench }: Ordering): WorkedPart | undefined {
  const i = (job.mixes ?? []).findIndex(({ name }) => name === mix);
  const said = job.mixes?.[i];
  if (!said) return undefined;
  const { name: _, ...input } = said as { name: unknown };
  const at = { element: undefined, part: 'mixes', id: 'mix-requirements' };
  return bench.reckon(at, input as Raw, under(`mixes[${i}]`));
}

/** What concrete is ordered by. */
export interface Ordering {
  readonly job: Job;
  readonly order: RawPart | undefined;
  readonly trucks: RawPart | undefined;
  readonly bench: Bench;
}

/** Concrete by mix, in the order in which mixes first come. */
export function mixesOf(concrete: readonly ElementConcrete[], ordering: Ordering): MixConcrete[] {
  const byMix = new Map<string | undefined, ElementConcrete[]>();
  for (const each of concrete) {
    const mix = each.element.mix ?? ordering.job.shared?.mix;
    byMix.set(mix, [...(byMix.get(mix) ?? []), each]);
  }
  return [...byMix].map(([mix, elements]) => {
    const order = orderOf(elements, ordering);
    return { mix, elements, order, trucks: trucksOf(order, ordering), asked: askedOf(mix, ordering) };
  });
}

type Asked = { readonly ask: { readonly [name: string]: Quantity | string } & { readonly air?: Air } };

const ASKED = ['strengthClass', 'strength', 'aggregateSize', 'waterCement', 'slump'] as const;

/** What the supplier is told of a mix besides its name. */
function tellingOf({ mix, asked }: MixConcrete): Purchase['of'] {
  const { ask } = (asked?.result.figures ?? { ask: {} }) as Asked;
  const told = ASKED.filter(
    (name) => ask[name] !== undefined && !(name === 'strength' && ask['strengthClass']),
  );
  return {
    ...(mix === undefined ? {} : { mix }),
    ...Object.fromEntries(told.map((name) => [name, ask[name] as Quantity | string])),
    ...airOf(ask.air),
  };
}

/** What freezes is lost without its air, so the supplier is told all of it. */
const airOf = (air: Air | undefined): Purchase['of'] => ({
  ...(air?.target ? { air: air.target } : {}),
  ...(air ? { minimumAir: air.minimum } : {}),
  ...(air?.maximum ? { maximumAir: air.maximum } : {}),
});

/** Concrete on the purchase list: as ordered, or in place where there is no order. */
export const concretePurchase = (mix: MixConcrete): Purchase => {
  const ordered = (mix.order?.result.figures as ConcreteOrderFigures | undefined)?.order;
  return {
    item: ordered ? 'ready-mix' : 'concrete',
    of: tellingOf(mix),
    quantity: ordered ?? (sumOf(mix.elements.map(({ net }) => net)) as Volume),
    by: mix.elements.map(({ element, net }) => ({ element: element.name, quantity: net })),
  };
};

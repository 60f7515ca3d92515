/**
 * Concrete of a job by mix: what each element takes, less what two would count twice, and an order for each mix.
 */
import type { Air } from '../mix/air';
import type { ConcreteOrderFigures } from '../pour/concrete-order';
import type { TruckPlanFigures } from '../pour/truck-figures';
import type { Quantity } from '../quantity/quantity';
import { DAY_FACTS, type Day } from './day-inputs';
import { factsOfDay, placeInDay } from './days';
import { type Choices, type Element, type Job, partsIn, type Raw, type RawPart } from './document';
import { concreteOf, sumOf } from './fill';
import type { Overlap } from './overlaps';
import type { Purchase } from './purchases';
import {
  type Bench,
  defined,
  membersOf,
  type Place,
  under,
  type WorkedElement,
  type WorkedPart,
} from './work';

type Volume = Quantity<'volume'>;

/** Concrete of one element. */
export interface ElementConcrete {
  readonly element: Element;
  readonly index: number;
  /** Of one of them. */
  readonly one: Volume;
  /** Of all that are alike, before overlaps. */
  readonly gross: Volume;
  /** What other elements count already. */
  readonly less: Volume | undefined;
  readonly net: Volume;
}

/** Concrete of one mix, of one day where days are told, and its order. */
export interface MixConcrete {
  readonly day: PouredOn | undefined;
  readonly mix: string | undefined;
  readonly elements: readonly ElementConcrete[];
  readonly order: WorkedPart | undefined;
  /** Its bags, where no truck comes. */
  readonly bags: WorkedPart | undefined;
  readonly trucks: WorkedPart | undefined;
  /** What the mix must be. */
  readonly asked: WorkedPart | undefined;
}

/** A day with its place in the document. */
export interface PouredOn {
  readonly day: Day;
  readonly index: number;
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
    return [{ element, index, one, gross, less, net: less ? gross.minus(less) : gross }];
  });

/** What is left of each to pour. */
const pouredOf = (concrete: readonly ElementConcrete[]): readonly ElementConcrete[] =>
  concrete.filter(({ net }) => net.sign() > 0);

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
  mix: string | undefined,
  on: PouredOn | undefined,
  { job, order, bench, keepsLine }: Ordering & { readonly keepsLine: boolean },
): WorkedPart | undefined {
  const some = pouredOf(concrete);
  if (order === undefined || order === false || some.length === 0) return undefined;
  const elements = some.map(({ element, net }) => ({
    name: element.name,
    volume: net,
    ...shareOf(element, job.shared),
  }));
  const { pumpLine, ...said } = membersOf(order);
  const input = { ...said, ...(keepsLine && pumpLine !== undefined ? { pumpLine } : {}), elements };
  const at = { element: undefined, day: on?.day.name, mix, part: 'order', id: 'concrete-order' };
  return bench.reckon(at, input, placeOfOrder(some));
}

type Share = Quantity<'ratio'> | undefined;

/** The share that is added to all of them together; nothing where one of them does not say its own. */
function addedToAll(nets: readonly Volume[], shares: readonly Share[]): Share {
  const [first] = shares;
  if (shares.every((share) => share && first?.equals(share))) return first;
  const added = nets.flatMap((net, i) => (shares[i] ? [net.times(shares[i])] : []));
  return added.length < nets.length ? undefined : sumOf(added)?.over(sumOf(nets) as Volume);
}

/** Whether an element is mixed from bags: as it says, or as all are where no truck comes. */
const isBagged = ({ bagged }: Element, { order, bags }: Ordering): boolean =>
  bagged ?? (!order && Boolean(bags));

/** Bags of a mix: as many as all of its elements together take. */
function bagsOf(
  concrete: readonly ElementConcrete[],
  mix: string | undefined,
  on: PouredOn | undefined,
  { bags, bench, job }: Ordering,
): WorkedPart | undefined {
  const some = pouredOf(concrete);
  if (bags === false || some.length === 0) return undefined;
  const nets = some.map(({ net }) => net);
  const shares = some.map(({ element }) => shareOf(element, job.shared)['allowance'] as Share);
  const silent = some[shares.indexOf(undefined)];
  const input = {
    ...membersOf(bags),
    volume: sumOf(nets),
    ...defined({ allowance: addedToAll(nets, shares) }),
  };
  const at = { element: undefined, day: on?.day.name, mix, part: 'bags', id: 'bag-count' };
  return bench.reckon(at, input, (path) =>
    path === 'allowance' && silent ? `elements[${silent.index}].allowance` : under('bags')(path),
  );
}

/**
 * When the trucks of a further mix come: as those of the one before are done. Past midnight no clock tells it.
 *
 * @param before - the trucks of the mix before; nothing for the first mix of the day
 */
function comesAfter(before: WorkedPart | undefined): Raw {
  const { endsAt } = (before?.result.figures ?? {}) as Partial<TruckPlanFigures>;
  return endsAt ? { firstTruckAt: endsAt.day.sign() > 0 ? undefined : endsAt.time } : {};
}

/** What a day says of trucks goes before what the job says of them. */
function trucksOn(
  { order, mix, before }: Ordered,
  { day, index }: PouredOn,
  { trucks, bench }: Ordering,
): WorkedPart | undefined {
  const { loads } = order.result.figures as ConcreteOrderFigures;
  const own = defined(membersOf(partsIn(day)['trucks']));
  const shared = defined(membersOf(trucks));
  const said = { ...shared, ...defined(factsOfDay(day, 'trucks')), ...own };
  const input = { ...defined({ ...said, ...comesAfter(before) }), loads };
  const inDay = placeInDay(index, 'trucks', own);
  const place: Place = (path) => {
    const head = path.split(/[.[]/)[0] ?? '';
    const fromJob = own[head] === undefined && shared[head] !== undefined && !(head in DAY_FACTS.trucks);
    return fromJob ? under('trucks')(path) : inDay(path);
  };
  const at = { element: undefined, day: day.name, mix, part: 'trucks', id: 'truck-plan' };
  return bench.reckon(at, input, place);
}

/** An order whose trucks are looked for. */
interface Ordered {
  readonly order: WorkedPart;
  readonly mix: string | undefined;
  /** The trucks of the mix that is poured before it on the same day. */
  readonly before: WorkedPart | undefined;
}

function trucksOf(ordered: Ordered, on: PouredOn | undefined, ordering: Ordering): WorkedPart | undefined {
  const trucks = (on && partsIn(on.day)['trucks']) ?? ordering.trucks;
  if (trucks === undefined || trucks === false) return undefined;
  if (on) return trucksOn(ordered, on, ordering);
  const { order, mix } = ordered;
  const { loads } = order.result.figures as ConcreteOrderFigures;
  const input = { ...membersOf(trucks), loads };
  const at = { element: undefined, mix, part: 'trucks', id: 'truck-plan' };
  return ordering.bench.reckon(at, input, under('trucks'));
}

function askedOf(mix: string | undefined, { job, bench }: Ordering): WorkedPart | undefined {
  const i = (job.mixes ?? []).findIndex(({ name }) => name === mix);
  const said = job.mixes?.[i];
  if (!said) return undefined;
  const { name: _, ...input } = said as { name: unknown };
  const at = { element: undefined, mix, part: 'mixes', id: 'mix-requirements' };
  return bench.reckon(at, input as Raw, under(`mixes[${i}]`));
}

/** What concrete is ordered by. */
export interface Ordering {
  readonly job: Job;
  readonly order: RawPart | undefined;
  readonly bags: RawPart | undefined;
  readonly trucks: RawPart | undefined;
  readonly bench: Bench;
}

/** Concrete of the days in the order of pouring, then what no day pours. */
function byDay(
  concrete: readonly ElementConcrete[],
  { days = [] }: Job,
): [PouredOn | undefined, ElementConcrete[]][] {
  const left = new Map(concrete.map((each) => [each.element.name, each]));
  const poured = days.map((day, index): [PouredOn, ElementConcrete[]] => [
    { day, index },
    day.elements.flatMap((name) => {
      const each = left.get(name);
      left.delete(name);
      return each ? [each] : [];
    }),
  ]);
  return [...poured, [undefined, [...left.values()]]];
}

/** Concrete of one mix that comes in one way. */
interface Batch {
  readonly mix: string | undefined;
  readonly bagged: boolean;
  readonly elements: ElementConcrete[];
}

/** What is poured by mix, that from bags by itself, in the order in which they first come. */
function batchesOf(poured: readonly ElementConcrete[], ordering: Ordering): Batch[] {
  const batches: Batch[] = [];
  for (const each of poured) {
    const mix = each.element.mix ?? ordering.job.shared?.mix;
    const bagged = isBagged(each.element, ordering);
    const own = batches.find((batch) => batch.mix === mix && batch.bagged === bagged);
    if (own) own.elements.push(each);
    else batches.push({ mix, bagged, elements: [each] });
  }
  return batches;
}

/** Concrete by day and mix, in the order in which mixes first come. */
export function mixesOf(concrete: readonly ElementConcrete[], ordering: Ordering): MixConcrete[] {
  const asked = new Map<string | undefined, WorkedPart | undefined>();
  return byDay(concrete, ordering.job).flatMap(([on, poured]) => {
    let before: WorkedPart | undefined;
    return batchesOf(poured, ordering).map(({ mix, bagged, elements }, i, all) => {
      if (!asked.has(mix)) asked.set(mix, askedOf(mix, ordering));
      const known = { day: on, mix, elements, asked: asked.get(mix) };
      if (bagged)
        return { ...known, order: undefined, bags: bagsOf(elements, mix, on, ordering), trucks: undefined };
      // Each mix pushes the one before it out of the line of a pump, which keeps the last alone.
      const keepsLine = all
        .slice(i + 1)
        .every((later) => later.bagged || pouredOf(later.elements).length === 0);
      const order = orderOf(elements, mix, on, { ...ordering, keepsLine });
      const trucks = order && trucksOf({ order, mix, before }, on, ordering);
      before = trucks ?? before;
      return { ...known, order, bags: undefined, trucks };
    });
  });
}

type Asked = { readonly ask: { readonly [name: string]: Quantity | string } & { readonly airContent?: Air } };

const ASKED = ['strengthClass', 'strength', 'aggregateSize', 'waterCement', 'slumpClass', 'slump'] as const;

/** What the supplier is told of a mix besides its name. */
function tellingOf({ day, mix, asked }: MixConcrete): Purchase['of'] {
  const { ask } = (asked?.result.figures ?? { ask: {} }) as Asked;
  const told = ASKED.filter((name) => ask[name] !== undefined && !ask[`${name}Class`]);
  return {
    ...(mix === undefined ? {} : { mix }),
    ...(day === undefined ? {} : { day: day.day.name }),
    ...Object.fromEntries(told.map((name) => [name, ask[name] as Quantity | string])),
    ...airOf(ask.airContent),
  };
}

/** What freezes is lost without its air, so the supplier is told all of it. */
const airOf = (air: Air | undefined): Purchase['of'] => ({
  ...(air?.target ? { airContent: air.target } : {}),
  ...(air ? { minimumAir: air.minimum } : {}),
  ...(air?.maximum ? { maximumAir: air.maximum } : {}),
});

/** What is bought of a mix: bags, what the truck brings, or what is in place where neither is told. */
function boughtOf({ order, bags, elements }: MixConcrete): Pick<Purchase, 'item' | 'of' | 'quantity'> {
  const ordered = (order?.result.figures as ConcreteOrderFigures | undefined)?.order;
  if (ordered) return { item: 'ready-mix', of: {}, quantity: ordered };
  const [take] = bags?.result.takes ?? [];
  return take ?? { item: 'concrete', of: {}, quantity: sumOf(elements.map(({ net }) => net)) as Volume };
}

/** Concrete on the purchase list: as ordered, in bags, or in place where there is neither. */
export const concretePurchase = (mix: MixConcrete): Purchase => {
  const { item, of, quantity } = boughtOf(mix);
  return {
    item,
    of: { ...of, ...tellingOf(mix) },
    quantity,
    by: mix.elements.map(({ element, net }) => ({ element: element.name, quantity: net })),
  };
};

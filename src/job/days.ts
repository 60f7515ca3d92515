/**
 * The days of a job, each with its parts: the weather over it, its trucks, and its stages by the clock.
 *
 * What follows is put in once: the area and the concrete of the elements that are poured, the thinnest of them, how long
 * the trucks take and how old the concrete is by then, and what the surface dries at.
 */

import type { SlabVolumeFigures } from '../concrete/slab-volume';
import { repeatedName, unknownName } from '../grade/faults';
import type { JointLayoutFigures } from '../joints/layout-figures';
import type { TruckPlanFigures } from '../pour/truck-figures';
import { greaterOf, lesserOf } from '../quantity/greater';
import type { Quantity } from '../quantity/quantity';
import { isFaulty, readQuantity } from '../quantity/read-quantity';
import { refuse } from '../reckoning/calculation';
import type { FigureSet, Result } from '../reckoning/result';
import type { EvaporationRateFigures } from '../weather/drying-figures';
import { DAY_FACTS, DAY_PARTS, type Day, type DayPart } from './day-inputs';
import { type Element, type Job, partsIn, type Raw } from './document';
import { sumOf } from './fill';
import type { MixConcrete } from './orders';
import type { Overlap } from './overlaps';
import { type Bench, defined, membersOf, type Place, type WorkedElement, type WorkedPart } from './work';

/** What a day pours. */
export interface Poured {
  readonly day: Day;
  readonly index: number;
  readonly elements: readonly WorkedElement[];
  readonly overlaps: readonly Overlap[];
  /** Its concrete by mix, with orders and trucks. */
  readonly mixes: readonly MixConcrete[];
}

/** Every day by its own name, and every element in one day at most. */
export function checkDays({ elements, days = [] }: Job): void {
  const names = elements.map(({ name }) => name);
  const seen = new Set<string>();
  days.forEach((day, i) => {
    if (days.findIndex(({ name }) => name === day.name) !== i)
      refuse(`days[${i}].name`, repeatedName(day.name));
    day.elements.forEach((name, k) => {
      if (!names.includes(name)) refuse(`days[${i}].elements[${k}]`, unknownName(name, names));
      if (seen.has(name)) refuse(`days[${i}].elements[${k}]`, repeatedName(name));
      seen.add(name);
    });
  });
}

/** What each day pours, of what has been worked. */
export const pouredOn = (
  { days = [] }: Job,
  elements: readonly WorkedElement[],
  overlaps: readonly Overlap[],
  mixes: readonly MixConcrete[],
): Poured[] =>
  days.map((day, index) => ({
    day,
    index,
    elements: elements.filter(({ element }) => day.elements.includes(element.name)),
    overlaps,
    mixes: mixes.filter((mix) => mix.day?.day === day),
  }));

/** The concrete of a day, all mixes. */
export const concreteOfDay = ({ mixes }: Poured): Quantity<'volume'> | undefined =>
  sumOf(mixes.flatMap(({ elements }) => elements.map(({ net }) => net)));

const slabOf = ({ parts }: WorkedElement): SlabVolumeFigures | undefined =>
  parts.find(({ part }) => part === 'slab')?.result.figures as SlabVolumeFigures | undefined;

/** Area of a slab that is finished, all of its kind. */
export const areaOf = (worked: WorkedElement): Quantity<'area'> | undefined => {
  const area = slabOf(worked)?.area;
  const { count } = worked.element;
  return area && count ? area.times(count) : area;
};

/** Area that two slabs of the day would both be finished on. */
const twice = ({ elements, overlaps }: Poured): Quantity<'area'>[] => {
  const slabs = new Set(elements.filter(slabOf).map(({ element }) => element));
  return overlaps
    .filter(({ first, second, stands }) => !stands && slabs.has(first) && slabs.has(second))
    .map(({ area }) => area);
};

/** What is finished: the slabs of the day. */
export function areaOfDay(poured: Poured): Quantity<'area'> | undefined {
  const all = sumOf(poured.elements.flatMap((each) => areaOf(each) ?? []));
  return twice(poured).reduce((left, area) => left?.minus(area), all);
}

const thicknessOf = ({ thickness }: Element): Quantity<'length'>[] => {
  const read = readQuantity(thickness, 'length', 'thickness');
  return isFaulty(read) ? [] : [read];
};

/** What holds of the thinnest holds of all. */
function thinnest({ elements }: Poured): Quantity<'length'> | undefined {
  const [first, ...rest] = elements.flatMap(({ element }) => thicknessOf(element));
  return first && rest.reduce(lesserOf, first);
}

/** The trucks of one mix after those of another. */
export function trucksOf({ mixes }: Poured): Raw {
  const plans = mixes.flatMap(({ trucks }) => (trucks ? [trucks.result.figures as TruckPlanFigures] : []));
  const [first, ...rest] = plans;
  if (!first || plans.length < mixes.length) return {};
  const oldest = rest.reduce((age, plan) => greaterOf(age, plan.oldest), first.oldest);
  return { placingTime: rest.reduce((time, { ends }) => time.plus(ends), first.ends), age: oldest };
}

/** The forecast goes by the air of the day, where it does not say itself. */
const forecastOf = ({ airTemperature }: Day, said: Raw): unknown =>
  typeof said['forecast'] === 'object' && said['forecast'] !== null
    ? { ...(airTemperature ? { placing: airTemperature } : {}), ...said['forecast'] }
    : undefined;

/** What a surface dries at is told once: by its own part, or by humidity and wind. */
const dryingOf = (results: ReadonlyMap<DayPart, Result<FigureSet>>): Quantity<'evaporation'> | undefined => {
  const rate = (results.get('evaporation')?.figures as EvaporationRateFigures | undefined)?.rate;
  return rate && rate.sign() >= 0 ? rate : undefined;
};

const EARLY_ENTRY = 'early-entry-saw';
const BY_AIR = ['humidity', 'wind'];

/** How a plan is told the time that placing takes. */
const placingOf = (poured: Poured, said: Raw): Raw =>
  said['placingRate'] === undefined ? trucksOf(poured) : { volume: concreteOfDay(poured) };

/** Joints that are sawn into what is poured: by which saw, and how long it cuts where that is known of all. */
function sawingOf({ elements }: Poured): Raw {
  const plans = elements.flatMap(({ parts }) => parts.filter(({ id }) => id === 'joint-layout'));
  const sawn = plans.flatMap(({ input, result }) => {
    const { sawing } = result.figures as unknown as JointLayoutFigures;
    return sawing ? [{ early: input['method'] === EARLY_ENTRY, time: sawing.time }] : [];
  });
  if (sawn.length === 0) return {};
  const times = sawn.flatMap(({ time }) => time ?? []);
  return {
    saw: sawn.some(({ early }) => early) ? 'early-entry' : 'conventional',
    cuttingTime: times.length === sawn.length ? times.reduce((all, time) => all.plus(time)) : undefined,
  };
}

type Follow = (poured: Poured, said: Raw, results: ReadonlyMap<DayPart, Result<FigureSet>>) => Raw;

const FOLLOWS: Readonly<Partial<Record<DayPart, Follow>>> = {
  limits: (poured) => ({ thickness: thinnest(poured) }),
  plan: (poured, said, results) => ({
    area: areaOfDay(poured),
    ...placingOf(poured, said),
    evaporation: dryingOf(results),
    ...(said['saw'] === undefined ? sawingOf(poured) : {}),
  }),
};

/** What the day says of itself, as a part calls it. */
export function factsOfDay(day: Day, part: DayPart): Raw {
  return Object.fromEntries(Object.entries(DAY_FACTS[part]).map(([name, fact]) => [name, day[fact]]));
}

/** The first slab of the day that is not known: its area is what a plan waits for. */
const slabAwaited = ({ elements }: Poured): string | undefined => {
  const first = elements.find((each) => (partsIn(each.element)['slab'] ?? false) !== false && !slabOf(each));
  return first && `elements[${first.index}].slab`;
};

/**
 * Where members of a part stand in the document.
 *
 * @param slab - where the area of a plan would have come from
 */
export const placeInDay =
  (index: number, part: DayPart, own: Raw, slab?: string): Place =>
  (path) => {
    const head = path.split(/[.[]/)[0] ?? '';
    if (part === 'plan' && head === 'area' && own[head] === undefined && slab !== undefined) return slab;
    const fact = own[head] === undefined ? DAY_FACTS[part][head] : undefined;
    if (fact !== undefined) return `days[${index}].${fact}${path.slice(head.length)}`;
    return path === '' ? `days[${index}].${part}` : `days[${index}].${part}.${path}`;
  };

/** Everything that a part is given. */
function inputOf(
  poured: Poured,
  part: DayPart,
  own: Raw,
  results: ReadonlyMap<DayPart, Result<FigureSet>>,
): Raw {
  const follows = defined(FOLLOWS[part]?.(poured, own, results));
  const all = { ...follows, ...defined(factsOfDay(poured.day, part)), ...own };
  if (part === 'limits') return { ...all, ...defined({ forecast: forecastOf(poured.day, own) }) };
  const told = part === 'plan' && all['evaporation'] !== undefined;
  return Object.fromEntries(
    Object.entries(all).filter(([name]) => !told || own[name] !== undefined || !BY_AIR.includes(name)),
  );
}

/** Reckon the parts of a day; its trucks have been, with their orders. */
export function workDay(poured: Poured, bench: Bench): WorkedPart[] {
  const { day, index } = poured;
  const results = new Map<DayPart, Result<FigureSet>>();
  const parts: WorkedPart[] = [];
  for (const part of Object.keys(DAY_PARTS) as DayPart[]) {
    const given = partsIn(day)[part];
    if (part === 'trucks' || given === undefined || given === false) continue;
    const own = defined(membersOf(given));
    const input = inputOf(poured, part, own, results);
    const worked = bench.reckon(
      { element: undefined, day: day.name, part, id: DAY_PARTS[part] },
      input,
      placeInDay(index, part, own, slabAwaited(poured)),
    );
    if (!worked) continue;
    results.set(part, worked.result);
    parts.push(worked);
  }
  return parts;
}

/**
 * The take-off of a whole job: every calculation that applies, once each, in the order of the work; concrete by mix
 * with its order; one purchase list; what is assumed and what to watch out for.
 *
 * Sums only: every figure of a part is that of its own calculation. Concrete where two elements lie over each other is
 * counted once, by clipping their outlines.
 */
import { repeatedName, unknownName } from '../grade/faults';
import type { BagCountFigures } from '../pour/bag-count';
import type { ConcreteOrderFigures } from '../pour/concrete-order';
import { giveOneOf } from '../quantity/faults';
import { type Calculation, define, refuse } from '../reckoning/calculation';
import { wholeNumber } from '../reckoning/fields';
import { gravestFirst } from '../reckoning/harm';
import type { Pad } from '../reckoning/pad';
import { partsKnown, tellParts } from '../reckoning/part-working';
import type { Caution, FigureSet, Result } from '../reckoning/result';
import { CLOSED_FORM } from '../reckoning/source';
import type { ReckonOptions } from '../reckoning/system';
import { total } from '../reckoning/whole';
import { say } from '../reckoning/words';
import { BEALL_TIMES } from '../weather/sources';
import { blanketsOf } from './blankets';
import { checkDays, concreteOfDay, type Poured, pouredOn, workDay } from './days';
import { digCautions } from './dig';
import { type Element, type Job, type JobInput, jobDoor, partsIn } from './document';
import { filledOpenings } from './filled';
import { flightCautions } from './flight';
import { formsOff } from './forms-off';
import { assumptionsOf, cautionsOf } from './gather';
import { earthCautions, type KeptEarth, stayingTold } from './kept-earth';
import { keptOf } from './layers';
import {
  concreteOfElements,
  concretePurchase,
  type ElementConcrete,
  type MixConcrete,
  mixesOf,
} from './orders';
import { NEAR_CORNERS, type Overlap, overlapsOf } from './overlaps';
import { partsWorking } from './parts-working';
import { withoutMoney } from './prices';
import { type Purchase, purchasesOf } from './purchases';
import * as cautions from './takeoff-cautions';
import type {
  JobDayFigures,
  JobElementFigures,
  JobFormsOffFigures,
  JobMissingFigures,
  JobMixFigures,
  JobOverlapFigures,
  JobTakeoffFigures,
} from './takeoff-figures';
import { forgottenCautions, unusedCautions } from './unused';
import {
  Bench,
  isJson,
  type JobPart,
  type Memory,
  membersOf,
  refuseFaults,
  type WorkedElement,
  type WorkedPart,
  workElement,
} from './work';

/** A job with all of its parts. */
export interface ReckonedJob {
  /** The take-off. */
  readonly takeoff: Result<JobTakeoffFigures>;
  /** Every part, in the order of the work, with its input and its whole result. */
  readonly parts: readonly JobPart[];
}

/** What {@link reckonJob} may be told. */
export interface ReckonJobOptions extends ReckonOptions {
  /** The same job before an edit: parts whose input has not changed are taken from it. */
  readonly from?: ReckonedJob;
}

/** A job as it was worked. */
interface Worked {
  readonly job: Job;
  readonly elements: readonly WorkedElement[];
  readonly overlaps: readonly Overlap[];
  readonly concrete: readonly ElementConcrete[];
  readonly mixes: readonly MixConcrete[];
  readonly purchases: readonly Purchase[];
  readonly earth: KeptEarth | undefined;
  readonly days: readonly Poured[];
  readonly formsOff: readonly JobFormsOffFigures[];
  readonly parts: readonly WorkedPart[];
  readonly bench: Bench;
}

/** Every name once, and no name that is not given. */
function checkNames({ elements }: Job): void {
  const names = elements.map(({ name }) => name);
  names.forEach((name, i) => {
    if (names.indexOf(name) !== i) refuse(`elements[${i}].name`, repeatedName(name));
    const on = elements[i]?.standsOn;
    if (on !== undefined && (on === name || !names.includes(on)))
      refuse(
        `elements[${i}].standsOn`,
        unknownName(
          on,
          names.filter((each) => each !== name),
        ),
      );
  });
}

const known = (part: WorkedPart | undefined): WorkedPart[] => (part ? [part] : []);

function workJob(job: Job, system: Pad['system'], before: Memory): Worked {
  checkNames(job);
  checkDays(job);
  const bench = new Bench(system, before, isJson(job));
  const overlaps = overlapsOf(job.elements, system);
  const worked = job.elements.map((element, i) =>
    workElement(element, i, job.shared, filledOpenings(job, element), bench),
  );
  const concrete = concreteOfElements(worked, overlaps);
  const { order, bags, trucks, cutting } = partsIn(job);
  const both = order !== undefined && bags !== undefined;
  if (both && !job.elements.some(({ bagged }) => bagged)) refuse('bags', giveOneOf(['order', 'bags']));
  const mixes = mixesOf(concrete, { job, order, bags, trucks, bench });
  const bought = purchasesOf(worked, keptOf(worked, system), membersOf(cutting), bench);
  const elements = stayingTold(worked, bought.earth, bench);
  const days = pouredOn(job, elements, overlaps, mixes);
  const ofDays = days.flatMap((day) => workDay(day, bench));
  refuseFaults(bench);
  const ofMixes = mixes.flatMap((mix, i) => [
    ...(mixes.findIndex(({ asked }) => asked === mix.asked) === i ? known(mix.asked) : []),
    ...known(mix.order),
    ...known(mix.bags),
    ...known(mix.trucks),
  ]);
  return {
    job,
    elements,
    overlaps,
    concrete,
    mixes,
    purchases: [...mixes.map(concretePurchase), ...bought.lines, ...blanketsOf(days, ofDays)],
    earth: bought.earth,
    days,
    formsOff: formsOff(elements, days, ofDays),
    parts: [...elements.flatMap(({ parts }) => parts), ...bought.parts, ...ofMixes, ...ofDays],
    bench,
  };
}

/** Concrete of an element as a step of the working, where it is more than its calculation says. */
function noteElement({ element: { name, count }, one, gross, less, net }: ElementConcrete, pad: Pad): void {
  if (count) pad.step(say`${{ name }}, all of them`, 'V = n × B', { n: count, B: one }, gross);
  if (less)
    pad.step(say`${{ name }}, less what is counted elsewhere`, 'N = V − X', { V: gross, X: less }, net);
}

const elementFigures = ({ elements, concrete }: Worked): JobElementFigures[] =>
  elements.map(({ element }) => {
    const own = concrete.find((each) => each.element === element);
    const count = element.count ?? wholeNumber(1);
    return { name: element.name, count, ...(own ? { concrete: own.net } : {}) };
  });

function mixFigures({ mixes }: Worked, pad: Pad): JobMixFigures[] {
  return mixes.map(({ day, mix, elements, order, bags }) => {
    const what = mix === undefined ? 'concrete in place' : say`concrete of ${{ name: mix }} in place`;
    const net = total(
      what,
      'V',
      elements.map((each) => each.net),
      pad,
    );
    const ordered = order?.result.figures as ConcreteOrderFigures | undefined;
    return {
      ...(day === undefined ? {} : { day: day.day.name }),
      ...(mix === undefined ? {} : { mix }),
      net,
      ...(ordered ? { order: ordered.order, loads: ordered.loads } : {}),
      ...(bags ? { bags: (bags.result.figures as BagCountFigures).bags } : {}),
    };
  });
}

const dayFigures = ({ days }: Worked): JobDayFigures[] =>
  days.map((poured) => {
    const concrete = concreteOfDay(poured);
    return { name: poured.day.name, elements: poured.day.elements, ...(concrete ? { concrete } : {}) };
  });

const overlapFigures = ({ overlaps }: Worked): JobOverlapFigures[] =>
  overlaps.map(({ first, second, area, stands, twice, less }) => ({
    first: first.name,
    second: second.name,
    area,
    ...(stands ? { stands: stands.name } : {}),
    ...(twice ? { countedOnce: twice, takenOff: less.name } : {}),
  }));

const overlapCautions = ({ overlaps }: Worked): Caution[] =>
  overlaps.flatMap(({ first, second, area, stands, twice }) => {
    if (stands) return [];
    return twice
      ? [cautions.overlapOnce(first.name, second.name, area, twice)]
      : [cautions.overlapUnknown(first.name, second.name, area)];
  });

const missingFigures = ({ bench: { lacking } }: Worked): JobMissingFigures[] =>
  lacking.map(({ element, day, part, path }) => ({
    ...(element === undefined ? {} : { element }),
    ...(day === undefined ? {} : { day }),
    part,
    at: path,
  }));

/** The figures of a job that was worked, with its working, assumptions and cautions. */
function figuresOf(worked: Worked, pad: Pad): JobTakeoffFigures {
  for (const each of worked.concrete) noteElement(each, pad);
  const mixes = mixFigures(worked, pad);
  const missing = missingFigures(worked);
  for (const assumption of assumptionsOf(worked.parts)) pad.assumed.push(assumption);
  const own = [
    ...overlapCautions(worked),
    ...digCautions(worked.elements),
    ...earthCautions(worked.earth),
    ...flightCautions(worked.elements),
    ...unusedCautions(worked.job),
    ...forgottenCautions(worked.job),
    ...(missing.length > 0 ? [cautions.partsMissing(new Set(missing.map(({ at }) => at)).size)] : []),
  ];
  for (const caution of gravestFirst([...own, ...cautionsOf(worked.parts)])) pad.caution(caution);
  return {
    ...(mixes.length > 0
      ? {
          concrete: total(
            'concrete in place',
            'T',
            mixes.map(({ net }) => net),
            pad,
          ),
        }
      : {}),
    elements: elementFigures(worked),
    mixes,
    ...(worked.days.length > 0 ? { days: dayFigures(worked) } : {}),
    ...(worked.formsOff.length > 0 ? { formsOff: worked.formsOff } : {}),
    purchases: worked.purchases,
    overlaps: overlapFigures(worked),
    missing,
  };
}

const NO_MEMORY: Memory = new Map();

const memories = new WeakMap<ReckonedJob, Memory>();

const read = new WeakMap<ReckonedJob, Job>();

/** The elements of a job as its document was read; nothing for a job that was not reckoned here. */
export const elementsOf = (job: ReckonedJob): readonly Element[] | undefined => read.get(job)?.elements;

/** The prices in the document of a job, as they were given; they stand in no figure and no part of it. */
export const pricesOf = (job: ReckonedJob): unknown => read.get(job)?.prices;

/**
 * The take-off as a calculation, on what is remembered of an earlier job.
 *
 * @param keep - is given the parts that it was made of
 */
const takeoffOn = (
  memory: Memory,
  keep: (worked: Worked) => void,
): Calculation<JobInput, JobTakeoffFigures> =>
  define<unknown, Job, JobTakeoffFigures>({
    id: 'job-takeoff',
    title: 'Job take-off',
    version: 1,
    sources: [CLOSED_FORM, BEALL_TIMES],
    limits: [NEAR_CORNERS],
    asTyped: withoutMoney,
    input: jobDoor,
    reckon: (job, pad) => {
      const heard = partsKnown() as Map<string, Result<FigureSet>> | undefined;
      const worked = workJob(job, pad.system, heard ?? memory);
      keep(worked);
      for (const [key, part] of heard ? worked.bench.memory : []) heard?.set(key, part);
      const { elements, concrete, mixes, purchases } = worked;
      tellParts(() => partsWorking(elements, concrete, mixes, purchases));
      return figuresOf(worked, pad);
    },
  }) as unknown as Calculation<JobInput, JobTakeoffFigures>;

/**
 * The take-off of a whole job: every element, the concrete by mix, one purchase list, all assumptions and cautions.
 *
 * @param input - the job document: elements with their parts, what they share, and how concrete is ordered
 * @returns concrete by element and by mix with its order, purchases, overlaps, and what is missing
 * @throws {InputError} `repeated-name`, `unknown-name`, and whatever a calculation refuses a part for, by its place in
 * the document; what is missing does not refuse a job
 * @source sums of its parts; each has its own sources
 * @example
 * ```ts
 * import { jobTakeoff } from 'flatwork-reckoner';
 *
 * const { figures } = jobTakeoff({
 *   version: 1,
 *   shared: { allowance: '8%', base: { depth: '4 in', compactedDensity: '135 pcf' } },
 *   order: { increment: '0.25 yd3', truckCapacity: '9 yd3' },
 *   elements: [
 *     {
 *       name: 'bin pad',
 *       outline: { shape: 'rectangle', length: '12 ft', width: '8 ft' },
 *       thickness: '4 in',
 *       slab: true,
 *       base: true,
 *     },
 *     { name: 'stoop', steps: { risers: 2, rise: '7 in', tread: '11 in', width: '5 ft', landingDepth: '4 ft' } },
 *   ],
 * });
 * figures.purchases.map(({ item, quantity }) => `${item} ${quantity.format()}`); // [ 'ready-mix 2.50 yd3', 'base 2.16 ton' ]
 * ```
 */
export const jobTakeoff: Calculation<JobInput, JobTakeoffFigures> = /*#__PURE__*/ takeoffOn(
  NO_MEMORY,
  () => undefined,
);

/**
 * Reckon a job and keep every part of it: the take-off, and each calculation with its input and its whole result.
 *
 * @param input - the job document, as {@link jobTakeoff} takes it
 * @param options - the family of units; and the job `from` before an edit, so that only what changed is reckoned
 * @returns the take-off, and every part in the order of the work
 * @throws {InputError} as {@link jobTakeoff} does
 * @example
 * ```ts
 * import { reckonJob } from 'flatwork-reckoner';
 *
 * const pad = { name: 'pad', outline: { shape: 'rectangle', length: '12 ft', width: '8 ft' }, slab: true } as const;
 * const job = reckonJob({ version: 1, elements: [{ ...pad, thickness: '4 in' }] });
 * const thicker = reckonJob({ version: 1, elements: [{ ...pad, thickness: '5 in' }] }, { from: job });
 * thicker.parts.map(({ element, part }) => `${element}: ${part}`); // [ 'pad: slab' ]
 * thicker.takeoff.figures.concrete?.format(); // '1.48 yd3'
 * ```
 */
export function reckonJob(input: JobInput, { from, ...options }: ReckonJobOptions = {}): ReckonedJob {
  let worked: Worked | undefined;
  const memory = (from && memories.get(from)) ?? NO_MEMORY;
  const takeoff = takeoffOn(memory, (all) => {
    worked = all;
  })(input, options);
  const { parts, bench, job } = worked as unknown as Worked;
  const reckoned = Object.freeze({
    takeoff,
    parts: Object.freeze(parts.map(({ place: _, ...part }) => Object.freeze(part))),
  });
  memories.set(reckoned, bench.memory);
  read.set(reckoned, job);
  return reckoned;
}

/**
 * A job as one document: its elements, what each is made of, and what they share.
 *
 * Plain data throughout, as it comes from a file. A part of an element is the input of one calculation; what the
 * element says of itself, its outline and thickness, is put into each part that asks for it, and what the job shares
 * comes below that.
 */
import { type OutlineInput, outline, type PointInput } from '../outline/outline';
import { type OpeningInput, openings } from '../outline/region';
import { clock } from '../pour/clock';
import type { OrderElementInput, PourKind } from '../pour/concrete-order';
import * as sharedFaults from '../quantity/faults';
import type { Quantity, QuantityInput } from '../quantity/quantity';
import {
  choice,
  type Field,
  fields,
  label,
  list,
  maybe,
  quantity,
  reading,
  whole,
  yesOrNo,
} from '../reckoning/fields';
import { WASTE_ALLOWANCE } from '../reckoning/ordinary';
import { type AlsoInput, alsoField, type Bought } from './also';
import { DAY_PARTS, type Day, type JobDayInput } from './day-inputs';
import {
  ELEMENT_PARTS,
  type ElementParts,
  FROM_JOB,
  JOB_PARTS,
  type JobMixInput,
  type JobParts,
} from './part-inputs';
import { type JobPricesInput, pricesOfJob } from './prices';
import { followsFromJob } from './takeoff-faults';
import { ofAnyVersion, versionField } from './versions';

/** What an element and the whole job may both say; an element's own word goes first. */
export interface ElementChoices {
  /** The mix that it is poured of, by a name of your own; by default all concrete is of one mix. */
  readonly mix?: string;
  /** Share added to its concrete in the order. */
  readonly allowance?: OrderElementInput['allowance'];
  /** What it is poured against: the allowance is judged by it. */
  readonly pour?: PourKind;
}

/** One element of the job: a slab, steps, a wall, or anything with parts of its own. */
export interface JobElementInput extends ElementChoices, ElementParts {
  /** What it is called on the job. */
  readonly name: string;
  /** How many alike; one by default. */
  readonly count?: number;
  /** Whether it is mixed from bags, in a job that has an order beside its `bags`; by default it comes by truck there. */
  readonly bagged?: boolean;
  /** Its outline in plan, for every part that asks for one. */
  readonly outline?: OutlineInput;
  /** Openings in it. */
  readonly openings?: readonly OpeningInput[];
  /** Its thickness, for every part that asks for one. */
  readonly thickness?: QuantityInput<'length'>;
  /** Where the origin of its outline lies on the site; elements that say so are looked at for overlaps. */
  readonly at?: PointInput;
  /** How far it is turned about that place, counterclockwise. */
  readonly turned?: QuantityInput<'angle'>;
  /** The element that it stands on, whose concrete goes through under it. */
  readonly standsOn?: string;
  /** What it takes besides, such as a drain pipe. */
  readonly also?: readonly AlsoInput[];
}

/** What every element takes where it does not say its own. */
export interface SharedInput extends ElementChoices, ElementParts {}

/** Input of {@link jobTakeoff}: the job document. */
export interface JobInput extends JobParts {
  /** Version of this form of document. */
  readonly version: 1;
  /** What the job is called. */
  readonly name?: string;
  /** What every element takes where it does not say its own. */
  readonly shared?: SharedInput;
  /** The mixes that elements name, as the supplier is to be asked for them. */
  readonly mixes?: readonly JobMixInput[];
  /** The elements. */
  readonly elements: readonly JobElementInput[];
  /** The days on which it is poured; elements that stand in none are ordered together. */
  readonly days?: readonly JobDayInput[];
  /** What it costs, for whoever bids it; no page for the crew or the yard shows any of it. */
  readonly prices?: JobPricesInput;
}

/** Anything as it was given: parts are read by their own calculations. */
export type Raw = Readonly<Record<string, unknown>>;

/** A part as given: members of its input, or yes or no. */
export type RawPart = Raw | boolean;

/** The choices, read. */
export interface Choices {
  readonly mix: string | undefined;
  readonly allowance: Quantity<'ratio'> | undefined;
  readonly pour: PourKind | undefined;
}

/** Parts by name, each as given. */
export type RawParts = Readonly<Record<string, RawPart | undefined>>;

/** An element, read; its parts stand among the rest by their names. */
export interface Element extends Choices {
  readonly name: string;
  readonly count: Quantity<'count'> | undefined;
  readonly bagged: boolean | undefined;
  readonly outline: unknown;
  readonly openings: unknown;
  readonly thickness: unknown;
  readonly at: { readonly x: Quantity<'length'>; readonly y: Quantity<'length'> } | undefined;
  readonly turned: Quantity<'angle'> | undefined;
  readonly standsOn: string | undefined;
  readonly also: readonly Bought[] | undefined;
}

/** A job document, read. */
export interface Job {
  readonly name: string | undefined;
  readonly shared: Partial<Choices> | undefined;
  readonly mixes: readonly Raw[] | undefined;
  readonly elements: readonly Element[];
  readonly days: readonly Day[] | undefined;
  /** As they were given: only a bid reads them. */
  readonly prices: unknown;
}

/** The parts of an element, of what is shared, or of the job. */
export const partsIn = (of: object | undefined): RawParts => (of ?? {}) as RawParts;

/** What is read by whoever it is for, and described as it is there. */
const asGiven = (field: Field<unknown>): Field<unknown> => reading<unknown>((input) => input, field.json);

/**
 * A part: what its calculation is to be given, or yes where the rest of the document says all of it.
 *
 * @param fromJob - members of its input that the job puts in, and nobody else
 */
function part(id: string, fromJob: readonly string[]): Field<RawPart> {
  const read: Field<RawPart>['read'] = (input, report) => {
    if (typeof input === 'boolean') return input;
    if (typeof input !== 'object' || input === null || Array.isArray(input)) {
      report(sharedFaults.wrongType('a part', 'an object, true or false'));
      return undefined;
    }
    const put = fromJob.find((name) => ![undefined, null, ''].includes((input as Raw)[name] as null));
    if (put !== undefined) report(followsFromJob(put), [put]);
    return input as Raw;
  };
  const json = () => ({
    'x-input-of': id,
    ...(fromJob.length > 0 ? { 'x-from-job': fromJob } : {}),
    anyOf: [
      { title: 'What it is given', type: 'object' },
      { title: 'Yes or no', type: 'boolean' },
    ],
  });
  return { read, json };
}

const parts = (
  names: Readonly<Record<string, string>>,
  fromJob: Readonly<Record<string, readonly string[]>> = {},
): Record<string, Field<RawPart | undefined>> =>
  Object.fromEntries(Object.entries(names).map(([name, id]) => [name, maybe(part(id, fromJob[name] ?? []))]));

const choices = () => ({
  mix: maybe(label('mix')),
  allowance: maybe(quantity('ratio', 'allowance', 'not-negative', WASTE_ALLOWANCE)),
  pour: maybe(choice<PourKind>('pour', ['slab', 'formed', 'trench', 'augered'])),
});

const MOST_ELEMENTS = 200;
const MOST_MIXES = 20;
const MOST_DAYS = 60;
const MOST_ALIKE = 10_000;

const point = () => fields({ x: quantity('length', 'x', 'any'), y: quantity('length', 'y', 'any') });

const element = () =>
  fields({
    name: label('name'),
    count: maybe(whole('count', 1, MOST_ALIKE)),
    bagged: maybe(yesOrNo('bagged')),
    outline: maybe(asGiven(outline())),
    openings: maybe(asGiven(openings())),
    thickness: maybe(asGiven(quantity('length', 'thickness'))),
    at: maybe(point()),
    turned: maybe(quantity('angle', 'turned', 'any')),
    standsOn: maybe(label('standsOn')),
    also: maybe(alsoField()),
    ...choices(),
    ...parts(ELEMENT_PARTS),
  });

/** A mix by its name; the rest is read by its calculation. */
const mixField = reading<Raw>(
  (input) =>
    typeof input === 'object' && input !== null && typeof (input as Raw)['name'] === 'string'
      ? (input as Raw)
      : sharedFaults.wrongType('a mix', 'an object with its name'),
  () => ({
    type: 'object',
    properties: { name: { type: 'string' } },
    required: ['name'],
    'x-input-of': 'mix-requirements',
  }),
);

const day = () =>
  fields({
    name: label('name'),
    elements: list(label('elements'), 1, MOST_ELEMENTS),
    startAt: maybe(clock('startAt')),
    airTemperature: maybe(quantity('temperature', 'airTemperature', 'any')),
    concreteTemperature: maybe(quantity('temperature', 'concreteTemperature', 'any')),
    humidity: maybe(quantity('ratio', 'humidity', 'not-negative')),
    wind: maybe(quantity('speed', 'wind', 'not-negative')),
    ...parts(DAY_PARTS, FROM_JOB),
  });

/** The door of a job document, of any version that is read. */
export const jobDoor = (): Field<Job> => {
  const field = fields({
    version: versionField(),
    name: maybe(label('name')),
    shared: maybe(fields({ ...choices(), ...parts(ELEMENT_PARTS) })),
    elements: list(element(), 1, MOST_ELEMENTS),
    mixes: maybe(list(mixField, 0, MOST_MIXES)),
    days: maybe(list(day(), 0, MOST_DAYS)),
    prices: maybe(pricesOfJob()),
    ...parts(JOB_PARTS, FROM_JOB),
  });
  return ofAnyVersion(field) as unknown as Field<Job>;
};

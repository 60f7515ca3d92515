/**
 * The family of units that a job is reckoned and shown in: as the caller asks, or that of most quantities of the
 * input; where they tell nothing, that of the names of bars, mesh and strengths in it, or else customary.
 */
import { fault } from '../quantity/faults';
import { InputError } from '../quantity/input-error';
import { inSystem } from '../quantity/like-unit';
import { Paired } from '../quantity/paired';
import { isQuantity, unitShown } from '../quantity/quantity';
import { type System, type Unit, unitOf, unitsNamed } from '../quantity/units';
import { plainCopy } from './plain';

/** What a caller may ask of a calculation besides its input. */
export interface ReckonOptions {
  /** The family of units to reckon and show in; by default that of most quantities of the input. */
  readonly system?: System;
}

/** Bars by names that only one of the families has: `15M`, `12 mm`, `#4`. */
const METRIC_NAME = /^\d{1,2} ?mm?$|^(?:soft|hard)-metric$/i;
const CUSTOMARY_NAME = /^#\d/;

/** How often each family is met. */
interface Tally {
  customary: number;
  metric: number;
}

/** What is read from the name of a make counts as a name, whatever quantities it holds. */
const namedIn = (value: object): System | undefined => (value as { readonly namedIn?: System }).namedIn;

/** Many numbers under the one unit at their head, as a table of spots has them, outweigh what is beside them. */
const ENOUGH = 10;

const isTable = (value: object): value is { readonly unit: string } =>
  typeof (value as { readonly unit?: unknown }).unit === 'string' &&
  unitOf('length', (value as { readonly unit: string }).unit) !== undefined;

/** Count an input that has been read: its quantities, and the names in it. */
function tally(value: unknown, units: Tally, names: Tally): void {
  if (typeof value === 'string') {
    if (METRIC_NAME.test(value)) names.metric += 1;
    else if (CUSTOMARY_NAME.test(value)) names.customary += 1;
  }
  if (typeof value !== 'object' || value === null) return;
  if (isQuantity(value)) {
    const { system } = unitShown(value);
    if (system) units[system] += 1;
    return;
  }
  const system = namedIn(value);
  if (system) names[system] += 1;
  else if (isTable(value)) units[(unitOf('length', value.unit) as Unit).system as System] += ENOUGH;
  else for (const name in value) tally((value as Record<string, unknown>)[name], units, names);
}

const moreOf = ({ customary, metric }: Tally): System | undefined =>
  metric === customary ? undefined : metric > customary ? 'metric' : 'customary';

/** The family of units that an input, once read, is written in, and whether any of it is in the other. */
export function systemOfInput(input: unknown): { readonly system: System; readonly mixed: boolean } {
  const units: Tally = { customary: 0, metric: 0 };
  const names: Tally = { customary: 0, metric: 0 };
  tally(input, units, names);
  const system = moreOf(units) ?? moreOf(names) ?? 'customary';
  return { system, mixed: units[system === 'metric' ? 'customary' : 'metric'] > 0 };
}

/** The unit behind the last number of a text. */
const BEHIND_NUMBER = /[\d.\u00bc-\u00be\u2150-\u215e] *-? *([A-Za-z'"\u00b0\u2032\u2033][^\d]*[23]?)$/;

/** Texts looked at, of an input that could not be read. */
const LOOKED_AT = 200;

/** The family of units that a text ends in, or that is named. */
function systemOfText(text: string, named: boolean): System | undefined {
  const unit = named ? text : BEHIND_NUMBER.exec(text)?.[1];
  return unit === undefined ? undefined : unitsNamed(unit.trim()).find((u) => u.system)?.system;
}

/** Texts and quantities of an input, with whether they are names of units. */
function* leavesOf(value: unknown, name = ''): Generator<System | undefined> {
  if (typeof value === 'string') yield systemOfText(value, name === 'unit');
  else if (isQuantity(value)) yield unitShown(value).system;
  else if (typeof value === 'object' && value !== null)
    for (const key in value) yield* leavesOf((value as Record<string, unknown>)[key], key);
}

/**
 * The family that most of an input seems to be written in, where it could not be read: by the units that its texts
 * end in.
 */
export function systemAsTyped(plain: unknown): System {
  const units: Tally = { customary: 0, metric: 0 };
  let left = LOOKED_AT;
  for (const system of leavesOf(plain)) {
    if (system) units[system] += 1;
    left -= 1;
    if (left === 0) break;
  }
  return moreOf(units) ?? 'customary';
}

/** Figures that are named by their unit keep it, and the tons that somebody asked for stay those tons. */
const NAMED_BY_UNIT = /^tons$|per(?:Foot|Meter)$|InCubicFeet$/i;

/** True for a figure that is in the unit of its name, in whatever units the rest is. */
export const isNamedByUnit = (name: string): boolean => NAMED_BY_UNIT.test(name);

/** The family of the unit that a figure is named by, where there is one. */
export const familyNamed = (name: string): System | undefined =>
  /perMeter$/i.test(name) ? 'metric' : /perFoot$|InCubicFeet$/i.test(name) ? 'customary' : undefined;

const isPlain = (value: object): boolean => {
  const proto = Object.getPrototypeOf(value);
  return proto === null || proto === Object.prototype;
};

/**
 * The same data with every quantity in a unit of one family; what is so already is left as it is.
 *
 * Done at the door, so that whatever a calculation takes its units from is in those of the job; and once more with
 * the result, for constants and tables that are printed in the other.
 */
export function settled<T>(value: T, system: System): T {
  if (typeof value !== 'object' || value === null) return value;
  if (isQuantity(value)) return inSystem(value, system) as T;
  if (value instanceof Paired) return value.as(system) as T;
  if (Array.isArray(value)) {
    const parts = value.map((part) => settled(part, system));
    return parts.every((part, i) => part === value[i]) ? value : (parts as T);
  }
  if (!isPlain(value)) return value;
  let copy: Record<string, unknown> | undefined;
  for (const name in value) {
    if (isNamedByUnit(name)) continue;
    const part = settled(value[name], system);
    if (part === value[name]) continue;
    copy ??= Object.assign(Object.create(Object.getPrototypeOf(value)), value) as Record<string, unknown>;
    copy[name] = part;
  }
  return (copy as T) ?? value;
}

/**
 * The family that a caller asks for, if any.
 *
 * @throws {InputError} `unknown-choice`; `unreadable-input` for options that cannot be read
 */
export function systemAsked(options: unknown): System | undefined {
  const asked = plainCopy(options ?? {});
  const system: unknown = typeof asked === 'object' ? ((asked as ReckonOptions).system ?? undefined) : asked;
  if (system === undefined || (typeof asked === 'object' && (system === 'customary' || system === 'metric')))
    return system;
  throw new InputError([
    { ...fault('unknown-choice', 'system must be one of "customary", "metric"'), path: 'options.system' },
  ]);
}

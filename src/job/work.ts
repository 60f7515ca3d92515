/**
 * The parts of a job, each reckoned once, in the order of the work.
 *
 * A part whose input is the same as in the job before is taken from there, so that an edit costs what depends on it.
 * What a part lacks is listed; anything else that is wrong with it refuses the job, by its place in the document.
 */
import { outline } from '../outline/outline';
import { openings } from '../outline/region';
import { giveOneOf } from '../quantity/faults';
import { type Fault, InputError, type Issue } from '../quantity/input-error';
import { constant } from '../quantity/make';
import { isQuantity } from '../quantity/quantity';
import type { System } from '../quantity/units';
import { type Attempt, pathText } from '../reckoning/calculation';
import { type Field, parse, quantity } from '../reckoning/fields';
import type { FigureSet, Result } from '../reckoning/result';
import type { Element, Job, Raw, RawPart } from './document';
import { partsIn } from './document';
import { bothWays, fillingOf, type Known, ownMat, withoutMat } from './fill';
import { CONCRETE } from './item-parts';
import { lackOf } from './lack';
import { calculationOf } from './part-calculations';
import { ELEMENT_PARTS, type ElementPart } from './part-inputs';

/** One part of a job, reckoned. */
export interface JobPart {
  /** The element that it belongs to; left out for parts of the whole job. */
  readonly element?: string;
  /** The day that it belongs to; left out where it belongs to none. */
  readonly day?: string;
  /** The mix that it is of; left out where it belongs to none, or the mix has no name. */
  readonly mix?: string;
  /** What it is, by its name in the document. */
  readonly part: string;
  /** Id of its calculation. */
  readonly id: string;
  /** What that was given. */
  readonly input: Raw;
  /** What it came to. */
  readonly result: Result<FigureSet>;
}

/** What a part of the job lacks. */
export interface Lacking {
  readonly element: string | undefined;
  readonly day?: string | undefined;
  readonly mix?: string | undefined;
  readonly part: string;
  /** Where in the document it is wanted. */
  readonly path: string;
  readonly issue: Issue;
}

/** A part with where its members stand in the document. */
export interface WorkedPart extends JobPart {
  readonly place: Place;
}

/** The path in the document of a path in the input of a part. */
export type Place = (path: string) => string;

/** The parts of an element with what they came to. */
export interface WorkedElement {
  readonly element: Element;
  readonly index: number;
  readonly parts: readonly WorkedPart[];
}

/** Whose part it is, and which. */
export type Whose = Pick<Lacking, 'element' | 'day' | 'mix' | 'part'>;

/** Parts reckoned before, by calculation and input. */
export type Memory = ReadonlyMap<string, Result<FigureSet>>;

const isNoJson = (value: unknown): boolean =>
  ['bigint', 'symbol', 'function', 'undefined'].includes(typeof value) ||
  (typeof value === 'number' && !Number.isFinite(value));

/** What JSON has no way to write is written as what it is: such inputs are refused, and never taken for others. */
const told = (_: string, value: unknown): unknown =>
  isNoJson(value) ? [typeof value, String(value), 'is no JSON'] : value;

/** Whether JSON writes all of a thing as it is; asked once of a document, since telling it of each part takes longer. */
export function isJson(value: unknown): boolean {
  if (typeof value !== 'object' || value === null) return !isNoJson(value);
  return isQuantity(value) || Object.values(value).every(isJson);
}

/** Where parts are reckoned, remembered and found lacking. */
export class Bench {
  readonly memory = new Map<string, Result<FigureSet>>();
  readonly lacking: Lacking[] = [];
  readonly refused: Issue[] = [];

  /**
   * @param before - parts of an earlier job, by calculation and input
   * @param json - whether JSON writes all of the job as it is
   */
  constructor(
    readonly system: System,
    readonly before: Memory,
    private readonly json: boolean,
  ) {}

  /** Reckon a part, or take it as it came out before. */
  reckon({ id, ...whose }: Whose & Pick<JobPart, 'id'>, input: Raw, place: Place): WorkedPart | undefined {
    const written = this.json ? JSON.stringify(input) : JSON.stringify(input, told);
    const key = `${this.system} ${id} ${written}`;
    const known = this.memory.get(key) ?? this.before.get(key);
    const attempt: Attempt<FigureSet> = known
      ? { ok: true, result: known }
      : calculationOf(id).attempt(input, { system: this.system });
    if (!attempt.ok) {
      this.note(attempt.error, input, whose, place);
      return undefined;
    }
    this.memory.set(key, attempt.result);
    const { element, day, mix, part } = whose;
    return {
      ...(element === undefined ? {} : { element }),
      ...(day === undefined ? {} : { day }),
      ...(mix === undefined ? {} : { mix }),
      part,
      id,
      input,
      result: attempt.result,
      place,
    };
  }

  /** What several parts are given alike is refused once. */
  refuse(issue: Issue): void {
    const told = this.refused.some(({ code, path }) => code === issue.code && path === issue.path);
    if (!told) this.refused.push(issue);
  }

  private note({ issues }: InputError, input: Raw, whose: Whose, place: Place): void {
    for (const issue of issues) {
      const lacks = lackOf(issue, input);
      if (lacks === undefined) this.refuse({ ...issue, path: place(issue.path) });
      else this.lacking.push({ ...whose, path: place(lacks), issue });
    }
  }
}

const NONE: Raw = {};

/** What a part is given; nothing where it is only said to be there. */
export const membersOf = (part: RawPart | undefined): Raw => (typeof part === 'object' ? part : NONE);

/** What is given, without what is left out. */
export const defined = (raw: Raw | undefined): Raw =>
  Object.fromEntries(
    Object.entries(raw ?? NONE).filter(([, value]) => value !== undefined && value !== null),
  );

/** A path in a mat that was made of the members beside it. */
const besideMat = (path: string): string => path.replace(/^mats(?:\[0\]\.?)?/, '');

/** What puts a member into a part: that is looked for where the member lacks. */
const WAITS_FOR: Readonly<Record<string, Readonly<Record<string, readonly string[]>>>> = {
  forms: { height: ['thickness'] },
  joints: { spacing: ['spacing'] },
  fibers: { volume: CONCRETE },
  saw: { sawLength: ['joints'] },
  finish: { area: ['slab'] },
};

/** The part or the word of the element that a member would have come from, where the element has it or is to say it. */
const sourceOf = (element: Element, part: string, head: string): string | undefined =>
  WAITS_FOR[part]?.[head]?.find(
    (name) => name === 'thickness' || (partsIn(element)[name] ?? false) !== false,
  );

/** Where each member of an input stands in the document. */
function placeIn(own: Raw, shared: Raw, facts: Raw, part: string, at: string, element: Element) {
  const sides = part === 'bars' && facts['length'] !== undefined;
  const inFacts = (path: string, head: string): string =>
    sides && head !== 'thickness' ? `${at}.outline.${path}` : `${at}.${path}`;
  return (path: string): string => {
    const head = path.split(/[.[]/)[0] ?? '';
    if (own[head] !== undefined) return `${at}.${part}.${path}`;
    if (head === 'mats' && facts['mats'] !== undefined) return `${at}.${part}.${besideMat(path)}`;
    if (shared[head] !== undefined && facts[head] === undefined) return `shared.${part}.${path}`;
    if (Object.hasOwn(facts, head)) return inFacts(path, head);
    const source = sourceOf(element, part, head);
    if (source !== undefined) return `${at}.${source}`;
    return path === '' ? `${at}.${part}` : `${at}.${part}.${path}`;
  };
}

/** The place of a path within something; of the thing itself where the path is empty. */
export const under =
  (at: string): Place =>
  (path) =>
    path === '' ? at : `${at}.${path}`;

/** What an element says of itself for its parts, read as they read it. */
const factFields = /*#__PURE__*/ constant(() => ({
  outline: outline(),
  openings: openings(),
  thickness: quantity('length', 'thickness'),
}));

/** What no part has read is wrong all the same where it is; that something lacks there is nobody's business yet. */
function readRest(element: Element, index: number, read: ReadonlySet<string>, bench: Bench): void {
  for (const [name, field] of Object.entries(factFields())) {
    const given = element[name as keyof ReturnType<typeof factFields>];
    if (given === undefined || given === null || read.has(name)) continue;
    const { faults } = parse(field as Field<unknown>, given);
    for (const { remark, path } of faults) {
      const at = pathText(['elements', index, name, ...path]);
      if (remark.code !== 'missing') bench.refuse({ ...remark, path: at });
    }
  }
}

/** Reckon the parts of an element, each with what its element and the parts before put into it. */
export function workElement(
  element: Element,
  index: number,
  shared: Job['shared'],
  filled: Known['filled'],
  bench: Bench,
): WorkedElement {
  const results = new Map<string, Result<FigureSet>>();
  const parts: WorkedPart[] = [];
  const read = new Set<string>();
  const inheritedBy = (part: ElementPart): Raw => defined(membersOf(partsIn(shared)[part]));
  const saidOf = (part: ElementPart): Raw => {
    const given = partsIn(element)[part];
    return given === undefined || given === false
      ? NONE
      : { ...inheritedBy(part), ...defined(membersOf(given)) };
  };
  for (const part of Object.keys(ELEMENT_PARTS) as ElementPart[]) {
    const given = partsIn(element)[part];
    if (given === undefined || given === false) continue;
    const own = defined(membersOf(given));
    const inherited = ownMat(part, own, inheritedBy(part));
    for (const [at, said] of [
      [`elements[${index}].${part}`, own],
      [`shared.${part}`, inherited],
    ] as const) {
      if (bothWays(part, said)) bench.refuse({ ...giveOneOf(['mats', 'bar']), path: at });
    }
    const filling = fillingOf(part, { element, results, saidOf, filled }, { ...inherited, ...own });
    const input = { ...defined(filling.follows), ...inherited, ...defined(filling.facts), ...own };
    for (const name of Object.keys(input)) read.add(name);
    const place = placeIn(own, inherited, filling.facts ?? NONE, part, `elements[${index}]`, element);
    const worked = bench.reckon(
      { element: element.name, part, id: ELEMENT_PARTS[part] },
      withoutMat(part, input),
      place,
    );
    if (!worked) continue;
    results.set(part, worked.result);
    parts.push(worked);
  }
  readRest(element, index, read, bench);
  return { element, index, parts };
}

/**
 * Refuse a job for what is wrong in its parts.
 *
 * @throws {InputError} with every issue, by its place in the document
 */
export function refuseFaults({ refused }: Bench): void {
  if (refused.length > 0) throw new InputError(refused as readonly (Fault & { path: string })[]);
}

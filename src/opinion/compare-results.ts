/**
 * Two results of one calculation: what changed, by how much, and through which values of the input.
 *
 * What one value changes is told by changing it alone. What several change together beyond that is left as the rest.
 */
import { keyOf } from '../quantity/amount-key';
import * as sharedFaults from '../quantity/faults';
import { canonicalValue, isQuantity, newQuantity, type Quantity, unitShown } from '../quantity/quantity';
import { type Unit, unitOf } from '../quantity/units';
import { type Calculation, pathText, refuse } from '../reckoning/calculation';
import type { FigureSet, ResultParts } from '../reckoning/parts';
import { plainCopy } from '../reckoning/plain';
import { revive } from '../reckoning/revive';
import { asCalculation } from './estimate-check';
import { figureAt, figuresIn, pathOf } from './figure-places';
import { placesOf, valueAt, withValue } from './input-places';

/** A figure of two results. */
export interface FigureChange {
  /** Path of the figure. */
  readonly figure: string;
  /** What it was; left out where it is new. */
  readonly before?: Quantity;
  /** What it is; left out where it is gone. */
  readonly after?: Quantity;
  /** After less before, where it is in both. */
  readonly difference?: Quantity;
  /** The same as a share of what it was. */
  readonly share?: Quantity<'ratio'>;
  /** What each changed value of the input does to it alone, where inputs were given. */
  readonly through?: readonly Through[];
  /** What they do together beyond that. */
  readonly rest?: Quantity;
}

/** What one value of the input does to a figure. */
export interface Through {
  /** Path in the input. */
  readonly input: string;
  /** By how much the figure changes when it alone is changed; left out where that cannot be reckoned. */
  readonly difference?: Quantity;
}

/** A value of two inputs. */
export interface InputChange {
  /** Path in the input. */
  readonly input: string;
  /** What stood there, where something did. */
  readonly before?: unknown;
  /** What stands there. */
  readonly after?: unknown;
}

/** What {@link compareResults} says. */
export interface Comparison {
  /** Id of the calculation. */
  readonly id: string;
  /** Figures that changed, in order. */
  readonly figures: readonly FigureChange[];
  /** Values of the input that changed, where inputs were given. */
  readonly inputs: readonly InputChange[];
  /** Codes of cautions that are new. */
  readonly cautionsCame: readonly string[];
  /** Codes of cautions that are gone. */
  readonly cautionsWent: readonly string[];
  /** Names of defaults that are new, gone or other. */
  readonly assumed: readonly string[];
}

/** The inputs of two results, by which it is told what changed them. */
export interface ComparedInputs<Input> {
  /** The calculation that both are of. */
  readonly calculation: Calculation<Input, FigureSet>;
  /** Input of the first. */
  readonly before: Input;
  /** Input of the second. */
  readonly after: Input;
}

type AnyResult = ResultParts<FigureSet>;

function living(given: unknown, at: string): AnyResult {
  if (typeof given !== 'object' || given === null)
    return refuse(at, sharedFaults.wrongType('it', 'a result'));
  const parts = given as AnyResult;
  return isQuantity(parts.working?.[0]?.gives) ? parts : revive(parts);
}

/** A difference of temperatures is one of their own. */
function differenceOf(after: Quantity, before: Quantity): Quantity {
  const off = canonicalValue(after).minus(canonicalValue(before));
  if (before.dimension !== 'temperature') return newQuantity(before.dimension, off, unitShown(before));
  return newQuantity(
    'temperature-difference',
    off,
    unitOf('temperature-difference', unitShown(before).id) as Unit,
  );
}

const alike = (a: Quantity, b: Quantity): boolean =>
  a.dimension === b.dimension && (a.dimension !== 'money' || a.unit === b.unit);

function changeOf(figure: string, before: Quantity | undefined, after: Quantity | undefined): FigureChange {
  const own = { figure, ...(before ? { before } : {}), ...(after ? { after } : {}) };
  if (!before || !after || !alike(before, after)) return own;
  const difference = differenceOf(after, before);
  const shares = before.sign() !== 0 && before.dimension !== 'temperature';
  const share = shares ? (difference.over(before.abs() as never) as Quantity<'ratio'>).in('%') : undefined;
  return { ...own, difference, ...(share ? { share } : {}) };
}

/** Figures of both, in the order of the first and then of the second. */
function changesOf(a: AnyResult, b: AnyResult): FigureChange[] {
  const names = new Set([...figuresIn(a.figures), ...figuresIn(b.figures)].map(({ at }) => at));
  return [...names].flatMap((name) => {
    const path = pathOf(name) ?? [];
    const [before, after] = [figureAt(a.figures, path), figureAt(b.figures, path)];
    if (before && after && before.equals(after)) return [];
    return [changeOf(name, before, after)];
  });
}

const isBranch = (x: unknown): x is object =>
  typeof x === 'object' && x !== null && !isQuantity(x) && !('unit' in x);

const same = (a: unknown, b: unknown): boolean => keyOf(a) === keyOf(b);

type Path = readonly (string | number)[];

const MOST = 200;

/** Whether an object lacks something that another has. */
const lacks = (a: object, b: object): boolean =>
  Object.entries(b).some(
    ([name, value]) => value !== undefined && (a as Record<string, unknown>)[name] === undefined,
  );

function* differing(a: unknown, b: unknown, path: Path): Generator<Path> {
  if (same(a, b)) return;
  if (!isBranch(a) || !isBranch(b) || Array.isArray(a) !== Array.isArray(b)) {
    yield path;
    return;
  }
  // Lists of different lengths are another list: a value has no fellow there.
  if (Array.isArray(a) && a.length !== (b as unknown as readonly unknown[]).length) {
    yield path;
    return;
  }
  // Another kind of thing, as a circle for a rectangle, is one change: no member of it means anything alone.
  if (path.length > 0 && lacks(a, b) && lacks(b, a)) {
    yield path;
    return;
  }
  for (const name of new Set([...Object.keys(a), ...Object.keys(b)]))
    yield* differing((a as Record<string, unknown>)[name], (b as Record<string, unknown>)[name], [
      ...path,
      Array.isArray(a) ? Number(name) : name,
    ]);
}

interface Inputs {
  readonly calculation: ReturnType<typeof asCalculation>;
  readonly before: unknown;
  readonly after: unknown;
  readonly paths: readonly Path[];
}

function inputsOf(given: unknown): Inputs | undefined {
  if (given === undefined) return undefined;
  if (typeof given !== 'object' || given === null)
    return refuse('inputs', sharedFaults.wrongType('it', 'an object with calculation, before and after'));
  const { calculation, before, after } = given as Record<string, unknown>;
  const [a, b] = [plainCopy(before), plainCopy(after)];
  return {
    calculation: asCalculation(calculation),
    before: a,
    after: b,
    paths: [...differing(a, b, [])].slice(0, MOST),
  };
}

/** Whether a value reads as the same in both, `4 in` and `4.0 in`. */
function readsAlike({ calculation, before, after }: Inputs, path: Path): boolean {
  const at = pathText(path);
  const [a, b] = [before, after].map((one) =>
    placesOf(calculation, one).leaves.find((leaf) => leaf.at === at),
  );
  return a !== undefined && b !== undefined && a.quantity.equals(b.quantity);
}

/** More changed values than this are another job: what each does alone is not told. */
const APART = 24;

/** The first input with one value of the second. */
const oneChanged = ({ before, after }: Inputs, path: Path): unknown =>
  withValue(before, path, valueAt(after, path));

function throughOf(changes: readonly FigureChange[], inputs: Inputs, a: AnyResult): FigureChange[] {
  const alone = inputs.paths.slice(0, APART).map((path) => {
    const outcome = inputs.calculation.attempt(oneChanged(inputs, path), { system: a.system });
    return { input: pathText(path), figures: outcome.ok ? outcome.result.figures : undefined };
  });
  return changes.map((change) => {
    const { before, difference } = change;
    if (!before || !difference) return change;
    const path = pathOf(change.figure) ?? [];
    const through = alone.map(({ input, figures }): Through => {
      const q = figures && figureAt(figures, path);
      return q && alike(q, before) ? { input, difference: differenceOf(q, before) } : { input };
    });
    const rest = through.reduce(
      (left, one) => (one.difference ? left.minus(one.difference) : left),
      difference,
    );
    return { ...change, through: through.filter((one) => one.difference?.sign() !== 0), rest };
  });
}

const codesOf = ({ cautions }: AnyResult): Set<string> => new Set(cautions.map(({ code }) => code));
const without = (a: Set<string>, b: Set<string>): string[] => [...a].filter((one) => !b.has(one));

const defaultsOf = ({ assumed }: AnyResult): Map<string, string> =>
  new Map(assumed.map(({ name, value }) => [name, keyOf(value)]));

function assumedChanges(a: AnyResult, b: AnyResult): string[] {
  const [before, after] = [defaultsOf(a), defaultsOf(b)];
  return [...new Set([...before.keys(), ...after.keys()])].filter(
    (name) => before.get(name) !== after.get(name),
  );
}

/**
 * What changed from one result to another of the same calculation, and through which values of the input.
 *
 * @param before - a result, or the plain data of one
 * @param after - another of the same calculation
 * @param inputs - the calculation with both inputs, to be told what each changed value does alone
 * @returns the figures that changed, with by how much; cautions and defaults that came or went
 * @throws {InputError} `not-a-result`; `wrong-type` for results of two calculations
 * @source closed form
 * @example
 * ```ts
 * import { compareResults, slabVolume } from 'flatwork-reckoner';
 *
 * const before = { outline: { shape: 'rectangle', length: '28 ft', width: '18 ft' }, thickness: '4 in' } as const;
 * const after = { ...before, thickness: '5 in' } as const;
 * const { figures } = compareResults(slabVolume(before), slabVolume(after), {
 *   calculation: slabVolume,
 *   before,
 *   after,
 * });
 * figures[0]?.difference?.format(); // '1.56 yd3'
 * figures[0]?.through?.[0]?.input; // 'thickness'
 * ```
 */
export function compareResults<Input>(
  before: ResultParts<FigureSet>,
  after: ResultParts<FigureSet>,
  inputs?: ComparedInputs<Input>,
): Comparison {
  const [a, b] = [living(before, 'before'), living(after, 'after')];
  if (a.id !== b.id) refuse('after', sharedFaults.wrongType('it', `a result of ${a.id}`));
  const read = inputsOf(inputs);
  const own = read && { ...read, paths: read.paths.filter((path) => !readsAlike(read, path)) };
  const changes = changesOf(a, b);
  const figures = own ? throughOf(changes, own, a) : changes;
  return Object.freeze({
    id: a.id,
    figures: Object.freeze(figures.map((one) => Object.freeze(one))),
    inputs: Object.freeze((own?.paths ?? []).map((path) => inputChange(own as Inputs, path))),
    cautionsCame: Object.freeze(without(codesOf(b), codesOf(a))),
    cautionsWent: Object.freeze(without(codesOf(a), codesOf(b))),
    assumed: Object.freeze(assumedChanges(a, b)),
  });
}

function inputChange({ before, after }: Inputs, path: Path): InputChange {
  const [a, b] = [valueAt(before, path), valueAt(after, path)];
  return Object.freeze({
    input: pathText(path),
    ...(a === undefined ? {} : { before: a }),
    ...(b === undefined ? {} : { after: b }),
  });
}

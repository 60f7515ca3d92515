/**
 * The working of a result together with that of its parts: a job sums up what stands in the working of its slabs and
 * footings, and a slip is made there.
 */
import type { Quantity } from '../quantity/quantity';
import { hearParts, type PartsKnown, type PartsWorking } from '../reckoning/part-working';
import type { Step } from '../reckoning/parts';
import { type Graph, graphOf, stepOf, upstream } from './graph';
import type { AnyResult } from './scene';

/** All steps, with the part that each is of. */
export interface Whole {
  readonly working: readonly Step[];
  /** Where the part of each step stands in the input; left out where the result has no parts. */
  readonly parts?: readonly (string | undefined)[];
}

const heard = new WeakMap<AnyResult, PartsWorking>();

/** Run a calculation and keep the working of its parts in mind, for as long as its result is looked at. */
export function runWhole<T>(
  run: () => T,
  resultOf: (outcome: T) => AnyResult | undefined,
  known: PartsKnown,
): T {
  const { of, parts } = hearParts(run, known);
  const result = resultOf(of);
  if (result && parts) heard.set(result, parts);
  return of;
}

/** The parts of a result, each with how many steps it has; nothing where it has no parts. */
export function partsOf(result: AnyResult): ReadonlyMap<string, number> | undefined {
  const parts = heard.get(result);
  return parts && new Map(parts.before.map(({ at, working }) => [at, working.length]));
}

/** What goes on from the sums of the whole may take them by what they come to. */
const AFTER = /^(?:order|bags|purchases)\b/;

/**
 * The steps of a result and of its parts.
 *
 * @param wanted - the parts that are looked at; all of them where it is left out
 */
export function wholeOf(result: AnyResult, wanted?: ReadonlySet<string>): Whole {
  const parts = heard.get(result);
  if (!parts) return { working: result.working };
  const listed = (some: PartsWorking['before']): (readonly [Step, string])[] =>
    some
      .filter(({ at }) => wanted?.has(at) ?? true)
      .flatMap(({ at, working }) => working.map((step) => [step, at] as const));
  const all: readonly (readonly [Step, string | undefined])[] = [
    ...listed(parts.before),
    ...result.working.map((step) => [step, undefined] as const),
    ...listed(parts.after),
  ];
  return { working: all.map(([step]) => step), parts: all.map(([, at]) => at) };
}

/** What is told of the steps of a whole. */
export function wholeGraph({ working, parts }: Whole, isInput: (q: Quantity) => boolean): Graph {
  const own = parts?.map((at) => (at !== undefined && AFTER.test(at) ? undefined : at));
  return graphOf(working, isInput, own);
}

/** The step whose outcome a figure is. */
export const stepIn = (figure: Quantity, graph: Graph, { parts }: Whole): number | undefined =>
  stepOf(figure, graph, parts && ((i) => parts[i] === undefined || AFTER.test(parts[i] ?? '')));

/** The parts whose steps some figures come from. */
export function partsFor(
  graph: Graph,
  { parts }: Whole,
  nodes: readonly (number | undefined)[],
): ReadonlySet<string> {
  return new Set([...upstream(graph, nodes)].flatMap((i) => parts?.[i] ?? []));
}

/** Every calculation as something to be fuzzed. */
import { calculations as catalog } from '../../../src/catalog/all';
import type { InputError } from '../../../src/index';
import type { Chance } from '../relations/random';
import { drawingObjections } from './drawings';
import { fuzzInput } from './inputs';
import { described, refusalObjections } from './refusals';
import { type AnyResult, resultObjections } from './results';
import { type Objection, type Outcome, SLOW, type Target, timed } from './target';

type Attempt =
  | { readonly ok: true; readonly result: AnyResult }
  | { readonly ok: false; readonly error: InputError };

type Entry = ((input: unknown) => AnyResult) & { readonly id: string; attempt(input: unknown): Attempt };

/** The input as text, to see whether it was changed; a trap has none. */
function textOf(input: unknown): string | undefined {
  try {
    return JSON.stringify(input);
  } catch {
    return undefined;
  }
}

function called(entry: Entry, input: unknown): { readonly result: AnyResult } | { readonly error: unknown } {
  try {
    return { result: entry(input) };
  } catch (error) {
    return { error };
  }
}

/** By call and by attempt the same: the result, or the issues. */
function differing(entry: Entry, input: unknown, attempt: Attempt): string[] {
  const call = called(entry, input);
  if ('result' in call) {
    if (!attempt.ok) return ['the attempt refuses what the call accepts'];
    return resultObjections(attempt.result, JSON.stringify(call.result));
  }
  if (attempt.ok) return [`the call throws ${described(call.error)} where the attempt accepts`];
  const [a, b] = [call.error, attempt.error].map((error) => JSON.stringify((error as InputError).issues));
  return a === b ? [] : ['call and attempt refuse with other issues'];
}

const clean = Object.getOwnPropertyNames(Object.prototype).length;

const polluted = (): boolean => Object.getOwnPropertyNames(Object.prototype).length !== clean;

/** Names that look like nonsense may be printed as they were given. */
const NONSENSE_NAMED = /NaN|Infinity|undefined|null|\[object/;

function objectionsTo(entry: Entry, input: unknown, attempt: Attempt, before: string | undefined): string[] {
  const said = attempt.ok ? [] : refusalObjections(attempt.error, input);
  const all = [...said, ...differing(entry, input, attempt)];
  if (textOf(input) !== before) all.push('the input was changed');
  if (polluted()) all.push('the prototype of all objects was changed');
  if (before !== undefined && NONSENSE_NAMED.test(before))
    return all.filter((x) => !x.startsWith('nonsense'));
  return all;
}

function run(entry: Entry, dice: Chance): Outcome {
  const input = fuzzInput(entry.id, dice);
  const before = textOf(input);
  try {
    const { value: attempt, ms } = timed(() => entry.attempt(input));
    const said = objectionsTo(entry, input, attempt, before);
    if (ms > SLOW) said.push(`slow: ${Math.round(ms / 100) / 10} s`);
    if (attempt.ok || dice.below(8) === 0) said.push(...drawingObjections(entry.id, input, dice));
    const objections = said.map((text): Objection => ({ said: text, input }));
    return { accepted: attempt.ok, ms, objections };
  } catch (error) {
    return { accepted: false, ms: 0, objections: [{ said: `threw ${described(error)}`, input }] };
  }
}

/**
 * Milliseconds for one execution with all that is looked at. They decide how often a calculation is tried, so
 * they are written down and not measured: the same seed makes the same run.
 */
const COSTS: Readonly<Record<string, number>> = {
  'slab-volume': 12,
  'probed-volume': 5,
  'step-layout': 6,
  'pier-volume': 3,
  excavation: 3,
  'base-tonnage': 3,
  'square-check': 1,
  'thickness-check': 1,
  slope: 3,
  'drainage-check': 8,
  'form-grades': 3,
  'grade-correction': 21,
  'cross-slope': 1,
  runoff: 1,
  straightedge: 1,
  'joint-spacing': 4,
  'joint-layout': 143,
  'saw-window': 3,
  'rebar-layout': 47,
  'mesh-layout': 9,
  'lap-length': 1,
  'steel-minimum': 5,
  'steel-placement': 1,
  'bar-cutting': 49,
  'bar-size': 1,
  'fiber-dosage': 1,
  'concrete-order': 3,
  'truck-plan': 4,
  'day-plan': 5,
};

export const calculationTargets = (): Target[] =>
  catalog.map((entry) => ({
    id: entry.id,
    cost: COSTS[entry.id] ?? 2,
    run: (dice) => run(entry as unknown as Entry, dice),
  }));

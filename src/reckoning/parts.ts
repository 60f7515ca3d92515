/** The parts that a result is made of. */
import type { Quantity } from '../quantity/quantity';
import type { Source } from './source';

/** One figure of a result: a quantity, a word, a yes or no, or a list or group of these. */
export type Figure = Quantity | string | boolean | readonly Figure[] | { readonly [name: string]: Figure };

/** The figures of a result, by name. A figure that does not apply is left out. */
export type FigureSet = object;

/** One step of the working. */
export interface Step {
  /** What is computed, in words. */
  readonly what: string;
  /** The formula in symbols, for example `A = L × W`. */
  readonly formula: string;
  /** The right-hand side with the numbers put in. */
  readonly put: string;
  /** What it came to, rounded for show. */
  readonly gives: string;
}

/** A default that was used because the input did not say. */
export interface Assumption {
  /** The name of the input that was left out. */
  readonly name: string;
  /** What was used in its place. */
  readonly value: string;
  /** Why this value. */
  readonly because: string;
  /** How to say otherwise. */
  readonly override: string;
  /** Where the default comes from. */
  readonly source: Source;
}

/** How grave a caution is: good to know, needs a decision, or do not go on like this. */
export type Severity = 'note' | 'warning' | 'stop';

/** Something to heed. */
export interface Caution {
  /** Stable code, for programs. */
  readonly code: string;
  /** How grave it is. */
  readonly severity: Severity;
  /** What to heed, and what to do. */
  readonly sentence: string;
  /** The limit that was passed, where there is one. */
  readonly limit?: Quantity;
  /** The figure that passed it. */
  readonly actual?: Quantity;
  /** Where in the input the value stands that this is about, where it is about one. */
  readonly input?: string;
  /** True where it holds for every job of its kind, as gloves do, rather than for this one. */
  readonly always?: true;
  /** Where the limit comes from. */
  readonly source: Source;
}

/** The parts of a result as plain data. */
export interface ResultParts<F extends FigureSet> {
  /** Id of the calculation. */
  readonly id: string;
  /** What it reckons, in a few words. */
  readonly title: string;
  /** Version of the calculation. */
  readonly version: number;
  /** What came out, by name. */
  readonly figures: F;
  /** How it came about, step by step. */
  readonly working: readonly Step[];
  /** The defaults that were used. */
  readonly assumed: readonly Assumption[];
  /** What to heed. */
  readonly cautions: readonly Caution[];
  /** Where the rules come from. */
  readonly sources: readonly Source[];
}

/** The parts that a result is made of. */
import type { AnyPair } from '../quantity/paired';
import type { Quantity } from '../quantity/quantity';
import type { System } from '../quantity/units';
import type { CautionCode } from './caution-code';
import type { Source } from './source';
import type { Take } from './takes';
import type { Saying, Words } from './words';

/**
 * One figure of a result: a quantity, a word, a yes or no, words with what stands in them, or a list or group of these.
 */
export type Figure =
  | Quantity
  | string
  | boolean
  | Words
  | readonly Figure[]
  | { readonly [name: string]: Figure };

/** The figures of a result, by name. A figure that does not apply is left out. */
export type FigureSet = object;

/** One step of the working: enough to reckon it again. */
export interface Step extends Words {
  /** The formula in symbols, for example `A = L × W`. */
  readonly formula: string;
  /** What the symbols stand for. */
  readonly values: Readonly<Record<string, Quantity>>;
  /** What it came to. */
  readonly gives: Quantity;
}

/** A default that was used because the input did not say. */
export interface Assumption {
  /** The name of the input that was left out. */
  readonly name: string;
  /** What was used in its place. */
  readonly value: Quantity | Words;
  /** Why this value. */
  readonly because: Words;
  /** How to say otherwise. */
  readonly override: Words;
  /** Where the default comes from. */
  readonly source: Source;
}

/** Dimensions whose units are the same in both systems. */
type Shared = 'ratio' | 'count' | 'angle' | 'slope' | 'time' | 'money';

/** A value that follows from the input, and so is in the units of the job already. */
export interface Reckoned {
  readonly reckoned: Quantity;
}

/**
 * A default as a calculation notes it. One with a unit is a pair, as the trade in each unit system buys and builds;
 * what follows from the input says so.
 */
export interface Assumed extends Omit<Assumption, 'value' | 'because' | 'override'> {
  readonly value: AnyPair | Reckoned | Quantity<Shared> | Saying;
  readonly because: Saying;
  readonly override: Saying;
}

/** How grave a caution is: good to know, needs a decision, or do not go on like this. */
export type Severity = 'note' | 'warning' | 'stop';

/** Something to watch out for. */
export interface Caution extends Words {
  /** Stable code, for programs. */
  readonly code: CautionCode;
  /** How grave it is. */
  readonly severity: Severity;
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
  /** What it works out, in a few words. */
  readonly title: string;
  /** Version of the calculation. */
  readonly version: number;
  /** The family of units that the job is written in. */
  readonly system: System;
  /** What came out, by name. */
  readonly figures: F;
  /** How it came about, step by step. */
  readonly working: readonly Step[];
  /** The defaults that were used. */
  readonly assumed: readonly Assumption[];
  /** What to watch out for. */
  readonly cautions: readonly Caution[];
  /** What the job takes, to be bought or hauled. */
  readonly takes: readonly Take[];
  /** Where the rules come from. */
  readonly sources: readonly Source[];
}
